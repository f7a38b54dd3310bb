"""Looks again and again at what would leave the practice deaf: the line to the platform, the
staff chats, cases that have reached nobody; and tells of it in whatever way is left."""

from __future__ import annotations

import asyncio
import logging
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

from .alert import Alert, Trouble

logger = logging.getLogger(__name__)

LOOK = 10.0
"""Seconds between two looks."""
ASK, DOWN = 90.0, 300.0
"""After so many seconds without an answer the platform is asked, and it is told."""
CONFLICTS, CONFLICT_WITHIN = 2, 600.0
"""One conflict may be our own last run, whose question still stood open."""
CHATS = timedelta(hours=1)
"""How often it is asked whether the staff chats are still there."""
AT_MOST = 15.0


class Lookout:
    """Remembers what it has told."""

    def __init__(self, db: Database, client: Client, alert: Alert) -> None:
        self._db, self._client, self._alert = db, client, alert
        self._down: tuple[float, str] | None = None  # since when, and the key by which it is told
        self._asked: datetime | None = None
        self.down = DOWN

    async def look(self, now: datetime) -> None:
        """One look at all of it. TokenWrong where the platform knows us no more."""
        await self._line(now)
        if self._asked is None or not timedelta(0) <= now - self._asked < CHATS:
            self._asked = now
            await self.ask_for_chats(now)
        await self._chats(now)

    async def _line(self, now: datetime) -> None:
        line = self._client.line
        if line.silent() >= min(ASK, self.down):
            try:
                async with asyncio.timeout(AT_MOST):
                    await self._client.me()
            except TokenWrong:
                raise
            except (PlatformError, TimeoutError) as error:
                logger.warning("the platform does not answer: %s", error)
        if line.silent() >= self.down:
            self._down = self._down or (line.heard_at, f"{Trouble.line_down}:{stamp(now)}")
            await self._alert.tell(
                Trouble.line_down,
                "no send and no poll got through",
                now,
                key=self._down[1],
                minutes=round(line.silent() / 60),
            )
        elif self._down is not None:
            minutes = round((line.heard_at - self._down[0]) / 60)
            self._down = None
            await self._alert.tell(
                Trouble.line_again, "it answers", now, key=f"{Trouble.line_again}:{stamp(now)}",
                minutes=minutes,
            )  # fmt: skip
        if line.conflicts_within(CONFLICT_WITHIN) >= CONFLICTS:
            await self._alert.tell(
                Trouble.two_bots, "the platform says that another program fetches, too", now
            )

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


def _state(tx: Tx) -> tuple[tuple[Desk, ...], tuple[Member, ...], int]:
    return load.desks(tx), load.staff(tx), len(load.unreached(tx))
