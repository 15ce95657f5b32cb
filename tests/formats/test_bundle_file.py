"""The bundle file: written and read back whole, and strict with whatever else arrives."""

from __future__ import annotations

import dataclasses
import re
import tomllib
from datetime import UTC, datetime, timedelta, timezone
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.bundle import InlineBundle, Settings
from hearthkey.core.errors import Bug, Refused
from hearthkey.formats import bundle_file, pem
from tests.formats.practice import INLINE, SETTINGS, noise

WRITTEN = bundle_file.write(INLINE).decode()


def changed(**changes: object) -> InlineBundle:
    """Return the practice bundle with other settings."""
    return dataclasses.replace(INLINE, settings=dataclasses.replace(SETTINGS, **changes))  # type: ignore[arg-type]  # names of fields


def line_of(start: str, text: str = WRITTEN) -> int:
    """Return the number, from 1, of the line that begins so."""
    return next(number for number, line in enumerate(text.split("\n"), 1) if line.startswith(start))


def refusal(data: str | bytes) -> Refused:
    """Return what `read` refuses the data with."""
    with pytest.raises(Refused) as refused:
        bundle_file.read(data.encode() if isinstance(data, str) else data)
    return refused.value


NAMES = st.text(st.characters(categories=["L", "Nd", "P", "Zs"]), min_size=1, max_size=64).map(lambda t: f"O{t}e")
MOMENTS = st.datetimes(datetime(2000, 1, 1), datetime(2049, 1, 1), timezones=st.just(UTC))  # noqa: DTZ001 - the zone is given apart


@given(
    household=NAMES,
    device=NAMES,
    begin=MOMENTS,
    servers=st.lists(st.ip_addresses(v=4, network="198.51.100.0/24"), max_size=4),
    sizes=st.lists(st.integers(1, 900), min_size=3, max_size=6),
)
def test_what_is_written_is_read_back(
    household: str, device: str, begin: datetime, servers: list[object], sizes: list[int]
) -> None:
    """Broken if it fails: a device gets other settings or another key than the app showed."""
    settings: Settings = dataclasses.replace(
        SETTINGS,
        household=household,
        device=device,
        not_before=begin,
        ends=begin + timedelta(days=7),
        dns_servers=tuple(str(one) for one in servers if str(one) != "0.0.0.0"),  # noqa: S104 - compared, not bound
    )
    blocks = [noise(size, str(at)) for at, size in enumerate(sizes)]
    inline = InlineBundle(settings, blocks[0], blocks[1], tuple(blocks[2:]))
    assert bundle_file.read(bundle_file.write(inline)) == inline


def test_any_toml_reader_reads_it() -> None:
    """Broken if it fails: the file is not the TOML 1.0 that resources/formats/bundle-1.md promises to others."""
    document = tomllib.loads(WRITTEN)
    assert document["format"] == "hearthkey-bundle"
    assert document["version"] == 1
    assert document["device"]["name"] == "Ines’s phone"
    assert document["device"]["ends"] == datetime(2028, 11, 24, 9, 29, 59, tzinfo=UTC)
    assert document["network"]["home_subnets"] == ["198.51.100.0/24", "2001:db8:51::/64"]
    assert pem.decode(document["credentials"]["certificate"], "CERTIFICATE") == [INLINE.certificate]


def test_the_head_says_what_it_is_in_plain_words() -> None:
    """Broken if it fails: somebody who finds the file cannot tell what it is and whether it is dangerous."""
    head = WRITTEN.split("\nformat")[0]
    assert all(line.startswith("# ") or not line for line in head.split("\n"))
    assert "Ines’s phone" in head
    assert "passphrase" in head


def test_the_published_schema_names_every_key() -> None:
    """Broken if it fails: resources/formats/bundle-1.md, which others read, and the code have drifted apart."""
    page = (Path(__file__).parents[2] / "resources" / "formats" / "bundle-1.md").read_text(encoding="utf-8")
    for table, keys in tomllib.loads(WRITTEN).items():
        named = [f"`[{table}]`", *(f"`{key}`" for key in keys)] if isinstance(keys, dict) else [f"`{table}`"]
        assert [name for name in named if name not in page] == []


def test_file_names_are_plain() -> None:
    """Broken if it fails: a file system or a mail program mangles the name."""
    assert bundle_file.file_name(SETTINGS) == "ines-phone.bundle.toml"
    assert bundle_file.file_name(dataclasses.replace(SETTINGS, device="電話")) == "k7m2p9xw.bundle.toml"


def test_dates_keep_their_moment() -> None:
    """Broken if it fails: a date of another zone shifts by hours."""
    there = SETTINGS.not_before.astimezone(timezone(timedelta(hours=5, minutes=30)))
    assert bundle_file.read(bundle_file.write(changed(not_before=there))).settings.not_before == SETTINGS.not_before


@pytest.mark.parametrize(
    ("attribute", "value"),
    [
        ("ends", SETTINGS.ends.replace(tzinfo=None)),
        ("device", "Ines\n[gateway]\nhost = 'x'"),
        ("household", ""),
        ("gateway_host", 'home"quince'),
        ("home_subnets", ()),
        ("key_exchange", True),
    ],
)
def test_what_could_not_be_read_is_not_written(attribute: str, value: object) -> None:
    """Broken if it fails: a bundle leaves that no reader takes, or a name writes settings of its own."""
    with pytest.raises(Bug, match="bundle-unwritable"):
        bundle_file.write(changed(**{attribute: value}))


@pytest.mark.parametrize("count", [0, 5])
def test_a_bundle_without_an_authority_is_not_written(count: int) -> None:
    """Broken if it fails: a device is told to trust nobody, or more CAs than a reader takes."""
    with pytest.raises(Bug, match="bundle-unwritable"):
        bundle_file.write(dataclasses.replace(INLINE, authorities=(b"0",) * count))


@pytest.mark.parametrize(
    "name", ['Tomasz "Tom" \\ tablet', "Odile # radio", "'''", "]{[=", "Zoë\u2019s laptop", "ענבל"]
)
def test_names_cannot_break_out_of_their_line(name: str) -> None:
    """Broken if it fails: a name with quotes or brackets writes settings of its own."""
    assert bundle_file.read(bundle_file.write(changed(device=name))).settings.device == name


@pytest.mark.parametrize("spelled", [WRITTEN.replace("\n", "\r\n"), "\ufeff" + WRITTEN, WRITTEN + "\n# thanks\n"])
def test_what_editors_do_to_a_file_is_taken(spelled: str) -> None:
    """Broken if it fails: a file that was opened and saved once is refused (CRLF, byte order mark, last line)."""
    assert bundle_file.read(spelled.encode()) == INLINE


@pytest.mark.parametrize("line", [line for line in WRITTEN.split("\n") if re.match(r'[a-z_]+ = (?!""")', line)])
def test_a_missing_key_is_named(line: str) -> None:
    """Broken if it fails: a setting silently falls back to something nobody chose."""
    error = refusal(WRITTEN.replace(line + "\n", "", 1))
    key = line.partition(" = ")[0]
    if key in {"format", "version"}:
        assert error.code == "bundle-foreign"
    else:
        assert error.code == "bundle-key-missing"
        assert str(error.facts["key"]).endswith("." + key)
        assert isinstance(error.facts["line"], int)


@pytest.mark.parametrize(
    ("old", "new", "key", "at"),
    [
        ('tunnel = "split"', 'tunnel = "split"\nroute = "x"', "network.route", "route"),
        ("[esp]", "[extra]\n[esp]", "extra", "[extra]"),
        ("version = 1", "version = 1\nhint = 2", "hint", "hint"),
    ],
)
def test_an_unknown_key_is_named(old: str, new: str, key: str, at: str) -> None:
    """Broken if it fails: a setting that this app would not obey passes as obeyed."""
    text = WRITTEN.replace(old, new, 1)
    error = refusal(text)
    assert (error.code, error.facts["key"]) == ("bundle-key-unknown", key)
    assert error.facts["line"] == line_of(at, text)


@pytest.mark.parametrize(
    ("start", "value"),
    [
        ("name", '""'),
        ("name", '" "'),
        ("name", "7"),
        ("name", '"' + "a" * 161 + '"'),
        ("name", '"Ines\\u202eenohp"'),
        ("name", '"Ines\\nphone"'),
        ("name", '"Ines\\u0000"'),
        ("fingerprint", '"ABCD"'),
        ("kind", '"Android 14"'),
        ("identity", '"*.quince.example"'),
        ("serial", '"5a0"'),
        ("serial", '"' + "ab" * 21 + '"'),
        ("serial", "5"),
        ("not_before", '"2026-11-24T09:30:00Z"'),
        ("not_before", "2026-11-24T09:30:00"),
        ("not_before", "2026-11-24"),
        ("ends", "2026-11-24T09:30:00Z"),
        ("host", '"home quince"'),
        ("host", "[]"),
        ("home_subnets", "[]"),
        ("home_subnets", '["198.51.100.7/24"]'),
        ("home_subnets", '["0.0.0.0/0"]'),
        ("home_subnets", '"198.51.100.0/24"'),
        ("home_subnets", '["198.51.100.0/24", 3]'),
        ("tunnel_subnet", '"203.0.113.0"'),
        ("dns_servers", '["dns.quince.example"]'),
        ("tunnel", '"half"'),
        ("transforms", "[]"),
        ("transforms", '["encr aes"]'),
        ("key_exchange", "true"),
        ("key_exchange", "0"),
        ("key_exchange", "70000"),
        ("key_exchange", "14.0"),
    ],
)
def test_a_value_that_does_not_fit_is_named_with_its_line(start: str, value: str) -> None:
    """Broken if it fails: a wrong type or a wrong address goes on to the device."""
    number = line_of(start + " = ")
    lines = WRITTEN.split("\n")
    lines[number - 1] = f"{start} = {value}"
    error = refusal("\n".join(lines))
    assert error.code == "bundle-value-unfit"
    assert error.facts["line"] == number
    assert str(error.facts["key"]).endswith("." + start)


def test_a_newer_bundle_is_told_before_its_contents_are_judged() -> None:
    """Broken if it fails: a file of next year's app is called broken, and nobody thinks of updating."""
    error = refusal(WRITTEN.replace("version = 1", "version = 2").replace("[esp]", "[esp.inner]"))
    assert (error.code, error.facts["version"], error.facts["known"]) == ("bundle-newer", 2, 1)
    assert error.facts["line"] == line_of("version")


@pytest.mark.parametrize(
    "text",
    [
        "",
        "hello",
        "[a]\nformat = 'hearthkey-bundle'\nversion = 1",
        WRITTEN.replace("hearthkey-bundle", "other"),
        WRITTEN.replace("version = 1", "version = 0"),
        WRITTEN.replace("version = 1", 'version = "1"'),
    ],
)
def test_another_kind_of_file_is_told(text: str) -> None:
    """Broken if it fails: somebody who picked the wrong file is told about line 1, column 1."""
    assert refusal(text).code == "bundle-foreign"


@pytest.mark.parametrize(
    ("key", "text"),
    [
        ("encrypted_key", pem.encode("PRIVATE KEY", b"0")),
        ("certificate", pem.encode("X509 CRL", b"0")),
        ("certificate", "words"),
        ("authorities", ""),
        ("authorities", pem.encode("CERTIFICATE", b"0")[:-4]),
    ],
)
def test_a_credential_of_another_kind_is_named(key: str, text: str) -> None:
    """Broken if it fails: an unencrypted key, or a list in a certificate's place, is taken."""
    broken = re.sub(rf'(?s){key} = """.*?"""', f'{key} = """\n{text}"""', WRITTEN)
    error = refusal(broken)
    assert (error.code, error.facts["key"]) == ("bundle-credential-unreadable", f"credentials.{key}")
    line = error.facts["line"]
    assert isinstance(line, int)
    assert line > line_of(key, broken)


@pytest.mark.parametrize(("key", "count"), [("encrypted_key", 2), ("certificate", 2), ("authorities", 5)])
def test_more_credentials_than_belong_there_are_refused(key: str, count: int) -> None:
    """Broken if it fails: which certificate is the device's depends on who reads the file."""
    label = "ENCRYPTED PRIVATE KEY" if key == "encrypted_key" else "CERTIFICATE"
    text = pem.encode(label, b"0") * count
    error = refusal(re.sub(rf'(?s){key} = """.*?"""', f'{key} = """\n{text}"""', WRITTEN))
    assert (error.code, error.facts["key"]) == ("bundle-value-unfit", f"credentials.{key}")


def test_credentials_have_to_be_text() -> None:
    """Broken if it fails: a number where PEM belongs ends in a fault of the app."""
    error = refusal(re.sub(r'(?s)certificate = """.*?"""', "certificate = 7", WRITTEN))
    assert (error.code, error.facts["key"]) == ("bundle-value-unfit", "credentials.certificate")


@pytest.mark.parametrize("character", ["\x00", "\x07", "\x1b", "\x7f", "\x85", "\u202e", "\u2066", "\u2028", "\rx"])
def test_hidden_characters_are_named_with_their_line(character: str) -> None:
    """Broken if it fails: a file can show a reader something other than what it says, in a comment or a name."""
    number = line_of("tunnel = ")
    lines = WRITTEN.split("\n")
    lines[number - 1] += " # " + character + "x"
    error = refusal("\n".join(lines))
    assert error.code == "bundle-hidden-character"
    assert error.facts["line"] == number
    assert error.facts["character"] == f"U+{ord(character[0]):04X}"


def test_what_is_not_utf8_is_told_with_its_line() -> None:
    """Broken if it fails: a binary file, or one in another encoding, ends in a fault of the app."""
    error = refusal(WRITTEN.encode().replace(b"[esp]", b"[esp]\n# \xff", 1))
    assert (error.code, error.facts["line"]) == ("bundle-not-text", line_of("[esp]") + 1)


def test_a_huge_file_is_refused_unread() -> None:
    """Broken if it fails: 200 MB are parsed."""
    error = refusal(WRITTEN.encode() + b"\n" * (1 << 20))
    assert (error.code, error.facts["limit"]) == ("bundle-too-large", 1 << 20)


def test_a_line_outside_the_plain_layout_is_named() -> None:
    """Broken if it fails: a nesting bomb is refused without saying where it stands."""
    error = refusal(WRITTEN.replace('tunnel = "split"', 'tunnel = "split"\nroute = ' + "[" * 9000, 1))
    assert (error.code, error.facts["line"]) == ("bundle-line-unreadable", line_of("tunnel = ") + 1)


def test_many_keys_are_refused() -> None:
    """Broken if it fails: work grows with a stranger's imagination."""
    assert refusal(WRITTEN + "".join(f"{'k' * n} = 1\n" for n in range(1, 40))).code == "bundle-line-unreadable"


@given(st.integers(0, len(WRITTEN) - 1), st.integers(1, 60), st.binary(max_size=8))
def test_no_damage_ends_in_anything_but_a_refusal(at: int, length: int, instead: bytes) -> None:
    """Broken if it fails: a cut, edited or overwritten file stops the app instead of being named."""
    data = WRITTEN.encode()
    damaged = data[:at] + instead + data[at + length :]
    try:
        read = bundle_file.read(damaged)
    except Refused as error:
        assert error.code.startswith("bundle-")  # noqa: PT017 - both ends are fine, and are told apart here
    else:
        assert isinstance(read, InlineBundle)
