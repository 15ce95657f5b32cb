"""Taking changes back and doing them again, on the real household."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Iterator
from contextlib import suppress
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from hearthkey.core.connect_choices import BY_GATEWAY, ConnectChoices
from hearthkey.core.copies import Came, Copy, CopyFile, CopyWay
from hearthkey.core.diary import first_misfit
from hearthkey.core.errors import Refused
from hearthkey.core.in_force import GatewayNote
from hearthkey.core.languages import Language
from hearthkey.core.pack_options import PackOptions
from hearthkey.core.passes import State
from hearthkey.core.plans import Changes
from hearthkey.core.target import By, Target
from hearthkey.services import choosing_connect
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.settling import SettleRequest
from hearthkey.services.undo_values import standing_of
from hearthkey.services.undoing import Undoing
from tests.fakes.home import Home, at_home
from tests.fakes.workshop import QuickWorkshop

DEVICES = ("Ines phone", "Tomasz laptop", "Odile tablet")


@pytest.fixture
def undoing(home: Home) -> Undoing:
    """The household's stack."""
    return home.house.undoing


def words(undoing: Undoing) -> tuple[str | None, str | None]:
    """What the menu says."""
    offer = undoing.offer
    return (
        None if offer.undo is None else str(offer.undo),
        None if offer.redo is None else str(offer.redo),
    )


def last(home: Home) -> tuple[str, str]:
    """Verb and sentence of the newest entry."""
    entry = home.house.register.last_entry()
    assert entry is not None
    return entry.verb, entry.sentence


def test_a_stop_is_taken_back_and_done_again_in_words(home: Home, undoing: Undoing) -> None:
    """Broken if it fails: a slip cannot be taken back, or nobody can read afterwards that it was."""
    assert words(undoing) == (None, None)
    undoing.watch(lambda: home.stop("Odile tablet"))
    assert words(undoing) == ("Undo: stop Odile’s tablet", None)
    since = home.newest("Odile tablet").since
    home.world.clock.forward(hours=1)
    home.unlock()
    undone = undoing.undo()
    assert home.newest("Odile tablet").state(home.house.clock.now()) is State.WAITING
    assert undone.list_number == 3
    told = "The stop of Odile’s tablet was taken back with revocation list 3, before it was in force."
    assert last(home) == ("undo", told)
    assert words(undoing) == (None, "Redo: stop Odile’s tablet")
    home.world.clock.forward(hours=1)
    home.unlock()
    undoing.redo()
    assert home.newest("Odile tablet").since == since
    assert last(home)[0] == "redo"
    assert words(undoing) == ("Undo: stop Odile’s tablet", None)


def test_a_let_in_that_is_taken_back_leaves_the_date_of_the_stop(home: Home, undoing: Undoing) -> None:
    """Broken if it fails: the list dates a stop later than the device was out of sight (RFC 5280 section 5.1.2.6)."""
    home.stop("Ines phone")
    before = home.house.register.entries()
    home.world.clock.forward(days=2)
    home.unlock()
    undoing.watch(lambda: home.let_in("Ines phone"))
    undoing.undo()
    assert home.house.register.entries() == before
    assert last(home)[1].startswith("Letting Ines’s phone back in was taken back with revocation list 4")


def test_what_the_gateway_holds_is_not_taken_back(home: Home, undoing: Undoing) -> None:
    """Broken if it fails: somebody believes that a stop in force never happened."""
    done = undoing.watch(lambda: home.stop("Odile tablet"))
    with home.house.register.change() as change:
        change.note_gateway(GatewayNote(list_number=done.list_number))
    with pytest.raises(Refused, match="undo-in-force"):
        undoing.undo()
    with pytest.raises(Refused, match="undo-nothing"):
        undoing.undo()
    assert home.newest("Odile tablet").state(home.house.clock.now()) is State.STOPPED


def test_what_left_or_was_erased_says_why_it_stays_and_is_then_out_of_the_way(home: Home, undoing: Undoing) -> None:
    """Broken if it fails: a pass is quietly taken off the record, or an earlier change is taken back instead."""
    home.world.workshop = QuickWorkshop()
    home.reopen()
    undoing = home.house.undoing
    undoing.watch(lambda: home.house.sheeting.choose_call("Ines, 555 0100"))
    undoing.watch(lambda: home.add(EnrolRequest("Odile", "reader", "linux")))
    undoing.watch(lambda: home.hand_over("Ines phone"))
    proving = home.house.proving
    undoing.watch(lambda: proving.told(proving.preview_told(home.newest("Ines phone"))))
    undoing.watch(lambda: home.revoke("Tomasz laptop"))
    for code, title in (
        ("undo-revoked", "Tomasz’s laptop"),
        ("undo-proved", "Ines’s phone"),
        ("undo-handed-over", "Ines’s phone"),
    ):
        assert undoing.offer.final
        with pytest.raises(Refused, match=code) as refused:
            undoing.undo()
        assert refused.value.facts["title"] == title
    assert words(undoing)[0] == "Undo: a pass for Odile’s reader"
    with pytest.raises(Refused, match="undo-enrolled"):
        undoing.undo()
    assert words(undoing)[0] == "Undo: whom to call"
    undoing.undo()
    assert home.house.register.whom_to_call() == ""
    assert last(home) == ("undo", "The change of whom to call was taken back.")


def test_settings_go_back_with_a_certificate_for_the_old_name(home: Home, undoing: Undoing) -> None:
    """Broken if it fails: the house is called by its old name and its gateway answers to the new one."""
    settling = home.house.settling
    before = home.house.register.household()
    undoing.watch(lambda: settling.apply(settling.preview(SettleRequest(gateway_host="door.quince.example"))))
    undoing.undo()
    gateway = home.house.register.gateway()
    assert home.house.register.household() == before
    assert gateway is not None
    assert gateway.host == "home.quince.example"
    verb, sentence = last(home)
    assert verb == "undo"
    assert sentence.startswith("The change of the household’s settings was taken back. ")
    undoing.watch(lambda: settling.apply(settling.preview(SettleRequest(tunnel="full"))))
    home.hand_over("Ines phone")
    with pytest.raises(Refused, match="undo-handed-over-since"):
        undoing.undo()


def test_locked_it_stays_and_can_be_taken_back_after_the_passphrase(home: Home, undoing: Undoing) -> None:
    """Broken if it fails: asking while locked loses the way back."""
    undoing.watch(lambda: home.stop("Odile tablet"))
    home.house.keyholder.lock()
    with pytest.raises(Refused, match="household-locked"):
        undoing.undo()
    home.unlock()
    assert words(undoing)[0] == "Undo: stop Odile’s tablet"
    undoing.undo()
    assert home.house.register.entries() == []


def test_a_new_change_ends_what_could_be_done_again(home: Home, undoing: Undoing) -> None:
    """Broken if it fails: doing again meets a household that went another way meanwhile."""
    undoing.watch(lambda: home.house.sheeting.choose_call("Ines"))
    undoing.undo()
    undoing.watch(lambda: home.house.sheeting.choose_language("Odile", Language("de")))
    assert words(undoing) == ("Undo: the language of Odile", None)
    with pytest.raises(Refused, match="redo-nothing"):
        undoing.redo()


def test_choices_for_profiles_go_back_and_forth_in_words(home: Home, undoing: Undoing) -> None:
    """Broken if it fails: a Wi-Fi that was named by a slip stands readable in every profile that follows."""
    register, clock = home.house.register, home.house.clock
    away = ConnectChoices(by_itself=True, own_wifi=("attic",), signer=BY_GATEWAY)
    undoing.watch(lambda: choosing_connect.keep(register, clock, away))
    assert words(undoing) == ("Undo: the choices for configuration profiles", None)
    undoing.undo()
    assert register.connect_choices() == ConnectChoices()
    assert last(home) == ("undo", "The change of the choices for configuration profiles was taken back.")
    undoing.redo()
    assert register.connect_choices() == away
    assert last(home) == ("redo", "The change of the choices for configuration profiles was made again after all.")
    home.hand_over("Ines phone")
    with pytest.raises(Refused, match="undo-handed-over-since"):
        undoing.undo()
    assert register.connect_choices() == away


def test_what_changes_nothing_is_not_remembered(home: Home, undoing: Undoing) -> None:
    """Broken if it fails: the way back is full of steps that do nothing."""
    undoing.watch(home.house.listing.sign_anew)
    undoing.watch(lambda: home.house.sheeting.choose_call(""))
    assert undoing.offer.remembered == 0


def test_deleted_files_of_a_copy_stay_deleted_and_a_tick_is_taken_back(
    home: Home, undoing: Undoing, tmp_path: Path
) -> None:
    """Broken if it fails: a file that is gone is said to be there again."""
    tidying, serial = home.house.tidying, home.newest("Tomasz laptop").serial
    (tmp_path / "laptop.p12").write_bytes(b"a bundle")
    files = (CopyFile("laptop.p12", hashlib.sha256(b"a bundle").hexdigest()),)
    now = home.house.clock.now()
    copy = Copy(serial, "pkcs12", CopyWay.FOLDER, str(tmp_path), str(tmp_path), files, now, Came.MADE, None)
    with home.house.register.change() as change:
        first, second = change.expect_copy(copy), change.expect_copy(copy)
        change.copy_made(first, copy)
        change.copy_made(second, copy)
    undoing.watch(lambda: tidying.mark_tidied(first))
    assert words(undoing)[0] == "Undo: a copy of Tomasz’s laptop is gone"
    undoing.undo()
    assert home.house.register.copies_gone() == {}
    undoing.watch(lambda: tidying.tidy(second))
    with pytest.raises(Refused, match="undo-deleted"):
        undoing.undo()
    assert list(home.house.register.copies_gone()) == [second]


def all_back(undoing: Undoing) -> None:
    """Take everything back."""
    while undoing.offer.undo is not None:
        undoing.undo()


def do(home: Home, deed: int, number: int) -> object:
    """A deed, by lot; one that the household refuses just now does nothing."""
    house = home.house
    device = DEVICES[number % 3]
    stopped = home.newest(device).state(house.clock.now()) is State.STOPPED
    name = ("House rules", "house Rules", "Phones")[number % 3]

    def template() -> Changes:
        known = {one.name.casefold() for one in house.templating.all()}
        if name.casefold() in known and number % 2:
            return house.templating.forget(house.templating.preview_forget(name))
        plan = house.templating.preview_save(name=name, of="gateway", file_stem="rules", ending="txt", text=f"{number}")
        return house.templating.save(plan)

    def settle() -> Changes:
        request = (
            SettleRequest(name=f"Quince {number}"),
            SettleRequest(tunnel=("split", "full")[number % 2]),
            SettleRequest(dns_servers=(f"198.51.100.{number}",)),
        )[number % 3]
        return house.settling.apply(house.settling.preview(request))

    deeds: tuple[Callable[[], object], ...] = (
        lambda: home.let_in(device) if stopped else home.stop(device),
        settle,
        lambda: house.targeting.choose(Target(By.FOLDER, f"/srv/{number}", reload="x" * (number % 2)), None),
        lambda: house.targeting.set_options(PackOptions(masquerade=bool(number % 2), outer_mtu=1492 + number)),
        template,
        lambda: house.sheeting.choose_language(device.split()[0], tuple(Language)[number % 3]),
        lambda: house.sheeting.choose_call(f"{number}" if number % 3 else ""),
        lambda: choosing_connect.keep(
            house.register, house.clock, ConnectChoices(by_itself=bool(number % 2), own_wifi=(f"attic {number}",))
        ),
    )
    return house.undoing.watch(deeds[deed])


@pytest.mark.parametrize("deed", range(8))
def test_every_deed_is_remembered_and_taken_back(home: Home, deed: int) -> None:
    """Broken if it fails: the walk below walks through deeds that nothing remembers."""
    before = standing_of(home.house.register)
    if deed == 2:
        with pytest.raises(Refused, match="practice-stays-home"):
            do(home, deed, 1)
        return
    do(home, deed, 1)
    assert standing_of(home.house.register) != before
    assert home.house.undoing.offer.remembered == 1
    home.house.undoing.undo()
    assert standing_of(home.house.register) == before


@pytest.fixture(scope="module")
def cottage(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Home]:
    """One household for all walks; each begins where the last one ended."""
    with at_home(tmp_path_factory.mktemp("undo") / "data", practice=False) as opened:
        yield opened


@settings(max_examples=25, deadline=None, suppress_health_check=list(HealthCheck), derandomize=True)
@given(st.lists(st.tuples(st.integers(0, 7), st.integers(1, 8), st.integers(0, 2)), max_size=10))
def test_whatever_was_done_taking_it_back_leads_to_where_it_began(
    cottage: Home, walk: list[tuple[int, int, int]]
) -> None:
    """Broken if it fails: something stays of a change that was taken back, or its list says otherwise."""
    undoing, register = cottage.house.undoing, cottage.house.register
    all_back(undoing)
    began, steps = standing_of(register), [standing_of(register)]
    for deed, number, back in walk:
        cottage.world.clock.forward(minutes=3)
        cottage.unlock()
        with suppress(Refused):  # settings that are so already
            do(cottage, deed, number)
        if standing_of(register) != steps[-1]:
            steps.append(standing_of(register))
        for _ in range(min(back, len(steps) - 1)):
            undoing.undo()
            assert standing_of(register) == steps[-2]
            undoing.redo()
            assert standing_of(register) == steps[-1]
            undoing.undo()
            steps.pop()
    all_back(undoing)
    assert standing_of(register) == began
    assert first_misfit(register.diary(), written=register.diary_written()) is None
