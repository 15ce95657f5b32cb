"""What is known of a device kind, in the language of the window."""

from __future__ import annotations

from datetime import datetime, time

from PySide6.QtCore import QCoreApplication

from hearthkey.core.kinds import DeviceKind, Kinds
from hearthkey.ui import dates
from hearthkey.ui.languages import spoken_here

_tr = QCoreApplication.translate


def words(kind: DeviceKind) -> str:
    """How people call it."""
    return kind.words(spoken_here())


def why(kind: DeviceKind) -> str:
    """Why it gets its key set and its container."""
    return kind.why(spoken_here())


def traps(kind: DeviceKind) -> tuple[str, ...]:
    """What is known to go wrong with it."""
    return kind.traps(spoken_here())


def made_for(kinds: Kinds, name: str) -> tuple[str, str]:
    """For which kind a pass was made, and what is behind that; a kind that is gone is told by its name."""
    if name not in kinds:
        gone = _tr("KindWords", "(not among the kinds of device any more; treated like {kind})")
        return name, gone.format(kind=words(kinds.of(name)))
    kind = kinds.find(name)
    return words(kind), f"({why(kind).removesuffix('.')})"


def looked_at(kinds: Kinds, name: str) -> tuple[str, str]:
    """When what is known of a kind was last compared with its sources, and whether it was tried on such a device."""
    kind = kinds.of(name)
    day = dates.day(datetime.combine(kind.checked, time()))
    if kind.tried:
        return day, _tr("KindWords", "(tried on such a device)")
    if kind.own:
        return day, _tr("KindWords", "(your own file, not tried on a device)")
    return day, _tr("KindWords", "(from documents, not tried on a device)")
