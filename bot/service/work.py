"""Units of work: each takes one waiting row, does all that it causes in one
transaction, and says whether there was one. A test calls them without any loop."""

from __future__ import annotations

import json
import logging
from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from typing import Any

from bot.context.buttons import action_of, digest_of
from bot.context.contexts import AtDesk, AtHome, FellDue, Talk
from bot.context.practice import Practice
from bot.desk.board import find
from bot.desk.desk import COMMANDS as DESK_COMMANDS
from bot.desk.desk import source_of
from bot.events.handle import handle
from bot.model.action import (
    DESK,
    Action,
    BoardSection,
    OnCase,
    OnHold,
    OnPlan,
    OnRecheck,
    RemovePerson,
)
from bot.model.chart import Chart, Member, RosterLine, Written
from bot.model.chat import Incoming
from bot.model.effects import ChatMoved, Effects
from bot.model.ids import EventId, due_event, update_event
from bot.model.text import Lang
from bot.model.topic import TOPICS, AboutCase, patient_of
from bot.records.record import Record, readable
from bot.store import load
from bot.store.apply import apply, conversation, log, put_due, send
from bot.store.database import Database, Row, Tx, moment, stamp
from bot.telegram.translate import incoming

from .practice import fresh_code

logger = logging.getLogger(__name__)

TRIES = 3
"""How often a row that fails is tried before staff get it as it is."""


async def handle_update(db: Database, practice: Practice, now: datetime) -> bool:
    """Do what the oldest waiting update causes."""

    def whole(tx: Tx) -> bool:
        row = tx.one("inbox_next")
        if row is None:
            return False
        failing["row"] = row
        event = incoming(json.loads(row["body"]), moment(row["received_at"]))
        out = think(tx, practice, event, now)
        apply(tx, out, now)
        tx.run("inbox_mark", update_id=row["update_id"], state="done", error=None)
        return True

    failing: dict[str, Row] = {}
    try:
        return await db.transact(whole)
    except Exception as error:
        row = failing.get("row")
        if row is None:
            raise
        logger.exception("update %s could not be handled", row["update_id"])
        why = f"{type(error).__name__}: {error}"
        await db.transact(lambda tx: _update_failed(tx, practice, row, why, now))
        return True


def think(tx: Tx, practice: Practice, event: Incoming, now: datetime) -> Effects:
    """The effects of one update, whoever it comes from."""
    cause = update_event(event.update)
    if event.kind == "migrated" and event.new_chat is not None:
        out = Effects(cause)
        out.add(ChatMoved(event.chat, event.new_chat))
        return out
    if event.kind == "other" or event.chat == 0:
        return Effects(cause)
    return handle(context_of(tx, practice, event, now))


def context_of(tx: Tx, practice: Practice, event: Incoming, now: datetime) -> AtHome | AtDesk:
    """What this kind of event needs to be known."""
    event = replace(event, text=_plain_command(event.text))
    staff = load.staff(tx)
    code = _code_of(event.text)
    topic = (
        tx.one("outbox_topic", chat_id=event.chat, message_id=event.reply_to)
        if event.reply_to
        else None
    )
    written = load.written(tx, source_of(event), now) if event.kind == "edited" else ()
    common: dict[str, Any] = {
        "practice": practice,
        "now": now,
        "event": update_event(event.update),
        "desks": load.desks(tx),
        "staff": staff,
        "incoming": event,
        "conversation": conversation(tx, event.chat),
        "topic": TOPICS.decode(topic["topic"]) if topic else None,
        "invitation": load.invitation(tx, digest_of(code), now) if code else None,
        "former": tuple(r["old"] for r in tx.all("chat_former", chat_id=event.chat)),
        "fresh_code": fresh_code(),
    }
    talk = Talk(**common)
    actor = _actor(staff, event)
    invitation = talk.invitation
    for_staff = invitation is not None and invitation.kind in ("desk", "staff")
    if not event.private or for_staff or _staff_act(talk, actor, written):
        action = action_of(practice.secret, (event.chat, *talk.former), event.data)
        charts = _charts_for_desk(tx, talk, action, written)
        names = isinstance(action, BoardSection) or event.text.startswith(ABOUT_PATIENTS)
        return AtDesk(
            **common,
            actor=actor,
            written=written,
            charts=charts,
            roster=_roster(tx, event) if names else (),
            log_tail=_tail(tx, charts) if event.text.startswith("/log") else (),
        )
    person = load.person_of(tx, event.sender.user) if event.sender else None
    found = load.charts_of(tx, person, now) if person else ()
    if invitation and invitation.patient and all(c.id != invitation.patient for c in found):
        invited = load.chart(tx, invitation.patient, now)
        found = (*found, invited) if invited else found
    return AtHome(**common, person=person, charts=found)


def _plain_command(text: str) -> str:
    """In groups a command names the bot (``/log@the_bot Canela``): drop the name."""
    first, space, rest = text.partition(" ")
    line, newline, more = first.partition("\n")
    if line.startswith("/"):
        line = line.partition("@")[0]
    return f"{line}{newline}{more}{space}{rest}"


ABOUT_PATIENTS = ("/patients", "/board", "/log", "/link", "/end", "/plan", "/medicine", "/people")
"""Staff commands that need the list of patients."""


def _name_in(event: Incoming) -> str:
    """The patient's name or number behind a command."""
    return event.text.partition("\n")[0].partition(" ")[2].strip()


def _roster(tx: Tx, event: Incoming) -> tuple[RosterLine, ...]:
    """The patients that a staff event needs: the one named, or all."""
    name = _name_in(event)
    return (name and load.roster(tx, wanted=name)) or load.roster(tx)


def _actor(members: tuple[Member, ...], event: Incoming) -> Member | None:
    if event.sender is None:
        return None
    return next((one for one in members if one.user == event.sender.user), None)


def _code_of(text: str) -> str:
    """The one-time code behind /start or /join."""
    words = text.split()
    if len(words) == 2 and words[0] in ("/start", "/join"):
        return words[1]
    return ""


def _staff_act(talk: Talk, actor: Member | None, written: Sequence[Written]) -> bool:
    """Whether a private chat that is also a staff chat speaks as staff now."""
    event = talk.incoming
    if talk.invitation is not None and talk.invitation.kind == "owner":
        return False  # staff may have a pet, too
    if written:
        return True
    if actor is None and talk.desk(event.chat) is None:
        return event.text.startswith("/join ")
    if event.kind == "button":
        action = action_of(talk.practice.secret, (event.chat, *talk.former), event.data)
        return isinstance(action, DESK)
    first = event.text.split(" ")[0].split("\n")[0]
    return first in (*DESK_COMMANDS, "/join") or isinstance(talk.topic, AboutCase)


def _charts_for_desk(
    tx: Tx, talk: Talk, action: Action | None, written: Sequence[Written]
) -> tuple[Chart, ...]:
    """The patient that a staff event is about: by what the changed message led to, its
    button, the message that it answers, or the name behind a command."""
    patient: int | None = None
    event = talk.incoming
    if written:
        patient = written[-1].patient
    elif event.kind == "button":
        match action:
            case OnCase(case=case):
                patient = _patient_of_case(tx, case)
            case (
                OnPlan(patient=of)
                | OnRecheck(patient=of)
                | RemovePerson(patient=of)
                | OnHold(patient=of)
            ):
                patient = of
            case _:
                pass
    elif isinstance(talk.topic, AboutCase):
        patient = _patient_of_case(tx, talk.topic.case)
    elif talk.topic is not None:
        patient = patient_of(talk.topic)
    elif event.text.startswith(ABOUT_PATIENTS) and " " in event.text:
        rows = find(_roster(tx, event), _name_in(event))
        patient = rows[0].id if len(rows) == 1 else None
    found = load.chart(tx, patient, talk.now) if patient is not None else None
    return (found,) if found else ()


def _patient_of_case(tx: Tx, case: str) -> int | None:
    row = tx.one("case_patient", id=case)
    return row["patient_id"] if row else None


def records(tx: Tx, patient: int, most: int | None = None) -> list[Record]:
    """The log of a patient, whole or its last lines."""
    rows = (
        tx.all("log_of", patient_id=patient)
        if most is None
        else tx.all("log_tail", patient_id=patient, most=most)
    )
    return [
        Record(r["id"], moment(r["at"]), r["kind"], r["author"], r["text"], json.loads(r["data"]))
        for r in rows
    ]


def _tail(tx: Tx, charts: tuple[Chart, ...]) -> tuple[str, ...]:
    if not charts:
        return ()
    plan = charts[0].plan
    return tuple(readable(records(tx, charts[0].id, 40), plan.zone, plan.surgery))


def _update_failed(tx: Tx, practice: Practice, row: Row, why: str, now: datetime) -> None:
    """Count a failure; after the last try staff get the message as it came."""
    last = row["attempts"] + 1 >= TRIES
    state = "failed" if last else "waiting"
    tx.run("inbox_mark", update_id=row["update_id"], state=state, error=why)
    if last:
        event = incoming(json.loads(row["body"]), moment(row["received_at"]))
        who = event.sender.name if event.sender else "?"
        _tell_staff(tx, practice, f"failed:{row['update_id']}", f"{who}: {event.text}", why, now)
        if event.private and event.chat:
            clinic = practice.clinic
            phone = f"{clinic.phone} / {clinic.emergency_name}, {clinic.emergency_phone}"
            lang: Lang = "es" if event.sender and (event.sender.lang or "")[:2] == "es" else "en"
            out = Effects(EventId(f"sorry:{row['update_id']}"))
            out.say(event.chat, practice.words.say("passed_on", lang, phone=phone), urgent=True)
            send(tx, out.sends, now)


def _tell_staff(tx: Tx, practice: Practice, key: str, text: str, why: str, now: datetime) -> None:
    out = Effects(EventId(key))
    for desk in load.desks(tx):
        words = practice.words.say("desk_failed", practice.clinic.language, text=text[:1500])
        out.say(desk.chat, words, urgent=True)
    send(tx, out.sends, now)
    log(tx, "failed", "bot", text, now, None, {"why": why})


async def handle_due(db: Database, practice: Practice, now: datetime) -> bool:
    """Do what the earliest row that is due leads to."""

    def whole(tx: Tx) -> bool:
        row = tx.one("due_next", now=stamp(now))
        if row is None:
            return False
        failing["row"] = row
        data = json.loads(row["data"])
        chart = (
            load.chart(tx, row["patient_id"], now, data.get("prompt"))
            if row["patient_id"] is not None
            else None
        )
        out = handle(
            FellDue(
                practice=practice,
                now=now,
                event=due_event(row["key"], row["due_at"]),
                charts=(chart,) if chart else (),
                desks=load.desks(tx),
                staff=load.staff(tx),
                kind=row["kind"],
                data=data,
                roster=load.roster(tx) if row["kind"] == "board" else (),
                conversation=conversation(tx, data.get("chat", 0)),
            )
        )
        tx.run("due_mark", key=row["key"], due_at=row["due_at"], state="done", error=None)
        apply(tx, out, now)
        return True

    failing: dict[str, Row] = {}
    try:
        return await db.transact(whole)
    except Exception as error:
        row = failing.get("row")
        if row is None:
            raise
        logger.exception("%s could not be handled", row["key"])
        why = f"{type(error).__name__}: {error}"
        await db.transact(lambda tx: _due_failed(tx, practice, row, why, now))
        return True


def _due_failed(tx: Tx, practice: Practice, row: Row, why: str, now: datetime) -> None:
    last = row["attempts"] + 1 >= TRIES
    state = "failed" if last else "waiting"
    tx.run("due_mark", key=row["key"], due_at=row["due_at"], state=state, error=why)
    if last:
        key = f"failed:{row['key']}:{row['due_at']}"
        name = f"patient {row['patient_id']}"  # the chart itself may be what fails
        _tell_staff(tx, practice, key, f"{name}: {row['kind']} {row['due_at']}", why, now)


async def audit(db: Database, now: datetime) -> int:
    """Every open case must have a next page: give one to those that lost it; how many."""

    def whole(tx: Tx) -> int:
        lost = tx.all("due_lost_cases")
        for row in lost:
            at = now + timedelta(minutes=1)
            put_due(tx, f"page:{row['id']}", "page", at, row["patient_id"], {"case": row["id"]})
        return len(lost)

    return await db.transact(whole)
