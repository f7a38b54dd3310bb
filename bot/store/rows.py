"""Rows that more than one effect writes: the outbox, the log, what falls due, prompts."""

from __future__ import annotations

import json
from collections.abc import Iterable
from datetime import datetime

from bot.model.chat import Outgoing
from bot.model.harmless import harmless
from bot.model.ids import Cause, PatientId
from bot.model.plan import Prompt
from bot.model.topic import TOPICS, AboutCase
from bot.records.chain import NOBODY

from .chaining import append
from .database import Tx, pack, stamp


def send(
    tx: Tx, messages: Iterable[Outgoing], now: datetime, by: Cause = NOBODY, *, last: bool = False
) -> None:
    """Into the outbox; a message whose key is there already is not added again. What goes to
    a chat as to one of the practice's is sent only while it is one; ``last``: all the same."""
    for message in map(_harmless, messages):
        if message.of and tx.one("outbox_known", dedupe=message.of) is None:
            continue  # whoever never got the message has nothing to be shown anew
        added = tx.run(
            "outbox_add",
            dedupe=message.dedupe,
            kind=message.kind,
            chat_id=message.chat,
            body=message.model_dump_json(exclude_defaults=True),
            topic=message.topic,
            patient_id=message.patient,
            urgent=int(message.urgent),
            staff=0 if last else _to_staff(tx, message),
            event=by.event,
            now=stamp(now),
        )
        if added:
            _log_words(tx, "queued", message, now, by, {})


def _to_staff(tx: Tx, message: Outgoing) -> int:
    """1 when it is for staff in a staff chat, 2 in a member's own, or changes what went so; else
    0. Whoever made it has said for whom it is: one of the practice may be at home, too."""
    if message.kind == "edit":
        was = tx.one(
            "outbox_as_staff", dedupe=message.of, chat_id=message.chat, message_id=message.message
        )
        if was is not None and was["staff"] is not None:
            return int(was["staff"])
    return chat_of_staff(tx, message.chat) if message.staff else 0


def chat_of_staff(tx: Tx, chat: int) -> int:
    """1 for a staff chat, 2 for the own chat of a member, 0 for any other."""
    row = tx.one("chat_of_staff", chat_id=chat)
    return int(row["kind"] or 0) if row is not None else 0


def log_arrived(
    tx: Tx, message: Outgoing, queued: datetime, now: datetime, by: Cause = NOBODY
) -> None:
    """The platform has taken a message: only now does the log call it sent."""
    _log_words(tx, "sent", message, now, by, {"queued": stamp(queued)})


def _log_words(
    tx: Tx, kind: str, message: Outgoing, now: datetime, by: Cause, more: dict[str, object]
) -> None:
    if message.kind != "send" or message.patient is None:
        return
    home = None if message.staff else tx.one("name_at_home", chat_id=message.chat)
    data: dict[str, object] = {
        "to": "staff" if message.staff else home["name"] if home else str(message.chat),
        "staff": message.staff,
        "key": message.dedupe,
        **more,
    }
    if isinstance(topic := TOPICS.decode(message.topic), AboutCase):
        data["case"] = topic.case
    log(tx, kind, "bot", message.text, now, message.patient, data, by)


def _harmless(message: Outgoing) -> Outgoing:
    """With words that may leave: a patient's name or an old log may hold anything."""
    rows = tuple(
        tuple(one.model_copy(update={"label": harmless(one.label)}) for one in row)
        for row in message.buttons
    )
    words = {one: harmless(getattr(message, one)) for one in ("text", "again", "written")}
    return message.model_copy(update={**words, "buttons": rows})


def log(
    tx: Tx,
    kind: str,
    author: str,
    text: str,
    now: datetime,
    patient: PatientId | None = None,
    data: dict[str, object] | None = None,
    by: Cause = NOBODY,
) -> None:
    """One line of the log, sealed to the one before."""
    append(tx, kind, author, text, now, patient, data or {}, by)


def put_due(
    tx: Tx,
    key: str,
    kind: str,
    at: datetime,
    patient: PatientId | None,
    data: dict[str, object] | None = None,
) -> None:
    """A row of the due table; one with the same key is replaced."""
    tx.run(
        "due_put", key=key, patient_id=patient, kind=kind, due_at=stamp(at), data=pack(data or {})
    )


def add_prompts(tx: Tx, patient: PatientId, prompts: Iterable[Prompt]) -> None:
    """Planned prompts with their lines, each with a row in the due table."""
    for prompt in prompts:
        row = tx.one(
            "prompt_add", patient_id=patient, key=prompt.key, due_at=stamp(prompt.due_at),
            day=prompt.day, moved=0,
        )  # fmt: skip
        if row is None:
            raise ValueError("the prompt could not be stored")
        tx.many(
            "item_add",
            [
                {
                    "patient_id": patient,
                    "prompt_id": row["id"],
                    "item_id": item.id,
                    "kind": item.kind,
                    "med": item.med,
                    "slot_at": stamp(item.slot_at) if item.slot_at else None,
                    "body": item.model_dump_json(exclude_defaults=True),
                }
                for item in prompt.items
            ],
        )
        put_due(tx, f"prompt:{row['id']}", "prompt", prompt.due_at, patient, {"prompt": row["id"]})


def move_chat(tx: Tx, old: int, new: int) -> None:
    """A group got a new id: staff chat, threads and everything that still waits follow."""
    tx.run("chat_moved_add", old=old, new=new)
    tx.run("desk_move", old=old, new=new)
    tx.run("lost_drop", chat_id=old)
    tx.run("thread_move", old=old, new=new)
    for row in tx.all("outbox_of_chat", chat_id=old):
        body = {**json.loads(row["body"]), "chat": new}
        tx.run("outbox_move_chat", id=row["id"], new=new, body=pack(body))
