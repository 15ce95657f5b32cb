"""Looks at what lies in drawers, for whoever says what is to be made anew."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from hearthkey.core.keepsakes import Keepsakes, newcomer
from hearthkey.core.passes import Pass
from hearthkey.services.sealed_ports import SealedRegister


def keepsakes(
    register: SealedRegister, passes: Sequence[Pass], founded: datetime | None, now: datetime
) -> Keepsakes | None:
    """What is known of paper, parts and stop set; None before there is a household.

    Args:
        founded: when the diary begins, UTC; None where it is empty.

    Raises:
        Unavailable: as the register.
    """
    authority, newest, given = register.authority(), register.newest_list(), register.stop_set()
    if authority is None or newest is None or founded is None:
        return None
    lock, parts = register.copy_lock(), register.deputy_set()
    return Keepsakes(
        founded=founded,
        papers=tuple(register.papers_made()),
        stop_set=given,
        parts=parts,
        parts_fresh=parts is not None and lock is not None and parts.lock == lock[0],
        authority=authority,
        succession=register.succession(),
        list_number=newest.number,
        list_since=newest.this_update,
        newcomer=newcomer(given, passes, now),
    )
