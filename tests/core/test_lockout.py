"""Nobody is ever locked out by a date that ran over quietly: shown over years of forgetting, delivering and failing."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta

from hypothesis import given
from hypothesis import strategies as st

from hearthkey.core.in_force import GatewayNote, house_ends
from hearthkey.core.outlook import outlook
from hearthkey.core.passes import Pass
from hearthkey.core.revocation import SignedList, plan_list

START = datetime(2026, 5, 12, tzinfo=UTC)
DAY = timedelta(days=1)
PROMISED = timedelta(days=30)
GATEWAY_DAYS = timedelta(days=825)
FIRST = SignedList(1, b"", START, START)
UNSEEN = GatewayNote()


@dataclass
class Years:
    """A household over time, as the strip and the top line see it and as the gateway is."""

    authority_end: datetime
    now: datetime = START
    newest: SignedList = FIRST
    gateway_until: datetime = START + GATEWAY_DAYS
    note: GatewayNote = UNSEEN
    really: tuple[datetime, datetime] | None = None
    warned_since: datetime | None = None

    def sign(self) -> None:
        """Sign the next list, as unlocking does."""
        plan = plan_list(
            (),
            highest_number=self.newest.number,
            previous_update=None,
            authority_end=self.authority_end,
            now=self.now,
        )
        self.newest = SignedList(plan.number, b"", plan.this_update, plan.next_update)

    def renew_gateway(self) -> None:
        """Give the gateway its next certificate here; it is not there yet."""
        self.gateway_until = min(self.now + GATEWAY_DAYS, self.authority_end)

    def deliver(self, *, works: bool) -> None:
        """Deliver, and read back where it works."""
        if works:
            self.really = (self.newest.next_update, self.gateway_until)
            self.note = GatewayNote(
                looked=self.now, list_until=self.really[0], gateway_until=self.really[1], list_number=self.newest.number
            )
        else:
            self.note = replace(self.note, failed=self.now, failure="gateway-unreachable")

    def pass_day(self) -> None:
        """Let a day go by and look at the top line."""
        self.now += DAY
        list_end, gateway_end = house_ends(self.note, self.newest, self.gateway_until)
        seen = outlook([PHONE], list_end=list_end, gateway_end=gateway_end, now=self.now)
        if not seen.house_due:
            self.warned_since = None
        elif self.warned_since is None:
            self.warned_since = self.now

    @property
    def refused(self) -> bool:
        """Whether the gateway in truth refuses everybody."""
        return self.really is not None and self.now > min(self.really)


PHONE = Pass(
    person="Ines", device="phone", kind="linux", identity="a.quince.example", serial="0a", key_set="compact",
    container="strong", guest=False, not_before=START, not_after=START + 9000 * DAY, handed_over=START,
    reason=None, since=None,
)  # fmt: skip

STEPS = st.lists(
    st.tuples(st.sampled_from(["sign", "gateway", "works", "fails", "nothing"]), st.integers(1, 400)),
    min_size=1,
    max_size=12,
)


@given(steps=STEPS, life=st.integers(900, 4000))
def test_whoever_is_refused_was_warned_for_thirty_days(steps: list[tuple[str, int]], life: int) -> None:
    """Broken if it fails: in some order of forgetting and failing the family is locked out without a word before."""
    house = Years(START + life * DAY)
    house.sign()
    house.deliver(works=True)
    for step, days in steps:
        if step == "sign" and house.now < house.authority_end - 61 * DAY:
            house.sign()
        elif step == "gateway" and house.now < house.authority_end - 61 * DAY:
            house.renew_gateway()
        elif step in {"works", "fails"}:
            house.deliver(works=step == "works")
        for _ in range(days):
            house.pass_day()
            if house.refused:
                assert house.warned_since is not None
                assert house.now - house.warned_since >= PROMISED
                return
