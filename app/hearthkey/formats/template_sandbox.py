"""The sandbox that templates run in: a few filters, nothing to call, and a meter that always runs out.

Jinja2's own sandbox keeps a template from the computer behind it, but not from using it up: constants are
folded while it compiles, a filter may grow a text without bound, and loops within loops may run for years
without writing a letter. So nothing here is folded, every filter says what it will cost before it pays, and
every turn of a loop is paid for by the size of its body.
"""

from __future__ import annotations

import ipaddress
from collections.abc import Callable, Iterable, Iterator
from functools import cache
from typing import NoReturn

from jinja2 import StrictUndefined, Undefined, pass_context
from jinja2.exceptions import SecurityError
from jinja2.runtime import Context, LoopContext
from jinja2.sandbox import ImmutableSandboxedEnvironment

LONGEST_RESULT = 1 << 20
"""Octets of UTF-8 that a template may render to; characters that a filter may give back."""
STEPS = 16 << 20
"""What one rendering may cost: a character moved by a filter is 1, a part of a loop's body `PER_PART` a turn."""
PER_PART = 16

METER = "the meter"
"""Where the meter lies among the values; no template can name it, for it has a space in it."""
TURNS = "each turn"
"""The filter that counts the turns of a loop; no template can name it either."""

LOOP_FIELDS = frozenset({"index", "index0", "revindex", "revindex0", "length", "first", "last"})


class Spent(Exception):
    """The rendering has cost more than `STEPS`."""


class TooLong(Exception):
    """A filter would give back more than `LONGEST_RESULT`."""


class NothingThere(Exception):
    """The first or last of an empty list was asked for."""


class NoSubnet(Exception):
    """A filter for subnets was given something else. What it was given is not told: it may be a secret."""


class Meter:
    """What one rendering has left to spend."""

    def __init__(self, steps: int = STEPS) -> None:
        self._left = steps

    def pay(self, steps: int) -> None:
        """Spend some.

        Raises:
            Spent: it is more than is left.
        """
        self._left -= steps
        if self._left < 0:
            raise Spent

    def pay_for_text(self, length: int) -> None:
        """Spend what a text of so many characters costs, before it is made.

        Raises:
            TooLong, Spent.
        """
        if length > LONGEST_RESULT:
            raise TooLong
        self.pay(length + PER_PART)


class Missing(StrictUndefined):
    """A slot with nothing in it today: every use but "is defined" and "default" raises, with its name and no more."""

    __slots__ = ()

    @property
    def _undefined_message(self) -> str:
        return str(self._undefined_name)


class TemplateSandbox(ImmutableSandboxedEnvironment):
    """Nothing can be called or computed, and only loops and devices have anything behind a dot."""

    intercepted_binops = frozenset({"+", "-", "*", "/", "//", "%", "**"})
    intercepted_unops = frozenset({"+", "-"})

    def call_binop(self, context: Context, operator: str, left: object, right: object) -> NoReturn:
        """Refuse to compute."""
        del context, left, right
        raise SecurityError(operator)

    def call_unop(self, context: Context, operator: str, arg: object) -> NoReturn:
        """Refuse to compute."""
        del context, arg
        raise SecurityError(operator)

    def is_safe_callable(self, obj: object) -> bool:
        """Nothing is."""
        del obj
        return False

    def getattr(self, obj: object, attribute: str) -> object:
        """Give out a field of a loop or of a device."""
        if isinstance(obj, LoopContext) and attribute in LOOP_FIELDS:
            return super().getattr(obj, attribute)
        return self.getitem(obj, attribute)

    def getitem(self, obj: object, argument: object) -> object:
        """Give out a field of a device, which is a plain dictionary here."""
        if isinstance(obj, dict) and isinstance(argument, str):
            return obj[argument] if argument in obj else self.undefined(name=argument)
        return self.unsafe_undefined(obj, str(argument))


@cache
def sandbox() -> TemplateSandbox:
    """The one sandbox; it keeps nothing between renderings."""
    made = TemplateSandbox(
        autoescape=False,
        cache_size=0,
        finalize=_written,
        keep_trailing_newline=True,
        loader=None,
        lstrip_blocks=True,
        optimized=False,
        trim_blocks=True,
        undefined=Missing,
    )
    made.globals.clear()
    made.filters.clear()
    made.filters.update(_FILTERS)
    made.tests.clear()
    made.tests["defined"] = _is_defined
    return made


def _meter(context: Context) -> Meter:
    found = context.parent[METER]
    if not isinstance(found, Meter):
        raise TypeError(METER)
    return found


def _text(value: object) -> str:
    """What may be written: texts and numbers, nothing that Python would spell out in its own way.

    Asking an empty slot for its text raises, as it should.
    """
    if isinstance(value, str | Undefined) or type(value) is int:
        return str(value)
    raise TypeError(type(value).__name__)


@pass_context
def _written(_: Context, value: object) -> str:
    # It asks for the context so that Jinja2 cannot write constants at compile time, outside the meter.
    return _text(value)


def _is_defined(value: object) -> bool:
    return not isinstance(value, Undefined)


@pass_context
def _turns(context: Context, values: Iterable[object], parts: int) -> Iterator[object]:
    meter = _meter(context)
    for value in values:
        meter.pay(parts * PER_PART)
        yield value


@pass_context
def _upper(context: Context, value: object) -> str:
    text = _text(value)
    _meter(context).pay_for_text(3 * len(text))  # one letter becomes three at most (Unicode 15, SpecialCasing.txt)
    return text.upper()


@pass_context
def _lower(context: Context, value: object) -> str:
    text = _text(value)
    _meter(context).pay_for_text(3 * len(text))
    return text.lower()


@pass_context
def _trim(context: Context, value: object) -> str:
    text = _text(value)
    _meter(context).pay_for_text(len(text))
    return text.strip()


@pass_context
def _replace(context: Context, value: object, old: str, new: str) -> str:
    text, meter = _text(value), _meter(context)
    meter.pay_for_text(len(text))
    meter.pay_for_text(len(text) + text.count(old) * (len(new) - len(old)))
    return text.replace(old, new)


@pass_context
def _indent(context: Context, value: object, width: int, first: bool = False) -> str:  # noqa: FBT001, FBT002  # the order of a template's arguments is Jinja2's
    text, meter = _text(value), _meter(context)
    meter.pay_for_text(len(text))
    lines = text.split("\n")
    meter.pay_for_text(len(text) + len(lines) * width)
    margin = " " * width
    begun = [f"{margin}{line}" if line and (number or first) else line for number, line in enumerate(lines)]
    return "\n".join(begun)


@pass_context
def _join(context: Context, values: tuple[str, ...], between: str = "") -> str:
    _meter(context).pay_for_text(sum(len(one) + len(between) for one in values))
    return between.join(values)


@pass_context
def _length(_: Context, value: str | tuple[object, ...]) -> int:
    return len(value)


@pass_context
def _first(_: Context, values: tuple[str, ...]) -> str:
    if not values:
        raise NothingThere
    return values[0]


@pass_context
def _last(_: Context, values: tuple[str, ...]) -> str:
    if not values:
        raise NothingThere
    return values[-1]


@pass_context
def _default(_: Context, value: object, otherwise: str) -> object:
    return value if _is_defined(value) else otherwise


def _subnet(value: object) -> ipaddress.IPv4Network | ipaddress.IPv6Network:
    try:
        return ipaddress.ip_network(_text(value))
    except ValueError:
        raise NoSubnet from None


@pass_context
def _address(_: Context, value: object) -> str:
    return str(_subnet(value).network_address)


@pass_context
def _netmask(_: Context, value: object) -> str:
    return str(_subnet(value).netmask)


@pass_context
def _prefix_length(_: Context, value: object) -> int:
    return _subnet(value).prefixlen


_FILTERS: dict[str, Callable[..., object]] = {
    TURNS: _turns,
    "address": _address,
    "default": _default,
    "first": _first,
    "indent": _indent,
    "join": _join,
    "last": _last,
    "length": _length,
    "lower": _lower,
    "netmask": _netmask,
    "prefix_length": _prefix_length,
    "replace": _replace,
    "trim": _trim,
    "upper": _upper,
}
