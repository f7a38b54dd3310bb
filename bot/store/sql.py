"""Every SQL statement by name, read once from ``queries/*.sql``.

The statements keep to what SQLite and PostgreSQL both take (``ON CONFLICT``,
``RETURNING``, named parameters, UTC times as fixed-width text), so that a second
back end needs a driver and a schema, never a second copy of a query.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import asdict
from functools import cache
from importlib.resources import files
from typing import Final

from .erase_table import SWEPT, swept

_MARK = "-- name: "
_BY_ID: Final = (
    "person", "staff", "patient", "prompt", "item", "observation", "case_file", "media", "review",
    "hold", "outbox",
)  # fmt: skip
SEALED: Final[Mapping[str, str]] = {
    **dict.fromkeys(_BY_ID, "t.id"),
    "desk": "t.chat_id",
    "lost_chat": "t.chat_id",
    "chat_moved": "t.old",
    "due": "t.key",
    "invitation": "t.digest",
    "review_session": "t.digest",
    "caregiver": "t.patient_id || ':' || t.person_id",
    "wound_check": "t.patient_id || ':' || t.day",
}
"""The tables whose rows are sealed (``sealed_rows.py``), and what names a row of each."""


def _each() -> dict[str, list[tuple[str, dict[str, str]]]]:
    """The files whose statements stand once for each table, or column: by which name, and with
    what filled in."""
    places = [(table, {"table": table, **asdict(place)}) for table, place in SWEPT.items()]
    return {
        "each_sealed.sql": [(one, {"table": one, "key": key}) for one, key in SEALED.items()],
        "each_erased.sql": places,
        "each_erased_column.sql": [
            (f"{table}.{column}", {**fields, "column": column})
            for table, fields in places
            for column in swept(table)
        ],
    }


@cache
def statements() -> dict[str, str]:
    """Name → statement; one of a file in ``_each`` stands as ``name:table`` for each. Raises
    ValueError when a name stands twice or has no statement."""
    found: dict[str, str] = {}
    each = _each()
    for path in sorted((files("bot.store") / "queries").iterdir(), key=lambda p: p.name):
        if not path.name.endswith(".sql"):
            continue
        for part in path.read_text(encoding="utf-8").split(_MARK)[1:]:
            name, _, body = part.partition("\n")
            name = name.strip()
            body = body.strip().rstrip(";")
            if name in found or not body:
                raise ValueError(f"{path.name}: {name!r} stands twice or is empty")
            if path.name not in each:
                found[name] = body
                continue
            for table, fields in each[path.name]:
                found[f"{name}:{table}"] = body.format(**fields)
    return found


def migrations() -> list[tuple[int, str]]:
    """(number, script) in order; files are called ``0001_words.sql``."""
    folder = files("bot.store") / "migrations"
    scripts = sorted((p for p in folder.iterdir() if p.name.endswith(".sql")), key=lambda p: p.name)
    return [(int(p.name[:4]), p.read_text(encoding="utf-8")) for p in scripts]
