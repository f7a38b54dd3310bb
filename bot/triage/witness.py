"""Replies that make a condition true: every value, detail, trend and figure that counts.

To tell whether a rule can ever match, and whether it ever says what no other rule says,
``bot.triage.check`` tries it on these. They are as small as they can be (nothing is said
that the condition does not ask for), the plainest first, and come one at a time: for most
rules the first will do.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import product

from bot.model.observation import Observation
from bot.model.vocabulary import DETAILS, TOPICS, TRENDS

from .language import UNTOLD, Range, Rule, When

NORMAL_CELSIUS = 38.5
"""A temperature that no rule should mind (normal is 38.3 to 39.2 °C: Veterinary Partner)."""
LATEST = 400.0
"""Hours ago of an old statement: before every window, and days before a course's end."""


@dataclass(frozen=True, slots=True)
class Claim:
    """Something said: in this reply (``hours_ago`` None), or so many hours before it."""

    observation: Observation
    hours_ago: float | None = None


Claims = tuple[Claim, ...]


def witnesses(when: When) -> Iterator[Claims]:
    """Everything that must be said for ``when`` to be true, in each way that there is."""
    if when.any:
        for inner in when.any:
            yield from witnesses(inner)
    elif when.all:
        yield from _together(when.all)
    elif when.unheard_hours is not None:
        yield ()
    else:
        yield from _statement(when)


def statements(when: When) -> Iterator[Observation]:
    """The single statements that a condition about one topic may take for true."""
    topic = when.about or ""
    details = when.detail or (UNTOLD, *DETAILS.get(topic, ()))
    trends = when.trend or (UNTOLD, *TRENDS)
    for trend, detail, value, celsius in product(
        trends, details, when.value or TOPICS[topic], _temperatures(topic, when.celsius)
    ):
        yield Observation(
            topic,
            value,
            celsius=celsius,
            detail=None if detail == UNTOLD else detail,
            trend=None if trend == UNTOLD else trend,
        )


def _together(parts: tuple[When, ...]) -> Iterator[Claims]:
    first, *rest = parts
    for claims in witnesses(first):
        if not rest:
            yield claims
            continue
        for more in _together(tuple(rest)):
            yield claims + tuple(claim for claim in more if claim not in claims)


def _statement(when: When) -> Iterator[Claims]:
    window = when.within_hours
    for one in statements(when):
        if when.hours is not None:
            yield from _lasting(one, when, when.hours)
        elif when.earlier:
            for ago in (1.0, 30.0, LATEST) if window is None else (min(1.0, window), window):
                yield (Claim(one, ago),)
        else:
            times = when.times or when.in_a_row or 1
            yield (Claim(_counted(one, times)),)
            if times > 1:
                ago = 1.0 if window is None else min(1.0, window)
                if when.in_a_row is not None or window is not None:
                    yield (Claim(one), Claim(_counted(one, times - 1), ago))
            elif window is not None:
                yield (Claim(one, min(1.0, window)),)
                yield (Claim(one, window),)


def _lasting(one: Observation, when: When, span: Range) -> Iterator[Claims]:
    for hours in figures(span, 1.0):
        yield (Claim(_lasted(one, hours)),)
    if when.ended_by and span.at_least is not None:
        window = math.inf if when.within_hours is None else when.within_hours
        ago = min(1.0, window)
        yield (Claim(one), Claim(_lasted(one, max(0.0, span.at_least - ago)), ago))


def figures(span: Range, step: float) -> Iterator[float | None]:
    """Figures in the range, from its edges inward; None where one need not be told."""
    if span.or_untold:
        yield None
    if span.at_least is not None:
        yield span.at_least
        if span.below is not None:
            yield (span.at_least + span.below) / 2
        else:
            yield span.at_least + 10 * step
    if span.below is not None:
        yield span.below - step / 10
        if span.at_least is None:
            yield span.below - 10 * step


def _temperatures(topic: str, span: Range | None) -> tuple[float | None, ...]:
    if topic != "temperature":
        # Of no other topic is a temperature ever told.
        return (None,) if span is None or span.or_untold else ()
    if span is None:
        return (NORMAL_CELSIUS, None)
    return tuple(figures(span, 0.1))


def _counted(one: Observation, times: int) -> Observation:
    return one if times == 1 else _with(one, count=times)


def _lasted(one: Observation, hours: float | None) -> Observation:
    return one if hours is None else _with(one, hours=hours)


def _with(one: Observation, **fields: float) -> Observation:
    return Observation.from_dict({**one.as_dict(), **fields})


def with_figures(topic: str, rules: Iterable[Rule]) -> Iterator[Observation]:
    """Every single statement about ``topic``, with the figures at which some rule turns:
    each limit, and just below it. Those without detail and trend come first."""
    parts = [part for rule in rules for part in rule.when.parts() if part.about == topic]
    hours = {None, *_edges((part.hours for part in parts), 0.1)}
    celsius = {None, *_edges((part.celsius for part in parts), 0.1)}
    counts = {None, *(part.times or part.in_a_row for part in parts)}
    details = (None, *DETAILS.get(topic, ()))
    for detail, trend, value, count, hour, degrees in product(
        details, (None, *TRENDS), TOPICS[topic], _ordered(counts), _ordered(hours),
        _ordered(celsius),
    ):  # fmt: skip
        if sum(figure is not None for figure in (count, hour, degrees)) <= 1:
            times = None if count is None else int(count)
            yield Observation(topic, value, count=times, hours=hour, celsius=degrees,
                              detail=detail, trend=trend)  # fmt: skip


def _edges(spans: Iterable[Range | None], below: float) -> Iterator[float]:
    for span in spans:
        for edge in (span.at_least, span.below) if span is not None else ():
            if edge is not None:
                yield edge
                yield round(edge - below, 6)


def _ordered(figures: Iterable[float | None]) -> list[float | None]:
    return sorted(figures, key=lambda figure: (figure is not None, figure or 0))
