"""Rows about the gateway turned into values; loaded by whoever asks for one, for a list of devices does without."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import asdict
from typing import Any

from hearthkey.adapters.register.rows import moment
from hearthkey.core.in_force import GatewayNote
from hearthkey.core.pack_options import ExtraSecret, PackOptions
from hearthkey.core.spares import Scope, SpareList
from hearthkey.core.target import By, Target
from hearthkey.core.templates import Template

_MOMENTS = frozenset({"looked", "list_until", "gateway_until", "delivered", "failed"})


def target(row: Sequence[Any]) -> Target:
    """A row of way, folder, host, port, user, reload, host_key."""
    way, *rest = row
    return Target(By(way), *rest)


def note(names: Sequence[str], row: Sequence[Any]) -> GatewayNote:
    """A row of the fields of a note."""
    found: dict[str, Any] = {
        name: moment(value) if name in _MOMENTS and value is not None else value
        for name, value in zip(names, row, strict=True)
    }
    return GatewayNote(**found)


def spare(row: Sequence[Any]) -> SpareList:
    """A row of scope, subject, serials, base, number."""
    scope, subject, serials, base, number = row
    return SpareList(Scope(scope), subject, frozenset(serials.split()), base, number)


def template(row: Sequence[Any]) -> Template:
    """A row of name, made_for, file_stem, ending, text."""
    return Template(*row)


def options(text: str | None) -> PackOptions:
    """The choices for the pack out of their JSON."""
    return PackOptions() if text is None else PackOptions(**json.loads(text))


def options_text(chosen: PackOptions) -> str:
    """The choices for the pack as JSON."""
    return json.dumps(asdict(chosen))


def extra_secret(made: int, known_outside: int | None) -> ExtraSecret:
    """What is known of a secret."""
    return ExtraSecret(moment(made), known_outside is not None)
