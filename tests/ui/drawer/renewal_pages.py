"""The pages about renewals in the states that look different."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from hearthkey.core.renewal import Follow, Visit
from hearthkey.ui.drawer.another_page import AnotherPage
from hearthkey.ui.drawer.device_page import DevicePage
from hearthkey.ui.drawer.leave_page import LeavePage
from hearthkey.ui.drawer.page import Page
from hearthkey.ui.drawer.renew_page import RenewPage
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer.household import FakeErrands


def renewing(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    """A round with a visit, the visits unfolded, everything said."""
    seen = errands.last
    assert seen is not None
    today = seen.at.replace(hour=0, minute=0)
    errands.show(replace(seen, visits=(Visit("Odile", today + timedelta(days=9)),)))
    page = RenewPage(theme, errands, ways)
    page.begin("")
    page.visits_fold.open(shown=True)
    page.look()
    return page


def renewing_locked(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    """One device, while the household is locked and asks for its passphrase."""
    seen = errands.last
    assert seen is not None
    errands.show(replace(seen, locked=True))
    page = RenewPage(theme, errands, ways)
    page.begin(seen.passes[0].identity)
    page.look()
    page.go_on()
    return page


def both_passes(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    """A device whose next pass waits, about to be taken back."""
    seen = errands.last
    assert seen is not None
    old = seen.passes[1]
    made = seen.at - timedelta(days=1)
    new = replace(old, serial="0b" * 12, not_before=made, not_after=made + timedelta(days=730), handed_over=None)
    follow = Follow(new.serial, old.serial, old.not_after, made)
    errands.show(replace(seen, passes=(*seen.passes[:2], new, *seen.passes[2:]), follows=(follow,)))
    page = DevicePage(theme, errands, ways)
    page.show_device(old.identity)
    page.succession.button.click()
    return page


def another(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    """Another device in the place of one."""
    assert errands.last is not None
    page = AnotherPage(theme, errands, ways)
    page.begin(errands.last.passes[0].identity)
    page.look()
    return page


def leaving(theme: Theme, errands: FakeErrands, _ways: Ways) -> Page:
    """Tomasz leaves."""
    page = LeavePage(theme, errands)
    page.begin("Tomasz")
    return page
