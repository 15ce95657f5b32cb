"""Pictures of the window in its states and looks."""

from __future__ import annotations

from hearthkey.ui.gallery.drawing import draw

__all__ = ["draw"]
