"""What can be taken back: a change as the values before and after it, and what keeps it from being taken back."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, fields, replace
from datetime import datetime
from enum import StrEnum

from hearthkey.core.adopted import Whose
from hearthkey.core.connect_choices import ConnectChoices
from hearthkey.core.household import Household
from hearthkey.core.pack_options import PackOptions
from hearthkey.core.renewal import Visit
from hearthkey.core.settling import Reach, touched
from hearthkey.core.target import Target
from hearthkey.core.templates import GATEWAY, Template

DEPTH = 50
"""How many changes are kept to be taken back."""


class Kind(StrEnum):
    """What a change was, or what taking one back is."""

    STOP = "stop"
    LET_IN = "let-in"
    SETTLE = "settle"
    TARGET = "target"
    OPTIONS = "options"
    TEMPLATE_KEPT = "template-kept"
    TEMPLATE_FORGOTTEN = "template-forgotten"
    LANGUAGE = "language"
    CALL = "call"
    VISIT_PLANNED = "visit-planned"
    VISIT_CALLED_OFF = "visit-called-off"
    GONE = "gone"
    NOT_GONE = "not-gone"
    NAMED = "named"
    CHOICES = "choices"


class Final(StrEnum):
    """What is never taken back: something has left or was erased, or has another way back. By the diary's verb."""

    ENROLLED = "add"
    RENEWED = "renew"
    REPLACED = "replace"
    TAKEN_BACK = "take-back"
    SUPERSEDED = "supersede"
    SUCCESSION = "succession"
    HANDED_OVER = "hand-over"
    REVOKED = "revoke"
    PROVED = "prove"
    DELETED = "copies"


@dataclass(frozen=True)
class Standing:
    """All that a change can be taken back of, each thing by its key; a single thing has an empty one.

    Args:
        holds: since when passes are stopped, UTC, by serial.
        settings: the household's.
        targets: where the gateway is.
        options: the choices for the gateway's files.
        templates: by name.
        languages: of sheets, by person, the name folded.
        calls: whom to call.
        gone: since when copies are gone, UTC, by number.
        visits: whom, by the visit.
        whose: passes that were made elsewhere, by serial.
        choices: for configuration profiles.
    """

    holds: Mapping[str, datetime] = field(default_factory=dict)
    settings: Mapping[str, Household] = field(default_factory=dict)
    targets: Mapping[str, Target] = field(default_factory=dict)
    options: Mapping[str, PackOptions] = field(default_factory=dict)
    templates: Mapping[str, Template] = field(default_factory=dict)
    languages: Mapping[str, str] = field(default_factory=dict)
    calls: Mapping[str, str] = field(default_factory=dict)
    gone: Mapping[int, datetime] = field(default_factory=dict)
    visits: Mapping[Visit, str] = field(default_factory=dict)
    whose: Mapping[str, Whose] = field(default_factory=dict)
    choices: Mapping[str, ConnectChoices] = field(default_factory=dict)


@dataclass(frozen=True)
class Marks:
    """How far things had got outside when a change was made.

    Args:
        list_number: of the newest list, 0 before the first.
        delivered: when a delivery was last finished, UTC, or None.
        handed_over: how many passes had been handed over.
        revoked: serials of passes that are withdrawn for good.
        devices: what the device of each pass is known by, by serial.
    """

    list_number: int
    delivered: datetime | None
    handed_over: int
    revoked: frozenset[str] = frozenset()
    devices: Mapping[str, str] = field(default_factory=dict)

    def passes_with(self, serial: str) -> frozenset[str]:
        """Serials of all passes of the device that a pass is for."""
        known = self.devices.get(serial)
        return frozenset(one for one, device in self.devices.items() if device == known)


@dataclass(frozen=True)
class Deed:
    """One change.

    Args:
        before, after: the things that it touched, and nothing else.
        marks: right after it.
        titles: devices that it was about, in words; copies say whose they are.
        final: why it is never taken back, None where it can be.
        serials: of the passes that the verb itself named.
    """

    before: Standing
    after: Standing
    marks: Marks
    titles: tuple[str, ...] = ()
    final: Final | None = None
    serials: tuple[str, ...] = ()

    def turned_round(self, marks: Marks) -> Deed:
        """The change that takes this one back, once it was done."""
        return replace(self, before=self.after, after=self.before, marks=marks)


def differences(before: Standing, after: Standing) -> tuple[Standing, Standing]:
    """What is different between two standings, as it was and as it is."""
    was, now = {}, {}
    for one in fields(Standing):
        old, new = getattr(before, one.name), getattr(after, one.name)
        keys = {key for key in (*old, *new) if old.get(key) != new.get(key)}
        was[one.name] = {key: old[key] for key in old if key in keys}
        now[one.name] = {key: new[key] for key in new if key in keys}
    return Standing(**was), Standing(**now)


def alike(deed: Deed, now: Standing) -> bool:
    """Whether the things that a change touched still stand as it left them."""
    for one in fields(Standing):
        old, new = getattr(deed.before, one.name), getattr(deed.after, one.name)
        stands = getattr(now, one.name)
        if any(stands.get(key) != new.get(key) for key in (*old, *new)):
            return False
    return True


def kind_of(before: Standing, after: Standing) -> Kind | None:
    """What leads from one to the other; None where nothing does."""
    if before.holds or after.holds:
        return Kind.STOP if after.holds else Kind.LET_IN
    if before.templates or after.templates:
        return Kind.TEMPLATE_KEPT if after.templates else Kind.TEMPLATE_FORGOTTEN
    if before.gone or after.gone:
        return Kind.GONE if after.gone else Kind.NOT_GONE
    if before.visits or after.visits:
        return Kind.VISIT_PLANNED if after.visits else Kind.VISIT_CALLED_OFF
    simple = (
        (Kind.SETTLE, before.settings or after.settings),
        (Kind.TARGET, before.targets or after.targets),
        (Kind.OPTIONS, before.options or after.options),
        (Kind.LANGUAGE, before.languages or after.languages),
        (Kind.CALL, before.calls or after.calls),
        (Kind.NAMED, before.whose or after.whose),
        (Kind.CHOICES, before.choices or after.choices),
    )
    return next((kind for kind, there in simple if there), None)


def hindrance(deed: Deed, now: Standing, seen: Marks, list_there: int | None) -> str | None:
    """The code of what keeps a change from being taken back, or None.

    Args:
        now: how things stand.
        seen: the marks of now.
        list_there: number of the list that was last read at the gateway; None where none was.
    """
    holds = {*deed.before.holds, *deed.after.holds}
    if not alike(deed, now) or holds & seen.revoked:
        return "undo-changed-since"
    if holds and list_there is not None and list_there >= deed.marks.list_number:
        return "undo-in-force"
    if any(seen.passes_with(one) != deed.marks.passes_with(one) for one in deed.after.whose):
        return "undo-named-since"
    reaches = {
        one.reach
        for key, before in deed.before.settings.items()
        for one in touched(before, deed.after.settings.get(key, before))
    }
    in_bundles = bool(reaches & {Reach.BUNDLES, Reach.NEWCOMERS} or deed.before.choices)
    if in_bundles and seen.handed_over != deed.marks.handed_over:
        return "undo-handed-over-since"
    at_the_gateway = (
        bool(reaches & {Reach.BUNDLES, Reach.GATEWAY})
        or bool(deed.before.options or deed.after.options or deed.before.targets or deed.after.targets)
        or any(one.of == GATEWAY for one in (*deed.before.templates.values(), *deed.after.templates.values()))
    )
    return "undo-delivered-since" if at_the_gateway and seen.delivered != deed.marks.delivered else None
