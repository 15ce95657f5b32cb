"""What a householder types onto a sheet, and what names say: never a passphrase, nor what reads like one."""

from __future__ import annotations

import pytest

from hearthkey.core import passphrase
from hearthkey.core.channels import gives_away, reads_like_words
from hearthkey.core.errors import Refused
from hearthkey.core.hand_over_sheet import card_file
from hearthkey.core.names import file_stem
from hearthkey.core.secret import Secret
from hearthkey.services.enrolling import EnrolRequest
from tests.fakes.home import Home


def test_whom_to_call_never_carries_the_words(home: Home) -> None:
    """Broken if it fails: the sheet that goes along with the bundle has the passphrase on it."""
    sheeting, one = home.house.sheeting, home.newest("Ines phone")
    words = home.house.bundling.passphrase(one).reveal().split()
    sheeting.choose_call("Ines, 555 0100")
    for typed in (" ".join(words), "-".join(words[2:4]).upper(), f"call {words[0]}, {words[1]}"):
        with pytest.raises(Refused, match="call-gives-away"):
            sheeting.choose_call(typed)
    assert sheeting.call() == "Ines, 555 0100"


def test_what_reads_like_a_passphrase_is_refused_with_a_silent_keyring_too(home: Home) -> None:
    """Broken if it fails: a locked keyring opens the second channel."""
    home.world.vault.secrets.clear()
    one, two, three = home.house.words[700:703]
    for typed in (f"{one} {two} {three}", f"Ines, {one.title()}; {two.upper()}/{three}!"):
        with pytest.raises(Refused, match="call-gives-away"):
            home.house.sheeting.choose_call(typed)
    home.house.sheeting.choose_call("Ines at the garage, or Tomasz in the evening: 555 0100")


def test_a_sentence_of_usual_words_is_none(home: Home) -> None:
    """Broken if it fails: whoever types "the neighbour with the blue door" is told that it is a passphrase."""
    listed = frozenset(home.house.words)
    assert not reads_like_words("Ines next door, after six, or my brother in the shop", listed)
    assert not reads_like_words("", listed)


def test_names_never_give_two_words_away(home: Home, monkeypatch: pytest.MonkeyPatch) -> None:
    """Broken if it fails: a file that is called after somebody holds a part of what opens it."""
    drawn = iter(("plum kettle ivory lantern gravel otter quilt", "oaken ladle visor plum tidy harbor mosaic"))
    monkeypatch.setattr(passphrase, "make", lambda _words, _below: Secret(next(drawn)))
    home.add(EnrolRequest("Plum", "kettle", "linux"))
    one = home.newest("Plum kettle")
    words = home.house.bundling.passphrase(one)
    assert words.reveal().startswith("oaken")
    assert not gives_away(file_stem(one.title, one.identity), words)


def test_the_card_is_called_after_its_owner_alone(home: Home) -> None:
    """Broken if it fails: the file with the words says which device they open, or a second card takes its place."""
    phone, tablet = home.newest("Ines phone"), home.newest("Odile tablet")
    assert card_file(phone) == f"ines-card-{phone.serial[-4:]}.pdf"
    assert "tablet" not in card_file(tablet)
    home.add(EnrolRequest("Ines", "laptop", "linux"))
    assert card_file(home.newest("Ines laptop")) != card_file(phone)
