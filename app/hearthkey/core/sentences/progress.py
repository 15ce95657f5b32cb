"""What is being done right now, for anything that takes longer than a moment."""

from __future__ import annotations

from hearthkey.core.sentences.sentence import Sentence

_STEPS = {
    "making-ca": "Making the CA key",
    "making-gateway": "Making the gateway’s key and certificate",
    "guarding-ca": "Encrypting the CA key under the passphrase (this is slow on purpose)",
    "keeping-secrets": "Putting secrets into the {place}",
    "unlocking": "Opening the CA key (this is slow on purpose)",
    "making-keys": "Making {count} keys",
    "sealing": "Sealed {done} of {count}",
    "opening-bundle": "Opening the bundle of {title}",
    "writing-form": "Writing the {form}",
    "rehearsing": "Rehearsing the {form}",
    "saving": "Saving",
    "reaching-gateway": "Reaching the gateway ({where})",
    "uploading": "Sending {count} files",
    "reloading": "Running the gateway’s command",
    "reading-back": "Reading back what is there",
    "sealing-copy": "Writing a sealed copy",
    "opening-copy": "Opening the copy (this is slow on purpose)",
    "opening-copied-key": "Opening the CA key in it (this is slow on purpose)",
    "comparing-copy": "Comparing what is in it",
    "reading-folder": "Reading the folder",
    "looking-over": "Looking at {count} files",
    "renewing": "Renewing {title} ({done} of {count})",
    "touring": "{step}",
}

_ONE = {"making-keys": "Making one key", "uploading": "Sending one file", "looking-over": "Looking at one file"}


def step(name: str, facts: dict[str, object]) -> Sentence:
    """The sentence for a step."""
    template = _ONE.get(name) if facts.get("count") == 1 else None
    return Sentence(template or _STEPS[name], {"place": "keyring", **facts})
