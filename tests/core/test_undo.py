"""What keeps a change from being taken back, as values alone."""

from __future__ import annotations

from dataclasses import replace

import pytest

from hearthkey.core.adopted import Whose
from hearthkey.core.connect_choices import ConnectChoices
from hearthkey.core.household import Household
from hearthkey.core.pack_options import PackOptions
from hearthkey.core.target import By, Target
from hearthkey.core.templates import DEVICE, GATEWAY, Template
from hearthkey.core.undo import Deed, Kind, Marks, Standing, alike, differences, hindrance, kind_of
from tests.ui.practice import HOUSEHOLD, NOW

MARKS = Marks(list_number=43, delivered=None, handed_over=6)
DELIVERED = replace(MARKS, delivered=NOW)
GIVEN = replace(MARKS, handed_over=7)
NOTHING = Standing()
STOPPED = Standing(holds={"0a": NOW})
NAMED = replace(HOUSEHOLD, name="Quince House")
FULL = replace(HOUSEHOLD, tunnel="full")
ELSEWHERE = replace(HOUSEHOLD, gateway_host="door.quince.example")
UNSAID, SAID = Whose("Somebody", "ines-phone", None), Whose("Ines", "phone", NOW)
BY_ITSELF = ConnectChoices(by_itself=True)
OURS = Template("Rules", GATEWAY, "rules", "conf", "on")


def deed(before: Standing, after: Standing) -> Deed:
    """A change."""
    return Deed(*differences(before, after), MARKS)


def settings(before: Household, after: Household) -> Deed:
    """A change of the household's settings."""
    return deed(Standing(settings={"": before}), Standing(settings={"": after}))


@pytest.mark.parametrize(
    ("before", "after", "kind"),
    [
        (NOTHING, STOPPED, Kind.STOP),
        (STOPPED, NOTHING, Kind.LET_IN),
        (Standing(settings={"": HOUSEHOLD}), Standing(settings={"": NAMED}), Kind.SETTLE),
        (NOTHING, Standing(targets={"": Target(By.FOLDER, "/srv")}), Kind.TARGET),
        (Standing(options={"": PackOptions()}), Standing(options={"": PackOptions(masquerade=True)}), Kind.OPTIONS),
        (NOTHING, Standing(templates={"Rules": OURS}), Kind.TEMPLATE_KEPT),
        (Standing(templates={"Rules": OURS}), NOTHING, Kind.TEMPLATE_FORGOTTEN),
        (NOTHING, Standing(languages={"odile": "de"}), Kind.LANGUAGE),
        (Standing(calls={"": "Ines"}), NOTHING, Kind.CALL),
        (NOTHING, Standing(gone={3: NOW}), Kind.GONE),
        (Standing(gone={3: NOW}), NOTHING, Kind.NOT_GONE),
        (Standing(whose={"1001": UNSAID}), Standing(whose={"1001": SAID}), Kind.NAMED),
        (Standing(choices={"": ConnectChoices()}), Standing(choices={"": BY_ITSELF}), Kind.CHOICES),
        (STOPPED, STOPPED, None),
    ],
)
def test_every_change_is_known_by_what_it_changed(before: Standing, after: Standing, kind: Kind | None) -> None:
    """Broken if it fails: the menu promises to take back something else than it does."""
    assert kind_of(*differences(before, after)) is kind


def test_a_stop_is_taken_back_until_the_gateway_holds_its_list() -> None:
    """Broken if it fails: a stop in force is called undone, or one that is not cannot be."""
    stop = deed(NOTHING, STOPPED)
    assert hindrance(stop, STOPPED, MARKS, None) is None
    assert hindrance(stop, STOPPED, MARKS, 42) is None
    assert hindrance(stop, STOPPED, MARKS, 43) == "undo-in-force"
    assert hindrance(stop, STOPPED, DELIVERED, 42) is None


def test_what_was_changed_again_is_left_alone() -> None:
    """Broken if it fails: an old change that is taken back overwrites a newer one."""
    assert hindrance(settings(HOUSEHOLD, NAMED), Standing(settings={"": FULL}), MARKS, None) == "undo-changed-since"
    assert hindrance(deed(NOTHING, STOPPED), NOTHING, MARKS, None) == "undo-changed-since"
    assert alike(deed(NOTHING, STOPPED), Standing(holds={"0a": NOW, "0b": NOW}))
    revoked = replace(MARKS, revoked=frozenset({"0a"}))
    assert hindrance(deed(STOPPED, NOTHING), NOTHING, revoked, None) == "undo-changed-since"


@pytest.mark.parametrize(
    ("after", "given", "delivered"),
    [
        (NAMED, None, None),
        (FULL, "undo-handed-over-since", "undo-delivered-since"),
        (ELSEWHERE, "undo-handed-over-since", "undo-delivered-since"),
        (replace(HOUSEHOLD, identity_suffix="home.quince.example"), "undo-handed-over-since", None),
        (replace(HOUSEHOLD, dns_servers=()), None, "undo-delivered-since"),
    ],
)
def test_settings_are_taken_back_until_somebody_goes_by_them(
    after: Household, given: str | None, delivered: str | None
) -> None:
    """Broken if it fails: a device or the gateway goes by settings that the register says were never made."""
    one, now = settings(HOUSEHOLD, after), Standing(settings={"": after})
    assert hindrance(one, now, MARKS, None) is None
    assert hindrance(one, now, GIVEN, None) == given
    assert hindrance(one, now, DELIVERED, None) == delivered


def test_only_what_the_gateway_reads_is_held_by_a_delivery() -> None:
    """Broken if it fails: a delivery keeps a device's template from being taken back, or not the gateway's."""
    for of, code in ((GATEWAY, "undo-delivered-since"), (DEVICE, None)):
        kept = Standing(templates={"Rules": replace(OURS, of=of)})
        assert hindrance(deed(NOTHING, kept), kept, DELIVERED, None) == code
    told = Standing(languages={"odile": "de"}, calls={"": "Ines"}, gone={1: NOW})
    assert hindrance(deed(NOTHING, told), told, Marks(44, NOW, 9), 44) is None


def test_a_name_is_taken_back_until_its_device_has_another_pass() -> None:
    """Broken if it fails: a bundle is made for somebody who then has no such device, or a slip stays for nothing."""
    named = Standing(whose={"1001": SAID})
    marks = replace(MARKS, devices={"1001": "a7k2", "1003": "c9n4"})
    one = replace(deed(Standing(whose={"1001": UNSAID}), named), marks=marks)
    assert hindrance(one, named, replace(marks, delivered=NOW, handed_over=7), 44) is None
    for device, code in (("c9n4", None), ("a7k2", "undo-named-since")):
        assert hindrance(one, named, replace(marks, devices={**marks.devices, "2001": device}), None) == code


def test_choices_for_profiles_are_taken_back_until_a_bundle_leaves() -> None:
    """Broken if it fails: the app says that phones connect when asked to, and one connects by itself."""
    chosen = Standing(choices={"": BY_ITSELF})
    one = deed(Standing(choices={"": ConnectChoices()}), chosen)
    assert hindrance(one, chosen, DELIVERED, 44) is None
    assert hindrance(one, chosen, GIVEN, None) == "undo-handed-over-since"
