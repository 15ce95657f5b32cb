"""What a shell gets: one household with all its verbs, whoever wired them."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable
    from contextlib import AbstractContextManager
    from pathlib import Path

    from hearthkey.core.kinds import Kinds
    from hearthkey.core.languages import Language
    from hearthkey.formats.laid_pdf import Draw, DrawPages
    from hearthkey.formats.sheet import Block
    from hearthkey.services.adopting import Adopting
    from hearthkey.services.bundling import Bundling
    from hearthkey.services.carrying_copies import CarryingCopies
    from hearthkey.services.delivering import Delivering
    from hearthkey.services.deputies import Deputies
    from hearthkey.services.deputy_papers import DeputyPapers
    from hearthkey.services.enrolling import Enrolling
    from hearthkey.services.exporting import Exporting
    from hearthkey.services.extra_secrets import ExtraSecrets
    from hearthkey.services.forwarding import Forwarding
    from hearthkey.services.founding import Founding
    from hearthkey.services.gateway_ports import GatewayDoor, Notices
    from hearthkey.services.goodbye import Goodbye
    from hearthkey.services.handing_over import HandingOver
    from hearthkey.services.kind_keeping import KeepingKinds
    from hearthkey.services.listing import Listing
    from hearthkey.services.looking_over import LookingOver
    from hearthkey.services.losing import Losing
    from hearthkey.services.moving import Moving
    from hearthkey.services.naming import Naming
    from hearthkey.services.network_planning import NetworkPlanning
    from hearthkey.services.opening import Keyholder
    from hearthkey.services.packing import Packing
    from hearthkey.services.papering import Papering
    from hearthkey.services.picking_up import PickingUp
    from hearthkey.services.ports import Clock, Files, Pictures, Vault
    from hearthkey.services.proving import Proving
    from hearthkey.services.reaching import Reaching
    from hearthkey.services.rehearsing import Rehearsing
    from hearthkey.services.renewal_ports import RenewalRegister
    from hearthkey.services.renewing import Renewing
    from hearthkey.services.replacing import Replacing
    from hearthkey.services.restoring import Restoring
    from hearthkey.services.restoring_paper import PaperRestoring
    from hearthkey.services.sealing import Sealing
    from hearthkey.services.settling import Settling
    from hearthkey.services.sheeting import Sheeting
    from hearthkey.services.sparing import Sparing
    from hearthkey.services.stopping import Stopping
    from hearthkey.services.succeeding import Succeeding
    from hearthkey.services.superseding import Superseding
    from hearthkey.services.targeting import Targeting
    from hearthkey.services.templating import Templating
    from hearthkey.services.tidying import Tidying
    from hearthkey.services.undoing import Undoing
    from hearthkey.services.visiting import Visiting
    from hearthkey.services.watching import Watching


class House(Protocol):
    """One household. Each part is made when it is first asked for."""

    @property
    def data(self) -> Path:
        """The data folder."""

    @property
    def clock(self) -> Clock:
        """The computer's clock."""

    @property
    def register(self) -> RenewalRegister:
        """The household's file."""

    @property
    def vault(self) -> Vault:
        """Where its secrets lie."""

    @property
    def files(self) -> Files:
        """Files that leave and arrive."""

    @property
    def pictures(self) -> Pictures:
        """Draws and reads codes."""

    @property
    def kinds(self) -> Kinds:
        """All device kinds, as they were when they were first asked for."""

    @property
    def keeping_kinds(self) -> KeepingKinds:
        """The verb "kinds"."""

    @property
    def keyholder(self) -> Keyholder:
        """The CA key while unlocked."""

    @property
    def founding(self) -> Founding:
        """The verb "found"."""

    @property
    def settling(self) -> Settling:
        """The verb "settle"."""

    @property
    def enrolling(self) -> Enrolling:
        """The verb "add"."""

    @property
    def bundling(self) -> Bundling:
        """Opens and writes bundles."""

    @property
    def rehearsing(self) -> Rehearsing:
        """The verb "rehearse"."""

    @property
    def exporting(self) -> Exporting:
        """The verb "export"."""

    @property
    def picking_up(self) -> PickingUp:
        """The verb "ticket"."""

    @property
    def proving(self) -> Proving:
        """The verb "prove"."""

    @property
    def handing_over(self) -> HandingOver:
        """The verb "hand-over"."""

    @property
    def listing(self) -> Listing:
        """The verb "lists"."""

    @property
    def stopping(self) -> Stopping:
        """The verbs "stop", "let-in" and "revoke"."""

    @property
    def undoing(self) -> Undoing:
        """The verbs "undo" and "redo"."""

    @property
    def sparing(self) -> Sparing:
        """Spare stop lists, and the verb "stop" without a passphrase."""

    @property
    def losing(self) -> Losing:
        """The verb "stop" by whatever list there is."""

    @property
    def packing(self) -> Packing:
        """The verb "pack"."""

    @property
    def watching(self) -> Watching:
        """How the gateway stands."""

    @property
    def gateway_door(self) -> GatewayDoor:
        """The ways to the gateway's folder."""

    @property
    def extra_secrets(self) -> ExtraSecrets:
        """Secrets beside the certificates."""

    @property
    def templating(self) -> Templating:
        """The householder's own templates."""

    @property
    def tidying(self) -> Tidying:
        """The verb "copies"."""

    @property
    def network_planning(self) -> NetworkPlanning:
        """The verb "reach" where it only works things out."""

    @property
    def forwarding(self) -> Forwarding:
        """The verb "forwarding-sheet"."""

    @property
    def moving(self) -> Moving:
        """The verb "moving-day"."""

    @property
    def reaching(self) -> Reaching:
        """The verb "check-way-in"."""

    @property
    def print_blocks(self) -> Callable[[Iterable[Block]], bytes]:
        """Sets a sheet of blocks as PDF."""

    @property
    def notices(self) -> Notices:
        """Says something on the desktop."""

    @property
    def targeting(self) -> Targeting:
        """The verb "gateway"."""

    @property
    def sheeting(self) -> Sheeting:
        """The verb "sheet"."""

    @property
    def draw_page(self) -> Draw:
        """Draws one page as PDF, without a window."""

    @property
    def renewing(self) -> Renewing:
        """The verb "renew"."""

    @property
    def superseding(self) -> Superseding:
        """The verb "supersede"."""

    @property
    def visiting(self) -> Visiting:
        """The verb "visit"."""

    @property
    def replacing(self) -> Replacing:
        """The verb "replace"."""

    @property
    def goodbye(self) -> Goodbye:
        """The verb "leaves"."""

    @property
    def sealing(self) -> Sealing:
        """The verbs "seal" and "try"."""

    @property
    def carrying_copies(self) -> CarryingCopies:
        """The verb "seal" with the gateway as the place."""

    @property
    def looking_over(self) -> LookingOver:
        """The verb "look-over"."""

    @property
    def adopting(self) -> Adopting:
        """The verb "adopt"."""

    @property
    def naming(self) -> Naming:
        """The verb "name-pass"."""

    @property
    def restoring(self) -> Restoring:
        """The verb "restore"."""

    @property
    def papering(self) -> Papering:
        """The verb "paper"."""

    @property
    def draw_pages(self) -> DrawPages:
        """Draws several pages as PDF, without a window."""

    @property
    def restoring_paper(self) -> PaperRestoring:
        """The verb "restore", from paper."""

    @property
    def succeeding(self) -> Succeeding:
        """The verb "succession"."""

    @property
    def deputies(self) -> Deputies:
        """The verbs "deputy make", "deputy try" and "deputy restore"."""

    @property
    def deputy_papers(self) -> DeputyPapers:
        """The papers of "deputy make", and the verb "deputy stop-set"."""

    def visit(self) -> AbstractContextManager[Delivering]:
        """The verb "deliver" with a connection to the register of its own, for a thread of its own."""

    @property
    def delivering(self) -> Delivering:
        """The verb "deliver"."""


class WindowDoor(Protocol):
    """The way from the command line to the window."""

    def show(self, data: Path | None, *, practice: bool) -> int:
        """Open the window and stay until it is closed.

        Args:
            data: the data folder, or None for the platform's.
            practice: open Quince Cottage instead, in a folder of its own.

        Returns:
            The exit code.

        Raises:
            Unavailable: no-display, window-missing.
        """

    def draw(self, into: Path, language: Language) -> tuple[str, ...]:
        """Draw the window on the practice household, in its states and looks, as PNG files; no display is needed.

        Args:
            language: what the window speaks in them.

        Returns:
            The files' paths.

        Raises:
            Unavailable: window-missing.
        """


class OpenHouse(Protocol):
    """Opens a household for the length of a `with` block."""

    def __call__(
        self, data: Path | None, *, place: str, writing: bool, keyring_service: str = "hearthkey"
    ) -> AbstractContextManager[House]:
        """Open it.

        Args:
            data: the data folder, or None for the platform's.
            place: where a household that is not founded yet will keep its secrets.
            writing: become the copy that may change it.
            keyring_service: how the keyring calls our secrets.

        Raises:
            Unavailable: second-copy, folder-read-only, disk-full and what the register says.
        """
