"""The whole course at once: eight weeks in under a minute, printed as it happens.

The same run is the end-to-end test: every expectation of the scenario is checked.
"""

from __future__ import annotations

import heapq
import time
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path

from .cast import Cast
from .scenario import Expect, Scenario, Step, load_clinic, load_scenario
from .stage import Stage
from .standin.values import Message

Say = Callable[[str], None]


@dataclass
class Waiting:
    """An expectation that may still come true until ``until``; ``rev`` is what was there."""

    step: Step
    expect: Expect
    rev: int
    until: datetime


@dataclass(frozen=True)
class Played:
    """What came of it: how much was sent, what failed, and how long it took (seconds)."""

    messages: int
    taps: int
    cases: int
    log_lines: int
    failures: tuple[str, ...]
    seconds: float


class Play:
    """Plays a scenario on a stage."""

    def __init__(self, stage: Stage, scenario: Scenario, say: Say) -> None:
        self._stage = stage
        self._scenario = scenario
        self._say = say
        self._cast = Cast(stage, scenario)
        self._waiting: list[Waiting] = []
        self._answers: list[tuple[datetime, int, str, Message]] = []
        self._seen = 0
        self._taps = 0
        self._ordinary = 0
        self._failures: list[str] = []
        self._day = -1

    async def run(self) -> Played:
        """From the first step to the end of the course."""
        began = time.monotonic()
        await self._cast.come_in()
        self._seen = self._stage.standin.chats.rev
        for step in self._scenario.steps:
            await self._until(self._scenario.when(step.day, step.at))
            await self._step(step)
        last = max((waiting.until for waiting in self._waiting), default=self._stage.clock.now())
        await self._until(last + timedelta(minutes=1))
        return await self._sum_up(time.monotonic() - began)

    async def _until(self, to: datetime) -> None:
        """Let time pass; ordinary prompts are answered on the way."""
        while True:
            due = await self._stage.app.next_due()
            answer = self._answers[0][0] if self._answers else None
            deadline = min((w.until for w in self._waiting), default=None)
            soonest = min(at for at in (to, due, answer, deadline) if at is not None)
            await self._stage.advance(max(soonest, self._stage.clock.now()))
            self._look()
            while self._answers and self._answers[0][0] <= self._stage.clock.now():
                await self._routine(*heapq.heappop(self._answers)[2:])
            self._check(self._stage.clock.now())
            if soonest >= to:
                return

    def _look(self) -> None:
        """New ordinary prompts: note who will answer them, and when."""
        chats = self._stage.standin.chats
        name = self._scenario.plan.patient
        for message in chats.log:
            if message.rev <= self._seen or message.sender is not chats.bot:
                continue
            prompt = message.words.startswith(f"{name} · ") and message.buttons
            routine = self._scenario.routine(message.date) if prompt else None
            theirs = routine and message.chat is self._cast.chats[routine.who]
            if routine and theirs and message.edited is None:
                at = message.date + timedelta(minutes=routine.after_minutes)
                heapq.heappush(self._answers, (at, message.id, routine.who, message))
        self._seen = chats.rev

    async def _routine(self, who: str, message: Message) -> None:
        """Press what an ordinary day asks for, until nothing of it is left."""
        scenario = self._scenario
        routine = next(r for r in scenario.routines if r.who == who)
        day = scenario.day(message.date)
        taps = 0
        while taps < 12 and (label := routine.pick(message.labels, day)) is not None:
            self._stage.standin.press(self._cast.users[who], message.chat, label, message)
            await self._stage.settle()
            taps += 1
        self._taps += taps
        self._ordinary += bool(taps)

    async def _step(self, step: Step) -> None:
        before = self._stage.standin.chats.rev
        self._heading()
        name = self._scenario.people[step.who].name
        self._say(f"  {self._clock()}  {step.why}")
        did = step.say or step.edit or step.caption or step.press
        if did:
            self._say(f"         {name}: {did}")
        try:
            await self._cast.act(step)
        except LookupError as error:
            self._fail(step, str(error))
            return
        self._show(before)
        for expect in step.expect:
            until = self._stage.clock.now() + timedelta(minutes=expect.within_minutes)
            self._waiting.append(Waiting(step, expect, before, until))
        self._check(self._stage.clock.now())
        self._look()

    def _show(self, before: int) -> None:
        """What the bot said to this."""
        chats = self._stage.standin.chats
        for message in chats.log:
            if message.rev > before and message.sender is chats.bot:
                who = next((k for k in self._cast.chats if self._cast.here(k) is message.chat), "?")
                words = " / ".join(part for part in message.words.splitlines() if part.strip())
                words = words if len(words) <= 150 else words[:149] + "…"
                mark = "✎" if message.edited else "→"
                self._say(f"         {mark} {who}: {words}")

    def _check(self, now: datetime) -> None:
        """Take off what has come true; what is over its time has failed."""
        still: list[Waiting] = []
        for waiting in self._waiting:
            verdict = self._holds(waiting.expect, waiting.rev)
            negative = bool(waiting.expect.hasnt or waiting.expect.quiet)
            if verdict is not None and (negative or now >= waiting.until):
                self._fail(waiting.step, verdict)
            elif (verdict is not None or negative) and now < waiting.until:
                still.append(waiting)
        self._waiting = still

    def _holds(self, expect: Expect, rev: int) -> str | None:
        """None when it holds; else what is wrong."""
        chat = self._cast.here(expect.chat)
        bot = self._stage.standin.chats.bot
        news = [
            m.words.casefold()
            for m in self._stage.standin.chats.log
            if m.chat is chat and m.sender is bot and m.rev > rev
        ]
        if expect.quiet and news:
            return f"{expect.chat} should be quiet, but: {news[-1][:200]}"
        for words in expect.hasnt:
            if any(words.casefold() in text for text in news):
                return f"{expect.chat} has {words!r}"
        if expect.has and not any(
            all(words.casefold() in text for words in expect.has) for text in news
        ):
            return f"{expect.chat} lacks {list(expect.has)}; its news: {news[-3:]}"
        return None

    def _fail(self, step: Step, what: str) -> None:
        self._failures.append(f"day {step.day} {step.at:%H:%M} ({step.why}): {what}")
        self._say(f"  !!     {what}")

    def _heading(self) -> None:
        """The day, and how many ordinary prompts were answered on the way to it."""
        if self._ordinary:
            self._say(f"         … {self._ordinary} ordinary prompts answered by tapping")
            self._ordinary = 0
        day = self._scenario.day(self._stage.clock.now())
        if day != self._day:
            self._day = day
            self._say(f"Day {day}")

    def _clock(self) -> str:
        local = self._scenario.when(0, self._scenario.start_at).tzinfo
        return f"{self._stage.clock.now().astimezone(local):%H:%M}"

    async def _sum_up(self, seconds: float) -> Played:
        db = self._stage.app.db
        log = await db.read(lambda tx: tx.all("log_of", patient_id=1))
        cases = await db.read(lambda tx: tx.one("cases_count", patient_id=1))
        bot = self._stage.standin.chats.bot
        return Played(
            messages=sum(m.sender is bot for m in self._stage.standin.chats.log),
            taps=self._taps,
            cases=int(cases["n"]) if cases else 0,
            log_lines=len(log),
            failures=tuple(self._failures),
            seconds=seconds,
        )


async def play(folder: Path, say: Say) -> Played:
    """Play the demo's course with its database in ``folder``."""
    scenario = load_scenario()
    say(f"{scenario.title}: {scenario.about}")
    say(scenario.caution)
    say("")
    async with Stage(load_clinic(), folder / "demo.db", scenario.start) as stage:
        return await Play(stage, scenario, say).run()
