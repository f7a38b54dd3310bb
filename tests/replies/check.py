"""Checks a labelled file of replies against the vocabulary and the urgency table.

    python -m tests.replies.check tests/replies/heldout.jsonl

prints one line for each fault, with the file and the line, and nothing for a clean file.
"""

from __future__ import annotations

import json
import re
import sys
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

from bot.model.observation import Observation
from bot.model.vocabulary import ASKED
from tests.triage.table import LEVELS, look_up

FIELDS = ["id", "lang", "species", "day", "asked", "at", "text", "observations", "urgency", "why"]
LANGS = ("en", "es", "es-en")
_CLOCK = re.compile(r"([01]\d|2[0-3]):[0-5]\d")


def rows(path: Path) -> Iterator[tuple[int, dict[str, object]]]:
    """The lines of a JSON Lines file with their numbers, empty lines left out."""
    for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
        if line.strip():
            yield number, json.loads(line)


def faults(path: Path) -> list[str]:
    """Every fault of a labelled file, as ``file:line: what and how to mend it``."""
    found: list[str] = []
    ids: Counter[str] = Counter()
    asked: Counter[tuple[object, ...]] = Counter()
    for number, row in rows(path):
        for fault in _faults_of(row):
            found.append(f"{path.name}:{number}: {row.get('id')}: {fault}")
        ids[str(row.get("id"))] += 1
        asked[row.get("text"), row.get("asked"), row.get("day")] += 1
    found += [f"{path.name}: the id {one} stands {n} times" for one, n in ids.items() if n > 1]
    found += [f"{path.name}: {one} stands {n} times" for one, n in asked.items() if n > 1]
    return found


def coverage(path: Path) -> Counter[tuple[str, str]]:
    """How often each (topic, value) is labelled."""
    return Counter(
        (one["about"], one["value"])
        for _, row in rows(path)
        for one in row["observations"]  # type: ignore[attr-defined]
    )


def _faults_of(row: dict[str, object]) -> Iterator[str]:
    if list(row) != FIELDS:
        yield f"the fields are {', '.join(FIELDS)}, in this order"
        return
    allowed = {"lang": LANGS, "species": ("dog", "cat"), "asked": ASKED, "urgency": LEVELS}
    for name, words in allowed.items():
        if row[name] not in words:
            yield f"{name} is one of {', '.join(words)}, not {row[name]!r}"
    day, text = row["day"], row["text"]
    if not isinstance(day, int) or not 0 <= day <= 120:
        yield f"day counts from surgery, 0 to 120, not {day!r}"
        return
    if not _CLOCK.fullmatch(str(row["at"])):
        yield f"at is a local time HH:MM, not {row['at']!r}"
    if not isinstance(text, str) or not text.strip() or text != text.strip():
        yield "text is empty, or has spaces around it"
    try:
        told = [Observation.from_dict(one) for one in row["observations"]]  # type: ignore[attr-defined]
    except (TypeError, ValueError) as error:
        yield str(error)
        return
    if told:
        level, because = look_up(told, day, str(row["species"]))
        if level != row["urgency"]:
            yield f"labelled {row['urgency']}, the table says {level} ({because})"
    elif row["urgency"] not in ("none", "next_day"):
        yield "a reply with no observation is `none` (thanks) or `next_day` (not understood)"


def main(argv: list[str]) -> int:
    """Check each file named; 1 when any has a fault."""
    found = [fault for name in argv for fault in faults(Path(name))]
    for fault in found:
        print(fault)
    return 1 if found else 0


if __name__ == "__main__":
    if not sys.argv[1:] or sys.argv[1].startswith("-"):
        print(__doc__)
        sys.exit(2)
    sys.exit(main(sys.argv[1:]))
