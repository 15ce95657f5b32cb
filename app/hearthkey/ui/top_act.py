"""Which act the top line leads to: the one that keeps the first thing from ending, due or not yet."""

from __future__ import annotations

from datetime import timedelta
from enum import Enum

from hearthkey.core.outlook import Ends, Outlook
from hearthkey.core.renewal import waiting_of
from hearthkey.services.snapshot import Snapshot

NEAR_THE_CA = timedelta(days=2)
"""What ends so close before the CA, or with it, was cut short by the CA: a new one would end on the same day."""


class TopAct(Enum):
    """What there is to do."""

    DELIVER = "deliver"
    HAND_OVER = "hand-over"
    RENEW = "renew"
    LOOK_AT = "look-at"
    SIGN_LIST = "sign-list"
    RENEW_GATEWAY = "renew-gateway"
    SUCCESSION = "succession"


def act_of(seen: Outlook, snapshot: Snapshot) -> TopAct:
    """What keeps the first thing from ending.

    Args:
        seen: until when all is well.
        snapshot: of the same moment.
    """
    if seen.first is None or seen.over:
        return _for_the_house(seen, snapshot)
    if seen.first.guest:
        return TopAct.LOOK_AT
    if waiting_of(seen.first.identity, snapshot.passes, snapshot.at) is not None:
        return TopAct.HAND_OVER
    return TopAct.SUCCESSION if _ends_with_the_ca(seen, snapshot) else TopAct.RENEW


def _for_the_house(seen: Outlook, snapshot: Snapshot) -> TopAct:
    newest, made = snapshot.newest_list, snapshot.gateway
    if seen.house_ends is Ends.LIST:
        ready = newest is not None and newest.next_update > seen.house_end
        return TopAct.DELIVER if ready and _delivers(snapshot) else TopAct.SIGN_LIST
    if made is not None and made.not_after > seen.house_end and _delivers(snapshot):
        return TopAct.DELIVER
    return TopAct.SUCCESSION if _ends_with_the_ca(seen, snapshot) else TopAct.RENEW_GATEWAY


def _delivers(snapshot: Snapshot) -> bool:
    practice = snapshot.household is not None and snapshot.household.practice
    return snapshot.gateway_state.target is not None and not practice


def _ends_with_the_ca(seen: Outlook, snapshot: Snapshot) -> bool:
    return snapshot.authority is not None and seen.until >= snapshot.authority.not_after - NEAR_THE_CA
