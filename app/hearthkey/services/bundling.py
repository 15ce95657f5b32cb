"""Opens a waiting pass and writes its bundle in every form, all from one value."""

from __future__ import annotations

import base64
from collections.abc import Callable, Mapping
from dataclasses import dataclass

from hearthkey.core.bundle import Bundle, Credential, Form, InlineBundle, Settings
from hearthkey.core.errors import Bug, Refused
from hearthkey.core.household import Authority, Household
from hearthkey.core.keysets import key_set
from hearthkey.core.kinds import STRONG
from hearthkey.core.passes import Pass, State
from hearthkey.core.secret import Secret
from hearthkey.formats import archive, bundle_file, codes, connect_script, pem, pem_set, profile
from hearthkey.pki import pkcs8, pkcs12, read
from hearthkey.services import secret_names
from hearthkey.services.generations import trusted_by
from hearthkey.services.opening import the_authority
from hearthkey.services.ports import Clock, Pictures, Register, SealJob, Vault, Workshop

PNG, SVG = "png", "svg"
_BY_ONE_VALUE = frozenset({Form.PROFILE, Form.SCRIPT, Form.PEM})


@dataclass(frozen=True)
class Written:
    """One file of a form, not yet on any disk.

    Args:
        name: file name.
        data: content.
    """

    name: str
    data: bytes


class Bundling:
    """Makes the one `Bundle` value, and the forms from it."""

    def __init__(
        self,
        register: Register,
        vault: Vault,
        clock: Clock,
        pictures: Pictures,
        sign_profile: Callable[[bytes], bytes],
        workshop: Workshop | None = None,
    ) -> None:
        self._sign_profile = sign_profile
        self._workshop = workshop
        self._register = register
        self._vault = vault
        self._clock = clock
        self._pictures = pictures

    def passphrase(self, chosen: Pass) -> Secret[str]:
        """The passphrase of a waiting bundle.

        Raises:
            Refused: pass-handed-over, pass-not-alive, passphrase-lost.
            Unavailable: as the vault.
        """
        if chosen.handed_over is not None:
            raise Refused("pass-handed-over", title=chosen.title)
        if chosen.key_lost:
            raise Refused("passphrase-lost", title=chosen.title)
        if not chosen.key_is_here:
            raise Refused("pass-not-alive", title=chosen.title, state=State.REVOKED.value)
        kept = self._vault.get(secret_names.bundle_passphrase(the_authority(self._register), chosen.serial))
        if kept is None:
            raise Refused("passphrase-lost", title=chosen.title)
        return kept

    def open(self, chosen: Pass) -> Bundle:
        """Open the PKCS#12 that the register keeps until hand-over.

        Raises:
            Refused: as `passphrase`, and no-household.
        """
        authority = the_authority(self._register)
        household = self._register.household()
        sealed = self._register.sealed(chosen.serial)
        if household is None:
            raise Refused("no-household")
        secret = self.passphrase(chosen)
        if sealed is None:
            raise Bug("waiting-without-key", serial=chosen.serial)
        credential = pkcs12.open_container(sealed, secret, foreign=False)
        authorities = trusted_by(credential.certificate, self._register.authorities())
        return Bundle(
            settings=settings_of(chosen, household, authority),
            key=credential.key,
            certificate=credential.certificate,
            authorities=tuple(one.certificate for one in authorities),
            passphrase=secret,
            container=chosen.container,
        )

    def write(self, bundle: Bundle, form: Form, *, picture: str = PNG) -> list[Written]:
        """Write one form.

        Args:
            picture: for codes, ``png`` or ``svg``.

        Raises:
            Refused: picture-unknown; for a profile that is to be signed, as `ProfileSigning.sign`.
        """
        if form is Form.BUNDLE:
            return [Written(bundle_file.file_name(bundle.settings), self._inline(bundle))]
        if form is Form.PKCS12:
            return [Written(archive.pkcs12_name(bundle.settings), self._container(bundle))]
        if form is Form.ARCHIVE:
            return [Written(archive.file_name(bundle.settings), self._archive(bundle))]
        if form in _BY_ONE_VALUE:
            return [Written(name, data) for name, data in self._later_forms(bundle, form).items()]
        return self._drawn(bundle, self._frames(bundle), picture)

    def write_for_proof(self, bundle: Bundle, form: Form, *, picture: str = PNG) -> tuple[list[Written], list[Written]]:
        """Write one form, and give with it what a rehearsal reads of it.

        SVG has no reader here, so the very frames of the codes are drawn as PNG as well.

        Raises:
            Refused: picture-unknown.
        """
        if form is Form.CODES and picture == SVG:
            frames = self._frames(bundle)
            return self._drawn(bundle, frames, SVG), self._drawn(bundle, frames, PNG)
        files = self.write(bundle, form, picture=picture)
        return files, files

    def _later_forms(self, bundle: Bundle, form: Form) -> Mapping[str, bytes]:
        settings, container_name = bundle.settings, archive.pkcs12_name(bundle.settings)
        if form is Form.PEM:
            key = pkcs8.seal_key(bundle.key, bundle.passphrase)
            return pem_set.write(settings, pem_set.PemSet(key, bundle.certificate, bundle.authorities))
        container = self._container(bundle)
        if form is Form.PROFILE:
            written = profile.write(
                settings,
                container,
                bundle.authorities,
                self._register.connect_choices(),
                issuer=read.common_name(bundle.authorities[0]),
                container_name=container_name,
                mark=the_authority(self._register).short,
            )
            return {profile.file_name(settings): self._sign_profile(written)}
        script = connect_script.write(
            settings,
            container_name=container_name,
            ca_base64=base64.b64encode(bundle.authorities[0]).decode("ascii"),
            ca_print=read.short_print(bundle.authorities[0]),
            device_print=read.short_print(bundle.certificate),
            further=tuple(
                (base64.b64encode(one).decode("ascii"), read.short_print(one)) for one in bundle.authorities[1:]
            ),
        )
        return {connect_script.file_name(settings): script, container_name: container}

    def _inline(self, bundle: Bundle) -> bytes:
        return bundle_file.write(
            InlineBundle(
                settings=bundle.settings,
                encrypted_key=pkcs8.seal_key(bundle.key, bundle.passphrase),
                certificate=bundle.certificate,
                authorities=bundle.authorities,
            )
        )

    def _container(self, bundle: Bundle) -> bytes:
        if bundle.container == STRONG and self._workshop is not None:
            job = SealJob(credential_of(bundle), bundle.passphrase, bundle.settings.device)
            return next(iter(self._workshop.seal([job])))
        return pkcs12.write(
            credential_of(bundle),
            bundle.passphrase,
            friendly_name=bundle.settings.device,
            container=bundle.container,
        )

    def _archive(self, bundle: Bundle) -> bytes:
        authorities = "".join(pem.encode("CERTIFICATE", der) for der in bundle.authorities)
        members = {
            bundle_file.file_name(bundle.settings): self._inline(bundle),
            archive.pkcs12_name(bundle.settings): self._container(bundle),
            archive.authority_name(bundle.settings): authorities.encode("ascii"),
            "read-me.txt": archive.note(bundle.settings),
        }
        return archive.write(members, bundle.passphrase, self._clock.now())

    def _frames(self, bundle: Bundle) -> tuple[str, ...]:
        return codes.frames(self._inline(bundle))

    def _drawn(self, bundle: Bundle, frames: tuple[str, ...], picture: str) -> list[Written]:
        if picture not in {PNG, SVG}:
            raise Refused("picture-unknown", text=picture[:40])
        draw = self._pictures.png if picture == PNG else self._pictures.svg
        stem = archive.pkcs12_name(bundle.settings).removesuffix(".p12")
        return [
            Written(f"{stem}.code-{number:02d}-of-{len(frames):02d}.{picture}", draw(codes.matrix(frame)))
            for number, frame in enumerate(frames, 1)
        ]


def credential_of(bundle: Bundle) -> Credential:
    """The key material of a bundle."""
    return Credential(bundle.key, bundle.certificate, bundle.authorities)


def settings_of(chosen: Pass, household: Household, authority: Authority) -> Settings:
    """What the device has to know to connect."""
    chosen_set = key_set(chosen.key_set)
    return Settings(
        household=household.certified_name,
        authority_fingerprint=authority.fingerprint,
        device=chosen.title,
        kind=chosen.kind,
        identity=chosen.identity,
        serial=chosen.serial,
        not_before=chosen.not_before,
        ends=chosen.not_after,
        key_set=chosen.key_set,
        gateway_host=household.gateway_host,
        home_subnets=tuple(str(one) for one in household.home_subnets),
        tunnel_subnet=str(household.tunnel_subnet),
        dns_servers=household.dns_servers,
        tunnel=household.tunnel,
        ike=chosen_set.ike,
        esp=chosen_set.esp,
        key_exchange=chosen_set.key_exchange,
    )
