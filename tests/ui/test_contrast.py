"""The contrast of every pair of colours that stand on each other, computed from the tokens.

WCAG 2.2: text needs 4.5 (success criterion 1.4.3), shapes that say something 3 (1.4.11). The formula is that of
"relative luminance" and "contrast ratio" in its glossary.
"""

from __future__ import annotations

import itertools

import pytest

from hearthkey.ui.theme.tokens import THEMES, Tokens

GROUNDS = ("sheet", "facet", "desk", "raised", "sel")
TEXT = [*itertools.product(("ink", "ink2", "act"), GROUNDS), ("onink", "ink"), ("onact", "act"), ("onq", "quince")]
SHAPES = [*itertools.product(("rule", "qedge"), GROUNDS), ("qrink", "qrpaper"), ("disabled", "raised")]


def luminance(color: str) -> float:
    """Relative luminance of #RRGGBB."""
    channels = [int(color[start : start + 2], 16) / 255 for start in (1, 3, 5)]
    linear = [one / 12.92 if one <= 0.04045 else ((one + 0.055) / 1.055) ** 2.4 for one in channels]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    """Contrast ratio of two colours."""
    darker, lighter = sorted((luminance(one), luminance(other)))
    return (lighter + 0.05) / (darker + 0.05)


def test_the_formula_is_the_published_one() -> None:
    """Broken if it fails: everything below is measured with a wrong rule (WCAG: black on white is 21)."""
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21)


@pytest.mark.parametrize("theme", THEMES.values(), ids=THEMES)
@pytest.mark.parametrize(("above", "below"), TEXT)
def test_text_can_be_read(theme: Tokens, above: str, below: str) -> None:
    """Broken if it fails: somebody with tired eyes cannot read it."""
    assert contrast(getattr(theme, above), getattr(theme, below)) >= 4.5


@pytest.mark.parametrize("theme", THEMES.values(), ids=THEMES)
@pytest.mark.parametrize(("above", "below"), SHAPES)
def test_shapes_can_be_seen(theme: Tokens, above: str, below: str) -> None:
    """Broken if it fails: a field has no edge, a code no dark."""
    assert contrast(getattr(theme, above), getattr(theme, below)) >= 3
