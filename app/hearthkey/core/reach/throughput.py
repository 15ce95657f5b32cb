"""What a relative can expect of the way home: the slower of line and gateway, less what the tunnel takes."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from hearthkey.core.errors import Refused
from hearthkey.core.reach.packets import Packet

LOWEST, HIGHEST = 1, 100_000_000
"""kbit/s: from a line that hardly is one to 100 Gbit/s."""


class Use(StrEnum):
    """What people do."""

    CALL = "call"
    VIDEO_CALL = "video-call"
    FILM = "film"
    LARGE_FILM = "large-film"


NEEDS = {Use.CALL: 100, Use.VIDEO_CALL: 1_500, Use.FILM: 5_000, Use.LARGE_FILM: 25_000}
"""kbit/s that one of each takes, out of the house. Common practice, no source."""

PHOTO = 32_000
"""kbit of one photo: 4 megabytes. Common practice, no source."""


@dataclass(frozen=True)
class Expectation:
    """What goes through.

    Args:
        upload: of the line at home, kbit/s; None where nobody said.
        board: what the gateway can encrypt, kbit/s; None where nobody said.
        payload: of the slower one what is left for TCP, kbit/s.
        at_once: how many of each use fit beside each other.
        photos: how many photos a minute.
    """

    upload: int | None
    board: int | None
    payload: int
    at_once: dict[Use, int]
    photos: int

    @property
    def board_is_slower(self) -> bool:
        """Whether the gateway, not the line, is what everybody waits for."""
        return self.board is not None and (self.upload is None or self.board < self.upload)


def expected(upload: int | None, board: int | None, through: Packet) -> Expectation | None:
    """What to expect; None where neither rate is known.

    Of each packet outside, `through.outer` octets on the wire carry `through.mss4` of payload.

    Args:
        upload: what the line at home sends, kbit/s.
        board: what the gateway encrypts, kbit/s.
        through: the packets that it goes in.

    Raises:
        Refused: rate-odd.
    """
    said = [one for one in (upload, board) if one is not None]
    for one in said:
        if not LOWEST <= one <= HIGHEST:
            raise Refused("rate-odd", number=one, lowest=LOWEST, highest=HIGHEST)
    if not said:
        return None
    payload = min(said) * through.mss4 // through.outer
    return Expectation(
        upload, board, payload, {use: payload // need for use, need in NEEDS.items()}, payload * 60 // PHOTO
    )
