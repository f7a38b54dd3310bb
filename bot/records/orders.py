"""What was ordered, and what staff changed since, in words."""

from __future__ import annotations

import re
from datetime import UTC, datetime, timedelta
from typing import Final, Literal

from bot.context.words import date_of
from bot.model.plan import Medicine
from bot.model.text import Lang
from bot.records.record import Record

from .labels import full_date, label
from .whole import WholeRecord

Standing = Literal["under_way", "over", "stopped", "paused"]
_STOP: Final = "told_med_stop"
"""What the log calls a change by which staff stopped a medicine for good."""
_MOMENT: Final = re.compile(r"\d{4}-\d\d-\d\dT\d\d:\d\d(?::\d\d(?:\.\d+)?)?(?:Z|[+-]\d\d:\d\d)")


def last_day_of(record: WholeRecord, medicine: Medicine) -> datetime:
    """When the order is over, as a moment: its days counted from the first dose."""
    end = medicine.first_dose + timedelta(days=medicine.days)
    return end.replace(tzinfo=record.zone).astimezone(UTC)


def standing(record: WholeRecord, medicine: Medicine, now: datetime) -> Standing:
    """How an order stands at ``now`` (aware). What staff withheld goes before all else."""
    if medicine.is_withheld(now):
        changes = [
            str(entry.data.get("change", ""))
            for entry in record.log
            if entry.kind == "plan" and entry.data.get("med") == medicine.name
        ]
        return "stopped" if changes and changes[-1] == _STOP else "paused"
    return "over" if now >= last_day_of(record, medicine) else "under_way"


def regimen(record: WholeRecord, medicine: Medicine, now: datetime, lang: Lang) -> str:
    """As ordered, and when staff took it back or held it back."""
    if medicine.as_needed:
        ordered = label("as_needed", lang, hours=medicine.every_hours)
    else:
        first = full_date(medicine.first_dose.date(), lang)
        ordered = label(
            "every", lang, hours=medicine.every_hours, days=medicine.days, date=first
        )  # fmt: skip
    parts = [ordered]
    for one in medicine.withheld:
        since = full_date(record.date(one.since), lang)
        if one.until is not None:
            until = full_date(record.date(one.until), lang)
            parts.append(label("withheld", lang, since=since, until=until))
        elif standing(record, medicine, now) == "stopped":
            parts.append(label("stopped", lang, date=since))
        else:
            parts.append(label("paused_since", lang, date=since))
    return "; ".join(parts)


def plan_words(record: WholeRecord, entry: Record, lang: Lang) -> str:
    """An entry on the plan as people read it: moments by the household's clock, walks with
    their minutes, and the reason."""
    minutes, outings = entry.data.get("minutes"), entry.data.get("outings")
    text = " / ".join(part.strip() for part in entry.text.splitlines() if part.strip())
    if entry.author == "bot" and text.startswith("walks:") and minutes is not None:
        text = label("walks_now", lang, minutes=minutes, outings=outings)

    def by_the_clock(found: re.Match[str]) -> str:
        local = record.local(datetime.fromisoformat(found[0]))
        return f"{date_of(local, lang)} {local:%H:%M}"

    text = _MOMENT.sub(by_the_clock, text)
    why = str(entry.data.get("why") or "").strip()
    return f"{text} ({why})" if why else text
