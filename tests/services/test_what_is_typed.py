"""What a relative types on the device stands on the sheet, where the form that left does not bring it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from hearthkey.core.bundle import Form
from hearthkey.core.languages import Language
from tests.fakes.home import Home, at_home


@pytest.fixture
def home(tmp_path: Path) -> Iterator[Home]:
    """Quince Cottage with three waiting passes."""
    with at_home(tmp_path / "data") as opened:
        yield opened


@pytest.mark.parametrize("language", list(Language))
def test_server_and_identity_stand_under_the_device_s_own_labels(home: Home, language: Language) -> None:
    """If this failed, a step would say that something is filled in, and nobody would know what."""
    chosen = home.newest("Odile tablet")
    facts = home.house.sheeting.sheet(chosen, Form.PKCS12, language)
    kind = home.house.kinds.of(chosen.kind)
    assert {value for _label, value in facts.typed} >= {"home.quince.example", chosen.identity}
    assert {label for label, _value in facts.typed} <= {field.label(language) for field in kind.fields}


def test_a_profile_brings_its_settings_along(home: Home) -> None:
    """If this failed, somebody would type what the device knows already."""
    chosen = home.newest("Ines phone")
    assert home.house.sheeting.sheet(chosen, Form.PROFILE, Language.ENGLISH).typed == ()


def test_the_sheet_follows_the_form_that_left(home: Home, tmp_path: Path) -> None:
    """If this failed, the steps would be those of a file that nobody was given."""
    chosen = home.newest("Ines phone")
    suited = home.house.sheeting.sheet(chosen, None, Language.ENGLISH).steps
    home.house.exporting.export(chosen, Form.PKCS12, tmp_path)
    left = home.house.sheeting.sheet(chosen, None, Language.ENGLISH)
    assert left.steps == home.house.sheeting.sheet(chosen, Form.PKCS12, Language.ENGLISH).steps
    assert left.steps != suited
