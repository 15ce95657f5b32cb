"""A bundle's files as one encrypted zip, for a relative who opens it with a general-purpose unpacker.

AES-256 in the AE-2 form of the published zip encryption extension (APPNOTE.TXT appendix E, from memory). Its
key derivation is 1,000 rounds of PBKDF2-HMAC-SHA1 and cannot be raised: only a passphrase of many bits
protects it. File names inside stay readable without the passphrase.
"""

from __future__ import annotations

import re
import stat
import struct
import zlib
from collections.abc import Mapping
from datetime import UTC, datetime
from io import BytesIO
from zipfile import ZIP_DEFLATED, ZIP_STORED

import pyzipper

from hearthkey.core.bundle import Settings
from hearthkey.core.errors import Bug, Refused
from hearthkey.core.names import file_stem
from hearthkey.core.secret import Secret
from hearthkey.formats import bundle_file

LARGEST_FILE = 4 << 20
LARGEST_MEMBER = 1 << 20
"""Octets, unpacked."""
MOST_MEMBERS = 16
STEEPEST = 200
"""Unpacked octets to a packed one; text as plain as ours stays far below."""
NOTE_NAME = "read-me.txt"

_AE_2 = 2
_AES_256 = 3
_REGULAR, _ENCRYPTED, _PATCHED, _STRONG = 0, 0x0001, 0x0020, 0x0040
_FOLDER_BIT = 0x10
_SAFE_NAME = re.compile(r"[A-Za-z0-9](?:[A-Za-z0-9._-]{0,98}[A-Za-z0-9])?")
_DEVICE_NAME = re.compile(r"(?:con|prn|aux|nul|com[0-9]|lpt[0-9])(?:\..*)?", re.IGNORECASE)
_ZIP = b"PK\x03\x04"
_STEP = 1 << 16
_DAMAGE = (
    pyzipper.BadZipFile,
    pyzipper.LargeZipFile,
    zlib.error,
    struct.error,
    NotImplementedError,
    OSError,
    EOFError,
    ValueError,
    KeyError,
    OverflowError,
)
"""What the reader raises over a broken file, depending on where it breaks; UnicodeError is a ValueError."""

_NOTE = """\
For {device}

These files let this device reach {household} from anywhere.
They work until {ends}. Each of them needs the same passphrase
that opened this archive. It reaches you by another way: spoken, or on
paper, never in the same message as this archive.

Which file for which device

  iPhone, iPad, Mac, Android, Windows
      {pkcs12}
      Open it on the device and type the passphrase. It holds the
      device’s key, its certificate and the certificate of the household.

  If the device asks for the household’s certificate by itself
      {authority}
      No secret: it only says whom to trust. Its SHA-256 fingerprint:
{fingerprint}

  A Linux laptop, or a program that reads settings from a file
      {bundle}
      Everything in one file, the settings too.

To type in, where a device asks for it

  Server, and its name (remote ID):   {gateway}
  This device’s own name (local ID):  {identity}
  Sign in with:                       the certificate, IKEv2

Afterwards delete the archive and everything that came out of it. The
device keeps what it needs.

Something does not work, or the device is lost: tell whoever looks after
the gateway at home and gave you this. They can stop the device at once.
"""


def file_name(settings: Settings) -> str:
    """Name the archive: "ines-phone.zip"."""
    return _stem(settings) + ".zip"


def pkcs12_name(settings: Settings) -> str:
    """Name the PKCS#12 file: "ines-phone.p12"."""
    return _stem(settings) + ".p12"


def authority_name(settings: Settings) -> str:
    """Name the CA certificate's file: "quince-cottage-ca.crt"; ".crt" is what importers look for."""
    return file_stem(settings.household, "household") + "-ca.crt"


def note(settings: Settings) -> bytes:
    """Write the note for the person whose device it is: UTF-8, CRLF, no secret in it."""
    print_ = settings.authority_fingerprint.upper()
    pairs = [print_[start : start + 2] for start in range(0, len(print_), 2)]
    rows = ["      " + " ".join(pairs[start : start + 16]) for start in range(0, len(pairs), 16)]
    text = _NOTE.format(
        device=settings.device,
        household=settings.household,
        ends=f"{settings.ends.astimezone(UTC).day} {settings.ends.astimezone(UTC):%B %Y}",
        pkcs12=pkcs12_name(settings),
        authority=authority_name(settings),
        bundle=bundle_file.file_name(settings),
        fingerprint="\n".join(rows),
        gateway=settings.gateway_host,
        identity=settings.identity,
    )
    return text.replace("\n", "\r\n").encode()


def write(members: Mapping[str, bytes], passphrase: Secret[str], at: datetime, *, most: int = MOST_MEMBERS) -> bytes:
    """Write an archive of flat files, each deflated and under AES-256.

    Args:
        members: content by file name.
        passphrase: printable ASCII; some unpackers read other letters differently.
        at: the date that each file shows, aware; zip knows no zone, so UTC stands there.
        most: how many files there may be; `read` takes no more than `MOST_MEMBERS`.

    Raises:
        Bug: archive-member-unfit, for a name or a size that `read` would refuse.
    """
    moment = min(max(at.astimezone(UTC), datetime(1980, 1, 1, tzinfo=UTC)), datetime(2107, 12, 31, tzinfo=UTC))
    if not 0 < len(members) <= most or len({name.casefold() for name in members}) != len(members):
        raise Bug("archive-member-unfit", member=None)
    written = BytesIO()
    # AE-2 by force: the other form adds a checksum of the plain bytes, from which a guesser learns.
    form = {"nbits": 256, "force_wz_aes_version": _AE_2}
    with pyzipper.AESZipFile(written, "w", encryption=pyzipper.WZ_AES, encryption_kwargs=form) as target:
        target.setpassword(passphrase.reveal().encode("ascii"))
        for name, content in members.items():
            if not _is_safe(name) or len(content) > LARGEST_MEMBER:
                raise Bug("archive-member-unfit", member=ascii(name))
            entry = target.zipinfo_cls(name, date_time=moment.timetuple()[:6])
            entry.external_attr = (stat.S_IFREG | 0o600) << 16
            target.writestr(entry, content, compress_type=ZIP_DEFLATED)
    return written.getvalue()


def read(data: bytes, passphrase: Secret[str]) -> dict[str, bytes]:
    """Unpack an archive into memory; it may come from anybody.

    Raises:
        Refused: archive-too-large (`size`, `limit`, `member`), archive-too-full (`count`, `limit`),
            archive-unreadable, archive-name-unsafe, archive-member-open (no AES-256 on it),
            archive-member-unfit (a folder, a link, an archive in the archive, a method of packing that is
            not ours), the last three with `member`; wrong-passphrase.
    """
    if len(data) > LARGEST_FILE:
        raise Refused("archive-too-large", size=len(data), limit=LARGEST_FILE, member=None)
    if not data.startswith(_ZIP):
        raise Refused("archive-unreadable")
    try:
        with pyzipper.AESZipFile(BytesIO(data)) as source:
            _check_entries(source)
            source.setpassword(passphrase.reveal().encode())
            return {entry.filename: _unpacked(source, entry) for entry in source.infolist()}
    except _DAMAGE as error:
        raise Refused("archive-unreadable") from error
    except RuntimeError as error:
        # The only RuntimeError left once every entry is known to be under AES-256: the passphrase does not
        # fit its two-octet check, or is empty. NotImplementedError, a subclass, is caught above.
        raise Refused("wrong-passphrase") from error


def _stem(settings: Settings) -> str:
    return file_stem(settings.device, settings.identity.split(".")[0])


def _is_safe(name: str) -> bool:
    return _SAFE_NAME.fullmatch(name) is not None and _DEVICE_NAME.fullmatch(name) is None


def _check_entries(source: pyzipper.AESZipFile) -> None:
    """Judge every entry by what the directory says, before the passphrase is used and a byte unpacked."""
    entries = source.infolist()
    if not entries:
        raise Refused("archive-unreadable")
    if len(entries) > MOST_MEMBERS:
        raise Refused("archive-too-full", count=len(entries), limit=MOST_MEMBERS)
    seen: set[str] = set()
    for entry in entries:
        raw = entry.orig_filename
        shown = ascii(raw)[1:-1][:60]
        if not _is_safe(raw) or raw.casefold() in seen:
            raise Refused("archive-name-unsafe", member=shown)
        seen.add(raw.casefold())
        kind = stat.S_IFMT(entry.external_attr >> 16)
        if kind not in {_REGULAR, stat.S_IFREG} or entry.external_attr & _FOLDER_BIT:
            raise Refused("archive-member-unfit", member=shown)
        if not entry.flag_bits & _ENCRYPTED or entry.wz_aes_strength != _AES_256:
            raise Refused("archive-member-open", member=shown)
        if entry.flag_bits & (_PATCHED | _STRONG) or entry.compress_type not in {ZIP_STORED, ZIP_DEFLATED}:
            raise Refused("archive-member-unfit", member=shown)
        if entry.file_size > LARGEST_MEMBER or entry.file_size > STEEPEST * entry.compress_size:
            raise Refused("archive-too-large", size=entry.file_size, limit=LARGEST_MEMBER, member=shown)


def _unpacked(source: pyzipper.AESZipFile, entry: pyzipper.ZipInfo) -> bytes:
    """Unpack one entry to its very end, and see that it has the size that the directory says.

    The size is not under the passphrase. The reader would stop there and let a cut file pass for whole, so it is
    told the most we take instead. Small steps, because one large step inflates without a bound before it is cut.
    """
    declared, entry.file_size = entry.file_size, LARGEST_MEMBER + 1
    content = b""
    with source.open(entry) as stream:
        while step := stream.read(_STEP):
            content += step
    if len(content) != declared:
        raise Refused("archive-unreadable")
    if content.startswith(_ZIP):
        raise Refused("archive-member-unfit", member=entry.filename)
    return content
