"""Founding: names, turns, and whether everything can be read."""

from __future__ import annotations

import pytest

from hearthkey.ui.theme.theme import Theme
from tests.ui.overlay.evening import Evening
from tests.ui.overlay.looking import beyond, cut, nameless, settle, stops


def test_every_control_has_a_name_and_its_turn(evening: Evening) -> None:
    """Broken if it fails: a screen reader says "edit" seven times, or Tab jumps about."""
    evening.page.form.details.open(shown=True)
    assert nameless(evening.page) == []
    names = [one.accessibleName() for one in stops(evening.page)]
    wanted = [
        "What is the household called?",
        "Under which name is the house reached?",
        "Which subnets are at home?",
        "DNS server at home, if there is one",
        "Which subnet do the devices get?",
        "Details, shown",
        "What do device codes end in?",
        "Show the passphrase",
        "Make another",
        "My own…",
        "Type the words once more, from the paper",
        "Found the household",
        "Look around in a practice household",
        "I have a CA already …",
    ]
    assert [name for name in names if name in wanted] == wanted


@pytest.mark.parametrize("scale", [1.0, 2.0])
@pytest.mark.parametrize("size", [(1280, 768), (1024, 640), (640, 480)])
def test_nothing_is_cut(evening: Evening, theme: Theme, scale: float, size: tuple[int, int]) -> None:
    """Broken if it fails: with large type or in a small window a question or a trouble is cut."""
    theme.choose("lamp", scale)
    evening.page.resize(*size)
    evening.fill(name="W" * 60, host="house.local", home="198.51.100.7/24")
    evening.page.form.details.open(shown=True)
    evening.page.passphrase.show_button.click()
    settle()
    assert cut(evening.page) == []
    assert beyond(evening.page) == []
    evening.fill(name="W" * 60)
    settle()
    assert cut(evening.page) == []


def test_the_button_comes_into_sight_when_it_is_ready(evening: Evening, theme: Theme) -> None:
    """Broken if it fails: in a low window nobody sees that it can be founded now."""
    theme.choose("paper", 1.5)
    evening.page.resize(1024, 640)
    evening.fill()
    evening.confirm()
    settle()
    button = evening.page.commit
    place = button.mapTo(evening.page, button.rect().center()).y()
    assert 0 < place < evening.page.height()
