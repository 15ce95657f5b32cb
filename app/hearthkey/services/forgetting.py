"""Takes a practice household's secrets out of the vault again."""

from __future__ import annotations

from hearthkey.core.errors import Refused
from hearthkey.services import secret_names
from hearthkey.services.gateway_ports import GatewayRegister
from hearthkey.services.opening import the_authority
from hearthkey.services.ports import Vault


def forget_practice(register: GatewayRegister, vault: Vault) -> None:
    """Delete every secret of a practice household; its register stays to be looked at.

    Raises:
        Refused: no-household, not-practice.
        Unavailable: as the vault.
    """
    authority = the_authority(register)
    household, gateway = register.household(), register.gateway()
    if household is None or not household.practice:
        raise Refused("not-practice")
    for one in register.passes():
        vault.delete(secret_names.bundle_passphrase(authority, one.serial))
    for owner in register.extra_secrets():
        vault.delete(secret_names.extra_secret(authority, owner))
    vault.delete(secret_names.gateway_archive(authority))
    if gateway is not None:
        vault.delete(secret_names.gateway_key(authority, gateway.serial))
    for ca in register.authorities():
        vault.delete(secret_names.authority_key(ca))
