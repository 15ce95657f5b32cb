"""Before a gateway is trusted: its host key is shown, nothing is sent, and another key later stops everything."""

from __future__ import annotations

import shutil
import socket
import subprocess
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

from hearthkey.adapters.gateway_ways import GatewayWays, Limits
from hearthkey.core.errors import HearthkeyError, Refused, Unavailable
from hearthkey.core.target import Target
from tests.gateway import servers
from tests.gateway.servers import Relay, Server
from tests.judges import needs

HASTY = Limits(connect=1, step=1, command=1)


@pytest.fixture
def talkative(keys: Path) -> Iterator[Server]:
    """A server that notes everything about a connection."""
    with servers.running(keys, more="LogLevel DEBUG1") as server:
        yield server


def code_of_opening(door: GatewayWays, target: Target) -> str:
    """What opening ends with."""
    with pytest.raises(HearthkeyError) as caught, door.open(target):
        pytest.fail("it opened")
    return caught.value.code


def fingerprint(path: Path) -> str:
    """A key's fingerprint, by ssh-keygen."""
    told = subprocess.run([needs("ssh-keygen"), "-l", "-f", path], capture_output=True, text=True, check=True)
    return told.stdout.split()[1]


def asked_for_anything(server: Server) -> bool:
    """Whether a client went further than the key exchange (RFC 4253 section 10: a service request follows it)."""
    log = server.log.read_text("utf-8", "replace")
    return "userauth-request" in log or "SSH2_MSG_NEWKEYS received" in log


def test_the_key_is_shown_and_nothing_else_is_sent(talkative: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: the fingerprint is not the one that the gateway's own ssh-keygen prints."""
    shown = door.host_key(talkative.target(folder))
    assert shown is not None
    assert shown.line == talkative.host_key
    assert shown.fingerprint == fingerprint(talkative.home / "host_key.pub")
    servers.until(lambda: "kex" in talkative.log.read_text("utf-8", "replace"), lambda: "nobody came")
    assert not asked_for_anything(talkative)


def test_the_same_look_sees_somebody_who_is_let_in(talkative: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: the test above could not see what it looks for."""
    with door.open(talkative.target(folder)):
        assert asked_for_anything(talkative)


def test_before_the_key_was_compared_nobody_is_called(server: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: files go to a computer that nobody has looked at."""
    with Relay(server.port) as relay:
        target = replace(server.target(folder, port=relay.port), host_key="")
        assert code_of_opening(door, target) == "host-key-unknown"
        assert relay.connections == 0


def test_another_key_stops_everything(talkative: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: somebody in between gets the gateway's key."""
    pinned = servers.public(talkative.home / "other_host_key")
    with pytest.raises(Refused) as changed, door.open(replace(talkative.target(folder), host_key=pinned)):
        pytest.fail("it opened")
    assert changed.value.code == "host-key-changed"
    assert changed.value.facts["seen"] == fingerprint(talkative.home / "host_key.pub")
    assert not asked_for_anything(talkative)


def test_a_key_of_another_kind_stops_everything(talkative: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: somebody in between only has to offer another kind of key."""
    pinned = "ecdsa-sha2-nistp256 " + servers.public(talkative.home / "other_host_key").split()[1]
    target = replace(talkative.target(folder), host_key=pinned)
    assert code_of_opening(door, target) == "host-key-changed"
    assert not asked_for_anything(talkative)


def test_a_pinned_key_that_is_none_trusts_nobody(talkative: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: a damaged register trusts everybody."""
    target = replace(talkative.target(folder), host_key="ssh-ed25519 AAAA")
    assert code_of_opening(door, target) == "host-key-unknown"
    assert not asked_for_anything(talkative)


def test_the_users_own_known_hosts_are_heard(server: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: ssh itself would warn of another key, and we would show it as if it were the first."""
    known = server.home / "known_hosts"
    own = f"[127.0.0.1]:{server.port} "
    known.write_text(own + servers.public(server.home / "other_host_key") + "\n", "ascii")
    with pytest.raises(Refused) as changed:
        door.host_key(server.target(folder))
    assert changed.value.code == "host-key-changed"
    known.write_text(own + server.host_key + "\n", "ascii")
    assert door.host_key(server.target(folder)) is not None


def test_a_user_that_is_not_let_in(server: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: a wrong key is told like a broken network."""
    servers.be_the_user(server.home, server.port, "stranger")
    assert code_of_opening(door, server.target(folder)) == "gateway-refused-us"


def test_nobody_listens(server: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: a gateway that is switched off is told in riddles."""
    target = server.target(folder, port=servers.free_port())
    assert code_of_opening(door, target) == "gateway-unreachable"
    with pytest.raises(Unavailable) as unreachable:
        door.host_key(target)
    assert unreachable.value.code == "gateway-unreachable"


def test_a_name_that_nobody_knows(server: Server, door: GatewayWays, folder: Path) -> None:
    """Broken if it fails: a misspelt name is told like a broken network.

    No question leaves this computer: no label has over 63 octets (RFC 1035 section 2.3.4).
    """
    target = replace(server.target(folder), host="q" * 64 + ".quince.example")
    assert code_of_opening(door, target) == "gateway-name-unknown"
    with pytest.raises(Unavailable) as unknown:
        door.host_key(target)
    assert unknown.value.code == "gateway-name-unknown"


def test_a_server_that_says_nothing(server: Server, folder: Path) -> None:
    """Broken if it fails: the app waits for ever."""
    with socket.create_server(("127.0.0.1", 0)) as mute:
        target = server.target(folder, port=mute.getsockname()[1])
        assert code_of_opening(GatewayWays(HASTY), target) == "gateway-silent"
        with pytest.raises(Unavailable) as silent:
            GatewayWays(HASTY).host_key(target)
        assert silent.value.code == "gateway-silent"


def test_a_computer_without_openssh(server: Server, door: GatewayWays, folder: Path, tmp_path: Path) -> None:
    """Broken if it fails: a missing program ends in a trace."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("PATH", str(tmp_path))
        assert shutil.which("ssh") is None
        assert code_of_opening(door, server.target(folder)) == "ssh-missing"
        with pytest.raises(Unavailable) as missing:
            door.host_key(server.target(folder))
        assert missing.value.code == "ssh-missing"
