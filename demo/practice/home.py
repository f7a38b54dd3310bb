"""A patient kept in memory beside the database: what a real event would look up there."""

from __future__ import annotations

from bisect import bisect_left, insort
from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from itertools import chain
from random import Random
from typing import Any
from zoneinfo import ZoneInfo

from bot.model import effects as o
from bot.model.chart import Case, Chart, Line, Person, Sheet, WoundCheck
from bot.model.conversation import NOTHING_OPEN, Conversation
from bot.model.evolve import evolve
from bot.model.ids import CaseId, LineId, ObservationId, PatientId, PersonId, PromptId, SourceId
from bot.model.observation import Noted
from bot.model.plan import Plan, Prompt
from bot.model.protocol import Protocol
from bot.store.database import Tx, stamp
from bot.store.load import AHEAD, BACK, DOSES

from .book import Entry, Shape
from .course import Course

FAR = timedelta(days=4000)
FIRST_OVER = 2**62
"""More than any number of a prompt."""


class Home:
    """One patient and the household, as they stand after every outcome so far."""

    def __init__(
        self, id: PatientId, entry: Entry, shape: Shape, plan: Plan, protocol: Protocol,
        enrolled: datetime, spins: Random,
    ) -> None:  # fmt: skip
        self.id = id
        self.entry = entry
        self.shape = shape
        self.plan = plan
        self.protocol = protocol
        self.enrolled = enrolled
        self.known = Chart(id, plan, protocol, "active", enrolled, None)  # what needs no window
        self.spins = spins
        self.course = Course(entry, shape, spins)
        self.people: list[Person] = []
        self.sheets: dict[PromptId, Sheet] = {}
        self.talks: dict[int, Conversation] = {}
        self.dues: dict[str, datetime] = {}
        self._zone = ZoneInfo(plan.zone)
        self._prompt_of: dict[LineId, PromptId] = {}  # line → prompt
        self._times: list[tuple[datetime, PromptId]] = []  # of prompts, in order
        self._doses: dict[PromptId, tuple[Line, ...]] = {}  # by prompt
        self._history: list[Noted] = []
        self._sources: dict[ObservationId, tuple[SourceId, PersonId | None]] = {}

    @property
    def cases(self) -> dict[CaseId, Case]:
        """Those that are not closed, the first opened first."""
        found = sorted(self.known.cases, key=lambda case: case.opened_at)
        return {case.id: case for case in found}

    @property
    def wounds(self) -> dict[int, WoundCheck]:
        """How the wound healed, by the day on which it is asked."""
        return {check.day: check for check in self.known.wounds}

    @property
    def last_heard(self) -> datetime | None:
        """When anybody at home was last heard of."""
        return self.known.last_heard

    @property
    def ended(self) -> bool:
        """Whether the course is over."""
        return self.known.over

    def local(self, at: datetime) -> datetime:
        """``at`` on the household's clock."""
        return at.astimezone(self._zone)

    def day(self, at: datetime) -> int:
        """Days since surgery on the household's calendar."""
        return (self.local(at).date() - self.plan.surgery).days

    def read(self, tx: Tx, prompts: Sequence[Prompt]) -> None:
        """Take over the numbers under which ``prompts`` and their lines were stored."""
        window = {
            "patient_id": self.id, "since": stamp(self.enrolled - FAR),
            "until": stamp(self.enrolled + FAR),
        }  # fmt: skip
        stored = {row["key"]: row["id"] for row in tx.all("prompts_near", **window)}
        lines: dict[PromptId, list[LineId]] = defaultdict(list)
        for row in tx.all("items_near", **window):
            lines[row["prompt_id"]].append(row["id"])
        for prompt in prompts:
            id = stored[prompt.key]
            numbered = zip(lines[id], prompt.items, strict=True)
            made = tuple(Line(number, id, item, "planned") for number, item in numbered)
            self._put(Sheet(id, prompt.key, prompt.due_at, prompt.day, None, made))

    def chart(self, now: datetime) -> Chart:
        """The patient as the store would load it at ``now``."""
        near = [self.sheets[id] for id in self._ids(now - BACK, now + AHEAD)]
        doses = (self._doses[id] for id in self._ids(now - DOSES, now + DOSES))
        return replace(
            self.known, people=tuple(self.people), history=tuple(self._history),
            sources=self._sources, sheets=tuple(near), dose_lines=tuple(chain.from_iterable(doses)),
            cases=tuple(self.cases.values()),
        )  # fmt: skip

    def _ids(self, since: datetime, until: datetime) -> Iterator[PromptId]:
        first = bisect_left(self._times, (since, PromptId(0)))
        last = bisect_left(self._times, (until, FIRST_OVER))
        return (id for _, id in self._times[first:last])

    def waiting(self, prompt: PromptId) -> tuple[Line, ...]:
        """Lines of a prompt that was sent which wait for an answer."""
        sheet = self.sheets[prompt]
        return sheet.open if sheet.sent_at is not None else ()

    def absorb(self, out: o.Effects, at: datetime, tx: Tx) -> None:
        """Stand as the database stands once ``out`` is kept there."""
        for change in out.all:
            match change:
                case o.Note():
                    self._note(change, at)
                case o.Retract():
                    self._retract(change.source)
                case o.Mark():
                    self._line(change.line, state=change.state, choice=change.choice,
                               by=change.by, at=change.at, source=change.source,
                               person=change.person)  # fmt: skip
                case o.Retext():
                    self._line(change.line, item=change.item)
                case (
                    o.CaseChange() | o.WoundPut() | o.Heard() | o.SetState() | o.PutHold()
                    | o.EndHold()
                ):  # fmt: skip
                    self.known = evolve(self.known, [change], at)
                case o.Due():
                    self.dues[change.key] = change.at
                case o.MoveLine():
                    self._move(change, tx)
                case o.CancelDue(key=key):
                    self.dues.pop(key, None)
                case o.PromptSent(prompt=prompt):
                    self.sheets[prompt] = replace(self.sheets[prompt], sent_at=at)
                case o.Reminded(prompt=prompt):
                    self.sheets[prompt] = replace(self.sheets[prompt], reminded=at)
                case o.EndCourse():
                    self.known = evolve(self.known, [change], at)
                    self.dues = {
                        key: at for key, at in self.dues.items() if key.startswith("wound:")
                    }
                case o.Ask(chat=chat, question=question):
                    self.talks[chat] = self.talk(chat).asked(question)
                case o.Settle(chat=chat, key=key):
                    self.talks[chat] = self.talk(chat).settled(key)
                case _:
                    pass

    def talk(self, chat: int) -> Conversation:
        """What is open in a chat."""
        return self.talks.get(chat, NOTHING_OPEN)

    def _put(self, sheet: Sheet) -> None:
        if sheet.id not in self.sheets:
            insort(self._times, (sheet.due_at, sheet.id))
        self.sheets[sheet.id] = sheet
        self._doses[sheet.id] = tuple(line for line in sheet.lines if line.item.kind == "dose")
        self._prompt_of.update((line.id, sheet.id) for line in sheet.lines)

    def _note(self, note: o.Note, at: datetime) -> None:
        number = ObservationId(len(self._sources) + 1)
        self._history.append(Noted(note.observation, note.at or at, note.day, number))
        self._sources[number] = (note.source, note.person)

    def _retract(self, source: SourceId) -> None:
        self._history = [one for one in self._history if self._sources[one.id][0] != source]

    def _line(self, line: LineId, **changes: Any) -> None:
        sheet = self.sheets[self._prompt_of[line]]
        lines = tuple(replace(one, **changes) if one.id == line else one for one in sheet.lines)
        self._put(replace(sheet, lines=lines))

    def prompt_of(self, line: LineId) -> PromptId:
        """The prompt that a line is in now."""
        return self._prompt_of[line]

    def _move(self, change: o.MoveLine, tx: Tx) -> None:
        row = tx.one("prompt_add", patient_id=self.id, key=change.key,
                     due_at=stamp(change.at), day=change.day, moved=1)  # fmt: skip
        if row is None:
            raise ValueError("the prompt could not be stored")
        old = self.sheets[self._prompt_of[change.line]]
        line = next(one for one in old.lines if one.id == change.line)
        self._put(replace(old, lines=tuple(one for one in old.lines if one is not line)))
        moved = replace(line, prompt=row["id"])
        new = self.sheets.get(row["id"])
        others = () if new is None else new.lines
        self._put(Sheet(row["id"], change.key, change.at, change.day, None, (*others, moved)))
        self.dues[f"prompt:{row['id']}"] = change.at
