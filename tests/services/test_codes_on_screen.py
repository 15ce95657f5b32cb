"""Codes that are shown on the screen are copies: written down before they are seen, once for each showing."""

from __future__ import annotations

from datetime import timedelta

import pytest

from hearthkey.core.copies import SAME_SHOWING, Came, CopyWay, Found, Standing, to_ask_about, unaccounted
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.rehearsal import Rehearsal, RehearsalFailed
from hearthkey.core.sentences import copies as sentences
from hearthkey.services import copying
from tests.fakes.home import Home


def show(home: Home) -> int:
    """Show the codes of Ines's phone; how many there are."""
    return len(home.house.exporting.codes_to_show(home.newest("Ines phone")))


def test_codes_on_the_screen_are_a_copy(home: Home) -> None:
    """Broken if it fails: a bundle left by a camera, and the list of every copy does not know."""
    assert show(home) > 1
    (told,) = home.house.tidying.all()
    assert (told.copy.way, told.copy.form, told.copy.came) == (CopyWay.SCREEN, "codes", Came.MADE)
    assert (told.copy.files, told.copy.place, told.copy.folder) == ((), "", "")
    assert told.copy.made == home.world.clock.now()
    said = f"{sentences.described(told, str(sentences.form(told.copy)))}: {sentences.standing(told)}"
    assert said == "codes, shown on this screen: left no file here; a photo of it still needs the passphrase"
    line = home.house.register.diary()[-1]
    assert (line.verb, line.sentence) == (
        "export",
        "The codes of Ines’s phone were rehearsed and shown on the screen.",
    )


def test_nobody_is_asked_to_tidy_a_screen(home: Home) -> None:
    """Broken if it fails: what left no file counts for ever as not known to be gone, or a stick is asked about."""
    show(home)
    found = home.house.tidying.all()
    assert [one.standing for one in found] == [Standing.SHOWN]
    assert unaccounted(found) == ()
    assert to_ask_about(found, [""], home.world.clock.now() + timedelta(days=1)) == ()
    assert home.house.tidying.look(found[0].copy.number).found is Found.ELSEWHERE
    with pytest.raises(Refused) as refused:
        home.house.tidying.tidy(found[0].copy.number)
    assert refused.value.code == "copy-elsewhere"
    home.house.tidying.mark_tidied(found[0].copy.number)
    assert home.house.tidying.find(found[0].copy.number).standing is Standing.TIDIED


def test_one_showing_is_one_row(home: Home) -> None:
    """Broken if it fails: going back and forth fills the list, or a showing of another day has no row."""
    clock, register, phone = home.world.clock, home.house.register, home.newest("Ines phone")
    for seconds, rows in ((0, 1), (SAME_SHOWING.total_seconds() - 1, 1), (1, 2), (-400, 3)):
        clock.turn(seconds=seconds)
        copying.shown(register, phone, clock.now())
        assert len(register.copies()) == rows
    copying.shown(register, home.newest("Tomasz laptop"), clock.now())
    assert len(register.copies()) == 4
    assert sum(one.verb == "export" for one in register.diary()) == 4


def test_what_cannot_be_written_down_is_not_shown(home: Home, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: codes are on the screen of which no list will ever know."""

    def full(*_: object, **__: object) -> None:
        raise Unavailable("disk-full", path="here", seen="as the test wished")

    monkeypatch.setattr("hearthkey.services.copying.note", full)
    with pytest.raises(Unavailable):
        show(home)
    assert home.house.register.copies() == []


def test_what_fails_its_rehearsal_is_neither_shown_nor_listed(home: Home, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: the list has a copy that nobody ever saw."""

    def fails(*_: object, **__: object) -> None:
        raise RehearsalFailed(Rehearsal("codes", ()))

    monkeypatch.setattr(home.house.rehearsing, "rehearse", fails)
    with pytest.raises(RehearsalFailed):
        show(home)
    assert home.house.register.copies() == []
