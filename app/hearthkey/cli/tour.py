"""`hearthkey tour`: the whole main job on the practice household Quince Cottage, in seconds."""

from __future__ import annotations

import json
import os
import shutil
from argparse import Namespace
from dataclasses import dataclass, field
from pathlib import Path

from hearthkey.cli.teller import Teller
from hearthkey.core.bundle import Form
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.household import FILE, KEYRING
from hearthkey.core.languages import Language
from hearthkey.core.passes import Pass
from hearthkey.core.rehearsal import RehearsalFailed
from hearthkey.core.revocation import Reason
from hearthkey.formats import pem
from hearthkey.services import looking
from hearthkey.services.forgetting import forget_practice
from hearthkey.services.house import House, OpenHouse, WindowDoor
from hearthkey.services.practice import FOUR_DEVICES, HOUSEHOLD, SERVICE
from hearthkey.services.writing_diary import read as read_diary

MARK = "tour.json"


@dataclass
class _Walk:
    """What the tour has made so far."""

    house: House
    teller: Teller
    folder: Path
    files: list[dict[str, object]] = field(default_factory=list)
    lists: list[dict[str, object]] = field(default_factory=list)
    seen: list[str] = field(default_factory=list)

    def say(self, sentence: str) -> None:
        """Tell a step, and keep it for tour.json."""
        self.seen.append(sentence)
        self.teller.progress("touring", step=sentence)

    def passes_of(self, text: str) -> list[Pass]:
        """The passes of one device."""
        return looking.find(self.house.register.passes(), text)


def tour_verb(open_house: OpenHouse, arguments: Namespace, teller: Teller, door: WindowDoor | None) -> None:
    """Walk the tour and put its folder where it was asked for, all of it or nothing."""
    folder = arguments.into.absolute()
    if folder.exists() and any(folder.iterdir()) and not (folder / MARK).exists():
        raise Refused("tour-folder-taken", path=str(folder))
    half = folder.with_name(f"{folder.name}.half-{os.getpid()}")
    half.mkdir(parents=True, mode=0o700)
    try:
        told = _walk_somewhere(open_house, half, teller)
        told["pictures"] = _draw(door, half / "window", Language(arguments.language), teller)
        text = json.dumps(told, ensure_ascii=False, indent=2).replace(str(half), str(folder))
        (half / MARK).write_text(text + "\n", encoding="utf-8")
        if folder.exists():
            shutil.rmtree(folder)
        half.rename(folder)
    finally:
        shutil.rmtree(half, ignore_errors=True)
    count = len(json.loads(text)["files"])
    teller.result([f"The tour is over: {count} files lie in {folder}, told in {folder / MARK}."], json.loads(text))


def _draw(door: WindowDoor | None, into: Path, language: Language, teller: Teller) -> list[str]:
    """Draw the window, where its parts are installed."""
    if door is None:
        return []
    teller.progress("touring", step="Drawing the window in its states and looks")
    try:
        return list(door.draw(into, language))
    except Unavailable as error:
        if error.code != "window-missing":
            raise
        teller.remark(error)
        return []


def _walk_somewhere(open_house: OpenHouse, folder: Path, teller: Teller) -> dict[str, object]:
    """With the desktop's keyring where it answers, else with files in the tour's own folder."""
    data = folder / "household"
    try:
        with open_house(data, place=KEYRING, writing=True, keyring_service=SERVICE) as house:
            try:
                return _walk(_Walk(house, teller, folder))
            finally:
                if house.register.household() is not None:
                    forget_practice(house.register, house.vault)
    except Unavailable as error:
        if not error.code.startswith("keyring-"):
            raise
        teller.remark(error)
        teller.aside("So this tour keeps the practice household’s secrets as files in its own folder.")
    shutil.rmtree(data, ignore_errors=True)
    with open_house(data, place=FILE, writing=True) as house:
        return _walk(_Walk(house, teller, folder))


def _walk(walk: _Walk) -> dict[str, object]:
    passphrase = _found(walk)
    _enrol(walk)
    for one in walk.house.register.passes():
        _write_every_form(walk, one)
    _withdraw(walk)
    _publish(walk)
    now = walk.house.clock.now()
    entries, misfit = read_diary(walk.house.register)
    walk.say(f"The diary has {len(entries)} entries, and its chain {'holds' if misfit is None else 'is broken'}")
    return {
        "household": {"name": HOUSEHOLD.name, "passphrase": passphrase, "kept_in": walk.house.vault.place},
        "files": walk.files,
        "devices": [
            {"name": one.title, "person": one.person, "serial": one.serial, "state": one.state(now).value}
            for one in walk.house.register.passes()
        ],
        "lists": walk.lists,
        "steps": walk.seen,
    }


def _found(walk: _Walk) -> str:
    plan = walk.house.founding.preview(HOUSEHOLD)
    secret = walk.house.founding.offer_passphrase()
    walk.say("Founding Quince Cottage: CA, gateway, revocation list 1")
    walk.house.founding.apply(plan, secret)
    _note_list(walk)
    return secret.reveal()


def _enrol(walk: _Walk) -> None:
    walk.say("Enrolling four devices of different kinds")
    walk.house.enrolling.apply(*walk.house.enrolling.preview_all(FOUR_DEVICES))


def _write_every_form(walk: _Walk, one: Pass) -> None:
    walk.say(f"Writing, rehearsing and reading back every form for {one.title}")
    house = walk.house
    bundle = house.bundling.open(one)
    into = walk.folder / "bundles"
    for form in Form:
        done = house.exporting.export_opened(bundle, one, form, into)
        walk.files += [
            {"path": path, "form": form.value, "device": one.title, "passphrase": bundle.passphrase.reveal()}
            for path in done.changes.files
        ]


def _withdraw(walk: _Walk) -> None:
    house = walk.house
    for text in ("Ines phone", "Odile tablet"):
        house.handing_over.apply(house.handing_over.preview(walk.passes_of(text)))
        walk.say(f"{text} was handed over; its key is gone from here")
    house.stopping.stop(house.stopping.preview_stop(walk.passes_of("Tomasz laptop")))
    _note_list(walk)
    walk.say(f"Tomasz’s laptop was stopped; its rehearsal stops at the step '{_stops_at(walk, 'Tomasz laptop')}'")
    house.stopping.let_in(house.stopping.preview_let_in(walk.passes_of("Tomasz laptop")))
    _note_list(walk)
    walk.say(f"Tomasz’s laptop was let back in; its rehearsal ends with '{_stops_at(walk, 'Tomasz laptop')}'")
    house.stopping.stop(house.stopping.preview_stop(walk.passes_of("Odile tablet")))
    _note_list(walk)
    walk.say("Odile’s tablet was stopped")
    lost = house.stopping.preview_revoke(walk.passes_of("Ines phone"), Reason.KEY_COMPROMISE)
    house.stopping.revoke(lost)
    _note_list(walk)
    walk.say("Ines’s phone was stolen, and revoked")


def _stops_at(walk: _Walk, text: str) -> str:
    one = walk.passes_of(text)[-1]
    bundle = walk.house.bundling.open(one)
    files = walk.house.bundling.write(bundle, Form.BUNDLE)
    try:
        walk.house.rehearsing.rehearse(Form.BUNDLE, files, bundle.passphrase, identity=one.identity)
    except RehearsalFailed as error:
        return error.rehearsal.failed.name if error.rehearsal.failed is not None else "unknown"
    return "let in"


def _note_list(walk: _Walk) -> None:
    """Write the newest list and keep its number and date."""
    signed = walk.house.listing.numbered(None)
    walk.lists += [
        {"path": path, "number": signed.number, "good_until": f"{signed.next_update:%Y-%m-%dT%H:%M:%SZ}"}
        for path in walk.house.listing.publish(signed, walk.folder / "lists")
    ]


def _publish(walk: _Walk) -> None:
    """Write the certificates that somebody needs to check all this with other tools."""
    register = walk.house.register
    authority, gateway = register.authority(), register.gateway()
    if authority is None or gateway is None:
        raise Refused("no-household")
    named = {"ca-certificate.pem": authority.certificate, "gateway-certificate.pem": gateway.certificate}
    for one in register.passes():
        named[f"{one.identity.split('.', 1)[0]}-certificate.pem"] = register.certificate(one.serial)
    titles = {f"{one.identity.split('.', 1)[0]}-certificate.pem": one.title for one in register.passes()}
    for name, der in named.items():
        path = walk.house.files.write(
            walk.folder / "certificates", name, pem.encode("CERTIFICATE", der).encode("ascii")
        )
        walk.files.append({"path": str(path), "form": "certificate", "device": titles.get(name), "passphrase": None})
