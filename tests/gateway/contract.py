"""What every way to a gateway's folder promises, whichever it is: sets to deliver, and a look at what is in force."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from hearthkey.core.pack import LIST_DER, LIST_PEM, MANIFEST, Pack, PackFile, packed
from hearthkey.core.target import IN_FORCE, Target
from hearthkey.services.gateway_ports import Gate, GatewayDoor

LIMIT = 1024 * 1024
ODD_NAME = 'own/Odile\'s "tablet" [1] *?\\ #2.conf'


def pack(number: int, *, size: int = 700) -> Pack:
    """A pack of Quince Cottage: its list differs by number, the rest stays."""
    return packed(
        [
            PackFile("gateway-key.pem", b"the gateway's key\n" * 20, secret=True),
            PackFile("gateway-certificate.der", b"\x30\x82" * 300),
            PackFile(LIST_PEM, b"list %d\n" % number * (size // 8)),
            PackFile(LIST_DER, bytes([number % 256]) * size),
            PackFile(ODD_NAME, b"from a template of the household's\n", secret=True),
        ],
        number,
    )


OLD, NEW = pack(41), pack(42)


@dataclass(frozen=True)
class Way:
    """A way to a gateway.

    Args:
        door: the port.
        target: where to.
        look: reads what is in force at the gateway itself, past the port; empty where there is none.
        folder: the gateway's folder itself; None where there is none.
    """

    door: GatewayDoor
    target: Target
    look: Callable[[], dict[str, bytes]]
    folder: Path | None


def whole(of: Pack) -> dict[str, bytes]:
    """A pack's content by name."""
    return {file.name: file.data for file in of.files}


def on_disk(folder: Path) -> dict[str, bytes]:
    """What `in-force` in a folder shows, but for names that begin with a dot."""
    shown = folder / IN_FORCE
    files = [path for path in shown.rglob("*") if path.is_file() and not path.name.startswith(".")]
    return {str(path.relative_to(shown)): path.read_bytes() for path in files}


def lay_down(gate: Gate, want: Pack, before: Pack | None) -> None:
    """Put a set there as a delivery does: what is new is sent, what stays is kept."""
    same = set() if before is None else {file.name for file in want.files if file in before.files}
    fresh = [file for file in want.files if file.name not in same]
    gate.put_set(want.set_id, fresh, sorted(same), None if before is None else before.set_id)


def deliver(gate: Gate, want: Pack, before: Pack | None) -> None:
    """Deliver, step by step as the service does."""
    gate.in_force()
    lay_down(gate, want, before)
    assert gate.read(want.set_id, [MANIFEST, *want.names], LIMIT) == whole(want)
    gate.switch(want.set_id)
    assert gate.in_force() == want.set_id
    gate.keep_only([want.set_id])


def found(way: Way) -> dict[str, bytes]:
    """Read what is in force through the port."""
    with way.door.open(way.target) as gate:
        set_id = gate.in_force()
        return {} if set_id is None else gate.read(set_id, [*OLD.names, *NEW.names], LIMIT)
