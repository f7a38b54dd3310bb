"""What the entries of a case tell of a death, and of a patient that is alive after all."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from .urgency import Urgency


def tells_death(body: Mapping[str, Any]) -> bool:
    """Whether a case with these entries holds the word of a death."""
    return any(_of_death(entry) for entry in body.get("entries", ()))


def _of_death(entry: Mapping[str, Any]) -> bool:
    return any(one["about"] == "life" for one in entry["seen"])


def alive_at(body: Mapping[str, Any]) -> datetime | None:
    """When an emergency was last told in these entries, with no word of a death after it."""
    found: datetime | None = None
    for entry in body.get("entries", ()):
        if _of_death(entry):
            found = None
        elif entry["findings"] and entry["urgency"] == Urgency.emergency.name:
            found = datetime.fromisoformat(entry["at"])
    return found
