"""`hearthkey kinds`: shown, checked, begun, kept, taken away."""

from __future__ import annotations

from pathlib import Path

from tests.cli.running import Cottage
from tests.fakes.kinds import KINDS


def test_the_table_and_one_kind(cottage: Cottage) -> None:
    """Broken if it fails: nobody can ask why a device gets the key that it gets."""
    table = cottage.run("kinds").out.splitlines()
    assert [line.split()[0] for line in table] == list(KINDS.names)
    one = cottage.run("kinds", "android-older").out
    kind = KINDS.find("android-older")
    for text in (kind.why(), kind.steps("pkcs12")[4].do, kind.traps()[0], kind.sources[0], "not tried on a device"):
        assert text in one
    told = cottage.run("kinds", "android-older", "--json", "--language", "de").told
    assert told["why"] == kind.why("de")
    assert told["steps"]["pkcs12"][1]["do"] == kind.steps("pkcs12", "de")[1].do
    assert told["tried"] is False
    assert cottage.run("kinds", "teapot").code == 3


def test_an_old_check_is_called_old(cottage: Cottage) -> None:
    """Broken if it fails: steps of years ago look as good as new."""
    cottage.world.clock.forward(days=3 * 365)
    out = cottage.run("kinds", "iphone").out
    assert "months ago; menus may have changed since" in out
    assert cottage.run("kinds", "iphone", "--json").told["months_since"] >= 12


def test_from_the_copy_to_the_own_kind_and_back(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: correcting a kind needs more than an editor."""
    file = tmp_path / "iphone.toml"
    assert cottage.run("kinds", "--start", "iphone", file).code == 0
    assert cottage.run("kinds", "--start", "iphone", file).code == 3
    assert cottage.run("kinds", "--start", "teapot", tmp_path / "teapot.toml").code == 3
    file.write_text(file.read_text(encoding="utf-8").replace("iPhone or iPad'", "iPad'", 1), encoding="utf-8")
    assert "stand for" in cottage.run("kinds", "--check", file).out
    assert not (cottage.data / "kinds").exists()
    assert cottage.run("kinds", "--add", file, "--json").told["replaces"] is True
    assert "iPad  " in cottage.run("kinds").out
    assert "yours" in cottage.run("kinds").out
    assert cottage.run("kinds", "--remove", "iphone", "--json").told == {"removed": "iphone", "shipped": True}
    assert "yours" not in cottage.run("kinds").out
    assert cottage.run("kinds", "--remove", "iphone").code == 3


def test_a_mistake_is_told_and_kept_out(cottage: Cottage, tmp_path: Path) -> None:
    """Broken if it fails: a file with a mistake is kept, or stops the verbs that need kinds."""
    file = tmp_path / "iphone.toml"
    cottage.run("kinds", "--start", "iphone", file)
    file.write_text(file.read_text(encoding="utf-8").replace("key_set = 'broad'", "key_set = 'wide'"), encoding="utf-8")
    for act in ("--check", "--add"):
        ran = cottage.run("kinds", act, file)
        assert ran.code == 3
        assert 'key_set in iphone.toml is "wide"' in ran.err
    (cottage.data / "kinds").mkdir()
    (cottage.data / "kinds" / "iphone.toml").write_bytes(file.read_bytes())
    ran = cottage.run("add", "Odile", "phone", "--kind", "iphone", "--plan")
    assert ran.code == 0
    assert "wide" in ran.err
    assert cottage.run("kinds", "--json").told["left_out"] == [{"file": "iphone.toml", "code": "kind-file-choice"}]
    assert cottage.run("show", "Ines phone").code == 0
