"""Sentences about changing the household's settings."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    "nothing-changes": (
        "Everything would stay as it is.",
        "Name what is to be different, for instance --gateway-host; hearthkey settle --help shows all of it.",
    ),
    "settled-meanwhile": (
        "The household’s settings were changed meanwhile, so what was looked at holds no longer.",
        "Look at them again, then change what still has to be changed. Nothing was done.",
    ),
}
