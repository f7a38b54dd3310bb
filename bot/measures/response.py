"""How long owners wait: to the acknowledgement of a case, and to the first answer."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal

from bot.model.text import Text
from bot.model.urgency import Urgency

from .course import Matter
from .size import caution
from .survival import Curve, Quantile, Watched, kaplan_meier

What = Literal["acknowledged", "answered"]


@dataclass(frozen=True, slots=True)
class Waits:
    """Minutes until ``what``, over ``n`` cases of which ``happened`` got it.

    Cases without it count as waiting for as long as they were open, so that a slow answer
    cannot make the figure better by not being there at all. A quantile is None where
    there are too few, or where so many never got it.
    """

    what: What
    n: int
    happened: int
    median: Quantile
    p90: Quantile
    curve: Curve

    @property
    def caution(self) -> Text | None:
        """What must stand beside it."""
        return caution(self.n)


def waits(matters: Iterable[Matter], what: What, urgency: Urgency | None = None) -> Waits:
    """Of all cases, or of those of one ``urgency``. An answer acknowledges, too."""
    watched = []
    for matter in matters:
        if urgency is not None and matter.urgency is not urgency:
            continue
        times = [matter.answered]
        if what == "acknowledged":
            times.append(matter.acknowledged)
        known = [time for time in times if time is not None]
        if known:
            watched.append(Watched(max(0.0, min(known)), True))
        else:
            watched.append(Watched(max(0.0, matter.watched), False))
    curve = kaplan_meier(watched)
    return Waits(what, curve.n, curve.seen, curve.quantile(0.5), curve.quantile(0.9), curve)
