"""A message does not arrive, or will not: staff hear of it, so that somebody phones."""

from __future__ import annotations

from collections.abc import Mapping, Set
from typing import Any, Final

from bot.context.contexts import FellDue
from bot.model.chart import Chart
from bot.model.effects import Effects
from bot.model.ids import PromptId
from bot.model.topic import AboutPatient

GONE: Final = "gone"
"""The chat of somebody at home cannot be reached any more."""
NOT_THROUGH: Final = "not through"
"""A message to it has waited for minutes, and still does."""
REFUSED, UNSHOWN = "refused", "unshown"
"""What falls due when the platform will never take a message; how the key of its row begins
where nothing of the message is shown."""
AT_MOST = 700
"""So many letters of it are shown."""


def unreachable(ctx: FellDue, out: Effects, chart: Chart, data: Mapping[str, Any]) -> None:
    """Somebody at home cannot be reached, not any more or not for minutes."""
    person = next((one for one in chart.people if one.chat == int(data["chat"])), None)
    if person is None or chart.over:
        return
    how = data.get("how", NOT_THROUGH if data.get("tried") else GONE)
    said = "desk_not_through" if how == NOT_THROUGH else "desk_unreachable"
    words = ctx.words.say(
        said, ctx.clinic.language, by=person.name, name=chart.name,
        phone=chart.plan.phone or "–",
    )  # fmt: skip
    _tell_staff(ctx, out, words, chart)


def refused(ctx: FellDue, out: Effects, data: Mapping[str, Any]) -> None:
    """The platform will never take this message. Words that it refused it may refuse here, too:
    then staff hear what it was about, and of what was for them where it stands."""
    chart = ctx.charts[0] if ctx.charts else None
    lang = ctx.clinic.language
    name = chart.name if chart is not None else "–"
    if "link" in data:  # named, never shown: who reads it comes in by it
        words = ctx.words.say("desk_link_lost", lang, name=str(data["link"]))
        asked = {int(one) for one in data["asked"]}
        _tell_staff(ctx, out, words, chart, asked=asked)
        return
    if chart is None or "chat" not in data:
        _tell_staff(ctx, out, ctx.words.say("desk_unshown", lang, name=name), chart, urgent=True)
        return
    person = next((one for one in chart.people if one.chat == int(data["chat"])), None)
    sheet = chart.sheet(PromptId(int(data["prompt"]))) if "prompt" in data else None
    meds = dict.fromkeys(line.item.med for line in sheet.lines if line.item.med) if sheet else {}
    words = ctx.words.say(
        "desk_refused", lang, by=person.name if person else chart.plan.owner, name=name,
        phone=chart.plan.phone or "–", what=str(data["text"])[:AT_MOST] or ", ".join(meds) or "–",
    )  # fmt: skip
    _tell_staff(ctx, out, words, chart, urgent=True)


def _tell_staff(
    ctx: FellDue, out: Effects, words: str, chart: Chart | None, *, urgent: bool = False,
    asked: Set[int] = frozenset(),
) -> None:  # fmt: skip
    """Where it was ``asked``; else in the clinic's own chats that can be reached; where there is
    none, in everybody's own."""
    reached = [desk for desk in ctx.desks if desk.lost is None]
    desks = [desk.chat for desk in reached if desk.rank == 0]
    people = [one.chat for one in ctx.staff if one.chat and one.lost is None]
    there = [one for one in (*(desk.chat for desk in reached), *people) if one in asked]
    topic = AboutPatient(chart.id) if chart is not None else None
    for chat in dict.fromkeys(there or desks or people or [desk.chat for desk in ctx.desks]):
        out.say(chat, words, patient=chart.id if chart else None, topic=topic, urgent=urgent)
