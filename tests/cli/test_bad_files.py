"""Strangers' files: whatever they hold, one sentence, exit code 3, and nothing is changed."""

from __future__ import annotations

import os
import struct
import zipfile
import zlib
from collections.abc import Callable
from dataclasses import replace
from functools import cache
from io import BytesIO
from pathlib import Path

import pytest
import pyzipper
from qrcode.main import QRCode

from hearthkey.adapters import pictures
from hearthkey.core.bundle import Form
from hearthkey.formats import bundle_file
from hearthkey.pki import der
from tests.cli.running import Cottage, Ran
from tests.fakes.home import at_home
from tests.formats.practice import noise
from tests.pki.forge import with_rounds

Edit = Callable[[bytes], bytes]


@cache
def written() -> tuple[dict[str, list[bytes]], str]:
    """Every form of the bundle of Ines's phone, and its passphrase; made once."""
    import tempfile  # noqa: PLC0415 - used here alone

    with tempfile.TemporaryDirectory() as folder, at_home(Path(folder) / "data") as home:
        bundle = home.house.bundling.open(home.newest("Ines phone"))
        forms = {form.value: [one.data for one in home.house.bundling.write(bundle, form)] for form in Form}
        forms["other codes"] = [one.data for one in home.house.bundling.write(bundle, Form.CODES)]
        return forms, bundle.passphrase.reveal()


def good(form: str) -> bytes:
    """The bytes of a form."""
    return written()[0][form][0]


def rehearsed(cottage: Cottage, folder: Path, *contents: bytes, form: str | None = None) -> Ran:
    """Lay files down and rehearse them with the right passphrase."""
    cottage.words.write_text(written()[1], encoding="ascii")
    words: list[str | Path] = []
    for number, content in enumerate(contents):
        path = folder / f"stranger-{number}"
        path.write_bytes(content)
        words += ["--file", path]
    return cottage.unlocked("rehearse", *words, *(() if form is None else ("--form", form)))


def refused(cottage: Cottage, folder: Path, *contents: bytes, form: str | None = None) -> str:
    """Rehearse, see that it ends in one sentence and that nothing changed; return what was said."""
    before = cottage.register()
    ran = rehearsed(cottage, folder, *contents, form=form)
    assert (ran.code, ran.out) == (3, "")
    assert "Traceback" not in ran.err
    assert "fault of the app" not in ran.err
    assert cottage.register() == before
    return ran.err.splitlines()[-1]


@pytest.mark.parametrize("form", [form.value for form in Form])
def test_a_good_file_gets_in_whatever_it_is_called(cottage: Cottage, tmp_path: Path, form: str) -> None:
    """Broken if it fails: a renamed file is turned away, or the tests below refuse everything."""
    ran = rehearsed(cottage, tmp_path, *reversed(written()[0][form]))
    assert ran.code == 0
    assert "gets in:" in ran.out


def edited(old: bytes, new: bytes) -> Edit:
    """Put something else in the place of the first of these octets."""

    def edit(whole: bytes) -> bytes:
        assert old in whole
        return whole.replace(old, new, 1)

    return edit


@pytest.mark.parametrize(
    ("edit", "said"),
    [
        (lambda _: b"", "Line 1 does not say that this is a bundle."),
        (lambda whole: whole[: len(whole) // 2], "cannot be read"),
        (lambda whole: whole[:-300], "cannot be read"),
        (lambda whole: whole.decode().encode("utf-16"), "is not UTF-8 text"),
        (lambda whole: whole + b"\x00", "holds a character that cannot be seen"),
        (lambda whole: whole.replace(b"Ines", "Ines\u202e".encode()), "holds a character that cannot be seen"),
        (edited(b"version = 1", b"version = 2"), "written in version 2"),
        (edited(b"hearthkey-bundle", b"something-else"), "does not say that this is a bundle"),
        (edited(b"serial = ", b'serial = "00" #'), "belong to different devices or were altered"),
        (edited(b'fingerprint = "', b'fingerprint = "' + b"0" * 64 + b'" #'), "belong to different devices"),
        (edited(b"[esp]", b"[esp]\nevil = 1"), "nothing is known of esp.evil"),
        (edited(b'tunnel = "split"', b'tunnel = "up"'), "what stands for network.tunnel does not fit"),
        (edited(b"key_exchange = ", b"key_exchange = " + b"9" * 5000), "."),
        (edited(b"dns_servers = [", b"dns_servers = " + b"[" * 100_000), "."),
        (lambda whole: whole + b"a = " + b"[" * 50_000, "."),
        (lambda whole: whole + b"# " + b"q" * (1 << 20), "a bundle has at most 1048576"),
        (edited(b"-----BEGIN CERTIFICATE-----\n", b"-----BEGIN CERTIFICATE-----\nAAAA"), "cannot be read"),
    ],
    ids=range(17),
)
def test_bundle_files_of_strangers(cottage: Cottage, tmp_path: Path, edit: Edit, said: str) -> None:
    """Broken if it fails: an edited or damaged bundle file ends in a trace, or gets in."""
    assert said in refused(cottage, tmp_path, edit(good("bundle")), form="bundle")


def test_a_bundle_that_asks_for_endless_work_is_not_opened(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: a small file keeps the computer busy for a day."""
    inline = bundle_file.read(good("bundle"))
    costly = bundle_file.write(replace(inline, encrypted_key=with_rounds(inline.encrypted_key, 10**9)))
    assert "1000000000 rounds of key stretching" in refused(cottage, tmp_path, costly)


def nested(depth: int) -> bytes:
    """Sequences within sequences."""
    inner = b""
    for _ in range(depth):
        inner = der.element(der.SEQUENCE, inner)
    return inner


@pytest.mark.parametrize(
    ("edit", "said"),
    [
        (lambda whole: whole[:-1], "It is not a whole PKCS#12 file."),
        (lambda whole: whole + b"\x00", "It is not a whole PKCS#12 file."),
        (lambda whole: whole[:100], "It is not a whole PKCS#12 file."),
        (lambda _: b"\x30\x80\x00\x00", "It is not a whole PKCS#12 file."),
        (lambda _: b"\x30\x84\xff\xff\xff\xff" + b"q" * 99, "It is not a whole PKCS#12 file."),
        (lambda _: nested(2000), "It is not a whole PKCS#12 file."),
        (lambda whole: whole[:600] + bytes([whole[600] ^ 1]) + whole[601:], "The passphrase does not open it."),
    ],
    ids=range(7),
)
def test_containers_of_strangers(cottage: Cottage, tmp_path: Path, edit: Edit, said: str) -> None:
    """Broken if it fails: a damaged or hostile PKCS#12 file ends in a trace, hangs, or gets in."""
    assert said in refused(cottage, tmp_path, edit(good("pkcs12")))


def zipped(*members: tuple[str, bytes], mode: int = 0o100600) -> bytes:
    """An AES-256 zip under the right passphrase."""
    made = BytesIO()
    with pyzipper.AESZipFile(made, "w", compression=pyzipper.ZIP_DEFLATED, encryption=pyzipper.WZ_AES) as archive:
        archive.setpassword(written()[1].encode())
        for name, data in members:
            entry = archive.zipinfo_cls(name)
            entry.external_attr, entry.compress_type = mode << 16, pyzipper.ZIP_DEFLATED
            archive.writestr(entry, data)
    return made.getvalue()


def open_zip() -> bytes:
    """A zip without any encryption."""
    made = BytesIO()
    with zipfile.ZipFile(made, "w") as archive:
        archive.writestr("ines-phone.p12", good("pkcs12"))
    return made.getvalue()


@pytest.mark.parametrize(
    ("make", "said"),
    [
        (lambda: good("archive")[:-40], "It is not a whole archive."),
        (lambda: b"PK\x03\x04" + noise(500), "It is not a whole archive."),
        (lambda: b"PK\x05\x06" + bytes(18), "archive"),
        (open_zip, "without AES-256"),
        (lambda: zipped(("../../.profile", b"x")), "would land outside its folder"),
        (lambda: zipped(("/etc/passwd", b"x")), "would land outside its folder"),
        (lambda: zipped(("C:\\x.p12", b"x")), "would land outside its folder"),
        (lambda: zipped(("link.p12", b"/etc/passwd"), mode=0o120777), "does not belong"),
        (lambda: zipped(("bomb.p12", bytes(50_000_000))), "would unpack to"),
        (lambda: zipped(*((f"{number}.p12", b"x") for number in range(200))), "The archive holds 200 files"),
        (lambda: zipped(("inner.zip", open_zip())), "does not belong"),
        (lambda: zipped(("ines-phone.p12", b"x")), "belong together"),
    ],
    ids=range(12),
)
def test_archives_of_strangers(cottage: Cottage, tmp_path: Path, make: Callable[[], bytes], said: str) -> None:
    """Broken if it fails: a hostile archive writes outside, fills the memory, or ends in a trace."""
    assert said in refused(cottage, tmp_path, make())
    assert {path.name for path in tmp_path.iterdir()} == {"data", "words.txt", "stranger-0"}


def chunk(name: bytes, content: bytes) -> bytes:
    """One chunk of a PNG file (PNG specification, section 5.3)."""
    return struct.pack(">I", len(content)) + name + content + struct.pack(">I", zlib.crc32(name + content))


def huge_png() -> bytes:
    """A PNG that announces more pixels than there is memory for."""
    header = chunk(b"IHDR", struct.pack(">IIBBBBB", 100_000, 100_000, 1, 0, 0, 0, 0))
    return b"\x89PNG\r\n\x1a\n" + header + chunk(b"IDAT", zlib.compress(bytes(1000))) + chunk(b"IEND", b"")


def drawn(text: str) -> bytes:
    """A picture of a code of another kind."""
    code = QRCode(border=4)
    code.add_data(text)
    return pictures.png(tuple(map(tuple, code.get_matrix())))


@pytest.mark.parametrize(
    ("make", "said"),
    [
        (lambda frames: frames[:-1], "is missing"),
        (lambda frames: [frames[0]] * 3, "is missing"),
        (lambda frames: [*frames[:-1], written()[0]["other codes"][-1]], "belongs to another bundle"),
        (lambda frames: [*frames[:-1], frames[-1][: len(frames[-1]) // 2]], "."),
        (lambda frames: [*frames, drawn("HTTPS://QUINCE.EXAMPLE/")], "shows another kind of code"),
        (lambda _: [huge_png()], "The picture is too large"),
        (lambda _: [b"\x89PNG\r\n\x1a\n" + noise(400)], "that can be read"),
        (lambda _: [b"\xff\xd8\xff\xe0" + noise(400)], "that can be read"),
        (lambda frames: [frames[0], good("bundle")], "that can be read"),
    ],
    ids=range(9),
)
def test_codes_of_strangers(
    cottage: Cottage, tmp_path: Path, make: Callable[[list[bytes]], list[bytes]], said: str
) -> None:
    """Broken if it fails: a missing or foreign code ends in a trace, or a bundle is put together from two."""
    assert said in refused(cottage, tmp_path, *make(written()[0]["codes"]))


@pytest.mark.parametrize("form", [form.value for form in Form])
@pytest.mark.parametrize("other", [form.value for form in Form])
def test_a_form_taken_for_another_is_told(cottage: Cottage, tmp_path: Path, form: str, other: str) -> None:
    """Broken if it fails: a wrong --form ends in a trace."""
    if form == other:
        assert rehearsed(cottage, tmp_path, *written()[0][form], form=other).code == 0
    else:
        assert refused(cottage, tmp_path, good(form), form=other)


@pytest.mark.parametrize("head", [b"", b"PK\x03\x04", b"\x30\x82", b"\x89PNG\r\n\x1a\n"])
def test_two_hundred_megabytes_are_not_read(cottage: Cottage, tmp_path: Path, head: bytes) -> None:
    """Broken if it fails: somebody's film fills the memory."""
    path = tmp_path / "film"
    with path.open("wb") as file:
        file.write(head)
        file.truncate(200 * 1024 * 1024)
    ran = cottage.unlocked("rehearse", "--file", path, "--json")
    assert (ran.code, ran.told["error"]["code"]) == (3, "file-too-large")


def test_what_is_no_file_is_told(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: a folder, a pipe or a device hangs the app or ends in a trace."""
    os.mkfifo(tmp_path / "pipe")
    for path, code in (
        (tmp_path, "file-not-a-file"),
        (tmp_path / "pipe", "file-not-a-file"),
        (Path("/dev/zero"), "file-not-a-file"),
        (tmp_path / "none", "file-missing"),
    ):
        ran = cottage.unlocked("rehearse", "--file", path, "--json")
        assert (ran.code, ran.told["error"]["code"]) == (3, code)


def test_too_many_files_are_told(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: a folder full of pictures is read to the last."""
    assert "More than 99 files were named." in refused(cottage, tmp_path, *[b"x"] * 100)


def test_the_steps_before_the_failed_one_are_shown(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: nobody can see how far a bundle got."""
    cottage.unlocked("stop", "Ines phone")
    ran = rehearsed(cottage, tmp_path, good("bundle"))
    steps = [line.split()[:2] for line in ran.err.splitlines() if line.startswith("  ") and "..." not in line]
    assert steps == [*(["ok", step] for step in ("read", "open", "path", "name", "usage", "dates")), ["stop", "list"]]
    assert ran.code == 3
