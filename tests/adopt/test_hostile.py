"""Folders and files that somebody prepared to do harm: nothing is followed, nothing hangs, nothing is written."""

from __future__ import annotations

import base64
import os
import socket
import tempfile
from pathlib import Path

import pytest
from cryptography.hazmat.primitives.serialization import Encoding
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.adapters import found_folder
from hearthkey.adapters.found_folder import DiskFolder
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.found_household import Grave
from hearthkey.core.secret import Secret
from hearthkey.formats.issued_index import read_counter, read_index
from hearthkey.pki import pbes
from hearthkey.pki.looking_in import look_in
from tests.adopt.by_hand import LOCK, ByHand, family, key_text, quick_key
from tests.adopt.conftest import codes, look

LABELS = ("CERTIFICATE", "X509 CRL", "PRIVATE KEY", "ENCRYPTED PRIVATE KEY", "RSA PRIVATE KEY", "EC PRIVATE KEY")
WORDS = (Secret("plum"),)


@given(st.binary(max_size=400), st.sampled_from(LABELS), st.booleans())
def test_any_octets_have_a_verdict(octets: bytes, label: str, wrapped: bool) -> None:  # noqa: FBT001  # hypothesis gives it
    """Broken if it fails: one file ends the look at all the others."""
    text = f"-----BEGIN {label}-----\n{base64.b64encode(octets).decode()}\n-----END {label}-----\n"
    seen = look_in("x", text.encode() if wrapped else octets, WORDS)
    assert seen.certificates == []
    assert seen.opened == {}


@given(st.data())
def test_a_file_with_octets_changed_has_a_verdict(data: st.DataObject) -> None:
    """Broken if it fails: a file that was damaged on its way ends the look, or is taken for another one."""
    whole = bytearray(data.draw(st.sampled_from(_samples())))
    for _ in range(data.draw(st.integers(1, 4))):
        whole[data.draw(st.integers(0, len(whole) - 1))] = data.draw(st.integers(0, 255))
    seen = look_in("x", bytes(whole), WORDS)
    assert len(seen.certificates) + len(seen.lists) + len(seen.keys) <= 2


_MADE: list[bytes] = []


def _samples() -> list[bytes]:
    if not _MADE:
        with tempfile.TemporaryDirectory() as folder:
            home = ByHand(Path(folder))
        _MADE.extend(
            [
                home.certificate.public_bytes(Encoding.DER),
                home.revocation_list(3, (7, None)).public_bytes(Encoding.DER),
                key_text(quick_key("ca"), locked=False),
            ]
        )
    return _MADE


@given(st.text(alphabet=st.sampled_from("VRE\t\n0123456789ABCDEFZ,/=unknow\x00é"), max_size=200))
def test_any_text_has_a_verdict(text: str) -> None:
    """Broken if it fails: a database that was edited by hand ends the look."""
    database, counter = read_index("index.txt", text), read_counter("serial", text)
    assert database is None or len(database.unread) <= len(database.rows)
    assert counter is None or counter.following >= 0


def test_what_is_no_plain_file_is_passed_over(tmp_path: Path) -> None:
    """Broken if it fails: a look waits for ever at a pipe, leaves the folder by a link, or reads without end."""
    family(tmp_path / "home")
    outside = ByHand(tmp_path / "outside", quick_key("outside"), name="Outside")
    outside.put_authority(locked=False)
    inside = tmp_path / "home"
    (inside / "link.crt").symlink_to(outside.folder / "ca.crt")
    (inside / "linked").symlink_to(outside.folder)
    (inside / "round").symlink_to(inside)
    os.mkfifo(inside / "pipe.pem")
    with socket.socket(socket.AF_UNIX) as bound:
        here = Path.cwd()
        os.chdir(inside)
        try:
            bound.bind("door")
        finally:
            os.chdir(here)
    with (inside / "huge.pem").open("wb") as file:
        file.truncate(1 << 40)
    deep = inside.joinpath(*"abcdefgh")
    deep.mkdir(parents=True)
    (deep / "ca.crt").write_bytes(b"x")
    seen = look(inside)
    assert {(one.code, one.file) for one in seen.findings if one.code.startswith("file-")} == {
        ("file-link", "link.crt"),
        ("file-link", "linked"),
        ("file-link", "round"),
        ("file-special", "pipe.pem"),
        ("file-special", "door"),
        ("file-large", "huge.pem"),
        ("file-deep", "a/b/c/d/e/f/g"),
    }
    assert seen.stops == ()
    assert all("Outside" not in one.subject for one in seen.home.folder.certificates)


def test_what_may_not_be_read_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: one folder that belongs to somebody else hides all the rest, or is taken for empty."""
    family(tmp_path)
    real = os.open

    def opened(path: str, flags: int, mode: int = 0o777, *, dir_fd: int | None = None) -> int:
        if path in {"newcerts", "crl.pem"}:
            raise PermissionError(13, "Permission denied", path)
        return real(path, flags, mode, dir_fd=dir_fd)

    monkeypatch.setattr(os, "open", opened)
    seen = look(tmp_path)
    assert {one.file for one in seen.findings if one.code == "file-closed"} == {"newcerts", "crl.pem"}
    assert seen.home.authority is not None


def test_a_folder_that_may_not_be_read_at_all_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: a closed folder looks like one without a CA."""

    def closed(*_: object, **__: object) -> int:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(os, "open", closed)
    with pytest.raises(Unavailable, match="folder-closed"):
        look(tmp_path)
    with pytest.raises(Refused, match="folder-missing"):
        DiskFolder().read(tmp_path / "none")


@pytest.mark.parametrize(("name", "limit"), [("MOST_FILES", 3), ("MOST_NAMES", 3), ("MOST_TOGETHER", 100)])
def test_limits_are_kept_and_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, name: str, limit: int) -> None:
    """Broken if it fails: a whole disk is read by a slip of the finger, or cut short without a word."""
    family(tmp_path)
    monkeypatch.setattr(found_folder, name, limit)
    seen = look(tmp_path)
    assert "file-many" in codes(seen)
    assert seen.home.folder.files <= 3


def test_one_file_may_be_looked_at(tmp_path: Path) -> None:
    """Broken if it fails: who chooses the one container that holds everything gets nothing."""
    family(tmp_path)
    seen = look(tmp_path / "ca.crt")
    assert seen.home.authority is not None
    assert [one.code for one in seen.stops] == ["authority-key-missing"]


def test_absurd_work_is_refused_before_it_is_done(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: a file makes the app count for hours. RFC 8018 section 4.2."""
    home = family(tmp_path)
    monkeypatch.setattr(pbes, "MOST_ROUNDS", 1)
    seen = look(tmp_path)
    assert "locked-key-rounds-absurd" in codes(seen)
    assert home.put("x", LOCK).exists()


def test_a_look_without_the_passphrase_says_that_one_is_needed(tmp_path: Path) -> None:
    """Broken if it fails: nobody is asked for the passphrase, or a CA without its key seems to have one."""
    family(tmp_path)
    seen = look(tmp_path, locked=True)
    assert seen.needs_passphrase
    assert [(one.code, one.grave) for one in seen.stops] == [("authority-key-locked", Grave.STOPS)]
    assert not look(tmp_path).needs_passphrase
