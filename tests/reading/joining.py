"""Labelled urgent replies joined to words of no weight, and how many are then read as less."""

from __future__ import annotations

import json
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from bot.cli.read import answer
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
    asked = {k: row[k] for k in ("lang", "species", "day", "asked", "at")}
    return LEVELS.index(str(answer({**asked, "text": text})["urgency"]))


def urgent(files: Sequence[str]) -> Iterator[tuple[Row, int]]:
    """Replies labelled urgent whose level is reached by the text alone, with that level."""
    for name in files:
        for line in (REPLIES / f"{name}.jsonl").read_text(encoding="utf-8").splitlines():
            row = json.loads(line)
            labelled = LEVELS.index(row["urgency"])
            if labelled >= SAME_DAY and level(row, row["text"]) >= labelled:
                yield row, labelled


def joined(form: str, said: str, talk: str, more: str) -> str:
    """One text of both; without its own full stop where more follows."""
    text = (
        said.rstrip(".! ") if FORMS[form].startswith("{said}") or "{more}" in FORMS[form] else said
    )
    return FORMS[form].format(said=text, talk=talk, more=more)


def tally(
    rows: Sequence[tuple[Row, int]], talk: Sequence[str], form: str, each: int, turn: int = 0
) -> Tally:
    """Every reply with ``each`` pieces of small talk, which go round by turns."""
    out = Tally()
    step = turn
    for row, wanted in rows:
        for _ in range(each):
            one, more = talk[step % len(talk)], talk[(step * 7 + 3) % len(talk)]
            step += 1
            text = joined(form, str(row["text"]), one, more)
            out.tried += 1
            if level(row, text) < wanted:
                out.fallen.append(f"{row['id']} {row['asked']}: {text}")
    return out


def between(rows: Sequence[tuple[Row, int]], talk: Sequence[str], turn: int = 0) -> Tally:
    """Small talk between two urgent replies of one species and question asked."""
    out = Tally()
    for step, (row, wanted) in enumerate(rows):
        other, _ = rows[(step * 31 + 17) % len(rows)]
        first, last = str(row["text"]).rstrip(".! "), str(other["text"])
        text = f"{first} {talk[(step * 5 + turn) % len(talk)]} {last}"
        out.tried += 1
        if level(row, text) < wanted:
            out.fallen.append(f"{row['id']} {row['asked']}: {text}")
    return out
