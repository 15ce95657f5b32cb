"""A configuration profile: the settings, the identity and the CA in one property list, for systems that read those.

Keys and values are those of the OS vendor's published schema (github.com/apple/device-management, folder
mdm/profiles: TopLevel.yaml, com.apple.vpn.managed.yaml, com.apple.security.pkcs12.yaml, com.apple.security.root.yaml).
The passphrase is never in it: the system asks for it when the profile is installed.
"""

from __future__ import annotations

import plistlib
import uuid
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any
from xml.parsers.expat import ExpatError

from hearthkey.core.bundle import Settings
from hearthkey.core.connect_choices import ConnectChoices
from hearthkey.core.errors import Bug, Refused
from hearthkey.core.keysets import P_256, P_384, RSA_3072, key_set
from hearthkey.core.names import file_stem
from hearthkey.core.network import FULL

LARGEST = 1 << 20
"""Octets. Ours have about 12,000."""

MTU = 1280
"""What fits through any network: IPv6's own minimum (RFC 8200 section 5), and the schema's default."""

_TYPES = {RSA_3072: "RSA", P_256: "ECDSA256", P_384: "ECDSA384"}
_CIPHERS = {"ENCR_AES_CBC 256": "AES-256", "ENCR_AES_GCM_16 256": "AES-256-GCM"}
_HASHES = {
    "AUTH_HMAC_SHA2_256_128": "SHA2-256",
    "PRF_HMAC_SHA2_256": "SHA2-256",
    "PRF_HMAC_SHA2_384": "SHA2-384",
    "PRF_HMAC_SHA2_512": "SHA2-512",
}
_IKE_MINUTES, _CHILD_MINUTES = 240, 60
"""As the gateway's settings sheet has them."""

_IDENTITY, _ROOT, _CONNECTION = "com.apple.security.pkcs12", "com.apple.security.root", "com.apple.vpn.managed"


@dataclass(frozen=True)
class Profile:
    """What a profile carries, read back.

    Args:
        container: the PKCS#12, as it is.
        authorities: CA certificates, DER.
        identity: the device's IKE ID.
        host: where it connects to.
    """

    container: bytes
    authorities: tuple[bytes, ...]
    identity: str
    host: str


def file_name(settings: Settings) -> str:
    """Name the profile: "ines-phone.mobileconfig", the ending that systems look for."""
    return f"{file_stem(settings.device, settings.identity)}.mobileconfig"


def write(
    settings: Settings,
    container: bytes,
    authorities: Sequence[bytes],
    chosen: ConnectChoices,
    *,
    issuer: str,
    container_name: str,
    mark: str = "",
) -> bytes:
    """Write a profile as an XML property list.

    Args:
        container: the PKCS#12, under the bundle's passphrase.
        authorities: CA certificates, DER.
        issuer: common name of the CA that issued the gateway's certificate; the schema wants it where the type of the
            certificate is declared.
        container_name: file name of the PKCS#12.
        mark: 16 hex digits of the household's first CA, so that a profile of the next CA replaces the one before;
            empty while there was only one.
    """
    own = _names_of(settings, mark)
    identity = {
        **_head(own, "identity", _IDENTITY, settings.device),
        "PayloadCertificateFileName": container_name,
        "PayloadContent": container,
    }
    roots = [
        {**_head(own, f"ca-{number}", _ROOT, settings.household), "PayloadContent": der}
        for number, der in enumerate(authorities, 1)
    ]
    connection = {
        **_head(own, "connection", _CONNECTION, settings.household),
        "UserDefinedName": settings.household,
        "VPNType": "IKEv2",
        "IKEv2": _ikev2(settings, chosen, issuer, identity["PayloadUUID"]),
    }
    whole = {
        "PayloadType": "Configuration",
        "PayloadVersion": 1,
        "PayloadIdentifier": own,
        "PayloadUUID": _uuid(own),
        "PayloadDisplayName": settings.household,
        "PayloadDescription": f"{settings.device}, until {settings.ends:%Y-%m-%d}",
        "PayloadOrganization": settings.household,
        "PayloadContent": [identity, *roots, connection],
    }
    return plistlib.dumps(whole, fmt=plistlib.FMT_XML, sort_keys=True)


def _names_of(settings: Settings, mark: str) -> str:
    """The identifier by which a system knows that a renewed profile replaces the old one: household and device."""
    return f"invalid.hearthkey.{mark or settings.authority_fingerprint[:16]}.{settings.identity}"


def _uuid(name: str) -> str:
    """A UUID made from a name (RFC 9562 section 5.5), so that it stays the same."""
    return str(uuid.uuid5(uuid.NAMESPACE_URL, f"urn:{name}")).upper()


def _head(own: str, part: str, kind: str, shown: str) -> dict[str, Any]:
    return {
        "PayloadType": kind,
        "PayloadVersion": 1,
        "PayloadIdentifier": f"{own}.{part}",
        "PayloadUUID": _uuid(f"{own}.{part}"),
        "PayloadDisplayName": shown,
    }


def _ikev2(settings: Settings, chosen: ConnectChoices, issuer: str, identity: str) -> dict[str, Any]:
    found: dict[str, Any] = {
        "RemoteAddress": settings.gateway_host,
        "RemoteIdentifier": settings.gateway_host,
        "LocalIdentifier": settings.identity,
        "AuthenticationMethod": "Certificate",
        "CertificateType": _TYPES[key_set(settings.key_set).key_type],
        "PayloadCertificateUUID": identity,
        "ServerCertificateIssuerCommonName": issuer,
        "DeadPeerDetectionRate": "Medium",
        "EnablePFS": 1,
        "MTU": MTU,
        "IKESecurityAssociationParameters": _association(settings.ike, settings.key_exchange, _IKE_MINUTES),
        "ChildSecurityAssociationParameters": _association(settings.esp, settings.key_exchange, _CHILD_MINUTES),
    }
    if settings.tunnel == FULL:  # with a split tunnel the gateway narrows what is sent through (RFC 7296 section 2.9)
        found |= {"IncludeAllNetworks": 1, "ExcludeLocalNetworks": 1}
    if chosen.by_itself:
        found |= {"OnDemandEnabled": 1, "OnDemandRules": _rules(chosen)}
    return found


def _association(transforms: Sequence[str], group: int, minutes: int) -> dict[str, Any]:
    cipher = next((_CIPHERS[one] for one in transforms if one in _CIPHERS), None)
    if cipher is None:
        raise Bug("profile-transform-unknown", seen=", ".join(transforms))
    found: dict[str, Any] = {
        "EncryptionAlgorithm": cipher,
        "DiffieHellmanGroup": group,
        "LifeTimeInMinutes": minutes,
    }
    hashes = [_HASHES[one] for one in transforms if one in _HASHES]
    # Where the cipher protects integrity itself, the key names what the PRF is made from.
    found["IntegrityAlgorithm"] = hashes[0] if hashes else "SHA2-256"
    return found


def _rules(chosen: ConnectChoices) -> list[dict[str, Any]]:
    """First match counts: not at home, everywhere else on Wi-Fi and on mobile data, and nothing on a cable."""
    home = [{"Action": "Disconnect", "InterfaceTypeMatch": "WiFi", "SSIDMatch": list(chosen.own_wifi)}]
    return [
        *(home if chosen.own_wifi else []),
        {"Action": "Connect", "InterfaceTypeMatch": "WiFi"},
        {"Action": "Connect", "InterfaceTypeMatch": "Cellular"},
        {"Action": "Ignore"},
    ]


def read(data: bytes) -> Profile:
    """Read a profile that is not signed, or what was signed.

    Raises:
        Refused: profile-unreadable, profile-has-passphrase.
    """
    if len(data) > LARGEST:
        raise Refused("profile-unreadable", seen="too large")
    try:
        whole = plistlib.loads(data, fmt=plistlib.FMT_XML)
        parts = {one["PayloadType"]: one for one in whole["PayloadContent"]}
        roots = tuple(one["PayloadContent"] for one in whole["PayloadContent"] if one["PayloadType"] == _ROOT)
        connection = parts[_CONNECTION]["IKEv2"]
        container = parts[_IDENTITY]["PayloadContent"]
        if "Password" in parts[_IDENTITY]:
            raise Refused("profile-has-passphrase")
        found = Profile(container, roots, connection["LocalIdentifier"], connection["RemoteAddress"])
    except (ValueError, KeyError, TypeError, AttributeError, ExpatError, RecursionError, IndexError) as error:
        raise Refused("profile-unreadable", seen=type(error).__name__) from None
    octets = (found.container, *found.authorities)
    if not roots or not all(isinstance(one, bytes) for one in octets):
        raise Refused("profile-unreadable", seen="no certificates")
    return found
