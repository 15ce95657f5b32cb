"""Sentences about the way to the gateway being in the way."""

from __future__ import annotations

_BEFORE = "The gateway goes on with what it had before."
_WHOLE = "The gateway holds one whole set, the old or the new."

CANCELLED = (
    f"The visit to the gateway was ended. {_WHOLE}",
    "Deliver again when it suits; it goes on from what is there.",
)
"""Nothing else can be cancelled once it has begun."""

REFUSED: dict[str, tuple[str, str]] = {
    "host-key-unknown": (
        "The host key of {where} was never compared, so nothing was sent to it.",
        "Compare it once: in the window under Gateway, or hearthkey gateway --ssh HOST --folder FOLDER.",
    ),
    "host-key-changed": (
        "{where} shows another host key than before: {seen}. It may be another computer, so nothing was sent to it.",
        "If the gateway was set up anew, compare the key at the gateway itself and say anew where it is. If not, wait.",
    ),
    "no-command-here": (
        "{where} is a folder; there is nobody in it who could run {text}.",
        "Leave the command empty, or reach the gateway by ssh.",
    ),
}

UNAVAILABLE: dict[str, tuple[str, str]] = {
    "gateway-unreachable": (
        f"{{where}} cannot be reached ({{seen}}). {_BEFORE}",
        "See whether it is switched on and this computer is in its network, then deliver again.",
    ),
    "gateway-name-unknown": (
        f"Nobody knows the address of {{where}} ({{seen}}). {_BEFORE}",
        "See whether the name is spelt right and this computer is in the home network.",
    ),
    "gateway-refused-us": (
        f"{{where}} does not let this computer in ({{seen}}). {_BEFORE}",
        "See whether ssh gets there by itself, without a question; a key with a passphrase has to be in the agent.",
    ),
    "gateway-silent": (
        f"{{where}} has stopped answering; its last words: {{seen}}. {_WHOLE}",
        "Deliver again; if it stays silent, look at the gateway itself.",
    ),
    "gateway-cut": (
        f"The connection to {{where}} ended in the middle ({{seen}}). {_WHOLE}",
        "Deliver again; it goes on from what is there.",
    ),
    "gateway-full": (
        f"The disk of {{where}} is full ({{seen}}). {_BEFORE}",
        "Make room there, then deliver again.",
    ),
    "gateway-read-only": (
        f"Nothing can be written to {{where}} ({{seen}}). {_BEFORE}",
        "See to the permissions of that folder, then deliver again.",
    ),
    "gateway-folder-missing": (
        f"The folder {{where}} is not there ({{seen}}). {_BEFORE}",
        "Make it at the gateway, put the stick in or mount the share, or name another folder.",
    ),
    "gateway-odd": (
        f"{{where}} gave an answer that makes no sense here: {{seen}}. {_WHOLE}",
        "See whether sftp gets there by itself and can write into that folder.",
    ),
    "ssh-missing": (
        f"This computer has no {{seen}}, so the gateway cannot be reached by ssh. {_BEFORE}",
        "Install the OpenSSH client (Debian: openssh-client), or deliver by a folder.",
    ),
}
