"""Work beside the board, one page at a time."""
