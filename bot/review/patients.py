"""The list of patients: who needs me first."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Final

from starlette.requests import Request
from starlette.responses import Response

from bot.desk.board import SILENT
from bot.model.urgency import Urgency
from bot.store.review import Glance, Listed, OpenCase

from .site import Site

PER_PAGE: Final = 50
SHOWN: Final = ("active", "case", "silent", "ended", "all")


@dataclass(frozen=True, slots=True)
class Row:
    """One line of the list. ``case`` is the one whose deadline comes first."""

    patient: Listed
    glance: Glance
    day: int
    case: OpenCase | None
    late: bool
    left: timedelta | None
    silent: bool
    recheck: tuple[int, str] | None


def silent(patient: Listed, now: datetime) -> bool:
    """Whether nothing was heard for as long as the staff's board allows."""
    return patient.state == "active" and now - (patient.last_heard or patient.enrolled_at) > SILENT


def _need(case: OpenCase) -> tuple[bool, bool, datetime, str]:
    return not case.waits, case.urgency is not Urgency.emergency, case.deadline, case.id


def first_case(patient: Listed) -> OpenCase | None:
    """The open case to look at first: one that waits before one that was answered, an
    emergency before all else, then by deadline."""
    return min(patient.cases, key=_need, default=None)


def in_order(patients: list[Listed], now: datetime) -> list[Listed]:
    """Emergencies, then those who wait for an answer by deadline, then the silent (longest
    first), then the rest by day, the newest first; those who are done come last."""

    def key(one: Listed) -> tuple[float, float, int]:
        case = first_case(one)
        if case is not None and case.waits:
            rank = 0 if case.urgency is Urgency.emergency else 0.5
            return rank, case.deadline.timestamp(), one.id
        if silent(one, now):
            return 1, (one.last_heard or one.enrolled_at).timestamp(), one.id
        if one.state == "ended":
            return 3, -one.surgery.toordinal(), one.id
        return 2, one.day(now), one.id

    return sorted(patients, key=key)


def chosen(patients: list[Listed], show: str, words: str, now: datetime) -> list[Listed]:
    """Those that the filter leaves."""
    fits: dict[str, Callable[[Listed], bool]] = {
        "active": lambda p: p.state != "ended" or bool(p.cases),
        "case": lambda p: bool(p.cases),
        "silent": lambda p: silent(p, now),
        "ended": lambda p: p.state == "ended",
        "all": lambda p: True,
    }
    return [p for p in patients if fits[show](p) and (not words or p.fits(words))]


class Patients:
    """GET /patients."""

    def __init__(self, site: Site) -> None:
        self._site = site

    async def show(self, request: Request) -> Response:
        """The list, a page of it."""
        now = self._site.clock.now()
        asked = request.query_params
        show = asked.get("show", "active") if asked.get("show") in SHOWN else "active"
        words = asked.get("q", "").strip()[:80]
        page = asked.get("page", "")
        number = int(page) if re.fullmatch("[0-9]{1,6}", page) else 1
        everyone = await self._site.store.listed(ended=show in ("ended", "all"))
        found = in_order(chosen(everyone, show, words, now), now)
        pages = max(1, -(-len(found) // PER_PAGE))
        number = min(max(number, 1), pages)
        here = found[(number - 1) * PER_PAGE : number * PER_PAGE]
        glances = await self._site.store.glances(
            [one.id for one in here], request.state.member, now
        )
        counts = {
            name: len(chosen(everyone, name, "", now)) for name in ("active", "case", "silent")
        }
        return self._site.page(
            request, "patients.html", rows=[_row(one, glances[one.id], now) for one in here],
            show=show, words=words, total=len(found), number=number, pages=pages, counts=counts,
        )  # fmt: skip


def _row(patient: Listed, glance: Glance, now: datetime) -> Row:
    day = patient.day(now)
    case = first_case(patient)
    left = case.deadline - now if case is not None and case.waits else None
    return Row(
        patient, glance, day, case, left is not None and left < timedelta(0), left,
        silent(patient, now), next((one for one in glance.rechecks if one[0] >= day), None),
    )  # fmt: skip
