"""Makes the gateway pack: everything the gateway needs, the same bytes whenever it is made."""

from __future__ import annotations

import hashlib
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from hearthkey.core import kinds
from hearthkey.core.bundle import Credential
from hearthkey.core.errors import Refused
from hearthkey.core.household import Authority, Gateway, Household
from hearthkey.core.pack import (
    AUTHORITY_CERTIFICATE,
    GATEWAY_CERTIFICATE,
    GATEWAY_KEY,
    LIST_PEM,
    MANIFEST,
    Pack,
    PackFile,
    packed,
)
from hearthkey.core.pack_options import PackOptions
from hearthkey.core.passes import Pass
from hearthkey.core.plans import Changes
from hearthkey.core.revocation import SignedList
from hearthkey.core.secret import Secret
from hearthkey.core.sentences import diary
from hearthkey.core.templates import GATEWAY, Template
from hearthkey.core.tunnel import Terms
from hearthkey.formats import archive, pem
from hearthkey.formats.template import compile_text
from hearthkey.pki import pkcs8, pkcs12
from hearthkey.services import looking, secret_names
from hearthkey.services.extra_secrets import ExtraSecrets
from hearthkey.services.gateway_ports import GatewayRegister
from hearthkey.services.opening import the_authority
from hearthkey.services.pack_files import settings_files, told
from hearthkey.services.pack_generations import both_generations, chain_of, chained, succession_mark, two_cas_file
from hearthkey.services.ports import Clock, Files, Vault
from hearthkey.services.stopping import SHARED_SECRET
from hearthkey.services.templating import Templating
from hearthkey.services.writing_diary import note

LIST_SLOTS = frozenset({"revocation_list", "list_number", "list_good_until", "devices"})
"""Slots whose value changes with every list."""


def list_files(signed: SignedList) -> tuple[PackFile, ...]:
    """A revocation list as the files of the pack; see `both_generations` for the lists of two CAs."""
    return both_generations(LIST_PEM.removesuffix(".pem"), pem.X509_CRL, signed.ders, ending="crl")


class Packing:
    """The verb "pack"."""

    def __init__(
        self,
        register: GatewayRegister,
        vault: Vault,
        clock: Clock,
        files: Files,
        *,
        templating: Templating,
        secrets: ExtraSecrets,
        print_sheet: Callable[[Terms], bytes],
        draw_words: Callable[[], Secret[str]],
    ) -> None:
        self._draw_words = draw_words
        self._print_sheet = print_sheet
        self._templating = templating
        self._secrets = secrets
        self._register = register
        self._vault = vault
        self._clock = clock
        self._files = files

    def mark(self) -> str:
        """A short hash over everything that the pack is made from, but for the revocation list and without secrets."""
        household, _, gateway = self._parts()
        target = self._register.target()
        made_of = (
            household,
            self._register.authorities()[0].fingerprint,
            gateway.serial,
            self._register.pack_options(),
            sorted({one.key_set for one in self._living()}),
            None if target is None else target.folder,
            self._templates(),
            self._secrets.mark(),
            *succession_mark(self._register),
        )
        return hashlib.sha256(repr(made_of).encode()).hexdigest()[:16]

    def pack(self) -> Pack:
        """Make it.

        Raises:
            Refused: no-household, gateway-secret-lost.
            Unavailable: as vault and register.
        """
        household, authority, gateway = self._parts()
        newest = self._register.newest_list()
        if newest is None:
            raise Refused("no-household")
        key = self.gateway_key(authority, gateway)
        files = [
            *chained(GATEWAY_CERTIFICATE, gateway.certificate, chain_of(self._register, gateway)),
            *_both(GATEWAY_KEY, pem.PRIVATE_KEY, key.reveal(), secret=True),
            *both_generations(
                AUTHORITY_CERTIFICATE,
                pem.CERTIFICATE,
                tuple(one.certificate for one in self._register.authorities()),
            ),
            PackFile("gateway.p12", self._archive(gateway, key), secret=True),
            *list_files(newest),
            *settings_files(self.terms(), household, self._register.pack_options(), self._register.target()),
            *two_cas_file(self._register, gateway),
            *self._extra(),
            *self._own(),
        ]
        return packed(files, newest.number)

    def terms(self) -> Terms:
        """What the gateway is told, for its sheet.

        Raises:
            Refused: no-household, outer-mtu-odd.
        """
        household, _, gateway = self._parts()
        options, former = self._register.pack_options(), self._register.former_hosts()
        return told(household, gateway, self._living(), options, former)

    def check(self, options: PackOptions) -> None:
        """Refuse choices that no file could be written from.

        Raises:
            Refused: as `pack_files.told` and `pack_files.settings_files`.
        """
        household, _, gateway = self._parts()
        facts = told(household, gateway, self._living(), options, self._register.former_hosts())
        settings_files(facts, household, options, self._register.target())

    def _living(self) -> list[Pass]:
        """Those that get in, or would if they were not stopped: a stop alone changes no file but the list."""
        return looking.living(self._register.passes(), self._clock.now())

    def save(self, folder: Path) -> Changes:
        """Write the pack into a folder of its own inside `folder`, for gateways that take files by hand.

        The sheet lies there as PDF too; people read it, a gateway does not.

        Raises:
            Refused: as `pack`.
            Unavailable: as vault, register and files.
        """
        made = self.pack()
        into = folder / f"gateway-{made.set_id}"
        sheet = PackFile("settings-sheet.pdf", self._print_sheet(self.terms()))
        paths = tuple(str(self._save(into, file)) for file in (*made.files, sheet))
        sentence = diary.packed(str(into), made.list_number)
        with self._register.change() as change:
            note(self._register, change, verb="pack", sentence=sentence, now=self._clock.now())
        return Changes(sentence, files=paths)

    def save_archive(self, folder: Path) -> Changes:
        """Write the pack as one archive under AES-256, to be opened with `archive_passphrase`.

        Archives here are flat, so what has a folder in the pack has it in its name there.

        Raises:
            Refused: as `pack`.
            Unavailable: as vault, register and files.
        """
        made = self.pack()
        sheet = PackFile("settings-sheet.pdf", self._print_sheet(self.terms()))
        named = [file for file in (*made.files, sheet) if file.name != MANIFEST]
        flat = packed([replace(file, name=file.name.replace("/", "-")) for file in named], made.list_number)
        now = self._clock.now()
        data = archive.write({file.name: file.data for file in flat.files}, self.archive_passphrase(), now, most=500)
        path = self._files.write(folder, f"gateway-{made.set_id}.zip", data)
        sentence = diary.packed(str(path), made.list_number)
        with self._register.change() as change:
            note(self._register, change, verb="pack", sentence=sentence, now=now)
        return Changes(sentence, files=(str(path),))

    def _save(self, into: Path, file: PackFile) -> Path:
        *folders, name = file.name.split("/")
        return self._files.write(into.joinpath(*folders), name, file.data)

    def list_matters(self) -> bool:
        """Whether a file beside the revocation list's own is made from the list, or from who gets in."""
        return any(compile_text(one.text, one.of).slots_used & LIST_SLOTS for one in self._templates())

    def _templates(self) -> list[Template]:
        return [one for one in self._register.templates() if one.of == GATEWAY]

    def _own(self) -> list[PackFile]:
        """What the householder's templates make, in a folder of its own so that no name meets ours."""
        found = [self._templating.render_gateway(one) for one in self._templates()]
        return [PackFile(f"own/{one.name}", one.data, secret=True) for one in found]

    def _extra(self) -> list[PackFile]:
        """Secrets beside the certificates: a line of identity and base64 for each device (RFC 8784 section 5.1)."""
        lines = [f"{identity} {secret.reveal()}" for identity, secret in sorted(self._secrets.of_devices().items())]
        shared = self._secrets(SHARED_SECRET)
        files = [("extra-secrets.txt", "\n".join([*lines, ""]))] if lines else []
        files += [("shared-secret.txt", f"{shared.reveal()}\n")] if shared is not None else []
        return [PackFile(name, text.encode("ascii"), secret=True) for name, text in files]

    def gateway_key(self, authority: Authority, gateway: Gateway) -> Secret[bytes]:
        """The gateway's private key, unencrypted PKCS#8 DER: it starts unattended, so nobody is there to type.

        Raises:
            Refused: gateway-secret-lost.
            Unavailable: as the vault.
        """
        return pkcs8.open_key(gateway.sealed_key, self._secret(authority, gateway))

    def archive_passphrase(self) -> Secret[str]:
        """What ``gateway.p12`` and the archive are opened with: seven words, drawn when they are first wanted.

        Raises:
            Refused: no-household.
            Unavailable: as the vault.
        """
        name = secret_names.gateway_archive(the_authority(self._register))
        kept = self._vault.get(name)
        if kept is None:
            kept = self._draw_words()
            self._vault.put(name, kept)
        return kept

    def _secret(self, authority: Authority, gateway: Gateway) -> Secret[str]:
        secret = self._vault.get(secret_names.gateway_key(authority, gateway.serial))
        if secret is None:
            raise Refused("gateway-secret-lost")
        return secret

    def _archive(self, gateway: Gateway, key: Secret[bytes]) -> bytes:
        """The PKCS#12, made once and kept: salts drawn anew would make every pack another one."""
        kept = self._register.gateway_archive(gateway.serial)
        if kept is not None:
            return kept
        made = pkcs12.write(
            Credential(
                key,
                gateway.certificate,
                (
                    *chain_of(self._register, gateway),
                    *(one.certificate for one in self._register.authorities()),
                ),
            ),
            self.archive_passphrase(),
            friendly_name=gateway.host,
            container=kinds.STRONG,
        )
        with self._register.change() as change:
            change.keep_gateway_archive(gateway.serial, made)
        return made

    def _parts(self) -> tuple[Household, Authority, Gateway]:
        household, gateway = self._register.household(), self._register.gateway()
        if household is None or gateway is None:
            raise Refused("no-household")
        return household, the_authority(self._register), gateway


def _both(name: str, label: str, der: bytes, *, secret: bool = False) -> tuple[PackFile, PackFile]:
    """A thing as PEM and as DER."""
    return (
        PackFile(f"{name}.pem", pem.encode(label, der).encode("ascii"), secret),
        PackFile(f"{name}.der", der, secret),
    )
