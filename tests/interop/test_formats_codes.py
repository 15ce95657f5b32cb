"""Judges of other hands read the codes: zbar."""

from __future__ import annotations

import subprocess
from pathlib import Path

from hearthkey.adapters import pictures
from hearthkey.formats import bundle_file, codes
from tests.formats.practice import INLINE
from tests.judges import needs


def test_zbar_reads_every_code_of_a_bundle(tmp_path: Path) -> None:
    """Broken if it fails: an ordinary reader of another hand cannot read what the app draws."""
    zbarimg = needs("zbarimg")
    written = bundle_file.write(INLINE)
    frames = codes.frames(written)
    paths = [tmp_path / f"code-{number}.png" for number in range(1, len(frames) + 1)]
    for path, frame in zip(paths, frames, strict=True):
        path.write_bytes(pictures.png(codes.matrix(frame), 4))
    told = subprocess.run(
        [zbarimg, "--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", "--nodbus", *paths],
        capture_output=True,
        check=True,
        text=True,
        timeout=60,
    )
    texts = told.stdout.split("\n")[:-1]
    assert tuple(texts) == frames
    assert codes.join(reversed(texts)) == written
