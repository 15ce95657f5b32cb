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
    from hearthkey.core.plans import LetInPlan, RevokePlan, SparePlanned, StopPlan


def day(moment: datetime) -> str:
    """A date as the diary writes it: "9 May 2028"."""
    return f"{moment.day} {moment:%B %Y}"


def titles(passes: tuple[Pass, ...]) -> str:
    """Whose devices, in words."""
    found = list(dict.fromkeys(one.title for one in passes))
    return found[0] if len(found) == 1 else f"{', '.join(found[:-1])} and {found[-1]}"


def was(passes: tuple[Pass, ...]) -> str:
    """The verb that goes with `titles`."""
    return "was" if len({one.title for one in passes}) == 1 else "were"


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
    return f"{titles(plan.chosen)} {was(plan.chosen)} stopped with revocation list {number}."


def stopped_by_spare(plan: SparePlanned) -> str:
    """Passes were stopped by a list signed in advance."""
    whom = f"{titles(plan.everyone)} {was(plan.everyone)}"
    return f"{whom} stopped with spare list {plan.list_number}, without the passphrase."


def let_in(plan: LetInPlan, number: int) -> str:
    """Passes were let back in."""
    return f"{titles(plan.chosen)} {was(plan.chosen)} let back in with revocation list {number}."


def revoked(plan: RevokePlan, number: int) -> str:
    """Passes were revoked."""
    reason = f"{REASONS[plan.reason]} ({plan.reason.rfc_name})"
    return f"{titles(plan.chosen)} {was(plan.chosen)} revoked for good with revocation list {number}: {reason}."


def list_signed(signed: SignedList) -> str:
    """A list was signed anew."""
    return f"Revocation list {signed.number} was signed, good until {day(signed.next_update)}."


def taken_over(number: int, names: tuple[str, ...]) -> str:
    """The gateway held a list that this register had not signed."""
    who = f" Stopped or revoked by it, and now here too: {', '.join(names[:20])}." if names else ""
    return f"The gateway held revocation list {number}, which this computer did not know.{who}"


def delivered(where: str, number: int, uploaded: int) -> str:
    """A delivery was read back."""
    if not uploaded:
        return f"Everything was at {where} already; revocation list {number} is in force."
    return f"{uploaded} file(s) went to {where} and were read back. Revocation list {number} is in force."


def secret_renewed(count: int) -> str:
    """The household's shared secret was made anew."""
    return f"The household’s shared secret was made anew; {count} device(s) have to be told it."


def target_chosen(where: str) -> str:
    """The householder said where the gateway is."""
    return f"The gateway’s files go to {where} from now on."


def host_key_pinned(fingerprint: str) -> str:
    """The householder compared a host key."""
    return f"It is known by its host key {fingerprint}."


def target_forgotten(where: str) -> str:
    """The householder delivers nowhere any more."""
    return f"Nothing is delivered to {where} any more."


def pack_options_changed() -> str:
    """Choices for the gateway's files changed."""
    return "The choices for the gateway’s files were changed; they take effect with the next delivery."


def packed(where: str, number: int) -> str:
    """The gateway pack was written."""
    return f"The gateway’s files with revocation list {number} were written to {where}."
