"""Sentences about bundles, their forms, and whether they get in."""

from __future__ import annotations

_ASK_AGAIN = "Ask whoever made it for a new one, or write it again from the tray."

REFUSED: dict[str, tuple[str, str]] = {
    # rehearsal
    "rehearsal-failed": ("The {form} stopped at the step {step}, so it may not leave.", _ASK_AGAIN),
    "path-untrusted": (
        "The certificate was not signed by this household’s CA ({seen}). The gateway will not let it in.",
        "Check that it belongs to this household.",
    ),
    "path-malformed": (
        "The certificate breaks a rule of RFC 5280 ({seen}). A strict gateway will not let it in.",
        _ASK_AGAIN,
    ),
    "certificate-ended": (
        "The pass has ended ({seen}). The gateway will not let it in.",
        "Give the device a new pass.",
    ),
    "certificate-not-yet": (
        "By this computer’s clock the pass has not begun ({seen}).",
        "Check the clock of this computer, then of the gateway.",
    ),
    "certificate-revoked": (
        "It stands on the revocation list ({seen}). The gateway will not let it in.",
        "If it was only stopped, let it back in first: hearthkey let-in.",
    ),
    "list-missing": ("There is no revocation list to judge by ({seen}).", "Sign one: hearthkey lists --sign."),
    "list-overdue": (
        "The revocation list is past its date ({seen}). A gateway that checks it lets nobody in.",
        "Sign the next one: hearthkey lists --sign, and bring it to the gateway.",
    ),
    "list-not-yet": (
        "The revocation list begins after now, by this computer’s clock ({seen}).",
        "Check the clock of this computer, then of the gateway.",
    ),
    "list-untrusted": (
        "The revocation list is not this household’s ({seen}).",
        "Use the list that hearthkey lists --into writes.",
    ),
    "list-unreadable": ("The revocation list cannot be read.", "Use the list that hearthkey lists --into writes."),
    "usage-wrong": (
        "The certificate is meant for another use than this one.",
        "Use a device’s pass for a device and the gateway’s for the gateway.",
    ),
    "name-differs": (
        "The certificate is about {names}, not about {expected}.",
        "Check that files of two devices were not mixed up.",
    ),
    "certificate-unreadable": ("The certificate cannot be read.", _ASK_AGAIN),
    "key-not-of-certificate": (
        "Key and certificate do not belong together.",
        "Check that files of two devices were not mixed up.",
    ),
    "handshake-failed": ("The {whose} broke the trial connection off ({seen}).", _ASK_AGAIN),
    "key-type-unknown": ("A key of type {text} is not used here.", "Choose one of {known}."),
    "authority-key-type": (
        "A CA key of type {seen} was found; a household’s is {wanted}.",
        "Bring back this household’s own key text.",
    ),
    # keys and PKCS#12
    "key-unreadable": ("The private key cannot be read.", _ASK_AGAIN),
    "key-rounds-absurd": (
        "The file asks for {rounds} rounds of key stretching, more than any honest file does. It was not opened.",
        _ASK_AGAIN,
    ),
    "encryption-unknown": (
        "It is encrypted in a way that is not read here ({algorithm}).",
        "Ask for a file with AES-256 or, for old devices, 3DES.",
    ),
    "container-incomplete": (
        "The PKCS#12 file lacks something. Keys in it: {keys}; certificates: {certificates}.",
        _ASK_AGAIN,
    ),
    "container-unreadable": ("It is not a whole PKCS#12 file.", _ASK_AGAIN),
    # bundle file
    "bundle-empty": ("There is no bundle in it.", _ASK_AGAIN),
    "bundle-contradicts-itself": ("Parts of the bundle belong to different devices or were altered.", _ASK_AGAIN),
    "bundle-foreign": ("Line {line} does not say that this is a bundle.", "Check that it is the right file."),
    "bundle-newer": ("The bundle was written in version {version}, which this app does not know.", "Use a newer app."),
    "bundle-too-large": ("It has {size} octets; a bundle has at most {limit}.", "Check that it is the right file."),
    "bundle-not-text": ("Line {line} is not UTF-8 text.", "The file was damaged on its way. " + _ASK_AGAIN),
    "bundle-hidden-character": ("Line {line} holds a character that cannot be seen ({character}).", _ASK_AGAIN),
    "bundle-line-unreadable": ("Line {line} cannot be read.", "The file was cut off or edited. " + _ASK_AGAIN),
    "bundle-key-missing": ("{key} is missing (looked for from line {line} on).", _ASK_AGAIN),
    "bundle-key-unknown": (
        "Line {line}: nothing is known of {key}.",
        "The file was edited, or made by a newer app. " + _ASK_AGAIN,
    ),
    "bundle-value-unfit": ("Line {line}: what stands for {key} does not fit.", _ASK_AGAIN),
    "bundle-credential-unreadable": (
        "Line {line}: {key} cannot be read.",
        "The file was cut off or edited. " + _ASK_AGAIN,
    ),
    "pem-unreadable": ("Line {line}: a {wanted} was expected.", _ASK_AGAIN),
    # archive
    "archive-unreadable": ("It is not a whole archive.", "Check that it is the right file, and copy it once more."),
    "archive-too-large": (
        "The archive would unpack to {size} octets or more; a bundle’s never does.",
        "Do not open it. " + _ASK_AGAIN,
    ),
    "archive-too-full": ("The archive holds {count} files; a bundle’s has a handful.", "Do not open it. " + _ASK_AGAIN),
    "archive-name-unsafe": (
        "The archive holds a file named {member}, which would land outside its folder.",
        "Do not open it. " + _ASK_AGAIN,
    ),
    "archive-member-unfit": (
        "The archive holds {member}, which does not belong into a bundle’s.",
        "Do not open it. " + _ASK_AGAIN,
    ),
    "archive-member-open": ("{member} lies in the archive without AES-256.", _ASK_AGAIN),
    "archive-incomplete": (
        "The archive holds {names}; bundle file, PKCS#12 and CA certificate belong together.",
        _ASK_AGAIN,
    ),
    # codes
    "codes-none": ("No code was found.", "Take the picture again, sharp and with the white margin."),
    "codes-not-ours": ("Picture {frames} shows another kind of code.", "Scan the codes that the app drew."),
    "codes-damaged": ("A code was misread, in picture {frames}.", "Scan it again."),
    "codes-missing": ("Of {count} codes, {missing} is missing.", "Scan it too; the order does not matter."),
    "codes-foreign": ("Picture {frames} belongs to another bundle.", "Scan the codes of one bundle."),
    "codes-newer": ("The codes were drawn by a newer app.", "Use a newer app."),
    "codes-too-large": ("It is too much for codes: {size} octets.", "Write a file or an archive instead."),
    "codes-too-many": ("It would take {count} codes; {limit} is the most.", "Write a file or an archive instead."),
    "picture-too-large": ("The picture is too large to be read ({size} octets).", "Use a picture of the code alone."),
    "picture-unreadable": ("It is not a PNG or JPEG picture that can be read.", "Check that it is the right file."),
}
