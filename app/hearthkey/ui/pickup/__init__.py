"""A pick-up by ticket, as the window sees it."""
