"""`hearthkey forwarding-sheet`: on screen, as PDF, for machines."""

from __future__ import annotations

from pathlib import Path

from tests.cli.running import Cottage


def test_on_screen_on_paper_and_for_machines(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: the householder has no sheet to stand before the router with, or it changes something."""
    before = cottage.register()
    shown = cottage.run("forwarding-sheet", "--gateway-inside", "198.51.100.2")
    assert "inside: 198.51.100.2, port 4500" in shown.out
    told = cottage.run("forwarding-sheet", "--into", tmp_path / "router.PDF", "--json").told
    assert [(one["protocol"], one["outside"]) for one in told["forward"]] == [("UDP", 500), ("UDP", 4500)]
    assert (told["files"], told["let_through_protocols"]) == ([str(tmp_path / "router.PDF")], [50])
    assert (tmp_path / "router.PDF").read_bytes().startswith(b"%PDF-1.")
    folder = cottage.run("forwarding-sheet", "--into", tmp_path / "leaf", "--json").told
    assert folder["files"] == [str(tmp_path / "leaf" / "forwarding-sheet.pdf")]
    assert cottage.register() == before


def test_a_web_front_is_passed_on_too(cottage: Cottage) -> None:
    """Broken if it fails: the home's pages are not reached from outside, and the sheet says nothing of it."""
    assert cottage.run("gateway", "--web-page", "http://198.51.100.9:8080/").code == 0
    assert "TCP 443" in cottage.run("forwarding-sheet").out


def test_what_is_not_at_home_is_three(cottage: Cottage) -> None:
    """Broken if it fails: a slip of the finger is printed and typed into a router."""
    for words, code in (
        (("--gateway-inside", "192.168.1.2"), "gateway-inside-elsewhere"),
        (("--gateway-inside", "box"), "gateway-inside-odd"),
        (("--router", "65536"), "router-address-odd"),
    ):
        ran = cottage.run("forwarding-sheet", "--json", *words)
        assert (ran.code, ran.told["error"]["code"]) == (3, code)
