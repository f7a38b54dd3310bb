"""Closed types as short text and back: buttons' actions and messages' topics.

Each type is a dataclass with a ``code``; its fields follow it, in order. What does not
decode to exactly one of them is None, never half a value.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import fields
from typing import Any, Generic, TypeVar, get_type_hints

T = TypeVar("T")


class Coding(Generic[T]):
    """Encodes and decodes one union; ``mark`` stands between the fields."""

    def __init__(self, kinds: Iterable[type[Any]], mark: str) -> None:
        self._mark = mark
        self._kinds = {kind.code: kind for kind in kinds}
        self._numbers = {code: _numbers(kind) for code, kind in self._kinds.items()}

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
        values: list[int | str] = []
        for is_number, part in zip(self._numbers[code], parts, strict=True):
            if is_number:
                number = _number(part)
                if number is None:
                    return None
                values.append(number)
            else:
                values.append(part)
        made: T = kind(*values)
        return made


def _numbers(kind: type[Any]) -> tuple[bool, ...]:
    """For each field in order, whether it is a number: an ``int``, or an id that is one."""
    hints = get_type_hints(kind)
    types = (hints[field.name] for field in fields(kind))
    return tuple(getattr(one, "__supertype__", one) is int for one in types)


def _number(text: str) -> int | None:
    plain = text.removeprefix("-")
    if not plain.isascii() or not plain.isdecimal() or len(plain) > 18:
        return None
    return int(text)
