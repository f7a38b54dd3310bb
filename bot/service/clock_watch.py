"""Looks at the machine's clock before anything is decided by the hour, and tells staff when
it jumped and when it may be believed again."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from bot.store.database import Database, Tx, stamp

from .alert import Alert, Trouble
from .clock import Clock, MachineClock
from .clock_judge import Heard, Judgement

EPOCH = datetime(1970, 1, 1, tzinfo=UTC)


@dataclass(frozen=True, slots=True)
class Look:
    """``moved``: the clock was set, one way or the other, since the look before; ``ahead``: by
    how much it is ahead of what is believed."""

    trusted: bool
    moved: bool = False
    ahead: timedelta = timedelta(0)


@dataclass(frozen=True, slots=True)
class Believed:
    """The clock by which all is noted and decided: ``machine``, as far as ``watch`` believes it."""

    machine: Clock
    watch: ClockWatch

    def now(self) -> datetime:
        """The time, aware, UTC."""
        return self.watch.time(self.machine)

    @property
    def of_machine(self) -> bool:
        """Whether it runs by itself: a gap in what it showed is time in which nothing ran."""
        return isinstance(self.machine, MachineClock)

    def ticks(self) -> timedelta:
        """How long it has gone, whoever sets a machine's clock meanwhile: only the time between
        two of these means anything."""
        machine = self.machine
        if isinstance(machine, MachineClock):
            return timedelta(seconds=machine.monotonic())
        return machine.now() - EPOCH

    def at(self, ticks: timedelta) -> datetime:
        """When it had gone so long, by the hour that is believed now."""
        return self.now() - (self.ticks() - ticks)


class ClockWatch:
    """Remembers what was believed."""

    def __init__(self, db: Database, alert: Alert) -> None:
        self._db, self._alert = db, alert
        self._judgement = Judgement()
        self._word = ""

    @property
    def trusted(self) -> bool:
        """As of the last look."""
        return self._judgement.trusted

    def time(self, clock: Clock) -> datetime:
        """The time as it is believed."""
        now = clock.now()
        if not isinstance(clock, MachineClock):
            return now
        return self._judgement.time(now, clock.monotonic())

    async def look(self, clock: Clock, date: tuple[datetime, float] | None) -> Look:
        """Whether what depends on the hour may be decided now. ``date``: the platform's own,
        and when it came by the monotonic clock. A clock that is none of a machine's (the
        demo's, a test's) is set by whoever knows what they do."""
        if not isinstance(clock, MachineClock):
            return Look(True)
        now, tick, before = clock.now(), clock.monotonic(), self._judgement
        after = before.look(now, tick, Heard(*date) if date else None)
        if not after.trusted:
            word = await self._db.read(_word)
            if before.trusted:
                self._word = word  # what an administrator said earlier was of another jump
            elif word != self._word:
                after = Judgement.believing(now, tick)
        at = after.time(now, tick)
        moved = after.apart(before) > 1
        if moved:
            await due_soon(self._db, at, timedelta(0))
        if before.trusted != after.trusted:
            await self._tell(after, now)
        self._judgement = after  # last: what could not be stored is seen and told again
        ahead = timedelta(seconds=after.jump)
        return Look(after.trusted, moved or before.trusted != after.trusted, ahead)

    async def _tell(self, after: Judgement, now: datetime) -> None:
        """Staff hear it at once, in the time that their clock shows."""
        minutes = round(after.jump / 60)
        good = after.trusted
        trouble = Trouble.clock_again if good else Trouble.clock_jumped
        why = "it is believed again" if good else f"it jumped by {minutes} minutes"
        key = f"clock:{'again' if good else 'jumped'}:{stamp(now)}"
        await self._alert.tell(trouble, why, now, key=key, minutes=minutes)


def _word(tx: Tx) -> str:
    """When an administrator last said that the clock is right."""
    row = tx.one("setting", key="clock_right")
    return row["value"] if row else ""


async def due_soon(db: Database, now: datetime, most: timedelta) -> None:
    """No message waits for an hour that a wrong clock gave it."""
    await db.transact(
        lambda tx: tx.run("outbox_due_soon", now=stamp(now), latest=stamp(now + most))
    )
