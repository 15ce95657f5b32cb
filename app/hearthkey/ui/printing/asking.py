"""Asks for a printer, as the desktop does."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import QDialog, QWidget


def ask_printer(parent: QWidget, then: Callable[[QPrinter], None]) -> None:
    """Open the desktop's dialog; `then` hears nothing where it is closed."""
    dialog = QPrintDialog(QPrinter(QPrinter.PrinterMode.HighResolution), parent)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.accepted.connect(lambda: then(dialog.printer()))
    QDialog.open(dialog)  # the dialog's own `open` wants a receiver
