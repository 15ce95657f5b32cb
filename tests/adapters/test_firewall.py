"""Which firewall seems to be on, by the files of a made-up root folder."""

from __future__ import annotations

from pathlib import Path

import pytest

from hearthkey.adapters.firewall import firewall
from hearthkey.core.firewalls import Firewall


def lay(root: Path, files: dict[str, str]) -> Path:
    """Write files under a root."""
    for name, text in files.items():
        path = root / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
    return root


NFT_ON = "etc/systemd/system/sysinit.target.wants/nftables.service"
DROPS = "table inet filter {\n chain input {\n  type filter hook input priority filter; policy drop;\n }\n}\n"
TAKES = "table inet filter {\n chain input {\n  type filter hook input priority filter;\n }\n}\n"


@pytest.mark.parametrize(
    ("files", "seen"),
    [
        ({}, None),
        ({"etc/ufw/ufw.conf": "# comment\nENABLED=yes\nLOGLEVEL=low\n"}, Firewall.UFW),
        ({"etc/ufw/ufw.conf": "ENABLED=no\n"}, None),
        ({"etc/ufw/ufw.conf": "# ENABLED=yes\n"}, None),
        ({"run/firewalld.pid": "412\n"}, Firewall.FIREWALLD),
        ({"etc/systemd/system/multi-user.target.wants/firewalld.service": ""}, Firewall.FIREWALLD),
        ({NFT_ON: "", "etc/nftables.conf": DROPS}, Firewall.NFTABLES),
        ({NFT_ON: "", "etc/nftables.conf": TAKES}, None),
        ({"etc/nftables.conf": DROPS}, None),
    ],
)
def test_what_files_say_is_believed_and_no_more(tmp_path: Path, files: dict[str, str], seen: Firewall | None) -> None:
    """If this failed, a firewall would be named that is off, or one that is on would stay unsaid."""
    assert firewall(lay(tmp_path, files)) is seen


def test_a_file_that_may_not_be_read_says_nothing(tmp_path: Path) -> None:
    """If this failed, a folder of an unusual kind would keep a ticket from opening."""
    (tmp_path / "etc/ufw/ufw.conf").mkdir(parents=True)
    assert firewall(tmp_path) is None
