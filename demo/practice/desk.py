"""What the invented staff do: they take cases, write to owners, and close what is done."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta
from typing import TYPE_CHECKING, Final

from bot.context.contexts import AtDesk
from bot.context.opening import next_opening
from bot.events.handle import handle
from bot.model import effects as o
from bot.model.action import OnCase
from bot.model.chart import Case, Desk, Member
from bot.model.chat import Sender
from bot.model.effects import Effects
from bot.model.ids import CaseId
from bot.model.steps import CaseAct, CaseStep, Outcome
from bot.model.topic import AboutCase
from bot.model.urgency import Urgency
from bot.store.database import Tx

from .home import Home

if TYPE_CHECKING:
    from .world import World

TAKES: Final = {
    Urgency.emergency: (2, 14), Urgency.same_day: (6, 110), Urgency.next_day: (25, 330),
}  # fmt: skip
"""Minutes, of opening hours unless it is an emergency, until somebody takes a case."""
ANSWERS: Final = 0.8
"""How many cases are answered in writing; the others by phone."""
CLOSES_AFTER: Final = (1.0, 30.0)
"""Hours from taking a case to closing it."""
ENDINGS: Final = {
    Urgency.emergency: (Outcome.visit, Outcome.emergency, Outcome.visit),
    Urgency.same_day: (Outcome.advice, Outcome.visit, Outcome.advice, Outcome.expected),
    Urgency.next_day: (Outcome.advice, Outcome.advice, Outcome.expected, Outcome.mistaken),
}


class Desks:
    """The staff of ``world``, their chats, and who looks after which case."""

    def __init__(self, world: World, chats: Sequence[Desk], staff: Sequence[Member]) -> None:
        self._world = world
        self.chats = tuple(chats)
        self.staff = tuple(staff)
        self._booked: set[CaseId] = set()

    def look(self, home: Home, out: Effects, at: datetime) -> None:
        """A case opened or was raised: somebody will take it."""
        for change in out.all:
            if not isinstance(change, o.CaseChange) or change.state != "open":
                continue
            if change.id not in self._booked:
                self._booked.add(change.id)
                self._take_later(home, change.id, change.urgency, at)

    def _take_later(self, home: Home, case: CaseId, urgency: Urgency, at: datetime) -> None:
        start = at
        if urgency is not Urgency.emergency:
            start = next_opening(self._world.practice.clinic, at)
        least, most = TAKES[urgency]
        when = start + timedelta(minutes=round(home.spins.triangular(least, most, least * 1.5)))
        if urgency is not Urgency.emergency:
            when = next_opening(self._world.practice.clinic, when)
        roles = ("clinician",) if urgency is Urgency.emergency else ("staff", "administrator")
        fit = [one for one in self.staff if one.role in roles]
        member = home.spins.choice(fit or list(self.staff))
        self._world.at(when, lambda tx, now: self._take(tx, home, member, case, now))

    def _take(self, tx: Tx, home: Home, member: Member, id: CaseId, at: datetime) -> None:
        self._booked.discard(id)
        case = home.cases.get(id)
        if case is None or case.state != "open":
            return
        self._do(tx, home, member, case, at, act=CaseStep.take)
        if home.people and home.spins.random() < ANSWERS:
            writes = at + timedelta(minutes=home.spins.randint(1, 35))
            self._world.at(writes, lambda tx, now: self._answer(tx, home, member, id, now))
        hours = home.spins.triangular(*CLOSES_AFTER, CLOSES_AFTER[0] * 3)
        later = at + timedelta(minutes=round(hours * 60))
        closes = next_opening(self._world.practice.clinic, later)
        minutes = timedelta(minutes=home.spins.randint(1, 50))
        self._world.at(closes + minutes, lambda tx, now: self._close(tx, home, member, id, now))

    def _answer(self, tx: Tx, home: Home, member: Member, id: CaseId, at: datetime) -> None:
        case = home.cases.get(id)
        if case is None:
            return
        answers = self._world.book.answers
        key = "emergency" if case.urgency is Urgency.emergency else case.matter
        pool = answers.get(key, answers["any"])
        text = home.spins.choice(pool[home.people[0].lang])
        self._do(tx, home, member, case, at, text=text)

    def _close(self, tx: Tx, home: Home, member: Member, id: CaseId, at: datetime) -> None:
        case = home.cases.get(id)
        if case is not None:
            self._do(tx, home, member, case, at, act=home.spins.choice(ENDINGS[case.urgency]))

    def _do(
        self, tx: Tx, home: Home, member: Member, case: Case, at: datetime, *,
        act: CaseAct | None = None, text: str = "",
    ) -> None:  # fmt: skip
        chat = next((desk.chat for desk in self.chats if desk.rank == 0), member.user)
        data = self._world.data(chat, OnCase(case.id, act)) if act else ""
        sender = Sender(member.user, member.name, "en")
        event = self._world.event(at, chat, sender, text=text, data=data)
        ctx = AtDesk(
            **self._world.common(at, event, home),
            actor=member,
            topic=AboutCase(case.id) if text else None,
        )
        self._world.keep(tx, home, handle(ctx), at)
