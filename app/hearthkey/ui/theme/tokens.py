"""Every colour of the window, by its role, in one frozen table."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Tokens:
    """Colours as #RRGGBB.

    Args:
        desk: window, tray, footer.
        sheet: board and ruled pages.
        facet: every second leaf of the axis, hover.
        raised: drawer, fields, buttons.
        sel: selection, the ribbon's run.
        ink, ink2: text and shapes; second text and lines of the past.
        rule: edges of fields and buttons, rules between people.
        hair, hair2: hairlines and hatch; the light grid.
        act: what wants the householder, and nothing else.
        quince, qedge: the ribbon and its edge.
        onink, onact, onq: text on ink, act and quince.
        disabled: text that does not answer.
        shade: the crease of a fold, None where themes have none.
        qrink, qrpaper: codes, the same in every theme.
    """

    name: str
    desk: str
    sheet: str
    facet: str
    raised: str
    sel: str
    ink: str
    ink2: str
    rule: str
    hair: str
    hair2: str
    act: str
    quince: str
    qedge: str
    onink: str
    onact: str
    onq: str
    disabled: str
    shade: str | None
    qrink: str = "#10181C"
    qrpaper: str = "#FFFFFF"


PAPER = Tokens(
    name="paper",
    desk="#E2E6D8",
    sheet="#F9FAF3",
    facet="#F0F3E7",
    raised="#FEFEFB",
    sel="#FBF1CC",
    ink="#1A2830",
    ink2="#4A585D",
    rule="#70807A",
    hair="#D2D8CB",
    hair2="#E1E6DA",
    act="#A01C2C",
    quince="#EDBB2B",
    qedge="#7D5C00",
    onink="#F9FAF3",
    onact="#FFFFFF",
    onq="#1A2830",
    disabled="#6F7C78",
    shade="#C8CEBD",
)

LAMP = Tokens(
    name="lamp",
    desk="#10181C",
    sheet="#19242A",
    facet="#1E2A31",
    raised="#25333B",
    sel="#3A3520",
    ink="#E8EADC",
    ink2="#AAB6AF",
    rule="#788A86",
    hair="#303D43",
    hair2="#273339",
    act="#F58B7D",
    quince="#E7BC3F",
    qedge="#E7BC3F",
    onink="#19242A",
    onact="#2A0E0C",
    onq="#19242A",
    disabled="#83918C",
    shade="#0C1316",
)

CONTRAST_LIGHT = Tokens(
    name="contrast-light",
    desk="#FFFFFF",
    sheet="#FFFFFF",
    facet="#FFFFFF",
    raised="#FFFFFF",
    sel="#FFF2A8",
    ink="#000000",
    ink2="#1E1E1E",
    rule="#000000",
    hair="#8A8A8A",
    hair2="#B4B4B4",
    act="#8B0014",
    quince="#FFD000",
    qedge="#000000",
    onink="#FFFFFF",
    onact="#FFFFFF",
    onq="#000000",
    disabled="#5C5C5C",
    shade=None,
    qrink="#000000",
)

CONTRAST_DARK = Tokens(
    name="contrast-dark",
    desk="#000000",
    sheet="#000000",
    facet="#000000",
    raised="#000000",
    sel="#3A3000",
    ink="#FFFFFF",
    ink2="#E6E6E6",
    rule="#FFFFFF",
    hair="#7A7A7A",
    hair2="#4C4C4C",
    act="#FFB0A4",
    quince="#FFD84A",
    qedge="#FFD84A",
    onink="#000000",
    onact="#000000",
    onq="#000000",
    disabled="#A6A6A6",
    shade=None,
    qrink="#000000",
)

THEMES = {one.name: one for one in (PAPER, LAMP, CONTRAST_LIGHT, CONTRAST_DARK)}
