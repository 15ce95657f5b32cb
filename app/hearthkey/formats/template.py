"""Templates: a text with slots is read, and rendered for the gateway or a device, within bounds.

Jinja2's language, of which slots, "if", "for" and a few filters are left (`template_grammar`), run in a sandbox
with a meter (`template_sandbox`).
"""

from __future__ import annotations

from collections.abc import Generator, Iterator, Mapping
from dataclasses import dataclass, field
from traceback import walk_tb

import jinja2
from jinja2 import TemplateSyntaxError, UndefinedError, nodes

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.core.slots import DeviceLine, Value, hidden
from hearthkey.core.templates import check_text
from hearthkey.formats.template_grammar import Grammar
from hearthkey.formats.template_sandbox import (
    LONGEST_RESULT,
    METER,
    STEPS,
    Meter,
    NoSubnet,
    NothingThere,
    Spent,
    TooLong,
    sandbox,
)
from hearthkey.formats.template_tags import Source, TagCounter

DEVICE_KEY = "device_key"


@dataclass(frozen=True)
class Compiled:
    """A template that was read and has no mistake that can be seen without rendering it.

    Args:
        of: for the gateway or for a device.
        slots_used: names of the slots in it, wherever they stand.
        line_end: LF, or CRLF where its text has that.
        program: what Jinja2 made of it.
    """

    of: str
    slots_used: frozenset[str]
    line_end: str
    program: jinja2.Template = field(repr=False)


def compile_text(text: str, of: str) -> Compiled:
    """Read a template.

    Args:
        of: ``gateway`` or ``device``.

    Raises:
        Refused: as `core.templates.check_text`, `TagCounter.count` and `Grammar.judge`, all but the first two with
            the `line`, counted from 1 whether lines end in LF, CR or CRLF.
    """
    check_text(text)
    source = Source(text)
    try:
        TagCounter(source).count()
        tree = sandbox().parse(text)
    except TemplateSyntaxError as error:
        raise source.mistake(error.lineno) from None
    grammar = Grammar(of, source)
    grammar.judge(tree.body)
    return Compiled(
        of=of,
        slots_used=frozenset(grammar.used),
        line_end="\r\n" if "\r\n" in text else "\n",
        program=_program(tree),
    )


def render(compiled: Compiled, values: Mapping[str, Value]) -> str:
    """Render a template.

    Args:
        values: of its slots; None, or nothing at all, where there is none today.

    Raises:
        Refused: template-slot-empty, template-list-empty, template-not-a-subnet, template-result-too-long,
            template-runs-too-long, all with the `line`.
    """
    given: dict[str, object] = {name: _plain(values.get(name)) for name in compiled.slots_used}
    there = {name: value for name, value in given.items() if value is not None}
    size, pieces = 0, []
    # It asks for the root function because `Template.generate` would first draw the traceback anew.
    written = _told(compiled, compiled.program.root_render_func(_context(compiled, there)))
    for piece in written:
        ended = piece if compiled.line_end == "\n" else piece.replace("\n", compiled.line_end)
        size += len(ended.encode())
        if size > LONGEST_RESULT:
            written.throw(TooLong())  # where it stands just now, so that the line is told
        pieces.append(ended)
    return "".join(pieces)


def preview(compiled: Compiled, values: Mapping[str, Value]) -> str:
    """Render a template with every secret hidden behind marks of the same lines.

    Raises:
        Refused: as `render`.
    """
    return render(compiled, hidden({name: values.get(name) for name in compiled.slots_used}))


def writes_device_key(compiled: Compiled) -> bool:
    """Whether a device's private key comes into it without encryption, to be written or only looked at."""
    return DEVICE_KEY in compiled.slots_used


def _program(tree: nodes.Template) -> jinja2.Template:
    """Compile what was judged; the loops' meters came into it since it was parsed."""
    tree.set_environment(sandbox())
    return sandbox().from_string(tree)


def _context(compiled: Compiled, values: dict[str, object]) -> jinja2.runtime.Context:
    return compiled.program.new_context({**values, METER: Meter()})


def _told(compiled: Compiled, pieces: Iterator[str]) -> Generator[str]:
    """Pass a rendering on, and tell what stops it by the line where it stopped."""
    try:
        yield from pieces
    except UndefinedError as error:
        raise Refused("template-slot-empty", line=_line(compiled, error), name=error.message) from None
    except NothingThere as error:
        raise Refused("template-list-empty", line=_line(compiled, error)) from None
    except NoSubnet as error:
        raise Refused("template-not-a-subnet", line=_line(compiled, error)) from None
    except TooLong as error:
        raise Refused("template-result-too-long", line=_line(compiled, error), limit=LONGEST_RESULT) from None
    except Spent as error:
        raise Refused("template-runs-too-long", line=_line(compiled, error), limit=STEPS) from None


def _line(compiled: Compiled, error: Exception) -> int:
    """The template's line that an error came from: the innermost frame that is the template's own."""
    namespace = compiled.program.root_render_func.__globals__
    found = [line for frame, line in walk_tb(error.__traceback__) if frame.f_globals is namespace]
    return compiled.program.get_corresponding_lineno(found[-1])


def _plain(value: Value) -> object:
    """A value as the sandbox sees it: the one place where a template's secrets are brought out."""
    if isinstance(value, Secret):
        return value.reveal()
    if isinstance(value, tuple):
        return tuple(_plain_line(one) if isinstance(one, DeviceLine) else one for one in value)
    return value


def _plain_line(line: DeviceLine) -> dict[str, str]:
    fields = {"identity": line.identity, "title": line.title, "serial_number": line.serial_number, "ends": line.ends}
    return fields if line.extra_secret is None else fields | {"extra_secret": line.extra_secret.reveal()}
