"""Reads a form back, by other means than it was written with, and opens it with its passphrase."""

from __future__ import annotations

from collections.abc import Sequence

from hearthkey.core.bundle import Credential, Form, InlineBundle
from hearthkey.core.errors import Refused
from hearthkey.core.secret import Secret
from hearthkey.formats import archive, bundle_file, codes, connect_script, pem, pem_set, profile
from hearthkey.pki import keys, pkcs8, pkcs12, read, signed_message
from hearthkey.services.bundling import Written
from hearthkey.services.ports import Pictures


class Found:
    """What came out of the files, filled in step by step."""

    def __init__(self, signers: tuple[bytes, ...]) -> None:
        self._signers = signers
        self._pem: pem_set.PemSet | None = None
        self._said: profile.Profile | None = None
        self._script: connect_script.Script | None = None
        self._inline: InlineBundle | None = None
        self._container: bytes | None = None
        self._opened: Credential | None = None
        self._shut: Refused | None = None

    @property
    def credential(self) -> Credential:
        """What was opened.

        Raises:
            Refused: bundle-empty.
        """
        if self._opened is None:
            raise Refused("bundle-empty")
        return self._opened

    def read(self, form: Form, files: Sequence[Written], pictures: Pictures, passphrase: Secret[str]) -> None:
        """Read the files of a form.

        Raises:
            Refused: whatever its reader finds.
        """
        if not files:
            raise Refused("bundle-empty")
        if form is Form.CODES:
            texts = [text for one in files for text in pictures.read_codes(one.data)]
            self._inline = bundle_file.read(codes.join(texts))
        elif form is Form.BUNDLE:
            self._inline = bundle_file.read(files[0].data)
        elif form is Form.PROFILE:
            self._read_profile(files[0].data)
        elif form is Form.PEM:
            self._pem = pem_set.read([one.data for one in files])
        elif form is Form.PKCS12:
            self._container = files[0].data
            pkcs12.describe(files[0].data)
        elif form is Form.SCRIPT:
            self._read_script(files)
        else:
            self._unpack(files[0].data, passphrase)

    def _read_script(self, files: Sequence[Written]) -> None:
        others = [one for one in files if not connect_script.is_one(one.data)]
        if len(others) != 1 or len(files) != len(others) + 1:
            raise Refused("script-incomplete", names=tuple(one.name for one in files))
        self._script = connect_script.read(next(one.data for one in files if one is not others[0]))
        self._container = others[0].data
        pkcs12.describe(others[0].data)

    def _read_profile(self, data: bytes) -> None:
        plain = signed_message.open_signed(data, self._signers) if signed_message.is_signed(data) else data
        self._said = profile.read(plain)
        self._container = self._said.container
        pkcs12.describe(self._container)

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
        """Open everything that was read, and compare it.

        Raises:
            Refused: wrong-passphrase, bundle-contradicts-itself and whatever the readers find.
        """
        if self._shut is not None:
            raise self._shut
        opened: list[Credential] = []
        if self._container is not None:
            pkcs12.check_mac(self._container, passphrase)
            opened.append(pkcs12.open_container(self._container, passphrase, foreign=foreign))
        if self._inline is not None:
            key = pkcs8.open_key(self._inline.encrypted_key, passphrase, foreign=foreign)
            opened.append(Credential(key, self._inline.certificate, self._inline.authorities))
        if self._pem is not None:
            key = pkcs8.open_key(self._pem.encrypted_key, passphrase, foreign=foreign)
            opened.append(_in_order(key, self._pem))
        first = opened[0]
        for other in opened:
            if (other.certificate, other.authorities) != (
                first.certificate,
                first.authorities,
            ) or other.key != first.key:
                raise Refused("bundle-contradicts-itself")
        if self._inline is not None:
            _check_settings(self._inline)
        if self._said is not None:
            _check_profile(self._said, first)
        if self._script is not None:
            _check_script(self._script, first)
        self._opened = first


def _in_order(key: Secret[bytes], found: pem_set.PemSet) -> Credential:
    """Files may come in any order: the device's certificate is the one that the key belongs to."""
    certificate, authorities = found.certificate, found.authorities
    if keys.public_der(key) != read.public_of(certificate) and len(authorities) == 1:
        certificate, authorities = authorities[0], (certificate,)
    return Credential(key, certificate, authorities)


def _check_profile(said: profile.Profile, found: Credential) -> None:
    """What a profile says beside the identity has to be what the certificate says."""
    names = read.certificate_facts(found.certificate).names
    if said.authorities != found.authorities or f"dns:{said.identity}" not in names:
        raise Refused("bundle-contradicts-itself")


def _check_script(said: connect_script.Script, found: Credential) -> None:
    """A script finds certificates by their SHA-1, and puts the household's CA among those that are trusted."""
    prints, mine = tuple(map(read.short_print, said.authorities)), read.short_print(found.certificate)
    if (said.authorities, said.authority_prints, said.device_print) != (found.authorities, prints, mine):
        raise Refused("bundle-contradicts-itself")


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
    if any(connect_script.is_one(one.data) for one in files):
        return Form.SCRIPT
    if first.startswith(b"<?xml") or signed_message.is_signed(first):
        return Form.PROFILE
    if any(b"-----BEGIN" in one.data[:200] for one in files):
        return Form.PEM
    return Form.PKCS12 if first.startswith(b"\x30") else Form.BUNDLE
