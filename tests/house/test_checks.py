"""Runs steps beside each other as the checks are: what each says stays whole, and what was started ends with them."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from tests.house.checks import ROOT, WITH_OTHERS, Step, run, steps

LIMIT_SECONDS = 60.0
"""Before a test is given up; no verdict hangs on it."""

MEET = "echo {me} begins; : >{me}; until [ -e {other} ]; do sleep 0.02; done; echo {me} met {other}; exit {code}"


def meeting(folder: Path, me: str, other: str, code: int = 0) -> Step:
    """A step that ends only once another one runs beside it."""
    text = MEET.format(me=folder / me, other=folder / other, code=code).replace(f"echo {folder}/", "echo ")
    return Step(me, ("timeout", str(LIMIT_SECONDS), "sh", "-c", text))


def test_two_run_at_once_and_what_each_says_stays_whole(tmp_path: Path) -> None:
    """Broken: the checks take twice as long, or nobody can read which of them said what."""
    told: list[str] = []
    ended = run([meeting(tmp_path, "kettle", "lamp"), meeting(tmp_path, "lamp", "kettle")], 2, told.append)
    assert [one.code for one in ended] == [0, 0]
    pieces = sorted(text.split("\n")[1:4] for text in told)
    assert [piece[:2] for piece in pieces] == [["== kettle", "kettle begins"], ["== lamp", "lamp begins"]]
    assert all("met" in piece[2] for piece in pieces)


def test_one_that_fails_stops_none_of_the_others(tmp_path: Path) -> None:
    """Broken: a failure is lost among what succeeded, or hides the next one."""
    absent = Step("absent", (str(tmp_path / "nowhere"),))
    ended = run(
        [absent, meeting(tmp_path, "one", "two", 3), meeting(tmp_path, "two", "one"), Step("last", ("true",))],
        2,
        lambda _text: None,
    )
    assert {one.step.name: one.code for one in ended} == {"absent": 127, "one": 3, "two": 0, "last": 0}
    assert {one.step.name for one in ended if one.line.startswith("FAILED")} == {"absent", "one"}


@pytest.mark.parametrize("kind", [signal.SIGINT, signal.SIGTERM])
@pytest.mark.parametrize("ignored", [False, True], ids=["heard", "ignored where it was started"])
def test_an_interruption_ends_what_was_started(tmp_path: Path, kind: signal.Signals, *, ignored: bool) -> None:
    """Broken: after Ctrl+C the tests go on unseen, with their servers and displays.

    What a shell starts in the background does not hear SIGINT (POSIX, Shell Command Language, section 2.11), so that
    here the step ends and what it had started would stay.
    """
    code = f"""
import sys
from tests.house.checks import Interrupted, Step, run

def sleeper(name):
    return Step(name, ("sh", "-c", f"sleep 600 & echo $! >{tmp_path}/{{name}}.half; mv {tmp_path}/{{name}}.half "
                                   f"{tmp_path}/{{name}}; wait"))

print("ready", flush=True)
try:
    run([sleeper("kettle"), sleeper("lamp"), sleeper("never")], 2, print)
except Interrupted as wish:
    sys.exit(wish.code)
"""
    before = signal.getsignal(signal.SIGINT)
    if ignored:
        signal.signal(signal.SIGINT, signal.SIG_IGN)
    try:
        runner = subprocess.Popen((sys.executable, "-c", code), cwd=ROOT)
    finally:
        signal.signal(signal.SIGINT, before)
    try:
        wait_until(lambda: all((tmp_path / name).exists() for name in ("kettle", "lamp")), runner)
        runner.send_signal(kind)
        assert runner.wait(LIMIT_SECONDS) == 128 + kind
    finally:
        runner.kill()
        runner.wait()
    assert not (tmp_path / "never").exists()
    left = [int((tmp_path / name).read_text(encoding="ascii")) for name in ("kettle", "lamp")]
    wait_until(lambda: not any(map(alive, left)), None)


def wait_until(happened: Callable[[], bool], runner: subprocess.Popen[bytes] | None) -> None:
    """Look again and again until something has happened."""
    for _ in range(int(LIMIT_SECONDS / 0.02)):
        if happened():
            return
        if runner is not None and runner.poll() is not None:
            raise AssertionError(f"ended with {runner.returncode} before it was asked to")
        subprocess.run(("sleep", "0.02"), check=True)
    raise AssertionError("it did not happen")


def alive(pid: int) -> bool:
    """Whether a process runs; one that waits for its result to be fetched does not."""
    try:
        os.kill(pid, 0)
    except ProcessLookupError:
        return False
    state = Path(f"/proc/{pid}/stat")
    return not state.exists() or state.read_text(encoding="utf-8").rpartition(")")[2].split()[0] != "Z"


def test_every_folder_of_tests_is_in_one_step() -> None:
    """Broken: a folder is tested twice, or by nobody."""
    commands = [step.command for step in steps(Path("check"), Path("window")) if "pytest" in step.command]
    chosen = [word for command in commands for word in command if word.startswith("tests/")]
    (rest,) = (command for command in commands if any(word.startswith("--ignore=") for word in command))
    assert sorted(chosen) == sorted({*WITH_OTHERS, "tests/ui"})
    assert [f"--ignore={folder}" for folder in sorted(chosen)] == sorted(rest[rest.index("pytest") + 1 :])
    assert all((ROOT / folder).is_dir() for folder in chosen)
