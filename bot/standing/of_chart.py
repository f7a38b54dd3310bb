"""The standing of a patient as an event finds them."""

from __future__ import annotations

from datetime import datetime

from bot.model.chart import Chart
from bot.model.ids import CaseId

from .standing import CaseState, KnownCase, PatientState, Standing, standing


def standing_of(chart: Chart, now: datetime) -> Standing:
    """What is held, and in which mode the chat is, by the facts of the chart."""
    cases = [
        KnownCase(CaseId(case.id), case.urgency, case.opened_at, CaseState(case.state))
        for case in chart.cases
    ]
    return standing(chart.plan, PatientState(chart.state), chart.holds, cases, now)
