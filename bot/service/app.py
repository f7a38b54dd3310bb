"""The running bot: poll and keep, work, tick, send; each step stored before the next."""

from __future__ import annotations

import asyncio
import contextlib
import logging
import time
from collections.abc import Awaitable, Mapping, Sequence
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from types import TracebackType
from typing import Any, TypeVar

from apscheduler.schedulers.asyncio import AsyncIOScheduler

from bot.context.opening import next_opening
from bot.context.practice import Practice
from bot.context.words import default_words
from bot.model.chat import Delivery, Incoming, Outgoing
from bot.model.effects import Effects
from bot.model.ids import EventId
from bot.model.settings import Clinic
from bot.store.apply import apply
from bot.store.database import Database, StorageTrouble, Tx, moment, stamp
from bot.store.inbox import keep_rows, kept
from bot.store.shelf import Shelf
from bot.store.trouble import passing
from bot.telegram.client import Client
from bot.telegram.pace import Pace
from bot.telegram.poll import Waits, poll
from bot.telegram.send import deliver
from bot.telegram.translate import incoming

from .alert import Alert, Trouble
from .away import BEAT, beat, look_back, ran_on
from .clock import Clock, SystemClock
from .clock_watch import Believed, ClockWatch, due_soon
from .ear import Ear
from .late import LONGEST, any_late, handle_late, next_late
from .lookout import LOOK, Lookout, Webhook
from .media import handle_media
from .practice import open_practice, secret_of
from .sender import Sender, recover
from .storage import StorageWatch
from .upkeep import forget_strangers, lost_cases, write_anew
from .watchdog import Part, Watchdog
from .work import handle_due, handle_update, next_row

logger = logging.getLogger(__name__)
T = TypeVar("T")
NEVER = datetime.min.replace(tzinfo=UTC)

AUDIT_SECONDS = 300.0
LONGEST_FETCH, LONGEST_LOOK = 10, 3
"""Minutes that one picture or film may take (to come, and to be looked at three times), and one
look at the line and the chats."""
SOON = timedelta(seconds=10)
"""After this a beat that could not be written, or a look back that the storage stopped, is tried
again."""
READ_FIRST = 30.0
"""Seconds at most, after a start or a sleep, for which what is due waits for what people wrote
meanwhile: it may tell of the very doses."""
LONGEST_RETRY = timedelta(minutes=10)
"""Whatever is to be sent again later than this was put there by a clock that was wrong."""


class App:
    """One practice's bot. ``async with App(...) as app: await app.run(stop)``.

    ``flows`` is the practice's own folder: what it says goes before what we say.
    ``settle`` does everything that can be done at this moment and returns: what the demo
    and the tests use in place of ``run``.
    """

    def __init__(
        self,
        clinic: Clinic,
        path: Path,
        client: Client,
        *,
        clock: Clock | None = None,
        pace: Pace | None = None,
        tick_seconds: float = 1.0,
        waits: Waits | None = None,
        flows: Path | None = None,
        patience: float = 60.0,
        durable: bool = True,
        alert: Alert | None = None,
    ) -> None:
        self._flows = flows
        self.clinic = clinic
        self.client = client
        self.db = Database(path, durable=durable)
        self._pace = pace or Pace()
        self._tick_seconds = tick_seconds
        self._waits = waits
        self._patience = patience
        self.alert = alert or Alert(clinic, default_words(), path.with_name(f"{path.name}-alerts"))
        self._watch = ClockWatch(self.db, self.alert)
        self.lookout = Lookout(self.db, client, self.alert)
        self._clock = Believed(clock or SystemClock(), self._watch)
        self._begun = self._clock.ticks()
        self._loop: asyncio.AbstractEventLoop | None = None
        self._awake = asyncio.Event()
        self._outgoing = asyncio.Event()
        self._settling = asyncio.Lock()
        self._beaten = NEVER
        self._blind: timedelta | None = None  # since when (ticks) nobody knows what was missed
        self._again = timedelta.min
        self._looks_back = self._slept = self._gone = False
        self._polls = self._read_first = False
        self._kept_all, self._read_until = True, 0.0
        self._fetch = asyncio.Event()
        self._clock_moved = asyncio.Event()
        self.shelf, self._ear = Shelf(path), Ear()
        self.storage = StorageWatch(
            self.db, lambda: self.clock.now(), self._say_at_once, self._storage_alarm
        )
        self._working_part = Part("working", self._working, self._work_waits)
        self._fetching_part = Part(
            "fetching", self._fetching, self._fetch_waits, slow=LONGEST_FETCH
        )
        self._looking_part = Part("looking out", self._looking_out, _always, slow=LONGEST_LOOK)
        self._sending_part = Part(
            "sending", self._sending, self._could_send, lambda: self.sender.again(self.clock.now())
        )
        self.practice: Practice
        self.sender: Sender

    async def __aenter__(self) -> App:
        self._loop = asyncio.get_running_loop()
        await self.db.__aenter__()
        try:
            me = self.client.account or await self.client.me()
            secret = await self.db.transact(secret_of)
            self.practice = open_practice(self.clinic, self._flows, me.username, secret)
            self.storage.practice = self.practice
            await self.storage.remember()
            self.sender = Sender(self.db, self._deliver, self._pace)
            await self.alert.attach(self.db, self._deliver, self._outgoing.set, self.practice.words)
            trusted = await self._trusted()  # before an hour is written down
            opens = next_opening(self.clinic, now := self.clock.now())
            if trusted:
                self._begun -= await self.db.transact(lambda tx: ran_on(tx, now, LONGEST))
            await self.db.transact(lambda tx: tx.run("due_first_board", due_at=stamp(opens)))
            await self.db.transact(lambda tx: tx.run("due_given_up"))
            await due_soon(self.db, self.clock.now(), LONGEST_RETRY)
            if again := await recover(self.db, self.clock.now()):
                logger.info("%d messages were under way at the last stop: sent again", again)
            self.db.on_trouble = self.storage.seen
        except BaseException:
            await self.db.close()
            raise
        return self

    async def __aexit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        await self.alert.finish()
        await self.db.close()

    @property
    def clock(self) -> Clock:
        """The time as it is believed: see ``clock_watch``."""
        return self._clock

    @clock.setter
    def clock(self, machine: Clock) -> None:
        ran = self._clock.ticks() - self._begun
        self._clock = Believed(machine, self._watch)
        self._begun = self._clock.ticks() - ran

    async def _deliver(self, message: Outgoing) -> Delivery:
        return await deliver(self.client, message)

    async def _say_at_once(self, chat: int, text: str) -> Delivery:
        """Past the outbox, of which nothing can be stored now."""
        out = Effects(EventId(f"at-once:{stamp(self.clock.now())}"))
        out.say(chat, text, urgent=True)
        return await self._deliver(out.sends[0])

    async def keep(self, updates: Sequence[Mapping[str, Any]]) -> None:
        """Commit updates as they came, what sounds of an emergency to the front; one that is
        here already is harmless. StorageTrouble when they cannot be: then nothing of them may be
        confirmed, and who wrote them is told whom to phone."""
        now = self.clock.now()
        events: list[Incoming] = []

        def said(update: Mapping[str, Any]) -> tuple[int, str]:
            events.append(incoming(update, now))
            return events[-1].chat, events[-1].text

        rows = kept(updates, now, said)
        if not rows:
            return
        try:
            await keep_rows(self.db, rows, self._ear)
        except StorageTrouble:
            self.storage.unheard(events)
            raise
        if self.storage.blocked is not None:
            self.storage.unheard(events)
        self.client.line.kept += len(rows)
        self._awake.set()

    def wake(self) -> None:
        """Look at what is due now (the clock was set, or something was added from outside).

        From any thread: an event that is set off the loop may leave its waiter asleep.
        """
        try:
            here: asyncio.AbstractEventLoop | None = asyncio.get_running_loop()
        except RuntimeError:
            here = None
        if self._loop is None or here is self._loop:
            self._wake()
        else:
            self._loop.call_soon_threadsafe(self._wake)

    def _wake(self) -> None:
        self._awake.set()
        self._outgoing.set()
        self._fetch.set()

    def review_at(self, url: str) -> None:
        """From now on ``/review`` gives out links to the review pages at ``url``."""
        self.practice = replace(self.practice, review_url=url)

    async def act(self, out: Effects) -> None:
        """Keep an outcome that came from no chat (an enrolment at the desk's computer)."""
        now = self.clock.now()
        await self.db.transact(lambda tx: apply(tx, out, now))
        self.wake()

    async def work(self) -> int:
        """Everything that waits and is due at this moment, kept but not yet sent."""
        done, looked = 0, float("-inf")
        while True:
            trusted = await self._beat()
            # By turns: no reply waits behind a morning of prompts, no page behind a flood.
            kept_all = self._kept_all
            heard = await handle_update(self.db, self.practice, self.clock.now())
            await self._look_back()
            if (kept_all and not heard) or time.monotonic() >= self._read_until:
                self._read_first = False
            due = not self._read_first and await handle_due(
                self.db, self.practice, self.clock.now(), trusted=trusted and self._sees()
            )
            late = False
            if time.monotonic() - looked >= 1:
                begun, now = self._clock.at(self._begun), self.clock.now()
                looking = handle_late(self.db, begun, now)
                late = bool(await self._beside("late messages", looking, Trouble.late_unseen))
                looked = time.monotonic()
            if not (heard or due or late):
                return done
            self._working_part.beat()
            done += heard + due + late

    async def _beside(
        self, what: str, done: Awaitable[T], trouble: Trouble = Trouble.part_again
    ) -> T | None:
        """Whatever goes wrong in it keeps no reply from its turn: staff hear of it, and it is
        tried again the next time."""
        try:
            return await done
        except Exception as error:
            if passing(error):  # told by whoever watches the storage; replies meet it, too, or not
                logger.debug("%s waits for the storage: %s", what, error)
                return None
            logger.exception("%s failed", what)
            await self._stood(what, f"{type(error).__name__}: {error}", trouble)
            return None

    def _reads_first(self) -> None:
        self._read_first, self._kept_all = True, False
        self._read_until = time.monotonic() + READ_FIRST

    def _caught_up(self) -> None:
        """All that came while the bot was off is kept, and is read before anything falls due."""
        self._kept_all = True
        self._awake.set()

    async def _trusted(self) -> bool:
        """Whether what depends on the hour may be decided now."""
        look = await self._watch.look(self._clock.machine, self.client.date)
        if look.moved:
            self.practice = replace(self.practice, clock_ahead=look.ahead)
            self._clock_moved.set()
            self._outgoing.set()
        return look.trusted

    async def _beat(self) -> bool:
        """Write down every few minutes that the bot runs, so that an absence is seen: before the
        start, or while the computer slept or the storage failed (not of a clock that is only
        set). Whether the clock is trusted."""
        trusted = await self._trusted()
        now, ticks, first = self.clock.now(), self._clock.ticks(), self._beaten == NEVER
        if trusted and abs(now - self._beaten) >= BEAT and ticks >= self._again:
            gaps = first or self._clock.of_machine
            beating = self.db.transact(lambda tx: beat(tx, now, gaps=gaps))
            if self._blind is None:
                self._gone = gaps and now - self._beaten > 2 * BEAT
            trouble = Trouble.not_looked_back if self._gone else Trouble.upkeep
            looks = await self._beside("beating", beating, trouble)
            if looks is None:
                self._sees_nothing()
            else:
                self._beaten, self._looks_back, self._slept = now, looks, not first
                self._blind = self._blind if looks else None
        return trusted

    async def _look_back(self) -> None:
        """After an absence, before anything falls due. Where it fails it is tried again with the
        next beat, or soon if the storage may serve again by itself: the absence is kept."""
        if not self._looks_back or self._clock.ticks() < self._again:
            return
        self._looks_back, now = False, self.clock.now()

        async def looking() -> datetime | None:
            try:
                return await self.db.transact(
                    lambda tx: look_back(tx, self.practice, now), long=True
                )
            except Exception as error:
                self._looks_back = passing(error)
                raise

        away = await self._beside("looking back", looking(), Trouble.not_looked_back)
        if self._looks_back:
            self._sees_nothing()
        else:
            self._blind = None
        if away and self._slept and self._polls:
            self._reads_first()

    def _sees_nothing(self) -> None:
        """Nobody knows yet what was missed; that is tried again soon."""
        ticks = self._clock.ticks()
        self._again = ticks + SOON
        self._blind = ticks if self._blind is None else self._blind

    def _sees(self) -> bool:
        """Whether it is known what was missed, so that what depends on the hour may be decided.
        It waits for a minute at most."""
        return self._blind is None or self._clock.ticks() - self._blind > 6 * SOON

    async def fetch(self) -> int:
        """Every picture and film that is to be fetched or shown at this moment."""
        done = last = 0
        while last := await handle_media(
            self.db, self.practice, self.client, self.shelf, self.clock.now(), last
        ):
            self._fetching_part.beat()
            done += 1
        return done

    async def settle(self) -> int:
        """Work and send until nothing is left to do at this moment; how much was done."""
        total = 0
        async with self._settling:
            while True:
                work, fetch, send = await self._waits_now()
                done = await self.work() if work else 0
                done += await self.fetch() if done or fetch else 0
                done += await self.sender.send_ready(self.clock.now()) if done or send else 0
                total += done
                if not done:
                    return total

    async def _waits_now(self) -> tuple[bool, bool, bool]:
        """Whether there is something to work on, to fetch, to send at this moment."""
        trusted = await self._beat()
        await self._look_back()
        now, begun = self.clock.now(), self._clock.at(self._begun)

        def look(tx: Tx) -> tuple[bool, bool, bool]:
            work = tx.one("inbox_next") or next_row(tx, now, trusted=trusted and self._sees())
            return (
                work is not None or any_late(tx, begun, now),
                tx.one("due_media", now=stamp(now), last=0) is not None,
                tx.one("outbox_ready", now=stamp(now), most=1) is not None,
            )

        return await self.db.read(look)

    async def run(
        self, stop: asyncio.Event, *, polling: bool = True, webhook: Webhook | None = None
    ) -> None:
        """Until ``stop``: poll (unless a ``webhook`` calls ``keep``), work, and send.

        A part that fails or stands still is started again, also while the storage fails; only
        a wrong token ends it. What is stored goes on at the next start.
        """
        parts = [
            self._working_part,
            self._fetching_part,
            self._sending_part,
            Part("auditing", self._auditing),
            self._looking_part,
            Part("watching the storage", self.storage.run),
        ]
        if polling:
            self._polls = True
            self._reads_first()
            parts.append(
                Part(
                    "polling",
                    lambda: poll(self.client, self.keep, stop, self._waits, self._caught_up),
                    ends=True,
                )
            )
        if polling or webhook is not None:
            self.lookout.listen(webhook)
        dog = Watchdog(
            parts, self._stood, patience=self._patience, look=min(5.0, self._patience / 4)
        )
        try:
            await dog.run(stop)
        finally:
            await self.sender.finish()

    async def _stood(self, part: str, why: str, trouble: Trouble = Trouble.part_again) -> None:
        """Staff hear once a day of a part that was started again, or of what fails beside it."""
        now = self.clock.now()
        key = f"again:{part}:{now:%Y-%m-%d}"
        await self.alert.tell(trouble, f"{part}: {why}", now, key=key)

    async def _storage_alarm(self, text: str) -> None:
        """Nothing can be stored, or it can again: that leaves by the practice's own way."""
        self.alert.call_out(Trouble.storage, text, self.clock.now())

    async def _looking_out(self) -> None:
        while True:
            await self.lookout.look(self.clock.now())
            self._looking_part.beat()
            await asyncio.sleep(LOOK)

    async def _work_waits(self) -> bool:
        trusted, read_first = self._watch.trusted and self._sees(), self._read_first

        def there(tx: Tx) -> bool:
            if tx.one("inbox_next") is not None:
                return True
            return not read_first and bool(next_row(tx, self.clock.now(), trusted=trusted))

        return await self.db.read(there)

    async def _fetch_waits(self) -> bool:
        now = self.clock.now()
        return await self.db.read(
            lambda tx: tx.one("due_media", now=stamp(now), last=0) is not None
        )

    async def _could_send(self) -> bool:
        return bool(await self.sender.could_start(self.clock.now()))

    async def _rest(self, event: asyncio.Event, seconds: float) -> None:
        """Until the event or so many seconds of the loop's own clock, which nobody sets.

        Not ``wait_for``: up to Python 3.11 it forgets to end when the event is set at the same
        moment, and a stop would wait for ever."""
        with contextlib.suppress(TimeoutError):
            async with asyncio.timeout(seconds):
                await event.wait()
        event.clear()

    async def _working(self) -> None:
        while True:
            await self._rest(self._awake, self._tick_seconds)
            try:
                done = await self.work()
            except StorageTrouble as error:
                self.storage.blocked = error
                raise
            self.storage.blocked = None
            if done:
                self._outgoing.set()
                self._fetch.set()

    async def _fetching(self) -> None:
        while True:
            await self._rest(self._fetch, self._tick_seconds)
            if await self.fetch():
                self._outgoing.set()

    async def _sending(self) -> None:
        self.sender.on_done = self._outgoing.set
        while True:
            if await self.sender.start_ready(self.clock.now()):
                self._sending_part.beat()
            else:
                await self._rest(self._outgoing, self._tick_seconds / 4)

    async def _auditing(self) -> None:
        """The scheduler reckons by the wall clock: it has only what no patient waits for."""
        await self._alone("writing the files anew", self._write_anew())
        scheduler = AsyncIOScheduler()
        scheduler.add_job(
            self._audit, "interval", seconds=AUDIT_SECONDS, max_instances=1, coalesce=True,
            misfire_grace_time=None,
        )  # fmt: skip
        scheduler.start()
        try:
            while True:
                await self._clock_moved.wait()
                self._clock_moved.clear()
                # What it had put two hours ahead must not wait two hours and more.
                for job in scheduler.get_jobs():
                    job.modify(next_run_time=self.clock.now())
        finally:
            scheduler.shutdown(wait=False)

    async def _audit(self) -> None:
        db, now = self.db, self.clock.now()
        await self._alone("cases without a next page", lost_cases(db, now))
        await self._alone("hours of a wrong clock", due_soon(db, now, LONGEST_RETRY))
        await self._alone("what strangers wrote", forget_strangers(db, now))
        await self._alone("writing the files anew", self._write_anew())

    async def _alone(self, what: str, piece: Awaitable[None]) -> None:
        """Whatever fails in it keeps back no other piece. Staff hear of it, once a day."""
        try:
            await piece
        except Exception as error:
            if passing(error):  # told by whoever watches the storage
                logger.debug("%s waits for the storage: %s", what, error)
                return
            logger.exception("%s failed", what)
            now, why = self.clock.now(), f"{what}: {type(error).__name__}: {error}"
            key = f"{Trouble.upkeep}:{what}:{now:%Y-%m-%d}"
            await self.alert.tell(Trouble.upkeep, why, now, key=key)

    async def _write_anew(self) -> None:
        if why := await write_anew(self.db, self.clock.now()):
            await self.alert.tell(Trouble.not_anew, why, self.clock.now())

    async def next_due(self) -> datetime | None:
        """When the next thing falls due or is to be sent again (aware UTC), or None."""

        def first(tx: Tx) -> datetime | None:
            rows = (tx.one("due_first"), tx.one("outbox_next_due"))
            found = [moment(row["at"]) for row in rows if row and row["at"]]
            late = next_late(tx, self._clock.at(self._begun), self.clock.now())
            found += [late] if late is not None else []
            return min(found, default=None)

        return await self.db.read(first)


async def _always() -> bool:
    """It is never without something to do."""
    return True
