"""The cold and the warm stage after surgery, kept up longer for one patient."""

from __future__ import annotations

from typing import Literal

from bot.model.plan import Plan
from bot.model.protocol import Protocol, SpanName

from .prompts import last_day

Stage = Literal["cold", "warm"]
STAGES: tuple[Stage, ...] = ("cold", "warm")


def stages(plan: Plan, protocol: Protocol) -> tuple[Stage, ...]:
    """Those that this patient has: the protocol asks for something until their last day."""
    asked = {one.to_day for one in protocol.activities if plan.species in one.species}
    return tuple(stage for stage in STAGES if _last_name(stage) in asked)


def longer(
    plan: Plan, protocol: Protocol, stage: Stage, day: int, days: int
) -> dict[SpanName, int] | None:
    """The plan's own spans with ``stage`` kept up ``days`` days longer, told on ``day``.

    It ends so much later than planned; one that is over goes on from ``day`` for so long.
    Longer cold moves what is left of the warm stage behind it, no day shorter; longer
    warmth leaves the cold stage alone. None where the patient has no such stage, or where
    a stage would then run over the end of the course: that is for the clinician to plan.
    """
    if stage not in stages(plan, protocol):
        return None
    spans = {**protocol.spans, **plan.spans}
    own = dict(plan.spans)
    last = _last_name(stage)
    own[last] = max(spans[last], day) + days
    if stage == "cold":
        own |= _warmth_behind(spans, own[last], day)
    elif "warm_first" in spans and spans["warm_last"] < day <= spans.get("ice_last", -1):
        # Warmth was over when cold came again: it goes on behind that.
        own |= {"warm_first": spans["ice_last"] + 1, "warm_last": spans["ice_last"] + days}
    ends = [own[name] for name in map(_last_name, STAGES) if name in own]
    return None if max(ends) > last_day(plan, protocol) else own


def _warmth_behind(spans: dict[SpanName, int], cold_last: int, day: int) -> dict[SpanName, int]:
    """The warm stage after the cold one: moved on where they would meet."""
    if "warm_first" not in spans or "warm_last" not in spans:
        return {}
    left = spans["warm_last"] - max(spans["warm_first"], day) + 1
    first = max(spans["warm_first"], cold_last + 1)
    if left <= 0 or first == spans["warm_first"]:
        return {}
    return {"warm_first": first, "warm_last": first + left - 1}


def _last_name(stage: Stage) -> SpanName:
    return "ice_last" if stage == "cold" else "warm_last"
