"""For every state of a pass: what its page says and offers, and its life as stops."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from hearthkey.core.passes import Pass
from hearthkey.ui.controls.strokes import Mark
from hearthkey.ui.drawer.device_words import Step, device_words
from hearthkey.ui.drawer.stops import stops
from hearthkey.ui.theme.signs import Sign
from tests.ui.practice import NOW, PASSES

ALL = {(one.person, one.device): one for one in PASSES}

SAID: dict[tuple[str, str], tuple[Sign, str, Step | None, tuple[Step, ...], str]] = {
    ("Ines", "phone"): (
        Sign.NEVER_PROVED,
        "In use, never proved. It gets in until 9 May 2028. The key exists on the phone alone.",
        Step.PROVE,
        (Step.RENEW,),
        "stop revoke",
    ),
    ("Ines", "tablet"): (
        Sign.DUE,
        "3 weeks left. It gets in until 2 June 2026, then it ends. A new pass takes over without a gap.",
        Step.RENEW,
        (),
        "stop revoke",
    ),
    ("Ines", "old phone"): (
        Sign.REVOKED,
        "Revoked on 11 April 2026. It never gets in again: it was lost or stolen.",
        Step.ANEW,
        (),
        "",
    ),
    ("Tomasz", "laptop"): (
        Sign.WAITING,
        "Waiting. It gets in until 11 May 2028. Its bundle is in the tray, to be handed over.",
        Step.HAND_OVER,
        (),
        "stop revoke",
    ),
    ("Tomasz", "old phone"): (
        Sign.STOPPED,
        "Stopped on 3 March 2026. A gateway that holds the list keeps it out. It can be let back in.",
        Step.LET_IN,
        (Step.ANEW,),
        "revoke",
    ),
    ("Odile", "reader"): (
        Sign.ENDED,
        "Ended on 31 January 2026. It gets in again with a new pass.",
        Step.ANEW,
        (),
        "",
    ),
    ("Boiler engineer", "phone"): (
        Sign.GUEST,
        "Guest. It gets in until Friday 15 May. Then it ends by itself.",
        Step.PROVE,
        (Step.RENEW,),
        "stop revoke",
    ),
}


@pytest.mark.parametrize("whose", SAID)
def test_each_state_is_said_and_offers_its_next_step(whose: tuple[str, str]) -> None:
    """Broken: the page says something else than the sheet, or offers what cannot be done."""
    sign, sentence, step, others, deeds = SAID[whose]
    words = device_words(ALL[whose], NOW)
    can = [name for name, able in (("stop", words.stops), ("revoke", words.revokes)) if able]
    assert (words.sign, f"{words.state} {words.rest}", words.step, words.others, " ".join(can)) == (
        sign,
        sentence,
        step,
        others,
        deeds,
    )


def test_a_pass_whose_key_is_lost_is_made_again_not_handed_over() -> None:
    """Broken: after a restore the page leads to a hand-over that is always refused."""
    words = device_words(replace(ALL["Tomasz", "laptop"], key_lost=True), NOW)
    assert (f"{words.state} {words.rest}", words.step) == ("Waiting. It gets in again with a new pass.", Step.RENEW)


def told(one: Pass, *, replaced: bool = False) -> list[str]:
    """The stops as lines of text."""
    return [
        f"{stop.at:%d %b %Y} {stop.mark.value}: {stop.words} [{stop.run.value}]"
        for stop in stops(one, NOW, replaced=replaced)
    ]


LIVES = {
    ("Ines", "phone"): [
        "11 Apr 2026 made: made [waiting]",
        "12 Apr 2026 handed over: handed over [in use, never proved]",
        "12 May 2026 today: 728 days left [in use, never proved]",
        "15 Mar 2028 a good time to renew: a good time to renew [in use, never proved]",
        "09 May 2028 ends: ends [nothing]",
    ],
    ("Ines", "tablet"): [
        "03 Jun 2024 made: made [waiting]",
        "04 Jun 2024 handed over: handed over [due]",
        "12 May 2026 today: 21 days left [due]",
        "02 Jun 2026 ends: ends [nothing]",
    ],
    ("Tomasz", "laptop"): [
        "12 May 2026 made: made [waiting]",
        "12 May 2026 today: 730 days left [waiting]",
        "17 Mar 2028 a good time to renew: a good time to renew [waiting]",
        "11 May 2028 ends: ends [nothing]",
    ],
    ("Tomasz", "old phone"): [
        "08 Nov 2024 made: made [waiting]",
        "09 Nov 2024 handed over: handed over [in use, never proved]",
        "03 Mar 2026 stopped: stopped [stopped from here on]",
        "12 May 2026 today: can be let back in [stopped from here on]",
        "08 Nov 2026 ends: would end [nothing]",
    ],
    ("Ines", "old phone"): [
        "01 Sep 2024 made: made [waiting]",
        "02 Sep 2024 handed over: handed over [over]",
        "11 Apr 2026 revoked: revoked: it was lost or stolen [nothing]",
        "12 May 2026 today: never gets in again [nothing]",
    ],
    ("Odile", "reader"): [
        "31 Jan 2024 made: made [waiting]",
        "01 Feb 2024 handed over: handed over [over]",
        "31 Jan 2026 ends: ended [nothing]",
        "12 May 2026 today: ended 100 days ago [nothing]",
    ],
    ("Boiler engineer", "phone"): [
        "08 May 2026 made: made [waiting]",
        "08 May 2026 handed over: handed over [in use, never proved]",
        "12 May 2026 today: 3 days left [in use, never proved]",
        "15 May 2026 ends: ends [nothing]",
    ],
}


@pytest.mark.parametrize("whose", LIVES)
def test_each_life_has_its_stops_in_order(whose: tuple[str, str]) -> None:
    """Broken: the life line tells another story than the register."""
    assert told(ALL[whose]) == LIVES[whose]


@pytest.mark.parametrize(
    ("left", "words"), [(timedelta(hours=5), "ends today"), (timedelta(days=1, hours=5), "1 day left")]
)
def test_the_last_days_are_said_in_words(left: timedelta, words: str) -> None:
    """Broken: "1 days left", or a last day that sounds like a whole one."""
    one = replace(ALL["Boiler engineer", "phone"], not_after=NOW + left)
    today = next(stop for stop in stops(one, NOW) if stop.mark is Mark.TODAY)
    assert str(today.words) == words


@pytest.mark.parametrize(
    ("ago", "words"), [(timedelta(hours=5), "ended a moment ago"), (timedelta(days=1, hours=5), "ended yesterday")]
)
def test_a_fresh_end_is_said_in_words(ago: timedelta, words: str) -> None:
    """Broken: "ended 0 days ago"."""
    one = replace(ALL["Odile", "reader"], not_after=NOW - ago)
    assert str(stops(one, NOW)[-1].words) == words


def test_a_second_pass_says_that_it_takes_over() -> None:
    """Broken: nobody sees that an older pass of the same device exists."""
    assert told(ALL["Ines", "phone"], replaced=True)[0].endswith("takes over from the older pass [waiting]")
