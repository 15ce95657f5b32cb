"""The questions about a household, asked alike when it is founded and when it is changed."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication, Signal
from PySide6.QtWidgets import QWidget

from hearthkey.core.network import FULL, SPLIT, Caution
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.controls.choice import Choice
from hearthkey.ui.controls.fields import Line
from hearthkey.ui.pages.founding_words import Spot
from hearthkey.ui.pages.question import Question
from hearthkey.ui.text import caution
from hearthkey.ui.theme.theme import Theme

_ADVICE = {
    "gateway-only-at-home": Spot.HOST,
    "gateway-shared-address": Spot.HOST,
    "gateway-bare-address": Spot.HOST,
    "dns-outside": Spot.DNS,
}


def _tr(text: str) -> str:
    """Whoever inherits would ask for it under a name of its own, for that is what `QObject.tr` does."""
    return QCoreApplication.translate("HouseholdForm", text)


class HouseholdForm(QWidget):
    """The questions and what is said under them; whoever inherits lays them out.

    Args:
        home: what stands in the line of the home subnets at first.
        home_hint: what is said under it.
        suffix_hint: what is said under the identity suffix.

    Signals:
        changed: something was typed or chosen.
    """

    changed = Signal()

    def __init__(
        self, theme: Theme, *, home: str = "", home_hint: str = "", suffix_hint: str = "", parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._touched: set[Spot] = set()
        self.name, self.host, self.home = Line(theme), Line(theme), Line(theme, home)
        self.dns, self.tunnel, self.suffix = Line(theme), Line(theme), Line(theme)
        self.quiet = Button(theme, _tr("Another quiet one"), height=32)
        self.through = Choice(
            theme,
            _tr("What goes through home?"),
            ((SPLIT, _tr("what is at home")), (FULL, _tr("everything"))),
        )
        self.lines = {
            Spot.NAME: self.name,
            Spot.HOST: self.host,
            Spot.HOME: self.home,
            Spot.DNS: self.dns,
            Spot.TUNNEL: self.tunnel,
            Spot.SUFFIX: self.suffix,
        }
        self.spots = self._questions(home_hint, suffix_hint)
        self.traffic = Question(theme, _tr("What of their traffic goes through home?"), self.through)
        for spot, line in self.lines.items():
            line.textEdited.connect(lambda _text, at=spot: self._edited(at))
        self.through.chosen.connect(lambda _key: self.changed.emit())

    def _questions(self, home_hint: str, suffix_hint: str) -> dict[Spot, Question]:
        theme = self._theme
        for line, sample in (
            (self.host, "home.quince.example"),
            (self.home, "198.51.100.0/24"),
            (self.dns, "198.51.100.1"),
            (self.tunnel, _tr("a quiet one is proposed")),
            (self.suffix, "quince.example"),
        ):
            line.setPlaceholderText(sample)
        return {
            Spot.NAME: Question(theme, _tr("What is the household called?"), self.name),
            Spot.HOST: Question(theme, _tr("Under which name is the house reached?"), self.host),
            Spot.HOME: Question(theme, _tr("Which subnets are at home?"), self.home, hint=home_hint),
            Spot.DNS: Question(theme, _tr("DNS server at home, if there is one"), self.dns),
            Spot.TUNNEL: Question(
                theme,
                _tr("Which subnet do the devices get?"),
                self.tunnel,
                beside=self.quiet,
            ),
            Spot.SUFFIX: Question(theme, _tr("What do device codes end in?"), self.suffix, hint=suffix_hint),
        }

    # What does not fit

    def unfold(self, spot: Spot) -> None:
        """Bring a question into sight, where it can be folded away."""

    def trouble(self, spot: Spot, sentence: str, *, always: bool) -> bool:
        """Say it in its place; a line that nobody has typed in yet is left in peace, unless `always`."""
        if spot not in self.spots or not (always or spot in self._touched):
            return False
        self.unfold(spot)
        self.spots[spot].trouble(sentence)
        return True

    def peace(self) -> None:
        """Nothing is in the way."""
        for question in self.spots.values():
            question.trouble("")

    def advise(self, cautions: Sequence[Caution]) -> None:
        """Say what should be known, each in its place."""
        for spot in (Spot.HOST, Spot.DNS):
            found = [caution(one) for one in cautions if _ADVICE.get(one.code) is spot]
            self.spots[spot].advise(" ".join(found))

    def _edited(self, spot: Spot) -> None:
        self._touched.add(spot)
        self.spots[spot].trouble("")
        self.changed.emit()


def several(text: str) -> tuple[str, ...]:
    """What is written one after the other, with commas or semicolons between."""
    return tuple(part.strip() for part in text.replace(";", ",").split(",") if part.strip())
