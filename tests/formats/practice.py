"""The bundle of Ines's phone at Quince Cottage, which the tests of this ring write and read."""

from __future__ import annotations

import hashlib
from datetime import UTC, datetime

from hearthkey.core.bundle import InlineBundle, Settings

PASSPHRASE = "unlit oxford stooge gains snooze amply cedar"


def noise(length: int, name: str = "quince") -> bytes:
    """Return bytes that do not compress, the same at every call: what keys and certificates look like."""
    return hashlib.shake_256(name.encode()).digest(length)


AUTHORITY = noise(560, "authority")
SETTINGS = Settings(
    household="Quince Cottage (practice)",
    authority_fingerprint=hashlib.sha256(AUTHORITY).hexdigest(),
    device="Ines’s phone",
    kind="android",
    identity="k7m2p9xw.quince.example",
    serial="5a0b1c2d3e4f60718293a4b5c6d7e8f901234567",
    not_before=datetime(2026, 11, 24, 9, 30, tzinfo=UTC),
    ends=datetime(2028, 11, 24, 9, 29, 59, tzinfo=UTC),
    key_set="broad",
    gateway_host="home.quince.example",
    home_subnets=("198.51.100.0/24", "2001:db8:51::/64"),
    tunnel_subnet="203.0.113.0/24",
    dns_servers=("198.51.100.1",),
    tunnel="split",
    ike=("ENCR_AES_CBC 256", "AUTH_HMAC_SHA2_256_128", "PRF_HMAC_SHA2_256"),
    esp=("ENCR_AES_CBC 256", "AUTH_HMAC_SHA2_256_128"),
    key_exchange=14,
)
INLINE = InlineBundle(
    settings=SETTINGS,
    encrypted_key=noise(1900, "key"),
    certificate=noise(1020, "certificate"),
    authorities=(AUTHORITY,),
)
"""As large as a bundle of the key set "broad": RSA-3072 under a P-384 CA."""
