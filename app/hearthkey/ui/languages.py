"""Which language the window speaks, and how it learns it."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from hearthkey.core.languages import Language

FOLDER = "translations"
"""Beside the folder of icons; what lies in it is made of its .ts files by lrelease."""

NAMES = {Language.ENGLISH: "English", Language.GERMAN: "Deutsch", Language.SPANISH: "Español"}
"""Each language by its own name, so that whoever needs it can read it."""


def of_desktop(wanted: Iterable[str]) -> Language:
    """The first language of the desktop that the app speaks; English where it speaks none of them.

    Args:
        wanted: tags of RFC 5646, the dearest first, as `QLocale.uiLanguages` gives them.
    """
    for tag in wanted:
        try:
            return Language(tag.partition("-")[0].lower())
        except ValueError:
            continue
    return Language.ENGLISH


def spoken_here() -> Language:
    """The language in which the window was built."""
    return of_desktop([QLocale().name().replace("_", "-")])


def speak(app: QCoreApplication, folder: Path, chosen: Language | None) -> Language:
    """Let everything that is built from now on speak a language; what has no translation stays English.

    Args:
        folder: where the app's translations lie.
        chosen: None for the desktop's.

    Returns:
        The language.
    """
    system = QLocale.system()
    language = chosen or of_desktop(system.uiLanguages())
    # The desktop's own country where it speaks this language: January is another word in Vienna than in Berlin.
    own = system.name() if system.name().partition("_")[0] == language.value else language.value
    QLocale.setDefault(QLocale(own))
    for old in app.findChildren(QTranslator):
        app.removeTranslator(old)
        old.deleteLater()
    qt = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
    for name, place in ((f"qtbase_{language.value}", qt), (f"hearthkey_{language.value}", str(folder))):
        translator = QTranslator(app)
        if translator.load(name, place):
            app.installTranslator(translator)
    return language
