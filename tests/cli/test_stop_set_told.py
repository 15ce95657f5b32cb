"""`hearthkey deputy` says which list the stop set is of, and when a newer one is out."""

from __future__ import annotations

from pathlib import Path

from tests.cli.running import Cottage


def test_a_newer_list_is_told_with_both_numbers(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: whoever lives on the command line never hears that the stick in the drawer is old."""
    assert cottage.run("deputy", "--json").told["stop_set"] is None
    assert cottage.unlocked("stop", "Odile tablet", "--yes").code == 0
    ran = cottage.run("deputy", "stop-set", "--into", tmp_path / "stick")
    assert ran.code == 0, ran.err
    before = cottage.run("deputy", "--json").told["stop_set"]
    assert before["of_list"] == before["newest_list"]
    assert f"is of list {before['of_list']}, the newest one." in cottage.run("deputy").out
    assert cottage.unlocked("stop", "Ines phone", "--yes").code == 0
    after = cottage.run("deputy", "--json").told["stop_set"]
    assert after["of_list"] == before["of_list"] < after["newest_list"]
    told = cottage.run("deputy").out
    assert f"is of list {after['of_list']}; list {after['newest_list']} is out since" in told
    dates = cottage.run("dates").out
    assert "Make the deputy’s stop set anew. It is of list" in dates
    assert "Put the household’s key on paper" in dates
