"""One thing in an order that differs from the medicines table, in words for both languages."""

from __future__ import annotations

from dataclasses import dataclass

from bot.model.plan import Plan
from bot.model.text import Text

from .medicine_words import (
    BY_CLINICIAN,
    CONFIRM,
    CONFIRMED,
    MEND,
    NOTES,
    PRACTICE,
    SPECIES,
    WHAT,
    FindingKind,
)


@dataclass(frozen=True, slots=True)
class DoseFinding:
    """One thing about a medicine that differs from the table, or was not checked.

    ``place`` is the medicine's number in the plan (from 0) and ``field`` the key that it
    is about. ``what`` names the figure and its source. ``asks``: the clinician should
    confirm or change it; ``confirmed`` when that was done.
    """

    medicine: str
    place: int
    field: str
    kind: FindingKind
    what: Text
    mend: Text
    source: str
    confirmed: bool

    @property
    def asks(self) -> bool:
        """Whether it waits for a clinician's word, unless it has one."""
        return self.kind not in NOTES


def finding(
    plan: Plan, place: int, kind: FindingKind, field: str, source: Text | None, **values: object
) -> DoseFinding:
    """The finding in words; ``values`` fill its template, each ``Text`` in its language."""
    medicine = plan.medicines[place]
    values = {"species": SPECIES[plan.species], **values, "name": medicine.name}
    values["source"] = source or PRACTICE
    english = {key: v.en if isinstance(v, Text) else v for key, v in values.items()}
    spanish = {key: v.es if isinstance(v, Text) else v for key, v in values.items()}
    mend = MEND.get(kind, CONFIRM).fill(english, spanish)
    if medicine.is_confirmed and kind not in NOTES:
        who = medicine.confirmed_by
        by = Text(en=who, es=who) if who else BY_CLINICIAN
        mend = CONFIRMED.fill({"by": by.en}, {"by": by.es})
    what = WHAT[kind].fill(english, spanish)
    cited = source.en if source is not None else ""
    return DoseFinding(medicine.name, place, field, kind, what, mend, cited, medicine.is_confirmed)
