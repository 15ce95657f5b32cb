"""Delivering the list alone: nobody waits for the settings, and the settings wait for the householder."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from hearthkey.core.delivery import Differs
from hearthkey.core.errors import Unavailable
from hearthkey.core.in_force import Standing
from hearthkey.core.pack import LIST_DER, LIST_PEM, MANIFEST
from hearthkey.core.templates import GATEWAY
from hearthkey.pki import lists
from hearthkey.services.gateway_ports import Ran
from hearthkey.services.settling import SettleRequest
from tests.fakes.gateway import HOST_KEY, FakeGateway
from tests.fakes.home import Home, at_home
from tests.services.test_delivering import TARGET

LIST = {LIST_PEM, LIST_DER, MANIFEST}


@pytest.fixture
def home(tmp_path: Path) -> Iterator[Home]:
    """Quince Cottage with a gateway that holds everything, and settings that were changed since."""
    with at_home(tmp_path / "data", practice=False) as opened:
        opened.world.gate.clock = opened.world.clock.now()
        opened.house.targeting.choose(TARGET, HOST_KEY)
        opened.house.delivering.deliver()
        opened.house.settling.apply(opened.house.settling.preview(SettleRequest(gateway_host="door.quince.example")))
        yield opened


def gate_of(home: Home) -> FakeGateway:
    """The gateway of a test."""
    return home.world.gate


def there(home: Home) -> dict[str, bytes]:
    """What is in force."""
    gate = gate_of(home)
    return gate.sets[str(gate.current)]


def test_the_list_goes_and_everything_else_stays(home: Home) -> None:
    """Broken: a half-thought change of settings is at the gateway because a phone was stopped."""
    before = dict(there(home))
    home.stop("Ines phone")
    done = home.house.delivering.deliver(only_list=True)
    assert {name for name, how in done.plan.files.items() if how is not Differs.SAME} == LIST
    assert done.plan.only_the_list
    assert {name for name, data in there(home).items() if data != before.get(name)} == LIST
    state = home.house.watching.state()
    assert (state.standing, state.waiting, state.other_changes) == (Standing.WAITING, (), True)
    assert (state.note.list_number, state.newest_number) == (2, 2)


def test_the_settings_go_with_the_householders_word(home: Home) -> None:
    """Broken: what waited beside a list waits for ever."""
    home.stop("Ines phone")
    home.house.delivering.deliver(only_list=True)
    home.house.delivering.deliver()
    assert home.house.watching.state().standing is Standing.IN_FORCE


def test_one_stop_after_the_other_goes_while_settings_wait(home: Home) -> None:
    """Broken: the second stop takes the settings along, or needs a secret that the first did not."""
    home.house.sparing.renew()
    home.house.keyholder.lock()
    home.world.vault.trouble = "keyring-locked"
    before = dict(there(home))
    for text in ("Ines phone", "Odile tablet"):
        home.house.sparing.stop(home.house.sparing.preview_stop(home.passes(text)))
        home.house.delivering.deliver(only_list=True)
        home.unlock()
        home.house.sparing.renew()
        home.house.keyholder.lock()
    assert {name for name, data in there(home).items() if data != before.get(name)} == LIST
    listed = {one.serial for one in lists.read_list(there(home)[LIST_DER]).entries}
    assert listed == {home.newest("Ines phone").serial, home.newest("Odile tablet").serial}


def test_a_command_that_failed_runs_again_and_takes_nothing_along(home: Home) -> None:
    """Broken: a list that its gateway did not load stays unloaded, or settings go because of it."""
    before = dict(there(home))
    home.stop("Ines phone")
    gate_of(home).answers.append(Ran(1, "busy"))
    with pytest.raises(Unavailable, match="reload-failed-list-kept"):
        home.house.delivering.deliver(only_list=True)
    again = home.house.delivering.deliver(only_list=True)
    assert (again.uploaded, again.plan.unchanged) == (0, True)
    assert len(gate_of(home).ran) == 3
    assert home.house.watching.state().note.reload_said is None
    assert {name for name, data in there(home).items() if data != before.get(name)} == LIST


def test_where_a_template_is_made_from_the_list_all_goes(home: Home) -> None:
    """Broken: "in force" is said of a list while the gateway's own file still lets the stopped phone in."""
    verbs = home.house.templating
    verbs.save(verbs.preview_save(name="doors", of=GATEWAY, file_stem="doors", ending="txt", text="{{ list_number }}"))
    home.house.delivering.deliver()
    home.house.settling.apply(home.house.settling.preview(SettleRequest(gateway_host="gate.quince.example")))
    home.stop("Ines phone")
    home.house.delivering.deliver(only_list=True)
    assert [data for name, data in there(home).items() if name.startswith("own/")] == [b"2"]
    assert home.house.watching.state().standing is Standing.IN_FORCE


def test_where_no_whole_set_is_there_all_goes(home: Home) -> None:
    """Broken: a list is put among files that nobody can vouch for."""
    there(home)["gateway-certificate.der"] = b"scribbled over"
    home.stop("Ines phone")
    home.house.delivering.deliver(only_list=True)
    assert home.house.watching.state().standing is Standing.IN_FORCE


def test_into_a_set_of_another_copy_of_the_app_the_list_goes_alone(home: Home) -> None:
    """Broken: after a restored laptop the list waits, or settings from before go back with it."""
    note = home.house.register.gateway_note()
    with home.house.register.change() as change:
        change.note_gateway(replace(note, set_id="7-ffffffff", made_of="elsewhere"))
    home.stop("Ines phone")
    done = home.house.delivering.deliver(only_list=True)
    assert done.plan.only_the_list
    assert home.house.watching.state().other_changes
