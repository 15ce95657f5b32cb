"""Rehearses the very bytes of a form before they may leave: read, open, path, name, usage, dates, list, handshake."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime

from hearthkey.core.bundle import Credential, Form, InlineBundle
from hearthkey.core.errors import Refused
from hearthkey.core.rehearsal import STEPS, Rehearsal, RehearsalFailed, Step
from hearthkey.core.secret import Secret
from hearthkey.formats import archive, bundle_file, codes, pem
from hearthkey.pki import handshake, judge, pkcs8, pkcs12, read
from hearthkey.pki.judge import Purpose
from hearthkey.services import secret_names
from hearthkey.services.bundling import Written
from hearthkey.services.opening import the_authority
from hearthkey.services.ports import Clock, Pictures, Register, Vault

LARGEST = 20 * 1024 * 1024
"""Octets. No file that the app writes comes near; larger ones are not read at all."""


@dataclass(frozen=True)
class _Against:
    """What a bundle is rehearsed against."""

    gateway: Credential
    host: str
    authority: bytes
    revocation_list: bytes
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

        found = _Found()
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
        trusted = (against.authority,)
        wanted = identity or next((name.removeprefix("dns:") for name in facts.names), "")
        # The path is judged at a moment when the certificate runs, so that a wrong date is told as a date.
        running = min(max(against.at, facts.not_before), facts.not_after)
        dates = f"{facts.not_before:%Y-%m-%d} to {facts.not_after:%Y-%m-%d}"
        newest = against.revocation_list
        take("path", facts.issuer, lambda: judge.check_path(device.certificate, trusted, None, running))
        take("name", wanted, lambda: judge.check_name(device.certificate, wanted))
        take("usage", "IKE and TLS client", lambda: _check_usages(device.certificate))
        take("dates", dates, lambda: judge.check_path(device.certificate, trusted, None, against.at))
        take("list", "not on it", lambda: judge.check_path(device.certificate, trusted, newest, against.at))
        take(
            "handshake",
            against.host,
            lambda: handshake.rehearse(device, against.gateway, newest, host=against.host, at=against.at),
        )

    def _against(self) -> _Against:
        authority = the_authority(self._register)
        gateway = self._register.gateway()
        newest = self._register.newest_list()
        if gateway is None or newest is None:
            raise Refused("no-household")
        secret = self._vault.get(secret_names.gateway_key(authority, gateway.serial))
        if secret is None:
            raise Refused("gateway-secret-lost")
        return _Against(
            gateway=Credential(
                pkcs8.open_key(gateway.sealed_key, secret, foreign=False), gateway.certificate, (authority.certificate,)
            ),
            host=gateway.host,
            authority=authority.certificate,
            revocation_list=newest.der,
            at=self._clock.now(),
        )


class _Found:
    """What came out of the files, filled in step by step."""

    def __init__(self) -> None:
        self._inline: InlineBundle | None = None
        self._container: bytes | None = None
        self._opened: Credential | None = None
        self._shut: Refused | None = None

    @property
    def credential(self) -> Credential:
        if self._opened is None:
            raise Refused("bundle-empty")
        return self._opened

    def read(self, form: Form, files: Sequence[Written], pictures: Pictures, passphrase: Secret[str]) -> None:
        if not files:
            raise Refused("bundle-empty")
        if form is Form.CODES:
            texts = [text for one in files for text in pictures.read_codes(one.data)]
            self._inline = bundle_file.read(codes.join(texts))
        elif form is Form.BUNDLE:
            self._inline = bundle_file.read(files[0].data)
        elif form is Form.PKCS12:
            self._container = files[0].data
            pkcs12.describe(files[0].data)
        else:
            self._unpack(files[0].data, passphrase)

    def _unpack(self, data: bytes, passphrase: Secret[str]) -> None:
        try:
            members = archive.read(data, passphrase)
        except Refused as error:
            if error.code != "wrong-passphrase":
                raise
            # The archive is whole; that it stays shut is told by the next step.
            self._shut = error
        else:
            self._read_archive(members)

    def _read_archive(self, members: dict[str, bytes]) -> None:
        bundles = [data for name, data in members.items() if name.endswith(".bundle.toml")]
        containers = [data for name, data in members.items() if name.endswith(".p12")]
        trusted = [data for name, data in members.items() if name.endswith(".crt")]
        if len(bundles) != 1 or len(containers) != 1 or len(trusted) != 1:
            raise Refused("archive-incomplete", names=tuple(members))
        self._inline = bundle_file.read(bundles[0])
        self._container = containers[0]
        pkcs12.describe(containers[0])
        if tuple(pem.decode(trusted[0].decode("ascii", "replace"), "CERTIFICATE")) != self._inline.authorities:
            raise Refused("bundle-contradicts-itself")

    def open(self, passphrase: Secret[str], *, foreign: bool) -> None:
        if self._shut is not None:
            raise self._shut
        opened: list[Credential] = []
        if self._container is not None:
            pkcs12.check_mac(self._container, passphrase)
            opened.append(pkcs12.open_container(self._container, passphrase, foreign=foreign))
        if self._inline is not None:
            key = pkcs8.open_key(self._inline.encrypted_key, passphrase, foreign=foreign)
            opened.append(Credential(key, self._inline.certificate, self._inline.authorities))
        first = opened[0]
        for other in opened:
            if (other.certificate, other.authorities) != (
                first.certificate,
                first.authorities,
            ) or other.key != first.key:
                raise Refused("bundle-contradicts-itself")
        if self._inline is not None:
            _check_settings(self._inline)
        self._opened = first


def _check_settings(inline: InlineBundle) -> None:
    """The settings of a bundle file have to be those of the certificate in it."""
    facts = read.certificate_facts(inline.certificate)
    said = inline.settings
    trusted = {read.certificate_facts(der).fingerprint for der in inline.authorities}
    if (
        (said.serial, said.not_before, said.ends) != (facts.serial, facts.not_before, facts.not_after)
        or f"dns:{said.identity}" not in facts.names
        or said.authority_fingerprint not in trusted
    ):
        raise Refused("bundle-contradicts-itself")


def recognise(files: Sequence[Written]) -> Form:
    """Tell by the first octets what files are meant to be."""
    first = files[0].data if files else b""
    if first.startswith((b"\x89PNG", b"\xff\xd8\xff")):
        return Form.CODES
    if first.startswith(b"PK"):
        return Form.ARCHIVE
    return Form.PKCS12 if first.startswith(b"\x30") else Form.BUNDLE
