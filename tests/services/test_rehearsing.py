"""A rehearsal stops at the very step at which a device would be stopped, and says so."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from hearthkey.core.bundle import Bundle, Credential, Form
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.passes import Pass
from hearthkey.core.rehearsal import STEPS, Rehearsal, RehearsalFailed
from hearthkey.core.secret import Secret
from hearthkey.pki import pkcs8, read
from hearthkey.services import secret_names
from hearthkey.services.bundling import Written
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.opening import the_authority
from hearthkey.services.reading_forms import recognise
from tests.fakes.clock import NOW
from tests.fakes.home import Home
from tests.pki import quince

OPENED: dict[str, Bundle] = {}
LONG = EnrolRequest("Ines", "watch", "linux", ends=NOW + timedelta(days=1500))


def rehearse(home: Home, bundle: Bundle, *, identity: str | None = None) -> Rehearsal:
    """Rehearse a bundle file."""
    files = home.house.bundling.write(bundle, Form.BUNDLE)
    return home.house.rehearsing.rehearse(Form.BUNDLE, files, bundle.passphrase, identity=identity)


def stopped_at(home: Home, bundle: Bundle, *, identity: str | None = None) -> tuple[str, str]:
    """Return the step at which a bundle's rehearsal stops, and the code that tells it."""
    with pytest.raises(RehearsalFailed) as failed:
        rehearse(home, bundle, identity=identity)
    return step_of(failed.value)


def step_of(error: RehearsalFailed) -> tuple[str, str]:
    """Return the step and the code of a failed rehearsal; the steps before it went well."""
    failed = error.rehearsal.failed
    assert failed is not None
    assert [one.name for one in error.rehearsal.steps] == list(STEPS[: STEPS.index(failed.name) + 1])
    assert not error.rehearsal.passed
    return failed.name, error.code


def opened(home: Home, text: str = "Ines phone") -> tuple[Pass, Bundle]:
    """Open a device's bundle; each of them once, for opening is slow on purpose."""
    chosen = home.newest(text)
    if chosen.serial not in OPENED:
        OPENED[chosen.serial] = home.house.bundling.open(chosen)
    return chosen, OPENED[chosen.serial]


@pytest.mark.parametrize("form", list(Form))
def test_every_form_of_a_good_bundle_gets_in(home: Home, form: Form) -> None:
    """Broken if it fails: no bundle ever leaves the house."""
    chosen, bundle = opened(home)
    files = home.house.bundling.write(bundle, form)
    rehearsal = home.house.rehearsing.rehearse(form, files, bundle.passphrase, identity=chosen.identity)
    assert rehearsal.passed
    assert recognise(files) is form


def test_an_old_container_gets_in_too(home: Home) -> None:
    """Broken if it fails: grandmother's tablet cannot be handed anything."""
    chosen, bundle = opened(home, "Odile tablet")
    files = home.house.bundling.write(bundle, Form.PKCS12)
    rehearsal = home.house.rehearsing.rehearse(Form.PKCS12, files, bundle.passphrase, identity=chosen.identity)
    assert rehearsal.passed


@pytest.mark.parametrize("form", list(Form))
def test_a_cut_file_stops_at_reading(home: Home, form: Form) -> None:
    """Broken if it fails: half a file leaves the house."""
    _, bundle = opened(home)
    files = home.house.bundling.write(bundle, form)
    cut = [*files[:-1], replace(files[-1], data=files[-1].data[: len(files[-1].data) // 2])]
    with pytest.raises(RehearsalFailed) as failed:
        home.house.rehearsing.rehearse(form, cut, bundle.passphrase, identity=None)
    assert step_of(failed.value)[0] == "read"


def test_a_missing_code_stops_at_reading(home: Home) -> None:
    """Broken if it fails: a relative scans all but one and is told that the passphrase is wrong."""
    _, bundle = opened(home)
    files = home.house.bundling.write(bundle, Form.CODES)
    assert len(files) > 1
    with pytest.raises(RehearsalFailed) as failed:
        home.house.rehearsing.rehearse(Form.CODES, files[1:], bundle.passphrase, identity=None)
    assert step_of(failed.value) == ("read", "codes-missing")


@pytest.mark.parametrize("form", list(Form))
def test_a_wrong_passphrase_stops_at_opening(home: Home, form: Form) -> None:
    """Broken if it fails: a bundle leaves with a passphrase that opens something else."""
    _, bundle = opened(home)
    files = home.house.bundling.write(bundle, form)
    with pytest.raises(RehearsalFailed) as failed:
        home.house.rehearsing.rehearse(form, files, Secret("not these seven words"), identity=None)
    assert step_of(failed.value) == ("open", "wrong-passphrase")
    assert set(failed.value.facts) == {"form", "step", "seen"}


def test_settings_of_another_device_stop_at_opening(home: Home) -> None:
    """Broken if it fails: a phone calls itself by the name of a laptop."""
    (_, phone), (_, laptop) = opened(home), opened(home, "Tomasz laptop")
    swapped = replace(phone, settings=laptop.settings)
    assert stopped_at(home, swapped) == ("open", "bundle-contradicts-itself")


def test_an_archive_of_two_devices_stops_at_opening(home: Home, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: the files in one archive let two different devices in."""
    (_, phone), (_, laptop) = opened(home), opened(home, "Tomasz laptop")
    mixed = replace(laptop, passphrase=phone.passphrase)
    genuine = home.house.bundling._container  # noqa: SLF001 - the archive's own seam
    monkeypatch.setattr(home.house.bundling, "_container", lambda _: genuine(mixed))
    files = home.house.bundling.write(phone, Form.ARCHIVE)
    with pytest.raises(RehearsalFailed) as failed:
        home.house.rehearsing.rehearse(Form.ARCHIVE, files, phone.passphrase, identity=None)
    assert step_of(failed.value) == ("open", "bundle-contradicts-itself")


def foreign(home: Home, credential: Credential) -> Bundle:
    """A bundle whose settings fit a certificate from elsewhere."""
    _, bundle = opened(home)
    facts, authority = read.certificate_facts(credential.certificate), credential.authorities[0]
    settings = replace(
        bundle.settings,
        identity=facts.names[0].removeprefix("dns:"),
        serial=facts.serial,
        not_before=facts.not_before,
        ends=facts.not_after,
        authority_fingerprint=read.certificate_facts(authority).fingerprint,
    )
    return replace(
        bundle,
        settings=settings,
        key=credential.key,
        certificate=credential.certificate,
        authorities=credential.authorities,
    )


def test_another_household_s_bundle_stops_at_the_path(home: Home) -> None:
    """Broken if it fails: a bundle of the neighbours is handed over."""
    assert stopped_at(home, foreign(home, quince.found().device)) == ("path", "path-untrusted")


def test_another_device_s_bundle_stops_at_the_name(home: Home) -> None:
    """Broken if it fails: Tomasz gets what was made for Ines."""
    _, bundle = opened(home)
    other = home.newest("Tomasz laptop").identity
    assert stopped_at(home, bundle, identity=other) == ("name", "name-differs")


def test_the_gateway_s_certificate_stops_at_the_usage(home: Home) -> None:
    """Broken if it fails: a device gets in with what the gateway is known by."""
    gateway = home.house.register.gateway()
    authority = the_authority(home.house.register)
    assert gateway is not None
    secret = home.world.vault.get(secret_names.gateway_key(authority, gateway.serial))
    assert secret is not None
    key = pkcs8.open_key(gateway.sealed_key, secret)
    bundle = foreign(home, Credential(key, gateway.certificate, (authority.certificate,)))
    assert stopped_at(home, bundle) == ("usage", "usage-wrong")


@pytest.mark.parametrize(("days", "code"), [(735, "certificate-ended"), (-30, "certificate-not-yet")])
def test_a_pass_out_of_its_time_stops_at_the_dates(home: Home, days: int, code: str) -> None:
    """Broken if it fails: a pass that is over is told as a wrong path."""
    _, bundle = opened(home)
    home.world.clock.turn(days=days)
    assert stopped_at(home, bundle) == ("dates", code)


def test_a_stopped_pass_stops_at_the_list_and_gets_in_again(home: Home) -> None:
    """Broken if it fails: a stopped device is handed a bundle that does not work, and nobody knows why."""
    _, bundle = opened(home)
    home.stop("Ines phone")
    assert stopped_at(home, bundle) == ("list", "certificate-revoked")
    home.let_in("Ines phone")
    assert rehearse(home, bundle).passed
    home.revoke("Ines phone")
    assert stopped_at(home, bundle) == ("list", "certificate-revoked")


def test_an_overdue_list_stops_at_the_list(home: Home) -> None:
    """Broken if it fails: everybody is locked out and each device seems to be at fault."""
    home.add(LONG)
    _, bundle = opened(home, "Ines watch")
    home.world.clock.forward(days=801)
    assert stopped_at(home, bundle) == ("list", "list-overdue")


def test_a_gateway_that_ended_stops_at_the_handshake(home: Home) -> None:
    """Broken if it fails: a good bundle is sent out into a gateway that no device trusts any more."""
    home.add(LONG)
    _, bundle = opened(home, "Ines watch")
    home.world.clock.forward(days=790)
    home.unlock()
    home.house.listing.sign_anew()
    home.world.clock.forward(days=40)
    assert stopped_at(home, bundle) == ("handshake", "certificate-ended")


def test_a_key_of_another_device_stops_at_the_handshake(home: Home) -> None:
    """Broken if it fails: a certificate leaves with a key that it is not about."""
    (_, phone), (_, laptop) = opened(home), opened(home, "Tomasz laptop")
    assert stopped_at(home, replace(phone, key=laptop.key)) == ("handshake", "key-not-of-certificate")


def test_without_the_gateway_s_secret_nothing_is_rehearsed(home: Home) -> None:
    """Broken if it fails: a lost keyring looks like a bad bundle."""
    _, bundle = opened(home)
    for name in [one for one in home.world.vault.secrets if "/gateway/" in one]:
        del home.world.vault.secrets[name]
    with pytest.raises(Refused) as refused:
        rehearse(home, bundle)
    assert refused.value.code == "gateway-secret-lost"


def test_a_keyring_that_does_not_answer_is_told_as_such(home: Home) -> None:
    """Broken if it fails: a silent keyring looks like a bad bundle."""
    _, bundle = opened(home)
    home.world.vault.trouble = "keyring-silent"
    with pytest.raises(Unavailable) as unavailable:
        rehearse(home, bundle)
    assert unavailable.value.code == "keyring-silent"


def test_no_files_are_no_bundle(home: Home) -> None:
    """Broken if it fails: nothing at all passes for a bundle."""
    with pytest.raises(RehearsalFailed) as failed:
        home.house.rehearsing.rehearse(Form.CODES, [], Secret("plum"), identity=None)
    assert step_of(failed.value) == ("read", "bundle-empty")


@pytest.mark.parametrize(
    ("data", "form"),
    [
        (b"\x89PNG\r\n\x1a\n", Form.CODES),
        (b"\xff\xd8\xff\xe0", Form.CODES),
        (b"PK\x03\x04", Form.ARCHIVE),
        (b"\x30\x82", Form.PKCS12),
        (b"# This file", Form.BUNDLE),
        (b"", Form.BUNDLE),
    ],
)
def test_files_are_recognised_by_their_first_octets(data: bytes, form: Form) -> None:
    """Broken if it fails: a renamed file is called damaged."""
    assert recognise([Written("whatever.bin", data)]) is form
