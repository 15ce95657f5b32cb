"""Paper and stop set through a succession, over the real register."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from functools import partial
from pathlib import Path

import pytest

from hearthkey.core.duties import Act
from hearthkey.core.errors import Refused
from hearthkey.core.hand_over_sheet import Paper
from hearthkey.core.keepsakes import Keepsakes, keepsake_duties
from hearthkey.core.languages import Language
from hearthkey.core.paper import DIGEST, MOST_LINES, OCTETS, lines_of
from hearthkey.core.paper_contents import LISTED, Withdrawn
from hearthkey.core.revocation import Reason
from hearthkey.core.succession import Step
from hearthkey.formats import paper_der, paper_sheet
from hearthkey.formats.laid_sheet import Run
from hearthkey.formats.paper_sheet import OlderKey
from hearthkey.pki.keys import AuthorityKey
from hearthkey.services.keeping_sakes import keepsakes
from hearthkey.services.papering import Papering
from tests.fakes.home import PASSPHRASE, Home, at_home
from tests.services.test_paper import OneKey, content


@pytest.fixture
def home(tmp_path: Path) -> Iterator[Home]:
    """A household with its spare lists."""
    with at_home(tmp_path / "data", quick=True) as made:
        made.house.sparing.renew()
        yield made


def known(home: Home) -> Keepsakes:
    """What lies in its drawers."""
    register = home.house.register
    found = keepsakes(register, register.passes(), register.diary()[0].at, home.house.clock.now())
    assert found is not None
    return found


def acts(home: Home) -> list[Act]:
    """What is asked for."""
    return [one.act for one in keepsake_duties(known(home))]


def trying(home: Home, content: bytes, key: AuthorityKey) -> str:
    """Try a paper without scrypt."""
    house = home.house
    papering = Papering(house.register, house.vault, house.clock, OneKey(key))
    return str(papering.try_paper(content, PASSPHRASE).sentence)


def said(home: Home) -> str:
    """Everything in words on the paper."""
    facts = home.house.papering.facts(Language.ENGLISH)
    pages = paper_sheet.pages(facts, Paper.A4, lambda text, _face, size: len(text) * size * 0.5)
    return " ".join(one.text for one in pages[0] if isinstance(one, Run))


def test_a_paper_goes_through_a_succession(home: Home) -> None:
    """Broken if it fails: the one paper of a household has the wrong key, or is called a stranger's."""
    house = home.house
    assert acts(home) == [Act.PRINT_PAPER]
    old = content(home)
    house.papering.printed("")
    assert acts(home) == []
    assert "Of two keys" not in said(home)
    house.succeeding.begin(PASSPHRASE)
    found = house.register.succession()
    assert found is not None
    assert acts(home) == [Act.PRINT_PAPER_ANEW]
    newer = home.house.papering.facts(Language.ENGLISH)
    assert newer.contents.certificate == found.new.certificate
    assert newer.until == found.new.not_after
    assert newer.older is not None
    assert newer.older.until == found.old.not_after
    words = said(home)
    assert "Of two keys this is the newer one" in words
    assert "before" in words
    assert "It was made before the CA’s succession of" in trying(home, old, home.key)
    house.papering.printed("")
    assert acts(home) == []
    new = paper_der.encode(newer.contents)
    house.succeeding.take_back()
    assert acts(home) == []
    with pytest.raises(Refused, match="paper-of-dropped-ca"):
        trying(home, new, home.key)
    assert content(home) != new


def test_a_stop_set_is_noted_and_a_newer_list_is_told(home: Home, tmp_path: Path) -> None:
    """Broken if it fails: a stick with old lists lies in a drawer, and nobody is asked to write a newer one."""
    home.house.papering.printed("")
    home.house.deputy_papers.stop_set(tmp_path / "stick", Language.ENGLISH)
    newest = home.house.register.newest_list()
    given = home.house.register.stop_set()
    assert newest is not None
    assert given is not None
    assert given.base == newest.number < given.newest
    assert acts(home) == []
    home.stop("Ines phone")
    (duty,) = keepsake_duties(known(home))
    out = home.house.register.newest_list()
    assert out is not None
    assert (duty.act, duty.numbers) == (Act.MAKE_STOP_SET, (newest.number, out.number))
    home.house.sparing.renew()
    home.house.deputy_papers.stop_set(tmp_path / "stick", Language.ENGLISH)
    assert acts(home) == []


def test_the_paper_after_a_succession_is_told_as_what_it_is(home: Home) -> None:
    """Broken if it fails: a family throws away its own paper as another household's."""
    old = content(home)
    house = home.house
    house.succeeding.begin(PASSPHRASE)
    for step in (Step.TRUST, Step.GATEWAY, Step.FINISH):
        _force(home, step)
    with pytest.raises(Refused, match="paper-before-succession") as told:
        trying(home, old, home.key)
    assert "25 November 2026" in str(told.value.facts["since"])
    assert home.house.papering.facts(Language.ENGLISH).older is None


def _force(home: Home, step: Step) -> None:
    """Take a step without the visits that it waits for."""
    with home.house.register.change() as change:
        change.take_step(step, home.house.clock.now())


@pytest.mark.parametrize("language", list(Language))
def test_two_keys_and_a_long_list_still_fit(home: Home, language: Language) -> None:
    """Broken if it fails: just while one CA follows another the key cannot be put on paper. Letter is the shorter."""
    facts = home.house.papering.facts(language)
    made, rows = facts.contents.made, len(lines_of(paper_der.encode(facts.contents)))
    listed = facts.contents
    for number in range(1, LISTED + 1):
        more = (*listed.withdrawn, Withdrawn(f"{number:040x}", made, Reason.CERTIFICATE_HOLD))
        if len(paper_der.encode(replace(listed, withdrawn=more))) > MOST_LINES * OCTETS - DIGEST:
            break
        listed = replace(listed, withdrawn=more)
    assert len(lines_of(paper_der.encode(listed))) == MOST_LINES > rows
    told = replace(facts, contents=listed, older=OlderKey(made, facts.until))
    draw = partial(paper_sheet.pages, told, Paper.LETTER)
    assert home.house.draw_pages(draw, Paper.LETTER, told.title, language.value, told.title).startswith(b"%PDF-")
