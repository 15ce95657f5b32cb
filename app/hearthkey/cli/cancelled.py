"""Cancelling, which is not an error."""

from __future__ import annotations


class Cancelled(Exception):
    """The householder changed their mind."""
