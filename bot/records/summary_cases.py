"""The matters for staff on the summary: the most urgent, each in one row."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from bot.context.words import Words, date_of
from bot.model.text import Lang

from .labels import URGENCY, full_date, label, span
from .whole import CaseFile, WholeRecord

MOST_CASES: Final = 8
QUOTED: Final = 150
"""Characters of an owner's words that a case shows."""


def most_urgent(cases: Sequence[CaseFile]) -> list[CaseFile]:
    """The most urgent, as many as fit, in the order of time."""
    ranked = sorted(cases, key=lambda case: (-case.urgency, case.closed_at is not None,
                                             -case.opened_at.timestamp()))  # fmt: skip
    return sorted(ranked[:MOST_CASES], key=lambda case: case.opened_at)


def case_row(record: WholeRecord, case: CaseFile, words: Words, lang: Lang) -> tuple[str, str, str]:
    """When and how urgent; what was told and why it was a case; what staff did."""
    local = record.local(case.opened_at)
    when = (
        f"{URGENCY[case.urgency.name].say(lang).upper()}\n"
        f"{label('day', lang, day=record.day(case.opened_at))}, "
        f"{date_of(local, lang)} {local:%H:%M}"
    )
    return when, _why(case, lang), _done_about(record, case, words, lang)


def _why(case: CaseFile, lang: Lang) -> str:
    entries = case.body.get("entries", ())
    if not entries:
        return case.matter.replace("_", " ")
    worst = max(entries, key=lambda entry: _rank_of(entry.get("urgency", "none")))
    because = " ".join(dict.fromkeys(f.get(lang, "") for f in worst.get("findings", ()))).strip()
    said = " / ".join(str(worst.get("text", "")).split("\n"))
    if len(said) > QUOTED:
        said = said[: QUOTED - 1].rstrip() + "…"
    more = f" ({label('asked_again', lang, n=len(entries))})" if len(entries) > 1 else ""
    quoted = f"“{said}” " if said else ""
    return f"{quoted}{because}{more}"


def _rank_of(urgency: str) -> int:
    return list(reversed(URGENCY)).index(urgency) if urgency in URGENCY else -1


def _done_about(record: WholeRecord, case: CaseFile, words: Words, lang: Lang) -> str:
    parts = []
    for at, by, key in (
        (case.acknowledged_at, case.acknowledged_by, "acknowledged"),
        (case.answered_at, case.answered_by, "answered"),
    ):
        if at is not None:
            took = span((at - case.opened_at).total_seconds() / 60)
            parts.append(label(key, lang, time=took, by=by or "?"))
    if case.closed_at is not None:
        on = full_date(record.date(case.closed_at), lang)
        parts.append(label("closed", lang, date=on, by=case.closed_by or "?"))
        if case.outcome and f"outcome_{case.outcome}" in words.words:
            parts.append(words.say(f"outcome_{case.outcome}", lang).lower())
    else:
        parts.append(label("open", lang).upper())
    if case.note:
        parts.append(f"“{case.note}”")
    return "; ".join(parts)
