"""Full-text search of what was said, sent and noted: case and accents put aside."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import datetime
from typing import Final

from bot.model.ids import PatientId

from .database import Tx, moment, stamp

MARK_ON, MARK_OFF = "\x02", "\x03"
"""Stand around each word found, in ``Found.text``."""
_TERM: Final = re.compile(r'"([^"]+)"|(\S+)')
_EVER: Final = ("0000", "9999")


@dataclass(frozen=True, slots=True)
class Query:
    """What is looked for; ``words`` empty: everything that owners wrote, and with a topic or
    an urgency what they tapped as well. Times are aware, ``until`` not included."""

    words: str = ""
    patient: PatientId | None = None
    topic: str | None = None
    urgency: str | None = None
    since: datetime | None = None
    until: datetime | None = None
    most: int = 100


@dataclass(frozen=True, slots=True)
class Found:
    """One message that fits."""

    entry: int
    patient: PatientId
    name: str
    at: datetime
    kind: str
    author: str
    text: str


def terms(words: str) -> str:
    """The words as a query of the index: each must be there, as the beginning of a word;
    what stands in quotes as it is. Empty when nothing is left to look for."""
    found = []
    for phrase, word in _TERM.findall(words):
        bare = re.sub(r"[^\w]+", " ", phrase or word).strip()
        if bare:
            found.append(f'"{bare}"' + ("" if phrase else " *"))
    return " ".join(found)


def search(tx: Tx, query: Query) -> list[Found]:
    """The newest ``most`` messages that fit, newest first."""
    bounds = tx.one("search_bounds", patient_id=query.patient)
    if bounds is None or bounds["first"] is None:
        return []
    params: dict[str, object] = {
        "first": bounds["first"],
        "last": bounds["last"],
        "patient_id": query.patient,
        "topic": query.topic,
        "urgency": query.urgency,
        "since": stamp(query.since) if query.since else _EVER[0],
        "until": stamp(query.until) if query.until else _EVER[1],
        "most": query.most,
    }
    words = terms(query.words)
    if query.words.strip() and not words:
        return []
    if words:
        rows = tx.all("search_words", words=words, **params)
    elif query.urgency:
        rows = tx.all("search_urgency", **params)
    else:
        rows = tx.all("search_topic" if query.topic else "search_all", **params)
    return [
        Found(row["id"], row["patient_id"], row["name"], moment(row["at"]), row["kind"],
              row["author"], row["text"])
        for row in rows
    ]  # fmt: skip
