"""Sessions done, and prompts that get no answer."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable
from dataclasses import dataclass

from .course import Asked
from .proportion import Proportion

_SETTLED = ("answered", "unanswered")


@dataclass(frozen=True, slots=True)
class Sessions:
    """One activity: how often it was due, done, skipped, and not answered at all."""

    name: str
    due: int
    done: int
    skipped: int
    not_told: int

    @property
    def proportion(self) -> Proportion:
        """Done of due; what was not told counts as not done."""
        return Proportion(self.done, self.due)


def sessions_done(asked: Iterable[Asked]) -> tuple[Sessions, ...]:
    """By activity, in the order of their names. A session whose answer may still come is
    not counted yet."""
    counts: dict[str, Counter[str]] = defaultdict(Counter)
    for one in asked:
        if one.kind != "session" or one.state not in _SETTLED:
            continue
        what = "not_told" if one.state == "unanswered" else "skipped"
        counts[one.name]["done" if one.choice == "done" else what] += 1
    return tuple(
        Sessions(name, of.total(), of["done"], of["skipped"], of["not_told"])
        for name, of in sorted(counts.items())
    )


@dataclass(frozen=True, slots=True)
class Unanswered:
    """How often one line of the protocol got no answer."""

    kind: str
    name: str
    proportion: Proportion


def unanswered(asked: Iterable[Asked]) -> tuple[Unanswered, ...]:
    """For the author of a flow: what goes unanswered most, first."""
    due: Counter[tuple[str, str]] = Counter()
    silent: Counter[tuple[str, str]] = Counter()
    for one in asked:
        if one.state in _SETTLED:
            key = (one.kind, one.name)
            due[key] += 1
            silent[key] += one.state == "unanswered"
    found = [Unanswered(*key, Proportion(silent[key], due[key])) for key in due]
    return tuple(
        sorted(found, key=lambda u: (-u.proportion.part / u.proportion.whole, u.kind, u.name))
    )
