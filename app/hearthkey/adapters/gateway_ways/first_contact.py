"""Asks an SSH server for its host key, and sends it nothing else."""

from __future__ import annotations

import base64
import hashlib
import re
from pathlib import Path

from hearthkey.adapters.gateway_ways import programs, trouble
from hearthkey.adapters.gateway_ways.children import run
from hearthkey.adapters.gateway_ways.private_folder import private_folder
from hearthkey.adapters.gateway_ways.told import shown
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.sentences.gateway import where
from hearthkey.core.target import HostKey, Target

_LINE = re.compile(r"(ssh-ed25519|ssh-rsa|ecdsa-sha2-nistp(?:256|384|521)) ([A-Za-z0-9+/]+={0,2})")


def host_key(target: Target, seconds: float) -> HostKey:
    """What the server shows to say who it is.

    The user's own OpenSSH configuration leads there: aliases, ports, jumps. ssh hands the key to a
    command of ours, finds it in no file, and ends before it says who it is itself.

    Raises:
        Refused: host-key-changed, where the user's own known hosts have another key of that kind for it.
        Unavailable: gateway-unreachable, gateway-name-unknown, gateway-silent, gateway-cut, gateway-odd, ssh-missing.
    """
    with private_folder() as folder:
        shown_key = folder / "key"
        ended = run(
            programs.looking(target, f"/bin/sh -c 'echo %t %K >{shown_key}'"),
            env=programs.environment(),
            folder=folder,
            seconds=seconds,
        )
        found = _LINE.fullmatch(shown_key.read_text("ascii", "replace").strip()) if shown_key.exists() else None
        if found is not None:
            key = HostKey(found.group(), fingerprint(found.group()))
            _compare_with_own(target, key, folder, seconds)
            return key
        if ended.status is None:
            raise Unavailable("gateway-silent", where=where(target), seen=shown(ended.err) or "nothing")
        raise trouble.of_connecting(where(target), ended.err)


def fingerprint(line: str) -> str:
    """A public key's fingerprint as OpenSSH prints it: SHA-256 of its octets, base64 without padding (RFC 4648)."""
    octets = base64.b64decode(line.split(" ")[1])
    return "SHA256:" + base64.b64encode(hashlib.sha256(octets).digest()).decode("ascii").rstrip("=")


def _compare_with_own(target: Target, key: HostKey, folder: Path, seconds: float) -> None:
    """Look into the user's own known hosts, as their configuration names them.

    Raises:
        Refused: host-key-changed.
    """
    environment = programs.environment()
    asked = run(programs.resolving(target), env=environment, folder=folder, seconds=seconds)
    settings = dict(line.split(" ", 1) for line in asked.out.decode("utf-8", "replace").splitlines() if " " in line)
    name = settings.get("hostkeyalias", settings.get("hostname", target.host))
    port = settings.get("port", "22")
    known: set[str] = set()
    for file in settings.get("userknownhostsfile", "").split():
        found = run(
            programs.finding(name if port == "22" else f"[{name}]:{port}", file),
            env=environment,
            folder=folder,
            seconds=seconds,
        )
        known |= {" ".join(line.split()[1:3]) for line in found.out.decode("utf-8", "replace").splitlines()}
    same_type = {line for line in known if line.split(" ")[0] == key.line.split(" ")[0]}
    if same_type and key.line not in same_type:
        raise Refused("host-key-changed", where=where(target), seen=key.fingerprint)
