"""What is said of templates where nothing went wrong: in the diary, and as a caution."""

from __future__ import annotations

from hearthkey.core.templates import Template

CAUTIONS = {
    "template-key-in-clear": "What {subject} writes holds the device’s private key without a passphrase. Whoever gets "
    "hold of the file gets in as that device. Carry it by hand and delete it afterwards, or use the slot "
    "device_key_sealed, which is under the bundle’s passphrase.",
}


def saved(template: Template, *, replaced: bool) -> str:
    """A template was kept."""
    what = "was written anew" if replaced else "is kept with the household"
    return f"The template {template.name}, for the {template.of}, {what}."


def forgotten(template: Template) -> str:
    """A template was forgotten."""
    return (
        f"The template {template.name}, for the {template.of}, was forgotten. Files made from it stay where they are."
    )


def written(template: Template, title: str | None, file_name: str) -> str:
    """A template was rendered into a file.

    Args:
        title: whose device; None for the gateway.
    """
    whom = "the gateway" if title is None else title
    return f"The template {template.name} was written for {whom}, as {file_name}."
