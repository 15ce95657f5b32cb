"""The gateway's credential: its certificate, and its key under a secret that the vault keeps."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from hearthkey.core import certificates, passphrase
from hearthkey.core.certificates import GatewayPlan, serial_hex
from hearthkey.core.household import Authority, Gateway
from hearthkey.core.keysets import KeySet
from hearthkey.core.secret import Secret
from hearthkey.pki import keys, mint, pkcs8
from hearthkey.pki.keys import AuthorityKey
from hearthkey.services.ports import Dice

SECRET_WORDS = 20
"""Twenty words are 258 bits: no key stretching is needed, so the gateway's key opens at once."""
ROUNDS = 2048


def certify(
    plan: GatewayPlan, made: Secret[bytes], secret: Secret[str], authority: Authority, key: AuthorityKey
) -> Gateway:
    """Certify a key for the gateway and seal it.

    Args:
        made: the gateway's private key, unencrypted PKCS#8 DER, of the plan's key type.
        secret: what it is sealed under; `SECRET_WORDS` words.
        key: the CA key.
    """
    return Gateway(
        host=plan.host,
        serial=serial_hex(plan.serial),
        certificate=mint.gateway_certificate(plan, keys.public_der(made), authority.certificate, key),
        sealed_key=pkcs8.seal_key(made, secret, rounds=ROUNDS),
        not_after=plan.not_after,
    )


def fresh(
    host: str,
    chosen: KeySet,
    authority: Authority,
    key: AuthorityKey,
    *,
    now: datetime,
    dice: Dice,
    words: Sequence[str],
) -> tuple[Gateway, Secret[str]]:
    """Make a gateway's first credential, and what its key is sealed under.

    Args:
        words: the word list.
    """
    plan = certificates.plan_gateway(host, chosen, now=now, authority_end=authority.not_after, bits=dice.bits)
    secret = passphrase.make(words, dice.below, SECRET_WORDS)
    return certify(plan, keys.make_key(plan.key_type), secret, authority, key), secret
