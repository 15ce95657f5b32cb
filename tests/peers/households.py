"""Two households as the real verbs make them: all their files that a gateway and its devices carry away."""

from __future__ import annotations

from collections.abc import Iterable
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from hearthkey.bootstrap import House
from hearthkey.core.bundle import Form
from hearthkey.core.household import FILE
from hearthkey.core.passes import Pass
from hearthkey.core.secret import Secret
from hearthkey.services import looking
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.founding import FoundRequest

if TYPE_CHECKING:
    from collections.abc import Iterator

HOST = "home.quince.example"
WORDS = "oaken ladle visor plum tidy harbor mosaic"

PHONE, LAPTOP, GUEST = "Ines phone", "Tomasz laptop", "Boiler engineer phone"
DEVICES = (PHONE, LAPTOP, GUEST)
"""RSA-3072 in an old container, P-256 in a strong one, P-384 in a strong one."""

FOUNDED, STOPPED, LET_IN, STOPPED_LOCKED = "founded", "stopped", "let in", "stopped while locked"
KEPT_OUT: dict[str, tuple[str, ...]] = {FOUNDED: (), STOPPED: (PHONE, LAPTOP), LET_IN: (), STOPPED_LOCKED: (LAPTOP,)}
"""The stages of the household, in order, and who may not come in at each.

The last of them stops with a spare list, without a passphrase.
"""

_REQUESTS = {
    PHONE: EnrolRequest("Ines", "phone", "iphone"),
    LAPTOP: EnrolRequest("Tomasz", "laptop", "linux"),
    GUEST: EnrolRequest("Boiler engineer", "phone", "linux", guest=True, key_set="suite-384"),
}


@dataclass(frozen=True)
class Carried:
    """What one device carries away.

    Args:
        identity: its IKE ID, which is also its certificate's common name.
        words: passphrase of its bundle.
        files: the exported files of each form.
    """

    identity: str
    words: str
    files: dict[Form, tuple[Path, ...]]

    @property
    def container(self) -> Path:
        """The exported PKCS#12."""
        return self.files[Form.PKCS12][0]


@dataclass(frozen=True)
class GatewayFiles:
    """What the gateway has: the pack of one stage, as `save` wrote it."""

    folder: Path

    @property
    def authority(self) -> Path:
        """The CA certificate, PEM."""
        return self.folder / "ca-certificate.pem"

    @property
    def certificate(self) -> Path:
        """The gateway's certificate, PEM."""
        return self.folder / "gateway-certificate.pem"

    @property
    def key(self) -> Path:
        """The gateway's key, PEM, without a passphrase."""
        return self.folder / "gateway-key.pem"

    @property
    def revocation_list(self) -> Path:
        """The revocation list, PEM."""
        return self.folder / "list.pem"


@dataclass(frozen=True)
class Household:
    """One household and everything that left it.

    Args:
        devices: what each of them carries.
        gateway: what the gateway has at each stage; a foreign household has the first alone.
    """

    devices: dict[str, Carried]
    gateway: dict[str, GatewayFiles]

    @property
    def authority(self) -> Path:
        """The CA certificate, PEM."""
        return self.gateway[FOUNDED].authority


def ours(root: Path) -> Household:
    """Quince Cottage with three devices, at all its stages."""
    with _founded(root, DEVICES) as house:
        forms = {LAPTOP: tuple(Form), PHONE: (Form.PKCS12, Form.BUNDLE), GUEST: (Form.PKCS12, Form.BUNDLE)}
        devices = {title: _carried(house, title, forms[title], root) for title in DEVICES}
        gateway = {FOUNDED: _pack(house, root)}
        house.stopping.stop(house.stopping.preview_stop(_passes(house, *KEPT_OUT[STOPPED])))
        gateway[STOPPED] = _pack(house, root)
        for title in KEPT_OUT[STOPPED]:
            house.stopping.let_in(house.stopping.preview_let_in(_passes(house, title)))
        gateway[LET_IN] = _pack(house, root)
        house.sparing.renew()
        house.keyholder.lock()
        house.sparing.stop(house.sparing.preview_stop(_passes(house, *KEPT_OUT[STOPPED_LOCKED])))
        gateway[STOPPED_LOCKED] = _pack(house, root)
    return Household(devices, gateway)


def foreign(root: Path) -> Household:
    """Somebody else's household: the same host, the same people, another CA."""
    with _founded(root, (LAPTOP,)) as house:
        devices = {LAPTOP: _carried(house, LAPTOP, (Form.PKCS12, Form.BUNDLE), root)}
        return Household(devices, {FOUNDED: _pack(house, root)})


@contextmanager
def _founded(root: Path, titles: Iterable[str]) -> Iterator[House]:
    house = House(root / "household", place=FILE)
    house.enter()
    try:
        plan = FoundRequest("Quince Cottage", HOST, ("198.51.100.0/24",), tunnel_subnet="203.0.113.0/24", practice=True)
        house.founding.apply(house.founding.preview(plan), Secret(WORDS))
        house.enrolling.apply(*house.enrolling.preview_all([_REQUESTS[title] for title in titles]))
        yield house
    finally:
        house.leave()


def _passes(house: House, *titles: str) -> list[Pass]:
    return [one for title in titles for one in looking.find(house.register.passes(), title)]


def _carried(house: House, title: str, forms: Iterable[Form], root: Path) -> Carried:
    (chosen,) = _passes(house, title)
    files = {}
    for form in forms:
        done = house.exporting.export(chosen, form, root / "bundles" / form.value)
        files[form] = tuple(Path(path) for path in done.changes.files)
    return Carried(chosen.identity, house.bundling.passphrase(chosen).reveal(), files)


def _pack(house: House, root: Path) -> GatewayFiles:
    made = house.packing.save(root / "gateway")
    return GatewayFiles(Path(made.files[0]).parent)
