"""The household's certificate authority on the laptop: issue, hand over, stop, for years."""

__version__ = "0.1.0"
