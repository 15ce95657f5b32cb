"""Opens a ticket for a waiting bundle, and tells the desk what happens at the door."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from hearthkey.core import home_addresses, tickets
from hearthkey.core.bundle import Bundle, Form
from hearthkey.core.errors import Refused
from hearthkey.core.firewalls import Firewall
from hearthkey.core.home_addresses import HomeAddress
from hearthkey.core.household import Household
from hearthkey.core.kinds import DeviceKind, Kinds
from hearthkey.core.network import Subnet
from hearthkey.core.passes import Pass, State
from hearthkey.core.sentences import tickets as sentences
from hearthkey.core.tickets import Offer, Ticket
from hearthkey.formats.pickup_page import PickUp
from hearthkey.services.bundling import Bundling, Written
from hearthkey.services.copying import TicketCopy
from hearthkey.services.ports import Clock, Dice, Progress, Register, silent
from hearthkey.services.rehearsing import Rehearsing
from hearthkey.services.ticket_desk import Door, OpenTicket
from hearthkey.services.ticket_ports import Addresses, Servers
from hearthkey.services.writing_diary import note

_MANY_FILES = {Form.CODES, Form.SCRIPT, Form.PEM}


@dataclass(frozen=True)
class TicketPlan:
    """A ticket about to be opened.

    Args:
        chosen: whose bundle.
        address: where the server will be bound.
        forms: what will be offered, the recommended one first.
        near: who may ask.
        firewall: what seems to be on at this computer, or None.
    """

    chosen: Pass
    address: HomeAddress
    forms: tuple[Form, ...]
    near: tuple[Subnet, ...]
    firewall: Firewall | None = None


_PICKED_UP = (Form.PROFILE.value, Form.PKCS12.value, Form.ARCHIVE.value, Form.BUNDLE.value)
"""What is one file."""


def suited(kind: DeviceKind) -> Form:
    """What a ticket offers to a device: what suits it best of all that is one file."""
    return Form(kind.best_form(_PICKED_UP) or Form.PKCS12)


def carried(kind: DeviceKind) -> Form:
    """What leaves on a stick or is dragged: the PKCS#12 wherever the device opens one, else what suits it."""
    return Form.PKCS12 if Form.PKCS12.value in kind.forms else suited(kind)


class PickingUp:
    """The verb "ticket"."""

    def __init__(
        self,
        register: Register,
        bundling: Bundling,
        rehearsing: Rehearsing,
        clock: Clock,
        dice: Dice,
        addresses: Addresses,
        servers: Servers,
        firewall: Callable[[], Firewall | None],
        kinds: Kinds,
    ) -> None:
        self._register = register
        self._bundling = bundling
        self._rehearsing = rehearsing
        self._clock = clock
        self._dice = dice
        self._addresses = addresses
        self._servers = servers
        self._firewall = firewall
        self._kinds = kinds

    def addresses(self) -> tuple[HomeAddress, ...]:
        """This laptop's addresses, those that a phone can reach first.

        Raises:
            Refused: no-household.
            Unavailable: addresses-unknown.
        """
        household = self._household()
        return home_addresses.judged(self._addresses(), household.home_subnets, household.tunnel_subnet)

    def preview(self, chosen: Pass, forms: Sequence[Form] = (), address: str | None = None) -> TicketPlan:
        """Decide where a ticket would be opened, and for whom.

        Args:
            chosen: a waiting pass.
            forms: what to offer, the recommended one first; what suits the device where nothing is said.
            address: an address or interface of this laptop; the best one where nothing is said.

        Raises:
            Refused: no-household, pass-handed-over, pass-not-alive, ticket-form-unfit, ticket-address-none,
                ticket-address-unknown, ticket-address-unfit.
            Unavailable: addresses-unknown.
        """
        if chosen.handed_over is not None:
            raise Refused("pass-handed-over", title=chosen.title)
        state = chosen.state(self._clock.now())
        forms = forms or (suited(self._kinds.of(chosen.kind)),)
        if state in {State.REVOKED, State.ENDED}:
            raise Refused("pass-not-alive", title=chosen.title, state=state.value)
        for form in forms:
            if form in _MANY_FILES:
                raise Refused("ticket-form-unfit", form=form.value)
        where = home_addresses.chosen(self.addresses(), address)
        near = tickets.near(where.network, self._household().home_subnets)
        return TicketPlan(chosen, where, tuple(dict.fromkeys(forms)), near, self._firewall())

    def open(self, plan: TicketPlan, progress: Progress = silent) -> OpenTicket:
        """Write every form, rehearse the very bytes, and only then open the door.

        Raises:
            RehearsalFailed: nothing was opened.
            Refused: passphrase-lost, ticket-form-unfit, no-household, gateway-secret-lost.
            Unavailable: ticket-address-gone, and as vault and register.
        """
        chosen = plan.chosen
        progress("opening-bundle", title=chosen.title)
        bundle = self._bundling.open(chosen)
        files = {form.value: self._rehearsed(bundle, chosen, form, progress) for form in plan.forms}
        server = self._servers(plan.address.address)
        try:
            door = self._door(plan, bundle, files, server.port)
            forms = tuple(form.value for form in plan.forms)
            with self._register.change() as change:
                sentence = sentences.opened(chosen, forms, plan.address)
                note(self._register, change, verb="ticket", sentence=sentence, now=self._clock.now())
                copy = TicketCopy(change, chosen.serial, files, self._clock.now())
            server.start(door)
        except BaseException:
            server.close()
            raise
        return OpenTicket(door, server, chosen, self._register, self._clock, copy)

    def _rehearsed(self, bundle: Bundle, chosen: Pass, form: Form, progress: Progress) -> Written:
        progress("writing-form", form=form.value)
        files, proof = self._bundling.write_for_proof(bundle, form)
        if len(files) != 1:
            raise Refused("ticket-form-unfit", form=form.value)
        progress("rehearsing", form=form.value)
        self._rehearsing.rehearse(form, proof, bundle.passphrase, identity=chosen.identity)
        return files[0]

    def _door(self, plan: TicketPlan, bundle: Bundle, files: Mapping[str, Written], port: int) -> Door:
        now = self._clock.now()
        ticket = Ticket(
            token=tickets.draw_token(self._dice.bits),
            address=plan.address.address,
            port=port,
            opened=now,
            until=now + tickets.LIFE,
            offers=tuple(Offer(form, one.name) for form, one in files.items()),
            serial=plan.chosen.serial,
            near=plan.near,
        )
        about = PickUp(
            person=plan.chosen.person,
            device=plan.chosen.device,
            kind=self._kinds.of(plan.chosen.kind),
            kinds=self._kinds,
            server=bundle.settings.gateway_host,
            identity=bundle.settings.identity,
            path=f"/{ticket.token.reveal()}",
            offers=ticket.offers,
        )
        return Door(ticket, about, {form: one.data for form, one in files.items()}, self._clock)

    def _household(self) -> Household:
        household = self._register.household()
        if household is None:
            raise Refused("no-household")
        return household
