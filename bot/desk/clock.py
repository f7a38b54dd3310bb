"""An administrator looks at the computer's clock, and says that it is right."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from bot.context.contexts import AtDesk
from bot.model.chart import Member
from bot.model.chat import Incoming
from bot.model.effects import ClockIsRight, Effects, Entry


def clock(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, argument: str) -> None:
    """``/clock`` shows it; ``/clock ok`` lets reminders and questions go on by it."""
    zone = ctx.clinic.zone
    shows = ctx.now + ctx.practice.clock_ahead
    time = f"{shows.astimezone(ZoneInfo(zone)):%Y-%m-%d %H:%M}"
    right = argument.casefold() == "ok"
    if right:
        out.add(
            ClockIsRight(),
            Entry("desk", actor.name, f"says that the computer's clock is right: {time} ({zone})"),
        )
    word = "desk_clock_right" if right else "desk_clock_shows"
    out.say(
        event.chat,
        ctx.words.say(word, ctx.clinic.language, time=time, zone=zone),
        reply_to=event.message,
    )
