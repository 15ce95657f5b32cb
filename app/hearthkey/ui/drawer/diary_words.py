"""What the window says of an entry of the diary: its sentence, in the language of the window where that is known."""

from __future__ import annotations

from hearthkey.core.diary import DiaryEntry
from hearthkey.core.diary_words import heard
from hearthkey.core.languages import Language
from hearthkey.ui.languages import spoken_here
from hearthkey.ui.text import spoken


def told(entry: DiaryEntry) -> str:
    """The sentence; English where its words are not known, or are not those that the chain vouches for."""
    if not entry.words or spoken_here() is Language.ENGLISH:
        return entry.sentence
    return spoken(heard(entry.words, entry.sentence))
