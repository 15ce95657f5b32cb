"""The top line's button: whatever ends first, one button leads to what keeps it from ending."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta

import pytest
from PySide6.QtTest import QSignalSpy
from pytestqt.qtbot import QtBot

from hearthkey.core.passes import Pass
from hearthkey.services.snapshot import Snapshot
from hearthkey.ui.controls.buttons import Button, Kind
from hearthkey.ui.gallery.gateway_states import STATES
from hearthkey.ui.headline import Headline
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.practice import AUTHORITY, GATEWAY, HOUSEHOLD, LIST_42, NOW, PASSES, snapshot

LATER = NOW + timedelta(days=400)
TABLET = next(one for one in PASSES if one.device == "tablet")
PHONE = next(one for one in PASSES if (one.person, one.device) == ("Ines", "phone"))
LAPTOP = next(one for one in PASSES if (one.person, one.device) == ("Tomasz", "laptop"))
GUEST = next(one for one in PASSES if one.guest)


def _only(*passes: Pass) -> Snapshot:
    return snapshot(passes=passes)


CASES: dict[str, tuple[Callable[[], Snapshot], str, str, Kind]] = {
    "a due pass": (lambda: _only(TABLET), "Renew Ines’s tablet", "renew", Kind.WANTS),
    "a pass with time yet": (lambda: _only(PHONE), "Renew Ines’s phone", "renew", Kind.PLAIN),
    "a pass that another one follows": (
        lambda: _only(PHONE, replace(LAPTOP, person="Ines", device="phone", identity=PHONE.identity)),
        "Hand over Ines’s phone",
        "hand_over",
        Kind.PLAIN,
    ),
    "a guest": (lambda: _only(GUEST), "Look at Boiler engineer’s phone", "device", Kind.PLAIN),
    "the list": (_only, "Sign the next list", "sign_list", Kind.PLAIN),
    "the certificate": (
        lambda: replace(_only(), newest_list=replace(LIST_42, next_update=GATEWAY.not_after + timedelta(days=9))),
        "Renew the gateway’s certificate",
        "renew_gateway",
        Kind.PLAIN,
    ),
    "the certificate, over": (
        lambda: replace(_only(PHONE), gateway=replace(GATEWAY, not_after=NOW - timedelta(days=1))),
        "Renew the gateway’s certificate",
        "renew_gateway",
        Kind.WANTS,
    ),
    "the CA with its gateway": (
        lambda: replace(
            _only(),
            newest_list=replace(LIST_42, next_update=LATER + timedelta(days=9)),
            gateway=replace(GATEWAY, not_after=LATER),
            authority=replace(AUTHORITY, not_after=LATER),
        ),
        "The next CA",
        "succession",
        Kind.PLAIN,
    ),
}


def _head(qtbot: QtBot, theme: Theme, seen: Snapshot) -> tuple[Headline, Button, Ways]:
    ways = Ways()
    head = Headline(theme, ways)
    qtbot.addWidget(head)
    head.show_snapshot(seen)
    button = next(one for one in head.findChildren(Button) if one is not head.more)
    return head, button, ways


@pytest.mark.parametrize("case", CASES)
def test_whatever_ends_first_has_its_button(qtbot: QtBot, theme: Theme, case: str) -> None:
    """Broken: the top line names what will stop working, and offers nothing, or something else, to be done about it."""
    make, text, way, kind = CASES[case]
    head, button, ways = _head(qtbot, theme, make())
    spy = QSignalSpy(getattr(ways, way))
    assert button.isVisibleTo(head)
    assert (button.text(), button.kind) == (text, kind)
    button.click()
    assert spy.count() == 1


def test_a_list_that_is_signed_already_wants_to_be_delivered(qtbot: QtBot, theme: Theme) -> None:
    """Broken: a list is signed over and over, while the gateway keeps the old one."""
    seen, household = STATES["list-waits"](_only()), replace(HOUSEHOLD, practice=False)
    longer = replace(LIST_42, next_update=LIST_42.next_update + timedelta(days=90))
    _, button, ways = _head(qtbot, theme, replace(seen, household=household, newest_list=longer))
    spy = QSignalSpy(ways.deliver)
    button.click()
    assert (button.text(), spy.count()) == ("Deliver now", 1)


def test_where_nothing_can_be_changed_nothing_is_offered(qtbot: QtBot, theme: Theme) -> None:
    """Broken: a household that is only looked at offers what it would refuse."""
    head, button, _ = _head(qtbot, theme, snapshot(read_only=True))
    assert not button.isVisibleTo(head)
