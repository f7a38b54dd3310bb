"""What was told and what it is taken for: log, observations, who was heard."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from bot.model.chart import WoundCheck
from bot.model.chat import Media
from bot.model.ids import LineId, ObservationId, PatientId, PersonId, PictureId, SourceId
from bot.model.observation import Observation


@dataclass(frozen=True, slots=True)
class Entry:
    """One line of the log. ``author`` is a person, ``bot`` or ``rule``."""

    kind: str
    author: str
    text: str
    patient: PatientId | None = None
    data: dict[str, Any] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Note:
    """An observation to keep: ``source`` names the message or button it came from."""

    patient: PatientId
    observation: Observation
    day: int
    source: SourceId
    author: str
    person: PersonId | None = None
    at: datetime | None = None


@dataclass(frozen=True, slots=True)
class Retract:
    """Observations of ``source`` stand no longer (``corrected`` or ``undone``)."""

    patient: PatientId
    source: SourceId
    state: str


@dataclass(frozen=True, slots=True)
class Correct:
    """One observation stands no longer: a clinician read its words otherwise."""

    patient: PatientId
    observation: ObservationId


@dataclass(frozen=True, slots=True)
class Heard:
    """Someone at home has been heard of about this patient."""

    patient: PatientId


@dataclass(frozen=True, slots=True)
class KeepMedia:
    """A picture or film to fetch and to keep; one that is there already is kept once.
    ``line`` is the line of a prompt that asked for it."""

    patient: PatientId
    media: Media
    source: SourceId
    day: int
    person: PersonId
    caption: str = ""
    line: LineId | None = None


@dataclass(frozen=True, slots=True)
class RetakeAsked:
    """Another picture was asked for in place of this one."""

    picture: PictureId


@dataclass(frozen=True, slots=True)
class WoundPut:
    """How the wound healed: asked, half answered, or told."""

    patient: PatientId
    check: WoundCheck
