"""The words of each verb beside those that all verbs understand."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from pathlib import Path

from hearthkey.cli.verb_words_adopting import ADOPTING
from hearthkey.cli.verb_words_keeping import KEEPING
from hearthkey.cli.verb_words_reach import REACHING
from hearthkey.core.bundle import Form
from hearthkey.core.connect_choices import SIGNERS
from hearthkey.core.keysets import KEY_SETS
from hearthkey.core.kinds import OLD, STRONG
from hearthkey.core.languages import Language
from hearthkey.core.revocation import FINAL_REASONS


def _joined(words: tuple[str, ...]) -> str:
    return ", ".join(words)


def _device(verb: argparse.ArgumentParser) -> argparse.ArgumentParser:
    verb.add_argument("device", metavar="DEVICE", help="whose and which (Ines phone), an identity or a serial number")
    return verb


def _agreed(verb: argparse.ArgumentParser, *, asks: bool = True) -> argparse.ArgumentParser:
    if asks:
        verb.add_argument("--yes", action="store_true", help="do it without asking")
    verb.add_argument("--plan", action="store_true", help="say what would happen, and do nothing")
    return verb


def _window(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("--practice", action="store_true", help="open the practice household Quince Cottage instead")


def _found(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("name", metavar="NAME", help="what the family calls the place")
    verb.add_argument("--gateway-host", required=True, metavar="HOST", help="the name that devices reach from outside")
    verb.add_argument(
        "--home-subnet",
        action="append",
        required=True,
        metavar="SUBNET",
        help="for instance 198.51.100.0/24; repeatable",
    )
    verb.add_argument("--tunnel-subnet", metavar="SUBNET", help="inner addresses (default: quiet, one in 10/8)")
    verb.add_argument("--dns-server", action="append", default=[], metavar="ADDRESS", help="asked inside; repeatable")
    verb.add_argument(
        "--tunnel", default="split", metavar="KIND", help="split (default) or full: all traffic through home"
    )
    verb.add_argument("--identity-suffix", metavar="SUFFIX", help="what device identities end in (default: from HOST)")
    verb.add_argument("--gateway-key-set", default="broad", metavar="SET", help=_joined(tuple(KEY_SETS)))
    verb.add_argument(
        "--key-file", action="store_true", help="keep secrets as files of mode 0600, where there is no keyring"
    )
    verb.add_argument("--practice", action="store_true", help="a practice household, marked as such everywhere")
    _agreed(verb)


def _settle(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("--name", metavar="NAME", help="what the family calls the place")
    verb.add_argument("--gateway-host", "--host", metavar="HOST", help="the name that devices reach from outside")
    verb.add_argument(
        "--home-subnet", "--home", action="append", metavar="SUBNET", help="instead of those at home; repeatable"
    )
    verb.add_argument("--tunnel-subnet", metavar="SUBNET", help="inner addresses; quiet has a quiet one in 10/8 drawn")
    verb.add_argument(
        "--dns-server", "--dns", action="append", metavar="ADDRESS", help="asked inside, or none; repeatable"
    )
    verb.add_argument("--tunnel", metavar="KIND", help="split, or full: all traffic through home")
    verb.add_argument("--identity-suffix", metavar="SUFFIX", help="what identities of new devices end in")
    verb.add_argument("--let-go", metavar="HOST", help="a former name that the gateway need not answer to any more")
    verb.add_argument("--renew-gateway", action="store_true", help="make the gateway a new key and certificate")
    verb.add_argument("--touches", action="store_true", help="only say how many devices each change would touch")
    _agreed(verb)


def _add(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("person", nargs="?", metavar="PERSON", help="whose")
    verb.add_argument("device", nargs="?", metavar="DEVICE", help="which, for instance phone")
    verb.add_argument("--kind", metavar="KIND", help="what it is, for instance iphone; hearthkey kinds shows them all")
    end = verb.add_mutually_exclusive_group()
    end.add_argument("--until", metavar="DATE", help="the last day, for instance 2027-05-01 (UTC)")
    end.add_argument("--days", type=int, metavar="N", help="ends in N days")
    verb.add_argument("--guest", action="store_true", help="a guest’s pass, which ends in days")
    verb.add_argument("--key-set", metavar="SET", help=f"overrule the kind: {_joined(tuple(KEY_SETS))}")
    verb.add_argument("--container", metavar="KIND", help=f"overrule the kind: {STRONG} or {OLD}")
    verb.add_argument("--replace", action="store_true", help="a new pass, with a new key, for a device that has one")
    verb.add_argument(
        "--from", dest="table", type=Path, metavar="FILE", help="many at once: CSV with person,device,kind,until,guest"
    )
    verb.add_argument("--plan", action="store_true", help="say what would happen, and do nothing")


def _show(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("device", nargs="?", metavar="DEVICE", help="whose and which; without it, the household")
    verb.add_argument("--pem", action="store_true", help="also the certificate")
    verb.add_argument("--words", action="store_true", help="only the passphrase of the waiting bundle")


def _export(verb: argparse.ArgumentParser) -> None:
    _device(verb)
    verb.add_argument("--form", required=True, choices=[form.value for form in Form], help="how to write it")
    verb.add_argument("--into", type=Path, default=Path(), metavar="DIR", help="where to (default: here)")
    verb.add_argument("--picture", default="png", metavar="KIND", help="for codes: png (default) or svg")
    verb.add_argument(
        "--by-itself",
        action=argparse.BooleanOptionalAction,
        help="for profiles: connect on mobile data and on any Wi-Fi but the household’s own; remembered",
    )
    verb.add_argument(
        "--own-wifi",
        action="append",
        metavar="NAME",
        help="a Wi-Fi at home; it stands readable in the profile; repeatable, remembered",
    )
    verb.add_argument("--signed-by", choices=SIGNERS, help="for profiles: whose key signs them; remembered")


def _ticket(verb: argparse.ArgumentParser) -> None:
    _device(verb)
    verb.add_argument("--address", metavar="ADDRESS", help="of this computer, or an interface (default: the best one)")
    verb.add_argument(
        "--form",
        action="append",
        choices=[form.value for form in Form if form not in {Form.CODES, Form.SCRIPT, Form.PEM}],
        help="what to offer (default: what suits the device best); repeat to let the device’s own system decide",
    )
    verb.add_argument("--plan", action="store_true", help="say where it would be opened, and show every address")


def _prove(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("--address", metavar="ADDRESS", help="of this computer, or an interface (default: the best one)")
    verb.add_argument(
        "--gateway-inside",
        metavar="ADDRESS",
        help="the gateway’s own address at home, where it hides devices",
    )
    verb.add_argument("--told", action="store_true", help="write down that somebody told it works, on mobile data")
    _agreed(_device(verb))


def _lists(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("--sign", action="store_true", help="sign the next list now")
    verb.add_argument("--clock-was-ahead", action="store_true", help="the same, where the clock was ahead and is right")
    verb.add_argument("--into", type=Path, metavar="DIR", help="write a list as PEM and DER")
    verb.add_argument("--number", type=int, metavar="N", help="which list to write (default: the newest)")


def _gateway(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("--folder", metavar="FOLDER", help="where its files go: at the gateway, or here without --ssh")
    verb.add_argument("--ssh", metavar="HOST", help="reach it by ssh; a name, an address or an alias of yours")
    verb.add_argument("--port", type=int, metavar="N", help="port of ssh (default: as ssh is set up)")
    verb.add_argument("--user", metavar="USER", help="user there (default: as ssh is set up)")
    verb.add_argument("--reload", metavar="COMMAND", help="what the gateway runs after a delivery")
    verb.add_argument("--host-key", metavar="FINGERPRINT", help="its host key, SHA256:..., instead of being asked")
    verb.add_argument("--yes", action="store_true", help="take the host key that is shown")
    verb.add_argument("--forget", action="store_true", help="deliver nowhere any more")
    verb.add_argument("--look", action="store_true", help="read what is there now")
    verb.add_argument(
        "--masquerade", action=argparse.BooleanOptionalAction, help="hide devices behind the gateway’s home address"
    )
    verb.add_argument("--outer-mtu", type=int, metavar="N", help="octets of the way out of the house (1500)")
    verb.add_argument(
        "--tunnel-interface", metavar="NAME", help="where packets leave the tunnel (default: the kernel unpacks them)"
    )
    verb.add_argument(
        "--also-router",
        action=argparse.BooleanOptionalAction,
        help="that computer is the router of the house too: leave other traffic to its other rules",
    )
    verb.add_argument("--web-page", metavar="URL", help="the home’s pages behind the web front")


def _deliver(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("--plan", action="store_true", help="say what differs at the gateway, and send nothing")
    verb.add_argument("--notify", action="store_true", help="say on the desktop when somebody is needed")


def _template(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("act", choices=["list", "slots", "keep", "try", "write", "forget"], help="what to do")
    verb.add_argument("name", nargs="?", metavar="NAME", help="which template")
    verb.add_argument("--file", type=Path, metavar="FILE", help="keep: the text, with {{ slots }}")
    verb.add_argument(
        "--gateway", dest="of_gateway", action="store_true", help="it is for the gateway, not for devices"
    )
    verb.add_argument("--device", metavar="DEVICE", help="try, write, slots: for which device")
    verb.add_argument("--file-stem", metavar="STEM", help="keep: how its files begin; {device} is the device's name")
    verb.add_argument("--ending", metavar="ENDING", help="keep: how its files end, without the dot (txt)")
    verb.add_argument("--into", type=Path, default=Path(), metavar="DIR", help="write: where to (default: here)")


def _secrets(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("--devices", action=argparse.BooleanOptionalAction, help="a secret for each device (RFC 8784)")
    verb.add_argument("--household", action=argparse.BooleanOptionalAction, help="one secret that all devices share")
    verb.add_argument("--renew", action="store_true", help="make the shared one anew")
    verb.add_argument("--yes", action="store_true", help="do it without asking")


def _dates(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("--into", type=Path, metavar="DIR", help="write them as a calendar file (RFC 5545)")


def _pack(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("--into", type=Path, default=Path(), metavar="DIR", help="where to (default: here)")
    verb.add_argument("--archive", action="store_true", help="as one archive under AES-256 instead of a folder")
    verb.add_argument("--words", action="store_true", help="only what the archive and gateway.p12 are opened with")


def _rehearse(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("device", nargs="?", metavar="DEVICE", help="a device whose bundle waits")
    verb.add_argument("--form", choices=[form.value for form in Form], help="only this form (default: all)")
    verb.add_argument(
        "--file",
        action="append",
        type=Path,
        default=[],
        metavar="FILE",
        help="files from disk instead; repeat for codes",
    )


def _tour(verb: argparse.ArgumentParser) -> None:
    verb.add_argument(
        "--into", type=Path, default=Path("hearthkey-tour"), metavar="DIR", help="default: hearthkey-tour"
    )
    languages = [one.value for one in Language]
    verb.add_argument("--language", choices=languages, default="en", help="what the window speaks in its pictures")


def _one_device(verb: argparse.ArgumentParser) -> None:
    _agreed(_device(verb))


def _stop(verb: argparse.ArgumentParser) -> None:
    _agreed(_device(verb))


def _revoke(verb: argparse.ArgumentParser) -> None:
    _agreed(_device(verb))
    reasons = _joined(tuple(reason.rfc_name for reason in FINAL_REASONS))
    verb.add_argument("--reason", required=True, metavar="REASON", help=f"one of {reasons} (RFC 5280)")


def _kinds(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("name", nargs="?", metavar="NAME", help="everything about one kind, with its sources")
    languages = [one.value for one in Language]
    verb.add_argument("--language", choices=languages, default=languages[0], help="in which words (en)")
    act = verb.add_mutually_exclusive_group()
    act.add_argument("--check", type=Path, metavar="FILE", help="say whether a file of your own is whole")
    act.add_argument("--add", type=Path, metavar="FILE", help="keep it; one of the same name is corrected by it")
    act.add_argument("--remove", metavar="NAME", help="take one of your own away")
    act.add_argument("--start", nargs=2, metavar=("NAME", "FILE"), help="write a copy of one, to be corrected")


def _diary(verb: argparse.ArgumentParser) -> None:
    verb.add_argument("--last", type=int, metavar="N", help="only the newest N entries")
    verb.add_argument("--search", metavar="TEXT", help="only entries with all these words, accents or not")
    verb.add_argument("--person", metavar="NAME", help="only entries about somebody and their devices")
    verb.add_argument("--device", metavar="DEVICE", help="only entries about one device")
    verb.add_argument("--export", type=Path, metavar="FILE", help="write them to a new file instead of showing them")
    verb.add_argument("--json-lines", action="store_true", help="one JSON object a line, for machines")


WORDS: dict[str, Callable[[argparse.ArgumentParser], None]] = (
    ADOPTING
    | KEEPING
    | REACHING
    | {
        "window": _window,
        "found": _found,
        "settle": _settle,
        "add": _add,
        "show": _show,
        "export": _export,
        "ticket": _ticket,
        "hand-over": _one_device,
        "prove": _prove,
        "stop": _stop,
        "let-in": _one_device,
        "revoke": _revoke,
        "gateway": _gateway,
        "deliver": _deliver,
        "pack": _pack,
        "dates": _dates,
        "template": _template,
        "secrets": _secrets,
        "lists": _lists,
        "rehearse": _rehearse,
        "kinds": _kinds,
        "diary": _diary,
        "tour": _tour,
    }
)
"""What gives each verb its words; `list` has none."""
