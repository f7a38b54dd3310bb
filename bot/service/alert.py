"""Trouble that somebody must hear of: said in the staff chats, as far as these can be reached,
and by ``alert`` in the practice's settings, which works when no chat does.

``Alert.tell`` is all that other parts need. A trouble is one of a closed list, each with its
words in ``flows/words.yaml`` (``desk_`` and its name), into which only numbers and the hour are
filled: no words of a household and no name can leave by it. Whoever has a new trouble adds it
to ``Trouble`` with its words.
"""

from __future__ import annotations

import asyncio
import logging
import time
from collections.abc import Awaitable, Callable, Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from pathlib import Path
from zoneinfo import ZoneInfo

from bot.context.buttons import mark_of
from bot.context.words import Words, when
from bot.model.chat import Delivery, Moved, Outgoing
from bot.model.effects import Effects
from bot.model.ids import Cause, EventId
from bot.model.settings import Clinic
from bot.store.database import Database, Tx, stamp
from bot.store.rows import log
from bot.store.staff_ways import ways
from bot.store.trouble import Kind

from . import hook
from .quota import Quota
from .told import settled
from .work import tell_desks

logger = logging.getLogger(__name__)


class Trouble(StrEnum):
    """What somebody must hear of. ``trial`` is how the practice tries its settings."""

    trial = "trial"
    part_again = "part_again"
    not_looked_back = "not_looked_back"
    late_unseen = "late_unseen"
    clock_jumped = "clock_jumped"
    clock_again = "clock_again"
    line_down = "line_down"
    deaf = "deaf"
    mute = "mute"
    line_again = "line_again"
    two_bots = "two_bots"
    token_wrong = "token_wrong"  # noqa: S105  the name of a trouble, not a secret
    chat_lost = "chat_lost"
    no_chat_left = "no_chat_left"
    case_unreached = "case_unreached"
    stopped = "stopped"
    stuck = "stuck"
    not_started = "not_started"
    not_anew = "not_anew"
    upkeep = "upkeep"
    stood = "stood"
    falls = "falls"
    falls_daily = "falls_daily"
    storage = "storage"
    """Its words are made in ``storage.py``, which tells the chats itself."""


OUTSIDE = frozenset((Trouble.trial, Trouble.line_down, Trouble.mute, Trouble.token_wrong,
                     Trouble.no_chat_left, Trouble.case_unreached, Trouble.stopped,
                     Trouble.stuck, Trouble.not_started))  # fmt: skip
"""Said outside the chats alone: while it lasts there is no chat to say it in."""
ENDS = {
    Trouble.clock_again: (Trouble.clock_jumped,),
    Trouble.line_again: (Trouble.line_down, Trouble.deaf, Trouble.mute),
}
"""Once this is told, a call of these that did not get through is of no use any more."""
OWED = 24 * 3600.0
"""So many seconds a call that does not get through is made again and again."""
FALLS, FALLS_DAILY = 3, 6
"""So many starts within a quarter of an hour, or within a day, none after a stop, are told:
something ends the program."""
STORED_WITHIN = 10.0
"""So long it may take to store what is said in the chats; then it is said past the database."""
SAID_WITHIN = 30.0
"""So long one of those sends may take."""
PAUSES = (5.0, 15.0, 60.0, 300.0, 300.0, 600.0, 1200.0, 1200.0)
"""Seconds before each further try of one that may not have come."""
FINISH_SECONDS = 10.0
"""So long a stopping bot waits for the calls under way."""

Call = Callable[[tuple[str, ...] | str, str, Mapping[str, object]], Awaitable[str]]
Deliver = Callable[[Outgoing], Awaitable[Delivery]]


@dataclass(frozen=True, slots=True)
class _Owed:
    """A call that has not got through. ``what``: what the quota knows it by; ``at``: when it was
    first to be made; ``since``: the same by the clock that nobody sets, for a jump of the other may
    be what is told."""

    what: str
    text: str
    at: datetime
    since: float


class Alert:
    """``tell`` whatever somebody must hear of; before ``attach`` only ``alert`` is called."""

    def __init__(
        self, clinic: Clinic, words: Words, kept: Path | None = None, call: Call = hook.call
    ) -> None:
        self._clinic, self._words, self._call = clinic, words, call
        self._quota = Quota(kept)
        self._db: Database | None = None
        self._deliver: Deliver | None = None
        self._wake: Callable[[], object] = lambda: None
        self._chats: tuple[int, ...] = ()
        self._told: set[str] = set()
        self._calling: set[asyncio.Task[None]] = set()
        self._telling: set[asyncio.Task[None]] = set()
        self._owed: dict[Trouble, _Owed] = {}
        self._past: list[tuple[Trouble, str, datetime, str, dict[str, int]]] = []

    async def starts(self, now: datetime) -> None:
        """Before anything else is begun: where this program is ended again and again, or ended
        itself the last time, that is called out; and staff read it as soon as the chats can be
        told."""
        soon, day = self._quota.starts(now)
        for stood, minutes in self._quota.stood():
            key, off = f"{Trouble.stood}:{stamp(stood)}", round((now - stood).total_seconds() / 60)
            figures = {"minutes": minutes, "off": max(off, 0)}
            self._past.append((Trouble.stood, "it ended itself", now, key, figures))
        if soon >= FALLS or day >= FALLS_DAILY:
            trouble, times = (Trouble.falls, soon) if soon >= FALLS else (Trouble.falls_daily, day)
            why = f"{times} starts and no stop"
            self._past.append((trouble, why, now, "", {"times": times}))
        for trouble, _, _, _, figures in self._past:
            self.call_out(trouble, self.text(trouble, now, figures), now)
        if self._calling:
            await asyncio.wait(list(self._calling), timeout=FINISH_SECONDS)

    def stopped(self) -> None:
        """This program ends of its own, or has told why it ends."""
        self._quota.stopped()

    async def attach(
        self, db: Database, deliver: Deliver, wake: Callable[[], object], words: Words
    ) -> None:
        """From now on the staff chats are told, too, by the outbox, and past it where the
        database fails. ``wake`` is called when there is something to send."""
        self._db, self._deliver, self._wake, self._words = db, deliver, wake, words
        await self.remember()
        while self._past:
            trouble, why, now, key, figures = self._past.pop(0)
            await self.tell(trouble, why, now, key=key, **figures)
            if trouble is Trouble.stood:
                self._quota.stood_told()

    async def remember(self) -> None:
        """Look up the staff chats, in case the database cannot be asked later."""
        if self._db is not None:
            self._chats = await self._db.read(ways)

    def text(self, trouble: Trouble, now: datetime, figures: Mapping[str, int]) -> str:
        """What is said: our own words, numbers and the hour."""
        zone = self._clinic.zone
        return self._words.say(
            f"desk_{trouble}", self._clinic.language,
            time=f"{now.astimezone(ZoneInfo(zone)):%Y-%m-%d %H:%M}", zone=zone, **figures,
        )  # fmt: skip

    async def tell(
        self, trouble: Trouble, why: str, now: datetime, *, key: str = "", **figures: int
    ) -> None:
        """Say it in every way. ``why`` is for the log of this computer alone. In the chats it
        is said once for each ``key`` (once a day). Never raises."""
        key = key or f"{trouble}:{now:%Y-%m-%d}"
        text = self.text(trouble, now, figures)
        new = key not in self._told
        if new:
            logger.error("%s: %s", trouble, why)
        self.call_out(trouble, text, now)  # first: it waits for no database
        if new and self._db is not None:
            await self._in_chats(self._db, trouble, key, text, why, now)
            self._told.add(key)  # not before: whoever is cancelled on the way has told nobody

    async def _in_chats(
        self, db: Database, trouble: Trouble, key: str, text: str, why: str, now: datetime
    ) -> None:
        late = False

        def kept(tx: Tx) -> None:
            if late or tx.one("log_told", event=key) is not None:
                return  # past the database, or before the last start
            if trouble in OUTSIDE:
                by = Cause(EventId(key))
                log(tx, "failed", "bot", text, now, None, {"why": why}, by)
            else:
                tell_desks(tx, key, text, why, now)

        try:
            async with asyncio.timeout(STORED_WITHIN):
                await db.transact(kept)
            self._wake()
        except Exception:  # locked, full, damaged, stuck: the chats still work
            late = True
            logger.exception("%s could not be kept: it is sent past the database", trouble)
            if trouble not in OUTSIDE:
                await self._past_the_database(key, text)

    async def _past_the_database(self, key: str, text: str) -> None:
        with suppress(Exception):  # a full disk may still be read
            async with asyncio.timeout(STORED_WITHIN):
                await self.remember()
        out = Effects(EventId(key))
        for chat in self._chats:
            out.say(chat, text, urgent=True)
        if left := await self._all(key, out.sends):
            task = asyncio.create_task(self._again(key, left))
            self._telling.add(task)
            task.add_done_callback(self._telling.discard)

    async def _again(self, key: str, left: Sequence[Outgoing]) -> None:
        """Whoever may not have heard it: nothing of it stands anywhere else."""
        for pause in PAUSES:
            await asyncio.sleep(pause)
            left = await self._all(key, left)
            if not left:
                return

    async def _all(self, key: str, sends: Sequence[Outgoing]) -> list[Outgoing]:
        """All at once, each in its own time: one that hangs keeps no other waiting. Those of
        which nobody knows that they have come."""
        done = await asyncio.gather(*(self._alone(key, message) for message in sends))
        return [message for message, there in zip(sends, done, strict=True) if not there]

    async def _alone(self, key: str, message: Outgoing) -> bool:
        got: Delivery | None = None
        if self._deliver is not None:
            with suppress(Exception):
                async with asyncio.timeout(SAID_WITHIN):
                    got = await self._deliver(message)
                    if isinstance(got, Moved):
                        there = message.model_copy(update={"chat": got.new_chat})
                        got = await self._deliver(there)
        logger.info("%s past the database: %s", key, type(got).__name__)
        return settled(got)

    def call_out(self, trouble: Trouble, text: str, now: datetime) -> None:
        """Call what the practice has named for it, beside all else; not too often, but ``again``
        until a call got through, or its end is told."""
        if self._clinic.alert is None:
            return
        # The storage's trouble and its end are two things to hear of.
        what = f"{trouble}:{mark_of(text)}" if trouble is Trouble.storage else trouble.value
        for over in ENDS.get(trouble, ()):
            self._owed.pop(over, None)
        if not self._quota.lately(what, now):
            self._owed[trouble] = _Owed(what, text, now, time.monotonic())
            self._begin(trouble, self._owed[trouble], now)

    def again(self, now: datetime) -> None:
        """What did not get through is called out again, as far as the quota lets it."""
        for trouble, owed in list(self._owed.items()):
            if time.monotonic() - owed.since > OWED:
                del self._owed[trouble]
            elif not self._quota.lately(owed.what, now):
                self._begin(trouble, owed, now)

    def _begin(self, trouble: Trouble, owed: _Owed, now: datetime) -> None:
        alert, under_way = self._clinic.alert, {task.get_name() for task in self._calling}
        if alert is None or owed.what in under_way or not self._quota.take(owed.what, now):
            return
        self._quota.keep()
        task = asyncio.create_task(self._calls(alert, trouble, owed, now), name=owed.what)
        self._calling.add(task)
        task.add_done_callback(self._calling.discard)

    async def _calls(
        self, alert: tuple[str, ...] | str, trouble: Trouble, owed: _Owed, now: datetime
    ) -> None:
        try:
            why = await self._call(alert, *said(self._clinic, trouble, owed.text, owed.at))
        except asyncio.CancelledError:  # the bot stops: whoever starts next may call
            self._quota.failed(owed.what)
            raise
        if not why and (left := self._owed.get(trouble)) is not None and left.what == owed.what:
            del self._owed[trouble]
        if why:
            self._quota.failed(owed.what)
            logger.error("the alert could not be called (%s): %s", trouble, why)
        if self._db is not None:
            words = f"could not be called: {why}" if why else "called"
            data: dict[str, object] = {"trouble": trouble.value}
            with suppress(Exception):  # the database itself may be the trouble
                await self._db.transact(lambda tx: log(tx, "alert", "bot", words, now, None, data))

    def no_start(self, kind: Kind, now: datetime) -> None:
        """The storage fails before anything of it could be read: nobody else can be told."""
        why = self._words.say(f"storage_is_{kind.name}", self._clinic.language)
        text = self._words.say("storage_no_start", self._clinic.language, why=why)
        self.call_out(Trouble.storage, text, now)

    def starts_after_all(self, since: datetime, now: datetime) -> None:
        """That is over."""
        lang, zone = self._clinic.language, ZoneInfo(self._clinic.zone)
        text = self._words.say(
            "storage_again", lang, since=when(since.astimezone(zone), now.astimezone(zone), lang)
        )
        self.call_out(Trouble.storage, text, now)

    async def from_outside(self, trouble: Trouble, now: datetime, **figures: int) -> None:
        """Call it on a loop of one's own, while the bot's stands still: no database, and the call
        waits for nothing of the disk. That it stood is noted for the next start to tell."""
        alert, text = self._clinic.alert, self.text(trouble, now, figures)
        noting = None
        if trouble is Trouble.stuck:
            self._quota.stands(now, figures["minutes"])
            noting = asyncio.create_task(asyncio.to_thread(self._quota.keep))
        called = alert is not None and self._quota.take(trouble.value, now)
        why = ""
        if alert is not None and called:
            why = await self._call(alert, *said(self._clinic, trouble, text, now))
        if noting is not None:
            await noting
        if why:
            self._quota.failed(trouble.value)
        elif called:
            self._quota.keep()

    async def finish(self, seconds: float = FINISH_SECONDS) -> None:
        """Wait for the calls under way, so long at most."""
        for task in self._telling:
            task.cancel()
        await asyncio.gather(*self._telling, return_exceptions=True)
        if self._calling:
            _, late = await asyncio.wait(list(self._calling), timeout=seconds)
            for task in late:
                task.cancel()
            await asyncio.gather(*late, return_exceptions=True)
        self._db = None


def said(
    clinic: Clinic, trouble: Trouble, text: str, now: datetime
) -> tuple[str, dict[str, object]]:
    """What a command is given, and what an address is."""
    body: dict[str, object] = {
        "clinic": clinic.name, "trouble": trouble.value, "text": text, "at": now.isoformat(),
    }  # fmt: skip
    return f"{clinic.name}: {text}", body
