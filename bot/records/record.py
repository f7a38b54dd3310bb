"""The log as people read it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from bot.model.harmless import harmless
from bot.model.ids import Cause

from .chain import NOBODY

MARKS = {
    "said": "said", "tapped": "tapped", "sent": "got", "queued": "not arrived yet",
    "noted": "noted", "finding": "rule",
    "case": "case", "page": "paged", "staff": "wrote", "picture": "sent a picture",
    "unanswered": "no answer", "not_sent": "not sent", "enrolled": "enrolled",
    "joined": "joined", "left": "left", "plan": "plan", "undone": "took back",
    "unclear": "not understood", "ended": "ended", "refused": "refused", "link": "link",
    "blocked": "blocked", "unblocked": "unblocked", "delivery": "delivery", "desk": "desk",
    "failed": "failed", "erased": "erased", "sealed": "sealed",
    "viewed": "looked", "entered": "review pages", "corrected": "corrected", "note": "note",
}  # fmt: skip
"""Kind of an entry → how it is called where people read it."""
TAIL = 40
"""So many lines of the log are shown at once in a chat."""
LATE = timedelta(minutes=1)
"""Words that waited longer say so."""


@dataclass(frozen=True, slots=True)
class Record:
    """One line of the log; ``at`` is UTC."""

    id: int
    at: datetime
    kind: str
    author: str
    text: str
    data: dict[str, Any]
    by: Cause = NOBODY

    def as_dict(self) -> dict[str, Any]:
        """Ready for JSON Lines."""
        return {
            "id": self.id,
            "at": self.at.isoformat(),
            "kind": self.kind,
            "author": self.author,
            "text": self.text,
            "data": self.data,
        }


def settled(records: Sequence[Record]) -> list[Record]:
    """The log without what was queued and has arrived since: its arrival has the words. What
    never will arrive is not called on its way."""
    after: dict[object, str] = {}  # by key: what became of the message, seen from behind
    found: list[Record] = []
    for one in reversed(records):
        key = one.data.get("key")
        if one.kind == "sent" or (one.kind == "delivery" and one.data.get("final")):
            after[key] = one.kind
        if one.kind == "queued" and (end := after.get(key)):
            if end == "delivery":
                found.append(replace(one, kind="not_sent"))
            continue
        found.append(one)
    return found[::-1]


def queued_at(record: Record) -> datetime | None:
    """When words that were sent had been ready, where they had to wait a minute or more."""
    then = record.data.get("queued")
    if record.kind != "sent" or not isinstance(then, str):
        return None
    at = datetime.fromisoformat(then)
    return at if record.at - at >= LATE else None


def readable(records: Sequence[Record], zone: str, surgery: date | None) -> Iterator[str]:
    """Lines for a person: a heading for each day, then time, who, what, and why."""
    here = ZoneInfo(zone)
    shown: date | None = None
    for record in settled(records):
        local = record.at.astimezone(here)
        if local.date() != shown:
            shown = local.date()
            day = f"day {(shown - surgery).days} · " if surgery else ""
            yield f"── {day}{shown:%a %d %b %Y} ({zone})"
        ready = queued_at(record)
        late = f"  (ready since {ready.astimezone(here):%a %H:%M})" if ready else ""
        yield harmless(f"{local:%H:%M}  {_sentence(record)}{late}")


def _sentence(record: Record) -> str:
    text = " / ".join(part.strip() for part in record.text.splitlines() if part.strip())
    if record.kind in ("sent", "queued"):
        # Staff get the whole case with each message; the log shows its head.
        words = record.text.strip().partition("\n")[0] if record.data.get("staff") else text
        waits = " (not arrived yet)" if record.kind == "queued" else ""
        return f"   → {record.data.get('to', '')}{waits}: {words}"
    verb = MARKS.get(record.kind, record.kind)
    tail = ""
    if record.kind == "finding":
        tail = f"  [{record.data.get('urgency')}, {record.data.get('rule')}]"
    if record.data.get("why"):
        tail = f"  ({record.data['why']})"
    return f"{record.author} · {verb}: {text}{tail}"
