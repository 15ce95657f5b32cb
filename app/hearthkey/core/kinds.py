"""What a device's operating system family can read, so that nobody is asked about algorithms."""

from __future__ import annotations

from dataclasses import dataclass

from hearthkey.core.errors import Refused
from hearthkey.core.keysets import BROAD, COMPACT, KeySet

STRONG, OLD = "strong", "old"
"""PKCS#12 containers. Strong: PBES2 with AES-256. Old: 3DES and a SHA-1 MAC, for old importers."""


@dataclass(frozen=True)
class DeviceKind:
    """One row of "which phone is it?".

    Args:
        name: how the command line and the register call it.
        words: how a person calls it.
        key_set: what its built-in client can sign with.
        container: the PKCS#12 container that its importer reads.
        why: the fact behind the choice, for whoever asks.
    """

    name: str
    words: str
    key_set: KeySet
    container: str
    why: str


# Read in published documents and issue threads, not tried on a device. Key types: the OS vendors'
# references and AOSP frameworks/base Ikev2VpnProfile.java. Containers: pyca/cryptography issue 7293,
# openssl/openssl issues 19495 and 27035, ansible.windows pull request 582.
_RSA_DEFAULT = "Its built-in client takes RSA unless a profile declares another type"
_OLD_IMPORT = "its importer calls the strong container a wrong password"
KINDS = (
    DeviceKind("iphone", "iPhone or iPad", BROAD, OLD, f"{_RSA_DEFAULT}; {_OLD_IMPORT}."),
    DeviceKind("android", "Android 14 or newer", BROAD, STRONG, "Its built-in client signs with RSA only."),
    DeviceKind(
        "android-older",
        "Android 13 or older",
        BROAD,
        OLD,
        f"Its built-in client signs with RSA only; {_OLD_IMPORT}.",
    ),
    DeviceKind(
        "windows",
        "Windows 11, or 10 since 2018",
        COMPACT,
        STRONG,
        "Its built-in client signs with P-256 and its importer reads the strong container.",
    ),
    DeviceKind("windows-older", "Windows 10 before 2018, or older", BROAD, OLD, f"Of that age, {_OLD_IMPORT}."),
    DeviceKind("mac", "Mac", BROAD, OLD, f"{_RSA_DEFAULT}; up to macOS 14 {_OLD_IMPORT}."),
    DeviceKind("linux", "Linux laptop", COMPACT, STRONG, "Its programs read elliptic curves and strong containers."),
    DeviceKind("other", "something else", BROAD, STRONG, "Nothing is known of it, so RSA, which most things read."),
)
_BY_NAME = {one.name: one for one in KINDS}


def device_kind(name: str) -> DeviceKind:
    """Look a device kind up.

    Raises:
        Refused: kind-unknown.
    """
    try:
        return _BY_NAME[name]
    except KeyError:
        raise Refused("kind-unknown", text=name[:40], known=tuple(_BY_NAME)) from None


def container(name: str) -> str:
    """Check the name of a PKCS#12 container.

    Raises:
        Refused: container-unknown.
    """
    if name not in {STRONG, OLD}:
        raise Refused("container-unknown", text=name[:40])
    return name
