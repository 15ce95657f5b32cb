"""The verbs of a practice household, run on its real house without asking anybody."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from hearthkey.bootstrap import House
from hearthkey.core.bundle import Form
from hearthkey.core.languages import Language
from hearthkey.core.paper import Gathered, lines_of
from hearthkey.core.passes import Pass
from hearthkey.core.revocation import Reason
from hearthkey.core.secret import Secret
from hearthkey.core.succession import Cause
from hearthkey.formats import paper_der
from hearthkey.services import looking, reading_paper
from hearthkey.services.adopting import AdoptRequest
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.founding import FoundRequest
from hearthkey.services.settling import SettleRequest
from tests.adopt.by_hand import HOST, LOCK

WORDS = "oaken ladle visor plum tidy harbor mosaic"

COTTAGE = FoundRequest(
    name="Quince Cottage",
    gateway_host="home.quince.example",
    home_subnets=("198.51.100.0/24",),
    tunnel_subnet="203.0.113.0/24",
    gateway_key_set="compact",
    practice=True,
)
FAMILY = (
    EnrolRequest("Ines", "phone", "linux"),
    EnrolRequest("Tomasz", "laptop", "linux"),
    EnrolRequest("Odile", "tablet", "linux"),
)
NEWCOMERS = (
    EnrolRequest("Ines", "laptop", "linux"),
    EnrolRequest("Boiler engineer", "phone", "linux", guest=True),
)


def _passes(house: House, text: str) -> list[Pass]:
    return looking.find(house.register.passes(), text)


def found(house: House, _folder: Path) -> None:
    """Found Quince Cottage."""
    house.founding.apply(house.founding.preview(COTTAGE), Secret(WORDS))
    house.listing.publish_missing()


def move_in(house: House, folder: Path) -> None:
    """Bring the family in: Ines's phone waits, Tomasz's laptop is in use, Odile's tablet is stopped."""
    house.enrolling.apply(*house.enrolling.preview_all(FAMILY))
    for text in ("Tomasz laptop", "Odile tablet"):
        house.handing_over.apply(house.handing_over.preview(_passes(house, text)))
    house.stopping.stop(house.stopping.preview_stop(_passes(house, "Odile tablet")))
    house.sparing.renew()
    folder.mkdir()


def start(_house: House, _folder: Path) -> None:
    """Open for writing and do nothing, so that a crash is recovered from."""


def add(house: House, _folder: Path) -> None:
    """Enrol two devices at once."""
    house.enrolling.apply(*house.enrolling.preview_all(NEWCOMERS))


def hand_over(house: House, _folder: Path) -> None:
    """Hand Ines's phone over."""
    house.handing_over.apply(house.handing_over.preview(_passes(house, "Ines phone")))


def stop(house: House, _folder: Path) -> None:
    """Stop Tomasz's laptop."""
    house.stopping.stop(house.stopping.preview_stop(_passes(house, "Tomasz laptop")))


def spare_stop(house: House, _folder: Path) -> None:
    """Stop Tomasz's laptop with a list that was signed in advance."""
    house.keyholder.lock()
    house.sparing.stop(house.sparing.preview_stop(_passes(house, "Tomasz laptop")))


def spares(house: House, _folder: Path) -> None:
    """Sign all spare lists anew, as an unlock after a change does."""
    house.sparing.renew()


def let_in(house: House, _folder: Path) -> None:
    """Let Odile's tablet back in."""
    house.stopping.let_in(house.stopping.preview_let_in(_passes(house, "Odile tablet")))


def revoke(house: House, _folder: Path) -> None:
    """Revoke Odile's tablet, which is on hold, and Ines's phone, whose key waits here."""
    both = [*_passes(house, "Odile tablet"), *_passes(house, "Ines phone")]
    lost = house.stopping.preview_revoke(both, Reason.KEY_COMPROMISE)
    house.stopping.revoke(lost)


def prove(house: House, _folder: Path) -> None:
    """Write down that Tomasz's laptop was said to get in."""
    house.proving.told(house.proving.preview_told(_passes(house, "Tomasz laptop")[-1]))


def export(house: House, folder: Path) -> None:
    """Write Ines's phone's bundle to a folder as codes, which are several files."""
    house.exporting.export(_passes(house, "Ines phone")[-1], Form.CODES, folder)


def settle(house: House, _folder: Path) -> None:
    """Move the house to another name, so that the gateway needs a new certificate."""
    house.settling.apply(house.settling.preview(SettleRequest(name="Plum House", gateway_host="door.quince.example")))


def seal_away(house: House, folder: Path) -> None:
    """Hand the last waiting bundle over, and write a sealed copy to a folder."""
    hand_over(house, folder)
    house.sealing.make_ready(Secret(WORDS))
    house.sealing.seal(folder)


def restore(house: House, folder: Path) -> None:
    """Bring the household back from the copy in the folder."""
    data = next(folder.glob("*.sealed.tar")).read_bytes()
    with house.restoring.preview(data, Secret(WORDS)) as plan:
        house.restoring.apply(plan)


def put_on_paper(house: House, folder: Path) -> None:
    """Write the content of the household's paper to a folder, as lines."""
    told = paper_der.encode(house.papering.facts(Language.ENGLISH).contents)
    rows = [f"{one.number:02} {' '.join(one.groups)}" for one in lines_of(told)]
    (folder / "paper.txt").write_text("\n".join(rows), encoding="ascii")


def restore_paper(house: House, folder: Path) -> None:
    """Bring the household back from the lines in the folder."""
    typed = reading_paper.typed((folder / "paper.txt").read_text(encoding="ascii"), Gathered())
    house.restoring_paper.apply(house.restoring_paper.preview(typed.content(), Secret(WORDS)))


def renew(house: House, _folder: Path) -> None:
    """Renew Tomasz's laptop."""
    house.renewing.renew(house.renewing.preview(_passes(house, "Tomasz laptop")))


def renew_whole(house: House, folder: Path) -> None:
    """Renew Tomasz's laptop, hand the bundle over and prove it."""
    renew(house, folder)
    house.handing_over.apply(house.handing_over.preview(_passes(house, "Tomasz laptop")))
    prove(house, folder)


def supersede(house: House, _folder: Path) -> None:
    """Let go what is over by a proof."""
    house.superseding.follow_up()


def renew_round(house: House, _folder: Path) -> None:
    """Renew all that are in use, one after the other."""
    in_use = [one for one in house.register.passes() if one.handed_over is not None]
    house.renewing.go_round(house.renewing.plan_named([[one] for one in in_use]))


def take_renewal_back(house: House, _folder: Path) -> None:
    """Take the next pass of Tomasz's laptop back, which is in the tray."""
    superseding = house.superseding
    superseding.take_back(superseding.preview_take_back(_passes(house, "Tomasz laptop")))


def leaves(house: House, _folder: Path) -> None:
    """Tomasz leaves the household."""
    house.goodbye.apply(house.goodbye.preview("Tomasz"))


def make_ready(house: House, _folder: Path) -> None:
    """Have sealed copies made from now on."""
    house.sealing.make_ready(Secret(WORDS))


def seal(house: House, folder: Path) -> None:
    """Write a sealed copy to a folder."""
    house.sealing.seal(folder)


def replace(house: House, _folder: Path) -> None:
    """Give Tomasz another laptop, and stop the old one."""
    house.replacing.apply(house.replacing.preview(_passes(house, "Tomasz laptop"), "new laptop", "linux"))


def begin_succession(house: House, _folder: Path) -> None:
    """Make the next CA."""
    house.succeeding.begin(Secret(WORDS), Cause.STOLEN)


def trust_both(house: House, _folder: Path) -> None:
    """Say that the gateway trusts both."""
    house.succeeding.go_on(told=True)


def turn_gateway(house: House, _folder: Path) -> None:
    """Give the gateway a certificate of the new CA."""
    house.succeeding.go_on(told=True)


def step_back(house: House, _folder: Path) -> None:
    """Take the last step of the succession back."""
    house.succeeding.take_back()


def finish_succession(house: House, _folder: Path) -> None:
    """Put the old CA away, though somebody's bundle still waits."""
    house.succeeding.finish(told=True, anyway=True)


def adopt(house: House, folder: Path) -> None:
    """Take over the household that was made by hand and lies in the folder."""
    request = AdoptRequest(folder, FoundRequest("Quince Cottage", HOST, ("198.51.100.0/24",), "203.0.113.0/24"))
    house.adopting.apply(house.adopting.preview(request, (Secret(LOCK.decode()),)), Secret(WORDS))


VERBS: dict[str, Callable[[House, Path], None]] = {
    "found": found,
    "move-in": move_in,
    "start": start,
    "add": add,
    "hand-over": hand_over,
    "stop": stop,
    "spare-stop": spare_stop,
    "spares": spares,
    "let-in": let_in,
    "revoke": revoke,
    "prove": prove,
    "renew": renew,
    "renew-whole": renew_whole,
    "supersede": supersede,
    "renew-round": renew_round,
    "take-renewal-back": take_renewal_back,
    "leaves": leaves,
    "make-ready": make_ready,
    "seal": seal,
    "replace": replace,
    "export": export,
    "settle": settle,
    "seal-away": seal_away,
    "restore": restore,
    "put-on-paper": put_on_paper,
    "restore-paper": restore_paper,
    "begin-succession": begin_succession,
    "trust-both": trust_both,
    "turn-gateway": turn_gateway,
    "step-back": step_back,
    "finish-succession": finish_succession,
    "adopt": adopt,
}
