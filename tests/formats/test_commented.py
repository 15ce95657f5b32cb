"""Settings files in which no line stands without its reason."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from hearthkey.formats.commented import WIDTH, Block, Line, Note, Part, write

WORDS = st.lists(st.text("abcdefgh.,", min_size=1, max_size=12), min_size=1, max_size=60).map(" ".join)


def test_the_whole_form() -> None:
    """If this fails, files that the householder has compared before look different for no reason."""
    parts: list[Part] = [
        Note("For the oven."),
        Line("It is on.", "oven = on"),
        Note("It may be hot.", "hot = yes"),
        Block("Its door.", "door", [Line("Shut.", "shut"), Block("Handle.", "handle", [Line("Left.", "left")])]),
    ]
    assert write(parts) == (
        "# For the oven.\n\n# It is on.\noven = on\n\n# It may be hot.\n# hot = yes\n\n# Its door.\ndoor {\n"
        "    # Shut.\n    shut\n\n    # Handle.\n    handle {\n        # Left.\n        left\n    }  # handle\n"
        "}  # door\n"
    )


@given(st.lists(st.tuples(WORDS, st.sampled_from(["a = 1", "b = 2"])), min_size=1, max_size=8))
def test_every_line_has_its_reason_above(lines: list[tuple[str, str]]) -> None:
    """If this fails, somebody reads a line and cannot tell what it is for."""
    text = write(Line(told, setting) for told, setting in lines)
    written = text.split("\n")
    settings = [number for number, line in enumerate(written) if line and not line.startswith("#")]
    assert [written[number] for number in settings] == [setting for _, setting in lines]
    assert all(written[number - 1].startswith("# ") for number in settings)
    assert max(map(len, written)) <= WIDTH
    comments = [line.removeprefix("# ") for line in written if line.startswith("#")]
    assert " ".join(comments).split() == " ".join(told for told, _ in lines).split()
