"""The tags of a template, counted before anything parses them, so that the parser never gets deep or long ones."""

from __future__ import annotations

import re

from hearthkey.core.errors import Refused
from hearthkey.core.templates import lines_of
from hearthkey.formats.template_sandbox import sandbox

MOST_TAGS = 2000
LONGEST_TAG = 200
"""Words and signs."""
DEEPEST_TAGS = 8
DEEPEST_LOOPS = 3
DEEPEST_BRACKETS = 8
LONGEST_QUOTE = 4096
"""Characters between quotes."""
LONGEST_FIGURE = 9

_FOR, _IF = "for", "if"
_TAGS = ("for", "endfor", "if", "elif", "else", "endif")
KNOWN_TAGS = (_FOR, _IF, "raw")
_ENDS = {"endfor": _FOR, "endif": _IF}
_QUOTE = re.compile(r"(?:[^\\]|\\[\\'\"nt])*", re.DOTALL)
_SILENT = frozenset({"whitespace", "data", "comment_begin", "comment", "comment_end", "raw_begin", "raw_end"})


class Source:
    """A template's text, for quoting a line of it."""

    def __init__(self, text: str) -> None:
        self.text = text
        self._lines = lines_of(text)

    def seen(self, line: int) -> str:
        """A line as it was written, shortened."""
        return self._lines[min(line, len(self._lines)) - 1].strip()[:80]

    def mistake(self, line: int) -> Refused:
        """The error for a line that cannot be read."""
        return Refused("template-mistake", line=line, seen=self.seen(line))


class TagCounter:
    """Walks the words of a template."""

    def __init__(self, source: Source) -> None:
        self._source = source
        self._tags = 0
        self._words = 0
        self._brackets = 0
        self._opened: list[tuple[str, int]] = []
        self._inside: tuple[str, int] | None = None

    def count(self) -> None:
        """Walk all of them.

        Raises:
            Refused: template-mistake, template-part-unknown, template-unclosed, template-too-deep,
                template-too-intricate.
            TemplateSyntaxError: a sign that means nothing.
        """
        for line, kind, word in sandbox().lexer.tokeniter(self._source.text, None):
            if kind in {"block_begin", "variable_begin"}:
                self._begin("{%" if kind == "block_begin" else "{{", line)
            elif kind in {"block_end", "variable_end"}:
                self._inside = None
            elif kind not in _SILENT:
                self._word(line, kind, word)
        if self._inside is not None:
            opening, line = self._inside
            raise Refused("template-unclosed", line=line, seen=opening, wanted={"{%": "%}", "{{": "}}"}[opening])
        if self._opened:
            tag, line = self._opened[-1]
            raise Refused("template-unclosed", line=line, seen=tag, wanted=f"end{tag}")

    def _begin(self, opening: str, line: int) -> None:
        self._inside, self._words, self._brackets = (opening, line), 0, 0
        self._tags += 1
        if self._tags > MOST_TAGS:
            raise Refused("template-too-intricate", line=line, limit=MOST_TAGS, what="tags")

    def _word(self, line: int, kind: str, word: str) -> None:
        self._words += 1
        if self._words > LONGEST_TAG:
            raise Refused("template-too-intricate", line=line, limit=LONGEST_TAG, what="words in one tag")
        if self._words == 1 and self._inside is not None and self._inside[0] == "{%":
            self._tag(line, word)
        if kind == "operator":
            self._brackets += (word in {"(", "[", "{"}) - (word in {")", "]", "}"})
            if self._brackets > DEEPEST_BRACKETS:
                raise Refused("template-too-deep", line=line, limit=DEEPEST_BRACKETS)
        if not _CONSTANTS.get(kind, _anything)(word):
            raise self._source.mistake(line)

    def _tag(self, line: int, tag: str) -> None:
        if tag not in _TAGS:
            raise Refused("template-part-unknown", line=line, seen=tag[:40], known=KNOWN_TAGS)
        if tag in {_FOR, _IF}:
            self._opened.append((tag, line))
            loops = sum(1 for opened, _ in self._opened if opened == _FOR)
            if len(self._opened) > DEEPEST_TAGS or loops > DEEPEST_LOOPS:
                limit = DEEPEST_LOOPS if loops > DEEPEST_LOOPS else DEEPEST_TAGS
                raise Refused("template-too-deep", line=line, limit=limit)
        elif tag in _ENDS:
            if not self._opened:
                raise self._source.mistake(line)
            opened, began = self._opened.pop()
            if opened != _ENDS[tag]:
                raise Refused("template-unclosed", line=began, seen=opened, wanted=f"end{opened}")


def _short_quote(word: str) -> bool:
    return len(word) <= LONGEST_QUOTE + 2 and _QUOTE.fullmatch(word[1:-1]) is not None


def _short_figure(word: str) -> bool:
    return len(word) <= LONGEST_FIGURE and word.isdecimal()


def _nothing(_: str) -> bool:
    return False


def _anything(_: str) -> bool:
    return True


_CONSTANTS = {"string": _short_quote, "integer": _short_figure, "float": _nothing}
"""What is taken as a constant; an escape that Python would only warn about is no part of a template's language."""
