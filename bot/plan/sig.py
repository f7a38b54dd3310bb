"""Orders as staff write them: ``1.5 tab PO q12h x 7d with food``, ``1 tab c/12h por 7 días``.

The shorthand is the trade's own (common practice): SID, BID, TID, QID, EOD, q8h, PRN, PO.
Nothing is guessed: a word that is not understood, said twice or open to two readings is
an error with its mend. Abbreviations that mean two things (OD, QD beside QOD) are refused
or spelt back to the owner in plain words.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction
from typing import Final

from bot.model.plan import Reason, Route
from bot.model.quantity import Form, figure, fraction_of

from .sig_words import (
    COUNTS,
    FOOD,
    LEAD,
    NUMBER,
    NUMBER_WORDS,
    PRN,
    RATES,
    REASONS,
    REFUSED,
    ROUTES,
    UNITS,
    Unit,
)


class SigError(ValueError):
    """``what`` is wrong with the line, and its ``mend``."""

    def __init__(self, what: str, mend: str) -> None:
        super().__init__(f"{what}; {mend}")
        self.what, self.mend = what, mend


@dataclass(frozen=True, slots=True)
class Sig:
    """A line of shorthand in its parts; what it does not say is None (or False).

    ``amount`` of ``unit`` at a time, every ``every_hours``, for ``days`` days or ``doses``
    doses, or until ``quantity`` units are gone.
    """

    amount: Fraction | None = None
    unit: Unit | None = None
    route: Route | None = None
    every_hours: int | None = None
    days: int | None = None
    doses: int | None = None
    quantity: Fraction | None = None
    as_needed: bool = False
    with_food: bool = False
    needed_for: Reason | None = None

    @property
    def form(self) -> Form | None:
        """What is counted or measured; milligrams tell no form."""
        if self.unit is None or self.unit == "mg":
            return None
        return "liquid" if self.unit == "ml" else self.unit

    def written(self) -> str:
        """The same in one way of writing it; ``parse_sig`` reads it back."""
        parts: list[str] = []
        if self.amount is not None and self.unit is not None:
            parts += [_fraction(self.amount), _SHORT[self.unit]]
        if self.route is not None:
            parts.append(_ROUTE_CODES[self.route])
        if self.every_hours is not None:
            parts.append(f"q{self.every_hours}h")
        if self.days is not None:
            parts.append(f"x {self.days}d")
        if self.doses is not None:
            parts.append(f"x {self.doses} doses")
        if self.quantity is not None:
            parts.append(f"until gone ({_fraction(self.quantity)})")
        parts += [_prn(self)] * self.as_needed + ["with food"] * self.with_food
        return " ".join(parts)


_SHORT: Final[dict[Unit, str]] = {
    "tablet": "tab", "chew": "chew", "capsule": "cap", "drop": "drops", "ml": "ml", "mg": "mg",
}  # fmt: skip
_ROUTE_CODES: Final[dict[Route, str]] = {
    "mouth": "PO", "gums": "OTM", "skin": "topical", "eyes": "both eyes", "injection": "SC",
}  # fmt: skip


def parse_sig(text: str) -> Sig:
    """The parts of a line of shorthand, in any order, English or Spanish, any case.

    Raises SigError for what cannot be read, is said twice, or may mean two things.
    """
    return _Reader(text).read()


class _Reader:
    """Takes one part after another out of the line; what is left over was not understood."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.left = _normal(text)
        self.found: dict[str, object] = {}

    def read(self) -> Sig:
        if len(self.text) > 200:
            raise SigError("the sig is longer than 200 characters", "write only how to give it")
        if not self.left.strip(" ,;."):
            raise SigError("the sig is empty", "write it as in 1 tab PO q12h x 7d")
        self._ranges()
        self._each(FOOD, "with_food", _always(True))
        self._as_needed()
        self._rates()
        self._course()
        for pattern, route in ROUTES:
            self._each(pattern, "route", _always(route))
        self._amount()
        return self._made()

    # -- the parts -----------------------------------------------------------------

    def _ranges(self) -> None:
        """1-2 tablets and q8-12h leave the choice to somebody else."""
        hours = re.search(r"\b(?:q|c/|every|cada) ?\d+ ?(?:-|to|a|or|o) ?\d+ ?h?", self.left)
        if hours:
            raise SigError(f"{hours[0]!r} is a range, no interval", "write one, such as q12h")
        units = "|".join(pattern for pattern, _ in UNITS)
        some = re.search(rf"(?<![\d/.,])\d+ ?(?:-|to|a|or|o) ?\d+ ?(?:{units})\b", self.left)
        if some:
            raise SigError(f"{some[0]!r} is a range, no dose", "write one amount, such as 1 tab")

    def _as_needed(self) -> None:
        """PRN, and what for. A reason with no PRN is left standing: it may be a history."""
        for reason, words in REASONS.items():
            self._each(rf"(?:{PRN}) ?(?:for |para |por )?(?:el |la )?(?:{words})", "needed_for",
                       _always(reason))  # fmt: skip
        if "needed_for" in self.found:
            self.found["as_needed"] = True
        self._each(PRN, "as_needed", _always(True))

    def _rates(self) -> None:
        each = r"(?:q\.? ?|every |cada |c/? ?)"
        self._each(rf"{each}(\d+)\.? ?(?:hours?|horas?|hrs?|hs|h)\b\.?", "every_hours", _whole(1))
        self._each(rf"{each}(\d+) ?(?:days?|dias?|d)\b", "every_hours", _whole(24))
        for pattern, every in RATES:
            self._each(pattern, "every_hours", _always(every))
        if self._each(r"once|single dose|one time|una sola vez|dosis unica", "doses", _always(1)):
            self.found.setdefault("every_hours", 24)
        wrong = re.search(r"(?<!\w)(?:q|c/)\.? ?[\w/]*", self.left)
        if wrong and "every_hours" not in self.found:
            shown = self._as_typed(wrong[0])
            number = re.search(r"\d+", shown)
            hint = f"q{number[0]}h" if number else "q12h"
            usual = {"q12h": "q12h or BID", "q24h": "q24h or SID", "q8h": "q8h or TID"}
            raise SigError(f"{shown!r} is no interval", f"write {usual.get(hint, hint)}")

    def _course(self) -> None:
        gone = r"(?:until (?:gone|finished|done)|hasta (?:terminar|acabar)(?:l[oa]s?)?)"
        self._each(rf"(?:{gone} ?\(?#? ?|# ?)({NUMBER})\)?", "quantity", lambda m: _number(m[1]))
        during = "(?:x|for|por|durante|during)"
        number = rf"(?:(?:{during} ?)?(\d+)|{during} (one|two|a|una?|dos))"
        self._each(rf"{number} ?(?:doses?|dosis|times|veces)(?! (?:a|al|por|daily))", "doses",
                   _whole(1))  # fmt: skip
        self._each(rf"{number} ?(?:days?|dias?|d)\b", "days", _whole(1))
        self._each(rf"{number} ?(?:weeks?|wks?|w|semanas?|sem)\b", "days", _whole(7))

    def _amount(self) -> None:
        for pattern, unit in UNITS:
            halves = self._each(
                rf"{LEAD}({NUMBER}) ?(?:{pattern}) (?:y medi[oa]|and a half)", "amount",
                lambda match: _number(match[1]) + Fraction(1, 2),
            )  # fmt: skip
            match = halves or self._each(
                rf"{LEAD}({NUMBER}) ?(?:{pattern})", "amount", lambda match: _number(match[1])
            )
            if match and self.found.setdefault("unit", unit) != unit:
                raise SigError("two amounts stand in the sig", "write one")

    def _made(self) -> Sig:
        left = re.sub(r"[\s,;.]+", " ", self.left).strip()
        for pattern, what, mend in REFUSED:
            match = re.search(rf"(?<!\w)(?:{pattern})(?!\w)", left)
            if match:
                raise SigError(what.format(match[0].upper()), mend)
        if left:
            raise SigError(
                f"{self._as_typed(left)!r} is not understood",
                "write it as in 1.5 tab PO q12h x 7d with food",
            )
        sig = Sig(**self.found)  # type: ignore[arg-type]
        _check(sig)
        return sig

    # -- taking parts out ----------------------------------------------------------

    def _each(
        self, pattern: str, part: str, value: Callable[[re.Match[str]], object]
    ) -> re.Match[str] | None:
        """Take ``pattern`` out of the line wherever it stands; it may say only one thing."""
        seen: re.Match[str] | None = None
        while match := re.search(rf"(?<![\w/.,])(?:{pattern})(?![\w/])", self.left):
            found = value(match)
            if self.found.setdefault(part, found) != found:
                said = f"{_SAYS[part]} {self.found[part]} and {found}"
                raise SigError(f"the sig says two things: {said}", "keep one")
            self.left = f"{self.left[: match.start()]} ; {self.left[match.end() :]}"
            seen = match
        return seen

    def _as_typed(self, part: str) -> str:
        """A part of the normal line as it stands in the original, where it can be found."""
        at = self.text.casefold().find(part.strip())
        return self.text[at : at + len(part.strip())] if at >= 0 else part.strip()


_SAYS: Final = {
    "every_hours": "an interval of hours,", "days": "days,", "doses": "doses,",
    "quantity": "until gone,", "amount": "amounts,", "route": "by", "needed_for": "for",
    "as_needed": "", "with_food": "",
}  # fmt: skip


def _always(value: object) -> Callable[[re.Match[str]], object]:
    return lambda _: value


def _whole(times: int) -> Callable[[re.Match[str]], object]:
    def number(match: re.Match[str]) -> int:
        word = next(group for group in match.groups() if group)
        return (COUNTS.get(word) or int(word)) * times

    return number


def _prn(sig: Sig) -> str:
    return f"PRN {sig.needed_for}" if sig.needed_for else "PRN"


def _check(sig: Sig) -> None:
    if sig.every_hours is not None and not 4 <= sig.every_hours <= 168:
        raise SigError(
            f"every {sig.every_hours} hours is out of reach", "write 4 to 168 hours, such as q12h"
        )
    if sig.amount == 0:
        raise SigError("the amount is nothing", "write one, such as 1 tab")
    for part in ("days", "doses", "quantity"):
        if getattr(sig, part) == 0:
            raise SigError(f"{part} is 0", "write how long, as in x 7d")
    if sum(part is not None for part in (sig.days, sig.doses, sig.quantity)) > 1:
        raise SigError("the sig says twice how long", "keep days, doses or until gone")
    if sig.quantity is not None:
        if sig.amount is None or sig.unit == "mg":
            raise SigError("until gone needs an amount to count with", "write it, as in 2 caps")
        if (sig.quantity / sig.amount).denominator != 1:
            raise SigError(
                f"{_fraction(sig.quantity)} does not make whole doses of {_fraction(sig.amount)}",
                "write the days instead, as in x 7d",
            )


def _normal(text: str) -> str:
    """Lower case, no accents, one kind of dash and times sign; halves written out."""
    plain = text.casefold()
    for glyph, spelt in (("½", " 1/2"), ("¼", " 1/4"), ("¾", " 3/4"), ("⅓", " 1/3"), ("⅔", " 2/3")):
        plain = plain.replace(glyph, spelt)
    plain = plain.translate(_LETTERS)
    return re.sub(r"\s+", " ", plain)


_LETTERS: Final = str.maketrans("áéíóúü×–—⁄", "aeiouux--/")


def _number(written: str) -> Fraction:
    words = re.sub(r"\s+", " ", written.strip())
    try:
        return fraction_of(NUMBER_WORDS.get(words, words))
    except ValueError:
        raise SigError(f"{written!r} is no amount", "write it as 1, 1.5 or 1/2") from None


def _fraction(value: Fraction) -> str:
    if value.denominator == 1:
        return str(value.numerator)
    if 10_000 % value.denominator == 0:
        return figure(float(value)) if 1000 % value.denominator == 0 else str(float(value))
    whole, part = divmod(value, 1)
    return f"{whole} {part}" if whole else str(part)
