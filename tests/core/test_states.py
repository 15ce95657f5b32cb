"""The state of a pass: what outranks what, and the second in which it changes."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from hearthkey.core.passes import Pass, State, state_of
from hearthkey.core.revocation import FINAL_REASONS, Reason
from tests.fakes.clock import NOW

END = NOW + timedelta(days=7)
WAITING = Pass(
    person="Ines",
    device="phone",
    kind="linux",
    identity="k7m2p9xw.quince.example",
    serial="2a",
    key_set="compact",
    container="strong",
    guest=False,
    not_before=NOW,
    not_after=END,
    handed_over=None,
    reason=None,
    since=None,
)


@pytest.mark.parametrize(
    ("reason", "ended", "handed_over", "state"),
    [
        (None, False, False, State.WAITING),
        (None, False, True, State.IN_USE),
        (None, True, False, State.ENDED),
        (None, True, True, State.ENDED),
        (Reason.CERTIFICATE_HOLD, False, False, State.STOPPED),
        (Reason.CERTIFICATE_HOLD, False, True, State.STOPPED),
        (Reason.CERTIFICATE_HOLD, True, True, State.ENDED),
        *((reason, ended, True, State.REVOKED) for reason in FINAL_REASONS for ended in (False, True)),
    ],
)
def test_final_outranks_ended_and_ended_outranks_stopped(
    reason: Reason | None,
    ended: bool,  # noqa: FBT001 - a row of the table
    handed_over: bool,  # noqa: FBT001 - a row of the table
    state: State,
) -> None:
    """Broken if it fails: the sheet says something else than the gateway does."""
    assert state_of(reason=reason, ended=ended, handed_over=handed_over) is state


def test_a_pass_ends_after_its_last_second() -> None:
    """Broken if it fails: a device is called ended while it still gets in (RFC 5280 section 4.1.2.5)."""
    assert WAITING.state(END) is State.WAITING
    assert WAITING.state(END + timedelta(seconds=1)) is State.ENDED


def test_a_stop_is_seen_at_once() -> None:
    """Broken if it fails: a stolen phone still looks like one that gets in."""
    assert replace(WAITING, reason=Reason.CERTIFICATE_HOLD, since=NOW).state(NOW) is State.STOPPED
