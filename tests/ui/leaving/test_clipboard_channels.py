"""What buttons put on the clipboard: the words alone, or something without a word of them."""

from __future__ import annotations

from PySide6.QtWidgets import QApplication, QPushButton

from hearthkey.core.channels import gives_away
from hearthkey.core.secret import Secret
from hearthkey.ui.pages.ways_out import WayOut
from tests.ui.leaving.household import PASSPHRASE, Scene


def test_the_words_are_copied_alone(scene: Scene, qapp: QApplication) -> None:
    """Broken if it fails: one paste sends the words together with the name of what they open."""
    scene.page.left.passphrase_button.click()
    scene.page.panel.passphrase.copy_button.click()
    data = qapp.clipboard().mimeData()
    assert data.text() == PASSPHRASE
    assert not data.hasUrls()
    assert not data.hasHtml()
    assert not data.hasImage()


def test_where_a_code_is_shown_no_button_copies_the_words(scene: Scene, qapp: QApplication) -> None:
    """Broken if it fails: whoever pastes what stands beside a code pastes the words along."""
    scene.page.go(WayOut.CODES)
    buttons = [one for one in scene.page.panel.findChildren(QPushButton) if one.isVisible() and one.isEnabled()]
    assert buttons
    for button in buttons:
        button.click()
        assert not gives_away(qapp.clipboard().text(), Secret(PASSPHRASE))
