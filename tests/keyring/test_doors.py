"""The states of a household's keyring, told apart by the whole app with a real daemon and a real household."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import threading
from pathlib import Path

import pytest

from hearthkey.adapters.register import FILE_NAME, SqliteRegister
from hearthkey.adapters.vault_keyring import KeyringVault
from hearthkey.services.opening import Door, knock
from tests.keyring.backends import secret_service
from tests.keyring.desktop import NO_BUS, Desktop

WORDS = "oaken ladle visor plum tidy harbor mosaic"


def hearthkey(login: Desktop, folder: Path, *words: str, **environment: str) -> dict[str, object]:
    """Run the app in a login, as its householder does, and return what it prints for machines."""
    done = subprocess.run(
        (sys.executable, "-m", "hearthkey", *words, "--data", folder, "--json", "--quiet"),
        env=login.environment | environment,
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )
    told: dict[str, object] = json.loads(done.stdout)
    return told


def found(login: Desktop, folder: Path) -> None:
    """Found Quince Cottage in a login's keyring."""
    paper = folder.with_name("paper.txt")
    paper.write_text(WORDS, encoding="ascii")
    told = hearthkey(
        login,
        folder,
        *("found", "Quince Cottage", "--practice", "--yes", "--gateway-key-set", "compact"),
        *("--gateway-host", "home.quince.example", "--home-subnet", "198.51.100.0/24"),
        *("--tunnel-subnet", "203.0.113.0/24", "--passphrase-file", str(paper)),
    )
    assert told["kept_in"] == "keyring"


def test_every_state_has_its_own_name(open_login: Desktop, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """If this fails, a keyring in the way looks like a lost household, and somebody founds a second one."""
    data = tmp_path / "household"

    def door(**environment: str) -> object:
        return hearthkey(open_login, data, "show", **environment).get("keyring", "no-household")

    seen = [door()]
    found(open_login, data)
    seen += [door(), door(DBUS_SESSION_BUS_ADDRESS=NO_BUS)]
    seen.append(door(PYTHON_KEYRING_BACKEND="keyring.backends.null.Keyring"))
    monkeypatch.setenv("DBUS_SESSION_BUS_ADDRESS", open_login.address)
    seen.append(standing_still(open_login, data))
    kept = open_login.secrets()
    open_login.put_back({name: value for name, value in kept.items() if not name.endswith("/ca")})
    seen.append(door())
    open_login.close_keyring()
    seen.append(door())
    assert seen == [
        Door.NO_HOUSEHOLD,
        Door.READY,
        Door.KEYRING_ABSENT,
        Door.KEYRING_ABSENT,
        Door.KEYRING_SILENT,
        Door.KEYRING_EMPTY,
        Door.KEYRING_LOCKED,
    ]


def standing_still(login: Desktop, data: Path) -> Door:
    """Knock while the daemon does not answer."""
    register = SqliteRegister(data / FILE_NAME, read_only=True)
    os.kill(login.keyring_pid, signal.SIGSTOP)
    try:
        return knock(register, KeyringVault(patience=0.1, backend=secret_service()))
    finally:
        os.kill(login.keyring_pid, signal.SIGCONT)
        register.close()
        for thread in threading.enumerate():
            if thread.name == "keyring call":
                thread.join()


@pytest.mark.parametrize(
    ("environment", "code"),
    [
        ({"DBUS_SESSION_BUS_ADDRESS": NO_BUS}, "keyring-absent"),
        ({"PYTHON_KEYRING_BACKEND": "keyring.backends.null.Keyring"}, "keyring-unsafe"),
    ],
)
def test_nothing_is_founded_without_a_keyring(
    open_login: Desktop, tmp_path: Path, environment: dict[str, str], code: str
) -> None:
    """If this fails, a household exists whose key nobody keeps."""
    data, paper = tmp_path / "household", tmp_path / "paper.txt"
    paper.write_text(WORDS, encoding="ascii")
    words = ("found", "Quince Cottage", "--gateway-host", "home.quince.example", "--home-subnet", "198.51.100.0/24")
    told = hearthkey(open_login, data, *words, "--passphrase-file", str(paper), **environment)
    assert isinstance(told["error"], dict)
    assert told["error"]["code"] == code
    listed = hearthkey(open_login, data, "list")
    assert isinstance(listed["error"], dict)
    assert listed["error"]["code"] == "no-household"
    assert open_login.secrets() == {}
