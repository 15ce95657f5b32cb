"""A secret shows itself nowhere: not printed, not logged, not copied, not pickled."""

from __future__ import annotations

import copy
import json
import logging
import pickle

import pytest

from hearthkey.core.secret import Secret

WORDS = "plum kettle ivory lantern"
SECRET = Secret(WORDS)


@pytest.mark.parametrize(
    "told",
    [
        repr(SECRET),
        str(SECRET),
        f"{SECRET}",
        f"{SECRET!r:>40}",
        f"{[SECRET]}",
        "%s" % SECRET,  # noqa: UP031 - the old way of formatting is what is tried
        "{}".format(SECRET),  # noqa: UP032 - as above
        str({"passphrase": SECRET}),
        str(ValueError(SECRET)),
    ],
)
def test_it_prints_nothing(told: str) -> None:
    """Broken if it fails: a passphrase stands in an error message."""
    assert "plum" not in told
    assert "Secret(" in told


def test_it_reaches_no_log(caplog: pytest.LogCaptureFixture) -> None:
    """Broken if it fails: a passphrase stands in a log file for years."""
    logging.getLogger("house").info("opened with %s and %r", SECRET, SECRET)
    assert "plum" not in caplog.text
    assert "opened with" in caplog.text


@pytest.mark.parametrize("carry", [pickle.dumps, copy.copy, copy.deepcopy])
def test_it_is_never_carried_away(carry: object) -> None:
    """Broken if it fails: a key travels to another process or into a file unseen."""
    assert callable(carry)
    with pytest.raises(TypeError):
        carry(SECRET)


@pytest.mark.parametrize("use", [hash, len, json.dumps, vars])
def test_it_gives_nothing_else_away(use: object) -> None:
    """Broken if it fails: a secret is kept as a key of a dict, or its length is told."""
    assert callable(use)
    with pytest.raises(TypeError):
        use(SECRET)


def test_it_compares_by_value_and_only_with_its_kind() -> None:
    """Broken if it fails: the second typing is never the same as the first, or a plain text is."""
    assert Secret(WORDS) == SECRET
    assert Secret("pear") != SECRET
    assert SECRET != WORDS
    assert Secret(b"\x00\xff") == Secret(b"\x00\xff")


def test_it_gives_its_value_when_asked() -> None:
    """Broken if it fails: nothing can be opened at all."""
    assert SECRET.reveal() == WORDS
