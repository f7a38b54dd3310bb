"""A medicine of a chart, with what the pure rules of its doses ask for: its slots, what was
given, what waits, and when a clinician last let it go on."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from bot.model.chart import Chart, Line
from bot.model.hold import HeldMedicine
from bot.model.memo import Memo
from bot.model.plan import Medicine
from bot.plan.doses import Givable, MayGive, NextDose, givable, may_give, next_dose
from bot.standing.holds import covered

WAITS = ("open", "unanswered")


def medicine_of(chart: Chart, med: str | None) -> Medicine | None:
    """The plan's medicine of this name."""
    if med is None:
        return None
    return next((m for m in chart.plan.medicines if m.name.casefold() == med.casefold()), None)


@dataclass(frozen=True, slots=True)
class Doses:
    """All that is known of one medicine's doses; times are aware, lists in order of time.
    ``released``: doubts about doses up to then are settled, by a clinician's release or
    because the hospital gave them on purpose."""

    medicine: Medicine
    lines: tuple[Line, ...]
    given: tuple[datetime, ...]
    released: datetime | None

    @property
    def slots(self) -> list[datetime]:
        """The known slots."""
        return [line.item.slot_at for line in self.lines if line.item.slot_at is not None]

    @property
    def settled(self) -> bool:
        """Whether no dose was given since doubts were settled last."""
        return self.released is not None and all(at <= self.released for at in self.given)

    def now(self, now: datetime) -> Givable:
        """The one dose that may be given now."""
        waiting = {x.item.slot_at for x in self.lines if x.state in WAITS and x.item.slot_at}
        return givable(self.medicine, self.slots, self.given, waiting, now, self.released)

    def may(self, slot: datetime, at: datetime) -> MayGive:
        """Whether the dose of this slot may be given ``at``."""
        following = min((each for each in self.slots if each > slot), default=None)
        previous = max((each for each in self.slots if each < slot), default=None)
        return may_give(self.medicine, slot, self.given, at, following, previous)

    def next(self, now: datetime, more: datetime | None = None) -> NextDose:
        """When the next one is due, once ``more`` was given, too."""
        given = [*self.given, more] if more is not None else self.given
        return next_dose(self.medicine, self.slots, given, now, self.released)


_MEMO = Memo()


def doses_of(chart: Chart, med: str | None, *, but: datetime | None = None) -> Doses | None:
    """The doses of a medicine of the plan; None for any other. ``but``: as if none had been
    given then."""
    return _MEMO.of(chart, (med, but), lambda: _doses_of(chart, med, but))


def _doses_of(chart: Chart, med: str | None, but: datetime | None) -> Doses | None:
    medicine = medicine_of(chart, med)
    if medicine is None:
        return None
    name = HeldMedicine(medicine.name)
    settled = [
        one.at
        for one in chart.releases
        if one.target == name or medicine.name in covered(one.target, chart.plan)
    ]
    return Doses(
        medicine,
        tuple(chart.doses(medicine.name)),
        tuple(at for at in chart.given(medicine.name) if at != but),
        max([*settled, *chart.given_in_hospital(medicine.name)], default=None),
    )
