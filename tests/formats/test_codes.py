"""Codes: frames that fit, join in any order, and name what is wrong with them."""

from __future__ import annotations

import re
import zlib

import pytest
from hypothesis import given
from hypothesis import strategies as st
from qrcode.constants import ERROR_CORRECT_M
from qrcode.main import QRCode
from qrcode.util import QRData

from hearthkey.core.errors import Bug, Refused
from hearthkey.formats import base45, bundle_file, codes
from tests.formats.practice import INLINE, noise

DATA = noise(3000)
FRAMES = codes.frames(DATA)
ALPHANUMERIC = re.compile(r"[0-9A-Z $%*+\-./:]+")


def resealed(packed: bytes) -> list[str]:
    """Frame already compressed bytes as a hostile writer would: every check in order."""
    text = base45.encode(packed)
    pieces = [text[at : at + 900] for at in range(0, len(text), 900)]
    name = codes._name_of(packed)  # noqa: SLF001 - the test plays a writer that is not ours
    return [codes._written(name, index, len(pieces), piece) for index, piece in enumerate(pieces, 1)]  # noqa: SLF001 - as above


def refusal(texts: list[str]) -> Refused:
    """Return what `join` refuses these texts with."""
    with pytest.raises(Refused) as refused:
        codes.join(texts)
    return refused.value


@given(st.binary(max_size=4000), st.randoms(use_true_random=False))
def test_frames_join_in_any_order_with_repeats(data: bytes, dice: object) -> None:
    """Broken if it fails: a householder has to photograph the codes in order, each once."""
    texts = [*codes.frames(data), *codes.frames(data)[:2]]
    dice.shuffle(texts)  # type: ignore[attr-defined]  # hypothesis hands out a random.Random, a name banned here
    assert codes.join(texts) == data


def test_frames_fit_and_are_balanced() -> None:
    """Broken if it fails: a code grows past version 20, or the last one is a nuisance of a few characters."""
    lengths = [len(frame) for frame in FRAMES]
    assert max(lengths) <= codes.CAPACITY
    assert max(lengths) - min(lengths) <= 1
    assert all(ALPHANUMERIC.fullmatch(frame) for frame in FRAMES)


def test_capacity_is_that_of_version_20_m() -> None:
    """Broken if it fails: CAPACITY is not what ISO/IEC 18004 table 7 says, 970 for version 20 at level M."""

    def fitted(length: int) -> int:
        code = QRCode(version=20, error_correction=ERROR_CORRECT_M)
        code.add_data(QRData(b"A" * length, mode=2))
        code.best_fit(start=20)
        return int(code.version)

    assert fitted(970) == 20
    assert fitted(971) == 21


def test_a_broad_bundle_takes_few_codes() -> None:
    """Broken if it fails: handing over by codes has become a chore."""
    assert len(codes.frames(bundle_file.write(INLINE))) <= 9


@pytest.mark.parametrize("frame", [FRAMES[0], FRAMES[-1], codes.frames(b"")[0]], ids=["first", "last", "empty"])
def test_matrix_has_the_quiet_zone_and_the_size(frame: str) -> None:
    """Broken if it fails: readers do not find the code (ISO/IEC 18004 section 6.3.8, 17 + 4 modules a version)."""
    matrix = codes.matrix(frame)
    side = len(matrix)
    assert all(len(row) == side for row in matrix)
    assert side <= 17 + 4 * 20 + 8
    assert (side - 8 - 17) % 4 == 0
    edge = [*matrix[:4], *matrix[-4:], *((*row[:4], *row[-4:]) for row in matrix)]
    assert not any(module for row in edge for module in row)
    assert matrix[4][4:11] == (True,) * 7


def test_the_fullest_frame_is_version_20() -> None:
    """Broken if it fails: a full frame is laid out in bytes, not in the alphanumeric mode, and grows."""
    (full,) = codes.frames(noise(617))  # 617 and zlib's 11 are 628 octets, which are 942 characters, and the head 28
    assert len(full) == 970
    assert len(codes.matrix(full)) == 97 + 8


@pytest.mark.parametrize("text", ["", "HELLO", "hk1/", FRAMES[0] + "A" * 970])
def test_matrix_takes_frames_only(text: str) -> None:
    """Broken if it fails: something that no reader of ours joins gets drawn."""
    with pytest.raises(Bug, match="frame-unfit"):
        codes.matrix(text)


def test_a_line_end_of_the_reader_is_taken_off() -> None:
    """Broken if it fails: the output of a reading program, line by line, is called damaged."""
    assert codes.join([frame + "\r\n" for frame in FRAMES]) == DATA


def test_missing_frames_are_named() -> None:
    """Broken if it fails: the householder photographs all codes again for one that was skipped."""
    error = refusal([FRAMES[0], FRAMES[2]])
    assert error.code == "codes-missing"
    assert error.facts["count"] == len(FRAMES)
    assert error.facts["missing"] == tuple(str(n) for n in range(1, len(FRAMES) + 1) if n not in {1, 3})


def test_frames_of_another_bundle_are_named() -> None:
    """Broken if it fails: Tomasz's tablet gets pieces of Ines's phone."""
    other = codes.frames(noise(3000, "other"))
    error = refusal([FRAMES[0], other[1], *FRAMES[1:]])
    assert error.code == "codes-foreign"
    assert error.facts["frames"] == ("2",)
    assert len(error.facts["bundles"]) == 2  # type: ignore[arg-type]  # a tuple, as the docstring says


@pytest.mark.parametrize("at", [0, 4, 13, 16, 20, 30, 400])
def test_a_changed_character_is_found_anywhere(at: int) -> None:
    """Broken if it fails: a misread character reaches the key."""
    frame = FRAMES[1]
    changed = frame[:at] + ("7" if frame[at] != "7" else "8") + frame[at + 1 :]
    error = refusal([FRAMES[0], changed, *FRAMES[2:]])
    assert error.code in {"codes-damaged", "codes-not-ours"}
    assert error.facts["frames"] == ("2",)


@pytest.mark.parametrize("text", ["", "QUINCE", "HK", "hk1/abc", "\u202eHK1/", "HK1" * 100000])
def test_what_is_no_frame_is_named(text: str) -> None:
    """Broken if it fails: another code on the kitchen wall is taken for a damaged one."""
    error = refusal([*FRAMES, text])
    assert error.code == "codes-not-ours"
    assert error.facts["frames"] == (str(len(FRAMES) + 1),)


def test_frames_of_a_newer_app_are_told() -> None:
    """Broken if it fails: codes of a newer app are called damaged, and nobody thinks of updating."""
    assert refusal([FRAMES[0].replace("HK1", "HK2")]).code == "codes-newer"


def test_nothing_read_is_told() -> None:
    """Broken if it fails: an empty picture ends in a fault of the app."""
    assert refusal([]).code == "codes-none"


@pytest.mark.parametrize(("index", "count"), [(0, 3), (4, 3), (1, 0), (2, 4)])
def test_numbers_that_contradict_are_refused(index: int, count: int) -> None:
    """Broken if it fails: frames that cannot be of one set are joined."""
    name = FRAMES[0].split("/")[1]
    odd = codes._written(name, index, count, "ABC")  # noqa: SLF001 - the test plays a writer that is not ours
    assert refusal([*FRAMES, odd]).code == "codes-damaged"


def test_swapped_bodies_are_refused() -> None:
    """Broken if it fails: two frames whose checks fit but whose pieces changed places give other bytes."""
    bodies = [frame.split("/", 5)[5] for frame in FRAMES]
    bodies[0], bodies[1] = bodies[1], bodies[0]
    name = FRAMES[0].split("/")[1]
    forged = [codes._written(name, at, len(bodies), body) for at, body in enumerate(bodies, 1)]  # noqa: SLF001 - as above
    assert refusal(forged).code == "codes-damaged"


def test_whole_data_under_the_name_of_another_bundle_is_refused() -> None:
    """Broken if it fails: the name on a frame is taken on trust, and tells nothing apart."""
    text = base45.encode(zlib.compress(b"whole"))
    assert refusal([codes._written("00000000", 1, 1, text)]).code == "codes-damaged"  # noqa: SLF001 - as above


def test_a_bomb_is_not_unpacked() -> None:
    """Broken if it fails: a few codes fill the memory: 64 MiB of zeros pack into 64 KiB, 4 MiB into five codes."""
    error = refusal(resealed(zlib.compress(bytes(4 << 20), 9)))
    assert error.code == "codes-too-large"
    assert error.facts["limit"] == 1 << 20


@pytest.mark.parametrize("packed", [zlib.compress(DATA)[:-6], zlib.compress(DATA) + b"more", b"no zlib"])
def test_what_does_not_unpack_cleanly_is_refused(packed: bytes) -> None:
    """Broken if it fails: cut or lengthened data passes for a bundle."""
    assert refusal(resealed(packed)).code == "codes-damaged"


def test_too_much_is_refused_before_it_is_drawn() -> None:
    """Broken if it fails: a hundredth code, which its number cannot name."""
    with pytest.raises(Refused) as many:
        codes.frames(noise(70000))
    assert many.value.code == "codes-too-many"
    with pytest.raises(Refused) as large:
        codes.frames(bytes((1 << 20) + 1))
    assert large.value.code == "codes-too-large"
