"""The page over the real household: real keys, real codes, real rehearsals, on the real lane."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
import zxingcpp
from PIL import Image
from PySide6.QtGui import QImage
from pytestqt.qtbot import QtBot

from hearthkey.core.household import KEYRING
from hearthkey.core.passes import Pass, State
from hearthkey.formats import bundle_file, codes
from hearthkey.pki import pkcs12
from hearthkey.ui.clipboard import SecretClipboard
from hearthkey.ui.drag import DragOut
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.hand_over import HandOver
from hearthkey.ui.pages.two_channels import Side
from hearthkey.ui.pages.ways_out import WayOut
from hearthkey.ui.runtime import Runtime
from hearthkey.ui.tasks import Tasks
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.fakes.home import founded, opener
from tests.ui.leaving.household import FakeSticks, Picked

PATIENCE = 60_000
"""Milliseconds after which the lane is taken to be stuck; no verdict depends on less."""


@pytest.fixture
def errands(qtbot: QtBot, tmp_path: Path) -> Iterator[Errands]:
    """Quince Cottage, open."""
    world = founded().put_into(tmp_path / "data")
    made = Errands(Tasks(), opener(world), tmp_path / "data", place=KEYRING, service="practice")
    made.open()
    qtbot.waitUntil(lambda: made.last is not None, timeout=PATIENCE)
    yield made
    made.close()


def laptop(errands: Errands) -> Pass:
    """Tomasz's laptop as it is now."""
    assert errands.last is not None
    return next(one for one in errands.last.passes if one.title == "Tomasz’s laptop")


def test_a_bundle_leaves_by_code_and_file_and_then_its_key_is_gone(
    qtbot: QtBot, theme: Theme, tmp_path: Path, clipboard: SecretClipboard, errands: Errands
) -> None:
    """If this failed, the page would work with the test's household only."""
    picked = Picked(tmp_path / "saved")
    drag = DragOut(errands, Runtime(tmp_path / "runtime"))
    page = HandOver(theme, errands, Ways(), drag, clipboard, FakeSticks(), folder=tmp_path, pick=picked)
    qtbot.addWidget(page)
    page.resize(1280, 718)
    page.show()
    one = laptop(errands)
    page.open(one.serial)

    page.go(WayOut.CODES)
    assert page.panel.shown() is Side.WORKING
    qtbot.waitUntil(lambda: page.panel.shown() is Side.CODES, timeout=PATIENCE)
    read = codes.join(list(_read(page)))
    assert bundle_file.read(read).settings.serial == one.serial

    page.left.passphrase_button.click()
    qtbot.waitUntil(lambda: page.panel.shown() is Side.PASSPHRASE, timeout=PATIENCE)
    secret = page.leaving.passphrase
    assert secret is not None
    assert len(page.panel.passphrase.words.words()) == 7

    page.go(WayOut.FILE)
    qtbot.waitUntil(lambda: page.panel.shown() is Side.SAVED, timeout=PATIENCE)
    written = next(picked.folder.iterdir())
    assert written.stat().st_mode & 0o777 == 0o600
    pkcs12.check_mac(written.read_bytes(), secret)

    page.left.has_it.begin.click()
    page.left.has_it.commit.click()
    qtbot.waitUntil(lambda: laptop(errands).handed_over is not None, timeout=PATIENCE)
    assert errands.last is not None
    assert laptop(errands).state(errands.last.at) is State.IN_USE


def _read(page: HandOver) -> Iterator[str]:
    """Every code, read from the picture of the card."""
    card = page.panel.codes
    while True:
        image = card.picture.grab().toImage().convertToFormat(QImage.Format.Format_Grayscale8)
        rows = bytes(image.constBits())
        grey = Image.frombytes("L", (image.width(), image.height()), rows, "raw", "L", image.bytesPerLine())
        found = zxingcpp.read_barcodes(grey, formats=zxingcpp.BarcodeFormats(zxingcpp.BarcodeFormat.QRCode))
        yield found[0].text
        if not card.next.isEnabled():
            return
        card.next.click()
