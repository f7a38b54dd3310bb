"""Where several things are asked at once, an answer to the doses is read as one; and nothing that
alarms by itself is lost to that."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import Any

from bot.household.lights import of_the_doses
from bot.model.reading import Context, Reading
from bot.model.urgency import Urgency
from bot.reading import read
from bot.reading.alarms import level_told
from bot.teaching.rounds import Telling

TESTS = Path(__file__).parents[1]
DUE = Telling("", "en", ("carprofen", "gabapentin", "cephalexin"), {}).context


def rows(path: Path) -> Iterator[dict[str, Any]]:
    for line in path.read_text(encoding="utf-8").splitlines():
        yield json.loads(line)


def gravest(reading: Reading, context: Context) -> Urgency:
    levels = [level_told(one, context.day, context.species) for one in reading.observations]
    return max([*levels, *(one.urgency for one in reading.asks)], default=Urgency.none)


def test_no_alarm_is_lost_to_the_doses_that_wait() -> None:
    lost, tried = [], 0
    for path in sorted((TESTS / "replies").glob("*.jsonl")):
        for number, row in enumerate(rows(path)):
            if number % 36 or Urgency[row.get("urgency", "none")] < Urgency.same_day:
                continue
            context = replace(DUE, asked="none", day=row["day"], species=row["species"])
            alone = read(row["text"], context)
            found = of_the_doses(row["text"], context, alone)
            tried += 1
            if gravest(found, context) < gravest(alone, context):
                lost.append(row["text"])
    assert tried > 150
    assert not lost


def test_an_answer_to_the_doses_is_one_among_other_questions() -> None:
    """Tellings by people who knew nothing of the reader, as they come in the evening, when packs
    and the bathroom are asked about too."""
    left, paged, tried, before = [], [], 0, 0
    for row in rows(TESTS / "rounds" / "kept-plain.jsonl"):
        if not row["told"]:
            continue
        telling = Telling(row["text"], row["lang"], tuple(row["due"]), row["told"])
        context = replace(telling.context, asked="none", day=1 + len(row["text"]) % 14)
        alone = read(row["text"], context)
        found = of_the_doses(row["text"], context, alone)
        tried += 1
        before += not alone.understood
        if not found.understood:
            left.append(row["text"])
        if gravest(found, context) >= Urgency.emergency:
            paged.append(row["text"])
    assert tried == 210
    assert len(left) <= 34 < before, (len(left), before)
    assert len(paged) <= 8, paged


def test_too_much_told_in_a_roundabout_way_is_seldom_passed_over() -> None:
    """By people who knew nothing of the reader, beside two medicines that were due: found, asked
    about, or left to be asked again. ``much.jsonl`` holds three times as many, to mend on."""
    missed = []
    for row in rows(TESTS / "rounds" / "kept-much.jsonl"):
        telling = Telling(row["text"], row["lang"], ("carprofen", "gabapentin"), {})
        context = replace(telling.context, asked="none")
        found = of_the_doses(row["text"], context, read(row["text"], context))
        if found.understood and gravest(found, context) < Urgency.same_day:
            missed.append(row["text"])
    assert len(missed) <= 34, missed
