"""The householder's own template, as a value, and what its name, file name and text may be."""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass

from hearthkey.core.errors import Refused
from hearthkey.core.names import display_name

GATEWAY, DEVICE = "gateway", "device"
"""What a template is for, which decides the slots it has."""

DEVICE_MARK = "{device}"
"""Stands in the file name of a device's template where the device goes: "home-{device}" becomes "home-ines-phone"."""

LONGEST_TEXT = 64 * 1024
"""Octets of UTF-8."""
LONGEST_FILE_NAME = 100
LONGEST_ENDING = 16
"""Characters."""

_LONGEST_DEVICE = 57
"""Characters that `DEVICE_MARK` can grow to: 48 of a name (`names.file_stem`), a hyphen, 8 of an identity's code."""

_STEM = re.compile(r"[A-Za-z0-9_][A-Za-z0-9._-]*")
_ENDING = re.compile(r"[A-Za-z0-9]+(?:[._-][A-Za-z0-9]+)*")
# Windows opens a device where the part before the first dot is one of these (from memory: Microsoft, Naming Files).
_DEVICE_NAME = re.compile(r"con|prn|aux|nul|com[0-9]|lpt[0-9]|conin|conout|clock", re.IGNORECASE)
_LINE_END = re.compile(r"\r\n|\r|\n")
# UAX #9: they turn the direction of the text around them, so that a line could read otherwise than it works.
_DIRECTION_MARKS = frozenset("\u061c\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069")
_HIDDEN = frozenset({"Cc", "Cs", "Co", "Cn", "Zl", "Zp"})


@dataclass(frozen=True)
class Template:
    """A text with slots.

    Args:
        name: how the householder calls it; one household has each name once.
        of: ``gateway`` or ``device``: which slots it has.
        file_stem: beginning of the file names it renders to; a device's has `DEVICE_MARK` in it.
        ending: their ending, without the dot; empty for none.
        text: the text, with ``{{ slots }}``.
    """

    name: str
    of: str
    file_stem: str
    ending: str
    text: str


def checked(*, name: str, of: str, file_stem: str, ending: str, text: str) -> Template:
    """Check what the householder typed, all but the meaning of the text.

    Raises:
        Refused: as `display_name`, `kind_of_template`, `check_text`; template-stem-unfit, template-ending-unfit,
            template-device-mark-missing, template-device-mark-stray, template-file-name-reserved,
            template-file-name-too-long.
    """
    made = Template(
        name=display_name(name, "template name"),
        of=kind_of_template(of),
        file_stem=file_stem.strip(),
        ending=ending.strip().removeprefix("."),
        text=text,
    )
    _check_file_name(made)
    check_text(text)
    return made


def kind_of_template(text: str) -> str:
    """Check the word for what a template is for.

    Raises:
        Refused: template-kind-unknown.
    """
    if text not in {GATEWAY, DEVICE}:
        raise Refused("template-kind-unknown", text=text[:40], known=(GATEWAY, DEVICE))
    return text


def file_name(template: Template, device: str = "") -> str:
    """Name the file that a template renders to.

    Args:
        device: what stands for `DEVICE_MARK`, as `names.file_stem` makes it.
    """
    stem = template.file_stem.replace(DEVICE_MARK, device)
    return f"{stem}.{template.ending}" if template.ending else stem


def _check_file_name(template: Template) -> None:
    marks = template.file_stem.count(DEVICE_MARK)
    if template.of == DEVICE and marks != 1:
        raise Refused("template-device-mark-missing", text=template.file_stem[:80], mark=DEVICE_MARK)
    if template.of == GATEWAY and marks:
        raise Refused("template-device-mark-stray", text=template.file_stem[:80], mark=DEVICE_MARK)
    if not _STEM.fullmatch(template.file_stem.replace(DEVICE_MARK, "x")):
        raise Refused("template-stem-unfit", text=template.file_stem[:80])
    if template.ending and (len(template.ending) > LONGEST_ENDING or not _ENDING.fullmatch(template.ending)):
        raise Refused("template-ending-unfit", text=template.ending[:80], limit=LONGEST_ENDING)
    first = template.file_stem.partition(".")[0]
    if template.file_stem.endswith(".") or _DEVICE_NAME.fullmatch(first):
        raise Refused("template-file-name-reserved", text=file_name(template, DEVICE_MARK)[:80])
    length = len(file_name(template, "x" * _LONGEST_DEVICE))
    if length > LONGEST_FILE_NAME:
        raise Refused("template-file-name-too-long", length=length, limit=LONGEST_FILE_NAME)


def check_text(text: str) -> None:
    """Check a template's text as text: not too long, and everything in it can be seen.

    Raises:
        Refused: template-empty, template-too-long, template-hidden-character (with the line, from 1).
    """
    if not text.strip():
        raise Refused("template-empty")
    size = len(text.encode("utf-8", "surrogatepass"))
    if size > LONGEST_TEXT:
        raise Refused("template-too-long", size=size, limit=LONGEST_TEXT)
    for place, character in enumerate(text):
        if character in "\t\r\n":
            continue
        if unicodedata.category(character) in _HIDDEN or character in _DIRECTION_MARKS:
            line = len(_LINE_END.split(text[:place]))
            raise Refused("template-hidden-character", line=line, character=f"U+{ord(character):04X}")


def lines_of(text: str) -> list[str]:
    """The lines of a text, whether they end in LF, CR or CRLF."""
    return _LINE_END.split(text)
