"""The summary as one page of PDF."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from io import BytesIO
from typing import Any

from reportlab.graphics.shapes import Circle, Drawing, Line, Polygon, PolyLine, String
from reportlab.lib.colors import black, white
from reportlab.platypus import Flowable, Frame, KeepInFrame, PageTemplate, Spacer
from reportlab.platypus.tables import Table as Grid

from .labels import label
from .paper import (
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
from .summary import Strip, Summary, Table

SMALL, BODY, HEAD = 7.0, 8.0, 9.0
FOOT = 34.0
"""Points at the bottom that belong to the foot of the page."""


def as_pdf(page: Summary, paper: Paper = "letter") -> bytes:
    """The page; what would not fit is set smaller, never cut. The same summary gives the
    same bytes."""
    return document(partial(_build, page, paper))


def _build(page: Summary, paper: Paper, out: BytesIO) -> None:
    width, height = SIZES[paper]
    inner = width - 2 * MARGIN
    frame = Frame(MARGIN, FOOT, inner, height - FOOT - MARGIN / 1.4, 0, 0, 0, 0, id="page")
    title = f"{page.title}: {page.patient}"
    template = template_for(out, (width, height), title, page.practice)
    template.addPageTemplates(PageTemplate(id="one", frames=[frame]))
    body = KeepInFrame(
        inner, height - FOOT - MARGIN / 1.4, _parts(page, inner), mode="shrink", hAlign="LEFT"
    )
    template.build([body], canvasmaker=canvas_for(page.practice, page.lang, width))


def _parts(page: Summary, width: float) -> list[Flowable]:
    parts: list[Flowable] = [
        words(" · ".join(filter(None, (page.title, page.practice))), HEAD, grey=True),
        words(page.patient, 17, bold=True),
        Spacer(1, 5),
        _facts(page, width),
        Spacer(1, 6),
    ]
    left = width * 0.56
    right = width - left
    beside = [*_milestones(page, right)]
    if page.sessions.rows:
        narrow = (0.46, 0.2, 0.17, 0.17)
        beside += [Spacer(1, 8), _head(page.sessions.title), _grid(page.sessions, right, narrow)]
    parts.append(_beside(_told(page, left - 14), beside, left, width))
    parts.append(Spacer(1, 5))
    for strip in page.strips:
        parts.append(_strip(strip, page, width))
    if page.medicines.rows:
        share = (0.27, 0.30, 0.11, 0.09, 0.09, 0.14)
        parts += [_head(page.medicines.title), _grid(page.medicines, width, share), Spacer(1, 6)]
    if page.changes.rows:
        parts += [_head(page.changes.title), _grid(page.changes, width, (0.2, 0.16, 0.64))]
        if page.more_changes:
            parts.append(words(page.more_changes, SMALL, grey=True))
        parts.append(Spacer(1, 6))
    parts.append(_head(page.cases.title))
    if page.cases.rows:
        parts.append(_grid(page.cases, width, (0.16, 0.48, 0.36)))
    else:
        parts.append(words(label("no_cases", page.lang), BODY))
    if page.more_cases:
        parts.append(words(page.more_cases, SMALL, grey=True))
    parts += [
        Spacer(1, 6),
        words(f"{label('gaps', page.lang)}: {page.gaps}", BODY),
        Spacer(1, 4),
        words(page.caution, SMALL, bold=True),
        words(page.seal, 6.5, grey=True),
    ]
    return parts


def _head(text: str) -> Flowable:
    return words(text, HEAD, bold=True)


def _facts(page: Summary, width: float) -> Flowable:
    """Label and value, two pairs in a row."""
    cells = [(words(name, SMALL, grey=True), words(value, BODY)) for name, value in page.facts]
    rows: list[list[Any]] = []
    for number in range(0, len(cells), 2):
        pair = cells[number : number + 2]
        row: list[Any] = [part for cell in pair for part in cell]
        rows.append(row + [""] * (4 - len(row)))
    grid = Grid(rows, [width * part for part in (0.12, 0.42, 0.13, 0.33)], hAlign="LEFT")
    grid.setStyle(
        [*_TIGHT, ("LINEABOVE", (0, 0), (-1, 0), 1, black),
         ("LINEBELOW", (0, -1), (-1, -1), 1, black)]
    )  # fmt: skip
    return grid


_TIGHT: list[Any] = [
    ("VALIGN", (0, 0), (-1, -1), "TOP"),
    ("LEFTPADDING", (0, 0), (-1, -1), 0),
    ("RIGHTPADDING", (0, 0), (-1, -1), 5),
    ("TOPPADDING", (0, 0), (-1, -1), 1.2),
    ("BOTTOMPADDING", (0, 0), (-1, -1), 1.6),
]


def _grid(table: Table, width: float, share: Sequence[float]) -> Flowable:
    rows: list[list[Any]] = [[words(name, SMALL, grey=True) for name in table.columns]]
    rows += [
        [_cell(cell, bold=number == 0 and len(share) == 6) for number, cell in enumerate(row)]
        for row in table.rows
    ]
    grid = Grid(rows, [width * part for part in share], hAlign="LEFT")
    grid.setStyle([*_TIGHT, ("LINEBELOW", (0, 0), (-1, -1), 0.3, RULE)])
    return grid


def _cell(text: str, bold: bool) -> list[Flowable]:
    """Words of a table; of two lines the first stands out."""
    first, _, rest = text.partition("\n")
    return [words(first, BODY, bold=bold or bool(rest)), *([words(rest, BODY)] if rest else [])]


def _told(page: Summary, width: float) -> list[Flowable]:
    return [_head(page.told.title), _grid(page.told, width, (0.27, 0.39, 0.34))]


def _milestones(page: Summary, width: float) -> list[Flowable]:
    rows = [[words(name, BODY), words(value, BODY, bold=True)] for name, value in page.milestones]
    grid = Grid(rows, [width * 0.55, width * 0.45], hAlign="LEFT")
    grid.setStyle([*_TIGHT, ("LINEBELOW", (0, 0), (-1, -1), 0.3, RULE)])
    return [_head(label("milestones", page.lang)), grid]


def _beside(left: list[Flowable], right: list[Flowable], at: float, width: float) -> Flowable:
    grid = Grid([[left, right]], [at, width - at], hAlign="LEFT")
    grid.setStyle([*_TIGHT, ("RIGHTPADDING", (0, 0), (-1, -1), 0)])
    return grid


def _strip(strip: Strip, page: Summary, width: float) -> Flowable:
    """A topic over the days, the best level on top; triangles are matters for staff."""
    step, top, bottom = 8.5, 13.0, 22.0
    height = top + step * (len(strip.levels) - 1) + bottom
    left = 118.0
    scale = (width - left - 8) / page.last_day
    drawing = Drawing(width, height)

    def x(day: int) -> float:
        return left + min(max(day, 0), page.last_day) * scale

    def y(level: int) -> float:
        return height - top - level * step

    drawing.add(String(0, height - 7, plain(strip.title), fontName="Helvetica-Bold", fontSize=8))
    for number, name in enumerate(strip.levels):
        drawing.add(Line(left, y(number), width - 8, y(number), strokeColor=PALE))
        drawing.add(String(left - 6, y(number) - 2.4, plain(name), fontName=NORMAL, fontSize=6.5,
                           textAnchor="end", fillColor=GREY))  # fmt: skip
    floor = y(len(strip.levels) - 1) - 9
    drawing.add(Line(left, floor, width - 8, floor, strokeColor=RULE, strokeWidth=0.5))
    every = 7 if page.last_day > 14 else 2
    for day in range(0, page.last_day + 1, every):
        drawing.add(Line(x(day), floor, x(day), floor - 2, strokeColor=RULE, strokeWidth=0.5))
        drawing.add(String(x(day), floor - 9, str(day), fontName=NORMAL, fontSize=6,
                           textAnchor="middle", fillColor=GREY))  # fmt: skip
    drawing.add(String(left - 6, floor - 9, label("chart_day", page.lang), fontName=NORMAL,
                       fontSize=6, textAnchor="end", fillColor=GREY))  # fmt: skip
    for day in sorted(set(page.case_days)):
        drawing.add(_triangle(x(day), floor))
    if page.case_days:
        drawing.add(_triangle(x(page.last_day) - 3, height - 7))
        drawing.add(String(x(page.last_day) - 9, height - 7, label("case_marks", page.lang),
                           fontName=NORMAL, fontSize=6.5, textAnchor="end"))  # fmt: skip
    line = [place for day, level in strip.points for place in (x(day), y(level))]
    if len(strip.points) > 1:
        drawing.add(PolyLine(line, strokeColor=RULE, strokeWidth=0.6))
    for day, level in strip.points:
        drawing.add(Circle(x(day), y(level), 2.1, fillColor=black, strokeColor=black))
    return drawing


def _triangle(x: float, y: float) -> Polygon:
    """A matter for staff, standing on ``y``."""
    return Polygon(
        [x - 2.5, y + 4.5, x + 2.5, y + 4.5, x, y], fillColor=white, strokeColor=black,
        strokeWidth=0.6,
    )  # fmt: skip
