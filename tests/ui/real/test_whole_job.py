"""The main job in the real window: a real X server, a real keyring daemon, real keys, and a pointer for the drag."""

from __future__ import annotations

import logging
import os
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from pathlib import Path

import pytest

from tests.judges import needs
from tests.keyring.desktop import Desktop
from tests.ui.leaving.test_real_drag import PATIENCE, carried, heard, program, screen
from tests.ui.real.desk import WORDS, Ears, Hands, ears, login, on_x, onlooker
from tests.ui.real.history import History, history
from tests.ui.real.witness import Line, Witness

pytestmark = pytest.mark.skipif(sys.platform != "linux", reason="Xvfb and xdotool are for X11")

SECONDS = 4
"""How long a passphrase stays on the clipboard here, instead of 45."""

MARK = "x-kde-passwordManagerHint"
ADDRESSES = ("192.0.2.7", "192.0.2.8")
"""What another program copies before and after."""


class Job:
    """Everything at hand."""

    def __init__(self, stack: ExitStack, folder: Path) -> None:
        words = folder / "words.txt"
        words.write_text(WORDS, encoding="ascii")
        self.folder = folder
        self.desktop: Desktop = stack.enter_context(login())
        self.display = stack.enter_context(screen())
        self.hands = Hands(self.desktop, on_x(self.display), folder / "data", words)
        self.ears: Ears = stack.enter_context(ears(self.hands))
        self.eyes: Witness = stack.enter_context(onlooker(self.hands))
        self.history: History = stack.enter_context(history(self.hands))
        self._taken = 0

    def picture(self, name: str) -> None:
        """Keep a picture of the screen in the test's folder."""
        self._taken += 1
        assert self.eyes.ask("pictured", picture=str(self.folder / f"{self._taken:02}-{name}.png"))

    def until(self, seen: Callable[[], bool], what: str) -> None:
        """Look again until it is seen."""
        end = time.monotonic() + PATIENCE
        while not seen():
            if time.monotonic() > end:
                pytest.fail(f"never seen: {what}")
            time.sleep(0.1)

    def selections(self) -> list[Line]:
        """Every change of the clipboard and of what a middle click pastes, so far."""
        return [line for line in self.eyes.said if "selection" in line]


@pytest.fixture
def job(tmp_path: Path) -> Iterator[Job]:
    """A desk without a window yet."""
    with ExitStack() as stack:
        yield Job(stack, tmp_path)


def test_the_main_job_by_hand(job: Job, record_testsuite_property: Callable[[str, object], None]) -> None:
    """Broken if it fails: the window works in tests and not on a desktop.

    How long enrolling took is told (`--log-cli-level=INFO`, `--junitxml`), and is no verdict.
    """
    hands = job.hands
    with hands.window(clipboard_seconds=SECONDS) as window:
        number = hands.find_window("Hearthkey")
        hands.do("windowfocus", "--sync", number)
        _found(job)
        took = _enrol(job)
        record_testsuite_property("seconds from Ctrl+N to the tray", took)
        logging.getLogger(__name__).info("From Ctrl+N to the bundle in the tray: %s seconds", took)
        dropped = _drag(job)
        hands.do("windowfocus", "--sync", number)
        _copy(job)
        _stop(job)
        _let_back_in(job)
        hands.key("ctrl+q")
        assert window.wait(PATIENCE) == 0
    assert len(job.ears.heard("Quince Cottage was founded.")) == 1, "nothing is said twice"
    assert hands.state() == "waiting"
    assert hands.diary() == ["found", "add", "export", "stop", "let-in"]
    assert not dropped.exists(), "the one-time file is tidied when the window closes"
    assert job.eyes.ask("holds", holds=True) == ADDRESSES[1], "the clipboard of another program stays as it is"


def _found(job: Job) -> None:
    """The first page, filled in by keyboard, with a passphrase of one's own typed twice."""
    hands, ears = job.hands, job.ears
    ears.focus("What is the household called?")
    hands.type("Quince Cottage")
    ears.tab_to("Under which name is the house reached?")
    hands.type("home.quince.example")
    ears.tab_to("Which subnets are at home?")
    hands.type("198.51.100.0/24")
    ears.tab_to("My own…")
    hands.key("space")
    ears.focus("Your own passphrase")
    ears.shown("The household passphrase: your own words", ready=False)
    hands.type(WORDS)
    ears.tab_to("Type the words once more")
    hands.type(WORDS)
    ears.shown("Found the household")
    job.picture("founding")
    hands.key("ctrl+Return")
    ears.announced("Quince Cottage was founded.")
    hands.find_window("Quince Cottage")
    job.picture("founded")
    assert hands.run("list")["devices"] == []
    kept = job.desktop.secrets()
    assert kept, "the CA key lies in the keyring"
    assert not any(WORDS in value for value in kept.values()), "the passphrase that opens it does not"


def _enrol(job: Job) -> float:
    """Whose, what and until when, by keyboard; the seconds until the bundle is in the tray."""
    hands, ears = job.hands, job.ears
    began = time.monotonic()
    hands.key("ctrl+n")
    ears.focus("Name")
    hands.type("Tomasz")
    ears.tab_to("What is it called?")
    hands.type("laptop")
    ears.tab_to("What is it?")
    hands.type("linux")
    ears.announced("Tomasz will get in with this laptop until")
    job.picture("enrolling")
    hands.key("ctrl+Return")
    ears.announced("Tomasz’s laptop got a pass until")
    ears.shown("Tomasz’s laptop, waiting in the tray")
    took = round(time.monotonic() - began, 1)
    job.picture("enrolled")
    assert hands.state() == "waiting"
    return took


def _drag(job: Job) -> Path:
    """The card, carried by the pointer into a window of another process; where its file lies."""
    hands = job.hands
    card = job.ears.shown("Tomasz’s laptop, waiting in the tray")["middle"]
    with program("drop_target.py", job.display) as target:
        end = [int(word) for word in heard(target, "ready")]
        way = carried((card[0], card[1]), (end[0], end[1]))
        begun = way.index("mousedown") + 7  # far enough for the file to be made
        hands.do(*way[:begun])
        job.until(lambda: any(job.desktop.runtime.rglob("*.p12")), "the file of the bundle")
        hands.do(*way[begun:])
        path = Path(heard(target, "dropped")[0])
    job.picture("dropped")
    subprocess.run(
        [needs("openssl"), "pkcs12", "-in", str(path), "-nokeys", "-passin", "env:WORDS"],
        env=os.environ | {"WORDS": _passphrase(job)},
        check=True,
        capture_output=True,
        timeout=PATIENCE,
    )
    assert hands.diary() == ["found", "add", "export"]
    return path


def _passphrase(job: Job) -> str:
    """What opens the bundle, as the command line tells it."""
    return str(job.hands.run("show", "Tomasz laptop", "--words")["passphrase"])


def _copy(job: Job) -> None:
    """The passphrase comes onto the clipboard marked, goes again, and is left in no history that knows the mark."""
    hands, ears, eyes = job.hands, job.ears, job.eyes
    passphrase = _passphrase(job)
    eyes.ask("copied", copy=ADDRESSES[0])
    job.history.until(ADDRESSES[0])
    ears.tab_to("People and their devices")
    hands.key("ctrl+h")
    ears.focus("Open a pick-up")
    ears.tab_to("Show the passphrase")
    hands.key("space")
    ears.focus("Passphrase")
    hands.key("ctrl+c")
    eyes.until(lambda line: line.get("text") == passphrase, "the passphrase on the clipboard")
    job.picture("copied")
    ears.announced("It is no longer on the clipboard.")
    assert eyes.ask("holds", holds=True) == "", "it was still ours, and is taken away"
    hands.key("ctrl+c")
    eyes.until(lambda line: line.get("text") == passphrase, "the passphrase once more")
    eyes.ask("copied", copy=ADDRESSES[1])
    ears.announced("It is no longer on the clipboard.")
    assert eyes.ask("holds", holds=True) == ADDRESSES[1], "it was no longer ours, and is left alone"
    job.picture("left alone")
    assert job.history.until(ADDRESSES[1]) == [ADDRESSES[1], ADDRESSES[0]]
    secret = [line for line in job.selections() if passphrase in line["text"]]
    assert len(secret) == 2
    assert {line["selection"] for line in secret} == {"clipboard"}, "no middle click pastes it"
    ours = [line for line in job.selections() if line["text"] not in ADDRESSES]
    assert {line["values"].get(MARK) for line in ours} == {"secret"}, "even the emptying is marked"
    hands.key("Escape")
    ears.focus("Open a pick-up")
    hands.key("Escape")
    ears.focus("People and their devices")


def _stop(job: Job) -> None:
    """Locked first, then: one key, two letters, Enter."""
    hands, ears = job.hands, job.ears
    hands.key("ctrl+shift+l")
    job.until(lambda: ears.find("CA key locked") is not None, "a locked household")
    hands.key("ctrl+l")
    ears.focus("Lost or stolen: letters")
    hands.type("to")
    ears.shown("Stop Tomasz’s laptop")
    job.picture("lost")
    hands.key("Return")
    ears.announced("Tomasz’s laptop was stopped")
    ears.focus("Close")
    job.picture("stopped")
    assert hands.state() == "stopped"
    hands.key("Escape")
    ears.focus("People and their devices")


def _let_back_in(job: Job) -> None:
    """From its page; this needs the passphrase."""
    hands, ears = job.hands, job.ears
    hands.key("Return")
    ears.focus("Let back in")
    job.picture("page of a stopped device")
    hands.key("space")
    ears.announced("Tomasz’s laptop gets in again")
    ears.focus("Let back in")
    hands.key("space")
    ears.focus("Passphrase of the household")
    hands.type(WORDS)
    job.picture("asked for the passphrase")
    hands.key("Return")
    ears.announced("Tomasz’s laptop was let back in")
    job.picture("let back in")
    assert hands.state() == "waiting"
