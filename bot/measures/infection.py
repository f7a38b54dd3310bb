"""Wound infection by the owner's questionnaire, with its published definition.

Sources: Glenn et al., Vet Surg 2024;53:184 (the two conditions; sensitivity 82.6 %,
specificity 97.7 %); CDC NHSN, surgical site infection (superficial: 30 days, deep with an
implant: 90 days, day 1 being the day of surgery); Acta Vet Scand 2020,
10.1186/s13028-020-00545-z. It counts infections over many patients and diagnoses none.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final, Literal

from bot.model.healing import Healing
from bot.model.text import Text

from .proportion import Proportion
from .size import caution

SUPERFICIAL_DAYS: Final = 30
DEEP_DAYS: Final = 90
SENSITIVITY: Final = 0.826
SPECIFICITY: Final = 0.977

Verdict = Literal["none", "inconclusive", "infection"]
SIGNS: Final = (
    "opened", "antibiotics", "pus", "redness", "pain", "heat", "swelling", "discharge",
)  # fmt: skip
"""What is asked of a wound that had a problem, in this order."""


def verdict(told: Healing) -> Verdict:
    """Condition 1: any problem in healing. Condition 2: the wound opened, or antibiotics
    were given for it; and pus, or two of the five signs. Not 1: none. 1 and 2:
    infection. 1 alone: inconclusive, a person must ask."""
    if not told.problem:
        return "none"
    treated = told.opened or told.antibiotics
    infected = treated and (told.pus or told.signs >= 2)
    return "infection" if infected else "inconclusive"


def last_day(surgery: date, implant: bool) -> date:
    """The last day on which an infection counts; the day of surgery is the first."""
    return surgery + timedelta(days=(DEEP_DAYS if implant else SUPERFICIAL_DAYS) - 1)


def ask_on(surgery: date, implant: bool) -> tuple[date, ...]:
    """When the questionnaire is due: days 30 and, with an implant, 90 after surgery."""
    days = (SUPERFICIAL_DAYS, DEEP_DAYS) if implant else (SUPERFICIAL_DAYS,)
    return tuple(surgery + timedelta(days=day) for day in days)


@dataclass(frozen=True, slots=True)
class Surveillance:
    """Infections among those who answered; the inconclusive and the silent stand beside."""

    infection: Proportion
    inconclusive: int
    silent: int

    @property
    def caution(self) -> Text | None:
        """What must be said of so few answers."""
        return caution(self.infection.whole)


def surveillance(verdicts: Iterable[Verdict | None]) -> Surveillance:
    """One verdict a patient, None where the questionnaire was not answered."""
    counts = Counter(verdicts)
    answered = counts["none"] + counts["inconclusive"] + counts["infection"]
    return Surveillance(
        Proportion(counts["infection"], answered), counts["inconclusive"], counts[None]
    )
