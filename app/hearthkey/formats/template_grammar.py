"""What a template may say, judged part by part before any of it is compiled.

A mistake is told by its line, and whatever is not named here does not exist: no call, no arithmetic, no
assignment, no other file.
"""

from __future__ import annotations

import difflib
import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from typing import Any

from jinja2 import nodes

from hearthkey.core.errors import Refused
from hearthkey.core.slots import DEVICE_FIELDS, SlotKind, slots_of
from hearthkey.core.templates import DEVICE, GATEWAY
from hearthkey.formats.template_sandbox import LOOP_FIELDS, TURNS
from hearthkey.formats.template_tags import KNOWN_TAGS, Source

DEEPEST_EXPRESSION = 16
WIDEST_INDENT = 64

_LOOP_NAME = re.compile(r"[a-z][a-z0-9_]{0,40}")

_TEXT, _LONG, _NUMBER, _LIST = SlotKind.TEXT, SlotKind.LONG, SlotKind.NUMBER, SlotKind.LIST
_WRITABLE = frozenset({_TEXT, _LONG, _NUMBER})
_LISTS = {_LIST: _TEXT, SlotKind.DEVICES: SlotKind.DEVICE}
_LOOP_KINDS = {name: SlotKind.TRUTH if name in {"first", "last"} else _NUMBER for name in LOOP_FIELDS}


@dataclass(frozen=True)
class FilterRule:
    """What a filter takes and gives.

    Args:
        takes: kinds of what stands before the bar.
        words: names of its arguments: ``text``, ``word`` (a text that is not empty), ``width``, ``flag``.
        needed: how many of them cannot be left out.
        gives: kind of the result, None for what it took.
    """

    takes: frozenset[SlotKind]
    words: tuple[str, ...] = ()
    needed: int = 0
    gives: SlotKind | None = None


_BOTH_TEXTS = frozenset({_TEXT, _LONG})
FILTERS = {
    "address": FilterRule(frozenset({_TEXT})),
    "default": FilterRule(_WRITABLE, ("text",), 1),
    "first": FilterRule(frozenset({_LIST}), gives=_TEXT),
    "indent": FilterRule(_BOTH_TEXTS, ("width", "flag"), 1),
    "join": FilterRule(frozenset({_LIST}), ("text",), gives=_TEXT),
    "last": FilterRule(frozenset({_LIST}), gives=_TEXT),
    "length": FilterRule(_BOTH_TEXTS | frozenset(_LISTS), gives=_NUMBER),
    "lower": FilterRule(frozenset({_TEXT})),
    "netmask": FilterRule(frozenset({_TEXT})),
    "prefix_length": FilterRule(frozenset({_TEXT}), gives=_NUMBER),
    "replace": FilterRule(_BOTH_TEXTS, ("word", "text"), 2),
    "trim": FilterRule(_BOTH_TEXTS),
    "upper": FilterRule(frozenset({_TEXT})),
}


@dataclass
class Grammar:
    """Judges every part of a parsed template, and puts the meter into its loops.

    Args:
        of: for the gateway or for a device.
        source: the text.
    """

    of: str
    source: Source
    used: set[str] = field(default_factory=set)

    def __post_init__(self) -> None:
        self._slots = {slot.name: slot.kind for slot in slots_of(self.of)}
        self._elsewhere = {slot.name for slot in slots_of(DEVICE if self.of == GATEWAY else GATEWAY)}
        self._names: dict[str, SlotKind] = {}
        self._loops = 0
        self._rules: dict[type[nodes.Node], Callable[[Any, int], SlotKind]] = {
            nodes.And: self._kind_of_pair,
            nodes.Compare: self._kind_of_comparison,
            nodes.CondExpr: self._kind_of_choice,
            nodes.Const: self._kind_of_constant,
            nodes.Filter: self._kind_of_filter,
            nodes.Getattr: self._kind_of_field,
            nodes.Name: self._kind_of_name,
            nodes.Not: self._kind_of_denial,
            nodes.Or: self._kind_of_pair,
            nodes.Test: self._kind_of_test,
        }

    def judge(self, parts: Iterable[nodes.Node]) -> None:
        """Judge a template, or the body of a tag.

        Raises:
            Refused: template-part-unknown, template-kind-differs, template-slot-unknown, template-slot-elsewhere,
                template-name-taken, template-filter-unknown, template-argument-unfit, template-too-deep,
                template-mistake.
        """
        for part in parts:
            match part:
                case nodes.Output():
                    self._judge_output(part)
                case nodes.If():
                    self._kind(part.test)
                    self.judge([*part.body, *part.elif_, *part.else_])
                case nodes.For():
                    self._judge_loop(part)
                case _:
                    raise self._unknown(part)

    def _judge_output(self, part: nodes.Output) -> None:
        for one in part.nodes:
            if not isinstance(one, nodes.TemplateData):
                self._demand(one, self._kind(one), _WRITABLE, _TEXT)

    def _judge_loop(self, part: nodes.For) -> None:
        kind = self._kind(part.iter)
        self._demand(part, kind, frozenset(_LISTS), _LIST)
        target = part.target
        if part.recursive or not isinstance(target, nodes.Name) or not _LOOP_NAME.fullmatch(target.name):
            raise self.source.mistake(part.lineno)
        if target.name in {*self._slots, *self._elsewhere, *self._names, "loop"}:
            raise Refused("template-name-taken", line=part.lineno, name=target.name)
        parts = sum(1 for _ in part.find_all(nodes.Node))
        self._names[target.name] = _LISTS[kind]
        outer = self._loops
        if part.test is not None:
            self._loops = 0  # while the test is asked, this loop has no fields yet, and hides those of an outer one
            self._kind(part.test)
        self._loops = outer + 1
        self.judge(part.body)
        self._loops = outer
        del self._names[target.name]
        self.judge(part.else_)
        part.iter = nodes.Filter(part.iter, TURNS, [nodes.Const(parts)], [], None, None, lineno=part.lineno)

    def _kind(self, part: nodes.Node, depth: int = 0) -> SlotKind:
        """Judge an expression, and tell what it is."""
        if depth > DEEPEST_EXPRESSION:
            raise Refused("template-too-deep", line=part.lineno, limit=DEEPEST_EXPRESSION)
        judged = self._rules.get(type(part))
        if judged is None:
            raise self._unknown(part)
        return judged(part, depth)

    def _kind_of_name(self, part: nodes.Name, _: int) -> SlotKind:
        if part.name in self._names:
            return self._names[part.name]
        if part.name in self._slots:
            self.used.add(part.name)
            return self._slots[part.name]
        if part.name in self._elsewhere:
            other = DEVICE if self.of == GATEWAY else GATEWAY
            raise Refused("template-slot-elsewhere", line=part.lineno, name=part.name, of=other)
        near = nearest(part.name, [*self._names, *self._slots])
        raise Refused("template-slot-unknown", line=part.lineno, name=part.name[:40], near=near)

    def _kind_of_field(self, part: nodes.Getattr, depth: int) -> SlotKind:
        base = part.node
        if not isinstance(base, nodes.Name):
            raise self._unknown(part)
        if base.name == "loop" and self._loops:
            fields, shown = _LOOP_KINDS, f"loop.{part.attr}"
        elif self._kind_of_name(base, depth) is SlotKind.DEVICE:
            fields, shown = DEVICE_FIELDS, f"{base.name}.{part.attr}"
        else:
            raise self._unknown(part)
        if part.attr not in fields:
            near = f"{base.name}.{nearest(part.attr, fields)}"
            raise Refused("template-slot-unknown", line=part.lineno, name=shown[:80], near=near)
        return fields[part.attr]

    def _kind_of_constant(self, part: nodes.Const, _: int) -> SlotKind:
        if isinstance(part.value, bool):
            return SlotKind.TRUTH
        if isinstance(part.value, str):
            return _TEXT
        if isinstance(part.value, int):
            return _NUMBER
        raise self.source.mistake(part.lineno)

    def _kind_of_filter(self, part: nodes.Filter, depth: int) -> SlotKind:
        rule = FILTERS.get(part.name)
        if rule is None:
            near = nearest(part.name, FILTERS)
            raise Refused("template-filter-unknown", line=part.lineno, name=part.name[:40], near=near)
        if part.node is None or part.dyn_args is not None or part.dyn_kwargs is not None:
            raise self._unknown(part)
        kind = self._kind(part.node, depth + 1)
        self._demand(part, kind, rule.takes, min(rule.takes))
        given = [*part.args, *(pair.value for pair in part.kwargs)]
        named_fit = not part.kwargs or [(part.name, str(pair.key)) for pair in part.kwargs] == [("indent", "first")]
        fit = named_fit and rule.needed <= len(given) <= len(rule.words)
        if not fit or not all(_fits(one, word) for one, word in zip(given, rule.words, strict=False)):
            raise Refused("template-argument-unfit", line=part.lineno, name=part.name)
        return rule.gives or kind

    def _kind_of_comparison(self, part: nodes.Compare, depth: int) -> SlotKind:
        left = self._kind(part.expr, depth + 1)
        for operand in part.ops:
            right = self._kind(operand.expr, depth + 1)
            if operand.op in {"in", "notin"}:
                self._demand(part, left, frozenset({_TEXT}), _TEXT)
                self._demand(part, right, frozenset({_TEXT, _LIST}), _LIST)
            else:
                self._demand(part, left, frozenset({_TEXT, _NUMBER}), _TEXT)
                self._demand(part, right, frozenset({left}), left)
            left = right
        return SlotKind.TRUTH

    def _kind_of_pair(self, part: nodes.And | nodes.Or, depth: int) -> SlotKind:
        self._kind(part.left, depth + 1)
        self._kind(part.right, depth + 1)
        return SlotKind.TRUTH

    def _kind_of_denial(self, part: nodes.Not, depth: int) -> SlotKind:
        self._kind(part.node, depth + 1)
        return SlotKind.TRUTH

    def _kind_of_test(self, part: nodes.Test, depth: int) -> SlotKind:
        if not _asks_if_defined(part):
            raise self._unknown(part)
        self._kind(part.node, depth + 1)
        return SlotKind.TRUTH

    def _kind_of_choice(self, part: nodes.CondExpr, depth: int) -> SlotKind:
        self._kind(part.test, depth + 1)
        kind = self._kind(part.expr1, depth + 1)
        if part.expr2 is None:
            raise self.source.mistake(part.lineno)
        self._demand(part, self._kind(part.expr2, depth + 1), frozenset({kind}), kind)
        return kind

    def _demand(self, part: nodes.Node, kind: SlotKind, fit: frozenset[SlotKind], wanted: SlotKind) -> None:
        if kind not in fit:
            raise Refused("template-kind-differs", line=part.lineno, seen=kind.value, wanted=wanted.value)

    def _unknown(self, part: nodes.Node) -> Refused:
        return Refused("template-part-unknown", line=part.lineno, seen=self.source.seen(part.lineno), known=KNOWN_TAGS)


def _asks_if_defined(part: nodes.Test) -> bool:
    bare = not part.args and not part.kwargs and part.dyn_args is None and part.dyn_kwargs is None
    return part.name == "defined" and bare and isinstance(part.node, nodes.Name | nodes.Getattr)


def _fits(given: nodes.Expr, word: str) -> bool:
    """Whether an argument is a constant of the sort that a filter takes there."""
    value = given.value if isinstance(given, nodes.Const) else None
    if word in {"text", "word"}:
        return isinstance(value, str) and (word == "text" or value != "")
    if word == "flag":
        return isinstance(value, bool)
    return type(value) is int and 0 <= value <= WIDEST_INDENT


def nearest(name: str, known: Iterable[str]) -> str:
    """The known name that is most like the one given."""
    return max(known, key=lambda one: difflib.SequenceMatcher(None, name[:80], one).ratio())
