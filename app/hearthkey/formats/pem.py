"""PEM text and back: RFC 7468, read as tolerantly as RFC 4945 section 6 wants it."""

from __future__ import annotations

import base64
import binascii
import re

from hearthkey.core.errors import Refused

CERTIFICATE = "CERTIFICATE"
ENCRYPTED_PRIVATE_KEY = "ENCRYPTED PRIVATE KEY"
PRIVATE_KEY = "PRIVATE KEY"
X509_CRL = "X509 CRL"

_LINE_END = re.compile(r"\r\n|\r|\n")
_BOUNDARY = re.compile(r"-----(BEGIN|END) ([A-Z0-9][A-Z0-9 ]{0,60})-----")


def encode(label: str, der: bytes) -> str:
    """Write DER as PEM text: 64 characters to a line, LF, and an LF at the end (RFC 7468 section 2)."""
    body = base64.b64encode(der).decode("ascii")
    lines = [body[start : start + 64] for start in range(0, len(body), 64)]
    return "\n".join([f"-----BEGIN {label}-----", *lines, f"-----END {label}-----", ""])


def decode(text: str, label: str) -> list[bytes]:
    """Read every block of PEM text, all of which have to carry `label`.

    Lines may end in LF, CR or CRLF, with white space before that, and have any length; text outside the
    blocks is skipped (RFC 7468 section 2, RFC 4945 section 6). Asked for "X509 CRL", it reads "CRL" alike:
    RFC 7468 section 6 wants the former, RFC 4945 section 6.2 shows the latter.

    Returns:
        the DER of each block, in order; never empty.

    Raises:
        Refused: pem-unreadable with `wanted` (the label asked for), `found` (the label met, if another one)
            and `line` (from 1, within `text`).
    """
    wanted = {X509_CRL, "CRL"} if label == X509_CRL else {label}
    blocks: list[bytes] = []
    lines = _LINE_END.split(text)
    body: list[str] = []
    inside: str | None = None
    for number, line in enumerate(lines, 1):
        boundary = _BOUNDARY.fullmatch(line.rstrip(" \t\v\f"))
        if inside is None:
            if boundary is not None:
                if boundary[1] != "BEGIN" or boundary[2] not in wanted:
                    raise Refused("pem-unreadable", wanted=label, found=boundary[2], line=number)
                inside, body = boundary[2], []
        elif boundary is None:
            body.append(line)
        else:
            if boundary[1] != "END" or boundary[2] != inside:
                raise Refused("pem-unreadable", wanted=label, found=boundary[2], line=number)
            blocks.append(_der("".join(body), label, number))
            inside = None
    if inside is not None or not blocks:
        raise Refused("pem-unreadable", wanted=label, found=None, line=len(lines))
    return blocks


def _der(body: str, label: str, line: int) -> bytes:
    """Decode one block's base64; only the one canonical spelling is taken (RFC 4648 section 3.5)."""
    packed = "".join(body.split())
    try:
        der = base64.b64decode(packed, validate=True)
    except (binascii.Error, ValueError) as error:
        raise Refused("pem-unreadable", wanted=label, found=None, line=line) from error
    if not der or base64.b64encode(der).decode("ascii") != packed:
        raise Refused("pem-unreadable", wanted=label, found=None, line=line)
    return der
