"""Kills the taking over of a household that was made by hand at every moment."""

from __future__ import annotations

from hearthkey.core.household import KEYRING
from tests.adopt.by_hand import family
from tests.crash import verdict
from tests.crash.homes import Home
from tests.crash.test_killed import kill_at_every_moment


def test_adopting(bare: dict[str, Home]) -> None:
    """If this fails, a power cut leaves half a household, or secrets that belong to nothing, or a folder changed."""
    home = bare[KEYRING]
    real_put_back = home.put_back

    def put_back() -> None:
        real_put_back()
        family(home.folder)

    home.put_back = put_back  # type: ignore[method-assign]  # a computer with nothing but that folder
    kill_at_every_moment(home, "adopt", thin=True)
    assert verdict.judge(home).rows[0] == 1
