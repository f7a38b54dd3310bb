"""The practice's patients together."""

from __future__ import annotations

import asyncio
from collections.abc import Iterable
from zoneinfo import ZoneInfo

from starlette.requests import Request
from starlette.responses import Response

from bot.measures.cohort import chosen, cohort
from bot.measures.infection import DEEP_DAYS, SENSITIVITY, SPECIFICITY
from bot.measures.proportion import Proportion
from bot.measures.survival import Quantile

from .courses import Courses, Reading
from .curves import bars, drawn
from .dates import date_in, no_dates
from .site import Site


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


def waited(one: Quantile) -> str:
    """``55 min (9 – 90)``, or in hours where it is long: ``11.9 h (0.2 – 14.8)``."""
    if one.time is None or one.time < 120:
        return quantile(one, "min")
    low = "?" if one.low is None else f"{one.low / 60:.1f}"
    high = "?" if one.high is None else f"{one.high / 60:.1f}"
    return f"{one.time / 60:.1f} h ({low} – {high})"


class CohortPage:
    """GET /cohort."""

    def __init__(self, site: Site) -> None:
        self._site = site
        self._courses = Courses(site.store, site.clock)

    async def show(self, request: Request) -> Response:
        """By procedure, surgeon and period."""
        site, asked = self._site, request.query_params
        found = await self._courses.look()
        if isinstance(found, Reading):
            page = site.page(request, "cohort_wait.html", done=found.done, of=found.of)
            page.headers["Refresh"] = "1"
            return page
        as_of, courses = found.at, found.courses
        there = as_of.astimezone(ZoneInfo(site.practice.clinic.zone))
        values = {k: asked.get(k, "").strip()[:200]
                  for k in ("procedure", "surgeon", "since", "until")}  # fmt: skip
        picked = chosen(
            courses, procedure=values["procedure"] or None, surgeon=values["surgeon"] or None,
            since=date_in(values["since"]), until=date_in(values["until"]),
        )  # fmt: skip
        figures = await asyncio.to_thread(cohort, picked)
        return site.page(
            request, "cohort.html", cohort=figures, values=values, as_of=there,
            wrong=no_dates(values), lang=site.tongue.lang,
            procedures=_names(one.procedure for one in courses),
            surgeons=_names(one.surgeon for one in courses),
            curves=[("toe_touching", figures.toe_touching, drawn(figures.toe_touching)),
                    ("full", figures.full, drawn(figures.full))],
            percent=percent, quantile=quantile, waited=waited,
            line_name=self._line_name,
            levels={rule.id: rule.urgency for rule in site.practice.rules.file.rules},
            bars=bars(figures.flags), implant_day=DEEP_DAYS,
            sensitivity=f"{SENSITIVITY:.1%}", specificity=f"{SPECIFICITY:.1%}",
        )  # fmt: skip

    def _line_name(self, activity: str) -> str:
        """What the household reads before the colon; a medicine, or an activity that has no
        such name, by what it is called."""
        for protocol in self._site.practice.protocols.values():
            for one in protocol.activities:
                if one.id == activity:
                    name, colon, _ = one.text.say(self._site.tongue.lang).partition(":")
                    return name if colon and len(name) <= 30 else activity.replace("-", " ")
        return activity


def _names(values: Iterable[str]) -> list[str]:
    return sorted({one.strip() for one in values}, key=str.casefold)
