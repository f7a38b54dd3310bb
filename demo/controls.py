"""What the page's clock bar and log pane ask of whoever runs the demo."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from typing import Any, Protocol
from zoneinfo import ZoneInfo

from .clock import DemoClock


@dataclass(frozen=True, slots=True)
class Status:
    """What the page shows above the chats.

    ``about`` is a line on the patient; ``surgery`` is day 0; ``next_prompt`` aware, or None
    when nothing is to come; ``working`` says what is under way, empty when nothing is.
    """

    patient: str
    about: str
    zone: str
    surgery: date
    next_prompt: datetime | None = None
    morning: time = time(8)
    last_day: int = 56
    working: str = ""

    def local(self, at: datetime) -> datetime:
        """``at`` on the patient's own clock."""
        return at.astimezone(ZoneInfo(self.zone))

    def morning_of(self, day: int) -> datetime:
        """The morning of that day since surgery, aware."""
        local = datetime.combine(self.surgery + timedelta(days=day), self.morning)
        return local.replace(tzinfo=ZoneInfo(self.zone))

    def next_morning(self, now: datetime) -> datetime:
        """The first morning after ``now``, aware."""
        today = (self.local(now).date() - self.surgery).days
        first = self.morning_of(today)
        return first if first > now else self.morning_of(today + 1)


class Controls(Protocol):
    """Moves the demo. Each call returns when the bot has caught up."""

    def status(self) -> Status:
        """The patient and what comes next; called often, so quick."""
        ...

    async def next_prompt(self) -> None:
        """Set the clock to the next prompt (or whatever else falls due); ValueError says
        why not, in words for the page."""
        ...

    async def jump_to(self, to: datetime) -> None:
        """Set the clock to an aware time, letting all that falls due before it happen
        in order; ValueError says why not."""
        ...

    async def log_lines(self) -> list[dict[str, Any]]:
        """The patient's log, oldest first: ``at`` (ISO 8601), ``author``, ``kind``,
        ``text``, and anything more under other keys."""
        ...


class PlainControls:
    """Moves a clock and nothing else: for a page with no bot behind it.

    The "next prompt" is the next of ``hours`` on the patient's clock; ``log`` is shown
    as it is.
    """

    def __init__(
        self,
        clock: DemoClock,
        status: Status,
        hours: tuple[time, ...] = (time(8), time(13), time(20)),
    ) -> None:
        self._clock = clock
        self._status = status
        self._hours = hours
        self.log: list[dict[str, Any]] = []

    def status(self) -> Status:
        """The patient, and the next of the hours."""
        s = self._status
        return Status(
            s.patient, s.about, s.zone, s.surgery, self._next(), s.morning, s.last_day, s.working
        )

    async def next_prompt(self) -> None:
        """Jump to the next of the hours."""
        await self.jump_to(self._next())

    async def jump_to(self, to: datetime) -> None:
        """Jump."""
        self._clock.jump(to)

    async def log_lines(self) -> list[dict[str, Any]]:
        """What was put into ``log``."""
        return self.log

    def _next(self) -> datetime:
        now = self._status.local(self._clock.now())
        days = (now.date(), now.date() + timedelta(days=1))
        return next(
            at
            for day in days
            for hour in sorted(self._hours)
            if (at := datetime.combine(day, hour, now.tzinfo)) > now
        )
