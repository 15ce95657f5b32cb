"""A phone's camera before a screen: tilted, turned, out of focus, in uneven light, with noise."""

from __future__ import annotations

import random
from collections.abc import Iterator

from PIL import Image, ImageDraw, ImageFilter

from hearthkey.formats.codes import Matrix

FRAME = 600
"""Pixels of a shot's side: a finder's picture, not the sensor's."""
_SHARE = 0.62
"""How much of the frame's side the code takes when somebody holds a phone over it."""


def screen(matrix: Matrix, pixels: int = 8) -> Image.Image:
    """The code as a screen shows it, on a dark desk."""
    side = len(matrix) * pixels
    shown = Image.new("L", (side, side), 255)
    draw = ImageDraw.Draw(shown)
    for y, row in enumerate(matrix):
        for x, dark in enumerate(row):
            if dark:
                draw.rectangle((x * pixels, y * pixels, (x + 1) * pixels - 1, (y + 1) * pixels - 1), fill=16)
    around = Image.new("L", (side + 8 * pixels, side + 8 * pixels), 60)
    around.paste(shown, (4 * pixels, 4 * pixels))
    return around


def shots(shown: Image.Image, count: int, seed: str) -> Iterator[Image.Image]:
    """So many shots of it, no two alike; the same ones for the same seed."""
    dice = random.Random(seed)  # noqa: S311 - a camera's hand, no secret
    for _ in range(count):
        yield _shot(shown, dice)


def _shot(shown: Image.Image, dice: random.Random) -> Image.Image:
    side = shown.width
    size = side / (_SHARE * dice.uniform(0.85, 1.15))
    left, top = (side - size) * dice.uniform(0.35, 0.65), (side - size) * dice.uniform(0.35, 0.65)

    def corner(x: float, y: float) -> tuple[float, float]:
        return left + x * size + dice.uniform(-0.03, 0.03) * size, top + y * size + dice.uniform(-0.03, 0.03) * size

    corners = [*corner(0, 0), *corner(0, 1), *corner(1, 1), *corner(1, 0)]
    turned = shown.rotate(dice.uniform(-12, 12), Image.Resampling.BILINEAR, fillcolor=60)
    seen = turned.transform((FRAME, FRAME), Image.Transform.QUAD, corners, Image.Resampling.BILINEAR, fillcolor=60)
    light = Image.linear_gradient("L").rotate(dice.choice((0, 90, 180, 270))).resize((FRAME, FRAME))
    lit = Image.blend(seen, Image.composite(seen, Image.new("L", seen.size, 235), light), dice.uniform(0.0, 0.35))
    soft = lit.filter(ImageFilter.GaussianBlur(dice.uniform(0.6, 2.0)))
    noise = Image.frombytes("L", (FRAME, FRAME), dice.randbytes(FRAME * FRAME))
    return Image.blend(soft, noise, dice.uniform(0.03, 0.12))
