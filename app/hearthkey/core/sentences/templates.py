"""What is said of templates where nothing went wrong: in the diary, and as a caution."""

from __future__ import annotations

from hearthkey.core.phrases import Phrase
from hearthkey.core.templates import DEVICE, GATEWAY, Template

CAUTIONS = {
    "template-key-in-clear": "What {subject} writes holds the device’s private key without a passphrase. Whoever gets "
    "hold of the file gets in as that device. Carry it by hand and delete it afterwards, or use the slot "
    "device_key_sealed, which is under the bundle’s passphrase.",
}


def saved(template: Template, *, replaced: bool) -> Phrase:
    """A template was kept."""
    facts = {"name": template.name, "of": _OF[template.of]}
    if replaced:
        return Phrase("The template {name}, {of}, was written anew.", facts)
    return Phrase("The template {name}, {of}, is kept with the household.", facts)


def forgotten(template: Template) -> Phrase:
    """A template was forgotten."""
    facts = {"name": template.name, "of": _OF[template.of]}
    return Phrase("The template {name}, {of}, was forgotten. Files made from it stay where they are.", facts)


def written(template: Template, title: str | None, file_name: str) -> Phrase:
    """A template was rendered into a file.

    Args:
        title: whose device; None for the gateway.
    """
    facts = {"name": template.name, "whom": title, "file": file_name}
    if title is None:
        return Phrase("The template {name} was written for the gateway, as {file}.", facts)
    return Phrase("The template {name} was written for {whom}, as {file}.", facts)


_OF = {GATEWAY: Phrase("for the gateway"), DEVICE: Phrase("for the device")}
