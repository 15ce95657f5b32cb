"""Where the gateway's files go, as the householder said it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import StrEnum

from hearthkey.core.errors import Refused


class By(StrEnum):
    """How files get to the gateway."""

    SSH = "ssh"
    FOLDER = "folder"


SETS, IN_FORCE = "sets", "in-force"
"""Inside the target's folder: every set in a folder of its own, and the link to the one that counts."""


@dataclass(frozen=True)
class HostKey:
    """What an SSH server showed to say who it is.

    Args:
        line: the public key as ``known_hosts`` has it, without the host: ``ssh-ed25519 AAAA...``.
        fingerprint: ``SHA256:...`` as OpenSSH prints it.
    """

    line: str
    fingerprint: str


@dataclass(frozen=True)
class Target:
    """A gateway's folder, and the way to it.

    Args:
        by: OpenSSH or a folder that this computer sees.
        folder: the folder at the gateway (ssh) or here (folder); absolute, or relative to the user's home for ssh.
        host: host name or address; empty for a folder. May be an alias from the user's own OpenSSH configuration.
        port: TCP port, 0 for what OpenSSH's configuration says.
        user: user name there, empty for what OpenSSH's configuration says.
        reload: command that the gateway runs after a delivery; empty for none.
        host_key: the pinned host key line; empty before first contact.
    """

    by: By
    folder: str
    host: str = ""
    port: int = 0
    user: str = ""
    reload: str = ""
    host_key: str = ""

    def pinned(self, key: HostKey) -> Target:
        """The same target, trusting that host key and no other."""
        return replace(self, host_key=key.line)


def target(
    by: str, folder: str, *, host: str = "", port: int = 0, user: str = "", reload: str = "", host_key: str = ""
) -> Target:
    """Check what was typed.

    Raises:
        Refused: target-way-unknown, target-folder-missing, target-folder-odd, target-host-missing, target-host-odd,
            target-user-odd, target-port-odd, target-reload-odd.
    """
    if by not in set(By):
        raise Refused("target-way-unknown", text=by[:40], known=tuple(By))
    if not folder.strip():
        raise Refused("target-folder-missing")
    if not _one_line(folder):
        raise Refused("target-folder-odd", text=folder[:80])
    if not _one_line(reload):
        raise Refused("target-reload-odd", text=reload[:80])
    if by == By.FOLDER:
        return Target(By.FOLDER, folder)
    if not host:
        raise Refused("target-host-missing")
    # A host or user that begins with a dash would be read by ssh as an option.
    if host.startswith("-") or any(one.isspace() or not one.isprintable() or one in "@/" for one in host):
        raise Refused("target-host-odd", text=host[:80])
    if user.startswith("-") or any(one.isspace() or not one.isprintable() or one in "@:" for one in user):
        raise Refused("target-user-odd", text=user[:80])
    if not 0 <= port <= 65535:
        raise Refused("target-port-odd", number=port)
    return Target(By.SSH, folder, host, port, user, reload.strip(), host_key)


def _one_line(text: str) -> bool:
    return all(one.isprintable() for one in text) and len(text) <= 500
