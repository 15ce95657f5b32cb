"""Kills every step of the succession at every moment: both CAs are there with their keys and lists, or one is."""

from __future__ import annotations

from pathlib import Path

import pytest

from hearthkey.core.household import FILE
from tests.crash.homes import Home
from tests.crash.nursery import Nursery
from tests.crash.test_killed import kill_at_every_moment
from tests.keyring.desktop import Desktop

BEGUN = ("begin-succession",)
TURNED = (*BEGUN, "trust-both", "turn-gateway")


@pytest.mark.parametrize(
    ("verb", "before"),
    [
        ("begin-succession", ()),
        ("step-back", BEGUN),
        ("trust-both", BEGUN),
        ("turn-gateway", (*BEGUN, "trust-both")),
        ("finish-succession", TURNED),
    ],
)
def test_a_step(desktop: Desktop, nursery: Nursery, tmp_path: Path, verb: str, before: tuple[str, ...]) -> None:
    """If this fails, a power cut leaves a CA without its key, a key without its CA, or lists of one CA alone."""
    home = Home(desktop, nursery, tmp_path, FILE)
    for one in ("found", "move-in", *before):
        assert home.run(one).refusal is None, one
    home.save()
    kill_at_every_moment(home, verb, thin=True)
