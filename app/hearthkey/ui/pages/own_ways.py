"""The householder's own templates as ways out, and the words that say who can open what leaves by them."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from hearthkey.core.passes import Pass
from hearthkey.core.templates import Template
from hearthkey.services.templating import Holds

_tr = QCoreApplication.translate


@dataclass(frozen=True)
class OwnWay:
    """One kept template for devices.

    What leaves by it counts as what carries the bundle, whatever its text holds: the guard that keeps a carrier and
    the passphrase apart asks no template what is in it, so no mistake about that can open it.

    Args:
        template: as it is kept.
        holds: what of the household's secrets it writes.
    """

    template: Template
    holds: Holds


def title(way: OwnWay) -> str:
    """What it is called."""
    return _tr("WaysOut", "Your own: {name}").format(name=way.template.name)


def occasion(way: OwnWay) -> str:
    """What sort of file it writes."""
    ending = way.template.ending
    return _tr("WaysOut", "a .{ending} file").format(ending=ending) if ending else _tr("WaysOut", "a file")


def stressed(way: OwnWay) -> str:
    """The words that stand first and heavier, where what leaves is not under the passphrase."""
    return {
        Holds.KEY: _tr("WaysOut", "Not sealed."),
        Holds.EXTRA: _tr("WaysOut", "Not sealed."),
        Holds.SEALED_KEY: "",
        Holds.NOTHING: "",
    }[way.holds]


def sentence(way: OwnWay, one: Pass) -> str:
    """Who can open it, behind `stressed`."""
    return {
        Holds.KEY: _tr(
            "WaysOut",
            "It holds the key without a passphrase: whoever gets hold of the file gets in as this {device}. Carry it "
            "by hand, and delete it afterwards.",
        ),
        Holds.EXTRA: _tr(
            "WaysOut",
            "It holds a secret that anybody who opens the file can read. Carry it by hand, and delete it afterwards.",
        ),
        Holds.SEALED_KEY: _tr(
            "WaysOut", "Whoever has the passphrase, in a program that reads this text. The app cannot try that."
        ),
        Holds.NOTHING: _tr("WaysOut", "Anybody; there is no secret in it, and no key."),
    }[way.holds].format(device=one.device)


def button() -> str:
    """What its button says."""
    return _tr("WaysOut", "Write it")


def what_now(way: OwnWay, one: Pass) -> str:
    """What to do with the file that was just written."""
    if way.holds in {Holds.KEY, Holds.EXTRA}:
        return _tr(
            "WaysOut",
            "Carry it to the {device} by hand, and delete it here and on the way: nothing protects what is in it.",
        ).format(device=one.device)
    return _tr(
        "WaysOut", "Bring it to the {device} and have its program read it. Whether it can, only that program knows."
    ).format(device=one.device)
