"""Cautions: nothing is refused, but the householder should know."""

from __future__ import annotations

from hearthkey.core.network import Caution
from hearthkey.core.sentences import templates
from hearthkey.core.sentences.sentence import Sentence

_CAUTIONS = {
    "gateway-only-at-home": "{subject} is known inside the home only. Devices get in on the home network and "
    "nowhere else. For access from outside, give the name that the world knows.",
    "gateway-shared-address": "{subject} belongs to the range that providers share between customers (RFC 6598). "
    "Nobody outside can reach it, whatever the router forwards. Ask the provider for a public address, or use IPv6.",
    "gateway-bare-address": "{subject} is written into every bundle. If the provider changes it, every device needs a "
    "new bundle; with a name, none does.",
    "dns-outside": "The DNS server {subject} lies outside the home and tunnel subnets. Questions about names at home "
    "will leave the house.",
    "key-set-unlikely": "The built-in client of {subject} is known to sign with RSA. It may refuse this key.",
    "container-unlikely": "The importer of this kind ({subject}) is known to call the strong container a wrong "
    "password. If it says so, use the old one.",
    "kind-gone": "The kind {subject} is not among the device kinds any more. What is made now is made as for something "
    "else; hearthkey kinds shows what there is.",
    "passphrase-erased-later": "The key of {subject} is erased. The keyring did not answer, so its passphrase will be "
    "erased at the next start.",
    "key-erased-later": "Another copy of the app was reading just now. The key of {subject} is erased; what the "
    "register’s log still holds of it, under its passphrase, goes when the app is closed.",
    "list-not-written": "The list is signed and kept, but could not be written to {subject}. It will be written at the "
    "next start; `hearthkey lists --into FOLDER` writes it elsewhere now.",
    "kept-in-files": "There is no keyring in use: the secrets of this household lie as files in {subject}. The CA key "
    "is encrypted, passphrases of waiting bundles are not. Hand bundles over soon.",
    "second-copy": "Another copy of the app has {subject} open. This one only looks.",
    "diary-broken": "The diary does not fit together from entry {subject} on: somebody or something changed it after "
    "it was written, or cut its end off. Who gets in is not touched by that. The newest sealed copy still has what "
    "stood there: bring it back into an empty folder and read its diary.",
    "away-long": "It was out of sight for {subject} hours. Somebody may have copied what is on it: a new pass is wiser "
    "than letting the old one back in.",
    "employer": "A device that belongs to an employer is administered by the employer. Ask there first.",
    "local-law": "Encrypted tunnels are restricted in some places. Where this device travels, the law there decides.",
    "pass-not-good-yet": "The pass of {subject} was made while the clock was ahead, and is not good yet. Replace it.",
    "gateway-not-good-yet": "The certificate of {subject} was made while the clock was ahead, and is not good yet. "
    "Renew the gateway’s certificate and deliver it.",
    "not-in-force": "It takes effect when the gateway holds list {subject}. Until then, everybody who could get in "
    "still can.",
    "open-connection": "A connection that is open now stays open until it authenticates again; ending it is up to the "
    "gateway (RFC 7296 section 2.8.3).",
    "compare-host-key": "Whoever sits between this computer and the gateway could show another key. Compare {subject} "
    "with what the gateway itself says: ssh-keygen -l -f on its host key file.",
    "taken-over": "The gateway held a list that this computer did not know. Stopped or revoked by it, and now here "
    "too: {subject}.",
    "gateway-clock": "The gateway’s clock is {subject} seconds off. Certificates begin and end by it: have it set by "
    "the network.",
    "pack-has-key": "The gateway’s key lies in it without a passphrase, because the gateway starts unattended. Carry "
    "it on nothing that others read, and wipe it afterwards.",
    "stops-besides": "The narrowest list that lies ready stops these too: {subject}.",
    "write-it-down": "Write the passphrase down and keep it where the family’s papers are. Without it and without a "
    "sealed copy, nothing can be renewed or stopped. A sealed copy is written to {subject} after every change; keep "
    "one away from this computer: hearthkey seal --into DIR.",
    "wifi-names-readable": "The names of your Wi-Fis stand readable in the profile. Whoever sees it learns them.",
    "script-not-run": "This script was checked, but nobody has run it on Windows yet. Read it first; it undoes what it "
    "does with -Undo.",
    "no-copy": "No sealed copy was made this time. What you did counts all the same.",
    "one-computer": "From now on {subject} lives on this computer. If the old one comes back to life, stop using the "
    "app there: two of them would contradict each other.",
}


_ALL = _CAUTIONS | templates.CAUTIONS


def say(caution: Caution) -> Sentence:
    """The sentence for a caution."""
    return Sentence(_ALL[caution.code], {"subject": caution.subject})
