"""What delivers by itself: at once, then again and again, its timer driven by hand."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QObject
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import Cancelled, Refused, Unavailable
from hearthkey.ui.courier import LOOK_EVERY, PAUSES, Courier
from hearthkey.ui.gallery.gateway_states import UNREACHABLE, delivered
from tests.ui.drawer.gateway_errands import GatewayFake, seen


@pytest.fixture
def errands(qapp: object) -> GatewayFake:
    """A gateway that holds an older list than the newest."""
    assert qapp is not None
    return GatewayFake("in-force")


@pytest.fixture
def courier(errands: GatewayFake) -> Courier:
    """The courier, who has seen nothing yet."""
    made = Courier(errands, errands)
    assert isinstance(made, QObject)
    return made


def asked(errands: GatewayFake) -> list[object]:
    """What it asked for."""
    return [one[0] for one in errands.asked]


def test_a_stop_sets_out_at_once(errands: GatewayFake, courier: Courier, qtbot: QtBot) -> None:
    """Broken: a stolen phone gets in until somebody thinks of delivering."""
    errands.show(seen("not-in-force"))
    assert courier.pause == 0
    qtbot.waitUntil(lambda: asked(errands) == ["deliver-list"])
    assert courier.pause is None


def test_it_keeps_trying_with_longer_pauses(errands: GatewayFake, courier: Courier) -> None:
    """Broken: one failure, and the phone gets in until the app is started anew; or the gateway is hammered."""
    errands.show(seen("not-in-force"))
    pauses = []
    for _ in range(len(PAUSES) + 1):
        courier.due()
        errands.end(UNREACHABLE, seen("unknown-not-in-force"))
        pauses.append(courier.pause)
    assert pauses == [*PAUSES, PAUSES[-1]]
    assert asked(errands) == ["deliver-list"] * (len(PAUSES) + 1)


def test_a_failure_is_told_once(errands: GatewayFake, courier: Courier) -> None:
    """Broken: the footer and the screen reader say the same every five minutes."""
    told: list[str] = []
    courier.failed.connect(lambda error: told.append(error.code))
    errands.show(seen("not-in-force"))
    for error in (UNREACHABLE, UNREACHABLE, Unavailable("gateway-silent", where="x", seen="")):
        courier.due()
        errands.end(error, seen("unknown-not-in-force"))
    assert told == ["gateway-unreachable", "gateway-silent"]


def test_a_second_stop_does_not_wait_for_the_pause(errands: GatewayFake, courier: Courier) -> None:
    """Broken: the second phone waits five minutes for what the first one could not have."""
    errands.show(seen("not-in-force"))
    for _ in range(4):
        courier.due()
        errands.end(UNREACHABLE, seen("unknown-not-in-force"))
    now = seen("unknown-not-in-force")
    errands.show(replace(now, gateway_state=replace(now.gateway_state, newest_number=43)))
    assert courier.pause == 0


def test_after_success_a_failure_counts_from_the_beginning(errands: GatewayFake, courier: Courier) -> None:
    """Broken: after an evening without the gateway the next stop waits an hour."""
    errands.show(seen("in-force"))
    assert courier.pause == LOOK_EVERY
    courier.due()
    assert asked(errands) == ["look"]
    errands.end(UNREACHABLE, seen("unknown"))
    assert courier.pause == PAUSES[0]
    courier.due()
    errands.end(delivered(seen("in-force")).plan, seen("in-force"))
    assert courier.pause == LOOK_EVERY
    errands.show(seen("not-in-force"))
    assert courier.pause == 0


def test_a_list_that_came_up_during_a_visit_follows_it(errands: GatewayFake, courier: Courier) -> None:
    """Broken: the second device stopped within ten seconds is delivered an hour later."""
    errands.show(seen("not-in-force"))
    courier.due()
    errands.end(UNREACHABLE, seen("unknown-not-in-force"))
    courier.due()
    later = seen("not-in-force")
    errands.end(delivered(later), later)
    assert courier.pause == 0


def test_a_cancelled_visit_is_not_made_again_at_once(errands: GatewayFake, courier: Courier) -> None:
    """Broken: Cancel does nothing, for the next try begins in the same moment."""
    errands.show(seen("not-in-force"))
    courier.due()
    errands.end(Cancelled("cancelled"), seen("unknown-not-in-force"))
    assert courier.pause == PAUSES[-1]


def test_what_only_a_person_can_mend_is_not_hammered(errands: GatewayFake, courier: Courier) -> None:
    """Broken: a changed host key is knocked at every few seconds."""
    errands.show(seen("not-in-force"))
    courier.due()
    errands.end(Refused("host-key-changed", where="x", seen="y"), seen("unknown-not-in-force"))
    assert courier.pause == LOOK_EVERY


def test_an_open_key_is_worth_another_try(errands: GatewayFake, courier: Courier) -> None:
    """Broken: after "unlock, then it is signed above it" nothing happens for an hour."""
    errands.show(seen("not-in-force"))
    courier.due()
    errands.end(Refused("gateway-list-newer", number=45), seen("not-in-force"))
    errands.show(seen("not-in-force", locked=False))
    assert courier.pause == 0


@pytest.mark.parametrize("state", ["settings-wait", "never"])
def test_settings_wait_for_a_word(state: str, errands: GatewayFake, courier: Courier) -> None:
    """Broken: a half-thought change of settings is at the gateway before the drawer is shut."""
    errands.show(seen(state))
    assert courier.pause == LOOK_EVERY


@pytest.mark.parametrize("state", ["practice", "no-target"])
def test_where_nothing_can_be_delivered_nothing_is_tried(state: str, errands: GatewayFake, courier: Courier) -> None:
    """Broken: the practice household knocks at a real gateway."""
    errands.show(seen("not-in-force"))
    errands.show(seen(state))
    assert courier.pause is None
    courier.due()
    assert errands.asked == []


def test_the_second_copy_leaves_it_to_the_first(errands: GatewayFake, courier: Courier) -> None:
    """Broken: two copies of the app deliver against each other."""
    errands.show(replace(seen("not-in-force"), read_only=True))
    assert courier.pause is None


def test_a_visit_that_the_page_asked_for_counts(errands: GatewayFake, courier: Courier) -> None:
    """Broken: the page's failed visit is followed by the courier's own in the same moment."""
    errands.show(seen("in-force"))
    errands.begin("deliver")
    errands.end(UNREACHABLE, seen("unknown-not-in-force"))
    assert courier.pause == PAUSES[0]
