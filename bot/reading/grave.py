"""Whether words sound of an emergency, told by anybody of any patient at any hour: only to
know what to look at first. What they mean is read when their turn has come."""

from __future__ import annotations

from bot.model.reading import Context
from bot.model.urgency import Urgency

from .alarms import level_told
from .two_readers import read


def sounds_grave(text: str) -> bool:
    """Whether either reader sees an emergency in it, doubtful or not, for a dog or a cat."""
    if not text.strip():
        return False
    for context in (Context(), Context(species="cat")):
        found = read(text, context)
        told = (level_told(one, context.day, context.species) for one in found.observations)
        if Urgency.emergency in (*told, *(doubt.urgency for doubt in found.asks)):
            return True
    return False
