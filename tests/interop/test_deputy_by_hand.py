"""Two parts put together and a copy opened as resources/formats/deputy-part-1.md says, without a line of ours."""

from __future__ import annotations

import gzip
import hashlib
import io
import json
import tarfile
from itertools import combinations
from pathlib import Path

import pyrage
import pytest

from hearthkey.core import deputy
from hearthkey.pki import deputy_lock
from tests.fakes.home import PASSPHRASE, at_home

RESOURCES = Path(__file__).parents[2] / "resources"


def octets(sheet: str) -> bytes:
    """The 24 octets of a sheet's words; refuses what does not fit its own checksum."""
    listed = gzip.decompress((RESOURCES / "words" / "eff-large.txt.gz").read_bytes()).decode().split()
    number = 0
    for word in sheet.split():
        number = number * 7776 + listed.index(word)
    data = number.to_bytes(24, "big")
    assert hashlib.sha256(b"hearthkey deputy part 1\n" + data[:20]).digest()[:4] == data[20:]
    return data


def field() -> tuple[list[int], list[int]]:
    """Powers of {03} and their logarithms, by which products become sums; {03} generates the field (from memory)."""
    powers, logs, one = [0] * 255, [0] * 256, 1
    for exponent in range(255):
        powers[exponent], logs[one] = one, exponent
        twice = one << 1 ^ (0x11B if one & 0x80 else 0)
        one ^= twice
    assert sorted(powers) == list(range(1, 256))
    return powers, logs


def secret_of(first: bytes, second: bytes) -> bytes:
    """The formula of the page."""
    powers, logs = field()
    i, j = first[1] & 15, second[1] & 15

    def times(left: int, right: int) -> int:
        return powers[(logs[left] + logs[right]) % 255] if left and right else 0

    def over(left: int, right: int) -> int:
        return powers[(logs[left] - logs[right]) % 255] if left else 0

    return bytes(over(times(a, j) ^ times(b, i), i ^ j) for a, b in zip(first[4:20], second[4:20], strict=True))


def test_any_two_sheets_and_any_age_tool_open_a_copy(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: the family depends on an app that may not run any more when it is needed."""
    with at_home(tmp_path / "data") as home:
        home.house.sealing.make_ready(PASSPHRASE)
        monkeypatch.setitem(home.house.__dict__, "deputy_locks", deputy_lock)
        drawn = home.house.deputies.draw(PASSPHRASE)
        home.house.deputies.keep(drawn)
        _note, changes = home.house.sealing.seal()
        sheets = [octets(deputy.words_of(one, home.house.words).reveal()) for one in drawn.parts]
    (secret,) = {secret_of(*pair) for pair in combinations(sheets, 2)}
    with tarfile.open(fileobj=io.BytesIO(Path(changes.files[0]).read_bytes())) as tar:
        locked = tar.extractfile(f"deputy-{sheets[0][2:4].hex().upper()}.age")
        assert locked is not None
        told = json.loads(pyrage.passphrase.decrypt(locked.read(), secret.hex()))
    assert told == {"household": PASSPHRASE.reveal(), "own": None}


def test_the_page_and_the_code_say_the_same() -> None:
    """Broken if it fails: the page that is left for later describes another format."""
    page = (RESOURCES / "formats" / "deputy-part-1.md").read_text(encoding="utf-8")
    assert f"`{deputy.CODE}`" in page
    assert "Fifteen words" in page
    assert deputy.WORDS == 15
    assert "deputy-SET.age" in page
