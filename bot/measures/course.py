"""One patient's course as the statistics need it: plain values, no words of an owner."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from bot.model.ids import CaseId
from bot.model.urgency import Urgency

from .infection import Verdict


@dataclass(frozen=True, slots=True)
class Asked:
    """One line of a prompt that has come due.

    ``kind`` is dose, session, question or picture; ``name`` the medicine of a dose, else
    the activity of the protocol; ``day`` counts from surgery; ``state`` is answered,
    unanswered, held (staff held a dose back) or open (the answer may still come);
    ``choice`` what was answered in the fixed vocabulary: given, missed, done, skipped …
    """

    kind: str
    name: str
    day: int
    state: str
    choice: str | None = None


@dataclass(frozen=True, slots=True)
class Use:
    """How the leg was used: a ``weight_bearing`` value, and the day on which it was told."""

    day: int
    value: str
    unsure: bool = False


@dataclass(frozen=True, slots=True)
class Flag:
    """A rule that matched on ``day``; ``case`` is the case that it went to, if any."""

    day: int
    rule: str
    matter: str
    urgency: Urgency
    case: CaseId | None = None


@dataclass(frozen=True, slots=True)
class Matter:
    """A case: minutes from its opening to the first acknowledgement and to the first
    answer (None: not yet, or never), and ``watched``: minutes until it was closed, or
    until now. ``outcome`` is what staff chose when they closed it."""

    id: str
    urgency: Urgency
    watched: float
    acknowledged: float | None = None
    answered: float | None = None
    closed: bool = False
    outcome: str | None = None


@dataclass(frozen=True, slots=True)
class Course:
    """``home`` is the day of going home; ``followed`` the last day on which the owner was
    heard, at most the day on which the course ended; ``wounds``: the day on which it was
    asked how the wound healed, and what the answer counts as (None: nobody answered)."""

    id: int
    species: str
    procedure: str
    surgeon: str
    surgery: date
    home: int
    followed: int
    ended: bool
    use: tuple[Use, ...] = ()
    asked: tuple[Asked, ...] = ()
    flags: tuple[Flag, ...] = ()
    matters: tuple[Matter, ...] = ()
    wounds: tuple[tuple[int, Verdict | None], ...] = ()
