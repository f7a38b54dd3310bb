"""Labelled tellings of rounds of doses, and the model that is taught of them."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from hashlib import sha256
from pathlib import Path
from typing import Final
from zlib import crc32

import numpy as np

from bot.model.reading import Context, Due
from bot.reading.rounds.likely import BUCKETS, OUTCOMES, Model, seen
from bot.reading.rounds.named import groups, named
from bot.reading.two_readers import by_rules

from .fit import LEVEL, Likeness, by_feature, common, fitted, weighed
from .rows import Labelled, labelled
from .teach import rounded

FILES: Final = ("taught.jsonl", "made.jsonl", "untold.jsonl")
CALLED: Final = {
    "carprofen": "tablet pill anti-inflammatory",
    "meloxicam": "liquid anti-inflammatory",
    "robenacoxib": "tablet pill anti-inflammatory",
    "gabapentin": "capsule pill pain_relief",
    "cephalexin": "capsule pill antibiotic",
    "amoxicillin": "tablet pill antibiotic",
    "tramadol": "tablet pill pain_relief",
    "trazodone": "tablet pill calming",
    "famotidine": "tablet pill stomach",
}
"""The medicines of the tellings, and what each goes by."""
STRENGTH: Final = 150.0
STEPS: Final = 400
"""As in ``fit``; the tellings are fewer, and each is told whole."""
_SETS: Final = tuple(CALLED)
_ORDINARY: Final = 8
"""Of the replies in which no dose is told, one in so many is taught as such."""


@dataclass(frozen=True, slots=True)
class Telling:
    """What was written when these were due, and what it tells of them; nothing of the others."""

    text: str
    lang: str
    due: tuple[str, ...]
    told: Mapping[str, str]
    asked: str = "dose"

    @property
    def context(self) -> Context:
        """When it came: forty minutes after the prompt of eight."""
        due = tuple(
            Due(med, frozenset(one.replace("_", " ") for one in CALLED[med].split()))
            for med in self.due
        )
        return Context(
            self.asked, 4, 8 * 60 + 40, "dog", medicines=self.due, doses_due=len(due), due=due
        )


def in_file(path: Path) -> list[Telling]:
    """The tellings of a file; ValueError with its line where one is not as it should be."""
    out: list[Telling] = []
    for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
        row = json.loads(line)
        wrong = not set(row["told"]) <= set(row["due"]) or not set(row["due"]) <= set(CALLED)
        if wrong or not set(row["told"].values()) <= set(OUTCOMES):
            raise ValueError(f"{path.name}:{number}: a medicine or an outcome that is not known")
        # Every fourth is written before anything was asked.
        asked = "none" if crc32(row["text"].encode()) % 4 == 0 else "dose"
        out.append(Telling(row["text"], row["lang"], tuple(row["due"]), row["told"], asked))
    return out


def tellings(tests: Path) -> list[Telling]:
    """All that is taught: the tellings, and replies that tell of no dose."""
    rows = labelled(tests)
    plain = [one for row in rows if row.kept and (one := _of_reply(row)) is not None]
    files = (tests / "rounds" / name for name in FILES)
    return [*(one for file in files for one in in_file(file)), *plain]


def _of_reply(row: Labelled) -> Telling | None:
    """A labelled reply in which no dose is told, as a telling of none."""
    number = crc32(row.text.encode())
    doses = any(about in ("dose", "swallowed") for about, _ in row.told)
    if doses or row.asked == "dose" or number % _ORDINARY:
        return None
    meds = [_SETS[(number + step) % len(_SETS)] for step in range(3)]
    about = {about for about, _ in row.told}
    # What tells of a meal or a walk in its own words tells of no dose, whatever was asked.
    asked = "dose" if row.asked in ("none", "general") and about - {"energy"} else row.asked
    return Telling(row.text, row.lang, tuple(meds[: 1 + number // 13 % 3]), {}, asked)


def digest(rows: Iterable[Telling]) -> str:
    """Of all that is taught."""
    told = [[one.text, one.due, sorted(one.told.items()), one.asked] for one in rows]
    return sha256(json.dumps(told).encode()).hexdigest()[:16]


def taught(rows: list[Telling]) -> Model:
    """The model of these tellings."""
    words: list[list[int]] = []
    rules: list[list[int]] = []
    wanted: list[list[bool]] = []
    for row in rows:
        said = named(row.text, row.context)
        found, whole = groups(said), by_rules(row.text, row.context)
        for med in row.due:
            of_words, of_rules = seen(said, found, whole, med, row.context)
            words.append(sorted(of_words))
            rules.append(sorted(of_rules))
            outcome = row.told.get(med, "untold")
            wanted.append([outcome == one for one in OUTCOMES])
    kernel = np.full((len(words), len(words)), LEVEL, dtype=np.float32)
    lesson = Likeness(BUCKETS, (words, rules), kernel)
    for block, weights in zip(lesson.blocks, lesson.weights, strict=True):
        kernel += weighed(common(block, BUCKETS), weights.astype(np.float32))
    table, step, bias = rounded(
        *by_feature(
            lesson, fitted(kernel, np.array(wanted), one_of=True, strength=STRENGTH, steps=STEPS)
        )
    )
    return Model(table, step, bias, {"data": digest(rows), "tellings": len(rows)})
