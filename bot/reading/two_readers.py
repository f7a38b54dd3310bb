"""Two readers of one reply: the grammar, and a statistical model that may raise or ask.

The model never takes away what the grammar read, and adds no observation: where it suspects
an alarm that the grammar did not read at that level, the matter is asked.
"""

from __future__ import annotations

from dataclasses import replace

from bot.model.observation import Observation
from bot.model.reading import Context, Doubt, Reading
from bot.model.urgency import Urgency

from . import reader
from .alarms import level, level_told
from .statistical import Suspicion, shipped
from .trace import Trace

SUSPECTS = 0.7
"""From this chance of an alarm on, a reply that the grammar read as calm is asked about."""
SUSPECTS_UNREAD = 0.25
"""The same where the grammar did not understand all of it."""
SUSPECTS_EMERGENCY = 0.8
"""From this chance of an emergency on, it is asked as one."""
SURE = 0.02
"""Below this chance of an alarm, nothing is wrong for the model."""


def read(text: str, context: Context, trace: Trace | None = None) -> Reading:
    """What a reply says, and what is to be asked before it settles. Pure; never raises."""
    reading = reader.read(text, context, trace)
    if not text.strip():
        return reading
    suspicion = shipped().suspect(text, context)
    if trace:
        trace.suspicion = suspicion
    return combined(reading, suspicion, context)


def combined(reading: Reading, suspicion: Suspicion, context: Context) -> Reading:
    """The grammar's reading with the doubts of both, the most urgent first."""
    doubts = [*_own(reading, context), *_overruled(reading, suspicion, context)]
    reasons = reading.reasons
    if (suspected := _suspected(reading, suspicion, context)) is not None:
        doubts.append(suspected)
        reasons += (f"the second reader suspects {suspected.about}: {suspected.value}",)
    once = {(one.about, one.value): one for one in reversed(doubts)}
    asks = tuple(sorted(once.values(), key=lambda one: -one.urgency))
    return replace(reading, asks=asks, reasons=reasons)


def _level(one: Observation, context: Context) -> Urgency:
    return level_told(one, context.day, context.species)


def _own(reading: Reading, context: Context) -> list[Doubt]:
    """What the grammar itself read in doubt: hedged, or only a word of danger."""
    return [
        Doubt(one.about, one.value, found, alarmed=True)
        for one in reading.observations
        if one.unsure and (found := _level(one, context)) >= Urgency.same_day
    ]


def _overruled(reading: Reading, suspicion: Suspicion, context: Context) -> list[Doubt]:
    """What the grammar alarms at, where the model is sure that nothing is wrong."""
    if suspicion.urgent >= SURE:
        return []
    told = [(_level(one, context), one) for one in reading.observations]
    found = [(at, one) for at, one in told if at >= Urgency.same_day]
    if not found:
        return []
    at, one = max(found, key=lambda pair: pair[0])
    return [Doubt(one.about, one.value, at, alarmed=True)]


def _suspected(reading: Reading, suspicion: Suspicion, context: Context) -> Doubt | None:
    """What the model suspects beyond the level that the grammar read."""
    read_at = max((_level(one, context) for one in reading.observations), default=Urgency.none)
    for least, at, worst in (
        (SUSPECTS_EMERGENCY, suspicion.emergency, True),
        (SUSPECTS if reading.understood else SUSPECTS_UNREAD, suspicion.urgent, False),
    ):
        if at < least:
            continue
        for about, value in suspicion.matters:
            found = level(about, value, context.day, context.species, worst)
            if found is not None and found > read_at and (found == Urgency.emergency) >= worst:
                return Doubt(about, value, found)
            if not worst:
                break
    return None
