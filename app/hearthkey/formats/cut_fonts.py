"""Cuts a font down to the letters of one document and one weight, as a document embeds it.

Both families are under the SIL Open Font License 1.1, which allows embedding; what is cut here is part of a document
and no font to be passed on.
"""

from __future__ import annotations

import hashlib
import io
from functools import lru_cache

from fontTools.subset import Options, Subsetter
from fontTools.ttLib import TTFont
from fontTools.varLib import instancer

_WEIGHT = "wght"
_POSTSCRIPT_NAME = 6
"""OpenType, table "name": the name that a document tells fonts apart by."""

_UNUSED = frozenset({"GPOS", "GSUB", "GDEF", "BASE", "STAT"})
"""Tables that nobody reads who sets one letter after another; reading them takes a second."""


@lru_cache(maxsize=16)
def cut(font: bytes, weight: int, letters: str) -> bytes:
    """Cut a font.

    Args:
        font: TrueType with one face, with a weight axis or without.
        weight: 100 to 900; nothing changes where the font has no such axis.
        letters: what it is to draw; letters that it lacks are left out.

    Returns:
        TrueType, the same bytes for the same arguments.
    """
    face = TTFont(io.BytesIO(font), recalcTimestamp=False)
    for table in _UNUSED & set(face.keys()):
        del face[table]
    options = Options()
    options.hinting = False
    options.notdef_outline = True
    subsetter = Subsetter(options)
    subsetter.populate(text=letters)
    subsetter.subset(face)
    if "fvar" in face:
        axes = {axis.axisTag: axis.defaultValue for axis in face["fvar"].axes}
        instancer.instantiateVariableFont(
            face, {**axes, **({_WEIGHT: weight} if _WEIGHT in axes else {})}, inplace=True
        )
    for record in face["name"].names:
        if record.nameID == _POSTSCRIPT_NAME:
            # The letters are part of the name: the library that embeds fonts knows them again by it, and
            # would take one cut for another document.
            record.string = f"{record.toUnicode()}-{weight}-{hashlib.sha256(letters.encode()).hexdigest()[:8]}"
    out = io.BytesIO()
    face.save(out)
    return out.getvalue()
