"""Whether a firewall on this computer seems to be on, as far as files say that anybody may read (Linux)."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

from hearthkey.core.firewalls import Firewall

_ON = re.compile(r"^\s*ENABLED\s*=\s*[\"']?yes\b", re.IGNORECASE | re.MULTILINE)
_DROPS = re.compile(r"hook\s+input\b[^}]*?policy\s+drop", re.DOTALL)
_LARGEST = 200_000


def firewall(root: Path = Path("/")) -> Firewall | None:
    """Name the firewall that seems to be on, or None where nothing says so.

    Files, from memory: ``/etc/ufw/ufw.conf`` says whether ufw starts with the machine; firewalld leaves its process
    number in ``/run/firewalld.pid`` on some systems and is enabled by a link in systemd's folder on all; nftables reads
    ``/etc/nftables.conf`` where its service is enabled.

    Args:
        root: where the file system begins.
    """
    return next((kind for kind, seems_on in _LOOKS if seems_on(root)), None)


def _ufw(root: Path) -> bool:
    return bool(_ON.search(_text(root / "etc/ufw/ufw.conf")))


def _firewalld(root: Path) -> bool:
    return (root / "run/firewalld.pid").exists() or _enabled(root, "firewalld.service")


def _nftables(root: Path) -> bool:
    return _enabled(root, "nftables.service") and bool(_DROPS.search(_text(root / "etc/nftables.conf")))


_LOOKS: tuple[tuple[Firewall, Callable[[Path], bool]], ...] = (
    (Firewall.UFW, _ufw),
    (Firewall.FIREWALLD, _firewalld),
    (Firewall.NFTABLES, _nftables),
)


def _enabled(root: Path, unit: str) -> bool:
    """Whether a unit starts with the machine (systemd.unit(5): a link in a .wants folder)."""
    return any((root / "etc/systemd/system").glob(f"*.wants/{unit}"))


def _text(path: Path) -> str:
    """What a file says; one that may not be read says nothing."""
    try:
        with path.open(encoding="utf-8", errors="replace") as file:
            return file.read(_LARGEST)
    except OSError:
        return ""
