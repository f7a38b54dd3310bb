"""What is known at the moment of one event, read from the database
(``bot.events.route.Known``)."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from bot.model.chart import Chart, Desk, Invitation, Member, Person, RosterLine, Written
from bot.model.codes import Known
from bot.model.conversation import Conversation
from bot.model.ids import CaseId, PatientId, PromptId, SourceId
from bot.model.topic import TOPICS, Topic
from bot.records.record import TAIL, Record, readable, settled

from . import load
from .apply import conversation
from .database import Tx, moment
from .off import off
from .whole import record_of

LAST_COPY = "backup"
"""The setting that tells when the practice was last copied (UTC)."""


@dataclass(frozen=True, slots=True)
class Stored:
    """The database within one transaction; ``code`` is fresh, in case a link is made."""

    tx: Tx
    now: datetime
    code: str = ""

    def desks(self) -> tuple[Desk, ...]:
        """The staff chats, in the order in which they are paged."""
        return load.desks(self.tx)

    def held_desks(self) -> tuple[Desk, ...]:
        """Staff chats to which nothing is sent until an administrator says so."""
        return load.desks(self.tx, held=True)

    def staff(self) -> tuple[Member, ...]:
        """The people of the practice."""
        return load.staff(self.tx)

    def conversation(self, chat: int) -> Conversation:
        """What is open in a chat."""
        return conversation(self.tx, chat)

    def topic(self, chat: int, message: int) -> Topic | None:
        """What a message that was sent is about."""
        row = self.tx.one("outbox_topic", chat_id=chat, message_id=message)
        return TOPICS.decode(row["topic"]) if row else None

    def former(self, chat: int) -> tuple[int, ...]:
        """The chat's ids before it was upgraded."""
        return tuple(row["old"] for row in self.tx.all("chat_former", chat_id=chat))

    def invitation(self, digest: str) -> Invitation | None:
        """The one-time link with this digest."""
        return load.invitation(self.tx, digest, self.now)

    def codes(self) -> Known:
        """Whether a digest is that of a one-time link that is not past."""
        return self.tx.codes(self.now)

    def written(self, source: SourceId) -> tuple[Written, ...]:
        """What staff's message ``source`` has led to, oldest first."""
        return load.written(self.tx, source, self.now)

    def person(self, user: int) -> Person | None:
        """The person at home with this account."""
        return load.person_of(self.tx, user)

    def charts_of(self, person: Person) -> tuple[Chart, ...]:
        """The patients that a person takes care of, those under way first."""
        return load.charts_of(self.tx, person, self.now)

    def chart(self, patient: PatientId, prompt: PromptId | None = None) -> Chart | None:
        """One patient; ``prompt`` must be there even when it is long overdue."""
        return load.chart(self.tx, patient, self.now, prompt)

    def patient_of(self, case: CaseId) -> PatientId | None:
        """The patient of a case."""
        row = self.tx.one("case_patient", id=case)
        return row["patient_id"] if row else None

    def roster(self, wanted: str | None = None) -> tuple[RosterLine, ...]:
        """The patients under way; with ``wanted`` all of this number or name."""
        return load.roster(self.tx, ended=wanted is not None, wanted=wanted)

    def unread(self) -> tuple[str, ...]:
        """The names of those under way whose records cannot be read."""
        return tuple(load.unread(self.tx).values())

    def log_tail(self, chart: Chart) -> tuple[str, ...]:
        """The last lines of a patient's log, as people read them."""
        plan = chart.plan
        last = settled(records(self.tx, chart.id, 2 * TAIL))[-TAIL:]
        return tuple(readable(last, plan.zone, plan.surgery))

    def last_copy(self) -> datetime | None:
        """When the whole practice was last copied."""
        row = self.tx.one("setting", key=LAST_COPY)
        return moment(row["value"]) if row else None

    def off(self) -> tuple[tuple[datetime, datetime], ...]:
        """From when to when the bot did not run."""
        return off(self.tx)

    def fresh_code(self) -> str:
        """A code that nobody has used."""
        return self.code


def records(tx: Tx, patient: PatientId, most: int | None = None) -> list[Record]:
    """The log of a patient, whole or its last lines."""
    rows = (
        tx.all("log_of", patient_id=patient)
        if most is None
        else tx.all("log_tail", patient_id=patient, most=most)
    )
    return [record_of(row) for row in rows]
