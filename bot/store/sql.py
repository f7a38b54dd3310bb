"""Every SQL statement by name, read once from ``queries/*.sql``.

The statements keep to what SQLite and PostgreSQL both take (``ON CONFLICT``,
``RETURNING``, named parameters, UTC times as fixed-width text), so that a second
back end needs a driver and a schema, never a second copy of a query.
"""

from __future__ import annotations

from functools import cache
from importlib.resources import files

_MARK = "-- name: "


@cache
def statements() -> dict[str, str]:
    """Name → statement. Raises ValueError when a name stands twice or has no statement."""
    found: dict[str, str] = {}
    for path in sorted((files("bot.store") / "queries").iterdir(), key=lambda p: p.name):
        if not path.name.endswith(".sql"):
            continue
        for part in path.read_text(encoding="utf-8").split(_MARK)[1:]:
            name, _, body = part.partition("\n")
            name = name.strip()
            if name in found or not body.strip():
                raise ValueError(f"{path.name}: {name!r} stands twice or is empty")
            found[name] = body.strip().rstrip(";")
    return found


def migrations() -> list[tuple[int, str]]:
    """(number, script) in order; files are called ``0001_words.sql``."""
    folder = files("bot.store") / "migrations"
    scripts = sorted((p for p in folder.iterdir() if p.name.endswith(".sql")), key=lambda p: p.name)
    return [(int(p.name[:4]), p.read_text(encoding="utf-8")) for p in scripts]
