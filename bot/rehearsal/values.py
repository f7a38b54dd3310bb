"""A story as values: who takes part, what happens, what must come of it."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime, time, timedelta
from typing import Literal

from bot.model.plan import Plan
from bot.model.protocol import Protocol
from bot.model.settings import Clinic
from bot.model.text import Lang
from bot.model.urgency import Urgency

Role = Literal["staff", "clinician", "administrator"]
Light = Literal["sharp", "blurred", "dark"]


@dataclass(frozen=True, slots=True, order=True)
class Moment:
    """``day N HH:MM``: days from surgery, on the household's clock."""

    day: int
    minute: int

    def wall(self, surgery: date) -> datetime:
        """What the household's clock shows, as a naive datetime."""
        return datetime.combine(surgery, time()) + timedelta(days=self.day, minutes=self.minute)

    def __str__(self) -> str:
        """As in a story."""
        return f"day {self.day} {self.minute // 60:02d}:{self.minute % 60:02d}"


# -- what people do -------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Write:
    """A message."""

    text: str


@dataclass(frozen=True, slots=True)
class Tap:
    """A button by words of its label, on a message that contains ``of``."""

    label: str
    of: str = ""


@dataclass(frozen=True, slots=True)
class Edit:
    """Their last message reads otherwise now."""

    text: str


@dataclass(frozen=True, slots=True)
class Show:
    """An invented picture or film, with words beside it."""

    film: bool
    light: Light = "sharp"
    caption: str = ""


@dataclass(frozen=True, slots=True)
class Reply:
    """An answer to the newest message that contains ``to``."""

    text: str
    to: str


@dataclass(frozen=True, slots=True)
class Take:
    """Staff take the newest open case."""


@dataclass(frozen=True, slots=True)
class Close:
    """Staff close the newest open case."""

    outcome: str


@dataclass(frozen=True, slots=True)
class Answer:
    """Words of staff to the household, in the newest open case."""

    text: str


@dataclass(frozen=True, slots=True)
class Keep:
    """A hold of staff's own, or (``back``) its release."""

    what: str
    back: bool = False


@dataclass(frozen=True, slots=True)
class Stop:
    """A medicine is stopped."""

    what: str


@dataclass(frozen=True, slots=True)
class Course:
    """The course is paused, goes on, or the patient died; ``why`` in staff's own words."""

    change: Literal["pause", "resume", "died"]
    why: str = ""


Act = Write | Tap | Edit | Show | Reply | Take | Close | Answer | Keep | Stop | Course


@dataclass(frozen=True, slots=True)
class Event:
    """Someone does something."""

    at: Moment
    line: int
    who: str
    act: Act


# -- what must come of it -------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Window:
    """The messages of some time to somebody; ``to`` are names, or ``household``, ``staff``,
    ``anyone``."""

    since: Moment | None = None
    until: Moment | None = None
    to: tuple[str, ...] = ("anyone",)


@dataclass(frozen=True, slots=True)
class Never:
    """No message says it."""

    window: Window
    words: re.Pattern[str]


@dataclass(frozen=True, slots=True)
class Some:
    """A message says it, as sent or as it was edited later."""

    window: Window
    words: re.Pattern[str]


@dataclass(frozen=True, slots=True)
class Count:
    """So many messages; of those that say ``words`` where that is asked, too."""

    window: Window
    least: int = 0
    most: int | None = None
    words: tuple[re.Pattern[str], ...] = ()


@dataclass(frozen=True, slots=True)
class Cases:
    """Open cases at a moment; what is None is not compared."""

    at: Moment
    open: int | None = None
    urgency: Urgency | None = None
    taken: int | None = None


@dataclass(frozen=True, slots=True)
class Held:
    """Exactly this is held at a moment."""

    at: Moment
    names: frozenset[str]


@dataclass(frozen=True, slots=True)
class NotedThen:
    """Such an observation stands at a moment, or (``stands`` False) none does."""

    at: Moment
    fields: Mapping[str, str]
    stands: bool = True


@dataclass(frozen=True, slots=True)
class Over:
    """Nothing is sent to the household after the last event."""


Demand = Never | Some | Count | Cases | Held | NotedThen | Over


@dataclass(frozen=True, slots=True)
class Expectation:
    """One demand, where it is written, and what was written."""

    line: int
    demand: Demand
    said: str


@dataclass(frozen=True, slots=True)
class Story:
    """A whole story, checked. ``household`` and ``staff`` are in the order of the file."""

    file: str
    title: str
    plan: Plan
    protocol: Protocol
    clinic: Clinic
    household: Mapping[str, Lang]
    staff: Mapping[str, Role]
    events: tuple[Event, ...]
    expect: tuple[Expectation, ...] = field(default=())
    waiting: tuple[str, ...] = ()
    """Medicines of the order that wait for a clinician: far above the table's dose."""
