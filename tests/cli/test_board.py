"""`hearthkey list`: the first date on which anybody loses access stands on top."""

from __future__ import annotations

from tests.cli.running import Cottage


def top(cottage: Cottage) -> str:
    """The first line."""
    return cottage.run("list").out.splitlines()[0]


def test_the_first_date_names_whose_it_is(cottage: Cottage) -> None:
    """Broken if it fails: somebody stands outside and nobody saw it coming."""
    assert top(cottage).startswith(
        "All is well until 24 November 2028, then Ines’s phone ends. Nobody else is affected."
    )
    cottage.unlocked("add", "Boiler engineer", "phone", "--kind", "linux", "--guest")
    assert top(cottage).startswith("All is well until Wednesday 2 December, then Boiler engineer’s phone ends.")


def test_whoever_does_not_get_in_is_no_date(cottage: Cottage) -> None:
    """Broken if it fails: the first line speaks of a device that is out already."""
    for device in ("Ines phone", "Tomasz laptop", "Odile tablet"):
        cottage.unlocked("stop", device)
    assert top(cottage) == (
        "All is well until 2 February 2029. The house stands; nobody gets in at present. "
        "On 2 February 2029 the revocation list ends."
    )


def test_the_gateway_s_end_is_a_date_too(cottage: Cottage) -> None:
    """Broken if it fails: the list is signed anew for years, and one day no device trusts the gateway."""
    cottage.world.clock.forward(days=700)
    cottage.unlocked("lists", "--sign")
    for device in ("Ines phone", "Tomasz laptop", "Odile tablet"):
        cottage.unlocked("stop", device)
    assert top(cottage).endswith("On 26 February 2029 the gateway’s certificate ends.")
    cottage.world.clock.forward(days=200)
    assert top(cottage).startswith("Nobody gets in: the gateway’s certificate ended on 26 February 2029.")


def test_an_overdue_list_comes_before_everything(cottage: Cottage) -> None:
    """Broken if it fails: everybody is locked out and the screen says that all is well."""
    cottage.world.clock.forward(days=801)
    assert top(cottage).startswith(
        "Nobody gets in: the revocation list ended on 2 February 2029. A gateway that checks"
    )


def test_every_state_has_its_word(cottage: Cottage) -> None:
    """Broken if it fails: a stolen phone looks like any other."""
    cottage.run("hand-over", "Tomasz laptop", "--yes")
    cottage.unlocked("stop", "Ines phone")
    cottage.unlocked("revoke", "Odile tablet", "--reason", "1", "--yes")
    rows = [" ".join(line.split()) for line in cottage.run("list").out.splitlines()[2:5]]
    assert rows == [
        "Ines phone stopped 25 November 2026 24 November 2028",
        "Tomasz laptop in use, never proved 24 November 2028",
        "Odile tablet revoked 25 November 2026 final",
    ]


def test_a_proof_stands_beside_the_state(cottage: Cottage) -> None:
    """Broken if it fails: nobody sees which devices were ever seen to get in."""
    cottage.run("hand-over", "Tomasz laptop", "--yes")
    cottage.run("prove", "Tomasz laptop", "--told", "--yes")
    cottage.run("prove", "Ines phone", "--told", "--yes")
    rows = [" ".join(line.split()) for line in cottage.run("list").out.splitlines()[2:5]]
    assert rows == [
        "Ines phone waiting, proved 25 November 2026 24 November 2028",
        "Tomasz laptop in use, proved 25 November 2026 24 November 2028",
        "Odile tablet waiting 24 November 2028",
    ]
    told = {one["name"]: (one["proved"], one["proved_by"]) for one in cottage.run("list", "--json").told["devices"]}
    assert told["laptop"] == ("2026-11-25T13:00:00Z", "told")
    assert told["tablet"] == (None, None)


def test_machines_get_every_pass(cottage: Cottage) -> None:
    """Broken if it fails: a script has to count columns."""
    told = cottage.run("list", "--json").told
    assert list(told) == ["household", "list", "devices"]
    assert told["list"] == {"number": 1, "good_until": "2029-02-02T12:00:00Z"}
    assert {tuple(one) for one in told["devices"]} == {
        (
            *("name", "person", "kind", "state", "identity", "serial", "key_set", "container", "guest"),
            *("not_before", "not_after", "handed_over", "proved", "proved_by", "on_list_since", "reason"),
        )
    }
