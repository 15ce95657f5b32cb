"""The small parts that pages are made of."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from hearthkey.core.sentences.sentence import Sentence
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.labels import Prose
from hearthkey.ui.controls.strokes import Mark, Run, paint_mark, paint_run
from hearthkey.ui.drawer.combo import Combo
from hearthkey.ui.drawer.figures import Figure, in_groups
from hearthkey.ui.drawer.life_line import LifeLine
from hearthkey.ui.drawer.stops import Stop
from hearthkey.ui.theme.fonts import Role
from hearthkey.ui.theme.signs import Sign
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.theme.tokens import PAPER
from tests.ui.practice import NOW


def test_a_word_longer_than_the_line_is_broken(qtbot: QtBot, theme: Theme) -> None:
    """Broken: a long identity makes the drawer wider than the window, or is cut off."""
    prose = Prose(theme, Role.BODY, "q" * 200)
    qtbot.addWidget(prose)
    one = prose.fontMetrics().height()
    assert prose.minimumSizeHint().width() < 100
    assert prose.heightForWidth(200) > 5 * one


def test_stressed_words_stand_first(qtbot: QtBot, theme: Theme) -> None:
    """Broken: the state is not the first thing that is read."""
    prose = Prose(theme, Role.BODY, strong=Role.BODY_STRONG)
    qtbot.addWidget(prose)
    prose.speak("It gets in.", stressed="In use.")
    assert prose.text() == "In use. It gets in."


def test_lines_of_their_own_are_kept(qtbot: QtBot, theme: Theme) -> None:
    """Broken: a list of passes runs together."""
    prose = Prose(theme, Role.BODY, "one\ntwo\nthree")
    qtbot.addWidget(prose)
    assert prose.heightForWidth(400) >= 3 * prose.fontMetrics().height()


@pytest.mark.parametrize("key", [Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space])
def test_a_button_is_pressed_by_the_keys_people_try(key: Qt.Key, qtbot: QtBot, theme: Theme) -> None:
    """Broken: Enter on a focused button does nothing on some desktops."""
    button = Button(theme, "Stop now")
    qtbot.addWidget(button)
    button.show()
    with qtbot.waitSignal(button.clicked):
        QTest.keyClick(button, key)


def test_a_choice_can_be_left(qtbot: QtBot, theme: Theme) -> None:
    """Broken: a date of one's own still stands beside "2 years"."""
    choice = Choice(theme, "How long?", [("a", "a week"), ("b", "a year")])
    qtbot.addWidget(choice)
    choice.leave()
    assert choice.value() == ""
    choice.take("b")
    assert choice.value() == "b"


def test_heads_of_groups_are_not_chosen(qtbot: QtBot, theme: Theme) -> None:
    """Broken: Down in a list of kinds stops at "Computers"."""
    combo = Combo(theme, "What is it?")
    qtbot.addWidget(combo)
    combo.offer([("", "Phones"), ("android", "Android"), ("", "Computers"), ("linux", "Linux laptop")])
    assert combo.key() == ""
    QTest.keyClick(combo, Qt.Key.Key_Down)
    assert combo.key() == "android"
    QTest.keyClick(combo, Qt.Key.Key_Down)
    assert combo.key() == "linux"


def test_a_copied_figure_is_what_was_shown(qtbot: QtBot, theme: Theme) -> None:
    """Broken: an identity is pasted with invisible characters in it."""
    figure = Figure(theme, "known as", "q" * 90, "(travels in clear)")
    qtbot.addWidget(figure)
    figure.selectAll()
    assert figure.textCursor().selectedText() == f"{'q' * 90} (travels in clear)"
    assert figure.value() == "q" * 90


def test_digits_are_grouped_for_reading_aloud() -> None:
    """Broken: two serials cannot be compared on the telephone."""
    assert in_groups("5a910ce744") == "5A91 0CE7 44"


def _inked(paint_on: QImage) -> int:
    return sum(
        paint_on.pixelColor(x, y) != QColor("white") for x in range(paint_on.width()) for y in range(paint_on.height())
    )


@pytest.mark.parametrize("run", Run)
def test_each_run_is_drawn_differently(run: Run) -> None:
    """Broken: two states of a pass have the same line."""
    pictures = {}
    for one in Run:
        image = QImage(60, 14, QImage.Format.Format_RGB32)
        image.fill(QColor("white"))
        painter = QPainter(image)
        paint_run(painter, one, QPointF(2, 7), QPointF(58, 7), PAPER)
        painter.end()
        pictures[one] = image
    assert (_inked(pictures[run]) == 0) == (run is Run.NONE)
    assert all(pictures[run] != other for one, other in pictures.items() if one is not run)


@pytest.mark.parametrize("mark", [one for one in Mark if one not in {Mark.TODAY, Mark.STOPPED}])
def test_each_mark_is_drawn(mark: Mark) -> None:
    """Broken: a stop on the life line has nothing standing on it."""
    image = QImage(20, 20, QImage.Format.Format_RGB32)
    image.fill(QColor("white"))
    painter = QPainter(image)
    paint_mark(painter, mark, QPointF(10, 10), PAPER, ground=QColor("white"))
    painter.end()
    assert _inked(image) > 5


def test_today_lies_on_the_quince_tag(qtbot: QtBot, theme: Theme) -> None:
    """Broken: today cannot be found among the stops."""
    line = LifeLine(theme)
    qtbot.addWidget(line)
    line.show_stops([Stop(Mark.TODAY, NOW, Sentence("3 days left", {}), Run.NONE)], Sign.GUEST)
    line.resize(366, 31)
    picture = line.grab().toImage()
    assert picture.pixelColor(60, 6) == theme.color("quince")
