"""What a message that was sent is about, so that a reply to it finds its way."""

from __future__ import annotations

from dataclasses import dataclass
from typing import ClassVar

from .coding import Coding
from .ids import CaseId, PatientId, PromptId


@dataclass(frozen=True, slots=True)
class AboutCase:
    """A case: an answer to it goes to the owner, or to staff."""

    code: ClassVar[str] = "case"
    case: CaseId


@dataclass(frozen=True, slots=True)
class AboutPatient:
    """A patient, and nothing more."""

    code: ClassVar[str] = "patient"
    patient: PatientId


@dataclass(frozen=True, slots=True)
class AboutPrompt:
    """A prompt that was sent."""

    code: ClassVar[str] = "prompt"
    prompt: PromptId
    patient: PatientId


@dataclass(frozen=True, slots=True)
class AboutUnclear:
    """The question what was meant."""

    code: ClassVar[str] = "unclear"
    patient: PatientId


@dataclass(frozen=True, slots=True)
class AboutWound:
    """The question how the wound healed."""

    code: ClassVar[str] = "wound"
    day: int
    patient: PatientId


@dataclass(frozen=True, slots=True)
class AboutChange:
    """The question why a plan is to be changed. ``key`` is empty where the message itself
    tells which."""

    code: ClassVar[str] = "reason"
    patient: PatientId
    key: str


@dataclass(frozen=True, slots=True)
class AboutQuestion:
    """A question that is open in the chat, by its key: the reply answers this one."""

    code: ClassVar[str] = "question"
    patient: PatientId
    key: str


@dataclass(frozen=True, slots=True)
class AboutWords:
    """Words of staff to a household, in a case: an answer to them goes to staff."""

    code: ClassVar[str] = "words"
    patient: PatientId
    case: CaseId


Topic = (
    AboutCase
    | AboutPatient
    | AboutPrompt
    | AboutUnclear
    | AboutWound
    | AboutChange
    | AboutQuestion
    | AboutWords
)
TOPICS: Coding[Topic] = Coding(
    (
        AboutCase,
        AboutPatient,
        AboutPrompt,
        AboutUnclear,
        AboutWound,
        AboutChange,
        AboutQuestion,
        AboutWords,
    ),
    ":",
)


def patient_of(topic: Topic | None) -> PatientId | None:
    """The patient that a topic names itself."""
    match topic:
        case (
            AboutPatient(patient=patient)
            | AboutPrompt(patient=patient)
            | AboutUnclear(patient=patient)
            | AboutWound(patient=patient)
            | AboutChange(patient=patient)
            | AboutQuestion(patient=patient)
            | AboutWords(patient=patient)
        ):
            return patient
        case _:
            return None
