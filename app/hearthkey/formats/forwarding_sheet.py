"""The forwarding sheet: what the router at home has to let through, for somebody who stands before its pages.

Every text of it is a phrase, so that a shell can set the same sheet in another language; see `formats.sheet.reworded`.
"""

from __future__ import annotations

from hearthkey.core.forwarding import ESP_PROTOCOL, LONGEST_TTL, SHORTEST_TTL, ForwardingFacts, Opening
from hearthkey.core.phrases import Phrase, sentences
from hearthkey.core.sentences import forwarding as words
from hearthkey.core.sentences import reach
from hearthkey.formats.sheet import Block, Heading, Note, Row, Title


def blocks(facts: ForwardingFacts) -> tuple[Block, ...]:
    """The sheet as blocks, for a screen and for paper."""
    return (
        Title(Phrase(words.TITLE, {"household": facts.household})),
        *((Note(Phrase(words.PRACTICE), urgent=True),) if facts.practice else ()),
        Note(Phrase(words.LEAD)),
        *_fixed(facts),
        *(_forwarded(facts) if 4 in facts.families else ()),
        *(_let_through(facts) if 6 in facts.families else ()),
        _heading("closed"),
        *(Row(Phrase(label), (Phrase(value),), Phrase(why)) for label, value, why in words.CLOSED.values()),
        _heading("check"),
        *(Row(Phrase(label), (Phrase(value),), Phrase(why)) for label, value, why in words.CHECK.values()),
        *_name(facts),
    )


def _heading(key: str) -> Heading:
    return Heading(Phrase(words.HEADINGS[key]))


def _fixed(facts: ForwardingFacts) -> list[Block]:
    why = sentences((Phrase(words.FIXED), Phrase(words.FIXED_LOOK)))
    inside = facts.inside or Phrase(words.BLANK)
    found: list[Block] = [_heading("fixed"), Row(Phrase(words.FIXED_LABEL), (inside,), why, words.SOURCES["fixed"])]
    if facts.router is not None:
        told = reach.router(*facts.router)
        found.append(
            Row(Phrase(words.ROUTER_LABEL), (str(facts.router[0]),), Phrase(told.template, told.facts)),
        )
    return found


def _forwarded(facts: ForwardingFacts) -> list[Block]:
    note = Note(sentences((Phrase(words.SAME), Phrase(words.FORWARD_LOOK))))
    inside = facts.inside or Phrase(words.FIXED_LABEL)
    return [_heading("forward"), note, *(_forward(one, inside) for one in facts.openings)]


def _forward(one: Opening, inside: str) -> Row:
    told = {"protocol": one.protocol, "port": one.port, "inside": inside}
    return Row(
        f"{one.protocol} {one.port}",
        (Phrase(words.OUTSIDE, told), Phrase(words.INSIDE, told)),
        Phrase(words.OPENINGS[one.purpose]),
        words.SOURCES[one.purpose],
    )


def _let_through(facts: ForwardingFacts) -> list[Block]:
    values = tuple(Phrase(words.THROUGH_VALUE, {"protocol": one.protocol, "port": one.port}) for one in facts.openings)
    return [
        _heading("firewall"),
        Row(
            Phrase(words.THROUGH_LABEL),
            (*values, Phrase(words.THROUGH_ESP, {"number": ESP_PROTOCOL})),
            sentences((Phrase(words.THROUGH), Phrase(words.THROUGH_LOOK))),
            words.SOURCES["through"],
        ),
    ]


def _name(facts: ForwardingFacts) -> list[Block]:
    host = {"host": facts.host}
    if facts.bare:
        return [_heading("name"), Note(Phrase(words.NAME["bare"], host))]
    ttl = {"shortest": SHORTEST_TTL, "longest": LONGEST_TTL}
    rows = (
        Row(Phrase(label), (Phrase(value, ttl),), Phrase(why), words.SOURCES.get(key, ""))
        for key, (label, value, why) in words.NAME_ROWS.items()
    )
    return [_heading("name"), Note(Phrase(words.NAME["name"], host)), *rows]
