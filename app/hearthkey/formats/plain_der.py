"""The few kinds of DER (ITU-T X.690) that the household writes by itself; anything else is refused."""

from __future__ import annotations

from collections.abc import Sequence

Value = int | str | bytes | Sequence["Value"]
"""INTEGER, UTF8String, OCTET STRING, SEQUENCE."""

_INTEGER, _OCTETS, _TEXT, _SEQUENCE = 0x02, 0x04, 0x0C, 0x30
_DEEPEST = 4


def encode(value: Value) -> bytes:
    """Write a value; numbers are never negative."""
    if isinstance(value, int):
        return _with_head(_INTEGER, value.to_bytes(value.bit_length() // 8 + 1, "big"))
    if isinstance(value, str):
        return _with_head(_TEXT, value.encode())
    if isinstance(value, bytes):
        return _with_head(_OCTETS, value)
    return _with_head(_SEQUENCE, b"".join(encode(one) for one in value))


def _with_head(tag: int, body: bytes) -> bytes:
    size = len(body)
    if size < 0x80:
        return bytes([tag, size]) + body
    told = size.to_bytes((size.bit_length() + 7) // 8, "big")
    return bytes([tag, 0x80 + len(told)]) + told + body


def decode(data: bytes) -> Value:
    """Read one value and nothing behind it, in the one spelling that DER allows.

    Raises:
        ValueError: it is anything else.
    """
    value = _decoded(data, 0)
    if encode(value) != data:
        raise ValueError("not the one spelling")
    return value


def _decoded(data: bytes, depth: int) -> Value:
    tag, body, rest = _split(data)
    if rest or depth > _DEEPEST:
        raise ValueError("something behind, or too deep")
    if tag == _INTEGER:
        return int.from_bytes(body, "big")
    if tag == _OCTETS:
        return body
    if tag == _TEXT:
        return body.decode()
    if tag != _SEQUENCE:
        raise ValueError(f"tag {tag}")
    parts: list[Value] = []
    while body:
        _tag, _inside, behind = _split(body)
        parts.append(_decoded(body[: len(body) - len(behind)], depth + 1))
        body = behind
    return tuple(parts)


def _split(data: bytes) -> tuple[int, bytes, bytes]:
    """The tag, the contents, and what is behind."""
    if len(data) < 2:
        raise ValueError("too short")
    size, at = data[1], 2
    if size > 0x82 or size == 0x80:
        raise ValueError("too long")
    if size > 0x80:
        at = 2 + size - 0x80
        size = int.from_bytes(data[2:at], "big")
    if len(data) < at + size:
        raise ValueError("too short")
    return data[0], data[at : at + size], data[at + size :]
