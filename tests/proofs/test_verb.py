"""`hearthkey prove` on the command line."""

from __future__ import annotations

import re
import threading
from pathlib import Path

import pytest

from hearthkey.core import proofs
from hearthkey.core.proofs import Ground
from hearthkey.services.proof_desk import OpenProof
from tests.cli.running import Cottage
from tests.fakes.home import founded
from tests.judges import needs
from tests.proofs.doors import HOME, LOOPBACK, fetch

LINK = re.compile(r"http://127\.0\.0\.1:[0-9]+/[a-z2-7]{26}")


@pytest.fixture
def cottage(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Cottage:
    """Quince Cottage with three waiting passes, its app not running."""
    needs("ip")
    return Cottage(tmp_path / "data", founded().put_into(tmp_path / "data"), capsys, tmp_path / "none")


def test_it_blocks_until_the_link_was_opened_inside(cottage: Cottage, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: the verb ends too early, or never, or the link stays in a file."""
    links: list[str] = []
    heard = OpenProof.hear

    def hear(self: OpenProof, seconds: float) -> object:
        """A device comes as soon as the verb listens."""
        if not links and seconds:
            links.append(self.link.reveal())
            threading.Thread(target=fetch, args=(links[0],)).start()
        return heard(self, seconds)

    monkeypatch.setattr(OpenProof, "hear", hear)
    monkeypatch.setattr(proofs, "ground", lambda *_, **__: Ground(LOOPBACK, (HOME,)))
    ran = cottage.run("prove", "Odile tablet", "--address", "127.0.0.1", "--json")
    assert ran.code == 0
    assert (ran.told["device"], ran.told["address"]) == ("Odile’s tablet", "127.0.0.1")
    assert LINK.search(ran.err)
    assert "█" in ran.err
    assert not LINK.search(ran.out)
    assert "Odile’s tablet was seen to get in" in cottage.run("diary").out
    assert "proved         25 November 2026, seen to get in, from 127.0.0.1" in cottage.run("show", "Odile tablet").out


def test_closing_it_proves_nothing(cottage: Cottage, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: Ctrl+C counts as a proof, or leaves a door open."""

    def closed(self: OpenProof, seconds: float) -> object:
        """Somebody presses Ctrl+C."""
        if seconds:
            raise KeyboardInterrupt
        return heard(self, seconds)

    heard = OpenProof.hear
    monkeypatch.setattr(OpenProof, "hear", closed)
    assert cottage.run("prove", "Odile tablet", "--address", "lo").code == 130
    assert cottage.run("list", "--json").told["devices"][2]["proved"] is None
    assert all(one.name != "ticket-server" for one in threading.enumerate())


def test_the_plan_says_what_counts(cottage: Cottage) -> None:
    """Broken if it fails: the householder learns too late what a request from home is worth."""
    plan = cottage.run("prove", "Odile tablet", "--address", "127.0.0.1", "--plan")
    assert plan.out.startswith("Odile’s tablet proves that it gets in by opening a link at This computer 127.0.0.1")
    assert "What comes from 203.0.113.0/24 counts. From the network at home it proves nothing." in plan.out
    cottage.run("gateway", "--masquerade")
    hidden = cottage.run("prove", "Odile tablet", "--address", "127.0.0.1", "--plan")
    assert "Name that address, and it counts" in hidden.out
    named = ("prove", "Odile tablet", "--address", "lo", "--gateway-inside", "198.51.100.1", "--plan", "--json")
    assert cottage.run(*named).told["counts"] == {
        "tunnel": "203.0.113.0/24",
        "gateway_hides": True,
        "gateway_inside": "198.51.100.1",
    }


def test_what_was_told_wants_a_yes(cottage: Cottage) -> None:
    """Broken if it fails: what cannot be taken back is written down without being asked for."""
    refused = cottage.run("prove", "Ines phone", "--told")
    assert refused.code == 3
    assert "cannot be taken back" in refused.err
    assert cottage.run("list", "--json").told["devices"][0]["proved"] is None
    assert "Ines told that Ines’s phone gets in" in cottage.run("prove", "Ines phone", "--told", "--yes").out
