"""How much of time is on the sheet: by keys, in the menu, and the same again the next evening."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject, Qt
from PySide6.QtTest import QTest

from hearthkey.ui.board.axis import Zoom
from hearthkey.ui.preferences import Memory
from hearthkey.ui.zooming import Zooming
from tests.ui.window.conftest import Opener


def test_keys_zoom_wherever_the_focus_is_and_it_is_remembered(opened: Opener, cottage: Path) -> None:
    """Broken if it fails: whoever has no wheel sees one scale only, or every evening begins with another one."""
    window = opened(cottage)
    zooming = window.findChild(QObject, "zooming")
    assert isinstance(zooming, Zooming)
    assert zooming.actions[Zoom.ALL].isChecked()
    shown: list[Zoom] = []
    window.board.zoomed.connect(shown.append)
    for key in (Qt.Key.Key_1, Qt.Key.Key_2, Qt.Key.Key_2, Qt.Key.Key_3, Qt.Key.Key_2):
        QTest.keyClick(window, key, Qt.KeyboardModifier.AltModifier)
    assert shown == [Zoom.MONTH, Zoom.YEAR, Zoom.ALL, Zoom.YEAR]
    assert [zoom for zoom, action in zooming.actions.items() if action.isChecked()] == [Zoom.YEAR]
    assert all(action in window.actions() for action in zooming.actions.values())
    window.close()
    assert Memory(cottage).zoom() is Zoom.YEAR


def test_what_does_not_fit_is_all_of_it(tmp_path: Path) -> None:
    """Broken if it fails: a file that somebody changed keeps the window from opening."""
    (tmp_path / "window.ini").write_text("[General]\nzoom=century\n", encoding="ascii")
    assert Memory(tmp_path).zoom() is Zoom.ALL
