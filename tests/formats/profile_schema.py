"""The keys of a configuration profile, as the OS vendor publishes them, as far as this app writes any.

Source: github.com/apple/device-management, folder mdm/profiles, commit 0a4527c5ea21825fd23e08273ccdb9e2302458ce
(TopLevel.yaml: commit 0340fd30e0bf820ded4797aa658a3ba8b6ab6c6e). Facts only: name, type, presence, allowed values.
"""

from __future__ import annotations

from typing import Any, NamedTuple


class Key(NamedTuple):
    """One key.

    Args:
        kind: Python type of its value.
        needed: whether presence is required.
        allowed: its values, or None for any.
        least, most: its range, for numbers that have one.
    """

    kind: type
    needed: bool = False
    allowed: tuple[object, ...] | None = None
    least: int | None = None
    most: int | None = None


_COMMON = {
    "PayloadType": Key(str, needed=True),
    "PayloadVersion": Key(int, needed=True, allowed=(1,)),
    "PayloadIdentifier": Key(str, needed=True),
    "PayloadUUID": Key(str, needed=True),
    "PayloadDisplayName": Key(str),
    "PayloadDescription": Key(str),
    "PayloadOrganization": Key(str),
}
TOP = {
    **_COMMON,
    "PayloadType": Key(str, needed=True, allowed=("Configuration",)),
    "PayloadContent": Key(list, needed=True),
}
PAYLOADS: dict[str, dict[str, Key]] = {
    "com.apple.security.pkcs12": {
        **_COMMON,
        "PayloadCertificateFileName": Key(str),
        "PayloadContent": Key(bytes, needed=True),
    },
    "com.apple.security.root": {
        **_COMMON,
        "PayloadCertificateFileName": Key(str),
        "PayloadContent": Key(bytes, needed=True),
    },
    "com.apple.vpn.managed": {
        **_COMMON,
        "VPNType": Key(str, needed=True, allowed=("VPN", "L2TP", "IPSec", "IKEv2", "AlwaysOn", "TransparentProxy")),
        "UserDefinedName": Key(str, needed=True),
        "IKEv2": Key(dict),
    },
}
_FLAG = Key(int, allowed=(0, 1))
IKEV2 = {
    "RemoteAddress": Key(str, needed=True),
    "LocalIdentifier": Key(str, needed=True),
    "RemoteIdentifier": Key(str, needed=True),
    "AuthenticationMethod": Key(str, needed=True, allowed=("None", "SharedSecret", "Certificate")),
    "CertificateType": Key(str, allowed=("RSA", "ECDSA256", "ECDSA384", "ECDSA521", "RSA-PSS")),
    "PayloadCertificateUUID": Key(str),
    "ServerCertificateIssuerCommonName": Key(str),
    "DeadPeerDetectionRate": Key(str, allowed=("None", "Low", "Medium", "High")),
    "EnablePFS": _FLAG,
    "MTU": Key(int, least=1280, most=1400),
    "IncludeAllNetworks": _FLAG,
    "ExcludeLocalNetworks": _FLAG,
    "OnDemandEnabled": _FLAG,
    "OnDemandRules": Key(list),
    "IKESecurityAssociationParameters": Key(dict),
    "ChildSecurityAssociationParameters": Key(dict),
}
ASSOCIATION = {
    "EncryptionAlgorithm": Key(
        str, allowed=("DES", "3DES", "AES-128", "AES-256", "AES-128-GCM", "AES-256-GCM", "ChaCha20Poly1305")
    ),
    "IntegrityAlgorithm": Key(str, allowed=("SHA1-96", "SHA1-160", "SHA2-256", "SHA2-384", "SHA2-512")),
    "DiffieHellmanGroup": Key(int, allowed=(1, 2, 5, 14, 15, 16, 17, 18, 19, 20, 21, 31, 32)),
    "LifeTimeInMinutes": Key(int, least=10, most=1440),
}
RULE = {
    "Action": Key(str, needed=True, allowed=("Allow", "Connect", "Disconnect", "EvaluateConnection", "Ignore")),
    "InterfaceTypeMatch": Key(str, allowed=("Ethernet", "WiFi", "Cellular")),
    "SSIDMatch": Key(list),
}

_VPN = "mdm/profiles/com.apple.vpn.managed.yaml"
SOURCES = {
    "profile": "mdm/profiles/TopLevel.yaml",
    "com.apple.security.pkcs12": "mdm/profiles/com.apple.security.pkcs12.yaml",
    "com.apple.security.root": "mdm/profiles/com.apple.security.root.yaml",
    "com.apple.vpn.managed": _VPN,
    "IKEv2": _VPN,
    "association": _VPN,
    "rule": _VPN,
    "common": "mdm/profiles/CommonPayloadKeys.yaml",
}
"""Where each table's rows stand in that repository; "common" are those that begin every payload."""


def misfits(found: dict[str, Any], schema: dict[str, Key], where: str) -> list[str]:
    """Every key that the schema does not have, and every value that it does not allow."""
    wrong = [f"{where}: {name} is missing" for name, key in schema.items() if key.needed and name not in found]
    for name, value in found.items():
        key = schema.get(name)
        if key is None:
            wrong.append(f"{where}: {name} is not in the schema")
        elif type(value) is not key.kind:
            wrong.append(f"{where}: {name} is a {type(value).__name__}")
        elif key.allowed is not None and value not in key.allowed:
            wrong.append(f"{where}: {name} may not be {value!r}")
        elif isinstance(value, int) and not (key.least or value) <= value <= (key.most or value):
            wrong.append(f"{where}: {name} is out of range")
    return wrong


def walk(whole: dict[str, Any]) -> list[str]:
    """Everything in a profile that the schema does not know."""
    wrong = misfits(whole, TOP, "profile")
    for payload in whole["PayloadContent"]:
        kind = payload["PayloadType"]
        wrong += misfits(payload, PAYLOADS.get(kind, {}), kind)
    for payload in whole["PayloadContent"]:
        ikev2 = payload.get("IKEv2")
        if ikev2 is None:
            continue
        wrong += misfits(ikev2, IKEV2, "IKEv2")
        for name in ("IKESecurityAssociationParameters", "ChildSecurityAssociationParameters"):
            wrong += misfits(ikev2[name], ASSOCIATION, name)
        for rule in ikev2.get("OnDemandRules", []):
            wrong += misfits(rule, RULE, "OnDemandRules")
        if "CertificateType" in ikev2 and not ikev2.get("ServerCertificateIssuerCommonName"):
            wrong.append("IKEv2: CertificateType wants ServerCertificateIssuerCommonName")
    return wrong
