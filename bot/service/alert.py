"""Trouble that somebody must hear of: said in the staff chats, as far as these can be reached,
and by ``alert`` in the practice's settings, which works when no chat does.

``Alert.tell`` is all that other parts need. A trouble is one of a closed list, each with its
words in ``flows/words.yaml`` (``desk_`` and its name), into which only numbers and the hour are
filled: no words of a household and no name can leave by it. Whoever has a new trouble adds it
to ``Trouble`` with its words.
"""

from __future__ import annotations

import asyncio
import json
import logging
from collections.abc import Awaitable, Callable, Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from enum import StrEnum
from pathlib import Path
from zoneinfo import ZoneInfo

from bot.context.buttons import mark_of
from bot.context.words import Words, when
from bot.model.chat import Delivery, Moved, Outgoing
from bot.model.effects import Effects
from bot.model.ids import Cause, EventId
from bot.model.settings import Clinic
from bot.store.database import Database, Tx
from bot.store.rows import log
from bot.store.staff_ways import ways
from bot.store.trouble import Kind

from . import hook
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
    falls = "falls"
    storage = "storage"
    """Its words are made in ``storage.py``, which tells the chats itself."""


OUTSIDE = frozenset((Trouble.trial, Trouble.line_down, Trouble.mute, Trouble.token_wrong,
                     Trouble.no_chat_left, Trouble.case_unreached, Trouble.stopped,
                     Trouble.stuck, Trouble.not_started))  # fmt: skip
"""Said outside the chats alone: while it lasts there is no chat to say it in."""
CALLED_AGAIN, MOST, WITHIN = timedelta(minutes=30), 12, timedelta(hours=1)
"""The same trouble is called out again so late, and not more than so many calls in an hour."""
TRIED_AGAIN = timedelta(minutes=5)
"""So soon after a call that failed."""
FAILED = "failed:"
STARTED, FALLS, SHORTLY = "started", 3, timedelta(minutes=15)
"""So many starts in so short a time, none after a stop, are told: something ends the program."""
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


@dataclass(slots=True)
class Quota:
    """When what was called out. Kept in a file beside the database, so that a program that
    is started again and again does not call each time; without one only as long as it runs."""

    file: Path | None = None
    calls: list[tuple[str, float]] = field(default_factory=list)

    def __post_init__(self) -> None:
        if self.file is not None:
            with suppress(OSError, ValueError, TypeError):
                self.calls = [(str(what), float(at)) for what, at in json.loads(
                    self.file.read_text(encoding="utf-8"))]  # fmt: skip

    def take(self, what: str, now: datetime) -> bool:
        """Whether it may be called out now; if so, that is noted, once ``keep`` is called for
        the next start, too."""
        at = now.timestamp()
        # What lies ahead was noted by a clock that was wrong.
        self.calls = [one for one in self.calls if at - WITHIN.total_seconds() < one[1] <= at]
        waits = {what: CALLED_AGAIN, f"{FAILED}{what}": TRIED_AGAIN}
        soon = any(
            name in waits and then > at - waits[name].total_seconds() for name, then in self.calls
        )
        if soon or sum(name != STARTED for name, _ in self.calls) >= MOST:
            return False
        self.calls.append((what, at))
        return True

    def failed(self, what: str) -> None:
        """The call did not get through: it is tried again soon, within the hour's number."""
        self.calls = [(FAILED + name if name == what else name, at) for name, at in self.calls]
        self.keep()

    def starts(self, now: datetime) -> int:
        """Note a start; how many there were of late since the program was last stopped."""
        at = now.timestamp()
        self.calls.append((STARTED, at))
        self.keep()
        since = at - SHORTLY.total_seconds()
        return sum(name == STARTED and since < then <= at for name, then in self.calls)

    def stopped(self) -> None:
        """The program ends of its own: the starts before are of no account."""
        self.calls = [one for one in self.calls if one[0] != STARTED]
        self.keep()

    def keep(self) -> None:
        """For the next start, as far as the disk takes it."""
        if self.file is not None:
            with suppress(OSError):  # a full disk: it is remembered here
                self.file.write_text(json.dumps(self.calls), encoding="utf-8")


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
        self._fell: tuple[datetime, int] | None = None

    async def starts(self, now: datetime) -> None:
        """Before anything else is begun: where this program is ended again and again, and cannot
        say so itself, it is called out; and staff read it as soon as the chats can be told."""
        if (times := self._quota.starts(now)) < FALLS:
            return
        self._fell = (now, times)
        self.call_out(Trouble.falls, self.text(Trouble.falls, now, {"times": times}), now)
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
        if self._fell is not None:
            now, times = self._fell
            await self.tell(Trouble.falls, f"{times} starts and no stop", now, times=times)

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
        """Call what the practice has named for it, beside all else; not too often."""
        alert = self._clinic.alert
        # The storage's trouble and its end are two things to hear of.
        what = f"{trouble}:{mark_of(text)}" if trouble is Trouble.storage else trouble.value
        if alert is None or not self._quota.take(what, now):
            return
        self._quota.keep()
        task = asyncio.create_task(self._calls(alert, trouble, what, text, now))
        self._calling.add(task)
        task.add_done_callback(self._calling.discard)

    async def _calls(
        self, alert: tuple[str, ...] | str, trouble: Trouble, what: str, text: str, now: datetime
    ) -> None:
        try:
            why = await self._call(alert, *said(self._clinic, trouble, text, now))
        except asyncio.CancelledError:  # the bot stops: whoever starts next may call
            self._quota.failed(what)
            raise
        if why:
            self._quota.failed(what)
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
        """Call it on a loop of one's own, while the bot's stands still: no database, and of the
        disk nothing before the call."""
        alert, text = self._clinic.alert, self.text(trouble, now, figures)
        if alert is None or not self._quota.take(trouble.value, now):
            return
        why = await self._call(alert, *said(self._clinic, trouble, text, now))
        if why:
            self._quota.failed(trouble.value)
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
