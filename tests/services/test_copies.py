"""Every copy that leaves has a row, and only what is still exactly ours is ever deleted."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from hearthkey.adapters.files import DiskFiles
from hearthkey.core.bundle import Form
from hearthkey.core.copies import MARK_DIGITS, Came, CopyWay, Found, Standing
from hearthkey.core.errors import Refused, Unavailable
from hearthkey.core.templates import DEVICE, Template
from hearthkey.services import copying
from hearthkey.services.exporting import Exporting
from hearthkey.services.writing_templates import WritingTemplates
from tests.fakes.home import Home

OPEN_LETTER = Template("Open letter", DEVICE, "{device}", "letter", "{{ device_key }}\n")
PLAIN_NOTE = Template("Plain note", DEVICE, "{device}", "txt", "ring at {{ gateway_host }}\n")


class Stick(DiskFiles):
    """A stick that is pulled, or is full, when the test says so."""

    def __init__(self, free: int | None = None, after: int = 99) -> None:
        self._free = free
        self._after = after

    def free(self, folder: Path) -> int | None:
        """See the port."""
        return super().free(folder) if self._free is None else self._free

    def write(self, folder: Path, name: str, data: bytes) -> Path:
        """See the port; a stick that is pulled takes its folder along."""
        if self._after == 0:
            folder.rename(folder.with_name("pulled"))
            raise Unavailable("folder-gone", path=str(folder), seen="pulled")
        self._after -= 1
        return super().write(folder, name, data)


def export(home: Home, folder: Path, way: CopyWay = CopyWay.FOLDER, place: str = "") -> int:
    """Write the bundle of Ines's phone, and return the number of its copy."""
    home.house.exporting.export(home.newest("Ines phone"), Form.BUNDLE, folder, way=way, place=place)
    return home.house.register.copies()[-1].number


def code(attempt: pytest.ExceptionInfo[Refused]) -> str:
    """The code it was refused with."""
    return attempt.value.code


@pytest.mark.parametrize("form", [Form.BUNDLE, Form.CODES])
def test_an_export_leaves_a_row_with_all_its_files(home: Home, tmp_path: Path, form: Form) -> None:
    """Broken if it fails: a copy, or a file of it, lies somewhere that nobody is told of."""
    done = home.house.exporting.export(home.newest("Ines phone"), form, tmp_path / "out")
    (copy,) = home.house.register.copies()
    assert (copy.came, copy.way, copy.form, copy.place) == (
        Came.MADE,
        CopyWay.FOLDER,
        form.value,
        str(tmp_path / "out"),
    )
    assert [str(tmp_path / "out" / name) for name in copy.names] == list(done.changes.files)
    assert {len(one.mark) for one in copy.files} == {MARK_DIGITS}
    assert home.house.tidying.look(copy.number).found is Found.OURS


def test_a_stick_is_called_by_its_name(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: nobody knows which of the sticks in the drawer it is."""
    export(home, tmp_path / "mounted", CopyWay.STICK, "QUINCE")
    (told,) = home.house.tidying.all()
    assert (told.copy.place, told.copy.folder) == ("QUINCE", str(tmp_path / "mounted"))
    assert home.house.register.diary()[-1].verb == "export"


def test_row_and_diary_line_come_together(home: Home, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: the diary tells of a copy that the list of copies calls uncertain, or the other way round."""

    def full(*_: object, **__: object) -> None:
        raise Unavailable("disk-full", path="here", seen="as the test wished")

    monkeypatch.setattr("hearthkey.services.exporting.note", full)
    with pytest.raises(Unavailable):
        export(home, tmp_path / "out")
    (copy,) = home.house.register.copies()
    assert copy.came is Came.EXPECTED
    assert home.house.tidying.look(copy.number).found is Found.OURS


def test_what_was_not_written_is_not_listed(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: people look for copies that never were."""
    (tmp_path / "out").write_text("a file where the folder should be", encoding="ascii")
    with pytest.raises(Unavailable):
        export(home, tmp_path / "out" / "deeper")
    assert home.house.tidying.all() == ()
    assert [one.came for one in home.house.register.copies()] == [Came.NEVER]


def test_of_a_pulled_stick_nobody_knows(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: half the codes lie on a stick, and the app says that nothing left."""
    (tmp_path / "stick").mkdir()
    house = home.house
    verb = Exporting(house.register, house.bundling, house.rehearsing, house.clock, Stick(after=1))
    with pytest.raises(Unavailable):
        verb.export(home.newest("Ines phone"), Form.CODES, tmp_path / "stick")
    (told,) = house.tidying.all()
    assert told.standing is Standing.PERHAPS
    assert house.tidying.look(told.copy.number).found is Found.AWAY


def test_what_does_not_fit_is_refused_before_anything_is_written(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: a full stick is found out after half of the codes."""
    house = home.house
    verb = Exporting(house.register, house.bundling, house.rehearsing, house.clock, Stick(free=4096))
    with pytest.raises(Refused) as refused:
        verb.export(home.newest("Ines phone"), Form.BUNDLE, tmp_path / "stick")
    assert code(refused) == "no-room-for-copy"
    assert not (tmp_path / "stick").exists()
    assert house.register.copies() == []


def test_room_is_that_of_the_disk_where_the_folder_will_be(tmp_path: Path) -> None:
    """Broken if it fails: a folder that is not there yet has no room, or all of it."""
    assert DiskFiles().free(tmp_path / "not" / "yet") == DiskFiles().free(tmp_path)
    assert (DiskFiles().free(tmp_path) or 0) > 0


def test_a_dragged_file_counts_once_somebody_took_it(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: a drag that was let go of is a copy, or one that was taken is none."""
    register, serial = home.house.register, home.newest("Ines phone").serial
    export(home, tmp_path / "runtime", CopyWay.DRAG)
    assert [one.came for one in register.copies()] == [Came.EXPECTED]
    copying.not_dragged(register, serial)
    assert home.house.tidying.all() == ()
    export(home, tmp_path / "runtime", CopyWay.DRAG)
    copying.dragged_out(register, serial, home.world.clock.now())
    copying.dragged_out(register, serial, home.world.clock.now())
    copying.not_dragged(register, serial)
    assert [one.standing for one in home.house.tidying.all()] == [Standing.OUT, Standing.OUT]
    assert home.house.tidying.look(register.copies()[-1].number).found is Found.ELSEWHERE


def test_own_templates_that_hold_a_key_are_copies_too(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: the one file that nothing protects is the one that nobody keeps track of."""
    house, chosen = home.house, home.newest("Ines phone")
    writing = WritingTemplates(house.register, house.clock, house.templating, house.files)
    writing.write(PLAIN_NOTE, chosen, tmp_path)
    assert house.register.copies() == []
    writing.write(OPEN_LETTER, chosen, tmp_path, way=CopyWay.STICK, place="QUINCE")
    (told,) = house.tidying.all()
    assert (told.copy.form, told.copy.place, told.standing) == ("template:Open letter", "QUINCE", Standing.OUT)


def test_tidying_deletes_what_is_still_ours(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: copies stay although the householder had them deleted, or the diary does not say so."""
    number = export(home, tmp_path / "out")
    changes = home.house.tidying.tidy(number)
    assert list((tmp_path / "out").iterdir()) == []
    assert len(changes.files) == 1
    assert home.house.tidying.find(number).standing is Standing.TIDIED
    assert "was deleted here" in home.house.register.diary()[-1].sentence
    with pytest.raises(Refused) as refused:
        home.house.tidying.tidy(number)
    assert code(refused) == "copy-tidied-already"


@pytest.mark.parametrize("instead", ["other words", "link", "folder"])
def test_nothing_else_is_ever_deleted(home: Home, tmp_path: Path, instead: str) -> None:
    """Broken if it fails: tidying takes away a file that somebody else put there."""
    number = export(home, tmp_path / "out")
    (path,) = (tmp_path / "out").iterdir()
    kept = tmp_path / "kept"
    path.rename(kept)
    if instead == "link":
        path.symlink_to(kept)
    elif instead == "folder":
        path.mkdir()
    else:
        path.write_text("my own notes", encoding="ascii")
    assert home.house.tidying.look(number).found is Found.CHANGED
    with pytest.raises(Refused) as refused:
        home.house.tidying.tidy(number)
    assert code(refused) == "copy-changed"
    assert path.is_symlink() or path.exists()
    assert kept.exists()


def test_codes_of_which_some_are_gone_are_tidied_whole(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: half of the codes stay because the other half is gone."""
    home.house.exporting.export(home.newest("Ines phone"), Form.CODES, tmp_path / "out")
    (copy,) = home.house.register.copies()
    (tmp_path / "out" / copy.names[0]).unlink()
    assert home.house.tidying.look(copy.number).found is Found.PARTLY
    home.house.tidying.tidy(copy.number)
    assert list((tmp_path / "out").iterdir()) == []


def test_a_stick_is_found_wherever_it_is_mounted(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: the stick is in, and the app says that it cannot be reached."""
    number = export(home, tmp_path / "first", CopyWay.STICK, "QUINCE")
    (tmp_path / "first").rename(tmp_path / "second")
    tidying = home.house.tidying
    assert tidying.look(number).found is Found.AWAY
    with pytest.raises(Refused) as refused:
        tidying.tidy(number)
    assert code(refused) == "copy-away"
    here = [("OTHER", tmp_path), ("QUINCE", tmp_path / "second")]
    assert tidying.look(number, here).found is Found.OURS
    tidying.tidy(number, here)
    assert list((tmp_path / "second").iterdir()) == []


def test_saying_that_it_is_gone_can_be_taken_back(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: a slip of the finger loses sight of a copy for ever."""
    number = export(home, tmp_path / "out")
    tidying = home.house.tidying
    with pytest.raises(Refused) as refused:
        tidying.take_back(number)
    assert code(refused) == "copy-not-tidied"
    tidying.mark_tidied(number)
    with pytest.raises(Refused) as refused:
        tidying.mark_tidied(number)
    assert code(refused) == "copy-tidied-already"
    assert (tmp_path / "out").exists()
    tidying.take_back(number)
    assert tidying.find(number).standing is Standing.OUT
    assert [one.verb for one in home.house.register.diary()[-2:]] == ["copies", "copies"]


def test_an_unknown_number_is_refused(home: Home) -> None:
    """Broken if it fails: a slip of the finger ends in a trace."""
    with pytest.raises(Refused) as refused:
        home.house.tidying.look(12)
    assert code(refused) == "copy-unknown"


def test_a_copy_is_kept_for_ever(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: the household can forget that a copy was ever made; and names hold colons on some systems."""
    export(home, tmp_path / "12:30 Müller’s")
    again = home.house.register.copies()
    home.reopen(writing=False)
    assert home.house.register.copies() == again
    assert again[0].folder.endswith("12:30 Müller’s")
    assert json.dumps(again[0].names)
