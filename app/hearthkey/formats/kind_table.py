"""A table of a device kind's file: gives its values, checked, or says which of them will not do and where it stands."""

from __future__ import annotations

from collections.abc import Sequence

from hearthkey.core.errors import Refused
from hearthkey.formats.plain_toml import hidden_character

_ASKED = 60
"""Characters that are repeated of a word that is not known."""


class Table:
    """One table, at its place.

    Args:
        file: name of the file, for the sentence.
        place: where it stands, with dots, counted from 1 where there are several; empty at the top.
        values: as tomllib reads them.
    """

    def __init__(self, file: str, place: str, values: dict[str, object]) -> None:
        self.file = file
        self.place = place
        self.values = values

    def at(self, key: str) -> str:
        """The place of a key in it."""
        return f"{self.place}.{key}" if self.place else key

    def known(self, keys: Sequence[str]) -> None:
        """Refuse a key that is none of these.

        Raises:
            Refused: kind-file-unknown.
        """
        for key in self.values:
            if key not in keys:
                place = self.at(key if len(key) <= _ASKED and key.isprintable() else repr(key[:_ASKED]))
                raise Refused("kind-file-unknown", file=self.file, place=place, known=tuple(keys))

    def only(self, keys: Sequence[str], optional: Sequence[str] = ()) -> None:
        """Ask for exactly these keys; of the optional ones any may be missing.

        Raises:
            Refused: kind-file-unknown, kind-file-missing.
        """
        self.known(keys)
        for key in keys:
            if key not in self.values and key not in optional:
                raise Refused("kind-file-missing", file=self.file, place=self.at(key))

    def languages(self, spoken: Sequence[str]) -> None:
        """Ask for every language.

        Raises:
            Refused: kind-file-language.
        """
        for language in spoken:
            if language not in self.values:
                raise Refused("kind-file-language", file=self.file, place=self.at(language), known=tuple(spoken))

    def all_or_none(self, spoken: Sequence[str], said: Sequence[bool]) -> None:
        """Where one language says what is seen, the others do too.

        Raises:
            Refused: kind-file-language.
        """
        if any(said):
            for language, one in zip(spoken, said, strict=True):
                if not one:
                    place = f"{self.at(language)} (its second text)"
                    raise Refused("kind-file-language", file=self.file, place=place, known=tuple(spoken))

    def text(self, key: str, longest: int, missing: str | None = None) -> str:
        """A text of at least one character; what stands for a missing one, where it may be missing.

        Raises:
            Refused: kind-file-type, kind-file-length, kind-file-hidden.
        """
        if missing is not None and key not in self.values:
            return missing
        return self._text(self.values.get(key), self.at(key), longest)

    def _text(self, found: object, place: str, longest: int) -> str:
        if not isinstance(found, str):
            raise Refused("kind-file-type", file=self.file, place=place, wanted="a text in quotes")
        if not 0 < len(found.strip()) <= longest or len(found) > longest:
            raise Refused("kind-file-length", file=self.file, place=place, limit=longest)
        # What is printable in Python's sense holds none of these, and that is told a hundred times faster.
        if not found.isprintable() and ("\n" in found or "\t" in found or hidden_character(found) is not None):
            raise Refused("kind-file-hidden", file=self.file, place=place)
        return found

    def pair(self, key: str, longest: int) -> tuple[str, str]:
        """An array of one or two texts; the second is empty where it is missing.

        Raises:
            Refused: as `text`.
        """
        found = self.values.get(key)
        if not isinstance(found, list) or len(found) not in {1, 2}:
            wanted = "one or two texts in square brackets: what to do, and what is seen then"
            raise Refused("kind-file-type", file=self.file, place=self.at(key), wanted=wanted)
        texts = [self._text(one, self.at(key), longest) for one in found]
        return texts[0], texts[1] if len(texts) > 1 else ""

    def number(self, key: str, largest: int) -> int:
        """A whole number from 1.

        Raises:
            Refused: kind-file-type.
        """
        found = self.values.get(key)
        if not isinstance(found, int) or isinstance(found, bool) or not 1 <= found <= largest:
            wanted = f"a whole number from 1 to {largest}, without quotes"
            raise Refused("kind-file-type", file=self.file, place=self.at(key), wanted=wanted)
        return found

    def truth(self, key: str) -> bool:
        """True or false.

        Raises:
            Refused: kind-file-type.
        """
        found = self.values.get(key)
        if not isinstance(found, bool):
            wanted = "true or false, without quotes"
            raise Refused("kind-file-type", file=self.file, place=self.at(key), wanted=wanted)
        return found

    def choice(self, key: str, known: Sequence[str]) -> str:
        """One of some words.

        Raises:
            Refused: kind-file-type, kind-file-choice.
        """
        return self._choice(self.values.get(key), self.at(key), known)

    def _choice(self, found: object, place: str, known: Sequence[str]) -> str:
        if not isinstance(found, str):
            raise Refused("kind-file-type", file=self.file, place=place, wanted="a word in quotes")
        if found not in known:
            text = found[:_ASKED]
            raise Refused("kind-file-choice", file=self.file, place=place, text=text, known=tuple(map(str, known)))
        return found

    def choices(self, key: str, known: Sequence[str]) -> tuple[str, ...]:
        """An array of at least one of some words.

        Raises:
            Refused: kind-file-type, kind-file-choice.
        """
        found = self.values.get(key)
        if not isinstance(found, list) or not found:
            wanted = "words in quotes between square brackets, at least one"
            raise Refused("kind-file-type", file=self.file, place=self.at(key), wanted=wanted)
        return tuple(self._choice(one, self.at(key), known) for one in found)

    def table(self, key: str) -> Table:
        """A table in it.

        Raises:
            Refused: kind-file-type.
        """
        found = self.values.get(key)
        if not isinstance(found, dict):
            raise Refused("kind-file-type", file=self.file, place=self.at(key), wanted=f"a table, [{self.at(key)}]")
        return Table(self.file, self.at(key), found)

    def tables(self, key: str, most: int, *, least: int = 1) -> list[Table]:
        """The tables of an array of them.

        Raises:
            Refused: kind-file-type, kind-file-count.
        """
        found = self.values.get(key, [])
        if not isinstance(found, list) or not all(isinstance(one, dict) for one in found):
            wanted = f"tables, each under [[{self.at(key)}]]"
            raise Refused("kind-file-type", file=self.file, place=self.at(key), wanted=wanted)
        if not least <= len(found) <= most:
            raise Refused("kind-file-count", file=self.file, place=self.at(key), count=len(found), limit=most)
        return [Table(self.file, f"{self.at(key)} {number}", one) for number, one in enumerate(found, 1)]
