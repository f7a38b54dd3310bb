"""The practice in memory and the database tell the same: a story is played on the first,
and each of its steps is done again on the second."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from datetime import datetime
from functools import partial
from pathlib import Path

import pytest

from bot.context.practice import Practice
from bot.model.chart import Chart
from bot.model.chat import Incoming, Outgoing
from bot.model.effects import Effects
from bot.model.ids import Cause, EventId, PatientId
from bot.rehearsal.play import Rehearsal
from bot.rehearsal.tables import DueRow
from bot.rehearsal.world import World
from bot.service import work
from bot.store import load
from bot.store.apply import apply
from bot.store.database import Database, Tx, stamp
from bot.store.rows import log_arrived
from tests.household.doubting import doubt

from .telling import PEOPLE, practice, story

BUSY = """
{at: day 2 08:05, robin: {tap: "1 · Given"}}
{at: day 2 08:06, robin: {tap: "2 · given"}}
{at: day 2 08:10, robin: {tap: "Take back"}}
{at: day 2 08:12, lucia: {tap: "2 · Ya se la di"}}
{at: day 2 09:00, robin: "she ate normal today"}
{at: day 2 09:05, robin: {edit: "she ate nothing today"}}
{at: day 2 11:00, robin: "she vomited twice and her poop is black"}
{at: day 2 11:05, pell: {take: newest}}
{at: day 2 11:10, pell: {answer: "No more carprofen."}}
{at: day 2 11:15, pell: {stop: carprofen}}
{at: day 2 11:16, wrenfield: {stop: carprofen}}
{at: day 2 11:20, pell: {close: newest, outcome: seen}}
{at: day 2 11:25, wrenfield: {say: "/log Biscuit"}}
{at: day 2 12:00, pell: {hold: walks}}
{at: day 2 12:01, pell: {release: walks}}
{at: day 2 12:02, wrenfield: {hold: gabapentin}}
{at: day 2 11:26, wrenfield: {say: "/board"}}
{at: day 3 08:30, lucia: "/menu"}
{at: day 3 09:30, lucia: {tap: "Recordarme"}}
{at: day 3 11:00, wrenfield: {release: gabapentin}}
{at: day 3 11:25, wrenfield: {pause: "in hospital"}}
{at: day 4 11:25, wrenfield: {resume: "home again"}}
{at: day 5 11:25, robin: "/zone America/New_York"}
{at: day 6 11:25, robin: "the thing with the other one"}
{at: day 6 11:27, robin: "what can I say"}
{at: day 7 20:30, robin: {tap: "done"}}
{at: day 7 20:31, lucia: "le di otra pastilla de gabapentin"}
{at: day 8 09:00, robin: "he collapsed and his gums are white"}
{at: day 8 09:04, robin: "we are on our way"}
{at: day 8 12:00, wrenfield: {close: newest, outcome: mistaken}}
{at: day 9 10:00, pell: {hold: sessions}}
{at: day 9 11:25, wrenfield: {died: true}}
{at: day 9 12:25, robin: "thank you for everything"}
"""


DOUBTS = """
{at: day 2 07:50, robin: "like asphalt"}
{at: day 2 08:05, lucia: "como asphalt"}
{at: day 2 08:10, robin: {tap: "No"}}
{at: day 3 11:00, robin: "asphalt and concertina"}
{at: day 3 11:01, robin: "no"}
{at: day 3 11:10, robin: "undo"}
{at: day 4 11:00, lucia: "como asphalt"}
{at: day 4 11:01, robin: "supper, asphalt"}
{at: day 4 11:02, lucia: {edit: "brown as ever"}}
{at: day 4 11:03, robin: {tap: "Yes"}}
{at: day 5 11:00, robin: "gasping as a joke"}
{at: day 5 11:01, robin: {tap: "No", of: "struggling"}}
{at: day 5 12:00, wrenfield: {close: newest, outcome: mistaken}}
{at: day 6 11:00, robin: "like a concertina"}
{at: day 6 12:00, wrenfield: {close: newest, outcome: mistaken}}
"""


@dataclass(frozen=True)
class Step:
    """What was done, at what time, what it led to and what was delivered of it."""

    now: datetime
    what: Incoming | DueRow | None
    out: Effects
    code: str
    delivered: list[Outgoing] = field(default_factory=list)


class Recorded(World):
    """A practice that keeps its steps."""

    steps: list[Step]
    what: Incoming | DueRow | None = None
    last = ""

    def hear(self, event: Incoming) -> None:
        self.what = event
        super().hear(event)

    def due(self, row: DueRow) -> None:
        self.what = row
        super().due(row)

    def do(self, out: Effects) -> None:
        if not hasattr(self, "steps"):
            self.steps = []
        self.steps.append(Step(self.now, self.what, out, self.last))
        self.what = None
        super().do(out)

    def deliver(self, message: Outgoing) -> None:
        self.steps[-1].delivered.append(message)
        super().deliver(message)

    def code(self) -> str:
        self.last = super().code()
        return self.last


class Chats:
    """Delivers what waits in the outbox, with the numbers that the rehearsal gave."""

    def __init__(self) -> None:
        self.count: Counter[int] = Counter()

    def came(self, what: object) -> None:
        if isinstance(what, Incoming) and what.kind == "message":
            self.count[what.chat] = what.message

    def send(self, tx: Tx, now: datetime) -> list[Outgoing]:
        found: list[Outgoing] = []
        arrived: list[tuple[bool, int, Outgoing, EventId | None]] = []
        while rows := tx.all("outbox_ready", now=stamp(now), most=99):
            for ready in rows:
                row = tx.one("outbox_claim", id=ready["id"])
                assert row is not None
                message = Outgoing.model_validate_json(row["body"])
                number = message.message
                if message.kind == "edit" and number is None:
                    target = tx.one("outbox_message_of", dedupe=message.of)
                    number = target["message_id"] if target else None
                if message.kind == "send":
                    self.count[message.chat] += 1
                    number = self.count[message.chat]
                tx.run("outbox_done", id=row["id"], state="sent", message_id=number, error=None,
                       now=stamp(now))  # fmt: skip
                arrived.append((not message.urgent, row["id"], message, row["event"]))
                found.append(message)
        for _, _, message, event in sorted(arrived, key=lambda one: one[:2]):
            log_arrived(tx, message, now, now, Cause(event))
        return found


def said(sends: list[Outgoing]) -> dict[int, list[tuple[object, ...]]]:
    """What comes into each chat, without the numbers of rows."""
    found: dict[int, list[tuple[object, ...]]] = {}
    for one in sends:
        labels = [[button.label for button in row] for row in one.buttons]
        found.setdefault(one.chat, []).append(
            (one.kind, one.text, labels, one.urgent, one.reply_to)
        )
    return found


CAT = f"order: {{species: cat, weight_kg: 4}}\n{PEOPLE}"


@pytest.mark.parametrize(
    ("events", "more"),
    [(BUSY, PEOPLE), (BUSY, CAT), (DOUBTS, PEOPLE)],
    ids=["dog", "cat", "doubts"],
)
async def test_the_database_does_the_same(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, events: str, more: str
) -> None:
    doubt(monkeypatch)
    told = Rehearsal(story(events, "{over: true}", more), practice(), Recorded)
    world = told.world
    assert isinstance(world, Recorded)
    opens = next(iter(world.tables.dues.rows.values())).at  # the first board
    played = told.play()
    chats = Chats()
    async with Database(tmp_path / "twin.db") as db:
        await db.transact(lambda tx: tx.run("due_first_board", due_at=stamp(opens)))
        for step in world.steps:
            chats.came(step.what)
            code = step.code
            monkeypatch.setattr(work, "fresh_code", lambda code=code: code)
            if isinstance(step.what, DueRow):
                assert await work.handle_due(db, world.practice, step.now)
            else:
                await db.transact(partial(again, world.practice, step))
            sent = await db.transact(partial(chats.send, now=step.now))
            assert said(sent) == said(step.delivered), step.what
        end = world.now
        kept = await db.read(lambda tx: load.chart(tx, PatientId(1), end))
        waiting = await db.read(lambda tx: tx.one("due_first"))
    assert kept is not None
    assert facts(kept) == facts(world.chart(PatientId(1)))
    first = world.tables.dues.first()
    assert (waiting["at"] if waiting else None) == (stamp(first.at) if first else None)
    assert not [miss for miss in played.misses if "button" in miss.why]


def again(practice: Practice, step: Step, tx: Tx) -> None:
    """An event, thought about anew; what came from no chat is kept as it is."""
    event = step.what
    out = work.think(tx, practice, event, step.now) if isinstance(event, Incoming) else step.out
    apply(tx, out, step.now)


def facts(chart: Chart) -> dict[str, object]:
    """All that a chart says, without the numbers of rows."""
    return {
        "plan": chart.plan,
        "state": chart.state,
        "heard": chart.last_heard,
        "people": [(one.name, one.lang, one.wants) for one in chart.people],
        "history": [(one.observation, one.at, one.day) for one in chart.history],
        "sources": list(chart.sources.values()),
        "sheets": [
            (sheet.key, sheet.due_at, sheet.sent_at, sheet.reminded,
             sorted((one.item.id, one.state, one.choice or "", one.by or "", str(one.at))
                    for one in sheet.lines))
            for sheet in chart.sheets
        ],
        "doses": [(one.item, one.state, one.choice, one.by, one.at, one.person)
                  for one in chart.dose_lines],
        "cases": [
            (one.id, one.urgency, one.state, one.pages, one.body, one.acknowledged_by)
            for one in chart.cases
        ],
        "holds": [(one.target, one.since, one.cause, one.ends, one.told) for one in chart.holds],
        "next": chart.next_case,
        "wounds": chart.wounds,
        "doubts": chart.doubts,
        "late": [(one.until, one.chat, one.tapped) for one in chart.late_taps],
    }  # fmt: skip
