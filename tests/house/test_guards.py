"""Tries the guards of tests/conftest.py on tests that leave something behind."""

from __future__ import annotations

import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from tests.judges import needs, package_of

ROOT = Path(__file__).parents[2]
UNTIDY = """
import logging
import subprocess
import sys
import threading
import warnings

import pytest

def test_tidy():
    logging.getLogger("house").info("all well")

def test_surprise():
    logging.getLogger("house").warning("the roof leaks")

@pytest.mark.expects_log("roof")
def test_expected():
    logging.getLogger("house").warning("the roof leaks")

@pytest.mark.expects_log("cellar")
def test_never_came():
    pass

def test_thread(request):
    go = threading.Event()
    request.config.add_cleanup(go.set)
    threading.Thread(target=go.wait, name="sleepwalker").start()

def test_process(request):
    left = subprocess.Popen([sys.executable, "-c", "import sys; sys.stdin.read()"], stdin=subprocess.PIPE)
    request.config.add_cleanup(left.communicate)

def test_warning():
    warnings.warn("old ways")
"""


@pytest.fixture(scope="module")
def verdicts(tmp_path_factory: pytest.TempPathFactory) -> dict[str, str]:
    """Run the untidy tests under the house's own rules; the last verdict on each, with its reason."""
    folder = tmp_path_factory.mktemp("untidy")
    rules = (ROOT / "tests" / "conftest.py").read_text(encoding="utf-8")
    assert "GRACE_SECONDS = 10.0" in rules
    (folder / "conftest.py").write_text(rules.replace("GRACE_SECONDS = 10.0", "GRACE_SECONDS = 0.2"), encoding="utf-8")
    shutil.copy(ROOT / "pyproject.toml", folder)
    (folder / "tests").mkdir()
    (folder / "tests" / "test_untidy.py").write_text(UNTIDY, encoding="utf-8")
    run = subprocess.run(
        [sys.executable, "-m", "pytest", "-p", "no:cacheprovider", "-rA", "--tb=line", "-q"],
        cwd=folder,
        env={"PATH": "/usr/bin:/bin", "COLUMNS": "400"},
        capture_output=True,
        text=True,
        check=False,
    )
    told = re.findall(r"^(PASSED|FAILED|ERROR) \S+::(\w+)(.*)$", run.stdout, re.MULTILINE)
    return {name: verdict + reason for verdict, name, reason in sorted(told, key=lambda one: one[0] != "PASSED")}


@pytest.mark.parametrize("name", ["test_tidy", "test_expected"])
def test_tidy_tests_pass(verdicts: dict[str, str], name: str) -> None:
    """Broken if it fails: the guards cry wolf."""
    assert verdicts[name].startswith("PASSED")


@pytest.mark.parametrize(
    ("name", "reason"),
    [
        ("test_surprise", "the roof leaks"),
        ("test_never_came", "cellar"),
        ("test_thread", "sleepwalker"),
        ("test_process", "python"),
        ("test_warning", "old ways"),
    ],
)
def test_untidy_tests_fail_by_name(verdicts: dict[str, str], name: str, reason: str) -> None:
    """Broken if it fails: a test can leave a warning, a thread or a process behind, and nobody is told."""
    assert not verdicts[name].startswith("PASSED")
    assert reason in verdicts[name]


def test_absent_judge_fails_where_it_is_decided(monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: a missing program turns a check into a silent nothing on the deciding machine."""
    monkeypatch.setenv("CI", "true")
    with pytest.raises(pytest.fail.Exception, match="no-such-judge"):
        needs("no-such-judge")
    monkeypatch.setenv("CI", "false")
    with pytest.raises(pytest.skip.Exception, match="no-such-judge"):
        needs("no-such-judge")


def test_judges_know_their_package() -> None:
    """Broken if it fails: a skipped test does not say what to install."""
    assert package_of("certtool") == "gnutls-bin"
