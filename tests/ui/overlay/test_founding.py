"""Founding a household on one page, by keyboard."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.household import FILE, KEYRING
from hearthkey.core.secret import Secret
from hearthkey.ui.pages.founding_words import Spot
from tests.ui.overlay.evening import Evening
from tests.ui.overlay.household import PASSPHRASE


def test_by_keyboard_alone_from_the_first_field_to_the_household(evening: Evening, qtbot: QtBot) -> None:
    """Broken if it fails: without a mouse nobody can found a household."""
    page, form = evening.page, evening.page.form
    assert page.focusWidget() is form.name
    walked: list[QWidget] = []

    def tab_to(wanted: QWidget) -> None:
        for _ in range(20):
            focus = page.focusWidget()
            assert focus is not None
            if focus is wanted:
                return
            walked.append(focus)
            QTest.keyClick(focus, Qt.Key.Key_Tab)
        raise AssertionError(wanted.accessibleName())

    QTest.keyClicks(form.name, "Quince Cottage")
    tab_to(form.host)
    QTest.keyClicks(form.host, "home.quince.example")
    tab_to(form.home)
    QTest.keyClicks(form.home, "198.51.100.0/24, 2001:db8:51::/64")
    qtbot.waitUntil(page.voice.isVisible)
    assert not page.commit.isEnabled()
    tab_to(page.passphrase.again)
    QTest.keyClicks(page.passphrase.again, PASSPHRASE)
    assert page.commit.isEnabled()
    QTest.keyClick(page.passphrase.again, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert len(evening.founded()) == 1
    plan, secret, place = evening.founded()[0]
    assert plan.household.name == "Quince Cottage"
    assert [str(one) for one in plan.household.home_subnets] == ["198.51.100.0/24", "2001:db8:51::/64"]
    assert secret == Secret(PASSPHRASE)
    assert place == KEYRING
    assert form.tunnel in walked


def test_afterwards_the_board_comes_and_the_passphrase_is_gone(evening: Evening, qtbot: QtBot) -> None:
    """Broken if it fails: the page stays, with the passphrase on it."""
    evening.fill()
    evening.page.passphrase.show_button.click()
    evening.confirm()
    with qtbot.waitSignal(evening.ways.back):
        evening.page.found()
    part = evening.page.passphrase
    assert part.secret() is None
    assert part.again.text() == ""
    assert PASSPHRASE not in part.words.accessibleDescription()


def test_the_sentence_follows_what_is_typed(evening: Evening) -> None:
    """Broken if it fails: the householder founds something other than what the page says."""
    evening.fill()
    tunnel = evening.page.form.tunnel.text()
    assert evening.page.voice.text() == (
        "Quince Cottage will let its devices in at home.quince.example, into 198.51.100.0/24; what is not at home "
        f"keeps going its own way. Inside, devices get addresses from {tunnel}."
    )
    evening.page.form.through.take("full")
    evening.page.form.through.chosen.emit("full")
    evening.look()
    assert "everything they do on the internet goes through home" in evening.page.voice.text()


def test_another_quiet_subnet_is_drawn(evening: Evening) -> None:
    """Broken if it fails: a subnet that is in the way somewhere stays the only one that is proposed."""
    form = evening.page.form
    assert not form.quiet.isEnabled()
    evening.fill()
    first = form.tunnel.text()
    assert first.startswith("10.")
    form.quiet.click()
    assert form.tunnel.text() not in {"", first}


def test_a_proposal_makes_way_for_the_home(evening: Evening) -> None:
    """Broken if it fails: the page complains about a subnet that it has chosen itself."""
    evening.fill()
    proposed = evening.page.form.tunnel.text()
    evening.type(evening.page.form.home, proposed)
    evening.look()
    assert evening.page.form.tunnel.text() not in {"", proposed}
    assert evening.page.voice.isVisible()


TROUBLES = [
    ("name", "\u202eCottage", Spot.NAME, "Character 1 of the household name (U+202E) cannot be seen"),
    ("name", "..", Spot.NAME, "The household name has no letter or figure in it."),
    ("name", "x" * 65, Spot.NAME, "The household name has 65 characters"),
    ("host", "home_quince.example", Spot.HOST, '"home_quince.example" is not a name that DNS can look up'),
    ("host", "x" * 300, Spot.HOST, "The gateway host has 300 characters"),
    ("host", "0.0.0.0", Spot.HOST, "0.0.0.0 is nobody’s address."),  # noqa: S104 - an address that is refused
    ("home", "kitchen", Spot.HOME, 'The home subnet "kitchen" is not a subnet.'),
    ("home", "198.51.100.7/24", Spot.HOME, "The home subnet 198.51.100.7/24 is an address within a subnet."),
    ("home", "0.0.0.0/0", Spot.HOME, "The home subnet 0.0.0.0/0 is the whole internet."),
    ("home", "198.51.100.0/24, 198.51.100.0/25", Spot.HOME, "198.51.100.0/25 and 198.51.100.0/24 overlap"),
    ("tunnel", "198.51.100.128/25", Spot.TUNNEL, "198.51.100.0/24 and 198.51.100.128/25 overlap"),
    ("tunnel", "203.0.113.7/32", Spot.TUNNEL, "The tunnel subnet 203.0.113.7/32 has no room for devices."),
    ("tunnel", "203.0.113.1/24", Spot.TUNNEL, "The tunnel subnet 203.0.113.1/24 is an address within a subnet."),
    ("dns", "router", Spot.DNS, '"router" is not the address of a DNS server.'),
    ("suffix", "quince example", Spot.SUFFIX, '"quince example" is not a name that DNS can look up'),
    ("suffix", "q" * 60, Spot.SUFFIX, "The identity suffix has 60 characters"),
]


@pytest.mark.parametrize(("line", "text", "spot", "words"), TROUBLES, ids=[f"{t[0]}-{t[1][:18]}" for t in TROUBLES])
def test_each_trouble_stands_under_its_field(evening: Evening, line: str, text: str, spot: Spot, words: str) -> None:
    """Broken if it fails: what does not fit is said at another field, or nowhere, or only at the end."""
    evening.fill()
    evening.confirm()
    evening.type(getattr(evening.page.form, line), text)
    evening.look()
    assert evening.under(spot).startswith(words)
    assert [one for one in evening.page.form.spots if evening.under(one).startswith(words)] == [spot]
    assert "--" not in evening.under(spot)
    assert "hearthkey " not in evening.under(spot)
    assert not evening.page.commit.isEnabled()
    assert evening.page.form.spots[spot].control.accessibleDescription().startswith(words)
    if spot is Spot.SUFFIX:
        assert evening.page.form.suffix.isVisible()


def test_a_trouble_goes_when_it_is_mended(evening: Evening) -> None:
    """Broken if it fails: red stays under a field that is right."""
    evening.fill(home="198.51.100.7/24")
    assert evening.under(Spot.HOME)
    evening.type(evening.page.form.home, "198.51.100.0/24")
    evening.look()
    assert evening.under(Spot.HOME) == ""
    assert evening.page.voice.isVisible()


def test_nothing_is_red_before_somebody_has_typed(evening: Evening) -> None:
    """Broken if it fails: an empty page greets with complaints."""
    evening.look()
    assert [evening.under(spot) for spot in evening.page.form.spots if evening.under(spot).startswith("The ")] == []
    evening.type(evening.page.form.name, "Quince Cottage")
    evening.look()
    assert evening.under(Spot.HOST) == ""
    assert evening.page.note.text() == (
        "Still wanted: the name of the house, a subnet at home, the passphrase once more."
    )


def test_a_name_known_at_home_only_is_cautioned_in_place(evening: Evening) -> None:
    """Broken if it fails: bundles are made that work in the kitchen and nowhere else, and nobody said so."""
    evening.fill(host="house.local")
    assert evening.under(Spot.HOST).startswith("house.local is known inside the home only.")
    evening.type(evening.page.form.dns, "192.0.2.53")
    evening.look()
    assert evening.under(Spot.DNS).startswith("The DNS server 192.0.2.53 lies outside the home and tunnel subnets.")
    evening.confirm()
    assert evening.page.commit.isEnabled()


def test_a_key_file_carries_its_caution(evening: Evening) -> None:
    """Broken if it fails: somebody keeps passphrases in the clear and does not know."""
    form = evening.page.form
    evening.fill()
    segment = form.kept.findChildren(QWidget)[-1]
    QTest.mouseClick(segment, Qt.MouseButton.LeftButton)
    assert form.kept.value() == FILE
    assert "passphrases of waiting bundles are not" in evening.under(Spot.KEPT)
    evening.look()
    evening.confirm()
    evening.page.found()
    assert evening.founded()[0][2] == FILE


@pytest.mark.parametrize(
    ("error", "spot", "words"),
    [
        (Unavailable("keyring-locked"), Spot.KEPT, "The keyring is closed."),
        (Unavailable("keyring-absent"), Spot.KEPT, "There is no keyring here that the app can use."),
        (Unavailable("keyring-silent", seconds=5), Spot.KEPT, "The keyring has not answered for 5 seconds."),
        (Unavailable("keyring-unsafe", backend="null"), Spot.KEPT, "The keyring that is set up here (null)"),
        (Unavailable("keyring-failed", seen="no"), Spot.KEPT, "The keyring answered with a fault: no."),
        (Unavailable("disk-full", path="data"), None, "The disk is full (data)."),
        (Unavailable("folder-read-only", path="data"), None, "Nothing can be written to data."),
        (Refused("household-exists"), None, "A household lives in this data folder already."),
    ],
)
def test_what_founding_ends_in_is_said_in_its_place(
    evening: Evening, error: Unavailable, spot: Spot | None, words: str
) -> None:
    """Broken if it fails: founding fails, and the page looks as if nothing had happened."""
    evening.fill()
    evening.confirm()
    evening.errands.refuse["found"] = error
    evening.page.found()
    said = evening.page.note.text() if spot is None else evening.under(spot)
    assert said.startswith(words)
    assert "--" not in said
    assert evening.page.commit.isEnabled()
    del evening.errands.refuse["found"]
    evening.page.found()
    assert len(evening.founded()) == 2


def test_while_it_is_founded_the_page_says_what_is_done(evening: Evening) -> None:
    """Broken if it fails: a slow key stretch looks like a hang, or a second Enter founds twice."""
    evening.fill()
    evening.confirm()
    evening.errands.hold = True
    evening.page.found()
    evening.errands.step.emit("Making the CA key")
    assert evening.page.note.text() == "Making the CA key …"
    assert not evening.page.form.isEnabled()
    evening.page.found()
    assert len(evening.founded()) == 1
    evening.errands.answer()
    assert evening.page.form.isEnabled()


def test_what_is_missing_is_said_plainly(evening: Evening) -> None:
    """Broken if it fails: somebody believes that there is a copy."""
    evening.fill()
    evening.confirm()
    assert evening.page.note.text() == (
        "A sealed copy cannot be made yet; copy the data folder and keep the passphrase apart from it."
    )


def test_the_practice_household_is_one_click_away(evening: Evening) -> None:
    """Broken if it fails: who wants to look first has to found something."""
    QTest.mouseClick(evening.page.so_far.practice, Qt.MouseButton.LeftButton)
    assert evening.looked_around == 1


def test_the_sheet_is_drawn_as_it_is_typed(evening: Evening) -> None:
    """Broken if it fails: the drawing shows another house than the one that is founded, or says nothing aloud."""
    sheet = evening.page.so_far.sheet
    evening.fill()
    assert sheet.accessibleDescription() == (
        "CA: made now, kept in the keyring, 9 May 2036. revocation list: no. 1, made with it, 20 July 2028. "
        "gateway: home.quince.example, its certificate, 13 August 2028. "
        "from 20 July 2028 nobody gets in without a newer list"
    )
