"""What the diary says of each verb: one sentence, the people first."""

from __future__ import annotations

from datetime import datetime
from typing import TYPE_CHECKING

from hearthkey.core.household import Authority, Gateway, Household
from hearthkey.core.passes import Pass
from hearthkey.core.revocation import SignedList
from hearthkey.core.sentences.words import FORMS, REASONS

if TYPE_CHECKING:  # who only lists dates needs neither, and loading them takes 6 ms of a start
    from hearthkey.core.bundle import Form
    from hearthkey.core.plans import LetInPlan, RevokePlan, StopPlan


def day(moment: datetime) -> str:
    """A date as the diary writes it: "9 May 2028"."""
    return f"{moment.day} {moment:%B %Y}"


def titles(passes: tuple[Pass, ...]) -> str:
    """Whose devices, in words."""
    found = list(dict.fromkeys(one.title for one in passes))
    return found[0] if len(found) == 1 else f"{', '.join(found[:-1])} and {found[-1]}"


def founded(household: Household, authority: Authority, gateway: Gateway) -> str:
    """The household was founded."""
    return (
        f"{household.certified_name} was founded. Its CA ends {day(authority.not_after)}, the certificate of its "
        f"gateway {gateway.host} ends {day(gateway.not_after)}. Revocation list 1 was signed; nobody is on it."
    )


def enrolled(made: Pass, *, replaced: bool) -> str:
    """A device was enrolled."""
    again = "a new pass" if replaced else "a pass"
    return f"{made.title} got {again} until {day(made.not_after)}, serial {made.serial}. Its bundle waits in the tray."


def exported(chosen: Pass, form: Form) -> str:
    """A form of a bundle was written."""
    return f"The bundle of {chosen.title} was rehearsed and written as {FORMS[form]}."


def handed_over(chosen: Pass) -> str:
    """A bundle was handed over."""
    return f"{chosen.title} was handed over. Its key and passphrase were erased here."


def stopped(plan: StopPlan, number: int) -> str:
    """Passes were stopped."""
    return f"{titles(plan.chosen)} was stopped with revocation list {number}."


def let_in(plan: LetInPlan, number: int) -> str:
    """Passes were let back in."""
    return f"{titles(plan.chosen)} was let back in with revocation list {number}."


def revoked(plan: RevokePlan, number: int) -> str:
    """Passes were revoked."""
    reason = f"{REASONS[plan.reason]} ({plan.reason.rfc_name})"
    return f"{titles(plan.chosen)} was revoked for good with revocation list {number}: {reason}."


def list_signed(signed: SignedList) -> str:
    """A list was signed anew."""
    return f"Revocation list {signed.number} was signed, good until {day(signed.next_update)}."
