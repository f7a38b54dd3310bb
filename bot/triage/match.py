"""A condition turned into a function: which observations make it true.

The answer is a ``Hit`` or None. A fact that makes no sense (hours below zero, not a
number) raises ``Unclear``: such a rule is told to staff, never taken for false.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta

from bot.model.observation import Noted, Observation
from bot.model.vocabulary import TOPICS

from .language import UNTOLD, Range, When


class Unclear(ValueError):
    """A fact that cannot be compared with a rule's figure."""


@dataclass(slots=True)
class Hit:
    """What made a condition true: of this reply, of earlier ones, and the figures.

    ``counted_on``: the hours come from earlier replies, so it has lasted at least so long.
    """

    new: list[Noted] = field(default_factory=list)
    past: list[Noted] = field(default_factory=list)
    count: int | None = None
    hours: float | None = None
    counted_on: bool = False
    unheard: bool = False

    def join(self, other: Hit) -> None:
        """Take in another hit; an observation is kept once, the higher figure wins."""
        self.new += [n for n in other.new if not any(n is mine for mine in self.new)]
        self.past += [n for n in other.past if not any(n is mine for mine in self.past)]
        self.count = max(filter(None, (self.count, other.count)), default=None)
        if other.hours is not None and (self.hours is None or other.hours > self.hours):
            self.hours, self.counted_on = other.hours, other.counted_on
        self.unheard = self.unheard or other.unheard


class Scene:
    """The observations that a reply is judged by, sorted by topic when first needed."""

    __slots__ = ("_past", "_said", "_said_at", "day", "history", "new", "now")

    def __init__(
        self, new: Sequence[Noted], history: Sequence[Noted], day: int, now: datetime
    ) -> None:
        self.new: dict[str, list[Noted]] = defaultdict(list)
        for noted in new:
            self.new[noted.observation.about].append(noted)
        self.history = history
        self._past: dict[str, list[Noted]] | None = None
        self.day = day
        self.now = now
        self._said = new
        self._said_at: datetime | None = None

    def past(self, topic: str) -> Sequence[Noted]:
        """What was said of ``topic`` before this reply, in the order that it came in."""
        if not self.history:
            return ()
        if self._past is None:
            self._past = defaultdict(list)
            for noted in self.history:
                self._past[noted.observation.about].append(noted)
        return self._past.get(topic, ())

    def recent(self, topic: str, within_hours: float) -> Sequence[Noted]:
        """As ``past``, at most so many hours before this reply was sent; the end counts."""
        past = self.past(topic)
        if not past or math.isinf(within_hours):
            return past
        if self._said_at is None:
            self._said_at = min((n.at for n in self._said), default=self.now)
        oldest = self._said_at - timedelta(hours=within_hours)
        return [noted for noted in past if noted.at >= oldest]


Judge = Callable[[Scene], Hit | None]


def build(when: When) -> Judge:
    """The function for a condition."""
    if when.any:
        return _any([build(inner) for inner in when.any])
    if when.all:
        return _all([build(inner) for inner in when.all])
    if when.unheard_hours is not None:
        return _unheard(when, when.unheard_hours)
    if when.in_a_row is not None:
        return _in_a_row(when, when.in_a_row)
    if when.hours is not None:
        return _lasting(when, when.hours)
    return _said(when)


def _any(judges: list[Judge]) -> Judge:
    def judge(scene: Scene) -> Hit | None:
        found: Hit | None = None
        unclear: Exception | None = None
        for inner in judges:
            try:
                hit = inner(scene)
            except Exception as error:  # kept: another branch may be plainly true
                unclear = error
                continue
            if hit is not None and found is None:
                found = hit
            elif hit is not None and found is not None:
                found.join(hit)
        if found is None and unclear is not None:
            raise unclear
        return found

    return judge


def _all(judges: list[Judge]) -> Judge:
    def judge(scene: Scene) -> Hit | None:
        found = Hit()
        unclear: Exception | None = None
        for inner in judges:
            try:
                hit = inner(scene)
            except Exception as error:  # kept: another branch may be plainly false
                unclear = error
                continue
            if hit is None:
                return None
            found.join(hit)
        if unclear is not None:
            raise unclear
        return found

    return judge


def _said(when: When) -> Judge:
    topic = _topic(when)
    fits = _fits(when)
    window, times = when.within_hours, when.times or 1

    def judge(scene: Scene) -> Hit | None:
        if topic not in scene.new and not scene.history:
            return None
        new = [] if when.earlier else _those(scene.new.get(topic, ()), fits)
        past: list[Noted] = []
        if window is not None:
            past = _those(scene.recent(topic, window), fits)
        elif when.earlier:
            past = _those(scene.past(topic), fits)
        if not new and not past:
            return None
        count = sum(_events(n.observation) for n in (*new, *past))
        return Hit(new, past, count=count) if count >= times else None

    return judge


def _unheard(when: When, hours: float) -> Judge:
    topic = _topic(when)
    fits = _fits(when)

    def judge(scene: Scene) -> Hit | None:
        if _those(scene.new.get(topic, ()), fits):
            return None
        last = max((n.at for n in _those(scene.past(topic), fits)), default=None)
        since = scene.day * 24.0 if last is None else _hours_between(last, scene.now)
        return Hit(hours=since, unheard=True) if since >= hours else None

    return judge


def _in_a_row(when: When, times: int) -> Judge:
    """Counted for each medicine; one that is not named may be any of them."""
    topic = _topic(when)
    fits = _fits(when)
    enders = frozenset(when.ended_by)

    def judge(scene: Scene) -> Hit | None:
        new = _those(scene.new.get(topic, ()), fits)
        if not new:
            return None
        window = math.inf if when.within_hours is None else when.within_hours
        past = sorted(
            scene.recent(topic, window),
            key=lambda n: (n.at, n.observation.value not in enders),
            reverse=True,
        )
        best: Hit | None = None
        named = {n.observation.med for n in (*new, *_those(past, fits))}
        for med in sorted(named, key=str):
            mine = [n for n in new if n.observation.med in (None, med)]
            if not mine:
                continue
            row: list[Noted] = []
            for noted in past:
                if noted.observation.med not in (None, med):
                    continue
                if noted.observation.value in enders:
                    break
                if fits(noted.observation):
                    row.append(noted)
            count = sum(_events(n.observation) for n in (*mine, *row))
            if count >= times:
                hit = Hit(mine, row, count=count)
                if best is None:
                    best = hit
                else:
                    best.join(hit)
        return best

    return judge


def _lasting(when: When, span: Range) -> Judge:
    """How long it has lasted: as told, else counted on from what was said before."""
    topic = _topic(when)
    fits = _fits(when)
    enders = frozenset(when.ended_by)
    window = math.inf if when.within_hours is None else when.within_hours

    def so_far(scene: Scene) -> tuple[float | None, list[Noted]]:
        if not enders:
            return None, []
        past = list(scene.recent(topic, window))
        end = max((n.at for n in past if n.observation.value in enders), default=None)
        row = [n for n in _those(past, fits) if end is None or n.at > end]
        ages = [_hours_between(n.at, scene.now) + _figure(n.observation.hours, 0) for n in row]
        return (max(ages), row) if ages else (None, [])

    def judge(scene: Scene) -> Hit | None:
        found: Hit | None = None
        unclear: Unclear | None = None
        for noted in _those(scene.new.get(topic, ()), fits):
            hours = noted.observation.hours
            past: list[Noted] = []
            untold = hours is None
            try:
                if hours is None:
                    hours, past = so_far(scene)
                else:
                    hours = _figure(hours, 0)
            except Unclear as error:
                unclear = error
                continue
            if _in_range(hours, span, untold):
                hit = Hit([noted], past, hours=hours, counted_on=bool(past))
                if found is None:
                    found = hit
                else:
                    found.join(hit)
        if found is None and unclear is not None:
            raise unclear
        return found

    return judge


def _fits(when: When) -> Callable[[Observation], bool]:
    values = frozenset(when.value or TOPICS[_topic(when)])
    details, trends, celsius = frozenset(when.detail), frozenset(when.trend), when.celsius

    def fits(observation: Observation) -> bool:
        if observation.value not in values:
            return False
        if details and (observation.detail or UNTOLD) not in details:
            return False
        if trends and (observation.trend or UNTOLD) not in trends:
            return False
        return celsius is None or _warm(observation.celsius, celsius)

    return fits


def _those(noted: Iterable[Noted], fits: Callable[[Observation], bool]) -> list[Noted]:
    """Those that fit; raises Unclear only when none does and one could not be compared."""
    found: list[Noted] = []
    unclear: Unclear | None = None
    for each in noted:
        try:
            if fits(each.observation):
                found.append(each)
        except Unclear as error:
            unclear = error
    if not found and unclear is not None:
        raise unclear
    return found


def tenths(celsius: float) -> int:
    """A temperature in tenths of a degree, half a tenth upwards: 39.39 °C → 394."""
    return math.floor(celsius * 10 + 0.5 + 1e-9)


def _warm(celsius: float | None, span: Range) -> bool:
    if celsius is None:
        return span.or_untold
    measured = tenths(_figure(celsius, -273.15))
    if span.at_least is not None and measured < tenths(span.at_least):
        return False
    return span.below is None or measured < tenths(span.below)


def _in_range(hours: float | None, span: Range, untold: bool) -> bool:
    if hours is None:
        return span.or_untold
    if span.below is not None and hours >= span.below:
        return False
    if span.at_least is None or hours >= span.at_least:
        return True
    return untold and span.or_untold


def _figure(value: float | None, lowest: float) -> float:
    if value is None:
        return lowest
    if not math.isfinite(value) or value < lowest:
        raise Unclear(f"{value} cannot be compared")
    return value


def _events(observation: Observation) -> int:
    return max(1, observation.count or 1)


def _hours_between(earlier: datetime, later: datetime) -> float:
    return max(0.0, (later - earlier).total_seconds() / 3600)


def _topic(when: When) -> str:
    if when.about is None:
        raise ValueError("this condition is about nothing")
    return when.about
