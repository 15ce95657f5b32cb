"""The codes of a bundle, one at a time, always dark on white."""

from __future__ import annotations

import math

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QImage, QKeyEvent, QPainter, QPen, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from hearthkey.core.errors import Bug
from hearthkey.formats.codes import Matrix
from hearthkey.services.bundling import Written
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.labels import Label
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.theme import Theme

QUIET_ZONE = 4
"""Light modules on every side of a code (ISO/IEC 18004 section 6.3.8); the pictures carry them."""

_STEPS = {
    Qt.Key.Key_Left: -1,
    Qt.Key.Key_PageUp: -1,
    Qt.Key.Key_Right: 1,
    Qt.Key.Key_PageDown: 1,
    Qt.Key.Key_Home: -99,
    Qt.Key.Key_End: 99,
}


def modules(png: bytes, ink: QColor, paper: QColor) -> QImage:
    """A drawn code as a picture of one pixel a module, quiet zone included.

    Raises:
        Bug: frame-unfit, where the picture is not a code with its quiet zone.
    """
    drawn = QImage.fromData(png)
    side = drawn.width()
    # The corner of the first finder pattern is dark, and the quiet zone lies before it.
    first = next((at for at in range(side) if QColor(drawn.pixel(at, at)).lightness() < 128), 0)
    scale = first // QUIET_ZONE
    if not scale or first % QUIET_ZONE or side % scale or drawn.height() != side:
        raise Bug("frame-unfit")
    small = drawn.scaled(side // scale, side // scale, mode=Qt.TransformationMode.FastTransformation)
    mono = small.convertToFormat(QImage.Format.Format_Mono, Qt.ImageConversionFlag.ThresholdDither)
    table = [ink if QColor(color).lightness() < 128 else paper for color in mono.colorTable()]
    mono.setColorTable([color.rgb() for color in table])
    return mono


def drawn(matrix: Matrix, ink: QColor, paper: QColor) -> QImage:
    """Modules as a picture of one pixel each."""
    mono = QImage(len(matrix[0]), len(matrix), QImage.Format.Format_Mono)
    mono.setColorTable([paper.rgb(), ink.rgb()])
    for y, row in enumerate(matrix):
        for x, dark in enumerate(row):
            mono.setPixel(x, y, int(dark))
    return mono


class CodePicture(QWidget):
    """The white card with one code on it, in whole device pixels per module.

    Signals:
        stepped: how many codes to go on, from the keys.
    """

    stepped = Signal(int)

    EDGE = 4
    """Pixels round the code's own white, for the card's outline."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._png = b""
        self._matrix: Matrix = ()
        self._code: QImage | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        theme.changed.connect(self._dress)

    def show_code(self, png: bytes, name: str) -> None:
        """Show a code; no bytes show none."""
        self._png, self._matrix = png, ()
        self.setAccessibleName(name)
        self._dress()

    def show_matrix(self, matrix: Matrix, name: str) -> None:
        """Show a code by its modules, quiet zone included; none show none."""
        self._png, self._matrix = b"", matrix
        self.setAccessibleName(name)
        self._dress()

    def _dress(self) -> None:
        qrink, qrpaper = self._theme.color("qrink"), self._theme.color("qrpaper")
        if self._matrix:
            self._code = drawn(self._matrix, qrink, qrpaper)
        else:
            self._code = modules(self._png, qrink, qrpaper) if self._png else None
        self.update()

    def sizeHint(self) -> QSize:  # noqa: N802 - Qt's name
        """Two pixels a module of the largest code; what room there is more, it takes."""
        return QSize(224, 224)

    minimumSizeHint = sizeHint  # noqa: N815 - Qt's name

    def pixels_a_module(self) -> int:
        """Device pixels to a module at the present size; 0 where none is shown."""
        if self._code is None:
            return 0
        room = int((min(self.width(), self.height()) - 2 * self.EDGE) * self.devicePixelRatioF())
        return max(1, room // self._code.width())

    def high_at(self, wide: int) -> int:
        """The height at which a width is used best, in logical pixels."""
        if self._code is None:
            return wide
        ratio = self.devicePixelRatioF()
        scale = int((wide - 2 * self.EDGE) * ratio) // self._code.width()
        return math.ceil(self._code.width() * max(1, scale) / ratio) + 2 * self.EDGE

    def paintEvent(self, _event: object) -> None:  # noqa: N802 - Qt's name
        """Paint the card and its code."""
        if self._code is None:
            return
        painter = QPainter(self)
        ratio = self.devicePixelRatioF()
        scaled = self._code.width() * self.pixels_a_module()
        left, top = round((self.width() * ratio - scaled) / 2), round(self.EDGE * ratio)
        place = QRectF(left / ratio, top / ratio, scaled / ratio, scaled / ratio)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(self._theme.color("ink"), 2 if self.hasFocus() else 1))
        painter.setBrush(self._theme.color("qrpaper"))
        painter.drawRoundedRect(place.adjusted(-2.5, -2.5, 2.5, 2.5), 3, 3)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, on=False)
        large = self._code.scaled(scaled, scaled, mode=Qt.TransformationMode.FastTransformation)
        large.setDevicePixelRatio(ratio)
        painter.drawImage(place.topLeft(), large)
        painter.end()

    def keyPressEvent(self, event: QKeyEvent) -> None:  # noqa: N802 - Qt's name
        """Go through the codes."""
        step = _STEPS.get(Qt.Key(event.key()), 0)
        if step:
            self.stepped.emit(step)
        else:
            super().keyPressEvent(event)


class CodeCard(QWidget):
    """All codes of a bundle, with the way from one to the next.

    Signals:
        turned: another code is shown; its number, from 1.
        bigger: whether the card should have the whole page.
    """

    turned = Signal(int)
    bigger = Signal(bool)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._codes: tuple[Written, ...] = ()
        self._title = ""
        self.number = 0
        self.is_big = False
        self.picture = CodePicture(theme)
        self.picture.stepped.connect(self.step)
        self._count = Label(theme, Role.CLOCK)
        self._told = Label(theme, Role.STATE, color="ink2", wrap=True)
        self.previous = Button(theme, self.tr("&Previous"))
        self.previous.clicked.connect(lambda: self.step(-1))
        self.next = Button(theme, self.tr("Ne&xt"))
        self.next.clicked.connect(lambda: self.step(1))
        self.size_button = Button(theme, self.tr("&Bigger"))
        self.size_button.clicked.connect(lambda: self.grow(big=not self.is_big))
        under = QHBoxLayout()
        under.setSpacing(12)
        under.addWidget(self._count)
        under.addWidget(self._told, 1)
        row = QHBoxLayout()
        row.setSpacing(4)
        for button in (self.previous, self.next):
            row.addWidget(button)
        row.addStretch(1)
        row.addWidget(self.size_button)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        column.addWidget(self.picture, 1000)
        column.addLayout(under)
        column.addLayout(row)
        column.addStretch(1)

    def resizeEvent(self, event: QResizeEvent) -> None:  # noqa: N802 - Qt's name
        """Leave no gap between the code and its number."""
        super().resizeEvent(event)
        self.picture.setMaximumHeight(self.picture.high_at(self.width()))

    def show_codes(self, codes: tuple[Written, ...], title: str) -> None:
        """Show the codes of a device, from the first; the same ones stay where they are."""
        if codes == self._codes:
            return
        self._codes, self._title, self.number = codes, title, 0
        self.grow(big=False)
        if codes:
            self.step(1)
        else:
            self.picture.show_code(b"", "")

    def step(self, by: int) -> None:
        """Go on or back, as far as there are codes."""
        there = min(max(self.number + by, 1), len(self._codes))
        if there == self.number or not self._codes:
            return
        self.number = there
        count = len(self._codes)
        name = self.tr("Code {number} of {count} of {title}").format(number=there, count=count, title=self._title)
        self.picture.show_code(self._codes[there - 1].data, name)
        self.picture.setMaximumHeight(self.picture.high_at(self.width()))
        self._count.setText(self.tr("{number} of {count}").format(number=there, count=count))
        self._told.setText(self._advice(there, count))
        for button, there_is_more in ((self.previous, there > 1), (self.next, there < count)):
            if button.hasFocus() and not there_is_more:
                self.picture.setFocus()
            button.setEnabled(there_is_more)
        self.turned.emit(there)

    def _advice(self, number: int, count: int) -> str:
        if count == 1:
            return self.tr("Scan it with this app’s reader on the device.")
        if number == count:
            return self.tr("The last one. The order does not matter; a code scanned twice does no harm.")
        return self.tr("Scan it with this app’s reader, then show the next one. The order does not matter.")

    def grow(self, *, big: bool) -> None:
        """Take the whole page, or give it back."""
        if big == self.is_big:
            return
        self.is_big = big
        self.size_button.say(self.tr("S&maller") if big else self.tr("&Bigger"))
        self.bigger.emit(big)
