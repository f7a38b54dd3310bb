"""What each reader finds, and both together: counted on replies that the model has not seen."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from bot.model.reading import Context, Reading
from bot.model.urgency import Urgency
from bot.reading import reader
from bot.reading.statistical import Suspicion, shipped
from bot.reading.statistical.model import suspicion
from bot.reading.two_readers import SUSPECTS, SUSPECTS_EMERGENCY, combined

from .rows import Labelled, urgency_of
from .teach import Lesson


@dataclass(frozen=True, slots=True)
class Tried:
    """A labelled reply, the level that the grammar read, what the model suspects of it, and
    both together."""

    row: Labelled
    grammar: Urgency
    suspicion: Suspicion
    both: Reading

    @property
    def asked(self) -> Urgency:
        """The highest level that is asked about."""
        return max((one.urgency for one in self.both.asks), default=Urgency.none)


def tried(row: Labelled, suspected: Suspicion | None = None) -> Tried:
    """One reply before both readers; the model of the package unless told what it suspects."""
    context = context_of(row)
    read = reader.read(row.text, context)
    seen = suspected or shipped().suspect(row.text, context)
    grammar = urgency_of(read.observations, row.day, row.species)
    return Tried(row, grammar, seen, combined(read, seen, context))


def context_of(row: Labelled) -> Context:
    """Of whom and when."""
    lang = row.lang if row.lang in ("en", "es") else None
    return Context(row.asked, row.day, row.at, row.species, lang)  # type: ignore[arg-type]


def across(lesson: Lesson) -> list[Tried]:
    """Every whole reply of the lesson, before a model taught without its fold."""
    return [
        tried(lesson.rows[at], suspicion(one, lesson.heads, curves, context_of(lesson.rows[at])))
        for which, scores, curves in lesson.folds()
        for at, one in zip(which, scores, strict=True)
    ]


def figures(replies: Iterable[Tried]) -> list[str]:
    """Found by the grammar, by the model at its threshold, by either, and found or asked."""
    told = list(replies)
    lines = []
    for level, least in ((Urgency.same_day, SUSPECTS), (Urgency.emergency, SUSPECTS_EMERGENCY)):
        there = [one for one in told if one.row.urgency >= level]
        model = [_chance(one, level) >= least for one in there]
        grammar = [one.grammar >= level for one in there]
        lines.append(
            f"{level.name:<9} of {len(there)}: grammar {_part(grammar)}, model {_part(model)}, "
            f"found or asked {_part([max(one.grammar, one.asked) >= level for one in there])}"
        )
    for name, most in (("nothing wrong", Urgency.none), ("below same_day", Urgency.next_day)):
        calm = [one for one in told if one.row.urgency <= most]
        lines.append(
            f"{name} {len(calm)}: read as an alarm "
            f"{_part([one.grammar >= Urgency.same_day for one in calm])}, "
            f"asked {_part([bool(one.both.asks) for one in calm])}"
        )
    return lines


def _chance(one: Tried, level: Urgency) -> float:
    return one.suspicion.urgent if level == Urgency.same_day else one.suspicion.emergency


def _part(held: list[bool]) -> str:
    return f"{sum(held)} ({100 * sum(held) / max(len(held), 1):.1f} %)"
