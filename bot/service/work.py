"""Units of work: each takes one waiting row, does all that it causes in one
transaction, and says whether there was one. A test calls them without any loop."""

from __future__ import annotations

import json
import logging
from datetime import datetime, timedelta

from bot.context.practice import Practice
from bot.events.due_kinds import BY_ELAPSED
from bot.events.handle import handle
from bot.events.route import Fallen, context_of, fallen_due, listened_to
from bot.events.unreached import KIND as NOBODY
from bot.household.people import ERASING
from bot.model.chat import Incoming
from bot.model.codes import json_without_codes, without_known
from bot.model.effects import ChatMoved, Effects, JoinStaff
from bot.model.ids import Cause, EventId, due_event, update_event
from bot.model.text import Lang
from bot.store import load
from bot.store.apply import apply
from bot.store.database import Database, Row, Tx, moment, stamp
from bot.store.inbox import UNKEPT
from bot.store.known import Stored
from bot.store.rows import log, put_due, send
from bot.store.staff_ways import found, reached, staff_chats, ways
from bot.store.strange import left_of, of_nobody
from bot.telegram.translate import incoming

from .begun import Stage, begin, ended, through
from .pass_on import unheard_of
from .practice import fresh_code
from .turned_away import bounded, too_often
from .upkeep import write_anew

logger = logging.getLogger(__name__)

SENT_MEANWHILE, LAST_WAIT = timedelta(minutes=1), timedelta(days=1)
"""How long an erasure waits for what is still to be sent: looked at so often, so long at most."""
TRIES = 3
"""How often a row that fails is tried before staff get it as it is."""
AGAIN, LATEST = timedelta(minutes=15), timedelta(days=1)
"""After them what falls due is tried again so late, twice as late each time, up to a day."""


async def handle_update(db: Database, practice: Practice, now: datetime) -> bool:
    """Do what the oldest waiting update causes."""

    def next_one(tx: Tx) -> tuple[Row, str, Stage] | None:
        if (row := tx.one("inbox_next")) is None:
            return None
        key = f"update:{row['update_id']}"
        return row, key, begin(tx, key, now)

    if (taken := await db.transact(next_one)) is None:
        return False
    row, key, stage = taken

    def whole(tx: Tx) -> None:
        body = json.loads(row["body"])
        if UNKEPT in body:
            raise ValueError("nothing of it could be kept")
        event = incoming(body, moment(row["received_at"]))
        out = think(tx, practice, event, now)
        apply(tx, out, now)
        for one in out.of(JoinStaff):
            logger.warning("%s (%s) is of the practice as %s", one.name, one.user, one.role)
        _worked(tx, row, key, "done", None, now)

    def told(tx: Tx, why: str) -> None:
        last = stage is not Stage.work or row["attempts"] + 1 >= TRIES
        if last:
            _tell_of_update(tx, practice, row, why, now)
        _worked(tx, row, key, "failed" if last else "waiting", why, now)

    await through(
        db, key, stage, whole, told, lambda tx, why: _unread(tx, practice, row, key, why, now)
    )
    return True


def _unread(tx: Tx, practice: Practice, row: Row, key: str, why: str, now: datetime) -> None:
    """Even telling what it was failed, or never came to an end: it is not looked into again. Staff
    hear from whose home it was, or from which of their own chats, and the next one has its turn.
    Of a stranger's only the number is kept: nobody can look who is spoken of in it."""
    ended(tx, key)
    number, who = row["update_id"], _of_lane(tx, row["lane"])
    tx.run("inbox_mark", update_id=number, state="failed", error=why, strange=int(who is None))
    if who is None:
        tx.run("inbox_words", update_id=number, body=f'{{"update_id":{number}}}')
        return
    text = practice.words.say(who[0], practice.clinic.language, name=who[1])
    grave = bool(row["urgent"])
    _tell_staff(tx, practice, f"failed:{number}", text, why, now, urgent=grave)


def _of_lane(tx: Tx, lane: str) -> tuple[str, str] | None:
    """The words by which staff hear of an update that nobody can read, and the name in them: all
    that its lane tells. None for a stranger's."""
    kind, _, number = lane.partition(":")
    if kind == "home":
        there = tx.one("patient_name", id=int(number)) if number.isdecimal() else None
        return ("desk_failed_unread", there["name"]) if there is not None else None
    people = {str(one.user): one.name for one in load.staff(tx)}  # whose own chat has that number
    chats = {str(chat): name for chat, name in staff_chats(tx).items()}
    name = {**people, **chats}.get(number)
    return ("desk_failed_unread_staff", name) if name is not None else None


def _worked(tx: Tx, row: Row, key: str, state: str, why: str | None, now: datetime) -> None:
    """This try of it has ended so. What has been worked, or never will be, needs the code of its
    link no more; the words of nobody whom we know go at once, or they would fill the disk."""
    ended(tx, key)
    over, number, body = state != "waiting", row["update_id"], row["body"]
    strange = over and of_nobody(tx, body)
    if over:
        body = left_of(tx, number, body) if strange else json_without_codes(body, tx.codes(now))
    why = None if strange else why  # it may hold the words
    tx.run("inbox_mark", update_id=number, state=state, error=why, strange=int(strange))
    if body != row["body"]:
        tx.run("inbox_words", update_id=number, body=body)


def think(tx: Tx, practice: Practice, event: Incoming, now: datetime) -> Effects:
    """The effects of one update, whoever it comes from."""
    cause = update_event(event.update)
    if event.kind == "migrated" and event.new_chat is not None:
        out = Effects(cause)
        if tx.one("name_of_chat", chat_id=event.chat) is None:
            return out  # a group that is no concern of ours
        out.add(ChatMoved(event.chat, event.new_chat))
        return out
    if event.kind == "other" or event.chat == 0:
        return Effects(cause)
    if event.kind != "blocked":
        found(tx, event.chat, now, Cause(cause))  # who writes can be written to
    known = Stored(tx, now, fresh_code())
    if not listened_to(known, event):
        return Effects(cause)
    return bounded(tx, event, handle(context_of(known, practice, event, now)), now)


def _tell_of_update(tx: Tx, practice: Practice, row: Row, why: str, now: datetime) -> None:
    """Staff get the message of one whom we know, and of a stranger only that there was one."""
    event = incoming(json.loads(row["body"]), moment(row["received_at"]))
    who = _name_of_known(tx, event)
    if who is None and too_often(tx, event, now):
        return
    text = practice.words.say("desk_failed_stranger", practice.clinic.language)
    if who is not None:
        text = f"{who}: {without_known(event.text, tx.codes(now))}"
    grave = who is not None and bool(row["urgent"])
    _tell_staff(tx, practice, f"failed:{row['update_id']}", text, why, now, urgent=grave)
    if event.private and event.chat:
        clinic = practice.clinic
        phone = f"{clinic.phone} / {clinic.emergency_name}, {clinic.emergency_phone}"
        lang: Lang = "es" if event.sender and (event.sender.lang or "")[:2] == "es" else "en"
        out = Effects(EventId(f"sorry:{row['update_id']}"))
        key = "passed_on" if reached(tx) else "say_alone"
        out.reply(event.chat, practice.words.say(key, lang, phone=phone), urgent=True)
        send(tx, out.sends, now, out.cause)


def _name_of_known(tx: Tx, event: Incoming) -> str | None:
    """The name of one of the practice or of a household; None for a stranger."""
    if event.sender is None:
        return None
    user = event.sender.user
    for member in load.staff(tx):
        if member.user == user:
            return member.name
    row = tx.one("person_of_user", user_id=user)
    return row["name"] if row else None


def _tell_staff(
    tx: Tx,
    practice: Practice,
    key: str,
    text: str,
    why: str,
    now: datetime,
    *,
    urgent: bool = False,
) -> None:
    words = practice.words.say("desk_failed", practice.clinic.language, text=text[:1500])
    tell_desks(tx, key, words, why, now, entry=text, urgent=urgent)


def tell_desks(
    tx: Tx,
    key: str,
    words: str,
    why: str,
    now: datetime,
    *,
    entry: str = "",
    urgent: bool = True,
) -> None:
    """Tell staff wherever they can be reached, once for each ``key``, and keep a line in the
    log."""
    out = Effects(EventId(key))
    for chat in ways(tx):
        out.say(chat, words, urgent=urgent)
    send(tx, out.sends, now, out.cause)
    log(tx, "failed", "bot", entry or words, now, None, {"why": why}, out.cause)


def next_row(tx: Tx, now: datetime, *, trusted: bool) -> Row | None:
    """The earliest row that is due; where the clock is not ``trusted``, of those that hang on no
    hour of the day."""
    only = None if trusted else json.dumps(sorted(BY_ELAPSED))
    return tx.one("due_next", now=stamp(now), only=only)


async def handle_due(
    db: Database, practice: Practice, now: datetime, *, trusted: bool = True
) -> bool:
    """Do what the next row that is due leads to. What ends too late, or never, is put off like
    what fails: nothing else waits behind it for ever. An erasure has the time it needs."""

    def next_one(tx: Tx) -> tuple[Row, str, Stage] | None:
        if (row := next_row(tx, now, trusted=trusted)) is None:
            return None
        key = f"due:{row['key']}"
        return row, key, begin(tx, key, now, suspect=row["attempts"] >= TRIES)

    if (taken := await db.transact(next_one)) is None:
        return False
    row, key, stage = taken

    def whole(tx: Tx) -> bool:
        ended(tx, key)
        there = next_row(tx, now, trusted=trusted)
        if there is None or (there["key"], there["due_at"]) != (row["key"], row["due_at"]):
            return False  # it was put elsewhere meanwhile
        data = json.loads(row["data"])
        if row["kind"] == NOBODY and not unheard_of(tx, str(data["case"])):
            tx.run("due_mark", key=row["key"], due_at=row["due_at"], state="done", error=None)
            return True  # it has come to staff since
        if row["kind"] == ERASING and _erased_later(tx, row, data, now):
            return True
        due = due_event(row["key"], row["due_at"])
        fallen = Fallen(due, row["kind"], row["patient_id"], data, moment(row["due_at"]))
        out = handle(fallen_due(Stored(tx, now), practice, fallen, now))
        tx.run("due_mark", key=row["key"], due_at=row["due_at"], state="done", error=None)
        apply(tx, out, now)
        return True

    never = stage is not Stage.work
    done = await through(
        db, key, stage, whole,
        lambda tx, why: _due_failed(tx, practice, row, key, why, now, never=never),
        lambda tx, why: _due_later(tx, row, key, why, now, never=never),
        long=row["kind"] == ERASING,
    )  # fmt: skip
    if done and row["kind"] == ERASING:
        await write_anew(db, now)
    return True


def _erased_later(tx: Tx, row: Row, data: dict[str, object], now: datetime) -> bool:
    """What still waits to be sent would bring the words back that are erased: wait for it."""
    since = datetime.fromisoformat(str(data.setdefault("since", now.isoformat())))
    if tx.one("erase_waits", person=data["person"]) is None or now - since > LAST_WAIT:
        return False
    tx.run("due_mark", key=row["key"], due_at=row["due_at"], state="done", error=None)
    put_due(tx, row["key"], ERASING, now + SENT_MEANWHILE, None, data)
    return True


def _due_failed(
    tx: Tx, practice: Practice, row: Row, key: str, why: str, now: datetime, *, never: bool
) -> None:
    """Tried again at once, then later and later: the board, a look at a silent household, an
    erasure that was promised are never lost. Staff hear of it once."""
    if _due_later(tx, row, key, why, now, never=never) == TRIES:
        told = f"failed:{row['key']}:{row['due_at']}"
        name = f"patient {row['patient_id']}"  # the chart itself may be what fails
        text = f"{name}: {row['kind']} {row['due_at']}"
        _tell_staff(tx, practice, told, text, why, now, urgent=True)


def _due_later(tx: Tx, row: Row, key: str, why: str, now: datetime, *, never: bool = False) -> int:
    """Put it off; the how-manieth try this was. What ``never`` found an end has had its tries."""
    ended(tx, key)
    tries: int = max(row["attempts"] + 1, TRIES if never else 0)
    wait = min(AGAIN * 2 ** min(tries - TRIES, 10), LATEST) if tries >= TRIES else None
    again = row["due_at"] if wait is None else stamp(now + wait)
    tx.run("due_again", key=row["key"], due_at=row["due_at"], again=again, tries=tries, error=why)
    return tries
