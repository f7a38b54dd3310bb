"""The bot, unchanged, on the stand-in and the demo clock: for the page, the play and tests."""

from __future__ import annotations

import asyncio
import contextlib
from contextlib import AsyncExitStack
from datetime import datetime, timedelta
from pathlib import Path
from types import TracebackType
from typing import Self

from bot.context.buttons import digest_of
from bot.desk.enrol import enrol
from bot.household.people import start_link
from bot.model.effects import Effects, Invite, JoinStaff
from bot.model.ids import EventId
from bot.model.plan import Plan
from bot.model.settings import Clinic
from bot.service.app import App
from bot.service.practice import fresh_code
from bot.store.database import Tx, moment
from bot.telegram.client import Client
from bot.telegram.pace import Limits, Pace
from bot.telegram.poll import Waits, poll

from .clock import DemoClock
from .standin.standin import Standin
from .standin.values import Chat, User

NO_HURRY = Limits(overall=100_000, overall_kept=0, chat_seconds=0, group=100_000, group_kept=0)
"""The stand-in has no limits to keep, and eight weeks must pass in a minute."""


class Stage:
    """``async with Stage(clinic, path, start) as stage``: the whole system, in one process.

    ``path`` is a real database file. Everything moves by ``settle`` and ``advance``.
    """

    def __init__(self, clinic: Clinic, path: Path, start: datetime, port: int = 0) -> None:
        self.clinic = clinic
        self.path = path
        self.clock = DemoClock(start, rate=0)
        self.standin = Standin(self.clock, port=port)
        self.app: App
        self._stack = AsyncExitStack()
        self._polling: asyncio.Task[None] | None = None
        self._stop = asyncio.Event()

    async def __aenter__(self) -> Self:
        await self._stack.enter_async_context(self.standin)
        await self.start_bot()
        return self

    async def __aexit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        await self.stop_bot()
        await self._stack.aclose()

    async def start_bot(self) -> None:
        """Start the bot; also after ``stop_bot``, on the same database."""
        self._bot = AsyncExitStack()
        client = await self._bot.enter_async_context(
            Client(self.standin.token, self.standin.base_url, transport=self.standin.near)
        )
        # What is invented need not outlive a power cut.
        self.app = App(
            self.clinic, self.path, client, clock=self.clock, pace=Pace(NO_HURRY), durable=False
        )
        await self._bot.enter_async_context(self.app)
        self._stop = asyncio.Event()
        waits = Waits(poll=20, first=0.05, most=0.5)
        self._polling = asyncio.create_task(poll(client, self.app.keep, self._stop, waits))

    async def stop_bot(self) -> None:
        """Stop it, wherever it is."""
        self._stop.set()
        if self._polling is not None:
            self._polling.cancel()
            with contextlib.suppress(asyncio.CancelledError):
                await self._polling
            self._polling = None
        await self._bot.aclose()

    async def settle(self) -> None:
        """Until the bot has fetched everything and done all that is to be done now."""
        while True:
            await self._fetched()
            await self.app.settle()
            if not self.standin.chats.updates.pending:
                return

    async def _fetched(self) -> None:
        async with asyncio.timeout(20):
            while self.standin.chats.updates.pending:
                if self._polling is not None and self._polling.done():
                    self._polling.result()
                await asyncio.sleep(0.002)

    async def advance(self, to: datetime) -> None:
        """Set the clock to ``to``, letting everything that falls due before it happen at
        its own moment, in order."""
        await self.settle()
        while (at := await self.app.next_due()) is not None and at <= to:
            if at > self.clock.now():
                self.clock.jump(at)
            await self.settle()
        if to > self.clock.now():
            self.clock.jump(to)
            await self.settle()

    async def next_prompt(self, patient: int | None = None) -> datetime | None:
        """When the next prompt or reminder comes (aware UTC), or None."""

        def first(tx: Tx) -> datetime | None:
            row = tx.one("due_first_prompt", patient_id=patient)
            return moment(row["at"]) if row and row["at"] else None

        return await self.app.db.read(first)

    # -- what staff do at their computer

    async def invite_desk(self, rank: int = 0) -> str:
        """A one-time code that makes a chat a staff chat."""

        code = fresh_code()
        out = Effects(EventId(f"invite:{digest_of(code)[:12]}"))
        until = self.clock.now() + timedelta(days=1)
        out.add(Invite(digest_of(code), "desk", "demo", until, rank=rank))
        await self.app.act(out)
        return code

    async def invite_staff(self, name: str, role: str) -> str:
        """A one-time code that makes a person one of the practice."""
        code = fresh_code()
        out = Effects(EventId(f"invite:{digest_of(code)[:12]}"))
        until = self.clock.now() + timedelta(days=1)
        out.add(Invite(digest_of(code), "staff", "demo", until, name=name, role=role))
        await self.app.act(out)
        return code

    async def employ(self, user: User, name: str, role: str) -> None:
        """Someone of the practice, with an own chat that they opened by their link."""
        out = Effects(EventId(f"employ:{user.id}"))
        out.add(JoinStaff(user.id, name, role))
        await self.app.act(out)
        self.standin.start(user, await self.invite_staff(name, role))
        await self.settle()

    async def staff_chat(self, title: str, members: list[User]) -> Chat:
        """A staff group that has joined."""
        group = self.standin.group(title, members)
        code = await self.invite_desk()
        self.standin.say(members[0], group, f"/join {code}")
        await self.settle()
        return group

    async def enrol(self, plan: Plan, by: str) -> str:
        """Enrol a patient as ``slowleash enrol`` does; the owner's one-time link."""
        out = Effects(EventId(f"enrol:{plan.patient}:{self.clock.now().isoformat()}"))
        code = fresh_code()
        protocol = self.app.practice.protocols[plan.protocol]
        enrol(out, plan, protocol, self.clinic, by=by, code=code, now=self.clock.now())
        await self.app.act(out)
        return start_link(self.app.practice.bot_name, code)
