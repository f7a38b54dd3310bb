"""The standing of a patient as an event finds them."""

from __future__ import annotations

from datetime import datetime

from bot.model.chart import Chart
from bot.model.memo import Memo

from .standing import PatientState, Standing, standing

_MEMO = Memo()


def standing_of(chart: Chart, now: datetime) -> Standing:
    """What is held, and in which mode the chat is, by the facts of the chart."""
    return _MEMO.of(
        chart,
        now,
        lambda: standing(chart.plan, PatientState(chart.state), chart.holds, chart.cases, now),
    )
