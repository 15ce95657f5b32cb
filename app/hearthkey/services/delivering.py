"""Brings the gateway what it needs, reads it back, and only then says "in force"."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from datetime import datetime

from hearthkey.core import delivery
from hearthkey.core.certificates import CertificateFacts
from hearthkey.core.delivery import Delivered, DeliveryPlan, Differs, There, Wanted
from hearthkey.core.errors import HearthkeyError, Refused, Unavailable
from hearthkey.core.in_force import GatewayNote
from hearthkey.core.pack import MANIFEST, PackFile, write_manifest
from hearthkey.core.sentences import diary
from hearthkey.core.sentences.gateway import where
from hearthkey.core.target import Target
from hearthkey.pki import read
from hearthkey.services.gateway_ports import Gate, GatewayDoor, GatewayRegister
from hearthkey.services.listing import Listing
from hearthkey.services.opening import Keyholder
from hearthkey.services.packing import Packing, list_files
from hearthkey.services.ports import Clock, Progress, silent
from hearthkey.services.reading_gateway import list_there, of_another, read_there, take_over
from hearthkey.services.writing_diary import TOLERATED, note


class Delivering:
    """The verb "deliver", and looking at the gateway."""

    def __init__(
        self,
        register: GatewayRegister,
        keyholder: Keyholder,
        clock: Clock,
        listing: Listing,
        packing: Packing,
        door: GatewayDoor,
    ) -> None:
        self._register = register
        self._keyholder = keyholder
        self._clock = clock
        self._listing = listing
        self._packing = packing
        self._door = door

    def look(self, *, cancel: threading.Event | None = None) -> DeliveryPlan:
        """Read what is at the gateway, note it, and say what a delivery would change.

        Raises:
            Refused: no-target, practice-stays-home, gateway-list-newer, gateway-list-of-another.
            Unavailable: as `GatewayDoor`; the failure is noted.
        """
        target = self._the_target()
        with self._noting(), self._door.open(target, cancel) as gate:
            there = read_there(gate, gate.in_force())
            taken = take_over(self._register, there, self._clock.now())
            self._keep(self._seen(there, gate))
            self._refuse_older(there, taken)
            self._refuse_another(there, gate)
            return delivery.plan(target, there, self._wanted(there))

    def deliver(
        self, *, only_list: bool = False, progress: Progress = silent, cancel: threading.Event | None = None
    ) -> Delivered:
        """Upload what differs, switch to it all at once, run the householder's command, read back.

        If a step fails, the set that was in force stays, or is put back; where only the revocation
        list differed and nothing but the command failed, the newer list stays, for with the older
        one somebody who was stopped would get in at the gateway's next start.

        Args:
            only_list: leave settings, certificates and keys as they are there, and bring the newest list. All is
                brought where a template of the householder's own is made from the list too, and where no whole set
                is there to put the list into.

        Raises:
            Refused: no-target, practice-stays-home, gateway-list-newer, gateway-list-of-another,
                gateway-clock-behind, and as `Packing`.
            Unavailable: as `GatewayDoor`, and gateway-read-back, reload-failed, reload-failed-list-kept.
        """
        target = self._the_target()
        self._listing.sign_if_old()
        with self._noting():
            progress("reaching-gateway", where=where(target))
            with self._door.open(target, cancel) as gate:
                there = read_there(gate, gate.in_force())
                taken = take_over(self._register, there, self._clock.now())
                if taken or self._behind(there):
                    self._keep(self._seen(there, gate))
                    self._sign_over(there, taken)
                self._refuse_another(there, gate)
                self._refuse_future(gate)
                want = self._wanted(there, only_list=only_list)
                plan = delivery.plan(target, there, want)
                uploaded = 0 if plan.unchanged else self._lay_down(gate, plan, want, there, progress)
                known = self._register.gateway_note()
                if target.reload and (uploaded or known.reload_said is not None or known.set_id != want.set_id):
                    progress("reloading")
                    self._reload(gate, plan, there, want)
                progress("reading-back")
                now_there = self._check(gate, want)
                seen = self._seen(now_there, gate)
        return self._finish(plan, replace(seen, made_of=want.made_of), uploaded, taken)

    def _the_target(self) -> Target:
        household = self._register.household()
        target = self._register.target()
        if household is None:
            raise Refused("no-household")
        if household.practice:
            raise Refused("practice-stays-home")
        if target is None:
            raise Refused("no-target")
        return target

    def _behind(self, there: There) -> bool:
        """Whether the gateway's list is newer than our newest, or another under the same number."""
        found = list_there(self._register, there)
        newest = self._register.newest_list()
        return found is not None and not found.known and newest is not None and found.number >= newest.number

    def _refuse_older(self, there: There, taken: tuple[str, ...]) -> None:
        if taken or self._behind(there):
            found = list_there(self._register, there)
            raise Refused("gateway-list-newer", number=None if found is None else found.number)

    def _refuse_another(self, there: There, gate: Gate) -> None:
        """Leave a gateway alone that goes by a CA which is not known here.

        Not before what can be taken over was: where one of two lists is ours, whom it stops stays stopped.
        """
        if of_another(self._register, there):
            self._keep(self._seen(there, gate))
            raise Refused("gateway-list-of-another")

    def _refuse_future(self, gate: Gate) -> None:
        """Leave a gateway alone for which the newest list has not begun: it would take it for none."""
        told, newest = gate.now(), self._register.newest_list()
        if told is not None and newest is not None and newest.this_update > told + TOLERATED:
            raise Refused(
                "gateway-clock-behind", there=f"{told:%d %B %Y %H:%M}", begins=f"{newest.this_update:%d %B %Y %H:%M}"
            )

    def _sign_over(self, there: There, taken: tuple[str, ...]) -> None:
        """Sign a list above the one there; without the key, say that the passphrase is needed."""
        if self._keyholder.locked:
            self._refuse_older(there, taken)
        self._listing.sign_anew()

    def _wanted(self, there: There, *, only_list: bool = False) -> Wanted:
        """What is to be there. Where only the list can differ, no secret is asked for."""
        newest = self._register.newest_list()
        if newest is None:
            raise Refused("no-household")
        known = self._register.gateway_note()
        made_of = known.made_of if there.set_id == known.set_id else ""
        kept = there.whole and (only_list or made_of == self._packing.mark())
        if not kept or self._packing.list_matters():
            pack = self._packing.pack()
            # Taken now, for settings may change while files travel; and not before, for a pack may make secrets.
            return delivery.wanted(pack, self._packing.mark())
        files = {file.name: file for file in list_files(newest)}
        digests = {name: digest for name, digest in there.digests.items() if name != MANIFEST}
        digests |= {name: file.digest for name, file in files.items()}
        manifest = PackFile(MANIFEST, write_manifest(digests, newest.number))
        return Wanted(
            {**digests, MANIFEST: manifest.digest},
            {**files, MANIFEST: manifest},
            newest.number,
            f"{newest.number}-{manifest.digest[:8]}",
            made_of,
        )

    def _lay_down(self, gate: Gate, plan: DeliveryPlan, want: Wanted, there: There, progress: Progress) -> int:
        fresh = [want.files[name] for name, how in plan.files.items() if how in {Differs.NEW, Differs.CHANGED}]
        kept = [name for name, how in plan.files.items() if how is Differs.SAME]
        progress("uploading", count=len(fresh))
        gate.put_set(want.set_id, fresh, kept, there.set_id)
        self._compare(read_there(gate, want.set_id), want)
        gate.switch(want.set_id)
        return len(fresh)

    def _reload(self, gate: Gate, plan: DeliveryPlan, there: There, want: Wanted) -> None:
        ran = gate.run(plan.target.reload)
        if ran.status == 0:
            return
        said = ran.said or "nothing"
        keeps = plan.only_the_list or there.set_id in {None, plan.set_id}
        if keeps:
            seen = self._seen(read_there(gate, gate.in_force()), gate)
            self._keep(replace(seen, made_of=want.made_of, reload_said=said))
            raise Unavailable("reload-failed-list-kept", status=ran.status, said=said)
        gate.switch(str(there.set_id))
        again = gate.run(plan.target.reload)
        still = None if again.status == 0 else again.said or "nothing"
        self._keep(replace(self._seen(read_there(gate, gate.in_force()), gate), reload_said=still))
        raise Unavailable("reload-failed", status=ran.status, said=said)

    def _check(self, gate: Gate, want: Wanted) -> There:
        now_there = read_there(gate, gate.in_force())
        if now_there.set_id != want.set_id:
            raise Unavailable("gateway-read-back", name="in-force")
        self._compare(now_there, want)
        gate.keep_only([want.set_id, *filter(None, [self._register.gateway_note().set_id])])
        return now_there

    def _compare(self, there: There, want: Wanted) -> None:
        wrong = [name for name, digest in want.digests.items() if there.digests.get(name) != digest]
        if wrong:
            raise Unavailable("gateway-read-back", name=wrong[0])

    def _seen(self, there: There, gate: Gate) -> GatewayNote:
        """What is known now, to be noted."""
        known = self._register.gateway_note()
        found = list_there(self._register, there)
        facts = None if there.certificate is None else _facts(there.certificate)
        told, now = gate.now(), self._clock.now()
        return GatewayNote(
            looked=now,
            set_id=there.set_id,
            list_number=None if found is None else found.number,
            list_until=None if found is None else found.until,
            gateway_serial="" if facts is None else facts.serial,
            gateway_until=None if facts is None else facts.not_after,
            made_of=known.made_of if there.whole and there.set_id == known.set_id else "",
            clock_off=None if told is None else round((told - now).total_seconds()),
            delivered=known.delivered,
            reload_said=known.reload_said,
        )

    def _finish(self, plan: DeliveryPlan, seen: GatewayNote, uploaded: int, taken: tuple[str, ...]) -> Delivered:
        now = self._clock.now()
        sentence = diary.delivered(where(plan.target), plan.list_number, uploaded)
        with self._register.change() as change:
            change.note_gateway(replace(seen, delivered=now, reload_said=None))
            if uploaded:
                note(self._register, change, verb="deliver", sentence=sentence, now=now)
        return Delivered(plan, now, uploaded, plan.list_number, taken, seen.clock_off)

    def _keep(self, note_: GatewayNote) -> None:
        with self._register.change() as change:
            change.note_gateway(note_)

    @contextmanager
    def _noting(self) -> Iterator[None]:
        """Whatever ends a visit early makes the gateway unknown, unless a newer look was noted on the way."""
        before = self._clock.now()
        try:
            yield
        except HearthkeyError as error:
            self._failed(before, error.code)
            raise
        except BaseException:
            self._failed(before, "cut-short")
            raise

    def _failed(self, at: datetime, code: str) -> None:
        known = self._register.gateway_note()
        if code not in _LOOKED_ANYWAY:
            self._keep(replace(known, failed=known.failed or at, failure=code))


_LOOKED_ANYWAY = frozenset(
    {"reload-failed", "reload-failed-list-kept", "gateway-list-newer", "gateway-list-of-another"}
)
"""These end a delivery after the gateway was read, so that what is there is known."""


def _facts(certificate: bytes) -> CertificateFacts | None:
    try:
        return read.certificate_facts(certificate)
    except Refused:
        return None
