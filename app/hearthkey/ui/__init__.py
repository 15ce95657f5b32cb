"""The window, the one door to PySide6."""
