"""Bringing a household back: the files, what is inside, and what to do next."""
