"""Host names that the gateway still answers to, so that nobody is cut off while devices learn the new one."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

from hearthkey.core.household import FormerHost
from hearthkey.core.passes import LIVING, Pass


def moved(former: Iterable[FormerHost], before: str, after: str, now: datetime) -> tuple[FormerHost, ...]:
    """The former hosts once the gateway is reached under another one.

    Args:
        before, after: hosts; where they are the same nothing moves.
        now: UTC.
    """
    kept = tuple(one for one in former if one.host != after)
    if before == after:
        return kept
    return (*(one for one in kept if one.host != before), FormerHost(before, now))


def still_use(former: FormerHost, passes: Iterable[Pass], now: datetime) -> tuple[str, ...]:
    """Titles of the devices whose bundle may know nothing but a former host.

    A bundle says what the household's settings were when it left, so whoever got one before the change looks for
    the former host, or for one that is older still.

    Args:
        passes: every pass; those that are over, and bundles in the tray, are left out.
        now: UTC.
    """
    return tuple(
        dict.fromkeys(
            one.title
            for one in passes
            if one.state(now) in LIVING and one.handed_over is not None and one.handed_over <= former.since
        )
    )
