"""The practice's patients together."""

from __future__ import annotations

import asyncio
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Final
from zoneinfo import ZoneInfo

from starlette.requests import Request
from starlette.responses import Response

from bot.measures.cohort import chosen, cohort
from bot.measures.course import Course
from bot.measures.infection import DEEP_DAYS, SENSITIVITY, SPECIFICITY
from bot.measures.proportion import Proportion
from bot.measures.survival import Curve, Quantile

from .site import Site

LEFT: Final = 10.0
FRESH: Final = timedelta(minutes=10)
"""How long the courses at hand are good for statistics."""
TALL: Final = 130


@dataclass(frozen=True, slots=True)
class Drawn:
    """A curve of the part that has reached it: strokes of the estimate, and boxes of its
    band, in percent across and pixels down; ``crosses``: where patients left."""

    strokes: tuple[tuple[float, float, float, float], ...]
    band: tuple[tuple[float, float, float, float], ...]
    crosses: tuple[tuple[float, float], ...]
    days: tuple[tuple[float, int], ...]
    tall: int = TALL


def drawn(curve: Curve) -> Drawn | None:
    """The curve as a page draws it; None where there are too few."""
    if curve.too_few or not curve.steps:
        return None
    last = max(14, -(-int(curve.steps[-1].time + 1) // 7) * 7)

    def x(day: float) -> float:
        return round(LEFT + (99 - LEFT) * day / last, 2)

    def y(part: float) -> float:
        return round(TALL - 12 - (TALL - 24) * part, 1)

    strokes, band, crosses = [], [], []
    place, reached = 0.0, 0.0
    low = high = 0.0
    for step in curve.steps:
        strokes.append((x(place), y(reached), x(step.time), y(reached)))
        band.append((x(place), y(high), round(x(step.time) - x(place), 2), y(low) - y(high)))
        now, low, high = step.reached
        strokes.append((x(step.time), y(reached), x(step.time), y(now)))
        if step.left:
            crosses.append((x(step.time), y(now)))
        place, reached = step.time, now
    every = 7 if last <= 70 else 14
    return Drawn(
        tuple(strokes), tuple(one for one in band if one[2] > 0), tuple(crosses),
        tuple((x(day), day) for day in range(0, last + 1, every)),
    )  # fmt: skip


def percent(one: Proportion) -> str:
    """``80 % (58 to 92 %), 12 of 15``, or the counts alone."""
    counts = f"{one.part}/{one.whole}"
    if one.rate is None or one.interval is None:
        return counts
    low, high = one.interval
    return f"{one.rate:.0%} ({low:.0%} – {high:.0%}), {counts}"


def quantile(one: Quantile, unit: str) -> str:
    """``12 days (9 – 16)``; a dash where it was not reached."""
    if one.time is None:
        return "–"
    low = "?" if one.low is None else f"{one.low:.0f}"
    high = "?" if one.high is None else f"{one.high:.0f}"
    return f"{one.time:.0f} {unit} ({low} – {high})"


class CohortPage:
    """GET /cohort."""

    def __init__(self, site: Site) -> None:
        self._site = site
        self._kept: tuple[datetime, tuple[Course, ...]] | None = None
        self._one = asyncio.Lock()

    async def _courses(self) -> tuple[datetime, tuple[Course, ...]]:
        """All courses, read anew when those at hand are old; by one visitor at a time."""
        async with self._one:
            now = self._site.clock.now()
            if self._kept is None or abs(now - self._kept[0]) > FRESH:
                self._kept = now, await self._site.store.courses(now)
            return self._kept

    async def show(self, request: Request) -> Response:
        """By procedure, surgeon and period."""
        site, asked = self._site, request.query_params
        as_of, courses = await self._courses()
        there = as_of.astimezone(ZoneInfo(site.practice.clinic.zone))
        values = {k: asked.get(k, "").strip()[:200]
                  for k in ("procedure", "surgeon", "since", "until")}  # fmt: skip
        picked = chosen(
            courses, procedure=values["procedure"] or None, surgeon=values["surgeon"] or None,
            since=_date(values["since"]), until=_date(values["until"]),
        )  # fmt: skip
        found = await asyncio.to_thread(cohort, picked)
        return site.page(
            request, "cohort.html", cohort=found, values=values, as_of=there, lang=site.tongue.lang,
            procedures=_names(one.procedure for one in courses),
            surgeons=_names(one.surgeon for one in courses),
            curves=[("toe_touching", found.toe_touching, drawn(found.toe_touching)),
                    ("full", found.full, drawn(found.full))],
            percent=percent, quantile=quantile, implant_day=DEEP_DAYS,
            sensitivity=f"{SENSITIVITY:.1%}", specificity=f"{SPECIFICITY:.1%}",
        )  # fmt: skip


def _names(values: Iterable[str]) -> list[str]:
    return sorted({one.strip() for one in values}, key=str.casefold)


def _date(text: str) -> date | None:
    try:
        return date.fromisoformat(text)
    except ValueError:
        return None
