"""What an event sees of the tables: the same windows as the store reads
(``bot/store/load.py``)."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime, timedelta

from bot.model.urgency import Urgency
from bot.talk.scene import (
    Case,
    Chart,
    Desk,
    Invitation,
    LateTap,
    Member,
    Person,
    RosterLine,
    Written,
)

from .tables import CaseRow, Entry, PatientRow, Tables

BACK, AHEAD = timedelta(hours=60), timedelta(hours=36)
DOSES = timedelta(days=8)
CHANGEABLE = timedelta(days=7)
WRITTEN = ("staff", "note", "plan", "ended", "left", "link", "desk")
"""Entries that a message of staff may have led to."""


def chart(tables: Tables, id: int, now: datetime, prompt: int | None = None) -> Chart | None:
    """One patient; ``prompt`` names one that must be there even when it is long overdue."""
    row = tables.patients.get(id)
    if row is None:
        return None
    near = tuple(row.sheets_within(now - BACK, now + AHEAD))
    if prompt is not None and all(sheet.id != prompt for sheet in near):
        asked = row.sheet(prompt)
        near = (asked, *near) if asked is not None else near
    history, sources = row.history()
    return Chart(
        id=id,
        plan=row.plan,
        protocol=row.protocol,
        state=row.state,
        enrolled_at=row.enrolled_at,
        last_heard=row.last_heard,
        people=people_of(tables, row),
        history=history,
        sources=sources,
        sheets=near,
        dose_lines=tuple(row.doses_within(now - DOSES, now + DOSES)),
        cases=cases_of(row),
        next_case=len(row.cases) + 1,
        pictures=tuple(row.pictures.values()),
        reviews=tuple(row.reviews[one] for one in sorted(row.reviews)),
        wounds=tuple(row.wounds[day] for day in sorted(row.wounds)),
        late_taps=tuple(_late_taps(tables, id)),
    )


def people_of(tables: Tables, row: PatientRow) -> tuple[Person, ...]:
    """Who takes care of the patient now, in the order in which they joined."""
    with_them = [carer for carer in row.carers.values() if carer.left_at is None]
    with_them.sort(key=lambda carer: (carer.joined_at, carer.person))
    return tuple(
        replace(tables.people[carer.person], wants=carer.wants or "all", hours=carer.hours)
        for carer in with_them
    )


def cases_of(row: PatientRow) -> tuple[Case, ...]:
    """The cases that are not closed, the first opened first."""
    found = [_case(case) for case in row.cases.values() if case.change.state != "closed"]
    return tuple(sorted(found, key=lambda case: case.opened_at))


def _case(row: CaseRow) -> Case:
    change = row.change
    by = row.acknowledged_by if change.state != "open" else None
    return Case(
        change.id, change.patient, change.matter, Urgency(change.urgency), change.state,
        change.opened_at, change.deadline, change.pages, change.policy, change.body, by,
    )  # fmt: skip


def _late_taps(tables: Tables, patient: int) -> Iterable[LateTap]:
    for row in tables.dues.of_kind("given"):
        if row.patient == patient:
            data = row.data
            yield LateTap(
                tuple(data["lines"]), row.at, data["prompt"], data["chat"],
                datetime.fromisoformat(data["tapped"]), data["source"],
            )  # fmt: skip


def person_of(tables: Tables, user: int) -> Person | None:
    """The person at home with this account."""
    return next((one for one in tables.people.values() if one.user == user), None)


def charts_of(tables: Tables, person: Person, now: datetime) -> tuple[Chart, ...]:
    """The patients that a person takes care of, those under way first."""
    rows = [
        row
        for row in tables.patients.values()
        if person.id in row.carers and row.carers[person.id].left_at is None
    ]
    rows.sort(key=lambda row: (row.state, row.id))
    found = (chart(tables, row.id, now) for row in rows)
    return tuple(one for one in found if one is not None)


def desks(tables: Tables) -> tuple[Desk, ...]:
    """The staff chats, in the order in which they are paged."""
    return tuple(sorted(tables.desks.values(), key=lambda desk: (desk.rank, desk.chat)))


def staff(tables: Tables) -> tuple[Member, ...]:
    """The people of the practice."""
    return tuple(one for id, one in sorted(tables.staff.items()) if id not in tables.gone)


def roster(tables: Tables, wanted: str | None = None) -> tuple[RosterLine, ...]:
    """Patients under way and those of the past with an open case; with ``wanted`` only
    those of this number or name."""
    found = []
    for row in tables.patients.values():
        cases = cases_of(row)
        named = wanted is None or wanted.strip().lower() in (str(row.id), row.plan.patient.lower())
        if named and (row.state != "ended" or cases):
            found.append(
                RosterLine(
                    row.id, row.plan, row.protocol, row.state, row.enrolled_at, row.last_heard,
                    tuple(sorted(cases, key=lambda case: case.deadline)),
                )
            )  # fmt: skip
    return tuple(found)


def invitation(tables: Tables, digest: str, now: datetime) -> Invitation | None:
    """The one-time link with this digest."""
    row = tables.invitations.get(digest)
    if row is None:
        return None
    good = not row.used and row.expires > now
    return Invitation(digest, row.kind, good, row.patient, row.rank, row.name, row.role)


def written(tables: Tables, source: str, now: datetime) -> tuple[Written, ...]:
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
            sent=_arrived(tables, entry),
        )
        for entry in tables.log
        if entry.kind in WRITTEN
        and entry.at >= now - CHANGEABLE
        and entry.data.get("source") == source
        and isinstance(entry.data.get("user"), int)
    )


def _arrived(tables: Tables, entry: Entry) -> dict[int, int]:
    return dict(tables.sent[key] for key in entry.data.get("sent", ()) if key in tables.sent)
