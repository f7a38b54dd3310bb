"""The whole log as PDF: a day after the other, each entry with its number, time, who, what."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime
from functools import partial
from io import BytesIO
from itertools import groupby
from typing import Any, Final

from reportlab.platypus import Flowable, Frame, PageTemplate, Spacer
from reportlab.platypus.tables import Table

from bot.model.text import Lang
from bot.records.record import Record, queued_at, settled

from .labels import KINDS, full_date, label
from .orders import plan_words
from .paper import (
    BOLD,
    GREY,
    MARGIN,
    NORMAL,
    PALE,
    RULE,
    SIZES,
    Paper,
    canvas_for,
    document,
    plain,
    template_for,
    words,
)
from .summary import seal_line
from .whole import WholeRecord

SIZE = 7.5
_WIDTHS = (0.06, 0.07, 0.14, 0.1, 0.63)
_LOUD = ("said", "staff", "case", "finding", "unclear")
"""What a reader looks for: set in black; what the bot sent and noted is grey."""


def log_pdf(record: WholeRecord, now: datetime, lang: Lang, paper: Paper = "letter") -> bytes:
    """Every entry, in order, by the household's clock, words that arrived once; the same log
    gives the same bytes."""
    return document(partial(_build, record, now, lang, paper))


def _build(record: WholeRecord, now: datetime, lang: Lang, paper: Paper, out: BytesIO) -> None:
    width, height = SIZES[paper]
    inner = width - 2 * MARGIN
    frame = Frame(MARGIN, MARGIN, inner, height - 2 * MARGIN, 0, 0, 0, 0, id="page")
    plan = record.plan
    title = f"{plan.patient}: {label('log_title', lang)}"
    template = template_for(out, (width, height), title)
    template.addPageTemplates(PageTemplate(id="log", frames=[frame]))
    foot = f"{title} · {plan.procedure} · {label('zone', lang, zone=plan.zone)}"
    parts: list[Flowable] = [
        words(label("log_title", lang), 9, grey=True),
        words(f"{plan.patient} · {plan.procedure}", 15, bold=True),
        Spacer(1, 4),
        words(label("told", lang), 7.5, bold=True),
        words(seal_line(record, now, lang), 6.5, grey=True),
        Spacer(1, 8),
        *_days(record, lang, inner),
    ]
    template.build(parts, canvasmaker=canvas_for(foot, lang, width))


def _days(record: WholeRecord, lang: Lang, width: float) -> Iterator[Flowable]:
    """A table for each day, whose heading is repeated where a page ends in it. (One table
    of everything is laid out anew for each page: minutes for a long log.)"""

    def day(entry: Record) -> date:
        return record.date(entry.at)

    widths = [width * part for part in _WIDTHS]
    for on, entries in groupby(settled(record.log), day):
        number = label("day", lang, day=(on - record.plan.surgery).days)
        rows: list[list[Any]] = [[plain(f"{number} · {full_date(on, lang)}"), "", "", "", ""]]
        styles = [*_STYLE]
        for entry in entries:
            if entry.kind not in _LOUD:
                styles.append(("TEXTCOLOR", (1, len(rows)), (3, len(rows)), GREY))
            rows.append(_row(record, entry, lang))
        grid = Table(rows, widths, repeatRows=1, hAlign="LEFT")
        grid.setStyle(styles)
        yield grid
        yield Spacer(1, 6)


_STYLE: Final[list[Any]] = [
    ("VALIGN", (0, 0), (-1, -1), "TOP"),
    ("LEFTPADDING", (0, 0), (-1, -1), 2),
    ("RIGHTPADDING", (0, 0), (-1, -1), 4),
    ("TOPPADDING", (0, 0), (-1, -1), 1),
    ("BOTTOMPADDING", (0, 0), (-1, -1), 1.5),
    ("LINEBELOW", (0, 0), (-1, -1), 0.2, RULE),
    ("FONT", (0, 0), (-1, -1), NORMAL, SIZE, SIZE * 1.2),
    ("FONT", (0, 0), (-1, 0), BOLD, SIZE + 0.5),
    ("BACKGROUND", (0, 0), (-1, 0), PALE),
    ("SPAN", (0, 0), (-1, 0)),
    ("TEXTCOLOR", (0, 1), (0, -1), GREY),
]


def _row(record: WholeRecord, entry: Record, lang: Lang) -> list[Any]:
    who, what, text = cells_of(record, entry, lang)
    loud = entry.kind in _LOUD
    return [
        str(entry.id),
        f"{record.local(entry.at):%H:%M}",
        words(who, SIZE, grey=not loud, bold=entry.kind in ("said", "staff")),
        plain(what),
        words(text, SIZE, grey=not loud),
    ]


def cells_of(record: WholeRecord, entry: Record, lang: Lang) -> tuple[str, str, str]:
    """Who, what and the words of an entry; its reason, rule and urgency after them."""
    who = entry.author
    if entry.kind in ("sent", "queued"):
        who = f"{entry.author} > {entry.data.get('to', '')}"
    what = KINDS[entry.kind].say(lang) if entry.kind in KINDS else entry.kind.replace("_", " ")
    if entry.kind == "plan":
        return who, what, plan_words(record, entry, lang)
    tail = ""
    if entry.kind == "finding":
        tail = f" [{entry.data.get('urgency')}, {entry.data.get('rule')}]"
    if ready := queued_at(entry):
        tail = f" ({label('ready', lang, time=f'{record.local(ready):%H:%M}')})"
    if entry.data.get("why"):
        tail += f" ({entry.data['why']})"
    return who, what, entry.text.strip() + tail
