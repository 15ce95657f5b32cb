"""From the painted screen to an opened bundle: code, browser, file, and the words once the code is gone."""

from __future__ import annotations

from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot

from hearthkey.core.secret import Secret
from hearthkey.pki import pkcs12, read
from hearthkey.ui.clipboard import SecretClipboard
from hearthkey.ui.pages.two_channels import Side
from hearthkey.ui.theme.theme import Theme
from tests.tickets.browser import ANDROID, browser
from tests.ui.leaving.test_pickup import AtHome, scanned


@pytest.mark.parametrize("look", ["paper", "lamp"])
def test_from_the_painted_code_to_an_opened_bundle(
    qtbot: QtBot, theme: Theme, tmp_path: Path, clipboard: SecretClipboard, look: str
) -> None:
    """Broken if it fails: each part works and the way from the screen to the key does not, in light or in the dark."""
    theme.choose(look, 1.0)
    home = AtHome(qtbot, theme, tmp_path, clipboard)
    downloads = tmp_path / "downloads"
    downloads.mkdir()
    try:
        link = home.link = home.opened()
        card, panel = home.page.panel.pickup, home.page.panel
        assert link == card.link.text()
        assert panel.passphrase.words.words() == []
        with browser(tmp_path / "profile") as phone:
            phone.open_page(agent=ANDROID, language="en", script=False, downloads=downloads)
            phone.go(link)
            home.wait_for(lambda: card.happened.text() == "The page was opened by 127.0.0.1.")
            phone.tap("a")
            name = phone.wait_for("Browser.downloadWillBegin")["suggestedFilename"]
            phone.wait_for("Browser.downloadProgress", state="completed")
            home.shows(Side.OVER)
            assert scanned(home.page) == ""
            assert link not in panel.over.told.text()
            panel.over.passphrase.click()
            home.shows(Side.PASSPHRASE)
            words = Secret(" ".join(panel.passphrase.words.words()))
        opened = pkcs12.open_container((downloads / name).read_bytes(), words, foreign=True)
        assert read.certificate_facts(opened.certificate).serial == home.serial
        assert scanned(home.page) == ""
        home.wait_for(home.port_is_closed)
    finally:
        home.close()
