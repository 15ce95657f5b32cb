"""What every widget asks before it paints: the present tokens and fonts."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QColor, QFont, QGuiApplication, QPalette, Qt
from PySide6.QtWidgets import QApplication

from hearthkey.ui.theme.fonts import Fonts, Role
from hearthkey.ui.theme.tokens import CONTRAST_DARK, CONTRAST_LIGHT, LAMP, PAPER, THEMES, Tokens

SYSTEM = "system"
"""Follow the desktop."""


class Theme(QObject):
    """The present look.

    Signals:
        changed: tokens or fonts are different now; ask again.
    """

    changed = Signal()

    def __init__(self, *, name: str = SYSTEM, scale: float = 1.0, faces: bool = True) -> None:
        super().__init__()
        self._faces = faces
        self.fonts = Fonts(scale=scale, faces=faces)
        self.name = name
        self.tokens = _chosen(name)

    def choose(self, name: str, scale: float) -> None:
        """Change the look of everything at once."""
        self.name = name
        self.tokens = _chosen(name)
        if scale != self.fonts.scale:
            self.fonts = Fonts(scale=scale, faces=self._faces)
        self.dress()
        self.changed.emit()

    def dress(self) -> None:
        """Give the application its palette and its font, before the first widget or after a change."""
        QApplication.setPalette(palette(self.tokens))
        QApplication.setFont(self.font(Role.BODY))

    def font(self, role: Role) -> QFont:
        """The font for a role."""
        return self.fonts.font(role)

    def color(self, token: str) -> QColor:
        """A token as a colour; `shade` falls back to `hair` where a theme has none."""
        value = getattr(self.tokens, token)
        return QColor(value if value is not None else self.tokens.hair)

    def px(self, pixels: float) -> int:
        """A length that grows with the type."""
        return self.fonts.px(pixels)

    @property
    def still(self) -> bool:
        """Whether nothing may move: the desktop asks for reduced motion, or there is none to show it on."""
        return QApplication.style().styleHint(QApplication.style().StyleHint.SH_Widget_Animation_Duration) == 0


def _chosen(name: str) -> Tokens:
    if name in THEMES:
        return THEMES[name]
    hints = QGuiApplication.styleHints()
    dark = hints.colorScheme() == Qt.ColorScheme.Dark
    if hints.accessibility().contrastPreference() == Qt.ContrastPreference.HighContrast:
        return CONTRAST_DARK if dark else CONTRAST_LIGHT
    return LAMP if dark else PAPER


def palette(tokens: Tokens) -> QPalette:
    """Tokens as a palette for Fusion; what no role fits comes from the tokens alone."""
    group = QPalette.ColorRole
    roles = {
        group.Window: tokens.desk,
        group.WindowText: tokens.ink,
        group.Text: tokens.ink,
        group.ButtonText: tokens.ink,
        group.ToolTipText: tokens.ink,
        group.HighlightedText: tokens.ink,
        group.Link: tokens.ink,
        group.Base: tokens.sheet,
        group.AlternateBase: tokens.facet,
        group.Button: tokens.raised,
        group.Light: tokens.raised,
        group.ToolTipBase: tokens.raised,
        group.Highlight: tokens.sel,
        group.PlaceholderText: tokens.ink2,
        group.BrightText: tokens.act,
        group.Mid: tokens.rule,
        group.Dark: tokens.rule,
        group.Midlight: tokens.hair,
        group.Shadow: tokens.ink,
        group.Accent: tokens.ink,
    }
    made = QPalette()
    for role, value in roles.items():
        made.setColor(role, QColor(value))
    for role in (group.WindowText, group.Text, group.ButtonText):
        made.setColor(QPalette.ColorGroup.Disabled, role, QColor(tokens.disabled))
    return made
