"""Judges a household after a crash: whole, consistent, and no secret that belongs to nothing."""

from __future__ import annotations

import re
import sqlite3
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path

from hearthkey.adapters.register import FILE_NAME, SqliteRegister
from hearthkey.core.diary import first_misfit
from hearthkey.core.household import Authority
from hearthkey.core.pack import second_name
from hearthkey.core.secret import Secret
from hearthkey.formats import pem
from hearthkey.pki import pkcs8, pkcs12
from hearthkey.pki.lists import read_list
from hearthkey.services import secret_names
from hearthkey.services.listing import file_names
from hearthkey.services.restoring import GAP
from tests.crash.homes import Home

_TABLES = (
    *("household", "authority", "gateway", "person", "device"),
    *("pass", "serial", "certificate", "withdrawal", "spare_list", "proof", "follows"),
    *("succession", "succession_step", "list_signer", "list_beside"),
    *("copy_lock", "sealed_copy"),
)


@dataclass(frozen=True)
class Outline:
    """What is in a register, without what is drawn by lot: two runs of one verb have the same.

    Args:
        rows: how many rows each table has.
        passes: title, reason, whether it was handed over, whether its key is here.
        lists: numbers.
        spares: numbers of the spare lists.
        verbs: of the diary.
        host: as the settings name it, and as the gateway is certified.
    """

    rows: tuple[int, ...]
    passes: tuple[tuple[str, str | None, bool, bool], ...]
    lists: tuple[int, ...]
    spares: tuple[int, ...]
    verbs: tuple[str, ...]
    host: tuple[str, ...]


def open_register(home: Home) -> SqliteRegister:
    """Open the register for looking only."""
    return SqliteRegister(home.data / FILE_NAME, read_only=True)


def judge(home: Home) -> Outline:
    """Check that everything fits together, and return what there is."""
    with closing(open_register(home)) as register:
        assert register.loose_secrets() == []
        _check_lists(register)
        entries = register.diary()
        assert first_misfit(entries, written=register.diary_written()) is None
        secrets = home.secrets()
        assert secrets.keys() == _named(register)
        _check_gateway(secrets, register)
        for one in register.passes():
            assert (register.sealed(one.serial) is not None) == one.key_is_here
            assert not one.key_lost
        return Outline(
            rows=_rows(home),
            passes=tuple(
                (
                    one.title,
                    None if one.reason is None else one.reason.rfc_name,
                    one.handed_over is not None,
                    register.sealed(one.serial) is not None,
                )
                for one in register.passes()
            ),
            lists=tuple(one.number for one in register.lists()),
            spares=tuple(one.number for one in register.spare_lists()),
            verbs=tuple(one.verb for one in entries),
            host=_hosts(register),
        )


def _hosts(register: SqliteRegister) -> tuple[str, ...]:
    household, gateway = register.household(), register.gateway()
    return () if household is None or gateway is None else (household.gateway_host, gateway.host)


def _rows(home: Home) -> tuple[int, ...]:
    path = home.data / FILE_NAME
    if not path.exists():
        return (0,) * len(_TABLES)
    with closing(sqlite3.connect(f"{path.as_uri()}?mode=ro", uri=True)) as connection:
        assert connection.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
        assert connection.execute("PRAGMA foreign_key_check").fetchall() == []
        return tuple(len(connection.execute(f"SELECT * FROM {table}").fetchall()) for table in _TABLES)  # noqa: S608 - our own names


def _check_lists(register: SqliteRegister) -> None:
    signed = register.lists()
    numbers = [one.number for one in signed]
    assert numbers == sorted(set(numbers)) == [read_list(one.der).number for one in signed]
    spares = [one.number for one in register.spare_lists()]
    highest = max([*numbers, *spares], default=0)
    mark = register.list_high_water()
    assert mark == highest or mark > highest + GAP // 2, "a mark jumps only where a household was brought back"
    if signed:
        for der in signed[-1].ders:
            listed = {(one.serial, one.reason) for one in read_list(der).entries}
            assert listed == {(one.serial, one.reason.rfc_name) for one in register.entries()}
        assert len(signed[-1].ders) == len(register.authorities())
        _check_spares(register, {serial for serial, _ in listed})


def _check_spares(register: SqliteRegister, listed: set[str]) -> None:
    """No spare list that may still be used lets anybody back in."""
    newest = register.lists()[-1].number
    for one in register.spare_lists():
        signed = register.signed_spare(one.number)
        assert signed is not None
        entries = {entry.serial for entry in read_list(signed.der).entries}
        assert one.serials <= entries
        assert one.number <= newest or one.base != newest or listed <= entries


def _named(register: SqliteRegister) -> set[str]:
    """Names of the secrets that the register says there are, as file names."""
    authority, gateway = register.authority(), register.gateway()
    if authority is None or gateway is None:
        return set()
    names = [secret_names.gateway_key(authority, gateway.serial)]
    names += [secret_names.authority_key(one) for one in register.authorities()]
    names += [secret_names.bundle_passphrase(authority, one.serial) for one in register.passes() if one.key_is_here]
    if register.copy_lock() is not None:
        names.append(secret_names.copy_mark(authority))
    return {filed(name) for name in names}


def filed(name: str) -> str:
    """A secret's name as `Home.secrets` has it."""
    return re.sub(r"[^a-z0-9]+", ".", name)


def _check_gateway(secrets: dict[str, str], register: SqliteRegister) -> None:
    authority, gateway = register.authority(), register.gateway()
    if authority is not None and gateway is not None:
        secret = Secret(secrets[filed(secret_names.gateway_key(authority, gateway.serial))])
        assert pkcs8.open_key(gateway.sealed_key, secret).reveal()


def check_waiting_open(home: Home) -> int:
    """Open every waiting pass with the passphrase from the vault; return how many there are."""
    secrets, opened = home.secrets(), 0
    with closing(open_register(home)) as register:
        authority = register.authority()
        for one in register.passes():
            sealed = register.sealed(one.serial)
            if isinstance(authority, Authority) and sealed is not None:
                secret = secrets[filed(secret_names.bundle_passphrase(authority, one.serial))]
                assert pkcs12.open_container(sealed, Secret(secret)).certificate == register.certificate(one.serial)
                opened += 1
    return opened


def check_published(home: Home) -> None:
    """After the next start for writing the newest list lies in its folder, and nothing there is half written."""
    folder = home.data / "lists"
    with closing(open_register(home)) as register:
        wanted: dict[str, bytes] = {}
        for one in register.lists():
            as_pem, as_der = file_names(one.number)
            as_text = "".join(pem.encode(pem.X509_CRL, der) for der in one.ders)
            wanted |= {as_pem: as_text.encode("ascii"), as_der: one.ders[0]}
            wanted |= {second_name(as_der): der for der in one.ders[1:]}
        there = {path.name: path.read_bytes() for path in folder.iterdir()} if folder.exists() else {}
        newest = register.newest_list()
    assert there.items() <= wanted.items()
    assert newest is None or there.keys() >= set(file_names(newest.number))


def traces(folder: Path, piece: bytes) -> list[str]:
    """Names of the files of a folder that contain some octets."""
    return [path.name for path in sorted(folder.rglob("*")) if path.is_file() and piece in path.read_bytes()]
