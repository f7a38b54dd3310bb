"""One patient's record, and the courses of all, read from the database."""

from __future__ import annotations

import json
from collections.abc import Sequence
from datetime import datetime

from bot.measures.course import Course
from bot.model.harmless import harmless, harmless_json, harmless_value
from bot.model.ids import PatientId
from bot.model.observation import Noted, Observation
from bot.model.plan import Item
from bot.model.text import Lang
from bot.model.urgency import Urgency
from bot.records.course import asked_of, course_of
from bot.records.record import Record
from bot.records.whole import Carer, CaseFile, Entry, Picture, Statement, WholeRecord

from .audit import cause_of, head
from .database import Row, Tx, moment
from .each import each
from .load import hold_of, plan_of, protocol_of, wound_of


def whole(tx: Tx, patient: PatientId) -> WholeRecord | None:
    """Everything that is kept about ``patient``, what was taken back or corrected too;
    None when there is no such patient."""
    row = tx.one("whole_patient", id=patient)
    if row is None:
        return None
    return WholeRecord(
        id=row["id"],
        plan=plan_of(row["plan"]),
        protocol=protocol_of(row["protocol"]),
        state=row["state"],
        enrolled_at=moment(row["enrolled_at"]),
        last_heard=_maybe(row["last_heard_at"]),
        ended_at=_maybe(row["ended_at"]),
        carers=tuple(_carer(one) for one in tx.all("whole_carers", patient_id=patient)),
        statements=tuple(
            statement_of(one) for one in tx.all("whole_observations", patient_id=patient)
        ),
        entries=tuple(_entry(one) for one in tx.all("whole_entries", patient_id=patient)),
        cases=tuple(_case(one) for one in tx.all("whole_cases", patient_id=patient)),
        pictures=tuple(_picture(one) for one in tx.all("whole_pictures", patient_id=patient)),
        wounds=tuple(wound_of(one) for one in tx.all("wounds_of", patient_id=patient)),
        log=log_of(tx, patient),
        head=head(tx),
        holds=tuple(hold_of(one["body"]) for one in tx.all("holds_of", patient_id=patient)),
    )


def log_of(tx: Tx, patient: PatientId) -> tuple[Record, ...]:
    """The log of a patient, oldest first."""
    return tuple(record_of(row) for row in tx.all("log_of", patient_id=patient))


def record_of(row: Row) -> Record:
    """One row of log."""
    return Record(
        row["id"], moment(row["at"]), row["kind"], harmless(row["author"]), harmless(row["text"]),
        harmless_value(json.loads(row["data"])), cause_of(row),
    )  # fmt: skip


def courses(
    tx: Tx, now: datetime, patients: Sequence[PatientId] | None = None
) -> tuple[Course, ...]:
    """The courses of ``patients``, or of all, for the statistics of the practice
    (``bot.measures``). What was asked comes in no order. A millisecond and a half each:
    read many off the loop, some at a time. One that cannot be read hides no other; ``n`` says how
    many were."""
    return tuple(each(tx, lambda id: _course(tx, id, now), patients).found.values())


def _course(tx: Tx, patient: PatientId, now: datetime) -> Course | None:
    row = tx.one("cohort_patient", id=patient)
    if row is None:
        return None
    use = [
        (one["day"], Observation.from_dict(json.loads(one["body"])))
        for one in tx.all("cohort_use", patient_id=patient)
    ]
    asked = [
        asked_of(one["item_id"], one["kind"], one["med"], one["day"], one["state"], one["choice"])
        for one in tx.all("cohort_items", patient_id=patient)
    ]
    return course_of(
        patient, plan_of(row["plan"]), _maybe(row["ended_at"]), _maybe(row["last_heard_at"]),
        use, asked, [_case(one) for one in tx.all("whole_cases", patient_id=patient)],
        [wound_of(one) for one in tx.all("wounds_of", patient_id=patient)], now,
    )  # fmt: skip


def _maybe(text: str | None) -> datetime | None:
    return moment(text) if text else None


def _plain(text: str | None) -> str | None:
    return text if text is None else harmless(text)


def _carer(row: Row) -> Carer:
    lang: Lang = "es" if row["lang"] == "es" else "en"
    return Carer(
        row["id"], harmless(row["name"]), lang, moment(row["joined_at"]), _maybe(row["left_at"]),
        bool(row["reachable"]),
    )  # fmt: skip


def statement_of(row: Row) -> Statement:
    """One row of observation."""
    observation = Observation.from_dict(harmless_value(json.loads(row["body"])))
    noted = Noted(observation, moment(row["at"]), row["day"], row["id"])
    return Statement(noted, row["source"], harmless(row["author"]), row["person_id"], row["state"],
                     row["event"])  # fmt: skip


def _entry(row: Row) -> Entry:
    return Entry(
        id=row["id"], item=Item.model_validate_json(harmless_json(row["body"])), day=row["day"],
        due_at=moment(row["due_at"]), sent_at=_maybe(row["sent_at"]), state=row["state"],
        choice=row["choice"], by=_plain(row["by_name"]), at=_maybe(row["at"]),
    )  # fmt: skip


def _picture(row: Row) -> Picture:
    kept = row["sha256"] if row["state"] == "kept" else ""
    return Picture(
        row["id"], row["kind"], moment(row["at"]), row["day"], harmless(row["caption"]), kept or "",
        row["source"],
    )  # fmt: skip


def _case(row: Row) -> CaseFile:
    return CaseFile(
        id=row["id"], matter=row["matter"], urgency=Urgency(row["urgency"]), state=row["state"],
        opened_at=moment(row["opened_at"]), deadline=moment(row["deadline_at"]),
        acknowledged_at=_maybe(row["acknowledged_at"]),
        acknowledged_by=_plain(row["acknowledged_by"]), answered_at=_maybe(row["answered_at"]),
        answered_by=_plain(row["answered_by"]), closed_at=_maybe(row["closed_at"]),
        closed_by=_plain(row["closed_by"]), outcome=row["outcome"], note=_plain(row["note"]),
        pages=row["pages"], body=harmless_value(json.loads(row["body"])),
    )  # fmt: skip
