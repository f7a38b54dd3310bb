"""What the words of an amount say, in figures: two languages of one order are one dose.

An order may carry its amount in own words beside the figures. Owners read the words, the
medicines table the figures; where they differ somebody is given another dose than was
meant, so such an order is refused.
"""

from __future__ import annotations

from collections.abc import Iterator, Set
from dataclasses import dataclass
from fractions import Fraction
from typing import Final

from bot.model.plan import Medicine
from bot.model.quantity import figure
from bot.model.text import LANGS, Lang

from .amount_reader import Said, said
from .amount_words import Measure

_ROUNDED: Final = 0.01
"""A third of 100 mg is written as 33 or 33.3 mg."""


@dataclass(frozen=True, slots=True)
class Slip:
    """Something wrong with an amount's words; ``stops`` when the order is refused for it."""

    what: str
    mend: str
    stops: bool


def slips(medicine: Medicine) -> list[Slip]:
    """Where the two languages and the figures of one medicine are not plainly one dose."""
    told = {lang: said(medicine.amount.say(lang), lang) for lang in LANGS}
    found = [*_ranges(told), *_differ(medicine, told)]
    for lang in LANGS:
        found += _against_figures(medicine, told[lang], lang)
    return found or [*_not_compared(medicine, told)]


_LANGUAGE: Final[dict[Lang, str]] = {"en": "English", "es": "Spanish"}
_NOUN: Final[dict[Measure, str]] = {
    "solid": "tablets", "drop": "drops", "ml": "ml", "mg": "mg",
}  # fmt: skip
_COUNTED: Final[tuple[Measure, ...]] = ("solid", "drop", "ml")
_MEND: Final = "Mend one of them, or leave amount out: it is made from the figures"


def _ranges(told: dict[Lang, Said]) -> Iterator[Slip]:
    for lang, one in told.items():
        for words in one.ranges:
            what = f"`amount` says {words!r} in {_LANGUAGE[lang]}: a range is no dose"
            yield Slip(what, "Write one amount, as in two capsules (200 mg)", True)


def _differ(medicine: Medicine, told: dict[Lang, Said]) -> Iterator[Slip]:
    english, spanish = told["en"], told["es"]
    # One of them may name the strength of each tablet beside the dose.
    known = set(_figures(medicine).get("mg", [])[1:])
    for measure in sorted(english.measures & spanish.measures):
        here, there = (one.of(measure) for one in (english, spanish))
        if not _alike(here, there | known) or not _alike(there, here | known):
            what = (
                f"`amount` says {_told(here, measure)} in English, "
                f"{_told(there, measure)} in Spanish"
            )
            yield Slip(what, _MEND, True)
    counted: tuple[frozenset[Measure], ...] = tuple(
        one.measures & set(_COUNTED) for one in (english, spanish)
    )
    if all(counted) and not counted[0] & counted[1]:
        named = [" and ".join(_NOUN[kind] for kind in sorted(one)) for one in counted]
        what = f"`amount` speaks of {named[0]} in English, of {named[1]} in Spanish"
        yield Slip(what, _MEND, True)
    # A lone one is as often an article (una): it tells nothing.
    pair = english.loose - spanish.loose - {1}, spanish.loose - english.loose - {1}
    if any(pair):
        say = [
            f"{_numbers(numbers)} in {_LANGUAGE[lang]} only"
            for lang, numbers in zip(LANGS, pair, strict=True)
            if numbers
        ]
        what = f"`amount` holds {', '.join(say)}"
        yield Slip(what, "Say the same in both, with its unit, or leave amount out", True)


def _against_figures(medicine: Medicine, told: Said, lang: Lang) -> Iterator[Slip]:
    for measure, known in _figures(medicine).items():
        numbers = told.of(measure)
        odd = {each for each in numbers if not any(_same(each, one) for one in known)}
        if numbers and (odd or not any(_same(each, known[0]) for each in numbers)):
            what = (
                f"`amount` says {_told(odd or numbers, measure)} in {_LANGUAGE[lang]}, "
                f"but the figures make {_told({known[0]}, measure)}"
            )
            yield Slip(what, "Leave amount out, or mend one of them", True)


def _figures(medicine: Medicine) -> dict[Measure, list[Fraction]]:
    """What the figures say of each measure: the dose, and what else may well be named."""
    found: dict[Measure, list[Fraction]] = {}
    if medicine.counted is not None:
        found["drop" if medicine.form == "drop" else "solid"] = [medicine.counted]
    if medicine.ml is not None:
        found["ml"] = [Fraction(str(medicine.ml))]
    if medicine.dose_mg is not None:
        strength = [medicine.strength_mg] if medicine.strength_mg is not None else []
        found["mg"] = [Fraction(str(one)) for one in (medicine.dose_mg, *strength)]
    return found


def _not_compared(medicine: Medicine, told: dict[Lang, Said]) -> Iterator[Slip]:
    """Words that are not understood are never passed over in silence."""
    mend = "Check by eye that both languages say the dose, or write it in figures"
    unread = [lang for lang in LANGS if not told[lang].measured or told[lang].loose]
    for lang in unread:
        words = medicine.amount.say(lang)
        what = f"`amount` in {_LANGUAGE[lang]}, {words!r}, cannot be read as a dose: not compared"
        yield Slip(what, mend, False)
    for lang in LANGS:
        several = [kind for kind in _COUNTED if len(told[lang].of(kind)) > 1]
        for kind in several:
            what = f"`amount` says {_told(told[lang].of(kind), kind)} in {_LANGUAGE[lang]}"
            yield Slip(what, "Every dose of an order is the same: check what is meant", False)
    known = _figures(medicine).keys()
    bridged = all(told[lang].measures & known for lang in LANGS)
    if not unread and not bridged and not told["en"].measures & told["es"].measures:
        what = "`amount` tells different things in its two languages: not compared"
        yield Slip(what, mend, False)


def _same(one: Fraction, other: Fraction) -> bool:
    return one == other or abs(one - other) <= _ROUNDED * abs(other)


def _alike(numbers: Set[Fraction], others: Set[Fraction]) -> bool:
    return all(any(_same(one, other) for other in others) for one in numbers)


def _told(numbers: Set[Fraction], measure: Measure) -> str:
    noun = _NOUN[measure]
    return f"{_numbers(numbers)} {noun.removesuffix('s') if max(numbers) <= 1 else noun}"


def _numbers(numbers: Set[Fraction]) -> str:
    return " and ".join(figure(float(each)) for each in sorted(numbers))
