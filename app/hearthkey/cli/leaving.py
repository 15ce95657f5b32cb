"""`hearthkey export`, `hand-over` and `rehearse`: how a bundle leaves."""

from __future__ import annotations

from argparse import Namespace
from collections.abc import Sequence
from pathlib import Path

from hearthkey.cli import asking
from hearthkey.cli.teller import Teller
from hearthkey.core.bundle import Form
from hearthkey.core.connect_choices import BY_CA, choices
from hearthkey.core.errors import Refused
from hearthkey.core.network import Caution
from hearthkey.core.rehearsal import Rehearsal, RehearsalFailed
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import plans
from hearthkey.core.sentences.words import FORMS
from hearthkey.services import choosing_connect, looking
from hearthkey.services.bundling import Written
from hearthkey.services.house import House
from hearthkey.services.reading_forms import recognise
from hearthkey.services.rehearsing import LARGEST

_MOST_FILES = 99


def export_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Rehearse a form and write it."""
    chosen = looking.waiting(looking.find(house.register.passes(), arguments.device))
    form = Form(arguments.form)
    _choose(house, arguments)
    if form is Form.PROFILE and house.register.connect_choices().signer == BY_CA:
        asking.unlock(house, arguments, teller)
    done = house.exporting.export(chosen, form, arguments.into, picture=arguments.picture, progress=teller.progress)
    told = [Caution("employer", "")]
    if form is Form.PROFILE and house.register.connect_choices().own_wifi:
        told.append(Caution("wifi-names-readable", ""))
    if form is Form.SCRIPT:
        told.append(Caution("script-not-run", ""))
    teller.cautions(told)
    title = f"{chosen.person} {chosen.device}"
    teller.result(
        [
            *done.changes.files,
            f"Opens with the passphrase of {chosen.title} only, said another way: hearthkey show '{title}' --words",
            f"Once the device has it: hearthkey hand-over '{title}'",
        ],
        {
            "device": chosen.title,
            "form": form.value,
            "files": list(done.changes.files),
            "rehearsal": _steps(done.rehearsal),
        },
    )


def _choose(house: House, arguments: Namespace) -> None:
    """Remember what was said about profiles; what was not said stays as it is."""
    before = house.register.connect_choices()
    chosen = choices(
        by_itself=before.by_itself if arguments.by_itself is None else arguments.by_itself,
        own_wifi=before.own_wifi if arguments.own_wifi is None else arguments.own_wifi,
        signer=before.signer if arguments.signed_by is None else arguments.signed_by,
    )
    choosing_connect.keep(house.register, house.clock, chosen)


def hand_over_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Erase a key here."""
    plan = house.handing_over.preview(looking.find(house.register.passes(), arguments.device))
    told = str(plans.hand_over(plan))
    if arguments.plan:
        teller.result([told], {"plan": told})
        return
    teller.aside(told)
    asking.agree(arguments, teller, "Has the device got it?")
    changes = house.handing_over.apply(plan)
    teller.cautions(changes.cautions)
    teller.result([changes.sentence], {"device": plan.chosen.title, "serial": plan.chosen.serial, "key_erased": True})


def rehearse_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Rehearse waiting bundles, or files from disk."""
    if arguments.file:
        passed = [_rehearse_files(house, arguments, teller)]
    elif arguments.device is not None:
        passed = _rehearse_device(house, arguments, teller)
    else:
        raise Refused("word-missing", what="DEVICE or --file FILE")
    lines = [line for one in passed for line in _lines(one)]
    teller.result(lines, {"rehearsals": [{"form": one.form, "steps": _steps(one)} for one in passed]})


def _rehearse_device(house: House, arguments: Namespace, teller: Teller) -> list[Rehearsal]:
    chosen = looking.waiting(looking.find(house.register.passes(), arguments.device))
    teller.progress("opening-bundle", title=chosen.title)
    bundle = house.bundling.open(chosen)
    passed = []
    for form in [Form(arguments.form)] if arguments.form else list(Form):
        teller.progress("rehearsing", form=form.value)
        files = house.bundling.write(bundle, form)
        passed.append(_shown(house, teller, form, files, bundle.passphrase, chosen.identity))
    return passed


def _rehearse_files(house: House, arguments: Namespace, teller: Teller) -> Rehearsal:
    files = read_files(house, arguments.file)
    form = Form(arguments.form) if arguments.form else recognise(files)
    secret = asking.passphrase(arguments, "Passphrase of the bundle")
    teller.progress("rehearsing", form=form.value)
    return _shown(house, teller, form, files, secret, None)


def _shown(
    house: House, teller: Teller, form: Form, files: Sequence[Written], secret: Secret[str], identity: str | None
) -> Rehearsal:
    """Rehearse; a failure shows the steps that went well before it."""
    try:
        return house.rehearsing.rehearse(form, files, secret, identity=identity)
    except RehearsalFailed as error:
        if not teller.as_json:
            for line in _lines(error.rehearsal):
                teller.aside(line)
        raise


def read_files(house: House, paths: Sequence[Path]) -> list[Written]:
    """Read files that somebody else may have written, within limits.

    Raises:
        Refused: too-many-files, file-missing, file-too-large, file-not-a-file.
        Unavailable: as the disk.
    """
    if len(paths) > _MOST_FILES:
        raise Refused("too-many-files", limit=_MOST_FILES)
    return [Written(path.name, house.files.read(path, LARGEST)) for path in paths]


def _steps(rehearsal: Rehearsal) -> list[dict[str, object]]:
    return [{"step": one.name, "passed": one.passed, "seen": one.seen} for one in rehearsal.steps]


def _lines(rehearsal: Rehearsal) -> list[str]:
    said = FORMS[Form(rehearsal.form)]
    head = (
        f"{said[0].upper()}{said[1:]} gets in:" if rehearsal.passed else f"{said[0].upper()}{said[1:]} does not get in:"
    )
    return [head, *(f"  {'ok  ' if one.passed else 'stop'}  {one.name:10} {one.seen}" for one in rehearsal.steps)]
