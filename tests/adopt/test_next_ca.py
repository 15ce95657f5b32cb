"""A CA that was made by hand is followed by the next: OpenSSL judges every mixture of the two on the way.

Chains: RFC 5280 section 6.1; lists: section 6.3. The app's own judge is asked the same.
"""

from __future__ import annotations

import itertools
import subprocess
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from pathlib import Path

import pytest
from cryptography import x509
from cryptography.hazmat.primitives.asymmetric import rsa
from cryptography.hazmat.primitives.serialization import Encoding

from hearthkey.core.errors import Refused
from hearthkey.core.passes import State
from hearthkey.core.proofs import Proof, Way
from hearthkey.core.sentences.errors import say
from hearthkey.core.succession import Carries, Cause, Step
from hearthkey.formats import pem
from hearthkey.pki import judge
from hearthkey.services.looking import find
from tests.adopt.by_hand import HOST, ByHand, Shape, family
from tests.adopt.conftest import Taking
from tests.fakes.clock import NOW
from tests.fakes.home import PASSPHRASE, World
from tests.fakes.workshop import QuickWorkshop
from tests.judges import needs

OLD, NEW, BOTH = "old", "new", "both"
TRUSTS = (OLD, NEW, BOTH)
INES, TOMASZ, ODILE = "1001", "1002", "1003"
LISTS = ("before", "after", "finished")
"""As the succession is underway, with a phone stopped, and when the old CA was put away."""


def _rsa(folder: Path) -> ByHand:
    return family(folder, key=rsa.generate_private_key(public_exponent=65537, key_size=2048))


SHAPES: dict[str, Callable[[Path], ByHand]] = {
    "usual": family,
    "RSA": _rsa,
    "bare": lambda folder: family(folder, shape=Shape(identifier=False, key_usage=False)),
}


@dataclass
class Two:
    """What there was on the way, DER.

    Args:
        folder: for files.
        whole: OpenSSL finds nothing amiss with the old CA's own certificate, so that it may be strict.
        made: certificates by name.
        lists: of both CAs, by moment.
    """

    folder: Path
    whole: bool
    made: dict[str, bytes] = field(default_factory=dict)
    lists: dict[str, list[bytes]] = field(default_factory=dict)

    def anchors(self, trust: str) -> list[bytes]:
        """Whom somebody trusts."""
        return [self.made[one] for one in ((OLD, NEW) if trust == BOTH else (trust,))]

    def file(self, name: str, label: str, *ders: bytes) -> Path:
        """Lay something there as PEM."""
        path = self.folder / f"{name}.pem"
        path.write_text("".join(pem.encode(label, one) for one in ders), encoding="ascii")
        return path

    def openssl(self, leaf: str, trust: str, *more: str | Path) -> bool:
        """What openssl-verify(1) says at the tests' now."""
        strict = ("-x509_strict",) if self.whole else ()
        given: tuple[str | Path, ...] = (
            *(needs("openssl"), "verify", *strict, "-attime", str(int(NOW.timestamp())), *more),
            *("-CAfile", self.file(f"trust-{trust}", pem.CERTIFICATE, *self.anchors(trust))),
            self.file(leaf, pem.CERTIFICATE, self.made[leaf]),
        )
        return subprocess.run(given, capture_output=True, timeout=60, check=False).returncode == 0

    def let_in(self, who: str, trust: str, moment: str) -> tuple[bool, bool]:
        """Whether a gateway lets a device in: OpenSSL's word, and the app's."""
        path = self.file(f"list-{moment}", pem.X509_CRL, *self.lists[moment])
        theirs = self.openssl(who, trust, "-crl_check", "-purpose", "sslclient", "-CRLfile", path)
        first, *more = self.lists[moment]
        return theirs, _passes(self.made[who], self.anchors(trust), first, further_lists=more)

    def believed(self, shown: str, trust: str, *, cross: bool) -> tuple[bool, bool]:
        """Whether a device believes what a gateway shows: OpenSSL's word, and the app's."""
        more = ("-untrusted", self.file("cross", pem.CERTIFICATE, self.made["cross"])) if cross else ()
        theirs = self.openssl(shown, trust, *more, "-purpose", "sslserver", "-verify_hostname", HOST)
        between = [self.made["cross"]] if cross else []
        return theirs, _passes(self.made[shown], self.anchors(trust), None, intermediates=between)


def _passes(
    leaf: bytes,
    anchors: list[bytes],
    first: bytes | None,
    *,
    intermediates: list[bytes] | None = None,
    further_lists: list[bytes] | None = None,
) -> bool:
    try:
        judge.check_path(
            leaf, anchors, first, NOW, intermediates=intermediates or (), further_lists=further_lists or ()
        )
    except judge.NotTrusted:
        return False
    return True


def begun_by(folder: Path, by_hand: ByHand) -> Taking:
    """Take it over, whoever seals bundles being quick, and say whose the passes are."""
    taking = Taking(folder / "data", World(workshop=QuickWorkshop()))
    taking.take(by_hand.folder)
    for serial, person, device in ((INES, "Ines", "phone"), (ODILE, "Odile", "tablet")):
        taking.house.naming.name(serial, person, device)
    return taking


def renew(taking: Taking, text: str) -> str:
    """Renew a device; return the new pass's serial."""
    house = taking.house
    house.renewing.renew(house.renewing.preview(find(house.register.passes(), text)))
    return find(house.register.passes(), text)[-1].serial


def prove(taking: Taking, text: str) -> None:
    """Hand a device's newest pass over, and see it get in."""
    house = taking.house
    serial = find(house.register.passes(), text)[-1].serial
    house.handing_over.apply(house.handing_over.preview(find(house.register.passes(), text)))
    with house.register.change() as change:
        change.add_proof(serial, Proof(NOW, Way.TOLD, ""))


def lists_of(taking: Taking) -> list[bytes]:
    """The newest list of each CA."""
    newest = taking.house.register.newest_list()
    assert newest is not None
    return list(newest.ders)


def gateway_of(taking: Taking) -> bytes:
    """What the gateway shows."""
    gateway = taking.house.register.gateway()
    assert gateway is not None
    return gateway.certificate


def go_all_the_way(taking: Taking, two: Two) -> None:
    """Begin, trust both, turn the gateway, renew, stop somebody for a while, prove, and finish."""
    house = taking.house
    two.made["gateway-old"] = gateway_of(taking)
    for name, serial in (("ines-old", INES), ("tomasz-old", TOMASZ), ("odile-old", ODILE)):
        two.made[name] = house.register.certificate(serial)
    house.succeeding.begin(PASSPHRASE)
    for _ in range(2):
        house.succeeding.go_on(told=True)
    found = house.register.succession()
    assert found is not None
    assert found.cross is not None
    two.made[OLD], two.made[NEW], two.made["cross"] = found.old.certificate, found.new.certificate, found.cross
    two.made["gateway-new"] = gateway_of(taking)
    for text in ("Ines phone", "Odile tablet"):
        two.made[f"{text.split()[0].lower()}-new"] = house.register.certificate(renew(taking, text))
        prove(taking, text)
    two.lists["before"] = lists_of(taking)
    passes = find(house.register.passes(), "Ines phone")
    house.stopping.stop(house.stopping.preview_stop(passes))
    two.lists["after"] = lists_of(taking)
    house.stopping.let_in(house.stopping.preview_let_in(find(house.register.passes(), "Ines phone")))
    assert {one.carries for one in house.succeeding.look().devices} == {Carries.DONE}
    house.succeeding.finish(told=True)
    two.lists["finished"] = lists_of(taking)


@pytest.fixture(scope="module", params=SHAPES)
def way(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Iterator[tuple[Taking, Two]]:
    """A household made by hand that has gone all the way to its next CA."""
    folder = tmp_path_factory.mktemp("way")
    by_hand = SHAPES[request.param](folder / "by-hand")
    taking, two = begun_by(folder, by_hand), Two(folder, whole=request.param != "bare")
    try:
        go_all_the_way(taking, two)
        assert two.made[OLD] == by_hand.certificate.public_bytes(Encoding.DER)
        yield taking, two
    finally:
        taking.house.leave()


def test_the_gateway_lets_in_whom_it_should(way: tuple[Taking, Two]) -> None:
    """If this fails, a device is shut out on the way to the next CA, or one that was withdrawn gets in again."""
    _, two = way
    devices = ("ines-old", "ines-new", "odile-old", "odile-new", "tomasz-old")
    for trust, who, moment in itertools.product(TRUSTS, devices, LISTS[:2]):
        known = trust == BOTH or who.endswith(trust)
        out = who == "tomasz-old" or (moment == "after" and who.startswith("ines"))
        assert two.let_in(who, trust, moment) == (known and not out,) * 2, (trust, who, moment)


def test_devices_believe_the_gateway_on_both_sides_of_the_turn(way: tuple[Taking, Two]) -> None:
    """If this fails, a device under the CA made by hand turns away from the gateway under the next, or the reverse."""
    _, two = way
    shows = (("gateway-old", False), ("gateway-new", False), ("gateway-new", True))
    for trust, (shown, cross) in itertools.product(TRUSTS, shows):
        good = cross or trust == BOTH or shown.endswith(trust)
        assert two.believed(shown, trust, cross=cross) == (good, good), (trust, shown, cross)


def test_after_the_finish_the_next_ca_is_the_only_one(way: tuple[Taking, Two]) -> None:
    """If this fails, what was made by hand still opens the door, or nobody gets through it any more."""
    taking, two = way
    house = taking.house
    authority = house.register.authority()
    assert authority is not None
    assert [authority] == house.register.authorities()
    assert authority.certificate == two.made[NEW]
    (signed,) = two.lists["finished"]
    judge.check_list(signed, authority.certificate)
    for who in ("ines", "odile"):
        assert two.let_in(f"{who}-new", NEW, "finished") == (True, True)
        assert two.let_in(f"{who}-old", NEW, "finished") == (False, False)
    states = {one.serial: one.state(NOW) for one in house.register.passes()}
    assert {states[one] for one in (INES, TOMASZ, ODILE)} == {State.REVOKED}
    assert list(states.values()).count(State.IN_USE) == 2
    assert len([name for name in taking.world.vault.secrets if name.endswith("/ca")]) == 1


def test_one_that_may_have_none_below_goes_by_the_devices(tmp_path: Path) -> None:
    """If this fails, a household whose CA allows none below it (RFC 5280 section 4.2.1.9) has no way to the next."""
    none_below = Shape(constraints=x509.BasicConstraints(ca=True, path_length=0))
    taking = begun_by(tmp_path, family(tmp_path / "by-hand", shape=none_below))
    house, two = taking.house, Two(tmp_path, whole=True)
    try:
        with pytest.raises(Refused, match="succession-cannot-vouch") as refused:
            house.succeeding.begin(PASSPHRASE)
        assert "succession begin --lost" in str(say(refused.value).do)
        house.succeeding.begin(PASSPHRASE, Cause.LOST)
        house.succeeding.go_on(told=True)
        with pytest.raises(Refused, match="succession-devices-left"):
            house.succeeding.go_on(told=True)
        two.made["gateway-old"] = gateway_of(taking)
        for text in ("Ines phone", "Odile tablet"):
            two.made["device"] = house.register.certificate(renew(taking, text))
            prove(taking, text)
        house.succeeding.go_on(told=True)
        found = house.register.succession()
        assert found is not None
        assert found.cross is None
        two.made[OLD], two.made[NEW] = found.old.certificate, found.new.certificate
        two.made["gateway-new"] = gateway_of(taking)
        two.lists["before"] = lists_of(taking)
        for shown, trust in itertools.product(("gateway-old", "gateway-new"), TRUSTS):
            good = trust == BOTH or shown.endswith(trust)
            assert two.believed(shown, trust, cross=False) == (good, good), (shown, trust)
        assert two.let_in("device", BOTH, "before") == (True, True)
        house.succeeding.finish(told=True)
        two.lists["finished"] = lists_of(taking)
        assert house.succeeding.look().next is Step.BEGIN
        assert two.let_in("device", NEW, "finished") == (True, True)
        pack = {file.name: file.data for file in house.packing.pack().files}
        assert pack["ca-certificate.der"] == two.made[NEW]
        assert not {"ca-certificate-2.der", "cross-certificate.der", "list-2.crl"} & pack.keys()
    finally:
        house.leave()
