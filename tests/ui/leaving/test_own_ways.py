"""The householder's own templates on the hand-over page: a row each, the caution where it belongs, the same guard."""

from __future__ import annotations

from dataclasses import dataclass

import pytest
from PySide6.QtWidgets import QApplication, QWidget

from hearthkey.core.errors import Refused
from hearthkey.core.templates import DEVICE, Template
from hearthkey.services.templating import Holds
from hearthkey.ui.pages.two_channels import Side
from hearthkey.ui.pages.way_rows import WayRow
from hearthkey.ui.template_errands import OwnForm
from tests.ui.leaving.household import LAPTOP, WORDS, Scene


def form(name: str, holds: Holds) -> OwnForm:
    """A kept template."""
    return OwnForm(Template(name, DEVICE, "{device}", "letter", f"{name} for {{{{ device_title }}}}"), holds)


@dataclass
class Own:
    """The page with own rows on it."""

    scene: Scene

    def row(self, number: int = 0) -> WayRow:
        """A row of its own."""
        return list(self.scene.page.left.rows.own.values())[number]


@pytest.fixture
def own(scene: Scene) -> Own:
    """A row for each thing that a template can hold."""
    scene.errands.own = tuple(form(one.name.capitalize(), one) for one in Holds)
    scene.page.open(LAPTOP.serial)
    return Own(scene)


def test_every_kept_template_has_a_row_that_says_who_can_open_it(own: Own) -> None:
    """Broken: the template has to be looked for elsewhere, or a key leaves in the clear without a word."""
    rows = list(own.scene.page.left.rows.own.values())
    assert [row.title.text() for row in rows] == [f"Your own: {one.name.capitalize()}" for one in Holds]
    told = {holds: row.sentence.text() for holds, row in zip(Holds, rows, strict=True)}
    assert told[Holds.KEY].startswith("Not sealed. It holds the key without a passphrase")
    assert told[Holds.EXTRA].startswith("Not sealed. It holds a secret")
    assert told[Holds.SEALED_KEY].startswith("Whoever has the passphrase")
    assert told[Holds.NOTHING].startswith("Anybody;")
    assert all(row.button.accessibleDescription() == row.sentence.text() for row in rows)
    assert own.scene.page.panel.rest.isVisible()


def test_tab_walks_through_own_rows_too(own: Own) -> None:
    """Broken: the new rows need a mouse, or come after the last button of the page."""
    rows = own.scene.page.left.rows
    rows.rows[list(rows.rows)[-1]].button.setFocus()
    walked: list[QWidget | None] = []
    for _ in range(5):
        own.scene.page.focusNextChild()
        walked.append(QApplication.focusWidget())
    assert walked == [*(row.button for row in rows.own.values()), own.scene.page.left.passphrase_button]


def test_it_is_written_where_it_was_chosen(own: Own) -> None:
    """Broken: the file is another one, or elsewhere, or nobody is told where and what to do with it."""
    own.row().button.click()
    page = own.scene.page
    assert own.scene.errands.asked("write") == [("Key", LAPTOP.serial, own.scene.picked.folder)]
    assert page.panel.shown() is Side.SAVED
    assert page.panel.saved.name.text() == "own.txt"
    assert "nothing protects what is in it" in page.panel.saved.now.text()
    assert own.row().taken
    assert not any(row.taken for row in page.left.rows.rows.values())


@pytest.mark.parametrize("number", range(4))
def test_whatever_it_holds_it_is_never_beside_the_passphrase(own: Own, number: int) -> None:
    """Broken: an exception in the guard, and the one mistake about a text's content that opens it."""
    own.row(number).button.click()
    page = own.scene.page
    page.left.passphrase_button.click()
    assert page.panel.passphrase.words.words() == list(WORDS)
    assert not page.panel.saved.isVisible()
    own.row(number).button.click()
    assert page.panel.passphrase.words.words() == []
    assert page.panel.saved.isVisible()


def test_what_fails_is_said_and_can_be_done_again(own: Own) -> None:
    """Broken: a text that asks for what is not there today leaves a page that says nothing."""
    own.scene.errands.refuse["write"] = Refused("template-slot-empty", line=3, name="extra_secret")
    own.row().button.click()
    page = own.scene.page
    assert page.panel.shown() is Side.TROUBLE
    assert page.panel.trouble.told.text().startswith("Line 3: there is nothing in extra_secret today.")
    own.scene.errands.refuse.clear()
    page.panel.trouble.again.click()
    assert page.panel.shown() is Side.SAVED


def test_rows_of_forgotten_templates_go(own: Own) -> None:
    """Broken: a template that is gone can still be written."""
    own.scene.errands.own = own.scene.errands.own[1:2]
    own.scene.page.open(LAPTOP.serial)
    assert [way.template.name for way in own.scene.page.left.rows.own] == ["Extra"]
    own.scene.errands.own = ()
    own.scene.page.open(LAPTOP.serial)
    assert own.scene.page.left.rows.own == {}
    assert own.scene.page.panel.rest.isVisible()
