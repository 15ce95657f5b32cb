"""Profiles, scripts and PEM files of a real household: signed, read back, and opened by OpenSSL."""

from __future__ import annotations

import subprocess
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from hearthkey.core.bundle import Form
from hearthkey.core.connect_choices import BY_CA, BY_GATEWAY, ConnectChoices
from hearthkey.core.errors import Refused
from hearthkey.core.rehearsal import RehearsalFailed
from hearthkey.formats import pem, profile
from hearthkey.pki import pkcs12, signed_message
from hearthkey.services import choosing_connect
from hearthkey.services.bundling import Written
from tests.fakes.home import Home, at_home
from tests.judges import needs


@pytest.fixture
def home(tmp_path: Path) -> Iterator[Home]:
    """Quince Cottage."""
    with at_home(tmp_path / "data") as found:
        yield found


def written(home: Home, form: Form, device: str = "Odile tablet") -> list[Written]:
    """A form of a waiting bundle."""
    return home.house.bundling.write(home.house.bundling.open(home.newest(device)), form)


def rehearse(home: Home, form: Form, files: list[Written], device: str = "Odile tablet") -> None:
    """Try it as its device will."""
    one = home.newest(device)
    words = home.house.bundling.passphrase(one)
    home.house.rehearsing.rehearse(form, files, words, identity=one.identity)


@pytest.mark.parametrize("signer", [BY_GATEWAY, BY_CA])
def test_a_signed_profile_is_taken_by_openssl_and_by_the_rehearsal(home: Home, tmp_path: Path, signer: str) -> None:
    """Broken if it fails: the phone calls the profile unsigned, or takes one that somebody changed (RFC 5652)."""
    choosing_connect.keep(home.house.register, home.house.clock, ConnectChoices(signer=signer))
    (file,) = written(home, Form.PROFILE)
    authority = home.house.register.authority()
    assert authority is not None
    (tmp_path / "ca.pem").write_text(pem.encode(pem.CERTIFICATE, authority.certificate), encoding="ascii")
    (tmp_path / "signed").write_bytes(file.data)
    words = [needs("openssl"), "cms", "-verify", "-inform", "DER", "-in", "signed", "-CAfile", "ca.pem"]
    ran = subprocess.run([*words, "-purpose", "any", "-out", "plain"], cwd=tmp_path, capture_output=True, check=False)
    assert ran.returncode == 0, ran.stderr.decode()
    plain = (tmp_path / "plain").read_bytes()
    assert profile.read(plain).identity == home.newest("Odile tablet").identity
    rehearse(home, Form.PROFILE, [file])
    for place in (len(file.data) // 3, len(file.data) - 5):
        torn = file.data[:place] + bytes([file.data[place] ^ 1]) + file.data[place + 1 :]
        with pytest.raises(RehearsalFailed):
            rehearse(home, Form.PROFILE, [replace(file, data=torn)])


def test_somebody_elses_signature_is_not_the_households(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: a profile of another house passes for ours."""
    with at_home(tmp_path / "other") as other:
        household = other.house.register.authority()
        assert household is not None
        (file,) = written(home, Form.PROFILE)
        forged = signed_message.sign(file.data, household.certificate, other.key)
        ours = home.house.register.authority()
        assert ours is not None
        if ours.certificate != household.certificate:
            with pytest.raises(Refused, match="signature-wrong"):
                signed_message.open_signed(forged, (ours.certificate,))
        with pytest.raises(Refused, match="signature-wrong"):
            signed_message.open_signed(forged, ())


def test_the_ca_signs_only_while_unlocked(home: Home) -> None:
    """Broken if it fails: a locked household signs."""
    choosing_connect.keep(home.house.register, home.house.clock, ConnectChoices(signer=BY_CA))
    home.house.keyholder.lock()
    with pytest.raises(Refused, match="household-locked"):
        written(home, Form.PROFILE)


@pytest.mark.parametrize("form", [Form.PROFILE, Form.SCRIPT, Form.PEM])
def test_the_passphrase_is_in_none_of_them(home: Home, form: Form) -> None:
    """Broken if it fails: the file is all that a thief needs."""
    one = home.newest("Odile tablet")
    words = home.house.bundling.passphrase(one).reveal()
    for file in written(home, form):
        assert words.encode() not in file.data
        assert all(part.encode() not in file.data.lower() for part in (words[:14], words[-14:]))


def test_the_profile_has_the_container_that_the_device_opens(home: Home) -> None:
    """Broken if it fails: the phone says "wrong password" and means "wrong algorithm"."""
    one = home.newest("Odile tablet")
    (file,) = written(home, Form.PROFILE)
    found = profile.read(file.data)
    opened = pkcs12.open_container(found.container, home.house.bundling.passphrase(one))
    assert opened.certificate == home.house.register.certificate(one.serial)
    assert found.authorities == opened.authorities


def test_openssl_opens_the_pem_set(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: the form for everything else is for nothing."""
    for file in written(home, Form.PEM):
        (tmp_path / file.name).write_bytes(file.data)
    (tmp_path / "words").write_text(home.house.bundling.passphrase(home.newest("Odile tablet")).reveal())
    key, certificate, authority = (next(tmp_path.glob(f"*{end}")) for end in (".key.pem", ".cert.pem", ".ca.pem"))
    openssl = needs("openssl")
    commands: tuple[list[str | Path], ...] = (
        [openssl, "pkey", "-in", key, "-passin", f"file:{tmp_path / 'words'}", "-pubout"],
        [openssl, "x509", "-in", certificate, "-noout", "-pubkey"],
    )
    public = [subprocess.run(words, capture_output=True, check=True).stdout for words in commands]
    assert public[0] == public[1]
    checked = subprocess.run([openssl, "verify", "-CAfile", authority, certificate], capture_output=True, check=False)
    assert checked.returncode == 0, checked.stderr.decode()


def test_a_profile_that_contradicts_its_certificate_does_not_leave(home: Home) -> None:
    """Broken if it fails: the phone would connect under a name that the gateway refuses."""
    one = home.newest("Odile tablet")
    (file,) = written(home, Form.PROFILE)
    torn = file.data.replace(one.identity.encode(), b"zz" + one.identity.encode()[2:])
    with pytest.raises(RehearsalFailed):
        rehearse(home, Form.PROFILE, [replace(file, data=torn)])


@pytest.mark.parametrize("change", [b"$Print     = '", b"$CaPrint   = '", b"FromBase64String('MII"])
def test_a_script_that_says_something_else_than_its_container_does_not_leave(home: Home, change: bytes) -> None:
    """Broken if it fails: a laptop would trust another CA, or never find the certificate that it was given."""
    files = written(home, Form.SCRIPT)
    rehearse(home, Form.SCRIPT, files)
    script = next(one for one in files if one.name.endswith(".ps1"))
    place = script.data.find(change) + len(change)
    assert place >= len(change)
    other = b"A" if script.data[place : place + 1] != b"A" else b"B"
    torn = replace(script, data=script.data[:place] + other + script.data[place + 1 :])
    with pytest.raises(RehearsalFailed):
        rehearse(home, Form.SCRIPT, [torn if one is script else one for one in files])
