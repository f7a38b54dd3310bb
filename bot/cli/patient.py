"""Which patient, or whom at home, a command's words mean."""

from __future__ import annotations

from collections.abc import Sequence

from bot.desk.board import find
from bot.model.chart import RosterLine

from .errors import CommandError


def patient_of(rows: Sequence[RosterLine], words: str | None) -> RosterLine:
    """The one patient that ``words`` (a name or a number) fit; CommandError names those
    that there are when it is none, or not one alone."""
    if words is None:
        names = "\n".join(f"  {row.id}. {row.plan.patient}, {row.plan.procedure}" for row in rows)
        raise CommandError(f"name a patient:\n{names or '  (none is enrolled yet)'}")
    found = find(rows, words)
    if len(found) != 1:
        names = ", ".join(f"{row.id} {row.plan.patient}" for row in found or rows)
        what = "several patients fit" if found else f"there is no patient {words!r}"
        raise CommandError(f"{what}. Write the number instead: {names or 'none is enrolled yet'}")
    return found[0]
