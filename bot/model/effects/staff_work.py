"""What staff work on: cases, holds, rechecks."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Any

from bot.model.chart import Chart
from bot.model.hold import Hold
from bot.model.ids import CaseId, HoldId, LineId, MemberId, PatientId
from bot.model.settings import PagingStep
from bot.model.urgency import Urgency
from bot.model.word_of_death import alive_at


@dataclass(frozen=True, slots=True)
class CaseChange:
    """A case as it is to stand after the event."""

    id: CaseId
    patient: PatientId
    matter: str
    urgency: Urgency
    state: str
    opened_at: datetime
    deadline: datetime
    pages: int
    policy: PagingStep
    body: dict[str, Any]
    by: str | None = None
    outcome: str | None = None

    @property
    def alive_at(self) -> datetime | None:
        """As of ``Case``."""
        return alive_at(self.body)


@dataclass(frozen=True, slots=True)
class Card:
    """A case for these staff chats, written when the event ends: only then is it known what
    the household was really told. ``chart`` and ``case`` are as they stood, ``first`` stands
    above, ``key`` makes each message once."""

    patient: PatientId
    chart: Chart
    case: CaseChange
    chats: tuple[int, ...]
    key: str
    first: str = ""
    quiet: bool = False


@dataclass(frozen=True, slots=True)
class CaseNote:
    """A note of staff on a case, closed or not."""

    id: CaseId
    note: str


@dataclass(frozen=True, slots=True)
class PutHold:
    """Something is held from now on, or a hold stands otherwise than before."""

    patient: PatientId
    hold: Hold


@dataclass(frozen=True, slots=True)
class EndHold:
    """A hold is over: a clinician (``member``) released it, or what it held was stopped."""

    patient: PatientId
    hold: HoldId
    member: MemberId | None
    by: str


@dataclass(frozen=True, slots=True)
class ClockIsRight:
    """An administrator says that the computer's clock shows the right time."""


@dataclass(frozen=True, slots=True)
class ReviewChange:
    """A recheck as it was shown to the clinician, with what has been decided."""

    id: int
    patient: PatientId
    line: LineId
    body: dict[str, Any]
