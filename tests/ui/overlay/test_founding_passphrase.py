"""The passphrase of a new household: offered or typed, and confirmed."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from hearthkey.core.secret import Secret
from hearthkey.ui.pages.founding_passphrase import PassphrasePart
from hearthkey.ui.pages.offered_words import DOTS
from tests.ui.overlay.evening import Evening
from tests.ui.overlay.household import PASSPHRASE

OWN = "velvet thunder under 4 quiet ladders"


def test_the_passphrase_has_to_be_confirmed(evening: Evening) -> None:
    """Broken if it fails: a passphrase that nobody wrote down guards the CA key."""
    evening.fill()
    assert not evening.page.commit.isEnabled()
    QTest.keyClick(evening.page, Qt.Key.Key_Return, Qt.KeyboardModifier.ControlModifier)
    assert evening.founded() == []
    evening.confirm(PASSPHRASE[:-1])
    assert not evening.page.commit.isEnabled()
    evening.page.form.name.setFocus()
    assert evening.page.passphrase.second.told().startswith("It differs from the first.")
    evening.confirm("  " + PASSPHRASE.replace(" ", "  "))
    assert evening.page.commit.isEnabled()
    assert evening.page.passphrase.second.told() == "The same both times."


def test_the_words_are_covered_while_they_are_typed_once_more(evening: Evening) -> None:
    """Broken if it fails: the words are copied from the screen, and never reach the paper."""
    part = evening.page.passphrase
    assert part.words.accessibleDescription() == "covered; Show makes it readable"
    part.show_button.click()
    assert part.words.accessibleDescription() == PASSPHRASE
    part.again.setFocus()
    assert not part.words.shown
    assert part.show_button.text() == "Show"


def test_dots_do_not_tell_the_words(evening: Evening) -> None:
    """Broken if it fails: over a shoulder the lengths of seven words can be read."""
    part = evening.page.passphrase
    part.another.click()
    assert len(set(DOTS.split())) == 1
    assert len(DOTS.split()) == 7


def test_another_passphrase_wants_to_be_confirmed_anew(evening: Evening) -> None:
    """Broken if it fails: the old words are confirmed and the new ones used."""
    evening.fill()
    evening.confirm()
    assert evening.page.commit.isEnabled()
    evening.page.passphrase.another.click()
    assert not evening.page.commit.isEnabled()
    assert evening.page.passphrase.again.text() == ""


def told_first(part: PassphrasePart, words: str) -> bool:
    """Whether the trouble has come."""
    return part.first.told().startswith(words)


def test_a_weak_passphrase_of_ones_own_is_refused(evening: Evening, qtbot: QtBot) -> None:
    """Broken if it fails: whoever steals the key text guesses the passphrase."""
    evening.fill()
    part = evening.page.passphrase
    part.own.click()
    assert part.typed.hasFocus()
    for weak, words in (
        ("kitchen", "The passphrase is shorter than 15 characters."),
        ("kitchen kitchen kitchen", "The passphrase would not stand long guessing"),
        ("schöne Quitten im Garten", "Character 4 of the passphrase is not on every keyboard"),
    ):
        evening.type(part.typed, weak)
        qtbot.waitUntil(partial(told_first, part, words))
        evening.confirm(weak)
        assert not evening.page.commit.isEnabled()


def test_a_strong_passphrase_of_ones_own_is_taken(evening: Evening, qtbot: QtBot) -> None:
    """Broken if it fails: only passphrases of the app can be used."""
    evening.fill()
    part = evening.page.passphrase
    part.own.click()
    evening.type(part.typed, OWN)
    qtbot.waitUntil(lambda: bool(evening.errands.asked("judge")))
    evening.confirm(OWN)
    assert evening.page.commit.isEnabled()
    evening.page.found()
    assert evening.founded()[0][1] == Secret(OWN)


def test_a_change_of_ones_own_passphrase_counts_at_once(evening: Evening, qtbot: QtBot) -> None:
    """Broken if it fails: a passphrase that was judged strong is shortened afterwards, and used."""
    evening.fill()
    part = evening.page.passphrase
    part.own.click()
    evening.type(part.typed, OWN)
    qtbot.waitUntil(lambda: bool(evening.errands.asked("judge")))
    evening.confirm(OWN)
    QTest.keyClick(part.typed, Qt.Key.Key_Backspace)
    assert not evening.page.commit.isEnabled()
    part.own.click()
    assert part.secret() is None
