"""Starts the program as `python -m hearthkey` does, with a clipboard that forgets in seconds instead of 45."""

from __future__ import annotations

import os
import sys

from hearthkey.ui import clipboard

clipboard.SECONDS = int(os.environ["CLIPBOARD_SECONDS"])

from hearthkey.__main__ import main  # noqa: E402 - what it loads takes the number as it stands

if __name__ == "__main__":  # the processes that make keys load this file too
    sys.exit(main())
