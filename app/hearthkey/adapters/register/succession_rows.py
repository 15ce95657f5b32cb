"""The part of the register that is about the household's CAs: who is trusted, in charge, and signed which list."""

from __future__ import annotations

import sqlite3
from datetime import datetime
from typing import TYPE_CHECKING, Any, Protocol

from hearthkey.adapters.register import rows
from hearthkey.core.household import Authority
from hearthkey.core.revocation import ListBeside, SignedList

if TYPE_CHECKING:  # loaded where there is a succession: a household with one CA does without
    from hearthkey.core.succession import Cause, Step, Succession

DROP_UNUSED_BESIDE = "DELETE FROM list_beside WHERE number NOT IN (SELECT number FROM revocation_list)"
DROP_UNUSED_SIGNERS = "DELETE FROM list_signer WHERE number NOT IN (SELECT number FROM revocation_list)"
"""What belongs to spare lists goes with them."""

_AUTHORITIES = (
    "SELECT certificate, fingerprint, not_after, key_place, "
    "CASE id WHEN (SELECT min(id) FROM authority) THEN '' "
    "ELSE (SELECT fingerprint FROM authority ORDER BY id LIMIT 1) END FROM authority"
)
_SUCCESSION = """
SELECT id, old, new, cross_certificate, cause FROM succession
WHERE EXISTS (SELECT 1 FROM succession_step
              WHERE succession = succession.id AND step = 'begin' AND taken_back IS NULL)
ORDER BY id DESC LIMIT 1
"""
_DROP_ARCHIVES = "DELETE FROM gateway_archive"
"""The gateway's PKCS#12 holds the CAs that it is to trust, so it is made anew after every step."""

_STEPS = "SELECT step, taken FROM succession_step WHERE succession = ? AND taken_back IS NULL ORDER BY id"
_SIGNER = """
SELECT authority.fingerprint, authority.id FROM list_signer JOIN authority ON authority.id = list_signer.authority
WHERE number = ?
"""
_BESIDE = """
SELECT authority.fingerprint, authority.id, list_beside.der
FROM list_beside JOIN authority ON authority.id = list_beside.authority WHERE number = {number} ORDER BY authority.id
"""


class Asks(Protocol):
    """What `SuccessionReads` stands on."""

    def _one(self, query: str, *values: object) -> tuple[object, ...] | None: ...
    def _all(self, query: str) -> list[tuple[object, ...]]: ...

    def succession(self) -> Succession | None:
        """See the port."""

    def first_authority(self) -> Authority | None:
        """See `SuccessionReads`."""


class SuccessionReads:
    """The reading half of the port `services.succession_ports.SuccessionRegister`."""

    def first_authority(self: Asks) -> Authority | None:
        """The CA that the household was founded with."""
        row: tuple[Any, ...] | None = self._one(f"{_AUTHORITIES} ORDER BY id LIMIT 1")
        return None if row is None else rows.authority(row)

    def authority(self: Asks) -> Authority | None:
        """See the port."""
        found = self.succession()
        return self.first_authority() if found is None else found.in_charge

    def authorities(self: Asks) -> list[Authority]:
        """See the port."""
        found = self.succession()
        if found is not None:
            return list(found.trusted)
        first = self.first_authority()
        return [] if first is None else [first]

    def every_authority(self: Asks) -> list[Authority]:
        """See the port."""
        found: list[tuple[Any, ...]] = self._all(f"{_AUTHORITIES} ORDER BY id")
        return [rows.authority(row) for row in found]

    def succession(self: Asks) -> Succession | None:
        """See the port."""
        row: tuple[Any, ...] | None = self._one(_SUCCESSION)
        if row is None:
            return None
        from hearthkey.core.succession import Cause, Step, Succession  # noqa: PLC0415 - see above

        number, old, new, cross, cause = row
        known: dict[object, Authority] = {}
        for which in (old, new):
            found: tuple[Any, ...] | None = self._one(f"{_AUTHORITIES} WHERE id = ?", which)
            if found is not None:
                known[which] = rows.authority(found)
        steps: list[tuple[Any, ...]] = self._all(_STEPS.replace("?", str(int(number))))
        taken = {Step(step): rows.moment(at) for step, at in steps}
        return Succession(known[old], known[new], cross, Cause(cause), taken)

    def with_signers(self: Asks, row: tuple[Any, ...] | None) -> SignedList | None:
        """A list with who signed it, and what the other CA signed beside it."""
        if row is None:
            return None
        signer: tuple[Any, ...] | None = self._one(_SIGNER, row[0])
        if signer is None:
            return rows.signed_list(row)
        fingerprint, age = signer
        found: list[tuple[Any, ...]] = self._all(_BESIDE.format(number=int(row[0])))
        beside = tuple(ListBeside(whose, der, older=which < age) for whose, which, der in found)
        return rows.signed_list(row, fingerprint, beside)


class Does(Protocol):
    """What `SuccessionWrites` stands on."""

    def _do(self, statement: str, *values: object) -> sqlite3.Cursor: ...

    def add_authority(self, authority: Authority, subject: str) -> int:
        """See `SuccessionWrites`."""

    def take_step(self, step: Step, now: datetime) -> None:
        """See the port."""


def _seconds(moment: datetime) -> int:
    return int(moment.timestamp())


class SuccessionWrites:
    """The writing half of the port, as part of a transaction."""

    def add_authority(self: Does, authority: Authority, subject: str) -> int:
        """Write a CA and return its row."""
        made = self._do(
            "INSERT INTO authority (subject, certificate, fingerprint, not_after, key_place) VALUES (?, ?, ?, ?, ?)",
            subject,
            authority.certificate,
            authority.fingerprint,
            _seconds(authority.not_after),
            authority.key_place,
        )
        return int(made.lastrowid or 0)

    def begin_succession(
        self: Does, authority: Authority, subject: str, cross: bytes | None, cause: Cause, now: datetime
    ) -> None:
        """See the port."""
        from hearthkey.core.succession import Step  # noqa: PLC0415 - see above

        # The CA in charge is the newest one that a finished succession led to, else the first.
        row = self._do(
            "SELECT coalesce((SELECT new FROM succession JOIN succession_step ON succession = succession.id "
            "WHERE step = 'finish' ORDER BY succession.id DESC LIMIT 1), (SELECT min(id) FROM authority))"
        ).fetchone()
        new = self.add_authority(authority, subject)
        self._do(
            "INSERT INTO succession (old, new, cross_certificate, cause) VALUES (?, ?, ?, ?)",
            row[0],
            new,
            cross,
            cause.value,
        )
        self.take_step(Step.BEGIN, now)

    def succession_stolen(self: Does) -> None:
        """See the port."""
        self._do(
            "UPDATE succession SET cause = 'stolen' WHERE id = (SELECT max(id) FROM succession) AND cause = 'planned'"
        )

    def take_step(self: Does, step: Step, now: datetime) -> None:
        """See the port."""
        self._do(
            "INSERT INTO succession_step (succession, step, taken) VALUES ((SELECT max(id) FROM succession), ?, ?)",
            step.value,
            _seconds(now),
        )
        self._do(_DROP_ARCHIVES)

    def take_back(self: Does, step: Step, now: datetime) -> None:
        """See the port."""
        self._do(
            "UPDATE succession_step SET taken_back = ? WHERE succession = (SELECT max(id) FROM succession) "
            "AND step = ? AND taken_back IS NULL",
            _seconds(now),
            step.value,
        )
        self._do(_DROP_ARCHIVES)

    def keep_signers(self: Does, signed: SignedList) -> None:
        """Write down which CA signed a list, and keep what the other one signed beside it."""
        if signed.signer:
            self._do(
                "INSERT INTO list_signer SELECT ?, id FROM authority WHERE fingerprint = ? "
                "ON CONFLICT (number) DO NOTHING",
                signed.number,
                signed.signer,
            )
        for one in signed.beside:
            self._do(
                "INSERT INTO list_beside SELECT ?, id, ? FROM authority WHERE fingerprint = ? "
                "ON CONFLICT (number, authority) DO NOTHING",
                signed.number,
                one.der,
                one.authority,
            )

    def drop_unused_signers(self: Does) -> None:
        """Forget who signed spare lists that were never used."""
        self._do(DROP_UNUSED_BESIDE)
        self._do(DROP_UNUSED_SIGNERS)
