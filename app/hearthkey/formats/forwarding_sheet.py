"""The forwarding sheet: what the router at home has to let through, for somebody who stands before its pages."""

from __future__ import annotations

from hearthkey.core.forwarding import ESP_PROTOCOL, LONGEST_TTL, SHORTEST_TTL, ForwardingFacts, Opening
from hearthkey.core.sentences import forwarding as words
from hearthkey.core.sentences import reach
from hearthkey.formats.sheet import Block, Heading, Note, Row, Title


def blocks(facts: ForwardingFacts) -> tuple[Block, ...]:
    """The sheet as blocks, for a screen and for paper."""
    return (
        Title(words.TITLE.format(household=facts.household)),
        *((Note(words.PRACTICE, urgent=True),) if facts.practice else ()),
        Note(words.LEAD),
        *_fixed(facts),
        *(_forwarded(facts) if 4 in facts.families else ()),
        *(_let_through(facts) if 6 in facts.families else ()),
        Heading(words.HEADINGS["closed"]),
        *(Row(label, (value,), why) for label, value, why in words.CLOSED.values()),
        Heading(words.HEADINGS["check"]),
        *(Row(label, (value,), why) for label, value, why in words.CHECK.values()),
        *_name(facts),
    )


def _fixed(facts: ForwardingFacts) -> list[Block]:
    found: list[Block] = [
        Heading(words.HEADINGS["fixed"]),
        Row(
            words.FIXED_LABEL, (facts.inside or words.BLANK,), f"{words.FIXED} {words.FIXED_LOOK}", "RFC 2131 section 1"
        ),
    ]
    if facts.router is not None:
        found.append(Row(words.ROUTER_LABEL, (str(facts.router[0]),), str(reach.router(*facts.router))))
    return found


def _forwarded(facts: ForwardingFacts) -> list[Block]:
    found: list[Block] = [Heading(words.HEADINGS["forward"]), Note(f"{words.SAME} {words.FORWARD_LOOK}")]
    return [*found, *(_forward(one, facts.inside or words.FIXED_LABEL) for one in facts.openings)]


def _forward(one: Opening, inside: str) -> Row:
    told = {"protocol": one.protocol, "port": one.port, "inside": inside}
    return Row(
        words.OPENING_LABEL.format(**told),
        (words.OUTSIDE.format(**told), words.INSIDE.format(**told)),
        words.OPENINGS[one.purpose],
        words.SOURCES[one.purpose],
    )


def _let_through(facts: ForwardingFacts) -> list[Block]:
    values = tuple(words.THROUGH_VALUE.format(protocol=one.protocol, port=one.port) for one in facts.openings)
    return [
        Heading(words.HEADINGS["firewall"]),
        Row(
            words.THROUGH_LABEL,
            (*values, words.THROUGH_ESP.format(number=ESP_PROTOCOL)),
            f"{words.THROUGH} {words.THROUGH_LOOK}",
            "RFC 6092 section 3.2.4",
        ),
    ]


def _name(facts: ForwardingFacts) -> list[Block]:
    heading = Heading(words.HEADINGS["name"])
    if facts.bare:
        return [heading, Note(words.NAME["bare"].format(host=facts.host))]
    ttl = {"shortest": SHORTEST_TTL, "longest": LONGEST_TTL}
    rows = (Row(label, (value.format(**ttl),), why, source) for label, value, why, source in words.NAME_ROWS.values())
    return [heading, Note(words.NAME["name"].format(host=facts.host)), *rows]
