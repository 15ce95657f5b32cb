"""The device kinds that come with the app, read as the app reads them."""

from __future__ import annotations

from pathlib import Path

from hearthkey.adapters.files import DiskFiles
from hearthkey.adapters.kinds_folder import KindsFolder

SHIPPED = Path(__file__).parents[2] / "resources" / "device-kinds"
KINDS = KindsFolder(SHIPPED, SHIPPED / "none-of-the-householder", DiskFiles()).load()
