"""Starts the command line."""

from __future__ import annotations

import sys

from hearthkey.bootstrap import Door, harden, open_house
from hearthkey.cli.main import run


def main() -> int:
    """Run one verb and return its exit code."""
    harden()
    return run(sys.argv[1:] or ["window"], open_house, Door())


if __name__ == "__main__":
    sys.exit(main())
