"""`hearthkey template` and `hearthkey secrets`."""

from __future__ import annotations

from argparse import Namespace
from dataclasses import replace

from hearthkey.cli import asking
from hearthkey.cli.teller import Teller
from hearthkey.core.errors import Refused
from hearthkey.core.templates import DEVICE, GATEWAY, LONGEST_TEXT, Template
from hearthkey.services import looking
from hearthkey.services.house import House
from hearthkey.services.stopping import SHARED_SECRET
from hearthkey.services.writing_templates import WritingTemplates


def template_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Show, keep, try, write or forget the householder's own templates."""
    act = _ACTS[arguments.act]
    act(house, arguments, teller)


def _list(house: House, arguments: Namespace, teller: Teller) -> None:
    del arguments
    found = house.templating.all()
    lines = [f"{one.name}  for the {one.of}, writes {one.file_stem}.{one.ending}" for one in found]
    teller.result(
        lines or ["There is no template yet. hearthkey template slots shows what one can say."],
        {"templates": [{"name": one.name, "of": one.of, "ending": one.ending} for one in found]},
    )


def _slots(house: House, arguments: Namespace, teller: Teller) -> None:
    chosen = None
    if arguments.device is not None:
        chosen = looking.newest(looking.find(house.register.passes(), arguments.device))
    of = GATEWAY if arguments.of_gateway else DEVICE
    found = house.templating.slots(of, chosen)
    wide = max(len(one.name) for one in found)
    teller.result(
        [f"{one.name:{wide}}  {one.meaning}  {one.today}" for one in found],
        {"slots": [{"name": one.name, "meaning": one.meaning, "today": one.today} for one in found]},
    )


def _keep(house: House, arguments: Namespace, teller: Teller) -> None:
    if arguments.name is None or arguments.file is None:
        raise Refused("template-words-missing")
    text = house.files.read(arguments.file, LONGEST_TEXT).decode("utf-8", "replace")
    plan = house.templating.preview_save(
        name=arguments.name,
        of=GATEWAY if arguments.of_gateway else DEVICE,
        file_stem=arguments.file_stem or (arguments.name if arguments.of_gateway else "{device}"),
        ending=arguments.ending or "txt",
        text=text,
    )
    changes = house.templating.save(plan)
    teller.cautions(changes.cautions)
    teller.result([changes.sentence], {"done": changes.sentence})


def _try(house: House, arguments: Namespace, teller: Teller) -> None:
    template = _found(house, arguments)
    chosen = None
    if template.of == DEVICE and arguments.device is not None:
        chosen = looking.newest(looking.find(house.register.passes(), arguments.device))
    shown = house.templating.preview(template, chosen)
    teller.cautions(shown.cautions)
    teller.result([f"{shown.file_name}:", shown.text], {"file_name": shown.file_name, "text": shown.text})


def _write(house: House, arguments: Namespace, teller: Teller) -> None:
    template = _found(house, arguments)
    if template.of == DEVICE and arguments.device is None:
        raise Refused("template-device-missing", name=template.name)
    chosen = None
    if template.of == DEVICE:
        chosen = looking.newest(looking.find(house.register.passes(), arguments.device))
    writing = WritingTemplates(house.register, house.clock, house.templating, house.files)
    changes = writing.write(template, chosen, arguments.into)
    teller.cautions(changes.cautions)
    teller.result(changes.files, {"done": changes.sentence, "files": list(changes.files)})


def _forget(house: House, arguments: Namespace, teller: Teller) -> None:
    plan = house.templating.preview_forget(_found(house, arguments).name)
    changes = house.templating.forget(plan)
    teller.result([changes.sentence], {"done": changes.sentence})


def _found(house: House, arguments: Namespace) -> Template:
    if arguments.name is None:
        raise Refused("template-words-missing")
    return house.templating.find(arguments.name)


_ACTS = {"list": _list, "slots": _slots, "keep": _keep, "try": _try, "write": _write, "forget": _forget}


def secrets_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Turn secrets beside the certificates on or off, or make the shared one anew."""
    if arguments.renew:
        plan = house.extra_secrets.preview_renewal()
        teller.aside(f"To be told the new one: {', '.join(plan.touched) or 'nobody'}.")
        asking.agree(arguments, teller, "Make it anew?")
        changes = house.extra_secrets.renew(plan)
        teller.result([changes.sentence], {"done": changes.sentence, "touched": list(plan.touched)})
        return
    options = house.register.pack_options()
    wanted = replace(
        options,
        extra_secret=options.extra_secret if arguments.devices is None else arguments.devices,
        household_secret=options.household_secret if arguments.household is None else arguments.household,
    )
    if wanted != options:
        changes = house.targeting.set_options(wanted)
        teller.aside(changes.sentence)
    shared = house.register.extra_secrets().get(SHARED_SECRET)
    outside = shared is not None and shared.known_outside
    teller.result(
        [
            f"A secret for each device (RFC 8784): {'on' if wanted.extra_secret else 'off'}",
            f"One that all devices share: {'on' if wanted.household_secret else 'off'}"
            + (", known to a device that was stopped: make it anew" if outside else ""),
        ],
        {"devices": wanted.extra_secret, "household": wanted.household_secret, "known_outside": outside},
    )
