"""Sentences about where the gateway is, about delivering to it, and about spare stop lists."""

from __future__ import annotations

_BEFORE = "The gateway goes on with what it had before."

REFUSED: dict[str, tuple[str, str]] = {
    "target-way-unknown": ("Files get to a gateway by {known}, not by {text}.", "Choose one of them."),
    "target-folder-missing": (
        "The gateway’s files need a folder to go to.",
        "Name the folder: at the gateway for ssh, on this computer for a stick or a share.",
    ),
    "target-folder-odd": ("The folder’s name has a character in it that cannot be seen: {text}.", "Type it anew."),
    "target-reload-odd": (
        "The command after a delivery has a character in it that cannot be seen, or is over 500 characters: {text}.",
        "Keep it to one line. What is longer fits into a script at the gateway.",
    ),
    "target-host-missing": ("A gateway that is reached by ssh needs a name or an address.", "Give it."),
    "target-host-odd": (
        "{text} is no host that ssh could take.",
        "Give the name or address alone; user and port have fields of their own.",
    ),
    "target-user-odd": ("{text} is no user name that ssh could take.", "Give the name of the user at the gateway."),
    "target-port-odd": ("{number} is no port; they go from 1 to 65535.", "Give the port of ssh, or leave it empty."),
    "practice-stays-home": (
        "This is the practice household. Nothing of it is ever delivered to a gateway.",
        "Write the gateway’s files into a folder to look at them, or found your own household.",
    ),
    "no-target": (
        "Nobody has said yet where the gateway is.",
        "Say it once: in the window under Gateway, or hearthkey gateway --ssh HOST --folder FOLDER.",
    ),
    "gateway-clock-behind": (
        "The gateway’s clock says {there} UTC, and the list to deliver begins on {begins} UTC: it would let nobody in.",
        "See which of the two clocks is wrong and set it. Nothing was changed.",
    ),
    "gateway-list-newer": (
        "The gateway holds list {number}, newer than any that is here. Whom it stops is stopped here now.",
        "Unlock with the passphrase; the next list is signed above it and delivered.",
    ),
    "gateway-list-of-another": (
        (
            "The gateway’s list is of a CA that is not known here. Nothing was changed there, for a list from here "
            "could let revoked devices in again and lock newer ones out. Until this is settled, no stop gets there."
        ),
        (
            "If an older sealed copy was brought back, bring back the newest. If the gateway was another household’s, "
            "choose another folder, or empty this one by hand."
        ),
    ),
    "gateway-secret-lost": (
        "The keyring has lost what the gateway’s key is encrypted under, so its files cannot be made. " + _BEFORE,
        "Bring the keyring back, or give the gateway a new certificate.",
    ),
    "host-key-differs": (
        "The gateway shows the host key {seen}, not {wanted}. Nothing was sent.",
        "Look at the gateway itself which one is its own: ssh-keygen -l -f on its host key file.",
    ),
    "passphrase-needed-by": (
        "Everything is delivered. But on {day} nobody gets in any more without somebody who knows the passphrase.",
        "Unlock before that day; the list is signed anew and delivered. An ending certificate has to be renewed.",
    ),
    "template-words-missing": (
        "It is not said which template, or from which file.",
        "Name it; for keep, also --file: hearthkey template keep NAME --file FILE.",
    ),
    "template-device-missing": ("{name} is for devices.", "Say for which: --device DEVICE."),
    "no-household-secret": (
        "This household has no secret that all devices share.",
        "Turn it on first: hearthkey secrets --household.",
    ),
    "no-spare-list": (
        "No list that was signed in advance stops {title} without letting somebody else back in.",
        "Unlock with the passphrase and stop it then, or stop everybody at once for now.",
    ),
    "no-list-for-everybody": (
        "No list that was signed in advance stops everybody; or everybody is stopped already.",
        "Unlock with the passphrase and stop them then.",
    ),
}

UNAVAILABLE: dict[str, tuple[str, str]] = {
    "notices-absent": ("Nothing on this desktop shows notices ({seen}).", "The same stands on the board."),
    "gateway-read-back": (
        f"What was read back from the gateway is not what was sent ({{name}}). {_BEFORE}",
        "Do it again. If it stays so, its disk or somebody at the gateway changes files.",
    ),
    "reload-failed": (
        "The gateway’s command ended with {status} and said: {said}. The set of before was put back.",
        "Try the command at the gateway, then deliver again.",
    ),
    "reload-failed-list-kept": (
        "The new list lies at the gateway, but the command after it ended with {status} and said: {said}.",
        "Try the command at the gateway, then deliver again. Until then whoever was stopped may still get in.",
    ),
}
