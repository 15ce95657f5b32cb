"""Passes of a CA that goes end with it."""

from __future__ import annotations

from hearthkey.core.duties import Act, forecast
from hearthkey.core.outgoing import Outgoing, until_it_goes
from tests.core.test_duties import DAY, HOUSE, NOW, made


def test_a_pass_of_the_old_ca_is_to_be_renewed_before_that_goes() -> None:
    """If this failed, the top line would promise two years to a phone that is locked out in half of one."""
    goes = NOW + 190 * DAY
    passes = [made("0a", 9, 700), made("0b", 9, 700), made("0c", 9, 20)]
    capped = until_it_goes(passes, Outgoing(frozenset({"0a", "0c"}), goes), NOW)
    assert [one.not_after for one in capped] == [goes, passes[1].not_after, passes[2].not_after]
    due = [one for one in forecast(HOUSE, capped, frozenset(), NOW) if one.act is Act.RENEW_PASS and one.until == goes]
    assert [one.act_on < goes for one in due] == [True]
    late = until_it_goes(passes, Outgoing(frozenset({"0a"}), NOW - DAY), NOW)
    assert late[0].gets_in(NOW)
    assert until_it_goes(passes, None, NOW) == passes
