"""The gate at each try to send: whether a message for a household is still in time.

A prompt or reminder may have waited, for the network or for the bot itself: it is asked of the
patient as they are now, and what is not sent is handed on, so that its doses are asked about."""

from __future__ import annotations

from datetime import datetime, timedelta

from bot.household.away import KIND
from bot.household.hour import PATIENCE, Unfit, unfit
from bot.household.passed import UNHEARD
from bot.model.action import ACTIONS, TapLine
from bot.model.chart import Chart
from bot.model.chat import Outgoing, TryAgain
from bot.model.ids import LineId, PromptId
from bot.standing.of_chart import standing_of
from bot.store import load
from bot.store.database import Row, Tx, moment, stamp
from bot.store.rows import put_due

from .away import came, unseen

AT_ONCE = timedelta(minutes=1)
"""What leaves within this of being written leaves as it was written."""
PROMPTS = ("prompt", "remind")
UNKNOWN = "it is not known yet what was missed"


def wait(tx: Tx, row: Row, message: Outgoing, now: datetime) -> TryAgain | None:
    """After a start a prompt that was ready before waits until it has been looked at how long
    the bot was away, and what the household must be asked."""
    if message.kind != "send" or _shows(message) is None or not _waited(row, now):
        return None
    away = tx.one("due_is_there", patient_id=message.patient, kind=KIND, now=stamp(now))
    if away is not None or unseen(tx, now):
        return TryAgain(after_seconds=1.0, why=UNKNOWN, ours=True)
    return None


def too_late(tx: Tx, row: Row, message: Outgoing, now: datetime) -> Unfit | None:
    """Why a message that shows a prompt may not leave as it was written; None if it may."""
    queued = moment(row["created_at"])
    head = _head(message)
    if head == "held":
        return Unfit.late if now - queued > PATIENCE else None
    prompt = _shows(message)
    if prompt is None or not _waited(row, now):
        return None
    chart = _chart(tx, message, prompt, now)
    sheet = chart.sheet(prompt) if chart is not None else None
    edit, shown = message.kind == "edit", _buttons(message)
    if chart is None or sheet is None or (edit and not shown):
        return None
    return unfit(
        chart, standing_of(chart, now), sheet, shown, queued, now, edit=edit,
        reminder=head == "remind",
    )  # fmt: skip


def hand_on(tx: Tx, row: Row, message: Outgoing, why: str, now: datetime) -> None:
    """What does not leave for one of these reasons is looked at anew. Its key is free again."""
    prompt = _shows(message)
    if prompt is None or message.patient is None or why not in list(Unfit):
        return
    edit = message.kind == "edit"
    if not edit:
        tx.run("outbox_key", id=row["id"], dedupe=f"{message.dedupe}:late:{row['id']}")
        if _head(message) == "remind":
            return  # what it reminded of has come, or its own message is looked at
    data: dict[str, object] = {
        "prompt": prompt, "chat": row["chat_id"], "nobody": not came(tx, prompt), "edit": edit
    }  # fmt: skip
    key = f"{UNHEARD}:{prompt}:{row['chat_id']}"
    put_due(tx, key, UNHEARD, now, message.patient, data)


def with_its_hour(row: Row, message: Outgoing, now: datetime) -> Outgoing:
    """Words that have waited say when they were written."""
    if not message.written or now - moment(row["created_at"]) <= PATIENCE:
        return message
    return message.model_copy(update={"text": f"{message.written}\n{message.text}"})


def _waited(row: Row, now: datetime) -> bool:
    return row["attempts"] > 1 or now - moment(row["created_at"]) > AT_ONCE


def _key(message: Outgoing) -> str:
    return message.of if message.kind == "edit" else message.dedupe


def _head(message: Outgoing) -> str:
    return _key(message).partition(":")[0]


def _shows(message: Outgoing) -> PromptId | None:
    """The prompt whose lines a message shows."""
    parts = _key(message).split(":")
    if message.patient is None or parts[0] not in PROMPTS or len(parts) < 3:
        return None
    return PromptId(int(parts[1])) if parts[1].isdecimal() else None


def _buttons(message: Outgoing) -> set[LineId]:
    """The lines of it that have a button in this message."""
    data = (one.data.rpartition("~")[0] for row in message.buttons for one in row)
    acts = (ACTIONS.decode(one) for one in data if one)
    return {act.line for act in acts if isinstance(act, TapLine)}


def _chart(tx: Tx, message: Outgoing, prompt: PromptId, now: datetime) -> Chart | None:
    return load.chart(tx, message.patient, now, prompt) if message.patient is not None else None
