"""What pydantic found wrong, in plain words and at its line."""

from __future__ import annotations

import difflib
import re
from collections.abc import Iterable
from typing import Any, Final

from pydantic import BaseModel, ValidationError

from bot.model.vocabulary import TOPICS

from .fields import keys_at
from .problem import Problem
from .yaml_tree import Listing, Mapping, Node, Place, Scalar, at_hand, nodes, short

MOST: Final = 50
"""Problems told of one file; after so many it is surely the wrong file."""

Path = tuple[str | int, ...]


def explain(
    error: ValidationError, root: Mapping, name: str, model: type[BaseModel]
) -> list[Problem]:
    """Every problem once, each at the key or value that must be mended."""
    merged: dict[Path, list[tuple[str, str, Place]]] = {}
    for detail in error.errors(include_url=False, include_input=False):
        path, node, rest = _follow(root, detail["loc"])
        if len(merged) >= MOST and path not in merged:
            break
        kind = detail["type"]
        if kind == "missing":
            path = (*path, *rest[-1:])
        place, what, mend = _say(kind, detail, path, node, rest, root, model)
        found = merged.setdefault(path, [])
        if all(what != said for said, _, _ in found):
            found.append((what, mend, place))
    for path in [path for path in merged if _only_echo(path, merged)]:
        del merged[path]
    problems = [_join(name, found) for found in merged.values()]
    left = error.error_count() - sum(len(found) for found in merged.values())
    if len(merged) >= MOST and left > 0:
        last = problems[-1]
        mend = "Mend the first ones; is it the right file?"
        problems.append(Problem(name, last.line, last.column, f"{left} more problems follow", mend))
    return problems


def _join(name: str, found: list[tuple[str, str, Place]]) -> Problem:
    """One place that several branches of a choice complained of gets one message."""
    what, mend, place = found[-1]
    if len(found) > 1:
        head, _, got = found[0][0].partition(", not '")
        others = [
            said.split(" must be ", 1)[-1].partition(", not '")[0] for said, _, _ in found[1:]
        ]
        what = " or ".join([head, *others]) + (f", not '{got}" if got else "")
        mend = next((mend for _, mend, _ in found if mend), "")
    return Problem(name, place.line, place.column, at_hand(what, place), mend)


def _only_echo(path: Path, found: Iterable[Path]) -> bool:
    """Whether a list is called wrong only because something inside it is."""
    return any(len(other) > len(path) and other[: len(path)] == path for other in found)


def _follow(root: Node, loc: Iterable[str | int]) -> tuple[Path, Node, Path]:
    """The path that exists in the file, the node there, and what of ``loc`` led nowhere.

    Pydantic mixes names of its own (the branch of a choice, ``[key]``) into ``loc``.
    """
    node = root
    path: list[str | int] = []
    rest: list[str | int] = []
    for step in loc:
        if isinstance(node, Mapping) and str(step) in node.values:
            node = node.values[str(step)]
            path.append(step)
            rest = []
        elif isinstance(node, Listing) and isinstance(step, int) and step < len(node.items):
            node = node.items[step]
            path.append(step)
            rest = []
        else:
            rest.append(step)
    return tuple(path), node, tuple(rest)


def _key_place(root: Node, path: Path) -> Place:
    """Where the key (or list item) at ``path`` stands."""
    _, parent, _ = _follow(root, path[:-1])
    if path and isinstance(parent, Mapping):
        return parent.keys.get(str(path[-1]), parent.place)
    return _follow(root, path)[1].place


def _say(
    kind: str,
    detail: Any,
    path: Path,
    node: Node,
    rest: Path,
    root: Mapping,
    model: type[BaseModel],
) -> tuple[Place, str, str]:
    """Place, what, mend."""
    ctx = detail.get("ctx", {})
    key = next((f"`{step}`" for step in reversed(path) if isinstance(step, str)), "the file")
    if path and isinstance(path[-1], int):
        key = f"item {path[-1] + 1} of {key}"
    if kind == "missing":
        above = node.place if len(path) < 2 else _key_place(root, path[:-1])
        return above, f"{key} is missing{_within(path)}", f"Add a line `{path[-1]}: …` here"
    if kind == "extra_forbidden":
        return (
            _key_place(root, path),
            f"{key} is not a known key{_within(path)}",
            _meant(str(path[-1]), keys_at(model, path[:-1]), "Take it away; the known keys are "),
        )
    if "[key]" in rest:
        word = str(path[-1])
        return _key_place(root, path), *_value(
            kind, ctx, f"the key `{word}`", Scalar(node.place, word, word)
        )
    if kind in ("value_error", "assertion_error"):
        return _own_words(str(ctx.get("error", "")), key, node)
    return node.place, *_value(kind, ctx, key, node)


def _within(path: Path) -> str:
    words = [str(step) for step in path[:-1] if isinstance(step, str)]
    return f" in `{words[-1]}`" if words else ""


def _own_words(said: str, key: str, node: Node) -> tuple[Place, str, str]:
    """A message of our own models: ``what; mend``. It points at the word that it quotes."""
    what, _, mend = said.partition("; ")
    quoted = re.findall(r"'([^']+)'", said)
    if what.startswith("no such observation: "):
        about, _, value = what.removeprefix("no such observation: ").partition(": ")
        quoted = [value if about in TOPICS else about]
        known = TOPICS.get(about, TOPICS)
        mend = _meant(quoted[-1], known, f"{about} may be " if about in TOPICS else "")
    place = node.place
    for part in nodes(node):
        if isinstance(part, Scalar) and quoted and part.raw == quoted[-1]:
            place = part.place
            break
    listed = re.search(r"is one of (.+), not '", what)
    if listed and quoted:
        mend = _meant(quoted[-1], listed.group(1).split(", "), "")
    return place, what or f"{key} is not right", mend[:1].upper() + mend[1:]


_NUMBER: Final = ("int_type", "int_parsing", "int_from_float", "int_parsing_size")
_LIMITS: Final = {
    "greater_than": ("gt", "more than"),
    "greater_than_equal": ("ge", "at least"),
    "less_than": ("lt", "less than"),
    "less_than_equal": ("le", "at most"),
}


def _value(kind: str, ctx: Any, key: str, node: Node) -> tuple[str, str]:
    """What is wrong with one value, and its mend."""
    if isinstance(node, Mapping) and node.flow and kind.endswith("_type"):
        return f"{key} was read as a mapping", "Put text that begins with { in quotes"
    if isinstance(node, Scalar) and node.value is None and kind != "none_required":
        return f"{key} has no value", "Write one after the colon, or take the line away"
    got = f", not {short(node.raw)!r}" if isinstance(node, Scalar) else ""
    if kind in _NUMBER:
        return f"{key} must be a whole number{got}", ""
    if kind in ("float_type", "float_parsing", "finite_number", "decimal_parsing"):
        return f"{key} must be a number{got}", ""
    if kind.startswith("bool"):
        return f"{key} must be true or false{got}", ""
    if kind in _LIMITS:
        name, words = _LIMITS[kind]
        return f"{key} must be {words} {ctx.get(name)}{got}", ""
    if kind == "string_type":
        mend = f'Put it in quotes: "{short(node.raw)}"' if isinstance(node, Scalar) else ""
        return f"{key} must be text{got}", mend
    if kind == "string_too_short":
        return f"{key} is empty", "Write the words"
    if kind == "string_too_long":
        return f"{key} must be at most {ctx.get('max_length')} characters{got}", "Shorten it"
    if kind == "string_pattern_mismatch":
        return f"{key} must be {_pattern(str(ctx.get('pattern')))}{got}", ""
    if kind in ("literal_error", "enum"):
        allowed = re.findall(r"'([^']+)'", str(ctx.get("expected", "")))
        raw = node.raw if isinstance(node, Scalar) else ""
        mend = _meant(raw, allowed, "")
        return f"{key} must be {' or '.join(allowed) or ctx.get('expected')}{got}", mend
    if kind.startswith("time"):
        return f"{key} must be a time of day{got}", "Write hours and minutes, as in 08:00"
    if kind.startswith("datetime"):
        return f"{key} must be a date and a time{got}", "Write it as in 2026-03-04 08:00"
    if kind.startswith("date"):
        return f"{key} must be a date{got}", "Write year, month and day: 2026-03-04"
    if kind in ("tuple_type", "list_type", "set_type", "frozen_set_type", "iterable_type"):
        word = short(node.raw) if isinstance(node, Scalar) else ""
        mend = f"Put square brackets around it: [{word}]" if word else "Begin each entry with -"
        return f"{key} must be a list{got}", mend
    if kind in ("dict_type", "model_type", "model_attributes_type", "mapping_type"):
        return f"{key} must hold keys with values{got}", "Write `key: value` lines below it"
    if kind == "too_short":
        return f"{key} needs at least {ctx.get('min_length')} entries", "Add one"
    if kind == "too_long":
        return f"{key} takes at most {ctx.get('max_length')} entries", "Take some away"
    return f"{key} is not right{got}", ""


def _pattern(pattern: str) -> str:
    """The patterns of our models in words."""
    if "_" not in pattern:
        return "lower-case letters and digits, joined by hyphens"
    most = re.search(r"\{1,(\d+)\}", pattern)
    limit = f"at most {most.group(1)} " if most else ""
    return f"{limit}lower-case letters, digits and underscores"


def _meant(word: str, known: Iterable[str], otherwise: str) -> str:
    """``Did you mean …?``, or the list of what is known after ``otherwise``."""
    known = sorted(known)
    close = difflib.get_close_matches(word[:60].lower(), known, n=1)
    if close:
        return f"Did you mean {close[0]}?"
    return otherwise + ", ".join(known) if otherwise and known else ""
