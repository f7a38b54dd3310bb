"""Marks under a text which of its words were read, for a terminal."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator, Sequence

Span = tuple[int, int]


def marked(text: str, spans: Sequence[Span], width: int) -> Iterator[str]:
    """The text, in lines of at most ``width`` characters, each with lines of marks under it.

    A span's mark is its number (from 1) and a line: ``2────``. Spans that overlap get
    lines of their own; an empty span (a button) has no mark.
    """
    numbered = [(span, number) for number, span in enumerate(spans, 1) if span[0] < span[1]]
    for begin, end in _lines(text, width):
        yield text[begin:end]
        rows: list[list[tuple[int, int, int]]] = []
        for (first, last), number in sorted(numbered):
            left, right = max(first, begin), min(last, end)
            if left >= right:
                continue
            at = (columns(text[begin:left]), columns(text[begin:right]), number)
            row = next((row for row in rows if row[-1][1] < at[0]), None)
            if row is None:
                rows.append([at])
            else:
                row.append(at)
        yield from map(_marks, rows)


def columns(text: str) -> int:
    """How many columns a terminal gives to ``text``."""
    return sum(_columns(char) for char in text)


def _columns(char: str) -> int:
    kind = unicodedata.category(char)
    if kind in ("Mn", "Me", "Cf"):
        return 0
    return 2 if kind != "Cn" and unicodedata.east_asian_width(char) in "WF" else 1


def _marks(row: Sequence[tuple[int, int, int]]) -> str:
    line = ""
    for left, right, number in row:
        mark = str(number)
        line += " " * (left - len(line)) + mark + "─" * (right - left - len(mark))
    return line


def _lines(text: str, width: int) -> Iterator[Span]:
    """Where each shown line begins and ends in ``text``; broken at spaces where it can be."""
    for line in re.finditer(r"[^\n]+", text):
        begin = end = None
        for word in re.finditer(rf"\S{{1,{width}}}", line[0]):
            first, last = line.start() + word.start(), line.start() + word.end()
            if begin is not None and end is not None and last - begin > width:
                yield begin, end
                begin = None
            begin, end = (first if begin is None else begin), last
        if begin is not None and end is not None:
            yield begin, end
