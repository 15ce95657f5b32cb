"""How this household's secrets are called in the vault."""

from __future__ import annotations

from hearthkey.core.household import Authority


def authority_key(authority: Authority) -> str:
    """The CA key text."""
    return f"{authority.fingerprint[:16]}/ca"


def gateway_key(authority: Authority, serial: str) -> str:
    """What the gateway's key is encrypted under."""
    return f"{authority.short}/gateway/{serial}"


def gateway_archive(authority: Authority) -> str:
    """What archives of the gateway's files are opened with."""
    return f"{authority.short}/gateway-archive"


def bundle_passphrase(authority: Authority, serial: str) -> str:
    """The passphrase of a waiting bundle."""
    return f"{authority.short}/pass/{serial}"


def extra_secret(authority: Authority, owner: str) -> str:
    """The secret beside the certificate of a device, by its identity; with an empty owner the household's."""
    return f"{authority.short}/extra/{owner or 'household'}"


def copy_mark(authority: Authority) -> str:
    """What marks sealed copies as this household's."""
    return f"{authority.short}/copies"
