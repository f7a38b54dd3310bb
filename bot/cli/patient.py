"""Which patient, or whom at home, a command's words mean."""

from __future__ import annotations

from bot.desk.board import find
from bot.model.chart import RosterLine
from bot.store.each import Each

from .errors import CommandError


def patient_of(there: Each[RosterLine], words: str | None) -> RosterLine:
    """The one patient that ``words`` (a name or a number) fit; CommandError names those
    that there are when it is none, or not one alone, or one that cannot be read."""
    rows = tuple(there.found.values())
    if words is None:
        names = "\n".join(f"  {row.id}. {row.plan.patient}, {row.plan.procedure}" for row in rows)
        raise CommandError(f"name a patient:\n{names or '  (none is enrolled yet)'}")
    found = find(rows, words)
    for id, name in there.unread.items():
        if words.strip().casefold() in (str(id), name.casefold()):
            raise CommandError(
                f"the records of {name} ({id}) cannot be read. `slowleash verify` tells what is "
                "wrong with the file, and `slowleash restore` puts a copy back"
            )
    if len(found) != 1:
        names = ", ".join(f"{row.id} {row.plan.patient}" for row in found or rows)
        what = "several patients fit" if found else f"there is no patient {words!r}"
        raise CommandError(f"{what}. Write the number instead: {names or 'none is enrolled yet'}")
    return found[0]
