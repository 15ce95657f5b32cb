"""Words for values that have a fixed set of them."""

from __future__ import annotations

from hearthkey.core.revocation import Reason

# By value, for `core.bundle.Form` is text too: who only lists dates then need not load all that a bundle is.
FORMS = {
    "bundle": "a bundle file",
    "pkcs12": "a PKCS#12 file",
    "archive": "an archive",
    "codes": "codes",
    "profile": "a configuration profile",
    "script": "a set-up script with its PKCS#12 file",
    "pem": "PEM files",
}
"""How each `core.bundle.Form` is called."""

REASONS = {
    Reason.KEY_COMPROMISE: "it was lost or stolen",
    Reason.AFFILIATION_CHANGED: "its owner left the household",
    Reason.SUPERSEDED: "another pass took its place",
    Reason.CESSATION_OF_OPERATION: "it is not used any more",
    Reason.CERTIFICATE_HOLD: "it is stopped for now",
}

_KINDS = ("a text", "a text of many lines", "a number", "a list", "a list of devices", "a device", "a yes or no")
"""As in `core.slots.SlotKind`."""

FIXED = {
    "state": ("waiting", "in use", "stopped", "revoked", "ended"),
    "setting": ("name", "gateway host", "home subnets", "DNS servers", "tunnel", "tunnel subnet", "identity suffix"),
    "seen": _KINDS,
    "wanted": _KINDS,
    "form": tuple(FORMS),
    "step": ("read", "open", "path", "name", "usage", "dates", "list", "handshake"),
    "place": ("keyring", "key file"),
    "of": ("gateway", "device"),
    "what": (
        "household name",
        "host name",
        "gateway host",
        "home subnet",
        "tunnel subnet",
        "identity suffix",
        "outer interface",
        "tunnel interface",
        "template name",
        "person’s name",
        "device’s name",
        "CA name",
        "tags",
        "words in one tag",
    ),
}
"""By the name of a fact: the words that it can have, where it has a fixed set of them. A shell translates each."""
