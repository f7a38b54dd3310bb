"""The course in lines: what comes on a day, and what is next today."""

from __future__ import annotations

import re
from datetime import datetime, time

from bot.model.plan import Item, Plan
from bot.model.protocol import Protocol
from bot.model.text import Lang

from .clock import day_of, wall_at
from .prompts import prompts

LONGEST = 120
"""Characters of one line."""


def day_lines(plan: Plan, protocol: Protocol, day: int, lang: Lang) -> list[tuple[time, str]]:
    """What comes on ``day`` (days since surgery): local time and words, in order."""
    return [
        (wall_at(plan, prompt.due_at).time(), title(item, lang))
        for prompt in prompts(plan, protocol)
        if prompt.day == day
        for item in prompt.items
    ]


def today(plan: Plan, protocol: Protocol, now: datetime, lang: Lang) -> list[tuple[time, str]]:
    """What still comes today, after ``now`` (aware): local time and words, in order."""
    day = day_of(now, plan)
    return [
        (wall_at(plan, prompt.due_at).time(), title(item, lang))
        for prompt in prompts(plan, protocol)
        if prompt.day == day and prompt.due_at > now
        for item in prompt.items
    ]


def title(item: Item, lang: Lang) -> str:
    """An item in one line: a dose in full, anything else by its first sentence."""
    words = item.text.say(lang)
    if item.kind == "dose":
        return words
    first = re.split(r"(?<=[.!?])\s", words.strip(), maxsplit=1)[0]
    if len(first) <= LONGEST:
        return first
    return first[: LONGEST - 1].rsplit(" ", 1)[0] + "…"
