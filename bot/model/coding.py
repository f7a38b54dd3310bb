"""Closed types as short text and back: buttons' actions and messages' topics.

Each type is a dataclass with a ``code``; its fields follow it, in order. What does not
decode to exactly one of them is None, never half a value.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import fields
from typing import Any, Generic, TypeVar, get_type_hints

T = TypeVar("T")
Read = Callable[[str], object | None]


class Coding(Generic[T]):
    """Encodes and decodes one union; ``mark`` stands between the fields. ``within`` reads
    those fields that are of closed types themselves; ``str`` writes them."""

    def __init__(
        self, kinds: Iterable[type[Any]], mark: str, within: Mapping[Any, Read] | None = None
    ) -> None:
        self._mark = mark
        self._kinds = {kind.code: kind for kind in kinds}
        self._reads = {code: _reads(kind, within or {}) for code, kind in self._kinds.items()}

    def encode(self, value: T) -> str:
        """``i.12.given``. ValueError when a field holds the mark itself."""
        parts = [str(getattr(value, field.name)) for field in fields(value)]  # type: ignore[arg-type]
        if any(self._mark in part for part in parts[:-1]):
            raise ValueError(f"{value!r} holds {self._mark!r}")
        return self._mark.join([value.code, *parts])  # type: ignore[attr-defined]

    def decode(self, text: str) -> T | None:
        """The value, or None for anything that ``encode`` did not write."""
        code, *parts = text.split(self._mark)
        kind = self._kinds.get(code)
        if kind is None:
            return None
        wanted = fields(kind)
        if len(parts) > len(wanted) > 0:  # the last field may hold the mark
            last = len(wanted) - 1
            parts = [*parts[:last], self._mark.join(parts[last:])]
        if len(parts) != len(wanted):
            return None
        values = [read(part) for read, part in zip(self._reads[code], parts, strict=True)]
        if None in values:
            return None
        made: T = kind(*values)
        return made


def _reads(kind: type[Any], within: Mapping[Any, Read]) -> tuple[Read, ...]:
    """For each field in order, what reads it; an id is read as what it is made of."""
    hints = get_type_hints(kind)
    types = (hints[field.name] for field in fields(kind))
    known: dict[Any, Read] = {str: str, int: _number, **within}
    return tuple(known[getattr(one, "__supertype__", one)] for one in types)


def _number(text: str) -> int | None:
    plain = text.removeprefix("-")
    if not plain.isascii() or not plain.isdecimal() or len(plain) > 18:
        return None
    return int(text)
