"""Pictures of codes: what is drawn is what is read, and strangers' pictures are handled with care."""

from __future__ import annotations

import struct
import xml.etree.ElementTree as ET
import zlib
from io import BytesIO

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image

from hearthkey.adapters import pictures
from hearthkey.core.errors import Refused
from hearthkey.formats import codes
from tests.formats.practice import noise

FRAMES = codes.frames(noise(1800))
MATRIX = codes.matrix(FRAMES[0])
SIDE = len(MATRIX)
DARK, LIGHT = (0x10, 0x18, 0x1C), (0xFF, 0xFF, 0xFF)
PNG = pictures.png(MATRIX)


def refusal(data: bytes) -> Refused:
    """Return what `read_codes` refuses the data with."""
    with pytest.raises(Refused) as refused:
        pictures.read_codes(data)
    return refused.value


def saved(picture: Image.Image, form: str, **how: object) -> bytes:
    """Write a picture into memory."""
    written = BytesIO()
    picture.save(written, form, **how)
    return written.getvalue()


def chunk(name: bytes, content: bytes) -> bytes:
    """One chunk of a PNG file (PNG specification, section 5.3)."""
    return struct.pack(">I", len(content)) + name + content + struct.pack(">I", zlib.crc32(name + content))


@pytest.mark.parametrize("scale", [1, 4, 8])
def test_png_shows_the_modules_dark_on_light_with_the_quiet_zone(scale: int) -> None:
    """Broken if it fails: readers do not find the code, pixel by pixel (ISO/IEC 18004 section 6.3.8)."""
    picture = Image.open(BytesIO(pictures.png(MATRIX, scale)))
    assert picture.size == (SIDE * scale, SIDE * scale)
    seen = picture.convert("RGB")
    for y in range(SIDE):
        for x in range(SIDE):
            dark = seen.getpixel((x * scale + scale // 2, y * scale + scale // 2)) == DARK
            assert dark == MATRIX[y][x]
    edge = 4 * scale
    across = seen.width
    bands = [(0, 0, across, edge), (0, across - edge, across, across), (0, 0, edge, across)]
    for band in [*bands, (across - edge, 0, across, across)]:
        assert seen.crop(band).getcolors() == [((band[2] - band[0]) * (band[3] - band[1]), LIGHT)]


def test_png_has_one_bit_a_pixel_and_two_colours() -> None:
    """Broken if it fails: pictures of codes grow eightfold, or a viewer smooths them with greys."""
    depth, colour = PNG[24], PNG[25]
    assert (depth, colour) == (1, 3)
    assert PNG[PNG.index(b"PLTE") + 4 :][:6] == bytes(DARK + LIGHT)
    assert len(PNG) < 6000


def test_svg_draws_the_same_modules() -> None:
    """Broken if it fails: the printed code is another one than the code on screen."""
    root = ET.fromstring(pictures.svg(MATRIX))  # noqa: S314 - drawn by this app a moment ago
    assert root.get("viewBox") == f"0 0 {SIDE} {SIDE}"
    assert root.get("shape-rendering") == "crispEdges"
    path = root.find("{http://www.w3.org/2000/svg}path")
    ground = root.find("{http://www.w3.org/2000/svg}rect")
    assert path is not None
    assert ground is not None
    assert (path.get("fill"), ground.get("fill")) == ("#10181C", "#FFFFFF")
    drawn = [[False] * SIDE for _ in range(SIDE)]
    for run in (path.get("d") or "").split("M")[1:]:
        corner, rest = run.split("h", 1)
        x, y = map(int, corner.split(" "))
        for at in range(x, x + int(rest.split("v")[0])):
            drawn[y][at] = True
    assert tuple(tuple(row) for row in drawn) == MATRIX


def test_svg_has_a_title_that_cannot_break_out() -> None:
    """Broken if it fails: a screen reader says nothing, or a device's name becomes markup."""
    root = ET.fromstring(pictures.svg(MATRIX, title="Code 1 of 2, <Ines & Tomasz>"))  # noqa: S314 - as above
    title = root.find("{http://www.w3.org/2000/svg}title")
    assert title is not None
    assert title.text == "Code 1 of 2, <Ines & Tomasz>"
    assert root.get("aria-labelledby") == title.get("id")


@pytest.mark.parametrize("frame", FRAMES, ids=range(1, len(FRAMES) + 1))
@pytest.mark.parametrize("scale", [2, 8])
def test_what_is_drawn_is_read(frame: str, scale: int) -> None:
    """Broken if it fails: a bundle that left as codes cannot come back."""
    assert pictures.read_codes(pictures.png(codes.matrix(frame), scale)) == (frame,)


def test_photographs_are_read() -> None:
    """Broken if it fails: a picture taken by hand (JPEG, turned, greys, two codes) needs the original instead."""
    one, two = (Image.open(BytesIO(pictures.png(codes.matrix(frame), 5))).convert("L") for frame in FRAMES[:2])
    sheet = Image.new("L", (one.width + two.width + 60, one.height + 80), 230)
    sheet.paste(one, (20, 30))
    sheet.paste(two, (one.width + 40, 30))
    turned = sheet.rotate(4, resample=Image.Resampling.BICUBIC, expand=True, fillcolor=200)
    assert set(pictures.read_codes(saved(turned, "JPEG", quality=70))) == set(FRAMES[:2])


def test_a_code_on_a_clear_ground_is_read() -> None:
    """Broken if it fails: a picture with a transparent ground turns black."""
    clear = Image.new("RGBA", (SIDE * 4, SIDE * 4), (0, 0, 0, 0))
    modules = Image.open(BytesIO(pictures.png(MATRIX, 4))).convert("L").point(lambda grey: 255 if grey < 128 else 0)
    clear.putalpha(modules)
    assert pictures.read_codes(saved(clear, "PNG")) == (FRAMES[0],)


def test_a_picture_without_codes_gives_none() -> None:
    """Broken if it fails: a holiday picture is an error instead of an empty answer."""
    assert pictures.read_codes(saved(Image.new("RGB", (60, 40), "white"), "PNG")) == ()


def test_a_picture_of_too_many_pixels_is_refused_before_it_is_unpacked() -> None:
    """Broken if it fails: a picture of a few bytes fills the memory (20,000 by 20,000 pixels declared)."""
    head = struct.pack(">IIBBBBB", 20000, 20000, 8, 2, 0, 0, 0)
    bomb = (
        b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + chunk(b"IDAT", zlib.compress(bytes(4000))) + chunk(b"IEND", b"")
    )
    error = refusal(bomb)
    assert (error.code, error.facts["pixels"]) == ("picture-too-large", 400_000_000)


def test_a_picture_of_too_many_bytes_is_refused_unread() -> None:
    """Broken if it fails: 200 MB are handed to a decoder."""
    error = refusal(PNG + bytes(20 << 20))
    assert (error.code, error.facts["limit"]) == ("picture-too-large", 20 << 20)


def test_a_bomb_in_a_text_chunk_is_refused() -> None:
    """Broken if it fails: compressed comments fill the memory."""
    at = PNG.index(b"IDAT") - 4
    text = chunk(b"zTXt", b"note\x00\x00" + zlib.compress(bytes(64 << 20), 9))
    assert refusal(PNG[:at] + text + PNG[at:]).code == "picture-unreadable"


@pytest.mark.parametrize("form", ["GIF", "BMP", "TIFF", "WEBP"])
def test_other_kinds_of_pictures_are_refused(form: str) -> None:
    """Broken if it fails: decoders that nobody asked for get a stranger's bytes."""
    assert refusal(saved(Image.new("RGB", (30, 30)), form)).code == "picture-unreadable"


@pytest.mark.parametrize("data", [b"", b"\x89PNG\r\n\x1a\n", b"\xff\xd8\xff", PNG[:100], b"<svg/>"])
def test_what_is_no_picture_is_refused(data: bytes) -> None:
    """Broken if it fails: a cut file ends in a fault of the app."""
    assert refusal(data).code == "picture-unreadable"


JPEG = saved(Image.open(BytesIO(PNG)).convert("L").resize((200, 200)), "JPEG")


@settings(max_examples=120)
@given(st.sampled_from([PNG, JPEG]), st.integers(0, 3000), st.integers(1, 40), st.binary(max_size=30))
def test_no_damage_ends_in_anything_but_a_refusal(whole: bytes, at: int, length: int, instead: bytes) -> None:
    """Broken if it fails: a damaged picture stops the app instead of being named."""
    damaged = whole[:at] + instead + whole[at + length :]
    try:
        found = pictures.read_codes(damaged)
    except Refused as error:
        assert error.code.startswith("picture-")  # noqa: PT017 - both ends are fine, and are told apart here
    else:
        assert found in {(), (FRAMES[0],)}
