"""What the page that proves leads through: for each step what stands on the device's screen, and what to say."""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum

from PySide6.QtCore import QCoreApplication

from hearthkey.core.families import Family


class Stage(IntEnum):
    """The steps, in order."""

    WIFI = 0
    CONNECT = 1
    LINK = 2
    READ = 3


@dataclass(frozen=True)
class StepWords:
    """One step in words.

    Args:
        head: what is done.
        sees: what stands on the device's screen once it is.
        say: what the householder says to whoever holds it.
    """

    head: str
    sees: str
    say: str


def step_words(stage: Stage, family: Family) -> StepWords:
    """The words of a step.

    Args:
        family: of the device's system: a computer has no mobile data of its own, so it borrows a phone's.
    """
    if stage is Stage.WIFI:
        return _out_of_the_house(family)
    if stage is Stage.CONNECT:
        return StepWords(
            QCoreApplication.translate("proof", "Connect"),
            QCoreApplication.translate("proof", "“Connected”, beside the name of the connection."),
            QCoreApplication.translate(
                "proof", "“Open the settings, go to the connection that was set up for home, and switch it on.”"
            ),
        )
    if stage is Stage.LINK:
        return StepWords(
            QCoreApplication.translate("proof", "Open the link"),
            QCoreApplication.translate("proof", "The camera shows a link; tapping it opens a page in large type."),
            QCoreApplication.translate(
                "proof", "“Point the camera at this code and tap the link.” From afar: “Open the link that I sent you.”"
            ),
        )
    return StepWords(
        QCoreApplication.translate("proof", "Have it read aloud"),
        QCoreApplication.translate(
            "proof", "“You are in”, and this page says so too. “You are at home” means: back to the first step."
        ),
        QCoreApplication.translate("proof", "“Read me the large words at the top.”"),
    )


def _out_of_the_house(family: Family) -> StepWords:
    if family in {Family.IOS, Family.ANDROID}:
        return StepWords(
            QCoreApplication.translate("proof", "Switch Wi-Fi off"),
            QCoreApplication.translate("proof", "The sign of the Wi-Fi goes; letters such as 4G, 5G or LTE stay."),
            QCoreApplication.translate(
                "proof", "“Draw down from the upper edge and tap the Wi-Fi sign, so that it is off.”"
            ),
        )
    return StepWords(
        QCoreApplication.translate("proof", "Leave the Wi-Fi at home"),
        QCoreApplication.translate("proof", "Another network than the one at home."),
        QCoreApplication.translate(
            "proof", "“Share the phone’s mobile data, and join that with the computer instead of the Wi-Fi at home.”"
        ),
    )
