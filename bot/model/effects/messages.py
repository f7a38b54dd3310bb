"""What is said and what is open in a chat."""

from __future__ import annotations

from dataclasses import dataclass

from bot.model.chart import Line
from bot.model.chat import Outgoing
from bot.model.conversation import Question
from bot.model.ids import PatientId, PersonId
from bot.model.purpose import Purpose


@dataclass(frozen=True, slots=True)
class Ask:
    """A question is open in a chat from now on; one with the same key is replaced."""

    chat: int
    question: Question


@dataclass(frozen=True, slots=True)
class Settle:
    """A question of a chat is over."""

    chat: int
    key: str


@dataclass(frozen=True, slots=True)
class Tell:
    """A message to someone at home, before the gate: what it is for, about which lines.

    ``event`` handling ends with the gate, which makes a ``Say`` of it or keeps it back.
    """

    patient: PatientId | None
    person: PersonId
    purpose: Purpose
    message: Outgoing
    lines: tuple[Line, ...] = ()


@dataclass(frozen=True, slots=True)
class Say:
    """A message for the outbox."""

    message: Outgoing
