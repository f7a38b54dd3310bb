"""A message to staff that does not arrive takes every other way that there is; where no way is
left for a case, the household is told so."""

from __future__ import annotations

from datetime import datetime, timedelta

from bot.context.buttons import action_of, button
from bot.events.undelivered import REFUSED, UNSHOWN
from bot.events.unreached import KIND
from bot.model.chart import UNREACHED
from bot.model.chat import Button, Outgoing
from bot.model.codes import without_codes
from bot.model.ids import CaseId, Cause
from bot.model.topic import TOPICS, AboutCase, AboutPrompt
from bot.store import load
from bot.store.database import Row, Tx, pack, stamp
from bot.store.rows import put_due, send
from bot.store.staff_ways import instead_of, staff_chats

from .practice import secret_of

PASSED = ":gone:"
CARDS = ("case", "page", "overdue")
"""How the key of a message begins that tells staff of a case."""
OVER = "its hour is over: "
"""How the reason begins for which a message is not sent any more."""


def pass_on(tx: Tx, row: Row, message: Outgoing, now: datetime) -> None:
    """To the other staff chats and, with what is about a case or urgent, to everybody's own,
    with buttons that work there. Who has it already does not get it twice."""
    chat = row["chat_id"]
    if not row["staff"]:
        return
    if _carries_code(row):
        _tell_of_link(tx, row, now)
        return
    case = case_of(message.topic)
    root = message.dedupe.partition(PASSED)[0]
    first = tx.one("outbox_message_of", dedupe=root)
    for other in instead_of(tx, chat, all_of_them=message.urgent or case is not None):
        if first is not None and first["chat_id"] == other:
            continue
        if case is not None and tx.one(
            "outbox_told", event=row["event"], topic=message.topic, chat_id=other
        ):
            continue
        changed = {"chat": other, "dedupe": f"{root}{PASSED}{other}", "reply_to": None}
        copy = message.model_copy(update={**changed, "buttons": _anew(tx, message, chat, other)})
        send(tx, [copy], now, Cause(row["event"]))


def about_open_case(tx: Tx, message: Outgoing) -> bool:
    """Whether it is about a case that somebody must still see."""
    case = case_of(message.topic)
    return case is not None and tx.one("outbox_case_lives", id=case) is not None


def told_to_nobody(tx: Tx, row: Row, now: datetime, after: timedelta = timedelta(0)) -> None:
    """The household hears the truth of a case of which nothing has reached staff: at once where
    nothing can any more, else ``after`` a while, unless it has by then."""
    case = case_of(row["topic"])
    unheard = unheard_of(tx, case) if case is not None and row["staff"] else []
    if not unheard:
        return
    hope = any(one["state"] in ("waiting", "sending") and one["late_at"] is None for one in unheard)
    if hope and not after:
        return  # whoever finds that late asks again
    soon_nobody(tx, row, now + after if hope else now)


def soon_nobody(tx: Tx, row: Row, at: datetime) -> None:
    """The household of a case hears it then, unless something of the case has come to staff."""
    case = case_of(row["topic"])
    if case is not None and row["patient_id"] is not None and row["staff"]:
        tx.run(
            "due_put_sooner", key=f"{KIND}:{case}", patient_id=row["patient_id"], kind=KIND,
            due_at=stamp(at), data=pack({"case": case}),
        )  # fmt: skip


def unheard_of(tx: Tx, case: str) -> list[Row]:
    """The cards of a case for staff that have not arrived, and nothing newer of it either: empty
    where staff know how it stands, or somebody has it."""
    rows = tx.all("outbox_about", topic=_topic(case))
    began: dict[str, str] = {}
    for one in rows:  # a copy that took another way is as old as what it tells
        began.setdefault(one["event"] or one["created_at"], one["created_at"])

    def told_at(one: Row) -> str:
        return began[one["event"] or one["created_at"]]

    heard = max((told_at(one) for one in rows if one["state"] == "sent"), default="")
    return [
        one for one in rows
        if told_at(one) > heard and one["dedupe"].partition(":")[0] in CARDS
        and not (one["error"] or "").startswith(OVER)
    ]  # fmt: skip


def of_refused(row: Row) -> bool:
    """Whether it is itself the last word of a message that was refused."""
    return str(row["event"] or "").startswith(f"due:{UNSHOWN}:")


def tell_of_refused(tx: Tx, row: Row, text: str, now: datetime) -> None:
    """Staff hear of a message that will never arrive, though its chat may be there. The word
    of that may be refused, too: then it is said without the words of the first."""
    if of_refused(row):
        return
    if _carries_code(row):
        _tell_of_link(tx, row, now)
        return
    event = str(row["event"] or "").split(":")
    first = tx.one("outbox_first", id=int(event[2])) if event[:2] == ["due", REFUSED] else row
    if first is None:
        return
    data: dict[str, object] = {}
    if not first["staff"]:
        data = {"chat": first["chat_id"], "text": text if first is row else ""}
        if isinstance(topic := TOPICS.decode(first["topic"]), AboutPrompt):
            data["prompt"] = topic.prompt
    kind = REFUSED if data and first is row else UNSHOWN
    if data and first["patient_id"] is None:
        return  # of no household
    put_due(tx, f"{kind}:{first['id']}", REFUSED, now, first["patient_id"], data)


def _carries_code(row: Row) -> bool:
    """Whether whoever reads it comes in by it: that is for its own chat only."""
    body: str = row["body"]
    return without_codes(body) != body


def _tell_of_link(tx: Tx, row: Row, now: datetime) -> None:
    """A link did not arrive: whoever asked for it elsewhere hears so, and does not see it."""
    chat = row["chat_id"]
    home = tx.one("name_at_home", chat_id=chat) if not row["staff"] else None
    name = home["name"] if home else staff_chats(tx).get(chat, str(chat))
    asked = [one["chat_id"] for one in tx.all("outbox_asked", event=row["event"], chat_id=chat)]
    data = {"link": name, "asked": asked}
    put_due(tx, f"link:{row['id']}", REFUSED, now, row["patient_id"], data)


def case_arrived(tx: Tx, row: Row, message: Outgoing) -> None:
    """A case that had reached nobody has now."""
    case = case_of(message.topic)
    if case is None or not row["staff"]:
        return
    for id, body in load.unreached(tx, case).items():
        del body[UNREACHED]
        tx.run("case_body", id=id, body=pack(body))


def case_of(topic: str) -> CaseId | None:
    """The case that a message is about."""
    found = TOPICS.decode(topic)
    return found.case if isinstance(found, AboutCase) else None


def _topic(case: str) -> str:
    return TOPICS.encode(AboutCase(CaseId(case)))


def _anew(tx: Tx, message: Outgoing, chat: int, other: int) -> tuple[tuple[Button, ...], ...]:
    """The buttons as they work in the other chat: each is signed for its own."""
    secret, chats = secret_of(tx), (chat, *(one["old"] for one in tx.all("chat_former",
                                                                        chat_id=chat)))  # fmt: skip
    rows: list[tuple[Button, ...]] = []
    for row in message.buttons:
        acts = [(one, action_of(secret, chats, one.data)) for one in row]
        rows.append(tuple(button(secret, other, one.label, act) for one, act in acts if act))
    return tuple(row for row in rows if row)
