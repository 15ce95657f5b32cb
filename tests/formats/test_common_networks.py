"""The table of common subnets: what came with the app is whole, and what is not whole is refused."""

from __future__ import annotations

import pytest

from hearthkey.bootstrap.reach import common_networks
from hearthkey.core.errors import Bug
from hearthkey.core.reach.clashes import Where
from hearthkey.formats import common_networks as table

ROW = '[[range]]\nsubnet = "10.0.0.0/8"\ndrawn = 16\nwhere = "work"\noften = 2\nsource = "a test"\n'


def test_the_table_that_came_with_the_app() -> None:
    """Broken if it fails: a place where subnets clash is missing, or a row has neither source nor a word about it."""
    found = common_networks()
    assert {one.where for one in found} == set(Where)
    assert len({(one.subnet, one.drawn, one.where) for one in found}) == len(found) >= 30
    known = ("common practice, no source", "RFC ", "AOSP, ", "GNOME, ")
    assert [one for one in found if not one.source.startswith(known)] == []
    assert all("(from memory)" in one.source for one in found if one.source.startswith("AOSP"))


@pytest.mark.parametrize(
    "text",
    [
        "",
        "range = 1",
        "[[range]]",
        "\xff",
        ROW.replace("10.0.0.0/8", "10.0.0.1/8"),
        ROW.replace("10.0.0.0/8", "fd00::/8"),
        ROW.replace("16", "7"),
        ROW.replace("16", "33"),
        ROW.replace("16", '"16"'),
        ROW.replace("work", "moon"),
        ROW.replace("= 2", "= 0"),
        ROW.replace("= 2", "= true"),
        ROW.replace("a test", " "),
        ROW + "extra = 1\n",
        ROW.replace("[[range]]", "[range]"),
    ],
)
def test_a_table_that_is_not_whole_is_our_own_fault(text: str) -> None:
    """Broken if it fails: half a table calls a subnet quiet that is met everywhere."""
    with pytest.raises(Bug) as bug:
        table.read(text.encode("latin-1"))
    assert bug.value.code == "common-networks"


def test_a_row_is_read() -> None:
    """Broken if it fails: the refusals above refuse everything."""
    assert [(str(one.subnet), one.drawn, one.where, one.often) for one in table.read(ROW.encode())] == [
        ("10.0.0.0/8", 16, Where.WORK, 2)
    ]
