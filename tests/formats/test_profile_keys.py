"""The table of published keys against the writer: none is written that it lacks, and none stands in it for nothing."""

from __future__ import annotations

import ast
import plistlib
import re
from collections.abc import Iterator
from dataclasses import replace
from itertools import product
from pathlib import Path
from typing import Any

import pytest

from hearthkey.core.connect_choices import ConnectChoices
from hearthkey.core.keysets import KEY_SETS, key_set
from hearthkey.formats import profile
from tests.formats.practice import PASSPHRASE, SETTINGS
from tests.formats.profile_schema import ASSOCIATION, IKEV2, PAYLOADS, RULE, SOURCES, TOP, walk

TABLES = {"profile": TOP, **PAYLOADS, "IKEv2": IKEV2, "association": ASSOCIATION, "rule": RULE}
CHOICES = (
    ConnectChoices(),
    ConnectChoices(by_itself=True),
    ConnectChoices(by_itself=True, own_wifi=("Quince", "Quince upstairs")),
)
ALL = tuple(product(KEY_SETS, ("split", "full"), CHOICES, (1, 2)))
"""Every key set, tunnel and choice, with one CA, and with two while one follows the other."""


def written(name: str, tunnel: str, chosen: ConnectChoices, authorities: int, **other: object) -> bytes:
    """A profile of the practice household's phone."""
    one = key_set(name)
    settings = replace(SETTINGS, key_set=name, tunnel=tunnel, ike=one.ike, esp=one.esp, key_exchange=one.key_exchange)
    return profile.write(
        replace(settings, **other),  # type: ignore[arg-type]  # each test names fields of it
        b"\x30\x82container",
        [b"\x30\x82authority"] * authorities,
        chosen,
        issuer="Household CA 2026-ab12",
        container_name="ines-phone.p12",
        mark="0123456789abcdef",
    )


def keys(whole: dict[str, Any]) -> Iterator[tuple[str, str]]:
    """Every key of a profile, with the table that it belongs to."""
    yield from (("profile", name) for name in whole)
    for payload in whole["PayloadContent"]:
        yield from ((payload["PayloadType"], name) for name in payload)
        ikev2 = payload.get("IKEv2", {})
        yield from (("IKEv2", name) for name in ikev2)
        for part in ("IKESecurityAssociationParameters", "ChildSecurityAssociationParameters"):
            yield from (("association", name) for name in ikev2.get(part, {}))
        for rule in ikev2.get("OnDemandRules", ()):
            yield from (("rule", name) for name in rule)


def test_what_is_ever_written_is_the_table() -> None:
    """Broken if it fails: a key leaves that nobody looked up, or the table vouches for one that nobody tried."""
    seen: set[tuple[str, str]] = set()
    for one in ALL:
        whole = plistlib.loads(written(*one))
        assert walk(whole) == []
        seen |= set(keys(whole))
    listed = {(table, name) for table, rows in TABLES.items() for name in rows}
    assert seen <= listed
    # What begins every payload is optional in part; each name is written somewhere.
    assert {name for _, name in seen} == {name for _, name in listed}


def test_the_writer_knows_no_other_key() -> None:
    """Broken if it fails: some branch of the writer, which no test takes, writes a key of nobody's."""
    tree = ast.parse(Path(profile.__file__).read_text(encoding="utf-8"))
    named = {
        key.value
        for one in ast.walk(tree)
        if isinstance(one, ast.Dict)
        for key in one.keys
        if isinstance(key, ast.Constant) and isinstance(key.value, str)
    }
    named |= {
        one.slice.value
        for one in ast.walk(tree)
        if isinstance(one, ast.Subscript)
        and isinstance(one.ctx, ast.Store)
        and isinstance(one.slice, ast.Constant)
        and isinstance(one.slice.value, str)
    }
    transforms = {name for name in named if re.fullmatch(r"(?:ENCR|AUTH|PRF)_\w+(?: \d+)?", name)}
    assert named - transforms == {name for rows in TABLES.values() for name in rows}


@pytest.mark.parametrize("table", TABLES)
def test_every_row_has_its_type_and_its_source(table: str) -> None:
    """Broken if it fails: somebody has to take a row on trust."""
    assert re.fullmatch(r"mdm/profiles/[\w.]+\.yaml", SOURCES[table])
    assert {row.kind for row in TABLES[table].values()} <= {str, int, bytes, list, dict}


def test_rules_are_for_wifi_mobile_data_and_nothing_else() -> None:
    """Broken if it fails: a laptop tunnels from the desk at home, or the café reads along."""
    for one in ALL:
        chosen = one[2]
        (ikev2,) = (part["IKEv2"] for part in plistlib.loads(written(*one))["PayloadContent"] if "IKEv2" in part)
        rules = ikev2.get("OnDemandRules", [])
        assert ("OnDemandEnabled" in ikev2) == bool(rules) == chosen.by_itself
        if rules:
            assert [rule["Action"] for rule in rules][-3:] == ["Connect", "Connect", "Ignore"]
            assert [rule.get("SSIDMatch") for rule in rules if rule["Action"] == "Disconnect"] == (
                [list(chosen.own_wifi)] if chosen.own_wifi else []
            )


def test_names_stay_through_a_renewal_whatever_was_chosen_meanwhile() -> None:
    """Broken if it fails: the renewed profile lies beside the old one, and the phone takes the old pass."""
    first = plistlib.loads(written(*ALL[0]))
    for one in ALL:
        again = plistlib.loads(
            written(*one, serial="0f" * 20, ends=SETTINGS.ends.replace(year=2030), device="Ines’s new")
        )
        for name in ("PayloadIdentifier", "PayloadUUID"):
            assert again[name] == first[name]
        for kind in ("com.apple.security.pkcs12", "com.apple.vpn.managed"):
            old, new = (
                next(part for part in whole["PayloadContent"] if part["PayloadType"] == kind)
                for whole in (first, again)
            )
            assert (old["PayloadIdentifier"], old["PayloadUUID"]) == (new["PayloadIdentifier"], new["PayloadUUID"])
        names = [part["PayloadIdentifier"] for part in again["PayloadContent"]]
        assert len(set(names)) == len(names)
        assert all(name.startswith(f"{again['PayloadIdentifier']}.") for name in names)


def test_no_key_for_a_passphrase_is_ever_there() -> None:
    """Broken if it fails: the file would open itself (the schema has keys for that; none of them is ours)."""
    for one in ALL:
        data = written(*one)
        assert not re.search(rb"<key>[^<]*(?:password|secret|shared)[^<]*</key>", data, re.IGNORECASE)
        assert PASSPHRASE.encode() not in data
