"""The hand-over page for keys, screen readers, small windows and large type."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QLabel, QWidget
from pytestqt.qtbot import QtBot

from hearthkey.ui.clipboard import SecretClipboard
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.pages.pick_folder import pick_folder
from hearthkey.ui.pages.ways_out import WayOut
from hearthkey.ui.theme.theme import Theme
from tests.ui.leaving.household import LAPTOP, Scene


def test_every_stop_of_the_tab_key_has_a_name(scene: Scene) -> None:
    """If this failed, a screen reader would say "button" and no more."""
    for way in (None, WayOut.CODES, WayOut.STICK, WayOut.FILE):
        if way is not None:
            scene.page.go(way)
        named = [control for control in _stops(scene.page) if control.isVisible()]
        assert len(named) >= 9
        for control in named:
            assert control.accessibleName() or control.property("text"), control
    scene.page.left.passphrase_button.click()
    assert scene.page.panel.passphrase.words.accessibleName() == "Passphrase"


def test_tab_goes_down_the_ways(scene: Scene) -> None:
    """If this failed, Tab would jump about the page."""
    order = [control for control in _stops(scene.page) if control.isVisible()]
    card = scene.page.left.card
    assert card is not None
    buttons = [row.button for row in scene.page.left.rows.rows.values() if row.isVisible()]
    places = [order.index(control) for control in (card, *buttons, scene.page.left.passphrase_button)]
    assert places == sorted(places)


@pytest.mark.parametrize(
    ("wide", "high", "scale"), [(1280, 718, 1.0), (1024, 558, 1.0), (640, 398, 1.0), (1280, 718, 2.0)]
)
def test_nothing_is_cut(
    qtbot: QtBot, theme: Theme, tmp_path: Path, clipboard: SecretClipboard, wide: int, high: int, scale: float
) -> None:
    """If this failed, a sentence or a button would be cut in a small window or with large type."""
    theme.choose("paper", scale)
    scene = Scene(theme, tmp_path, clipboard)
    qtbot.addWidget(scene.page)
    scene.page.resize(wide, high)
    scene.page.show()
    scene.page.open(LAPTOP.serial)
    for way in (None, WayOut.CODES, WayOut.STICK, WayOut.FILE):
        if way is not None:
            scene.page.go(way)
        qtbot.waitUntil(lambda: not _cut(scene.page), timeout=5000)
    assert (scene.page.width(), scene.page.height()) == (wide, high)


def _stops(page: QWidget) -> list[QWidget]:
    found: list[QWidget] = []
    control = page.nextInFocusChain()
    while control is not None and control is not page:
        if page.isAncestorOf(control) and control.focusPolicy() & Qt.FocusPolicy.TabFocus:
            found.append(control)
        control = control.nextInFocusChain()
    return found


def _cut(page: QWidget) -> list[str]:
    """Texts that have less room than they need."""
    short: list[str] = []
    for label in page.findChildren(QLabel):
        if label.isVisible() and label.text():
            needed = label.heightForWidth(label.width()) if label.wordWrap() else label.sizeHint().height()
            if label.height() < needed or (not label.wordWrap() and label.width() < label.sizeHint().width()):
                short.append(label.text())
    squeezed = (one for one in page.findChildren(Button) if one.isVisible() and one.width() < one.sizeHint().width())
    return short + [one.text() for one in squeezed]


def test_the_folder_dialog_holds_nothing_up(scene: Scene, tmp_path: Path) -> None:
    """If this failed, the window would stand still while somebody looks for a folder, or hear of the wrong one."""
    heard: list[Path] = []
    pick_folder(scene.page, "Where to save it", tmp_path, heard.append)
    dialog = scene.page.findChild(QFileDialog)
    assert dialog is not None
    assert dialog.isVisible()
    assert dialog.fileMode() == QFileDialog.FileMode.Directory
    assert Path(dialog.directory().absolutePath()) == tmp_path
    assert heard == []
    dialog.fileSelected.emit(str(tmp_path / "saved"))
    assert heard == [tmp_path / "saved"]
    dialog.close()
