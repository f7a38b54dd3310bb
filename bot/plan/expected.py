"""What is expected on a day: the protocol's words, on this patient's own days."""

from __future__ import annotations

from collections.abc import Sequence

from bot.model.plan import Plan
from bot.model.protocol import Expected, Protocol
from bot.model.text import Text

from .prompts import last_day


def expected_days(entry: Expected, plan: Plan, protocol: Protocol) -> range:
    """The days (from surgery, day 0) on which ``entry`` holds, cut at the course's last day.

    ``plan.spans`` go before ``protocol.spans``. What holds up to the protocol's last day
    holds up to this patient's. Empty for another species.
    """
    if plan.species not in entry.species:
        return range(0)
    spans = {**protocol.spans, **plan.spans}
    first, last = (
        spans[day] if isinstance(day, str) else day for day in (entry.from_day, entry.to_day)
    )
    end = last_day(plan, protocol)
    return range(max(first, 0), (end if last >= protocol.spans["last"] else min(last, end)) + 1)


def expected_on(
    plan: Plan, protocol: Protocol, topics: Sequence[str], day: int
) -> tuple[Text, ...]:
    """The words on ``topics`` for ``day``, in the order of the topics, each once."""
    found = [
        entry.text
        for topic in topics
        for entry in protocol.expected
        if entry.about == topic and day in expected_days(entry, plan, protocol)
    ]
    return tuple(dict.fromkeys(found))
