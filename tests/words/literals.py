"""Finds every literal that the app hands to Qt's translation, by reading its source."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple

from tests.words.messages import Message

METHOD, FUNCTION = "tr", "translate"
SENTENCES = {"Sentence", "Phrase"}
"""Calls whose first argument is a template of the context "sentences"."""


class Module(NamedTuple):
    """A module's source.

    Args:
        path: of the file.
        name: dotted.
        tree: its syntax.
    """

    path: Path
    name: str
    tree: ast.Module

    @property
    def note(self) -> str:
        """What the module is for, in one line."""
        return (ast.get_docstring(self.tree) or "").partition("\n")[0]


def modules(app: Path) -> list[Module]:
    """Every module of the app."""
    found = []
    for path in sorted(app.rglob("*.py")):
        name = ".".join(path.relative_to(app.parent).with_suffix("").parts).removesuffix(".__init__")
        found.append(Module(path, name, ast.parse(path.read_text(encoding="utf-8"))))
    return found


def literal(node: ast.AST | None) -> str | None:
    """The text of a literal; None for anything else."""
    return node.value if isinstance(node, ast.Constant) and isinstance(node.value, str) else None


def doors(found: list[Module]) -> dict[tuple[str, str], str]:
    """By module and name: functions that translate literals, with their context; "" where it is the first argument."""
    known = {
        (module.name, name): context for module in found for node in module.tree.body for name, context in _door(node)
    }
    for module in found:
        for node in module.tree.body:
            for one in node.names if isinstance(node, ast.ImportFrom) else ():
                origin = (str(getattr(node, "module", "")), one.name)
                if origin in known:
                    known[module.name, one.asname or one.name] = known[origin]
    return known


def _door(node: ast.stmt) -> Iterator[tuple[str, str]]:
    if isinstance(node, ast.Assign) and isinstance(node.value, ast.Attribute) and node.value.attr == FUNCTION:
        yield ast.unparse(node.targets[0]), ""
    last = node.body[-1] if isinstance(node, ast.FunctionDef) and len(node.args.args) == 1 else None
    call = last.value if isinstance(last, ast.Return) else None
    if isinstance(node, ast.FunctionDef) and isinstance(call, ast.Call) and called(call) == FUNCTION:
        context = literal(call.args[0])
        if context is not None and literal(call.args[1]) is None:
            yield node.name, context


def called(call: ast.Call) -> str:
    """The last name of what is called."""
    return call.func.attr if isinstance(call.func, ast.Attribute) else getattr(call.func, "id", "")


class Use(NamedTuple):
    """A call that translates.

    Args:
        module: where.
        line: where in it.
        context: None where it cannot be known from the source.
        sources: the literals it may be called with; empty where it is called with something else.
        dotted: what it is called on; empty for a plain function.
    """

    module: Module
    line: int
    context: str | None
    sources: tuple[str, ...]
    dotted: str


def uses(module: Module, known: dict[tuple[str, str], str]) -> Iterator[Use]:
    """Every call in a module that translates a literal, or should."""
    yield from _uses(module, module.tree, "", known)


def _uses(module: Module, node: ast.AST, within: str, known: dict[tuple[str, str], str]) -> Iterator[Use]:
    for child in ast.iter_child_nodes(node):
        if isinstance(child, ast.ClassDef):
            yield from _uses(module, child, child.name, known)
            continue
        if isinstance(child, ast.Call):
            use = _use(module, child, within, known)
            if use is not None:
                yield use
        yield from _uses(module, child, within, known)


def _use(module: Module, call: ast.Call, within: str, known: dict[tuple[str, str], str]) -> Use | None:
    name, args = called(call), [*call.args, ast.Constant(None), ast.Constant(None)]
    dotted = ast.unparse(call.func.value) if isinstance(call.func, ast.Attribute) else ""
    context: str | None
    if not dotted and (module.name, name) in known:
        context = known[module.name, name] or literal(args.pop(0))
    elif dotted and name == METHOD:
        context = within if dotted == "self" and within else None
    elif dotted.endswith("QCoreApplication") and name == FUNCTION:
        context = literal(args.pop(0))
    else:
        return None
    return Use(module, call.lineno, context, choices(args[0]), dotted)


def choices(node: ast.AST) -> tuple[str, ...]:
    """The literals that an expression may be; empty where it may be something else."""
    text = literal(node)
    if text is not None:
        return (text,)
    if isinstance(node, ast.IfExp):
        one, other = choices(node.body), choices(node.orelse)
        return one + other if one and other else ()
    return ()


def literals(found: list[Module]) -> list[Message]:
    """All messages that calls of tr() and translate() name."""
    known = doors(found)
    return [
        Message(use.context, source, module.note)
        for module in found
        if module.name.startswith("hearthkey.ui")
        for use in uses(module, known)
        if use.context is not None
        for source in use.sources
    ]


def templates(found: list[Module]) -> list[Message]:
    """All templates of sentences and phrases that stand in calls, or in a name of the same function or module."""
    return [
        Message("sentences", source, module.note)
        for module in found
        if not module.name.startswith("hearthkey.cli") and _makes_sentences(module)
        for function in ast.walk(module.tree)
        if isinstance(function, ast.FunctionDef | ast.Module)
        for call in _own(function)
        if isinstance(call, ast.Call) and called(call) in SENTENCES and call.args
        for source in _of_template(call.args[0], function, module)
        if source
    ]


def _makes_sentences(module: Module) -> bool:
    return any(isinstance(node, ast.Call) and called(node) in SENTENCES for node in ast.walk(module.tree))


def _own(function: ast.AST) -> Iterator[ast.AST]:
    for child in ast.iter_child_nodes(function):
        if not isinstance(child, ast.FunctionDef):
            yield child
            yield from _own(child)


def _of_template(node: ast.AST, function: ast.AST, module: Module) -> tuple[str, ...]:
    """The literals that a template may be: written there, or in what its names stand for."""
    if isinstance(node, ast.IfExp):
        return _of_template(node.body, function, module) + _of_template(node.orelse, function, module)
    while isinstance(node, ast.Subscript):
        node = node.value
    if not isinstance(node, ast.Name):
        return choices(node)
    found: list[str] = []
    for place in (function, module.tree):
        for value in [value for one in _own(place) if (value := _given(one, node.id)) is not None]:
            if isinstance(value, ast.Name | ast.IfExp | ast.Subscript):
                found += _of_template(value, function, module)
            found += [text for part in _whole(value) if (text := literal(part)) is not None and " " in text]
            found += [text for text in choices(value) if text not in found]
        if found:
            break
    return tuple(found)


def _whole(value: ast.AST) -> Iterator[ast.AST]:
    """What stands in a value, but for the pieces of a text that is put together: `tables` has it whole."""
    yield value
    for child in () if isinstance(value, ast.JoinedStr) else ast.iter_child_nodes(value):
        yield from _whole(child)


def _given(node: ast.AST, name: str) -> ast.AST | None:
    """What a node gives a name: by assigning it, or by going through it in a loop."""
    if isinstance(node, ast.Assign) and name in {
        one.id for target in node.targets for one in ast.walk(target) if isinstance(one, ast.Name)
    }:
        return node.value
    if isinstance(node, ast.AnnAssign | ast.comprehension) and isinstance(node.target, ast.Name):
        given = node.value if isinstance(node, ast.AnnAssign) else node.iter
        return given if node.target.id == name else None
    return None
