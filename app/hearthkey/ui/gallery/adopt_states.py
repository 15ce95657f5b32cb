"""A household that was made by hand, as the pictures show it: nothing of it is on any disk."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

from hearthkey.core.adopt_plan import UNNAMED
from hearthkey.core.found_findings import all_findings
from hearthkey.core.found_home import FoundHome
from hearthkey.core.found_household import (
    CLIENT_USE,
    SERVER_USE,
    FoundCertificate,
    FoundEntry,
    FoundFolder,
    FoundKey,
    FoundList,
    KeyLock,
)
from hearthkey.services.looking_over import Overview
from hearthkey.ui.window import Window

_FOLDER = Path("/home/ines/quince-ca")


def _certificate(file: str, subject: str, serial: int, *uses: str, names: tuple[str, ...] = ()) -> FoundCertificate:
    name = file.partition(".")[0]
    return FoundCertificate(
        file=file,
        der=b"",
        fingerprint=name,
        public=name,
        subject=f"CN={subject}",
        issuer="CN=Quince CA",
        subject_der=subject.encode(),
        issuer_der=b"Quince CA",
        common_name=subject,
        serial=serial,
        names=names,
        personal=" " in subject,
        usages=uses or None,
        key_type="RSA-2048",
        bits=2048,
        hash_name="sha256",
        not_before=datetime(2024, 3, 1, tzinfo=UTC),
        not_after=datetime(2034, 3, 1, tzinfo=UTC),
        is_authority=not uses,
        path_length=0 if not uses else None,
        signs_certificates=not uses,
        signs_lists=not uses,
        signs=True,
        has_identifier=True,
        has_authority_identifier=True,
    )


def _overview(now: datetime, *, locked: bool) -> Overview:
    top = _certificate("ca.crt", "Quince CA", 1)
    gateway = _certificate("gateway.crt", "home.quince.example", 2, SERVER_USE, names=("dns:home.quince.example",))
    devices = tuple(
        _certificate(f"{name}.crt", f"{name.capitalize()} phone", serial, CLIENT_USE)
        for serial, name in enumerate(("ines", "tomasz", "odile"), 3)
    )
    keys = (
        FoundKey("ca.key", KeyLock.TRADITIONAL, None if locked else "ca"),
        FoundKey("ines.key", KeyLock.OPEN, "ines"),
        FoundKey("odile.key", KeyLock.OPEN, "odile"),
    )
    gone = FoundEntry(4, now, 1)
    signed = FoundList(
        "list.pem", b"", b"", 12, datetime(2026, 1, 3, tzinfo=UTC), datetime(2026, 2, 2, tzinfo=UTC), (gone,),
        is_partial=False, hash_name="sha256",
    )  # fmt: skip
    folder = FoundFolder(files=14, certificates=(top, gateway, *devices), keys=keys, lists=(signed,))
    home = FoundHome(
        folder=folder,
        authority=top,
        key=None if locked else keys[0],
        gateways=(gateway,),
        devices=devices,
        lists=(signed,),
        withdrawn=(gone,),
        highest_list=12,
    )
    return Overview(_FOLDER, home, all_findings(home, published=frozenset(), now=now), {})


def nothing(window: Window) -> None:
    """Before a folder is chosen."""
    window.founding.adopt.turn(on=True)


def looked(*, locked: bool) -> Callable[[Window], None]:
    """After the look, with the CA's key locked or open."""

    def begin(window: Window) -> None:
        seen = window.outside.errands.last
        now = datetime(2026, 5, 12, tzinfo=UTC) if seen is None else seen.at
        turn = window.founding.adopt
        turn.turn(on=True)
        turn.side.folder = _FOLDER
        turn.side.path.setText(str(_FOLDER))
        turn.side.path.recolor("ink")
        overview = _overview(now, locked=locked)
        turn.overview = overview
        turn.side.show_overview(overview)
        turn.changed.emit()
        turn.turned.emit(turn.side.lock if locked else turn.side.choose)

    return begin


def unnamed(window: Window) -> None:
    """A pass that was taken over, of which nobody has said yet whose it is."""
    seen = window.outside.errands.last
    if seen is None:
        return
    chosen = next(one for one in seen.passes if (one.person, one.device) == ("Ines", "phone"))
    adopted = replace(chosen, person=UNNAMED, device="ines-phone", kind="other", handed_over=chosen.not_before)
    passes = tuple(adopted if one.serial == chosen.serial else one for one in seen.passes)
    window.ways.device.emit(chosen.identity)
    window.outside.errands.seen.emit(replace(seen, passes=passes))
