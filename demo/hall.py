"""The demo in a browser: the stage, the page over it, and its clock bar."""

from __future__ import annotations

import asyncio
import contextlib
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from datetime import datetime
from pathlib import Path
from typing import Any, Literal

from bot.store import load
from bot.store.database import Tx
from bot.store.known import records

from .cast import Cast
from .controls import Status
from .page import Page, Sample, Seat
from .practice import Progress, World, fill, go_on
from .reviewing import attach_review
from .scenario import Scenario, load_clinic, load_scenario
from .stage import Stage

GLANCE = 0.2
"""Real seconds between two looks at whether the running clock has made something due."""


class StageControls:
    """The page's clock bar, on the stage."""

    def __init__(self, stage: Stage, scenario: Scenario, world: World | None = None) -> None:
        """``world`` are the other patients of the practice, who live on as time passes."""
        self._stage = stage
        self._scenario = scenario
        self._world = world
        self._patient: int | None = None
        self._next: datetime | None = None
        self._working = ""
        self._moving = asyncio.Lock()

    def status(self) -> Status:
        """The patient, and what comes next."""
        plan = self._scenario.plan
        return Status(
            patient=plan.patient,
            about=self._scenario.about,
            zone=plan.zone,
            surgery=plan.surgery,
            next_prompt=self._next,
            morning=plan.hours.morning,
            working=self._working,
        )

    async def next_prompt(self) -> None:
        """Set the clock to the next prompt or reminder."""
        at = await self._stage.next_prompt(self._patient)
        if at is None:
            raise ValueError("Nothing more is planned: the course is over.")
        await self.jump_to(at)

    async def jump_to(self, to: datetime) -> None:
        """Let all that falls due before ``to`` happen in order, then set the clock to it."""
        if to < self._stage.clock.now():
            raise ValueError("The clock only goes forward. Start the demo again to go back.")
        async with self._moving:
            self._working = "Letting the days pass…"
            try:
                await self._live(to)
                await self._stage.advance(to)
            finally:
                self._working = ""
        await self.look()

    async def log_lines(self) -> list[dict[str, Any]]:
        """The newest patient's log."""

        def read(tx: Tx) -> list[dict[str, Any]]:
            patients = load.roster(tx, ended=True)
            if not patients:
                return []
            return [record.as_dict() for record in records(tx, patients[-1].id)]

        return await self._stage.app.db.read(read)

    async def look(self) -> None:
        """Notice when the next prompt comes to the scenario's patient, the newest."""
        if self._patient is None:
            roster = await self._stage.app.db.read(load.roster)
            self._patient = roster[-1].id if roster else None
        self._next = await self._stage.next_prompt(self._patient)

    async def _live(self, to: datetime) -> None:
        if self._world is not None:
            await go_on(self._stage.app.db, self._world, to)

    async def keep_up(self) -> None:
        """While the page is open: whatever is said, or falls due as time runs, is done."""
        while True:
            if not self._moving.locked():
                async with self._moving:
                    await self._live(self._stage.clock.now())
                    await self._stage.settle()
            await self.look()
            await asyncio.sleep(GLANCE)


@asynccontextmanager
async def open_hall(
    folder: Path, port: int = 0, *, practice: bool = True, progress: Progress | None = None
) -> AsyncIterator[tuple[Stage, str]]:
    """The demo, running; gives the stage and the page's address.

    The patient is enrolled and both people at home have joined, so that the first look
    shows something; ``folder`` holds the database. ``practice``: with some forty other
    patients, which takes some seconds (``progress``, from 0 to 1).
    """
    scenario = load_scenario()
    async with Stage(load_clinic(), folder / "demo.db", scenario.start, port) as stage:
        cast = Cast(stage, scenario)
        await cast.come_in()
        world = None
        if practice:
            world = await fill(
                stage.app.db,
                stage.app.practice,
                scenario.start,
                progress,
                phone=stage.standin.at_home,
            )
        controls = StageControls(stage, scenario, world)
        Page(stage.standin, stage.clock, controls, _seats(cast), _samples(scenario)).attach()
        attach_review(stage)
        for step in scenario.steps:
            if step.enrol or step.join or (step.press and step.day == scenario.start_day):
                when = scenario.when(step.day, step.at)
                if world is not None:
                    await go_on(stage.app.db, world, when)
                await stage.advance(when)
                await cast.act(step)
        await controls.look()
        keeping = asyncio.create_task(controls.keep_up())
        try:
            yield stage, stage.standin.page_url
        finally:
            keeping.cancel()
            with contextlib.suppress(asyncio.CancelledError):
                await keeping


def _seats(cast: Cast) -> list[Seat]:
    seats: list[Seat] = []
    for key, person in cast.scenario.people.items():
        if person.home:
            chat = cast.chats[key]
            seats.append(Seat(key, "home", person.name, person.role, chat, (cast.users[key],)))
    for key, staff in cast.scenario.staff_chats.items():
        side: Literal["clinic"] = "clinic"
        users = tuple(cast.users[name] for name in staff.members)
        seats.append(Seat(key, side, staff.title, staff.role, cast.chats[key], users))
    return seats


def _samples(scenario: Scenario) -> list[Sample]:
    return [
        Sample(item.label, item.kind, item.path, item.mime)
        for item in scenario.attachments.values()
    ]
