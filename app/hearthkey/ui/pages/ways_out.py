"""The ways in which a bundle can leave, and the words that say who can open it then."""

from __future__ import annotations

from enum import StrEnum

from PySide6.QtCore import QCoreApplication

from hearthkey.core.bundle import Form
from hearthkey.core.families import Family
from hearthkey.core.kinds import OLD, DeviceKind
from hearthkey.core.passes import Pass
from hearthkey.ui.pages import own_ways
from hearthkey.ui.pages.own_ways import OwnWay

_tr = QCoreApplication.translate


class WayOut(StrEnum):
    """One way out; the value is its key in signals and the name of its icon."""

    TICKET = "ticket"
    STICK = "stick"
    FILE = "file"
    PROFILE = "profile"
    SCRIPT = "script"
    PEM = "pem"
    BUNDLE = "bundle"
    ARCHIVE = "archive"
    CODES = "codes"

    @property
    def form(self) -> Form:
        """What is written."""
        return {
            WayOut.TICKET: Form.PKCS12,
            WayOut.STICK: Form.PKCS12,
            WayOut.FILE: Form.PKCS12,
            WayOut.PROFILE: Form.PROFILE,
            WayOut.SCRIPT: Form.SCRIPT,
            WayOut.PEM: Form.PEM,
            WayOut.BUNDLE: Form.BUNDLE,
            WayOut.ARCHIVE: Form.ARCHIVE,
            WayOut.CODES: Form.CODES,
        }[self]


Way = WayOut | OwnWay
"""One of ours, or a text of the householder's own."""


_ONLY_FOR_SOME = frozenset({WayOut.PROFILE, WayOut.SCRIPT, WayOut.PEM})
"""What other devices can do nothing with at all; the rest may be wanted against what is known of a kind."""


def fitting(kind: DeviceKind) -> tuple[WayOut, ...]:
    """The ways that a device of a kind can do something with."""
    return tuple(way for way in WayOut if way not in _ONLY_FOR_SOME or way.form.value in kind.forms)


def title(way: Way) -> str:
    """What a way is called."""
    if isinstance(way, OwnWay):
        return own_ways.title(way)
    return {
        WayOut.TICKET: _tr("WaysOut", "Ticket"),
        WayOut.STICK: _tr("WaysOut", "USB stick"),
        WayOut.FILE: _tr("WaysOut", "File"),
        WayOut.PROFILE: _tr("WaysOut", "Profile"),
        WayOut.SCRIPT: _tr("WaysOut", "Script"),
        WayOut.PEM: _tr("WaysOut", "PEM files"),
        WayOut.BUNDLE: _tr("WaysOut", "Bundle file"),
        WayOut.ARCHIVE: _tr("WaysOut", "Archive"),
        WayOut.CODES: _tr("WaysOut", "Codes"),
    }[way]


def form_title(form: str) -> str:
    """What the form in which a bundle leaves is called, in a word or two."""
    return _tr("WaysOut", "PKCS#12") if form == Form.PKCS12 else title(WayOut(form))


def occasion(way: Way, one: Pass) -> str:
    """When a way is the right one."""
    if isinstance(way, OwnWay):
        return own_ways.occasion(way)
    return {
        WayOut.TICKET: _tr("WaysOut", "at home, on the Wi-Fi"),
        WayOut.STICK: _tr("WaysOut", "no network"),
        WayOut.FILE: _tr("WaysOut", "for this {device}").format(device=one.device),
        WayOut.PROFILE: _tr("WaysOut", "sets itself up"),
        WayOut.SCRIPT: _tr("WaysOut", "sets itself up"),
        WayOut.PEM: _tr("WaysOut", "for anything else"),
        WayOut.BUNDLE: _tr("WaysOut", "settings included"),
        WayOut.ARCHIVE: _tr("WaysOut", "everything in one"),
        WayOut.CODES: _tr("WaysOut", "nothing on a disk"),
    }[way]


def stressed(way: Way) -> str:
    """The words of its sentence that stand first and heavier."""
    return own_ways.stressed(way) if isinstance(way, OwnWay) else ""


def sentence(way: Way, one: Pass, kind: DeviceKind, codes: int = 0) -> str:
    """Who can open what leaves this way.

    Args:
        kind: of the pass.
        codes: how many there are, 0 where they were not drawn yet.
    """
    return own_ways.sentence(way, one) if isinstance(way, OwnWay) else _of_ours(way, one, kind, codes)


def _of_ours(way: WayOut, one: Pass, kind: DeviceKind, codes: int) -> str:
    if way is WayOut.CODES and codes:
        told = _tr("WaysOut", "{count} codes, to be scanned one after another by this app’s reader.")
        return told.format(count=codes)
    told = {
        WayOut.TICKET: _tr(
            "WaysOut", "The {device} scans one code and fetches the file from here, once, within ten minutes."
        ),
        WayOut.STICK: _tr("WaysOut", "{file}, written, read back and unmounted."),
        WayOut.FILE: _tr("WaysOut", "{file}."),
        WayOut.PROFILE: _tr(
            "WaysOut", "Settings, identity and CA in one file that the {device} installs; it asks for the passphrase."
        ),
        WayOut.SCRIPT: _tr(
            "WaysOut", "A PowerShell script and its PKCS#12 file; run as administrator, and undone with -Undo."
        ),
        WayOut.PEM: _tr("WaysOut", "Key, certificate and CA as text files, and what to type in."),
        WayOut.BUNDLE: _tr(
            "WaysOut", "Key, certificates and settings in one text file, for programs that know its form."
        ),
        WayOut.ARCHIVE: _tr("WaysOut", "AES-256 zip. 7-Zip opens it, a plain file manager does not."),
        WayOut.CODES: _tr("WaysOut", "A handful of codes, to be scanned one after another by this app’s reader."),
    }[way]
    return told.format(device=one.device, file=_container(one, kind))


def button(way: Way) -> str:
    """What its button says on the hand-over page."""
    if isinstance(way, OwnWay):
        return own_ways.button()
    return {
        WayOut.TICKET: _tr("WaysOut", "Open a pick-up"),
        WayOut.STICK: _tr("WaysOut", "Write a stick"),
        WayOut.FILE: _tr("WaysOut", "Save the file"),
        WayOut.PROFILE: _tr("WaysOut", "Save the profile"),
        WayOut.SCRIPT: _tr("WaysOut", "Save the script"),
        WayOut.PEM: _tr("WaysOut", "Save PEM files"),
        WayOut.BUNDLE: _tr("WaysOut", "Save the bundle"),
        WayOut.ARCHIVE: _tr("WaysOut", "Save archive"),
        WayOut.CODES: _tr("WaysOut", "Show codes"),
    }[way]


def short(way: WayOut) -> str:
    """What its button says in the tray."""
    return {
        WayOut.TICKET: _tr("WaysOut", "Ticket"),
        WayOut.STICK: _tr("WaysOut", "USB stick"),
        WayOut.FILE: _tr("WaysOut", "Save file"),
        WayOut.PROFILE: _tr("WaysOut", "Profile"),
        WayOut.SCRIPT: _tr("WaysOut", "Script"),
        WayOut.PEM: _tr("WaysOut", "PEM files"),
        WayOut.BUNDLE: _tr("WaysOut", "Bundle file"),
        WayOut.ARCHIVE: _tr("WaysOut", "Archive"),
        WayOut.CODES: _tr("WaysOut", "Codes"),
    }[way]


def what_now(way: Way, one: Pass) -> str:
    """What to do with a file that was just written."""
    if isinstance(way, OwnWay):
        return own_ways.what_now(way, one)
    if way is WayOut.ARCHIVE:
        return _tr(
            "WaysOut",
            "Bring it to the {device} and unpack it there with 7-Zip. The file in it that says read me tells the "
            "rest. Then delete the archive here.",
        ).format(device=one.device)
    if way is WayOut.PROFILE:
        return _tr(
            "WaysOut", "Open it on the {device} and install it in the settings; the passphrase is asked there."
        ).format(device=one.device)
    if way is WayOut.SCRIPT:
        return _tr(
            "WaysOut", "Bring both files to the {device} and read the script first: nobody has run it on Windows yet."
        ).format(device=one.device)
    if way is WayOut.BUNDLE:
        return _tr("WaysOut", "Bring it to the {device} and read it there. Then delete it here.").format(
            device=one.device
        )
    return _tr(
        "WaysOut", "Open it on the {device} and type the passphrase there. Then delete the file where it lay."
    ).format(device=one.device)


def _container(one: Pass, kind: DeviceKind) -> str:
    """The PKCS#12 file and whose importer opens it; a container chosen by hand is only named."""
    if one.container != kind.container:
        if one.container == OLD:
            return _tr("WaysOut", "A PKCS#12 file in the old container, as chosen")
        return _tr("WaysOut", "A PKCS#12 file in the strong container, as chosen")
    return {
        Family.IOS: _tr("WaysOut", "A PKCS#12 file in the container that this iPhone or iPad opens"),
        Family.ANDROID: _tr("WaysOut", "A PKCS#12 file in the container that this Android opens"),
        Family.WINDOWS: _tr("WaysOut", "A PKCS#12 file in the container that this Windows opens"),
        Family.MAC: _tr("WaysOut", "A PKCS#12 file in the container that this Mac opens"),
        Family.LINUX: _tr("WaysOut", "A PKCS#12 file in the container that this Linux opens"),
        Family.UNKNOWN: _tr("WaysOut", "A PKCS#12 file in the container that most things open"),
    }[kind.family]
