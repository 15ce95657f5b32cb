"""All pages of the drawer, and which way leads to which."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal

from hearthkey.ui.controls.buttons import Button
from hearthkey.ui.drawer.copies_page import CopiesPage
from hearthkey.ui.drawer.days_page import DaysPage
from hearthkey.ui.drawer.deputy_page import DeputyPage
from hearthkey.ui.drawer.device_page import DevicePage
from hearthkey.ui.drawer.diary_page import DiaryPage
from hearthkey.ui.drawer.enrol_page import EnrolPage
from hearthkey.ui.drawer.forwarding_page import ForwardingPage
from hearthkey.ui.drawer.gateway_page import GatewayPage
from hearthkey.ui.drawer.gateway_place import GatewayPlacePage
from hearthkey.ui.drawer.help_page import HelpPage
from hearthkey.ui.drawer.household_page import HouseholdPage
from hearthkey.ui.drawer.key_gone_page import KeyGonePage
from hearthkey.ui.drawer.kinds_page import KindsPage
from hearthkey.ui.drawer.moving_page import MovingPage
from hearthkey.ui.drawer.network_page import NetworkPage
from hearthkey.ui.drawer.page import Page
from hearthkey.ui.drawer.proof_page import ProofPage
from hearthkey.ui.drawer.sealed_page import SealedPage
from hearthkey.ui.drawer.settings_page import SettingsPage
from hearthkey.ui.drawer.succession_page import SuccessionPage
from hearthkey.ui.drawer.template_page import TemplatePage
from hearthkey.ui.drawer.way_in_page import WayInPage
from hearthkey.ui.preferences import Preferences
from hearthkey.ui.window import Window


class DrawerPages(QObject):
    """The pages of one window.

    Args:
        chosen: the preferences as they are.
        prefer: puts preferences into effect.

    Signals:
        wanted: a page is to be opened as it is.
    """

    wanted = Signal(object)

    def __init__(self, window: Window, chosen: Preferences, prefer: Callable[[Preferences], None]) -> None:
        super().__init__(window)
        theme, outside, ways = window.theme, window.outside, window.ways
        errands, home = outside.errands, outside.home
        self.device = DevicePage(theme, errands, ways)
        self.enrol = EnrolPage(theme, errands, ways)
        self.copies = CopiesPage(theme, errands)
        self.days = DaysPage(theme, errands, ways, home)
        self.deputy = DeputyPage(theme, errands, ways, home)
        self.diary = DiaryPage(theme, errands, home)
        self.household = HouseholdPage(theme, errands, ways)
        self.kinds = KindsPage(theme, errands)
        self.forwarding = ForwardingPage(theme, errands, home)
        self.moving = MovingPage(theme, errands, ways)
        self.network = NetworkPage(theme, errands, ways)
        self.way_in = WayInPage(theme, errands, ways)
        self.proof = ProofPage(theme, errands)
        self.sealed = SealedPage(theme, errands, home)
        self.succession = SuccessionPage(theme, errands, ways)
        self.key_gone = KeyGonePage(theme, errands, ways)
        self.settings = SettingsPage(theme, chosen, outside.data, prefer)
        self.gateway = GatewayPage(theme, errands, ways, home)
        self.gateway_place = GatewayPlacePage(theme, errands, ways, home)
        self.template = TemplatePage(theme, errands, home)
        self.help = HelpPage(theme)
        self.more_spots: dict[Page, str] = {}
        self.settings.household.connect(ways.household)
        self.diary.copies.connect(ways.sealed)
        for way, page in (
            (ways.days, self.days),
            (ways.deputy, self.deputy),
            (ways.diary, self.diary),
            (ways.gateway, self.gateway),
            (ways.gateway_place, self.gateway_place),
            (ways.household, self.household),
            (ways.kinds, self.kinds),
            (ways.forwarding, self.forwarding),
            (ways.moving, self.moving),
            (ways.network_plan, self.network),
            (ways.way_in, self.way_in),
            (ways.key_gone, self.key_gone),
            (ways.sealed, self.sealed),
            (ways.settings, self.settings),
            (ways.succession, self.succession),
            (ways.templates, self.template),
        ):
            way.connect(lambda wanted=page: self.wanted.emit(wanted))
        ways.succession_for.connect(self._succession_for)
        for way, button in (
            (ways.sign_list, self.household.sign_button),
            (ways.renew_gateway, self.household.renew_button),
        ):
            way.connect(lambda at=button: self._at(self.household, at))

    def _succession_for(self, cause: str) -> None:
        self.succession.ask_about(cause)
        self.wanted.emit(self.succession)

    def _at(self, page: Page, button: Button) -> None:
        """Open a page at one of its buttons."""
        self.wanted.emit(page)
        button.setFocus()
        page.roll.ensureWidgetVisible(button)

    def spot(self, page: Page | None) -> str:
        """Which help belongs to a page; that of the board where none is open."""
        spots: dict[Page, str] = {
            self.device: "device",
            self.enrol: "enrolling",
            self.copies: "copies",
            self.days: "days",
            self.deputy: "deputy",
            self.diary: "diary",
            self.settings: "settings",
            self.household: "household",
            self.forwarding: "forwarding",
            self.kinds: "kinds",
            self.moving: "moving",
            self.network: "network",
            self.way_in: "way-in",
            self.proof: "proving",
            self.sealed: "sealed",
            self.succession: "succession",
            self.key_gone: "succession",
            self.gateway: "gateway",
            self.gateway_place: "gateway",
            self.template: "templates",
            **self.more_spots,
        }
        return next((spot for one, spot in spots.items() if one is page), "board")
