"""The one gate for what leaves for a household: passed, without what is held, or withheld.

Whoever sends to a household needs a ``Passed``, and only ``gate`` makes one. Words and
buttons are written afterwards, from the lines that passed.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import InitVar, dataclass
from enum import StrEnum
from typing import Final

from bot.model.hold import Hold
from bot.model.ids import LineId, PersonId
from bot.model.plan import Item
from bot.model.purpose import Purpose

from .standing import Emergency, End, Ordinary, Over, Paused, Standing


@dataclass(frozen=True, slots=True)
class DraftLine:
    """One line that a message would hold. ``id`` is None for one that is only shown."""

    id: LineId | None
    item: Item


@dataclass(frozen=True, slots=True)
class Draft:
    """What would be sent, to whom, about which lines."""

    purpose: Purpose
    to: PersonId
    lines: tuple[DraftLine, ...] = ()


@dataclass(frozen=True, slots=True)
class KeptBack:
    """A line that must not be shown, and the holds that say so."""

    line: DraftLine
    holds: tuple[Hold, ...]


class Why(StrEnum):
    """Why a message does not leave."""

    held = "held"
    emergency = "emergency"
    paused = "paused"
    over = "over"


_KEY: Final = object()


@dataclass(frozen=True, slots=True)
class Passed:
    """May leave, with these lines and no others; ``kept_back`` is told once as held."""

    purpose: Purpose
    to: PersonId
    lines: tuple[DraftLine, ...]
    kept_back: tuple[KeptBack, ...]
    key: InitVar[object]

    def __post_init__(self, key: object) -> None:
        if key is not _KEY:
            raise TypeError("a message passes the gate, or is not sent: use gate()")


@dataclass(frozen=True, slots=True)
class Withheld:
    """Does not leave; it is logged, and what is held is told once."""

    draft: Draft
    reason: Why
    kept_back: tuple[KeptBack, ...] = ()


IN_EMERGENCY: Final = frozenset(
    (Purpose.urgent, Purpose.hold_notice, Purpose.staff_words, Purpose.admin, Purpose.farewell)
)
"""What an open emergency lets through: no advice for anything less, no list of what comes."""
WHILE_PAUSED: Final = frozenset(Purpose) - frozenset(
    (Purpose.prompt, Purpose.reminder, Purpose.question, Purpose.praise, Purpose.care_sheet)
)
WHEN_OVER: Final = frozenset((Purpose.farewell, Purpose.staff_words, Purpose.answer, Purpose.admin))
AFTER_THE_END: Final = WHEN_OVER | {
    Purpose.urgent, Purpose.advice, Purpose.question, Purpose.dose_question, Purpose.hold_notice
}  # fmt: skip
"""Who writes of a living patient after the last day is still told whom to phone, what waits
and when it waits no more; and how the wound healed is asked after the course, too."""
SAYS_ALL: Final = frozenset(
    (Purpose.hold_notice, Purpose.staff_words, Purpose.urgent, Purpose.admin, Purpose.farewell)
)
"""These name what is held, or no line of the plan: nothing is taken out of them."""
NEEDS_LINES: Final = frozenset((Purpose.prompt, Purpose.reminder, Purpose.question, Purpose.praise))
"""Without the lines that they were about, these say nothing."""


def gate(standing: Standing, draft: Draft) -> Passed | Withheld:
    """Whether ``draft`` may leave, and with which of its lines."""
    reason = _refusal(standing, draft.purpose)
    kept: tuple[KeptBack, ...] = ()
    lines = draft.lines
    if draft.purpose not in SAYS_ALL:
        kept = _kept_back(standing, lines)
        held = [one.line for one in kept]
        lines = tuple(line for line in lines if line not in held)
    if reason is not None:
        return Withheld(draft, reason, kept)
    if draft.purpose in NEEDS_LINES and draft.lines and not lines:
        return Withheld(draft, Why.held, kept)
    return Passed(draft.purpose, draft.to, lines, kept, _KEY)


def _refusal(standing: Standing, purpose: Purpose) -> Why | None:
    match standing.mode:
        case Ordinary():
            return None
        case Emergency():
            return None if purpose in IN_EMERGENCY else Why.emergency
        case Paused():
            return None if purpose in WHILE_PAUSED else Why.paused
        case Over(End.ended):
            return None if purpose in AFTER_THE_END else Why.over
        case Over():
            return None if purpose in WHEN_OVER else Why.over


def _kept_back(standing: Standing, lines: Sequence[DraftLine]) -> tuple[KeptBack, ...]:
    return tuple(KeptBack(line, holds) for line in lines if (holds := standing.holds_on(line.item)))
