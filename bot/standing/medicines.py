"""Which of the plan's medicines a hold means, and which of them relieve pain."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta
from functools import lru_cache
from typing import Final

from bot.model.formulary import DrugClass, plain_name
from bot.model.plan import Medicine, Plan
from bot.plan.clock import first_zone, to_utc
from bot.plan.formulary import formulary
from bot.plan.slots import most_doses

ANTI_INFLAMMATORY: Final[frozenset[DrugClass]] = frozenset(("nsaid", "steroid"))
"""A steroid too: its harm to the gut is of the same kind (common practice)."""
PAIN_RELIEF: Final[frozenset[DrugClass]] = frozenset(
    ("nsaid", "opioid-like", "gabapentinoid", "analgesic", "nmda")
)
_LATEST: Final = timedelta(days=1)
"""A journey or a clock change may move the last dose, never by more than this."""


def is_anti_inflammatory(medicine: Medicine) -> bool:
    """By the clinician's word, or by the medicines table."""
    return medicine.kind == "anti-inflammatory" or _class_of(medicine.name) in ANTI_INFLAMMATORY


def relieves_pain(medicine: Medicine) -> bool:
    """As ``is_anti_inflammatory``; an anti-inflammatory does."""
    ordered = medicine.kind in ("anti-inflammatory", "pain relief")
    return ordered or _class_of(medicine.name) in PAIN_RELIEF


def in_course(plan: Plan, medicine: Medicine, at: datetime) -> bool:
    """Whether a dose may still be meant for ``at`` or later: not stopped, not at its end.

    In doubt it is: the end is reckoned generously.
    """
    if any(one.since <= at and one.until is None for one in medicine.withheld):
        return False
    first = to_utc(medicine.first_dose, first_zone(plan))
    span = timedelta(hours=medicine.every_hours) * most_doses(medicine)
    return at < first + span + _LATEST


def names_of_round(med: str | None, given: Sequence[str], plan: Plan, at: datetime) -> list[str]:
    """The medicines that a dose told without a clear name may have been, as the plan names
    them.

    ``med`` where it is one of the plan's; else each of those ``given`` together; else,
    when nobody knows what was given, each that is still in its course.
    """
    meant = [one.name for one in plan.medicines if med is not None and _same(one.name, med)]
    if meant:
        return meant
    together = [one.name for one in plan.medicines if any(_same(one.name, each) for each in given)]
    return together or [one.name for one in plan.medicines if in_course(plan, one, at)]


def _same(name: str, other: str) -> bool:
    return name.casefold() == other.casefold() or (
        bool(plain_name(name)) and plain_name(name) == plain_name(other)
    )


@lru_cache(maxsize=512)
def _class_of(name: str) -> DrugClass | None:
    drug = formulary().find(name)
    return None if drug is None else drug.drug_class
