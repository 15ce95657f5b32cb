"""The gateway from the command line: where it is, what is brought there, and what a timer hears of it."""

from __future__ import annotations

import sqlite3
import subprocess
from pathlib import Path

import pytest
from icalendar import Calendar

from hearthkey.adapters.register import FILE_NAME
from hearthkey.core.pack import MANIFEST
from hearthkey.services.carrying_copies import ROOM
from tests.cli.running import Cottage
from tests.fakes.gateway import HOST_KEY
from tests.judges import needs

CHOSEN = ("gateway", "--ssh", "gateway.quince.example", "--folder", "door", "--reload", "reload door", "--yes")


@pytest.fixture
def home(cottage: Cottage) -> Cottage:
    """The cottage, not for practice, its gateway chosen."""
    with sqlite3.connect(cottage.data / FILE_NAME) as register:
        register.execute("UPDATE household SET practice = 0")
    register.close()
    cottage.world.gate.clock = cottage.world.clock.now()
    assert cottage.run(*CHOSEN).code == 0
    return cottage


def test_the_host_key_is_shown_before_it_is_taken(home: Cottage) -> None:
    """Broken if it fails: the first contact trusts whoever answers."""
    again = home.run("gateway", "--ssh", "other.quince.example", "--folder", "door")
    assert again.code == 3
    assert HOST_KEY.fingerprint in again.err
    assert home.run("gateway", "--json").told["target"]["host"] == "gateway.quince.example"
    wrong = home.run(*CHOSEN[:3], "--folder", "x", "--ssh", "other.quince.example", "--host-key", "SHA256:another")
    assert wrong.code == 3
    assert "Nothing was sent" in wrong.err


def test_one_thing_about_the_place_can_be_changed(home: Cottage) -> None:
    """Broken if it fails: who only wants another command loses the host, or is not heard at all."""
    assert home.run("gateway", "--reload", "reload all", "--yes").code == 0
    told = home.run("gateway", "--json").told["target"]
    assert (told["host"], told["folder"], told["reload"]) == ("gateway.quince.example", "door", "reload all")
    lacking = home.run("gateway", "--ssh", "other.quince.example")
    assert (lacking.code, "need a folder" in lacking.err) == (3, True)
    for choice in ("--masquerade", "--no-masquerade"):
        assert "The choices for the gateway’s files were changed" in home.run("gateway", choice).out


def test_deliver_says_what_is_in_force(home: Cottage) -> None:
    """Broken if it fails: a timer’s mail says nothing, or too much."""
    planned = home.run("deliver", "--plan")
    assert planned.code == 0
    assert "new      gateway-key.pem" in planned.out
    assert home.world.gate.current is None
    done = home.run("deliver")
    assert (done.code, done.out.startswith("Revocation list 1 is in force at gateway.quince.example, door;")) == (
        0,
        True,
    )
    told = home.run("gateway", "--json").told
    assert (told["standing"], told["list_in_force"], told["clock_off"]) == ("in-force", 1, 0)
    assert home.run("deliver", "--json").told["sent"] == 0


def test_a_stop_without_the_passphrase_is_in_force_at_once(home: Cottage) -> None:
    """Broken if it fails: the ten seconds are not ten seconds."""
    assert home.unlocked("lists", "--sign").code == 0
    stopped = home.run("stop", "Ines phone")
    assert stopped.code == 0
    assert "without the passphrase" in stopped.out
    assert "Until then" not in stopped.err
    assert home.run("gateway", "--json").told["standing"] == "in-force"


def test_a_second_stop_that_stops_others_too_asks_first(home: Cottage) -> None:
    """Broken if it fails: stopping two phones in a row takes the whole family’s access unasked."""
    home.unlocked("lists", "--sign")
    home.run("stop", "Ines phone")
    second = home.run("stop", "Tomasz laptop")
    assert second.code == 3
    assert "Odile’s tablet" in second.err
    assert home.state("Tomasz laptop") == "waiting"
    assert home.run("stop", "Tomasz laptop", "--yes").code == 0
    assert home.state("Odile tablet") == "stopped"
    assert home.unlocked("let-in", "Odile tablet", "--yes").code == 0
    assert home.state("Tomasz laptop") == "stopped"


def test_a_stop_that_does_not_reach_the_gateway_says_so(home: Cottage) -> None:
    """Broken if it fails: exit code 0 for a phone that still gets in."""
    home.unlocked("lists", "--sign")
    home.world.gate.trouble["open"] = "gateway-unreachable"
    stopped = home.run("stop", "Ines phone", "--json")
    assert stopped.code == 4
    assert stopped.told["in_force"] is False
    assert home.state("Ines phone") == "stopped"
    assert home.run("gateway", "--json").told["waiting"] == ["Ines’s phone"]
    home.world.gate.trouble.clear()
    assert home.run("deliver").code == 0
    assert home.run("gateway", "--json").told["waiting"] == []


def test_a_timer_hears_when_the_passphrase_is_needed(home: Cottage) -> None:
    """Broken if it fails: the list runs over its date while a timer says every day that all is well."""
    assert home.run("deliver").code == 0
    home.world.clock.forward(days=741)
    home.world.gate.clock = home.world.clock.now()
    needed = home.run("deliver", "--quiet", "--notify")
    assert needed.code == 3
    assert "nobody gets in any more without somebody who knows the passphrase" in needed.err
    ((title, text),) = home.world.notices
    assert title.startswith("Everything is delivered. But on 2 February 2029 nobody gets in")
    assert text.startswith("Unlock before that day")
    assert home.unlocked("deliver").code == 0
    assert home.run("gateway", "--json").told["list_in_force"] == 2


def test_the_pack_is_written_as_a_folder(home: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: a gateway without ssh gets nothing."""
    ran = home.run("pack", "--into", tmp_path)
    assert ran.code == 0
    (folder,) = tmp_path.glob("gateway-*")
    assert {path.name for path in folder.iterdir()} >= {"gateway-key.pem", "list.crl", "gateway.p12", MANIFEST}
    assert "without a passphrase" in ran.err
    again = home.run("pack", "--into", tmp_path)
    assert again.out == ran.out
    assert len(list(tmp_path.glob("gateway-*"))) == 1


def test_the_pack_is_written_as_an_archive_that_7_zip_opens(home: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: the gateway’s key travels in the clear, or nobody can unpack it."""
    ran = home.run("pack", "--archive", "--into", tmp_path)
    (path,) = tmp_path.glob("gateway-*.zip")
    words = home.run("pack", "--words").out.strip()
    assert words not in ran.out + ran.err
    out = tmp_path / "out"
    subprocess.run([needs("7z"), "x", f"-p{words}", f"-o{out}", path], check=True, capture_output=True)
    checked = [needs("sha256sum"), "--check", "--strict", "--quiet", MANIFEST]
    assert subprocess.run(checked, cwd=out, check=False).returncode == 0
    assert {"gateway-key.pem", "groups-ffdhe3072.pem", "settings-sheet.pdf"} <= {one.name for one in out.iterdir()}


def test_a_template_is_kept_tried_and_delivered(home: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: a gateway with a settings file of its own gets none."""
    text = tmp_path / "door.txt"
    text.write_text("host is {{ gateway_host }}\nlist {{ list_number }}\n", encoding="utf-8")
    kept = home.run("template", "keep", "door", "--file", text, "--gateway", "--ending", "conf")
    assert kept.code == 0
    assert "host is home.quince.example" in home.run("template", "try", "door").out
    assert home.run("template", "list").out.startswith("door  for the gateway")
    home.run("deliver")
    files = home.world.gate.sets[home.world.gate.current or ""]
    assert files["own/door.conf"] == b"host is home.quince.example\nlist 1\n"
    assert home.unlocked("lists", "--sign").code == 0
    files = home.world.gate.sets[home.world.gate.current or ""]
    assert files["own/door.conf"].endswith(b"list 2\n")
    assert home.run("template", "forget", "door").code == 0
    home.run("deliver")
    assert "own/door.conf" not in home.world.gate.sets[home.world.gate.current or ""]


def test_a_device_s_template_is_written_and_noted(home: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: a file with a device’s key leaves without a word in the diary."""
    text = tmp_path / "note.txt"
    text.write_text("{{ device_title }} is {{ device_identity }}\n{{ device_key }}", encoding="utf-8")
    assert home.run("template", "keep", "note", "--file", text).code == 0
    assert home.run("template", "write", "note").code == 3
    wrote = home.run("template", "write", "note", "--device", "Ines phone", "--into", tmp_path / "out")
    (path,) = (tmp_path / "out").iterdir()
    assert path.read_text("utf-8").startswith("Ines’s phone is ")
    assert (path.stat().st_mode & 0o777, str(path) in wrote.out) == (0o600, True)
    assert "without a passphrase" in wrote.err
    assert path.name in home.run("diary", "--last", "1").out


def test_a_mistake_in_a_template_names_its_line(home: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: somebody looks for a missing brace in two hundred lines."""
    text = tmp_path / "door.txt"
    text.write_text("one\n{{ gateway_hots }}\n", encoding="utf-8")
    ran = home.run("template", "keep", "door", "--file", text, "--gateway")
    assert ran.code == 3
    assert "Line 2" in ran.err
    assert "gateway_host" in ran.err


def test_extra_secrets_reach_the_gateway_and_go_with_the_device(home: Cottage) -> None:
    """Broken if it fails: a stolen phone’s secret stays good, or the others’ change with it."""
    assert home.run("secrets", "--devices", "--household").code == 0
    home.run("deliver")
    gate = home.world.gate
    before = dict(line.split() for line in gate.sets[gate.current or ""]["extra-secrets.txt"].decode().splitlines())
    assert len(before) == 3
    assert {len(one) for one in before.values()} == {44}
    shared = gate.sets[gate.current or ""]["shared-secret.txt"]
    stopped = home.unlocked("stop", "Ines phone")
    assert "2 devices will have to be told a new one" in stopped.err
    assert stopped.code == 0
    home.unlocked("let-in", "Ines phone", "--yes")
    home.run("deliver")
    back = dict(line.split() for line in gate.sets[gate.current or ""]["extra-secrets.txt"].decode().splitlines())
    assert back.keys() == before.keys()
    assert len(set(back.items()) - set(before.items())) == 1
    assert gate.sets[gate.current or ""]["shared-secret.txt"] == shared
    assert home.run("secrets", "--json").told["known_outside"] is True
    home.world.clock.forward(minutes=1)
    assert home.run("secrets", "--renew", "--yes").code == 0
    home.run("deliver")
    assert gate.sets[gate.current or ""]["shared-secret.txt"] != shared


def test_sealed_copies_go_to_the_gateway(home: Cottage) -> None:
    """Broken if it fails: no copy follows by itself; or one that cannot be brought undoes the delivery that worked."""
    none = home.unlocked("try", "--gateway", "--json").told["error"]["code"]
    assert none == "copy-none-at-gateway"
    gate = home.world.gate
    home.run("deliver")
    assert not gate.rooms
    brought = home.unlocked("seal", "--gateway")
    assert (brought.code, "hearthkey try --gateway" in brought.out) == (0, True)
    home.unlocked("lists", "--sign")
    assert home.run("deliver").code == 0
    assert len(gate.rooms[ROOM].sets) == 2
    assert "whole and fits" in home.unlocked("try", "--gateway").out
    home.unlocked("lists", "--sign")
    gate.rooms[ROOM].trouble = {"put_set": "gateway-full"}
    ran = home.run("deliver")
    assert (ran.code, len(gate.rooms[ROOM].sets)) == (0, 2)
    assert "full" in ran.err


def test_dates_are_a_calendar_that_others_read(home: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: the family’s calendar stays empty (RFC 5545, read back by icalendar)."""
    shown = home.run("dates")
    assert len(shown.out.splitlines()) == 13  # list and gateway twice, the CA four times, a copy, a paper, three passes
    home.run("dates", "--into", tmp_path)
    (path,) = tmp_path.glob("*.ics")
    data = path.read_bytes()
    assert all(len(line) <= 75 for line in data.split(b"\r\n"))
    events = Calendar.from_ical(data).walk("VEVENT")
    keys = {str(event["uid"]) for event in events}
    assert len(keys) == 13
    home.unlocked("lists", "--sign")
    home.run("dates", "--into", tmp_path)
    again = Calendar.from_ical(path.read_bytes()).walk("VEVENT")
    assert {str(event["uid"]) for event in again} == keys


def test_the_practice_household_is_never_delivered(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: trying the app out changes a real gateway."""
    ran = cottage.run(*CHOSEN)
    assert (ran.code, "practice household" in ran.err) == (3, True)
    assert cottage.run("pack", "--into", tmp_path).code == 0
