"""Turns the founding page into the one on which a household that was made by hand is taken over, and back."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.plans import Changes
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import adopting as sentences
from hearthkey.services.adopting import AdoptRequest, Prepared
from hearthkey.services.founding import FoundRequest
from hearthkey.services.looking_over import Overview
from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.errands import Errands
from hearthkey.ui.pages.adopt_side import AdoptSide
from hearthkey.ui.pages.so_far import SoFar
from hearthkey.ui.tasks import Failed, Then
from hearthkey.ui.text import mended, said
from hearthkey.ui.theme.theme import Theme


class AdoptTurn(QObject):
    """Whether a household is taken over, which one, and what would go on.

    Signals:
        changed: any of that.
        looked: a folder was looked at, so that what was typed wants another look.
        turned: something else is asked for now, by this control.
    """

    changed = Signal()
    looked = Signal()
    turned = Signal(QWidget)

    def __init__(self, theme: Theme, errands: Errands, so_far: SoFar, parent: QWidget) -> None:
        super().__init__(parent)
        self._errands = errands
        self._so_far = so_far
        self._host = self._looked_for = ""
        self._prepared: Prepared | None = None
        self._trouble = ""
        self.active = False
        self.overview: Overview | None = None
        self.side = AdoptSide(theme)
        self.beside = QWidget()
        column = QVBoxLayout(self.beside)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(so_far)
        column.addWidget(self.side)
        self.side.hide()
        so_far.adopt.clicked.connect(lambda: self.turn(on=True))
        self.side.away.connect(lambda: self.turn(on=False))
        self.side.wanted.connect(self.look)

    def turn(self, *, on: bool) -> None:
        """Take one over, or found a new one."""
        self.active = on
        self._so_far.setVisible(not on)
        self.side.setVisible(on)
        first = self.side.choose if on else self._so_far.adopt
        first.setFocus()
        if not on:
            self.side.forget()
        self.changed.emit()
        self.turned.emit(first)

    def heading(self) -> tuple[str, str]:
        """The sentence at the top of the page, and what it means."""
        if self.active:
            return (
                self.tr("The house goes on under the CA that it has."),
                self.tr("Nothing is written before the last button, and nothing in the folder is ever changed."),
            )
        return (
            self.tr("Nobody has a pass yet. Start with the house, about 5 minutes."),
            self.tr(
                "Nothing is written before the last button. The name of the house stands in every bundle: "
                "let it be one that lasts."
            ),
        )

    def look(self) -> None:
        """Look at the folder."""
        folder = self.side.folder
        if folder is None:
            return
        self._prepared, self._looked_for = None, self._host
        self._errands.look_over(folder, self.side.passphrases(), self._host or None, self, self._seen, self._failed)

    def _seen(self, seen: Overview) -> None:
        self.overview = seen
        self.side.show_overview(seen)
        self.changed.emit()
        self.looked.emit()
        if seen.needs_passphrase:
            self.turned.emit(self.side.lock)

    def _failed(self, error: HearthkeyError) -> None:
        self.overview = None
        self.side.show_trouble(error)
        self.changed.emit()

    # What would be done

    def stale(self, request: FoundRequest) -> None:
        """What was typed is another thing now."""
        self._host = request.gateway_host
        self._prepared = None
        self._trouble = ""

    def preview(self, request: FoundRequest) -> None:
        """Say what taking over would do, where everything that it needs is there."""
        self._host = request.gateway_host
        if not self.active or self.overview is None:
            return
        if self._host != self._looked_for:
            self.look()  # by its name the gateway’s certificate is known
            return
        if self.overview.stops:
            return
        asked = self._request(request)
        self._errands.preview_adopt(asked, self.side.passphrases(), self, partial(self._planned, asked), self._refused)

    def _request(self, request: FoundRequest) -> AdoptRequest:
        assert self.side.folder is not None  # noqa: S101 - only after a look
        return AdoptRequest(self.side.folder, request, self.tr("Somebody"))

    def _planned(self, asked: AdoptRequest, prepared: Prepared) -> None:
        if asked.folder == self.side.folder and asked.house.gateway_host == self._host:
            self._prepared = prepared
            self.changed.emit()

    def _refused(self, error: HearthkeyError) -> None:
        self._trouble = mended(error)
        self.changed.emit()

    @property
    def ready(self) -> bool:
        """Whether nothing is wanted from here."""
        return not self.active or self._prepared is not None

    def wanted(self) -> list[str]:
        """What is still wanted, in words."""
        if not self.active or self._prepared is not None:
            return []
        if self.overview is None:
            return [self.tr("the folder of the CA")]
        if self.overview.needs_passphrase:
            return [self.tr("the passphrase of the CA’s key")]
        return [self.tr("a CA with nothing in its way")] if self.overview.stops else []

    def voice(self, founding: str) -> str:
        """What would follow.

        Args:
            founding: what is said while a new household is founded.
        """
        if not self.active:
            return founding
        if self._prepared is None:
            return self._trouble
        return " ".join(said(one) for one in sentences.plan(self._prepared.plan))

    def verb(self) -> str:
        """The word of the last button."""
        return self.tr("Take it over") if self.active else self.tr("Found the household")

    def name(self, button: Button) -> None:
        """Give the last button its word."""
        button.say(self.verb())
        button.setAccessibleName(self.verb())

    def take(self, secret: Secret[str], place: str, context: QObject, then: Then[Changes], failed: Failed) -> None:
        """Take it over."""
        if self._prepared is not None:
            self._errands.adopt(self._prepared, secret, place, context, partial(self._taken, then), failed)

    def _taken(self, then: Then[Changes], changes: Changes) -> None:
        self._prepared, self.overview = None, None
        self.side.forget()
        then(changes)
