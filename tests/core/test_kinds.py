"""Device kinds as values: languages, order, forms, and a device whose kind is gone."""

from __future__ import annotations

from dataclasses import replace

import pytest

from hearthkey.core.errors import Bug, Refused
from hearthkey.core.families import Family
from hearthkey.core.kinds import Kinds
from tests.fakes.kinds import KINDS


def test_a_language_that_the_app_does_not_speak_is_english() -> None:
    """Broken if it fails: a French phone gets an empty page."""
    kind = KINDS.find("iphone")
    assert kind.words("fr") == kind.words("en") == "iPhone or iPad"
    assert kind.steps("profile", "fr") == kind.steps("profile")
    assert kind.words("de") == "iPhone oder iPad"


def test_a_device_whose_kind_is_gone_is_treated_like_something_else() -> None:
    """Broken if it fails: a device cannot be looked at any more because a file was taken away."""
    assert "teapot" not in KINDS
    assert KINDS.of("teapot").name == "other"
    assert KINDS.of("mac").name == "mac"
    with pytest.raises(Refused) as refused:
        KINDS.find("teapot")
    assert refused.value.code == "kind-unknown"
    assert refused.value.facts["known"] == KINDS.names


def test_without_any_kind_it_is_our_fault() -> None:
    """Broken if it fails: an installation without its files blames the householder."""
    with pytest.raises(Bug):
        Kinds(()).of("mac")


def test_the_best_form_is_the_first_that_there_is() -> None:
    """Broken if it fails: a phone is offered what it can take least well, or what nobody writes."""
    kind = KINDS.find("iphone")
    assert kind.best_form(("bundle", "pkcs12")) == "pkcs12"
    assert kind.best_form(("bundle", "pkcs12", "profile")) == "profile"
    assert kind.best_form(("codes",)) is None
    assert kind.steps("codes") == ()


def test_a_family_stands_for_its_first_kind() -> None:
    """Broken if it fails: of a phone whose family alone is known, the oldest ways are told."""
    assert [KINDS.of_family(one).name for one in Family] == ["iphone", "android", "windows", "mac", "linux", "other"]
    assert Kinds((replace(KINDS.find("other"), family=Family.MAC),)).of_family(Family.IOS).name == "other"
