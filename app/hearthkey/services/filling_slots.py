"""Fills the slots of templates with today's values, opening only the keys and secrets that are wanted."""

from __future__ import annotations

from typing import Protocol

from hearthkey.core.errors import Refused
from hearthkey.core.household import Authority, Gateway
from hearthkey.core.passes import Pass
from hearthkey.core.secret import Secret
from hearthkey.core.slots import (
    Value,
    device_line,
    device_stand_ins,
    device_values,
    gateway_values,
    household_values,
)
from hearthkey.core.templates import GATEWAY
from hearthkey.formats import pem
from hearthkey.pki import pkcs8
from hearthkey.services import secret_names
from hearthkey.services.bundling import Bundling
from hearthkey.services.opening import the_authority
from hearthkey.services.pack_generations import chain_of
from hearthkey.services.ports import Clock, Register, Vault

KEYS = frozenset({"device_key", "device_key_sealed"})
"""Slots that need the private key of a device, which is here until hand-over only."""


class ExtraSecrets(Protocol):
    """Where the secrets beside the certificates are (RFC 8784)."""

    def __call__(self, owner: str, /) -> Secret[str] | None:
        """The secret of a device's identity, or with an empty owner the household's: base64, or None without one.

        Raises:
            Unavailable: as the vault.
        """


class FillingSlots:
    """Gathers what templates may say."""

    def __init__(self, register: Register, vault: Vault, clock: Clock, bundling: Bundling, extra: ExtraSecrets) -> None:
        self._register = register
        self._vault = vault
        self._clock = clock
        self._bundling = bundling
        self._extra = extra

    def values(self, of: str, chosen: Pass | None, wanted: frozenset[str]) -> dict[str, Value]:
        """The values of a template's slots.

        Args:
            of: ``gateway`` or ``device``.
            chosen: whose, for a device's template; None puts marks in the device's place.
            wanted: names of slots; what nobody wants and would open a key or ask for a secret is left out.

        Raises:
            Refused: no-household, gateway-secret-lost; where a device's key is wanted, pass-handed-over and
                passphrase-lost.
            Unavailable: as the vault.
        """
        authority = the_authority(self._register)
        household = self._register.household()
        if household is None:
            raise Refused("no-household")
        values = household_values(
            household,
            authority,
            ca_certificate="".join(
                pem.encode(pem.CERTIFICATE, one.certificate) for one in self._register.authorities()
            ),
            household_secret=self._extra("") if "household_secret" in wanted else None,
        )
        if of == GATEWAY:
            return values | self._gateway_values(authority, wanted)
        return values | (device_stand_ins() if chosen is None else self._device_values(chosen, wanted))

    def _gateway_values(self, authority: Authority, wanted: frozenset[str]) -> dict[str, Value]:
        gateway, newest = self._register.gateway(), self._register.newest_list()
        if gateway is None or newest is None:
            raise Refused("no-household")
        now = self._clock.now()
        # By identity, for a device that is getting a new pass has two for a while; the newer one counts.
        devices = {one.identity: one for one in self._register.passes() if one.gets_in(now)}
        return gateway_values(
            gateway,
            newest,
            certificate="".join(
                pem.encode(pem.CERTIFICATE, one) for one in (gateway.certificate, *chain_of(self._register, gateway))
            ),
            key=self._gateway_key(authority, gateway) if "gateway_key" in wanted else None,
            revocation_list="".join(pem.encode(pem.X509_CRL, one) for one in newest.ders),
            devices=tuple(device_line(one, self._extra(one.identity)) for one in devices.values())
            if "devices" in wanted
            else (),
            former=tuple(one.host for one in self._register.former_hosts()),
        )

    def _gateway_key(self, authority: Authority, gateway: Gateway) -> Secret[str]:
        secret = self._vault.get(secret_names.gateway_key(authority, gateway.serial))
        if secret is None:
            raise Refused("gateway-secret-lost")
        key = pkcs8.open_key(gateway.sealed_key, secret, foreign=False)
        return Secret(pem.encode(pem.PRIVATE_KEY, key.reveal()))

    def _device_values(self, chosen: Pass, wanted: frozenset[str]) -> dict[str, Value]:
        bundle = self._bundling.open(chosen) if wanted & KEYS else None
        key = sealed = None
        if bundle is not None and "device_key" in wanted:
            key = Secret(pem.encode(pem.PRIVATE_KEY, bundle.key.reveal()))
        if bundle is not None and "device_key_sealed" in wanted:
            sealed = pem.encode(pem.ENCRYPTED_PRIVATE_KEY, pkcs8.seal_key(bundle.key, bundle.passphrase))
        return device_values(
            chosen,
            certificate=pem.encode(pem.CERTIFICATE, self._register.certificate(chosen.serial)),
            key=key,
            sealed=sealed,
            extra_secret=self._extra(chosen.identity) if "extra_secret" in wanted else None,
        )
