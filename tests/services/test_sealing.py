"""Sealed copies: made without a passphrase, opened with it, tried for real, brought back whole."""

from __future__ import annotations

import io
import tarfile
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from hearthkey.core.errors import HearthkeyError, Refused, Unavailable
from hearthkey.core.passes import State
from hearthkey.core.secret import Secret
from hearthkey.formats import sealed_tar
from hearthkey.pki import copy_lock
from hearthkey.services.restoring import GAP
from tests.fakes.home import PASSPHRASE, Home, PracticeHouse, World, at_home
from tests.fakes.vault import FakeVault
from tests.fakes.workshop import QuickWorkshop


@pytest.fixture
def home(tmp_path: Path) -> Iterator[Home]:
    """Quince Cottage, with a lock for its copies."""
    with at_home(tmp_path / "data") as found:
        found.house.sealing.make_ready(PASSPHRASE)
        yield found


def made(home: Home, folder: Path | None = None) -> bytes:
    """A fresh copy's bytes."""
    _note, changes = home.house.sealing.seal(folder)
    return Path(changes.files[0]).read_bytes()


def again(tmp_path: Path, world: World) -> PracticeHouse:
    """A computer that has no household, with a keyring of its own."""
    house = PracticeHouse(
        tmp_path / "other", World(clock=world.clock, dice=world.dice, locks=world.locks, workshop=world.workshop)
    )
    house.enter()
    return house


def test_a_copy_is_made_without_the_passphrase_and_brings_everything_back(home: Home, tmp_path: Path) -> None:
    """Otherwise a dead laptop would be the end of the household."""
    home.hand_over("Ines phone")
    home.stop("Tomasz laptop")
    home.house.keyholder.lock()
    data = made(home, tmp_path / "stick")
    here = home.house.register
    house = again(tmp_path, home.world)
    try:
        with house.restoring.preview(data, PASSPHRASE) as plan:
            assert plan.waiting == 2
            house.restoring.apply(plan)
        there = house.register
        assert there.household() == here.household()
        assert [replace(one, key_lost=False) for one in there.passes()] == here.passes()
        assert [one.title for one in there.passes() if one.key_lost] == ["Tomasz’s laptop", "Odile’s tablet"]
        assert there.entries() == here.entries()
        assert there.list_high_water() == here.list_high_water() + GAP
        assert there.diary()[-1].verb == "restore"
        assert there.diary()[:-1] == here.diary()[: len(there.diary()) - 1]
        assert not house.keyholder.locked
        house.keyholder.lock()
        house.keyholder.unlock(there, house.vault, PASSPHRASE)
        assert there.loose_secrets() == []
        house.sealing.keep_up()
        assert len(there.sealed_copies()) == 1
    finally:
        house.leave()


def test_a_renewal_that_waited_is_made_again_after_a_restore(home: Home, tmp_path: Path) -> None:
    """Otherwise a pass without a key would be handed over and take the place of the one that works."""
    home.world.workshop = QuickWorkshop()
    home.reopen()
    home.hand_over("Ines phone")
    home.world.clock.forward(days=690)
    home.unlock()
    home.house.renewing.renew(home.house.renewing.preview(home.passes("Ines phone")))
    data, now = made(home), home.world.clock.now()
    house = again(tmp_path, home.world)
    there = Home(house, home.world, home.key)
    try:
        with house.restoring.preview(data, PASSPHRASE) as plan:
            house.restoring.apply(plan)
        old, lost = there.passes("Ines phone")
        assert (lost.state(now), lost.key_lost, lost.key_is_here) == (State.WAITING, True, False)
        with pytest.raises(Refused, match="passphrase-lost"):
            there.hand_over("Ines phone")
        with pytest.raises(Refused, match="passphrase-lost"):
            house.bundling.open(lost)
        planned = house.renewing.plan_due(old.not_after, person="Ines")
        assert ([one.old for one in planned.plans], planned.left) == ([old], ())
        assert house.renewing.go_round(planned).failed is None
        with pytest.raises(Refused, match="renewal-waits"):
            house.renewing.preview(there.passes("Ines phone"))
        there.hand_over("Ines phone")
        assert house.superseding.follow_up() is None
        proving = house.proving
        proving.told(proving.preview_told(proving.choose(there.passes("Ines phone"))))
        assert house.superseding.follow_up() is not None
        states = [one.state(now) for one in there.passes("Ines phone")]
        assert states == [State.REVOKED, State.REVOKED, State.IN_USE]
    finally:
        house.leave()


def test_the_next_list_after_a_restore_is_newer_than_any_that_the_lost_computer_signed(
    home: Home, tmp_path: Path
) -> None:
    """Otherwise the gateway would hold on to an older list, or meet one number twice (RFC 5280 section 5.2.3)."""
    data = made(home)
    for _ in range(3):
        home.stop("Ines phone")
        home.let_in("Ines phone")
    lost = home.house.register.list_high_water()
    house = again(tmp_path, home.world)
    try:
        with house.restoring.preview(data, PASSPHRASE) as plan:
            house.restoring.apply(plan)
        assert house.listing.next_number() > lost
    finally:
        house.leave()


def test_no_key_of_a_waiting_bundle_and_no_passphrase_of_one_is_in_a_copy(home: Home) -> None:
    """Otherwise a key would live on in a copy after its device has it."""
    waiting = home.newest("Ines phone")
    assert waiting.state(home.house.clock.now()) is State.WAITING
    sealed = home.house.register.sealed(waiting.serial)
    assert sealed is not None
    words = [value for name, value in home.world.vault.secrets.items() if name.endswith(waiting.serial)]
    opener = home.world.locks.unlock(_outer(made(home))[sealed_tar.IDENTITY].decode(), PASSPHRASE)
    inner = copy_lock.open_sealed(_outer(made(home))[sealed_tar.SEALED], opener.private)
    assert len(words) == 1
    assert sealed[100:200] not in inner
    assert words[0].encode() not in inner
    assert home.house.register.sealed(waiting.serial) == sealed


def test_a_copy_is_tried_for_real_and_the_register_remembers_it(home: Home) -> None:
    """Otherwise "saved" would be all that anybody knows."""
    data = made(home)
    home.stop("Ines phone")
    told = home.house.sealing.try_copy(data, PASSPHRASE)
    assert "One entry of the diary came later" in told.sentence
    assert home.house.register.sealed_copies()[0].tried == home.house.clock.now()
    with pytest.raises(Refused, match="wrong-passphrase"):
        home.house.sealing.try_copy(data, Secret("another one entirely"))


def test_copies_of_their_own_passphrase_open_with_both(home: Home) -> None:
    """Otherwise a passphrase of the copies' own would lock the householder out, or not lock at all."""
    own = Secret("a passphrase for the copies alone")
    home.house.sealing.make_ready(own, own=True)
    data = made(home)
    home.house.sealing.try_copy(data, PASSPHRASE, own)
    with pytest.raises(Refused, match="wrong-passphrase"):
        home.house.sealing.try_copy(data, PASSPHRASE)


def test_the_app_keeps_up_by_itself_and_keeps_ten(home: Home) -> None:
    """Otherwise the newest copy would be from the first evening, or the disk would fill up."""
    sealing = home.house.sealing
    assert sealing.keep_up() is not None
    assert sealing.keep_up() is None
    for _ in range(6):
        home.stop("Ines phone")
        sealing.keep_up()
        home.let_in("Ines phone")
        sealing.keep_up()
    lying = sorted((home.house.data / "sealed").iterdir())
    notes = home.house.register.sealed_copies()
    assert [one.name for one in lying] == [one.name for one in notes][-10:]
    assert all(one.stat().st_mode & 0o777 == 0o600 for one in lying)


def test_every_octet_counts(home: Home) -> None:
    """Otherwise a copy edited by one byte might be restored as something else."""
    data = made(home)
    outer = _outer(data)
    body = outer[sealed_tar.SEALED]
    for place in range(0, len(body), len(body) // 60):
        torn = {**outer, sealed_tar.SEALED: body[:place] + bytes([body[place] ^ 0x20]) + body[place + 1 :]}
        with pytest.raises(Refused, match="copy-damaged"):
            home.house.sealing.try_copy(sealed_tar.pack(torn, home.house.clock.now()), PASSPHRASE)
    padding = 11 * 1024  # tar fills its last record of 20 blocks with zeros, and those are nobody's
    for cut in range(0, len(data) - padding, len(data) // 30):
        with pytest.raises(Refused, match="copy-damaged"):
            home.house.sealing.try_copy(data[:cut], PASSPHRASE)


def test_what_somebody_else_encrypted_to_us_is_not_taken_for_ours(home: Home) -> None:
    """Otherwise whoever can write to the stick could bring back a household in which nobody is stopped."""
    opener = home.world.locks.unlock(_outer(made(home))[sealed_tar.IDENTITY].decode(), PASSPHRASE)
    home.stop("Ines phone")
    outer = _outer(made(home))
    inner = sealed_tar.unpack(copy_lock.open_sealed(outer[sealed_tar.SEALED], opener.private), "")
    lock = home.house.register.copy_lock()
    assert lock is not None
    forged = inner[sealed_tar.MANIFEST].replace(home.newest("Ines phone").serial.encode(), b"")
    inner[sealed_tar.MANIFEST] = forged
    now = home.house.clock.now()
    outer[sealed_tar.SEALED] = copy_lock.seal(sealed_tar.pack(inner, now), lock[0])
    with pytest.raises(Refused, match="copy-not-marked"):
        home.house.sealing.try_copy(sealed_tar.pack(outer, now), PASSPHRASE)


def test_a_diary_that_was_cut_off_is_noticed_by_the_copy(home: Home, tmp_path: Path) -> None:
    """Otherwise nobody would see that something was taken out of the end of the diary."""
    before = made(home)
    home.stop("Ines phone")
    after = made(home)
    house = again(tmp_path, home.world)
    try:
        with house.restoring.preview(before, PASSPHRASE) as plan:
            house.restoring.apply(plan)
        with pytest.raises(Refused, match="copy-other-past"):
            house.sealing.try_copy(after, PASSPHRASE)
    finally:
        house.leave()


def test_a_household_is_never_written_over(home: Home) -> None:
    """Otherwise a wrong file would cost the household that is here."""
    data = made(home)
    with pytest.raises(Refused, match="household-exists"), home.house.restoring.preview(data, PASSPHRASE):
        pass


def test_a_newer_copy_than_the_app_is_told_as_such(home: Home) -> None:
    """Otherwise it would be called damaged, and thrown away."""
    lock = home.house.register.copy_lock()
    assert lock is not None
    outer = _outer(made(home))
    opener = home.world.locks.unlock(outer[sealed_tar.IDENTITY].decode(), PASSPHRASE)
    inner = sealed_tar.unpack(copy_lock.open_sealed(outer[sealed_tar.SEALED], opener.private), "")
    inner[sealed_tar.MANIFEST] = inner[sealed_tar.MANIFEST].replace(b"sealed copy 1", b"sealed copy 2")
    now = home.house.clock.now()
    outer[sealed_tar.SEALED] = copy_lock.seal(sealed_tar.pack(inner, now), lock[0])
    with pytest.raises(Refused, match="copy-newer"):
        home.house.sealing.try_copy(sealed_tar.pack(outer, now), PASSPHRASE)


def test_a_keyring_that_does_not_answer_leaves_everything_as_it_was(home: Home, tmp_path: Path) -> None:
    """Otherwise a locked keyring would leave half a household behind."""
    data = made(home)
    house = again(tmp_path, home.world)
    try:
        with house.restoring.preview(data, PASSPHRASE) as plan:
            _locked(house)
            with pytest.raises(Unavailable, match="keyring-locked"):
                house.restoring.apply(plan)
        assert house.register.household() is None
    finally:
        house.leave()


def _locked(house: PracticeHouse) -> None:
    vault = house.vault
    assert isinstance(vault, FakeVault)
    vault.trouble = "keyring-locked"


def _outer(data: bytes) -> dict[str, bytes]:
    with tarfile.open(fileobj=io.BytesIO(data)) as tar:
        return {one.name: file.read() for one in tar if (file := tar.extractfile(one)) is not None}


def test_a_copy_before_there_is_a_lock_is_refused_with_the_way_on(tmp_path: Path) -> None:
    """Otherwise a copy would be written that nobody can open."""
    with at_home(tmp_path / "data") as home:
        assert home.house.sealing.keep_up() is None
        with pytest.raises(HearthkeyError, match="copy-not-ready"):
            home.house.sealing.seal()
