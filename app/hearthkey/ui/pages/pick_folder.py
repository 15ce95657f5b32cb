"""Asks for a folder, without holding anything up."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QFileDialog, QWidget

PickFolder = Callable[..., None]
"""Parent, title, where to begin, what hears of the folder, and perhaps the word of the button; see `pick_folder`."""


def pick_folder(parent: QWidget, title: str, start: Path, then: Callable[[Path], None], accept: str = "") -> None:
    """Open the desktop's dialog; `then` hears nothing where none is chosen.

    Args:
        accept: the word of its button, where it is not about saving.
    """
    dialog = QFileDialog(parent, title, str(start))
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.setFileMode(QFileDialog.FileMode.Directory)
    dialog.setLabelText(QFileDialog.DialogLabel.Accept, accept or QCoreApplication.translate("PickFolder", "Save here"))
    dialog.fileSelected.connect(lambda chosen: then(Path(chosen)))
    dialog.open()
