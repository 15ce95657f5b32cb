"""Finds every place of the app that raises an error with a code, and the facts that it gives."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path

APP = Path(__file__).parents[2] / "app" / "hearthkey"
FAMILIES = {"Refused": "Refused", "NotTrusted": "Refused", "Unavailable": "Unavailable", "Bug": "Bug"}
_CODE = re.compile(r"[a-z0-9]+(?:-[a-z0-9]+)+")


@dataclass(frozen=True)
class Site:
    """One call.

    Args:
        where: file and line.
        name: what is called.
        codes: the codes it can be called with.
        facts: the facts it always gives.
    """

    where: str
    name: str
    codes: frozenset[str]
    facts: frozenset[str]


@cache
def modules() -> dict[Path, ast.Module]:
    """Parse the app."""
    return {path: ast.parse(path.read_bytes()) for path in sorted(APP.rglob("*.py"))}


def calls(*names: str) -> Iterator[Site]:
    """Every call of something of these names whose first argument is, or comes from, a code."""
    for path, module in modules().items():
        for scope in [module, *(node for node in ast.walk(module) if isinstance(node, ast.FunctionDef))]:
            for node in _own(scope):
                if isinstance(node, ast.Call) and node.args and _called(node) in names:
                    codes = _codes(node.args[0], scope, module)
                    facts = frozenset(one.arg for one in node.keywords if one.arg is not None)
                    yield Site(f"{path.relative_to(APP)}:{node.lineno}", _called(node), codes, facts)


def _own(scope: ast.AST) -> Iterator[ast.AST]:
    """Everything in a scope that is not in a function within it."""
    for node in ast.iter_child_nodes(scope):
        if not isinstance(node, ast.FunctionDef):
            yield node
            yield from _own(node)


def _called(call: ast.Call) -> str:
    if isinstance(call.func, ast.Attribute):
        return call.func.attr
    return call.func.id if isinstance(call.func, ast.Name) else ""


def _codes(given: ast.expr, scope: ast.AST, module: ast.Module, seen: frozenset[str] = frozenset()) -> frozenset[str]:
    """The codes that an expression can stand for: written there, or in what its names were set to."""
    if isinstance(given, ast.Constant):
        return frozenset({given.value}) if isinstance(given.value, str) else frozenset()
    found: set[str] = set()
    for node in ast.walk(given):
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and _CODE.fullmatch(node.value):
            found.add(node.value)
        elif isinstance(node, ast.Name) and node.id not in seen:
            for value in _set_to(node.id, scope, module):
                found |= {code for code in _codes(value, scope, module, seen | {node.id}) if _CODE.fullmatch(code)}
    return frozenset(found)


def _set_to(name: str, scope: ast.AST, module: ast.Module) -> Iterator[ast.expr]:
    for node in [*ast.walk(scope), *module.body]:
        if isinstance(node, ast.Assign) and any(isinstance(one, ast.Name) and one.id == name for one in node.targets):
            yield node.value
