"""The life of a ticket, as a value."""

from __future__ import annotations

import ipaddress
from dataclasses import replace
from datetime import timedelta
from functools import partial

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.core.ticket_events import Ending, Happened
from hearthkey.core.tickets import (
    LIFE,
    LINGER,
    LONGEST_LIFE,
    MOST_CUT_OFF,
    MOST_WRONG,
    QUIET,
    WRONG_DELAY,
    Asked,
    Verdict,
    ask,
    close,
    draw_token,
    extend,
    near,
    sent,
    tick,
)
from tests.fakes.clock import NOW
from tests.tickets.doors import HOME, OFFER, asks, ticket


def _drawing(number: int, count: int) -> int:
    """A die that has fallen already."""
    return number % (1 << count)


def test_token_keeps_all_128_bits() -> None:
    """Broken if it fails: tokens are easier to guess than they look (RFC 4648 section 6, without padding)."""
    drawn = {draw_token(partial(_drawing, number)).reveal() for number in range(500)}
    drawn |= {draw_token(partial(_drawing, 1 << place)).reveal() for place in range(128)}
    assert len(drawn) == 500 + 128 - 9  # 2 to the power of 0 to 8 were drawn twice
    assert draw_token(lambda count: (1 << count) - 1).reveal() == "7" * 25 + "4"
    assert draw_token(lambda _: 0).reveal() == "a" * 26


def test_page_then_file_then_closed() -> None:
    """Broken if it fails: the plain way of a phone is barred, or open for a second one."""
    made = ticket()
    page = ask(made, asks(made), NOW)
    assert page.verdict is Verdict.PAGE
    assert [one.what for one in page.events] == [Happened.OPENED]
    assert ask(page.ticket, asks(made), NOW).events == ()
    file = ask(page.ticket, asks(made, f"/{OFFER.name}"), NOW)
    assert (file.verdict, file.offer, file.delay) == (Verdict.FILE, OFFER, 0.0)
    assert ask(file.ticket, asks(made, f"/{OFFER.name}"), NOW).verdict is Verdict.CLOSED
    done, events = sent(file.ticket, whole=True, now=NOW)
    assert [(one.what, one.ending, one.address) for one in events] == [
        (Happened.CLOSED, Ending.PICKED_UP, "198.51.100.45")
    ]
    assert ask(done, asks(made), NOW).verdict is Verdict.CLOSED
    assert not done.over(NOW)
    assert done.over(NOW + LINGER)


def test_ten_minutes_and_not_a_second_more() -> None:
    """Broken if it fails: a ticket outlives its clock."""
    made = ticket()
    assert ask(made, asks(made), NOW + LIFE - timedelta(seconds=1)).verdict is Verdict.PAGE
    late = ask(made, asks(made), NOW + LIFE)
    assert late.verdict is Verdict.CLOSED
    assert late.ticket.ending is Ending.EXPIRED
    assert [one.what for one in late.events] == [Happened.CLOSED]


def test_ten_minutes_more_up_to_an_hour() -> None:
    """Broken if it fails: "+10 min" does nothing, or keeps a door open for the night."""
    made = extend(ticket(), NOW)
    assert made.until == NOW + 2 * LIFE
    for _ in range(4):
        made = extend(made, NOW)
    assert made.until == NOW + LONGEST_LIFE
    with pytest.raises(Refused, match="ticket-long-enough"):
        extend(made, NOW)
    with pytest.raises(Refused, match="ticket-closed"):
        extend(ticket(), NOW + LIFE)


def test_a_download_begun_in_time_may_end_late() -> None:
    """Broken if it fails: the last second cuts a file in two, or a broken download makes the ticket immortal."""
    made = ticket()
    begun = ask(made, asks(made, f"/{OFFER.name}"), NOW + LIFE - timedelta(seconds=1)).ticket
    assert tick(begun, NOW + LIFE)[0].ending is None
    assert sent(begun, whole=True, now=NOW + LIFE)[0].ending is Ending.PICKED_UP
    broken, _ = sent(begun, whole=False, now=NOW + LIFE)
    assert tick(broken, NOW + LIFE)[0].ending is Ending.EXPIRED


def test_three_broken_downloads_close_it() -> None:
    """Broken if it fails: somebody fetches a file again and again by never taking its end."""
    made = ticket()
    for _ in range(MOST_CUT_OFF):
        begun = ask(made, asks(made, f"/{OFFER.name}"), NOW)
        assert begun.verdict is Verdict.FILE
        made, events = sent(begun.ticket, whole=False, now=NOW)
    assert made.ending is Ending.CUT_OFF
    assert [one.what for one in events] == [Happened.INTERRUPTED, Happened.CLOSED]


def test_twenty_wrong_tokens_close_it_and_ten_thousand_learn_nothing() -> None:
    """Broken if it fails: a guesser has more than twenty tries, or is answered in more than one way."""
    made = ticket()
    answers = set()
    for number in range(10_000):
        guess = replace(asks(made), target="/" + draw_token(partial(_drawing, number)).reveal())
        outcome = ask(made, guess, NOW)
        made = outcome.ticket
        answers.add((outcome.verdict, outcome.offer, outcome.delay))
        assert (made.ending is Ending.GUESSED) == (number + 1 >= MOST_WRONG)
    assert answers == {(Verdict.WRONG, None, WRONG_DELAY)}
    assert ask(made, asks(made), NOW).verdict is Verdict.CLOSED


@pytest.mark.parametrize(
    "address",
    ["203.0.113.9", "198.51.101.1", "127.0.0.1", "2001:db8::1", "::ffff:198.51.100.45", "", "198.51.100", "x"],
)
def test_outside_is_refused_whatever_is_asked(address: str) -> None:
    """Broken if it fails: a link works from outside the home subnets, or tells there whether it is right."""
    made = ticket()
    right = ask(made, asks(made, address=address), NOW)
    wrong = ask(made, Asked("GET", "/", made.origin, address), NOW)
    assert right.verdict is wrong.verdict is Verdict.OUTSIDE
    assert right.delay == wrong.delay
    assert [one.what for one in right.events] == [Happened.OUTSIDE]
    assert ask(right.ticket, asks(made, address=address), NOW).events == ()
    assert right.ticket.wrong == 0


def test_a_crowd_outside_is_not_remembered_one_by_one() -> None:
    """Broken if it fails: whoever has many addresses fills the memory and the desk."""
    made = ticket()
    told = 0
    for number in range(1000):
        outcome = ask(made, asks(made, address=str(ipaddress.ip_address("2001:db8:9::") + number)), NOW)
        made, told = outcome.ticket, told + len(outcome.events)
    assert told == len(made.known) == 64


def test_near_is_the_own_subnet_and_the_home() -> None:
    """Broken if it fails: a phone in the home's second subnet is sent away."""
    own = ipaddress.ip_network("192.0.2.0/24")
    assert near(own, [HOME, own]) == (own, HOME)
    made = ticket(near=near(own, [HOME]))
    assert ask(made, asks(made, address="192.0.2.7"), NOW).verdict is Verdict.PAGE
    assert ask(made, asks(made), NOW).verdict is Verdict.PAGE


def test_a_page_of_somebody_else_cannot_ask_through_the_browser() -> None:
    """Broken if it fails: a name that was pointed at the laptop lets another page read what is offered."""
    made = ticket()
    assert ask(made, replace(asks(made), host="quince.example:49152"), NOW).verdict is Verdict.WRONG
    assert ask(made, replace(asks(made), host=""), NOW).verdict is Verdict.WRONG


def test_silence_is_told_once() -> None:
    """Broken if it fails: nobody says that a firewall or another Wi-Fi is in the way, or it is said for ever."""
    hushed, events = tick(ticket(), NOW + QUIET)
    assert [one.what for one in events] == [Happened.QUIET]
    assert tick(hushed, NOW + QUIET)[1] == ()
    made = ticket()
    assert tick(ask(made, asks(made), NOW).ticket, NOW + QUIET)[1] == ()


def test_closed_at_the_desk_stays_closed_for_that_reason() -> None:
    """Broken if it fails: the diary says something else than what happened."""
    made, events = close(ticket(), Ending.WITHDRAWN, NOW)
    assert [one.ending for one in events] == [Ending.WITHDRAWN]
    assert close(made, Ending.EXPIRED, NOW) == (made, ())


def test_links_of_both_kinds_of_address() -> None:
    """Broken if it fails: a phone cannot read the link (RFC 3986 section 3.2.2)."""
    token = Secret("a" * 26)
    assert ticket(token=token).link == Secret(f"http://198.51.100.23:49152/{'a' * 26}")
    six = ticket(token=token, address=ipaddress.ip_address("2001:db8:51::23"))
    assert six.link == Secret(f"http://[2001:db8:51::23]:49152/{'a' * 26}")
    assert "a" * 26 not in repr(six)


@given(st.text(), st.text(), st.text(max_size=80), st.text(max_size=40))
def test_anything_else_is_wrong(method: str, target: str, host: str, path: str) -> None:
    """Broken if it fails: some request that nobody thought of is answered with more than the one page."""
    made = ticket()
    for asked in (
        Asked(method, target, host, "198.51.100.45"),
        asks(made, "/" + path.replace(OFFER.name, "x")),
        asks(made, method=method.replace("GET", "HEAD")),
    ):
        outcome = ask(made, asked, NOW)
        assert outcome.verdict is Verdict.WRONG
        assert outcome.delay == WRONG_DELAY
