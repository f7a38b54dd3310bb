"""What was told of one patient, on one axis of days. Places are percent of the width, so
that the page draws it at any width; up is better in every chart of steps."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime
from itertools import groupby, pairwise
from typing import Final

from bot.model.topics import TABLE
from bot.model.urgency import Urgency
from bot.model.vocabulary import TOPICS
from bot.plan.walks import WalkWeek, walk_days
from bot.records.whole import Entry, Statement, WholeRecord

from .words import Tongue

LEFT: Final = 14.0
"""Percent of the width that the names of the steps take."""
STEPS: Final = {
    name: TABLE[name].from_mildest[::-1]
    for name in ("weight_bearing", "appetite", "pain", "swelling")
}
"""Topic → its values from the worst to the best."""
CARE: Final = ("ice", "warm_compress", "massage", "cone")
DONE: Final = ("done", "on")
PER_STEP: Final = 15
MANY: Final = 16
"""Of more marks in a lane each is drawn small."""
PHONE: Final = 2.6
"""Pixels of one percent of a chart's width on a narrow phone."""
REACH: Final = (3, 9)
"""Pixels around a mark's middle that take a finger, at least and at most."""


@dataclass(frozen=True, slots=True)
class Mark:
    """``shape``: dot, ring, cross, ask, bar, or case. ``href`` leads to the words;
    ``reach``: so many pixels around it do, too."""

    x: float
    y: float
    shape: str
    label: str
    href: str = ""
    tone: str = ""
    reach: int = REACH[1]


@dataclass(frozen=True, slots=True)
class Stroke:
    """A straight line; ``plan``: what was planned, else what was told."""

    x1: float
    y1: float
    x2: float
    y2: float
    plan: bool = False


@dataclass(slots=True)
class Lane:
    """One chart. ``ticks``: height in pixels and words."""

    key: str
    title: str
    height: int
    ticks: list[tuple[float, str]] = field(default_factory=list)
    marks: list[Mark] = field(default_factory=list)
    strokes: list[Stroke] = field(default_factory=list)
    many: bool = False  # so many marks that they are drawn small
    quiet: bool = False  # marks that the keyboard need not stop at: the table has them


@dataclass(frozen=True, slots=True)
class Charts:
    """All lanes. ``weeks``: place and day of the grid; ``today`` its place."""

    lanes: tuple[Lane, ...]
    weeks: tuple[tuple[float, int], ...]
    today: float


class Axis:
    """Days since surgery to percent of the width."""

    def __init__(self, record: WholeRecord, now: datetime) -> None:
        self._record = record
        end = record.ended_at or now
        self.day = max(record.day(end), 0)
        self.last = max(14, -(-(self.day + 1) // 7) * 7)

    def at(self, when: datetime) -> float:
        """The place of an aware time."""
        local = self._record.local(when)
        part = (local.hour * 60 + local.minute) / 1440
        return self.of(self._record.day(when) + part)

    def of(self, day: float) -> float:
        """The place of a day."""
        share = min(max(day, 0), self.last) / self.last
        return round(LEFT + (99 - LEFT) * share, 2)

    @property
    def weeks(self) -> tuple[tuple[float, int], ...]:
        """Where the grid's lines are."""
        every = 7 if self.last <= 70 else 14
        return tuple((self.of(day), day) for day in range(0, self.last + 1, every))


def charts(record: WholeRecord, tongue: Tongue, now: datetime, anchors: dict[str, str]) -> Charts:
    """Every chart that has something to show. ``anchors``: source → where its words are."""
    axis = Axis(record, now)
    told = _Told(record, tongue, axis, anchors)
    lanes = [told.cases(), told.steps("weight_bearing"), told.walks()]
    lanes += [told.steps(about) for about in ("appetite", "pain", "swelling")]
    lanes.append(told.temperature())
    lanes += told.doses(now)
    lanes += [told.care(about) for about in CARE]
    for lane in lanes:
        settle(lane)
    return Charts(
        tuple(lane for lane in lanes if lane.marks or lane.strokes), axis.weeks,
        axis.at(record.ended_at or now),
    )  # fmt: skip


class _Told:
    """Makes the lanes."""

    def __init__(
        self, record: WholeRecord, tongue: Tongue, axis: Axis, anchors: dict[str, str]
    ) -> None:
        self._record = record
        self._tongue = tongue
        self._axis = axis
        self._anchors = anchors
        self._standing = sorted(record.standing, key=lambda one: one.noted.at)

    def _label(self, day: int, at: datetime, words: str) -> str:
        local = self._record.local(at)
        return self._tongue.say("day {day}, {at}: {words}", day=day, at=f"{local:%H:%M}",
                                words=words)  # fmt: skip

    def _mark(self, one: Statement, y: float, shape: str) -> Mark:
        label = self._label(one.noted.day, one.noted.at, self._tongue.seen(one.observation))
        anchor = f"#r{one.noted.id}" if one.source in self._anchors else ""
        return Mark(self._axis.at(one.noted.at), y, shape, label, anchor)

    def _about(self, about: str) -> Iterable[Statement]:
        return (one for one in self._standing if one.observation.about == about)

    def steps(self, about: str) -> Lane:
        """A topic whose values are steps."""
        values = STEPS[about]
        height = PER_STEP * (len(values) - 1) + 16
        y_of = {v: height - 8 - PER_STEP * i for i, v in enumerate(values)}
        lane = Lane(about, self._tongue.name("chart", about), height)
        lane.ticks = [(y_of[v], self._tongue.name("step", v)) for v in values]
        for one in self._about(about):
            shape = "ring" if one.observation.unsure else "dot"
            lane.marks.append(self._mark(one, y_of[one.observation.value], shape))
        lane.strokes = _joined(lane.marks)
        return lane

    def walks(self) -> Lane:
        """Minutes told against minutes planned."""
        record, lane = self._record, Lane("walk", self._tongue.name("chart", "walk"), 76)
        planned = [one.day for one in record.entries if one.item.asks == "walk"]
        days = list(enumerate(self._planned_walks() if planned else ()))
        days = [(on, week) for on, week in days if min(planned) <= on <= max(planned)]
        walked = [o for o in self._about("walk") if o.observation.minutes is not None]
        most = max(
            [week.minutes for _, week in days] + [o.observation.minutes or 0 for o in walked] + [1]
        )

        def y(minutes: float) -> float:
            return round(50 - 42 * minutes / most, 1)

        lane.ticks = [(50, "0"), (8, f"{most:g} min"), (66, self._tongue.name("step", "done"))]
        for minutes, same in groupby(days, key=lambda one: one[1].minutes):
            first, *rest = (on for on, _ in same)
            here, there = self._axis.of(first), self._axis.of((rest or [first])[-1] + 1)
            lane.strokes.append(Stroke(here, y(minutes), there, y(minutes), True))
        lane.marks = [self._mark(o, y(o.observation.minutes or 0), "dot") for o in walked]
        bare = [o for o in self._about("walk") if o.observation.minutes is None]
        for one in bare:
            done = one.observation.value == "done"
            lane.marks.append(self._mark(one, 66, "ring" if done else "cross"))
        return lane

    def _planned_walks(self) -> tuple[WalkWeek, ...]:
        """Of each day as it began, so that later words do not change what was planned."""
        plan, history = self._record.plan, [one.noted for one in self._record.standing]
        return walk_days(plan, self._record.protocol, history, self._axis.day, plan.walk_overrides)

    def temperature(self) -> Lane:
        """Degrees as they were measured."""
        lane = Lane("temperature", self._tongue.name("chart", "temperature"), 46)
        measured = [o for o in self._about("temperature") if o.observation.celsius is not None]
        if not measured:
            return lane
        degrees = [o.observation.celsius or 0 for o in measured]
        low, high = min(38.0, *degrees), max(39.5, *degrees)

        def y(celsius: float) -> float:
            return round(38 - 30 * (celsius - low) / (high - low), 1)

        lane.ticks = [(y(low), f"{low:.1f} °C"), (y(high), f"{high:.1f} °C")]
        lane.marks = [self._mark(o, y(o.observation.celsius or 0), "dot") for o in measured]
        lane.strokes = _joined(lane.marks)
        return lane

    def doses(self, now: datetime) -> list[Lane]:
        """A lane for each medicine: what was due, and what became of it."""
        lanes: dict[str, Lane] = {}
        for entry in self._record.entries:
            item = entry.item
            if item.kind != "dose" or item.slot_at is None or item.slot_at > now:
                continue
            if entry.sent_at is None and entry.state == "planned":
                continue
            lane = lanes.setdefault(entry.series, Lane("dose", entry.series, 18, quiet=True))
            lane.marks.append(self._line(entry, item.slot_at))
        for lane in lanes.values():
            _worst_on_top(lane)
        return list(lanes.values())

    def care(self, about: str) -> Lane:
        """Sessions and nights: done, not done, not told."""
        lane = Lane("care", self._tongue.name("chart", about), 18, quiet=True)
        for entry in self._record.entries:
            asked = entry.item.asks == about and entry.item.kind in ("session", "question")
            if asked and entry.sent_at is not None and entry.state != "planned":
                lane.marks.append(self._line(entry, entry.due_at))
        _worst_on_top(lane)
        return lane

    def _line(self, entry: Entry, at: datetime) -> Mark:
        answer = entry.answer
        if entry.state == "held":
            shape, words = "bar", self._tongue.say("held back")
        elif entry.state == "open" and answer is None:
            shape, words = "wait", self._tongue.say("not answered yet")
        elif answer is None:
            shape, words = "ask", self._tongue.say("not answered")
        else:
            good = answer == "given" or answer in DONE
            shape, words = ("dot" if good else "cross"), self._answer(entry, answer)
        label = self._label(entry.day, at, words)
        return Mark(self._axis.at(at), 9, shape, label, self._anchors.get(f"line:{entry.id}", ""))

    def _answer(self, entry: Entry, answer: str) -> str:
        about = "dose" if entry.item.kind == "dose" else entry.item.asks
        if answer in TOPICS.get(about, ()):
            return self._tongue.value(about, answer)
        return answer

    def cases(self) -> Lane:
        """When cases were opened."""
        lane = Lane("case", self._tongue.name("chart", "case"), 26)
        for case in self._record.cases:
            words = self._tongue.say(
                "case {id}, {urgency}: {matter}", id=case.id,
                urgency=self._tongue.urgency(case.urgency.name),
                matter=self._tongue.matter(case.matter),
            )  # fmt: skip
            label = self._label(self._record.day(case.opened_at), case.opened_at, words)
            x = self._axis.at(case.opened_at)
            lane.marks.append(
                Mark(x, 13, "case", label, self._anchors.get(f"case:{case.id}", ""),
                     Urgency(case.urgency).name)
            )  # fmt: skip
        return lane


def _worst_on_top(lane: Lane) -> None:
    """What went wrong is drawn over what went well."""
    lane.marks.sort(key=lambda mark: mark.shape != "dot")


def settle(lane: Lane) -> None:
    """Many marks are drawn small, and none takes the finger that is meant for the next."""
    lane.many = len(lane.marks) > MANY
    places = sorted(mark.x for mark in lane.marks)
    gaps: dict[float, float] = {}
    for before, after in pairwise(places):
        gap = (after - before) * PHONE
        gaps[before] = min(gaps.get(before, gap), gap)
        gaps[after] = gap
    low, high = REACH
    lane.marks = [
        replace(mark, reach=round(min(max(gaps.get(mark.x, 2 * high) / 2, low), high)))
        for mark in lane.marks
    ]


def _joined(marks: Sequence[Mark]) -> list[Stroke]:
    return [Stroke(a.x, a.y, b.x, b.y) for a, b in pairwise(marks)]
