"""Keeps the householder's own templates, and renders them for the gateway and for devices."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import Enum

from hearthkey.core.errors import Refused
from hearthkey.core.names import file_stem
from hearthkey.core.network import Caution
from hearthkey.core.passes import LIVING, Pass
from hearthkey.core.plans import Changes
from hearthkey.core.sentences import templates as sentences
from hearthkey.core.slot_list import Listed, listed
from hearthkey.core.slots import Value, hidden, slots_of
from hearthkey.core.templates import DEVICE, GATEWAY, Template, checked, file_name, kind_of_template
from hearthkey.formats.template import Compiled, compile_text, preview, render, writes_device_key
from hearthkey.services.bundling import Written
from hearthkey.services.filling_slots import KEYS, FillingSlots
from hearthkey.services.gateway_ports import GatewayRegister
from hearthkey.services.ports import Clock
from hearthkey.services.writing_diary import note


@dataclass(frozen=True)
class SavePlan:
    """A template about to be kept; it was read and has no mistake.

    Args:
        template: as it will be kept.
        replaces: the one of that name, which it takes the place of.
        slots_used: names of the slots in it.
        cautions: what the householder should know first.
    """

    template: Template
    replaces: Template | None
    slots_used: frozenset[str]
    cautions: tuple[Caution, ...]


@dataclass(frozen=True)
class ForgetPlan:
    """A template about to be forgotten."""

    template: Template


@dataclass(frozen=True)
class Shown:
    """What a template renders to, fit for a screen.

    Args:
        file_name: of the file it would be.
        text: with every secret hidden.
        cautions: what the householder should know first.
    """

    file_name: str
    text: str
    cautions: tuple[Caution, ...]


class Holds(Enum):
    """What of the household's secrets stands in what a template renders to; the gravest one counts."""

    KEY = "a private key without a passphrase"
    EXTRA = "a secret beside the certificate"
    SEALED_KEY = "a private key under the bundle's passphrase"
    NOTHING = "nothing secret"


class Templating:
    """The verbs around "template"."""

    def __init__(self, register: GatewayRegister, clock: Clock, filling: FillingSlots) -> None:
        self._register = register
        self._clock = clock
        self._filling = filling
        self._shapes: dict[tuple[str, str], Value] = {}

    def all(self) -> list[Template]:
        """The household's templates, by name."""
        return self._register.templates()

    def find(self, text: str) -> Template:
        """A template by its name, in capital or small letters.

        Raises:
            Refused: template-unknown.
        """
        wanted = " ".join(text.split()).casefold()
        for one in self.all():
            if one.name.casefold() == wanted:
                return one
        raise Refused("template-unknown", text=text[:80], known=tuple(one.name for one in self.all()) or ("none yet",))

    def preview_save(self, *, name: str, of: str, file_stem: str, ending: str, text: str) -> SavePlan:
        """Check and read a template.

        Raises:
            Refused: as `core.templates.checked` and `formats.template.compile_text`.
        """
        made = checked(name=name, of=of, file_stem=file_stem, ending=ending, text=text)
        compiled = compile_text(made.text, made.of)
        same = [one for one in self.all() if one.name.casefold() == made.name.casefold()]
        return SavePlan(made, same[0] if same else None, compiled.slots_used, _cautions(made, compiled))

    def save(self, plan: SavePlan) -> Changes:
        """Keep a template with the household.

        Raises:
            Unavailable: as the register.
        """
        sentence = sentences.saved(plan.template, replaced=plan.replaces is not None)
        with self._register.change() as change:
            if plan.replaces is not None:
                change.drop_template(plan.replaces.name)
            change.keep_template(plan.template)
            note(self._register, change, verb="template", sentence=sentence, now=self._clock.now())
        return Changes(sentence, cautions=plan.cautions)

    def preview_forget(self, name: str) -> ForgetPlan:
        """Decide which template goes.

        Raises:
            Refused: template-unknown.
        """
        return ForgetPlan(self.find(name))

    def forget(self, plan: ForgetPlan) -> Changes:
        """Forget a template; files made from it stay.

        Raises:
            Unavailable: as the register.
        """
        sentence = sentences.forgotten(plan.template)
        with self._register.change() as change:
            change.drop_template(plan.template.name)
            note(self._register, change, verb="template", sentence=sentence, now=self._clock.now())
        return Changes(sentence)

    def slots(self, of: str, chosen: Pass | None = None, *, opening: bool = True) -> tuple[Listed, ...]:
        """The slots of a template with today's values, secrets hidden.

        Args:
            of: ``gateway`` or ``device``.
            chosen: for a device's template whose values to show; None shows marks. Keys that were handed over are
                listed as nothing.
            opening: open a device's keys, which takes its time, to say how long they are; else that they are here.

        Raises:
            Refused: template-kind-unknown, no-household, gateway-secret-lost, passphrase-lost.
            Unavailable: as the vault.
        """
        slots = slots_of(kind_of_template(of))
        gone = KEYS if chosen is not None and not chosen.key_is_here else frozenset()
        shut = KEYS - gone if chosen is not None and not opening else frozenset()
        wanted = frozenset(slot.name for slot in slots) - gone - shut
        told = listed(slots, self._filling.values(of, chosen, wanted))
        return tuple(replace(one, today="hidden, here until hand-over") if one.name in shut else one for one in told)

    def preview(self, template: Template, chosen: Pass | None = None) -> Shown:
        """Render a template, kept or not yet, with secrets hidden.

        Args:
            chosen: for a device's template whose values to use; None puts marks in their place.

        Raises:
            Refused: as `compile_text`, `render_gateway` and `render_device`.
            Unavailable: as the vault.
        """
        if chosen is not None:
            self._check_for_device(template, chosen)
        compiled = compile_text(template.text, template.of)
        text = preview(compiled, self._values_to_show(template.of, chosen, compiled.slots_used))
        return Shown(self._file_name(template, chosen), text, _cautions(template, compiled))

    def cautions(self, template: Template) -> tuple[Caution, ...]:
        """What the householder should know before a template is kept or written.

        Raises:
            Refused: as `compile_text`.
        """
        return _cautions(template, compile_text(template.text, template.of))

    def holds(self, template: Template) -> Holds:
        """What of the household's secrets stands in what a template renders to.

        Raises:
            Refused: as `compile_text`.
        """
        compiled = compile_text(template.text, template.of)
        if writes_device_key(compiled):
            return Holds.KEY
        secret = {slot.name for slot in slots_of(template.of) if slot.secret}
        if compiled.slots_used & secret or "devices" in compiled.slots_used:
            return Holds.EXTRA
        return Holds.SEALED_KEY if "device_key_sealed" in compiled.slots_used else Holds.NOTHING

    def render_gateway(self, template: Template) -> Written:
        """Render a template for the gateway, secrets and all.

        Raises:
            Refused: template-not-for-this, no-household, gateway-secret-lost; as `compile_text` and
                `formats.template.render`.
            Unavailable: as the vault.
        """
        if template.of != GATEWAY:
            raise Refused("template-not-for-this", name=template.name, of=template.of)
        return self._render(template, None)

    def render_device(self, template: Template, chosen: Pass) -> Written:
        """Render a template for a device, secrets and all: one more form of its bundle.

        Without the slots of the key it can be rendered after hand-over too.

        Raises:
            Refused: template-not-for-this, pass-not-alive; where the key is asked for, pass-handed-over and
                passphrase-lost; as `compile_text` and `formats.template.render`.
            Unavailable: as the vault.
        """
        self._check_for_device(template, chosen)
        return self._render(template, chosen)

    def _values_to_show(self, of: str, chosen: Pass | None, wanted: frozenset[str]) -> dict[str, Value]:
        """Values for the screen: a device's keys are opened once, for their shape, not at every pause of typing."""
        if chosen is None or not chosen.key_is_here:
            return self._filling.values(of, chosen, wanted)
        known = {name: self._shapes[chosen.serial, name] for name in KEYS if (chosen.serial, name) in self._shapes}
        values = hidden(self._filling.values(of, chosen, wanted - known.keys()))
        for name in (KEYS & wanted) - known.keys():
            self._shapes[chosen.serial, name] = values[name]
        return values | known

    def _check_for_device(self, template: Template, chosen: Pass) -> None:
        if template.of != DEVICE:
            raise Refused("template-not-for-this", name=template.name, of=template.of)
        state = chosen.state(self._clock.now())
        if state not in LIVING:
            raise Refused("pass-not-alive", title=chosen.title, state=state.value)

    def _render(self, template: Template, chosen: Pass | None) -> Written:
        compiled = compile_text(template.text, template.of)
        text = render(compiled, self._filling.values(template.of, chosen, compiled.slots_used))
        return Written(self._file_name(template, chosen), text.encode())

    def _file_name(self, template: Template, chosen: Pass | None) -> str:
        if template.of == GATEWAY:
            return file_name(template)
        return file_name(template, "device" if chosen is None else self._stem(chosen))

    def _stem(self, chosen: Pass) -> str:
        """A device in a file name; two whose names come to the same get their codes behind them."""
        code = chosen.identity.partition(".")[0]
        stem = file_stem(chosen.title, code)
        others = {file_stem(one.title, "") for one in self._register.passes() if one.identity != chosen.identity}
        return f"{stem}-{code}" if stem in others else stem


def _cautions(template: Template, compiled: Compiled) -> tuple[Caution, ...]:
    return (Caution("template-key-in-clear", template.name),) if writes_device_key(compiled) else ()
