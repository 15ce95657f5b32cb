"""What is said about files that were not read in a household that was made by hand."""

from __future__ import annotations

FILES: dict[str, tuple[str, str]] = {
    "file-link": ("A link was not followed.", "Copy the file that it points to into the folder, if it belongs here."),
    "file-special": ("Something is no plain file.", "It is left as it is."),
    "file-large": ("A file is larger than any certificate or list.", "It was not read."),
    "file-closed": ("A file or folder may not be read by you.", "Change who may read it, if it belongs here."),
    "file-deep": ("A folder lies too deep.", "It was not read. Look into it by itself, if it belongs here."),
    "file-many": ("There are more files than are looked at.", "Choose the folder that holds nothing but the CA."),
    "file-too-much": ("A file holds more blocks than are read ({limit}).", "What follows in it was not read."),
    "block-unreadable": ("A block cannot be decoded ({label}).", "It was not read."),
}
"""What it is, and what comes of it."""
