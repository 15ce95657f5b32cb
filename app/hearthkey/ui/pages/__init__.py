"""Pages that take the place of the board."""
