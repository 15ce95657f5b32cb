"""A value that must not be printed, logged, compared in haste or pickled."""

from __future__ import annotations

import hmac
from typing import Generic, NoReturn, TypeVar

T = TypeVar("T", str, bytes)


class Secret(Generic[T]):
    """Holds a passphrase (str) or key bytes so that only `reveal` gives them out.

    Python cannot wipe memory: dropping the last reference is all that `lock` can do. DEVELOPERS.md
    says so under "Limitations".
    """

    __slots__ = ("_value",)

    def __init__(self, value: T) -> None:
        self._value: T = value

    def reveal(self) -> T:
        """Give out the value. Every call is a place to look at in a review."""
        return self._value

    def __repr__(self) -> str:
        return "Secret(…)"

    __str__ = __repr__

    def __format__(self, spec: str) -> str:
        return repr(self)

    def __eq__(self, other: object) -> bool:
        if not isinstance(other, Secret):
            return NotImplemented
        mine, theirs = _as_bytes(self._value), _as_bytes(other.reveal())
        return hmac.compare_digest(mine, theirs)

    __hash__ = None  # type: ignore[assignment]  # a secret in a set or a dict key would be kept

    def __reduce_ex__(self, protocol: object) -> NoReturn:
        raise TypeError("a Secret is never pickled or copied")

    def __len__(self) -> int:
        raise TypeError("the length of a Secret is not told")


def _as_bytes(value: object) -> bytes:
    return value.encode() if isinstance(value, str) else bytes(value)  # type: ignore[call-overload]  # T is str or bytes
