"""The diary as a file: lines for people, or one JSON object a line (JSON Lines) for machines."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Sequence

from hearthkey.core.diary import DiaryEntry
from hearthkey.core.diary_search import Subject


def as_text(entries: Iterable[DiaryEntry], head: Sequence[str], line: Callable[[DiaryEntry], str]) -> bytes:
    """Entries as UTF-8 text.

    Args:
        head: lines above them, in the reader's language.
        line: writes an entry, in that language too, or in English.
    """
    lines = [*head, "", *(" ".join(line(one).splitlines()) for one in entries)]
    return ("\n".join(lines) + "\n").encode()


def as_json_lines(entries: Iterable[DiaryEntry], subjects_of: Callable[[str], Iterable[Subject]]) -> bytes:
    """Entries as JSON Lines: codes that never change with the language, and the link, so that anybody can check it.

    The sentence is the English one in every language, for the link is over that.

    Args:
        subjects_of: whom a sentence tells of.
    """
    return b"".join(
        json.dumps(
            {
                "number": one.number,
                "at": f"{one.at:%Y-%m-%dT%H:%M:%SZ}",
                "verb": one.verb,
                "people": sorted({subject.person for subject in subjects_of(one.sentence)}),
                "devices": sorted(subject.title for subject in subjects_of(one.sentence) if subject.device),
                "sentence": one.sentence,
                "link": one.link,
            },
            ensure_ascii=False,
        ).encode()
        + b"\n"
        for one in entries
    )
