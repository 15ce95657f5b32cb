"""What the window asks about the householder's own templates."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QObject

from hearthkey.core.copies import CopyWay
from hearthkey.core.errors import Refused
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes
from hearthkey.core.slot_list import Listed
from hearthkey.core.templates import DEVICE, Template, checked
from hearthkey.services.templating import Holds, Shown
from hearthkey.services.writing_templates import WritingTemplates
from hearthkey.ui.gateway_errands import GatewayErrands
from hearthkey.ui.tasks import Failed, Then


@dataclass(frozen=True)
class OwnForm:
    """A kept device's template as one more form of a bundle.

    Args:
        template: as it is kept.
        holds: what of the household's secrets it writes.
    """

    template: Template
    holds: Holds


class TemplateErrands(GatewayErrands):
    """The templates' part of what the window asks; a device is named by the serial of its pass."""

    def templates(self, context: QObject, then: Then[tuple[Template, ...]]) -> None:
        """Those that are kept, by name."""
        self._ask(lambda: tuple(self._here().templating.all()), context, then, None)

    def own_forms(self, context: QObject, then: Then[tuple[OwnForm, ...]]) -> None:
        """The kept templates for devices; one that can no longer be read is left out."""

        def work() -> tuple[OwnForm, ...]:
            templating, found = self._here().templating, []
            for one in templating.all():
                if one.of == DEVICE:
                    try:
                        found.append(OwnForm(one, templating.holds(one)))
                    except Refused:  # its page says what is wrong with it
                        continue
            return tuple(found)

        self._ask(work, context, then, None)

    def slots(self, of: str, serial: str | None, context: QObject, then: Then[tuple[Listed, ...]]) -> None:
        """The slots of a template with today's values, secrets hidden.

        Args:
            of: ``gateway`` or ``device``.
            serial: whose values; None shows marks in a device's place.
        """

        def work() -> tuple[Listed, ...]:
            return self._here().templating.slots(of, self._pass(serial), opening=False)

        self._ask(work, context, then, None)

    def preview(
        self, template: Template, serial: str | None, context: QObject, then: Then[Shown], failed: Failed
    ) -> None:
        """What a template would write, with secrets hidden."""
        self._ask(lambda: self._here().templating.preview(template, self._pass(serial)), context, then, failed)

    def keep(self, template: Template, context: QObject, then: Then[Changes] | None, failed: Failed) -> None:
        """Check a template and keep it with the household, in the place of one of the same name."""

        def work() -> Changes:
            templating = self._here().templating
            plan = templating.preview_save(
                name=template.name,
                of=template.of,
                file_stem=template.file_stem,
                ending=template.ending,
                text=template.text,
            )
            return templating.save(plan)

        self._change(work, context, then, failed)

    def forget(self, name: str, context: QObject, then: Then[Changes] | None, failed: Failed) -> None:
        """Forget a template."""

        def work() -> Changes:
            templating = self._here().templating
            return templating.forget(templating.preview_forget(name))

        self._change(work, context, then, failed)

    def write(
        self,
        template: Template,
        serial: str | None,
        folder: Path,
        context: QObject,
        then: Then[Changes],
        failed: Failed,
        *,
        way: CopyWay = CopyWay.FOLDER,
        place: str = "",
    ) -> None:
        """Check a template and write what it renders to into a folder; way and place as in `WritingTemplates`."""

        def work() -> Changes:
            house = self._here()
            writing = WritingTemplates(house.register, house.clock, house.templating, house.files)
            proper = checked(
                name=template.name,
                of=template.of,
                file_stem=template.file_stem,
                ending=template.ending,
                text=template.text,
            )
            return writing.write(proper, self._pass(serial), folder, way=way, place=place)

        self._ask(work, context, then, failed)

    def _pass(self, serial: str | None) -> Pass | None:
        if serial is None:
            return None
        for one in self._here().register.passes():
            if one.serial == serial:
                return one
        raise Refused("pass-unknown", text=serial)
