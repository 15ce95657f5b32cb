"""`hearthkey reach --plan`: everything that can be worked out, and nothing changed."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.cli.running import Cottage

HOME_ROUTER = ("--home-subnet", "192.168.1.0/24")


def test_the_plan_of_the_household(cottage: Cottage) -> None:
    """Broken if it fails: the householder learns on the train what could have been worked out at home."""
    before = cottage.register()
    told = cottage.run("reach", "--plan", "--json").told
    assert told["gateway"] == {"host": "home.quince.example", "kind": "name"}
    assert [(one["side"], one["grade"], one["kind"]) for one in told["subnets"]] == [
        ("home", "quiet", "documentation"),
        ("home", "quiet", "documentation"),
        ("tunnel", "quiet", "documentation"),
    ]
    assert [one["kind"] for one in told["gaps"]] == ["unreached"]
    assert told["through"][0]["value"] == "c6336400ffffff00"
    assert (told["router"], told["asked"], told["expected"]) == (None, None, None)
    assert [one["needed"] for one in told["proposals"]] == [False, False]
    assert cottage.register() == before


def test_the_plan_and_the_gateway_pack_have_the_same_numbers(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: the packet rules clamp to another size than the one that was explained."""
    assert cottage.run("gateway", "--outer-mtu", "1492").code == 0
    told = cottage.run("reach", "--plan", "--json").told["pack"]
    assert told == {"outer_mtu": 1492, "inner_mtu": 1410, "mss4": 1370, "mss6": 1350}
    assert cottage.run("pack", "--into", tmp_path / "pack").code == 0
    rules = next((tmp_path / "pack").rglob("nftables.conf")).read_text(encoding="utf-8")
    sheet = next((tmp_path / "pack").rglob("settings-sheet.txt")).read_text(encoding="utf-8")
    assert "1370" in rules
    assert all(number in sheet for number in ("1492", "1410 octets", "1370 octets over IPv4, 1350 over IPv6"))


def test_what_somebody_only_asks_about(cottage: Cottage) -> None:
    """Broken if it fails: a subnet cannot be tried before it is chosen, or trying it chooses it."""
    assert cottage.run("hand-over", "Tomasz laptop", "--yes").code == 0
    before = cottage.register()
    words = (*HOME_ROUTER, "--router", "100.64.3.4", "--upload", "12000", "--outer-mtu", "1280")
    ran = cottage.run("reach", "--plan", *words)
    assert "Home’s 192.168.1.0/24 is met in many places." in ran.out
    assert "the provider shares its addresses between customers (RFC 6598)" in ran.out
    assert "2 films from home go well at once." in ran.out
    assert "Tomasz’s laptop asks for a new bundle." in ran.out
    assert "IPv6 inside is sent in pieces" in ran.out
    told = cottage.run("reach", "--plan", "--json", *words).told
    home = next(one for one in told["proposals"] if one["side"] == "home")
    assert (home["needed"], home["instead"], home["new_bundles"]) == (True, "192.168.1.0/24", ["Tomasz’s laptop"])
    assert {one["side"] for one in told["proposals"]} == {"tunnel", "home", "home-ipv6"}
    assert cottage.register() == before


@pytest.mark.parametrize(
    ("words", "code"),
    [
        (["--home-subnet", ""], "subnet-malformed"),
        (["--home-subnet", "192.168.1.0"], "subnet-malformed"),
        (["--home-subnet", "192.168.1.0/33"], "subnet-malformed"),
        (["--home-subnet", "192.168.01.0/24"], "subnet-malformed"),
        (["--home-subnet", "0xC0A80100/24"], "subnet-malformed"),
        (["--home-subnet", "fe80::%eth0/64"], "subnet-malformed"),
        (["--home-subnet", "१९२.168.1.0/24"], "subnet-malformed"),
        (["--home-subnet", "192.168.1.0/255.255.0.255"], "subnet-malformed"),
        (["--home-subnet", "1" * 5000 + "/24"], "subnet-malformed"),
        (["--home-subnet", "192.168.1.1/24"], "subnet-has-host-bits"),
        (["--home-subnet", "0.0.0.0/0"], "subnet-too-wide"),
        (["--home-subnet", "::/0"], "subnet-too-wide"),
        (["--home-subnet", "203.0.113.128/25"], "subnets-overlap"),
        (["--home-subnet", "192.168.1.0/24", "--home-subnet", "192.168.0.0/16"], "subnets-overlap"),
        (["--tunnel-subnet", "10.9.8.0/31"], "subnet-too-small"),
        (["--tunnel-subnet", "quiet"], "subnet-malformed"),
        (["--home-subnet", "10.0.0.0/8"], "no-quiet-subnet"),
        (["--router", ""], "router-address-odd"),
        (["--router", "256.1.1.1"], "router-address-odd"),
        (["--router", "fe80::1%eth0"], "router-address-odd"),
        (["--router", "\u202e1.2.3.4"], "router-address-odd"),
        (["--upload", "0"], "rate-odd"),
        (["--board", "-5"], "rate-odd"),
        (["--outer-mtu", "65536"], "outer-mtu-odd"),
        (["--outer-mtu", "1279"], "outer-mtu-odd"),
    ],
)
def test_every_sin_of_what_is_typed_is_three(cottage: Cottage, words: list[str], code: str) -> None:
    """Broken if it fails: a slip of the finger ends in a trace, or in a plan for something else."""
    ran = cottage.run("reach", "--plan", "--json", *words)
    assert (ran.code, ran.told["error"]["code"]) == (3, code)


@pytest.mark.parametrize(
    "subnet",
    [
        *("127.0.0.0/8", "224.0.0.0/4", "169.254.0.0/16", "240.0.0.0/4", "0.0.0.0/8", "1.0.0.0/8", "192.0.0.0/4"),
        *("100.64.0.0/10", "1.2.3.4/32", "::1/128", "fe80::/10", "ff00::/8", "2600:1::/32", "fd12:3456:789a::/48"),
        "::ffff:0:0/96",
    ],
)
def test_every_odd_home_is_told_what_it_is(cottage: Cottage, subnet: str) -> None:
    """Broken if it fails: the plan ends in a trace, or says of a home that nothing reaches that all is well."""
    tunnel = ("--tunnel-subnet", "10.87.4.0/24")
    ran = cottage.run("reach", "--plan", "--json", "--home-subnet", subnet, *tunnel)
    assert ran.code == 0
    home = ran.told["subnets"][0]
    assert len(home["means"]) >= (1 if home["kind"] == "unique-local" else 2)
    plain = cottage.run("reach", "--plan", "--home-subnet", subnet, *tunnel)
    assert "{" not in plain.out
    assert "unknown" not in plain.out
