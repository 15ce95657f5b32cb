"""What a message is, and how it is handed to lupdate."""

from __future__ import annotations

from typing import NamedTuple


class Message(NamedTuple):
    """Something that is translated.

    Args:
        context: as at `QCoreApplication.translate`; the class, for `QObject.tr`.
        source: English.
        note: for translators: where it stands.
    """

    context: str
    source: str
    note: str


_SAFE = {"\\": "\\\\", '"': '\\"', "\n": "\\n"}


def quoted(text: str) -> str:
    """As a string of C++."""
    return '"{}"'.format("".join(_SAFE.get(one, one) for one in text))


def source_file(messages: list[Message]) -> str:
    """A file that lupdate reads: one marked literal for each message, with its note before it."""
    found: dict[tuple[str, str], str] = {}
    for one in messages:
        found.setdefault((one.context, one.source), one.note)
    lines = []
    for context, source in sorted(found):
        lines.append(f"//: {found[context, source]}")
        lines.append(f"QT_TRANSLATE_NOOP({quoted(context)}, {quoted(source)}),")
    return "static const char *words[] = {\n" + "\n".join(lines) + "\n};\n"
