"""After a dose was given, missed or refused: when the next one is due, in words.

The bot never changes a dose. It keeps two doses at least the plan's gap apart, and
where that is not plain it holds the next one and asks staff.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta

from bot.context.contexts import Context
from bot.context.phones import whom_to_phone
from bot.context.words import clock, when
from bot.model.chart import MOVED, Chart, Line
from bot.model.effects import Effects, EndHold, Entry, MoveLine
from bot.model.finding import Finding
from bot.model.hold import HeldMedicine, encode
from bot.model.observation import Observation
from bot.model.plan import Medicine
from bot.model.text import Lang, Text
from bot.model.urgency import Urgency
from bot.plan.doses import (
    ON_TIME,
    AskStaff,
    DueAt,
    NoMore,
    Stopped,
    TooEarly,
    Yes,
    as_needed,
    least_gap,
    room_ahead,
    too_close,
)
from bot.standing.standing import Over, Paused
from bot.triage import dose_too_close

from .order import WAITS, Doses, doses_of, given_times, home_at, medicine_of


def after_given(
    ctx: Context, out: Effects, chart: Chart, med: str | None, at: datetime, lang: Lang, *,
    line: Line | None, others: Sequence[datetime] = (),
) -> tuple[list[str], list[Finding]]:  # fmt: skip
    """What follows from any dose told as given ``at``, for a planned ``line`` or for none
    (as needed, in a pause, after the course): the gap, the holds, whether it was ordered, and
    then when the next one is due. ``others`` were told with it.

    Gives back what to tell the owner and what to raise with staff.
    """
    doses = doses_of(chart, med, but=line.at if line is not None else None)
    if doses is None:
        return [], []
    medicine = doses.medicine
    given = sorted([*doses.given, *others])
    findings: list[Finding] = []
    gap = too_close(medicine, _neighbours(given, at))
    if gap is not None:
        findings.append(dose_too_close(medicine.name, gap, least_gap(medicine)))
    stopped = medicine.is_withheld(ctx.now)
    hold = [ctx.words.say("dose_hold", lang, name=chart.name, med=medicine.name)]
    if stopped:  # the plan keeps it back, and there is no next one to ask about
        hold = [stopped_words(ctx, chart, medicine, lang)]
    holds = ctx.standing(chart).holds_on_medicine(medicine.name)
    if holds and all(one.asks_since_away for one in holds):
        # It was only asked when the last was given: this is the answer.
        out.add(*(EndHold(chart.id, one.id, None, "bot") for one in holds))
        holds = ()
    if holds:
        # What was to wait when it was given: whoever answers must know, and it still waits.
        if any(one.since <= at for one in holds):
            findings.append(_given_on_hold(medicine.name))
        return hold, findings
    if not _ordered(ctx, chart, medicine, given, at, line):
        findings.append(_not_ordered_now(medicine.name, holds=not stopped))
        return hold, findings
    if line is not None:
        return _next_after(ctx, out, chart, doses, at, lang, line, findings)
    if findings or not medicine.as_needed:
        return hold if findings else [], findings
    return _as_needed_again(ctx, chart, medicine, [*given, at], max(at, ctx.now), lang), []


def _ordered(
    ctx: Context,
    chart: Chart,
    medicine: Medicine,
    given: Sequence[datetime],
    at: datetime,
    line: Line | None,
) -> bool:
    """Whether a dose was ordered then at all: not of what is stopped, nor in a pause, nor
    when all were given. What the clinic gave before the way home was its own affair."""
    if at < home_at(chart):
        return True
    if medicine.as_needed:
        verdict = as_needed(chart.plan, medicine, given, at)
        return not isinstance(verdict, Stopped | NoMore)
    if line is None or medicine.is_withheld(at):
        return False
    # In a pause one that was due before it may be told, and no other.
    near = timedelta(hours=medicine.every_hours / 2)
    paused = isinstance(ctx.standing(chart).mode, Paused)
    return not paused or abs(at - (line.item.slot_at or at)) <= near


def _as_needed_again(
    ctx: Context, chart: Chart, medicine: Medicine, given: Sequence[datetime], now: datetime,
    lang: Lang,
) -> list[str]:  # fmt: skip
    match as_needed(chart.plan, medicine, given, now):
        case TooEarly(not_before=again):
            at = when(chart.local(again), chart.local(ctx.now), lang)
            key = "dose_as_needed"
            return [ctx.words.say(key, lang, name=chart.name, med=medicine.name, at=at)]
        case _:
            return []


def _next_after(
    ctx: Context, out: Effects, chart: Chart, doses: Doses, given_at: datetime, lang: Lang,
    line: Line, findings: list[Finding],
) -> tuple[list[str], list[Finding]]:  # fmt: skip
    """The next planned dose after this one: moved, held, or left as planned."""
    medicine = doses.medicine
    coming = _coming(chart, medicine, line)
    if not coming or isinstance(ctx.standing(chart).mode, Over):
        return [], findings  # after the end no dose is planned, so none is moved or asked about
    result = doses.next(ctx.now, given_at)
    following = coming[0]
    slot = following.item.slot_at or ctx.now
    fields = {
        "name": chart.name,
        "med": medicine.name,
        "given": clock(chart.local(given_at)),
        "slot": clock(chart.local(slot)),
    }
    if isinstance(result, DueAt) and result.slot > slot:
        # The one in between cannot be given any more: never skipped in silence.
        result = AskStaff(_SO_LATE)
    if isinstance(result, DueAt) and result.at > slot:
        out.add(
            MoveLine(
                chart.id,
                following.id,
                f"{MOVED}{following.item.id}",
                result.at,
                chart.day(result.at),
            ),
            Entry(
                "plan",
                "bot",
                f"{medicine.name}: {slot.isoformat()} → {result.at.isoformat()}",
                chart.id,
                {"line": following.item.id, "why": f"at least {medicine.gap_hours:g} h apart"},
            ),
        )
        hours = f"{medicine.gap_hours:g} h"
        at = when(chart.local(result.at), chart.local(ctx.now), lang)
        return [
            ctx.words.say("dose_next_moved", lang, **{**fields, "gap": hours, "at": at})
        ], findings
    if isinstance(result, AskStaff):
        findings.append(unsure_finding(medicine.name, result.why))
        return [ctx.words.say("dose_ask", lang, **fields)], findings
    if line.state == "planned" and line.item.slot_at is not None:
        # Given ahead of its prompt, which will not come: said, or it seems forgotten.
        at = when(chart.local(slot), chart.local(ctx.now), lang)
        counts = {**fields, "slot": clock(chart.local(line.item.slot_at)), "at": at}
        return [ctx.words.say("dose_counts", lang, **counts)], findings
    return [], findings


def _neighbours(given: Sequence[datetime], at: datetime) -> list[datetime]:
    """A dose with the ones just before and after it: an old close pair is told once."""
    before = [one for one in given if one <= at]
    after = [one for one in given if one > at]
    return [*before[-1:], at, *after[:1]]


_SO_LATE = Text(
    en="The last one was given so late that the one after it does not fit any more.",
    es="La última se dio tan tarde que la siguiente ya no cabe.",
)


def _not_ordered_now(med: str, *, holds: bool) -> Finding:
    """``holds``: the next one waits for staff, as the household is told."""
    return Finding(
        rule="dose-not-ordered-now",
        urgency=Urgency.same_day,
        matter="dose",
        because=Text(
            en=f"{med} was given though it is not ordered now: stopped, paused, over, or all given",
            es=f"se dio {med} aunque ahora no está indicado: suspendido, en pausa o terminado",
        ),
        holds=(encode(HeldMedicine(med)),) if holds else (),
    )


_AGAIN = re.compile(r"\b(again|another|more|otra vez|de nuevo|otra|m[aá]s)\b", re.IGNORECASE)
_TWICE = re.compile(r"\b(twice|two|double|both|dos|doble|2)\b", re.IGNORECASE)


def given_again(chart: Chart, seen: Observation, text: str, now: datetime) -> Observation:
    """ "Gave it again". Of a medicine given as needed it is one more dose and not two at once:
    whether it came too soon, its interval says. Of another, inside the gap, it is a second."""
    medicine = medicine_of(chart, seen.med)
    if medicine is None or seen.at is not None or not _AGAIN.search(text):
        return seen
    if medicine.as_needed:
        once = seen.value == "doubled" and not _TWICE.search(text)
        return replace(seen, value="given", count=None) if once else seen
    gap = timedelta(hours=medicine.gap_hours)
    close = any(abs(now - at) < gap for at in given_times(chart, medicine))
    return replace(seen, value="doubled", count=None) if seen.value == "given" and close else seen


def unsure_finding(med: str, why: Text) -> Finding:
    """The next dose's time is not plain: a person must say. The reason follows "because"."""
    return Finding(
        rule="dose-time-unsure",
        urgency=Urgency.same_day,
        matter="dose",
        because=Text(
            en=f"it is not plain when to give the next {med}. {why.en.removesuffix('.')}",
            es=f"no está claro cuándo toca {med}. {why.es.removesuffix('.')}",
        ),
        holds=(encode(HeldMedicine(med)),),
    )


def _given_on_hold(med: str) -> Finding:
    return Finding(
        rule="dose-given-on-hold",
        urgency=Urgency.same_day,
        matter="dose",
        because=Text(
            en=f"{med} was given although the owner had been asked to wait with it",
            es=f"se dio {med} aunque se había pedido esperar",
        ),
    )


def stopped_words(ctx: Context, chart: Chart, medicine: Medicine, lang: Lang) -> str:
    """It is stopped or paused: none is given."""
    phone = whom_to_phone(ctx, lang)
    return ctx.words.say("dose_stopped", lang, name=chart.name, med=medicine.name, phone=phone)


def next_words(ctx: Context, chart: Chart, line: Line, lang: Lang) -> str:
    """When the next dose of the same medicine is due, in a sentence."""
    medicine = medicine_of(chart, line.item.med)
    if medicine is None or isinstance(ctx.standing(chart).mode, Paused):
        return ""  # nothing is due as long as the course is paused
    if ctx.standing(chart).holds_on_medicine(medicine.name):
        return ctx.words.say("dose_hold", lang, name=chart.name, med=medicine.name)
    coming = _coming(chart, medicine, line)
    if not coming or coming[0].item.slot_at is None:
        return ctx.words.say("dose_no_more", lang, name=chart.name, med=medicine.name)
    due = next(
        (sheet.due_at for sheet in chart.sheets if sheet.id == coming[0].prompt and sheet.moved),
        coming[0].item.slot_at,
    )
    at = when(chart.local(due), chart.local(ctx.now), lang)
    return ctx.words.say("dose_next_at", lang, name=chart.name, med=medicine.name, when=at)


def line_for(chart: Chart, med: str, at: datetime) -> Line | None:
    """The dose line that a dose given at ``at`` belongs to: the nearest slot within half
    the interval, one that still waits before one that is answered. Never one so far ahead that
    the dose cannot have been meant for it."""
    medicine = medicine_of(chart, med)
    if medicine is None:
        return None
    reach = medicine.every_hours * 3600 / 2
    near = [
        line
        for line in chart.doses(medicine.name)
        if line.item.slot_at
        and abs((line.item.slot_at - at).total_seconds()) <= reach
        and line.item.slot_at - at <= max(room_ahead(medicine), ON_TIME)
    ]
    near.sort(
        key=lambda line: (
            line.state == "answered",
            abs(((line.item.slot_at or at) - at).total_seconds()),
        )
    )
    return near[0] if near else None


def line_behind(chart: Chart, med: str, now: datetime) -> Line | None:
    """The latest dose line that has come and waits, within one interval before ``now``;
    else the latest that has come at all. Never one that is still to come."""
    come = _come(chart, med, now)
    waiting = [line for line in come if line.state in ("open", "unanswered", "held")]
    found = waiting or come
    return found[-1] if found else None


def latest_come(chart: Chart, med: str, now: datetime) -> Line | None:
    """The latest dose line that has come within one interval before ``now``."""
    come = _come(chart, med, now)
    return come[-1] if come else None


def _come(chart: Chart, med: str, now: datetime) -> list[Line]:
    medicine = medicine_of(chart, med)
    if medicine is None:
        return []
    reach = medicine.every_hours * 3600
    return [
        line
        for line in chart.doses(medicine.name)
        if line.item.slot_at
        and line.state != "planned"
        and -3600 <= (now - line.item.slot_at).total_seconds() <= reach
    ]


TOO_MUCH = Text(
    en="Too much may have been given too close together.",
    es="Puede que se haya dado demasiado y muy junto.",
)


def served(chart: Chart, line: Line, at: datetime) -> Line:
    """The line that a dose given ``at`` counts for: the one that it was told of, unless it
    was given so late that it is the one after it, and may be, by the pure rules."""
    doses, slot = doses_of(chart, line.item.med), line.item.slot_at
    if doses is None or slot is None:
        return line
    later = [
        (abs(theirs - at), one, theirs)
        for one in doses.lines
        if one.state in ("planned", *WAITS)
        and (theirs := one.item.slot_at) is not None
        and slot < theirs
        and abs(theirs - at) < abs(slot - at)
    ]
    if not later:
        return line
    _, nearest, theirs = min(later, key=lambda each: each[0])
    return nearest if isinstance(doses.may(theirs, at), Yes) else line


def _coming(chart: Chart, medicine: Medicine, line: Line) -> list[Line]:
    """The lines of this medicine after ``line`` that have not come yet."""
    slot = line.item.slot_at
    return [
        one
        for one in chart.doses(medicine.name)
        if one.state == "planned" and one.item.slot_at and slot and one.item.slot_at > slot
    ]
