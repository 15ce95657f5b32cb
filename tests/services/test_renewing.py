"""Renewals on a real household: a new key under the old identity, both good for a while, and the old one's end."""

from __future__ import annotations

import subprocess
from datetime import timedelta
from pathlib import Path

import pytest

from hearthkey.core.errors import Refused
from hearthkey.core.passes import State
from hearthkey.core.plans import Changes
from hearthkey.core.revocation import Reason
from hearthkey.core.sentences import renewal as sentences
from hearthkey.formats import pem
from hearthkey.pki import lists, read
from hearthkey.services.opening import the_authority
from tests.fakes.home import Home
from tests.fakes.workshop import QuickWorkshop
from tests.judges import needs


@pytest.fixture(autouse=True)
def quick(home: Home) -> None:
    """Ines's phone is in use for a month; what is made from now on is sealed at once."""
    home.world.workshop = QuickWorkshop()
    home.reopen()
    home.hand_over("Ines phone")
    home.world.clock.forward(days=690)
    home.unlock()


def renew(home: Home, text: str = "Ines phone") -> Changes:
    """Renew a device."""
    return home.house.renewing.renew(home.house.renewing.preview(home.passes(text)))


def prove(home: Home, text: str = "Ines phone") -> None:
    """Somebody tells that it works."""
    proving = home.house.proving
    proving.told(proving.preview_told(proving.choose(home.passes(text))))


def test_a_renewal_has_a_new_key_and_serial_under_the_same_identity(home: Home) -> None:
    """Broken if it fails: the gateway takes the device for another one, or an old key lives on."""
    before = home.passes("Ines phone")
    plan = home.house.renewing.preview(before)
    changes = home.house.renewing.renew(plan)
    old, new = home.passes("Ines phone")
    assert (old, new.identity, new.kind, new.key_set) == (before[0], old.identity, old.kind, old.key_set)
    assert (new.serial, new.not_after, new.state(home.world.clock.now())) == (
        *changes.serials,
        plan.ends,
        State.WAITING,
    )
    certificates = [read.certificate_facts(home.house.register.certificate(one.serial)) for one in (old, new)]
    keys = {read.public_of(home.house.register.certificate(one.serial)) for one in (old, new)}
    assert certificates[0].names == certificates[1].names
    assert len(keys) == 2
    assert [name for name in home.world.vault.secrets if new.serial in name] != []
    (follow,) = home.house.register.follows()
    assert (follow.new, follow.old, follow.overlap_ends) == (new.serial, old.serial, plan.overlap_ends)
    assert "got its next pass until" in changes.sentence


def test_while_one_waits_no_second_is_made(home: Home) -> None:
    """Broken if it fails: two bundles of one device lie in the tray, and the wrong one is handed over."""
    renew(home)
    with pytest.raises(Refused, match="renewal-waits"):
        renew(home)
    planned = home.house.renewing.plan_named([home.passes("Ines phone")])
    assert (planned.plans, [one.why for one in planned.left]) == ((), ["waits"])


def test_a_revoked_device_is_not_renewed_and_an_ended_one_is(home: Home) -> None:
    """Broken if it fails: a stolen phone is let in again by a round, or a forgotten one has no way back."""
    home.world.clock.forward(days=60)
    home.unlock()
    plan = home.house.renewing.preview(home.passes("Ines phone"))
    assert not plan.overlaps
    assert "nothing overlaps" in str(sentences.plan(plan))
    assert "beside it" not in renew(home).sentence
    home.revoke("Ines phone")
    with pytest.raises(Refused, match="device-revoked"):
        renew(home)


def test_the_old_pass_stays_until_the_new_one_was_proved(home: Home) -> None:
    """Broken if it fails: a device is locked out by its own renewal."""
    renew(home)
    follow_up = home.house.superseding.follow_up
    assert follow_up() is None
    home.hand_over("Ines phone")
    assert follow_up() is None
    with pytest.raises(Refused, match="nothing-to-supersede"):
        home.house.superseding.preview_supersede(home.passes("Tomasz laptop"))
    prove(home)
    done = follow_up()
    assert done is not None
    old, new = home.passes("Ines phone")
    now = home.world.clock.now()
    assert (old.reason, old.state(now), new.state(now)) == (Reason.SUPERSEDED, State.REVOKED, State.IN_USE)
    newest = home.house.register.newest_list()
    assert newest is not None
    entries = {one.serial: one.reason for one in lists.read_list(newest.der).entries}
    assert entries == {old.serial: "superseded"}
    assert "Ines’s phone" in done.sentence
    assert follow_up() is None


def test_locked_it_waits_for_the_next_unlock(home: Home) -> None:
    """Broken if it fails: a proof while the household is locked is an error, or is forgotten."""
    renew(home)
    home.hand_over("Ines phone")
    home.house.keyholder.lock()
    prove(home)
    assert home.house.superseding.follow_up() is None
    home.unlock()
    assert home.house.superseding.follow_up() is not None


def test_the_householder_may_say_so_but_never_where_nothing_works_yet(home: Home) -> None:
    """Broken if it fails: an impatient click leaves the grandmother outside."""
    renew(home)
    with pytest.raises(Refused, match="supersede-leaves-none"):
        home.house.superseding.preview_supersede(home.passes("Ines phone"))
    home.hand_over("Ines phone")
    plan = home.house.superseding.preview_supersede(home.passes("Ines phone"))
    home.stop(home.newest("Ines phone").serial)
    with pytest.raises(Refused, match="supersede-leaves-none"):
        home.house.superseding.supersede(plan)


def test_a_renewal_is_taken_back_and_the_old_pass_stays(home: Home) -> None:
    """Broken if it fails: a renewal by mistake cannot be undone, or costs the pass that works."""
    renew(home)
    old, new = home.passes("Ines phone")
    plan = home.house.superseding.preview_take_back(home.passes("Ines phone"))
    home.house.superseding.take_back(plan)
    after = home.passes("Ines phone")
    assert after[0] == old
    assert (after[1].reason, home.house.register.sealed(new.serial)) == (Reason.CESSATION_OF_OPERATION, None)
    assert [name for name in home.world.vault.secrets if new.serial in name] == []
    with pytest.raises(Refused, match="nothing-to-take-back"):
        home.house.superseding.preview_take_back(after)
    again = renew(home)
    assert again.serials != (new.serial,)


def test_what_was_handed_over_is_not_taken_back(home: Home) -> None:
    """Broken if it fails: a device that has its new pass loses it."""
    renew(home)
    home.hand_over("Ines phone")
    with pytest.raises(Refused, match="nothing-to-take-back"):
        home.house.superseding.preview_take_back(home.passes("Ines phone"))


def test_a_round_is_stopped_between_two_devices_and_taken_up_again(home: Home) -> None:
    """Broken if it fails: a round that was stopped is begun from the start, or leaves half a device."""
    home.hand_over("Tomasz laptop")
    until = home.world.clock.now() + timedelta(days=60)
    planned = home.house.renewing.plan_due(until)
    assert [one.old.title for one in planned.plans] == ["Ines’s phone", "Tomasz’s laptop"]
    asked = iter([False, True])
    came = home.house.renewing.go_round(planned, stopped=lambda: next(asked))
    assert (len(came.done), [one.old.title for one in came.ahead], came.failed) == (1, ["Tomasz’s laptop"], None)
    again = home.house.renewing.plan_due(until)
    assert [one.old.title for one in again.plans] == ["Tomasz’s laptop"]
    assert [(one.chosen.title, one.why) for one in again.left] == [("Ines’s phone", "waits")]
    assert len(home.house.renewing.go_round(again).done) == 1
    assert home.house.renewing.plan_due(until).plans == ()


def test_what_fails_in_a_round_is_said_and_what_was_made_stays(home: Home) -> None:
    """Broken if it fails: one locked keyring undoes a round, or is not told."""
    planned = home.house.renewing.plan_due(home.world.clock.now() + timedelta(days=60))
    home.house.keyholder.lock()
    came = home.house.renewing.go_round(planned)
    assert came.failed is not None
    assert (came.failed.code, came.done, came.ahead) == ("household-locked", (), planned.plans)


def test_a_visit_takes_along_what_ends_before_the_next_one(home: Home) -> None:
    """Broken if it fails: a pass ends between two visits, though somebody was there in time."""
    visiting, now = home.house.visiting, home.world.clock.now()
    soon, later = (visiting.checked("ines", now + timedelta(days=days)) for days in (5, 30))
    visiting.plan(later)
    assert soon.person == "Ines"
    assert home.house.renewing.due(visiting.covers(soon), person="Ines") == []
    visiting.call_off("Ines", later.day)
    assert [one.title for one in home.house.renewing.due(visiting.covers(soon), person="Ines")] == ["Ines’s phone"]
    assert home.house.renewing.due(visiting.covers(soon), person="Tomasz") == []
    visiting.plan(soon)
    visiting.plan(soon)
    assert visiting.ahead() == [soon]
    home.world.clock.forward(days=6)
    assert visiting.ahead() == []
    for text, on, code in (("Nobody", now, "person-unknown"), ("Ines", now, "visit-over")):
        with pytest.raises(Refused, match=code):
            visiting.checked(text, on)
    with pytest.raises(Refused, match="visit-unknown"):
        visiting.call_off("Ines", later.day)


def openssl_says(home: Home, serial: str, folder: Path) -> bool:
    """Whether OpenSSL lets a pass in by the newest list."""
    register = home.house.register
    newest = register.newest_list()
    assert newest is not None
    files = {
        "ca.pem": pem.encode("CERTIFICATE", the_authority(register).certificate),
        "list.pem": pem.encode("X509 CRL", newest.der),
        "device.pem": pem.encode("CERTIFICATE", register.certificate(serial)),
    }
    for name, text in files.items():
        (folder / name).write_text(text, encoding="ascii")
    at = int(home.world.clock.now().timestamp())
    words = ["openssl", "verify", "-crl_check", "-attime", str(at), "-purpose", "sslclient", "-CAfile", "ca.pem"]
    ran = subprocess.run(
        [*words, "-CRLfile", "list.pem", "device.pem"], cwd=folder, capture_output=True, text=True, check=False
    )
    assert ran.returncode == 0 or "certificate revoked" in ran.stderr
    return ran.returncode == 0


def test_openssl_lets_both_in_while_they_overlap_and_the_new_one_alone_after(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: a gateway refuses the old pass too soon, or lets it in for ever."""
    needs("openssl")
    renew(home)
    old, new = home.passes("Ines phone")
    assert [openssl_says(home, one.serial, tmp_path) for one in (old, new)] == [True, True]
    home.hand_over("Ines phone")
    prove(home)
    home.house.superseding.follow_up()
    assert [openssl_says(home, one.serial, tmp_path) for one in (old, new)] == [False, True]
    said = subprocess.run(
        ["openssl", "crl", "-in", "list.pem", "-noout", "-text"],
        cwd=tmp_path,
        capture_output=True,
        text=True,
        check=True,
    )
    assert "Superseded" in said.stdout
