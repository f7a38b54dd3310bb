"""What becomes of doses whose hour passed while they were held."""

from __future__ import annotations

from datetime import datetime

from bot.model.chart import Chart, Line
from bot.plan.doses import MayGive

from .order import doses_of


def freed_lines(chart: Chart, med: str, now: datetime) -> list[tuple[Line, MayGive]]:
    """The latest held dose of ``med`` whose hour has passed, and whether it may still be
    given: by its own hours, the minimum gap and the dose that follows. None or one."""
    doses = doses_of(chart, med)
    if doses is None or doses.medicine.is_withheld(now):
        return []
    passed = [
        (line, slot)
        for line in doses.lines
        if line.state == "held" and (slot := line.item.slot_at) is not None and slot <= now
    ]
    return [(line, doses.may(slot, now)) for line, slot in passed[-1:]]
