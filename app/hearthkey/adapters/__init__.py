"""One file for each thing outside."""
