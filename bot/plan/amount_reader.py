"""The words of an amount, read into figures: one and a half, 1½, una tableta y media."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from typing import Final

from bot.model.quantity import as_fraction
from bot.model.text import Lang

from .amount_words import (
    AND,
    CHEWABLE,
    GLYPHS,
    NO_AMOUNT_AFTER,
    NO_AMOUNT_BEFORE,
    OF,
    ONE,
    PARTS,
    TO,
    UNITS,
    UP_TO,
    WHOLE,
    Measure,
)

_STRENGTH: Final = re.compile(
    r"\d[\d.,]*\s*(?:mg|mcg|ug|g)\s*(?:/|per\s|por\s)\s*(?:\d[\d.,]*\s*)?(?:ml|kg|lb)\b"
)
"""50 mg/ml and 2 mg/kg are no dose."""
_TOKEN: Final = re.compile(
    r"(?P<number>(?:\d+(?:\s+|\s*-\s*|\s+(?:y|and)\s+))?\d+\s*/\s*\d+|\d+(?:[.,]\d+)*|[.,]\d+)"
    r"|[a-z]+(?:'[a-z]+)?|\S"
)
_REACH: Final = 4
"""Words that may stand between a number and what it counts: two of the small tablets."""


@dataclass(frozen=True, slots=True)
class Said:
    """What an amount says: each number with what it counts. ``loose`` are numbers of which
    that is not plain, ``ranges`` what leaves the choice open ("1-2 tablets")."""

    measured: frozenset[tuple[Measure, Fraction]]
    loose: frozenset[Fraction]
    ranges: tuple[str, ...]

    def of(self, measure: Measure) -> frozenset[Fraction]:
        """The numbers told of one measure."""
        return frozenset(number for kind, number in self.measured if kind == measure)

    @property
    def measures(self) -> frozenset[Measure]:
        """What it speaks of."""
        return frozenset(kind for kind, _ in self.measured)


def said(words: str, lang: Lang) -> Said:
    """What ``words`` say in figures; nothing where they hold no number that is understood."""
    return _Reader(words, lang).read()


@dataclass(slots=True)
class _Number:
    value: Fraction
    start: int
    end: int  # the token behind it
    used: bool = False


class _Reader:
    """Goes through the words once; each unit takes the number that belongs to it."""

    def __init__(self, words: str, lang: Lang) -> None:
        self.lang = lang
        plain = _STRENGTH.sub(" ", _plain(words))
        self.tokens = [match[0] for match in _TOKEN.finditer(plain)]
        self.numbers: list[_Number] = []
        self.measured: set[tuple[Measure, Fraction]] = set()

    def read(self) -> Said:
        place = 0
        while place < len(self.tokens):
            number = self._number(place)
            if number is not None:
                self.numbers.append(_Number(number[0], place, number[1]))
                place = number[1]
            elif self._at(place) in UNITS:
                place = self._unit(place)
            else:
                place += 1
        loose = {one.value for one in self.numbers if not one.used and self._may_be_one(one)}
        loose -= {number for _, number in self.measured}  # two (2) tablets
        return Said(frozenset(self.measured), frozenset(loose), tuple(self._ranges()))

    # -- numbers -------------------------------------------------------------------

    def _number(self, place: int) -> tuple[Fraction, int] | None:
        """A number that begins here, and the place behind it: one and a half, 1 1/2."""
        part = self._part(place)
        if part is not None:
            return part
        whole = self._whole(place)
        if whole is None:
            return None
        value, end = whole
        if self._at(end) in AND:
            more = self._part(end + 1)
            if more is not None and more[0] < 1 and value.denominator == 1:
                return value + more[0], more[1]
        return value, end

    def _part(self, place: int) -> tuple[Fraction, int] | None:
        """Half, half a, a quarter of a, three quarters, la mitad de una, 1/2."""
        word = self._at(place)
        if "/" in word and len(word) > 1:
            value = _written(word)
            return None if value is None else (value, self._of_one(place + 1))
        times = Fraction(1)
        if word in ONE[self.lang] or (word in WHOLE[self.lang] and WHOLE[self.lang][word] < 8):
            times = Fraction(WHOLE[self.lang].get(word, 1))
            place += 1
        elif word.isdecimal() and len(word) == 1:
            times, place = Fraction(int(word)), place + 1
        part = PARTS[self.lang].get(self._at(place))
        return None if part is None else (times * part, self._of_one(place + 1))

    def _of_one(self, place: int) -> int:
        """Behind "of a", "a", "de una": half of one tablet is half."""
        after = place + (self._at(place) in OF)
        return after + (self._at(after) in ONE[self.lang])

    def _whole(self, place: int) -> tuple[Fraction, int] | None:
        word = self._at(place)
        if word[:1].isdecimal() or (word[:1] in ".," and word[1:2].isdecimal()):
            figures = _written(word)
            return None if figures is None else (figures, place + 1)
        table = WHOLE[self.lang]
        if word in ("a", "an", "un") and self._at(place + 1) in (
            "couple", "pair", "dozen", "hundred", "par",
        ):  # fmt: skip
            place, word = place + 1, self._at(place + 1)
        elif word == "una" and self._at(place + 1) == "docena":
            place, word = place + 1, "docena"
        if word not in table:
            return None
        value = table[word]
        place += 1
        if self._at(place) == "hundred" and value < 10:
            value, place = value * 100, place + 1
        while value >= 20 and value % 10 == 0:  # thirty-five, one hundred and fifty, treinta y dos
            after = place + (self._at(place) in ("and", "y", "-"))
            more = table.get(self._at(after), 0)
            if not 0 < more < (100 if value % 100 == 0 else 10):
                break
            value, place = value + more, after + 1
        return Fraction(value), place

    # -- units ---------------------------------------------------------------------

    def _unit(self, place: int) -> int:
        """The unit here takes its number; the place behind them, "and a half" included."""
        measure, times = UNITS[self.tokens[place]]
        counts = measure in ("solid", "drop")
        number = self._before(place, _REACH if counts else 0)
        after = place + 1
        while self._at(after) in CHEWABLE:
            after += 1
        more = self._part(after + 1) if self._at(after) in AND and counts else None
        if more is not None and self._at(more[1]) in NO_AMOUNT_AFTER:
            more = None  # one tablet and half an hour later
        value: Fraction | None = None
        if number is not None:
            number.used = True
            value = number.value * times
        elif self.lang == "en" and self._at(place - 1) in ("a", "an"):
            value = Fraction(1)
        if more is not None and more[0] < 1 and (value is None or value.denominator == 1):
            value, after = (value or Fraction(1)) + more[0], more[1]
        if value is not None:
            self.measured.add((measure, value))
        return after

    def _before(self, place: int, reach: int) -> _Number | None:
        """The number that this unit counts: the last one still free, not too far before."""
        for number in reversed(self.numbers):
            if number.used:
                continue
            between = self.tokens[number.end : place]
            if any(word in ".;" for word in between) or not self._may_be_one(number):
                return None
            words = [word for word in between if word.isalpha() and word not in UNITS]
            return number if len(words) <= reach else None
        return None

    def _may_be_one(self, number: _Number) -> bool:
        """Whether it may be an amount at all: not 12 hours, 3 times, at 8."""
        if self._at(number.end) in NO_AMOUNT_AFTER:
            return False
        return self._at(number.start - 1) not in NO_AMOUNT_BEFORE

    def _ranges(self) -> Iterator[str]:
        for place, number in enumerate(self.numbers):
            if not number.used:
                continue
            start = next(
                (number.start - len(words) for words in UP_TO
                 if tuple(self.tokens[max(number.start - len(words), 0) : number.start]) == words),
                None,
            )  # fmt: skip
            before = self.numbers[place - 1] if place else number
            gap = self.tokens[before.end : number.start]
            if len(gap) == 1 and (
                gap[0] in TO[self.lang]
                or (gap[0] in AND and self._at(before.start - 1) in ("between", "entre"))
            ):
                start = before.start
            if start is not None:
                yield " ".join(self.tokens[start : number.end])

    def _at(self, place: int) -> str:
        return self.tokens[place] if 0 <= place < len(self.tokens) else ""


def _plain(words: str) -> str:
    """Lower case, no accents, fractions spelt out, one kind of dash."""
    plain = words.replace("⁄", "/").replace("µ", "u").replace("μ", "u")
    for glyph, spelt in GLYPHS.items():
        plain = plain.replace(glyph, f" {spelt} ")
    plain = unicodedata.normalize("NFKD", plain.casefold())
    plain = "".join(letter for letter in plain if not unicodedata.combining(letter))
    return re.sub("[\u2010-\u2015]", "-", plain)


def _written(number: str) -> Fraction | None:
    """1.5, 1,5, 1,000, 1/2 and 1 1/2 as people mean them; None for what is no number."""
    if "/" in number:
        parts = re.findall(r"\d+", number)
        below = int(parts[-1])
        if not below:
            return None
        whole = int(parts[0]) if len(parts) == 3 else 0
        return as_fraction(whole + int(parts[-2]) / below)
    plain = re.sub(r"(?<=[1-9]),(?=\d{3}(?:\D|$))", "", number).replace(",", ".").strip(".")
    if plain.count(".") > 1:
        return None
    return Fraction(plain if not number.startswith((".", ",")) else f"0.{plain}")
