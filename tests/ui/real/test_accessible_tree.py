"""What is there for those who do not see the window, read from outside by the desktop's own service (AT-SPI)."""

from __future__ import annotations

import sys
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from pathlib import Path

import pytest

from tests.ui.leaving.test_real_drag import PATIENCE, screen
from tests.ui.real.desk import WORDS, Ears, Hands, ears, login, on_x
from tests.ui.real.witness import Line

pytestmark = pytest.mark.skipif(sys.platform != "linux", reason="AT-SPI is for Linux")

DRAWERS = ("ctrl+n", "ctrl+d", "ctrl+comma", "ctrl+g", "F1", "Return")
"""Keys that open a page beside the board."""

WITH_A_VALUE = frozenset({"combo box", "spin button"})
"""Qt on Linux gives these the name of what is chosen (src: QAccessibleComboBox::text), so that the question has to
come from a label beside them."""


@pytest.fixture
def hands(tmp_path: Path) -> Iterator[Hands]:
    """A desk whose screen nobody looks at."""
    words = tmp_path / "words.txt"
    words.write_text(WORDS, encoding="ascii")
    with ExitStack() as stack:
        desktop, display = stack.enter_context(login()), stack.enter_context(screen())
        yield Hands(desktop, on_x(display), tmp_path / "data", words)


def test_everything_that_takes_the_focus_has_a_name_on_every_page(hands: Hands) -> None:
    """Broken if it fails: a screen reader says "button", and nobody knows which."""
    with ears(hands) as heard:
        with hands.window() as window:
            hands.do("windowfocus", "--sync", hands.find_window("Hearthkey"))
            _listen(heard, "founding", lambda one: one["name"] == "Found the household")
            hands.key("ctrl+q")
            assert window.wait(PATIENCE) == 0
        hands.unlocked(
            *("found", "Quince Cottage", "--practice", "--yes"),
            *("--gateway-host", "home.quince.example", "--home-subnet", "198.51.100.0/24"),
        )
        hands.unlocked("add", "Tomasz", "laptop", "--kind", "linux")
        with hands.window():
            hands.do("windowfocus", "--sync", hands.find_window("Quince Cottage"))
            _listen(heard, "board", _on_the_board)
            for key in DRAWERS:
                hands.key(key)
                _listen(heard, key, _in_the_drawer)
                hands.key("Escape")
                _listen(heard, f"back from {key}", _on_the_board)
            hands.key("ctrl+l")
            hands.type("to")
            _listen(heard, "lost", lambda one: one["name"] == "Stop Tomasz’s laptop")
            hands.key("Escape")
            _listen(heard, "back from lost", _on_the_board)
            hands.key("ctrl+h")
            _listen(heard, "hand-over", lambda one: one["name"] == "Open a pick-up" and one["focused"])


def _in_the_drawer(one: Line) -> bool:
    return bool(one["focused"]) and "Drawer" in one["under"]


def _on_the_board(one: Line) -> bool:
    return bool(one["focused"]) and one["role"] == "table" and one["name"] == "People and their devices"


def _listen(heard: Ears, spot: str, arrived: Callable[[Line], bool]) -> None:
    """Read the tree once it shows what was asked for, and judge it."""
    end = time.monotonic() + PATIENCE
    tree = heard.tree()
    while not any(arrived(one) for one in tree):
        if time.monotonic() > end:
            pytest.fail(f"{spot} never came: {[one['name'] for one in tree if one['focused']]}")
        time.sleep(0.1)
        tree = heard.tree()
    stops = [one for one in tree if one["focusable"]]
    assert [one for one in stops if not one["name"].strip()] == [], spot
    assert [one for one in stops if one["role"] in WITH_A_VALUE and not any(one["labels"])] == [], spot
