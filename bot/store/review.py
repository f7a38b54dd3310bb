"""What the review pages read, and the little that they keep: sessions and who looked."""

from __future__ import annotations

import json
import unicodedata
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from typing import Final, TypeVar
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from bot.measures.course import Course
from bot.model.chart import Member
from bot.model.effects import Effects
from bot.model.hold import Hold
from bot.model.ids import (
    CaseId,
    Cause,
    LineId,
    ObservationId,
    PatientId,
    PictureId,
    SourceId,
)
from bot.model.observation import Observation
from bot.model.urgency import Urgency
from bot.records.whole import Statement, WholeRecord

from . import load
from .apply import apply
from .audit import head
from .database import Database, Row, Tx, moment, stamp
from .each import attempt, each
from .rows import log
from .search import Found, Query, search
from .whole import courses, statement_of, whole

T = TypeVar("T")
UNREAD: Final = "its records cannot be read"
ONE_VISIT: Final = timedelta(minutes=30)
"""Looks at a patient closer together than this are one visit: what was new stays new."""


@dataclass(frozen=True, slots=True)
class Refusal:
    """A line of the log: who was not let in, or might not do something, and why."""

    by: str
    why: str
    data: dict[str, object]


@dataclass(frozen=True, slots=True)
class OpenCase:
    """A case that is not closed, as the list of patients shows it."""

    id: CaseId
    matter: str
    urgency: Urgency
    state: str
    deadline: datetime
    taken_by: str | None

    @property
    def waits(self) -> bool:
        """Whether the owner still waits for an answer."""
        return self.state in ("open", "acknowledged")


@dataclass(frozen=True, slots=True)
class Listed:
    """A patient in the list, as far as it takes to put the list in order."""

    id: PatientId
    name: str
    owner: str
    procedure: str
    clinician: str
    zone: str
    surgery: date
    state: str
    enrolled_at: datetime
    last_heard: datetime | None
    cases: tuple[OpenCase, ...]

    def day(self, now: datetime) -> int:
        """Days since surgery, on the household's calendar."""
        return (now.astimezone(ZoneInfo(self.zone)).date() - self.surgery).days

    def fits(self, words: str) -> bool:
        """Whether name, owner, procedure or clinician hold these words, accents aside."""
        here = plain(f"{self.name} {self.owner} {self.procedure} {self.clinician}")
        return all(word in here for word in plain(words).split())


@dataclass(frozen=True, slots=True)
class Glance:
    """What the list shows of a patient besides. ``rechecks``: day → what is due then."""

    said: tuple[datetime, str, str] | None  # when, who, words
    leg: tuple[int, Observation] | None  # on which day
    given: int
    due: int
    rechecks: tuple[tuple[int, str], ...]
    holds: tuple[Hold, ...] = ()


@dataclass(frozen=True, slots=True)
class Visit:
    """One patient as this member sees it now. ``before``: the last entry of the log that
    earlier visits showed (0: the first visit); ``before_at`` when that was."""

    record: WholeRecord
    before: int
    before_at: datetime | None
    answered: dict[LineId, SourceId]  # line of a prompt → the message or button that answered it


@dataclass(frozen=True, slots=True)
class Reading:
    """One observation with the words that it was read from, and the lines that it answered:
    (line, kind, medicine, what it asks)."""

    statement: Statement
    author: str
    words: str
    lines: tuple[tuple[LineId, str, str | None, str], ...]


def plain(words: str) -> str:
    """Lower case, no accents: what names are compared by."""
    bare = unicodedata.normalize("NFKD", words.casefold())
    return "".join(letter for letter in bare if not unicodedata.combining(letter))


class ReviewStore:
    """The database as the review pages use it."""

    def __init__(self, db: Database) -> None:
        self._db = db

    async def _read(self, function: Callable[[Tx], T]) -> T:
        return await self._db.read(function)

    # -- who is there

    async def invited(self, code: str, now: datetime) -> Member | None:
        """Whom this one-time link lets in, if it is still good."""
        return await self._read(lambda tx: _invited(tx, code, now))

    async def enter(
        self, code: str, session: str, now: datetime, real: datetime, until: datetime
    ) -> Member | None:
        """Use a one-time link (its digest) and begin a session; None when it is not good
        any more. ``real`` and ``until`` bound the session."""

        def whole_of_it(tx: Tx) -> Member | None:
            member = _invited(tx, code, now)
            if member is None:
                return None
            tx.run("invitation_use", digest=code, used_by=member.user, now=stamp(now))
            tx.run("review_enter", digest=session, member_id=member.id, now=stamp(real),
                   expires_at=stamp(until))  # fmt: skip
            _seen(tx, member, "opened the review pages", now, kind="entered")
            return member

        return await self._db.transact(whole_of_it)

    async def member(self, session: str, real: datetime) -> Member | None:
        """Who holds this session, if it lasts and they still work here."""
        row = await self._read(lambda tx: tx.one("review_member", digest=session, now=stamp(real)))
        return _member(row) if row else None

    async def leave(self, session: str, member: Member, now: datetime) -> None:
        """End a session."""

        def end(tx: Tx) -> None:
            if tx.run("review_leave", digest=session, now=stamp(now)):
                _seen(tx, member, "left the review pages", now, kind="entered")

        await self._db.transact(end)

    async def note_refusals(self, refused: Sequence[Refusal], now: datetime) -> None:
        """Lines in the log: someone was not let in, or might not do something."""

        def note(tx: Tx) -> None:
            for one in refused:
                log(tx, "refused", one.by, one.why, now, None, one.data)

        if refused:
            await self._db.transact(note)

    # -- reading

    async def listed(self, *, ended: bool = False) -> list[Listed]:
        """All patients under way, and those of the past with an open case; with ``ended`` all
        of the past as well."""
        return await self._read(lambda tx: _listed(tx, ended))

    async def count(self) -> int:
        """How many patients there are, of the past as well."""
        row = await self._read(lambda tx: tx.one("review_count"))
        return int(row["n"]) if row else 0

    async def glances(
        self, patients: list[PatientId], member: Member, now: datetime
    ) -> dict[PatientId, Glance]:
        """The rest of what the list shows, for those that are on the page; the look is kept
        in the log."""

        def look(tx: Tx) -> dict[PatientId, Glance]:
            _seen(tx, member, "looked at the list of patients", now, patients=patients)
            none = Glance(None, None, 0, 0, ())
            found = each(tx, lambda id: _glance(tx, id, now), patients).found
            return {id: found.get(id, none) for id in patients}

        return await self._db.transact(look)

    async def visit(self, patient: PatientId, member: Member, now: datetime) -> Visit | None:
        """One patient, all of it; the look is kept in the log."""

        def look(tx: Tx) -> Visit | None:
            record = whole(tx, patient)
            if record is None:
                return None
            newest = record.log[-1].id if record.log else 0
            row = tx.one("review_seen", member_id=member.id, patient_id=patient)
            if row is None:
                before, before_at = 0, None
            elif now - moment(row["at"]) < ONE_VISIT:
                before = row["before"]
                before_at = moment(row["before_at"]) if row["before_at"] else None
            else:
                before, before_at = row["upto"], moment(row["at"])
            tx.run("review_see", member_id=member.id, patient_id=patient, before=before,
                   before_at=stamp(before_at) if before_at else None, upto=newest,
                   now=stamp(now))  # fmt: skip
            _seen(tx, member, "looked at the patient's page", now, patient)
            answered = {
                one["id"]: one["source"] for one in tx.all("review_sources", patient_id=patient)
            }
            return Visit(record, before, before_at, answered)

        return await self._db.transact(look)

    async def record(
        self, patient: PatientId, member: Member, what: str, now: datetime
    ) -> WholeRecord | None:
        """One patient's whole record, to leave the system; kept in the log as ``what``."""

        def look(tx: Tx) -> WholeRecord | None:
            found = whole(tx, patient)
            if found is not None:
                _seen(tx, member, what, now, patient)
            return found

        return await self._db.transact(look)

    async def reading(
        self, patient: PatientId, observation: ObservationId, member: Member, now: datetime
    ) -> Reading | None:
        """One observation with its words, to be corrected; the look is kept in the log."""

        def look(tx: Tx) -> Reading | None:
            found = _reading(tx, patient, observation)
            if found is not None:
                what = f"looked at reading {observation}"
                _seen(tx, member, what, now, patient)
            return found

        return await self._db.transact(look)

    async def picture(
        self, patient: PatientId, picture: PictureId, member: Member, now: datetime
    ) -> tuple[str, str] | None:
        """(path on the shelf, kind) of a kept picture or film. A look that is no part of a
        visit to the patient's page is kept in the log."""

        def find(tx: Tx) -> tuple[Row | None, bool]:
            seen = tx.one("review_seen", member_id=member.id, patient_id=patient)
            visiting = seen is not None and now - moment(seen["at"]) < ONE_VISIT
            return tx.one("review_picture", patient_id=patient, id=picture), visiting

        row, visiting = await self._read(find)
        if row is None:
            return None
        if not visiting:
            await self._db.transact(
                lambda tx: _seen(tx, member, f"looked at picture {picture}", now, patient)
            )
        return row["path"], row["kind"]

    async def search(self, query: Query, member: Member, now: datetime) -> list[Found]:
        """Conversations that hold the words, newest first; the look is kept in the log."""

        def look(tx: Tx) -> list[Found]:
            found = search(tx, query)
            _seen(tx, member, f"searched for: {query.words}", now, query.patient,
                  patients=sorted({one.patient for one in found}))  # fmt: skip
            return found

        return await self._db.transact(look)

    async def went_on(self, after: int) -> tuple[list[PatientId], int]:
        """The patients of whom something was kept after this entry of the log (0: all), or
        who have an open case, which grows older by itself; and the newest entry."""

        def look(tx: Tx) -> tuple[list[PatientId], int]:
            last = head(tx)
            rows = tx.all("patients_after", after=after) if after else tx.all("patient_ids")
            return [row["id"] for row in rows], last.entry if last else 0

        return await self._read(look)

    async def courses(self, patients: Sequence[PatientId], now: datetime) -> tuple[Course, ...]:
        """The courses of these, for the statistics."""
        return await self._read(lambda tx: courses(tx, now, patients))

    async def act(self, out: Effects, now: datetime) -> None:
        """Keep what a clinician corrected or noted, in one transaction."""
        await self._db.transact(lambda tx: apply(tx, out, now))


def _seen(
    tx: Tx,
    member: Member,
    what: str,
    now: datetime,
    patient: PatientId | None = None,
    *,
    kind: str = "viewed",
    patients: list[PatientId] | None = None,
) -> None:
    """A line in the log: who looked at what."""
    data: dict[str, object] = {"member": member.id}
    if patients is not None:
        data["patients"] = patients
    by = Cause(member=member.id)
    log(tx, kind, member.name, what, now, patient, data, by)


def _member(row: Row) -> Member:
    return Member(row["id"], row["user_id"], row["name"], row["role"], row["chat_id"])


def _invited(tx: Tx, code: str, now: datetime) -> Member | None:
    row = tx.one("review_invited", digest=code)
    if row is None or row["used_at"] is not None or moment(row["expires_at"]) <= now:
        return None
    return _member(row)


def _listed(tx: Tx, ended: bool) -> list[Listed]:
    cases: dict[PatientId, list[OpenCase]] = {}
    for row in tx.all("review_cases"):
        cases.setdefault(row["patient_id"], []).append(
            OpenCase(row["id"], row["matter"], Urgency(row["urgency"]), row["state"],
                     moment(row["deadline_at"]), row["acknowledged_by"])
        )  # fmt: skip
    rows, unread = _all(tx, ended)
    found = [
        Listed(
            row["id"], row["name"], *_facts(row), row["state"], moment(row["enrolled_at"]),
            moment(row["last_heard_at"]) if row["last_heard_at"] else None,
            tuple(cases.get(row["id"], ())),
        )
        for row in rows
    ]  # fmt: skip
    for id, name in unread.items():
        first = tx.one("review_began", patient_id=id)
        began = moment(first["at"]) if first else datetime.min.replace(tzinfo=UTC)
        found.append(Listed(id, name, "", UNREAD, "", "UTC", began.date(), "active", began, None,
                            tuple(cases.get(id, ()))))  # fmt: skip
    return found


def _all(tx: Tx, ended: bool) -> tuple[Sequence[Row], dict[PatientId, str]]:
    """At once, as there may be thousands; one by one where anything of it cannot be read."""
    asked = {"ended": int(ended)}
    rows, _ = attempt(tx, "the list", lambda: tx.all("review_patients", **asked))
    if rows is not None:
        return rows, {}
    found = each(tx, lambda id: tx.one("review_patient", id=id, **asked))
    return tuple(found.found.values()), found.unread


def _facts(row: Row) -> tuple[str, str, str, str, date]:
    """What the list shows of a plan; that it cannot be read, where it cannot."""
    try:
        ZoneInfo(row["zone"])
        return (
            row["owner"] or "", row["procedure"], row["clinician"], row["zone"],
            date.fromisoformat(row["surgery"]),
        )  # fmt: skip
    except (TypeError, ValueError, ZoneInfoNotFoundError):
        return "", UNREAD, "", "UTC", moment(row["enrolled_at"]).date()


def _glance(tx: Tx, patient: PatientId, now: datetime) -> Glance:
    said = tx.one("review_last_said", patient_id=patient)
    leg = tx.one("review_last_about", patient_id=patient, about="weight_bearing")
    doses = tx.one("review_doses", patient_id=patient, now=stamp(now))
    row = tx.one("patient", id=patient)
    spans: dict[str, int] = {}
    if row is not None:
        spans = {**load.protocol_of(row["protocol"]).spans, **load.plan_of(row["plan"]).spans}
    return Glance(
        said=(moment(said["at"]), said["author"], said["text"]) if said else None,
        leg=(leg["day"], Observation.from_dict(json.loads(leg["body"]))) if leg else None,
        given=doses["given"] if doses else 0,
        due=doses["due"] if doses else 0,
        rechecks=tuple(
            sorted((spans[name], name) for name in ("recheck", "radiographs") if name in spans)
        ),
        holds=tuple(load.hold_of(one["body"]) for one in tx.all("holds_of", patient_id=patient)),
    )


def _reading(tx: Tx, patient: PatientId, observation: ObservationId) -> Reading | None:
    row = tx.one("review_statement", patient_id=patient, id=observation)
    if row is None:
        return None
    statement = statement_of(row)
    said = tx.one("review_words_of", patient_id=patient, source=statement.source)
    lines = tx.all("review_lines", patient_id=patient, source=statement.source)
    return Reading(
        statement=statement,
        author=said["author"] if said else statement.author,
        words=said["text"] if said else "",
        lines=tuple(
            (one["id"], one["kind"], one["med"], str(json.loads(one["body"]).get("asks", "none")))
            for one in lines
        ),
    )
