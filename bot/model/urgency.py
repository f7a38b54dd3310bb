"""How soon a person must act, from the lowest to the highest."""

from __future__ import annotations

from enum import IntEnum


class Urgency(IntEnum):
    """Ordered, so that the urgency of a reply is the ``max`` of its findings."""

    none = 0
    next_day = 1
    same_day = 2
    emergency = 3
