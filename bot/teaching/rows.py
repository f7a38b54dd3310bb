"""Labelled replies: the files and tables of the tests, and words of no weight beside them."""

from __future__ import annotations

import json
import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from functools import cache
from hashlib import sha256
from pathlib import Path
from zlib import crc32

from bot.model.observation import Noted, Observation
from bot.model.urgency import Urgency
from bot.reading.statistical.features import words
from bot.triage import RuleBook, default_rules, triage
from bot.triage import urgency as highest

FILES = (
    "tuned.jsonl",
    "heldout.jsonl",
    "classes.jsonl",
    "taught-signs.jsonl",
    "taught-mouth.jsonl",
    "taught-wound.jsonl",
    "taught-leg.jsonl",
    "taught-night.jsonl",
    "taught-odd-calm.jsonl",
    "taught-odd-en.jsonl",
    "taught-odd-es.jsonl",
    "taught-odd-more.jsonl",
    "taught-plain.jsonl",
    "taught-rare.jsonl",
)
TABLES = ("alarm", "careful", "daily", "danger", "say-en", "say-es", "wound")
FOLDS = 5
_NOON = datetime(2000, 1, 1, 12, tzinfo=UTC)
_MEANT = re.compile(r"([a-z_]+)\.([a-z_]+)(?:/([a-z]+))?(?:@(\d+))?(?:\(([^)]*)\))?")
_FIGURES = {"count": int, "minutes": float, "metres": float, "hours": float, "celsius": float}


@dataclass(frozen=True, slots=True)
class Labelled:
    """A reply, of whom and when, and what it tells. ``kept``: from a file of whole replies,
    whose figures count; else from a table of phrases, or generated."""

    text: str
    asked: str
    species: str
    day: int
    lang: str
    urgency: Urgency
    told: frozenset[tuple[str, str]]
    kept: bool = False
    at: int | None = None
    origin: str = ""

    @property
    def fold(self) -> int:
        """Which fold it is in: the same words are always in the same one, and what was made
        of them."""
        return crc32(" ".join(words(self.origin or self.text)).encode()) % FOLDS


def sources(tests: Path) -> list[Path]:
    """The labelled files, in order."""
    tables = [tests / "reading" / f"owners-{name}.txt" for name in TABLES]
    return [tests / "replies" / name for name in FILES] + tables


def digest(rows: Iterable[Labelled]) -> str:
    """Changes with every word and label that is taught."""
    told = sha256()
    for row in rows:
        where = (row.text, row.asked, row.species, row.day, row.urgency.name, sorted(row.told))
        told.update(repr(where).encode())
    return told.hexdigest()


def labelled(tests: Path) -> list[Labelled]:
    """Every labelled reply, each text once under each question: files before tables."""
    rows: dict[tuple[str, str, int, str], Labelled] = {}
    for path in sources(tests):
        for row in _in_file(path) if path.suffix == ".jsonl" else _in_table(path):
            key = (" ".join(words(row.text)), row.asked, row.day, row.species)
            rows.setdefault(key, row)
    return list(rows.values())


def in_file(path: Path) -> list[Labelled]:
    """The replies of one file of labelled replies."""
    return list(_in_file(path))


def _in_file(path: Path) -> Iterator[Labelled]:
    for line in path.read_text(encoding="utf-8").splitlines():
        row = json.loads(line)
        told = frozenset((one["about"], one["value"]) for one in row["observations"])
        yield Labelled(row["text"], row["asked"], row["species"], row["day"], row["lang"],
                       Urgency[row["urgency"]], told, True, _minutes(row["at"]))  # fmt: skip


def _minutes(at: str) -> int:
    hours, minutes = at.split(":")
    return 60 * int(hours) + int(minutes)


def _in_table(path: Path) -> Iterator[Labelled]:
    """A table of phrases: what is before the arrow differs a little from table to table."""
    name = path.stem.removeprefix("owners-")
    lang = name[-2:] if name.startswith("say-") else "mixed"
    for line in path.read_text(encoding="utf-8").splitlines():
        if not line.strip() or line.startswith("#"):
            continue
        said, _, meant = line.rpartition("=>")
        asked, species, day = "none", "dog", 9
        if name == "alarm":
            whom, text = said.split("|", 1)
            species, day = whom.split()[0], int(whom.split()[1])
        elif name == "careful":
            asked, text = said.split("|", 1)
        else:
            asked, on, text = said.split("|", 2)
            day = int(on)
        seen = [_observation(*parts) for parts in _MEANT.findall(meant)]
        urgency = urgency_of(seen, day, species)
        if meant.strip() == "calm":
            urgency = min(urgency, Urgency.next_day)
        elif name == "alarm":  # what is told beside it is not always written out
            urgency = max(urgency, Urgency.same_day)
        told = frozenset((one.about, one.value) for one in seen)
        yield Labelled(text.strip(), asked.strip(), species, day, lang, urgency, told)


def _observation(about: str, value: str, detail: str, hours: str, fields: str) -> Observation:
    more: dict[str, object] = {"detail": detail or None}
    if hours:
        more["hours"] = float(hours)
    for field in filter(None, fields.split(";")):
        key, figure = field.split("=")
        more[key] = _FIGURES.get(key, str)(figure)
    return Observation(about, value, **more)  # type: ignore[arg-type]


@cache
def _rules() -> RuleBook:
    return default_rules()


def urgency_of(seen: Iterable[Observation], day: int, species: str) -> Urgency:
    """What the default rules make of one reply alone."""
    noted = [Noted(one, _NOON, day) for one in seen]
    now = _NOON + timedelta(minutes=1)
    return highest(triage(noted, (), day=day, now=now, rules=_rules(), species=species))


def renamed(row: Labelled, text: str) -> Labelled:
    """The same meaning in other words."""
    return replace(row, text=text, kept=False, origin=row.text)
