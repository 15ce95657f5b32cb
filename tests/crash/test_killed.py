"""Kills every verb at every moment: the next start finds the state before or the state after, and nothing else.

What a moment is says `moments.py`. Verbs that need the vault are killed twice over: at every moment with a vault of
files, and with the real keyring at all but the statements inside a transaction, which say nothing to the keyring.
"""

from __future__ import annotations

import itertools
import shutil
from collections.abc import Callable

import pytest

from hearthkey.adapters.register import FILE_NAME
from hearthkey.core.household import FILE, KEYRING
from tests.crash import verdict
from tests.crash.homes import Home
from tests.crash.verdict import Outline

MOST_MOMENTS = 500


def outlines(home: Home, verb: str) -> tuple[Outline, Outline]:
    """What there is before a verb, and after one that nobody killed."""
    home.put_back()
    before = verdict.judge(home)
    assert home.run(verb).refusal is None
    after = verdict.judge(home)
    assert before != after
    return before, after


def nothing() -> None:
    """Neither more to prepare nor more to check."""


def kill_at_every_moment(
    home: Home,
    verb: str,
    *,
    thin: bool = False,
    prepare: Callable[[], None] = nothing,
    check_after: Callable[[], None] = nothing,
) -> None:
    """Kill a verb at each of its moments, and look with what the next start begins.

    Args:
        thin: as in `moments.Moments`.
        prepare: called before each run.
        check_after: called where the next start found the state after.
    """
    before, after = outlines(home, verb)
    happened: list[bool] = []
    for stop_at in itertools.count(1):
        home.put_back()
        prepare()
        run = home.run(verb, stop_at, thin=thin)
        if not run.killed:
            break
        assert len(run.trail) == stop_at < MOST_MOMENTS
        code, _ = home.list_devices()
        found = verdict.judge(home)
        assert found in {before, after}, f"{verb}, killed {run.trail[-1]}: {found}"
        assert code == (3 if found.rows[0] == 0 else 0)
        happened.append(found == after)
        if happened[-1:] != happened[-2:-1]:
            verdict.check_waiting_open(home)
        if happened[-1]:
            check_after()
        assert home.run("start").refusal is None
        assert verdict.judge(home) == found
        verdict.check_published(home)
    # Once it has happened it stays so, and there were moments of both kinds.
    assert happened == sorted(happened)
    assert set(happened) == {False, True}


@pytest.mark.parametrize("place", [KEYRING, FILE])
def test_founding(bare: dict[str, Home], place: str) -> None:
    """If this fails, a power cut on the first evening leaves half a household, or a key that belongs to nothing."""
    kill_at_every_moment(bare[place], "found", thin=place == KEYRING)


@pytest.mark.parametrize("place", [KEYRING, FILE])
def test_enrolling(settled: dict[str, Home], place: str) -> None:
    """If this fails, a power cut leaves a device without its passphrase, or a passphrase without its device."""
    kill_at_every_moment(settled[place], "add", thin=place == KEYRING)


@pytest.mark.parametrize("place", [KEYRING, FILE])
def test_handing_over(settled: dict[str, Home], place: str) -> None:
    """If this fails, a power cut leaves a key or its passphrase here after the device has it.

    A safety copy of an older register, which holds the key too, lies beside it.
    """
    home = settled[place]
    home.put_back()
    with_key = sealed_of(home, "Ines’s phone")

    def put_copy() -> None:
        shutil.copy(home.data / FILE_NAME, home.data / "register.before-2.db")
        assert len(verdict.traces(home.data, with_key)) == 2

    def check_erased() -> None:
        assert verdict.traces(home.data, with_key) == []

    kill_at_every_moment(home, "hand-over", thin=place == KEYRING, prepare=put_copy, check_after=check_erased)


def sealed_of(home: Home, title: str) -> bytes:
    """Octets from the middle of a waiting pass's PKCS#12, which stand nowhere else."""
    register = verdict.open_register(home)
    try:
        serial = next(one.serial for one in register.passes() if one.title == title)
        sealed = register.sealed(serial)
    finally:
        register.close()
    assert sealed is not None
    return sealed[200:264]


@pytest.mark.parametrize("place", [KEYRING, FILE])
def test_settling(settled: dict[str, Home], place: str) -> None:
    """If this fails, a power cut leaves a host without its certificate, or a gateway's key that nothing opens."""
    kill_at_every_moment(settled[place], "settle", thin=place == KEYRING)


@pytest.mark.parametrize("verb", ["stop", "spare-stop", "spares", "let-in"])
def test_withdrawing(settled: dict[str, Home], verb: str) -> None:
    """If this fails, a power cut leaves a list that says something else than the register, or a number twice."""
    kill_at_every_moment(settled[KEYRING], verb)


def test_proving(settled: dict[str, Home]) -> None:
    """If this fails, a power cut leaves a proof that the diary does not know, or an entry about none."""
    kill_at_every_moment(settled[FILE], "prove")


def test_revoking(settled: dict[str, Home]) -> None:
    """If this fails, a power cut leaves a key or a passphrase here that nothing but harm can come of."""
    home = settled[KEYRING]
    home.put_back()
    with_key = sealed_of(home, "Ines’s phone")

    def check_erased() -> None:
        assert verdict.traces(home.data, with_key) == []

    kill_at_every_moment(home, "revoke", check_after=check_erased)


def last_moment(home: Home, verb: str, name: str) -> int:
    """The number of the last moment of a name, in a run that nobody kills."""
    home.put_back()
    names = home.run(verb).trail
    return len(names) - names[::-1].index(name)


def crash(home: Home, verb: str, moment: int) -> str:
    """Kill a verb at a moment and return its name."""
    home.put_back()
    run = home.run(verb, moment)
    assert run.killed
    return run.trail[-1]


@pytest.mark.parametrize("place", [KEYRING, FILE])
@pytest.mark.parametrize(
    ("verb", "name", "happened"),
    [("add", "before COMMIT", False), ("hand-over", "before PRAGMA wal_checkpoint(TRUNCATE)", True)],
)
def test_a_second_crash_while_the_first_is_mended(
    settled: dict[str, Home], place: str, verb: str, name: str, *, happened: bool
) -> None:
    """If this fails, two power cuts in a row leave what one does not."""
    home = settled[place]
    expected = outlines(home, verb)[happened]
    first = last_moment(home, verb, name)
    for stop_at in itertools.count(1):
        assert crash(home, verb, first) == name
        run = home.run("start", stop_at, thin=place == KEYRING)
        if not run.killed:
            break
        assert home.list_devices()[0] == 0
        assert verdict.judge(home) == expected, run.trail[-1]
    assert stop_at > 5


def test_a_closed_keyring_at_the_next_start(own_login: Home) -> None:
    """If this fails, a crash and then a closed keyring keep the family from looking, or leave a secret for good."""
    home, desktop = own_login, own_login.desktop
    before, secrets = verdict.judge(home), home.secrets()
    crash(home, "add", last_moment(home, "add", "before COMMIT"))
    desktop.close_keyring()
    assert home.list_devices()[0] == 0
    desktop.stop_keyring()
    desktop.start_keyring()
    assert len(home.secrets()) == len(secrets) + 2
    assert home.list_devices()[0] == 0
    assert verdict.judge(home) == before


def test_founding_again_after_a_crash(bare: dict[str, Home]) -> None:
    """If this fails, somebody whose first evening ended in a power cut has to delete files by hand."""
    home = bare[KEYRING]
    crash(home, "found", last_moment(home, "found", "before COMMIT"))
    assert home.run("found").refusal is None
    assert verdict.judge(home).rows[0] == 1
