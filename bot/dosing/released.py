"""What becomes of doses whose hour passed while they were held."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from bot.context.contexts import Context
from bot.context.words import when
from bot.model.chart import MOVED, Chart, Line
from bot.model.effects import Effects, Mark, MoveLine
from bot.model.purpose import Purpose
from bot.model.topic import AboutPatient
from bot.plan.doses import DueAt, MayGive, Yes
from bot.standing.standing import Emergency, Ordinary

from .order import doses_of


def freed_lines(chart: Chart, med: str, now: datetime) -> list[tuple[Line, MayGive]]:
    """The latest held dose of ``med`` whose hour has passed, and whether it may still be
    given: by its own hours, the minimum gap and the dose that follows. None or one."""
    doses = doses_of(chart, med)
    if doses is None or doses.medicine.is_withheld(now):
        return []
    passed = [
        (line, slot)
        for line in doses.lines
        if line.state == "held" and (slot := line.item.slot_at) is not None and slot <= now
    ]
    return [(line, doses.may(slot, now)) for line, slot in passed[-1:]]


def come_again(
    ctx: Context, out: Effects, chart: Chart, meds: Sequence[str]
) -> list[tuple[str, datetime]]:
    """A dose whose hour passed on hold, and that may still be given, comes now; of the other
    medicines, when the next one is due."""
    found: list[tuple[str, datetime]] = []
    for name in meds:
        for line, verdict in freed_lines(chart, name, ctx.now):
            if isinstance(verdict, Yes):
                key = f"{MOVED}{out.event}"  # what comes now comes in one message
                out.add(
                    Mark(line.id, "planned"),
                    MoveLine(chart.id, line.id, key, ctx.now, chart.day(ctx.now)),
                )
                break
        else:
            # By the gap from what was given: its planned hour may be too soon after that.
            doses = doses_of(chart, name)
            coming = doses.next(ctx.now) if doses is not None else None
            if isinstance(coming, DueAt):
                found.append((name, max(coming.at, ctx.now)))
    return found


def after_emergency(ctx: Context, out: Effects, before: Chart, after: Chart) -> None:
    """An emergency is closed: doses that passed meanwhile or on a hold that was released in it,
    and that nothing else holds, come now where they may, and else it is said when the next
    ones are due."""
    was, now = ctx.standing(before).mode, ctx.standing(after)
    if not isinstance(was, Emergency) or not isinstance(now.mode, Ordinary):
        return
    meds = [
        one.name
        for one in after.plan.medicines
        if not now.holds_on_medicine(one.name)
        and any(
            isinstance(verdict, Yes) or (line.item.slot_at and was.since <= line.item.slot_at)
            for line, verdict in freed_lines(after, one.name, ctx.now)
        )
    ]
    due = come_again(ctx, out, after, meds)
    for person in after.people if due else ():
        if person.reachable:
            lines = [
                ctx.words.say(
                    "dose_next_at", person.lang, name=after.name, med=med,
                    when=when(after.local(slot), after.local(ctx.now), person.lang),
                )
                for med, slot in due
            ]  # fmt: skip
            out.tell(
                person, Purpose.hold_notice, "\n".join(lines), patient=after.id,
                topic=AboutPatient(after.id),
            )  # fmt: skip
