"""Whether a hold may leave an animal in pain, and from when somebody must be called."""

from __future__ import annotations

from datetime import datetime, timedelta

from bot.model.hold import LAST_DOSE, AtTime, ByAnswer, Everything, FromDeath, FromStaff, Hold
from bot.model.plan import Plan

from .holds import covered
from .medicines import in_course, relieves_pain
from .standing import Standing


def pain_relief_held(plan: Plan, standing: Standing, now: datetime) -> bool:
    """Whether a hold keeps back now what would relieve pain. Who tells of pain meanwhile has
    nothing at home to give: that is no matter for the next working day."""
    return any(
        relieves_pain(m) and in_course(plan, m, now) and standing.holds_on_medicine(m.name)
        for m in plan.medicines
    )


def pain_deadline(plan: Plan, hold: Hold, now: datetime, next_opening: datetime) -> datetime | None:
    """When the hold's case must be raised to the same day, and the household told whom to
    phone if it hurts; ``now`` itself: at once. None: it keeps no pain relief back so long.

    A hold may last one interval of the pain relief that it keeps back (of the shortest).
    Where the clinic opens only after that, there is nothing to wait for. ``next_opening``
    is ``now`` while the clinic is open. Common practice, clinic to confirm.
    """
    if isinstance(hold.cause, FromDeath):
        return None
    names = [m.name for m in plan.medicines]
    if not isinstance(hold.target, Everything):
        names = [*covered(hold.target, plan)]
    intervals = [
        timedelta(hours=m.every_hours)
        for m in plan.medicines
        if m.name in names and relieves_pain(m) and in_course(plan, m, max(now, hold.since))
    ]
    if not intervals:
        return None
    limit = hold.since + min(intervals)
    if isinstance(hold.ends, AtTime) and hold.ends.at <= limit:
        return None
    asks_at_home = hold.ends == ByAnswer(LAST_DOSE) or (
        isinstance(hold.ends, ByAnswer) and isinstance(hold.cause, FromStaff)
    )
    if asks_at_home and limit > now:
        return limit  # the household is asked, not the clinic: an answer may come any time
    return now if limit <= now or next_opening > limit else limit
