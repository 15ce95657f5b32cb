"""`hearthkey settle`: what follows is said first, and made after a yes."""

from __future__ import annotations

import sys
from io import StringIO

import pytest

from tests.cli.running import Cottage


class Terminal(StringIO):
    """Somebody at a keyboard, with what is typed."""

    def isatty(self) -> bool:
        """It is one."""
        return True


@pytest.fixture
def handed_over(cottage: Cottage) -> Cottage:
    """Quince Cottage, where Tomasz has his bundle."""
    assert cottage.run("hand-over", "Tomasz laptop", "--yes").code == 0
    return cottage


def test_a_plan_says_who_has_to_be_told_and_changes_nothing(handed_over: Cottage) -> None:
    """Broken if it fails: looking before leaping is leaping."""
    before = handed_over.register(), dict(handed_over.world.vault.secrets)
    told = handed_over.run("settle", "--host", "door.quince.example", "--plan", "--json").told
    assert told["plan"].startswith("The house is reached at door.quince.example,")
    assert "Tomasz’s laptop asks for a new bundle." in told["plan"]
    assert told["different"] == {"gateway host": "bundles"}
    assert (told["new_bundles"], told["in_tray"]) == (["Tomasz’s laptop"], ["Ines’s phone", "Odile’s tablet"])
    assert told["new_certificate"]
    assert before == (handed_over.register(), handed_over.world.vault.secrets)


def test_what_needs_no_key_asks_for_no_passphrase(cottage: Cottage) -> None:
    """Broken if it fails: somebody types the passphrase to write a DNS server down."""
    ran = cottage.run("settle", "--dns", "none", "--name", "Plum House", "--home", "192.0.2.0/24", "--yes", "--json")
    assert ran.code == 0
    assert ran.told["different"] == {"name": "shown", "home subnets": "bundles", "DNS servers": "gateway"}
    shown = cottage.run("show", "--json").told
    assert (shown["household"], shown["dns_servers"]) == ("Plum House (practice)", [])
    assert shown["home_subnets"] == ["192.0.2.0/24"]


def test_a_new_host_is_made_with_the_passphrase(cottage: Cottage) -> None:
    """Broken if it fails: a house that moves has to be founded anew."""
    assert cottage.run("settle", "--gateway-host", "door.quince.example", "--yes").code == 3
    ran = cottage.unlocked("settle", "--gateway-host", "door.quince.example", "--yes")
    assert ran.code == 0
    assert "The gateway got a new certificate for door.quince.example until" in ran.out
    assert "Making the gateway’s key and certificate ..." in ran.err
    assert cottage.run("show", "--json").told["gateway"]["host"] == "door.quince.example"


def test_the_gateway_is_renewed(cottage: Cottage) -> None:
    """Broken if it fails: the certificate that closes the house when it ends cannot be followed by another."""
    before = cottage.run("show", "--json").told["gateway"]
    ran = cottage.unlocked("settle", "--renew-gateway", "--yes", "--json")
    assert (ran.code, ran.told["different"], ran.told["new_certificate"]) == (0, {}, True)
    after = cottage.run("show", "--json").told["gateway"]
    assert (after["host"], after["serial"] == before["serial"]) == (before["host"], False)


def test_without_a_yes_nothing_is_changed(cottage: Cottage, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: a question is asked whose answer does not count."""
    before = cottage.register()
    assert cottage.run("settle", "--tunnel", "full", "--json").told["error"]["code"] == "yes-needed"
    monkeypatch.setattr(sys, "stdin", Terminal("n\n"))
    ran = cottage.run("settle", "--tunnel", "full")
    assert (ran.code, cottage.register() == before) == (130, True)
    assert ran.err.splitlines()[0] == "Everything that devices do on the internet goes through home."
    monkeypatch.setattr(sys, "stdin", Terminal("y\n"))
    assert cottage.run("settle", "--tunnel", "full").code == 0
    assert cottage.run("show", "--json").told["tunnel"] == "full"


@pytest.mark.parametrize(
    ("words", "code"),
    [
        ([], "nothing-changes"),
        (["--host", "home.quince.example"], "nothing-changes"),
        (["--home", "203.0.113.0/24"], "subnets-overlap"),
        (["--dns", "none", "--dns", "198.51.100.1"], "dns-malformed"),
        (["--identity-suffix", ""], "host-empty"),
    ],
)
def test_what_does_not_fit_is_three(cottage: Cottage, words: list[str], code: str) -> None:
    """Broken if it fails: a slip of the finger changes something, or ends in a trace."""
    before = cottage.register()
    ran = cottage.run("settle", "--yes", "--json", *words)
    assert (ran.code, ran.told["error"]["code"]) == (3, code)
    assert cottage.register() == before


def test_a_quiet_subnet_is_proposed_on_request(cottage: Cottage) -> None:
    """Broken if it fails: what the sentence about overlapping subnets advises does not work."""
    ran = cottage.run("settle", "--home", "203.0.113.0/24", "--tunnel-subnet", "quiet", "--plan", "--json")
    assert set(ran.told["different"]) == {"home subnets", "tunnel subnet"}
    assert "addresses from 10." in ran.told["plan"]


def test_cautions_are_said_before(cottage: Cottage) -> None:
    """Broken if it fails: somebody gives the house a name that nobody outside knows, and is not told."""
    ran = cottage.run("settle", "--host", "192.168.178.1", "--plan", "--json")
    assert ran.told["cautions"] == ["gateway-only-at-home"]
    assert "Caution: 192.168.178.1 is known inside the home only." in ran.err
