"""Brings the files of translators up to date with the source."""

from __future__ import annotations

import shutil
import subprocess
from pathlib import Path
from tempfile import TemporaryDirectory

from tests.words.literals import literals, modules, templates
from tests.words.messages import Message, source_file
from tests.words.tables import tables

ROOT = Path(__file__).parents[2]
TRANSLATIONS = ROOT / "resources" / "translations"
LANGUAGES = ("de", "es")


def messages() -> list[Message]:
    """Everything that is translated."""
    found = modules(ROOT / "app" / "hearthkey")
    return [*tables(), *templates(found), *literals(found)]


def update(lupdate: Path, folder: Path = TRANSLATIONS) -> str:
    """Renew the files of a folder: new messages come in, those that nobody says any more go, the rest stays.

    Returns:
        What lupdate says.
    """
    with TemporaryDirectory() as room:
        source = Path(room) / "words.cpp"
        source.write_text(source_file(messages()), encoding="utf-8")
        files = [str(folder / f"hearthkey_{language}.ts") for language in LANGUAGES]
        told = ""
        for language, file in zip(LANGUAGES, files, strict=True):
            options = ["-locations", "none", "-no-obsolete", "-source-language", "en", "-target-language", language]
            options += ["-disable-heuristic", "similartext", "-disable-heuristic", "sametext"]
            done = subprocess.run(
                [str(lupdate), *options, str(source), "-ts", file], check=True, capture_output=True, text=True
            )
            told += done.stdout
            if done.stderr:
                raise subprocess.CalledProcessError(1, "lupdate", done.stdout, done.stderr)
    return told


def stale(lupdate: Path) -> list[str]:
    """The files that would change."""
    with TemporaryDirectory() as room:
        folder = Path(room)
        names = [f"hearthkey_{language}.ts" for language in LANGUAGES]
        for name in names:
            if (TRANSLATIONS / name).exists():
                shutil.copy(TRANSLATIONS / name, folder / name)
        update(lupdate, folder)
        kept = {name: TRANSLATIONS / name for name in names}
        return [
            name
            for name, path in kept.items()
            if not path.exists() or path.read_bytes() != (folder / name).read_bytes()
        ]
