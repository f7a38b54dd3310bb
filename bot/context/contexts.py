"""The moment of an event: one small context for each kind, with what that kind needs."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Any

from bot.model.action import Action
from bot.model.chart import UNREACHED, Chart, Desk, Invitation, Member, Person, RosterLine, Written
from bot.model.chat import Button, Incoming
from bot.model.conversation import NOTHING_OPEN, Conversation
from bot.model.ids import EventId, PatientId
from bot.model.settings import Clinic
from bot.model.topic import Topic
from bot.standing.of_chart import standing_of
from bot.standing.standing import Standing
from bot.triage import RuleBook

from .buttons import button
from .opening import is_open
from .practice import Practice
from .words import Words

READ_LATE = timedelta(minutes=5)
"""A message read so long after the platform had it speaks of the hour at which it was sent."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Context:
    """What every event has: the practice, its chats and people, the time, who is concerned.

    ``charts`` are the patients that the event may be about.
    """

    practice: Practice
    now: datetime
    event: EventId
    desks: tuple[Desk, ...] = ()
    staff: tuple[Member, ...] = ()
    charts: tuple[Chart, ...] = ()

    @property
    def clinic(self) -> Clinic:
        """The practice's settings."""
        return self.practice.clinic

    @property
    def words(self) -> Words:
        """What the bot says."""
        return self.practice.words

    @property
    def rules(self) -> RuleBook:
        """The red-flag rules."""
        return self.practice.rules

    def chart(self, patient: PatientId | None) -> Chart | None:
        """The patient with this id, if the one who speaks may see it."""
        return next((chart for chart in self.charts if chart.id == patient), None)

    def desk(self, chat: int) -> Desk | None:
        """The staff chat with this id."""
        return next((desk for desk in self.desks if desk.chat == chat), None)

    def reaches_staff(self, chart: Chart | None = None) -> bool:
        """Whether anybody at the practice can be written to, as far as is known; with what a
        patient's household was told of it: what has not reached staff, they are not said to
        have."""
        if chart is not None and any(UNREACHED in case.body for case in chart.cases):
            return False
        desks = any(desk.lost is None for desk in self.desks)
        return desks or any(one.chat and one.lost is None for one in self.staff)

    def standing(self, chart: Chart) -> Standing:
        """What is known of a patient now, as one value."""
        return standing_of(chart, self.now)

    def open_now(self) -> bool:
        """Whether the clinic is open at this moment."""
        return is_open(self.clinic, self.now)

    def button(self, chat: int, label: str, action: Action) -> Button:
        """A signed button for a chat."""
        return button(self.practice.secret, chat, label, action)


@dataclass(frozen=True, slots=True, kw_only=True)
class Talk(Context):
    """A chat speaks: what is open in it, and what the message answers (``topic``).

    ``former`` are the chat's ids before a group was upgraded; ``fresh_code`` is an unused
    random code in case a link is to be made.
    """

    incoming: Incoming
    conversation: Conversation = NOTHING_OPEN
    topic: Topic | None = None
    invitation: Invitation | None = None
    former: tuple[int, ...] = ()
    fresh_code: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class AtHome(Talk):
    """Someone at home speaks, or a stranger (``person`` is None)."""

    person: Person | None = None

    @property
    def written_at(self) -> datetime | None:
        """When the words of this event were first sent, where that is not just now: an edited
        message, or one that was read late. "Just given" in it was so then."""
        return self.read_late or self.incoming.first_at

    @property
    def read_late(self) -> datetime | None:
        """When a message was sent that is read only now: it answers nothing asked since."""
        event = self.incoming
        late = event.kind == "message" and self.now - event.at > READ_LATE
        return event.at if late else None


@dataclass(frozen=True, slots=True, kw_only=True)
class AtDesk(Talk):
    """Staff speak. ``held``: staff chats to which nothing is sent until an administrator says
    so; ``roster``: the patients under way, where names are looked up, and ``unread`` the
    names of those whose records cannot be read;
    ``written``: what a message that is changed now has led to, oldest first; ``last_copy``:
    when the whole practice was last copied, for the board."""

    actor: Member | None = None
    held: tuple[Desk, ...] = ()
    roster: tuple[RosterLine, ...] = ()
    unread: tuple[str, ...] = ()
    log_tail: tuple[str, ...] = ()
    written: tuple[Written, ...] = ()
    last_copy: datetime | None = None

    def reaches_staff(self, chart: Chart | None = None) -> bool:
        """As of ``Context``; whatever has not reached them, here they speak."""
        return Context.reaches_staff(self)


@dataclass(frozen=True, slots=True, kw_only=True)
class FellDue(Context):
    """Something of this kind has fallen due at ``due_at``, it may be long ago; ``data`` is
    what its row holds.
    ``conversation`` is that of the chat that it is about; ``off`` when the bot did not run."""

    kind: str
    due_at: datetime
    data: Mapping[str, Any] = field(default_factory=dict)
    conversation: Conversation = NOTHING_OPEN
    roster: tuple[RosterLine, ...] = ()
    unread: tuple[str, ...] = ()
    last_copy: datetime | None = None
    off: tuple[tuple[datetime, datetime], ...] = ()
