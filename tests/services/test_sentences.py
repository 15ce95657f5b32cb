"""Every code has its sentence, every sentence its facts, and all of them one voice."""

from __future__ import annotations

import ast
import re
from string import Formatter

import pytest

from hearthkey.core.errors import Bug, HearthkeyError, Refused, Unavailable
from hearthkey.core.network import Caution
from hearthkey.core.rehearsal import STEPS, Rehearsal, RehearsalFailed, Step
from hearthkey.core.sentences import cautions, doors, errors, errors_world, progress
from hearthkey.services.opening import Door
from tests.services.raise_sites import APP, FAMILIES, Site, calls, modules

TABLES = {"Refused": errors.REFUSED, "Unavailable": errors.UNAVAILABLE, "Bug": errors_world.BUG}
RAISED = [(site, code) for site in calls(*FAMILIES) for code in sorted(site.codes)]
TOLD_BY_ITSELF = {"rehearsal-failed"}
"""Raised by `RehearsalFailed`, which takes its code from the step that failed."""
ALWAYS_GIVEN = {"code", "told"}


def wanted(sentence: str) -> set[str]:
    """The facts that a sentence asks for."""
    return {name for _, name, _, _ in Formatter().parse(sentence) if name is not None}


def texts() -> list[tuple[str, str]]:
    """Every text of the sentences and the command line, with its place; docstrings left out."""
    found = []
    for path, module in modules().items():
        if path.parent not in {APP / "core" / "sentences", APP / "cli"}:
            continue
        silent = {
            id(node.value)
            for node in ast.walk(module)
            if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant)
        }
        found += [
            (f"{path.relative_to(APP)}:{node.lineno}", node.value)
            for node in ast.walk(module)
            if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in silent
        ]
    return found


def test_the_walk_finds_the_sites() -> None:
    """Broken if it fails: the tests below walk past what they are to look at."""
    assert len(RAISED) > 150
    found = {code for _, code in RAISED}
    assert {"already-stopped", "disk-full", "register-busy", "certificate-revoked", "keyring-silent"} <= found


def test_every_raised_code_is_known_to_the_walk() -> None:
    """Broken if it fails: somewhere an error is raised with a code that no test can see."""
    assert [site.where for site in calls(*FAMILIES) if not site.codes] == []


@pytest.mark.parametrize(("site", "code"), RAISED, ids=[f"{code}@{site.where}" for site, code in RAISED])
def test_every_code_has_a_sentence_that_its_facts_fill(site: Site, code: str) -> None:
    """Broken if it fails: somebody reads a code, or "unknown" where a fact should stand."""
    means, do = TABLES[FAMILIES[site.name]][code]
    assert means
    assert do or FAMILIES[site.name] == "Bug"
    assert wanted(means) | wanted(do) <= site.facts | ALWAYS_GIVEN


@pytest.mark.parametrize("family", sorted(TABLES))
def test_no_sentence_waits_for_a_code_that_nobody_raises(family: str) -> None:
    """Broken if it fails: a sentence was left behind, or the code beside it was misspelt."""
    raised = {code for site, code in RAISED if FAMILIES[site.name] == family}
    assert set(TABLES[family]) - raised - TOLD_BY_ITSELF == set()


def test_a_failed_rehearsal_is_told_by_its_step() -> None:
    """Broken if it fails: a bundle that may not leave says only that something is wrong."""
    failed = Step("list", passed=False, seen="certificate revoked", code="certificate-revoked", facts={"depth": 0})
    error = RehearsalFailed(Rehearsal("pkcs12", (Step("read", passed=True), failed)))
    assert str(errors.say(error).means).startswith("It stands on the revocation list (certificate revoked).")


def test_a_rehearsal_that_stopped_without_a_cause_is_told_too() -> None:
    """Broken if it fails: the sentence of last resort is empty."""
    error = RehearsalFailed(Rehearsal("pkcs12", (Step("read", passed=False),)))
    assert str(errors.say(error).means) == "The pkcs12 stopped at the step read, so it may not leave."
    assert STEPS[0] == "read"


@pytest.mark.parametrize(
    "error", [Refused("no-such-code"), Unavailable("no-such-code"), Bug("no-such-code", seen="{0} {")]
)
def test_a_code_without_a_sentence_still_says_something(error: HearthkeyError) -> None:
    """Broken if it fails: the place that tells errors fails itself, on braces in a fact for instance."""
    told = errors.say(error)
    assert "no-such-code" in str(told.means)
    assert str(told.do) == errors_world.OUR_FAULT


@pytest.mark.parametrize("site", list(calls("Caution")), ids=lambda site: site.where)
def test_every_caution_has_a_sentence(site: Site) -> None:
    """Broken if it fails: a caution ends in a trace, just when somebody should be warned."""
    for code in site.codes:
        sentence = cautions.say(Caution(code, "Ines’s phone"))
        assert wanted(sentence.template) <= {"subject"}
        assert str(sentence)


@pytest.mark.parametrize("site", list(calls("progress")), ids=lambda site: site.where)
def test_every_step_has_a_sentence_that_its_facts_fill(site: Site) -> None:
    """Broken if it fails: a verb ends in a trace because it said what it was doing."""
    assert site.codes
    for code in site.codes:
        sentence = progress.step(code, dict.fromkeys(site.facts, "x"))
        assert wanted(sentence.template) <= site.facts | {"place"}


@pytest.mark.parametrize("door", list(Door))
def test_every_state_of_the_keyring_has_its_own_sentence(door: Door) -> None:
    """Broken if it fails: a closed keyring is told like an empty one; only "no household" offers to start anew."""
    told = doors.say(door.value)
    assert len({doors.say(one.value) for one in Door}) == len(Door)
    assert ("hearthkey found" in told) == (door is Door.NO_HOUSEHOLD)


@pytest.mark.parametrize("word", ["please", "invalid", "fatal", "illegal", "error", "abort", "oops", "sorry", "!"])
def test_sentences_keep_their_voice(word: str) -> None:
    """Broken if it fails: a sentence begs, blames or shouts."""
    spoken = [(where, text) for where, text in texts() if " " in text]
    assert len(spoken) > 200
    assert [where for where, text in spoken if re.search(rf"(?<!\w){re.escape(word)}(?!\w)", text, re.IGNORECASE)] == []


@pytest.mark.parametrize("family", sorted(TABLES))
def test_sentences_are_whole(family: str) -> None:
    """Broken if it fails: a sentence begins or ends in the middle."""
    for means, do in TABLES[family].values():
        for part in filter(None, (means, do)):
            assert part[0].isupper() or part[0] in '{"' or part.startswith("hearthkey ")
            assert part[-1] in '.}"'
