"""The charts once more as a table: for those who read figures, or with the keyboard."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from bot.records.whole import Entry, Statement, WholeRecord

from .charts import CARE, DONE
from .words import Tongue

TOPICS: Final = ("weight_bearing", "walk", "appetite", "pain", "swelling", "temperature")


@dataclass(frozen=True, slots=True)
class Figures:
    """``columns`` are titles; each row has its day and a cell a column: words, and the
    observation that they lead to (0: none)."""

    columns: tuple[str, ...]
    rows: tuple[tuple[int, tuple[tuple[str, int], ...]], ...]


def figures(record: WholeRecord, tongue: Tongue) -> Figures:
    """A row for each day with something told or due, the newest first."""
    said: dict[tuple[int, str], list[Statement]] = defaultdict(list)
    for one in record.standing:
        said[one.noted.day, one.observation.about].append(one)
    due: dict[tuple[int, str], list[Entry]] = defaultdict(list)
    for entry in record.entries:
        if entry.sent_at is not None and entry.state in ("answered", "unanswered"):
            kind = "dose" if entry.item.kind == "dose" else entry.item.asks
            if entry.item.kind in ("dose", "session") or kind == "cone":
                due[entry.day, kind].append(entry)
    care = [about for about in ("dose", *CARE) if any(key[1] == about for key in due)]
    topics = [about for about in TOPICS if any(key[1] == about for key in said)]
    days = sorted({day for day, _ in (*said, *due)}, reverse=True)
    return Figures(
        tuple(tongue.name("chart", about) for about in (*topics, *care)),
        tuple(
            (day, (*(_last(said[day, a], a, tongue) for a in topics),
                   *(_count(due[day, a]) for a in care)))
            for day in days
        ),
    )  # fmt: skip


def _last(found: Sequence[Statement], about: str, tongue: Tongue) -> tuple[str, int]:
    if not found:
        return "", 0
    seen = found[-1].observation
    if about == "walk" and seen.minutes is not None:
        words = f"{seen.minutes:g} min"
    elif about == "temperature" and seen.celsius is not None:
        words = f"{seen.celsius:.1f} °C"
    elif about == "walk":
        words = tongue.seen(seen)
    else:
        words = tongue.name("step", seen.value)
    return words + (" (?)" if seen.unsure and about != "walk" else ""), found[-1].noted.id


def _count(found: Sequence[Entry]) -> tuple[str, int]:
    if not found:
        return "", 0
    done = sum(entry.answer == "given" or entry.answer in DONE for entry in found)
    return f"{done}/{len(found)}", 0
