"""Files of device kinds: ours are whole, and whatever is wrong with one of somebody else is said exactly."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.errors import Refused
from hearthkey.core.kinds import FORMS, DeviceKind, Value
from hearthkey.core.languages import Language
from hearthkey.core.sentences import errors
from hearthkey.formats import kind_file
from tests.fakes.kinds import KINDS, SHIPPED

RESOURCES = SHIPPED.parent
IPHONE = (SHIPPED / "iphone.toml").read_text(encoding="utf-8")
PAGE = (RESOURCES / "formats" / "device-kind-1.md").read_text(encoding="utf-8")
QUOTED = {Language.ENGLISH: "“[^“”]+”", Language.GERMAN: "„[^„“]+“", Language.SPANISH: "«[^«»]+»"}
"""A label of the device in the quotation marks of its language, as the page of the format asks."""


def refusal(text: str | bytes, file: str = "iphone.toml") -> Refused:
    """How a file is refused."""
    with pytest.raises(Refused) as refused:
        kind_file.read(text if isinstance(text, bytes) else text.encode(), file)
    return refused.value


def instead(old: str, new: str) -> str:
    """The iPhone's file with one passage exchanged."""
    assert old in IPHONE
    return IPHONE.replace(old, new, 1)


def test_every_kind_that_was_ever_enrolled_is_still_there() -> None:
    """Broken if it fails: devices of a household that exists lose their kind by an update."""
    assert {"iphone", "android", "android-older", "windows", "windows-older", "mac", "linux", "other"} <= set(
        KINDS.names
    )
    assert KINDS.names[-1] == "other"
    assert {one.name for one in KINDS} == {path.stem for path in SHIPPED.iterdir()}


@pytest.mark.parametrize("kind", KINDS.all, ids=lambda kind: kind.name)
@pytest.mark.parametrize("language", list(Language))
def test_every_form_has_steps_in_every_language(kind: DeviceKind, language: Language) -> None:
    """Broken if it fails: a relative stands before a step in a language that she does not read, or before none."""
    assert kind.words(language)
    assert kind.why(language)
    for form in kind.forms:
        steps = kind.steps(form, language)
        assert 1 <= len(steps) <= kind_file.MOST_STEPS
        for step in steps:
            said = f"{step.do} {step.sees}"
            assert step.do[-1] in ".!"
            assert not re.search("[“”„«»]", re.sub(QUOTED[language], "", said)), said
            assert "'" not in said
    assert kind.sources
    assert not kind.tried


def test_facts_that_must_not_get_lost() -> None:
    """Broken if it fails: somebody meets a trap that was known. Sources stand in the files."""
    assert "8 minutes" in " ".join(KINDS.find("iphone").traps())
    assert "Only one profile" in " ".join(KINDS.find("iphone").traps())
    assert any("Certificate Trust Settings" in step.do for step in KINDS.find("iphone").steps("profile"))
    for name in ("android", "android-older"):
        kind = KINDS.find(name)
        assert {Value.LOCAL_ID, Value.AUTHORITY} <= {one.value for one in kind.fields}
        assert "identifier" in " ".join(kind.traps())
        assert kind.key_set.key_type == "RSA-3072"
    assert "Local Machine" in KINDS.find("windows").steps("pkcs12")[0].do
    assert "3DES" in " ".join(KINDS.find("windows").traps())


def test_the_page_and_the_reader_agree() -> None:
    """Broken if it fails: who writes a file by the page is refused, or the page keeps a key to itself."""
    found = re.search("```toml\n(.*?)```", PAGE, re.DOTALL)
    assert found is not None
    reader = kind_file.read(found.group(1).encode(), "reader.toml", own=True)
    assert (reader.name, reader.forms, reader.own) == ("reader", ("pem",), True)
    assert [step.sees for step in reader.steps("pem")] == ["It shows the name of the household.", ""]
    for word in (*FORMS, *Value):
        assert f"`{word}`" in PAGE


@pytest.mark.parametrize(
    ("text", "code", "place"),
    [
        (b"\xff\xfe", "kind-file-unreadable", None),
        ("name = ", "kind-file-unreadable", None),
        ("a = " + "[" * 30_000, "kind-file-unreadable", None),
        ("a = " + "9" * 10_000, "kind-file-unreadable", None),
        ("#" * 70_000, "kind-file-too-large", None),
        ("format = 'something'", "kind-file-other", None),
        (instead("version = 1", "version = 2"), "kind-file-newer", None),
        (instead("version = 1", "version = true"), "kind-file-type", "version"),
        (instead("family = 'ios'\n", ""), "kind-file-missing", "family"),
        (instead("family = 'ios'", "family = 'toaster'"), "kind-file-choice", "family"),
        (instead("key_set = 'broad'", "key_set = 'wide'"), "kind-file-choice", "key_set"),
        (instead("container = 'old'", "container = 'leaky'"), "kind-file-choice", "container"),
        (instead("container = 'old'", "container = 3"), "kind-file-type", "container"),
        (instead("'pkcs12']", "'pkcs12', 'telex']"), "kind-file-choice", "forms"),
        (instead("'pkcs12']", "'pkcs12', 'pkcs12']"), "kind-file-form-twice", None),
        (instead("'pkcs12']", "'pkcs12', 'pem']"), "kind-file-steps-missing", None),
        (instead(", 'pkcs12']", "]"), "kind-file-steps-extra", None),
        (instead("forms = ['profile', 'pkcs12']", "forms = []"), "kind-file-type", "forms"),
        (instead("name = 'iphone'", "name = '../iphone'"), "kind-file-name", None),
        (instead("place = 10", "place = 0"), "kind-file-type", "place"),
        (instead("checked = 2026-11-25", "checked = '2026-11-25'"), "kind-file-type", "checked"),
        (instead("checked = 2026-11-25", "checked = 2026-11-25T00:00:00Z"), "kind-file-type", "checked"),
        (instead("tried = false", "tried = 'no'"), "kind-file-type", "tried"),
        (instead("tried = false", "tried = false\ncolour = 'red'"), "kind-file-unknown", "colour"),
        (instead("de = 'iPhone oder iPad'\n", ""), "kind-file-language", "words.de"),
        (instead("de = 'iPhone oder iPad'", "de = ' '"), "kind-file-length", "words.de"),
        (instead("de = 'iPhone oder iPad'", f"de = '{'x' * 61}'"), "kind-file-length", "words.de"),
        (instead("de = 'iPhone oder iPad'", 'de = "iPhone\\u202e"'), "kind-file-hidden", "words.de"),
        (instead("de = 'iPhone oder iPad'", 'de = "iPhone\\noder"'), "kind-file-hidden", "words.de"),
        (instead("since = '14'", "since = 14"), "kind-file-type", "age.since"),
        (instead("[why]", "[why]\nfr = 'Parce que'"), "kind-file-unknown", "why.fr"),
        (instead("[[trap]]", "[[trap]]\nfr = 'Non'"), "kind-file-unknown", "trap 1.fr"),
        (instead("[[steps.profile]]", "[[steps.telex]]"), "kind-file-unknown", "steps.telex"),
        (instead("es = ['Abre el archivo.", "es = ['', 'Abre el archivo."), "kind-file-type", "steps.profile 1.es"),
        (instead(", 'It says that a profile was downloaded.'", ""), "kind-file-language", "steps.profile 1.en"),
        (instead("value = 'server'", "value = 'type'"), "kind-file-field-twice", "field 3"),
        (instead("value = 'server'", "value = 'password'"), "kind-file-choice", "field 3.value"),
        (IPHONE + "\n[[steps.profile]]\nen = ['A.']\nde = ['A.']\nes = ['A.']" * 2, "kind-file-count", "steps.profile"),
        (IPHONE.split("[[source]]", 1)[0], "kind-file-missing", "source"),
        ("source = []\n" + IPHONE.split("[[source]]", 1)[0], "kind-file-count", "source"),
    ],
)
def test_what_is_wrong_is_said_with_its_place(text: str | bytes, code: str, place: str | None) -> None:
    """Broken if it fails: a householder's mistake is taken for a setting, or hunted for."""
    refused = refusal(text)
    assert refused.code == code
    assert refused.facts["file"] == "iphone.toml"
    if place is not None:
        assert str(refused.facts["place"]).startswith(place)
    told = errors.say(refused)
    assert "iphone.toml" in str(told.means)
    assert str(told.do)


@given(
    at=st.integers(0, len(IPHONE) - 1),
    length=st.integers(0, 40),
    put=st.one_of(
        st.sampled_from(["", "'", "]", "[[", "\n", "= 1", "\\", "{", "en = ", "\x00", "ü"]), st.text(max_size=6)
    ),
)
def test_no_damage_is_ever_a_fault(at: int, length: int, put: str) -> None:
    """Broken if it fails: a slip in a text editor ends in a trace instead of a sentence."""
    try:
        data = (IPHONE[:at] + put + IPHONE[at + length :]).encode()
    except UnicodeEncodeError:
        data = b""
    told = ""
    try:
        told = kind_file.read(data, "iphone.toml").steps("profile")[0].do
    except Refused as refused:
        told = str(errors.say(refused).means)
    assert told


def test_files_of_the_app_are_few_enough_to_be_read_at_once() -> None:
    """Broken if it fails: reading the kinds takes longer than anybody would wait for a window (10 ms for 80 KB)."""
    assert sum(path.stat().st_size for path in Path(SHIPPED).iterdir()) < 120_000
    assert all('"' not in path.read_text(encoding="utf-8") for path in SHIPPED.iterdir())
