"""What the gateway pack says of its files while one CA follows another."""

from __future__ import annotations

import textwrap

from hearthkey.core.pack import (
    AUTHORITY_CERTIFICATE,
    CROSS_CERTIFICATE,
    GATEWAY_CERTIFICATE,
    LIST_DER,
    LIST_PEM,
    second_name,
)

FILE_NAME = "two-cas.txt"
"""How the file is called."""

_WIDTH = 78


def note(*, crossed: bool) -> str:
    """Say which file is whose, and what the gateway has to be told.

    Args:
        crossed: the gateway's certificate is the new CA's, and the old one vouches for it.
    """
    said = [
        "For now this household has two CAs: an old one, and a new one that follows it. The gateway has to trust both.",
        (
            f"{AUTHORITY_CERTIFICATE}.pem holds both certificates, {LIST_PEM} both lists, the old CA's first. "
            "A gateway that reads whole files needs to be told nothing new."
        ),
        (
            f"A gateway that reads the first certificate of a file alone, or DER, is given the second ones too: "
            f"{second_name(AUTHORITY_CERTIFICATE + '.pem')} and .der, {second_name(LIST_PEM)}, {second_name(LIST_DER)}."
        ),
    ]
    if crossed:
        said.append(
            f"{GATEWAY_CERTIFICATE}.pem holds the gateway's certificate and, behind it, the old CA's certificate for "
            f"the new one; {CROSS_CERTIFICATE}.pem and .der hold that one alone. The gateway has to send both to its "
            "devices (RFC 7296 section 3.6, RFC 8446 section 4.4.2): those that know only the old CA turn away "
            "otherwise."
        )
    said.append("When the old CA is put away, this file and the second ones go, and the first ones are the new CA's.")
    return "\n\n".join(textwrap.fill(one, _WIDTH) for one in said) + "\n"
