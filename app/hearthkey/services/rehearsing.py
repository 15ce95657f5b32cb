"""Rehearses the very bytes of a form before they may leave: read, open, path, name, usage, dates, list, handshake."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime

from hearthkey.core.bundle import Credential, Form
from hearthkey.core.errors import Refused
from hearthkey.core.rehearsal import STEPS, Rehearsal, RehearsalFailed, Step
from hearthkey.core.secret import Secret
from hearthkey.pki import handshake, judge, pkcs8, read
from hearthkey.pki.judge import Purpose
from hearthkey.services import secret_names
from hearthkey.services.bundling import Written
from hearthkey.services.opening import the_authority
from hearthkey.services.pack_generations import chain_of
from hearthkey.services.ports import Clock, Pictures, Register, Vault
from hearthkey.services.reading_forms import Found

LARGEST = 20 * 1024 * 1024
"""Octets. No file that the app writes comes near; larger ones are not read at all."""


@dataclass(frozen=True)
class _Against:
    """What a bundle is rehearsed against."""

    gateway: Credential
    host: str
    authorities: tuple[bytes, ...]
    lists: tuple[bytes, ...]
    chain: tuple[bytes, ...]
    at: datetime


_Take = Callable[[str, str, Callable[[], object]], None]


def _check_usages(certificate: bytes) -> None:
    for purpose in (Purpose.IKE, Purpose.TLS_CLIENT):
        judge.check_usage(certificate, purpose)


class Rehearsing:
    """The verb "rehearse", and the gate of every export."""

    def __init__(self, register: Register, vault: Vault, clock: Clock, pictures: Pictures) -> None:
        self._register = register
        self._vault = vault
        self._clock = clock
        self._pictures = pictures

    def rehearse(
        self, form: Form, files: Sequence[Written], passphrase: Secret[str], *, identity: str | None
    ) -> Rehearsal:
        """Try a form as its device and the gateway will.

        Args:
            form: what the files are said to be.
            files: names and contents; more than one for codes.
            passphrase: the bundle's.
            identity: whose bundle it has to be, where it was made here a moment ago; None for files from
                anywhere, whose keys are looked at more closely and whose name is taken as it stands.

        Returns:
            A rehearsal that passed.

        Raises:
            RehearsalFailed: with the step and its cause.
            Refused: no-household, gateway-secret-lost.
            Unavailable: as the vault.
        """
        against = self._against()
        steps: list[Step] = []

        def take(name: str, seen: str, question: Callable[[], object]) -> None:
            try:
                question()
            except Refused as error:
                steps.append(
                    Step(
                        name, passed=False, seen=str(error.facts.get("seen") or ""), code=error.code, facts=error.facts
                    )
                )
                raise RehearsalFailed(Rehearsal(form.value, tuple(steps))) from error
            steps.append(Step(name, passed=True, seen=seen))

        found = Found(self._signers())
        octets = sum(len(one.data) for one in files)
        take("read", f"{octets} octets", lambda: found.read(form, files, self._pictures, passphrase))
        take("open", "opens with its passphrase", lambda: found.open(passphrase, foreign=identity is None))
        self._judge(found.credential, against, identity, take)
        rehearsal = Rehearsal(form.value, tuple(steps))
        if tuple(step.name for step in steps) != STEPS:
            raise RehearsalFailed(rehearsal)
        return rehearsal

    def _judge(self, device: Credential, against: _Against, identity: str | None, take: _Take) -> None:
        facts = read.certificate_facts(device.certificate)
        trusted = against.authorities
        wanted = identity or next((name.removeprefix("dns:") for name in facts.names), "")
        # The path is judged at a moment when the certificate runs, so that a wrong date is told as a date.
        running = min(max(against.at, facts.not_before), facts.not_after)
        dates = f"{facts.not_before:%Y-%m-%d} to {facts.not_after:%Y-%m-%d}"
        newest, *further = against.lists
        take("path", facts.issuer, lambda: judge.check_path(device.certificate, trusted, None, running))
        take("name", wanted, lambda: judge.check_name(device.certificate, wanted))
        take("usage", "IKE and TLS client", lambda: _check_usages(device.certificate))
        take("dates", dates, lambda: judge.check_path(device.certificate, trusted, None, against.at))
        take(
            "list",
            "not on it",
            lambda: judge.check_path(device.certificate, trusted, newest, against.at, further_lists=further),
        )
        take(
            "handshake",
            against.host,
            lambda: handshake.rehearse(
                device,
                against.gateway,
                newest,
                host=against.host,
                at=against.at,
                chain=against.chain,
                further_lists=tuple(further),
            ),
        )

    def _signers(self) -> tuple[bytes, ...]:
        """Whose signature on a profile is the household's."""
        gateway = self._register.gateway()
        trusted = tuple(one.certificate for one in self._register.authorities())
        return (*trusted, *(() if gateway is None else (gateway.certificate,)))

    def _against(self) -> _Against:
        authority = the_authority(self._register)
        gateway = self._register.gateway()
        newest = self._register.newest_list()
        if gateway is None or newest is None:
            raise Refused("no-household")
        secret = self._vault.get(secret_names.gateway_key(authority, gateway.serial))
        if secret is None:
            raise Refused("gateway-secret-lost")
        trusted = tuple(one.certificate for one in self._register.authorities())
        return _Against(
            gateway=Credential(pkcs8.open_key(gateway.sealed_key, secret, foreign=False), gateway.certificate, trusted),
            host=gateway.host,
            authorities=trusted,
            lists=newest.ders,
            chain=chain_of(self._register, gateway),
            at=self._clock.now(),
        )
