"""A screen reader's ears, run by the system's own Python: what a window says to those who do not see it.

It prints a line of JSON for every focus and every announcement, and answers the lines that it is given:
{"find": NAME} with what is shown under that name, {"here": true} with what has the focus, {"tree": true} with
everything.
"""

from __future__ import annotations

import json
import os
import sys
from collections.abc import Iterator
from typing import Any

import gi  # type: ignore[import-not-found, unused-ignore] # belongs to the system's Python

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi, GLib  # type: ignore[import-not-found, unused-ignore] # noqa: E402 - as above

PATIENCE = 20_000
"""Milliseconds for which a busy window is waited for."""

MOST_ROWS = 400
"""Children of one node that are looked at; a table of 10,000 devices would take minutes."""

_MARKS = {
    "focusable": Atspi.StateType.FOCUSABLE,
    "focused": Atspi.StateType.FOCUSED,
    "sensitive": Atspi.StateType.SENSITIVE,
    "checked": Atspi.StateType.CHECKED,
}


def say(**words: object) -> None:
    """Print one line."""
    sys.stdout.write(json.dumps(words) + "\n")
    sys.stdout.flush()


def heard(event: Any) -> None:
    """Tell of one event."""
    try:
        if event.type.startswith("object:announcement"):
            say(announced=str(event.any_data))
        elif event.detail1:
            say(focus=event.source.get_name(), role=event.source.get_role_name(), about=event.source.get_description())
    except GLib.Error as error:
        say(missed=str(error))  # it went while it was asked


def shown(node: Any, under: tuple[str, ...] = ()) -> Iterator[dict[str, Any]]:
    """Everything on screen below a node, from top to bottom, with the names of what it lies in."""
    try:
        states = node.get_state_set()
        role, name, count = node.get_role_name(), node.get_name() or "", min(node.get_child_count(), MOST_ROWS)
        if role != "application" and not states.contains(Atspi.StateType.SHOWING):
            return
        marks = {mark: states.contains(state) for mark, state in _MARKS.items()}
        about = node.get_description() or ""
        place = {"under": under, "middle": _middle(node), "labels": _labels(node) if marks["focusable"] else []}
        yield {"role": role, "name": name, "about": about, **place, **marks}
        children = [node.get_child_at_index(number) for number in range(count)]
    except GLib.Error as error:
        say(missed=str(error))
        return
    inside = (*under, name) if name else under
    for child in filter(None, children):
        yield from shown(child, inside)


def _middle(node: Any) -> list[int] | None:
    """Where a hand would click; None for what has no place, like the program itself."""
    part = node.get_component_iface()
    if part is None:
        return None
    place = part.get_extents(Atspi.CoordType.SCREEN)
    return [place.x + place.width // 2, place.y + place.height // 2]


def _labels(node: Any) -> list[str]:
    """What stands beside it on the screen, as the window tells the desktop."""
    told = (one for one in node.get_relation_set() if one.get_relation_type() == Atspi.RelationType.LABELLED_BY)
    return [one.get_target(number).get_name() for one in told for number in range(one.get_n_targets())]


def everything() -> Iterator[dict[str, Any]]:
    """What all programs show."""
    desk = Atspi.get_desktop(0)
    for number in range(desk.get_child_count()):
        program = desk.get_child_at_index(number)
        if program is not None:
            yield from shown(program)


def asked(line: str) -> None:
    """Answer one line."""
    words = json.loads(line)
    if "find" in words:
        say(found=next((one for one in everything() if one["name"].startswith(words["find"])), None))
    elif "here" in words:
        say(here=[one for one in everything() if one["focused"]])
    else:
        say(tree=list(everything()))


def main() -> None:
    """Listen until the input ends."""
    Atspi.init()
    Atspi.set_timeout(PATIENCE, PATIENCE)
    listener = Atspi.EventListener.new(heard)
    for kind in ("object:state-changed:focused", "object:announcement"):
        listener.register(kind)
    loop = GLib.MainLoop()
    waiting = bytearray()

    def readable(source: int, _condition: object) -> bool:
        came = os.read(source, 65_536)
        if not came:
            loop.quit()
            return False
        waiting.extend(came)
        while (end := waiting.find(b"\n")) >= 0:
            line = bytes(waiting[:end]).decode()
            del waiting[: end + 1]
            asked(line)
        return True

    GLib.io_add_watch(sys.stdin.fileno(), GLib.IO_IN | GLib.IO_HUP, readable)
    say(ready=True)
    loop.run()


main()
