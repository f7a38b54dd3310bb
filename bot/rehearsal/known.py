"""What is known at the moment of one event, read from the tables
(``bot.events.route.Known``): through the same windows as the database is read
(``bot/store/load.py``)."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import datetime, timedelta

from bot.model.chart import (
    Case,
    Chart,
    Desk,
    Invitation,
    LateTap,
    Member,
    OpenDoubt,
    Person,
    RosterLine,
    Written,
)
from bot.model.codes import Known
from bot.model.conversation import NOTHING_OPEN, Conversation
from bot.model.ids import CaseId, PatientId, PromptId, SourceId
from bot.model.topic import TOPICS, Topic
from bot.records.record import TAIL, Record, readable, settled

from .tables import Entry, PatientRow, Tables

BACK, AHEAD = timedelta(hours=60), timedelta(hours=36)
CLOSED = timedelta(days=1)
DOSES = timedelta(days=8)
CHANGEABLE = timedelta(days=7)
WRITTEN = ("staff", "note", "plan", "hold", "release", "ended", "left", "link", "desk")
"""Entries that a message of staff may have led to."""


@dataclass(frozen=True, slots=True)
class Kept:
    """The tables at a moment; ``code`` is fresh, in case a link is made."""

    tables: Tables
    now: datetime
    code: str = ""

    def desks(self) -> tuple[Desk, ...]:
        """The staff chats, in the order in which they are paged."""
        return tuple(one for one in self._all_desks() if one.chat not in self.tables.held)

    def held_desks(self) -> tuple[Desk, ...]:
        """Staff chats to which nothing is sent until an administrator says so."""
        return tuple(one for one in self._all_desks() if one.chat in self.tables.held)

    def _all_desks(self) -> list[Desk]:
        return sorted(self.tables.desks.values(), key=lambda one: (one.rank, one.chat))

    def staff(self) -> tuple[Member, ...]:
        """The people of the practice."""
        tables = self.tables
        return tuple(one for id, one in sorted(tables.staff.items()) if id not in tables.gone)

    def conversation(self, chat: int) -> Conversation:
        """What is open in a chat."""
        return self.tables.conversations.get(chat, NOTHING_OPEN)

    def topic(self, chat: int, message: int) -> Topic | None:
        """What a message that was sent is about."""
        for one in reversed(self.tables.chats.get(chat, [])):
            if one.number == message:
                return TOPICS.decode(one.sent.topic) if one.sent is not None else None
        return None

    def former(self, chat: int) -> tuple[int, ...]:
        """The chat's ids before it was upgraded: none is, in a rehearsal."""
        del chat
        return ()

    def invitation(self, digest: str) -> Invitation | None:
        """The one-time link with this digest."""
        row = self.tables.invitations.get(digest)
        if row is None:
            return None
        good = not row.used and row.expires > self.now
        return Invitation(
            digest, row.kind, good, row.patient, row.rank, row.name, row.role, row.member
        )

    def codes(self) -> Known:
        """Whether a digest is that of a one-time link that is not past."""
        return lambda digest: (
            (row := self.tables.invitations.get(digest)) is not None and row.expires > self.now
        )

    def written(self, source: SourceId) -> tuple[Written, ...]:
        """What staff's message ``source`` has led to, oldest first."""
        return tuple(
            Written(
                at=entry.at,
                kind=entry.kind,
                user=entry.data["user"],
                text=entry.text,
                patient=entry.patient,
                topic=entry.data.get("topic", ""),
                picture=entry.data.get("picture", ""),
                sent=self._arrived(entry),
            )
            for entry in self.tables.log
            if entry.kind in WRITTEN
            and entry.at >= self.now - CHANGEABLE
            and entry.data.get("source") == source
            and isinstance(entry.data.get("user"), int)
        )

    def person(self, user: int) -> Person | None:
        """The person at home with this account."""
        return next((one for one in self.tables.people.values() if one.user == user), None)

    def charts_of(self, person: Person) -> tuple[Chart, ...]:
        """The patients that a person takes care of, those under way first."""
        rows = [
            row
            for row in self.tables.patients.values()
            if person.id in row.carers and row.carers[person.id].left_at is None
        ]
        rows.sort(key=lambda row: (row.chart.state, row.id))
        found = (self.chart(row.id) for row in rows)
        return tuple(one for one in found if one is not None)

    def chart(self, patient: PatientId, prompt: PromptId | None = None) -> Chart | None:
        """One patient; ``prompt`` must be there even when it is long overdue."""
        row = self.tables.patients.get(patient)
        if row is None:
            return None
        now = self.now
        near = tuple(row.sheets_within(now - BACK, now + AHEAD))
        if prompt is not None and all(sheet.id != prompt for sheet in near):
            asked = row.sheet(prompt)
            near = (asked, *near) if asked is not None else near
        history, sources = row.history()
        return replace(
            row.chart,
            people=self._people(row),
            history=history,
            sources=sources,
            sheets=near,
            dose_lines=tuple(row.doses_within(now - DOSES, now + DOSES)),
            cases=_cases(row),
            closed=tuple(one for one in row.chart.closed if one.at > now - CLOSED),
            holds=tuple(sorted(row.chart.holds, key=lambda hold: (hold.since, hold.id))),
            pictures=tuple(row.pictures.values()),
            reviews=tuple(row.reviews[one] for one in sorted(row.reviews)),
            late_taps=tuple(self._late_taps(patient)),
            doubts=tuple(
                OpenDoubt.of(row.at, row.data)
                for row in self.tables.dues.of_kind("doubt")
                if row.patient == patient
            ),
        )

    def patient_of(self, case: CaseId) -> PatientId | None:
        """The patient of a case, closed or not."""
        return next((row.id for row in self.tables.patients.values() if case in row.cases), None)

    def roster(self, wanted: str | None = None) -> tuple[RosterLine, ...]:
        """The patients under way and those of the past with an open case; with ``wanted``
        all of this number or name."""
        found = []
        for row in self.tables.patients.values():
            chart, cases = row.chart, _cases(row)
            named = wanted is None or wanted.strip().lower() in (str(row.id), chart.name.lower())
            if named and (wanted is not None or not chart.over or cases):
                found.append(
                    RosterLine(
                        row.id, chart.plan, chart.protocol, chart.state, chart.enrolled_at,
                        chart.last_heard, tuple(sorted(cases, key=lambda case: case.deadline)),
                        chart.holds,
                    )
                )  # fmt: skip
        return tuple(found)

    def unread(self) -> tuple[str, ...]:
        """In memory all can be read."""
        return ()

    def log_tail(self, chart: Chart) -> tuple[str, ...]:
        """The last lines of a patient's log, as people read them."""
        plan = chart.plan
        rows = [entry for entry in self.tables.log if entry.patient == chart.id][-2 * TAIL :]
        records = [Record(r.id, r.at, r.kind, r.author, r.text, r.data) for r in rows]
        return tuple(readable(settled(records)[-TAIL:], plan.zone, plan.surgery))

    def last_copy(self) -> datetime | None:
        """When the whole practice was last copied: never, in a rehearsal."""
        return None

    def off(self) -> tuple[tuple[datetime, datetime], ...]:
        """From when to when the bot did not run: never, in a rehearsal."""
        return ()

    def fresh_code(self) -> str:
        """A code that nobody has used."""
        return self.code

    def _people(self, row: PatientRow) -> tuple[Person, ...]:
        """Who takes care of the patient now, in the order in which they joined."""
        with_them = [carer for carer in row.carers.values() if carer.left_at is None]
        with_them.sort(key=lambda carer: (carer.joined_at, carer.person))
        people = self.tables.people
        return tuple(
            replace(people[carer.person], wants=carer.wants or "all", hours=carer.hours)
            for carer in with_them
        )

    def _late_taps(self, patient: PatientId) -> Iterable[LateTap]:
        for row in self.tables.dues.of_kind("given"):
            if row.patient == patient:
                data = row.data
                yield LateTap(
                    tuple(data["lines"]), row.at, data["prompt"], data["chat"],
                    datetime.fromisoformat(data["tapped"]), data["source"],
                )  # fmt: skip

    def _arrived(self, entry: Entry) -> dict[int, int]:
        sent = self.tables.sent
        return dict(sent[key] for key in entry.data.get("sent", ()) if key in sent)


def _cases(row: PatientRow) -> tuple[Case, ...]:
    """The cases that are not closed, the first opened first."""
    return tuple(sorted(row.chart.cases, key=lambda case: case.opened_at))
