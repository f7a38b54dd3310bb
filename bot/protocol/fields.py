"""What a model expects at each place of a file: its keys, and where times stand."""

from __future__ import annotations

import re
from datetime import date, datetime, time
from functools import cache, lru_cache
from types import UnionType
from typing import Annotated, Any, Final, Union, get_args, get_origin

from pydantic import BaseModel

from .yaml_tree import Listing, Mapping, Node, Scalar

_WRITTEN: Final[dict[Any, re.Pattern[str]]] = {
    time: re.compile(r"\d\d:\d\d(:\d\d)?"),
    date: re.compile(r"\d{4}-\d\d-\d\d"),
    datetime: re.compile(r"\d{4}-\d\d-\d\d.*", re.DOTALL),
}


def keys_at(model: type[BaseModel], path: tuple[str | int, ...]) -> set[str]:
    """The keys that ``model`` knows in the mapping at ``path``."""
    kinds: list[Any] = [model]
    for step in path:
        kinds = [deeper for kind in kinds for deeper in _step(kind, step)]
    return {
        field.alias or key
        for kind in kinds
        for core in _cores(kind)
        if _is_model(core)
        for key, field in core.model_fields.items()
    }


def guard_times(node: Node, kind: Any) -> None:
    """Makes pydantic refuse what is not written as a date or a time of day.

    It would read 8 as eight seconds after midnight, 20260302 as a moment in 1970, and
    give 08:00Z a zone that no clock on the wall has. ``kind`` is the type expected here.
    """
    if isinstance(node, Scalar):
        written = [_WRITTEN[core] for core in _cores(kind) if core in _WRITTEN]
        if written and node.value is not None:
            fits = any(pattern.fullmatch(node.raw) for pattern in written)
            node.value = node.raw if fits else f"not a time: {node.raw}"
        return
    children: list[tuple[str | int, Node]] = []
    if isinstance(node, Mapping):
        children += node.values.items()
    elif isinstance(node, Listing):
        children += enumerate(node.items)
    for key, child in children:
        for deeper in _step(kind, key):
            guard_times(child, deeper)


@cache
def _cores(kind: Any) -> tuple[Any, ...]:
    """A type without its Annotated and Union wrappings."""
    origin = get_origin(kind)
    if origin is Annotated:
        return _cores(get_args(kind)[0])
    if origin in (Union, UnionType):
        return tuple(core for part in get_args(kind) for core in _cores(part))
    return (kind,)


def _is_model(core: Any) -> bool:
    return isinstance(core, type) and get_origin(core) is None and issubclass(core, BaseModel)


def _step(kind: Any, step: str | int) -> tuple[Any, ...]:
    """The types that may stand one step deeper; in a list it is the same at each place."""
    return _deeper(kind, 0 if isinstance(step, int) else step)


@lru_cache(maxsize=4096)
def _deeper(kind: Any, step: str | int) -> tuple[Any, ...]:
    found: list[Any] = []
    for core in _cores(kind):
        if _is_model(core):
            for key, field in core.model_fields.items():
                if step in (key, field.alias):
                    found.append(field.annotation)
        elif get_origin(core) is dict:
            found.append(get_args(core)[1])
        elif isinstance(step, int):
            found += (part for part in get_args(core) if part is not Ellipsis)
    return tuple(found)
