"""Finds passes by what people call them."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from hearthkey.core.errors import Refused
from hearthkey.core.passes import LIVING, Pass


def find(passes: Sequence[Pass], text: str) -> list[Pass]:
    """All passes of the one device, or the one pass, that the text means.

    A text is a person and a device ("Ines phone", "Ines’s phone", "Ines/phone"; either apostrophe), any part of that
    which only one device has, an identity or its code, or a serial number.

    Raises:
        Refused: device-unknown, device-ambiguous.
    """
    wanted = " ".join(text.replace("/", " ").replace("'", "’").casefold().split())
    if not wanted:
        raise Refused("device-unknown", text=text)
    for match in (_exactly, _partly):
        found = [one for one in passes if match(one, wanted)]
        devices = {one.identity for one in found}
        if len(devices) == 1:
            return found
        if devices:
            titles = tuple(dict.fromkeys(one.title for one in found))[:6]
            raise Refused("device-ambiguous", text=text[:80], choices=titles)
    raise Refused("device-unknown", text=text[:80])


def _exactly(one: Pass, wanted: str) -> bool:
    person, device = _folded(one.person), _folded(one.device)
    return wanted in {
        f"{person} {device}",
        f"{person}’s {device}",
        one.identity,
        one.identity.split(".", 1)[0],
        one.serial,
    }


def _partly(one: Pass, wanted: str) -> bool:
    return all(word.removesuffix("’s") in _folded(f"{one.person} {one.device}") for word in wanted.split())


def _folded(name: str) -> str:
    """Small letters; the straight apostrophe of a keyboard is the curly one."""
    return name.casefold().replace("'", "’")


def newest(passes: Sequence[Pass]) -> Pass:
    """The newest of a device's passes."""
    return passes[-1]


def waiting(passes: Sequence[Pass]) -> Pass:
    """The pass of a device that has its key still here.

    Raises:
        Refused: pass-handed-over.
    """
    for one in reversed(passes):
        if one.handed_over is None:
            return one
    raise Refused("pass-handed-over", title=newest(passes).title)


def living(passes: Sequence[Pass], now: datetime) -> list[Pass]:
    """Those that get in, or would if they were not stopped."""
    return [one for one in passes if one.state(now) in LIVING]
