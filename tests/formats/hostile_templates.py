"""Templates that were written to break out, to use the computer up, or to run for ever; each with what it must meet."""

from __future__ import annotations

import json
import resource
import sys
from collections.abc import Iterator

from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.core.slots import DeviceLine, Value
from hearthkey.formats.template import compile_text, render

PROCESSOR_SECONDS = 60
MEMORY = 1 << 30
"""Octets of address space: what a template may never come near."""
QUINCE = "home.quince.example"
DEVICES = tuple(
    DeviceLine(f"d{number:04d}.quince.example", "Ines’s phone", f"{number:04x}", "2028-11-24T09:29:59Z")
    for number in range(1000)
)
VALUES: dict[str, Value] = {
    "household": "Quince Cottage",
    "gateway_host": QUINCE,
    "home_subnets": tuple(f"198.51.100.{number}/32" for number in range(200)),
    "dns_servers": (),
    "tunnel_subnet": "203.0.113.0/24",
    "gateway_key": Secret("A" * 2000),
    "devices": DEVICES,
}
LOOP = "{% for a in devices %}{% for b in devices %}{% for c in devices %}"
ENDS = "{% endfor %}{% endfor %}{% endfor %}"
A_4000 = "A" * 4000

PART, MISTAKE, DEEP, INTRICATE = (
    "template-part-unknown",
    "template-mistake",
    "template-too-deep",
    "template-too-intricate",
)
FILTER, RUNS, LONG = "template-filter-unknown", "template-runs-too-long", "template-result-too-long"

HOSTILE: dict[str, tuple[str, str]] = {
    # breaking out
    "class": ("{{ ''.__class__ }}", PART),
    "mro": ("{{ ''.__class__.__mro__[1].__subclasses__() }}", PART),
    "class of a slot": ("{{ household.__class__ }}", PART),
    "by index": ("{{ household['__class__'] }}", PART),
    "by filter": ("{{ household|attr('__class__') }}", FILTER),
    "format map": ("{{ '{0.__class__}'.format(household) }}", PART),
    "format of a slot": ("{{ household.format }}", PART),
    "loop's context": ("{% for a in devices %}{{ loop.__init__.__globals__ }}{% endfor %}", PART),
    "loop's inside": ("{% for a in devices %}{{ loop._iterable }}{% endfor %}", "template-slot-unknown"),
    "loop called": ("{% for a in devices recursive %}{{ loop(devices) }}{% endfor %}", MISTAKE),
    "loop cycles": ("{% for a in devices %}{{ loop.cycle('a', 'b') }}{% endfor %}", PART),
    "self": ("{{ self._TemplateReference__context }}", "template-slot-unknown"),
    "globals": ("{{ range }}", "template-slot-unknown"),
    "lipsum": ("{{ lipsum.__globals__ }}", "template-slot-unknown"),
    "cycler": ("{{ cycler }}", "template-slot-unknown"),
    "namespace": ("{{ namespace }}", "template-slot-unknown"),
    "a device's methods": ("{% for a in devices %}{{ a.items }}{% endfor %}", "template-slot-unknown"),
    "the meter": ("{{ meter }}", "template-slot-unknown"),
    "stolen meter": ("{% for a in devices|each_turn(0) %}{% endfor %}", FILTER),
    # other files, other programs
    "include": ("{% include '/etc/passwd' %}", PART),
    "import": ("{% import 'a' as b %}", PART),
    "from": ("{% from 'a' import b %}", PART),
    "extends": ("{% extends 'a' %}", PART),
    "do": ("{% do 1 %}", PART),
    # statements that remember or repeat
    "doubling": ("{% set x = 'a' %}" + "{% set x = x ~ x %}" * 60 + "{{ x }}", PART),
    "doubling in a with": ("{% with x = 'a' %}{% endwith %}", PART),
    "macro": ("{% macro m() %}{{ m() }}{% endmacro %}{{ m() }}", PART),
    "call block": ("{% call m() %}{% endcall %}", PART),
    "filter block": ("{% filter upper %}a{% endfilter %}", PART),
    "block": ("{% block a %}{{ self.a() }}{% endblock %}", PART),
    "autoescape": ("{% autoescape true %}{% endautoescape %}", PART),
    # constants that a compiler would fold
    "repeat": ("{{ 'a' * 10**10 }}", PART),
    "power": ("{{ 9**9**9 }}", PART),
    "power of a small": ("{% if 9**999999 %}{% endif %}", PART),
    "folded filter": ("{{ 'a'|center(999999999) }}", FILTER),
    "sum": ("{{ 1 + 1 }}", PART),
    "concatenation": ("{{ household ~ household }}", PART),
    "negative": ("{{ -1 }}", PART),
    # texts that grow
    "percent width": ("{{ '%999999999d'|format(1) }}", FILTER),
    "percent": ("{{ '%999999999d' % 1 }}", PART),
    "brace width": ("{{ '{:>99999999}'.format(1) }}", PART),
    "ljust": ("{{ household.ljust(999999999) }}", PART),
    "indent width": ("{{ household|indent(999999999) }}", "template-argument-unfit"),
    "indent by text": ("{{ household|indent('" + " " * 4000 + "') }}", "template-argument-unfit"),
    "indents in a row": ("{{ gateway_key|replace('A', '\\n')" + "|indent(64, true)" * 2 + " }}", "fine"),
    "replace in replace": ("{{ gateway_key" + f"|replace('A', '{A_4000}')" * 8 + " }}", LONG),
    "replace nothing": ("{{ gateway_key|replace('', 'aaaa') }}", "template-argument-unfit"),
    "replace in loops": (LOOP + "{% if gateway_key|replace('A', 'AAAA') %}{% endif %}" + ENDS, RUNS),
    "join": ("{{ home_subnets|join('" + A_4000 + "')|replace('A', 'AA')|replace('A', 'AA') }}", LONG),
    "upper": ("{{ household" + "|upper" * 15 + " }}", "fine"),
    # loops
    "silent nest": (LOOP + ENDS, RUNS),
    "written nest": (LOOP + "{{ a.identity }}" + ENDS, LONG),
    "nest with a long body": (LOOP + "{% if a.title == b.title %}{% endif %}" * 500 + ENDS, RUNS),
    "nest with a test": (LOOP.replace("c in devices", "c in devices if c.title in b.title") + ENDS, RUNS),
    "loop length": (LOOP + "{{ '' if loop.length > 5 else 'a' }}" + ENDS, RUNS),
    "fourth loop": (LOOP + "{% for d in devices %}{% endfor %}" + ENDS, DEEP),
    "loop over a text": ("{% for a in gateway_key %}{% endfor %}", "template-kind-differs"),
    "loop over figures": ("{% for a in 99999999 %}{% endfor %}", "template-kind-differs"),
    "loop over a range": ("{% for a in range(10**10) %}{% endfor %}", PART),
    "loop over itself": ("{% for a in a %}{% endfor %}", "template-slot-unknown"),
    # depth
    "brackets": ("{{ " + "(" * 90 + "1" + ")" * 90 + " }}", DEEP),
    "brackets without end": ("{{ " + "(" * 60000, DEEP),
    "lists": ("{{ " + "[" * 90 + "]" * 90 + " }}", DEEP),
    "not": ("{{ " + "not " * 190 + "1 }}", DEEP),
    "not for ever": ("{{ " + "not " * 16000 + "1 }}", INTRICATE),
    "minus": ("{{ " + "-" * 190 + "1 }}", PART),
    "choices": ("{{ " + "1 if 1 else " * 45 + "1 }}", DEEP),
    "filters": ("{{ household" + "|trim" * 90 + " }}", DEEP),
    "fields": ("{{ household" + ".a" * 90 + " }}", PART),
    "ifs": ("{% if 1 %}" * 3000, DEEP),
    "elifs": ("{% if 1 %}" + "{% elif 1 %}" * 1900 + "{% endif %}", "fine"),
    "tags": ("{{ 1 }}" * 9000, INTRICATE),
    "comparisons": ("{{ " + "1 < " * 190 + "1 }}", INTRICATE),
    # constants that Python stumbles over
    "long figure": ("{{ " + "9" * 60000 + " }}", MISTAKE),
    "long hexadecimal": ("{{ 0x" + "f" * 60000 + " }}", MISTAKE),
    "underscores": ("{{ " + "1_" * 30000 + "1 }}", MISTAKE),
    "float": ("{{ 1e999 }}", MISTAKE),
    "half a character": ("{{ '\\ud800' }}", MISTAKE),
    "named character": ("{{ '\\N{BULLET}' }}", MISTAKE),
    "unknown escape": ("{{ '\\d' }}", MISTAKE),
    "long quote": ("{{ '" + "a" * 60000 + "' }}", MISTAKE),
    "nothing": ("{{ none }}", MISTAKE),
    # what the lexer has to chew on
    "open braces": ("{{" * 30000, DEEP),
    "open comments": ("{#" * 30000, MISTAKE),
    "open raws": ("{% raw %}" * 7000, MISTAKE),
    "half tags": ("{%-" * 20000, PART),
    "spaces before a tag": (" " * 60000 + "{%- if 1 %}{% endif %}", "fine"),
    "line ends before tags": ("\n" * 60000 + "{%- if 1 %}{%- endif %}", "fine"),
    "quotes": ("{{ " + "'" * 59999 + " }}", INTRICATE),
    "odd quote": ("{{ '" + "\\" * 59999 + " }}", MISTAKE),
    "dots": ("{{ " + "." * 60000 + " }}", INTRICATE),
    "digits and dots": ("{{ " + "1." * 30000 + " }}", MISTAKE),
    "signs": ("{{ ` }}", MISTAKE),
}


def outcome(text: str) -> str:
    """What becomes of a template: the code it is refused with, "fine", or what was not foreseen."""
    try:
        render(compile_text(text, "gateway"), VALUES)
    except Refused as refused:
        line = refused.facts.get("line")
        return refused.code if isinstance(line, int) and line >= 1 else f"{refused.code} without a line"
    except Exception as error:  # noqa: BLE001  # whatever it is, it is the finding
        return repr(error)[:200]
    return "fine"


def outcomes() -> Iterator[tuple[str, str]]:
    """Try them one after the other."""
    for name, (text, _) in HOSTILE.items():
        yield name, outcome(text)


if __name__ == "__main__":
    resource.setrlimit(resource.RLIMIT_CPU, (PROCESSOR_SECONDS, PROCESSOR_SECONDS))
    resource.setrlimit(resource.RLIMIT_AS, (MEMORY, MEMORY))
    for found in outcomes():
        sys.stdout.write(json.dumps(found) + "\n")
        sys.stdout.flush()
