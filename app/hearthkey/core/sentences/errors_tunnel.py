"""Sentences about what a gateway is told: proposals, lifetimes, the room in the tunnel."""

from __future__ import annotations

_NAMES = "Take a name from the IANA registry of IKEv2 parameters, for instance ENCR_AES_GCM_16 256."
_ANOTHER = "Use one of the key sets compact, broad or suite-384, which offer nothing of the kind."

REFUSED: dict[str, tuple[str, str]] = {
    "transform-unknown": ('"{text}" is not a transform that is known here.', _NAMES),
    "transform-key-length": (
        '{name} was written with the key length "{text}".',
        "Write one of these behind it: {known}. Where none is listed, write the name alone.",
    ),
    "transform-forbidden": (
        "{source} says of {transform} for {protocol}: {level}. Whoever records the tunnel may one day read it.",
        _ANOTHER,
    ),
    "transform-unmeasured": (
        "How much room {text} takes in a packet is not known here.",
        "Work the MTU out from its RFC, or use one of the key sets, whose sizes are known.",
    ),
    "proposal-incomplete": (
        "A proposal for {protocol} lacks a transform of type {missing}, so no device could agree to it.",
        "Add one, or use one of the key sets as it is.",
    ),
    "proposal-readable": ("A proposal for {protocol} would encrypt nothing.", _ANOTHER),
    "proposal-unprotected": (
        "A proposal for {protocol} encrypts with {transform} and lets anybody on the way alter it.",
        "Add an integrity transform, for instance AUTH_HMAC_SHA2_256_128.",
    ),
    "proposal-integrity-twice": (
        "A proposal for {protocol} has an integrity transform or another cipher beside {transform}, which does both.",
        "Leave it out, or make a proposal of its own of it.",
    ),
    "dh-group-unknown": ('"{text}" is not a group that is known here.', "Choose one of {known}."),
    "reauthentication-odd": (
        (
            "Devices cannot be asked to prove themselves anew every {hours} hours; until they do, a stopped one’s open "
            "session lives on."
        ),
        "Choose 1 to {longest} hours.",
    ),
    "outer-mtu-odd": (
        "An outer MTU of {number} octets was asked for; {lowest} to {highest} can be had.",
        "Check the MTU of the line to the internet; it is 1500 or a little less.",
    ),
}
