"""The whole log for other programs: JSON Lines, and CSV for a spreadsheet."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Iterator
from typing import Any, Final

from bot.records.record import Record

from .whole import WholeRecord

COLUMNS: Final = (
    "entry", "at_utc", "at_local", "day", "kind", "author", "text", "to", "urgency", "rule",
    "source", "data",
)  # fmt: skip
_FORMULA: Final = tuple("=+-@\t\r\n＝＋－＠")
"""What a spreadsheet takes for the beginning of a formula (OWASP, CSV injection)."""


def json_lines(record: WholeRecord) -> str:
    """One JSON object a line, oldest first: what the log holds, and the household's own
    time and the day after surgery."""
    return "".join(
        json.dumps(
            {**entry.as_dict(), "local": record.local(entry.at).isoformat(),
             "day": record.day(entry.at)},
            ensure_ascii=False,
        ) + "\n"
        for entry in record.log
    )  # fmt: skip


def as_csv(record: WholeRecord) -> str:
    """RFC 4180, with a byte order mark: without it spreadsheet programs misread letters
    with accents. A cell that would be taken for a formula has an apostrophe before it."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow(COLUMNS)
    writer.writerows([guarded(cell) for cell in row] for row in _rows(record))
    return "\ufeff" + out.getvalue()


def guarded(cell: object) -> str:
    """The cell as text that no spreadsheet runs. Numbers stay as they are."""
    text = str(cell)
    if isinstance(cell, int | float):
        return text
    return f"'{text}" if text.lstrip(" ").startswith(_FORMULA) else text


def _rows(record: WholeRecord) -> Iterator[tuple[Any, ...]]:
    for entry in record.log:
        yield (
            entry.id,
            entry.at.isoformat(),
            f"{record.local(entry.at):%Y-%m-%d %H:%M:%S}",
            record.day(entry.at),
            entry.kind,
            entry.author,
            entry.text,
            *(_told(entry, key) for key in ("to", "urgency", "rule", "source")),
            json.dumps(entry.data, ensure_ascii=False),
        )


def _told(entry: Record, key: str) -> str:
    value = entry.data.get(key, "")
    return value if isinstance(value, str) else json.dumps(value, ensure_ascii=False)
