"""Every word that the window shows goes through Qt's translation, as a literal that is found for translators."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator

import pytest

from tests.words.extracting import ROOT
from tests.words.literals import METHOD, SENTENCES, Module, called, doors, modules, uses

APP = modules(ROOT / "app" / "hearthkey")
WINDOW = [one for one in APP if one.name.startswith("hearthkey.ui") and ".gallery" not in one.name]

PASSES_ON = {"hearthkey.ui.text", "hearthkey.ui.dates", "hearthkey.ui.board.life", "hearthkey.ui.strip_words"}
PASSES_ON |= {"hearthkey.ui.lost.words", "hearthkey.ui.pages.closed_words", "hearthkey.ui.drawer.template_desk"}
PASSES_ON |= {"hearthkey.ui.pages.household_form", "hearthkey.ui.pages.told_cards"}
"""They have a function that hands literals of others on to `translate`."""

STEPS = ("hearthkey.ui.board.model:", "hearthkey.ui.board.placing:", "hearthkey.ui.board.laying:")
"""They translate the values of `Step`, which `tests.words.tables` lists."""

SHOWN = {
    "setText", "setAccessibleName", "setAccessibleDescription", "setPlaceholderText", "setToolTip", "setWindowTitle",
    "setTitle", "setLabelText", "setStatusTip", "addAction", "addItem", "drawText", "announce", "say", "_say",
    "speak", "explain", "entitle", "recall", "tell", "trouble", "advise", "Label", "OneLine", "Prose", "Voice",
    "Button", "Choice", "Combo", "Labelled", "Question", "Figure", "Facts", "Fold", "Line", "Event", "Lit", "Fact",
    "HeadText", "QAction", "QCheckBox", "QLabel", "QPushButton",
}  # fmt: skip
"""Calls that put text before somebody."""

TRANSLATES = {METHOD, "_tr", "translate", "said", "spoken", "caution", "mended", "written"}

NO_WORDS = {
    "Esc", "Hearthkey", "RSA-3072", "broad", "compact", "suite-384", "act", "ink", "ink2", "rule", "raised",
    "home.quince.example", "198.51.100.0/24", "198.51.100.1", "quince.example", "01 ABCDE FGHIJ …",
}  # fmt: skip
"""Names that are the same everywhere, colours of the tokens, samples of what is typed."""

KEYWORDS = {"color", "objectName", "key"}
WORD = re.compile(r"[^\W\d_]{2,}")


def _shown_literals(module: Module) -> Iterator[tuple[int, str]]:
    for node in ast.walk(module.tree):
        if isinstance(node, ast.Call) and called(node) in SHOWN:
            args = [*node.args, *(one.value for one in node.keywords if one.arg not in KEYWORDS)]
            if called(node) in {"tell", "Fact"}:  # their first argument is the key of a row
                args = args[1:]
            for arg in args:
                yield from _literals(arg)


def _literals(node: ast.AST) -> Iterator[tuple[int, str]]:
    if isinstance(node, ast.Call):
        if called(node) in {"format", "join"} and isinstance(node.func, ast.Attribute):
            yield from _literals(node.func.value)
        return
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        if WORD.search(node.value) and node.value not in NO_WORDS:
            yield node.lineno, node.value
        return
    if isinstance(node, ast.Compare | ast.Subscript | ast.Lambda | ast.Attribute):
        return
    for child in ast.iter_child_nodes(node):
        if not (isinstance(node, ast.IfExp) and child is node.test):
            yield from _literals(child)


def test_no_word_is_shown_untranslated() -> None:
    """A text that stays English in a German window would go unseen by whoever writes it."""
    found = [f"{one.name}:{line}: {text!r}" for one in WINDOW for line, text in _shown_literals(one)]
    assert not found, "\n".join(found)


def test_only_literals_are_translated() -> None:
    """A message that is put together before it is translated is in nobody's list of messages."""
    known = doors(APP)
    found = [
        f"{one.name}:{use.line}: {use.dotted or 'a function'} with {use.sources or 'no literal'}"
        for one in WINDOW
        if one.name not in PASSES_ON
        for use in uses(one, known)
        if use.context is None or not use.sources
    ]
    assert not [one for one in found if not one.startswith(STEPS)]


def test_whoever_is_inherited_from_names_its_context() -> None:
    """`QObject.tr` asks under the name of the object's own class: what a base class says would stay English."""
    bases = {
        ast.unparse(base).rpartition(".")[2]
        for one in WINDOW
        for node in ast.walk(one.tree)
        if isinstance(node, ast.ClassDef)
        for base in node.bases
    }
    known = doors(APP)
    found = [
        f"{one.name}:{use.line}: {use.context}"
        for one in WINDOW
        for use in uses(one, known)
        if use.dotted == "self" and use.context in bases
    ]
    assert not found, "\n".join(found)


def _pieces(module: Module) -> Iterator[str]:
    """Translated pieces that are put together by hand: with words between them, or with a plus."""
    for node in ast.walk(module.tree):
        if isinstance(node, ast.JoinedStr):
            plain = "".join(str(part.value) for part in node.values if isinstance(part, ast.Constant))
            if WORD.search(plain) and any(_translates(part) for part in ast.walk(node)):
                yield f"{module.name}:{node.lineno}: {ast.unparse(node)}"
        elif (
            isinstance(node, ast.Call)
            and called(node) == METHOD
            and isinstance(node.args[0], ast.JoinedStr | ast.BinOp)
        ):
            yield f"{module.name}:{node.lineno}: {ast.unparse(node)}"


def _made_up(node: ast.AST) -> bool:
    return isinstance(node, ast.JoinedStr | ast.BinOp)


def _translates(node: ast.AST) -> bool:
    return isinstance(node, ast.Call) and called(node) in TRANSLATES


def test_no_sentence_is_put_together_from_pieces() -> None:
    """Another language has another order of words."""
    found = [piece for one in WINDOW for piece in _pieces(one)]
    assert not found, "\n".join(found)


@pytest.mark.parametrize("one", [one for one in APP if one.name.startswith("hearthkey.core")], ids=lambda one: one.name)
def test_sentences_are_made_of_literals(one: Module) -> None:
    """A template that is put together while the app runs cannot be in any list of messages."""
    found = [
        f"{one.name}:{node.lineno}: {ast.unparse(node)}"
        for node in ast.walk(one.tree)
        if isinstance(node, ast.Call) and called(node) in SENTENCES and node.args
        if _made_up(node.args[0])
    ]
    assert not found, "\n".join(found)


MAKES_SENTENCES = {"hearthkey.ui.drawer.device_words"}
"""Its days are facts of sentences, which are written in the window's language with them."""


def test_days_are_written_in_the_language_of_the_window() -> None:
    """A day of a sentence is English until the sentence is said; put into other text by hand it would stay so."""
    found = [
        f"{one.name}: {name.name}"
        for one in WINDOW
        if one.name not in MAKES_SENTENCES
        for node in ast.walk(one.tree)
        if isinstance(node, ast.ImportFrom) and str(node.module).startswith("hearthkey.core.sentences.")
        for name in node.names
        if name.name in {"day", "short_day", "weekday"}
    ]
    assert not found
