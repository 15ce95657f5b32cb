"""Another program of the same login: it writes down every change of the clipboard, copies, and takes pictures.

It prints a line of JSON for every change with all the formats that were offered, and answers the lines that it is
given: {"copy": TEXT} puts a text there, {"picture": PATH} saves the screen.
"""

from __future__ import annotations

import json
import sys

from PySide6.QtCore import QSocketNotifier
from PySide6.QtGui import QClipboard, QGuiApplication


def say(**words: object) -> None:
    """Print one line."""
    sys.stdout.write(json.dumps(words) + "\n")
    sys.stdout.flush()


def main() -> None:
    """Watch until the input ends."""
    app = QGuiApplication([])
    clipboard = app.clipboard()

    def changed(mode: QClipboard.Mode) -> None:
        offered = clipboard.mimeData(mode)
        formats = [] if offered is None else sorted(offered.formats())
        say(
            selection=mode.name.lower(),
            formats=formats,
            text=clipboard.text(mode),
            values={one: bytes(offered.data(one).data()).decode("utf-8", "replace") for one in formats},
        )

    def asked() -> None:
        line = sys.stdin.readline()
        if not line:
            app.quit()
            return
        words = json.loads(line)
        if "copy" in words:
            clipboard.setText(words["copy"])
            say(copied=words["copy"])
        elif "picture" in words:
            say(pictured=app.primaryScreen().grabWindow(0).save(words["picture"]))
        else:
            say(holds=clipboard.text(), formats=sorted(clipboard.mimeData().formats()))

    clipboard.changed.connect(changed)
    notifier = QSocketNotifier(0, QSocketNotifier.Type.Read)
    notifier.activated.connect(asked)
    say(ready=True)
    app.exec()


main()
