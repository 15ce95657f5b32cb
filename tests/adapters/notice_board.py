"""Stands in for a desktop that shows notices, on a session bus of its own; prints what it was told as JSON."""

from __future__ import annotations

import json
import sys
from concurrent.futures import ThreadPoolExecutor

from jeepney import (  # type: ignore[import-untyped] # has no types
    DBusAddress,
    HeaderFields,
    new_method_call,
    new_method_return,
)
from jeepney.io.blocking import DBusConnection, open_dbus_connection  # type: ignore[import-untyped] # as above

from hearthkey.adapters.notices import DesktopNotices
from hearthkey.core.errors import Unavailable

BUS = DBusAddress("/org/freedesktop/DBus", bus_name="org.freedesktop.DBus", interface="org.freedesktop.DBus")


def shown(desktop: DBusConnection) -> list[object]:
    """Answer one call of Notify, and return what it carried."""
    while True:
        message = desktop.receive()
        if message.header.fields.get(HeaderFields.member) == "Notify":
            desktop.send(new_method_return(message, "u", (1,)))
            return list(message.body)


def main() -> None:
    """Be that desktop for one notice; without an argument there is none."""
    if len(sys.argv) == 1:
        try:
            DesktopNotices().say("title", "text")
        except Unavailable as error:
            sys.stdout.write(error.code)
        return
    with open_dbus_connection("SESSION") as desktop, ThreadPoolExecutor() as other:
        call = new_method_call(BUS, "RequestName", "su", ("org.freedesktop.Notifications", 4))
        desktop.send_and_get_reply(call)
        said = other.submit(DesktopNotices().say, "One phone is stopped", "It is not in force yet.")
        sys.stdout.write(json.dumps(shown(desktop)[:5]))
        said.result()


if __name__ == "__main__":
    main()
