"""What leaves by a ticket stands in the list of copies: perhaps while it is open, for sure once a phone has it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from hearthkey.core.bundle import Form
from hearthkey.core.copies import CopyWay, Standing
from tests.fakes.home import Home, at_home
from tests.tickets.test_picking_up import fetch, picking_up


@pytest.fixture
def home(tmp_path: Path) -> Iterator[Home]:
    """Quince Cottage with three waiting passes."""
    with at_home(tmp_path / "data") as opened:
        yield opened


def test_a_ticket_is_a_copy_once_a_phone_has_it(home: Home) -> None:
    """Broken if it fails: the list of copies does not know the phone, or which of two forms it took."""
    verb = picking_up(home)
    plan = verb.preview(home.newest("Odile tablet"), [Form.PKCS12, Form.BUNDLE], "127.0.0.1")
    with verb.open(plan) as opened:
        (before,) = home.house.tidying.all()
        assert (before.standing, before.copy.form) == (Standing.PERHAPS, "pkcs12+bundle")
        fetch(f"{opened.link.reveal()}/odile-tablet.bundle.toml")
        while opened.hear(5) is not None and opened.ending is None:
            pass
    (told,) = home.house.tidying.all()
    assert (told.standing, told.copy.way, told.copy.place) == (Standing.OUT, CopyWay.TICKET, "127.0.0.1")
    assert (told.copy.form, told.copy.names) == ("bundle", ("odile-tablet.bundle.toml",))


def test_a_ticket_that_nobody_used_is_no_copy(home: Home) -> None:
    """Broken if it fails: people look for a copy that never left."""
    verb = picking_up(home)
    with verb.open(verb.preview(home.newest("Odile tablet"), [Form.PKCS12], "127.0.0.1")):
        pass
    assert home.house.tidying.all() == ()
