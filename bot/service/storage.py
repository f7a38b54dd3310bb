"""While nothing can be stored: whoever can still be reached is told, though nothing of it can
be written down, and told again when it is over."""

from __future__ import annotations

import asyncio
import contextlib
import json
import logging
from collections.abc import Awaitable, Callable, Hashable, Iterable
from datetime import datetime, timedelta
from typing import TypeVar
from zoneinfo import ZoneInfo

from bot.context.practice import Practice
from bot.context.words import when
from bot.model.chat import Delivered, Delivery, Incoming, Moved
from bot.model.text import Lang
from bot.store import load
from bot.store.database import Database, StorageTrouble, Tx, moment, stamp
from bot.store.trouble import Kind
from bot.telegram.translate import incoming

from .told import Told
from .work import tell_desks

logger = logging.getLogger(__name__)

T = TypeVar("T")

Say = Callable[[int, str], Awaitable[Delivery]]
"""Sends words to a chat at once, past the outbox."""
Alarm = Callable[[str], Awaitable[None]]
"""Tells whoever looks after the practice, by a way that is none of the chats."""

FIRST, LONGEST = 1.0, 10.0
"""Seconds between two looks at whether it is over; doubled after each."""
CALM = 20.0
"""Seconds without trouble after which it is called over."""
AGAIN = timedelta(days=1)
"""How often staff hear of what goes on."""
HOME_AGAIN = timedelta(hours=6)
"""How often one at home hears that nobody takes their messages."""
REMEMBER = 60.0
"""Seconds between two looks at who is to be told."""
SAY = 30.0
"""Seconds that one telling may take."""
LOOK = 5.0
"""Seconds that may go into finding out anew who is to be told."""
MOST = 200
"""Homes told in one round, at most."""

_WHY = {kind: f"storage_is_{kind.name}" for kind in Kind}
"""The words for each."""


class StorageWatch:
    """Hears of each failure by ``seen``; ``run`` is its part of the running bot.

    ``blocked``: by what replies that were stored are not worked either, as by a damaged page.
    """

    def __init__(
        self, db: Database, now: Callable[[], datetime], say: Say, alarm: Alarm | None = None
    ) -> None:
        self._db, self._now, self._say, self._alarm = db, now, say, alarm
        self.practice: Practice
        self.first, self.calm = FIRST, CALM
        self.blocked: StorageTrouble | None = None
        self._trouble: StorageTrouble | None = None
        self._came = asyncio.Event()
        self._staff: tuple[int, ...] = ()
        self._homes: dict[int, Lang] = {}
        self._told, self._told_homes = Told(AGAIN), Told(HOME_AGAIN)

    def seen(self, trouble: StorageTrouble) -> None:
        """The storage has failed."""
        self._trouble = trouble
        self._came.set()

    def unheard(self, events: Iterable[Incoming]) -> None:
        """What these wrote is neither stored nor worked now: they must hear whom to phone."""
        for event in events:
            if event.private and event.chat and event.kind != "other":
                spanish = event.sender is not None and (event.sender.lang or "")[:2] == "es"
                self._homes[event.chat] = "es" if spanish else "en"

    async def remember(self) -> None:
        """Who is to be told, as long as it can be read: the staff chats, or else each one."""

        def chats(tx: Tx) -> tuple[int, ...]:
            desks = tuple(desk.chat for desk in load.desks(tx))
            return desks or tuple(one.chat for one in load.staff(tx) if one.chat)

        with contextlib.suppress(StorageTrouble):
            self._staff = await self._db.read(chats)

    async def run(self) -> None:
        """Waits for trouble, and stays with it until it is over."""
        while True:
            with contextlib.suppress(TimeoutError):
                async with asyncio.timeout(REMEMBER):
                    await self._came.wait()
            if self._trouble is None:
                await self.remember()
            else:
                await self._stay(self._now())

    async def _stay(self, began: datetime) -> None:
        pause, calm = self.first, 0.0
        last = self._trouble
        while calm < self.calm or self._trouble is not None:
            trouble, self._trouble = self._trouble, None
            self._came.clear()
            if trouble is not None:
                last, calm = trouble, 0.0
            stays = last is not None and not last.passing
            if last is not None and (trouble is not None or stays):
                await self._tell(last)
            await self._tell_homes()
            if stays and self.blocked is None:
                if not self._told.left() and not self._homes:
                    return  # what does not lie on the damaged page goes on
                calm = 0.0  # it is not over because somebody is still to be told
            await asyncio.sleep(pause)
            calm += pause
            pause = min(2 * pause, LONGEST)
            await self._try()
        await self._over(began)

    async def _try(self) -> None:
        """Something small is written; where that fails, ``seen`` hears of it."""
        value = stamp(self._now())
        with contextlib.suppress(StorageTrouble):
            await self._db.transact(lambda tx: tx.run("setting_put", key="stored", value=value))
            self._trouble = self._trouble or self.blocked

    async def _tell(self, trouble: StorageTrouble) -> None:
        """Staff, once and again each day while it lasts; whoever may not have it, sooner."""
        stopped = trouble.passing or self.blocked is not None
        key = "storage_stopped" if stopped else "storage_damaged"
        now, what = self._now(), (trouble.kind, key)
        new = self._told.turn(what, now)
        if not new and not any(self._told.turn((*what, chat), now) for chat in self._staff):
            return
        with contextlib.suppress(TimeoutError):
            async with asyncio.timeout(LOOK):
                await self.remember()
        words, lang = self.practice.words, self.practice.clinic.language
        text = words.say(key, lang, why=words.say(_WHY[trouble.kind], lang))
        telling = [
            self._to(self._told, (*what, chat), chat, text)
            for chat in self._staff
            if self._told.turn((*what, chat), now)
        ]
        if new:
            logger.critical("the storage fails: %s", trouble)
            self._told.note(what, Delivered(), now)  # a way of its own, with tries of its own
            if self._alarm is not None:
                telling.append(self._safely(self._alarm(text)))
        await asyncio.gather(*telling)

    async def _tell_homes(self) -> None:
        if self.blocked is not None:
            await self._waiting()
        now, clinic = self._now(), self.practice.clinic
        self._told_homes.forget(now)
        self._leave_told(now)
        telling: list[Awaitable[None]] = []
        for chat in [one for one in self._homes if self._told_homes.turn(one, now)][:MOST]:
            lang = self._homes[chat]
            phone = self.practice.words.say(
                "phone_both", lang, clinic=clinic.name, phone=clinic.phone,
                emergency_name=clinic.emergency_name, emergency_phone=clinic.emergency_phone,
            )  # fmt: skip
            text = self.practice.words.say("storage_home", lang, phone=phone)
            telling.append(self._to(self._told_homes, chat, chat, text))
        await asyncio.gather(*telling)
        self._leave_told(self._now())

    def _leave_told(self, now: datetime) -> None:
        for chat in [one for one in self._homes if self._told_homes.done(one, now)]:
            del self._homes[chat]

    async def _waiting(self) -> None:
        """Whose stored words nobody has worked."""
        with contextlib.suppress(StorageTrouble):
            rows = await self._db.read(lambda tx: tx.all("inbox_waiting", most=MOST))
            for row in rows:
                with contextlib.suppress(Exception):  # one that nobody can read
                    event = incoming(json.loads(row["body"]), moment(row["received_at"]))
                    self.unheard([event])

    async def _over(self, began: datetime) -> None:
        """It stores again: staff hear from when to when it did not."""
        now, zone = self._now(), ZoneInfo(self.practice.clinic.zone)
        lang = self.practice.clinic.language
        since = when(began.astimezone(zone), now.astimezone(zone), lang)
        text = self.practice.words.say("storage_again", lang, since=since)
        logger.warning("the storage serves again; it failed since %s", stamp(began))
        self._told.clear()
        self._homes.clear()  # they are answered now
        key = f"storage:{stamp(began)}"
        with contextlib.suppress(StorageTrouble):
            await self._db.transact(lambda tx: tell_desks(tx, key, text, "storage", now))
        if self._alarm is not None:
            await self._safely(self._alarm(text))

    async def _to(self, told: Told, who: Hashable, chat: int, text: str) -> None:
        """All at once, each in its own time: a chat that hangs keeps no other waiting."""
        got = await self._safely(self._say(chat, text))
        if isinstance(got, Moved):
            got = await self._safely(self._say(got.new_chat, text))
        told.note(who, got, self._now())

    async def _safely(self, telling: Awaitable[T]) -> T | None:
        try:
            async with asyncio.timeout(SAY):
                return await telling
        except Exception:
            logger.exception("somebody could not be told that the storage fails")
            return None
