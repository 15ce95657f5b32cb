"""The one-time folder: private, tidied, and never another copy's."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication

from hearthkey.core.errors import Unavailable
from hearthkey.ui.runtime import Runtime

pytestmark = pytest.mark.usefixtures("qapp")


def test_only_the_owner_can_look(tmp_path: Path) -> None:
    """If this failed, another user of the computer could copy a bundle while it is dragged."""
    runtime = Runtime(tmp_path / "hearthkey")
    folder = runtime.path_for("0a1b")
    for one in (folder, folder.parent, folder.parent.parent):
        assert one.stat().st_mode & 0o777 == 0o700
    runtime.tidy()


def test_a_file_is_found_and_forgotten(tmp_path: Path) -> None:
    """If this failed, a key would lie in the runtime folder after its hand-over."""
    runtime = Runtime(tmp_path)
    assert runtime.file_of("0a1b") is None
    (runtime.path_for("0a1b") / "laptop.p12").write_bytes(b"x")
    kept = runtime.path_for("0c2d") / "phone.p12"
    kept.write_bytes(b"y")
    runtime.forget("0a1b")
    assert runtime.file_of("0a1b") is None
    assert runtime.file_of("0c2d") == kept
    runtime.tidy()
    assert list(tmp_path.iterdir()) == []


def test_the_start_sweeps_what_a_crash_left_but_not_what_another_copy_uses(tmp_path: Path) -> None:
    """If this failed, a crash would leave a bundle behind for ever, or a second window would take the first one's."""
    left = tmp_path / "4194999"  # above the greatest process number of Linux, 4194304: nobody runs under it
    (left / "0a1b").mkdir(parents=True)
    (left / "0a1b" / "laptop.p12").write_bytes(b"x")
    (left / ".lock").write_text("4194999\nhearthkey\n\n", encoding="ascii")
    bare = tmp_path / "4194998"
    bare.mkdir()
    running = Runtime(tmp_path)
    used = running.path_for("0c2d") / "phone.p12"
    used.write_bytes(b"y")
    own = used.parent.parent
    other = own.with_name("4194997")
    own.rename(other)  # as if this process were another copy that still runs
    Runtime(tmp_path).sweep()
    assert sorted(one.name for one in tmp_path.iterdir()) == ["4194997"]
    assert (other / "0c2d" / "phone.p12").is_file()


def test_a_folder_of_somebody_else_is_not_used(tmp_path: Path) -> None:
    """If this failed, whoever laid the folder out beforehand would get the bundle."""
    elsewhere = tmp_path / "elsewhere"
    elsewhere.mkdir()
    (tmp_path / "hearthkey").symlink_to(elsewhere)
    with pytest.raises(Unavailable) as told:
        Runtime(tmp_path / "hearthkey").path_for("0a1b")
    assert told.value.code == "folder-read-only"
    assert list(elsewhere.iterdir()) == []


def test_sweeping_before_anything_was_dragged_is_quiet(tmp_path: Path, qapp: QApplication) -> None:
    """If this failed, the first start on a new computer would end with an error."""
    Runtime(tmp_path / "nothing" / "there").sweep()
    assert not (tmp_path / "nothing").exists()
    assert qapp.applicationPid() > 0
