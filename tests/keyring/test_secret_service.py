"""The vault over a real keyring daemon: what it keeps, and how a closed one is told from an empty one."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

import pytest

from tests.keyring import ask
from tests.keyring.desktop import NO_BUS, Desktop

QUESTIONS = (["get", "practice/ca"], ["put", "practice/ca", "plum"], ["delete", "practice/ca"])


def answers(login: Desktop, *questions: list[str], **environment: str) -> list[dict[str, object]]:
    """Ask a login's keyring from a process of that login."""
    done = subprocess.run(
        (sys.executable, Path(ask.__file__), json.dumps(questions)),
        env=login.environment | environment,
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    told: list[dict[str, object]] = json.loads(done.stdout)
    return told


def codes(told: list[dict[str, object]]) -> list[object]:
    """What each question was answered with, where it is an error of ours."""
    return [one.get("unavailable") for one in told]


def test_keeps_finds_and_forgets(open_login: Desktop) -> None:
    """If this fails, the CA key does not come back from the desktop's own keyring, or never leaves it."""
    told = answers(
        open_login,
        ["get", "practice/ca"],
        ["put", "practice/ca", "plum"],
        ["put", "practice/ca", "quince"],
        ["put", "practice/gateway", "pear"],
        ["get", "practice/ca"],
        ["delete", "practice/ca"],
        ["delete", "practice/ca"],
        ["get", "practice/ca"],
    )
    found = [one["found"] for one in told if "found" in one]
    assert found == [None, "quince", None]
    assert codes(told) == [None] * 8
    assert open_login.secrets() == {"practice/gateway": "pear"}


def test_outlives_the_daemon(open_login: Desktop) -> None:
    """If this fails, a household is gone after the next login; 1,280 characters are the most a vault is given."""
    text = "q" * 1280
    answers(open_login, ["put", "practice/ca", text])
    open_login.stop_keyring()
    open_login.start_keyring()
    assert answers(open_login, ["get", "practice/ca"]) == [{"found": text}]


def test_a_closed_keyring_is_not_an_empty_one(closed_login: Desktop) -> None:
    """If this fails, a keyring that waits for its password looks like a household that was lost."""
    assert codes(answers(closed_login, *QUESTIONS)) == ["keyring-locked"] * 3


def test_a_keyring_closed_meanwhile(open_login: Desktop) -> None:
    """If this fails, a desktop that locks its keyring during the day makes secrets look lost."""
    answers(open_login, ["put", "practice/ca", "plum"])
    open_login.close_keyring()
    assert codes(answers(open_login, *QUESTIONS)) == ["keyring-locked"] * 3
    open_login.stop_keyring()
    open_login.start_keyring()
    assert open_login.secrets() == {"practice/ca": "plum"}


def test_a_keyring_told_another_password(open_login: Desktop) -> None:
    """If this fails, a login whose password was changed elsewhere looks like a household that was lost."""
    open_login.stop_keyring()
    open_login.start_keyring("another login")
    assert codes(answers(open_login, *QUESTIONS)) == ["keyring-locked"] * 3


def test_a_daemon_that_has_no_keyring_yet(login: Desktop) -> None:
    """If this fails, a fresh account without a keyring ends in an error that nobody understands."""
    login.start_bus()
    login.start_keyring(None)
    assert codes(answers(login, *QUESTIONS)) == ["keyring-locked"] * 3


def test_no_bus(login: Desktop) -> None:
    """If this fails, a login over the network, which has no keyring, is told something else than that."""
    assert login.address == NO_BUS
    assert codes(answers(login, *QUESTIONS)) == ["keyring-absent"] * 3


def test_a_bus_without_a_daemon(login: Desktop) -> None:
    """If this fails, a desktop without a keyring daemon is told something else than that."""
    login.start_bus()
    assert codes(answers(login, *QUESTIONS)) == ["keyring-absent"] * 3


def test_a_bus_that_went_away(open_login: Desktop) -> None:
    """If this fails, a login that has ended leaves the app with a fault instead of a sentence."""
    address = open_login.address
    open_login.stop()
    assert codes(answers(open_login, *QUESTIONS, DBUS_SESSION_BUS_ADDRESS=address)) == ["keyring-absent"] * 3


@pytest.mark.parametrize(
    ("chosen", "code"),
    [
        ("keyring.backends.null.Keyring", "keyring-unsafe"),
        ("keyring.backends.fail.Keyring", "keyring-absent"),
        ("keyring.backends.SecretService.Keyring", "keyring-absent"),
        ("tests_of_quince.NoSuchKeyring", "keyring-absent"),
        ("keyring.backends.fail.NoSuchKeyring", "keyring-absent"),
        ("nonsense", "keyring-absent"),
    ],
)
def test_a_keyring_chosen_by_hand(login: Desktop, chosen: str, code: str) -> None:
    """If this fails, a keyring that keeps nothing is trusted with a household, or a typing slip is a fault of ours.

    PYTHON_KEYRING_BACKEND: documentation of the keyring library, "Configuring".
    """
    assert codes(answers(login, *QUESTIONS, PYTHON_KEYRING_BACKEND=chosen)) == [code] * 3
