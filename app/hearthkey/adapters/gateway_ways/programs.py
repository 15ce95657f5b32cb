"""The OpenSSH programs of this computer, and how they are called."""

from __future__ import annotations

import os
import shutil
from collections.abc import Mapping, Sequence
from pathlib import Path

from hearthkey.core.errors import Unavailable
from hearthkey.core.target import Target

ALIAS = "hearthkey-gateway"
"""The name under which a pinned host key stands in the private known-hosts file (ssh_config(5), HostKeyAlias)."""

_SIGNED_BY = {"ssh-rsa": "rsa-sha2-512,rsa-sha2-256"}
"""Signature algorithms of a key type, where they are not called like it (RFC 8332)."""

KEY_TYPES = "ssh-ed25519,ecdsa-sha2-nistp256,ecdsa-sha2-nistp384,ecdsa-sha2-nistp521,rsa-sha2-512,rsa-sha2-256"
"""Host keys that can be pinned; a host certificate cannot."""

_NEVER_ASK = (
    "BatchMode=yes",
    "StrictHostKeyChecking=yes",
    "GlobalKnownHostsFile=/dev/null",
    "HostKeyAlias=" + ALIAS,
    "CheckHostIP=no",
    "VerifyHostKeyDNS=no",
    "UpdateHostKeys=no",
    "LogLevel=INFO",
    "ConnectTimeout=10",
    "ConnectionAttempts=1",
)

_NOTHING_BESIDES = (
    "RemoteCommand=none",
    "RequestTTY=no",
    "PermitLocalCommand=no",
    "ForwardAgent=no",
    "ForwardX11=no",
    "ClearAllForwardings=yes",
    "ControlPersist=no",
    "ServerAliveInterval=10",
    "ServerAliveCountMax=3",
)


def program(name: str) -> str:
    """The path of a program.

    Raises:
        Unavailable: ssh-missing.
    """
    found = shutil.which(name)
    if found is None:
        raise Unavailable("ssh-missing", seen=name)
    return found


def environment() -> Mapping[str, str]:
    """The user's own, agent and all; but answers in one language, and no window that asks for a passphrase."""
    return {**os.environ, "LC_ALL": "C", "SSH_ASKPASS_REQUIRE": "never"}


def connecting(target: Target, socket: Path, known: Path) -> list[str]:
    """Serve sftp's commands over a connection that trusts the pinned key alone, and share it at a socket.

    The connection ends when sftp's standard input does: whatever becomes of us, none stays behind.
    """
    key_type = target.host_key.split(" ", 1)[0]
    own = [
        f"UserKnownHostsFile={known}",
        "KnownHostsCommand=none",
        f"HostKeyAlgorithms={_SIGNED_BY.get(key_type, key_type)}",
        "ControlMaster=yes",
        f"ControlPath={socket}",
    ]
    own += [f"Port={target.port}"] if target.port else []
    own += [f"User={target.user}"] if target.user else []
    # sftp would read what follows a colon as a path.
    host = f"[{target.host}]" if ":" in target.host else target.host
    return [program("sftp"), "-S", program("ssh"), "-b", "-", *_options(_NEVER_ASK, _NOTHING_BESIDES, own), "--", host]


def looking(target: Target, known_hosts_command: str) -> list[str]:
    """Begin a key exchange and end it at the server's key, which goes to a command (ssh_config(5), TOKENS)."""
    own = (
        "UserKnownHostsFile=/dev/null",
        f"KnownHostsCommand={known_hosts_command}",
        f"HostKeyAlgorithms={KEY_TYPES}",
        "ControlMaster=no",
        "ControlPath=none",
    )
    return [program("ssh"), *_options(_NEVER_ASK, _NOTHING_BESIDES, own), *_destination(target), "true"]


def resolving(target: Target) -> list[str]:
    """Print what the user's own configuration makes of a target (ssh(1), -G)."""
    return [program("ssh"), "-G", *_destination(target)]


def finding(name: str, known_hosts: str) -> list[str]:
    """Print the keys that a known-hosts file has for a name (ssh-keygen(1), -F)."""
    return [program("ssh-keygen"), "-F", name, "-f", known_hosts]


def command(socket: Path, text: str) -> list[str]:
    """Run a command over the shared connection; the shell at the other end gets the text as it is."""
    # Without the shared connection there is none: whatever else would be tried is a command that fails.
    shared = (f"ControlPath={socket}", "ControlMaster=no", "BatchMode=yes", "ProxyCommand=false")
    return [program("ssh"), "-F", "none", "-T", *_options(shared), "--", ALIAS, text]


def _destination(target: Target) -> list[str]:
    """Who is meant, to the user's own configuration. What it begins with was looked at when it was typed."""
    port = ["-p", str(target.port)] if target.port else []
    user = ["-l", target.user] if target.user else []
    return [*port, *user, "--", target.host]


def _options(*groups: Sequence[str]) -> list[str]:
    return [word for group in groups for one in group for word in ("-o", one)]
