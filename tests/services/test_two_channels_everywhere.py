"""Two channels, for every form: nothing that leaves with a bundle has its passphrase, or two words of it in a row."""

from __future__ import annotations

import io
import re
import zipfile
from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from hearthkey.adapters import pictures
from hearthkey.core.bundle import Form, Settings
from hearthkey.core.channels import gives_away
from hearthkey.core.connect_choices import ConnectChoices
from hearthkey.core.copies import CopyWay
from hearthkey.core.errors import Bug
from hearthkey.core.hand_over_sheet import CardFacts, Paper, SheetFacts
from hearthkey.core.household import possessive
from hearthkey.core.languages import Language
from hearthkey.core.names import file_stem
from hearthkey.core.secret import Secret
from hearthkey.core.tickets import Offer
from hearthkey.formats import archive, bundle_file, connect_script, hand_over_sheet, pem_set, profile
from hearthkey.formats.laid_sheet import Mark, Run
from hearthkey.formats.pickup_page import file_headers
from tests.fakes.home import Home, at_home
from tests.fakes.kinds import KINDS
from tests.formats.practice import SETTINGS
from tests.formats.test_words import WORDS
from tests.interop.test_hand_over_sheet import plain


@pytest.fixture(scope="module")
def home(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Home]:
    """Quince Cottage with three waiting passes."""
    with at_home(tmp_path_factory.mktemp("cottage") / "data", quick=True) as found:
        yield found


def readable(name: str, data: bytes) -> list[str]:
    """All that can be read of a file without its passphrase, names of members included."""
    if name.endswith(".zip"):
        with zipfile.ZipFile(io.BytesIO(data)) as packed:
            return [*packed.namelist(), packed.comment.decode("latin-1"), data.decode("latin-1")]
    if name.endswith(".png"):
        return [*pictures.read_codes(data), data.decode("latin-1")]
    return [data.decode("latin-1"), data.decode("utf-16-le", errors="replace")]


@pytest.mark.parametrize("form", list(Form))
def test_nothing_of_an_export_has_the_words(home: Home, tmp_path: Path, form: Form) -> None:
    """Broken if it fails: whoever finds the file, its name, or what the app tells of it needs nothing else."""
    one = home.newest("Odile tablet")
    words = home.house.bundling.passphrase(one)
    done = home.house.exporting.export(one, form, tmp_path, way=CopyWay.STICK, place="QUINCE")
    (copy,) = [row for row in home.house.register.copies((one.serial,)) if row.form == form.value]
    told = [done.changes.sentence, copy.place, copy.folder, *done.changes.files, *(file.name for file in copy.files)]
    told += [f"{step.name} {step.seen}" for step in done.rehearsal.steps]
    told += [entry.sentence for entry in home.house.register.diary()]
    for path in map(Path, done.changes.files):
        told += [path.name, *readable(path.name, path.read_bytes())]
    assert len(told) > 10
    assert [text[:60] for text in told if gives_away(text, words)] == []
    assert [text[:60] for text in told if words.reveal() in text] == []


NAMES = st.one_of(
    st.text(st.characters(exclude_categories=("C", "Z")), min_size=1, max_size=30),
    st.lists(st.sampled_from(WORDS), min_size=1, max_size=4).map(" ".join),
)
PASSPHRASES = st.lists(st.sampled_from(WORDS), min_size=7, max_size=7).map(" ".join).map(Secret)


def said_with(settings: Settings, person: str, device: str, words: Secret[str]) -> Iterator[str]:
    """Every name and every text that is made for a bundle of that device, but for the one that carries the words."""
    container = archive.pkcs12_name(settings)
    parts = pem_set.write(settings, pem_set.PemSet(b"key", b"certificate", (b"authority",)))
    script = connect_script.write(
        settings, container_name=container, ca_base64="MIIB", ca_print="AB" * 20, device_print="CD" * 20
    )
    written = profile.write(
        settings, b"container", [b"authority"], ConnectChoices(), issuer="Household CA", container_name=container
    )
    names = [bundle_file.file_name(settings), container, archive.file_name(settings), archive.authority_name(settings)]
    names += [profile.file_name(settings), connect_script.file_name(settings), *parts]
    yield from names
    yield from (dict(file_headers(Offer("pkcs12", name)))["Content-Disposition"] for name in names)
    yield from (data.decode("utf-8", errors="replace") for data in (script, written, archive.note(settings)))
    yield parts[next(name for name in parts if name.endswith(pem_set.READ_ME))].decode()
    for language in Language:
        yield hand_over_sheet.messages(person, device, words, language).written
        yield runs(hand_over_sheet.sheet(facts(person, device, language), Paper.A4, plain))


def facts(person: str, device: str, language: Language) -> SheetFacts:
    """A sheet for a phone."""
    kind = KINDS.find("android")
    made, ends = datetime(2026, 5, 12, tzinfo=UTC), datetime(2028, 5, 11, tzinfo=UTC)
    steps = kind.steps("pkcs12", language)
    return SheetFacts(person, device, kind.words(language), "Quince Cottage", made, ends, steps, "", language)


def runs(marks: Sequence[Mark]) -> str:
    """What can be read on a page."""
    return "\n".join(one.text for one in marks if isinstance(one, Run))


@given(NAMES, NAMES, PASSPHRASES)
def test_whatever_people_and_devices_are_called(person: str, device: str, words: Secret[str]) -> None:
    """Broken if it fails: some name lets the words into a file's name, a read-me, a sheet or the message beside it."""
    title = possessive(person, device)
    # Whoever is called like one of the words by chance is looked at below.
    called = set(re.findall("[a-z]+", file_stem(person, "") + "-" + file_stem(device, "")))
    assume(not called & set(words.reveal().split()))
    settings = replace(SETTINGS, device=title)
    for text in said_with(settings, person, device, words):
        assert not gives_away(text, words)
        assert words.reveal() not in text
    for language in Language:
        card = runs(hand_over_sheet.card(CardFacts(person, words, language), Paper.LETTER, plain))
        spoken = hand_over_sheet.messages(person, device, words, language).spoken.reveal()
        for text in (card, spoken):
            assert all(word in text for word in words.reveal().split())
            assert container_of(settings) not in text
            assert "http" not in text


def container_of(settings: Settings) -> str:
    """The name of the file that the words open."""
    return archive.pkcs12_name(settings)


@given(PASSPHRASES, st.integers(0, 5))
def test_a_name_made_of_the_words_stops_the_message(words: Secret[str], first: int) -> None:
    """Broken if it fails: a device that somebody named after two of its words takes them along with the file."""
    named = " ".join(words.reveal().split()[first : first + 2])
    for language in Language:
        with pytest.raises(Bug, match="both-channels"):
            hand_over_sheet.messages("Odile", named, words, language)
