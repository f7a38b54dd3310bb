"""Being reminded later: of what waits now, at the time that was said, the one who asked."""

from __future__ import annotations

from datetime import datetime, time, timedelta

from bot.context.contexts import AtHome
from bot.context.words import when
from bot.household.sheet import remind_key
from bot.model.chart import Chart, Person
from bot.model.effects import Due, Effects
from bot.model.observation import Observation

USUAL = timedelta(hours=1)
"""How much later, where no time was said."""


def snoozed_until(ctx: AtHome, chart: Chart, said: Observation) -> datetime:
    """The time that was said: after so long, or at that hour; an hour where none was."""
    if said.at is not None:
        hour, minute = said.at.split(":")
        local = chart.local(ctx.now)
        at = datetime.combine(local.date(), time(int(hour), int(minute)), local.tzinfo)
        if at <= local:
            at += timedelta(days=1)
        return at.astimezone(ctx.now.tzinfo)
    if said.minutes is not None:
        return ctx.now + timedelta(minutes=said.minutes)
    return ctx.now + (timedelta(hours=said.hours) if said.hours else USUAL)


def snooze(ctx: AtHome, out: Effects, chart: Chart, person: Person, at: datetime) -> str:
    """Remind ``person`` at ``at`` of what waits now; what they are told."""
    until = when(chart.local(at), chart.local(ctx.now), person.lang)
    asked = chart.asked(ctx.now)
    if not asked:
        return ctx.words.say("nothing_open", person.lang, at=until)
    # One's later is not the others': each is reminded at the hour that they said.
    data = {"prompt": asked[0].id, "asked": True, "chat": person.chat}
    key = remind_key(asked[0], person)
    out.add(Due(key, "remind", at, chart.id, data))
    return ctx.words.say("paused_until", person.lang, at=until)
