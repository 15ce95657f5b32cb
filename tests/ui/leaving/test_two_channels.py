"""The guard: the passphrase and what it opens are never on one screen."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st
from pytestqt.qtbot import QtBot

from hearthkey.core.errors import Refused
from hearthkey.ui.clipboard import SecretClipboard
from hearthkey.ui.pages.two_channels import CARRIERS, Screen, Side
from hearthkey.ui.pages.ways_out import WayOut
from hearthkey.ui.theme.theme import Theme
from tests.ui.leaving.household import LAPTOP, WORDS, Scene

ANSWERS = (Side.STICKS, Side.CODES, Side.TICKET, Side.SAVED, Side.TROUBLE, Side.PASSPHRASE)
MOVES = st.one_of(
    st.sampled_from(["ask", "ask_passphrase", "back", "leave", "end"]),
    st.tuples(st.integers(min_value=0, max_value=3), st.sampled_from(ANSWERS)),
)


@given(st.lists(MOVES, max_size=30))
def test_no_answer_shows_what_was_not_asked_for(moves: list[str | tuple[int, Side]]) -> None:
    """If this failed, a late answer could put the passphrase where a code was asked for, or the other way round."""
    screen = Screen()
    for move in moves:
        before = screen
        if isinstance(move, str):
            screen = getattr(screen, move)()
            stays = (move == "back" and screen.side is before.under) or (move == "end" and screen.side is before.side)
            assert screen.side not in {Side.PASSPHRASE, *CARRIERS} or stays
            assert move != "end" or Side.TICKET not in {screen.side, screen.under}
        else:
            late, side = move
            screen = screen.answer(screen.question - late, side)
            if screen != before:
                assert late == 0
                assert side is Side.TROUBLE or before.secret == (side is Side.PASSPHRASE)
        assert screen.under in {Side.REST, Side.OVER, *CARRIERS}
        assert screen.side is not Side.PASSPHRASE or screen.secret


@pytest.mark.parametrize("carrier", [Side.CODES, Side.TICKET, Side.SAVED])
def test_a_covered_carrier_comes_back_only_without_the_passphrase(carrier: Side) -> None:
    """If this failed, hiding the passphrase would lose the codes, or showing it would leave them on screen."""
    asked = Screen().ask()
    carrying = asked.answer(asked.question, carrier)
    asking = carrying.ask_passphrase()
    assert (asking.side, asking.under) == (Side.WORKING, carrier)
    telling = asking.answer(asking.question, Side.PASSPHRASE)
    assert telling.side is Side.PASSPHRASE
    assert telling.back().side is carrier


WALK = st.lists(
    st.tuples(
        st.sampled_from(
            ["codes", "stick", "take-stick", "file", "archive", "passphrase", "back", "fail", "drag", "big", "next"]
        ),
        st.booleans(),
    ),
    max_size=12,
)
"""What is clicked, and whether the household has answered by then."""


@settings(max_examples=30, suppress_health_check=[HealthCheck.function_scoped_fixture], deadline=None)
@example(walk=[("passphrase", True), ("codes", True), ("passphrase", True), ("back", True), ("drag", True)])
@example(walk=[("stick", True), ("take-stick", True), ("passphrase", True), ("file", True), ("passphrase", False)])
@example(walk=[("passphrase", False), ("codes", True), ("codes", True), ("passphrase", False), ("back", True)])
@given(walk=WALK)
def test_whatever_is_clicked_the_page_never_shows_both(
    qtbot: QtBot,
    theme: Theme,
    tmp_path_factory: pytest.TempPathFactory,
    clipboard: SecretClipboard,
    walk: list[tuple[str, bool]],
) -> None:
    """If this failed, one photo of the screen would be enough to get in as that device."""
    scene = Scene(theme, tmp_path_factory.mktemp("walk"), clipboard)
    qtbot.addWidget(scene.page)
    scene.page.show()
    scene.page.open(LAPTOP.serial)
    scene.errands.hold = True
    for click, answered in walk:
        _click(scene, click)
        _never_both(scene)
        if answered:
            scene.errands.answer()
            _never_both(scene)
    scene.errands.answer()
    _never_both(scene)


def _click(scene: Scene, click: str) -> None:
    page = scene.page
    rows = page.left.rows.rows
    if click in {"codes", "stick", "file", "archive"}:
        rows[WayOut(click)].button.click()
    elif click == "take-stick" and page.panel.sticks.rows and page.panel.sticks.isVisible():
        page.panel.sticks.rows[0].click()
    elif click == "passphrase":
        page.left.passphrase_button.click()
    elif click == "back":
        page.leaving.back()
    elif click == "fail":
        scene.errands.refuse = (
            {} if scene.errands.refuse else {"codes": Refused("passphrase-lost", title="Tomasz’s laptop")}
        )
    elif click == "drag":
        scene.drag.began.emit(LAPTOP.serial)
        assert not page.panel.passphrase.words.words()
    elif click == "big":
        page.panel.codes.size_button.click()
    elif click == "next":
        page.panel.codes.next.click()


def _never_both(scene: Scene) -> None:
    panel, leaving = scene.page.panel, scene.page.leaving
    shown = [side for side, card in panel.cards.items() if not card.isHidden()]
    assert shown == [panel.shown()]
    telling = bool(panel.passphrase.words.words())
    assert telling == (panel.shown() is Side.PASSPHRASE) == (leaving.passphrase is not None)
    assert not (telling and panel.codes.isVisible())
    assert not (telling and panel.saved.isVisible())
    assert telling == (" ".join(WORDS) in panel.passphrase.words.accessibleDescription())


def test_a_passphrase_that_comes_late_is_not_shown(scene: Scene) -> None:
    """If this failed, leaving the page and coming back would find the passphrase on it."""
    scene.errands.hold = True
    scene.page.left.passphrase_button.click()
    scene.page.hide()
    scene.errands.answer()
    scene.page.show()
    assert scene.page.panel.shown() is Side.REST
    assert scene.page.panel.passphrase.words.words() == []


def test_the_passphrase_goes_before_the_folder_dialog_comes(scene: Scene) -> None:
    """If this failed, the dialog would name the file while the passphrase stands beside it."""
    scene.page.left.passphrase_button.click()
    assert scene.page.panel.passphrase.words.words() == list(WORDS)
    scene.picked.hold = True
    scene.page.left.rows.rows[WayOut.FILE].button.click()
    assert scene.picked.asked == [scene.page.folder]
    assert scene.page.panel.passphrase.words.words() == []


def test_hidden_or_left_nothing_of_the_bundle_stays(scene: Scene, tmp_path: Path) -> None:
    """If this failed, whoever opens the page next would find the last code, or the place of the last file."""
    for way in (WayOut.CODES, WayOut.FILE):
        scene.page.go(way)
        assert scene.page.leaving.codes or scene.page.leaving.saved
        scene.page.hide()
        assert not scene.page.leaving.codes
        assert scene.page.leaving.saved is None
        assert scene.page.panel.codes.picture.pixels_a_module() == 0
        scene.page.show()
        assert scene.page.panel.shown() is Side.REST
    assert (tmp_path / "saved").is_dir()
