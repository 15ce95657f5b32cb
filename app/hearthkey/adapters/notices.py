"""Says something on the desktop, outside of any window (freedesktop Desktop Notifications Specification 1.2)."""

from __future__ import annotations

import sys
from importlib import import_module

from hearthkey.core.errors import Unavailable

_CRITICAL = 2
"""The urgency that stays on screen until somebody has seen it."""

_SECONDS = 5.0


class DesktopNotices:
    """The port `services.gateway_ports.Notices` over the session bus."""

    def say(self, title: str, text: str) -> None:
        """See the port."""
        if sys.platform != "linux":
            raise Unavailable("notices-absent", seen=sys.platform)
        # jeepney comes with keyring on Linux and nowhere else.
        jeepney, blocking = import_module("jeepney"), import_module("jeepney.io.blocking")

        address = jeepney.DBusAddress(
            "/org/freedesktop/Notifications",
            bus_name="org.freedesktop.Notifications",
            interface="org.freedesktop.Notifications",
        )
        body: tuple[object, ...] = ("Hearthkey", 0, "hearthkey", title, text, [], {"urgency": ("y", _CRITICAL)}, -1)
        try:
            with blocking.open_dbus_connection("SESSION") as bus:
                call = jeepney.new_method_call(address, "Notify", "susssasa{sv}i", body)
                reply = bus.send_and_get_reply(call, timeout=_SECONDS)
        except (OSError, KeyError, ValueError) as error:
            raise Unavailable("notices-absent", seen=type(error).__name__) from error
        if reply.header.message_type is jeepney.MessageType.error:
            raise Unavailable("notices-absent", seen=str(reply.header.fields.get(jeepney.HeaderFields.error_name, "")))
