"""A dose that counted for a slot is taken back after the prompt of that slot went out without
it, because it had been told already or was on hold: nobody was ever asked for it. It comes now
where it may; else it is said that none counts for that hour. After a death nothing is said; it
is said when the death is taken back."""

from __future__ import annotations

from datetime import datetime

from bot.context.contexts import Context
from bot.context.words import when
from bot.model.chart import MOVED, Chart, Line, Sheet
from bot.model.effects import Due, Effects, Mark, MoveLine
from bot.model.hold import Everything
from bot.model.purpose import Purpose
from bot.model.topic import AboutPatient
from bot.standing.holds import covered
from bot.standing.standing import Over

from .dosing import next_words
from .showable import look


def come_back(ctx: Context, out: Effects, before: Chart, after: Chart) -> None:
    """Every such dose of this event, once."""
    standing = ctx.standing(after)
    if isinstance(standing.mode, Over):
        out.add(*(Mark(line.id, "planned") for line in _never_asked(before, after)))
        return
    for line in _left_planned(after) if isinstance(ctx.standing(before).mode, Over) else ():
        out.add(Mark(line.id, "unanswered"))
        _tell(ctx, out, after, line)
    for sheet in _never_sent(before, after):
        # A plan that was changed meanwhile had nothing to send then.
        at = max(sheet.due_at, ctx.now)
        out.add(Due(f"prompt:{sheet.id}", "prompt", at, after.id, {"prompt": sheet.id}))
    for line in _never_asked(before, after):
        if look(after, standing, line, ctx.now) is None:
            key = f"{MOVED}{out.event}"
            out.add(
                Mark(line.id, "planned"),
                MoveLine(after.id, line.id, key, ctx.now, after.day(ctx.now)),
            )
        else:
            out.add(Mark(line.id, "unanswered"))
            _tell(ctx, out, after, line)


def _left_planned(after: Chart) -> list[Line]:
    """Doses of which no message spoke, though their prompt has gone out."""
    sent = {sheet.id for sheet in after.sheets if sheet.sent_at is not None}
    return [x for x in after.dose_lines if x.state == "planned" and x.prompt in sent]


def _never_sent(before: Chart, after: Chart) -> list[Sheet]:
    """Prompts to come with a dose that waits for its hour again."""
    was = {line.id for line in before.dose_lines if line.state == "answered"}
    return [
        sheet
        for sheet in after.sheets
        if sheet.sent_at is None
        and sheet.id > 0
        and any(x.id in was and x.item.kind == "dose" and x.state == "planned" for x in sheet.lines)
    ]


def _never_asked(before: Chart, after: Chart) -> list[Line]:
    """Doses open again of which no message of their hour spoke."""
    sheets = {sheet.id: sheet for sheet in after.sheets}
    was = {line.id: line for line in before.dose_lines if line.choice == "given"}
    found = []
    for line in after.dose_lines:
        old, sheet = was.get(line.id), sheets.get(line.prompt)
        if old is None or line.state != "open" or sheet is None or sheet.sent_at is None:
            continue
        told = [n.at for n in before.history if before.sources[n.id][0] == old.source]
        if told and (max(told) < sheet.sent_at or _released_since(after, line, max(told))):
            found.append(line)
    return found


def _released_since(chart: Chart, line: Line, told: datetime) -> bool:
    """Whether it was told as given while on hold: at its release nobody was asked for it."""
    return any(
        one.at > told
        and (isinstance(one.target, Everything) or line.item.med in covered(one.target, chart.plan))
        for one in chart.releases
    )


def _tell(ctx: Context, out: Effects, chart: Chart, line: Line) -> None:
    slot = line.item.slot_at
    for person in chart.people if slot is not None else ():
        if person.reachable:
            text = ctx.words.say(
                "dose_not_counted", person.lang, name=chart.name, med=line.item.med,
                when=when(chart.local(slot or ctx.now), chart.local(ctx.now), person.lang),
                next=next_words(ctx, chart, line, person.lang),
            )  # fmt: skip
            out.tell(
                person, Purpose.hold_notice, text.strip(), patient=chart.id,
                topic=AboutPatient(chart.id),
            )  # fmt: skip
