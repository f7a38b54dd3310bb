"""Dates as they stand in the address of a page."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import date


def date_in(text: str) -> date | None:
    """An ISO date of our times; None for anything else."""
    try:
        found = date.fromisoformat(text.strip())
    except ValueError:
        return None
    return found if date(1900, 1, 1) < found < date(9000, 1, 1) else None


def no_dates(values: Mapping[str, str], keys: Iterable[str] = ("since", "until")) -> list[str]:
    """What was given as a date and is none."""
    return [values[key] for key in keys if values[key] and date_in(values[key]) is None]
