"""The outbox: claimed, sent, marked. Each chat has its own lane, so that a hanging request
delays nobody else. What is uncertain is sent again, and is never called sent."""

from __future__ import annotations

import asyncio
import logging
import time
from collections.abc import Awaitable, Callable, Iterable
from datetime import datetime, timedelta
from functools import partial

from bot.events.undelivered import GONE
from bot.events.unreached import KIND as NOBODY
from bot.model.chat import (
    Delivered,
    Delivery,
    Gone,
    Moved,
    Outgoing,
    Refused,
    TryAgain,
    Uncertain,
)
from bot.model.codes import without_codes
from bot.model.ids import Cause
from bot.model.topic import TOPICS, AboutCase
from bot.store import load
from bot.store.database import Database, Row, StorageTrouble, Tx, moment, stamp
from bot.store.rows import log, log_arrived, move_chat, put_due, send
from bot.store.staff_ways import COPY, NO_LONGER, clear_late, found, lost, still_staff
from bot.store.trouble import StoreError, passing, unreadable
from bot.telegram.pace import Pace

from .begun import error_in_words, told_or_left
from .in_time import hand_on, too_late, wait, with_its_hour
from .pass_on import (
    OVER,
    about_open_case,
    case_arrived,
    of_refused,
    pass_on,
    tell_of_refused,
    told_to_nobody,
    unheard_of,
)

logger = logging.getLogger(__name__)

Lane = tuple[int, bool]
"""A chat, and whether it is the lane of urgent messages there."""
Deliver = Callable[[Outgoing], Awaitable[Delivery]]

AT_ONCE, FOR_URGENT = 32, 8
"""Messages under way at once, each to another chat; so many of them are kept for urgent ones."""
HANGS = 20.0
"""Seconds after which an urgent one takes no place of the next any more; at most twice as many
as ``AT_ONCE`` are under way."""
LONGEST, LONGEST_URGENT = 300.0, 60.0
"""Seconds between two tries, at most."""
ANSWER_LIVES = timedelta(seconds=20)
"""So long the words on a pressed button are worth sending; the platform drops them later."""
EDIT_LIVES = timedelta(days=1)
LONGEST_SEND = 180.0
"""Seconds until a sending that hangs is given up, as uncertain; a film takes its time."""
COPIES = 24
"""So many numbers before a message that was sent again are looked at for a copy of it, for each
try in that chat of which nobody knows whether it came."""
TRUTH, TRUTHS = timedelta(minutes=1), 60
"""How long after, and how often in all, that nobody could be reached is tried though refused."""
LIVES, RESTS, LONGEST_REST = 3, timedelta(seconds=20), timedelta(minutes=10)
"""A message that was tried so often, and was under way when the program ended, waits so long; twice
as long after each further end."""
STOPPED = "stopped while it was being sent"
FINISH_SECONDS = 10.0
"""So long a stopping bot waits for what is under way."""


async def recover(db: Database, now: datetime) -> int:
    """After a start: what was being sent when the program stopped goes again; how many. What was
    under way at several such ends may be what ends it: the others go first."""

    def whole(tx: Tx) -> int:
        suspects = tx.all("outbox_suspect", lives=LIVES)
        for row in suspects:
            rest = RESTS * 2 ** min(row["attempts"] - LIVES, 9)
            _retry(tx, row, now + min(rest, LONGEST_REST), STOPPED, uncertain=1)
        return len(suspects) + tx.run("outbox_recover", error=STOPPED)

    return await db.transact(whole)


class Sender:
    """Sends what waits in the outbox, in order within each chat, urgent things first."""

    def __init__(self, db: Database, deliver: Deliver, pace: Pace) -> None:
        self._db = db
        self._deliver = deliver
        self._pace = pace
        self._lanes: dict[Lane, asyncio.Task[None]] = {}
        self._began: dict[Lane, float] = {}
        self._failed: BaseException | None = None
        self.on_done: Callable[[], None] | None = None
        self.longest = LONGEST_SEND

    async def send_ready(self, now: datetime) -> int:
        """Send one message to each chat that has one ready, and wait; how many were tried."""
        started = await self.start_ready(now)
        if self._lanes:
            await asyncio.wait(list(self._lanes.values()))
        self._raise_failed()
        return started

    async def start_ready(self, now: datetime) -> int:
        """Begin one message to each free chat that has one ready; how many were begun.

        Raises what failed in a lane since the last call: what is stored goes on later."""
        self._raise_failed()
        going = await self.could_start(now)
        if not going:
            return 0
        tick = time.monotonic()
        for chat, _ in going:
            self._pace.sent(chat, tick)
        claimed = await self._db.transact(lambda tx: _claim_all(tx, going.values()))
        for row in claimed:
            lane = (row["chat_id"], bool(row["urgent"]))
            task = asyncio.create_task(self._one(row, now))
            self._lanes[lane], self._began[lane] = task, tick
            task.add_done_callback(partial(self._ended, lane))
        return len(claimed)

    async def could_start(self, now: datetime) -> dict[Lane, int]:
        """What could begin at this moment: the message of each lane."""
        tick = time.monotonic()
        hang = sum(urgent and tick - self._began[chat, urgent] > HANGS
                   for chat, urgent in self._lanes)  # fmt: skip
        room = AT_ONCE - len(self._lanes) + min(hang, AT_ONCE)
        plain = AT_ONCE - FOR_URGENT - sum(not urgent for _, urgent in self._lanes)
        if room <= 0:
            return {}
        most = AT_ONCE * 4
        ready = await self._db.read(lambda tx: tx.all("outbox_ready", now=stamp(now), most=most))
        going: dict[Lane, int] = {}
        for row in ready:
            chat, urgent = row["chat_id"], bool(row["urgent"])
            busy = {*going, *self._lanes}
            # What is urgent goes past what hangs; nothing else goes past anything.
            if (chat, True) in busy or (chat, False) in (going if urgent else busy):
                continue
            if len(going) >= room or (not urgent and plain <= 0):
                continue
            if self._pace.wait(chat, tick, urgent=urgent) <= 0:
                going[chat, urgent] = row["id"]
                plain -= not urgent
        return going

    async def again(self, now: datetime) -> None:
        """After a failure: nothing is under way any more, and all that was is uncertain."""
        await self.finish()
        self._failed = None
        await recover(self._db, now)

    async def finish(self, seconds: float = FINISH_SECONDS) -> None:
        """Wait for what is under way, so long at most; the rest is uncertain at the next start."""
        tasks = list(self._lanes.values())
        if tasks:
            _, late = await asyncio.wait(tasks, timeout=seconds)
            for task in late:
                task.cancel()
            await asyncio.gather(*late, return_exceptions=True)

    def _ended(self, lane: Lane, task: asyncio.Task[None]) -> None:
        self._lanes.pop(lane, None)
        self._began.pop(lane, None)
        if not task.cancelled() and task.exception() is not None:
            self._failed = self._failed or task.exception()
        if self.on_done is not None:
            self.on_done()

    def _raise_failed(self) -> None:
        failed, self._failed = self._failed, None
        if failed is not None:
            raise failed

    async def _one(self, row: Row, now: datetime) -> None:
        """Try one message. A mistake in it ends it, and staff hear of it: it stops no other."""
        try:
            await self._try(row, now)
        except Exception as error:
            if passing(error):
                raise
            logger.exception("%s cannot be sent", row["dedupe"])
            why = error_in_words(error)
            if unreadable(error) and await self._put_back(row, why, now):
                return
            await told_or_left(
                self._db, row["dedupe"],
                lambda tx: _unsendable(tx, row, why, now),
                lambda tx: _done(tx, row, "refused", None, why, now),
            )  # fmt: skip

    async def _put_back(self, row: Row, why: str, now: datetime) -> bool:
        """Whether it goes once more: a read error may be over by then. Nobody knows whether it was
        sent before that."""
        if row["attempts"] > LIVES:
            return False
        again = now + timedelta(seconds=_pause(row))
        try:
            await self._db.transact(lambda tx: _retry(tx, row, again, why, uncertain=1))
        except StoreError:
            return False
        return True

    async def _try(self, row: Row, now: datetime) -> None:
        message = Outgoing.model_validate_json(row["body"])
        message = message.model_copy(update={"chat": row["chat_id"]})
        began = time.monotonic()
        kept = await self._db.read(lambda tx: _not_now(tx, row, message, now))
        if kept is not None:
            await self._finish(row, message, kept, now)
            return
        if message.kind == "edit" and message.message is None:
            target = await self._db.read(lambda tx: tx.one("outbox_message_of", dedupe=message.of))
            under_way = target is not None and target["state"] in ("waiting", "sending")
            if target is not None and under_way and target["id"] < row["id"]:
                wait = TryAgain(after_seconds=1.0, why="what it changes is still under way")
                await self._finish(row, message, wait, now)
                return
            # One that is written after this edit was written with what it changes.
            if target is None or target["message_id"] is None or target["id"] > row["id"]:
                await self._finish(row, message, Refused(why="never sent, so not changed"), now)
                return
            message = message.model_copy(update={"message": target["message_id"]})
        if message.kind == "edit" and row["attempts"] > 1:
            numbers = {"chat_id": row["chat_id"], "message_id": message.message}
            if await self._db.read(
                lambda tx: tx.one("outbox_edited_since", id=row["id"], **numbers)
            ):
                await self._finish(row, message, Refused(why=f"{OVER}a newer change has come"), now)
                return
        if COPY in message.dedupe and await self._db.read(partial(_is_anothers, message=message)):
            await self._finish(row, message, Refused(why=f"{OVER}it is no copy"), now)
            return
        message = with_its_hour(row, message, now)
        if row["uncertain"] and message.again:
            text = f"{message.again}\n{message.text}"
            message = message.model_copy(update={"text": text})
        got: Delivery
        try:
            async with asyncio.timeout(self.longest):
                got = await self._deliver(message)
        except TimeoutError:
            got = Uncertain(why="no answer came")
        took = time.monotonic() - began
        await self._finish(row, message, got, now + timedelta(seconds=took if took > 1 else 0))

    async def _finish(self, row: Row, message: Outgoing, got: Delivery, now: datetime) -> None:
        if isinstance(got, TryAgain) and (message.kind != "edit" or got.after_seconds > 1):
            self._pace.hold(row["chat_id"], time.monotonic(), min(got.after_seconds, 600))
        # It is there: to send it again, or to call it lost, would be untrue.
        arrived = got.message if isinstance(got, Delivered) else None

        def only_sent(tx: Tx) -> None:
            _done(tx, row, "sent", arrived, None, now)

        try:
            late = only_sent if arrived is not None else None
            await self._db.transact(lambda tx: _mark(tx, row, message, got, now), late=late)
        except StorageTrouble:
            raise
        except Exception:
            if arrived is None:
                raise
            logger.exception("%s has arrived, and what follows could not be done", row["dedupe"])
            await self._db.transact(only_sent)


def _claim_all(tx: Tx, ids: Iterable[int]) -> list[Row]:
    found = [tx.one("outbox_claim", id=id) for id in ids]
    return [row for row in found if row is not None]


def _mark(tx: Tx, row: Row, message: Outgoing, got: Delivery, now: datetime) -> None:
    """What became of a message, in one transaction."""
    by = Cause(row["event"])
    if not isinstance(got, Delivered) and _silenced(tx, row):
        return
    if isinstance(got, Delivered) and message.kind == "send" and got.message is None:
        got = Uncertain(why="the answer named no message")
    if isinstance(got, Delivered):
        _done(tx, row, "sent", got.message, None, now)
        found(tx, row["chat_id"], now, by)
        case_arrived(tx, row, message)
        log_arrived(tx, message, moment(row["created_at"]), now, by)
        if got.message is not None:
            _take_buttons_of_copies(tx, row, message, got.message, now)
        number = got.message or message.message
        if number is not None and not still_staff(tx, row):  # it was on its way until then
            clear_late(tx, row, [number], now, "late:")
    elif isinstance(got, TryAgain):
        # A failing line must not spin: at least a second, and longer each time.
        pause = got.after_seconds if got.ours else max(got.after_seconds, _pause(row) / 2)
        _retry(tx, row, now + timedelta(seconds=pause), got.why, uncertain=0)
        if got.ours:
            tx.run("outbox_held", id=row["id"], now=stamp(now))
    elif isinstance(got, Uncertain):
        _retry(tx, row, now + timedelta(seconds=_pause(row)), got.why, uncertain=1)
    elif isinstance(got, Moved):
        move_chat(tx, row["chat_id"], got.new_chat)
        _retry(tx, row, now, "the group has a new id", uncertain=0)
    elif isinstance(got, Gone):
        _done(tx, row, "gone", None, got.why, now)
        tx.run("person_reachable", chat_id=row["chat_id"], reachable=0)
        lost(tx, row["chat_id"], got.why, now, by)
        if message.kind == "send":
            pass_on(tx, row, message, now)
            told_to_nobody(tx, row, now)
            if message.patient is not None:
                key, data = f"unreachable:{row['chat_id']}", {"chat": row["chat_id"], "how": GONE}
                put_due(tx, key, "unreachable", now, message.patient, data)
            text = f"not delivered: {got.why}"
            log(tx, "delivery", "bot", text, now, message.patient, _never(row, message), by)
    elif got.why == NO_LONGER:
        _done(tx, row, "refused", None, got.why, now)
        if message.kind == "send":
            text = f"not sent: {got.why}"
            log(tx, "delivery", "bot", text, now, message.patient, _never(row, message), by)
            clear_late(tx, row, _copies(tx, row, message, None), now, COPY)
            if about_open_case(tx, message):
                pass_on(tx, row, message, now)
                told_to_nobody(tx, row, now)
    elif got.why.startswith(OVER):
        _done(tx, row, "refused", None, got.why, now)
        if message.kind == "send":
            log(tx, "delivery", "bot", got.why, now, message.patient, _never(row, message), by)
            _take_buttons_of_copies(tx, row, message, None, now)
        hand_on(tx, row, message, got.why.removeprefix(OVER), now)
    elif _still_true(tx, row, message):
        # Nobody else tells them that they must phone: what is refused now may be taken later.
        logger.warning("%s was refused: %s", message.dedupe, got.why)
        _retry(tx, row, now + TRUTH, got.why, uncertain=0)
    else:
        level = logging.DEBUG if COPY in message.dedupe else logging.WARNING
        logger.log(level, "%s was refused: %s", message.dedupe, got.why)
        _done(tx, row, "refused", None, got.why, now)
        if message.kind == "send":
            text = f"refused by the platform: {got.why}"
            data = {**_never(row, message), "text": message.text}
            log(tx, "delivery", "bot", text, now, message.patient, data, by)
            if not of_refused(row):
                pass_on(tx, row, message, now)
            told_to_nobody(tx, row, now)
            tell_of_refused(tx, row, message.text, now)


def _still_true(tx: Tx, row: Row, message: Outgoing) -> bool:
    """Whether it says that nobody could be reached, and that is so: staff may know by now."""
    kind, _, rest = message.dedupe.partition(":")
    told = kind == NOBODY and row["attempts"] < TRUTHS
    return told and bool(unheard_of(tx, rest.partition(":")[0]))


def _take_buttons_of_copies(
    tx: Tx, row: Row, message: Outgoing, number: int | None, now: datetime
) -> None:
    """An earlier try may have come, too, and nobody told its number: whatever of ours stands
    between the last that was known before it and this one is such a copy. Its buttons go, so
    that one is left; none where the hour was over before one was known (``number`` None).
    A chat's numbers only rise; what is not ours cannot be changed, and is left alone."""
    if not message.buttons or message.kind != "send":
        return
    bare = {"kind": "edit", "text": "", "buttons": (), "media": None, "topic": "", "urgent": False}
    edits = [
        message.model_copy(update={**bare, "dedupe": f"{message.chat}{COPY}{old}", "message": old})
        for old in _copies(tx, row, message, number, known_only=True)
    ]
    send(tx, edits, now, Cause(row["event"]))


def _copies(
    tx: Tx, row: Row, message: Outgoing, number: int | None, *, known_only: bool = False
) -> list[int]:
    """The numbers that copies of it may have; those after all that is known, too, unless
    ``known_only``."""
    if not row["uncertain"]:
        return []
    known = tx.all("outbox_numbers", chat_id=message.chat)
    before = max((x["message_id"] for x in known if x["sent_at"] <= row["created_at"]), default=0)
    newest = max((x["message_id"] for x in known), default=0)
    ours = {one["message_id"] for one in known}
    tries = tx.one("outbox_unknown", chat_id=message.chat, since=row["created_at"])
    below, most = number or newest + 1, COPIES * (tries["tries"] if tries else row["uncertain"])
    if known_only:
        return [x for x in range(max(before + 1, below - most), below) if x not in ours]
    return [x for x in range(before + 1, max(before + most, below) + 1) if x not in ours][:most]


def _never(row: Row, message: Outgoing) -> dict[str, object]:
    """What the log says with a message that will never arrive."""
    return {"chat": row["chat_id"], "key": message.dedupe, "final": True}


def _is_anothers(tx: Tx, message: Outgoing) -> bool:
    """Whether what was taken for a copy has become known meanwhile as a message of its own."""
    return any(x["message_id"] == message.message
               for x in tx.all("outbox_numbers", chat_id=message.chat))  # fmt: skip


def _not_now(tx: Tx, row: Row, message: Outgoing, now: datetime) -> Delivery | None:
    """Asked at each try: what keeps a message from being sent now, if anything does."""
    if _silenced(tx, row):
        return Refused(why=f"{OVER}the patient died")
    if not still_staff(tx, row):
        return Refused(why=NO_LONGER)
    if (later := wait(tx, row, message, now)) is not None:
        return later
    why: str | None = too_late(tx, row, message, now)
    if why is None and row["attempts"] > 1:
        why = _over(tx, row, message, now)
    return Refused(why=f"{OVER}{why}") if why else None


def _silenced(tx: Tx, row: Row) -> bool:
    """Whether a death that was told while it was under way has ended it: no try follows, and
    nothing comes of how this one ends, unless it has arrived."""
    return tx.one("outbox_silenced", id=row["id"]) is not None


def _over(tx: Tx, row: Row, message: Outgoing, now: datetime) -> str:
    """Why a message that could not be sent yet is worth nothing any more; empty if it is."""
    age = now - moment(row["created_at"])
    if message.kind == "answer":
        return "the button was pressed too long ago" if age > ANSWER_LIVES else ""
    if message.kind == "edit":
        return "it changes a message of days ago" if age > EDIT_LIVES else ""
    head, _, rest = message.dedupe.partition(":")
    if head == "nobody":
        if not load.unreached(tx, rest.split(":")[0]):
            return "the clinic has been reached"
    elif head == "page":
        topic = TOPICS.decode(message.topic)
        if isinstance(topic, AboutCase) and tx.one("outbox_case_open", id=topic.case) is None:
            return "the case is taken or closed"
    return ""


def _pause(row: Row) -> float:
    """Seconds until the next try: longer each time."""
    longest = LONGEST_URGENT if row["urgent"] else LONGEST
    tries: int = row["attempts"]
    return min(longest, float(2 ** min(max(tries - 1, 0), 9)))


def _unsendable(tx: Tx, row: Row, why: str, now: datetime) -> None:
    """It holds what cannot be sent, by a mistake of ours."""
    if _silenced(tx, row):
        return
    _done(tx, row, "refused", None, why, now)
    if row["kind"] == "send":
        by, data = Cause(row["event"]), {"chat": row["chat_id"], "key": row["dedupe"],
                                         "final": True}  # fmt: skip
        log(tx, "delivery", "bot", f"cannot be sent: {why}", now, row["patient_id"], data, by)
        told_to_nobody(tx, row, now)
        tell_of_refused(tx, row, "", now)


def _done(
    tx: Tx, row: Row, state: str, message: int | None, error: str | None, now: datetime
) -> None:
    tx.run(
        "outbox_done", id=row["id"], state=state, message_id=message, error=error, now=stamp(now)
    )
    if (body := without_codes(row["body"])) != row["body"]:
        tx.run("outbox_words", id=row["id"], body=body)


def _retry(tx: Tx, row: Row, at: datetime, why: str, *, uncertain: int) -> None:
    tx.run("outbox_retry", id=row["id"], due_at=stamp(at), error=why, uncertain=uncertain)
