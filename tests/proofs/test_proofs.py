"""What the address of a request proves, and what a proof's door makes of it."""

from __future__ import annotations

import ipaddress

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core import proof_doors, proofs
from hearthkey.core.errors import Refused
from hearthkey.core.household import Household
from hearthkey.core.proof_doors import Ending, Happened, Verdict
from hearthkey.core.proofs import Ground, Seen, judged
from hearthkey.core.tickets import LIFE, LINGER, LONGEST_LIFE, MOST_WRONG, QUIET, WRONG_DELAY
from hearthkey.formats import proof_page
from hearthkey.formats.proof_texts import TEXTS
from tests.fakes.clock import NOW
from tests.proofs.doors import AT_HOME, DEVICE, GATE, GROUND, HOME, NOWHERE, STRANGER, TUNNEL, asks, door

TUNNEL_6 = ipaddress.ip_network("2001:db8:203::/64")
HIDING = Ground(TUNNEL, (HOME,), hides=True)
NAMED = Ground(TUNNEL, (HOME,), hides=True, inside=GATE)
COTTAGE = Household(
    name="Quince Cottage",
    gateway_host="home.quince.example",
    identity_suffix="quince.example",
    home_subnets=(HOME, ipaddress.ip_network("2001:db8:51::/64")),
    tunnel_subnet=TUNNEL,
    dns_servers=(),
    tunnel="split",
)


@pytest.mark.parametrize(
    ("peer", "by", "seen"),
    [
        (DEVICE, GROUND, Seen.TUNNEL),
        (AT_HOME, GROUND, Seen.HOME),
        (str(GATE), GROUND, Seen.HOME),
        (STRANGER, GROUND, Seen.ELSEWHERE),
        (DEVICE, HIDING, Seen.TUNNEL),
        (AT_HOME, HIDING, Seen.HIDDEN),
        (str(GATE), HIDING, Seen.HIDDEN),
        (DEVICE, NAMED, Seen.TUNNEL),
        (str(GATE), NAMED, Seen.GATEWAY),
        (AT_HOME, NAMED, Seen.HOME),
        (str(GATE), Ground(TUNNEL, (HOME,), inside=GATE), Seen.HOME),
        ("2001:db8:203::10", Ground(TUNNEL_6, (HOME,)), Seen.TUNNEL),
        ("2001:db8:203::10", GROUND, Seen.ELSEWHERE),
        (f"::ffff:{DEVICE}", GROUND, Seen.ELSEWHERE),
        ("", GROUND, Seen.ELSEWHERE),
        (f"{DEVICE} {AT_HOME}", GROUND, Seen.ELSEWHERE),
    ],
)
def test_only_what_comes_through_the_tunnel_proves(peer: str, by: Ground, seen: Seen) -> None:
    """Broken if it fails: a phone in the Wi-Fi at home counts as proved, or one on mobile data does not."""
    assert judged(peer, by) is seen
    assert seen.proves is (seen in {Seen.TUNNEL, Seen.GATEWAY})


@given(
    address=st.one_of(st.ip_addresses(), st.ip_addresses(network=HOME), st.ip_addresses(network=NOWHERE)),
    hides=st.booleans(),
    named=st.booleans(),
)
def test_no_address_outside_the_tunnel_ever_proves(
    address: ipaddress.IPv4Address | ipaddress.IPv6Address,
    *,
    hides: bool,
    named: bool,
) -> None:
    """Broken if it fails: some address somewhere is taken for the inside of the tunnel."""
    by = Ground(TUNNEL, (HOME,), hides=hides, inside=GATE if named else None)
    inside = address.version == TUNNEL.version and address in TUNNEL
    behind = hides and named and address == GATE
    assert judged(str(address), by).proves is (inside or behind)
    outcome = proof_doors.ask(door(by=by), asks(door(), str(address)), NOW)
    assert (outcome.door.ending is Ending.PROVED) is (inside or behind)


@pytest.mark.parametrize(
    ("text", "hides", "code"),
    [
        ("192.0.2.1", True, "proof-inside-odd"),
        (DEVICE, True, "proof-inside-odd"),
        ("the gateway", True, "proof-inside-odd"),
        ("198.51.100.23", True, "proof-inside-own"),
        (str(GATE), False, "proof-inside-needless"),
    ],
)
def test_the_gateway_can_only_be_named_where_that_says_something(text: str, hides: bool, code: str) -> None:  # noqa: FBT001 - a row of the table
    """Broken if it fails: a request from home is made a proof by naming the phone's own address for the gateway's."""
    with pytest.raises(Refused) as refused:
        proofs.gateway_inside(text, COTTAGE, [ipaddress.ip_address("198.51.100.23")], hides=hides)
    assert refused.value.code == code


def test_the_gateway_is_named_by_its_address_at_home() -> None:
    """Broken if it fails: where the gateway hides devices, nothing can ever be proved."""
    assert proofs.gateway_inside(f" {GATE} ", COTTAGE, [], hides=True) == GATE


def test_one_proof_closes_the_door_and_is_told_once() -> None:
    """Broken if it fails: loading the page again writes a second proof, or tells the relative that it failed."""
    first = proof_doors.ask(door(), asks(door(), DEVICE), NOW)
    assert first.verdict is Verdict.IN
    assert [(one.what, one.address, one.ending, one.seen) for one in first.events] == [
        (Happened.CLOSED, DEVICE, Ending.PROVED, Seen.TUNNEL)
    ]
    again = proof_doors.ask(first.door, asks(door(), DEVICE), NOW + LINGER / 2)
    assert again.verdict is Verdict.IN
    assert again.events == ()
    assert proof_doors.ask(first.door, asks(door(), AT_HOME), NOW).verdict is Verdict.CLOSED
    assert not first.door.over(NOW + LINGER / 2)
    assert first.door.over(NOW + LINGER)


def test_from_home_the_door_stays_open() -> None:
    """Broken if it fails: whoever forgot to switch Wi-Fi off needs a new code."""
    home = proof_doors.ask(door(), asks(door(), AT_HOME), NOW)
    assert home.verdict is Verdict.HOME
    assert [one.what for one in home.events] == [Happened.AT_HOME]
    assert proof_doors.ask(home.door, asks(door(), AT_HOME), NOW).events == ()
    assert proof_doors.ask(home.door, asks(door(), DEVICE), NOW).verdict is Verdict.IN
    assert proof_doors.ask(door(by=HIDING), asks(door(), AT_HOME), NOW).verdict is Verdict.HIDDEN


def test_from_elsewhere_the_right_link_is_answered_like_a_wrong_one() -> None:
    """Broken if it fails: whoever finds the link on the way learns that it is one, and from where it works."""
    elsewhere = proof_doors.ask(door(), asks(door(), STRANGER), NOW)
    wrong = proof_doors.ask(door(), asks(door(), DEVICE, "/more"), NOW)
    assert (elsewhere.verdict, elsewhere.delay) == (wrong.verdict, wrong.delay) == (Verdict.WRONG, WRONG_DELAY)
    for method in ("POST", "HEAD", "get", ""):
        assert proof_doors.ask(door(), asks(door(), DEVICE, method=method), NOW).verdict is Verdict.WRONG


def test_twenty_wrong_links_close_it() -> None:
    """Broken if it fails: somebody at home guesses on and on; or a stranger, who gets nothing, can close it."""
    guessed = stranger = door()
    for _ in range(MOST_WRONG):
        guess = asks(door(token=type(door().token)("a" * 26)), AT_HOME)
        guessed = proof_doors.ask(guessed, guess, NOW).door
        stranger = proof_doors.ask(stranger, asks(door(), STRANGER), NOW).door
    assert guessed.ending is Ending.GUESSED
    assert stranger.ending is None
    assert proof_doors.ask(guessed, asks(door(), DEVICE), NOW).verdict is Verdict.CLOSED


def test_time_passes_as_at_a_ticket() -> None:
    """Broken if it fails: a link lives longer than it says, or nobody hears that nothing arrives."""
    quiet, told = proof_doors.tick(door(), NOW + QUIET)
    assert [one.what for one in told] == [Happened.QUIET]
    longer = proof_doors.extend(quiet, NOW + QUIET)
    assert longer.until == NOW + 2 * LIFE
    assert proof_doors.tick(longer, NOW + LIFE)[0].ending is None
    assert proof_doors.tick(longer, NOW + 2 * LIFE)[0].ending is Ending.EXPIRED
    assert proof_doors.ask(longer, asks(door(), DEVICE), NOW + 2 * LIFE).verdict is Verdict.CLOSED
    with pytest.raises(Refused, match="proof-closed"):
        proof_doors.extend(longer, NOW + 2 * LIFE)
    with pytest.raises(Refused, match="proof-long-enough"):
        proof_doors.extend(door(until=NOW + LONGEST_LIFE), NOW)


@pytest.mark.parametrize("verdict", list(Verdict))
@pytest.mark.parametrize("language", ["en", "de", "es"])
def test_each_page_is_said_in_each_language(verdict: Verdict, language: str) -> None:
    """Broken if it fails: a relative reads nothing, or another language than the phone speaks."""
    page = proof_page.page(verdict, language).decode()
    assert f'<html lang="{language}">' in page
    assert f"<h1>{getattr(TEXTS[verdict.value], language)}</h1>" in page
    assert "<script" not in page
    assert len({TEXTS[verdict.value].en, TEXTS[verdict.value].de, TEXTS[verdict.value].es}) == 3


def test_every_text_has_a_note_and_no_text_is_left_over() -> None:
    """Broken if it fails: somebody translates in the dark, or translates what nobody reads."""
    wanted = {key for verdict in Verdict for key in (verdict.value, f"{verdict.value}-more")}
    assert set(TEXTS) == wanted
    assert all(len(one.note) > 8 and one.en and one.de and one.es for one in TEXTS.values())
