"""Each kind of row that falls due is declared once: by the hour, or by the time elapsed."""

from __future__ import annotations

import ast
import importlib
from collections.abc import Iterator
from pathlib import Path

from bot.events.due_kinds import BY_ELAPSED, BY_THE_HOUR

BOT = Path(__file__).parents[2] / "bot"
PLACE = {"Due": 1, "put_due": 2}
"""Which argument of these calls is the kind."""


def test_each_kind_is_declared_once() -> None:
    used = {kind for path in BOT.rglob("*.py") for kind in _kinds(path)}
    assert len(used) > 15
    assert used == BY_ELAPSED | BY_THE_HOUR
    assert not BY_ELAPSED & BY_THE_HOUR


def _kinds(path: Path) -> Iterator[str]:
    """The kinds of the rows that a file puts there, but for those that it only puts off."""
    name = ".".join(path.relative_to(BOT.parent).with_suffix("").parts)
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        match _kind(node):
            case ast.Constant(value=str(kind)):
                yield kind
            case ast.Name(id=named) if named.isupper():
                yield getattr(importlib.import_module(name), named)
            case _:
                continue


def _kind(node: ast.AST) -> ast.expr | None:
    match node:
        case ast.Call(func=ast.Name(id=called), args=args) if called in PLACE:
            return args[PLACE[called]] if len(args) > PLACE[called] else None
        case ast.Call(args=[ast.Constant(value=str(query))], keywords=named):
            puts = query.startswith("due_put")
            return next((one.value for one in named if puts and one.arg == "kind"), None)
        case _:
            return None
