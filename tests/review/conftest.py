"""The review pages over a small practice that was played once for all tests."""

from __future__ import annotations

import asyncio
import re
import shutil
from collections.abc import AsyncIterator
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

import httpx
import pytest
from starlette.applications import Starlette

from bot.context.practice import Practice
from bot.desk.review_link import invite
from bot.model.chart import Member
from bot.model.effects import Effects
from bot.model.ids import EventId
from bot.model.settings import Clinic
from bot.review import review_app
from bot.service.practice import fresh_code, open_practice, secret_of
from bot.store import load
from bot.store.database import Database, Row
from bot.store.review import ReviewStore
from bot.store.shelf import Shelf
from tests.review.practice import build, who
from tests.service.box import CLINIC, at

BASE = "http://127.0.0.1"


@dataclass
class Watch:
    """A clock that stands until it is moved; also of seconds."""

    at: datetime = field(default_factory=lambda: at(4, 18, 5))
    seconds: float = 0.0

    def now(self) -> datetime:
        """The time."""
        return self.at

    def tick(self) -> float:
        """Seconds for the limits."""
        return self.seconds

    def move(self, by: timedelta) -> None:
        """Let time pass."""
        self.at += by
        self.seconds += by.total_seconds()


@dataclass
class Pages:
    """The pages, a browser without a screen, and a look into the database."""

    app: Starlette
    db: Database
    store: ReviewStore
    watch: Watch
    web: httpx.AsyncClient
    practice: Practice

    async def member(self, name: str) -> Member:
        """One of the practice."""
        return who(await self.db.read(load.staff), name)

    async def link(self, name: str) -> str:
        """A fresh one-time link."""
        out = Effects(EventId("test"))
        link = invite(out, await self.member(name), BASE, fresh_code(), self.watch.now(), "test")
        await self.store.act(out, self.watch.now())
        return link

    async def enter(self, name: str) -> httpx.Response:
        """Come in; the page that follows."""
        code = (await self.link(name)).partition("code=")[2]
        return await self.web.post("/enter", data={"code": code})

    async def token(self) -> str:
        """The token that forms of this session carry."""
        found = re.search(r'name="token" value="(\w+)"', (await self.web.get("/patients")).text)
        assert found
        return found[1]

    async def rows(self, name: str, **params: object) -> list[Row]:
        """Rows of a named statement."""
        return await self.db.read(lambda tx: tx.all(name, **params))

    async def logged(self, kind: str, patient: int | None = None) -> list[Row]:
        """Entries of one kind."""
        name = "log_of" if patient is not None else "log_nobody"
        params: dict[str, Any] = {"patient_id": patient} if patient is not None else {}
        return [row for row in await self.rows(name, **params) if row["kind"] == kind]

    async def observation(self, about: str, patient: int = 1) -> int:
        """The newest standing observation of a topic."""
        rows = await self.rows("observations", patient_id=patient)
        return int([row["id"] for row in rows if f'"about":"{about}"' in row["body"]][-1])


@pytest.fixture(scope="session")
def played(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The database of the practice; copy it before use."""
    path = tmp_path_factory.mktemp("review") / "practice.db"
    asyncio.run(build(path))
    return path


@pytest.fixture
async def pages(played: Path, tmp_path: Path) -> AsyncIterator[Pages]:
    """The pages over an own copy."""
    path = tmp_path / "practice.db"
    shutil.copyfile(played, path)
    shutil.copytree(Shelf(played).folder, Shelf(path).folder)
    async with Database(path) as db:
        clinic = Clinic.model_validate(CLINIC)
        practice = open_practice(clinic, None, "the_bot", await db.transact(secret_of))
        watch, store = Watch(), ReviewStore(db)
        app = review_app(
            store, practice, watch, shelf=Shelf(path), real=watch, tick=watch.tick
        )  # fmt: skip
        through = httpx.ASGITransport(app=app)
        async with httpx.AsyncClient(
            transport=through, base_url=BASE, follow_redirects=True
        ) as web:
            yield Pages(app, db, store, watch, web, practice)
