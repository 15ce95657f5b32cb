"""Which template stands on the page, and what was typed in those that do not."""

from __future__ import annotations

from collections.abc import Sequence

from hearthkey.core.templates import GATEWAY, Template

NEW = "new"
"""Key of a template that is not kept yet; the key of one that is kept is its name behind a colon."""

BLANK = Template("", GATEWAY, "gateway", "txt", "")


def key_of(name: str) -> str:
    """The key of a kept template."""
    return f":{name}"


class TemplateDrafts:
    """What is kept, and what was typed and is not."""

    def __init__(self) -> None:
        self.key = NEW
        self.kept: dict[str, Template] = {}
        self._typed: dict[str, Template] = {}

    @property
    def is_new(self) -> bool:
        """Whether the one on the page is not kept yet."""
        return self.key == NEW

    def offer(self, kept: Sequence[Template], now: Template) -> None:
        """Learn what is kept; where the one on the page is not any more, what stands there is a new one."""
        self.kept = {key_of(one.name): one for one in kept}
        if not self.is_new and self.key not in self.kept:
            self.let_go(now)

    def origin(self) -> Template:
        """What the one on the page was before anything was typed."""
        return self.kept.get(self.key, BLANK)

    def turn_to(self, key: str, now: Template) -> Template:
        """Put what is typed aside, and return what stands on the page next."""
        if now == self.origin():
            self._typed.pop(self.key, None)
        else:
            self._typed[self.key] = now
        self.key = key
        return self._typed.get(key, self.origin())

    def back(self) -> Template:
        """Drop what is typed, and return what was kept."""
        self._typed.pop(self.key, None)
        return self.origin()

    def take_in(self, kept: Template) -> None:
        """What stands on the page is kept now, under its name."""
        self._typed.pop(self.key, None)
        self.key = key_of(kept.name)
        self._typed.pop(self.key, None)

    def let_go(self, now: Template) -> None:
        """What stands on the page is kept no more; it is a new one."""
        self._typed.pop(self.key, None)
        self.key = NEW
        self._typed[NEW] = now

    def found(self, name: str) -> str | None:
        """The key of the kept one that has a name, in capital or small letters."""
        wanted = " ".join(name.split()).casefold()
        return next((key for key, one in self.kept.items() if one.name.casefold() == wanted), None)
