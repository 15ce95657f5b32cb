"""The household's key on paper: what is put there, and what comes back of it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from hearthkey.core import paper
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.languages import Language
from hearthkey.core.paper import Gathered
from hearthkey.core.revocation import Reason
from hearthkey.core.secret import Secret
from hearthkey.core.target import By, Target
from hearthkey.formats import paper_der
from hearthkey.pki.keys import AuthorityKey
from hearthkey.services import reading_paper
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.papering import Papering
from hearthkey.services.restoring import GAP
from hearthkey.services.restoring_paper import PaperRestoring
from tests.fakes.gateway import HOST_KEY
from tests.fakes.home import PASSPHRASE, Home, PracticeHouse, World, at_home
from tests.fakes.vault import FakeVault

TARGET = Target(By.SSH, "hearthkey", host="gateway.quince.example")


class OneKey:
    """The port `services.ports.Locksmith` for one key, so that a test costs no second of scrypt."""

    def __init__(self, key: AuthorityKey) -> None:
        self._key = key

    def seal(self, key: AuthorityKey, passphrase: Secret[str]) -> str:
        """See the port."""
        raise AssertionError(key, passphrase)

    def open_guard(self, text: str, passphrase: Secret[str]) -> AuthorityKey:
        """See the port."""
        assert text.startswith("-----BEGIN AGE")
        if passphrase != PASSPHRASE:
            raise Refused("wrong-passphrase")
        return self._key


@pytest.fixture
def other(home: Home, tmp_path: Path) -> Iterator[PracticeHouse]:
    """A computer that has no household, with a keyring of its own."""
    world = home.world
    house = PracticeHouse(tmp_path / "other", World(clock=world.clock, dice=world.dice, locks=world.locks))
    house.enter()
    yield house
    house.leave()


def bringing(house: PracticeHouse, key: AuthorityKey) -> PaperRestoring:
    """The verb, with a locksmith that costs nothing."""
    parts = (house.register, house.vault, house.keyholder, house.clock, house.dice, house.words)
    return PaperRestoring(*parts, OneKey(key))


def content(home: Home) -> bytes:
    """What stands on a paper made now."""
    return paper_der.encode(home.house.papering.facts(Language.ENGLISH).contents)


def test_the_household_comes_back_with_key_settings_numbers_and_who_was_stopped(
    home: Home, other: PracticeHouse
) -> None:
    """Otherwise the paper in the drawer would be of no use on the day it is needed."""
    home.hand_over("Ines phone")
    home.hand_over("Tomasz laptop")
    home.stop("Tomasz laptop")
    home.revoke("Odile tablet")
    home.house.keyholder.lock()
    here = home.house.register
    verb = bringing(other, home.key)
    plan = verb.preview(content(home), PASSPHRASE)
    assert "the one pass that was in use then gets in until it ends" in plan.sentence
    assert other.register.household() is None
    verb.apply(plan)
    there = other.register
    assert there.household() == here.household()
    assert there.passes() == []
    authority, before = there.authority(), here.authority()
    assert authority is not None
    assert before is not None
    assert authority.certificate == before.certificate
    assert {(one.serial, one.reason, one.since) for one in there.entries()} == {
        (one.serial, one.reason, one.since) for one in here.entries()
    }
    newest = there.newest_list()
    assert newest is not None
    assert newest.number == here.list_high_water() + GAP + 1
    assert there.loose_secrets() == []
    assert [one.verb for one in there.diary()] == ["restore"]
    assert not other.keyholder.locked
    gateway, old = there.gateway(), here.gateway()
    assert gateway is not None
    assert old is not None
    assert gateway.serial != old.serial
    assert gateway.host == old.host


def test_people_are_added_again_and_the_real_key_text_opens(home: Home, other: PracticeHouse) -> None:
    """Otherwise the household would be back and could do nothing; here scrypt is what it is."""
    plan = other.restoring_paper.preview(content(home), PASSPHRASE)
    other.restoring_paper.apply(plan)
    other.keyholder.lock()
    other.keyholder.unlock(other.register, other.vault, PASSPHRASE)
    other.enrolling.apply(other.enrolling.preview(EnrolRequest("Ines", "phone", "windows")))
    assert [one.title for one in other.register.passes()] == ["Ines’s phone"]


def test_the_gateway_gives_back_who_was_stopped_after_the_paper_was_made(tmp_path: Path) -> None:
    """Otherwise whoever was stopped since would get in again with the first list from the new computer."""
    with at_home(tmp_path / "data", practice=False) as home:
        home.world.gate.clock = home.world.clock.now()
        home.house.targeting.choose(TARGET, HOST_KEY)
        old = content(home)
        home.stop("Ines phone")
        home.revoke("Odile tablet")
        home.house.delivering.deliver()
        world = World(clock=home.world.clock, dice=home.world.dice, gate=home.world.gate)
        house = PracticeHouse(tmp_path / "other", world)
        house.enter()
        try:
            verb = bringing(house, home.key)
            verb.apply(verb.preview(old, PASSPHRASE))
            assert house.register.entries() == []
            house.targeting.choose(TARGET, HOST_KEY)
            done = house.delivering.deliver()
            assert {one.serial for one in house.register.entries()} == {
                one.serial for one in home.house.register.entries()
            }
            assert len(done.taken_over) == 2
            assert done.list_number > GAP > home.house.register.list_high_water()
        finally:
            house.leave()


def test_a_paper_is_tried_for_real(home: Home, other: PracticeHouse) -> None:
    """Otherwise nobody knows whether what was printed opens, or whose it is."""
    own = content(home)
    trying = Papering(home.house.register, home.house.vault, home.house.clock, OneKey(home.key))
    assert "those of today" in trying.try_paper(own, PASSPHRASE).sentence
    assert home.house.register.diary()[-1].verb == "try"
    with pytest.raises(Refused, match="wrong-passphrase"):
        trying.try_paper(own, Secret("seven other words than those of this house"))
    with pytest.raises(Refused, match="paper-key-of-another"):
        Papering(home.house.register, home.house.vault, home.house.clock, OneKey(AuthorityKey.make())).try_paper(
            own, PASSPHRASE
        )
    told = paper_der.decode(own)
    with pytest.raises(Refused, match="paper-of-other-house"):
        trying.try_paper(paper_der.encode(replace(told, certificate=b"another")), PASSPHRASE)
    with pytest.raises(Refused, match="no-household"):
        other.papering.try_paper(own, PASSPHRASE)


def test_a_wrong_passphrase_and_a_household_that_is_here_change_nothing(home: Home, other: PracticeHouse) -> None:
    """Otherwise a guess would leave traces, or a paper would cost the household that is here."""
    data = content(home)
    with pytest.raises(Refused, match="wrong-passphrase"):
        bringing(other, home.key).preview(data, Secret("seven other words than those of this house"))
    assert other.register.household() is None
    with pytest.raises(Refused, match="household-exists"):
        bringing(home.house, home.key).preview(data, PASSPHRASE)


def test_what_was_changed_on_the_way_is_refused(home: Home, other: PracticeHouse) -> None:
    """Otherwise a paper somebody made up would bring back a household that nobody founded."""
    told = home.house.papering.facts(Language.ENGLISH).contents
    gateway = home.house.register.gateway()
    assert gateway is not None
    verb = bringing(other, home.key)
    for wrong in (
        replace(told, household=replace(told.household, gateway_host="Home.Quince.example ")),
        replace(told, household=replace(told.household, tunnel="sideways")),
        replace(told, household=replace(told.household, dns_servers=("quince",))),
        replace(told, certificate=gateway.certificate),
        replace(told, certificate=b"no certificate"),
    ):
        with pytest.raises(Refused):
            verb.preview(paper_der.encode(wrong), PASSPHRASE)
    with pytest.raises(Refused, match="paper-key-of-another"):
        bringing(other, AuthorityKey.make()).preview(content(home), PASSPHRASE)
    assert other.register.household() is None


def test_a_clock_that_is_behind_signs_nothing(home: Home, other: PracticeHouse) -> None:
    """Otherwise everything signed afterwards would be refused by devices whose clock is right."""
    data = content(home)
    home.world.clock.forward(days=-3)
    verb = bringing(other, home.key)
    with pytest.raises(Refused, match="clock-behind"):
        verb.apply(verb.preview(data, PASSPHRASE))
    home.world.clock.forward(days=9000)
    with pytest.raises(Refused, match="authority-ended"):
        verb.apply(verb.preview(data, PASSPHRASE))


def test_a_keyring_that_does_not_answer_leaves_everything_as_it_was(home: Home, other: PracticeHouse) -> None:
    """Otherwise a locked keyring would leave half a household behind."""
    verb = bringing(other, home.key)
    plan = verb.preview(content(home), PASSPHRASE)
    vault = other.vault
    assert isinstance(vault, FakeVault)
    vault.trouble = "keyring-locked"
    with pytest.raises(Unavailable, match="keyring-locked"):
        verb.apply(plan)
    assert other.register.household() is None
    vault.trouble = None
    home.house.vault.delete(next(name for name in home.world.vault.secrets if name.endswith("/ca")))
    with pytest.raises(Refused, match="keyring-empty"):
        home.house.papering.facts(Language.ENGLISH)


def test_the_newest_withdrawals_have_a_place_and_the_others_are_counted(home: Home) -> None:
    """Otherwise a long list would push the key off the paper, or be left out without a word."""
    with home.house.register.change() as change:
        for number in range(40):
            change.adopt(f"{number:040x}", home.house.clock.now())
            change.withdraw(f"{number:040x}", Reason.CERTIFICATE_HOLD, home.house.clock.now())
            home.world.clock.forward(hours=1)
    told = home.house.papering.facts(Language.GERMAN).contents
    assert told.withdrawn
    assert len(told.withdrawn) + told.more_withdrawn == 40
    assert told.withdrawn[0].serial == f"{39:040x}"
    assert len(paper.lines_of(paper_der.encode(told))) <= paper.MOST_LINES


def test_pictures_and_text_add_up_and_strange_files_are_told(home: Home) -> None:
    """Otherwise what was scanned would be asked for again, or a wrong file end in a fault of the app."""
    lines = paper.lines_of(content(home))
    rows = [f"{one.number:02} {' '.join(one.groups)}" for one in lines]
    first = reading_paper.gathered("\n".join(rows[:20]).encode(), "a.txt", Gathered(), _no_codes)
    found = reading_paper.gathered(("\ufeff" + "\r\n".join(rows[20:])).encode(), "b.txt", first, _no_codes)
    assert found.content() == content(home)
    for strange in (b"%PDF-1.4\n", b"\xff\xfe\x00", b"PK\x03\x04\x00\x00"):
        with pytest.raises(Refused, match="paper-file-unknown"):
            reading_paper.gathered(strange, "strange", Gathered(), _no_codes)


def _no_codes(_data: bytes) -> tuple[str, ...]:
    return ()
