"""What "Lost or stolen" says of a device: its state, and why it cannot be stopped where it cannot."""

from __future__ import annotations

from datetime import datetime

from PySide6.QtCore import QCoreApplication

from hearthkey.core.passes import Pass, State
from hearthkey.core.sentences import board
from hearthkey.ui.text import said, spoken


def _tr(text: str) -> str:
    return QCoreApplication.translate("LostSheet", text)


def state_words(one: Pass, now: datetime) -> tuple[str, str]:
    """The state word, and what follows from it for stopping."""
    word, fact = (said(part) for part in board.state_words(one, now))
    state = one.state(now)
    if state in {State.REVOKED, State.ENDED}:
        return word, _tr("gets in no more")
    return word, _tr("stopped already") if state is State.STOPPED else fact


def why_not(one: Pass, state: State) -> str:
    """Why there is nothing to stop."""
    if state is State.STOPPED:
        return _tr("{title} is stopped already. It gets in when you let it back in, and not before.").format(
            title=spoken(one.title)
        )
    return _tr("{title} gets in no more. There is nothing to stop.").format(title=spoken(one.title))
