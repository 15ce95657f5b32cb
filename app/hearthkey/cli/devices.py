"""`hearthkey add`."""

from __future__ import annotations

import csv
from argparse import Namespace
from datetime import datetime, timedelta
from pathlib import Path

from hearthkey.cli import asking
from hearthkey.cli.board import pass_data
from hearthkey.cli.kinds import left_out
from hearthkey.cli.teller import Teller
from hearthkey.core.certificates import end_of_day
from hearthkey.core.errors import Refused
from hearthkey.core.sentences import plans
from hearthkey.services.enrolling import EnrolRequest
from hearthkey.services.house import House

_COLUMNS = {"person", "device", "kind", "until", "guest"}
_LONGEST_TABLE = 1_000_000


def add_verb(house: House, arguments: Namespace, teller: Teller) -> None:
    """Enrol one device, or a table of them."""
    requests = _requests(house, arguments)
    left_out(house.kinds, teller)
    planned = house.enrolling.preview_all(requests)
    sentences = [str(plans.enrol(plan)) for plan in planned]
    cautions = [caution for plan in planned for caution in plan.cautions]
    if arguments.plan:
        teller.cautions(cautions)
        teller.result(sentences, {"plan": sentences})
        return
    teller.cautions(cautions)
    asking.unlock(house, arguments, teller)
    changes = house.enrolling.apply(*planned, progress=teller.progress)
    house.sparing.renew()
    made = [one for one in house.register.passes() if one.serial in set(changes.serials)]
    now = house.clock.now()
    lines = [changes.sentence]
    if len(made) == 1:
        lines.append(f"Next: hearthkey export '{made[0].person} {made[0].device}' --form pkcs12 --into DIR")
        lines.append(
            f"Its passphrase, on another day or screen: hearthkey show '{made[0].person} {made[0].device}' --words"
        )
    teller.result(lines, {"devices": [pass_data(one, now) for one in made]})


def _requests(house: House, arguments: Namespace) -> list[EnrolRequest]:
    if arguments.table is not None:
        return _table(arguments.table)
    for word, what in ((arguments.person, "PERSON"), (arguments.device, "DEVICE"), (arguments.kind, "--kind KIND")):
        if word is None:
            raise Refused("word-missing", what=what)
    return [
        EnrolRequest(
            person=arguments.person,
            device=arguments.device,
            kind=arguments.kind,
            ends=_end(house, arguments),
            guest=arguments.guest,
            key_set=arguments.key_set,
            container=arguments.container,
            replace=arguments.replace,
        )
    ]


def _end(house: House, arguments: Namespace) -> datetime | None:
    if arguments.until is not None:
        return date(arguments.until)
    if arguments.days is not None:
        if not 0 < arguments.days < 100_000:
            raise Refused("days-out-of-range", text=str(arguments.days))
        return house.clock.now() + timedelta(days=arguments.days)
    return None


def date(text: str) -> datetime:
    """The end of a day written as YYYY-MM-DD.

    Raises:
        Refused: date-malformed.
    """
    try:
        day = datetime.strptime(text.strip(), "%Y-%m-%d")  # noqa: DTZ007 - a calendar day; end_of_day makes it UTC
    except ValueError:
        raise Refused("date-malformed", text=text[:40]) from None
    return end_of_day(day.year, day.month, day.day)


def _table(path: Path) -> list[EnrolRequest]:
    try:
        with path.open(encoding="utf-8-sig", newline="") as file:
            text = file.read(_LONGEST_TABLE + 1)
        if len(text) > _LONGEST_TABLE:
            raise Refused("file-too-large", path=str(path), limit=_LONGEST_TABLE)
        rows = list(csv.DictReader(text.splitlines(keepends=True)))
    except FileNotFoundError:
        raise Refused("file-missing", path=str(path)) from None
    except (OSError, UnicodeDecodeError, csv.Error) as error:
        raise Refused("file-unreadable", path=str(path), seen=str(error)) from error
    requests = []
    for line, row in enumerate(rows, 2):
        extra = set(row) - _COLUMNS
        if extra or None in row.values() or not {"person", "device", "kind"} <= set(row):
            raise Refused("table-malformed", path=str(path), line=line)
        requests.append(
            EnrolRequest(
                person=row["person"],
                device=row["device"],
                kind=row["kind"].strip(),
                ends=date(row["until"]) if (row.get("until") or "").strip() else None,
                guest=(row.get("guest") or "").strip().casefold() in {"1", "yes", "true"},
            )
        )
    if not requests:
        raise Refused("table-empty", path=str(path))
    return requests
