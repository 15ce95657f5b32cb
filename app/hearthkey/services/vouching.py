"""Has one CA vouch for the next, where whoever trusts the one would then believe a gateway of the other."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

from hearthkey.core import certificates
from hearthkey.core.errors import Refused
from hearthkey.core.household import Authority
from hearthkey.core.keysets import COMPACT
from hearthkey.pki import judge, mint, read
from hearthkey.pki.keys import AuthorityKey


def cross_certificate(
    old: Authority,
    new: Authority,
    keys: tuple[AuthorityKey, AuthorityKey],
    host: str,
    *,
    now: datetime,
    bits: Callable[[int], int],
) -> bytes:
    """Make the old CA's certificate for the new CA's key, DER.

    A CA that was made elsewhere may forbid others below it (RFC 5280 section 4.2.1.9, path length 0). What devices
    would make of the gateway is seen before anybody meets it: a certificate such as it is to show is judged by the
    old CA alone, and thrown away.

    Args:
        keys: the old CA's and the new CA's.
        host: the gateway's name.
        bits: random ones.

    Raises:
        Refused: succession-cannot-vouch.
    """
    begins = [read.certificate_facts(one.certificate).not_before for one in (old, new)]
    planned = certificates.plan_cross(
        now=now, old=(begins[0], old.not_after), new=(begins[1], new.not_after), bits=bits
    )
    cross = mint.cross_certificate(planned, new.certificate, old.certificate, keys[0])
    gateway = certificates.plan_gateway(host, COMPACT, now=now, authority_end=new.not_after, bits=bits)
    shown = mint.gateway_certificate(gateway, read.public_of(new.certificate), new.certificate, keys[1])
    try:
        judge.check_path(shown, [old.certificate], None, now, intermediates=[cross])
    except judge.NotTrusted:
        raise Refused("succession-cannot-vouch") from None
    return cross
