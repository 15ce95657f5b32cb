"""The gateway's page: each state as text, deliver, look, cancel, and its files in a folder."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from hearthkey.core.errors import Cancelled, Refused, Unavailable
from hearthkey.core.pack_options import PackOptions
from hearthkey.ui.controls.buttons import Kind
from hearthkey.ui.drawer.gateway_page import GatewayPage
from hearthkey.ui.drawer.gateway_words import command, fingerprint, in_groups
from hearthkey.ui.gallery.gateway_states import CHANGED_KEY, KEY, PLAN, UNREACHABLE, delivered
from hearthkey.ui.theme.signs import Sign
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer.conftest import Room
from tests.ui.drawer.gateway_errands import GatewayFake, seen

SAID = {
    "practice": "Nothing of the practice household is ever delivered, so no gateway holds anything of it.",
    "no-target": "What the gateway holds is not known: nobody has said where its files go.",
    "never": "Nothing was delivered to the gateway yet.",
    "in-force": "List no. 42 is in force, good until 19 June 2028; read back 12 min ago.",
    "list-waits": "List no. 42 waits here. The gateway holds list no. 41.",
    "not-in-force": "Ines’s phone: decided here, not yet in force. The gateway holds list no. 41.",
    "settings-wait": "List no. 42 is in force; settings or certificates wait here.",
    "not-loaded": "List no. 42 lies at the gateway, but its command failed (read-lists: not found): what runs there "
    "may use an older one.",
    "newer-there": "The gateway holds list no. 45, newer than no. 42 here.",
    "no-list-there": "No list can be read at the gateway. List no. 42 waits here.",
}
"""By state: the sentence. What has a time of day in it is told by the zone of this computer, and tested below."""


def folder(_parent: QWidget, _title: str, _start: Path, then: Callable[[Path], None]) -> None:
    """Somebody chooses the stick."""
    then(Path("/media/ines/stick"))


def page_in(state: str, theme: Theme, room: Room, ways: Ways) -> tuple[GatewayPage, GatewayFake]:
    """The page, open, and the gateway in a state."""
    errands = GatewayFake(state)
    page = GatewayPage(theme, errands, ways, Path("/home/ines"), pick=folder)
    room.open(page)
    return page, errands


@pytest.mark.parametrize("state", SAID)
def test_each_state_is_told_as_it_is(state: str, theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: the page says more of the gateway than was seen there."""
    page, _ = page_in(state, theme, room, ways)
    assert page.sentence.text() == SAID[state]


def test_what_is_not_known_is_called_not_known(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: after a failed read the last one is passed off as the present."""
    page, errands = page_in("unknown", theme, room, ways)
    assert errands.last is not None
    failed = errands.last.gateway_state.note.failed
    assert failed is not None
    since = f"{failed.astimezone():%H:%M}"
    assert page.sentence.text().startswith(f"What the gateway holds is not known since {since}")
    facts = page.facts.told()
    assert "list there: not known (it was no. 42, good until 19 June 2028)" in facts
    assert f"not reached since: {since}" in facts
    assert "(seen there 12 min ago)" in facts


def test_a_stop_that_is_not_in_force_is_red_and_says_what_follows(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: the family believes that a stolen phone is kept out."""
    page, _ = page_in("unknown-not-in-force", theme, room, ways)
    assert page.sign.accessibleName() == Sign.DUE.value
    assert page.sentence.text().startswith("Ines’s phone: not yet in force.")
    assert "whoever could get in still can" in page.aside.text()
    assert page.visit.deliver_button.kind is Kind.COMMIT


def test_dates_that_come_near_are_told_with_what_to_do(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: the list runs over its date, and the whole family is locked out."""
    page, errands = page_in("list-due", theme, room, ways)
    assert page.aside.text().startswith("On 22 June 2026 the list ends, and then nobody gets in.")
    errands.show(seen("certificate-due"))
    assert page.aside.text().startswith("On 10 July 2026 the gateway’s certificate ends")


def test_a_wrong_clock_is_told(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: certificates are refused for their dates, and nobody knows why."""
    page, _ = page_in("clock-wrong", theme, room, ways)
    assert "its clock: 66 min behind (certificates begin and end by it" in page.facts.told()


@pytest.mark.parametrize("state", ["practice", "no-target"])
def test_where_nothing_can_be_delivered_no_button_says_so(state: str, theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: a button that can only refuse."""
    page, _ = page_in(state, theme, room, ways)
    assert not page.visit.isVisible()
    assert page.place_button.isVisible() is (state == "no-target")


def test_the_practice_household_writes_its_files_to_a_folder(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: nobody can see what a gateway gets before founding a household of their own."""
    page, errands = page_in("practice", theme, room, ways)
    assert "without a passphrase" in page.pack.caution.text()
    page.pack.button.click()
    assert errands.asked == [("save_pack", Path("/media/ines/stick"))]
    assert page.pack.line.text().startswith("The gateway’s files were written to /media/ines/stick.")
    assert "wipe it afterwards" in page.pack.line.text()


def test_a_full_stick_is_told(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: half a set on a stick is carried to the gateway."""
    page, errands = page_in("in-force", theme, room, ways)
    errands.troubles["save_pack"] = Unavailable("disk-full", path="/media/ines/stick")
    page.pack.button.click()
    assert "full" in page.pack.line.text()


def test_delivering_is_told_step_by_step_and_its_end(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: somebody waits before a still window and pulls the plug."""
    page, errands = page_in("settings-wait", theme, room, ways)
    page.visit.deliver_button.setFocus()
    page.visit.deliver_button.click()
    assert errands.asked == [("deliver",)]
    assert not page.visit.deliver_button.isVisible()
    assert QApplication.focusWidget() is page.visit.cancel_button
    errands.step.emit("Sending 4 files")
    assert page.visit.line.text() == "Sending 4 files …"
    after = seen("in-force")
    errands.end(delivered(after), after)
    assert page.visit.line.text().startswith("List no. 42 is in force: 4 files were sent")
    assert "Tomasz’s laptop" in page.visit.line.text()
    assert QApplication.focusWidget() is page.visit.deliver_button
    assert page.visit.deliver_button.kind is Kind.PLAIN


def test_what_differs_is_told_and_unfolds_file_by_file(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: somebody has to deliver in order to learn what a delivery does."""
    page, errands = page_in("settings-wait", theme, room, ways)
    page.visit.look_button.click()
    assert errands.asked == [("look",)]
    errands.end(PLAN)
    assert (
        page.difference.voice.text()
        == "List no. 42 comes in force; files: 1 new, 3 changed, 1 no longer needed, 3 the same."
    )
    assert not page.difference.files.isVisible()
    page.difference.fold.button.click()
    assert "new: host/rules.nft" in page.difference.files.told()
    assert "no longer needed: own/old-door.conf" in page.difference.files.told()
    errands.end(delivered(seen("in-force")))
    assert not page.difference.isVisible()


def test_a_failure_says_which_state_the_gateway_is_in(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: after a failure nobody knows whether the family still gets in."""
    page, errands = page_in("settings-wait", theme, room, ways)
    page.visit.deliver()
    errands.end(UNREACHABLE, seen("unknown"))
    assert "cannot be reached (no route to host)" in page.visit.line.text()
    assert "The gateway goes on with what it had before." in page.visit.line.text()
    assert page.sentence.text().startswith("What the gateway holds is not known")
    assert page.visit.deliver_button.isVisible()


def test_a_changed_host_key_stops_with_its_sentence(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: the gateway's key goes to whoever answered."""
    page, errands = page_in("settings-wait", theme, room, ways)
    page.visit.deliver()
    errands.end(CHANGED_KEY)
    assert "shows another host key than before" in page.visit.line.text()
    assert "nothing was sent to it" in page.visit.line.text()


def test_cancel_ends_the_visit_and_says_so(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: a gateway that hangs holds the page."""
    page, errands = page_in("settings-wait", theme, room, ways)
    page.visit.deliver()
    page.visit.cancel_button.click()
    assert errands.cancelled
    errands.end(Cancelled("cancelled"), seen("unknown"))
    assert "The gateway holds one whole set" in page.visit.line.text()


def test_a_newer_list_there_asks_for_the_passphrase_and_goes_on(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: a laptop restored from a copy can never deliver again."""
    page, errands = page_in("newer-there", theme, room, ways)
    page.visit.deliver()
    errands.end(Refused("gateway-list-newer", number=45))
    assert page.visit.unlock.isVisible()
    page.visit.unlock.line.setText("plum kettle ivory lantern gravel otter quilt")
    QTest.keyClick(page.visit.unlock.line, Qt.Key.Key_Return)
    assert [one[0] for one in errands.asked] == ["deliver", "unlock", "deliver"]


def test_a_visit_by_the_app_itself_is_shown_too(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: the page offers a delivery while one is under way."""
    page, errands = page_in("in-force", theme, room, ways)
    errands.begin("deliver")
    assert page.visit.cancel_button.isVisible()
    assert not page.visit.deliver_button.isVisible()


def test_choices_are_checked_where_they_are_typed(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: a slip in a name makes rules that let nothing through."""
    page, errands = page_in("in-force", theme, room, ways)
    page.pack.fold.button.click()
    choices = page.pack.choices
    choices.mtu.setText("15")
    choices.keep_button.click()
    assert QApplication.focusWidget() is choices.mtu
    choices.mtu.setText("1492")
    choices.interface.setText("two words")
    choices.keep_button.click()
    assert QApplication.focusWidget() is choices.interface
    choices.interface.setText("tun0")
    choices.page.setText("not a page")
    choices.keep_button.click()
    assert QApplication.focusWidget() is choices.page
    assert errands.asked == []


def test_choices_are_kept_and_shown(theme: Theme, room: Room, ways: Ways) -> None:
    """Broken: what was chosen is not what the files are made from."""
    page, errands = page_in("in-force", theme, room, ways)
    page.pack.fold.button.click()
    choices = page.pack.choices
    choices.masquerade.segments()[1].click()
    choices.mtu.setText("1492")
    choices.interface.setText("tun0")
    choices.page.setText("http://127.0.0.1:8080")
    choices.keep_button.click()
    wanted = PackOptions(True, 1492, "tun0", "http://127.0.0.1:8080")  # noqa: FBT003 - as the dataclass has them
    assert errands.asked == [("set_pack_options", wanted)]
    assert choices.line.text() == "The choices were kept."


def test_a_fingerprint_is_the_one_that_openssh_prints() -> None:
    """Broken: two people compare two things that can never be the same.

    The key is that of RFC 8032 section 7.1 test 1; its fingerprint was printed by ssh-keygen -l.
    """
    assert fingerprint(KEY.line) == KEY.fingerprint
    assert fingerprint("ssh-ed25519 no base64 at all") == ""
    assert in_groups("SHA256:bbXpuKG6zhzd") == "SHA256: bbXp uKG6 zhzd"
    assert command(KEY.line) == "ssh-keygen -l -f /etc/ssh/ssh_host_ed25519_key.pub"
