"""The ways to a gateway's folder: the desktop's OpenSSH programs, or a folder that this computer sees."""

from __future__ import annotations

import threading
from contextlib import AbstractContextManager

from hearthkey.adapters.gateway_ways.first_contact import host_key
from hearthkey.adapters.gateway_ways.folder import folder_gate
from hearthkey.adapters.gateway_ways.ssh import ssh_gate
from hearthkey.adapters.gateway_ways.ssh_session import LIMITS, Limits
from hearthkey.core.target import By, HostKey, Target
from hearthkey.services.gateway_ports import Gate

__all__ = ["LIMITS", "GatewayWays", "Limits"]


class GatewayWays:
    """The port `services.gateway_ports.GatewayDoor`.

    Args:
        limits: how long a step by ssh may take.
    """

    def __init__(self, limits: Limits = LIMITS) -> None:
        self._limits = limits

    def host_key(self, target: Target) -> HostKey | None:
        """See the port."""
        if target.by is By.FOLDER:
            return None
        return host_key(target, self._limits.connect)

    def open(self, target: Target, cancel: threading.Event | None = None) -> AbstractContextManager[Gate]:
        """See the port."""
        if target.by is By.FOLDER:
            return folder_gate(target, cancel)
        return ssh_gate(target, cancel, self._limits)
