"""The way in, checked in the window: live link by link, cancelable, inside and outside never mixed."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtTest import QSignalSpy
from pytestqt.qtbot import QtBot

from hearthkey.core.reach.chain import Chain, LastChecks, Side, Verdict
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.drawer.way_in_page import WayInPage
from hearthkey.ui.gallery.reach_states import stopped_chain, turned_away_chain
from hearthkey.ui.strip_words import WAY_IN, lamps
from hearthkey.ui.theme.signs import Sign
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer.household import FakeErrands


@pytest.fixture
def errands() -> FakeErrands:
    """Quince Cottage, whose way in stops at port 4500."""
    made = FakeErrands()
    assert made.last is not None
    made.chain = stopped_chain(made.last)
    return made


def opened(qtbot: QtBot, theme: Theme, errands: FakeErrands, ways: Ways | None = None) -> WayInPage:
    """The page, to be seen."""
    page = WayInPage(theme, errands, ways or Ways())
    qtbot.addWidget(page)
    page.resize(410, 900)
    page.show()
    return page


def told(page: WayInPage) -> str:
    """All that the path says, and what is shown above it."""
    return "\n".join([page.voice.text(), *(one.text() for one in page.path.findChildren(Prose) if not one.isHidden())])


def test_nothing_runs_by_itself(qtbot: QtBot, theme: Theme, errands: FakeErrands) -> None:
    """Broken: opening a page sends packets, or a check that nobody made is told as one."""
    page = opened(qtbot, theme, errands)
    assert errands.checks_asked == ()
    assert page.voice.text() == "Nobody has checked from outside yet."


def test_each_link_is_shown_as_soon_as_it_is_known(qtbot: QtBot, theme: Theme, errands: FakeErrands) -> None:
    """Broken: ten seconds without a word, or the headline is not the first broken link."""
    page = opened(qtbot, theme, errands)
    page.router.setText(" 203.0.113.9 ")
    page.at_home.setChecked(True)
    page.commit.click()
    (asked,) = errands.checks_asked
    assert (asked.router, asked.at_home, asked.host) == ("203.0.113.9", True, None)
    assert page.voice.text() == "On the way …"
    assert page.commit.text() == "&Stop"
    assert errands.chain is not None
    errands.link_known.emit(errands.chain.links[0])
    assert "home.quince.example leads to 203.0.113.9" in told(page)
    assert "stayed without an answer" not in told(page)
    errands.go_on()
    assert page.voice.text() == "From outside the way in stops here: port 4500."
    assert "Broken. " in told(page)
    assert not page.running


def test_a_device_that_is_turned_away_is_told_with_whose_it_is(
    qtbot: QtBot, theme: Theme, errands: FakeErrands
) -> None:
    """Broken: the last link of the web front is not shown, or nobody learns which device was tried."""
    page = opened(qtbot, theme, errands)
    assert errands.last is not None
    page.show_chain(turned_away_chain(errands.last))
    assert page.voice.text() == "From outside the way in stops here: whom the web front lets in."
    assert "Broken. It turned a device away whose bundle waits here: laptop (Tomasz), HTTP 400." in told(page)


def test_a_check_can_be_stopped(qtbot: QtBot, theme: Theme, errands: FakeErrands) -> None:
    """Broken: the page waits for a network that does not answer, or calls a stopped check a result."""
    page = opened(qtbot, theme, errands)
    page.commit.click()
    page.commit.click()
    assert not page.running
    assert page.trouble.isHidden()
    assert page.voice.text() == "Nobody has checked from outside yet."


def test_inside_and_outside_are_kept_apart(qtbot: QtBot, theme: Theme, errands: FakeErrands) -> None:
    """Broken: what was seen at home is taken for the way in from outside."""
    seen, chain = errands.last, errands.chain
    assert seen is not None
    assert chain is not None
    inside = replace(chain, side=Side.INSIDE, links=tuple(one for one in chain.links if one.verdict is Verdict.OK))
    errands.show(replace(seen, way_in=LastChecks(inside, None)))
    page = opened(qtbot, theme, errands)
    assert page.voice.text() == "Nobody has checked from outside yet."
    page.which.segments()[1].click()
    assert page.voice.text() == "From inside the gateway answers. That does not show that it does from outside."


@pytest.mark.parametrize(
    ("side", "whole", "sign", "word"),
    [
        (None, True, Sign.UNKNOWN, "way in not checked"),
        (Side.INSIDE, True, Sign.NEVER_PROVED, "way in only from inside, 12 May 2026"),
        (Side.OUTSIDE, True, Sign.IN_USE, "way in from outside, 12 May 2026"),
        (Side.OUTSIDE, False, Sign.DUE, "way in broken stops here: port 4500, 12 May 2026"),
    ],
)
def test_the_strip_says_what_was_seen_and_when(
    errands: FakeErrands, side: Side | None, sign: Sign, word: str, *, whole: bool
) -> None:
    """Broken: the strip is green because somebody checked at home."""
    seen, chain = errands.last, errands.chain
    assert seen is not None
    assert seen.household is not None
    assert chain is not None
    if whole:
        chain = replace(chain, links=tuple(one for one in chain.links if one.verdict is Verdict.OK))
    last: dict[Side | None, LastChecks] = {
        None: LastChecks(),
        Side.INSIDE: LastChecks(_on(chain, Side.INSIDE), None),
        Side.OUTSIDE: LastChecks(_on(chain, Side.INSIDE), _on(chain, Side.OUTSIDE)),
    }
    real = replace(seen.household, practice=False)
    lit = lamps(replace(seen, household=real, way_in=last[side]))[WAY_IN]
    assert (lit.sign, lit.told) == (sign, word)
    shown = None if side is None else last[side].inside if side is Side.INSIDE else last[side].outside
    assert len(lit.links) == (0 if shown is None else len(shown.links))
    assert ("Port 4500 answers: Broken" in lit.in_full) == (not whole)
    assert WAY_IN not in lamps(seen)


def _on(chain: Chain, side: Side) -> Chain:
    return replace(chain, side=side)


def test_the_page_leads_on(qtbot: QtBot, theme: Theme, errands: FakeErrands) -> None:
    """Broken: whoever knows what is wrong cannot get to where it is mended."""
    ways = Ways()
    spies = [QSignalSpy(one) for one in (ways.network_plan, ways.forwarding, ways.moving)]
    page = opened(qtbot, theme, errands, ways)
    for button in page.others:
        button.click()
    assert [spy.count() for spy in spies] == [1, 1, 1]
