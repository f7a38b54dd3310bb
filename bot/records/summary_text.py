"""The summary as plain text, for a record that takes only that."""

from __future__ import annotations

from collections.abc import Iterator
from textwrap import wrap

from .labels import label
from .summary import Summary, Table

WIDTH = 92


def as_text(page: Summary) -> str:
    """The page in lines of at most 92 characters: tables in columns where they fit."""
    return "\n".join(line.rstrip() for line in _lines(page)) + "\n"


def _lines(page: Summary) -> Iterator[str]:
    if page.practice:
        yield page.practice
    yield f"{page.title}: {page.patient}"
    yield "=" * WIDTH
    widest = max(len(name) for name, _ in page.facts)
    for name, value in page.facts:
        yield from _hanging(f"{name + ':':<{widest + 2}}", value)
    yield ""
    yield from _table(page.told)
    yield label("milestones", page.lang).upper()
    for name, value in page.milestones:
        yield f"  {name}: {value}"
    yield ""
    if page.medicines.rows:
        yield from _table(page.medicines)
    if page.sessions.rows:
        yield from _table(page.sessions)
    if page.changes.rows:
        yield page.changes.title.upper()
        for when, who, what in page.changes.rows:
            yield from _hanging(f"  {when}: ", f"{who}: {what}")
        if page.more_changes:
            yield "  " + page.more_changes
        yield ""
    yield page.cases.title.upper()
    for when, why, done in page.cases.rows:
        yield "  " + when.replace("\n", " · ")
        yield from _hanging("    ", why)
        yield from _hanging("    → ", done)
    if not page.cases.rows:
        yield "  " + label("no_cases", page.lang)
    if page.more_cases:
        yield "  " + page.more_cases
    yield ""
    yield from _hanging(f"{label('gaps', page.lang)}: ", page.gaps)
    yield ""
    yield from wrap(page.caution, WIDTH)
    yield from wrap(page.seal, WIDTH)


def _table(table: Table) -> Iterator[str]:
    yield table.title.upper()
    rows = [table.columns, *table.rows]
    widths = [max(len(row[column]) for row in rows) for column in range(len(table.columns))]
    if 2 + sum(widths) + 2 * (len(widths) - 1) > WIDTH:
        yield from _stacked(table)
        return
    for row in rows:
        yield "  " + "  ".join(cell.ljust(width) for cell, width in zip(row, widths, strict=True))
    yield ""


def _stacked(table: Table) -> Iterator[str]:
    """A table that is too wide: each row's first cell, the rest named below it."""
    for first, *rest in table.rows:
        yield f"  {first}"
        named = zip(table.columns[1:], rest, strict=True)
        yield from _hanging("    ", "; ".join(f"{name}: {cell}" for name, cell in named if cell))
    yield ""


def _hanging(head: str, words: str) -> Iterator[str]:
    lines = wrap(words, WIDTH - len(head)) or [""]
    for number, line in enumerate(lines):
        yield (head if number == 0 else " " * len(head)) + line
