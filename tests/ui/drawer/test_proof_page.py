"""The page that proves: one step at a time, the door, the clock, and what is chosen beside it."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel

from hearthkey.core.errors import Refused
from hearthkey.core.pack_options import PackOptions
from hearthkey.core.proof_doors import Ending, Happened
from hearthkey.core.proofs import Seen
from hearthkey.ui.drawer.proof_page import ProofPage
from hearthkey.ui.drawer.proof_steps import Stage
from hearthkey.ui.gallery.proof_states import CABLE, LINK, WIFI
from hearthkey.ui.theme.theme import Theme
from tests.ui.drawer.conftest import Room
from tests.ui.drawer.proof_errands import ProvingErrands


@pytest.fixture
def page(theme: Theme, errands: ProvingErrands, room: Room) -> ProofPage:
    """The page for Ines's phone, open in the drawer at its first step."""
    assert errands.last is not None
    made = ProofPage(theme, errands)
    made.show_pass(errands.last.passes[0])
    room.open(made)
    return made


def spoken(page: ProofPage) -> str:
    """Everything that can be read."""
    return " ".join(one.text() for one in page.findChildren(QLabel) if one.isVisibleTo(page))


def test_each_step_says_what_to_say_and_what_is_seen_then(page: ProofPage, errands: ProvingErrands) -> None:
    """Broken: the householder has to translate the app into words that a grandmother understands."""
    heads = []
    for _ in Stage:
        assert "What to say" in spoken(page)
        assert page.say.text().startswith("“")
        heads.append(page.head.text())
        page.next_button.click()
    assert heads == ["Switch Wi-Fi off", "Connect", "Open the link", "Have it read aloud"]
    assert [one[0] for one in errands.asked] == ["open_proof"]
    for _ in Stage:
        page.back_button.click()
    assert page.stage() is Stage.WIFI


def test_a_computer_borrows_a_phones_network(page: ProofPage, errands: ProvingErrands) -> None:
    """Broken: somebody with a laptop is told to draw down from the upper edge."""
    assert errands.last is not None
    page.show_pass(next(one for one in errands.last.passes if one.device == "work laptop"))
    assert "mobile data" in page.say.text()


def test_the_code_leads_where_the_link_does(page: ProofPage) -> None:
    """Broken: the camera opens another page, or the copied link is another one than is shown."""
    page.go(Stage.LINK)
    assert page.card.picture.pixels_a_module() >= 3
    page.card.copy_button.click()
    assert QGuiApplication.clipboard().text() == page.card.link.text() == LINK
    assert page.card.copy_button.text() == "Copied"


def test_the_clock_runs_and_can_be_given_more(page: ProofPage, errands: ProvingErrands) -> None:
    """Broken: the link is gone while somebody still looks for the switch."""
    page.go(Stage.LINK)
    assert page.card.clock.text() == "10:00 left"
    errands.seconds = 59
    page.look()
    assert page.card.clock.text() == "0:59 left"
    page.card.longer_button.click()
    assert page.card.clock.text() == "10:59 left"
    errands.troubles["extend_proof"] = Refused("proof-long-enough", minutes=60)
    page.card.longer_button.click()
    assert "60 minutes at most" in page.result.text()
    assert page.card.isVisible()


def test_from_home_nothing_is_proved_yet(page: ProofPage, errands: ProvingErrands) -> None:
    """Broken: a test in the Wi-Fi at home looks like a proof."""
    page.go(Stage.LINK)
    errands.happen(Happened.AT_HOME, "198.51.100.45")
    page.look()
    assert page.result.text().startswith("At home: nothing proved yet.")
    assert page.card.isVisible()
    assert not page.done_button.isVisible()


def test_a_proof_ends_the_steps(page: ProofPage, errands: ProvingErrands) -> None:
    """Broken: it works, and the page goes on asking."""
    page.go(Stage.READ)
    errands.happen(Happened.CLOSED, "203.0.113.10", Ending.PROVED, Seen.TUNNEL)
    page.look()
    assert page.result.text() == "Ines’s phone is in: the link was opened through the tunnel, from 203.0.113.10."
    assert page.done_button.hasFocus()
    assert not page.card.isVisible()
    assert "What to say" not in spoken(page)


def test_a_proof_outranks_what_was_about_to_be_told(page: ProofPage, errands: ProvingErrands) -> None:
    """Broken: it was seen, and the page still asks whether to write down that somebody said so."""
    page.go(Stage.LINK)
    page.told.begin.click()
    assert page.told.commit.isVisible()
    assert not page.next_button.isVisible()
    page.told.not_yet.click()
    assert page.next_button.isVisible()
    assert page.told.begin.hasFocus()
    page.told.begin.click()
    errands.happen(Happened.CLOSED, "203.0.113.10", Ending.PROVED, Seen.TUNNEL)
    page.look()
    assert not page.told.commit.isVisible()
    assert page.done_button.hasFocus()


def test_a_closed_link_can_be_opened_anew(page: ProofPage, errands: ProvingErrands) -> None:
    """Broken: after ten minutes the page is a dead end."""
    page.go(Stage.LINK)
    errands.happen(Happened.CLOSED, "", Ending.EXPIRED)
    page.look()
    assert page.result.text().startswith("The time is over")
    assert not page.card.isVisible()
    page.again_button.click()
    assert page.card.isVisible()
    assert page.result.text() == ""


def test_a_refusal_is_said_and_can_be_tried_again(page: ProofPage, errands: ProvingErrands) -> None:
    """Broken: away from home the page stays silent."""
    errands.troubles["open_proof"] = Refused("ticket-address-none", known=("Cable 192.0.2.5",))
    page.go(Stage.LINK)
    assert "Cable 192.0.2.5" in page.result.text()
    errands.troubles.clear()
    page.again_button.click()
    assert page.card.isVisible()


def test_closing_the_page_shuts_the_door(page: ProofPage, errands: ProvingErrands, room: Room) -> None:
    """Broken: a server listens on while nobody looks."""
    page.go(Stage.LINK)
    assert errands.is_open
    room.drawer.shut()
    assert [errands.is_open] == [False]


def test_several_addresses_are_a_choice(page: ProofPage, errands: ProvingErrands) -> None:
    """Broken: a laptop with cable and Wi-Fi shows the one that the tunnel does not lead to, and no way out."""
    page.go(Stage.LINK)
    assert not page.place.address.isVisible()
    errands.addresses = (WIFI, CABLE)
    page.open_door()
    assert page.place.address.isVisible()
    page.place.address.take(str(CABLE.address))
    page.place.address.activated.emit(1)
    assert errands.asked[-1] == ("open_proof", str(CABLE.address), None)
    assert page.place.counts.text().startswith("At Cable 198.51.100.24.")


def test_a_gateway_that_hides_devices_can_be_named(page: ProofPage, errands: ProvingErrands) -> None:
    """Broken: behind such a gateway nothing can ever be proved, and nobody says why."""
    page.go(Stage.LINK)
    assert not page.place.inside.isVisible()
    assert errands.last is not None
    errands.show(replace(errands.last, pack_options=PackOptions(masquerade=True)))
    page.open_door()
    assert "Name that address, and it counts" in page.place.counts.text()
    QTest.keyClicks(page.place.inside, "198.51.100.1\r")
    assert errands.asked[-1] == ("open_proof", str(WIFI.address), "198.51.100.1")
    assert "the gateway’s own address 198.51.100.1" in page.place.counts.text()
