"""The web front's links of the chain, by a real nginx with the app's own server block, looked at over real sockets."""

from __future__ import annotations

import ipaddress
from collections.abc import Iterator
from contextlib import AbstractContextManager
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from hearthkey.adapters.way_out import dial
from hearthkey.core.forwarding import WEB_PORT
from hearthkey.core.host import WebFacts, web_facts
from hearthkey.core.pack import AUTHORITY_CERTIFICATE, GATEWAY_CERTIFICATE, GATEWAY_KEY, LIST_PEM
from hearthkey.core.reach.chain import Place, Side
from hearthkey.core.reach.scopes import Address
from hearthkey.formats import pem
from hearthkey.formats.web_front import server_block
from hearthkey.services import reach_front
from hearthkey.services.reach_plan import CheckPlan
from hearthkey.services.reach_ports import Failure, Stream
from hearthkey.services.reaching import CheckRequest
from tests.fakes.clock import NOW
from tests.fakes.home import at_home
from tests.interop.web_door import HOST, front, page
from tests.peers.servers import free_port

HERE = ipaddress.ip_address("127.0.0.1")
DELIVERED = tuple(f"{name}.pem" for name in (GATEWAY_CERTIFICATE, GATEWAY_KEY, AUTHORITY_CERTIFICATE))


@dataclass(frozen=True)
class Scene:
    """A household and its running web front.

    Args:
        plan: what would be checked.
        facts: what the front was told.
        gateway: its certificate, DER.
        folder: for further fronts.
    """

    plan: CheckPlan
    facts: WebFacts
    gateway: bytes
    folder: Path


@pytest.fixture(scope="module")
def scene(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Scene]:
    """Quince Cottage, its pack delivered, its web front running."""
    folder = tmp_path_factory.mktemp("front")
    delivered = folder / "in force"
    delivered.mkdir()
    with at_home(folder / "data") as home, page() as shown:
        house = home.house
        pack = house.packing.pack()
        for name in DELIVERED:
            (delivered / name).write_bytes(pack[name].data)
        newest, gateway = house.register.newest_list(), house.register.gateway()
        assert newest is not None
        assert gateway is not None
        (delivered / LIST_PEM).write_text(pem.encode(pem.X509_CRL, newest.der), encoding="ascii")
        upstream = f"http://127.0.0.1:{shown.port}"
        facts = web_facts(host=HOST, folder=str(delivered), page=upstream, port=free_port(), addresses=["127.0.0.1"])
        plan = replace(house.reaching.prepare(CheckRequest()), web_front=True)
        with front(facts, folder / "nginx"):
            yield Scene(plan, facts, gateway.certificate, folder)


def look(plan: CheckPlan, listening: int, now: datetime = NOW, side: Side = Side.OUTSIDE) -> dict[Place, str]:
    """What is found of each link, at a port of the test's own."""

    def dials(address: Address, port: int, seconds: float) -> AbstractContextManager[Stream | Failure]:
        assert port == WEB_PORT
        return dial(address, listening, seconds)

    found = list(reach_front.links(plan, [HERE], side, dials, now))
    assert [one.place for one in found] == [one for one in Place if one in {each.place for each in found}]
    assert set(plan.places) >= {one.place for one in found}
    return {one.place: one.finding for one in found}


def test_the_front_of_the_pack_is_in_order(scene: Scene) -> None:
    """The householder would be sent to mend a web front that works."""
    found = look(scene.plan, scene.facts.port)
    assert [found[one] for one in (Place.FRONT, Place.FRONT_TLS, Place.FRONT_CERTIFICATE, Place.FRONT_ASKS)] == [
        "front-answers",
        "tls-speaks",
        "certificate-ours",
        "asks-ours",
    ]


def test_the_clock_is_read_from_the_answer(scene: Scene) -> None:
    """A gateway whose clock is years away turns everybody away, and nothing would say why."""
    now = datetime.now(UTC)
    assert look(scene.plan, scene.facts.port, now)[Place.CLOCK] == "clock-right"
    assert look(scene.plan, scene.facts.port, now + timedelta(hours=3))[Place.CLOCK] == "clock-wrong"


def test_what_is_wrong_with_its_certificate_is_said(scene: Scene) -> None:
    """Somebody else's server, a wrong name and a date that is over would look alike."""
    port, plan = scene.facts.port, scene.plan
    others = look(replace(plan, authorities=(scene.gateway,)), port)
    assert (others[Place.FRONT_CERTIFICATE], others[Place.FRONT_ASKS]) == ("certificate-others", "asks-others")
    assert look(replace(plan, host="shed.quince.example"), port)[Place.FRONT_CERTIFICATE] == "certificate-name"
    ended = look(plan, port, NOW + timedelta(days=9000))
    assert ended[Place.FRONT_CERTIFICATE] == "certificate-ended"


def test_a_front_that_asks_nobody_is_broken(scene: Scene) -> None:
    """The pages of the home would stand open to everybody, and the check would call it good."""
    facts = replace(scene.facts, port=free_port())
    block = server_block(facts)
    assert "ssl_verify_client on;" in block
    with front(facts, scene.folder / "open", block=block.replace("ssl_verify_client on;", "ssl_verify_client off;")):
        assert look(scene.plan, facts.port)[Place.FRONT_ASKS] == "asks-nobody"


def test_what_is_no_front_is_told_apart(scene: Scene) -> None:
    """A page without encryption, and a port where nobody listens, would be taken for the front."""
    with page() as bare:
        assert look(scene.plan, bare.port)[Place.FRONT_TLS] == "tls-failed"
    assert look(scene.plan, free_port())[Place.FRONT] == "front-refused"
