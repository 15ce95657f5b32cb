"""Sentences about the forms that are profiles, scripts and PEM files."""

from __future__ import annotations

REFUSED: dict[str, tuple[str, str]] = {
    "wifi-name-unfit": (
        "No Wi-Fi is called “{text}”: a name has {limit} octets at most, and nothing that cannot be seen.",
        "Copy the name as a phone shows it.",
    ),
    "wifi-names-many": ("{count} Wi-Fis are more than {limit}.", "Name only those at home."),
    "signer-unknown": ("Nobody called {text} signs profiles; there are {known}.", "Choose one of them."),
    "profile-unreadable": (
        "This is no configuration profile that can be read ({seen}).",
        "Write it again.",
    ),
    "profile-has-passphrase": (
        "This profile has its passphrase inside: whoever has the file gets in.",
        "Throw it away and give the device a new pass.",
    ),
    "pem-set-incomplete": (
        "These are no whole set of PEM files: {keys} with a key, {certificates} with certificates.",
        "Name all of them, the device’s certificate before the CA’s, or write them again.",
    ),
    "script-incomplete": (
        "A set-up script comes with one PKCS#12 file beside it, and these are {names}.",
        "Name both, or write them again.",
    ),
    "script-unreadable": ("What this script says cannot be read back.", "Write it again."),
    "signature-wrong": (
        "The signature on this profile is not this household’s, or the profile was changed after it was signed.",
        "Write it again.",
    ),
}
