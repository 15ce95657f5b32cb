"""`hearthkey moving-day`: what a move asks for, and its list."""

from __future__ import annotations

import pytest

from tests.cli.running import Cottage


@pytest.fixture
def handed_over(cottage: Cottage) -> Cottage:
    """Quince Cottage, where Tomasz has his bundle."""
    assert cottage.run("hand-over", "Tomasz laptop", "--yes").code == 0
    return cottage


def test_a_move_is_shown_before_it_is_kept(handed_over: Cottage) -> None:
    """Broken if it fails: planning is doing."""
    before = handed_over.register()
    ran = handed_over.run("moving-day", "--new-host", "door.quince.example", "--new-provider", "--json")
    assert (ran.code, ran.told["new_bundles"], ran.told["next"]) == (0, ["Tomasz’s laptop"], "try-copy")
    steps = [one["step"] for one in ran.told["steps"]]
    assert steps.index("new-bundles") < steps.index("point-name") < steps.index("prove") < steps.index("end-line")
    assert handed_over.register() == before
    shown = handed_over.run("moving-day", "--new-host", "door.quince.example").out
    assert "one device needs a new bundle" in shown
    assert "[>] try-copy: Write a sealed copy" in shown


def test_the_list_is_ticked_and_taken_back_by_name(cottage: Cottage) -> None:
    """Broken if it fails: the list is only paper."""
    assert cottage.run("moving-day", "begin", "--new-router").code == 0
    assert "[x] try-copy" in cottage.run("moving-day", "tick", "try-copy").out
    refused = cottage.run("moving-day", "tick", "prove")
    assert refused.code == 3
    assert "check comes before prove" in refused.err
    assert "[>] try-copy" in cottage.run("moving-day", "take-back", "try-copy").out
    assert cottage.run("moving-day", "tick", "somersault").code == 3
    assert cottage.run("moving-day", "end").code == 3
    assert "called off" in cottage.run("moving-day", "end", "--call-off").out
    assert "No move is planned." in cottage.run("moving-day").err


def test_a_bare_address_is_told_long_before_the_move(cottage: Cottage) -> None:
    """Broken if it fails: the family learns on moving day that every bundle names the old line."""
    assert cottage.unlocked("settle", "--host", "203.0.113.9", "--yes").code == 0
    told = cottage.run("moving-day", "--new-router", "--json").told
    assert told["bare_address"]
    refused = cottage.run("moving-day", "--new-provider")
    assert refused.code == 3
    assert "Bundles carry the address 203.0.113.9" in refused.err


def test_former_names_are_told_with_whom_they_are_kept_for(handed_over: Cottage) -> None:
    """Broken if it fails: a name is given up, and nobody knew that it was still in use."""
    assert handed_over.unlocked("settle", "--host", "door.quince.example", "--yes").code == 0
    assert handed_over.run("settle", "--touches", "--json").told["former_hosts"] == {
        "home.quince.example": ["Tomasz’s laptop"]
    }
    assert "Tomasz’s laptop knows no other name." in handed_over.run("settle", "--touches").out
    refused = handed_over.run("settle", "--let-go", "home.quince.example", "--plan")
    assert refused.code == 3
    assert "Hand them a new bundle first." in refused.err
