"""The bot was away: switched off for hours, or set back to an older copy of its records. Doses
that fell due meanwhile are asked about, never prompted: they may have been given."""

from __future__ import annotations

from datetime import datetime

from bot.context.contexts import FellDue
from bot.context.phones import whom_to_phone
from bot.context.words import when
from bot.model.chart import Chart, Sheet
from bot.model.effects import CancelDue, Effects, Entry, Mark, PromptSent, PutHold
from bot.model.hold import AWAY, LAST_DOSE, ByAnswer, FromFinding, HeldMedicine, Hold
from bot.model.ids import HoldId
from bot.model.purpose import Purpose
from bot.model.topic import AboutPatient
from bot.standing.medicines import in_course
from bot.standing.standing import Over, Paused

KIND = "away"


def back_again(
    ctx: FellDue, out: Effects, chart: Chart, since: datetime, *, restored: bool
) -> None:
    """One message that says what matters now; the prompts since ``since`` are laid aside, and
    each medicine of them waits until it is told when it was last given. ``restored``: what was
    told since then is lost, too, so every medicine is asked about."""
    mode = ctx.standing(chart).mode
    if chart.state != "active" or isinstance(mode, Over | Paused):
        return
    missed = [one for one in chart.sheets if since < one.due_at <= ctx.now and not one.sent_at]
    laid = _laid_aside(out, missed)
    meds = [
        (place, one)
        for place, one in enumerate(chart.plan.medicines)
        if in_course(chart.plan, one, ctx.now) and (restored or one.name in laid)
    ]
    for place, medicine in meds:
        because = ctx.words.words["away_because"]
        cause = FromFinding(AWAY, because, None, out.event)
        target = HeldMedicine(medicine.name)
        id = HoldId(f"{out.event}:{AWAY}:{place}")
        out.add(PutHold(chart.id, Hold(id, target, ctx.now, cause, ByAnswer(LAST_DOSE), True)))
    data = {"since": since.isoformat(), "prompts": [one.id for one in missed]}
    out.add(Entry("not_sent", "bot", _log_words(ctx, chart, since), chart.id, data))
    key = "restored_told" if restored else "away_told"
    for person in chart.people:
        if not person.reachable:
            continue
        lang = person.lang
        then = when(chart.local(since), chart.local(ctx.now), lang)
        text = ctx.words.say(key, lang, name=chart.name, since=then, phone=whom_to_phone(ctx, lang))
        if meds:
            what = ", ".join(medicine.name for _, medicine in meds)
            text = f"{text} {ctx.words.say('away_doses', lang, med=what)}"
        topic = AboutPatient(chart.id)
        out.tell(person, Purpose.admin, text, patient=chart.id, topic=topic, urgent=True)


def _laid_aside(out: Effects, missed: list[Sheet]) -> set[str]:
    """The prompts that did not come, and will not; the medicines of them not told of since."""
    names: set[str] = set()
    for sheet in missed:
        out.add(CancelDue(f"prompt:{sheet.id}"), PromptSent(sheet.id))
        for line in sheet.lines:
            if line.state == "planned":
                out.add(Mark(line.id, "unanswered"))
                names |= {line.item.med} if line.item.med else set()
    return names


def _log_words(ctx: FellDue, chart: Chart, since: datetime) -> str:
    lang = ctx.clinic.language
    then = when(chart.local(since), chart.local(ctx.now), lang)
    return ctx.words.say("away_logged", lang, since=then)
