"""Signs configuration profiles with the gateway's key or the CA's, where the household chose so."""

from __future__ import annotations

from hearthkey.core.connect_choices import BY_CA, BY_GATEWAY
from hearthkey.core.errors import Refused
from hearthkey.pki import pkcs8, signed_message
from hearthkey.services import secret_names
from hearthkey.services.opening import Keyholder, the_authority
from hearthkey.services.pack_generations import chain_of
from hearthkey.services.ports import Register, Vault


class ProfileSigning:
    """What `Bundling` asks for a signature."""

    def __init__(self, register: Register, vault: Vault, keyholder: Keyholder) -> None:
        self._register = register
        self._vault = vault
        self._keyholder = keyholder

    def sign(self, data: bytes) -> bytes:
        """Sign a profile as the household chose; unsigned where it chose nobody.

        Raises:
            Refused: household-locked, gateway-secret-lost, no-household.
            Unavailable: as the vault.
        """
        signer = self._register.connect_choices().signer
        authority = the_authority(self._register)
        if signer == BY_CA:
            return signed_message.sign(data, authority.certificate, self._keyholder.key())
        if signer != BY_GATEWAY:
            return data
        gateway = self._register.gateway()
        if gateway is None:
            raise Refused("no-household")
        secret = self._vault.get(secret_names.gateway_key(authority, gateway.serial))
        if secret is None:
            raise Refused("gateway-secret-lost")
        key = pkcs8.open_key(gateway.sealed_key, secret, foreign=False)
        trusted = self._register.authorities()
        chain = (*chain_of(self._register, gateway), *(one.certificate for one in trusted))
        return signed_message.sign(data, gateway.certificate, key, chain)
