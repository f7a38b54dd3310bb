"""Labelled urgent replies joined to words of no weight, and how many are then read as less."""

from __future__ import annotations

import json
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from zlib import crc32

from bot.cli.read import answer
from bot.reading.two_readers import CERTAIN_OF
from tests.triage.table import LEVELS

REPLIES = Path(__file__).parents[1] / "replies"
SAME_DAY = LEVELS.index("same_day")
Row = dict[str, object]
FORMS = {
    "behind": "{said} {talk}",
    "before": "{talk} {said}",
    "behind, stopped": "{said}. {talk}",
    "behind, comma": "{said}, {talk}",
    "before, stopped": "{talk}. {said}",
    "before, comma": "{talk}, {said}",
    "both sides": "{talk} {said} {more}",
}


@dataclass
class Tally:
    """How many joined replies were tried, and which are read as less urgent."""

    tried: int = 0
    fallen: list[str] = field(default_factory=list)

    def share(self) -> float:
        """The part that falls."""
        return len(self.fallen) / self.tried if self.tried else 0.0


def level(row: Row, text: str) -> int:
    """The urgency at which a text is read, asked what the row was asked."""
    return LEVELS.index(str(_answer(row, text)["urgency"]))


def _answer(row: Row, text: str) -> Row:
    asked = {k: row[k] for k in ("lang", "species", "day", "asked", "at")}
    return answer({**asked, "text": text})


def read_at(row: Row) -> int:
    """The urgency at which a row is read by the grammar: 0 where the second reader alone raises
    it. That is a chance over a threshold, which any word moves; below it is asked about."""
    found = _answer(row, str(row["text"]))
    raised = any(one.startswith(CERTAIN_OF) for one in found["reasons"])  # type: ignore[attr-defined]
    return 0 if raised else LEVELS.index(str(found["urgency"]))


def urgent(files: Sequence[str]) -> Iterator[tuple[Row, int]]:
    """Replies labelled urgent whose level the grammar reads in the text alone, with it."""
    for name in files:
        for line in (REPLIES / f"{name}.jsonl").read_text(encoding="utf-8").splitlines():
            row = json.loads(line)
            labelled = LEVELS.index(row["urgency"])
            if labelled >= SAME_DAY and read_at(row) >= labelled:
                yield row, labelled


def joined(form: str, said: str, talk: str, more: str) -> str:
    """One text of both; without its own full stop where more follows."""
    text = (
        said.rstrip(".! ") if FORMS[form].startswith("{said}") or "{more}" in FORMS[form] else said
    )
    return FORMS[form].format(said=text, talk=talk, more=more)


def _dealt(*names: object) -> int:
    """A number for these names, the same in every run: one row more or less moves no other."""
    return crc32(" | ".join(map(str, names)).encode())


def tally(rows: Sequence[tuple[Row, int]], talk: Sequence[str], form: str, each: int) -> Tally:
    """Every reply with ``each`` pieces of small talk, dealt by its id."""
    out = Tally()
    for row, wanted in rows:
        for turn in range(each):
            one, more = (talk[_dealt(row["id"], form, turn, n) % len(talk)] for n in (1, 2))
            text = joined(form, str(row["text"]), one, more)
            out.tried += 1
            if level(row, text) < wanted:
                out.fallen.append(f"{row['id']} {row['asked']}: {text}")
    return out


def between(rows: Sequence[tuple[Row, int]], talk: Sequence[str]) -> Tally:
    """Small talk between an urgent reply and another, dealt by the id of the first, whose level
    must stand."""
    out = Tally()
    for row, wanted in rows:
        others = (one for one, _ in rows if one is not row)
        other = min(others, key=lambda one: _dealt(row["id"], one["id"]))
        first, last = str(row["text"]).rstrip(".! "), str(other["text"])
        text = f"{first} {talk[_dealt(row['id'], 'between') % len(talk)]} {last}"
        out.tried += 1
        if level(row, text) < wanted:
            out.fallen.append(f"{row['id']} {row['asked']}: {text}")
    return out
