"""The one place that calls the core: an event, a thing that is due or a picture goes in with
all that is known, and what it leads to comes out. As ``bot/service/work.py`` and
``bot/service/media.py`` ask it of the database."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Any

from bot.model.chat import Incoming, Media
from bot.model.protocol import Protocol
from bot.model.settings import Clinic
from bot.talk import pictures, recheck
from bot.talk.answers import Answers
from bot.talk.board import find
from bot.talk.buttons import digest_of
from bot.talk.desk import COMMANDS, on_desk, source_of
from bot.talk.due import on_due
from bot.talk.outcome import Outcome
from bot.talk.owner import on_owner
from bot.talk.record import Record, readable
from bot.talk.scene import Chart, Member, RosterLine, Scene, Written
from bot.talk.words import Words
from bot.triage import RuleBook

from . import chart as seen
from .drawn import looked_at
from .tables import DueRow, Tables

SECRET = b"only for rehearsals"
BOT = "slowleash"
ABOUT_PATIENTS = ("/patients", "/board", "/log", "/link", "/end", "/plan", "/medicine", "/people")
TAIL = 40
"""So many lines of the log are shown."""


@dataclass(frozen=True, slots=True)
class Flows:
    """What a practice has in its flows: words, rules, protocols, ready answers."""

    words: Words
    rules: RuleBook
    protocols: Mapping[str, Protocol]
    answers: Answers


def hear(tables: Tables, flows: Flows, clinic: Clinic, event: Incoming, code: str) -> Outcome:
    """What an event leads to, whoever it comes from. ``code`` is fresh, for a link."""
    now = event.at
    event = replace(event, text=_plain_command(event.text))
    linked = _code_of(event.text)
    topic = _topic(tables, event.chat, event.reply_to)
    invitation = seen.invitation(tables, digest_of(linked), now) if linked else None
    written = seen.written(tables, source_of(event), now) if event.kind == "edited" else ()
    members = seen.staff(tables)
    common = replace(
        _scene(tables, flows, clinic, f"update:{event.update}", now),
        actor=_actor(members, event),
        thread=tables.threads.get(event.chat, {}),
        reply_topic=topic,
        fresh_code=code,
        invitation=invitation,
        written=written,
    )
    for_staff = invitation is not None and invitation.kind in ("desk", "staff")
    if not event.private or for_staff or _staff_act(common, event):
        charts = _charts_for_desk(tables, event, topic, written)
        names = event.data.startswith("b.") or event.text.startswith(ABOUT_PATIENTS)
        scene = replace(
            common,
            charts=charts,
            roster=_roster(tables, event) if names else (),
            log_tail=_tail(tables, charts) if event.text.startswith("/log") else (),
        )
        return on_desk(scene, event)
    person = seen.person_of(tables, event.sender.user) if event.sender else None
    found = seen.charts_of(tables, person, now) if person else ()
    if invitation and invitation.patient and all(c.id != invitation.patient for c in found):
        invited = seen.chart(tables, invitation.patient, now)
        found = (*found, invited) if invited else found
    return on_owner(replace(common, person=person, charts=found), event)


def due(tables: Tables, flows: Flows, clinic: Clinic, row: DueRow, now: datetime) -> Outcome:
    """What a thing that is due leads to."""
    chart = (
        seen.chart(tables, row.patient, now, row.data.get("prompt"))
        if row.patient is not None
        else None
    )
    scene = replace(
        _scene(tables, flows, clinic, f"due:{row.key}:{row.at}", now),
        charts=(chart,) if chart else (),
        roster=seen.roster(tables) if row.kind == "board" else (),
        thread=tables.threads.get(row.data.get("chat", 0), {}),
    )
    if row.kind == "media":
        return _fetched(tables, scene, int(row.data["media"]))
    if row.kind == "review":
        return _review(scene, int(row.data["line"]), late=bool(row.data["late"]))
    return on_due(scene, row.kind, row.data)


def held_names(chart: Chart, now: datetime) -> set[str]:
    """What is held at a moment: a medicine by its name, ``walks``, ``sessions``,
    ``everything``."""
    return {one.name for one in chart.plan.medicines if one.is_withheld(now)}


def case_of(topic: str) -> str:
    """The case that a message is about; empty for one that is about none."""
    kind, _, ident = topic.partition(":")
    return ident if kind == "case" else ""


def _scene(tables: Tables, flows: Flows, clinic: Clinic, cause: str, now: datetime) -> Scene:
    return Scene(
        now=now,
        clinic=clinic,
        words=flows.words,
        rules=flows.rules,
        secret=SECRET,
        bot_name=BOT,
        cause=cause,
        desks=seen.desks(tables),
        staff=seen.staff(tables),
        protocols=flows.protocols,
        answers=flows.answers,
    )


# -- pictures -------------------------------------------------------------------------------


def _fetched(tables: Tables, scene: Scene, number: int) -> Outcome:
    """A picture is fetched and looked at at once; a drawn one is never lost."""
    out = Outcome(scene.cause)
    if not scene.charts:
        return out
    patient = tables.patients[scene.charts[0].id]
    picture = patient.pictures[number]
    if picture.state == "waiting":
        verdict = looked_at(*drawn_of(picture.media))
        picture = replace(
            picture, state="kept", path=picture.media.file, verdict=verdict,
            attempts=picture.attempts + 1,
        )  # fmt: skip
        patient.pictures[number] = picture
    chart = seen.chart(tables, patient.id, scene.now)
    if chart is not None:
        pictures.kept(replace(scene, charts=(chart,)), out, chart, picture)
    return out


def _review(scene: Scene, line: int, *, late: bool) -> Outcome:
    """The clinician is shown what came, or another is asked for."""
    out = Outcome(scene.cause)
    new = pictures.unseen(scene.charts[0], line) if scene.charts else []
    if not new:
        return out
    chart, best = scene.charts[0], recheck.best_of(new)
    if pictures.retake_due(chart, line, new, late=late):
        pictures.ask_retake(scene, out, chart, line, best)
        return out
    first = None if best.film else recheck.first_of(chart, best)
    together = Media(kind="photo", file=f"{best.media.file}:shown")
    media = together if best.film or first is not None else best.media
    pictures.answered(scene, out, chart, line, new, late=late)
    recheck.show(scene, out, chart, line, new, media, first)
    return out


def drawn(film: bool, light: str, number: int) -> Media:
    """A picture or film as the chat app would name it."""
    name = f"{light}:{number}"
    return Media(kind="video" if film else "photo", file=name, unique=name)


def drawn_of(media: Media) -> tuple[bool, Any]:
    """What was drawn."""
    return media.kind == "video", media.file.partition(":")[0]


# -- who speaks, and about whom -------------------------------------------------------------


def _plain_command(text: str) -> str:
    """A command without the bot's name behind it."""
    first, space, rest = text.partition(" ")
    line, newline, more = first.partition("\n")
    if line.startswith("/"):
        line = line.partition("@")[0]
    return f"{line}{newline}{more}{space}{rest}"


def _code_of(text: str) -> str:
    words = text.split()
    return words[1] if len(words) == 2 and words[0] in ("/start", "/join") else ""


def _topic(tables: Tables, chat: int, number: int | None) -> str:
    if number is None:
        return ""
    for one in reversed(tables.chats.get(chat, [])):
        if one.number == number:
            return one.sent.topic if one.sent is not None else ""
    return ""


def _actor(members: Sequence[Member], event: Incoming) -> Member | None:
    if event.sender is None:
        return None
    return next((one for one in members if one.user == event.sender.user), None)


def _staff_act(scene: Scene, event: Incoming) -> bool:
    """Whether a private chat that is also a staff chat speaks as staff now."""
    if scene.invitation is not None and scene.invitation.kind == "owner":
        return False
    if scene.written:
        return True
    if scene.actor is None and scene.desk(event.chat) is None:
        return event.text.startswith("/join ")
    if event.kind == "button":
        return event.data[:2] in ("c.", "b.", "t.", "p.", "o.", "n.")
    first = event.text.split(" ")[0].split("\n")[0]
    return first in (*COMMANDS, "/join") or bool(case_of(scene.reply_topic))


def _charts_for_desk(
    tables: Tables, event: Incoming, topic: str, written: Sequence[Written]
) -> tuple[Chart, ...]:
    """The patient that a staff event is about."""
    patient: int | None = None
    parts = event.data.rpartition("~")[0].split(".")
    if written:
        patient = written[-1].patient
    elif event.kind == "button" and len(parts) == 3 and parts[0] in ("t", "p", "o"):
        patient = int(parts[1]) if parts[1].isdigit() else None
    elif event.kind == "button" and len(parts) == 3 and parts[0] == "c":
        patient = _patient_of(tables, parts[1])
    elif case_of(topic):
        patient = _patient_of(tables, case_of(topic))
    elif topic.startswith(("patient:", "reason:")):
        patient = int(topic.split(":")[1])
    elif event.text.startswith(ABOUT_PATIENTS) and " " in event.text:
        rows = find(_roster(tables, event), _name_in(event))
        patient = rows[0].id if len(rows) == 1 else None
    found = seen.chart(tables, patient, event.at) if patient is not None else None
    return (found,) if found else ()


def _patient_of(tables: Tables, case: str) -> int | None:
    return next((row.id for row in tables.patients.values() if case in row.cases), None)


def _name_in(event: Incoming) -> str:
    return event.text.partition("\n")[0].partition(" ")[2].strip()


def _roster(tables: Tables, event: Incoming) -> tuple[RosterLine, ...]:
    name = _name_in(event)
    return (name and seen.roster(tables, name)) or seen.roster(tables)


def _tail(tables: Tables, charts: tuple[Chart, ...]) -> tuple[str, ...]:
    if not charts:
        return ()
    plan = charts[0].plan
    rows = [entry for entry in tables.log if entry.patient == charts[0].id][-TAIL:]
    records = [Record(r.id, r.at, r.kind, r.author, r.text, r.data) for r in rows]
    return tuple(readable(records, plan.zone, plan.surgery))
