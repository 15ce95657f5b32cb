"""`hearthkey seal`, `try` and `restore`."""

from __future__ import annotations

from argparse import Namespace
from pathlib import Path

from hearthkey.cli import asking
from hearthkey.cli.paper import from_paper, try_paper
from hearthkey.cli.teller import Teller
from hearthkey.core import deputy
from hearthkey.core.errors import HearthkeyError, Refused
from hearthkey.core.network import Caution
from hearthkey.core.sealed import CopyNote
from hearthkey.core.secret import Secret
from hearthkey.formats import sealed_tar
from hearthkey.pki.deputy_lock import Passphrases
from hearthkey.services import passphrases
from hearthkey.services.house import House


def seal_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Make a sealed copy, or list those that were made."""
    if arguments.list:
        notes = house.register.sealed_copies()
        lines = [_line(one) for one in notes] or ["No sealed copy was ever made."]
        teller.result(lines, {"copies": [_data(one) for one in notes]})
        return
    if arguments.own_passphrase is not None:
        own = passphrases.chosen(asking.from_file(arguments.own_passphrase).reveal())
        house.sealing.make_ready(own, own=True)
    elif not house.sealing.ready:
        asking.unlock(house, arguments, teller)
    if arguments.gateway:
        changes = house.carrying_copies.carry(progress=teller.progress)
        teller.result([changes.sentence, "Next, to be sure of it: hearthkey try --gateway"], {"done": changes.sentence})
        return
    if arguments.into is not None and arguments.into.is_dir():
        deputy.check_no_parts(one.name for one in arguments.into.iterdir())
    made, changes = house.sealing.seal(arguments.into, progress=teller.progress)
    lines = [changes.sentence, f"Next, to be sure of it: hearthkey try {changes.files[0]}"]
    teller.result(lines, {"copy": _data(made), "files": list(changes.files)})


def try_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Open a sealed copy for real, or a paper."""
    if arguments.paper:
        try_paper(house, arguments, teller)
        return
    if arguments.gateway:
        data = house.carrying_copies.fetch(_newest_there(house))
    else:
        data = house.files.read(arguments.file or _newest(house), sealed_tar.LARGEST)
    changes = house.sealing.try_copy(
        data, asking.passphrase(arguments, "Household passphrase"), _own(arguments), progress=teller.progress
    )
    teller.result([changes.sentence], {"tried": changes.sentence})


def restore_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Bring a household back."""
    if arguments.paper:
        from_paper(house, arguments, teller)
        return
    data = house.files.read(arguments.file, sealed_tar.LARGEST)
    secret = asking.passphrase(arguments, "Household passphrase")
    bring_back(house, arguments, teller, data, Passphrases(secret, _own(arguments)))


def bring_back(house: House, arguments: Namespace, teller: Teller, data: bytes, opens: Passphrases) -> None:
    """Bring a household back with what opens its copy."""
    with house.restoring.preview(data, opens.household, opens.own, progress=teller.progress) as plan:
        if arguments.plan:
            teller.result([plan.sentence], {"plan": plan.sentence})
            return
        teller.aside(plan.sentence)
        asking.agree(arguments, teller, "Bring it back?")
        changes = house.restoring.apply(plan)
    house.sparing.renew()
    teller.cautions([Caution("one-computer", plan.copy.contents.household)])
    teller.result(
        [changes.sentence, "Next: hearthkey deliver, so that what the gateway knows is known here."],
        {"restored": changes.sentence, "household": plan.copy.contents.household},
    )


def keep_up(house: House, teller: Teller, *, carry: bool) -> None:
    """Make a sealed copy after a change. One that cannot be made is told and undoes nothing.

    Args:
        carry: the gateway was reached just now, so that one follows there where copies go there.
    """
    try:
        house.sealing.keep_up()
        if carry and house.carrying_copies.behind():
            house.carrying_copies.carry(progress=teller.progress, told=False)
    except HearthkeyError as error:
        teller.remark(error)
        teller.cautions([Caution("no-copy", "")])


def _own(arguments: Namespace) -> Secret[str] | None:
    return None if arguments.own_passphrase is None else asking.from_file(arguments.own_passphrase)


def _newest(house: House) -> Path:
    notes = [one for one in house.register.sealed_copies() if not one.at_gateway]
    return Path(notes[-1].place, notes[-1].name) if notes else house.data / "sealed"


def _newest_there(house: House) -> CopyNote:
    notes = [one for one in house.register.sealed_copies() if one.at_gateway]
    if not notes:
        raise Refused("copy-none-at-gateway")
    return notes[-1]


def _line(one: CopyNote) -> str:
    tried = "never tried" if one.tried is None else f"tried {one.tried:%Y-%m-%d}"
    return f"{one.made:%Y-%m-%d %H:%M}  {tried:16}  {Path(one.place, one.name)}"


def _data(one: CopyNote) -> dict[str, object]:
    return {
        "made": one.made.isoformat(),
        "file": str(Path(one.place, one.name)),
        "sha256": one.sha256,
        "tried": None if one.tried is None else one.tried.isoformat(),
    }
