"""One measured window in a process of its own: `python -m tests.bench.window_child WHAT [DATA]` prints JSON."""

from __future__ import annotations

import json
import os
import sys
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path

from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QMainWindow

from hearthkey.adapters.places import resources
from hearthkey.bootstrap import open_house
from hearthkey.core.bundle import Form
from hearthkey.core.errors import HearthkeyError
from hearthkey.core.passes import Pass
from hearthkey.core.secret import Secret
from hearthkey.services import practice
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.ui import app as starting
from hearthkey.ui.theme.style import SheetStyle
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.window import Window
from tests.bench import heartbeat, window_many


def main() -> int:
    """Measure what was asked for."""
    what, *rest = sys.argv[1:]
    app = starting.application(resources() / "icons")
    theme = Theme(name="paper")
    app.setStyle(SheetStyle(theme))
    theme.dress()
    measured: dict[str, Callable[..., dict[str, list[float]]]] = {
        "bare": bare,
        "frame": frame,
        "moving": moving,
        "stall": stall,
        "many": many,
    }
    told = measured[what](app, theme, *map(Path, rest))
    told["peak"] = [peak()]
    sys.stdout.write(json.dumps(told) + "\n")
    return 0


def peak() -> float:
    """Peak memory, GiB: proc(5), VmHWM. What getrusage(2) tells may be the parent's, from before exec."""
    told = Path("/proc/self/status").read_text(encoding="ascii")
    return int(next(line.split()[1] for line in told.splitlines() if line.startswith("VmHWM"))) / 1024**2


def since_start() -> float:
    """Seconds since this process was started, by the kernel's own account (proc(5), starttime)."""
    began = int(Path("/proc/self/stat").read_text(encoding="ascii").rsplit(")", 1)[1].split()[19])
    return time.clock_gettime(time.CLOCK_BOOTTIME) - began / os.sysconf("SC_CLK_TCK")


def bare(app: QApplication, theme: Theme) -> dict[str, list[float]]:
    """An empty window with the same imports."""
    del app, theme
    window = QMainWindow()
    window.setCentralWidget(QLabel("Quince Cottage"))
    window.resize(1280, 800)
    window.show()
    window.grab()
    return {"seconds": [since_start()]}


def opened(app: QApplication, theme: Theme, data: Path, *, furnish: bool = False) -> Window:
    """The real window, once it shows the household."""
    window = starting.window(theme, partial(open_house, apart=True), data, practice=True)
    starting.calm(window)
    window.show()

    def leave(_snapshot: object) -> None:
        app.exit()  # quit() would close the window

    window.outside.errands.seen.connect(leave)
    window.outside.errands.open(furnish=furnish)
    app.exec()
    window.outside.errands.seen.disconnect(leave)
    return window


def frame(app: QApplication, theme: Theme, data: Path) -> dict[str, list[float]]:
    """The first frame that shows the household."""
    window = opened(app, theme, data)
    window.grab()
    told = {"seconds": [since_start()]}
    window.close()
    return told


def moving(app: QApplication, theme: Theme, data: Path) -> dict[str, list[float]]:
    """Keys in Find, then steps of the scroll bar, each with its repaint."""
    window = opened(app, theme, data)
    window.grab()
    window.ways.find.emit()
    sheet = window.board.people

    def repainted(act: Callable[[], object]) -> float:
        began = time.perf_counter()
        act()
        sheet.viewport().repaint()
        window.top.repaint()
        return time.perf_counter() - began

    find = [repainted(partial(QTest.keyClicks, window.top.field, letter)) for letter in "odile 77"]
    for _ in range(6):
        window.top.field.clear()
        find += [repainted(partial(QTest.keyClicks, window.top.field, letter)) for letter in "tomasz 312"]
    bar = sheet.verticalScrollBar()
    scroll = [repainted(partial(bar.setValue, bar.value() + step * bar.singleStep())) for step in range(1, 120)]
    window.close()
    return {"find": find, "scroll": scroll}


def stall(app: QApplication, theme: Theme, room: Path) -> dict[str, list[float]]:
    """Found, unlock, enrol, export every form, show codes, stop: the longest gap between two beats of each."""
    window = opened(app, theme, room / "data", furnish=True)
    errands = window.outside.errands

    def waiting(person: str) -> Pass:
        passes = () if errands.last is None else errands.last.passes
        return next(one for one in passes if one.person == person and one.handed_over is None)

    def stop() -> None:
        plan_of = waiting("Odile").identity
        errands.preview_stop(plan_of, window, lambda plan: errands.stop(plan, window, None, give_up), give_up)

    def give_up(error: HearthkeyError) -> None:
        raise error

    def nothing(_result: object) -> None:
        return None

    steps: list[Callable[[], None]] = [
        lambda: errands.unlock(Secret(practice.PASSPHRASE), window, nothing, give_up),
        lambda: errands.enrol(EnrolRequest("Odile", "tablet", "iphone"), window, None, give_up),
        *(
            partial(_export, errands.export, waiting, form, room, window, nothing, give_up)
            for form in (Form.BUNDLE, Form.PKCS12, Form.ARCHIVE)
        ),
        lambda: window.ways.hand_over_by.emit(waiting("Odile").serial, "codes"),
        window.ways.back.emit,
        lambda: window.ways.lost.emit("od"),
        window.ways.back.emit,
        stop,
        errands.refresh,
    ]

    told = heartbeat.gaps(app, window, steps)
    window.close()
    return {"stalls": told}


def many(app: QApplication, theme: Theme, data: Path) -> dict[str, list[float]]:
    """Look, enrol and stop among ten thousand devices: the longest gap between two beats of each step."""
    window = opened(app, theme, data)
    told = heartbeat.gaps(app, window, window_many.steps(window))
    window_many.check(window)
    window.close()
    return {"stalls": told}


def _export(export: Callable[..., None], waiting: Callable[[str], Pass], form: Form, room: Path, *rest: object) -> None:
    export(waiting("Tomasz").serial, form, room / "out", *rest)


if __name__ == "__main__":
    sys.exit(main())
