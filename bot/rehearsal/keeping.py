"""What several effects do to the tables: a line of the log, a row that falls due, a message."""

from __future__ import annotations

import json
from datetime import datetime
from typing import Any, cast

from bot.model.chat import Outgoing
from bot.model.ids import PatientId
from bot.model.plan import Prompt
from bot.model.topic import TOPICS, AboutCase

from .tables import DueRow, Entry, PatientRow, Tables

ENDED_DUES = ("prompt", "remind", "unanswered", "silence", "end")
"""What a patient whose course is over is not looked at for any more."""


def plain(data: dict[str, Any]) -> dict[str, Any]:
    """``data`` as it comes back from JSON."""
    return cast("dict[str, Any]", json.loads(json.dumps(data, default=str))) if data else {}


def log(
    tables: Tables,
    kind: str,
    author: str,
    text: str,
    now: datetime,
    patient: PatientId | None = None,
    data: dict[str, Any] | None = None,
) -> None:
    """One line of the log."""
    id = len(tables.log) + 1
    tables.log.append(Entry(id, now, kind, author, text, patient, data or {}))


def put_due(
    tables: Tables,
    key: str,
    kind: str,
    at: datetime,
    patient: PatientId | None,
    data: dict[str, Any] | None = None,
) -> None:
    """Something to look at again; one with the same key is replaced."""
    tables.dues.put(DueRow(key, kind, at, patient, data or {}))


def add_prompts(tables: Tables, patient: PatientRow, prompts: tuple[Prompt, ...]) -> None:
    """Planned prompts with their lines."""
    for prompt in prompts:
        id = patient.put_sheet(tables.next_sheet(), prompt.key, prompt.due_at, prompt.day)
        for item in prompt.items:
            patient.put_line(tables.next_line(), id, item)
        put_due(tables, f"prompt:{id}", "prompt", prompt.due_at, patient.id, {"prompt": id})


def send(tables: Tables, message: Outgoing, now: datetime) -> None:
    """Into the outbox; one whose key is there already is not added again."""
    key = message.dedupe
    if message.of and message.of not in tables.sent and message.of not in tables.outbox:
        return  # whoever never got the message has nothing to be shown anew
    if key in tables.outbox or key in tables.sent:
        return
    tables.outbox[key] = message
    log_words(tables, "queued", message, now)


def log_words(tables: Tables, kind: str, message: Outgoing, now: datetime) -> None:
    """What is to be said (``queued``) or has arrived (``sent``)."""
    if message.kind == "send" and message.patient is not None:
        people = tables.people.values()
        name = next((one.name for one in people if one.chat == message.chat), str(message.chat))
        data = {
            "to": "staff" if message.staff else name, "staff": message.staff, "key": message.dedupe
        }  # fmt: skip
        if isinstance(topic := TOPICS.decode(message.topic), AboutCase):
            data["case"] = topic.case
        log(tables, kind, "bot", message.text, now, message.patient, data)


def end(tables: Tables, id: PatientId) -> None:
    """Nothing of a course that is over falls due any more."""
    for row in tables.dues.of_patient(id):
        if row.kind in ENDED_DUES:
            row.waiting = False


def used(tables: Tables, digest: str, what: str) -> None:
    invitation = tables.invitations.get(digest)
    if invitation is None or invitation.used:
        raise ValueError(f"this {what} has been used in the meantime")
    invitation.used = True
