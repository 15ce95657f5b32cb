"""In which looks a scene is drawn."""

from __future__ import annotations

from dataclasses import dataclass

ROOMY = (1280, 800)
NARROW = (1024, 640)


@dataclass(frozen=True)
class Look:
    """One way to look at a scene.

    Args:
        name: goes into the picture's file name.
        theme: name of a token table.
        type_scale: size of type, 1.0 is normal.
        ratio: device pixels for each logical one.
        size: width and height of the window, logical pixels.
    """

    name: str
    theme: str
    type_scale: float = 1.0
    ratio: int = 1
    size: tuple[int, int] = ROOMY


PLAIN = (
    Look("paper", "paper"),
    Look("lamp", "lamp"),
    Look("contrast-light", "contrast-light"),
    Look("contrast-dark", "contrast-dark"),
    Look("paper-at-200", "paper", ratio=2),
    Look("lamp-at-200", "lamp", ratio=2),
)
SPECIAL = (
    Look("paper-large-type", "paper", type_scale=2.0),
    Look("paper-1024", "paper", size=NARROW),
    Look("lamp-1024", "lamp", size=NARROW),
)
"""Only for the scenes that change most with room and type."""
