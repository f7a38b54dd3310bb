"""What must hold of doses that are told: of each too close or held staff hear, whether it fills
a planned hour or none; one of which two people told stands as long as one of them says so; it
is written for the hour that was told; and nothing on hold is announced."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass, field
from datetime import datetime

from .facts import Cause, Facts, Order, Shown

ANNOUNCED = re.compile(
    r"The next (?P<en>\w+) for \S+ is due|La próxima dosis de (?P<es>\w+) para \S+ toca"
)


@dataclass(slots=True)
class ToldDoses:
    """One history. ``step`` gives back what does not hold."""

    order: Order
    home: Collection[int]  # chats
    witnesses: dict[str, set[int]] = field(default_factory=dict)  # item → who told of it too
    asked: set[int] = field(default_factory=set)
    """Chats in which it was asked when a dose was given."""
    last: datetime | None = None

    def step(
        self, cause: Cause, now: datetime, before: Facts, after: Facts, delivered: Sequence[Shown]
    ) -> Iterator[str]:
        """All that does not hold after something happened."""
        self.asked |= {x.chat for x in delivered if any(code == "g" for _, code, _ in x.buttons)}
        yield from self._heard(cause, before, after)
        yield from self._stands(cause, before, after)
        yield from self._hours(cause, now, before, after)
        yield from self._announced(after, delivered)
        self.last = now

    def _heard(self, cause: Cause, before: Facts, after: Facts) -> Iterator[str]:
        """A dose told inside the gap, or of what was on hold, reaches staff."""
        grew = any(one not in before.cases or after.cases[one][2] > before.cases[one][2]
                   for one in after.cases)  # fmt: skip
        if grew or after.over or cause.kind not in ("say", "tap", "due"):
            return
        if any(ends == "answer" for _, ends in before.holds.values()):
            return  # what the hospital gave, it gave on purpose
        for med in self.order.meds:
            given = list(after.given.get(med.name, ()))
            fresh = Counter(given) - Counter(before.given.get(med.name, ()))
            for at in fresh if len(given) > len(before.given.get(med.name, ())) else ():
                given.remove(at)
                if any(abs(at - one) < med.gap for one in given):
                    yield f"told: {med.name} at {at:%d %H:%M} UTC within the gap, nobody hears"
                if self.last is not None and at > self.last and med.name in before.held:
                    yield f"told: {med.name} at {at:%d %H:%M} UTC though on hold, nobody hears"

    def _stands(self, cause: Cause, before: Facts, after: Facts) -> Iterator[str]:
        """Told of by two, it is not lost when the other takes it back."""
        own = cause.code == "z" or cause.saying.text in ("undo", "deshacer")
        if own or cause.kind == "edit":
            for users in self.witnesses.values():
                users.discard(cause.user)
        for item, users in self.witnesses.items():
            old, dose = before.doses.get(item), after.doses.get(item)
            if old is None or dose is None or old.choice != "given" or dose.choice == "given":
                continue
            if users - {cause.user}:
                yield f"undo: {item} was told of by another, too, and is lost"
        if cause.kind == "tap" and cause.code == "x" and cause.args[-1] == "same":
            for item in cause.meds:
                if before.doses[item].choice == "given" and before.doses[item].user != cause.user:
                    self.witnesses.setdefault(item, set()).add(cause.user)

    def _hours(self, cause: Cause, now: datetime, before: Facts, after: Facts) -> Iterator[str]:
        for item, dose in after.doses.items():
            old = before.doses.get(item)
            if dose.choice != "given" or (old is not None and old.choice == "given"):
                continue
            if cause.kind == "say" and cause.saying.just and dose.at != now:
                yield f"fact: {item} given just now is written for {dose.at}"
            if cause.kind == "due" and dose.user is not None and dose.user not in self.asked:
                yield f"fact: {item} counted by a question that nobody was asked"

    def _announced(self, after: Facts, delivered: Sequence[Shown]) -> Iterator[str]:
        """Nothing that is on hold is said to be due."""
        for one in delivered:
            if (
                one.chat not in self.home
                or one.kind != "send"
                or (found := ANNOUNCED.search(one.text)) is None
            ):
                continue
            med = found["en"] or found["es"]
            if med in after.held or "everything" in after.held:
                yield f"offer: announces {med}, which is on hold: {one.text[:100]!r}"
