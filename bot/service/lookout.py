"""Looks again and again at what would leave the practice deaf or mute: the line to the platform
both ways, the staff chats, cases that have reached nobody; and tells of it in whatever way is
left."""

from __future__ import annotations

import asyncio
import logging
import time
from collections.abc import Awaitable, Callable
from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.model.chart import Desk, Member
from bot.model.chat import Gone, Moved
from bot.model.ids import Cause, EventId
from bot.store import load
from bot.store.database import Database, Tx, stamp
from bot.store.rows import move_chat
from bot.store.staff_ways import lost, staff_chats
from bot.telegram.client import Client
from bot.telegram.outcome import PlatformError, TokenWrong
from bot.telegram.redact import redact

from .alert import Alert, Trouble

logger = logging.getLogger(__name__)

LOOK = 10.0
"""Seconds between two looks."""
ASK, DOWN = 90.0, 300.0
"""After so many seconds without an answer the platform is asked, and it is told; told as well
when for so long nothing came in, or nothing went out."""
CALLS = 60.0
"""Seconds between two looks at whether the platform can call the webhook."""
CONFLICTS, CONFLICT_WITHIN = 2, 600.0
"""One conflict may be our own last run, whose question still stood open."""
CHATS = timedelta(hours=1)
"""How often it is asked whether the staff chats are still there."""
AT_MOST = 15.0


@dataclass(frozen=True, slots=True)
class Webhook:
    """Where the platform is to call us, and how it is told so again."""

    url: str
    again: Callable[[], Awaitable[None]]


@dataclass(frozen=True, slots=True)
class Down:
    """What of the line fails, since when by the monotonic clock, and the key by which it is
    told."""

    trouble: Trouble
    since: float
    key: str


class Lookout:
    """Remembers what it has told. ``listening``: we fetch, or are called; ``webhook``: how."""

    def __init__(self, db: Database, client: Client, alert: Alert) -> None:
        self._db, self._client, self._alert = db, client, alert
        self._down: Down | None = None
        self._looked: float | None = None
        self._called: tuple[float, int, int] | None = None  # when, what waited and what was kept
        self._asked: datetime | None = None
        self.down, self.listening = DOWN, False
        self.webhook: Webhook | None = None

    def listen(self, webhook: Webhook | None = None) -> None:
        """From now on what is written to us must come in."""
        self.listening, self.webhook, self._called = True, webhook, None
        self._client.line.anew()

    async def look(self, now: datetime) -> None:
        """One look at all of it. TokenWrong where the platform knows us no more."""
        self._alert.again(now)  # first: all else may fail
        await self._line(now)
        if self._asked is None or not timedelta(0) <= now - self._asked < CHATS:
            self._asked = now
            await self.ask_for_chats(now)
        await self._chats(now)

    async def _line(self, now: datetime) -> None:
        line, tick = self._client.line, time.monotonic()
        if self._looked is not None and tick - self._looked > self.down:
            line.anew()  # the computer slept, and so did the line
        self._looked = tick
        if self.webhook is not None and self.listening:
            await self._is_called(self.webhook, tick)
        if line.silent() >= min(ASK, self.down):
            try:
                async with asyncio.timeout(AT_MOST):
                    await self._client.me()
            except TokenWrong:
                raise
            except (PlatformError, TimeoutError) as error:
                logger.warning("the platform does not answer: %s", error)
        await self._tell(*self._fails(), now)
        if line.conflicts_within(CONFLICT_WITHIN) >= CONFLICTS:
            await self._alert.tell(
                Trouble.two_bots, "the platform says that another program fetches, too", now
            )

    async def _is_called(self, webhook: Webhook, tick: float) -> None:
        """Nothing waits at the platform, or it becomes less: then we hear."""
        if self._called is not None and tick - self._called[0] < min(CALLS, self.down / 5):
            return
        line, before = self._client.line, self._called
        try:
            async with asyncio.timeout(AT_MOST):
                found = await self._client.calls()
                if found.url != webhook.url:
                    logger.error("the platform no longer calls us: somebody took the webhook away")
                    line.conflict()
                    await webhook.again()
        except TokenWrong:
            raise
        except (PlatformError, TimeoutError) as error:
            logger.warning("the platform cannot be asked about the webhook: %s", error)
            return
        self._called = (tick, found.waiting, line.kept)
        moves = before is not None and found.waiting <= before[1] and line.kept > before[2]
        if found.url == webhook.url and (found.waiting == 0 or moves):
            line.heard()
        elif found.why:
            logger.warning(
                "%d updates wait, and the platform cannot call us: %s",
                found.waiting,
                redact(found.why),
            )

    def _fails(self) -> tuple[Trouble | None, float]:
        """What of the line fails, and for how many seconds it has."""
        line = self._client.line
        deaf, mute = line.deaf() if self.listening else 0.0, line.mute()
        if line.silent() >= self.down:
            return Trouble.line_down, line.silent()
        if deaf >= self.down and mute >= self.down:
            return Trouble.line_down, min(deaf, mute)
        if deaf >= self.down:
            return Trouble.deaf, deaf
        return (Trouble.mute, mute) if mute >= self.down else (None, 0.0)

    async def _tell(self, trouble: Trouble | None, seconds: float, now: datetime) -> None:
        tick, was = time.monotonic(), self._down
        if trouble is None:
            self._down = None
            if was is not None:
                key, minutes = f"{Trouble.line_again}:{stamp(now)}", round((tick - was.since) / 60)
                await self._alert.tell(
                    Trouble.line_again, "it is whole", now, key=key, minutes=minutes
                )
            return
        if was is None or was.trouble is not trouble:
            was = Down(trouble, tick - seconds, f"{trouble}:{stamp(now)}")
        self._down = was
        minutes = round((tick - was.since) / 60)
        await self._alert.tell(trouble, _WHY[trouble], now, key=was.key, minutes=minutes)

    async def ask_for_chats(self, now: datetime) -> None:
        """Ask the platform whether each staff chat is there; what is found out is kept."""
        chats = tuple(await self._db.read(staff_chats))
        try:
            async with asyncio.timeout(AT_MOST):
                answers = await asyncio.gather(*(self._client.there(chat) for chat in chats))
        except TimeoutError:
            return
        by = Cause(EventId(f"chats:{stamp(now)}"))

        def keep(tx: Tx) -> None:
            for chat, answer in zip(chats, answers, strict=True):
                match answer:
                    case Gone(why=why):
                        lost(tx, chat, why, now, by)
                    case Moved(new_chat=new):
                        move_chat(tx, chat, new)
                    case _:  # that it is there does not say that it may be written to
                        pass

        await self._db.transact(keep)

    async def _chats(self, now: datetime) -> None:
        await self._alert.remember()
        desks, people, unreached = await self._db.read(_state)
        gone = [desk for desk in desks if desk.lost is not None]
        members = [one for one in people if one.chat]
        there = any(lost is None for lost in (*(d.lost for d in desks), *(m.lost for m in members)))
        if (desks or members) and not there:
            await self._alert.tell(
                Trouble.no_chat_left, "no staff chat and no own chat can be reached", now
            )
        for desk in gone if there else ():
            await self._alert.tell(
                Trouble.chat_lost, f"staff chat {desk.chat} cannot be reached", now,
                key=f"{Trouble.chat_lost}:{desk.chat}:{stamp(desk.lost or now)}",
            )  # fmt: skip
        if unreached:
            await self._alert.tell(
                Trouble.case_unreached, f"{unreached} open cases have reached nobody", now,
                cases=unreached,
            )  # fmt: skip


_WHY = {
    Trouble.line_down: "no send and no poll got through",
    Trouble.deaf: "nothing comes in from the platform",
    Trouble.mute: "no message goes out",
}


def _state(tx: Tx) -> tuple[tuple[Desk, ...], tuple[Member, ...], int]:
    return load.desks(tx), load.staff(tx), len(load.unreached(tx))
