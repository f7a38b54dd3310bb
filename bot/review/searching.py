"""Search of all conversations."""

from __future__ import annotations

import re
from datetime import date, datetime, time, timedelta
from typing import Final
from zoneinfo import ZoneInfo

from starlette.datastructures import QueryParams
from starlette.requests import Request
from starlette.responses import Response

from bot.model.ids import PatientId
from bot.model.urgency import Urgency
from bot.model.vocabulary import TOPICS
from bot.store.review import Listed, plain
from bot.store.search import MARK_OFF, MARK_ON, Query

from .dates import date_in, no_dates
from .site import Site

MOST: Final = 100
AROUND: Final = 160
SEVERAL: Final = 200
"""So many patients are offered to choose from; of more, the name or number is written."""
"""Characters shown before the first word found, and after it."""


def parts(text: str) -> list[tuple[str, bool]]:
    """The words around the first one found, cut where they begin and end to be found."""
    start = max(0, text.find(MARK_ON) - AROUND)
    short = text[start : start + 2 * AROUND + 60]
    if start:
        short = "…" + short
    if start + 2 * AROUND + 60 < len(text):
        short += "…"
    found: list[tuple[str, bool]] = []
    for piece in re.split(f"({MARK_ON}[^{MARK_OFF}]*{MARK_OFF}?)", short):
        marked = piece.startswith(MARK_ON)
        bare = piece.replace(MARK_ON, "").replace(MARK_OFF, "")
        if bare:
            found.append((bare, marked))
    return found


def named(everyone: list[Listed], words: str) -> list[Listed]:
    """Those with this number or name; of one name, all who bear it."""
    if words.isdecimal():
        return [one for one in everyone if str(one.id) == words]
    exact = [one for one in everyone if plain(one.name) == plain(words)]
    return exact or [one for one in everyone if words and plain(words) in plain(one.name)]


class Search:
    """GET /search."""

    def __init__(self, site: Site) -> None:
        self._site = site

    async def show(self, request: Request) -> Response:
        """The form, and what fits it."""
        site, asked = self._site, request.query_params
        values = {key: asked.get(key, "").strip()[:200]
                  for key in ("q", "patient", "topic", "urgency", "since", "until")}  # fmt: skip
        now = site.clock.now()
        few = await site.store.count() <= SEVERAL
        everyone = await site.store.listed(ended=True) if few or values["patient"] else []
        several = named(everyone, values["patient"])
        query = self._query(asked, several[0].id if len(several) == 1 else None)
        given = any(values.values())
        unclear = bool(values["patient"]) and len(several) != 1
        look = given and not unclear
        found = await site.store.search(query, request.state.member, now) if look else []
        return site.page(
            request, "search.html", values=values, asked=given, wrong=no_dates(values),
            found=[(one, parts(one.text), self._local(one.at)) for one in found],
            full=len(found) == MOST, most=MOST,
            several=several[:SEVERAL] if unclear else [], unclear=unclear,
            patients=sorted(everyone, key=lambda one: (one.state == "ended", one.name.casefold()))
            if few else [],
            topics=[(about, site.tongue.topic(about)) for about in TOPICS],
            urgencies=[(u.name, site.tongue.urgency(u.name)) for u in reversed(Urgency)
                       if u > Urgency.none],
        )  # fmt: skip

    def _query(self, asked: QueryParams, patient: PatientId | None) -> Query:
        topic = asked.get("topic", "")
        urgency = asked.get("urgency", "")
        since, until = date_in(asked.get("since", "")), date_in(asked.get("until", ""))
        return Query(
            words=asked.get("q", "").strip()[:200],
            patient=patient,
            topic=topic if topic in TOPICS else None,
            urgency=urgency if urgency in Urgency.__members__ else None,
            since=self._midnight(since) if since else None,
            until=self._midnight(until + timedelta(days=1)) if until else None,
            most=MOST,
        )

    def _midnight(self, on: date) -> datetime:
        return datetime.combine(on, time(0), ZoneInfo(self._site.practice.clinic.zone))

    def _local(self, at: datetime) -> datetime:
        return at.astimezone(ZoneInfo(self._site.practice.clinic.zone))
