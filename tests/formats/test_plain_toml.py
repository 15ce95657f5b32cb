"""The plain layout of bundle files: a line for every key, and nothing that makes reading slow or deep."""

from __future__ import annotations

import tomllib

import pytest

from hearthkey.core.errors import Refused
from hearthkey.formats import plain_toml

GOOD = """\
# a comment
top = 1   # and another {[[

[network]
names = ["a", 'b {', "c [["]
text = \"\"\"
[not a table]
not.a.key = 1
\"\"\"
[esp]
raw = \'\'\'one line\'\'\'
quoted = "a \\" # { [["
"""


def test_every_key_has_its_line() -> None:
    """Broken if it fails: a sentence sends the householder to the wrong line."""
    assert plain_toml.lines_of(GOOD) == {
        ("", ""): 1,
        ("", "top"): 2,
        ("network", ""): 4,
        ("network", "names"): 5,
        ("network", "text"): 6,
        ("esp", ""): 10,
        ("esp", "raw"): 11,
        ("esp", "quoted"): 12,
    }
    assert plain_toml.lines_of(GOOD.replace("\n", "\r\n")) == plain_toml.lines_of(GOOD)


def test_the_keys_found_are_those_of_tomllib() -> None:
    """Broken if it fails: what is checked is not what is read."""
    found = {("", "")}
    for name, value in tomllib.loads(GOOD).items():
        found |= {(name, key) for key in ("", *value)} if isinstance(value, dict) else {("", name)}
    assert set(plain_toml.lines_of(GOOD)) == found
    assert plain_toml.values_of(GOOD) == tomllib.loads(GOOD)


@pytest.mark.parametrize(
    "line",
    [
        "a = " + "[" * 2000,
        "a = " + "[1, " * 1000,
        "a = [1, [2]]",
        "a = [ {",
        "a = {a = 1}",
        "a = [1, {a = 1}]",
        "a.b = 1",
        "a" + ".a" * 100000 + " = 1",
        "[a.b]",
        "[[a]]",
        "[a] x",
        '"a" = 1',
        "A = 1",
        "a",
        "= 1",
        "a = '''",
        'a = """\\""" \n"""',
        'a = """ \\"""',
        'a = """\n\\"""\nb = """\nc.c = 1\n"""',
        "top = 2",
        "top = 2 # again",
        "a = " + "1" * 5000,
        "# " + "x" * 5000,
        " a = 1",
    ],
    ids=lambda text: text[:12],
)
def test_everything_else_is_refused_with_its_line(line: str) -> None:
    """Broken if it fails: nesting bombs, endless dotted keys or keys named twice reach the parser (TOML 1.0)."""
    with pytest.raises(Refused, match="bundle-line-unreadable") as refused:
        plain_toml.lines_of("top = 1\n" + line + "\n")
    number = refused.value.facts["line"]
    assert isinstance(number, int)
    assert 2 <= number <= 7


@pytest.mark.parametrize(
    "text", ["[a]\n[a]", "[a]\nb = 1\nb = 2", "".join(f"{'k' * n} = 1\n" for n in range(1, 41)) * 2]
)
def test_nothing_is_named_twice(text: str) -> None:
    """Broken if it fails: which of two settings counts depends on the reader."""
    with pytest.raises(Refused, match="bundle-line-unreadable"):
        plain_toml.lines_of(text)


@pytest.mark.parametrize("value", ["", "1 2", "2026-02-30T00:00:00Z", '"\\q"', "0x", "[1", '"open'])
def test_a_broken_value_is_refused_with_its_line(value: str) -> None:
    """Broken if it fails: a typing mistake is told without the line it is on."""
    text = f"top = 1\n\na = {value}\nb = 2\n"
    plain_toml.lines_of(text)
    with pytest.raises(Refused, match="bundle-line-unreadable") as refused:
        plain_toml.values_of(text)
    assert refused.value.facts["line"] in {3, 4}
