"""`hearthkey renew`, `supersede`, `visit`, `replace` and `leaves`, as they are typed."""

from __future__ import annotations

import signal
from datetime import timedelta

import pytest

from hearthkey.cli import renewing
from hearthkey.cli.teller import Teller
from tests.cli.running import Cottage
from tests.fakes.workshop import QuickWorkshop


@pytest.fixture
def home(cottage: Cottage) -> Cottage:
    """Quince Cottage, where Ines and Tomasz have their bundles and a month is left of them."""
    cottage.world.workshop = QuickWorkshop()
    for text in ("Ines phone", "Tomasz laptop"):
        assert cottage.run("hand-over", text, "--yes").code == 0
    cottage.world.clock.forward(days=700)
    return cottage


def day(home: Cottage, days: int) -> str:
    """A day as it is typed."""
    return f"{home.world.clock.now() + timedelta(days=days):%Y-%m-%d}"


def test_one_device_is_renewed_and_the_second_time_left_as_it_is(home: Cottage) -> None:
    """Broken if it fails: typing it twice makes two bundles."""
    planned = home.run("renew", "Ines", "phone", "--plan", "--json")
    assert "both get in until" in planned.told["plan"][0]
    ran = home.unlocked("renew", "Ines", "phone", "--overlap", "10", "--json")
    assert (ran.code, len(ran.told["serials"])) == (0, 1)
    assert home.state("Ines phone") == "waiting"
    again = home.unlocked("renew", "Ines phone")
    assert (again.code, again.out) == (0, "Ines’s phone: its next bundle is in the tray already.\n")


def test_a_round_says_what_it_leaves(home: Cottage) -> None:
    """Broken if it fails: a device is forgotten, and nobody was told."""
    assert home.run("stop", "Tomasz laptop", "--passphrase-file", home.words).code == 0
    ran = home.unlocked("renew", "--all-due", day(home, 60), "--yes", "--json")
    assert ran.code == 0
    assert len(ran.told["done"]) == 1
    assert ran.told["left"] == ["Tomasz’s laptop is stopped. Renew it by name, if it is to get in again."]
    nothing = home.run("renew", "--all-due", day(home, 1))
    assert (nothing.code, nothing.out) == (3, "")


def test_a_round_asks_once_and_not_without_a_yes(home: Cottage) -> None:
    """Broken if it fails: a typing error renews the whole family."""
    assert home.unlocked("renew", "--all-due", day(home, 60)).code == 3
    assert home.unlocked("renew", "--all-due", day(home, 60), "--yes").out.count("got its next pass") == 2


def test_a_round_for_a_visit_keeps_the_visit(home: Cottage) -> None:
    """Broken if it fails: the day list does not know of the visit that the round was made for."""
    ran = home.unlocked("renew", "--visit", "ines", day(home, 12))
    assert (ran.code, ran.out.count("got its next pass")) == (0, 1)
    shown = home.run("visit", "--json").told["visits"]
    assert [(one["person"], one["day"][:10], one["renew"]) for one in shown] == [("Ines", day(home, 12), [])]
    assert any(one["key"].startswith("hand-over-") and one["on"][:10] == day(home, 12) for one in dates(home))
    assert home.run("visit", "Tomasz", day(home, 3)).code == 0
    assert "Tomasz: Tomasz’s laptop" in home.run("visit").out
    assert home.run("visit", "Tomasz", day(home, 3), "--call-off").code == 0
    assert "Tomasz" not in home.run("visit").out
    assert home.run("visit", "Tomasz").code == 3


def dates(home: Cottage) -> list[dict[str, str]]:
    """What `hearthkey dates` shows."""
    found: list[dict[str, str]] = home.run("dates", "--json").told["dates"]
    return found


def test_the_first_interrupt_stops_between_two_devices(capsys: pytest.CaptureFixture[str]) -> None:
    """Broken if it fails: Ctrl+C tears a device apart, or cannot stop a long round at all."""
    before = signal.getsignal(signal.SIGINT)
    with renewing.stoppable(Teller(as_json=False, quiet=False)) as stopping:
        assert stopping == []
        signal.raise_signal(signal.SIGINT)
        assert stopping == [signal.SIGINT]
        assert signal.getsignal(signal.SIGINT) == before
    assert "Stopping after this device." in capsys.readouterr().err
    assert signal.getsignal(signal.SIGINT) == before


def test_a_renewal_is_taken_back(home: Cottage) -> None:
    """Broken if it fails: a renewal by mistake cannot be undone."""
    assert home.unlocked("renew", "Ines phone").code == 0
    assert "is erased here" in home.run("renew", "Ines phone", "--take-back", "--plan").out
    assert home.unlocked("renew", "Ines phone", "--take-back", "--yes").code == 0
    assert home.state("Ines phone") == "revoked"
    assert home.unlocked("renew", "Ines phone", "--take-back", "--yes").code == 3
    for words in (("renew",), ("renew", "--take-back")):
        assert home.run(*words).code == 3


@pytest.mark.parametrize("at_once", [True, False])
def test_a_proof_lets_the_old_pass_go(home: Cottage, *, at_once: bool) -> None:
    """Broken if it fails: two passes of one device get in for ever."""
    assert home.unlocked("renew", "Ines phone").code == 0
    assert home.unlocked("supersede", "Ines phone", "--yes").code == 3
    assert home.run("hand-over", "Ines phone", "--yes").code == 0
    assert home.run("supersede", "--proved").out == "Nothing is over.\n"
    prove = home.unlocked if at_once else home.run
    told = prove("prove", "Ines phone", "--told", "--yes")
    assert told.code == 0
    if not at_once:
        assert "hearthkey supersede --proved" in told.err
        assert "never gets in again" in home.run("supersede", "--proved", "--plan").out
        assert home.unlocked("supersede", "--proved", "--yes").code == 0
    shown = home.run("show", "Ines phone", "--json").told["passes"]
    assert [one["state"] for one in shown] == ["revoked", "in use"]
    assert [one["follows"] for one in shown] == [[], [shown[0]["serial"]]]


def test_the_householder_lets_an_old_pass_go(home: Cottage) -> None:
    """Broken if it fails: without a proof the old pass stays to its end."""
    assert home.unlocked("renew", "Ines phone").code == 0
    assert home.run("hand-over", "Ines phone", "--yes").code == 0
    assert home.unlocked("supersede", "Ines phone", "--yes").code == 0
    assert home.run("supersede").code == 3


def test_a_phone_is_replaced(home: Cottage) -> None:
    """Broken if it fails: the old phone gets in while the new one is set up."""
    words = ("replace", "Ines phone", "--label", "new phone", "--kind", "linux")
    assert "Ines’s new phone gets a pass of its own" in home.run(*words, "--plan").out
    assert home.unlocked(*words, "--yes").code == 0
    assert [home.run("show", text, "--json").told["passes"][-1]["state"] for text in ("Ines new", "Tomasz")] == [
        "waiting",
        "in use",
    ]
    assert home.unlocked(*words, "--yes").code == 3


def test_somebody_leaves(home: Cottage) -> None:
    """Broken if it fails: what else has to be changed is not said, or somebody else loses a pass."""
    planned = home.run("leaves", "Ines", "--plan", "--json").told
    assert planned["devices"] == ["Ines’s phone"]
    assert any(one.startswith("The Wi-Fi’s password: ") for one in planned["also_change"])
    ran = home.unlocked("leaves", "Ines", "--yes")
    assert (ran.code, "Also change:\n" in ran.out) == (0, True)
    assert (home.state("Ines phone"), home.state("Tomasz laptop")) == ("revoked", "in use")
    assert home.unlocked("leaves", "Ines", "--yes").code == 3
