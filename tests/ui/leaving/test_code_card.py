"""The codes on screen, read back by a reader of another hand."""

from __future__ import annotations

import pytest
import zxingcpp
from PIL import Image
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QColor, QImage, QPixmap
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from hearthkey.adapters import pictures
from hearthkey.core.errors import Bug
from hearthkey.formats import codes
from hearthkey.ui.pages.code_card import QUIET_ZONE, CodeCard, modules
from hearthkey.ui.theme.theme import Theme
from tests.ui.leaving.household import bundle_bytes, drawn

QR = zxingcpp.BarcodeFormats(zxingcpp.BarcodeFormat.QRCode)
INK, PAPER = QColor("#10181C"), QColor("#FFFFFF")


def seen(card: CodeCard, ratio: float) -> Image.Image:
    """The card as a screen of that many device pixels per pixel shows it."""
    picture = QPixmap(round(card.width() * ratio), round(card.height() * ratio))
    picture.setDevicePixelRatio(ratio)
    card.render(picture, QPoint())
    image = picture.toImage().convertToFormat(QImage.Format.Format_Grayscale8)
    rows = bytes(image.constBits())
    return Image.frombytes("L", (image.width(), image.height()), rows, "raw", "L", image.bytesPerLine())


@pytest.mark.parametrize("ratio", [1.0, 2.0])
@pytest.mark.parametrize("look", ["paper", "lamp", "contrast-dark"])
def test_every_code_is_read_back_from_the_screen(qtbot: QtBot, theme: Theme, look: str, ratio: float) -> None:
    """If this failed, a device that scans the screen would never get its bundle together."""
    theme.choose(look, 1.0)
    card = CodeCard(theme)
    qtbot.addWidget(card)
    card.resize(420, 520)
    card.show()
    card.show_codes(drawn(), "Tomasz’s laptop")
    read: list[str] = []
    for number in range(1, len(drawn()) + 1):
        assert card.number == number
        found = zxingcpp.read_barcodes(seen(card, ratio), formats=QR)
        assert len(found) == 1, f"code {number} in {look} at {ratio}"
        read.append(found[0].text)
        card.next.click()
    assert codes.join(read) == bundle_bytes()


def test_the_colours_are_those_of_the_tokens_and_the_margin_is_there(theme: Theme) -> None:
    """If this failed, a dark theme could turn the code inside out, which many readers do not take."""
    small = modules(drawn()[0].data, INK, PAPER)
    side = small.width()
    assert side == small.height()
    assert {QColor(small.pixel(x, y)).name() for x in range(side) for y in range(side)} == {"#10181c", "#ffffff"}
    for at in range(side):
        for edge in range(QUIET_ZONE):
            for x, y in ((at, edge), (edge, at), (at, side - 1 - edge), (side - 1 - edge, at)):
                assert QColor(small.pixel(x, y)) == PAPER
    assert theme.tokens.qrink == "#10181C"


def test_a_module_is_as_it_was_drawn(theme: Theme) -> None:
    """If this failed, scaling would have blurred or shifted a module."""
    frame = codes.frames(b"Quince Cottage")[0]
    matrix = codes.matrix(frame)
    small = modules(pictures.png(matrix, 3), theme.color("qrink"), theme.color("qrpaper"))
    found = tuple(tuple(QColor(small.pixel(x, y)) == INK for x in range(small.width())) for y in range(small.height()))
    assert found == matrix


def test_a_picture_that_is_no_code_is_a_fault(theme: Theme) -> None:
    """If this failed, something that nobody can scan would be shown as a code."""
    blank = QImage(40, 40, QImage.Format.Format_Grayscale8)
    blank.fill(255)
    with pytest.raises(Bug):
        modules(b"", INK, PAPER)
    assert theme.color("qrpaper") == PAPER


def test_keys_and_buttons_go_through_the_codes(qtbot: QtBot, theme: Theme) -> None:
    """If this failed, somebody without a mouse would see the first code only."""
    card = CodeCard(theme)
    qtbot.addWidget(card)
    card.resize(420, 520)
    card.show()
    card.show_codes(drawn(), "Tomasz’s laptop")
    last = len(drawn())
    assert not card.previous.isEnabled()
    for key, number in (
        (Qt.Key.Key_Right, 2),
        (Qt.Key.Key_PageDown, 3),
        (Qt.Key.Key_Left, 2),
        (Qt.Key.Key_End, last),
        (Qt.Key.Key_Right, last),
        (Qt.Key.Key_Home, 1),
    ):
        QTest.keyClick(card.picture, key)
        assert card.number == number
        assert card.picture.accessibleName() == f"Code {number} of {last} of Tomasz’s laptop"
    QTest.keyClick(card.picture, Qt.Key.Key_End)
    assert not card.next.isEnabled()


def test_bigger_is_bigger(qtbot: QtBot, theme: Theme) -> None:
    """If this failed, a phone that cannot read the small code would not get a larger one."""
    card = CodeCard(theme)
    qtbot.addWidget(card)
    card.resize(420, 520)
    card.show()
    card.show_codes(drawn(), "Tomasz’s laptop")
    small = card.picture.pixels_a_module()
    card.resize(1200, 640)
    QTest.qWaitForWindowExposed(card)
    assert card.picture.pixels_a_module() > small >= 3
