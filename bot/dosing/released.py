"""What becomes of doses whose hour passed while they were held."""

from __future__ import annotations

from datetime import datetime

from bot.model.chart import Chart, Line
from bot.plan.doses import MayGive, may_give

from .dosing import medicine_of


def freed_lines(chart: Chart, med: str, now: datetime) -> list[tuple[Line, MayGive]]:
    """Held doses of ``med`` whose hour has passed, the latest first, and whether each may
    still be given: by its own hours, the minimum gap and the dose that follows."""
    medicine = medicine_of(chart, med)
    if medicine is None or medicine.is_withheld(now):
        return []
    slots = [line.item.slot_at for line in chart.doses(medicine.name) if line.item.slot_at]
    found: list[tuple[Line, MayGive]] = []
    for line in reversed(chart.doses(medicine.name)):
        slot = line.item.slot_at
        if line.state != "held" or slot is None or slot > now:
            continue
        following = min((at for at in slots if at > slot), default=None)
        verdict = may_give(medicine, slot, chart.given(medicine.name), now, following)
        found.append((line, verdict))
    return found[:1]
