"""One patient's page: what is new, the charts, the conversation; and its records."""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Final

from starlette.requests import Request
from starlette.responses import FileResponse, Response

from bot.measures.covered import covered_by_doses
from bot.model.ids import PictureId
from bot.pictures.film import can_film
from bot.plan.calendar import as_icalendar
from bot.records.course import asked_in
from bot.records.fhir import bundle
from bot.records.log_pdf import log_pdf
from bot.records.orders import standing
from bot.records.summary import Summary, summarise
from bot.records.summary_pdf import as_pdf
from bot.records.summary_text import as_text
from bot.records.tables import as_csv, json_lines
from bot.records.whole import CaseFile, WholeRecord
from bot.service.frames import Frames, Later
from bot.store.review import Visit

from .charts import charts
from .conversation import OWNER, Day, conversation
from .figures import figures
from .site import Site

NEWS: Final = 8
"""How many new things stand at the top; the rest is marked in the conversation."""
LONGEST: Final = 160
"""Characters of one of them."""
FILMS: Final = ("video", "animation", "video_note")
TYPES: Final = {
    "jpg": "image/jpeg", "png": "image/png", "webp": "image/webp", "gif": "image/gif",
    "mp4": "video/mp4", "mov": "video/quicktime", "webm": "video/webm",
}  # fmt: skip
"""Kinds of files that are shown; others are downloaded."""
WAITS: Final = 20.0
"""Seconds that a page waits for a film's frames, where they are not there yet."""


@dataclass(frozen=True, slots=True)
class News:
    """Something since the last look, with where its words are."""

    anchor: int
    at: datetime
    who: str
    verb: str
    text: str
    urgency: str
    quoted: bool  # the words are somebody's own
    picture: PictureId | None


@dataclass(frozen=True, slots=True)
class Head:
    """What the surgeon reads first. ``covered``: medicine, days with every dose, days, and
    whether staff stopped or paused it."""

    day: int
    open_cases: tuple[CaseFile, ...]
    leg: tuple[int, str] | None
    covered: tuple[tuple[str, int, int, str], ...]
    recheck: tuple[int, str] | None


def news(days: tuple[Day, ...], before: int) -> tuple[list[News], int, int]:
    """What is new and was said in words, was found by a rule, or was decided by people, the
    newest first; how much of that there is; and how many buttons were tapped. At the first
    visit: of all."""
    found, taps = [], 0
    for day in days:
        for turn in day.turns:
            if before and not turn.new:
                continue
            words = turn.side in ("staff", "note") or (turn.side == "owner" and not turn.tap)
            if turn.why or words or turn.matters:
                text = turn.text or "; ".join(w.because for w in turn.why)
                urgency = turn.urgency if turn.why else ""
                quoted = words or turn.tap
                found.append(
                    News(turn.id, turn.at, turn.who, turn.verb, cut(text), urgency, quoted,
                         turn.picture)
                )  # fmt: skip
            taps += turn.tap
    found.sort(key=lambda one: (one.at, one.anchor), reverse=True)
    return found[:NEWS], len(found), taps


def cut(text: str) -> str:
    """As much as the top of the page has room for."""
    return text if len(text) <= LONGEST else text[: LONGEST - 1].rstrip() + "…"


def anchors(visit: Visit) -> dict[str, str]:
    """Where the words are: by source, by line of a prompt, by case."""
    found: dict[str, str] = {}
    for entry in visit.record.log:
        if entry.kind in OWNER and (source := entry.data.get("source")):
            found[str(source)] = f"#e{entry.id}"
        if entry.kind in ("case", "page", "sent") and (case := entry.data.get("case")):
            found.setdefault(f"case:{case}", f"#e{entry.id}")
    for one in visit.record.cases:
        said = [entry.get("source") for entry in one.body.get("entries", ())]
        if said and said[0] in found:
            found[f"case:{one.id}"] = found[said[0]]
    for line, source in visit.answered.items():
        if source in found:
            found[f"line:{line}"] = found[source]
    return found


def head(record: WholeRecord, site: Site, now: datetime) -> Head:
    """The figures at the top."""
    legs = [one for one in record.standing if one.observation.about == "weight_bearing"]
    spans = {**record.protocol.spans, **record.plan.spans}
    day = record.day(record.ended_at or now)
    rechecks = sorted((spans[n], n) for n in ("recheck", "radiographs") if n in spans)
    covered = covered_by_doses(asked_in(record))
    states = {one.name: standing(record, one, record.ended_at or now)
              for one in record.plan.medicines}  # fmt: skip
    held = {name: state for name, state in states.items() if state in ("stopped", "paused")}
    return Head(
        day=day,
        open_cases=tuple(
            sorted(
                (one for one in record.cases if one.state != "closed"),
                key=lambda one: (one.state == "answered", -one.urgency, one.opened_at),
            )
        ),
        leg=(legs[-1].noted.day, site.tongue.seen(legs[-1].observation)) if legs else None,
        covered=tuple(
            (name, of.covered, of.days, held.get(name, "")) for name, of in covered.items()
        ),
        recheck=next((one for one in rechecks if one[0] >= day), None),
    )


class PatientPage:
    """GET /patients/{id}, its pictures and its records."""

    def __init__(self, site: Site) -> None:
        self._site = site
        self._frames = Frames(site.shelf) if site.shelf is not None else None
        self._records: dict[str, tuple[str, Callable[[WholeRecord, datetime], bytes]]] = {
            "summary.pdf": ("application/pdf", lambda r, now: as_pdf(self._summary(r, now))),
            "summary.txt": (
                "text/plain; charset=utf-8",
                lambda r, now: as_text(self._summary(r, now)).encode(),
            ),
            "log.pdf": ("application/pdf", self._log),
            "log.csv": ("text/csv; charset=utf-8", lambda r, _: as_csv(r).encode()),
            "log.jsonl": ("application/jsonl", lambda r, _: json_lines(r).encode()),
            "plan.ics": ("text/calendar; charset=utf-8", self._calendar),
            "fhir.json": ("application/fhir+json", self._fhir),
        }

    async def show(self, request: Request) -> Response:
        """The page."""
        site, now = self._site, self._site.clock.now()
        visit = await site.store.visit(request.path_params["id"], request.state.member, now)
        if visit is None:
            return self.missing(request)
        record = visit.record
        days = conversation(record, site.tongue, visit.before)
        fresh, count, taps = news(days, visit.before)
        where = anchors(visit)
        return site.page(
            request, "patient.html", record=record, head=head(record, site, now), days=days,
            news=fresh, news_count=count,
            taps=taps, visit=visit, records=list(self._records), where=where,
            charts=charts(record, site.tongue, now, where), figures=figures(record, site.tongue),
            pictures=[one for one in record.pictures if one.sha256], films=FILMS,
            can_film=can_film(),
        )  # fmt: skip

    def missing(self, request: Request) -> Response:
        """404, and where to go."""
        return self._site.message(
            request, 404, "Nothing is here", "Perhaps the address was typed wrong. "
            "The list of patients has everybody.",
        )  # fmt: skip

    async def picture(self, request: Request) -> Response:
        """A kept picture or film."""
        found = await self._kept(request)
        if found is None or self._site.shelf is None:
            return self.missing(request)
        path = self._site.shelf.full(found[0])
        if not path.is_file():
            return self.missing(request)
        kind = TYPES.get(path.suffix.lstrip("."))
        if kind is None:
            return FileResponse(path, media_type="application/octet-stream", filename=path.name)
        return FileResponse(path, media_type=kind)

    async def _kept(self, request: Request) -> tuple[str, str] | None:
        ids, site = request.path_params, self._site
        member, now = request.state.member, site.clock.now()
        return await site.store.picture(ids["id"], ids["picture"], member, now)

    async def frames(self, request: Request) -> Response:
        """A film as a sheet of frames, for thirty seconds and for paper."""
        found = await self._kept(request)
        if found is None or self._frames is None or not can_film():
            return self.missing(request)
        path = Path(found[0])
        if not TYPES.get(path.suffix.lstrip("."), "").startswith("video/"):
            return self.missing(request)
        floor = self._site.practice.clinic.disk_megabytes * 1_000_000
        try:
            lies = await self._frames.of(found[0], floor, WAITS)
        except OSError:
            lies = None
        except Later:
            page = self._site.message(
                request, 503, "The frames are being made", "Please come again in a minute. "
                "The film itself can be played meanwhile.",
            )  # fmt: skip
            page.headers["retry-after"] = page.headers["refresh"] = "15"
            return page
        if lies is None:
            return self.missing(request)
        return FileResponse(lies, media_type=TYPES["jpg"])

    async def record(self, request: Request) -> Response:
        """The record in one of its forms, to be kept elsewhere."""
        name, now = request.path_params["name"], self._site.clock.now()
        if name not in self._records:
            return self.missing(request)
        kind, make = self._records[name]
        record = await self._site.store.record(
            request.path_params["id"], request.state.member, f"took {name} out of the system", now
        )
        if record is None:
            return self.missing(request)
        content = make(record, now)
        headers = {"content-disposition": f'attachment; filename="patient-{record.id}-{name}"'}
        return Response(content, media_type=kind, headers=headers)

    def _summary(self, record: WholeRecord, now: datetime) -> Summary:
        clinic = self._site.practice.clinic
        return summarise(record, now, self._site.practice.words, clinic.language, clinic)

    def _log(self, record: WholeRecord, now: datetime) -> bytes:
        return log_pdf(record, now, self._site.practice.clinic.language)

    def _calendar(self, record: WholeRecord, now: datetime) -> bytes:
        del now
        return as_icalendar(record.plan, record.protocol, self._site.practice.clinic.language)

    def _fhir(self, record: WholeRecord, now: datetime) -> bytes:
        clinic = self._site.practice.clinic
        made = bundle(record, now, self._site.practice.words, clinic.language, clinic.name)
        return json.dumps(made, ensure_ascii=False, indent=1).encode()
