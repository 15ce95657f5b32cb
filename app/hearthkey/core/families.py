"""Families of operating systems: what a browser tells of a device, and what a device kind belongs to."""

from __future__ import annotations

from enum import StrEnum


class Family(StrEnum):
    """OS families as far as a browser tells them."""

    IOS = "ios"
    ANDROID = "android"
    WINDOWS = "windows"
    MAC = "mac"
    LINUX = "linux"
    UNKNOWN = "unknown"


HANDHELD = frozenset({Family.IOS, Family.ANDROID})
"""What is held in a hand; the others but the unknown stand on a desk."""
