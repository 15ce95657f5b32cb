"""The register: all of a change or nothing of it, and nothing twice."""

from __future__ import annotations

import sqlite3
import stat
from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from datetime import timedelta
from ipaddress import ip_network
from pathlib import Path

import pytest

from hearthkey.adapters.register import FILE_NAME, SqliteRegister
from hearthkey.core.diary import DiaryEntry
from hearthkey.core.errors import Bug, Refused, Unavailable
from hearthkey.core.passes import State
from hearthkey.core.proofs import Proof, Way
from hearthkey.core.revocation import Reason, SignedList
from hearthkey.services.ports import NewPass
from tests.fakes.clock import NOW
from tests.fakes.home import founded


@pytest.fixture
def register(tmp_path: Path) -> Iterator[SqliteRegister]:
    """A copy of Quince Cottage's register."""
    founded().put_into(tmp_path / "data")
    with closing(SqliteRegister(tmp_path / "data" / FILE_NAME)) as opened:
        yield opened


def new_pass(register: SqliteRegister, **changes: object) -> NewPass:
    """A pass like the first one, with other values in places."""
    about = replace(register.passes()[0], serial="0abc", device="watch", identity="watch222.quince.example")
    return NewPass(replace(about, **changes), b"certificate", b"sealed")  # type: ignore[arg-type]  # names of fields


def break_off(register: SqliteRegister, serial: str) -> None:
    """Begin a change of many things, and fail in the middle of it."""
    with register.change() as change:
        change.hand_over(serial, NOW)
        change.withdraw(serial, Reason.KEY_COMPROMISE, NOW)
        change.add_list(SignedList(2, b"list", NOW, NOW + timedelta(days=800)))
        change.add_diary(DiaryEntry(9, NOW, "revoke", "It was revoked.", "0" * 64))
        raise KeyboardInterrupt


def test_a_change_that_breaks_off_leaves_nothing(register: SqliteRegister) -> None:
    """Broken if it fails: half of a verb is done."""
    before = (register.passes(), register.entries(), register.lists(), register.diary(), register.list_high_water())
    serial = register.passes()[0].serial
    with pytest.raises(KeyboardInterrupt):
        break_off(register, serial)
    assert before == (
        register.passes(),
        register.entries(),
        register.lists(),
        register.diary(),
        register.list_high_water(),
    )
    assert register.sealed(serial) is not None


def test_what_is_written_is_there_after_opening_again(register: SqliteRegister) -> None:
    """Broken if it fails: the household is another one tomorrow."""
    before = (register.household(), register.authority(), register.gateway(), register.passes(), register.diary())
    register.close()
    with closing(SqliteRegister(register.path)) as again:
        assert before == (again.household(), again.authority(), again.gateway(), again.passes(), again.diary())


@pytest.mark.parametrize("what", ["serial", "identity", "gateway serial"])
def test_nothing_is_used_twice(register: SqliteRegister, what: str) -> None:
    """Broken if it fails: one revocation stops two devices, or one name lets two in."""
    first, gateway = register.passes()[0], register.gateway()
    assert gateway is not None
    twice = {
        "serial": new_pass(register, serial=first.serial),
        "identity": new_pass(register, identity=first.identity),
        "gateway serial": new_pass(register, serial=gateway.serial),
    }[what]
    with pytest.raises(Refused) as refused, register.change() as change:
        change.add_pass(twice, NOW)
    assert refused.value.code == "already-used"
    assert len(register.passes()) == 3


def test_a_list_number_is_never_used_twice(register: SqliteRegister) -> None:
    """Broken if it fails: two lists with one number (RFC 5280 section 5.2.3)."""
    with pytest.raises(Refused) as refused, register.change() as change:
        change.add_list(SignedList(1, b"another", NOW, NOW))
    assert refused.value.code == "already-used"


def test_one_person_has_no_two_devices_of_a_name(register: SqliteRegister) -> None:
    """Broken if it fails: "stop Ines's phone" means two phones; names that differ in case alone are one."""
    again = new_pass(register, person="INES", device="PHONE")
    with pytest.raises(Refused), register.change() as change:
        change.add_pass(again, NOW)
    assert len(register.passes()) == 3


def test_a_second_pass_of_a_device_is_welcome(register: SqliteRegister) -> None:
    """Broken if it fails: a lost bundle cannot be replaced."""
    first = register.passes()[0]
    again = new_pass(register, person=first.person, device=first.device, identity=first.identity)
    with register.change() as change:
        change.add_pass(again, NOW)
    assert [one.serial for one in register.passes() if one.identity == first.identity] == [first.serial, "0abc"]


def test_proofs_come_with_their_pass(register: SqliteRegister) -> None:
    """Broken if it fails: a proof stands beside another device, or in another order than it happened."""
    first, second = (one.serial for one in register.passes()[:2])
    seen = [Proof(NOW + timedelta(days=day), Way.TUNNEL, "203.0.113.10") for day in (3, 1, 2)]
    with register.change() as change:
        for one in seen:
            change.add_proof(first, one)
        change.add_proof(second, Proof(NOW, Way.TOLD))
    found = {one.serial: one.proofs for one in register.passes()}
    assert found[first] == (seen[1], seen[2], seen[0])
    assert found[second] == (Proof(NOW, Way.TOLD),)
    with pytest.raises(Refused), register.change() as change:
        change.add_proof("0f0f", seen[0])


def prove_and_break_off(register: SqliteRegister, serial: str) -> None:
    """Begin to write a proof, look, and fail."""
    with register.change() as change:
        change.add_proof(serial, Proof(NOW, Way.TOLD))
        assert register.passes()[0].proved == NOW
        raise KeyboardInterrupt


def test_a_proof_that_was_taken_back_with_its_change_was_never_there(register: SqliteRegister) -> None:
    """Broken if it fails: a proof is shown that is not in the register, or one of a second connection never is."""
    serial = register.passes()[0].serial
    with pytest.raises(KeyboardInterrupt):
        prove_and_break_off(register, serial)
    assert register.passes()[0].proved is None
    with closing(SqliteRegister(register.path)) as other, other.change() as change:
        change.add_proof(serial, Proof(NOW + timedelta(days=2), Way.TOLD))
    assert register.passes()[0].proved == NOW + timedelta(days=2)
    with register.change() as change:
        change.add_proof(serial, Proof(NOW + timedelta(days=1), Way.TUNNEL, "203.0.113.10"))
    assert [one.at for one in register.passes()[0].proofs] == [NOW + timedelta(days=day) for day in (1, 2)]
    assert register.passes() == register.passes()


def test_a_handed_over_row_proves_the_erasure(register: SqliteRegister) -> None:
    """Broken if it fails: the key of a device that is on its way stays here."""
    serial = register.passes()[0].serial
    with register.change() as change:
        change.hand_over(serial, NOW)
    assert register.sealed(serial) is None
    assert register.passes()[0].handed_over == NOW
    with pytest.raises(Bug), register.change() as change:
        change.hand_over(serial, NOW)


def test_settings_are_written_anew(register: SqliteRegister) -> None:
    """Broken if it fails: a change of the settings is another one tomorrow, or makes a second household."""
    before = register.household()
    assert before is not None
    after = replace(
        before,
        name="Quince House",
        gateway_host="door.quince.example",
        identity_suffix="plum.example",
        home_subnets=(ip_network("192.0.2.0/24"), ip_network("2001:db8::/64")),
        tunnel_subnet=ip_network("198.51.100.0/24"),
        dns_servers=(),
        tunnel="full",
    )
    with register.change() as change:
        change.settle(after)
    register.close()
    with closing(SqliteRegister(register.path)) as again:
        assert again.household() == after


def test_practice_stays_practice(register: SqliteRegister) -> None:
    """Broken if it fails: a household made of samples is delivered to a gateway."""
    before = register.household()
    assert before is not None
    with pytest.raises(Bug), register.change() as change:
        change.settle(replace(before, practice=not before.practice))
    assert register.household() == before


def test_a_hold_that_becomes_final_keeps_its_date(register: SqliteRegister) -> None:
    """Broken if it fails: the list says that a stolen phone was good for days after it was stopped."""
    serial = register.passes()[0].serial
    with register.change() as change:
        change.withdraw(serial, Reason.CERTIFICATE_HOLD, NOW)
        change.withdraw(serial, Reason.KEY_COMPROMISE, NOW + timedelta(days=2))
    (entry,) = register.entries()
    assert (entry.serial, entry.since, entry.reason) == (serial, NOW, Reason.KEY_COMPROMISE)


def test_what_is_final_is_never_lifted_nor_changed(register: SqliteRegister) -> None:
    """Broken if it fails: a revoked pass gets in again."""
    serial = register.passes()[0].serial
    with register.change() as change:
        change.withdraw(serial, Reason.KEY_COMPROMISE, NOW)
    with pytest.raises(Bug), register.change() as change:
        change.lift(serial, NOW)
    with pytest.raises(Refused), register.change() as change:
        change.withdraw(serial, Reason.CERTIFICATE_HOLD, NOW)
    assert register.passes()[0].state(NOW) is State.REVOKED


def test_the_register_and_its_log_are_for_their_owner_alone(register: SqliteRegister) -> None:
    """Broken if it fails: other users of the computer read who has which device."""
    with register.change() as change:
        change.loosen_secret("a/b", "file")
    modes = {path.name: stat.S_IMODE(path.stat().st_mode) for path in register.path.parent.glob("register.db*")}
    assert modes == {"register.db": 0o600, "register.db-wal": 0o600, "register.db-shm": 0o600}


@pytest.mark.parametrize(
    ("name", "value"),
    [("journal_mode", "wal"), ("synchronous", 2), ("foreign_keys", 1), ("secure_delete", 1)],
)
def test_the_settings_that_keep_the_promises(register: SqliteRegister, name: str, value: object) -> None:
    """Broken if it fails: a power cut loses a stop, or an erased key stays in the file (SQLite, PRAGMA list)."""
    # These belong to a connection, so the register's own has to be asked.
    assert register._connection.execute(f"PRAGMA {name}").fetchone() == (value,)  # noqa: SLF001 - see above


@pytest.mark.parametrize("table", ["serial", "person", "device", "pass", "revocation_list", "diary", "withdrawal"])
def test_what_happened_is_kept_for_ever(register: SqliteRegister, table: str) -> None:
    """Broken if it fails: a program that opens the file can make a pass or a list unhappen."""
    with register.change() as change:
        change.withdraw(register.passes()[0].serial, Reason.CERTIFICATE_HOLD, NOW)
    register.close()
    with closing(sqlite3.connect(register.path)) as other, pytest.raises(sqlite3.IntegrityError, match="kept for ever"):
        other.execute(f"DELETE FROM {table}")  # noqa: S608 - a name out of the list above


@pytest.mark.parametrize(
    "statement",
    [
        "UPDATE revocation_list SET der = x'00'",
        "UPDATE diary SET sentence = 'Nothing happened.'",
        "UPDATE serial SET not_after = 0",
    ],
)
def test_what_was_signed_or_said_is_never_altered(register: SqliteRegister, statement: str) -> None:
    """Broken if it fails: a list or a sentence changes after the fact."""
    register.close()
    with closing(sqlite3.connect(register.path)) as other, pytest.raises(sqlite3.IntegrityError, match="never altered"):
        other.execute(statement)


def test_a_revoked_pass_never_comes_back_by_hand(register: SqliteRegister) -> None:
    """Broken if it fails: a line of SQL lets a stolen phone in."""
    with register.change() as change:
        change.withdraw(register.passes()[0].serial, Reason.KEY_COMPROMISE, NOW)
    register.close()
    with (
        closing(sqlite3.connect(register.path)) as other,
        pytest.raises(sqlite3.IntegrityError, match="never comes back"),
    ):
        other.execute("UPDATE withdrawal SET lifted = 1")


def test_marks_only_rise(register: SqliteRegister) -> None:
    """Broken if it fails: a list number comes a second time, and a gateway keeps the older list."""
    register.close()
    with closing(sqlite3.connect(register.path)) as other, pytest.raises(sqlite3.IntegrityError, match="only rises"):
        other.execute("UPDATE mark SET value = 0 WHERE name = 'list'")


def test_a_certificate_nobody_has_is_refused(register: SqliteRegister) -> None:
    """Broken if it fails: a wrong serial ends in a trace."""
    with pytest.raises(Refused) as refused:
        register.certificate("ffff")
    assert refused.value.code == "pass-unknown"


def test_two_that_write_at_once_wait_and_are_told(register: SqliteRegister, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: a second program that holds the file makes the app hang or crash."""
    with closing(sqlite3.connect(register.path, isolation_level=None)) as other:
        other.execute("BEGIN IMMEDIATE")
        monkeypatch.setattr(register, "_connection", sqlite3.connect(register.path, isolation_level=None, timeout=0))
        with pytest.raises(Unavailable) as unavailable:
            register.expect_secrets(["a/b"], "file")
        other.execute("ROLLBACK")
    assert unavailable.value.code == "register-busy"
