"""Findings that no rule makes: the caller has found them, the words are the rule file's."""

from __future__ import annotations

from bot.model.finding import Finding
from bot.model.hold import HeldMedicine, encode
from bot.model.urgency import Urgency

from .load import default_rules
from .reasons import hours_words
from .rulebook import RuleBook

EXCERPT = 120
"""The most characters of a reply that a reason repeats."""


def not_understood(text_excerpt: str, rules: RuleBook | None = None) -> Finding:
    """``next_day``: a reply, or a part that may matter, was not understood."""
    return _excerpted("not-understood", text_excerpt, rules)


def handed_over(text_excerpt: str, rules: RuleBook | None = None) -> Finding:
    """``next_day``: asked once what was meant, and still not understood: staff read it."""
    return _excerpted("handed-over", text_excerpt, rules)


def dose_too_close(
    med: str, hours: float, gap: float, rules: RuleBook | None = None
) -> Finding:  # fmt: skip
    """``same_day``: two doses of ``med`` only ``hours`` apart, with ``gap`` the least."""
    book = rules or default_rules()
    facts: dict[str, object] = {
        "med": med,
        "hours": hours_words(hours, ""),
        "gap": hours_words(gap, ""),
    }
    because = book.file.notices.dose_too_close.fill(facts, facts)
    level = Urgency.same_day
    held = (encode(HeldMedicine(med)),)
    return Finding("dose-too-close", level, "dose", because, (), book.advice(level), held)


def _excerpted(rule: str, text: str, rules: RuleBook | None) -> Finding:
    book = rules or default_rules()
    words = " ".join(text.split())
    if len(words) > EXCERPT:
        words = words[: EXCERPT - 1].rstrip() + "…"
    notices = book.file.notices
    template = notices.not_understood if rule == "not-understood" else notices.handed_over
    facts: dict[str, object] = {"excerpt": words}
    level = Urgency.next_day
    because = template.fill(facts, facts)
    return Finding(rule, level, "not_understood", because, (), book.advice(level))
