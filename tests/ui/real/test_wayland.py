"""The window on a Wayland compositor that draws into memory: it comes, it is drawn, and it goes."""

from __future__ import annotations

import signal
import subprocess
import sys
import time
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path

import pytest
from PySide6.QtGui import QColor, QImage

from hearthkey.ui.theme.tokens import THEMES
from tests.judges import needs
from tests.keyring.desktop import Desktop
from tests.ui.leaving.test_real_drag import PATIENCE
from tests.ui.real.desk import Hands, ears, login

pytestmark = pytest.mark.skipif(sys.platform != "linux", reason="Wayland is for Linux")

SOCKET = "wayland-quince"


@contextmanager
def compositor(desktop: Desktop) -> Iterator[Mapping[str, str]]:
    """A compositor without a screen, that draws all the same; how programs find it."""
    told = {"WAYLAND_DISPLAY": SOCKET, "QT_QPA_PLATFORM": "wayland"}
    command = [needs("weston"), "--backend=headless-backend.so", "--use-pixman", "--debug", f"--socket={SOCKET}"]
    started = subprocess.Popen(
        [*command, "--idle-time=0", "--width=1280", "--height=900"],
        env=desktop.environment,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    try:
        end = time.monotonic() + PATIENCE
        while not (desktop.runtime / SOCKET).exists():
            if started.poll() is not None or time.monotonic() > end:
                pytest.fail("the compositor did not come up")
            time.sleep(0.1)
        yield told
    finally:
        started.terminate()
        started.wait(PATIENCE)


def test_the_window_comes_on_wayland(tmp_path: Path) -> None:
    """Broken if it fails: on most desktops of today the window does not start, or starts by way of X only."""
    with login() as desktop, compositor(desktop) as screen:
        hands = Hands(desktop, screen, tmp_path / "data", tmp_path / "words.txt")
        with ears(hands) as heard, hands.window() as window:
            heard.shown("Found the household", ready=False)
            shot = _picture(hands, tmp_path)
            window.send_signal(signal.SIGINT)  # to it alone, as a session's end does, and not to those that it started
            assert window.wait(PATIENCE) == 0
    desk = QColor(THEMES["paper"].desk)
    dots = [QColor(shot.pixel(x, y)) for x in range(0, shot.width(), 16) for y in range(0, shot.height(), 16)]
    assert dots.count(desk) > len(dots) // 5, "the ground of the page fills much of the screen"


def _picture(hands: Hands, folder: Path) -> QImage:
    """The screen as the compositor has it."""
    subprocess.run([needs("weston-screenshooter")], env=hands.surroundings, cwd=folder, check=True, timeout=PATIENCE)
    return QImage(str(next(folder.glob("wayland-screenshot-*.png"))))
