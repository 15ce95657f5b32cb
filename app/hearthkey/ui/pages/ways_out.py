"""The ways in which a bundle can leave, and the words that say who can open it then."""

from __future__ import annotations

from enum import StrEnum

from PySide6.QtCore import QCoreApplication

from hearthkey.core.bundle import Form
from hearthkey.core.kinds import OLD, device_kind
from hearthkey.core.passes import Pass

_tr = QCoreApplication.translate


class WayOut(StrEnum):
    """One way out; the value is its key in signals and the name of its icon."""

    STICK = "stick"
    FILE = "file"
    BUNDLE = "bundle"
    ARCHIVE = "archive"
    CODES = "codes"

    @property
    def form(self) -> Form:
        """What is written."""
        return {
            WayOut.STICK: Form.PKCS12,
            WayOut.FILE: Form.PKCS12,
            WayOut.BUNDLE: Form.BUNDLE,
            WayOut.ARCHIVE: Form.ARCHIVE,
            WayOut.CODES: Form.CODES,
        }[self]


def title(way: WayOut) -> str:
    """What a way is called."""
    return {
        WayOut.STICK: _tr("WaysOut", "USB stick"),
        WayOut.FILE: _tr("WaysOut", "File"),
        WayOut.BUNDLE: _tr("WaysOut", "Bundle file"),
        WayOut.ARCHIVE: _tr("WaysOut", "Archive"),
        WayOut.CODES: _tr("WaysOut", "Codes"),
    }[way]


def occasion(way: WayOut, one: Pass) -> str:
    """When a way is the right one."""
    return {
        WayOut.STICK: _tr("WaysOut", "no network"),
        WayOut.FILE: _tr("WaysOut", "for this {device}").format(device=one.device),
        WayOut.BUNDLE: _tr("WaysOut", "settings included"),
        WayOut.ARCHIVE: _tr("WaysOut", "everything in one"),
        WayOut.CODES: _tr("WaysOut", "nothing on a disk"),
    }[way]


def sentence(way: WayOut, one: Pass, codes: int = 0) -> str:
    """Who can open what leaves this way.

    Args:
        codes: how many there are, 0 where they were not drawn yet.
    """
    if way is WayOut.STICK:
        return _tr("WaysOut", "{file}, written, read back and unmounted.").format(file=_container(one))
    if way is WayOut.FILE:
        return f"{_container(one)}."
    if way is WayOut.BUNDLE:
        return _tr("WaysOut", "Key, certificates and settings in one text file, for programs that know its form.")
    if way is WayOut.ARCHIVE:
        return _tr("WaysOut", "AES-256 zip. 7-Zip opens it, a plain file manager does not.")
    if codes:
        return _tr("WaysOut", "{count} codes, to be scanned one after another by this app’s reader.").format(
            count=codes
        )
    return _tr("WaysOut", "A handful of codes, to be scanned one after another by this app’s reader.")


def button(way: WayOut) -> str:
    """What its button says on the hand-over page."""
    return {
        WayOut.STICK: _tr("WaysOut", "Write a stick"),
        WayOut.FILE: _tr("WaysOut", "Save the file"),
        WayOut.BUNDLE: _tr("WaysOut", "Save the bundle"),
        WayOut.ARCHIVE: _tr("WaysOut", "Save archive"),
        WayOut.CODES: _tr("WaysOut", "Show codes"),
    }[way]


def short(way: WayOut) -> str:
    """What its button says in the tray."""
    return {
        WayOut.STICK: _tr("WaysOut", "USB stick"),
        WayOut.FILE: _tr("WaysOut", "Save file"),
        WayOut.BUNDLE: _tr("WaysOut", "Bundle file"),
        WayOut.ARCHIVE: _tr("WaysOut", "Archive"),
        WayOut.CODES: _tr("WaysOut", "Codes"),
    }[way]


def what_now(way: WayOut, one: Pass) -> str:
    """What to do with a file that was just written."""
    if way is WayOut.ARCHIVE:
        return _tr(
            "WaysOut",
            "Bring it to the {device} and unpack it there with 7-Zip. The file in it that says read me tells the "
            "rest. Then delete the archive here.",
        ).format(device=one.device)
    if way is WayOut.BUNDLE:
        return _tr("WaysOut", "Bring it to the {device} and read it there. Then delete it here.").format(
            device=one.device
        )
    return _tr(
        "WaysOut", "Open it on the {device} and type the passphrase there. Then delete the file where it lay."
    ).format(device=one.device)


def _container(one: Pass) -> str:
    """The PKCS#12 file and whose importer opens it; a container chosen by hand is only named."""
    if one.container != device_kind(one.kind).container:
        if one.container == OLD:
            return _tr("WaysOut", "A PKCS#12 file in the old container, as chosen")
        return _tr("WaysOut", "A PKCS#12 file in the strong container, as chosen")
    return {
        "iphone": _tr("WaysOut", "A PKCS#12 file in the container that iPhone and iPad open"),
        "android": _tr("WaysOut", "A PKCS#12 file in the container that Android 14 and newer open"),
        "android-older": _tr("WaysOut", "A PKCS#12 file in the container that Android 13 and older open"),
        "windows": _tr("WaysOut", "A PKCS#12 file in the container that Windows opens"),
        "windows-older": _tr("WaysOut", "A PKCS#12 file in the container that older Windows opens"),
        "mac": _tr("WaysOut", "A PKCS#12 file in the container that a Mac opens"),
        "linux": _tr("WaysOut", "A PKCS#12 file in the container that a Linux laptop opens"),
        "other": _tr("WaysOut", "A PKCS#12 file in the container that most things open"),
    }[one.kind]
