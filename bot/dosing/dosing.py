"""After a dose was given, missed or refused: when the next one is due, in words.

The bot never changes a dose. It keeps two doses at least the plan's gap apart, and
where that is not plain it holds the next one and asks staff.
"""

from __future__ import annotations

from datetime import datetime

from bot.context.contexts import Context
from bot.context.words import clock, when
from bot.model.chart import Chart, Line
from bot.model.effects import Effects, Entry, MoveLine
from bot.model.finding import Finding
from bot.model.hold import HeldMedicine, encode
from bot.model.plan import Medicine
from bot.model.text import Lang, Text
from bot.model.urgency import Urgency
from bot.plan.doses import AskStaff, DueAt, next_dose, too_close
from bot.triage import dose_too_close


def medicine_of(chart: Chart, med: str | None) -> Medicine | None:
    """The plan's medicine of this name."""
    if med is None:
        return None
    return next((m for m in chart.plan.medicines if m.name.casefold() == med.casefold()), None)


def after_given(
    ctx: Context, out: Effects, chart: Chart, line: Line, given_at: datetime, lang: Lang
) -> tuple[list[str], list[Finding]]:
    """The next dose after one given at ``given_at``: moved, held, or left as planned.

    Gives back what to tell the owner and what to raise with staff.
    """
    medicine = medicine_of(chart, line.item.med)
    if medicine is None:
        return [], []
    before = [at for at in chart.given(medicine.name) if at != line.at]
    findings: list[Finding] = []
    gap = too_close(medicine, _neighbours(before, given_at))
    if gap is not None:
        findings.append(dose_too_close(medicine.name, gap, medicine.gap_hours))
    if ctx.standing(chart).holds_on_medicine(medicine.name):
        # It was to wait, and was given: whoever answers must know, and it still waits.
        words = ctx.words.say("dose_hold", lang, name=chart.name, med=medicine.name)
        return [words], [*findings, _given_on_hold(medicine.name)]
    coming = _coming(chart, medicine, line)
    if not coming:
        return [], findings
    slots = [one.item.slot_at for one in chart.doses(medicine.name) if one.item.slot_at]
    result = next_dose(medicine, slots, sorted([*before, given_at]), ctx.now)
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
                f"later:{following.item.id}",
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
    return [], findings


def _neighbours(given: list[datetime], at: datetime) -> list[datetime]:
    """A dose with the ones just before and after it: an old close pair is told once."""
    before = [one for one in given if one <= at]
    after = [one for one in given if one > at]
    return [*before[-1:], at, *after[:1]]


_SO_LATE = Text(
    en="the last one was given so late that the one after it does not fit any more.",
    es="la última se dio tan tarde que la siguiente ya no cabe.",
)


def as_needed_too_close(chart: Chart, med: str | None, at: datetime) -> list[Finding]:
    """A medicine given as needed has no slots: its gap is kept by what was told."""
    medicine = medicine_of(chart, med)
    if medicine is None or not medicine.as_needed:
        return []
    told = [
        noted.at
        for noted in chart.history
        if noted.observation.about == "dose"
        and noted.observation.value == "given"
        and noted.observation.med == medicine.name
    ]
    gap = too_close(medicine, [*told[-3:], at])
    return [dose_too_close(medicine.name, gap, medicine.gap_hours)] if gap is not None else []


def unsure_finding(med: str, why: Text) -> Finding:
    """The next dose's time is not plain: a person must say."""
    return Finding(
        rule="dose-time-unsure",
        urgency=Urgency.same_day,
        matter="dose",
        because=Text(
            en=f"When to give the next {med} is not plain: {why.en} The next dose is on hold.",
            es=f"No está claro cuándo toca {med}: {why.es} La próxima dosis queda en espera.",
        ),
        holds=(encode(HeldMedicine(med)),),
    )


def _given_on_hold(med: str) -> Finding:
    return Finding(
        rule="dose-given-on-hold",
        urgency=Urgency.same_day,
        matter="dose",
        because=Text(
            en=f"{med} was given although the owner had been asked to wait with it.",
            es=f"Se dio {med} aunque se había pedido esperar.",
        ),
    )


def next_words(ctx: Context, chart: Chart, line: Line, lang: Lang) -> str:
    """When the next dose of the same medicine is due, in a sentence."""
    medicine = medicine_of(chart, line.item.med)
    if medicine is None:
        return ""
    if ctx.standing(chart).holds_on_medicine(medicine.name):
        return ctx.words.say("dose_hold", lang, name=chart.name, med=medicine.name)
    coming = _coming(chart, medicine, line)
    if not coming or coming[0].item.slot_at is None:
        return ctx.words.say("dose_no_more", lang, name=chart.name, med=medicine.name)
    due = next(
        (
            sheet.due_at
            for sheet in chart.sheets
            if sheet.id == coming[0].prompt and sheet.key.startswith("later:")
        ),
        coming[0].item.slot_at,
    )
    at = when(chart.local(due), chart.local(ctx.now), lang)
    return ctx.words.say("dose_next_at", lang, name=chart.name, med=medicine.name, when=at)


def line_for(chart: Chart, med: str, at: datetime) -> Line | None:
    """The dose line that a dose given at ``at`` belongs to: the nearest slot within half
    the interval, one that still waits before one that is answered."""
    medicine = medicine_of(chart, med)
    if medicine is None:
        return None
    reach = medicine.every_hours * 3600 / 2
    near = [
        line
        for line in chart.doses(medicine.name)
        if line.item.slot_at and abs((line.item.slot_at - at).total_seconds()) <= reach
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
    medicine = medicine_of(chart, med)
    if medicine is None:
        return None
    reach = medicine.every_hours * 3600
    come = [
        line
        for line in chart.doses(medicine.name)
        if line.item.slot_at
        and line.state != "planned"
        and -3600 <= (now - line.item.slot_at).total_seconds() <= reach
    ]
    waiting = [line for line in come if line.state in ("open", "unanswered", "held")]
    found = waiting or come
    return found[-1] if found else None


TOO_MUCH = Text(
    en="too much may have been given too close together.",
    es="puede que se haya dado demasiado y muy junto.",
)


def _coming(chart: Chart, medicine: Medicine, line: Line) -> list[Line]:
    """The lines of this medicine after ``line`` that have not come yet."""
    slot = line.item.slot_at
    return [
        one
        for one in chart.doses(medicine.name)
        if one.state == "planned" and one.item.slot_at and slot and one.item.slot_at > slot
    ]
