"""What stays the same for all events: the clinic, its words, rules and protocols."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import timedelta

from bot.model.protocol import Protocol
from bot.model.settings import Clinic
from bot.standing.book import HoldBook, default_holds
from bot.triage import RuleBook

from .answers import Answers
from .doubts import Doubts, default_doubts
from .words import Words


@dataclass(frozen=True, slots=True)
class Practice:
    """Loaded once at the start; ``bot_name`` makes the links, ``secret`` signs buttons;
    ``review_url`` is where the review pages are, if they are open."""

    clinic: Clinic
    words: Words
    rules: RuleBook
    protocols: Mapping[str, Protocol]
    bot_name: str
    secret: bytes
    answers: Answers
    holds: HoldBook = field(default_factory=default_holds)
    doubts: Doubts = field(default_factory=default_doubts)
    review_url: str = ""
    clock_ahead: timedelta = timedelta(0)
    """By how much the computer's clock is ahead of the time as it is believed."""
