"""Stop, let back in, revoke: who is named, what the next list says, and what OpenSSL makes of it."""

from __future__ import annotations

import subprocess
from datetime import timedelta
from pathlib import Path

import pytest

from hearthkey.core.errors import Refused
from hearthkey.core.passes import State
from hearthkey.core.revocation import FINAL_REASONS, Reason
from hearthkey.core.sentences import plans
from hearthkey.formats import pem
from hearthkey.pki import judge, lists
from hearthkey.pki.lists import ListFacts
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.opening import the_authority
from tests.fakes.home import Home
from tests.judges import needs


def newest(home: Home) -> ListFacts:
    """Read the newest list back from its DER; it is signed by the household."""
    signed = home.house.register.newest_list()
    assert signed is not None
    judge.check_list(signed.der, the_authority(home.house.register).certificate)
    return lists.read_list(signed.der)


def listed(home: Home) -> dict[str, str | None]:
    """Who stands on the newest list, and why."""
    return {one.serial: one.reason for one in newest(home).entries}


def refused_code(act: object, *given: object) -> str:
    """Return the code that a verb is refused with."""
    assert callable(act)
    with pytest.raises(Refused) as refused:
        act(*given)
    return refused.value.code


def test_the_plan_of_a_stop_names_who_loses_access_and_who_does_not(home: Home) -> None:
    """Broken if it fails: somebody stops the wrong phone and learns it from a call."""
    told = str(plans.stop(home.house.stopping.preview_stop(home.passes("Ines phone"))))
    assert told == (
        "Ines’s phone stops getting in once the gateway holds list 2. Nobody else is affected. It can be let back in."
    )


@pytest.mark.parametrize(
    ("others", "said"),
    [
        ((), "Nobody else is affected."),
        (("Odile tablet",), "The one other device is not affected."),
        (("Odile tablet", "Tomasz laptop"), "No other device gets in at present."),
    ],
)
def test_the_plan_counts_those_who_go_on(home: Home, others: tuple[str, ...], said: str) -> None:
    """Broken if it fails: the sentence promises something about devices that do not get in anyway."""
    for other in others:
        home.stop(other)
    plan = home.house.stopping.preview_revoke(home.passes("Ines phone"), Reason.KEY_COMPROMISE)
    assert plan.unaffected == 2 - len(others)
    assert said in str(plans.revoke(plan))
    assert "keyCompromise" in str(plans.revoke(plan))


def test_planning_signs_nothing(home: Home) -> None:
    """Broken if it fails: looking at a plan stops a phone."""
    home.house.stopping.preview_stop(home.passes("Ines phone"))
    home.house.stopping.preview_revoke(home.passes("Ines phone"), Reason.SUPERSEDED)
    assert home.house.register.list_high_water() == 1
    assert home.house.register.entries() == []


def test_a_stopped_pass_stands_on_the_next_list_on_hold(home: Home) -> None:
    """Broken if it fails: a stolen phone gets in."""
    changes = home.stop("Ines phone")
    chosen = home.newest("Ines phone")
    assert (changes.list_number, newest(home).number) == (2, 2)
    assert listed(home) == {chosen.serial: "certificateHold"}
    assert chosen.state(home.world.clock.now()) is State.STOPPED
    assert changes.sentence == "Ines’s phone was stopped with revocation list 2."


def test_a_pass_let_back_in_leaves_the_list(home: Home) -> None:
    """Broken if it fails: a phone that was found under the sofa stays out."""
    home.stop("Ines phone")
    home.stop("Odile tablet")
    home.world.clock.forward(hours=30)
    home.unlock()
    plan = home.house.stopping.preview_let_in(home.passes("Ines phone"))
    assert (plan.hours_away, plan.list_number) == (30, 4)
    home.house.stopping.let_in(plan)
    assert list(listed(home)) == [home.newest("Odile tablet").serial]
    assert home.newest("Ines phone").state(home.world.clock.now()) is State.WAITING


@pytest.mark.parametrize("reason", FINAL_REASONS)
def test_every_final_reason_is_signed_as_it_is(home: Home, reason: Reason) -> None:
    """Broken if it fails: the list gives another reason than the householder did (RFC 5280 section 5.3.1)."""
    home.revoke("Ines phone", reason)
    assert listed(home) == {home.newest("Ines phone").serial: reason.rfc_name}


def test_a_hold_is_not_a_final_reason(home: Home) -> None:
    """Broken if it fails: a revocation can be undone."""
    act = home.house.stopping.preview_revoke
    assert refused_code(act, home.passes("Ines phone"), Reason.CERTIFICATE_HOLD) == "reason-unknown"


def test_a_hold_that_becomes_final_keeps_its_date(home: Home) -> None:
    """Broken if it fails: the list says that a phone was good while it was stopped."""
    home.stop("Ines phone")
    stopped = home.world.clock.now()
    home.world.clock.forward(days=3)
    home.unlock()
    home.revoke("Ines phone")
    (entry,) = newest(home).entries
    assert (entry.since, entry.reason) == (stopped, "keyCompromise")


def test_what_makes_no_sense_is_refused(home: Home) -> None:
    """Broken if it fails: a verb signs a list that changes nothing, or undoes what is final."""
    verbs = home.house.stopping
    assert refused_code(verbs.preview_let_in, home.passes("Ines phone")) == "not-stopped"
    home.stop("Ines phone")
    assert refused_code(verbs.preview_stop, home.passes("Ines phone")) == "already-stopped"
    home.revoke("Ines phone")
    assert refused_code(verbs.preview_stop, home.passes("Ines phone")) == "pass-not-alive"
    assert refused_code(verbs.preview_let_in, home.passes("Ines phone")) == "revoked-is-final"
    act = verbs.preview_revoke
    assert refused_code(act, home.passes("Ines phone"), Reason.SUPERSEDED) == "revoked-already"
    home.world.clock.forward(days=800)
    assert refused_code(verbs.preview_stop, home.passes("Odile tablet")) == "pass-not-alive"


def test_all_passes_of_a_device_stop_together(home: Home) -> None:
    """Broken if it fails: a phone that was replaced once still gets in with its older pass."""
    home.add(EnrolRequest("Ines", "phone", "linux", replace=True))
    home.stop("Ines phone")
    assert set(listed(home)) == {one.serial for one in home.passes("Ines phone")}


def test_one_pass_alone_is_revoked_by_its_serial(home: Home) -> None:
    """Broken if it fails: the old pass of a replaced phone cannot be withdrawn without the new one."""
    old = home.newest("Ines phone")
    home.add(EnrolRequest("Ines", "phone", "linux", replace=True))
    home.revoke(old.serial, Reason.SUPERSEDED)
    assert listed(home) == {old.serial: "superseded"}
    assert home.newest("Ines phone").state(home.world.clock.now()) is State.WAITING


def test_an_entry_leaves_one_list_after_its_end(home: Home) -> None:
    """Broken if it fails: a gateway never hears of an end, or lists grow for ever (RFC 5280 section 3.3)."""
    home.add(EnrolRequest("Boiler engineer", "phone", "linux", guest=True))
    home.revoke("Boiler engineer")
    seen = []
    for _ in range(4):
        home.world.clock.forward(days=4)
        home.unlock()
        home.house.listing.sign_anew()
        seen.append((newest(home).number, len(newest(home).entries)))
    assert seen == [(3, 1), (4, 1), (5, 0), (6, 0)]
    assert home.newest("Boiler engineer").state(home.world.clock.now()) is State.REVOKED


def test_an_empty_list_has_no_list_of_entries(home: Home) -> None:
    """Broken if it fails: strict readers turn the list away (RFC 5280 section 5.1.2.6)."""
    home.stop("Ines phone")
    home.let_in("Ines phone")
    assert newest(home).entries == ()


def test_lists_are_written_as_pem_and_as_der(home: Home) -> None:
    """Broken if it fails: the gateway gets no list, or another one (RFC 7468 section 4, RFC 2585 section 3)."""
    changes = home.stop("Ines phone")
    signed = home.house.register.newest_list()
    assert signed is not None
    as_pem, as_der = map(Path, changes.files)
    assert (as_pem.name, as_der.name) == ("list-2.pem", "list-2.crl")
    assert as_der.read_bytes() == signed.der
    assert pem.decode(as_pem.read_text("ascii"), "X509 CRL") == [signed.der]


@pytest.mark.parametrize("verb", ["stop", "sign"])
def test_a_folder_that_takes_no_list_is_a_caution_and_the_next_start_writes_it(home: Home, verb: str) -> None:
    """Broken if it fails: a verb that was done is told as failed, and somebody does it twice."""
    folder = home.house.data / "lists"
    for path in folder.iterdir():
        path.unlink()
    folder.rmdir()
    folder.write_bytes(b"in the way")
    changes = home.stop("Ines phone") if verb == "stop" else home.house.listing.sign_anew()
    assert [one.code for one in changes.cautions] == ["list-not-written"]
    assert (changes.files, changes.list_number, newest(home).number) == ((), 2, 2)
    folder.unlink()
    home.reopen()
    assert sorted(path.name for path in folder.iterdir()) == ["list-2.crl", "list-2.pem"]


def test_an_ended_authority_signs_no_more(home: Home) -> None:
    """Broken if it fails: a list is signed that nothing vouches for, or the app calls it its own fault."""
    home.add(EnrolRequest("Ines", "watch", "linux", ends=the_authority(home.house.register).not_after))
    plan = home.house.stopping.preview_stop(home.passes("Ines watch"))
    home.world.clock.forward(days=3650)
    home.unlock()
    assert refused_code(home.house.stopping.stop, plan) == "authority-ended"
    assert refused_code(home.house.listing.sign_anew) == "authority-ended"
    assert home.house.register.entries() == []


def test_the_list_never_outlives_the_authority(home: Home) -> None:
    """Broken if it fails: a date on the first screen that cannot be kept."""
    home.world.clock.forward(days=3000)
    home.unlock()
    home.house.listing.sign_anew()
    assert newest(home).next_update == the_authority(home.house.register).not_after


def test_openssl_agrees_with_every_state(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: what the sheet says is not what a gateway does. Judge: the openssl program."""
    home.stop("Ines phone")
    home.revoke("Odile tablet")
    authority = the_authority(home.house.register).certificate
    (tmp_path / "ca.pem").write_text(pem.encode("CERTIFICATE", authority), encoding="ascii")
    signed = home.house.register.newest_list()
    assert signed is not None
    (tmp_path / "list.pem").write_text(pem.encode("X509 CRL", signed.der), encoding="ascii")
    seen = {}
    for one in home.house.register.passes():
        (tmp_path / "device.pem").write_text(
            pem.encode("CERTIFICATE", home.house.register.certificate(one.serial)), encoding="ascii"
        )
        at = str(int((home.world.clock.now() + timedelta(minutes=1)).timestamp()))
        words = ["verify", "-x509_strict", "-crl_check", "-purpose", "sslclient", "-attime", at]
        files = ["-CAfile", str(tmp_path / "ca.pem"), "-CRLfile", str(tmp_path / "list.pem")]
        run = subprocess.run(
            [needs("openssl"), *words, *files, str(tmp_path / "device.pem")],
            capture_output=True,
            text=True,
            check=False,
        )
        seen[one.title] = run.returncode, "certificate revoked" in run.stderr
    assert seen == {"Ines’s phone": (2, True), "Tomasz’s laptop": (0, False), "Odile’s tablet": (2, True)}
