"""Asks where a file is to be saved, without holding anything up."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QWidget

PickFile = Callable[..., None]
"""Parent, title, the file that is proposed, what it is, and what hears of the one that is chosen; see `pick_file`."""


def pick_file(parent: QWidget, title: str, proposed: Path, kind: str, then: Callable[[Path], None]) -> None:
    """Open the desktop's dialog, which asks before it writes over a file; `then` hears nothing where none is chosen.

    Args:
        proposed: folder and name that it begins with.
        kind: what the file is, with its pattern in brackets.
    """
    dialog = QFileDialog(parent, title, str(proposed.parent), kind)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
    dialog.setFileMode(QFileDialog.FileMode.AnyFile)
    dialog.setDefaultSuffix(proposed.suffix[1:])
    dialog.selectFile(proposed.name)
    dialog.fileSelected.connect(lambda chosen: then(Path(chosen)))
    dialog.open()
