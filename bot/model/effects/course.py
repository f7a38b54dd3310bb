"""A course as a whole: begun, paused, over; and what falls due in it."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from bot.model.ids import MemberId, PatientId
from bot.model.plan import Plan, Prompt
from bot.model.protocol import Protocol

from .told import Entry


@dataclass(frozen=True, slots=True)
class NewPatient:
    """A patient to enrol, with the prompts of the whole course and the first link.

    ``log``: what its log holds from the start, whose patient it is not known yet."""

    plan: Plan
    protocol: Protocol
    prompts: tuple[Prompt, ...]
    by: str
    digest: str
    expires: datetime
    silence_at: datetime
    end_at: datetime
    wounds: tuple[tuple[int, datetime], ...] = ()  # day, when how it healed is asked
    log: tuple[Entry, ...] = ()
    member: MemberId | None = None  # of the practice, who enrols and so makes the link


@dataclass(frozen=True, slots=True)
class SetState:
    """The patient is ``active`` or ``paused`` from now on."""

    patient: PatientId
    state: str


@dataclass(frozen=True, slots=True)
class EndCourse:
    """The course is over: nothing of it falls due any more. ``died``: because of a death."""

    patient: PatientId
    died: bool = False


@dataclass(frozen=True, slots=True)
class Hush:
    """Nothing more reaches anybody about this patient, not even what waits already."""

    patient: PatientId


@dataclass(frozen=True, slots=True)
class Due:
    """Something to look at again at ``at``; a row with the same key is replaced."""

    key: str
    kind: str
    at: datetime
    patient: PatientId | None = None
    data: dict[str, Any] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class CancelDue:
    """What was to fall due under this key does not."""

    key: str
