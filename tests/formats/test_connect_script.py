"""The set-up script: its strings, its braces, and what must not be in it. Nobody has run it on Windows."""

from __future__ import annotations

import base64
import re
from dataclasses import replace

import pytest
import tree_sitter
import tree_sitter_powershell
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.errors import Refused
from hearthkey.core.keysets import KEY_SETS, key_set
from hearthkey.formats import connect_script
from tests.formats.practice import SETTINGS

QUOTES = "'\u2018\u2019\u201a\u201b"


def written(**other: object) -> str:
    """A script of the practice household's laptop."""
    settings = replace(SETTINGS, **other)  # type: ignore[arg-type]  # each test names fields of it
    data = connect_script.write(
        settings, container_name="ines-phone.p12", ca_base64="MIIB", ca_print="AB" * 20, device_print="CD" * 20
    )
    assert data.startswith(b"\xef\xbb\xbf")
    return data.decode("utf-8-sig")


def tokens(text: str) -> list[str]:
    """The script without what stands in strings and comments; a small reader of our own.

    A single-quoted string ends at a quote that is not doubled, and any of five characters is one (PowerShell language
    specification, section 2.3.5.2).
    """
    left: list[str] = []
    place = 0
    while place < len(text):
        one = text[place]
        if one == "#" and (place == 0 or text[place - 1] in " \r\n\t"):
            place = text.find("\n", place)
            place = len(text) if place < 0 else place
        elif one in QUOTES:
            place += 1
            while True:
                assert place < len(text), "a string without an end"
                if text[place] in QUOTES:
                    if place + 1 < len(text) and text[place + 1] in QUOTES:
                        place += 2
                        continue
                    break
                place += 1
            left.append("S")
            place += 1
        elif one == '"':
            place = text.index('"', place + 1) + 1
            left.append("D")
        else:
            left.append(one)
            place += 1
    return left


@pytest.mark.parametrize("tunnel", ["split", "full"])
@pytest.mark.parametrize("name", KEY_SETS)
def test_strings_end_and_braces_match(name: str, tunnel: str) -> None:
    """If this failed, the script would not even begin."""
    chosen = key_set(name)
    text = written(key_set=name, tunnel=tunnel, ike=chosen.ike, esp=chosen.esp, key_exchange=chosen.key_exchange)
    left = "".join(tokens(text))
    for opening, closing in ("{}", "()", "[]"):
        assert left.count(opening) == left.count(closing)
    assert "\n" not in text.replace("\r\n", "")
    assert f"-SplitTunneling ${str(tunnel == 'split').lower()} -Force" in text
    assert ("Required -SplitTunneling\r\n" in text) == (tunnel == "split")
    assert text.count("Add-VpnConnectionRoute") == (len(SETTINGS.home_subnets) if tunnel == "split" else 0)


def test_the_weak_defaults_are_replaced() -> None:
    """If this failed, the laptop would be protected by 3DES, SHA-1 and group 2."""
    text = written()
    strength = text[text.index("Set-VpnConnectionIPsecConfiguration") :]
    for word in ("DES3", "SHA1 ", "Group2 "):
        assert word not in strength
    assert re.search(r"-DHGroup (Group14|ECP256|ECP384)", strength)


@given(st.text(alphabet=st.characters(blacklist_categories=("Cs", "Cc")), min_size=1, max_size=40))
def test_no_name_gets_out_of_its_string(name: str) -> None:
    """If this failed, a household's name could run commands as administrator."""
    quoted = connect_script.quoted(name)
    assert tokens(quoted) == ["S"]
    inside = quoted[1:-1]
    for quote in QUOTES:
        inside = inside.replace(quote * 2, quote)
    assert inside == name


def test_nothing_secret_is_in_it() -> None:
    """If this failed, whoever finds the script has the words as well."""
    assert "AsSecureString" in written()
    assert "ConvertTo-SecureString" not in written()


def slips(text: str) -> list[str]:
    """What a grammar of PowerShell that we did not write (tree-sitter-powershell) cannot make sense of."""
    parser = tree_sitter.Parser(tree_sitter.Language(tree_sitter_powershell.language()))
    waiting, found = [parser.parse(text.encode()).root_node], []
    while waiting:
        node = waiting.pop()
        if node.type == "ERROR" or node.is_missing:
            found.append(f"{node.start_point}: {node.type}")
        waiting += node.children
    return found


@pytest.mark.parametrize("tunnel", ["split", "full"])
@pytest.mark.parametrize("name", KEY_SETS)
def test_a_grammar_of_others_reads_all_of_it(name: str, tunnel: str) -> None:
    """If this failed, PowerShell would most likely refuse the script as a whole."""
    chosen = key_set(name)
    text = written(key_set=name, tunnel=tunnel, ike=chosen.ike, esp=chosen.esp, key_exchange=chosen.key_exchange)
    assert slips(text) == []
    assert slips(text.replace("if ($Undo) {", "if ($Undo {")) != []


@given(st.text(alphabet=st.characters(blacklist_categories=("Cs", "Cc")), min_size=1, max_size=40))
def test_no_name_breaks_the_grammar(name: str) -> None:
    """If this failed, a household's name would make a script that no PowerShell reads."""
    assert slips(f"$Name = {connect_script.quoted(name)}\n") == []


def test_what_it_says_is_read_back() -> None:
    """If this failed, a script that trusts another CA, or finds another certificate, would leave."""
    data = connect_script.write(
        SETTINGS,
        container_name="tomasz’s.p12",
        ca_base64="MIIB",
        ca_print="AB" * 20,
        device_print="CD" * 20,
        further=[("MIIC", "EF" * 20)],
    )
    said = connect_script.read(data)
    assert said.device_print == "CD" * 20
    assert said.authorities == (base64.b64decode("MIIB"), base64.b64decode("MIIC"))
    assert said.authority_prints == ("AB" * 20, "EF" * 20)


@pytest.mark.parametrize("gone", ["$Container", "$Print ", "FromBase64String"])
def test_a_script_that_lost_a_line_is_refused(gone: str) -> None:
    """If this failed, a script that does half of its work would pass for a whole one."""
    with pytest.raises(Refused, match="script-unreadable"):
        connect_script.read(written().replace(gone, "$Other").encode())
