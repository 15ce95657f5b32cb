"""Buttons, fields and choices, drawn in the look of the sheet."""
