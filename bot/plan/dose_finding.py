"""One thing in an order that differs from the medicines table, in words for both languages."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from bot.model.plan import Plan
from bot.model.quantity import figure
from bot.model.text import LANGS, Text

from .medicine_words import (
    BOTH,
    BY_WITH_DOSES,
    CONFIRM,
    CONFIRMED,
    MEND,
    NONE_STATED,
    NOTES,
    PRACTICE,
    SPECIES,
    STATED,
    WHAT,
    FindingKind,
)


@dataclass(frozen=True, slots=True)
class Stated:
    """What the table states for one dose of this patient; ``printed`` as its source has it."""

    low_mg: float | None
    high_mg: float
    printed: str
    every_hours: int
    source: Text

    def words(self) -> Text:
        """As the log has it."""
        high, low = milligrams(self.high_mg), self.low_mg
        near = low is None or milligrams(low) == high
        told = high if near else f"{milligrams(low or 0).removesuffix(' mg')}–{high}"
        fields = {"range": told, "printed": self.printed, "every": self.every_hours}
        return STATED.fill(
            {**fields, "source": self.source.en}, {**fields, "source": self.source.es}
        )


@dataclass(frozen=True, slots=True)
class Ordered:
    """One dose as it is ordered; ``amount`` in the order's own words where it says no mg."""

    mg: float | None
    amount: Text
    every_hours: int


@dataclass(frozen=True, slots=True)
class DoseFinding:
    """One thing about a medicine that differs from the table, or was not checked.

    ``place`` is the medicine's number in the plan (from 0) and ``field`` the key that it
    is about. ``what`` names the figure and its source. ``asks``: the clinician should
    confirm or change it; ``confirmed`` when that was done. Both doses go with it into the
    log: ``ordered``, and ``stated`` by the table, None where it states none.
    """

    medicine: str
    place: int
    field: str
    kind: FindingKind
    what: Text
    mend: Text
    source: str
    confirmed: bool
    ordered: Ordered
    stated: Stated | None

    def both(self) -> Text:
        """Both doses in one line, for whoever confirms it and for the log."""
        stated = self.stated.words() if self.stated is not None else NONE_STATED
        mg = self.ordered.mg
        english, spanish = (
            {
                "name": self.medicine,
                "ordered": milligrams(mg) if mg is not None else amount,
                "every": self.ordered.every_hours,
                "stated": told,
            }
            for amount, told in (
                (self.ordered.amount.en, stated.en),
                (self.ordered.amount.es, stated.es),
            )
        )
        return BOTH.fill(english, spanish)

    def data(self) -> dict[str, object]:
        """The same in figures, for the log's data."""
        stated = self.stated
        return {
            "medicine": self.medicine,
            "kind": self.kind,
            "ordered_mg": self.ordered.mg,
            "every_hours": self.ordered.every_hours,
            "stated_low_mg": stated.low_mg if stated is not None else None,
            "stated_high_mg": stated.high_mg if stated is not None else None,
            "stated_every_hours": stated.every_hours if stated is not None else None,
            "printed": stated.printed if stated is not None else None,
            "source": self.source,
        }

    @property
    def asks(self) -> bool:
        """Whether it waits for a clinician's word, unless it has one."""
        return self.kind not in NOTES


def finding(
    plan: Plan,
    place: int,
    kind: FindingKind,
    field: str,
    source: Text | None,
    against: Stated | None = None,
    **values: object,
) -> DoseFinding:
    """The finding in words; ``values`` fill its template, each ``Text`` in its language."""
    medicine = plan.medicines[place]
    values = {"species": SPECIES[plan.species], **values, "name": medicine.name}
    values["source"] = source or PRACTICE
    english = {key: v.en if isinstance(v, Text) else v for key, v in values.items()}
    spanish = {key: v.es if isinstance(v, Text) else v for key, v in values.items()}
    mend = MEND.get(kind, CONFIRM).fill(english, spanish)
    by = medicine.confirmed_by
    if by is not None and kind not in NOTES:
        mend = CONFIRMED.fill({"by": by}, {"by": by})
    what = WHAT[kind].fill(english, spanish)
    cited = source.en if source is not None else ""
    ordered = Ordered(medicine.dose_mg, medicine.amount, medicine.every_hours)
    confirmed = by is not None
    return DoseFinding(
        medicine.name, place, field, kind, what, mend, cited, confirmed, ordered, against
    )


def confirmed_text(found: Sequence[DoseFinding], by: str) -> Text:
    """One text for the log: who confirmed what, each with both doses."""
    lines = [one.both() for one in found]
    english, spanish = ("; ".join(line.say(lang) for line in lines) for lang in LANGS)
    return BY_WITH_DOSES.fill({"by": by, "doses": english}, {"by": by, "doses": spanish})


def milligrams(value: float) -> str:
    """As people write them: at most four digits, or whole thousands."""
    return f"{value:.4g} mg" if value < 1000 else f"{figure(round(value))} mg"
