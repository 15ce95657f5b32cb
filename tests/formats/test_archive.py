"""The archive: round trips, and everything hostile that a zip can be."""

from __future__ import annotations

import dataclasses
import stat
import struct
import warnings
from collections.abc import Callable
from datetime import UTC, datetime, timedelta, timezone
from io import BytesIO
from zipfile import ZIP_BZIP2, ZIP_DEFLATED, ZIP_STORED, ZipFile

import pytest
import pyzipper
from hypothesis import given, settings
from hypothesis import strategies as st

from hearthkey.core.errors import Bug, Refused
from hearthkey.core.secret import Secret
from hearthkey.formats import archive, bundle_file
from tests.formats.practice import INLINE, PASSPHRASE, SETTINGS, noise

SECRET = Secret(PASSPHRASE)
AT = datetime(2026, 11, 25, 8, 0, tzinfo=UTC)
MEMBERS = {
    "ines-phone.bundle.toml": bundle_file.write(INLINE),
    "ines-phone.p12": noise(4700),
    "quince-cottage-ca.crt": b"-----BEGIN",
    archive.NOTE_NAME: archive.note(SETTINGS),
}
WRITTEN = archive.write(MEMBERS, SECRET, AT)


def refusal(data: bytes, passphrase: Secret[str] = SECRET) -> Refused:
    """Return what `read` refuses the data with."""
    with pytest.raises(Refused) as refused:
        archive.read(data, passphrase)
    return refused.value


def packed(
    name: str, content: bytes = b"x", *, mode: int = 0, method: int = ZIP_DEFLATED, bits: int = 256, times: int = 1
) -> bytes:
    """Pack one member as somebody with bad intentions would, under the right passphrase."""
    written = BytesIO()
    form = {"nbits": bits}
    with (
        warnings.catch_warnings(),
        pyzipper.AESZipFile(written, "w", encryption=pyzipper.WZ_AES, encryption_kwargs=form) as target,
    ):
        warnings.simplefilter("ignore")  # the same name twice is what is wanted
        target.setpassword(PASSPHRASE.encode())
        for _ in range(times):
            entry = target.zipinfo_cls("x")
            entry.filename = name
            entry.external_attr = mode << 16
            target.writestr(entry, content, compress_type=method)
    return written.getvalue()


def with_sizes(data: bytes, size: int) -> bytes:
    """Let both headers of a one-member archive lie about the unpacked size (APPNOTE.TXT 4.3.7, 4.3.12)."""
    directory = data.rindex(b"PK\x01\x02")
    told = struct.pack("<I", size)
    return data[:22] + told + data[26 : directory + 24] + told + data[directory + 28 :]


def test_what_is_written_is_read_back() -> None:
    """Broken if it fails: a relative unpacks something other than what was packed."""
    assert archive.read(WRITTEN, SECRET) == MEMBERS


@settings(max_examples=25)
@given(
    st.dictionaries(
        st.from_regex(r"[a-z0-9]{3,12}\.(p12|txt|crt)", fullmatch=True).filter(lambda n: not n[:3].startswith("co")),
        st.binary(max_size=300).filter(lambda content: not content.startswith(b"PK")),
        min_size=1,
        max_size=5,
    ).filter(lambda found: not {"aux", "nul", "prn"} & {name.split(".")[0] for name in found})
)
def test_any_small_files_survive(members: dict[str, bytes]) -> None:
    """Broken if it fails: an empty file, a short one or a name gets lost."""
    assert archive.read(archive.write(members, SECRET, AT), SECRET) == members


def test_every_member_is_aes_256_in_the_form_without_a_checksum() -> None:
    """Broken if it fails: weaker encryption, or a CRC-32 of the plain bytes that a guesser learns from (AE-2)."""
    with pyzipper.AESZipFile(BytesIO(WRITTEN)) as source:
        found = {(e.wz_aes_strength, getattr(e, "wz_aes_version", None), e.CRC) for e in source.infolist()}
    assert found == {(3, 2, 0)}


@pytest.mark.parametrize(
    ("at", "shown"),
    [
        (AT.astimezone(timezone(timedelta(hours=-8))), (2026, 11, 25, 8, 0, 0)),
        (datetime(1970, 1, 1, tzinfo=UTC), (1980, 1, 1, 0, 0, 0)),
        (datetime(2200, 1, 1, tzinfo=UTC), (2107, 12, 31, 0, 0, 0)),
    ],
)
def test_dates_are_utc_and_within_what_zip_can_say(at: datetime, shown: tuple[int, ...]) -> None:
    """Broken if it fails: a clock set back to 1970 stops the export."""
    with ZipFile(BytesIO(archive.write({"a.txt": b""}, SECRET, at))) as source:
        assert source.infolist()[0].date_time == shown


@pytest.mark.parametrize("wrong", [PASSPHRASE + "x", PASSPHRASE.upper(), " ", "", "grüße"])
def test_a_wrong_passphrase_is_told_without_a_hint(wrong: str) -> None:
    """Broken if it fails: a mistyped passphrase looks like a broken file, or tells which part was right."""
    error = refusal(WRITTEN, Secret(wrong))
    assert (error.code, error.facts) == ("wrong-passphrase", {})


NASTY = [
    "../up.txt",
    "/etc/passwd",
    "C:\\up.txt",
    "C:up.txt",
    "a\\b.txt",
    "a/b.txt",
    "a/",
    "..",
    ".",
    ".hidden",
    "a.",
    "a ",
]
NASTY += [
    "con",
    "NUL.txt",
    "aux.p12",
    "com1.toml",
    "a\x00.txt",
    "a\nb.txt",
    "\u202etxt.p12",
    "ü.txt",
    "a" * 101,
    "~",
    "-rf",
]


@pytest.mark.parametrize("name", NASTY, ids=ascii)
def test_names_that_lead_elsewhere_are_refused(name: str) -> None:
    """Broken if it fails: unpacking writes outside the folder, to a device, or under a name that deceives."""
    error = refusal(packed(name))
    assert error.code == "archive-name-unsafe"
    assert str(error.facts["member"]).isprintable()
    with pytest.raises(Bug, match="archive-member-unfit"):
        archive.write({name: b""}, SECRET, AT)


@pytest.mark.parametrize("kind", [stat.S_IFLNK, stat.S_IFDIR, stat.S_IFIFO, stat.S_IFCHR, stat.S_IFSOCK])
def test_links_folders_and_devices_are_refused(kind: int) -> None:
    """Broken if it fails: a link points a later write somewhere else."""
    error = refusal(packed("a.txt", b"/etc/passwd", mode=kind | 0o777))
    assert (error.code, error.facts["member"]) == ("archive-member-unfit", "a.txt")


def test_the_folder_mark_of_old_systems_is_refused() -> None:
    """Broken if it fails: what one unpacker takes for a folder passes for a file (APPNOTE.TXT 4.4.15)."""
    data = bytearray(packed("a.txt"))
    data[data.rindex(b"PK\x01\x02") + 38] |= 0x10
    assert refusal(bytes(data)).code == "archive-member-unfit"


def test_the_same_name_twice_is_refused() -> None:
    """Broken if it fails: which of two files one gets depends on the unpacker, and on capitals."""
    assert refusal(packed("a.txt", times=2)).code == "archive-name-unsafe"
    with pytest.raises(Bug, match="archive-member-unfit"):
        archive.write({"a.txt": b"", "A.TXT": b""}, SECRET, AT)


def test_members_in_the_open_are_refused() -> None:
    """Broken if it fails: a file slipped in without the passphrase is taken for ours."""
    plain = BytesIO()
    with ZipFile(plain, "w") as target:
        target.writestr("a.txt", b"hello")
    assert refusal(plain.getvalue()).code == "archive-member-open"
    with pyzipper.AESZipFile(BytesIO(WRITTEN)) as source:
        assert all(entry.flag_bits & 1 for entry in source.infolist())


def test_the_old_zip_encryption_is_refused() -> None:
    """Broken if it fails: the broken cipher of the first zip programs passes for protection."""
    plain = BytesIO()
    with ZipFile(plain, "w") as target:
        target.writestr("a.txt", b"hello")
    data = bytearray(plain.getvalue())
    directory = data.rindex(b"PK\x01\x02")
    data[6] |= 1
    data[directory + 8] |= 1
    assert refusal(bytes(data)).code == "archive-member-open"


@pytest.mark.parametrize("bits", [128, 192])
def test_shorter_keys_are_refused(bits: int) -> None:
    """Broken if it fails: an archive weaker than promised is taken for ours."""
    assert refusal(packed("a.txt", bits=bits)).code == "archive-member-open"


def test_other_ways_of_packing_are_refused() -> None:
    """Broken if it fails: decompressors that nobody bounded get a stranger's bytes."""
    assert refusal(packed("a.txt", method=ZIP_BZIP2)).code == "archive-member-unfit"
    assert archive.read(packed("a.txt", method=ZIP_STORED), SECRET) == {"a.txt": b"x"}


@pytest.mark.parametrize("flag", [0x20, 0x40], ids=["patched", "strong"])
def test_members_packed_by_rare_features_are_refused(flag: int) -> None:
    """Broken if it fails: parts of the zip format that no test of ours reaches get a stranger's bytes."""
    data = bytearray(packed("a.txt"))
    directory = data.rindex(b"PK\x01\x02")
    data[6] |= flag
    data[directory + 8] |= flag
    assert refusal(bytes(data)).code == "archive-member-unfit"


def test_an_archive_in_the_archive_is_refused() -> None:
    """Broken if it fails: nesting hides what the caps are for."""
    assert refusal(packed("a.txt", WRITTEN)).code == "archive-member-unfit"


def test_too_many_members_are_refused() -> None:
    """Broken if it fails: thousands of key derivations for one click."""
    members = {f"a{number}.txt": b"" for number in range(17)}
    with pytest.raises(Bug, match="archive-member-unfit"):
        archive.write(members, SECRET, AT)
    written = BytesIO()
    with ZipFile(written, "w") as target:
        for name in members:
            target.writestr(name, b"")
    error = refusal(written.getvalue())
    assert (error.code, error.facts["count"]) == ("archive-too-full", 17)


def test_an_archive_of_nothing_is_refused() -> None:
    """Broken if it fails: an empty archive passes for a bundle."""
    empty = BytesIO()
    ZipFile(empty, "w").close()
    for data in (empty.getvalue(), b"PK\x03\x04" + empty.getvalue()):
        assert refusal(data).code == "archive-unreadable"


@pytest.mark.parametrize("content", [bytes((1 << 20) + 1), bytes(1 << 20)], ids=["too large", "too steep"])
def test_bombs_are_refused_by_what_they_declare(content: bytes) -> None:
    """Broken if it fails: a small file fills the memory."""
    error = refusal(packed("a.txt", content))
    assert (error.code, error.facts["member"]) == ("archive-too-large", "a.txt")


@pytest.mark.parametrize("told", [1000, 100_000])
def test_bombs_that_declare_less_are_cut_off(told: int) -> None:
    """Broken if it fails: a header that lies about the size gets 64 MiB inflated, or a cut file passes as whole."""
    assert refusal(with_sizes(packed("a.txt", bytes(64 << 20)), told)).code == "archive-unreadable"


def test_a_huge_file_is_refused_unread() -> None:
    """Broken if it fails: 200 MB are searched for a directory."""
    assert refusal(WRITTEN + bytes(4 << 20)).code == "archive-too-large"


@pytest.mark.parametrize("data", [b"", b"PK", b"PK\x03\x04", b"#!/bin/sh\n" + WRITTEN, WRITTEN[:-30], WRITTEN[400:]])
def test_what_is_no_whole_zip_is_told(data: bytes) -> None:
    """Broken if it fails: a cut file, or a program with a zip behind it, gets further than its first bytes."""
    assert refusal(data).code == "archive-unreadable"


def test_a_changed_byte_of_a_member_is_found() -> None:
    """Broken if it fails: encrypted content can be changed unnoticed (AE-2 authenticates by HMAC-SHA1)."""
    data = bytearray(archive.write({"a.txt": noise(500)}, SECRET, AT))
    data[200] ^= 1
    assert refusal(bytes(data)).code == "archive-unreadable"


SMALL = archive.write({"a.txt": b"hello, Odile", "b.p12": noise(60)}, SECRET, AT)


@settings(max_examples=150)
@given(st.lists(st.tuples(st.integers(0, len(SMALL) - 1), st.integers(0, 255)), min_size=1, max_size=4))
def test_no_damage_ends_in_anything_but_a_refusal(edits: list[tuple[int, int]]) -> None:
    """Broken if it fails: a damaged archive stops the app instead of being named."""
    data = bytearray(SMALL)
    for at, value in edits:
        data[at] = value
    try:
        read = archive.read(bytes(data), SECRET)
    except Refused as error:
        assert error.code.startswith("archive-") or error.code == "wrong-passphrase"  # noqa: PT017 - told apart here
    else:
        assert set(read.values()) <= {b"hello, Odile", noise(60)}


@pytest.mark.parametrize(
    ("name", "expected"),
    [
        (archive.file_name, "ines-phone.zip"),
        (archive.pkcs12_name, "ines-phone.p12"),
        (archive.authority_name, "quince-cottage-practice-ca.crt"),
    ],
)
def test_file_names(name: Callable[[object], str], expected: str) -> None:
    """Broken if it fails: the files in the archive are not those that the note speaks of."""
    assert name(SETTINGS) == expected
    assert expected.endswith(".zip") or expected in archive.note(SETTINGS).decode()


def test_the_note_says_what_a_relative_needs() -> None:
    """Broken if it fails: the relative has to guess which file, which passphrase, whom to ask."""
    text = archive.note(SETTINGS).decode()
    for needed in ("Ines’s phone", "Quince Cottage", "24 November 2028", "home.quince.example", SETTINGS.identity):
        assert needed in text
    assert "another way" in text
    assert text.count("\r\n") == text.count("\n")
    assert max(len(line) for line in text.split("\r\n")) <= 78


def test_the_note_holds_braces_and_no_secret() -> None:
    """Broken if it fails: a name with braces breaks the note, or the note tells what must travel another way."""
    text = archive.note(dataclasses.replace(SETTINGS, device="Odile’s {radio}")).decode()
    assert "Odile’s {radio}" in text
    assert PASSPHRASE not in text
