"""A bundle dragged out of the window as real files, for whichever window they are dropped on."""

from __future__ import annotations

import stat
from collections.abc import Callable
from pathlib import Path

import shiboken6
from PySide6.QtCore import QMimeData, QObject, QPoint, Qt, QTimer, QUrl, Signal
from PySide6.QtGui import QDrag
from PySide6.QtWidgets import QApplication

from hearthkey.core.bundle import Form
from hearthkey.core.copies import CopyWay
from hearthkey.core.errors import HearthkeyError, Unavailable
from hearthkey.core.passes import Pass
from hearthkey.services.exporting import Exported
from hearthkey.services.picking_up import carried
from hearthkey.ui.errands import Errands
from hearthkey.ui.runtime import Runtime
from hearthkey.ui.ticket import TicketCard

KEPT_SECONDS = 60
"""How long file and source stay after a drag: the window it was dropped on may fetch the file later."""

_FIRST_MOVE = 3
"""Pixels after which the file is made: a mere click writes nothing."""


def parcel(*paths: Path) -> QMimeData:
    """What is dragged: the addresses of files that are there, and readable by their owner alone.

    Raises:
        Unavailable: folder-gone, write-failed.
    """
    for path in paths:
        try:
            mode = stat.S_IMODE(path.stat().st_mode)
        except OSError as error:
            raise Unavailable("folder-gone", path=str(path.parent), seen=error.strerror or str(error)) from error
        if mode & 0o077:
            raise Unavailable("write-failed", path=str(path), seen=f"{mode:o}")
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    return data


def carry(drag: QDrag) -> bool:
    """Run a drag to its end; whether somebody took it."""
    return drag.exec(Qt.DropAction.CopyAction, Qt.DropAction.CopyAction) != Qt.DropAction.IgnoreAction


class DragOut(QObject):
    """Makes the file at the first movement and starts the drag as soon as it is there.

    One card at a time. If the button comes up before the file is there, the card says so and the
    next drag starts at once.

    Signals:
        began: a drag is about to start; the serial.
        ended: it is over: the serial, and whether somebody took it.
    """

    began = Signal(str)
    ended = Signal(str, bool)

    def __init__(
        self,
        errands: Errands,
        runtime: Runtime,
        parent: QObject | None = None,
        *,
        carry: Callable[[QDrag], bool] = carry,
    ) -> None:
        super().__init__(parent)
        self._errands = errands
        self._runtime = runtime
        self._carry = carry
        self._card: TicketCard | None = None
        self._from = QPoint()
        self._to = QPoint()
        self._preparing: set[str] = set()
        self._forms: dict[str, Form] = {}
        self._kept: dict[str, tuple[QTimer, QDrag | None]] = {}

    def form_of(self, one: Pass) -> Form:
        """In which form a pass's bundle is dragged: the one that was chosen, else what suits its device."""
        last = self._errands.last
        suits = Form.PKCS12 if last is None else carried(last.kinds.of(one.kind))
        return self._forms.get(one.serial, suits)

    def choose(self, one: Pass, form: Form) -> None:
        """Have it dragged in another form from now on; a file in the one before goes."""
        if form is not self.form_of(one):
            self._forms[one.serial] = form
            self.forget(one.serial)

    def press(self, card: TicketCard, place: QPoint) -> None:
        """The button went down on a card."""
        self._card, self._from, self._to = card, place, place

    def move(self, place: QPoint) -> None:
        """The pointer moved with the button down."""
        if self._card is None:
            return
        self._to = place
        far = (place - self._from).manhattanLength()
        serial = self._card.one.serial
        if far >= _FIRST_MOVE and serial not in self._preparing and self._runtime.file_of(serial) is None:
            self._prepare(self._card)
        if far >= QApplication.startDragDistance():
            self._start()

    def release(self) -> None:
        """The button came up."""
        if self._card is not None and self._card.one.serial in self._preparing:
            self._card.say(self.tr("preparing, drag again"))
        self._card = None

    def forget(self, serial: str) -> None:
        """The pass has left the tray: its file goes now."""
        timer, _ = self._kept.pop(serial, (None, None))
        if timer is not None:
            timer.stop()
            timer.deleteLater()
        self._runtime.forget(serial)
        self._errands.dragged(serial, taken=False)

    def _prepare(self, card: TicketCard) -> None:
        serial = card.one.serial
        try:
            folder = self._runtime.path_for(serial)
        except Unavailable as error:
            self._card = None
            self._errands.trouble.emit(error)
            return
        self._preparing.add(serial)
        card.say(self.tr("preparing …"))

        def ready(_exported: Exported) -> None:
            self._preparing.discard(serial)
            self._keep(serial, None)
            held = self._card is not None and self._card.one.serial == serial
            _say(card, "" if held else self.tr("ready, drag again"))
            if held and (self._to - self._from).manhattanLength() >= QApplication.startDragDistance():
                # A drag runs a loop of its own; it must not run inside the arrival of an answer.
                QTimer.singleShot(0, self, self._start)

        def failed(error: HearthkeyError) -> None:
            self._preparing.discard(serial)
            self._card = None
            self._runtime.forget(serial)
            _say(card, self.tr("it cannot leave"))
            self._errands.trouble.emit(error)

        self._errands.export(serial, self.form_of(card.one), folder, self, ready, failed, way=CopyWay.DRAG)

    def _start(self) -> None:
        card = self._card
        paths = [] if card is None else self._runtime.files_of(card.one.serial)
        if card is None or not paths or card.one.serial in self._preparing:
            return
        serial = card.one.serial
        self._card = None
        try:
            data = parcel(*paths)
        except Unavailable as error:
            self._errands.trouble.emit(error)
            return
        drag = QDrag(self)  # not the card: that may go while the file is still being fetched
        drag.setMimeData(data)
        drag.setPixmap(card.picture())
        drag.setHotSpot(self._from)
        card.setDown(False)
        self.began.emit(serial)
        taken = self._carry(drag)
        self._keep(serial, drag)
        _say(card, "")
        if taken:
            self._errands.dragged(serial, taken=True)
        self.ended.emit(serial, taken)

    def _keep(self, serial: str, drag: QDrag | None) -> None:
        """Keep file and source for a while, from now on."""
        timer, _ = self._kept.get(serial, (None, None))
        if timer is None:
            timer = QTimer(self)
            timer.setSingleShot(True)
            timer.timeout.connect(lambda: self._expire(serial))
        self._kept[serial] = (timer, drag)
        timer.start(KEPT_SECONDS * 1000)

    def _expire(self, serial: str) -> None:
        if self._card is not None and self._card.one.serial == serial:
            self._keep(serial, None)  # it is being dragged right now
            return
        self.forget(serial)


def _say(card: TicketCard, hint: str) -> None:
    if shiboken6.isValid(card):
        card.say(hint)
