"""A practice and its households around a bot that is a process of its own."""

from __future__ import annotations

import asyncio
import sqlite3
from contextlib import AsyncExitStack, closing
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

import yaml

from bot.model.settings import Clinic
from bot.store.database import stamp
from demo.stage import Stage
from demo.standin.values import User
from tests.harness.bots import Bot, Nest
from tests.harness.hands import Hands
from tests.harness.network import Network
from tests.service.box import CLINIC, at, plan

PETS = ("Canela", "Bramble", "Tuxedo", "Pepper", "Olive", "Mango", "Clove", "Sorrel")


class World:
    """``async with World(folder, nest) as world``: a staff chat, and so many households with a
    patient each, enrolled and at home since the day before; the bot does not run yet.

    The platform's clock is ``clock``; the bot's is the same until ``shift`` parts them.
    """

    def __init__(self, folder: Path, nest: Nest, homes: int = 2) -> None:
        self.folder, self._nest, self._homes = folder, nest, homes
        self.settings, self.database = folder / "clinic.yaml", folder / "practice.db"
        self.settings.write_text(yaml.safe_dump(CLINIC, sort_keys=False), encoding="utf-8")
        self.stage = Stage(Clinic.model_validate(CLINIC), self.database, at(0, 15))
        self.people = self.stage.standin
        self.homes: list[User] = []
        self._stack = AsyncExitStack()

    async def __aenter__(self) -> World:
        stage, people = await self._stack.enter_async_context(self.stage), self.people
        self.nurse = people.user("Kim, nurse")
        self.desk = await stage.staff_chat("Surgery desk", [self.nurse])
        for number in range(self._homes):
            user = people.user(f"Owner {number}", "es" if number % 2 else "en")
            pet = PETS[number % len(PETS)] + (str(number) if number >= len(PETS) else "")
            order = plan(patient=pet, owner=user.name, phone=f"+1 303 555 {1000 + number}",
                         language="es" if number % 2 else "en")  # fmt: skip
            people.start(user, await stage.enrol(order, "Dr Okafor"))
            await stage.settle()
            self.homes.append(user)
        await stage.advance(at(1, 12))
        await stage.stop_bot()
        self.before = len(people.chats.log)
        stage.clock.set_rate(1)
        self.way = await self._stack.enter_async_context(Network(people.base_url, stage.clock.now))
        self.hands = Hands(self.folder / "clock.json", stage.clock.now())
        self.bot = Bot(
            self._nest,
            ["--clinic", str(self.settings), "--database", str(self.database),
             "--base-url", self.way.base_url],
            people.token, self.hands.path, self.folder / "bot.log",
        )  # fmt: skip
        return self

    async def __aexit__(self, *error: Any) -> None:
        if self.bot.running:
            await self.bot.kill()
        await self._stack.__aexit__(*error)

    # -- time

    def now(self) -> datetime:
        """The platform's time."""
        return self.stage.clock.now()

    def clock(self, to: datetime | None = None, *, ahead: timedelta = timedelta(0)) -> None:
        """Sets the platform's clock, and the bot's so far ahead of it (or behind)."""
        if to is not None and to > self.now():
            self.stage.clock.jump(to)
        self.hands.set(self.now() + ahead)

    # -- waiting

    async def start(self) -> None:
        """A bot that has asked for updates."""
        before = self.way.asked["getUpdates"]
        await self.bot.start()
        await self.until(lambda: self.way.asked["getUpdates"] > before, "asked for updates")

    async def until(self, there: Any, what: str, seconds: float = 30.0) -> None:
        """Until ``there()``; AssertionError with the last words of the bot's log."""
        try:
            async with asyncio.timeout(seconds):
                while not there():  # noqa: ASYNC110  looks into another process's files
                    await asyncio.sleep(0.02)
        except TimeoutError:
            last = self.bot.words()[-3000:]
            raise AssertionError(f"not {what} within {seconds} s:\n{last}") from None

    async def quiet(self, seconds: float = 60.0) -> None:
        """Until all is fetched, decided and sent; else AssertionError with what waits."""
        try:
            await self.until(self.idle, "quiet", seconds)
        except AssertionError as error:
            raise AssertionError(f"{error}\nwhat waits: {self.waiting()}") from None

    def waiting(self) -> list[str]:
        """What is not done yet, the first of each kind."""
        updates = self.people.chats.updates
        code = self.bot.gone() if self.bot.process else None
        ended = "the process runs" if code is None else f"the process has ended with {code}"
        found = [ended, f"not fetched: {len(updates.pending)}"]
        for table, due, states in (
            ("inbox", "received_at", "'waiting'"), ("outbox", "due_at", "'waiting', 'sending'"),
            ("due", "due_at", "'waiting'"),
        ):  # fmt: skip
            rows = self.rows(
                f"SELECT * FROM {table} WHERE state IN ({states}) AND {due} <= ? "  # noqa: S608
                f"ORDER BY {due}",
                stamp(self.now()),
            )
            found += [f"{table}: {len(rows)}", *(str(dict(row))[:600] for row in rows[:8])]
        return found

    def idle(self) -> bool:
        """Whether nothing waits: no update, no message, nothing that has fallen due."""
        if self.people.chats.updates.pending or self.people.chats.calls:
            return False
        waiting = self.rows(
            "SELECT (SELECT count(*) FROM inbox WHERE state = 'waiting')"
            " + (SELECT count(*) FROM outbox WHERE state IN ('waiting', 'sending'))"
            " + (SELECT count(*) FROM due WHERE state = 'waiting' AND due_at <= ?) AS n",
            stamp(self.now()),
        )
        return bool(waiting[0]["n"] == 0)

    def rows(self, sql: str, *values: object) -> list[sqlite3.Row]:
        """What stands in the database."""
        with closing(sqlite3.connect(f"file:{self.database}?mode=ro", uri=True)) as plain:
            plain.row_factory = sqlite3.Row
            return plain.execute(sql, values).fetchall()
