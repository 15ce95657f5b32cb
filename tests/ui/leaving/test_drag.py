"""What is dragged is a real file, there before the drag begins, and gone afterwards."""

from __future__ import annotations

import stat
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt, QTimer
from PySide6.QtGui import QDrag
from PySide6.QtTest import QSignalSpy, QTest
from pytestqt.qtbot import QtBot

from hearthkey.core.bundle import Form
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.passes import Pass
from hearthkey.ui.drag import KEPT_SECONDS, DragOut, parcel
from hearthkey.ui.runtime import Runtime
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ticket import TicketCard
from tests.ui.leaving.household import LAPTOP, FakeErrands


class Hand:
    """A card under the mouse, with a drag that ends as the test says."""

    def __init__(self, qtbot: QtBot, theme: Theme, folder: Path, one: Pass = LAPTOP) -> None:
        self.errands = FakeErrands()
        self.runtime = Runtime(folder)
        self.carried: list[tuple[Path, bytes, int]] = []
        self.kept: list[QDrag] = []
        self.drag = DragOut(self.errands, self.runtime, carry=self._carry)
        self.card = TicketCard(theme, one, self.drag)
        qtbot.addWidget(self.card)
        self.card.show()

    def _carry(self, drag: QDrag) -> bool:
        urls = drag.mimeData().urls()
        for path in (Path(one.toLocalFile()) for one in urls):
            self.carried.append((path, path.read_bytes(), stat.S_IMODE(path.stat().st_mode)))
        self.kept.append(drag)
        assert not drag.pixmap().isNull()
        return True

    def press(self) -> None:
        """The button goes down on the card."""
        QTest.mousePress(self.card, Qt.MouseButton.LeftButton, pos=QPoint(60, 20))

    def move(self, far: int) -> None:
        """The pointer is that far from where the button went down."""
        self.drag.move(QPoint(60 + far, 20))

    def let_go(self) -> None:
        """The button comes up."""
        QTest.mouseRelease(self.card, Qt.MouseButton.LeftButton, pos=QPoint(60, 20))


def test_a_click_writes_nothing(qtbot: QtBot, theme: Theme, tmp_path: Path) -> None:
    """If this failed, every click on a card would lay a key on the disk and a line in the diary."""
    hand = Hand(qtbot, theme, tmp_path)
    hand.press()
    hand.move(1)
    hand.let_go()
    assert hand.errands.calls == []
    assert list(tmp_path.iterdir()) == []


def test_the_file_is_there_before_the_drag_begins(qtbot: QtBot, theme: Theme, tmp_path: Path) -> None:
    """If this failed, the window it is dropped on would be given the address of nothing."""
    hand = Hand(qtbot, theme, tmp_path)
    hand.press()
    hand.move(40)
    qtbot.waitUntil(lambda: bool(hand.carried), timeout=5000)
    path, content, mode = hand.carried[0]
    assert content == b"Quince Cottage"
    assert mode == 0o600
    assert path.is_relative_to(tmp_path)
    assert [(form, folder.is_relative_to(tmp_path)) for _, form, folder in _exports(hand)] == [(Form.PKCS12, True)]
    hand.runtime.tidy()


def test_a_drag_that_is_too_fast_is_told_and_then_works(qtbot: QtBot, theme: Theme, tmp_path: Path) -> None:
    """If this failed, nothing would happen and nobody would know why."""
    hand = Hand(qtbot, theme, tmp_path)
    hand.errands.hold = True
    hand.press()
    hand.move(40)
    assert hand.card.hint() == "preparing …"
    hand.let_go()
    assert hand.card.hint() == "preparing, drag again"
    hand.errands.answer()
    assert hand.card.hint() == "ready, drag again"
    assert hand.carried == []
    hand.press()
    hand.move(40)
    assert len(hand.carried) == 1
    assert len(_exports(hand)) == 1
    assert hand.card.hint() == "drag me, or choose how"
    hand.runtime.tidy()


def test_the_held_card_goes_as_soon_as_its_file_is_there(qtbot: QtBot, theme: Theme, tmp_path: Path) -> None:
    """If this failed, a hand that waits would wait for ever."""
    hand = Hand(qtbot, theme, tmp_path)
    hand.errands.hold = True
    hand.press()
    hand.move(40)
    hand.move(80)
    assert len(_exports(hand)) == 1
    hand.errands.answer()
    qtbot.waitUntil(lambda: bool(hand.carried), timeout=5000)
    hand.runtime.tidy()


def test_source_and_file_stay_a_while_and_then_go(qtbot: QtBot, theme: Theme, tmp_path: Path) -> None:
    """If this failed, the other window would find no file, or the file would lie there until the next start."""
    hand = Hand(qtbot, theme, tmp_path)
    over = QSignalSpy(hand.drag.ended)
    hand.press()
    hand.move(40)
    qtbot.waitUntil(lambda: over.count() == 1, timeout=5000)
    assert over.at(0) == [LAPTOP.serial, True]
    timer = hand.drag.findChild(QTimer)
    assert timer is not None
    assert timer.interval() == KEPT_SECONDS * 1000
    assert timer.isActive()
    assert hand.kept[0].mimeData().hasUrls()
    path = hand.carried[0][0]
    assert path.is_file()
    timer.timeout.emit()  # the end of the minute, without waiting for it
    assert not path.exists()
    assert hand.runtime.file_of(LAPTOP.serial) is None
    hand.runtime.tidy()


def test_what_fails_its_rehearsal_does_not_leave(qtbot: QtBot, theme: Theme, tmp_path: Path) -> None:
    """If this failed, a bundle that does not get in would be handed out."""
    hand = Hand(qtbot, theme, tmp_path)
    heard = QSignalSpy(hand.errands.trouble)
    hand.errands.refuse["export"] = Refused("certificate-revoked", seen="list 43")
    hand.press()
    hand.move(40)
    assert hand.carried == []
    assert heard.count() == 1
    assert hand.card.hint() == "it cannot leave"
    hand.runtime.tidy()


def test_a_file_that_others_can_read_is_not_dragged(tmp_path: Path) -> None:
    """If this failed, a file with loose permissions would go out unnoticed."""
    path = tmp_path / "laptop.p12"
    with pytest.raises(Unavailable):
        parcel(path)
    path.write_bytes(b"x")
    path.chmod(0o644)
    with pytest.raises(Unavailable):
        parcel(path)
    path.chmod(0o600)
    assert parcel(path).urls()[0].toLocalFile() == str(path)


def test_it_is_dragged_in_the_form_that_was_chosen(qtbot: QtBot, theme: Theme, tmp_path: Path) -> None:
    """If this failed, a relative who needs an archive would be dragged something that their computer cannot open."""
    hand = Hand(qtbot, theme, tmp_path)
    hand.press()
    hand.move(40)
    qtbot.waitUntil(lambda: len(hand.carried) == 1, timeout=5000)
    before = hand.carried[0][0]
    hand.drag.choose(LAPTOP, Form.ARCHIVE)
    assert not before.exists()
    assert hand.drag.form_of(LAPTOP) is Form.ARCHIVE
    hand.press()
    hand.move(40)
    qtbot.waitUntil(lambda: len(hand.carried) == 2, timeout=5000)
    assert [one[1] for one in _exports(hand)] == [Form.PKCS12, Form.ARCHIVE]
    hand.runtime.tidy()


def test_a_form_of_several_files_takes_all_of_them_along(tmp_path: Path) -> None:
    """If this failed, a set-up script would arrive without the container that it brings."""
    paths = [tmp_path / "laptop.ps1", tmp_path / "laptop.p12"]
    for path in paths:
        path.write_bytes(b"x")
        path.chmod(0o600)
    assert [one.toLocalFile() for one in parcel(*paths).urls()] == [str(path) for path in paths]


def _exports(hand: Hand) -> list[tuple[str, Form, Path]]:
    return [argument for argument in hand.errands.asked("export") if isinstance(argument, tuple)]
