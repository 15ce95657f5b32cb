"""Passes of a CA that goes end with it."""

from __future__ import annotations

from hearthkey.core.duties import Act, forecast
from hearthkey.core.outgoing import Outgoing, until_it_goes
from hearthkey.core.outlook import outlook
from hearthkey.core.sentences import board
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


def test_the_top_line_says_that_the_old_ca_is_why() -> None:
    """If this failed, a phone would seem to end by itself, and the others that go with it to be unaffected."""
    passes = [made("0a", 9, 700), made("0b", 9, 300)]
    ends = {"list_end": HOUSE.list_end, "gateway_end": HOUSE.gateway_end, "now": NOW}
    seen = outlook(passes, **ends, outgoing=Outgoing(frozenset({"0a"}), NOW + 100 * DAY))
    assert str(board.headline(seen, NOW)).endswith("then Ines’s phone ends, for the old CA goes.")
    assert str(board.consequence(seen)).startswith("Whoever else has no pass of the new CA by then stays outside too.")
    own = outlook(passes, **ends, outgoing=Outgoing(frozenset({"0a"}), NOW + 400 * DAY))
    assert (own.until, own.old_ca) == (passes[1].not_after, False)
    assert str(board.headline(own, NOW)).endswith("then Ines’s phone ends.")
