"""What a device's page does: next steps, stopping, letting in, revoking, the certificate."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import Refused
from hearthkey.core.proofs import Proof, Way
from hearthkey.core.revocation import Reason
from hearthkey.ui.controls.buttons import Kind
from hearthkey.ui.drawer.device_page import DevicePage
from hearthkey.ui.drawer.device_words import Step
from hearthkey.ui.theme.signs import Sign
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer.conftest import Room
from tests.ui.drawer.household import PASSPHRASE, FakeErrands
from tests.ui.drawer.pages import identity_of, lock
from tests.ui.practice import NOW


@pytest.fixture
def page(theme: Theme, errands: FakeErrands, ways: Ways, room: Room) -> DevicePage:
    """The page of Ines's phone, open in the drawer."""
    made = DevicePage(theme, errands, ways)
    made.show_device(identity_of(errands, "Ines", "phone"))
    room.open(made)
    return made


def be(page: DevicePage, errands: FakeErrands, person: str, device: str) -> None:
    """Turn to another device."""
    page.show_device(identity_of(errands, person, device))


def names(errands: FakeErrands) -> list[object]:
    """What was asked, without its words."""
    return [one[0] for one in errands.asked]


BUTTONS = {
    ("Ines", "phone"): ["Prove it!", "Renew…", "Stop now", "Revoke for good…"],
    ("Ines", "tablet"): ["Renew…!", "Stop now", "Revoke for good…"],
    ("Ines", "old phone"): ["A new pass!"],
    ("Tomasz", "laptop"): ["Hand over!", "Stop now", "Revoke for good…"],
    ("Tomasz", "old phone"): ["Let back in!", "A new pass", "Revoke for good…"],
    ("Odile", "reader"): ["A new pass!"],
    ("Boiler engineer", "phone"): ["Prove it!", "Renew…", "Stop now", "Revoke for good…"],
}


@pytest.mark.parametrize("whose", BUTTONS)
def test_each_state_has_its_buttons(whose: tuple[str, str], page: DevicePage, errands: FakeErrands) -> None:
    """Broken: the next step is missing or hidden among others. The mark ! is for the one that commits."""
    be(page, errands, *whose)
    shown = [
        button.text() + ("!" if button.kind is Kind.COMMIT else "")
        for button in (*page.steps.values(), page.stop_button, page.revoke_button)
        if button.isVisible()
    ]
    assert shown == BUTTONS[whose]


def test_hand_over_leads_to_its_page(page: DevicePage, errands: FakeErrands, ways: Ways, qtbot: QtBot) -> None:
    """Broken: a waiting pass cannot be handed over from its page."""
    be(page, errands, "Tomasz", "laptop")
    with qtbot.waitSignal(ways.hand_over) as asked:
        page.first().click()  # type: ignore[attr-defined]  # the first control is a button
    assert errands.last is not None
    assert asked.args == [next(one.serial for one in errands.last.passes if one.device == "laptop")]


@pytest.mark.parametrize(("whose", "way"), [(("Odile", "reader"), "replace_device"), (("Ines", "tablet"), "renew")])
def test_a_new_pass_leads_to_its_page(
    whose: tuple[str, str], way: str, page: DevicePage, errands: FakeErrands, ways: Ways, qtbot: QtBot
) -> None:
    """Broken: a device that ended or was revoked has no way back, or one that ends soon none on."""
    be(page, errands, *whose)
    with qtbot.waitSignal(getattr(ways, way)) as asked:
        page.first().click()  # type: ignore[attr-defined]  # the first control is a button
    assert asked.args == [identity_of(errands, *whose)]


def test_what_was_never_proved_wants_to_be(page: DevicePage, errands: FakeErrands, ways: Ways, qtbot: QtBot) -> None:
    """Broken: a device that nobody has seen get in looks as good as one that was."""
    with qtbot.waitSignal(ways.prove) as asked:
        page.first().click()  # type: ignore[attr-defined]  # the first control is a button
    assert errands.last is not None
    phone = errands.last.passes[0]
    assert asked.args == [phone.serial]
    proofs = (Proof(NOW - timedelta(days=10), Way.TUNNEL, "203.0.113.10"), Proof(NOW, Way.TOLD))
    errands.show(replace(errands.last, passes=(replace(phone, proofs=proofs), *errands.last.passes[1:])))
    assert page.sign.sign is Sign.IN_USE
    assert page.sentence.text().startswith("In use, said to work on 12 May 2026.")
    assert page.steps[Step.PROVE].kind is Kind.PLAIN
    with qtbot.waitSignal(ways.renew):
        page.steps[Step.RENEW].click()


def test_stopping_is_one_click(page: DevicePage, errands: FakeErrands) -> None:
    """Broken: a lost phone gets in while somebody reads a question."""
    page.stop_button.click()
    assert names(errands) == ["preview_stop", "stop"]
    assert page.sign.sign is Sign.STOPPED
    assert page.sentence.text().startswith("Stopped on 12 May 2026.")
    assert "list 43" in page.note.text()
    assert page.deed.isHidden()
    assert page.steps[next(iter(page.steps))].isHidden()


def test_stopping_while_locked_asks_and_goes_on_by_itself(page: DevicePage, errands: FakeErrands) -> None:
    """Broken: the passphrase is asked for in another place, or the stop has to be asked for twice."""
    lock(errands)
    assert "passphrase" in page.beside.text()
    page.stop_button.click()
    assert names(errands) == ["preview_stop"]
    assert page.deed.voice.text().startswith("Ines’s phone stops getting in")
    assert page.deed.unlock.line.hasFocus()
    QTest.keyClicks(page.deed.unlock.line, PASSPHRASE)
    QTest.keyClick(page.deed.unlock.line, Qt.Key.Key_Return)
    assert names(errands) == ["preview_stop", "unlock", "stop"]
    assert page.sign.sign is Sign.STOPPED


def test_stopping_while_locked_needs_no_passphrase_where_a_list_lies_ready(
    page: DevicePage, errands: FakeErrands
) -> None:
    """Broken: the page asks for words that "lost or stolen" does without."""
    assert errands.last is not None
    errands.show(replace(errands.last, locked=True, stoppable_locked=True))
    assert "passphrase" not in page.beside.text()
    page.stop_button.click()
    assert names(errands) == ["preview_spare", "stop_by_spare"]
    assert page.sign.sign is Sign.STOPPED


def test_a_list_that_stops_others_too_is_not_taken_here(page: DevicePage, errands: FakeErrands) -> None:
    """Broken: stopping one device on its own page takes somebody else's access."""
    assert errands.last is not None
    errands.besides = frozenset(one.identity for one in errands.last.passes[-1:])
    errands.show(replace(errands.last, locked=True, stoppable_locked=True))
    page.stop_button.click()
    assert names(errands) == ["preview_spare", "preview_stop"]
    assert page.deed.unlock.line.hasFocus()


def test_a_question_takes_the_place_of_the_steps(page: DevicePage, errands: FakeErrands) -> None:
    """Broken: two buttons that say the same stand under each other."""
    lock(errands)
    page.stop_button.click()
    assert page.deed.isVisible()
    assert not any(button.isVisible() for button in page.steps.values())


def test_a_wrong_passphrase_is_said_in_place(page: DevicePage, errands: FakeErrands) -> None:
    """Broken: nothing happens, and nobody knows why."""
    lock(errands)
    page.stop_button.click()
    QTest.keyClicks(page.deed.unlock.line, "plum kettle")
    QTest.keyClick(page.deed.unlock.line, Qt.Key.Key_Return)
    assert page.deed.unlock.below().startswith("The passphrase does not open it.")
    assert page.deed.unlock.line.hasSelectedText()
    assert names(errands) == ["preview_stop", "unlock"]


def test_letting_back_in_says_first_what_follows(page: DevicePage, errands: FakeErrands) -> None:
    """Broken: a phone that was out of sight for weeks comes back by one click."""
    be(page, errands, "Tomasz", "old phone")
    page.first().click()  # type: ignore[attr-defined]  # the first control is a button
    assert page.deed.voice.text() == "Tomasz’s old phone gets in again once the gateway holds list 43."
    assert page.deed.note.text().startswith("It was out of sight for 1680 hours.")
    assert page.deed.commit.hasFocus()
    page.deed.commit.click()
    assert names(errands) == ["preview_let_in", "let_in"]
    assert page.sign.sign is Sign.NEVER_PROVED


def test_revoking_needs_a_reason(page: DevicePage, errands: FakeErrands) -> None:
    """Broken: something final happens that nobody gave a reason for."""
    page.revoke_button.click()
    assert not page.deed.commit.isEnabled()
    page.deed.go_on()
    assert errands.asked == []
    page.deed.reasons.rows[Reason.SUPERSEDED].click()
    assert "another pass took its place (superseded)" in page.deed.voice.text()
    page.deed.commit.click()
    assert errands.asked[-1] == ("revoke", "Ines’s phone", Reason.SUPERSEDED)
    assert page.sign.sign is Sign.REVOKED
    assert not page.stop_button.isVisible()


def test_revoking_by_keyboard(page: DevicePage, errands: FakeErrands, qtbot: QtBot) -> None:
    """Broken: reasons cannot be chosen without a mouse."""
    page.revoke_button.setFocus()
    QTest.keyClick(page.revoke_button, Qt.Key.Key_Space)
    first = page.deed.reasons.rows[Reason.KEY_COMPROMISE]
    qtbot.waitUntil(first.hasFocus)
    qtbot.waitUntil(lambda: page.deed.reasons.rows[Reason.SUPERSEDED].y() > first.y())
    QTest.keyClick(first, Qt.Key.Key_Space)
    assert page.deed.reasons.reason() is Reason.KEY_COMPROMISE
    QTest.keyClick(first, Qt.Key.Key_Down)
    assert page.deed.reasons.reason() is Reason.AFFILIATION_CHANGED
    assert errands.asked[-1][2] is Reason.AFFILIATION_CHANGED


def test_revoking_while_locked_asks_after_the_commit(page: DevicePage, errands: FakeErrands) -> None:
    """Broken: the passphrase alone revokes for good, without the button that says so."""
    lock(errands)
    page.revoke_button.click()
    page.deed.reasons.rows[Reason.KEY_COMPROMISE].click()
    assert page.deed.unlock.isHidden()
    page.deed.commit.click()
    assert page.deed.unlock.line.hasFocus()
    QTest.keyClicks(page.deed.unlock.line, PASSPHRASE)
    page.deed.unlock.unlock_button.click()
    assert names(errands) == ["preview_revoke", "unlock", "revoke"]


def test_not_now_puts_it_away(page: DevicePage, errands: FakeErrands) -> None:
    """Broken: a deed once asked for stays on the page for ever."""
    page.revoke_button.click()
    page.deed.reasons.rows[Reason.KEY_COMPROMISE].click()
    page.deed.not_now.click()
    assert page.deed.isHidden()
    page.revoke_button.click()
    assert page.deed.reasons.reason() is None
    assert names(errands) == ["preview_revoke"]


@pytest.mark.parametrize(
    ("code", "words"),
    [
        ("pass-not-alive", "The pass of Ines’s phone is ended. Give it a new pass."),
        ("already-stopped", "Ines’s phone is stopped already. Let it back in, or revoke it for good."),
    ],
)
def test_trouble_is_said_where_the_deed_is(code: str, words: str, page: DevicePage, errands: FakeErrands) -> None:
    """Broken: a deed fails silently, or advises a command that the window does not have."""
    errands.troubles["preview_stop"] = Refused(code, title="Ines’s phone", state="ended")
    page.stop_button.click()
    assert page.deed.trouble.isVisible()
    assert page.deed.trouble.text() == words


def test_a_household_that_locked_itself_meanwhile_asks(page: DevicePage, errands: FakeErrands) -> None:
    """Broken: the idle lock turns a stop into an error."""
    errands.troubles["stop"] = Refused("household-locked")
    page.stop_button.click()
    assert page.deed.unlock.isVisible()
    errands.troubles.clear()
    QTest.keyClicks(page.deed.unlock.line, PASSPHRASE)
    QTest.keyClick(page.deed.unlock.line, Qt.Key.Key_Return)
    assert names(errands) == ["preview_stop", "stop", "unlock", "stop"]


def test_a_second_copy_only_looks(page: DevicePage, errands: FakeErrands) -> None:
    """Broken: a copy that must not write offers to."""
    assert errands.last is not None
    errands.show(replace(errands.last, read_only=True))
    assert not page.stop_button.isEnabled()
    assert not page.revoke_button.isEnabled()
    assert "only looks" in page.beside.text()


def test_the_newest_pass_is_shown_and_older_ones_are_named(page: DevicePage, errands: FakeErrands) -> None:
    """Broken: after a replacement the page still tells about the old pass."""
    assert errands.last is not None
    old = next(one for one in errands.last.passes if (one.person, one.device) == ("Ines", "phone"))
    new = replace(old, serial="ff00" * 6, not_before=old.not_before + timedelta(days=20), handed_over=None)
    errands.show(replace(errands.last, passes=(*errands.last.passes, new)))
    assert page.facts.figures["serial"].value() == "FF00 FF00 FF00 FF00 FF00 FF00"
    assert page.sign.sign is Sign.WAITING
    assert page.older.text().splitlines()[0] == "Older passes of this device:"
    assert "never proved, in use since 12 April" in page.older.text()


def test_facts_say_the_trades_terms(page: DevicePage) -> None:
    """Broken: whoever sets the gateway up does not find what it is called there."""
    assert page.facts.told().splitlines() == [
        "made for: Android 14 or newer (Its built-in client signs with RSA only)",
        "last checked: 25 November 2026 (from documents, not tried on a device)",
        "known as: inphon77.quince.example (travels in clear)",
        "key: RSA-3072 (key set broad)",
        "container: PKCS#12, strong (AES-256)",
        "serial: 496E 6573 2F70 686F 6E65 0000",
    ]


def test_the_certificate_is_fetched_on_request(page: DevicePage, errands: FakeErrands) -> None:
    """Broken: PEM cannot be copied, or every look at a device reads certificates."""
    assert "certificate" not in names(errands)
    page.certificate.open_button.click()
    assert page.certificate.facts.figures["sha"].value().startswith("5A91 5A91")
    page.certificate.copy_button.click()
    copied = QGuiApplication.clipboard().text()
    assert "serial: 496E 6573" in copied
    assert copied.endswith("-----END CERTIFICATE-----")
    page.certificate.open_button.click()
    assert page.certificate.text.isHidden()


def test_another_device_folds_the_certificate_and_the_deed(page: DevicePage, errands: FakeErrands) -> None:
    """Broken: the deed that was begun for one device is done to another."""
    page.certificate.open_button.click()
    page.revoke_button.click()
    be(page, errands, "Ines", "tablet")
    assert page.deed.isHidden()
    assert page.certificate.text.isHidden()
