"""Stands in for the desktop's disk service, on a bus of its own; prints each call that reaches it as a JSON line.

Its answers are told by the words it is started with: what does not work, and what the drive can.
"""

from __future__ import annotations

import json
import sys

from jeepney import (  # type: ignore[import-untyped] # has no types
    DBusAddress,
    HeaderFields,
    Message,
    MessageType,
    new_error,
    new_method_call,
    new_method_return,
)
from jeepney.io.blocking import DBusConnection, open_dbus_connection  # type: ignore[import-untyped] # as above

BUS = DBusAddress("/org/freedesktop/DBus", bus_name="org.freedesktop.DBus", interface="org.freedesktop.DBus")
NAME = "org.freedesktop.UDisks2"
DRIVE = "/org/freedesktop/UDisks2/drives/Practice_Stick_1"
MOUNTED = "/org/freedesktop/UDisks2/block_devices/sdb1"


def answer(message: Message, words: set[str]) -> Message | None:
    """What the service says; None where it says nothing."""
    fields = message.header.fields
    member, path = fields[HeaderFields.member], fields[HeaderFields.path]
    if member.lower() in {word.removeprefix("silent-") for word in words if word.startswith("silent-")}:
        return None
    if f"busy-{member.lower()}" in words:
        return new_error(message, f"{NAME}.Error.DeviceBusy", "s", ("Target is busy.",))
    if f"forbidden-{member.lower()}" in words:
        return new_error(message, f"{NAME}.Error.NotAuthorized", "s", ("Not authorized.",))
    if member == "Get":
        values = {
            "Drive": ("o", "/" if "no-drive" in words else DRIVE),
            "CanPowerOff": ("b", "power-off" in words),
            "Ejectable": ("b", "ejectable" in words),
        }
        return new_method_return(message, "v", (values[message.body[1]],))
    if member == "Unmount" and path != MOUNTED:
        return new_error(message, "org.freedesktop.DBus.Error.UnknownMethod", "s", ("No such object",))
    return new_method_return(message)


def serve(service: DBusConnection, words: set[str]) -> None:
    """Answer until standard input ends the process from outside."""
    while True:
        message = service.receive()
        if message.header.message_type is not MessageType.method_call:
            continue
        fields = message.header.fields
        line = [fields[HeaderFields.path].rpartition("/")[2], fields[HeaderFields.member], list(message.body)]
        sys.stdout.write(json.dumps(line) + "\n")
        sys.stdout.flush()
        said = answer(message, words)
        if said is not None:
            service.send(said)


def main() -> None:
    """Take the service's name, say so, and serve."""
    with open_dbus_connection(sys.argv[1]) as service:
        service.send_and_get_reply(new_method_call(BUS, "RequestName", "su", (NAME, 4)))
        sys.stdout.write("ready\n")
        sys.stdout.flush()
        serve(service, set(sys.argv[2:]))


if __name__ == "__main__":
    main()
