"""What every PDF of ours shares: letters, paragraphs, the foot of a page.

Standard fonts (Helvetica) need no embedding. What they lack comes from the free Vera
fonts that ship with reportlab, and what those lack is named: [THUMBS UP SIGN].
"""

from __future__ import annotations

import unicodedata
from collections.abc import Callable
from functools import cache
from io import BytesIO
from itertools import groupby
from typing import Any, Final, Literal
from xml.sax.saxutils import escape

from reportlab.lib.colors import Color, black
from reportlab.lib.pagesizes import A4, LETTER
from reportlab.lib.styles import ParagraphStyle
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas
from reportlab.platypus import BaseDocTemplate, Paragraph

from bot.model.text import Lang

from .labels import label

Paper = Literal["letter", "a4"]
SIZES: Final = {"letter": LETTER, "a4": A4}
MARGIN: Final = 40.0
NORMAL, BOLD = "Helvetica", "Helvetica-Bold"
GREY: Final = Color(0.35, 0.35, 0.35)
PALE: Final = Color(0.93, 0.93, 0.93)
RULE: Final = Color(0.6, 0.6, 0.6)
_MORE: Final = "Vera"
_SAID: Final = {"→": "->", "←": "<-", "✓": "[x]", "✔": "[x]", "▪": "-", "⅓": "1/3", "⅔": "2/3"}


@cache
def _more_letters() -> frozenset[int]:
    font = TTFont(_MORE, "Vera.ttf")
    pdfmetrics.registerFont(font)
    pdfmetrics.registerFontFamily(_MORE, normal=_MORE, bold=_MORE, italic=_MORE, boldItalic=_MORE)
    return frozenset(font.face.charWidths)


def _font_of(letter: str) -> str:
    """The font that has this letter: "" for the standard one, "?" for none."""
    if letter in "\n\t":
        return ""
    try:
        letter.encode("cp1252")
    except UnicodeEncodeError:
        return _MORE if ord(letter) in _more_letters() else "?"
    return "" if letter >= " " else "?"


def _named(letter: str) -> str:
    """A letter that no font has: without its marks where that is readable, else its name."""
    if letter in _SAID:
        return _SAID[letter]
    if unicodedata.category(letter) in ("Mn", "Cf", "Cc", "Cs") or letter == "\ufe0f":
        return ""
    plain = unicodedata.normalize("NFKD", letter).encode("ascii", "ignore").decode()
    if plain.strip():
        return plain
    return f"[{unicodedata.name(letter, f'U+{ord(letter):04X}')}]"


def plain(text: str) -> str:
    """Text that the standard fonts can draw, for titles and the foot of a page."""
    return "".join(letter if _font_of(letter) == "" else _named(letter) for letter in text)


def marked(text: str) -> str:
    """Text as reportlab's paragraph markup: nothing in it can be taken for a tag."""
    text = unicodedata.normalize("NFC", text)
    parts = []
    for font, letters in groupby(text, _font_of):
        run = "".join(letters)
        if font == "?":
            parts.append(escape("".join(map(_named, run))))
        elif font:
            parts.append(f'<font name="{font}">{escape(run)}</font>')
        else:
            parts.append(escape(run))
    return "".join(parts).replace("\n", "<br/>")


@cache
def style(size: float, *, bold: bool = False, grey: bool = False, after: float = 0) -> Any:
    """A paragraph style: Helvetica of ``size`` points."""
    return ParagraphStyle(
        f"s{size}{bold}{grey}{after}",
        fontName=BOLD if bold else NORMAL,
        fontSize=size,
        leading=size * 1.2,
        textColor=GREY if grey else black,
        spaceAfter=after,
        splitLongWords=1,
    )


def words(text: str, size: float, *, bold: bool = False, grey: bool = False) -> Paragraph:
    """A paragraph of plain text."""
    return Paragraph(marked(text), style(size, bold=bold, grey=grey))


def template_for(
    out: BytesIO, size: tuple[float, float], title: str, author: str = ""
) -> BaseDocTemplate:
    """A document with its properties; ``size`` in points."""
    return BaseDocTemplate(
        out, pagesize=size, title=plain(title), author=plain(author), creator="slowleash"
    )


def canvas_for(foot: str, lang: Lang, wide: float) -> Callable[..., Canvas]:
    """A canvas that writes ``foot`` and "page 2 of 9" on each page; the same content gives
    the same bytes. ``wide`` is the paper, in points."""

    class Numbered(Canvas):
        def __init__(self, *args: Any, **options: Any) -> None:
            options.update(invariant=1, lang=lang)
            super().__init__(*args, **options)
            self._pages: list[dict[str, Any]] = []

        def showPage(self) -> None:
            self._pages.append(dict(self.__dict__))
            self._startPage()  # type: ignore[attr-defined]  # the library's own recipe

        def save(self) -> None:
            for number, page in enumerate(self._pages, 1):
                self.__dict__.update(page)
                self._foot(number, len(self._pages))
                super().showPage()
            super().save()

        def _foot(self, number: int, of: int) -> None:
            self.setFont(NORMAL, 6.5)
            self.setFillColor(GREY)
            self.drawString(MARGIN, 24, plain(foot))
            self.drawRightString(wide - MARGIN, 24, label("page", lang, n=number, of=of))

    return Numbered


def document(build: Callable[[BytesIO], None]) -> bytes:
    """The bytes that ``build`` writes."""
    out = BytesIO()
    build(out)
    return out.getvalue()
