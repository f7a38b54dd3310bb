"""Draws the page for the fridge as a PDF of one page, or as a picture of it.

Black on white: nothing is told by colour. Names, times, phones and dates are large
enough to be read from a metre (14 points and more, common practice for notices).
"""

from __future__ import annotations

import unicodedata
from collections.abc import Iterator
from io import BytesIO
from itertools import groupby
from typing import Final, Literal

import pypdfium2
from reportlab.lib.pagesizes import A4, LETTER
from reportlab.lib.utils import simpleSplit
from reportlab.pdfbase.pdfmetrics import stringWidth
from reportlab.pdfgen.canvas import Canvas

from bot.plan import fridge_words as words
from bot.plan.fridge import Fridge, Milestone, Phone, Row, Week
from bot.plan.fridge_words import day_name, month_words

Paper = Literal["letter", "a4"]
SIZES: Final = {"letter": LETTER, "a4": A4}
MARGIN = 28.0
"""Points; 10 mm, more than any household printer needs."""
NORMAL, BOLD = "Helvetica", "Helvetica-Bold"
LOWEST_ROW, TWO_LINES, HIGHEST_ROW = 8.0, 16.0, 27.0
TIME_WIDTH, LABEL_WIDTH = 44.0, 168.0
SMALL, SMALLEST = 8.5, 7.5
FLAG_COLUMNS, WEEKS_A_LINE = 3, 8
GREY = 0.93
DOTS_PER_INCH = 150


class TooMuch(ValueError):
    """More rows than one page holds."""


def as_pdf(page: Fridge, paper: Paper) -> bytes:
    """The page as PDF; the same page gives the same bytes. Raises TooMuch."""
    out = BytesIO()
    canvas = Canvas(out, pagesize=SIZES[paper], invariant=True, lang=page.lang)
    canvas.setTitle(printable(page.patient))
    canvas.setSubject(printable(page.about))
    canvas.setCreator("slowleash")
    _Sheet(canvas, *SIZES[paper]).draw(page)
    canvas.save()
    return out.getvalue()


def as_png(page: Fridge, paper: Paper) -> bytes:
    """The page as a picture, 150 dots an inch."""
    with pypdfium2.PdfDocument(as_pdf(page, paper)) as document:
        out = BytesIO()
        document[0].render(scale=DOTS_PER_INCH / 72, grayscale=True).to_pil().save(out, "PNG")
    return out.getvalue()


def printable(text: str) -> str:
    """``text`` with what the standard fonts lack written plainly: ``Łukasz`` → ``?ukasz``."""
    made = []
    for char in text:
        try:
            char.encode("cp1252")
        except UnicodeEncodeError:
            plain = unicodedata.normalize("NFKD", char).encode("ascii", "ignore").decode()
            made.append(plain or ("" if unicodedata.combining(char) else "?"))
        else:
            made.append(char)
    return "".join(made)


def fitted(text: str, font: str, size: float, width: float, lowest: float) -> tuple[str, float]:
    """Words and size that fit ``width``: smaller letters first, then fewer words."""
    text = printable(text)
    while size > lowest and stringWidth(text, font, size) > width:
        size -= 0.25
    if stringWidth(text, font, size) <= width:
        return text, size
    while text and stringWidth(f"{text}…", font, size) > width:
        text = text[:-1]
    return f"{text.rstrip(' ,;')}…", size


def _lines(rest: str) -> list[str]:
    """A row's small words: one line if they can be made to fit, else wrapped."""
    rest = printable(rest)
    if stringWidth(rest, NORMAL, SMALLEST) <= LABEL_WIDTH - 5:
        return [rest]
    return list(simpleSplit(rest, NORMAL, SMALL, LABEL_WIDTH - 5))


class _Sheet:
    """The page from top to bottom; ``y`` is how far it is drawn."""

    def __init__(self, canvas: Canvas, width: float, height: float) -> None:
        self.canvas = canvas
        self.left, self.right = MARGIN, width - MARGIN
        self.y = height - MARGIN
        self.bottom = MARGIN

    def draw(self, page: Fridge) -> None:
        self._head(page)
        self._phone_now(page)
        lines = -(-len(page.weeks) // WEEKS_A_LINE)
        below = 70 * bool(page.milestones) + 15 + 69 * lines + 24
        self._ticks(page, self.bottom + below)
        self._milestones(page.milestones)
        self._weeks(page)
        self._footer(page.footer)

    def text(
        self, x: float, y: float, words: str, size: float, *, font: str = NORMAL,
        width: float = 0, lowest: float = 6, centre: bool = False,
    ) -> None:  # fmt: skip
        words, size = fitted(words, font, size, width or self.right - x, lowest)
        self.canvas.setFont(font, size)
        (self.canvas.drawCentredString if centre else self.canvas.drawString)(x, y, words)

    def line(self, x: float, y: float, to_x: float, to_y: float, width: float = 0.5) -> None:
        self.canvas.setLineWidth(width)
        self.canvas.line(x, y, to_x, to_y)

    def box(self, x: float, y: float, width: float, height: float, line: float = 1) -> None:
        self.canvas.setLineWidth(line)
        self.canvas.roundRect(x, y, width, height, 3)

    # ---- The head ---------------------------------------------------------------------

    def _head(self, page: Fridge) -> None:
        wide = (self.right - self.left) * 0.5
        top = self.y
        x = self.right - wide
        for number, phone in enumerate(page.phones):
            self._phone(phone, x, top - 36 * number, wide)
        room = x - self.left - 14
        self.text(self.left, top - 26, page.patient, 34, font=BOLD, width=room, lowest=16)
        for number, part in enumerate(page.about.split(" · ")):
            y = top - 42 - 12 * number
            self.text(self.left, y, part, 10.5, width=room, lowest=7)
        self.y = top - 76

    def _phone(self, phone: Phone, x: float, top: float, width: float) -> None:
        self.text(x, top - 9, phone.label, 9.5, width=width)
        if phone.number:
            self.text(x, top - 29, phone.number, 21, font=BOLD, width=width, lowest=12)
        else:
            self.line(x, top - 30, x + width, top - 30, 1)

    def _phone_now(self, page: Fridge) -> None:
        width = self.right - self.left
        flags = [flag.say(page.lang) for flag in words.RED_FLAGS]
        lines = -(-len(flags) // FLAG_COLUMNS)
        height = 25 + 12 * lines
        self.box(self.left, self.y - height, width, height, 2)
        self.text(self.left + 8, self.y - 16, words.PHONE_NOW.say(page.lang), 13, font=BOLD)
        wide = (width - 10) / FLAG_COLUMNS
        for number, flag in enumerate(flags):
            column, line = divmod(number, lines)
            x, y = self.left + 8 + wide * column, self.y - 30 - 12 * line
            self.text(x, y, f"• {flag}", 10, width=wide - 6)
        self.y -= height + 8

    # ---- Two weeks of boxes -------------------------------------------------------------

    def _ticks(self, page: Fridge, floor: float) -> None:
        self._day_names(page)
        room = self.y - floor - 20
        weights = [self._weight(row) for row in page.rows]
        unit = min(HIGHEST_ROW, room / max(sum(weights), 1))
        if unit < TWO_LINES:  # then a row is one line
            unit, weights = min(TWO_LINES, room / len(weights)), [1.0] * len(weights)
        if unit < LOWEST_ROW:
            most = int(room / LOWEST_ROW)
            raise TooMuch(f"{len(page.rows)} rows of doses and packs; one page holds {most}")
        top = self.y
        heights = [unit * weight for weight in weights]
        left = iter(heights)
        for when, rows in groupby(page.rows, key=lambda row: row.when):
            self._group(page, when, [(row, next(left)) for row in rows])
        self.line(self.left, self.y, self.right, self.y, 1)
        boxed = [height for row, height in zip(page.rows, heights, strict=True) if row.days]
        low = top - sum(boxed)  # rows without boxes come last
        for column in range(len(page.days) + 1):
            self.line(self._column(page, column), low, self._column(page, column), top, 0.3)
        self.text(self.left, self.y - 11, words.DOSES.say(page.lang), 9.5, font=BOLD)
        self.y -= 20

    def _weight(self, row: Row) -> float:
        """How much of the height a row takes: two lines of small words need more."""
        return 1.4 if row.days and len(_lines(row.rest)) > 1 else 1.0

    def _column(self, page: Fridge, number: int) -> float:
        first = self.left + TIME_WIDTH + LABEL_WIDTH
        return first + (self.right - first) * number / len(page.days)

    def _day_names(self, page: Fridge) -> None:
        first, last = page.days[0][1], page.days[-1][1]
        months = dict.fromkeys(month_words(day, page.lang) for day in (first, last))
        self.text(self.left, self.y - 13, words.TWO_WEEKS.say(page.lang), 14, font=BOLD,
                  width=TIME_WIDTH + LABEL_WIDTH - 8)  # fmt: skip
        self.text(self.left, self.y - 26, " – ".join(months), 9)
        name = words.DAY.say(page.lang)
        wide = self._column(page, 1) - self._column(page, 0)
        left = self._column(page, 0) - 4 - stringWidth(name, NORMAL, 8)
        self.text(left, self.y - 33, name, 8)
        for column, (day, on) in enumerate(page.days):
            middle = (self._column(page, column) + self._column(page, column + 1)) / 2
            self.text(middle, self.y - 8, day_name(on, page.lang), 8, centre=True, width=wide)
            self.text(middle, self.y - 22, str(on.day), 13.5, font=BOLD, centre=True, width=wide)
            self.text(middle, self.y - 33, str(day), 8, centre=True, width=wide)
        self.y -= 37

    def _group(self, page: Fridge, at: str, rows: list[tuple[Row, float]]) -> None:
        self.line(self.left, self.y, self.right, self.y, 1)
        height = rows[0][1]
        size = min(14.5, height * 0.8)
        y = self.y - height / 2 - size * 0.36
        self.text(self.left, y, at, size, font=BOLD, width=TIME_WIDTH - 6)
        for number, (row, height) in enumerate(rows):
            left = self.left + TIME_WIDTH
            if number % 2:
                self.canvas.setFillGray(GREY)
                self.canvas.rect(left, self.y - height, self.right - left, height, 0, 1)
                self.canvas.setFillGray(0)
            self._label(row, left, height)
            side = min(13.0, height * 0.68)
            self.canvas.setLineWidth(0.9)
            for column, (day, _) in enumerate(page.days):
                if day in row.days:
                    middle = (self._column(page, column) + self._column(page, column + 1)) / 2
                    x, y = middle - side / 2, self.y - height / 2 - side / 2
                    self.canvas.setFillGray(1)
                    self.canvas.rect(x, y, side, side, 1, 1)
                    self.canvas.setFillGray(0)
            self.y -= height

    def _label(self, row: Row, left: float, height: float) -> None:
        width = LABEL_WIDTH - 5 if row.days else self.right - left
        middle = self.y - height / 2
        if height <= TWO_LINES or not row.rest:
            size = min(11, height * 0.72)
            y = middle - size * 0.36
            head = printable(row.head)
            taken = stringWidth(head, BOLD, size) + 4
            self.text(left, y, head, size, font=BOLD, width=width)
            if row.rest and taken < width - 20:
                self.text(left + taken, y, row.rest, size * 0.85, width=width - taken, lowest=4.5)
            return
        lines = _lines(row.rest) if row.days else [row.rest]
        two = len(lines) > 1
        scale = min(1.0, height / (30 if two else 21))
        size, small = 11 * scale, SMALL * scale
        first = middle + (5.5 if two else 1.5) * scale
        self.text(left, first, row.head, size, font=BOLD, width=width)
        second = first - 9.5 * scale
        self.text(left, second, lines[0], small, width=width, lowest=SMALLEST * scale)
        if two:
            rest = " ".join(lines[1:])
            self.text(left, second - 9 * scale, rest, small, width=width, lowest=4.5)

    # ---- Dates and weeks ------------------------------------------------------------------

    def _milestones(self, milestones: tuple[Milestone, ...]) -> None:
        if not milestones:
            return
        width = (self.right - self.left + 6) / len(milestones)
        for number, one in enumerate(milestones):
            x = self.left + width * number
            self.box(x, self.y - 62, width - 6, 62, 1.2)
            inner = width - 18
            self.text(x + 6, self.y - 16, one.head, 14.5, font=BOLD, width=inner)
            self.text(x + 6, self.y - 32, one.when, 14, width=inner, lowest=9)
            self.text(x + 6, self.y - 44, one.more, 9.5, width=inner, lowest=7)
            if one.appointment:
                self.text(x + 6, self.y - 56, one.appointment, 9.5)
                begin = x + 10 + stringWidth(one.appointment, NORMAL, 9.5)
                self.line(begin, self.y - 57, x + width - 14, self.y - 57)
        self.y -= 70

    def _weeks(self, page: Fridge) -> None:
        self.text(self.left, self.y - 10, page.weeks_head, 10, font=BOLD)
        self.y -= 15
        for start in range(0, len(page.weeks), WEEKS_A_LINE):
            line = page.weeks[start : start + WEEKS_A_LINE]
            width = (self.right - self.left + 4) / WEEKS_A_LINE
            height = 64.0
            for number, week in enumerate(line):
                x = self.left + width * number
                self.box(x, self.y - height, width - 4, height, 0.8)
                self._week(week, x + (width - 4) / 2, width - 8)
            self.y -= height + 5

    def _week(self, week: Week, middle: float, width: float) -> None:
        self.text(middle, self.y - 10, week.head, 8.5, centre=True, width=width)
        self.text(middle, self.y - 20, week.dates, 8.5, centre=True, width=width)
        if not week.minutes:
            self.canvas.rect(middle - 9, self.y - 50, 18, 18)
            return
        self.text(middle, self.y - 37, week.minutes, 16, font=BOLD, centre=True, width=width)
        self.text(middle, self.y - 47, week.outings, 8.5, centre=True, width=width)
        self.line(middle - width / 2 + 4, self.y - 60, middle + width / 2 - 4, self.y - 60)

    def _footer(self, footer: str) -> None:
        for number, line in enumerate(self._wrapped(footer, 7.5)):
            self.text(self.left, self.bottom + 10 - 9 * number, line, 7.5)

    def _wrapped(self, text: str, size: float) -> Iterator[str]:
        yield from simpleSplit(printable(text), NORMAL, size, self.right - self.left)
