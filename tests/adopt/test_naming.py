"""Passes that were made elsewhere wait to be named, and a copy keeps them."""

from __future__ import annotations

from pathlib import Path

import pytest

from hearthkey.adapters.register import scratch_register
from hearthkey.core.errors import Refused
from hearthkey.services.looking import find
from tests.adopt.by_hand import family, quick_key
from tests.adopt.conftest import Taking

INES, TOMASZ, ODILE = "1001", "1002", "1003"


def test_passes_wait_to_be_named(taking: Taking, tmp_path: Path) -> None:
    """Broken if it fails: nobody ever says whose the passes are, or two people get one."""
    taking.take(family(tmp_path / "by-hand").folder)
    naming = taking.house.naming
    assert [(one.adopted.serial, one.device) for one in naming.waiting()] == [
        (INES, "ines-phone"),
        (ODILE, "odile-tablet"),
        (TOMASZ, "tomasz-laptop"),
    ]
    naming.name("10:01", "Ines", "phone")
    assert [one.adopted.serial for one in naming.waiting()] == [ODILE, TOMASZ]
    assert find(taking.house.register.passes(), "Ines phone")[0].serial == INES
    for serial, person, device, code in (
        (INES, "Ines", "phone", "pass-named-already"),
        ("4711", "Ines", "phone", "pass-not-adopted"),
        (ODILE, "ines", "Phone", "device-exists"),
        (ODILE, "", "tablet", "name-empty"),
    ):
        with pytest.raises(Refused) as caught:
            naming.name(serial, person, device)
        assert caught.value.code == code
    last = taking.house.register.last_entry()
    assert last is not None
    assert last.sentence == f"The pass {INES}, which was made elsewhere, is that of Ines’s phone."


def test_passes_of_one_device_are_named_together(taking: Taking, tmp_path: Path) -> None:
    """Broken if it fails: the old and the new pass of one phone belong to two people."""
    by_hand = family(tmp_path / "by-hand")
    by_hand.put_certificate(
        "new.crt", by_hand.issue("ines-phone", 0x2001, names=("a7k2.quince.example",), key=quick_key("new"))
    )
    taking.take(by_hand.folder)
    taking.house.naming.name("2001", "Ines", "phone")
    assert {one.serial for one in find(taking.house.register.passes(), "Ines phone")} == {INES, "2001"}
    assert {one.adopted.serial for one in taking.house.naming.waiting()} == {ODILE, TOMASZ}


def test_a_copy_of_it_brings_it_back_whole(taking: Taking, tmp_path: Path) -> None:
    """Broken if it fails: reasons or names that were taken over are lost with the laptop."""
    by_hand = family(tmp_path / "by-hand")
    (by_hand.folder / "index.txt").unlink()
    by_hand.put_list("crl.pem", by_hand.revocation_list(6, (0x1002, None)))
    taking.take(by_hand.folder)
    with scratch_register(taking.house.register.snapshot()) as (copy, _):
        assert copy.entries() == taking.house.register.entries()
        assert copy.entries()[0].listed == 0
        assert copy.to_be_named() == taking.house.register.to_be_named()
