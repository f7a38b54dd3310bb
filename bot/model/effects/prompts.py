"""Prompts and their lines: planned, sent, answered, moved."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from bot.model.ids import LineId, PatientId, PersonId, PromptId, SourceId
from bot.model.plan import Item, Plan, Prompt


@dataclass(frozen=True, slots=True)
class Mark:
    """What became of a line of a prompt."""

    line: LineId
    state: str
    choice: str | None = None
    by: str | None = None
    at: datetime | None = None
    source: SourceId | None = None
    person: PersonId | None = None


@dataclass(frozen=True, slots=True)
class Retext:
    """The words of a line as they were sent, where they were settled only then."""

    line: LineId
    item: Item


@dataclass(frozen=True, slots=True)
class MoveLine:
    """A planned line leaves its prompt and falls due alone at another time."""

    patient: PatientId
    line: LineId
    key: str
    at: datetime
    day: int


@dataclass(frozen=True, slots=True)
class PromptSent:
    """A prompt's time has come, and it has been dealt with."""

    prompt: PromptId


@dataclass(frozen=True, slots=True)
class Reminded:
    """A prompt's reminder has been sent."""

    prompt: PromptId


@dataclass(frozen=True, slots=True)
class NewPlan:
    """A changed plan: prompts still to come are replaced, past ones stay."""

    patient: PatientId
    plan: Plan
    prompts: tuple[Prompt, ...]
