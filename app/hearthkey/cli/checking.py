"""`hearthkey check-way-in`."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Iterator

from hearthkey.cli.teller import Teller
from hearthkey.core.reach.chain import Chain, Link
from hearthkey.core.sentences import way_in as words
from hearthkey.services.house import House
from hearthkey.services.reaching import CheckRequest

_MARKS = {"ok": "+", "broken": "x", "unknown": "?"}


def check_way_in_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Walk the chain; each link is said on standard error as soon as it is known."""
    if arguments.last:
        _last(house, teller)
        return

    def told(link: Link) -> None:
        if not arguments.quiet and not teller.as_json:
            said = words.link(link)
            teller.aside(f"  {_MARKS[link.verdict.value]} {said.title}: {said.verdict}")

    reaching = house.reaching
    request = CheckRequest(host=arguments.at, router=arguments.router, at_home=arguments.at_home)
    chain = reaching.walk(reaching.prepare(request), told)
    # What was seen at another name or address says nothing about the household's own way in.
    if arguments.at is None and not house.register.read_only:
        reaching.keep(chain)
    teller.result(_lines(chain), _data(chain))


def _last(house: House, teller: Teller) -> None:
    """Show what is kept, and ask nobody."""
    found = house.reaching.last()
    chains = {"inside": found.inside, "outside": found.outside}
    lines = [
        f"Last from {side}: never."
        if chain is None
        else f"Last from {side}, {chain.made:%Y-%m-%d %H:%M} UTC: {words.headline(chain)}"
        for side, chain in chains.items()
    ]
    teller.result(lines, {side: None if chain is None else _data(chain) for side, chain in chains.items()})


def _lines(chain: Chain) -> Iterator[str]:
    yield str(words.headline(chain))
    yield str(words.side(chain))
    for link in chain.links:
        said = words.link(link)
        yield ""
        yield f"{_MARKS[link.verdict.value]} {said.title}: {said.verdict}"
        yield f"    {said.seen}"
        yield from (f"    {one}" for one in (said.meaning, said.try_next) if one is not None)


def _data(chain: Chain) -> dict[str, object]:
    return {
        "host": chain.host,
        "made": chain.made,
        "side": chain.side,
        "proves_way_in": chain.proves_way_in,
        "first_broken": None if chain.broken is None else chain.broken.place,
        "headline": str(words.headline(chain)),
        "links": [_link(one) for one in chain.links],
    }


def _link(one: Link) -> dict[str, object]:
    said = words.link(one)
    return {
        "place": one.place,
        "verdict": one.verdict,
        "finding": one.finding,
        "facts": dict(one.facts),
        "seen": str(said.seen),
        "means": None if said.meaning is None else str(said.meaning),
        "try": None if said.try_next is None else str(said.try_next),
    }
