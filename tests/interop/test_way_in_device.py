"""Whether a device gets in at the web front: a real nginx with the app's own server block, and bundles that wait."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import AbstractContextManager
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path

import pytest

from hearthkey.adapters.way_out import dial
from hearthkey.bootstrap import House
from hearthkey.core.forwarding import WEB_PORT
from hearthkey.core.host import WebFacts, web_facts
from hearthkey.core.household import FILE
from hearthkey.core.pack import AUTHORITY_CERTIFICATE, GATEWAY_CERTIFICATE, GATEWAY_KEY, LIST_PEM
from hearthkey.core.reach.chain import Link, Place, Side, Verdict
from hearthkey.core.reach.scopes import Address
from hearthkey.formats.web_front import SERIAL_HEADER
from hearthkey.services import looking, reach_front
from hearthkey.services.reach_in import link
from hearthkey.services.reach_plan import CheckPlan, trial
from hearthkey.services.reach_ports import Failure, Stream
from hearthkey.services.reaching import CheckRequest
from tests.interop.cottage import LAPTOP, Cottage
from tests.interop.test_way_in_front import HERE
from tests.interop.web_door import HOST, Front, Page, front, page
from tests.peers.servers import free_port

DELIVERED = tuple(f"{name}.pem" for name in (GATEWAY_CERTIFICATE, GATEWAY_KEY, AUTHORITY_CERTIFICATE))


@dataclass(frozen=True)
class Scene:
    """A household and its running web front.

    Args:
        plan: what would be checked, with Tomasz's laptop, whose bundle waits.
        front: the running nginx.
        page: the page behind it.
        folder: for further fronts.
    """

    plan: CheckPlan
    front: Front
    page: Page
    folder: Path


@pytest.fixture(scope="module")
def scene(quince: Cottage, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Scene]:
    """Quince Cottage, its pack delivered with the first list, its web front running."""
    folder = tmp_path_factory.mktemp("front")
    delivered = folder / "in force"
    delivered.mkdir()
    house = House(quince.authority.parents[1] / "household", place=FILE)
    house.enter()
    try:
        pack = house.packing.pack()
        laptop = looking.find(house.register.passes(), LAPTOP)
        plan = replace(
            house.reaching.prepare(CheckRequest()),
            web_front=True,
            trial=trial(laptop, datetime.now(UTC), house.bundling.open),
        )
    finally:
        house.leave()
    for name in DELIVERED:
        (delivered / name).write_bytes(pack[name].data)
    (delivered / LIST_PEM).write_bytes(quince.lists["founded"].read_bytes())
    with page() as shown, front(_facts(delivered, shown.port), folder / "nginx") as running:
        yield Scene(plan, running, shown, folder)


def _facts(delivered: Path, shown: int, host: str = HOST) -> WebFacts:
    upstream = f"http://127.0.0.1:{shown}"
    return web_facts(host=host, folder=str(delivered), page=upstream, port=free_port(), addresses=["127.0.0.1"])


class Dials:
    """Connects to a port of the test's own, and counts.

    Args:
        listening: the port.
    """

    def __init__(self, listening: int) -> None:
        self._listening = listening
        self.count = 0

    def __call__(self, address: Address, port: int, seconds: float) -> AbstractContextManager[Stream | Failure]:
        """See `services.reach_ports.Dials`."""
        assert port == WEB_PORT
        self.count += 1
        return dial(address, self._listening, seconds)


def got_in(plan: CheckPlan, listening: int) -> tuple[Link, int]:
    """What is found of the last link, and how many connections all of them took."""
    dials = Dials(listening)
    found = {one.place: one for one in reach_front.links(plan, [HERE], Side.OUTSIDE, dials, datetime.now(UTC))}
    return found[Place.FRONT_IN], dials.count


def test_a_device_whose_bundle_waits_gets_in_until_it_is_stopped(quince: Cottage, scene: Scene) -> None:
    """The check would call a front good that turns the family away, or one broken that lets them in."""
    port, before = scene.front.facts.port, len(scene.page.visits)
    link, connections = got_in(scene.plan, port)
    assert (link.verdict, link.finding, link.facts["person"], connections) == (Verdict.OK, "in-opens", "Tomasz", 2)
    assert len(scene.page.visits) == before + 1
    assert dict(scene.page.visits[-1])[SERIAL_HEADER].lower() == quince.serials[LAPTOP]
    scene.front.deliver(quince.lists["laptop-stopped"].read_bytes())
    link, _ = got_in(scene.plan, port)
    assert (link.verdict, link.finding, link.facts["seen"]) == (Verdict.BROKEN, "in-refused", "HTTP 400")
    scene.front.deliver(quince.lists["laptop-back"].read_bytes())
    assert got_in(scene.plan, port)[0].finding == "in-opens"


def test_where_nothing_waits_nobody_is_tried(scene: Scene) -> None:
    """A household whose devices all have their bundles would be told of a fault that is none."""
    link, connections = got_in(replace(scene.plan, trial=None), scene.front.facts.port)
    assert (link.verdict, link.finding, connections) == (Verdict.UNKNOWN, "in-untried", 1)


def test_a_front_that_is_not_ours_never_sees_a_device(scene: Scene) -> None:
    """Whoever sits on the port would learn which devices the household has."""
    port, before = scene.front.facts.port, len(scene.page.visits)
    strangers = replace(scene.plan, authorities=())
    assert got_in(strangers, port) == (Link(Place.FRONT_IN, Verdict.UNKNOWN, "not-reached"), 1)
    # Another server took its place between the two connections.
    found = link(scene.plan, HERE, b"what the first one showed", Dials(port))
    assert (found.verdict, found.finding) == (Verdict.UNKNOWN, "not-reached")
    assert len(scene.page.visits) == before


@pytest.mark.parametrize(("host", "finding"), [(HOST, "in-no-page"), ("door.quince.example", "in-misnamed")])
def test_a_page_that_is_not_there_and_a_wrong_name_are_told_apart(scene: Scene, host: str, finding: str) -> None:
    """People would see an error of nginx, and the check would call the way in good."""
    facts = _facts(Path(scene.front.facts.folder), free_port(), host)
    with front(facts, scene.folder / finding):
        link, _ = got_in(scene.plan, facts.port)
    assert (link.verdict, link.finding) == (Verdict.BROKEN, finding)


def test_a_front_that_ends_between_the_two_connections_says_nothing(scene: Scene) -> None:
    """A moment without a network would be called a device that is turned away."""
    found = link(scene.plan, HERE, b"", Dials(free_port()))
    assert (found.verdict, found.finding) == (Verdict.UNKNOWN, "not-reached")
