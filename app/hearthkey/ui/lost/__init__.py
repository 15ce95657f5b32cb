"""The sheet "Lost or stolen", laid over whatever is open."""

from hearthkey.ui.lost.sheet import LostSheet

__all__ = ["LostSheet"]
