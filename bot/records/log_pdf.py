"""The whole log as PDF: a day after the other, each entry with its number, time, who, what."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime
from functools import partial
from io import BytesIO
from typing import Any

from reportlab.lib.colors import black
from reportlab.platypus import BaseDocTemplate, Flowable, Frame, PageTemplate, Spacer
from reportlab.platypus.tables import LongTable

from bot.model.text import Lang
from bot.talk.record import MARKS, Record

from .labels import full_date, label
from .paper import MARGIN, PALE, RULE, SIZES, Paper, canvas_for, document, words
from .summary import seal_line
from .whole import WholeRecord

SIZE = 7.5
_WIDTHS = (0.06, 0.07, 0.14, 0.1, 0.63)
_LOUD = ("said", "staff", "case", "finding", "unclear")
"""What a reader looks for: set in black; what the bot sent and noted is grey."""


def log_pdf(record: WholeRecord, now: datetime, lang: Lang, paper: Paper = "letter") -> bytes:
    """Every entry, in order, by the household's clock; the same log gives the same bytes."""
    return document(partial(_build, record, now, lang, paper))


def _build(record: WholeRecord, now: datetime, lang: Lang, paper: Paper, out: BytesIO) -> None:
    width, height = SIZES[paper]
    inner = width - 2 * MARGIN
    frame = Frame(MARGIN, MARGIN, inner, height - 2 * MARGIN, 0, 0, 0, 0, id="page")
    template = BaseDocTemplate(out, pagesize=(width, height))
    template.addPageTemplates(PageTemplate(id="log", frames=[frame]))
    plan = record.plan
    title = f"{plan.patient}: {label('log_title', lang)}"
    foot = f"{title} · {plan.procedure} · {label('zone', lang, zone=plan.zone)}"
    parts: list[Flowable] = [
        words(label("log_title", lang), 9, grey=True),
        words(f"{plan.patient} · {plan.procedure}", 15, bold=True),
        Spacer(1, 4),
        words(label("told", lang), 7.5, bold=True),
        words(seal_line(record, now, lang), 6.5, grey=True),
        Spacer(1, 8),
        _table(record, lang, inner),
    ]
    template.build(parts, canvasmaker=canvas_for(foot, lang, title, width))


def _table(record: WholeRecord, lang: Lang, width: float) -> Flowable:
    heads = ("#", label("time", lang), label("who", lang), label("what", lang),
             label("words", lang))  # fmt: skip
    rows: list[list[Any]] = [[words(head, 6.5, grey=True) for head in heads]]
    styles: list[Any] = [
        ("VALIGN", (0, 0), (-1, -1), "TOP"),
        ("LEFTPADDING", (0, 0), (-1, -1), 2),
        ("RIGHTPADDING", (0, 0), (-1, -1), 4),
        ("TOPPADDING", (0, 0), (-1, -1), 1),
        ("BOTTOMPADDING", (0, 0), (-1, -1), 1.5),
        ("LINEBELOW", (0, 0), (-1, 0), 0.6, black),
        ("LINEBELOW", (0, 1), (-1, -1), 0.2, RULE),
    ]
    for cells, heading in _rows(record, lang):
        if heading:
            number = len(rows)
            styles += [("SPAN", (0, number), (-1, number)),
                       ("BACKGROUND", (0, number), (-1, number), PALE)]  # fmt: skip
        rows.append(cells)
    grid = LongTable(rows, [width * part for part in _WIDTHS], repeatRows=1, hAlign="LEFT")
    grid.setStyle(styles)
    return grid


def _rows(record: WholeRecord, lang: Lang) -> Iterator[tuple[list[Any], bool]]:
    shown: date | None = None
    for entry in record.log:
        local = record.local(entry.at)
        if local.date() != shown:
            shown = local.date()
            day = label("day", lang, day=(shown - record.plan.surgery).days)
            heading = f"{day} · {full_date(shown, lang)}"
            yield [words(heading, SIZE, bold=True), "", "", "", ""], True
        who, what, text = cells_of(entry)
        grey = entry.kind not in _LOUD
        yield (
            [
                words(str(entry.id), 6.5, grey=True),
                words(f"{local:%H:%M}", SIZE, grey=grey),
                words(who, SIZE, grey=grey, bold=not grey and entry.kind in ("said", "staff")),
                words(what, SIZE, grey=grey),
                words(text, SIZE, grey=grey),
            ],
            False,
        )


def cells_of(entry: Record) -> tuple[str, str, str]:
    """Who, what and the words of an entry; its reason, rule and urgency after them."""
    who = entry.author
    if entry.kind == "sent":
        who = f"{entry.author} → {entry.data.get('to', '')}"
    what = "sent" if entry.kind == "sent" else MARKS.get(entry.kind, entry.kind)
    tail = ""
    if entry.kind == "finding":
        tail = f" [{entry.data.get('urgency')}, {entry.data.get('rule')}]"
    if entry.data.get("why"):
        tail += f" ({entry.data['why']})"
    return who, what, entry.text.strip() + tail
