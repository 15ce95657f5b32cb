"""A real browser, phone-sized: Chromium without a screen, told what to do over a pipe."""

from __future__ import annotations

import base64
import fcntl
import itertools
import json
import os
import subprocess
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from tests.judges import needs

PHONE = {"width": 360, "height": 740, "deviceScaleFactor": 2, "mobile": True}
"""CSS pixels of a small phone."""
ANDROID = (
    "Mozilla/5.0 (Linux; Android 14; K) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/140.0.0.0 Mobile Safari/537.36"
)
"""As such a browser calls itself, from memory."""


FLAGS = (
    "--headless=new",
    "--no-sandbox",
    "--disable-gpu",
    "--no-first-run",
    "--remote-debugging-pipe",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--no-proxy-server",
    "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
)
"""Nothing but loopback is ever reached."""


class Browser:
    """Speaks the DevTools protocol: JSON with a NUL behind, on two pipes."""

    def __init__(self, into: int, out: int) -> None:
        self._into = into
        self._out = out
        self._numbers = itertools.count(1)
        self._rest = b""
        self._session: str | None = None
        self.events: list[dict[str, Any]] = []

    def tell(self, method: str, **facts: object) -> dict[str, Any]:
        """Tell it to do something, and wait for its answer."""
        number = next(self._numbers)
        message: dict[str, Any] = {"id": number, "method": method, "params": facts}
        if self._session is not None and not method.startswith(("Browser.", "Target.")):
            message["sessionId"] = self._session
        os.write(self._into, json.dumps(message).encode() + b"\0")
        while (heard := self._hear()).get("id") != number:
            self.events.append(heard)
        assert "error" not in heard, heard
        return dict(heard["result"])

    def wait_for(self, method: str, **facts: object) -> dict[str, Any]:
        """Wait for an event with certain parameters."""
        while True:
            for one in self.events:
                told = one.get("params", {})
                if one.get("method") == method and all(told.get(name) == fact for name, fact in facts.items()):
                    self.events.remove(one)
                    return dict(told)
            self.events.append(self._hear())

    def _hear(self) -> dict[str, Any]:
        while b"\0" not in self._rest:
            more = os.read(self._out, 1 << 20)
            assert more, "the browser ended"
            self._rest += more
        heard, self._rest = self._rest.split(b"\0", 1)
        return dict(json.loads(heard))

    def open_page(self, *, agent: str, language: str, script: bool, downloads: Path) -> None:
        """Open an empty page as a phone has it."""
        target = self.tell("Target.createTarget", url="about:blank")["targetId"]
        self._session = self.tell("Target.attachToTarget", targetId=target, flatten=True)["sessionId"]
        self.tell("Page.enable")
        self.tell("Network.enable")
        self.tell("Emulation.setDeviceMetricsOverride", **PHONE)
        self.tell("Emulation.setScriptExecutionDisabled", value=not script)
        self.tell("Emulation.setUserAgentOverride", userAgent=agent, acceptLanguage=language)
        self.tell("Browser.setDownloadBehavior", behavior="allow", downloadPath=str(downloads), eventsEnabled=True)

    def go(self, link: str) -> None:
        """Follow a link."""
        self.tell("Page.navigate", url=link)
        self.wait_for("Page.loadEventFired")

    def find(self, selector: str) -> int:
        """Node of the first element."""
        root = self.tell("DOM.getDocument")["root"]["nodeId"]
        return int(self.tell("DOM.querySelector", nodeId=root, selector=selector)["nodeId"])

    def words(self, selector: str = "main") -> str:
        """Markup of an element."""
        return str(self.tell("DOM.getOuterHTML", nodeId=self.find(selector))["outerHTML"])

    def tap(self, selector: str) -> None:
        """Tap the middle of an element."""
        corners = self.tell("DOM.getBoxModel", nodeId=self.find(selector))["model"]["border"]
        middle = {"x": sum(corners[::2]) / 4, "y": sum(corners[1::2]) / 4, "button": "left", "clickCount": 1}
        for kind in ("mousePressed", "mouseReleased"):
            self.tell("Input.dispatchMouseEvent", type=kind, **middle)

    def height(self) -> float:
        """Of the page's content, in CSS pixels."""
        return float(self.tell("Page.getLayoutMetrics")["cssContentSize"]["height"])

    def picture(self) -> bytes:
        """PNG of what is seen."""
        return base64.b64decode(self.tell("Page.captureScreenshot", format="png")["data"])


def _pipe() -> tuple[int, int]:
    """A pipe whose ends have numbers above 10."""
    ends = os.pipe()
    high = [fcntl.fcntl(end, fcntl.F_DUPFD_CLOEXEC, 10) for end in ends]
    for end in ends:
        os.close(end)
    return high[0], high[1]


@contextmanager
def browser(profile: Path) -> Iterator[Browser]:
    """Start it with an empty profile, and end it."""
    program = needs("chromium")
    theirs_in, into = _pipe()
    out, theirs_out = _pipe()
    # It reads from descriptor 3 and writes to 4; both ends lie above 10, so that neither overwrites the other.
    words = [
        *("bash", "-c", f'exec 3<&{theirs_in} 4>&{theirs_out}; exec "$@"', "bash"),
        *(program, *FLAGS, f"--user-data-dir={profile}", "about:blank"),
    ]
    running = subprocess.Popen(
        words, pass_fds=(theirs_in, theirs_out), stderr=subprocess.DEVNULL, stdout=subprocess.DEVNULL
    )
    os.close(theirs_in)
    os.close(theirs_out)
    try:
        told = Browser(into, out)
        yield told
        told.tell("Browser.close")
    finally:
        os.close(into)
        os.close(out)
        running.kill()
        running.wait()
