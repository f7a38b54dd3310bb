"""What is known, read from the database into the values that ``bot.model`` has of it."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable
from datetime import datetime, timedelta
from functools import lru_cache
from typing import Any

from bot.model.chart import (
    UNREACHED,
    Case,
    Chart,
    ClosedCase,
    Desk,
    Invitation,
    LateTap,
    Line,
    Member,
    OpenDoubt,
    Person,
    Picture,
    Release,
    Review,
    RosterLine,
    Sheet,
    WoundCheck,
    Written,
)
from bot.model.chat import Media
from bot.model.harmless import harmless_json
from bot.model.healing import Healing
from bot.model.hold import Hold
from bot.model.ids import PatientId, PersonId, PromptId, SourceId
from bot.model.observation import Noted, Observation
from bot.model.plan import Item, Plan
from bot.model.protocol import Protocol
from bot.model.settings import PagingStep
from bot.model.text import Lang
from bot.model.urgency import Urgency

from .database import Row, Tx, moment, stamp
from .each import Each, attempt, each, names

BACK, AHEAD = timedelta(hours=60), timedelta(hours=36)
"""Prompts so far back and ahead are loaded with a patient."""
CLOSED = timedelta(days=1)
"""How long a closed case is still known: words that go back to it are told from new ones."""
DOSES = timedelta(days=8)
"""Doses so far back and ahead; more than one interval of a weekly medicine."""


@lru_cache(maxsize=512)
def plan_of(text: str) -> Plan:
    """A stored plan, with words that may leave."""
    return Plan.model_validate_json(harmless_json(text))


@lru_cache(maxsize=64)
def protocol_of(text: str) -> Protocol:
    """A stored protocol, as it was when the patient was enrolled."""
    return Protocol.model_validate_json(text)


@lru_cache(maxsize=8192)
def _item(text: str) -> Item:
    return Item.model_validate_json(text)


@lru_cache(maxsize=8192)
def _observation(text: str) -> Observation:
    return Observation.from_dict(json.loads(text))


@lru_cache(maxsize=4096)
def hold_of(text: str) -> Hold:
    return Hold.from_dict(json.loads(text))


def _maybe(text: str | None) -> datetime | None:
    return moment(text) if text else None


def _lang(text: str) -> Lang:
    return "es" if text == "es" else "en"


def _person(row: Row) -> Person:
    keys = row.keys()
    return Person(
        row["id"], row["user_id"], row["chat_id"], row["name"], _lang(row["lang"]),
        bool(row["reachable"]),
        (row["wants"] or "all") if "wants" in keys else "all",
        json.loads(row["hours"]) if "hours" in keys and row["hours"] else None,
    )  # fmt: skip


def person_of(tx: Tx, user: int) -> Person | None:
    """The person with this user id of the platform."""
    row = tx.one("person_of_user", user_id=user)
    return _person(row) if row else None


def charts_of(tx: Tx, person: Person, now: datetime) -> tuple[Chart, ...]:
    """The patients that a person takes care of, those under way first."""
    rows = tx.all("patients_of_person", person_id=person.id)
    found = (chart(tx, row["patient_id"], now) for row in rows)
    return tuple(one for one in found if one is not None)


def _line(row: Row) -> Line:
    return Line(
        id=row["id"],
        prompt=row["prompt_id"],
        item=_item(row["body"]),
        state=row["state"],
        choice=row["choice"],
        by=row["by_name"],
        at=_maybe(row["at"]),
        source=row["source"],
        person=row["person_id"],
    )


def _sheet(row: Row, lines: tuple[Line, ...]) -> Sheet:
    return Sheet(
        id=row["id"],
        key=row["key"],
        due_at=moment(row["due_at"]),
        day=row["day"],
        sent_at=_maybe(row["sent_at"]),
        lines=lines,
        reminded=_maybe(row["reminded_at"]),
    )


def sheets(tx: Tx, patient: PatientId, now: datetime) -> tuple[Sheet, ...]:
    """The prompts of the last days and the next, with their lines."""
    window = {
        "patient_id": patient, "since": stamp(now - BACK), "until": stamp(now + AHEAD),
    }  # fmt: skip
    lines: dict[PromptId, list[Line]] = {}
    for row in tx.all("items_near", **window):
        lines.setdefault(row["prompt_id"], []).append(_line(row))
    return tuple(
        _sheet(row, tuple(lines.get(row["id"], ()))) for row in tx.all("prompts_near", **window)
    )


def _sheet_of(tx: Tx, patient: PatientId, prompt: PromptId) -> tuple[Sheet, ...]:
    row = tx.one("prompt_of", patient_id=patient, id=prompt)
    if row is None:
        return ()
    return (_sheet(row, tuple(_line(one) for one in tx.all("items_of", prompt_id=prompt))),)


def chart(
    tx: Tx, patient: PatientId, now: datetime, prompt: PromptId | None = None
) -> Chart | None:
    """One patient; ``prompt`` names one that must be there even when it is long overdue."""
    row = tx.one("patient", id=patient)
    if row is None:
        return None
    noted = tx.all("observations", patient_id=patient)
    near = sheets(tx, patient, now)
    if prompt is not None and not any(sheet.id == prompt for sheet in near):
        near = (*_sheet_of(tx, patient, prompt), *near)
    count = tx.one("cases_count", patient_id=patient)
    doses = tx.all(
        "doses_near", patient_id=patient, since=stamp(now - DOSES), until=stamp(now + DOSES)
    )
    return Chart(
        id=row["id"],
        plan=plan_of(row["plan"]),
        protocol=protocol_of(row["protocol"]),
        state=row["state"],
        enrolled_at=moment(row["enrolled_at"]),
        last_heard=_maybe(row["last_heard_at"]),
        people=tuple(_person(one) for one in tx.all("people_of_patient", patient_id=patient)),
        history=tuple(
            Noted(_observation(one["body"]), moment(one["at"]), one["day"], one["id"])
            for one in noted
        ),
        sources={one["id"]: (one["source"], one["person_id"]) for one in noted},
        sheets=near,
        dose_lines=tuple(_line(one) for one in doses),
        cases=tuple(_case(one) for one in tx.all("cases_of", patient_id=patient)),
        closed=tuple(
            ClosedCase(one["id"], one["matter"], Urgency(one["urgency"]), moment(one["closed_at"]))
            for one in tx.all("cases_closed", patient_id=patient, since=stamp(now - CLOSED))
        ),
        next_case=(count["n"] if count else 0) + 1,
        pictures=tuple(_picture(one) for one in tx.all("media_of", patient_id=patient)),
        reviews=tuple(
            Review(one["id"], one["line_id"], json.loads(one["body"]))
            for one in tx.all("reviews_of", patient_id=patient)
        ),
        wounds=tuple(wound_of(one) for one in tx.all("wounds_of", patient_id=patient)),
        late_taps=tuple(
            _late_tap(one) for one in tx.all("due_of_kind", patient_id=patient, kind="given")
        ),
        doubts=tuple(
            OpenDoubt.of(moment(one["due_at"]), json.loads(one["data"]))
            for one in tx.all("due_of_kind", patient_id=patient, kind="doubt")
        ),
        holds=tuple(hold_of(one["body"]) for one in tx.all("holds_of", patient_id=patient)),
        releases=tuple(
            Release(hold_of(one["body"]).target, moment(one["ended_at"]))
            for one in tx.all("holds_released", patient_id=patient)
        ),
    )


def _late_tap(row: Row) -> LateTap:
    data = json.loads(row["data"])
    return LateTap(
        tuple(data["lines"]), moment(row["due_at"]), data["prompt"], data["chat"],
        datetime.fromisoformat(data["tapped"]), data["source"],
    )  # fmt: skip


def _picture(row: Row) -> Picture:
    return Picture(
        id=row["id"],
        media=Media(
            kind=row["kind"], file=row["file_id"], unique=row["file_unique"], album=row["album"]
        ),
        day=row["day"],
        at=moment(row["at"]),
        caption=row["caption"],
        person=row["person_id"],
        line=row["line_id"],
        state=row["state"],
        path=row["path"],
        verdict=json.loads(row["verdict"]),
        retake=bool(row["retake"]),
        attempts=row["attempts"],
        source=row["source"],
    )


def wound_of(row: Row) -> WoundCheck:
    """One asking of how the wound healed."""
    return WoundCheck(
        row["day"], moment(row["asked_at"]),
        Healing(**json.loads(row["told"])) if row["told"] else None, _maybe(row["told_at"]),
        row["person_id"],
        {PersonId(int(who)): tuple(signs) for who, signs in json.loads(row["drafts"]).items()},
    )  # fmt: skip


def _case(row: Row) -> Case:
    return Case(
        id=row["id"],
        patient=row["patient_id"],
        matter=row["matter"],
        urgency=Urgency(row["urgency"]),
        state=row["state"],
        opened_at=moment(row["opened_at"]),
        deadline=moment(row["deadline_at"]),
        pages=row["pages"],
        policy=PagingStep.model_validate_json(row["policy"]),
        body=json.loads(row["body"]),
        acknowledged_by=row["acknowledged_by"] if row["state"] != "open" else None,
    )


def unreached(tx: Tx, case: str | None = None) -> dict[str, dict[str, Any]]:
    """Open cases that have reached nobody at the practice, by id, with their bodies; or the
    one that is asked for, if it is such a case."""
    found: dict[str, dict[str, Any]] = {}
    for row in tx.all("cases_waiting", id=case):
        try:
            body = json.loads(row["body"])
        except ValueError:  # its patient cannot be read, and is told of elsewhere
            continue
        if UNREACHED in body:
            found[row["id"]] = body
    return found


def desks(tx: Tx, *, held: bool = False) -> tuple[Desk, ...]:
    """The staff chats, in the order in which they are paged; or (``held``) those to which
    nothing is sent until an administrator says so."""
    return tuple(
        Desk(row["chat_id"], row["rank"], row["name"], _maybe(row["lost"]), row["opened_by"])
        for row in tx.all("desks", held=int(held))
    )


def staff(tx: Tx) -> tuple[Member, ...]:
    """The people of the practice."""
    return tuple(
        Member(
            row["id"],
            row["user_id"],
            row["name"],
            row["role"],
            row["chat_id"],
            _maybe(row["lost"]),
        )
        for row in tx.all("staff")
    )


def roster(tx: Tx, *, ended: bool = False, wanted: str | None = None) -> tuple[RosterLine, ...]:
    """All patients under way, and those of the past with an open case; with ``ended`` all
    of the past as well, and with ``wanted`` only those of this number or name. Whoever cannot be
    read keeps no other from the list (``unread``); who is asked for by name must be read."""
    if wanted is None:
        return tuple(everybody(tx, ended=ended).found.values())
    there, name = _open(tx), wanted.strip().lower()
    rows, _ = attempt(tx, "who is named", lambda: tx.all("patients_named", wanted=name))
    asked = (
        [row["id"] for row in rows]
        if rows is not None
        else [id for id, one in names(tx).items() if name in (one.lower(), str(id))]
    )
    found = [_roster_line(tx, id, there, ended) for id in asked]
    return tuple(one for one in found if one is not None)


def unread(tx: Tx) -> dict[PatientId, str]:
    """Who of them cannot be read, by number, with the name: of those staff must look themselves."""
    return everybody(tx).unread


def everybody(tx: Tx, *, ended: bool = False) -> Each[RosterLine]:
    """Both. Of one who cannot be read nobody knows whether the course is over."""
    there = _open(tx)
    return each(tx, lambda id: _roster_line(tx, id, there, ended))


_Open = Callable[[PatientId], tuple[Iterable[Row], Iterable[Row]]]


def _open(tx: Tx) -> _Open:
    """The open cases and the holds of each: at once, or where those cannot be read one by one."""
    both, _ = attempt(tx, "what is open", lambda: (
        _by_patient(tx.all("cases_open")), _by_patient(tx.all("holds_standing"))
    ))  # fmt: skip
    if both is None:
        return lambda id: (tx.all("cases_of", patient_id=id), tx.all("holds_of", patient_id=id))
    cases, holds = both
    return lambda id: (cases.get(id, ()), holds.get(id, ()))


def _by_patient(rows: Iterable[Row]) -> dict[PatientId, list[Row]]:
    found: dict[PatientId, list[Row]] = {}
    for row in rows:
        found.setdefault(row["patient_id"], []).append(row)
    return found


def _roster_line(tx: Tx, id: PatientId, there: _Open, ended: bool) -> RosterLine | None:
    cases, holds = there(id)
    row = tx.one("patient_listed", id=id, ended=int(ended or bool(cases)))
    if row is None:
        return None
    return RosterLine(
        id=id,
        plan=plan_of(row["plan"]),
        protocol=protocol_of(row["protocol"]),
        state=row["state"],
        enrolled_at=moment(row["enrolled_at"]),
        last_heard=_maybe(row["last_heard_at"]),
        cases=tuple(_case(one) for one in cases),
        holds=tuple(hold_of(one["body"]) for one in holds),
    )


def invitation(tx: Tx, digest: str, now: datetime) -> Invitation | None:
    """The one-time link with this digest."""
    row = tx.one("invitation", digest=digest)
    if row is None:
        return None
    good = row["used_at"] is None and moment(row["expires_at"]) > now
    return Invitation(
        row["digest"],
        row["kind"],
        good,
        row["patient_id"],
        row["rank"],
        row["name"],
        row["role"],
        row["member_id"],
    )


CHANGEABLE = timedelta(days=7)
"""How long a message can be changed, and more: 48 hours in groups (Telegram, from memory)."""


def written(tx: Tx, source: SourceId, now: datetime) -> tuple[Written, ...]:
    """What staff's message ``source`` has led to, oldest first."""
    rows = tx.all("log_written", source=source, since=stamp(now - CHANGEABLE))
    found = [(row, json.loads(row["data"])) for row in rows]
    return tuple(
        Written(
            at=moment(row["at"]),
            kind=row["kind"],
            user=data["user"],
            text=row["text"],
            patient=row["patient_id"],
            topic=data.get("topic", ""),
            picture=data.get("picture", ""),
            sent=_arrived(tx, data.get("sent", ())),
        )
        for row, data in found
        if isinstance(data.get("user"), int)
    )


def _arrived(tx: Tx, keys: Iterable[str]) -> dict[int, int]:
    rows = (tx.one("outbox_arrived", dedupe=key) for key in keys)
    return {row["chat_id"]: row["message_id"] for row in rows if row is not None}
