"""The walks week by week: longer only when what was told allows it.

A fold over the weeks from the day of surgery, so that the history explains the present:
the same words told give the same walks. Decided when a week begins, from what was told
in the week before (common practice, clinic to confirm):

- nothing speaks against it, and the leg is used: one step longer, up to the cap;
- a doubt (``walk_signs``), or nobody told how the leg is used: the same;
- a setback: one step shorter, never under the start.

A setback told in a week that began with longer walks takes the lengthening back at once.
What the clinician says stands above all this, and is never judged by earlier signs.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from bot.model.observation import Noted
from bot.model.plan import Item, Plan, WalkOverride
from bot.model.protocol import Protocol, Walks
from bot.model.text import Lang, Text

from .walk_signs import Grade, Sign, leg_told, signs

Change = Literal["start", "advanced", "held", "stepped_back", "overruled"]
DAYS = 7
SHOWN = 3
"""How many signs a reason names."""


@dataclass(frozen=True, slots=True)
class WalkWeek:
    """The walks on a day: minutes of each, outings a day, how that differs from the week
    before, and why, in words for owner and clinician. ``week`` counts from 0."""

    minutes: int
    outings: int
    change: Change
    because: Text
    week: int


def walk_plan(
    plan: Plan,
    protocol: Protocol,
    history: Sequence[Noted],
    day: int,
    overrides: Sequence[WalkOverride] = (),
) -> WalkWeek:
    """The walks on ``day`` (days since surgery), after all that was told up to then.

    ``history`` in any order, also of later days, which are not looked at. ``overrides``
    by ``from_day``; of one day the later in the sequence counts.
    """
    return walk_weeks(plan, protocol, history, day, overrides)[-1]


def walk_weeks(
    plan: Plan,
    protocol: Protocol,
    history: Sequence[Noted],
    day: int,
    overrides: Sequence[WalkOverride] = (),
) -> tuple[WalkWeek, ...]:
    """Every week up to ``day``: past ones as they ended, the last as it is on ``day``."""
    return tuple(
        week.stands(week.last, week.last)
        for week in _weeks(plan, protocol, history, day, overrides)
    )


def walk_days(
    plan: Plan,
    protocol: Protocol,
    history: Sequence[Noted],
    day: int,
    overrides: Sequence[WalkOverride] = (),
) -> tuple[WalkWeek, ...]:
    """Every day from 0 to ``day`` as it began, so that what was walked can be held against
    what was planned then: words told on a day change the next. ``day`` itself as it is."""
    return tuple(
        week.stands(on, on if on == max(day, 0) else on - 1)
        for week in _weeks(plan, protocol, history, day, overrides)
        for on in range(week.first, week.last + 1)
    )


@dataclass(frozen=True, slots=True)
class _Week:
    """A week as it was decided on its first morning, and what may change it: ``base`` are
    last week's minutes. ``first`` and ``last`` are days."""

    begun: WalkWeek
    base: int
    first: int
    last: int
    walks: Walks
    history: Sequence[Noted]
    overrides: Sequence[WalkOverride]

    def stands(self, on: int, heard: int) -> WalkWeek:
        """The walks on day ``on``, after all that was told up to day ``heard``."""
        week = self.begun
        said = [one for one in self.overrides if self.first <= one.from_day <= on]
        if said:
            for override in said:
                week = _overrule(week, override, self.walks, self.base)
        elif week.change == "advanced" and _set_back(now := signs(self.history, self.first, heard)):
            because = _reason(_TAKEN_BACK, now, minutes=self.base)
            week = replace(week, minutes=self.base, change="held", because=because)
        return week


def _weeks(
    plan: Plan,
    protocol: Protocol,
    history: Sequence[Noted],
    day: int,
    overrides: Sequence[WalkOverride],
) -> Iterator[_Week]:
    day = max(day, 0)
    walks = plan.walks or protocol.walks
    ordered = sorted(overrides, key=lambda one: one.from_day)
    before: WalkWeek | None = None
    decided = 0
    for number in range(day // DAYS + 1):
        first = number * DAYS
        last = min(first + DAYS - 1, day)
        judged_from = max(
            (o.from_day for o in ordered if first - DAYS <= o.from_day < first), default=0
        )
        against = signs(history, max(first - DAYS, judged_from), first - 1) if before else []
        told = leg_told(history, first - DAYS, first - 1)
        begun = _begin(plan, walks, number, before, decided, against, told)
        base = before.minutes if before else begun.minutes
        week = _Week(begun, base, first, last, walks, history, ordered)
        yield week
        before = week.stands(last, last)
        # A week that was taken back counts as what it began with: a setback counts once.
        decided = before.minutes if before.change == "overruled" else begun.minutes


def walk_text(item: Item, week: WalkWeek) -> Item:
    """The item with the figures of ``week`` in its words; as it is, if it names none."""
    if item.walk is None:
        return item
    figures: dict[str, object] = {"minutes": week.minutes, "outings": week.outings}
    return item.model_copy(update={"text": item.walk.fill(figures, figures)})


def as_told(plan: Plan, protocol: Protocol, history: Sequence[Noted], item: Item, day: int) -> Item:
    """The item as it stands for ``day`` after all that was told: nobody hears of longer walks
    than their prompt will allow."""
    if item.walk is None:
        return item
    return walk_text(item, walk_days(plan, protocol, history, day, plan.walk_overrides)[-1])


def _begin(
    plan: Plan,
    walks: Walks,
    number: int,
    before: WalkWeek | None,
    decided: int,
    against: Sequence[Sign],
    told: bool,
) -> WalkWeek:
    """The week as it is decided on its first morning. ``decided`` are last week's minutes
    as it began: a setback steps back from these, so that it does not count twice."""
    shortest = min(walks.start_minutes, walks.cap_minutes)
    if before is None:
        who = {"who": plan.clinician, "minutes": shortest}
        return WalkWeek(shortest, walks.outings, "start", _START.fill(who, who), number)
    now = before.minutes
    change: Change = "held"
    minutes = now
    if _set_back(against):
        minutes = max(min(now, shortest), min(now, decided - walks.step_minutes))
        if minutes < now:
            change = "stepped_back"
            because = _reason(_SHORTER, against, less=now - minutes)
        else:
            because = _reason(_HELD, against)
    elif against:
        because = _reason(_HELD, against)
    elif not told:
        whose: dict[str, object] = {"name": plan.patient}
        because = _SILENT.fill(whose, whose)
    else:
        minutes = max(now, min(walks.cap_minutes, now + walks.step_minutes))
        if minutes > now:
            change = "advanced"
            more: dict[str, object] = {"more": minutes - now}
            because = _LONGER.fill(more, more)
        else:
            ordered: dict[str, object] = {"who": plan.clinician}
            because = _LONGEST.fill(ordered, ordered)
    return WalkWeek(minutes, before.outings, change, because, number)


def _set_back(against: Sequence[Sign]) -> bool:
    return any(sign.grade is Grade.setback for sign in against)


def _overrule(week: WalkWeek, override: WalkOverride, walks: Walks, base: int) -> WalkWeek:
    minutes = override.minutes or week.minutes
    if override.change == "hold":
        minutes = base
    elif override.change == "advance":
        minutes = max(base, min(walks.cap_minutes, base + walks.step_minutes))
    said: dict[str, object] = {"who": override.author, "why": override.reason}
    return WalkWeek(
        minutes,
        override.outings or week.outings,
        "overruled",
        _OVERRULED.fill(said, said),
        week.week,
    )


def _reason(words: Text, against: Sequence[Sign], **fields: object) -> Text:
    def listed(lang: Lang) -> str:
        day = "day" if lang == "en" else "día"
        return "; ".join(f"{sign.words.say(lang)} ({day} {sign.day})" for sign in against[:SHOWN])

    return words.fill({**fields, "signs": listed("en")}, {**fields, "signs": listed("es")})


_START = Text(
    en="The walks begin with {minutes} min, as {who} ordered.",
    es="Los paseos empiezan con {minutes} min, como indicó {who}.",
)
_LONGER = Text(
    en="{more} min longer: nothing that was told in the past week speaks against it.",
    es="{more} min más: nada de lo dicho en la última semana está en contra.",
)
_LONGEST = Text(
    en="This is as long as {who} ordered.",
    es="Es lo más largo que indicó {who}.",
)
_HELD = Text(
    en="Not longer this week, because of what was told: {signs}.",
    es="Esta semana no son más largos, por lo que se dijo: {signs}.",
)
_SILENT = Text(
    en="Not longer this week: in the past week nobody told how {name} walks. Please tell us.",
    es="Esta semana no son más largos: en la última semana nadie dijo cómo camina {name}. "
    "Cuéntenos.",
)
_SHORTER = Text(
    en="{less} min shorter, because of what was told: {signs}.",
    es="{less} min menos, por lo que se dijo: {signs}.",
)
_TAKEN_BACK = Text(
    en="Back to {minutes} min, because of what was told this week: {signs}.",
    es="Otra vez {minutes} min, por lo que se dijo esta semana: {signs}.",
)
_OVERRULED = Text(en="{who} decided: {why}", es="{who} lo decidió: {why}")
