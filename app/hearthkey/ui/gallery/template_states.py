"""The page of one's own templates in its states, and the hand-over page that offers them."""

from __future__ import annotations

from functools import partial

from hearthkey.core.errors import HearthkeyError
from hearthkey.core.plans import Changes
from hearthkey.core.templates import DEVICE, GATEWAY, Template
from hearthkey.ui.drawer.template_page import TemplatePage
from hearthkey.ui.window import Window

_OPEN = """Dear {{ device_title }},

ring at {{ gateway_host }} and show them this:

{{ device_key }}
They let you in until {{ pass_ends }}.
"""


def _page(window: Window) -> TemplatePage:
    window.ways.back.emit()
    window.ways.templates.emit()
    page = window.drawer.page()
    assert isinstance(page, TemplatePage)  # noqa: S101 - a fault of ours, not the world's
    return page


def _typed(window: Window, of: str, name: str, text: str, serial: str = "") -> TemplatePage:
    """The page with a text that was typed a while ago."""
    page = _page(window)
    page.form.of.segments()[[GATEWAY, DEVICE].index(of)].click()
    page.form.name.setText(name)
    page.bench.text.show_text(text)
    if serial:
        page.bench.device.take(serial)
        page.bench.turned_to.emit(serial)
    page.trial.now(page.template(), page.bench.serial())
    return page


def begun(window: Window) -> None:
    """Nothing is typed yet."""
    _page(window)


def example(window: Window) -> None:
    """The example stands in the text."""
    page = _page(window)
    page.form.name.setText("Letter to the doorkeeper")
    page.bench.begin.click()
    page.trial.now(page.template(), None)


def mistaken(window: Window) -> None:
    """A slot is misspelt."""
    page = _typed(window, GATEWAY, "House book", "Dear doorkeeper of {{ household }},\nlisten at {{ gatway_host }}.\n")
    page.bench.text.setFocus()


def warned(window: Window) -> None:
    """A key would be written without a passphrase; the lower end of the page."""
    waiting = next(one for one in window.outside.errands.last.passes if one.handed_over is None)  # type: ignore[union-attr]  # a household is open
    page = _typed(window, DEVICE, "Letter in the clear", _OPEN, waiting.serial)
    page.bench.slots.setFocus()
    bar = page.roll.verticalScrollBar()
    page.trial.shown.connect(lambda _shown: bar.setValue(bar.maximum()))


def handing_over(window: Window) -> None:
    """Two are kept; each is a row of the hand-over page."""
    window.ways.back.emit()
    errands = window.outside.errands
    kept = [
        Template("Letter in the clear", DEVICE, "for-{device}", "letter", _OPEN),
        Template("Sealed letter", DEVICE, "for-{device}", "letter", _OPEN.replace("device_key", "device_key_sealed")),
    ]
    waiting = next(one for one in errands.last.passes if one.handed_over is None)  # type: ignore[union-attr]  # a household is open
    errands.keep(kept[0], window, None, _give_up)
    errands.keep(kept[1], window, partial(_open, window, waiting.serial), _give_up)


def _open(window: Window, serial: str, _kept: Changes) -> None:
    window.ways.hand_over.emit(serial)


def _give_up(error: HearthkeyError) -> None:
    raise error
