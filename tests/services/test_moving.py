"""A whole move of the practice household: planned, gone through, taken back, and the old name let go."""

from __future__ import annotations

import pytest

from hearthkey.core.errors import Refused
from hearthkey.core.moving_steps import Kind, Task
from hearthkey.pki import read
from hearthkey.services.moving import MoveRequest
from hearthkey.services.settling import SettleRequest
from tests.fakes.home import Home

DOOR = "door.quince.example"
HOST = MoveRequest(new_host=DOOR)


def names(home: Home) -> tuple[str, ...]:
    """What stands in the gateway's certificate."""
    gateway = home.house.register.gateway()
    assert gateway is not None
    return read.certificate_facts(gateway.certificate).names


def settle(home: Home, request: SettleRequest) -> None:
    """Change a setting."""
    home.house.settling.apply(home.house.settling.preview(request))


def later(home: Home) -> None:
    """Let some time pass, so that what comes is after what was."""
    home.world.clock.forward(hours=1)
    home.unlock()


def test_a_new_host_cuts_nobody_off(home: Home) -> None:
    """Broken if it fails: the certificate loses the old name while a device knows no other."""
    home.hand_over("Ines phone")
    moving = home.house.moving
    moving.begin(HOST)
    moving.tick(Task.TRY_COPY)
    moving.tick(Task.NAME_LEADS)
    with pytest.raises(Refused, match="move-not-seen"):
        moving.tick(Task.BOTH_NAMES)
    later(home)
    settle(home, SettleRequest(gateway_host=DOOR))
    assert names(home) == (f"dns:{DOOR}", "dns:home.quince.example")
    moving.tick(Task.BOTH_NAMES)
    moving.tick(Task.DELIVER)
    with pytest.raises(Refused, match="move-devices-left"):
        moving.tick(Task.NEW_BUNDLES)
    with pytest.raises(Refused, match="former-host-used"):
        home.house.settling.preview(SettleRequest(let_go="home.quince.example"))
    assert "gateway_former" not in home.house.packing.pack().names
    sheet = home.house.packing.pack()["settings-sheet.txt"].data.decode()
    assert "Also answers to" in sheet
    assert "home.quince.example" in sheet


def test_the_old_name_goes_once_nobody_knows_it_alone(home: Home) -> None:
    """Broken if it fails: a household drags every name it ever had along, in clear, in its certificate."""
    home.hand_over("Ines phone")
    later(home)
    settle(home, SettleRequest(gateway_host=DOOR))
    settle(home, SettleRequest(renew_gateway=True))
    assert names(home) == (f"dns:{DOOR}", "dns:home.quince.example")
    later(home)
    home.revoke("Ines phone")
    settle(home, SettleRequest(let_go="home.quince.example"))
    assert names(home) == (f"dns:{DOOR}",)
    assert home.house.register.former_hosts() == ()
    with pytest.raises(Refused, match="former-host-unknown"):
        home.house.settling.preview(SettleRequest(let_go="home.quince.example"))


def test_a_host_that_no_bundle_carries_leaves_no_trace(home: Home) -> None:
    """Broken if it fails: a slip of the first evening stands in certificates for years."""
    settle(home, SettleRequest(gateway_host=DOOR))
    assert names(home) == (f"dns:{DOOR}",)


def test_a_list_is_kept_ticked_taken_back_and_ended(home: Home) -> None:
    """Broken if it fails: a closed laptop loses the list on moving day."""
    moving = home.house.moving
    with pytest.raises(Refused, match="move-none"):
        moving.look()
    moving.begin(MoveRequest([Kind.ROUTER, Kind.PROVIDER]))
    with pytest.raises(Refused, match="move-there"):
        moving.begin(HOST)
    moving.tick(Task.TRY_COPY)
    moving.take_back(Task.TRY_COPY)
    with pytest.raises(Refused, match="move-not-over"):
        moving.end()
    while (step := moving.look().next) is not None:
        moving.tick(step.task)
    assert moving.end().sentence == "The move is over."
    assert home.house.register.move() is None
    said = [one.sentence for one in home.house.register.diary() if one.verb == "moving-day"]
    assert said[0] == "A move was planned, with another provider and another router: 10 steps."
    assert said[2] == "Moving: “Write a sealed copy of the household, and try it” was taken back."


def test_a_move_is_called_off_with_what_was_done(home: Home) -> None:
    """Broken if it fails: a plan that came to nothing stays on the list for ever."""
    home.house.moving.begin(MoveRequest(new_home=["192.0.2.0/24"]))
    assert home.house.moving.end(call_off=True).sentence == "The move was called off; what was done stays done."


@pytest.mark.parametrize(
    ("request_", "code"),
    [
        (MoveRequest(), "move-empty"),
        (MoveRequest(new_host="home.quince.example"), "move-same-host"),
        (MoveRequest(new_host="*.quince.example"), "host-malformed"),
        (MoveRequest(new_home=["198.51.100.7/24"]), "subnet-has-host-bits"),
        (MoveRequest(new_home=["203.0.113.0/25"]), "subnets-overlap"),
        (MoveRequest(new_home=[]), "subnets-missing"),
    ],
)
def test_a_move_that_does_not_fit_is_refused_before_it_is_kept(home: Home, request_: MoveRequest, code: str) -> None:
    """Broken if it fails: moving day begins with a subnet that no router takes."""
    with pytest.raises(Refused, match=code):
        home.house.moving.begin(request_)
    assert home.house.register.move() is None
