"""A message to staff that does not arrive takes every other way that there is; where no way is
left for a case, the household is told so."""

from __future__ import annotations

from datetime import datetime

from bot.context.buttons import action_of, button
from bot.events.unreached import KIND
from bot.model.chart import UNREACHED
from bot.model.chat import Button, Outgoing
from bot.model.ids import Cause
from bot.model.topic import TOPICS, AboutCase
from bot.store import load
from bot.store.database import Row, Tx, pack
from bot.store.rows import put_due, send
from bot.store.staff_ways import instead_of, staff_chats

from .practice import secret_of

PASSED = ":gone:"


def pass_on(tx: Tx, row: Row, message: Outgoing, now: datetime) -> None:
    """To the other staff chats and, with what is about a case or urgent, to everybody's own,
    with buttons that work there. Who has it already does not get it twice."""
    chat = row["chat_id"]
    if not row["staff"]:
        return
    case = _case(message)
    root = message.dedupe.partition(PASSED)[0]
    for other in instead_of(tx, chat, all_of_them=message.urgent or case is not None):
        if case is not None and tx.one(
            "outbox_told", event=row["event"], topic=message.topic, chat_id=other
        ):
            continue
        changed = {"chat": other, "dedupe": f"{root}{PASSED}{other}", "reply_to": None}
        copy = message.model_copy(update={**changed, "buttons": _anew(tx, message, chat, other)})
        send(tx, [copy], now, Cause(row["event"]))


def about_open_case(tx: Tx, message: Outgoing) -> bool:
    """Whether it is about a case that somebody must still see."""
    case = _case(message)
    return case is not None and tx.one("outbox_case_lives", id=case.case) is not None


def told_to_nobody(tx: Tx, row: Row, message: Outgoing, tries: int, now: datetime) -> None:
    """Where no message of the event about its case has reached a staff chat, and none may
    still (``tries``: what has been tried so often is not hoped for), the household hears."""
    case, staff = _case(message), staff_chats(tx)
    if case is None or message.patient is None or not row["staff"]:
        return
    if row["event"] is None:
        return  # from before events had ids: who else was told is not known
    hopeful = tx.all("outbox_hopeful", event=row["event"], topic=message.topic, tries=tries)
    if not any(one["chat_id"] in staff for one in hopeful):
        put_due(tx, f"{KIND}:{case.case}", KIND, now, message.patient, {"case": case.case})


def case_arrived(tx: Tx, row: Row, message: Outgoing) -> None:
    """A case that had reached nobody has now."""
    case = _case(message)
    if case is None or not row["staff"]:
        return
    for id, body in load.unreached(tx, case.case).items():
        del body[UNREACHED]
        tx.run("case_body", id=id, body=pack(body))


def _case(message: Outgoing) -> AboutCase | None:
    topic = TOPICS.decode(message.topic)
    return topic if isinstance(topic, AboutCase) else None


def _anew(tx: Tx, message: Outgoing, chat: int, other: int) -> tuple[tuple[Button, ...], ...]:
    """The buttons as they work in the other chat: each is signed for its own."""
    secret, chats = secret_of(tx), (chat, *(one["old"] for one in tx.all("chat_former",
                                                                        chat_id=chat)))  # fmt: skip
    rows: list[tuple[Button, ...]] = []
    for row in message.buttons:
        acts = [(one, action_of(secret, chats, one.data)) for one in row]
        rows.append(tuple(button(secret, other, one.label, act) for one, act in acts if act))
    return tuple(row for row in rows if row)
