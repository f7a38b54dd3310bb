"""What is kept in a rehearsal: the rows of the database, as values in memory."""

from __future__ import annotations

from bisect import bisect_left, insort
from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from datetime import datetime
from heapq import heappop, heappush
from typing import Any, Literal, TypeVar

from bot.model.chart import Chart, Desk, Line, Member, Person, Picture, Review, Sheet
from bot.model.chat import Outgoing
from bot.model.conversation import Conversation
from bot.model.ids import (
    CaseId,
    LineId,
    MemberId,
    ObservationId,
    PatientId,
    PersonId,
    PictureId,
    PromptId,
    SourceId,
)
from bot.model.observation import Noted
from bot.model.plan import Item

from .transcript import Message

Counted = Literal["patient", "person", "member", "noted", "media"]


@dataclass(slots=True)
class Carer:
    """Someone at home of one patient."""

    person: PersonId
    joined_at: datetime
    left_at: datetime | None = None
    hours: dict[str, str] | None = None
    wants: str | None = None


@dataclass(slots=True)
class Statement:
    """An observation, where it came from and whether it stands."""

    noted: Noted
    source: SourceId
    person: PersonId | None
    state: str = "stands"


N = TypeVar("N", PromptId, LineId)
Sources = dict[ObservationId, tuple[SourceId, PersonId | None]]
"""Observation → what it came from, and whose that was."""


@dataclass(slots=True)
class PatientRow:
    """One patient with all that hangs on them. ``chart`` holds what no window is needed of:
    plan, state, open cases, holds, wounds. ``order`` and ``slots`` hold prompts by their time
    and doses by their slot, so that a window of them is found at once."""

    chart: Chart
    carers: dict[PersonId, Carer] = field(default_factory=dict)
    sheets: dict[PromptId, Sheet] = field(default_factory=dict)  # without their lines
    sheet_of_key: dict[str, PromptId] = field(default_factory=dict)
    lines: dict[LineId, Line] = field(default_factory=dict)
    line_of_item: dict[str, LineId] = field(default_factory=dict)
    lines_of: dict[PromptId, list[LineId]] = field(default_factory=dict)  # prompt → its lines
    order: list[tuple[datetime, PromptId]] = field(default_factory=list)
    slots: list[tuple[datetime, LineId]] = field(default_factory=list)
    whole: dict[PromptId, Sheet] = field(default_factory=dict)  # with their lines, as last built
    statements: list[Statement] = field(default_factory=list)
    standing: tuple[tuple[Noted, ...], Sources] | None = None
    cases: set[CaseId] = field(default_factory=set)  # closed ones, too
    pictures: dict[PictureId, Picture] = field(default_factory=dict)
    reviews: dict[int, Review] = field(default_factory=dict)

    @property
    def id(self) -> PatientId:
        """The patient's number."""
        return self.chart.id

    # -- prompts and lines ------------------------------------------------------------------

    def put_sheet(self, id: PromptId, key: str, due_at: datetime, day: int) -> PromptId:
        """A prompt; one with the same key only gets another time. Its id."""
        known = self.sheet_of_key.get(key)
        if known is None:
            self.sheets[id] = Sheet(id, key, due_at, day, None, ())
            self.sheet_of_key[key] = id
            self.lines_of[id] = []
            insort(self.order, (due_at, id))
            return id
        old = self.sheets[known]
        if old.due_at != due_at:
            self._unlist(self.order, (old.due_at, known))
            insort(self.order, (due_at, known))
            self.set_sheet(replace(old, due_at=due_at))
        return known

    def set_sheet(self, sheet: Sheet) -> None:
        """The prompt as it is now."""
        self.sheets[sheet.id] = sheet
        self.whole.pop(sheet.id, None)

    def drop_sheet(self, id: PromptId) -> None:
        """A prompt without lines is gone."""
        sheet = self.sheets.pop(id)
        del self.sheet_of_key[sheet.key], self.lines_of[id]
        self.whole.pop(id, None)
        self._unlist(self.order, (sheet.due_at, id))

    def put_line(self, id: LineId, prompt: PromptId, item: Item) -> None:
        """A line of a prompt; a planned one of the same item moves there with its words."""
        known = self.line_of_item.get(item.id)
        if known is None:
            self.line_of_item[item.id] = id
            self.lines[id] = Line(id, prompt, item, "planned")
            self.lines_of[prompt].append(id)
            if item.kind == "dose" and item.slot_at is not None:
                insort(self.slots, (item.slot_at, id))
            self.whole.pop(prompt, None)
            return
        old = self.lines[known]
        if old.state != "planned":
            return
        if old.item.kind == "dose" and old.item.slot_at != item.slot_at:
            if old.item.slot_at is not None:
                self._unlist(self.slots, (old.item.slot_at, known))
            if item.slot_at is not None:
                insort(self.slots, (item.slot_at, known))
        self.move_line(known, prompt)
        self.set_line(replace(self.lines[known], item=item))

    def set_line(self, line: Line) -> None:
        """The line as it is now."""
        self.lines[line.id] = line
        self.whole.pop(line.prompt, None)

    def move_line(self, id: LineId, prompt: PromptId) -> None:
        """The line stands in another prompt now."""
        line = self.lines[id]
        if line.prompt != prompt:
            self.lines_of[line.prompt].remove(id)
            self.whole.pop(line.prompt, None)
            insort(self.lines_of[prompt], id)
            self.set_line(replace(line, prompt=prompt))

    def drop_line(self, id: LineId) -> None:
        """A planned line is gone."""
        line = self.lines.pop(id)
        del self.line_of_item[line.item.id]
        self.lines_of[line.prompt].remove(id)
        self.whole.pop(line.prompt, None)
        if line.item.kind == "dose" and line.item.slot_at is not None:
            self._unlist(self.slots, (line.item.slot_at, id))

    def sheet(self, id: PromptId) -> Sheet | None:
        """The prompt with its lines."""
        made = self.whole.get(id)
        if made is None:
            bare = self.sheets.get(id)
            if bare is None:
                return None
            made = replace(bare, lines=tuple(self.lines[one] for one in self.lines_of[id]))
            self.whole[id] = made
        return made

    def sheets_within(self, since: datetime, until: datetime) -> Iterator[Sheet]:
        """The prompts of a time, ends included."""
        for at, id in self.order[bisect_left(self.order, (since, 0)) :]:
            if at > until:
                return
            found = self.sheet(id)
            if found is not None:
                yield found

    def doses_within(self, since: datetime, until: datetime) -> Iterator[Line]:
        """The doses whose slots lie in a time, ends included."""
        for at, id in self.slots[bisect_left(self.slots, (since, 0)) :]:
            if at > until:
                return
            yield self.lines[id]

    @staticmethod
    def _unlist(ordered: list[tuple[datetime, N]], entry: tuple[datetime, N]) -> None:
        place = bisect_left(ordered, entry)
        if place < len(ordered) and ordered[place] == entry:
            del ordered[place]

    # -- observations -----------------------------------------------------------------------

    def history(self) -> tuple[tuple[Noted, ...], Sources]:
        """The observations that stand, oldest first, and where each came from."""
        if self.standing is None:
            kept = sorted(
                (one for one in self.statements if one.state == "stands"),
                key=lambda one: (one.noted.at, one.noted.id),
            )
            sources = {one.noted.id: (one.source, one.person) for one in kept}
            self.standing = tuple(one.noted for one in kept), sources
        return self.standing


@dataclass(slots=True)
class InvitationRow:
    """A one-time link."""

    kind: str
    expires: datetime
    patient: PatientId | None = None
    rank: int | None = None
    name: str | None = None
    role: str | None = None
    used: bool = False
    member: MemberId | None = None  # who made it


@dataclass(slots=True)
class DueRow:
    """Something that is looked at when its time has come."""

    key: str
    kind: str
    at: datetime
    patient: PatientId | None
    data: dict[str, Any]
    waiting: bool = True


@dataclass(slots=True)
class Dues:
    """What falls due. Pictures and what is shown of them come after all else of a moment."""

    rows: dict[str, DueRow] = field(default_factory=dict)
    _kinds: dict[str, dict[str, None]] = field(default_factory=dict)
    _heap: list[tuple[datetime, int, str]] = field(default_factory=list)

    def put(self, row: DueRow) -> None:
        """One with the same key is replaced."""
        self.rows[row.key] = row
        self._kinds.setdefault(row.kind, {})[row.key] = None
        heappush(self._heap, (row.at, int(row.kind in ("media", "review")), row.key))

    def cancel(self, key: str) -> None:
        """It is not looked at any more."""
        row = self.rows.get(key)
        if row is not None:
            row.waiting = False

    def of_kind(self, kind: str) -> list[DueRow]:
        """What waits of one kind."""
        keys = self._kinds.get(kind, ())
        return [self.rows[key] for key in keys if self.rows[key].waiting]

    def of_patient(self, patient: PatientId) -> list[DueRow]:
        """What waits about one patient."""
        return [row for row in self.rows.values() if row.waiting and row.patient == patient]

    def first(self) -> DueRow | None:
        """The next that waits; it stays until it is taken."""
        while self._heap:
            at, _, key = self._heap[0]
            row = self.rows.get(key)
            if row is not None and row.waiting and row.at == at:
                return row
            heappop(self._heap)
        return None

    def take(self, row: DueRow) -> None:
        """It is being done."""
        row.waiting = False


@dataclass(slots=True)
class Entry:
    """A line of the log."""

    id: int
    at: datetime
    kind: str
    author: str
    text: str
    patient: PatientId | None
    data: dict[str, Any]


@dataclass(slots=True)
class InChat:
    """A message in a chat: of the bot (``sent``, as it stands now) or of ``who``, who first
    sent it ``at``."""

    number: int
    who: str
    text: str
    sent: Outgoing | None = None
    record: Message | None = None
    at: datetime | None = None


@dataclass(slots=True)
class Tables:
    """Everything that is known."""

    patients: dict[PatientId, PatientRow] = field(default_factory=dict)
    people: dict[PersonId, Person] = field(default_factory=dict)
    staff: dict[MemberId, Member] = field(default_factory=dict)
    gone: set[MemberId] = field(default_factory=set)  # of the staff, who may act no longer
    desks: dict[int, Desk] = field(default_factory=dict)  # by their chat
    held: set[int] = field(default_factory=set)  # of them, to which nothing is sent for now
    invitations: dict[str, InvitationRow] = field(default_factory=dict)
    conversations: dict[int, Conversation] = field(default_factory=dict)  # by their chat
    dues: Dues = field(default_factory=Dues)
    log: list[Entry] = field(default_factory=list)
    chats: dict[int, list[InChat]] = field(default_factory=dict)
    outbox: dict[str, Outgoing] = field(default_factory=dict)  # key → a message that waits
    sent: dict[str, tuple[int, int]] = field(default_factory=dict)  # key → chat, number
    numbers: dict[str, int] = field(default_factory=dict)

    def number(self, of: Counted) -> int:
        """The next number of its kind."""
        self.numbers[of] = self.numbers.get(of, 0) + 1
        return self.numbers[of]

    def next_sheet(self) -> PromptId:
        """One more than the highest number of a prompt that is there."""
        return PromptId(1 + max(next(reversed(one.sheets), 0) for one in self.patients.values()))

    def next_line(self) -> LineId:
        """One more than the highest number of a line that is there."""
        return LineId(1 + max(next(reversed(one.lines), 0) for one in self.patients.values()))
