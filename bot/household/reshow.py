"""Messages that were sent already are brought up to date: buttons go from what is held,
stopped, given, or asked about, and come back when it is over."""

from __future__ import annotations

from datetime import timedelta

from bot.context.contexts import Context
from bot.dosing.showable import look
from bot.model.chart import Chart, Line, Person, Sheet
from bot.model.effects import Effects, Rows

from .sheet import prompt_key, reminder_key, sheet_buttons, sheet_text, shown_to

FRESH = timedelta(hours=36)
"""Older messages are left as they are; a button of theirs is refused when it is pressed. A day
is not enough: of a medicine once a day yesterday's button must go when today's is given."""


def reshow(ctx: Context, out: Effects, before: Chart, after: Chart) -> None:
    """Edit every copy of a sent prompt that reads otherwise after the event than before."""
    known = {sheet.id: sheet for sheet in before.sheets if sheet.sent_at is not None}
    wishes = {person.id: person for person in before.people}
    wished_anew = any(wishes.get(person.id, person) != person for person in after.people)
    everything = wished_anew or _bound_anew(ctx, before, after)
    for sheet in after.sheets:
        old = known.get(sheet.id)
        if old is None or (old == sheet and not everything):
            continue
        if ctx.now - (sheet.reminded or sheet.due_at) > FRESH and old == sheet:
            continue
        if not wished_anew and _state(ctx, before, old) == _state(ctx, after, sheet):
            continue
        for person in after.people:
            once = wishes.get(person.id, person)
            if not shown_to(old, once).lines:
                continue  # all of it was on hold: it was never sent
            was = _looks(ctx, before, old, once)
            text, rows = _looks(ctx, after, sheet, person)
            # A dose that nobody else would have got came to them against their wish: it goes.
            against = not person.wanted("dose") and _doses(old) != _doses(sheet)
            if (text, rows) == was and not against:
                continue
            _edit(out, after, sheet, person, text, rows)


def show_anew(ctx: Context, out: Effects, chart: Chart, sheet: Sheet, person: Person) -> None:
    """Edit a person's copy of a sent prompt to what is so now."""
    if shown_to(sheet, person).lines:
        _edit(out, chart, sheet, person, *_looks(ctx, chart, sheet, person))


def _edit(out: Effects, chart: Chart, sheet: Sheet, person: Person, text: str, rows: Rows) -> None:
    out.edit(person.chat, prompt_key(sheet, person.chat), text, rows, home=True, patient=chart.id)
    if sheet.reminded is not None:
        key = reminder_key(sheet, person.chat, sheet.reminded)
        out.edit(person.chat, key, text, rows, home=True, patient=chart.id)


def _doses(sheet: Sheet) -> tuple[Line, ...]:
    return tuple(line for line in sheet.lines if line.item.kind == "dose")


def _bound_anew(ctx: Context, before: Chart, after: Chart) -> bool:
    """Whether something that governs every prompt is otherwise now."""
    return (
        ctx.standing(before) != ctx.standing(after)
        or before.late_taps != after.late_taps
        or before.releases != after.releases
        or before.state != after.state
        or before.plan != after.plan
        or before.dose_lines != after.dose_lines
        or before.history != after.history
    )


def _state(ctx: Context, chart: Chart, sheet: Sheet) -> tuple[object, ...]:
    """All that the looks of a prompt hang on, in whatever language."""
    standing = ctx.standing(chart)
    lines = (
        (x.id, x.state, x.choice, x.at, x.by, x.item.text, look(chart, standing, x, ctx.now))
        for x in sheet.lines
    )
    return (chart.state, type(standing.mode), chart.plan.patient, *lines)


def _looks(ctx: Context, chart: Chart, sheet: Sheet, person: Person) -> tuple[str, Rows]:
    theirs = shown_to(sheet, person)
    return (
        sheet_text(ctx, chart, theirs, person.lang),
        sheet_buttons(ctx, person.chat, chart, theirs, person.lang),
    )
