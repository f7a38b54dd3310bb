"""A medicine of a chart, with what the pure rules of its doses ask for: its slots, what was
given, what waits, and when a clinician last let it go on."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from bot.model.chart import Chart, Line
from bot.model.hold import HeldMedicine
from bot.model.ids import HOSPITAL, WITNESS
from bot.model.memo import Memo
from bot.model.observation import Noted
from bot.model.plan import Medicine
from bot.plan.clock import first_zone, to_utc
from bot.plan.doses import (
    Givable,
    MayGive,
    NextDose,
    NoMore,
    givable,
    last_moment,
    may_give,
    next_dose,
)
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
    def declined(self) -> list[datetime]:
        """Slots that have their answer, and it was not "given": nobody is asked again."""
        return [
            line.item.slot_at
            for line in self.lines
            if line.state == "answered" and line.choice != "given" and line.item.slot_at
        ]

    @property
    def settled(self) -> bool:
        """Whether no dose was given since doubts were settled last."""
        return self.released is not None and all(at <= self.released for at in self.given)

    def now(self, now: datetime) -> Givable:
        """The one dose that may be given now."""
        waiting = {x.item.slot_at for x in self.lines if x.state in WAITS and x.item.slot_at}
        return givable(
            self.medicine, self.slots, self.given, waiting, now, self.released, self.declined
        )

    def may(self, slot: datetime, at: datetime) -> MayGive:
        """Whether the dose of this slot may be given ``at``."""
        following = min((each for each in self.slots if each > slot), default=None)
        previous = max((each for each in self.slots if each < slot), default=None)
        return may_give(self.medicine, slot, self.given, at, following, previous)

    def latest(self, slot: datetime) -> datetime:
        """The last moment at which the dose of this slot may still be given."""
        following = min((each for each in self.slots if each > slot), default=None)
        return last_moment(self.medicine, slot, following)

    def next(self, now: datetime, more: datetime | None = None) -> NextDose:
        """When the next one is due, once ``more`` was given, too. None of what is stopped."""
        if self.medicine.is_withheld(now):
            return NoMore()
        given = [*self.given, more] if more is not None else self.given
        return next_dose(self.medicine, self.slots, given, now, self.released, self.declined)


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
    given = [at for at in given_times(chart, medicine) if at != but]
    there = [one.at for one in _in_hospital(chart, medicine)]
    there += [at for at in given if at < home_at(chart)]
    return Doses(
        medicine,
        tuple(chart.doses(medicine.name)),
        tuple(given),
        max([*settled, *there], default=None),
    )


def given_times(chart: Chart, medicine: Medicine) -> list[datetime]:
    """When this medicine was given, as far as it was told, oldest first: for a planned hour or
    for none, at home or in hospital, and each of two told as given together."""
    lines = chart.doses(medicine.name)
    told = [line.at for line in lines if line.choice == "given" and line.at is not None]
    others = [
        chart.wall(noted.at, noted.observation.at) if noted.observation.at else noted.at
        for noted in (*_second(chart, medicine), *_of_no_line(chart, medicine, lines))
    ]
    since = _known_since(chart, medicine, lines)
    there = [noted.at for noted in _in_hospital(chart, medicine)]
    return sorted([*told, *there, *(at for at in others if at > since)])


def given_of(chart: Chart, med: str | None) -> list[datetime]:
    """``given_times`` of a medicine by its name; of none that is not of the plan."""
    medicine = medicine_of(chart, med)
    return [] if medicine is None else given_times(chart, medicine)


def _dose_notes(chart: Chart, medicine: Medicine, value: str) -> list[Noted]:
    return [
        noted
        for noted in chart.history
        if (noted.observation.about, noted.observation.value) == ("dose", value)
        and noted.observation.med == medicine.name
    ]


def _second(chart: Chart, medicine: Medicine) -> list[Noted]:
    return [n for n in _dose_notes(chart, medicine, "doubled") if n.observation.at is not None]


def _in_hospital(chart: Chart, medicine: Medicine) -> list[Noted]:
    notes = _dose_notes(chart, medicine, "given")
    return [noted for noted in notes if chart.sources[noted.id][0].startswith(HOSPITAL)]


def _of_no_line(chart: Chart, medicine: Medicine, lines: Sequence[Line]) -> list[Noted]:
    """Told as given, and it filled no planned hour: as needed, in a pause, after the course."""
    known = {line.source for line in lines}
    notes = _dose_notes(chart, medicine, "given")
    return [
        noted
        for noted in notes
        if (source := chart.sources[noted.id][0]) not in known
        and not source.startswith((HOSPITAL, WITNESS))
    ]


def _known_since(chart: Chart, medicine: Medicine, lines: Sequence[Line]) -> datetime:
    """From when on every planned dose is known here: what was told of one before that had
    its line."""
    first = min((line.item.slot_at for line in lines if line.item.slot_at), default=None)
    every = timedelta(hours=medicine.every_hours)
    begun = to_utc(medicine.first_dose, first_zone(chart.plan)) if medicine.first_dose else None
    whole = begun is not None and first is not None and first - every / 2 <= begun
    if first is None or whole or first - every < home_at(chart):
        return datetime.min.replace(tzinfo=UTC)
    return first - every / 2


def home_at(chart: Chart) -> datetime:
    """When the patient came home: until then the clinic gave the medicines."""
    return to_utc(chart.plan.home, first_zone(chart.plan))
