"""Devices are found by what people call them, and never by guessing between two."""

from __future__ import annotations

import pytest

from hearthkey.core.errors import Refused
from hearthkey.services import looking
from hearthkey.services.enrolling import EnrolRequest
from tests.fakes.home import Home


@pytest.mark.parametrize(
    "text", ["Ines phone", "ines PHONE", "Ines’s phone", "Ines/phone", "ine pho", "phone", "ines", " Ines   phone "]
)
def test_a_device_is_found_by_any_part_that_it_alone_has(home: Home, text: str) -> None:
    """Broken if it fails: somebody in a hurry has to look up how a stolen phone is spelt."""
    assert home.newest(text).title == "Ines’s phone"


def test_a_device_is_found_by_identity_code_and_serial(home: Home) -> None:
    """Broken if it fails: what the gateway's log says cannot be looked up here."""
    pass_ = home.newest("Odile tablet")
    for text in (pass_.identity, pass_.identity.upper(), pass_.identity.split(".")[0], pass_.serial):
        assert looking.find(home.house.register.passes(), text) == [pass_]


def test_two_that_fit_are_named_and_none_is_taken(home: Home) -> None:
    """Broken if it fails: the wrong phone is stopped."""
    with pytest.raises(Refused) as refused:
        home.passes("o")
    assert refused.value.code == "device-ambiguous"
    assert refused.value.facts["choices"] == ("Ines’s phone", "Tomasz’s laptop", "Odile’s tablet")


def test_the_whole_name_wins_over_a_part(home: Home) -> None:
    """Broken if it fails: "Ines phone" can never be meant once there is an "Ines phone two"."""
    home.add(EnrolRequest("Ines", "phone two", "linux"))
    assert home.newest("Ines phone").device == "phone"
    assert home.newest("Ines phone two").device == "phone two"


@pytest.mark.parametrize("text", ["", "  ", "/", "Ines fridge", "q" * 5000])
def test_what_nobody_has_is_refused(home: Home, text: str) -> None:
    """Broken if it fails: an empty word means somebody."""
    with pytest.raises(Refused) as refused:
        home.passes(text)
    assert refused.value.code == "device-unknown"


def test_all_passes_of_a_device_are_found_together(home: Home) -> None:
    """Broken if it fails: a lost phone's older pass still gets in."""
    home.add(EnrolRequest("Ines", "phone", "linux", replace=True))
    assert len(home.passes("Ines phone")) == 2
