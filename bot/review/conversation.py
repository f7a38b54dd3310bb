"""The log of a patient as a conversation: words with what was read from them, and why."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date, datetime
from itertools import groupby, pairwise
from typing import Any, Final

from bot.model.ids import EventId, PictureId, SourceId
from bot.model.urgency import Urgency
from bot.records.orders import plan_words
from bot.records.record import Record, queued_at, settled
from bot.records.whole import Statement, WholeRecord

from .words import Tongue

OWNER: Final = ("said", "tapped", "picture")
UNSEEN: Final = ("viewed", "entered", "delivery", "noted", "refused")
"""Kinds that are no part of the conversation; what was noted stands with its words."""
QUIET: Final = ("sent", "queued", "unanswered", "not_sent", "page")
"""Kinds of the bot's own round, unless they come in answer to someone."""
WORDS: Final = ("sent", "queued")
"""Kinds of the bot's own words: arrived, or not yet."""
MATTERS: Final = ("plan", "corrected", "ended", "left")
"""Kinds of events that a colleague wants to know of when people caused them."""
SENT: Final = {
    "photo": "sent a picture", "video": "sent a film", "animation": "sent a film",
    "video_note": "sent a film", "voice": "sent a voice message", "audio": "sent a voice message",
}  # fmt: skip
SHORT: Final = 110
"""Characters of a message of the bot that are shown before it is opened."""


@dataclass(frozen=True, slots=True)
class Piece:
    """A stretch of words, and what was read from it (empty: nothing)."""

    text: str
    read: str = ""


@dataclass(frozen=True, slots=True)
class Seen:
    """An observation beside its words; ``fixed`` says who corrected it, to what, and why."""

    id: int
    words: str
    state: str
    author: str = ""
    fixed: str = ""


@dataclass(frozen=True, slots=True)
class Why:
    """A rule that matched: how urgent it made it, and the reason."""

    urgency: str
    rule: str
    because: str


@dataclass(slots=True)
class Turn:
    """One entry: ``side`` is owner, bot, staff, note or event."""

    id: int
    at: datetime
    side: str
    who: str
    verb: str
    text: str
    pieces: tuple[Piece, ...] = ()
    seen: list[Seen] = field(default_factory=list)
    why: list[Why] = field(default_factory=list)
    new: bool = False
    short: str = ""
    tap: bool = False  # an owner's button
    quiet: bool = False  # of the bot's own round: prompts, what stayed open, pages
    matters: bool = False  # an event that a colleague wants to know of
    picture: PictureId | None = None  # the kept picture or film that was sent

    @property
    def urgency(self) -> str:
        """The highest that a rule gave it."""
        return max((why.urgency for why in self.why), key=rank, default="none")


def rank(urgency: str) -> int:
    """The order of urgencies by name; 0 for none and for what is not known."""
    return int(Urgency[urgency]) if urgency in Urgency.__members__ else 0


@dataclass(frozen=True, slots=True)
class Day:
    """The turns of one day, oldest first."""

    day: int
    on: date
    turns: tuple[Turn, ...]

    @property
    def runs(self) -> list[tuple[bool, list[Turn]]]:
        """The turns in stretches: what people said, and between it the bot's own round."""
        return [(quiet, list(run)) for quiet, run in groupby(self.turns, lambda t: t.quiet)]


def conversation(record: WholeRecord, tongue: Tongue, before: int) -> tuple[Day, ...]:
    """All days with something said, the newest first. ``before``: the last entry that was
    seen earlier; what comes after it is new."""
    turns: list[Turn] = []
    pictures = _pictures(record)
    of_source: dict[SourceId, list[Turn]] = {}
    of_event: dict[EventId, Turn] = {}
    for entry in settled(record.log):
        if entry.kind in UNSEEN or (entry.kind in WORDS and entry.data.get("staff")):
            continue
        event = entry.by.event
        caused = of_event.get(event) if event else None
        if entry.kind == "finding":
            why = Why(str(entry.data.get("urgency", "")), str(entry.data.get("rule", "")),
                      entry.text)  # fmt: skip
            if caused is not None:
                caused.why.append(why)
                continue
            turn = _event(record, entry, tongue)
            turn.why.append(why)
        else:
            turn = _turn(record, entry, tongue)
        turn.new = before > 0 and entry.id > before
        turn.matters = _matters(entry)
        source = SourceId(str(entry.data.get("source", "")))
        if entry.kind == "picture":
            turn.picture = pictures.pop(source, None)
        turn.quiet = entry.kind in QUIET and caused is None
        if entry.kind in OWNER:
            of_source.setdefault(source, []).append(turn)
        if event and (entry.kind in OWNER or entry.kind == "finding"):
            of_event[event] = turn
        turns.append(turn)
    _attach(record, of_source, tongue, turns)
    return _by_day(record, turns)


def _turn(record: WholeRecord, entry: Record, tongue: Tongue) -> Turn:
    at = record.local(entry.at)
    if entry.kind in OWNER:
        sent = SENT.get(str(entry.data.get("media", {}).get("kind")), "sent a file")
        verb = tongue.say({"said": "wrote", "tapped": "tapped", "picture": sent}[entry.kind])
        tap = entry.kind == "tapped"
        return Turn(entry.id, at, "owner", entry.author, verb, entry.text, tap=tap)
    if entry.kind in WORDS:
        to = tongue.say("to {name}", name=entry.data.get("to", ""))
        ready = queued_at(entry)
        if entry.kind == "queued":
            to = f"{to} · {tongue.say('not arrived yet')}"
        elif ready is not None:
            time = f"{record.local(ready):%H:%M}"
            to = f"{to} · {tongue.say('ready since {time}', time=time)}"
        first = " ".join(entry.text.split())
        short = first if len(first) <= SHORT else first[: SHORT - 1].rstrip() + "…"
        return Turn(entry.id, at, "bot", "bot", to, entry.text, short=short)
    if entry.kind in ("staff", "note"):
        verb = tongue.say("answered" if entry.kind == "staff" else "note")
        if entry.data.get("corrects"):
            verb = tongue.say("corrected an answer")
        return Turn(entry.id, at, entry.kind, entry.author, verb, entry.text)
    return _event(record, entry, tongue)


def _event(record: WholeRecord, entry: Record, tongue: Tongue) -> Turn:
    verb = tongue.name("kind", entry.kind, "other")
    text = plan_words(record, entry, tongue.lang)
    if entry.kind == "finding":
        text = ""
    return Turn(entry.id, record.local(entry.at), "event", entry.author, verb, text[:300])


def _matters(entry: Record) -> bool:
    """A plan that people changed, a case that they closed, the end of the course."""
    if entry.kind == "ended":
        return True
    closed = entry.kind == "case" and entry.data.get("state") == "closed"
    return entry.author not in ("bot", "rule") and (closed or entry.kind in MATTERS)


def _pictures(record: WholeRecord) -> dict[SourceId, PictureId]:
    """Message → the picture or film in it, where it is kept."""
    return {one.source: one.id for one in record.pictures if one.sha256}


def _attach(
    record: WholeRecord, of_source: dict[SourceId, list[Turn]], tongue: Tongue, turns: list[Turn]
) -> None:
    """Each observation to the words that it was read from."""
    fixes = _fixes(record, tongue)
    at_turn: dict[int, list[Statement]] = {}
    kinds = (*OWNER, "noted")
    written = {entry.by.event: entry.id for entry in record.log if entry.kind in kinds}
    for statement in record.statements:
        noted = written.get(statement.event) if statement.event else None
        turn = turn_of(of_source.get(statement.source, ()), noted)
        if turn is None:
            continue
        at_turn.setdefault(turn.id, []).append(statement)
        by = statement.author if statement.author != turn.who else ""
        turn.seen.append(
            Seen(statement.noted.id, tongue.seen(statement.observation), statement.state, by,
                 fixes.get(statement.noted.id, ""))
        )  # fmt: skip
    for turn in turns:
        if turn.side == "owner":
            turn.pieces = pieces(turn.text, at_turn.get(turn.id, ()), tongue)


def turn_of(turns: Sequence[Turn], noted: int | None) -> Turn | None:
    """Of the entries of one source (a message and its corrections) the last that stood when
    something was ``noted`` (an entry of the log); where that is not known, the only one."""
    if noted is None:
        return turns[0] if len(turns) == 1 else None
    return next((turn for turn in reversed(turns) if turn.id <= noted), None)


def pieces(text: str, statements: Sequence[Statement], tongue: Tongue) -> tuple[Piece, ...]:
    """The text cut at the ends of what was read; stretches may be read more than once."""
    spans = [
        (max(0, start), min(len(text), end), tongue.seen(one.observation))
        for one in statements
        if one.stands
        for start, end in [one.observation.span]
        if start < end
    ]
    cuts = sorted({0, len(text), *(cut for start, end, _ in spans for cut in (start, end))})
    cuts = [cut for cut in cuts if cut <= len(text)]
    return tuple(
        Piece(
            text[start:end],
            ", ".join(dict.fromkeys(w for low, high, w in spans if low <= start and end <= high)),
        )
        for start, end in pairwise(cuts)
    )


def _fixes(record: WholeRecord, tongue: Tongue) -> dict[int, str]:
    """Observation → who corrected it, to what, and why."""
    found: dict[int, str] = {}
    for entry in record.log:
        if entry.kind == "corrected" and isinstance(entry.data.get("observation"), int):
            data: dict[str, Any] = entry.data
            found[data["observation"]] = tongue.say(
                "{name}, {date}: now {to}. Reason: {why}", name=entry.author,
                date=tongue.date(record.date(entry.at)), to=data.get("to", "?"),
                why=data.get("why", "?"),
            )  # fmt: skip
    return found


def _by_day(record: WholeRecord, turns: Sequence[Turn]) -> tuple[Day, ...]:
    days: dict[date, list[Turn]] = {}
    for turn in turns:
        days.setdefault(turn.at.date(), []).append(turn)
    return tuple(
        Day((on - record.plan.surgery).days, on, tuple(days[on])) for on in sorted(days)[::-1]
    )
