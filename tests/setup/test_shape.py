"""The shape of the code: no function that asks for too much or does too much at once."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
ROOMS = (
    "model", "standing", "context", "dosing", "cases", "household", "desk", "events", "rehearsal",
)  # fmt: skip
"""The rooms of one event, from the door to its effects."""
MOST_PARAMETERS, MOST_LINES, LONGEST_FILE = 10, 100, 450


@cache
def _tree(path: Path) -> ast.Module:
    return ast.parse(path.read_text(encoding="utf-8"))


def _functions(path: Path) -> Iterator[ast.FunctionDef | ast.AsyncFunctionDef]:
    for node in ast.walk(_tree(path)):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
            yield node


def _parameters(function: ast.FunctionDef | ast.AsyncFunctionDef) -> int:
    asked = function.args
    named = [*asked.posonlyargs, *asked.args, *asked.kwonlyargs]
    return sum(one.arg not in ("self", "cls") for one in named)


@pytest.mark.parametrize("room", ROOMS)
def test_functions_and_files_are_small(room: str) -> None:
    wrong: list[str] = []
    for path in sorted((ROOT / "bot" / room).rglob("*.py")):
        where = path.relative_to(ROOT).as_posix()
        if (long := len(path.read_text(encoding="utf-8").splitlines())) > LONGEST_FILE:
            wrong.append(f"{where} has {long} lines")
        for function in _functions(path):
            lines = (function.end_lineno or function.lineno) - function.lineno + 1
            if _parameters(function) > MOST_PARAMETERS:
                wrong.append(f"{where}: {function.name} has {_parameters(function)} parameters")
            if lines > MOST_LINES:
                wrong.append(f"{where}: {function.name} has {lines} lines")
    assert wrong == []


def test_a_message_to_a_household_is_built_where_the_gate_is() -> None:
    """Outgoing messages are made by the effects alone; the gate turns what is told into them."""
    makers = {
        path.relative_to(ROOT / "bot").as_posix()
        for path in sorted((ROOT / "bot").rglob("*.py"))
        if any(
            isinstance(node, ast.Call)
            and isinstance(node.func, ast.Name)
            and node.func.id in ("Outgoing", "Say")
            for node in ast.walk(_tree(path))
        )
    }
    assert makers == {"events/bind.py", "household/sheet.py", "model/effects/effects.py"}


WHO = ("patient", "person", "member", "prompt", "case", "case_id", "line_id", "hold_id")
"""Names of what has an id of its own type (``bot/model/ids.py``)."""


def _annotated(path: Path) -> Iterator[tuple[str, ast.expr, int]]:
    for node in ast.walk(_tree(path)):
        if isinstance(node, ast.arg) and node.annotation is not None:
            yield node.arg, node.annotation, node.lineno
        elif isinstance(node, ast.AnnAssign) and isinstance(node.target, ast.Name):
            yield node.target.id, node.annotation, node.lineno


@pytest.mark.parametrize("room", ROOMS)
def test_who_is_meant_is_an_id_and_no_number(room: str) -> None:
    bare = [
        f"{path.relative_to(ROOT)}:{line}: {name}"
        for path in sorted((ROOT / "bot" / room).rglob("*.py"))
        for name, kind, line in _annotated(path)
        if name in WHO
        and {"int", "str"} & {n.id for n in ast.walk(kind) if isinstance(n, ast.Name)}
    ]
    assert not bare, "\n".join(bare)


def test_a_source_is_made_in_one_place() -> None:
    begins = ("message:", "tap:", "picture:", "hospital:")
    made = {
        str(path.relative_to(ROOT))
        for path in sorted((ROOT / "bot").rglob("*.py"))
        for node in ast.walk(_tree(path))
        if isinstance(node, ast.JoinedStr)
        and isinstance(node.values[0], ast.Constant)
        and node.values[0].value in begins
    }
    assert made == {"bot/model/ids.py"}
