"""A button under a message was pressed by someone at home."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime

from bot.cases.cases import Said
from bot.cases.noting import advice_for, purpose_of, take_note
from bot.context.contexts import AtHome, Context
from bot.context.phones import emergency_phones
from bot.context.words import clock
from bot.dosing.dosing import after_given, next_words
from bot.dosing.showable import AskedWhen, Held, TooSoon, WhyNot, why_not
from bot.household import clarify
from bot.household.emergency import open_emergency
from bot.household.late import ask_when, is_late
from bot.household.sheet import choice_label, tappable, why_words
from bot.household.twice import ask_same
from bot.household.undo import take_back
from bot.model.chart import Chart, Line, Person, Sheet
from bot.model.chat import Incoming
from bot.model.conversation import Describe, Unclear
from bot.model.effects import Ask, Effects, Entry, Heard, Mark
from bot.model.finding import Finding
from bot.model.hold import ByMouth
from bot.model.ids import NO_SOURCE, LineId, PromptId, SourceId, tap_source
from bot.model.observation import Observation
from bot.model.purpose import Purpose
from bot.model.text import Lang
from bot.model.topic import AboutPatient, AboutQuestion
from bot.standing.standing import TAKEN
from bot.standing.words import target_words


def tap_line(
    ctx: AtHome, out: Effects, event: Incoming, person: Person, line_id: LineId, choice_id: str
) -> bool:
    """One line answered. False when there is no such line or choice (nothing is done)."""
    found = _find(ctx, line_id)
    if found is None:
        return False
    chart, sheet, line = found
    choice = next((c for c in line.item.choices if c.id == choice_id), None)
    if choice is None or sheet.sent_at is None:
        return False
    words, lang = ctx.words, person.lang
    # A dose given before the patient went back to the clinic is worth knowing there.
    before_stay = chart.state == "paused" and line.item.kind == "dose"
    if ctx.standing(chart).death_told or (chart.state != "active" and not before_stay):
        out.answer(event.callback, words.say("tap_over", lang))
        return True
    if line.state == "answered":
        out.answer(event.callback, already(ctx, chart, line, person))
        return True
    reason = why_not(chart, ctx.standing(chart), line, ctx.now)
    if line.state == "held" or _refuses(reason, line):
        _refuse(ctx, out, event, person, chart, line, reason)
        return True
    if choice_id == good(line) and is_late(ctx, sheet, line):
        out.answer(event.callback)
        ask_when(ctx, out, chart, person, sheet, [line], tap_source(event.update))
        return True
    out.answer(event.callback, words.say("tap_noted", lang, choice=choice.label.say(lang)))
    answers = [(line, choice_id)]
    answer(ctx, out, tap_source(event.update), person, chart, answers)
    if not choice.notes:
        question = Describe(f"describe-{line.id}", chart.id, line.item.asks, ctx.now)
        topic = AboutQuestion(chart.id, question.key)
        text = words.say("describe", lang)
        out.tell(person, Purpose.question, text, patient=chart.id, topic=topic)
        out.add(Ask(person.chat, question))
    return True


def tap_all(ctx: AtHome, out: Effects, event: Incoming, person: Person, sheet_id: PromptId) -> bool:
    """Everything to be done on this prompt was done."""
    for chart in ctx.charts:
        sheet = chart.sheet(sheet_id)
        if sheet is None or sheet.sent_at is None:
            continue
        todo = [
            line for line in tappable(ctx, chart, sheet) if line.item.kind in ("dose", "session")
        ]
        if not todo or chart.state != "active":
            out.answer(event.callback, ctx.words.say("nothing_open", person.lang))
            return True
        out.answer(event.callback, ctx.words.say("tap_noted", person.lang, choice="✓"))
        old = [line for line in todo if is_late(ctx, sheet, line)]
        now = [(line, good(line)) for line in todo if line not in old]
        if now:
            answer(ctx, out, tap_source(event.update), person, chart, now)
        if old:
            ask_when(ctx, out, chart, person, sheet, old, tap_source(event.update))
        return True
    return False


def _refuses(reason: WhyNot | None, line: Line) -> bool:
    """A line of which it is asked when it was given may be tapped again: asked again."""
    match reason:
        case None:
            return False
        case AskedWhen(tap=tap):
            return line.id not in tap.lines
        case _:
            return True


def _refuse(
    ctx: AtHome, out: Effects, event: Incoming, person: Person, chart: Chart, line: Line,
    reason: WhyNot | None,
) -> None:  # fmt: skip
    """A button of an old message: it is said why not, and nothing is noted. Whether a dose
    was given all the same is asked, since the next one hangs on it."""
    lang = person.lang
    words = why_words(ctx, chart, line, reason, lang) or ctx.words.say("tap_over", lang)
    out.answer(event.callback, words)
    out.add(Heard(chart.id))
    logged = f"{_short(line, ctx.clinic.language)} ({words})"
    data = {"source": tap_source(event.update), "refused": line.item.id}
    out.add(Entry("tapped", person.name, logged, chart.id, data))
    match reason:
        case Held(holds=holds):
            what = line.item.med or _short(line, lang)
            if line.item.asks in TAKEN and any(one.target == ByMouth() for one in holds):
                what = target_words(ByMouth(), lang, ctx.words)
            text = ctx.words.say("hold_refused", lang, what=what, phone=emergency_phones(ctx, lang))
            if line.item.kind == "dose":
                text = f"{text} {ctx.words.say('hold_if_given', lang)}"
            elif line.item.asks in TAKEN:
                text = f"{text} {ctx.words.say('hold_if_eaten', lang, name=chart.name)}"
            topic = AboutPatient(chart.id)
            out.tell(person, Purpose.hold_notice, text, patient=chart.id, topic=topic)
        case TooSoon(given=given):
            doses = [x for x in chart.doses(line.item.med or "") if x.at == given]
            if doses:
                ask_same(ctx, out, chart, person, doses[-1], ctx.now)
        case _:
            pass


def tap_undo(
    ctx: AtHome, out: Effects, event: Incoming, person: Person, sheet_id: PromptId
) -> bool:
    """Take back this person's last tap on this prompt."""
    for chart in ctx.charts:
        sheet = chart.sheet(sheet_id)
        if sheet is None:
            continue
        mine = [
            line
            for line in sheet.lines
            if line.state == "answered" and _mine(line, person) and line.source
        ]
        if not mine:
            out.answer(event.callback, ctx.words.say("undo_nothing", person.lang))
            return True
        here = {line.source for line in mine}
        told = [chart.sources[noted.id][0] for noted in chart.history]
        last = next((source for source in reversed(told) if source in here), mine[-1].source)
        out.answer(event.callback)
        take_back(ctx, out, chart, person, last or NO_SOURCE)
        return True
    return False


def tap_value(
    ctx: AtHome,
    out: Effects,
    event: Incoming,
    person: Person,
    chart: Chart,
    about: str,
    value: str,
) -> bool:
    """What was meant by an unclear message, tapped."""
    try:
        observation = Observation(about, value)
    except ValueError:
        return False
    words = ctx.words.observation(observation, person.lang)
    out.answer(event.callback, ctx.words.say("noted", person.lang, what=words))
    unclear = ctx.conversation.find(Unclear)
    text = f"{unclear.text} → {words}" if unclear else words
    said = Said(person.name, text, tap_source(event.update), by_button=unclear is None)
    findings = take_note(ctx, out, chart, [observation], said, person=person)
    clarify.settle(ctx, out, person.chat)
    advice = advice_for(ctx, chart, findings, person.lang)
    urgent = purpose_of(findings) is Purpose.urgent
    parts = advice if urgent else [ctx.words.say("noted", person.lang, what=words), *advice]
    out.tell(
        person,
        purpose_of(findings),
        "\n\n".join(parts),
        patient=chart.id,
        urgent=bool(findings),
    )
    return True


def _mine(line: Line, person: Person) -> bool:
    """Whether this person answered the line: by who they are, never by how they are called."""
    return line.person == person.id


def _find(ctx: AtHome, line_id: LineId) -> tuple[Chart, Sheet, Line] | None:
    for chart in ctx.charts:
        for sheet in chart.sheets:
            for line in sheet.lines:
                if line.id == line_id:
                    return chart, sheet, line
    return None


def already(ctx: Context, chart: Chart, line: Line, person: Person) -> str:
    """What stands already; in an emergency without the words of the choice ("normal")."""
    if open_emergency(chart) is not None:
        return ctx.words.say("tap_in_emergency", person.lang)
    key = "tap_already" if _mine(line, person) else "tap_other"
    at = clock(chart.local(line.at)) if line.at else ""
    return ctx.words.say(
        key,
        person.lang,
        choice=choice_label(ctx.words, line, person.lang),
        at=at,
        by=line.by or "",
    )


def good(line: Line) -> str:
    """The choice of a dose or session that means: done."""
    for choice in line.item.choices:
        if any(note.value in ("given", "done") for note in choice.notes):
            return choice.id
    return line.item.choices[0].id


def answer(
    ctx: Context,
    out: Effects,
    source: SourceId,
    person: Person,
    chart: Chart,
    answers: list[tuple[Line, str]],
    *,
    at: datetime | None = None,
    silent: bool = False,
    text: str = "",
) -> bool:
    """Mark lines, keep what they note, tell what follows, and bring all copies up to date.
    ``silent``: whoever tapped is not told; ``text``: own words in place of a button. True
    when they were told what follows."""
    at = at or ctx.now
    marks: list[Mark] = []
    observations: list[Observation] = []
    tell: list[str] = []
    more: list[Finding] = []
    labels: list[str] = []
    for line, choice_id in answers:
        marks.append(
            Mark(line.id, "answered", choice_id, person.name, at, source, person.id or None)
        )
        choice = next(c for c in line.item.choices if c.id == choice_id)
        labels.append(f"{choice.label.say(person.lang)}: {_short(line, person.lang)}")
        for note in choice.notes:
            seen = note.observation()
            if seen.about == "dose":
                seen = replace(seen, med=line.item.med)
            observations.append(seen)
            words, findings = _about_dose(ctx, out, chart, line, seen, at, person.lang)
            tell += words
            more += findings
    out.add(*marks)
    said = Said(person.name, text or "; ".join(labels), source, by_button=not text)
    out.add(Heard(chart.id))
    out.add(Entry("tapped", person.name, said.text, chart.id, {"source": source}))
    known = person if person.id else None
    findings = take_note(ctx, out, chart, observations, said, person=known, more=more)
    advice = advice_for(ctx, chart, findings, person.lang)
    tell = advice if purpose_of(findings) is Purpose.urgent else [*tell, *advice]
    if not tell or silent:
        return False
    out.tell(
        person,
        purpose_of(findings),
        "\n\n".join(tell),
        patient=chart.id,
        urgent=bool(findings),
    )
    return True


def _about_dose(
    ctx: Context,
    out: Effects,
    chart: Chart,
    line: Line,
    seen: Observation,
    at: datetime,
    lang: Lang,
) -> tuple[list[str], list[Finding]]:
    """What follows from a dose given or not given."""
    if seen.about != "dose":
        return [], []
    if seen.value == "given":
        return after_given(ctx, out, chart, line.item.med, at, lang, line=line)
    following = next_words(ctx, chart, line, lang)
    return [ctx.words.say("dose_missed", lang, next=following).strip()], []


def _short(line: Line, lang: Lang) -> str:
    """A line in a few words, for the log and for staff."""
    text = line.item.text.say(lang)
    return text if len(text) <= 60 else text[:59] + "…"
