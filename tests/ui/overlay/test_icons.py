"""Icons: drawn once, seen in every theme."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from PySide6.QtCore import QSize
from PySide6.QtGui import QColor, QImage
from pytestqt.qtbot import QtBot

from hearthkey.ui.theme.icons import APP, WAYS, IconLabel, app_icon, icon, pixmap
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.theme.tokens import THEMES

FOLDER = Path(__file__).parents[3] / "resources" / "icons"


def darkest(picture: QImage) -> set[str]:
    """The colours of the pixels that are all ink."""
    return {
        picture.pixelColor(x, y).name().upper()
        for x in range(picture.width())
        for y in range(picture.height())
        if picture.pixelColor(x, y).alpha() == 255
    }


@pytest.mark.parametrize("name", WAYS)
@pytest.mark.parametrize("look", THEMES)
def test_a_symbol_takes_the_ink_of_the_theme(theme: Theme, name: str, look: str) -> None:
    """Broken if it fails: in the dark theme icons are black on black."""
    theme.choose(look, 1.0)
    assert darkest(pixmap(name, theme, 64).toImage()) == {theme.tokens.ink.upper()}


@pytest.mark.parametrize("name", WAYS)
def test_a_symbol_is_lines_and_no_area(name: str) -> None:
    """Broken if it fails: an icon is filled, and filling means state."""
    text = (FOLDER / f"{name}.svg").read_text(encoding="utf-8")
    assert 'viewBox="0 0 32 32"' in text
    assert 'fill="none" stroke="currentColor" stroke-width="1.6" stroke-linecap="butt" stroke-linejoin="miter"' in text
    assert not re.search(r"#[0-9A-Fa-f]{3,8}", text)


@pytest.mark.parametrize("path", sorted(FOLDER.glob("*.svg")), ids=lambda path: path.stem)
def test_a_drawing_reaches_for_nothing_outside(path: Path) -> None:
    """Broken if it fails: an icon loads something, or runs something."""
    text = path.read_text(encoding="utf-8")
    assert not re.search(r"href|<script|<style|<image|url\(", text)
    assert text.count("http") == 1, "the name of the SVG language, and no other address"
    assert "<title>" in text


def test_the_size_is_in_device_pixels(theme: Theme) -> None:
    """Broken if it fails: icons are blurred on a fine screen."""
    made = pixmap("way-stick", theme, 20, ratio=2.0)
    assert made.size() == QSize(40, 40)
    assert made.devicePixelRatio() == 2.0


def test_the_icon_of_the_app_can_be_told_at_16_pixels(theme: Theme) -> None:
    """Broken if it fails: in a task bar it is a blot: house, key and ground have to be there."""
    picture = pixmap(APP, theme, 16).toImage()
    seen = {picture.pixelColor(x, y).name().upper() for x in range(16) for y in range(16)}
    assert {"#1A2830", "#EDBB2B"} <= seen
    assert picture.pixelColor(0, 0).alpha() == 0
    assert picture.pixelColor(8, 13) == QColor("#EDBB2B")
    sizes = {size.width() for size in app_icon(theme).availableSizes()}
    assert {16, 32, 48, 256} <= sizes


def test_icons_for_buttons_have_a_disabled_look(theme: Theme) -> None:
    """Broken if it fails: a button that does not answer looks as if it did."""
    made = icon("way-file", theme)
    assert {16, 20, 32} <= {size.width() for size in made.availableSizes()}


def test_an_icon_label_follows_the_theme(qtbot: QtBot, theme: Theme) -> None:
    """Broken if it fails: after a change of theme or type an icon stays as it was."""
    label = IconLabel(theme, "way-archive")
    qtbot.addWidget(label)
    label.resize(label.sizeHint())
    before = label.grab().toImage()
    theme.choose("lamp", 2.0)
    assert label.sizeHint() == QSize(64, 64)
    label.resize(label.sizeHint())
    assert label.grab().toImage() != before


def test_a_name_without_a_drawing_is_a_mistake(theme: Theme) -> None:
    """Broken if it fails: a misspelt icon is an empty place that nobody notices."""
    with pytest.raises(FileNotFoundError):
        pixmap("way-pigeon", theme)
