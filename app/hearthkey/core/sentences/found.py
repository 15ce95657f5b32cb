"""What is said about a household that was made by hand: what was found, and what goes on working or does not."""

from __future__ import annotations

from hearthkey.core.found_findings import Gathered
from hearthkey.core.found_home import FoundHome
from hearthkey.core.found_household import Finding, Grave
from hearthkey.core.sentences.diary import day
from hearthkey.core.sentences.found_files import FILES
from hearthkey.core.sentences.sentence import Sentence

GRAVE = {
    Grave.STOPS: "in the way",
    Grave.BREAKS: "broken",
    Grave.WEAK: "weak",
    Grave.NOTE: "good to know",
}
"""A word for each, beside its sign: never colour alone."""

FOUND: dict[str, tuple[str, str]] = FILES | {
    # the CA
    "authority-missing": (
        "There is no certificate of a CA here.",
        "Add the file that devices were given as the trusted one, then look again.",
    ),
    "authority-not-top": (
        "The CA here was certified by another one, and that one is not here.",
        "Devices trust the one above. Look in the folder where that one lies.",
    ),
    "authority-is-none": (
        "The certificate that signed the others does not say that it is a CA ({name}).",
        "Strict devices and gateways turn all passes away. Found a new household; each device needs a new pass.",
    ),
    "authority-may-not-sign": (
        "The CA’s certificate does not allow it to sign certificates ({name}).",
        "Strict devices and gateways turn all passes away. Found a new household; each device needs a new pass.",
    ),
    "authority-may-not-list": (
        "The CA’s certificate does not allow it to sign revocation lists ({name}).",
        (
            "Nobody could be stopped, as a gateway ignores such a list. Found a new household; each device needs a new "
            "pass."
        ),
    ),
    "authority-key-small": (
        "The CA’s key is too short ({type}).",
        "What it signs can be forged with enough effort. Found a new household; each device needs a new pass.",
    ),
    "authority-key-kind": (
        "The CA’s key is of a kind that is not used here ({type}).",
        "Devices that know it go on. New passes cannot be signed with it by this app.",
    ),
    "authority-test-key": (
        "The CA’s key is a published test key ({name}): anybody can read it in RFC 9500.",
        "Anybody can make passes for this household and get in. Found a new household, today if you can.",
    ),
    "authority-ended": (
        "The CA’s certificate ended on {end}.",
        "Nobody gets in any more, whatever their passes say. Found a new household; each device needs a new pass.",
    ),
    "authority-not-yet": (
        "The CA’s certificate begins on {begin} only.",
        "Nobody gets in before. Check this computer’s clock, then look again.",
    ),
    "authority-ends-soon": (
        "The CA’s certificate ends on {end}.",
        "Everything works until that day and nothing after it. Plan its successor now.",
    ),
    "authority-path-length": (
        "The CA’s certificate allows no CA below it (path length 0).",
        (
            "Everything works until it ends. A successor cannot be introduced by it, so that every device has to be "
            "visited then."
        ),
    ),
    "authority-no-identifier": (
        "The CA’s certificate has no key identifier.",
        "Most devices and gateways go on. Strict ones may turn it away.",
    ),
    "authority-old-hash": (
        "The CA’s certificate is signed with {hash}.",
        "That does no harm: devices trust its key, and not the signature on itself.",
    ),
    "authority-besides": (
        "There is another CA here.",
        "It is left as it is. Only one can be taken over at a time.",
    ),
    # keys
    "authority-key-missing": (
        "The CA’s private key is not here.",
        "Everything goes on as long as certificates and list last. Without the key nobody can be added or stopped.",
    ),
    "authority-key-locked": (
        "The CA’s private key is not open.",
        "Type the passphrase that locks it.",
    ),
    "authority-key-open": (
        "The CA’s private key lies here without a passphrase.",
        (
            "Whoever copies the file can make passes for the household. After the take-over, delete it and empty the "
            "places where copies of the folder lie."
        ),
    ),
    "key-open": (
        "A private key lies here without a passphrase.",
        "Whoever copies the file gets in as that device. Delete it once the device has it.",
    ),
    "key-lock-old": (
        "A private key is locked in the old way.",
        "Its passphrase can be guessed quickly. It can be read here; delete the file after the take-over.",
    ),
    "key-of-nothing": (
        "A private key belongs to no certificate here.",
        "It is left as it is.",
    ),
    "key-unreadable": (
        "A private key cannot be read.",
        "It is left as it is.",
    ),
    "locked-encryption-unknown": (
        "A private key is locked in a way that is not read here ({algorithm}).",
        "If it is the CA’s, open it once with the program that made it, and lock it anew with AES.",
    ),
    "locked-key-rounds-absurd": (
        "A locked file asks for more work than any honest file does ({rounds} rounds). It was not opened.",
        "Ask who wrote it.",
    ),
    # certificates
    "certificate-ended": (
        "A certificate has ended.",
        "Its device does not get in any more. Only its number is taken over.",
    ),
    "certificate-not-yet": (
        "A certificate begins only later.",
        "Its device does not get in before.",
    ),
    "certificate-old-hash": (
        "A certificate is signed with an old hash (SHA-1 or MD5).",
        "Current gateways turn it away. The device needs a new pass.",
    ),
    "certificate-key-small": (
        "A certificate’s key is too short.",
        "Current gateways turn it away. The device needs a new pass.",
    ),
    "certificate-no-identifier": (
        "A certificate does not name the key that signed it.",
        "Most gateways go on. Strict ones may turn it away; a new pass has what is missing.",
    ),
    "certificate-of-another": (
        "A certificate was issued by somebody else.",
        "It is left as it is.",
    ),
    "certificate-unreadable": (
        "A certificate or a file like one cannot be read.",
        "It is left as it is.",
    ),
    "certificate-not-here": (
        "The database names a certificate that is not here, and that has not ended.",
        (
            "Whoever has it gets in, and this app can neither show nor stop it until the file is added. Its number is "
            "never used again."
        ),
    ),
    "gateway-without-name": (
        "The gateway’s certificate does not carry its name where devices look for it (subject alternative name).",
        "Strict devices do not connect. The gateway gets a new certificate at the take-over.",
    ),
    "gateway-wrong-use": (
        "The gateway’s certificate is meant for another use.",
        "Strict devices do not connect. The gateway gets a new certificate at the take-over.",
    ),
    "device-wrong-use": (
        "A device’s certificate is meant for another use.",
        "Strict gateways turn it away. The device needs a new pass.",
    ),
    "device-without-name": (
        "A device’s certificate carries no name where gateways look for it (subject alternative name).",
        "It gets in where the gateway goes by the subject. A new pass has what is missing.",
    ),
    "name-in-clear": (
        "A certificate names a person or an address.",
        "It works. On some ways in, who listens on the network can read it; a new pass carries a code instead.",
    ),
    # serials and lists
    "serial-unlistable": (
        "A certificate’s serial number is none that a revocation list can name.",
        "It works, and it cannot be stopped. Give the device a new pass, and end this one at the gateway.",
    ),
    "withdrawn-unlistable": (
        "A withdrawn certificate has a serial number that no list of ours can name ({serial}).",
        "Taking over would let it back in.",
    ),
    "serial-shared": (
        "Several certificates have one serial number.",
        "They work. Stopping one stops all of them; only one is taken over as a pass.",
    ),
    "list-missing": (
        "There is no revocation list here.",
        "Everybody gets in as before. The first list is signed at the take-over.",
    ),
    "list-overdue": (
        "The revocation list was good until {end}.",
        "Strict gateways let nobody in. The take-over signs a new one.",
    ),
    "list-without-number": (
        "The revocation list has no number.",
        "It works. The lists that follow have one.",
    ),
    "list-partial": (
        "A revocation list is about changes or a part only.",
        "It is left out: only whole lists are taken over.",
    ),
    "list-of-another": (
        "A revocation list was not signed by this CA.",
        "It is left out.",
    ),
    "list-unreadable": (
        "A revocation list cannot be read.",
        "It is left out.",
    ),
    "list-number-high": (
        "The lists have a number that cannot be counted on from here.",
        "Gateways may ignore lists that follow. Found a new household; each device needs a new pass.",
    ),
    "database-lines": (
        "Lines of the database are not understood ({lines}).",
        "What they say is left out. Compare them before you take over.",
    ),
}
"""What it is, and what goes on working or does not."""


def what(one: Finding) -> Sentence:
    """What was found."""
    return Sentence(FOUND[one.code][0], _shown(one))


def effect(one: Finding) -> Sentence:
    """What goes on working, what does not, and what to do."""
    return Sentence(FOUND[one.code][1], _shown(one))


def _shown(one: Finding) -> dict[str, object]:
    return {name: day(value) if hasattr(value, "tzinfo") else value for name, value in one.facts.items()}  # type: ignore[arg-type]  # only moments have a zone


def where(one: Gathered, most: int = 3) -> Sentence:
    """In which files."""
    if len(one.files) <= most:
        return Sentence("{files}", {"files": one.files})
    if len(one.files) == most + 1:
        return Sentence("{files} and one more", {"files": one.files[:most]})
    return Sentence("{files} and {more} more", {"files": one.files[:most], "more": len(one.files) - most})


def summary(home: FoundHome) -> tuple[Sentence, ...]:
    """What is there, in one sentence each."""
    found = [_authority(home)]
    if home.authority is not None:
        found += [_counted(len(home.devices), _DEVICES), _counted(len(home.gateways), _GATEWAYS), _list(home)]
    return tuple(found)


_DEVICES = (
    "No device’s certificate was found.",
    "One device’s certificate was found.",
    "{count} certificates of devices were found.",
)
_GATEWAYS = (
    "No certificate of a gateway was recognised.",
    "One certificate of a gateway was recognised.",
    "{count} certificates of gateways were recognised.",
)


_WITHDRAWN = ("Nobody is withdrawn.", "One is withdrawn.", "{count} are withdrawn.")


def _counted(count: int, words: tuple[str, str, str]) -> Sentence:
    return Sentence(words[min(count, 2)], {"count": count})


def _authority(home: FoundHome) -> Sentence:
    if home.authority is None:
        return Sentence("No CA was found in {count} files.", {"count": home.folder.files})
    facts = {"name": home.authority.subject, "type": home.authority.key_type, "end": day(home.authority.not_after)}
    return Sentence("The CA is {name}, {type}, and ends on {end}.", facts)


def _list(home: FoundHome) -> Sentence:
    withdrawn = len(home.withdrawn)
    facts = {"count": withdrawn, "number": home.highest_list}
    if not home.highest_list:
        return _counted(withdrawn, _WITHDRAWN)
    words = (
        "Nobody is withdrawn; the highest list number is {number}.",
        "One is withdrawn; the highest list number is {number}.",
        "{count} are withdrawn; the highest list number is {number}.",
    )
    return Sentence(words[min(withdrawn, 2)], facts)
