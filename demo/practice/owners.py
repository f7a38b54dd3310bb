"""What the invented owners do: they tap, forget, write, and fall silent."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import datetime, time, timedelta
from typing import TYPE_CHECKING, Final

from bot.household.late import LATE
from bot.model.action import Action, Healed, TapAll, TapLine, WhenGiven
from bot.model.chart import Line, Person
from bot.model.ids import PromptId
from bot.plan.prompts import last_day
from bot.store.database import Tx

from .course import good
from .home import Home

if TYPE_CHECKING:
    from .world import World

SOONEST, LATEST, USUAL = 2, 50, 9
"""Minutes until a prompt is answered."""
SENDS_PICTURE: Final = 0.88
SHOWN: Final = ("incision: red", "incision: discharge", "bandage: wet")
"""What is written under a picture."""
TELLS_OF_FORGOTTEN: Final = 0.6
"""How often it is told that a dose of the morning was forgotten."""
NOON: Final = 13


class Owners:
    """The people at home, in ``world``."""

    def __init__(self, world: World) -> None:
        self._world = world

    def asked(self, home: Home, kind: str, prompt: PromptId, at: datetime) -> None:
        """A prompt came, was reminded of, or was given up: what somebody does about it."""
        lines = home.waiting(prompt)
        if not lines or not home.people or self._silent(home, at):
            return
        if kind == "unanswered":
            self._forgot(home, any(line.item.kind == "dose" for line in lines), at)
            return
        if kind == "prompt":
            self._pictures(home, lines, at)
        share = home.shape.answers if kind == "prompt" else home.shape.late
        if home.spins.random() < share:
            seconds = round(60 * home.spins.triangular(SOONEST, LATEST, USUAL))
            person = home.spins.choice(home.people)
            self._world.at(
                at + timedelta(seconds=seconds),
                lambda tx, now: self._answer(tx, home, person, prompt, now),
            )

    def asked_of_wound(self, home: Home, day: int, at: datetime) -> None:
        """Asked how the wound healed: somebody answers within hours, or nobody does."""
        check = home.wounds.get(day)
        if check is None or check.told is not None or home.spins.random() >= home.shape.answers:
            return
        person = home.spins.choice(home.people)
        taps = [Healed(day, what, home.id) for what in home.course.healing(day)]
        later = at + timedelta(minutes=home.spins.randint(3, 400))
        self._world.at(later, lambda tx, now: self._tap(tx, home, person, taps, now))

    def _silent(self, home: Home, at: datetime) -> bool:
        return home.course.since(home.day(at), "silence") is not None

    def _answer(self, tx: Tx, home: Home, person: Person, prompt: PromptId, at: datetime) -> None:
        lines = home.waiting(prompt)
        day = home.day(at)
        truth = home.course.truth(day)
        picks = [
            (line, choice)
            for line in lines
            if (choice := home.course.answer(line, day, truth, home.shape.doses)) is not None
        ]
        todo = [line for line in lines if line.item.kind in ("dose", "session")]
        done = [line for line, choice in picks if good(line, choice)]
        actions: list[Action] = []
        late = at - home.sheets[prompt].due_at > LATE
        if len(todo) > 1 and len(done) == len(todo):
            actions.append(TapAll(prompt))
            picks = [(line, choice) for line, choice in picks if line not in done]
            actions += self._when(home, prompt, [one for one in done if late])
        for line, choice in picks:
            actions.append(TapLine(line.id, choice))
            actions += self._when(home, prompt, [line] if late and line in done else [])
        self._tap(tx, home, person, actions, at)

    def _when(self, home: Home, prompt: PromptId, lines: Sequence[Line]) -> list[Action]:
        """A dose tapped late: about its hour, just now, or no word of it."""
        ids = "-".join(str(line.id) for line in lines if line.item.kind == "dose")
        how = home.spins.choices(("s", "n", ""), (55, 35, 10))[0]
        return [WhenGiven(prompt, ids, how)] if ids and how else []

    def _pictures(self, home: Home, lines: Sequence[Line], at: datetime) -> None:
        """What was asked for by picture or film is sent within the afternoon, mostly."""
        for line in lines:
            if line.item.kind != "picture" or home.spins.random() >= SENDS_PICTURE:
                continue
            film = line.item.asks == "mobility"
            when = at + timedelta(minutes=home.spins.randint(8, 150))
            self._world.at(when, self._sends(home, film))

    def _sends(self, home: Home, film: bool) -> Callable[[Tx, datetime], None]:
        def sends(tx: Tx, at: datetime) -> None:
            if not home.ended:
                self._world.tell(tx, home, home.spins.choice(home.people), at, film=film)

        return sends

    def _tap(
        self, tx: Tx, home: Home, person: Person, actions: Sequence[Action], at: datetime
    ) -> None:
        if not actions:
            return
        first, rest = actions[0], actions[1:]
        self._world.tell(tx, home, person, at, data=self._world.data(person.chat, first))
        if rest:
            self._world.at(
                at + timedelta(seconds=home.spins.randint(4, 30)),
                lambda tx, now: self._tap(tx, home, person, rest, now),
            )

    def _forgot(self, home: Home, dose: bool, at: datetime) -> None:
        """A dose of the morning is told to have been forgotten, at noon or so."""
        morning = home.local(at).hour < NOON
        if dose and morning and home.spins.random() < TELLS_OF_FORGOTTEN:
            later = at + timedelta(minutes=home.spins.randint(10, 100))
            self._world.at(later, lambda tx, now: self._write(tx, home, "dose: missed", now))

    # -- words

    def plan_days(self, home: Home, start: datetime) -> None:
        """A moment on each day of the course at which somebody may write."""
        for day in range(home.day(start), last_day(home.plan, home.protocol) + 1):
            wall = datetime.combine(home.plan.surgery + timedelta(days=day), time(9))
            local = wall.replace(tzinfo=home.local(start).tzinfo)
            when = local + timedelta(minutes=home.spins.randint(0, 690))
            if when > start:
                self._world.at(
                    when.astimezone(start.tzinfo), lambda tx, now: self._today(tx, home, now)
                )

    def _today(self, tx: Tx, home: Home, at: datetime) -> None:
        if home.ended or not home.people or self._silent(home, at):
            return
        day = home.day(at)
        key = home.course.tells(day)
        if key is None:
            if home.spins.random() >= home.shape.writes:
                return
            key = home.course.chats_about(home.course.truth(day))
        self._write(tx, home, key, at)

    def _write(self, tx: Tx, home: Home, key: str, at: datetime) -> None:
        pool = self._world.book.messages.get(key)
        if pool is None or home.ended:
            return
        person = home.spins.choice(home.people)
        text = home.spins.choice(pool[person.lang])
        film = False if key in SHOWN else None
        self._world.tell(tx, home, person, at, text=text, film=film)
