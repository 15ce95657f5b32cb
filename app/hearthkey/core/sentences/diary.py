"""What the diary says of each verb: one sentence, the people first."""

from __future__ import annotations

from datetime import datetime
from typing import TYPE_CHECKING

from hearthkey.core.household import Authority, Gateway, Household
from hearthkey.core.passes import Pass
from hearthkey.core.phrases import AND, Listing, Moment, Phrase, Style
from hearthkey.core.revocation import SignedList
from hearthkey.core.sentences.words import FORMS, REASONS

if TYPE_CHECKING:  # who only lists dates needs neither, and loading them takes 6 ms of a start
    from hearthkey.core.bundle import Form
    from hearthkey.core.plans import LetInPlan, RevokePlan, SparePlanned, StopPlan


ONE, MORE = "was", "were"


def day(moment: datetime) -> Moment:
    """A date as the diary writes it: "9 May 2028"."""
    return Moment(moment, Style.DAY)


def titles(passes: tuple[Pass, ...]) -> Listing:
    """Whose devices, in words."""
    return Listing(dict.fromkeys(one.title for one in passes), AND)


def was(passes: tuple[Pass, ...]) -> str:
    """The verb that goes with `titles`."""
    return ONE if len({one.title for one in passes}) == 1 else MORE


def founded(household: Household, authority: Authority, gateway: Gateway) -> Phrase:
    """The household was founded."""
    return Phrase(
        "{name} was founded. Its CA ends {authority_end}, the certificate of its gateway {host} ends {gateway_end}. "
        "Revocation list 1 was signed; nobody is on it.",
        {
            "name": household.certified_name,
            "authority_end": day(authority.not_after),
            "host": gateway.host,
            "gateway_end": day(gateway.not_after),
        },
    )


def enrolled(made: Pass, *, replaced: bool) -> Phrase:
    """A device was enrolled."""
    facts = {"title": made.title, "day": day(made.not_after), "serial": made.serial}
    if replaced:
        return Phrase("{title} got a new pass until {day}, serial {serial}. Its bundle waits in the tray.", facts)
    return Phrase("{title} got a pass until {day}, serial {serial}. Its bundle waits in the tray.", facts)


def exported(chosen: Pass, form: Form) -> Phrase:
    """A form of a bundle was written."""
    facts = {"title": chosen.title, "form": Phrase(FORMS[form])}
    return Phrase("The bundle of {title} was rehearsed and written as {form}.", facts)


def handed_over(chosen: Pass) -> Phrase:
    """A bundle was handed over."""
    return Phrase("{title} was handed over. Its key and passphrase were erased here.", {"title": chosen.title})


def stopped(plan: StopPlan, number: int) -> Phrase:
    """Passes were stopped."""
    facts = {"title": titles(plan.chosen), "number": number}
    if was(plan.chosen) == ONE:
        return Phrase("{title} was stopped with revocation list {number}.", facts)
    return Phrase("{title} were stopped with revocation list {number}.", facts)


def stopped_by_spare(plan: SparePlanned) -> Phrase:
    """Passes were stopped by a list signed in advance."""
    facts = {"title": titles(plan.everyone), "number": plan.list_number}
    if was(plan.everyone) == ONE:
        return Phrase("{title} was stopped with spare list {number}, without the passphrase.", facts)
    return Phrase("{title} were stopped with spare list {number}, without the passphrase.", facts)


def let_in(plan: LetInPlan, number: int) -> Phrase:
    """Passes were let back in."""
    facts = {"title": titles(plan.chosen), "number": number}
    if was(plan.chosen) == ONE:
        return Phrase("{title} was let back in with revocation list {number}.", facts)
    return Phrase("{title} were let back in with revocation list {number}.", facts)


def revoked(plan: RevokePlan, number: int) -> Phrase:
    """Passes were revoked."""
    facts = {
        "title": titles(plan.chosen),
        "number": number,
        "reason": Phrase(REASONS[plan.reason]),
        "rfc": plan.reason.rfc_name,
    }
    if was(plan.chosen) == ONE:
        return Phrase("{title} was revoked for good with revocation list {number}: {reason} ({rfc}).", facts)
    return Phrase("{title} were revoked for good with revocation list {number}: {reason} ({rfc}).", facts)


def list_signed(signed: SignedList) -> Phrase:
    """A list was signed anew."""
    facts = {"number": signed.number, "day": day(signed.next_update)}
    return Phrase("Revocation list {number} was signed, good until {day}.", facts)


def clock_righted(signed: SignedList, ahead: datetime) -> Phrase:
    """The clock was ahead, and is right again."""
    facts = {"ahead": day(ahead), "number": signed.number, "day": day(signed.next_update)}
    return Phrase(
        "The clock was ahead, at {ahead}; it is right again. Revocation list {number} was signed, good until {day}.",
        facts,
    )


def taken_over(number: int, names: tuple[str, ...]) -> Phrase:
    """The gateway held a list that this register had not signed."""
    if not names:
        return Phrase(
            "The gateway held revocation list {number}, which this computer did not know.", {"number": number}
        )
    return Phrase(
        "The gateway held revocation list {number}, which this computer did not know. Stopped or revoked by it, and "
        "now here too: {names}.",
        {"number": number, "names": Listing(names[:20])},
    )


def delivered(where: str, number: int, uploaded: int) -> Phrase:
    """A delivery was read back."""
    facts = {"where": where, "number": number, "count": uploaded}
    if not uploaded:
        return Phrase("Everything was at {where} already; revocation list {number} is in force.", facts)
    if uploaded == 1:
        return Phrase("One file went to {where} and was read back. Revocation list {number} is in force.", facts)
    return Phrase("{count} files went to {where} and were read back. Revocation list {number} is in force.", facts)


def secret_renewed(count: int) -> Phrase:
    """The household’s shared secret was made anew."""
    if count == 1:
        return Phrase("The household’s shared secret was made anew; one device has to be told it.")
    return Phrase("The household’s shared secret was made anew; {count} devices have to be told it.", {"count": count})


def target_chosen(where: str) -> Phrase:
    """The householder said where the gateway is."""
    return Phrase("The gateway’s files go to {where} from now on.", {"where": where})


def host_key_pinned(fingerprint: str) -> Phrase:
    """The householder compared a host key."""
    return Phrase("It is known by its host key {fingerprint}.", {"fingerprint": fingerprint})


def target_forgotten(where: str) -> Phrase:
    """The householder delivers nowhere any more."""
    return Phrase("Nothing is delivered to {where} any more.", {"where": where})


def pack_options_changed() -> Phrase:
    """Choices for the gateway's files changed."""
    return Phrase("The choices for the gateway’s files were changed; they take effect with the next delivery.")


def packed(where: str, number: int) -> Phrase:
    """The gateway pack was written."""
    facts = {"where": where, "number": number}
    return Phrase("The gateway’s files with revocation list {number} were written to {where}.", facts)
