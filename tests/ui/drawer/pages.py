"""Every page of the drawer in the states that look different, for tests that walk all of them."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from pathlib import Path
from typing import cast

from pytestqt.qtbot import QtBot

from hearthkey.core.deputy import PartNote, SetNote
from hearthkey.core.errors import Refused
from hearthkey.core.network import Caution
from hearthkey.core.pack_options import PackOptions
from hearthkey.core.revocation import Reason
from hearthkey.core.sealed import CopyNote
from hearthkey.core.succession import Step
from hearthkey.core.templates import DEVICE, DEVICE_MARK, Template
from hearthkey.ui.drawer.days_page import DaysPage
from hearthkey.ui.drawer.deputy_page import DeputyPage
from hearthkey.ui.drawer.device_page import DevicePage
from hearthkey.ui.drawer.diary_page import DiaryPage
from hearthkey.ui.drawer.enrol_page import EnrolPage
from hearthkey.ui.drawer.gateway_page import GatewayPage
from hearthkey.ui.drawer.gateway_place import GatewayPlacePage
from hearthkey.ui.drawer.help_page import HelpPage
from hearthkey.ui.drawer.household_page import HouseholdPage
from hearthkey.ui.drawer.key_gone_page import KeyGonePage
from hearthkey.ui.drawer.page import Page
from hearthkey.ui.drawer.proof_page import ProofPage
from hearthkey.ui.drawer.proof_steps import Stage
from hearthkey.ui.drawer.sealed_page import SealedPage
from hearthkey.ui.drawer.settings_page import SettingsPage
from hearthkey.ui.drawer.succession_page import SuccessionPage
from hearthkey.ui.drawer.template_page import TemplatePage
from hearthkey.ui.gallery.gateway_states import DOOR, KEY, PLAN, STATES, UNREACHABLE
from hearthkey.ui.gallery.proof_states import CABLE, WIFI
from hearthkey.ui.preferences import Preferences
from hearthkey.ui.theme.theme import Theme
from hearthkey.ui.ways import Ways
from tests.ui.drawer import moving_pages, renewal_pages
from tests.ui.drawer.household import FakeErrands

Make = Callable[[Theme, FakeErrands, Ways], Page]
LONG = "Maximiliane-Friederike von und zu Quittenhausen am Oberen Bachlau"[:64]


def identity_of(errands: FakeErrands, person: str, device: str) -> str:
    """The identity of a device of the practice household."""
    assert errands.last is not None
    return next(one.identity for one in errands.last.passes if (one.person, one.device) == (person, device))


def lock(errands: FakeErrands) -> None:
    """Lock the household."""
    assert errands.last is not None
    errands.show(replace(errands.last, locked=True))


def fill_in(page: EnrolPage, qtbot: QtBot, errands: FakeErrands) -> None:
    """Type Odile's tablet, and wait until what follows has been asked for."""
    page.form.whose.take("Odile")
    page.form.device.setText("tablet")
    page.form.kind.take("android")
    qtbot.waitUntil(lambda: any(one[0] == "preview_enrol" for one in errands.asked))


def device(person: str, name: str) -> Make:
    """A device's page."""

    def make(theme: Theme, errands: FakeErrands, ways: Ways) -> DevicePage:
        page = DevicePage(theme, errands, ways)
        page.show_device(identity_of(errands, person, name))
        return page

    return make


def _long_names(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    assert errands.last is not None
    first, *rest = errands.last.passes
    named = replace(first, person=LONG, device="x" * 64, identity=f"{'q' * 52}.quince.example")
    errands.show(replace(errands.last, passes=(named, *rest)))
    page = DevicePage(theme, errands, ways)
    page.show_device(named.identity)
    page.begin_let_in()
    return page


def _revoking(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    page = device("Ines", "phone")(theme, errands, ways)
    assert isinstance(page, DevicePage)
    page.begin_revoke()
    page.deed.reasons.rows[Reason.KEY_COMPROMISE].click()
    return page


def _stopping_locked(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    lock(errands)
    page = device("Ines", "phone")(theme, errands, ways)
    assert isinstance(page, DevicePage)
    page.begin_stop()
    return page


def _in_full(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    page = device("Ines", "phone")(theme, errands, ways)
    assert isinstance(page, DevicePage)
    page.certificate.turn()
    return page


def enrol(theme: Theme, errands: FakeErrands, ways: Ways) -> EnrolPage:
    """The page for a new device, nothing typed."""
    return EnrolPage(theme, errands, ways)


def _enrol_unfolded(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    page = enrol(theme, errands, ways)
    page.form.whose.few.segments()[-1].click()
    page.form.details.unfold()
    return page


def _replacing(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    page = enrol(theme, errands, ways)
    page.replace(identity_of(errands, "Ines", "tablet"))
    return page


def household(theme: Theme, errands: FakeErrands, ways: Ways) -> HouseholdPage:
    """The household's page."""
    return HouseholdPage(theme, errands, ways)


def moving(theme: Theme, errands: FakeErrands, ways: Ways) -> HouseholdPage:
    """The same, with another name typed for the house, and looked at."""
    page = household(theme, errands, ways)
    page.settlement.form.host.setText("door.quince.example")
    page.settlement.look()
    return page


def _moving_locked(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    lock(errands)
    page = moving(theme, errands, ways)
    page.go_on()  # leads to the sentence, which is nowhere in sight yet
    page.go_on()
    page.settlement.devices.open(shown=True)
    return page


def _not_fitting(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    page = household(theme, errands, ways)
    page.settlement.form.tunnel.setText("198.51.100.0/25")
    page.settlement.look()
    return page


def days(theme: Theme, errands: FakeErrands, ways: Ways) -> DaysPage:
    """What is to be done."""
    return DaysPage(theme, errands, ways)


def sealed(theme: Theme, errands: FakeErrands, _ways: Ways) -> SealedPage:
    """The sealed copies, one of them tried."""
    seen = errands.last
    assert seen is not None
    made = seen.at - timedelta(days=9)
    notes = (
        CopyNote(made, "a" * 64, "/home/ines/sealed", "a.sealed.tar", 3, "", made),
        CopyNote(made + timedelta(days=2), "b" * 64, "/media/QUINCE", "b.sealed.tar", 4, "", None),
    )
    errands.show(replace(seen, sealed_copies=notes, copy_ready=True))
    return SealedPage(theme, errands, Path("/home/ines"), pick=_no_folder)


def key_gone(theme: Theme, errands: FakeErrands, ways: Ways) -> KeyGonePage:
    """The CA key is lost, or perhaps stolen."""
    return KeyGonePage(theme, errands, ways)


def succession(*steps: Step) -> Make:
    """The next CA, after some steps."""

    def make(theme: Theme, errands: FakeErrands, ways: Ways) -> SuccessionPage:
        assert errands.last is not None
        errands.taken = dict.fromkeys(steps, errands.last.at)
        return SuccessionPage(theme, errands, ways)

    return make


def _deputy(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    assert errands.last is not None
    notes = (PartNote(1, "1" * 64, errands.last.at), PartNote(2, "2" * 64, None), PartNote(3, "3" * 64, None))
    about = SetNote("A7F3", errands.last.at - timedelta(days=300), 2, "age1", "locked", notes)
    errands.show(replace(errands.last, deputy_set=about, parts_fresh=True))
    return DeputyPage(theme, errands, ways, Path("/home/ines"), pick=_no_folder)


def _settings(theme: Theme, _errands: FakeErrands, _ways: Ways) -> Page:
    return SettingsPage(theme, Preferences(), Path("/home/ines/.local/share/hearthkey"), lambda _chosen: None)


def gateway(state: str) -> Make:
    """The gateway's page in a state, with everything unfolded and a failure told."""

    def make(theme: Theme, errands: FakeErrands, ways: Ways) -> GatewayPage:
        assert errands.last is not None
        errands.show(STATES[state](errands.last))
        page = GatewayPage(theme, errands, ways, Path("/home/ines"))
        page.pack.fold.open(shown=True)
        errands.visited.emit(PLAN)
        page.difference.fold.open(shown=True)
        if state == "unknown":
            errands.visit_failed.emit(UNREACHABLE)
        return page

    return make


def _place(theme: Theme, errands: FakeErrands, ways: Ways) -> GatewayPlacePage:
    assert errands.last is not None
    errands.show(STATES["in-force"](errands.last))
    return GatewayPlacePage(theme, errands, ways, Path("/home/ines"))


def _host_key(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    page = _place(theme, errands, ways)
    page.compare(DOOR, KEY, changed=True)
    return page


def _nowhere(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    page = _place(theme, errands, ways)
    page.forget_button.click()
    return page


def template(theme: Theme, errands: FakeErrands, _ways: Ways) -> TemplatePage:
    """The page for a template of one's own, nothing typed."""
    errands.kept = (Template("Letter", DEVICE, DEVICE_MARK, "letter", "Dear {{ device_title }}\n"),)
    return TemplatePage(theme, errands, Path("/home/ines"), pick=_no_folder)


def proving(stage: Stage) -> Make:
    """The page that proves Ines's phone, at a step, behind a gateway that hides devices."""

    def make(theme: Theme, errands: FakeErrands, _ways: Ways) -> ProofPage:
        assert errands.last is not None
        errands.show(replace(errands.last, pack_options=PackOptions(masquerade=True)))
        page = ProofPage(theme, errands)
        page.show_pass(errands.last.passes[0])
        page.go(stage)
        page.place.offer((WIFI, CABLE))
        return page

    return make


def _proof_told(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    (page := cast("ProofPage", proving(Stage.CONNECT)(theme, errands, ways))).told.ask()
    return page


def _no_folder(_parent: object, _title: str, _start: Path, _then: object) -> None:
    """Nobody chooses one."""


def _template_warned(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    errands.cautions = (Caution("template-key-in-clear", LONG),)
    page = template(theme, errands, ways)
    page.opened()
    page.switch(":Letter")
    page.form.name.setText(LONG)
    page.trial.now(page.template(), None)
    return page


def _template_mistaken(theme: Theme, errands: FakeErrands, ways: Ways) -> Page:
    error = Refused("template-slot-unknown", line=12, name="gatway_host", near="gateway_host")
    errands.troubles["preview"] = error
    page = template(theme, errands, ways)
    page.bench.text.show_text("\n" * 11 + "ring at {{ gatway_host }}")
    page.trial.now(page.template(), None)
    return page


PAGES: dict[str, Make] = {
    "key gone": key_gone,
    "gateway": gateway("in-force"),
    "gateway, practice": gateway("practice"),
    "gateway, nowhere": gateway("no-target"),
    "gateway out of reach": gateway("unknown"),
    "gateway, where": _place,
    "gateway, host key": _host_key,
    "gateway, deliver nowhere": _nowhere,
    "device in use": device("Ines", "phone"),
    "device due": device("Ines", "tablet"),
    "device revoked": device("Ines", "old phone"),
    "device waiting": device("Tomasz", "laptop"),
    "device stopped": device("Tomasz", "old phone"),
    "device ended": device("Odile", "reader"),
    "guest": device("Boiler engineer", "phone"),
    "long names": _long_names,
    "revoking": _revoking,
    "stopping while locked": _stopping_locked,
    "certificate in full": _in_full,
    "enrolling": enrol,
    "enrolling, all unfolded": _enrol_unfolded,
    "replacing": _replacing,
    "diary": lambda theme, errands, _ways: DiaryPage(theme, errands),
    "household": household,
    "household moving": moving,
    "household moving while locked": _moving_locked,
    "household not fitting": _not_fitting,
    "proving, first step": proving(Stage.WIFI),
    "proving, link": proving(Stage.LINK),
    "proving, last step": proving(Stage.READ),
    "proving, told": _proof_told,
    "template": template,
    "template warned of": _template_warned,
    "template with a mistake": _template_mistaken,
    "renewing": renewal_pages.renewing,
    "renewing while locked": renewal_pages.renewing_locked,
    "both passes": renewal_pages.both_passes,
    "another device": renewal_pages.another,
    "leaving": renewal_pages.leaving,
    "moving day": moving_pages.under_way,
    "planning a move": moving_pages.planning,
    "network plan": moving_pages.network,
    "way in": moving_pages.way_in,
    "kinds": moving_pages.kinds,
    "forwarding sheet": moving_pages.forwarding,
    "days": days,
    "sealed": sealed,
    "succession, before": succession(),
    "succession, half-way": succession(Step.BEGIN, Step.TRUST, Step.GATEWAY),
    "deputy": _deputy,
    "settings": _settings,
    "help": lambda theme, _errands, _ways: HelpPage(theme),
}
