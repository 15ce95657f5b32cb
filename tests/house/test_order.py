"""Keeps the house in order: what lies where, how long a file may get, and what no file may hold."""

from __future__ import annotations

import ast
import re
import tomllib
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
TOP_LEVEL = {"DEVELOPERS.md", "LICENSE", "README.md", "app", "packaging", "pyproject.toml", "resources", "tests"}
IGNORED = {
    line.strip("/")
    for line in (ROOT / ".gitignore").read_text(encoding="utf-8").splitlines()
    if line and not line.startswith("#")
}
LONGEST_FILE = 350
# Written in two halves, for this file is searched as well.
REGISTRY_HOSTS = tuple(
    ".".join(halves)
    for halves in (
        ("pypi", "org"),
        ("pythonhosted", "org"),
        ("deb", "debian.org"),
        ("security", "debian.org"),
        ("snapshot", "debian.org"),
        ("ftp", "debian.org"),
        ("archive", "ubuntu.com"),
        ("npmjs", "org"),
        ("npmjs", "com"),
        ("crates", "io"),
    )
)


def kept_files() -> list[Path]:
    """Return every file of the checkout that is kept: not git's own, not what .gitignore names."""
    found: list[Path] = []
    folders = [ROOT]
    while folders:
        for entry in folders.pop().iterdir():
            if entry.name == ".git" or entry.name in IGNORED:
                continue
            (folders if entry.is_dir() else found).append(entry)
    return sorted(found)


def modules() -> list[Path]:
    """Return every Python file of the app and its tests."""
    return [path for path in kept_files() if path.suffix == ".py"]


def test_no_file_names_a_package_registry() -> None:
    """Broken if it fails: a lock or a script that only works where one particular registry can be reached."""
    named = [
        f"{path.relative_to(ROOT)}: {host}"
        for path in kept_files()
        for host in REGISTRY_HOSTS
        if host.encode() in path.read_bytes().lower()
    ]
    assert named == []


def test_locks_pin_every_package_by_hash() -> None:
    """Broken if it fails: a package could be swapped between one set-up and the next."""
    for lock in sorted((ROOT / "packaging" / "locks").glob("*.txt")):
        entries = re.split(r"\n(?=\S)", lock.read_text(encoding="utf-8").strip())
        assert entries != [""]
        assert [entry for entry in entries if "==" not in entry or "--hash=sha256:" not in entry] == []


def test_check_lock_holds_the_run_lock() -> None:
    """Broken if it fails: the tests would try other versions than the householder runs."""
    locks = ROOT / "packaging" / "locks"
    run, check = (
        set(re.findall(r"^(\S+==\S+)", (locks / name).read_text(encoding="utf-8"), re.MULTILINE))
        for name in ("run.txt", "check.txt")
    )
    assert run - check == set()


def test_files_stay_short() -> None:
    """Broken if it fails: a file has grown past what one can hold in the head; it wants to be two."""
    long = {
        str(path.relative_to(ROOT)): lines
        for path in (ROOT / "app").rglob("*.py")
        if (lines := len(path.read_text(encoding="utf-8").splitlines())) > LONGEST_FILE
    }
    assert long == {}


def test_every_module_says_what_it_is_for() -> None:
    """Broken if it fails: a module whose first line does not tell a reader whether to read on."""
    silent = [
        str(path.relative_to(ROOT))
        for path in modules()
        if not (ast.get_docstring(ast.parse(path.read_bytes())) or "").split("\n")[0].strip()
    ]
    assert silent == []


def test_top_level_is_the_agreed_one() -> None:
    """Broken if it fails: something was put where nobody looks for it, or an agreed part is missing."""
    seen = {path.name for path in ROOT.iterdir() if not path.name.startswith(".") and path.name not in IGNORED}
    assert seen == TOP_LEVEL
    assert (ROOT / ".ci" / "run").is_file()


def test_every_ignored_rule_has_its_reason() -> None:
    """Broken if it fails: a check was switched off and nobody can tell why."""
    text = (ROOT / "pyproject.toml").read_text(encoding="utf-8")
    lint = tomllib.loads(text)["tool"]["ruff"]["lint"]
    rules = [*lint["ignore"], *(rule for rules in lint["per-file-ignores"].values() for rule in rules)]
    reasoned = re.findall(r'^ +"([A-Z]+[0-9]*)", +# \S+', text, re.MULTILINE)
    assert sorted(rules) == sorted(reasoned)


def test_every_excuse_in_a_line_has_its_reason() -> None:
    """Broken if it fails: a line was excused from a check and nobody can tell why."""
    excuse = re.compile(r"#\s*(?:noqa: [A-Z0-9, ]+|type: ignore\[[a-z\-, ]+\])(?P<rest>.*)$")
    bare = re.compile(r"#\s*(?:noqa(?!:)|type:\s*ignore(?!\[))")
    found = [
        f"{path.relative_to(ROOT)}:{number}"
        for path in modules()
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1)
        if path != Path(__file__)
        and (
            bare.search(line) or ((seen := excuse.search(line)) and "#" not in seen["rest"] and "-" not in seen["rest"])
        )
    ]
    assert found == []


@pytest.mark.parametrize("script", sorted((ROOT / "packaging").rglob("*.sh")), ids=lambda path: path.name)
def test_scripts_open_with_what_they_are_for(script: Path) -> None:
    """Broken if it fails: a script one has to read to the end to learn what it would do."""
    lines = script.read_text(encoding="utf-8").splitlines()
    first = lines[1] if lines[0].startswith("#!") else lines[0]
    assert first.startswith("# ")
