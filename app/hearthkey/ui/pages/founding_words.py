"""Where on the founding page each trouble is said, and in which words where a command stood before."""

from __future__ import annotations

from enum import Enum

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.sentences import errors
from hearthkey.core.sentences.sentence import Sentence
from hearthkey.ui.text import mended, said


class Spot(Enum):
    """A place on the page."""

    NAME = "name"
    HOST = "host"
    HOME = "home"
    TUNNEL = "tunnel"
    DNS = "dns"
    SUFFIX = "suffix"
    KEPT = "kept"
    WORDS = "words"
    PAGE = "page"


_BY_WHAT = {
    "household name": Spot.NAME,
    "gateway host": Spot.HOST,
    "home subnet": Spot.HOME,
    "tunnel subnet": Spot.TUNNEL,
    "identity suffix": Spot.SUFFIX,
}
"""By the fact `what`."""

_BY_CODE = {
    "gateway-unreachable": Spot.HOST,
    "subnets-missing": Spot.HOME,
    "subnets-overlap": Spot.TUNNEL,
    "subnet-too-small": Spot.TUNNEL,
    "no-quiet-subnet": Spot.TUNNEL,
    "dns-malformed": Spot.DNS,
    "suffix-too-long": Spot.SUFFIX,
    "passphrase-empty": Spot.WORDS,
    "passphrase-not-ascii": Spot.WORDS,
    "passphrase-too-short": Spot.WORDS,
    "passphrase-too-long": Spot.WORDS,
    "passphrase-weak": Spot.WORDS,
    "keyring-locked": Spot.KEPT,
    "keyring-silent": Spot.KEPT,
    "keyring-absent": Spot.KEPT,
    "keyring-unsafe": Spot.KEPT,
    "keyring-failed": Spot.KEPT,
}

_HERE = {
    "subnet-too-wide": 'Give the subnet at home; for all traffic choose "everything" below.',
    "subnet-too-small": "Give a /24, or leave it empty to have one proposed.",
    "subnets-missing": "Name at least one, for instance 198.51.100.0/24. The router shows it.",
    "subnets-overlap": "Give subnets that lie apart, or have another quiet one proposed.",
    "no-quiet-subnet": "Name a free subnet.",
    "suffix-too-long": "Give a shorter one.",
    "keyring-absent": "Open the app in a desktop with a keyring, or keep the key in a file.",
    "keyring-unsafe": "Set the desktop’s own keyring, or keep the key in a file.",
    "household-exists": "Close this window and open it again; it shows the household that is there.",
}
"""By code: the way on from this page."""


def spot_of(error: HearthkeyError, tunnel: str) -> Spot:
    """Where an error belongs.

    Args:
        tunnel: the tunnel subnet as it is typed.
    """
    if error.code == "subnets-overlap" and tunnel and tunnel not in {error.facts.get("one"), error.facts.get("other")}:
        return Spot.HOME
    found = _BY_CODE.get(error.code) or _BY_WHAT.get(str(error.facts.get("what", "")))
    return found or Spot.PAGE


def told(error: HearthkeyError) -> str:
    """What an error means and what to do on this page."""
    here = _HERE.get(error.code)
    if here is None:
        return mended(error)
    return f"{said(errors.say(error).means)} {said(Sentence(here, error.facts))}"
