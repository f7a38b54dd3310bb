"""A message in the owner's own words: read, noted, answered, and escalated."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime

from bot.cases.cases import Said, raise_findings
from bot.cases.noting import advice_for, take_note
from bot.context.contexts import AtHome
from bot.context.phones import both_phones, what_happens_now
from bot.dosing.dosing import given_again
from bot.household import clarify, doubt_words, doubts, talking
from bot.household.aftermath import aftermath
from bot.household.ask_each import ask_each
from bot.household.asked import (
    ANSWERS,
    asked_sheet,
    asked_topic,
    describing,
    understand,
    waiting_doses,
)
from bot.household.bare_answers import all_to_do, bare_answers, says_done
from bot.household.done_on_hold import done_on_hold
from bot.household.dose_answers import asked_not_told, still_to_do
from bot.household.dose_told import (
    Follows,
    ask_when,
    at_its_hour,
    by_medicine,
    dose_told,
    hour_told,
)
from bot.household.doubtful import alarming
from bot.household.emergency import emergency_buttons
from bot.household.expected import answer_question
from bot.household.may_i import known_answer, without_question
from bot.household.meant_another import meant_another
from bot.household.not_given import ANY, may_be_meant
from bot.household.reading_context import context_for
from bot.household.sheet import to_do
from bot.household.snooze import snooze, snoozed_until
from bot.household.which_dose import counted, picked, told_given, too_much
from bot.model.action import Leaving
from bot.model.chart import Chart, Line, Person, Sheet
from bot.model.conversation import Unclear, Waiting
from bot.model.effects import CaseChange, Effects, Entry, Heard, Mark, Settle
from bot.model.finding import Finding
from bot.model.ids import NO_SOURCE, SourceId
from bot.model.observation import Observation, as_choice
from bot.model.purpose import Purpose
from bot.model.reading import Reading
from bot.model.topic import AboutPatient, AboutPrompt
from bot.model.urgency import Urgency
from bot.standing.standing import Over
from bot.triage import handed_over

_BARE_TIME = re.compile(
    r"^\W*(this|last|in the|esta|por la|en la)\s+"
    r"(morning|afternoon|evening|night|ma[nñ]ana|tarde|noche)\W*$",
    re.IGNORECASE,
)
"""Read as a greeting ("this morning"), but it says when something was."""


@dataclass(frozen=True, slots=True)
class OwnWords:
    """Somebody's own words, and what is known of how they came.

    ``without`` names the source that they correct; ``shown`` is what staff see in place of
    the words alone; ``about`` what was asked, where it is known (a picture);
    ``looked_at``: a clinician is shown them in any case, so they need not be understood;
    ``of_the_past``: a medicine in them that is not of the plan is no dose of today;
    ``first_at`` when a message that was edited, or read late, was first sent: a dose in it was
    given then.
    """

    text: str
    source: SourceId
    without: SourceId = NO_SOURCE
    shown: str = ""
    about: str = ""
    looked_at: bool = False
    of_the_past: bool = False
    first_at: datetime | None = None


def reply(ctx: AtHome, out: Effects, chart: Chart, person: Person, words: OwnWords) -> None:
    """Read the words in the light of what was asked, and do what follows."""
    text, source = words.text, words.source
    moment = words.first_at or ctx.now
    sheet = asked_sheet(ctx, chart)
    asked = words.about or asked_topic(ctx, sheet)
    understood = understand(ctx, chart, person, text, sheet, asked, moment)
    reading, done = understood.reading, False
    if understood.bare and sheet:
        context = context_for(chart, asked, person, moment)
        bare = bare_answers(text, sheet, context)
        done = says_done(sheet, bare)
        waiting = [x for x in sheet.open if x.item.kind in ("dose", "session")]
        if all(line in to_do(ctx, chart, sheet) for line in waiting):
            reading = all_to_do(text, sheet, bare) or reading
    if words.of_the_past:
        reading = replace(reading, observations=_of_now(chart, reading.observations))
    reading = asked_not_told(chart, text, reading)
    reading = told_given(chart, person, text, reading, moment)
    reading = meant_another(chart, person, text, reading, moment)
    waits = waiting_doses(chart, sheet, moment)
    reading = too_much(chart, waits, text, counted(text, reading))
    reading = still_to_do(sheet, text, reading)
    reading = _denied(chart, waits, person, reading, moment)
    quoted = sheet if isinstance(ctx.topic, AboutPrompt) else None
    follows = Follows(source, text, moment, quoted=quoted)
    named = tuple(x for x in reading.observations if not _of_none(chart, waits, x, follows))
    which = len(named) < len(reading.observations)
    if which:
        reading = replace(reading, observations=named, understood=False)
    known = known_answer(ctx, chart, text, reading, person.lang)
    after = aftermath(ctx, chart, reading, text)
    if known:
        reading = without_question(reading)
    said = Said(person.name, words.shown or text, source, topics=reading.questions)
    out.add(Heard(chart.id))
    out.add(Entry("said", person.name, text, chart.id, {"source": source, "asked": asked}))
    in_hand = talking.case_in_hand(ctx, chart) is not None
    # Staff read these words as they are; what they do not need to act on is a mere thank-you.
    thanked = in_hand and talking.is_thanks(text) and not reading.observations
    copied = False
    if reading.understood or words.looked_at or thanked:
        copied = talking.copy_to_case(ctx, out, chart, person, text)
    if (described := describing(ctx, sheet)) is not None:
        out.add(Settle(person.chat, described.key))
    thanks = reading.greeting and reading.understood and not reading.observations
    if alarming(reading.asks):
        thanks = thanked = False
    if thanks and _BARE_TIME.match(text):
        thanks, reading = False, replace(reading, understood=False, greeting=False)
    if (thanks or thanked) and not after and not chart.over and not ctx.standing(chart).death_told:
        out.tell(person, Purpose.answer, ctx.words.say("thanks", person.lang), patient=chart.id)
        return
    follows.tell += known
    _doses_and_sessions(ctx, out, chart, person, sheet, reading.observations, follows)
    observations, tell = follows.observations, follows.tell
    asking = doubts.consider(ctx, chart, reading, observations)
    more = [*follows.more, *asking.findings, *after]
    if after:
        talking.after_close(ctx, out, chart, person)
    out.add(*follows.marks)
    findings = take_note(
        ctx, out, chart, observations, said, person=person, more=more, without=words.without
    )
    if reading.understood and not (copied or findings) and ctx.standing(chart).dead:
        talking.copy_after_death(ctx, out, chart, person, text)
    _answer(
        ctx, out, chart, person, reading, text, observations, findings, tell, bool(words.without)
    )
    _requests(ctx, out, chart, person, observations)
    if asking.asked and not (reading.understood or words.looked_at):
        talking.copy_to_case(ctx, out, chart, person, text)
    doubts.follow_up(
        ctx, out, chart, person, asking, Waiting(said.text, source), understood=reading.understood
    )
    passed = doubt_words.heard(ctx, out, chart, person, text, source, reading, findings)
    if reading.understood:
        clarify.settle(ctx, out, person.chat)
    elif words.looked_at:
        out.add(Entry("unclear", "bot", text, chart.id, {"source": source}))
    elif understood.bare and ask_each(ctx, out, chart, person, sheet):
        clarify.settle(ctx, out, person.chat)
    elif not (asking.asked or asking.raised or passed or after):
        rest = bool(observations)
        _not_understood(ctx, out, chart, person, said, rest=rest, done=done, which=which)


def _of_none(chart: Chart, waiting: Sequence[Line], seen: Observation, follows: Follows) -> bool:
    """A dose of nobody knows which medicine: noted so, it would keep no gap. Asked."""
    if seen.med == ANY:
        return True
    if (seen.about, seen.value, seen.med) != ("dose", "given", None) or not chart.plan.medicines:
        return False
    text = follows.text
    meant = picked(chart, waiting, text, seen, follows.moment)
    if meant is None:
        return True  # "gave both", where one was due
    if meant:
        return False
    if seen.count and 1 <= seen.count < len(waiting):
        return True  # "gave two of them": which?
    return all(one.med is None for one in by_medicine(chart, waiting, seen, follows.round, text))


def _denied(
    chart: Chart, waiting: Sequence[Line], person: Person, reading: Reading, moment: datetime
) -> Reading:
    """ "I did not give it", right after it was noted: that one. Where it may be another, the
    medicine is left open, and asked."""
    if "dose" in reading.bare:
        return reading
    seen = []
    for one in reading.observations:
        unnamed = (one.about, one.value, one.med) == ("dose", "missed", None)
        meds = may_be_meant(chart, waiting, person, moment) if unnamed else []
        seen.append(replace(one, med=meds[0] if len(meds) == 1 else ANY) if meds else one)
    return replace(reading, observations=tuple(seen))


def _of_now(chart: Chart, seen: Sequence[Observation]) -> tuple[Observation, ...]:
    plans = {medicine.name for medicine in chart.plan.medicines}
    return tuple(one for one in seen if one.about != "dose" or one.med in plans)


def _doses_and_sessions(
    ctx: AtHome,
    out: Effects,
    chart: Chart,
    person: Person,
    sheet: Sheet | None,
    read_from: Sequence[Observation],
    follows: Follows,
) -> None:
    """Match what was read to the lines that it answers."""
    open_lines = list(sheet.open) if sheet else []
    doses = waiting_doses(chart, sheet, follows.moment)
    for seen in read_from:
        if seen.about != "dose":
            follows.observations.append(seen)
            if (held := done_on_hold(ctx, chart, seen, follows.text, person.lang)) is not None:
                follows.tell.append(held[0])
                follows.more.append(held[1])
            line = _line_answered(open_lines, seen, follows.marks)
            if line is not None:
                follows.mark(line, as_choice(seen), person, ctx.now)
            continue
        seen = at_its_hour(chart, seen, follows.moment)
        meant = picked(chart, doses, follows.text, seen, follows.moment)
        each = [replace(seen, med=med, count=None) for med in meant or ()]
        for dose in each or by_medicine(chart, doses, seen, follows.round, follows.text):
            one = given_again(chart, dose, follows.text, follows.moment)
            if dose_told(ctx, out, chart, person, one, follows):
                follows.observations.append(one)
    ask_when(ctx, out, chart, person, follows)


def _line_answered(lines: Sequence[Line], seen: Observation, marks: Sequence[Mark]) -> Line | None:
    taken = {mark.line for mark in marks}
    for line in lines:
        if line.id in taken or line.item.kind in ("dose", "picture", "notice"):
            continue
        if seen.about in ANSWERS.get(line.item.asks, (line.item.asks,)):
            return line
    return None


def _answer(
    ctx: AtHome,
    out: Effects,
    chart: Chart,
    person: Person,
    reading: Reading,
    text: str,
    observations: Sequence[Observation],
    findings: Sequence[Finding],
    tell: Sequence[str],
    corrected: bool,
) -> None:
    """What the owner hears back: what to do first, then what was understood."""
    words, lang = ctx.words, person.lang
    urgent = advice_for(ctx, chart, findings, lang)
    top = max((finding.urgency for finding in findings), default=Urgency.none)
    joined = max((one.urgency for one in out.of(CaseChange)), default=Urgency.none)
    if urgent and top is Urgency.next_day and joined is Urgency.same_day:
        # It went to a case that is read sooner: so they are told.
        urgent[0] = what_happens_now(ctx, chart, joined, lang)
    told_dead = any(one.about == "life" for one in observations)
    alarm = top is Urgency.emergency and not told_dead
    if ctx.standing(chart).dead:
        if alarm and chart.state != "died":  # it cannot be both: who may live is helped first
            urgent.append(words.say("death_in_doubt", lang, name=chart.name))
        else:
            key = "death_after_alarm" if alarm else "death_after"
            text = words.say(key, lang, name=chart.name, phone=both_phones(ctx, lang))
            out.tell(person, Purpose.answer, text, patient=chart.id, topic=AboutPatient(chart.id))
            return
    if told_dead:
        text = words.say("death_told", lang, name=chart.name, phone=both_phones(ctx, lang))
        out.tell(person, Purpose.farewell, text, patient=chart.id, topic=AboutPatient(chart.id))
        return
    if top is Urgency.emergency:
        # Whom to phone and what to do: nothing else stands in the way of it.
        out.tell(
            person, Purpose.urgent, "\n\n".join(urgent), patient=chart.id,
            topic=AboutPatient(chart.id), urgent=True,
            buttons=emergency_buttons(ctx, person.chat, chart, lang),
        )  # fmt: skip
        return
    parts = list(urgent) if top is Urgency.same_day else []
    noted = [one for one in observations if one.about != "request"]
    if noted:
        what = words.observations(noted, lang, hour_told(ctx, chart, lang))
        matters = bool(urgent) or any(one.unsure for one in noted)
        matters = matters and not alarming(reading.asks)  # asked, or with staff, already
        key = "noted_unsure" if matters else "noted"
        several = sum(not one.over for one in ctx.charts) > 1
        said = words.say(key, lang, what=what)
        parts.append(f"{chart.name} · {said}" if several else said)
    if corrected:
        parts.insert(0, words.say("corrected", lang))
    asked_something = any(
        one.about == "request" and one.value == "question" for one in observations
    )
    if asked_something or reading.questions:
        parts += answer_question(ctx, chart, reading.questions, observations, lang, text)
    parts += tell
    if top is Urgency.next_day:
        parts += urgent
    if chart.over and top is Urgency.none:  # else it is said whom to phone
        parts.append(words.say("ended_reply", lang, name=chart.name, phone=both_phones(ctx, lang)))
    if parts:
        out.tell(
            person,
            Purpose.answer,
            "\n\n".join(parts),
            patient=chart.id,
            topic=AboutPatient(chart.id),
        )


def _requests(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, observations: Sequence[Observation]
) -> None:
    """Stop and later: what an owner may ask of the bot itself."""
    wanted = {one.value for one in observations if one.about == "request"}
    words, lang = ctx.words, person.lang
    if "stop" in wanted:
        row = (
            ctx.button(person.chat, words.say("stop_yes", lang), Leaving("yes", chart.id)),
            ctx.button(person.chat, words.say("stop_no", lang), Leaving("no", chart.id)),
        )
        text = words.say("stop_ask", lang, name=chart.name)
        out.tell(person, Purpose.admin, text, buttons=(row,), patient=chart.id)
    if "snooze" in wanted:
        said = next(one for one in observations if one.value == "snooze")
        told = snooze(ctx, out, chart, person, snoozed_until(ctx, chart, said))
        out.tell(person, Purpose.answer, told, patient=chart.id)


def _not_understood(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, said: Said, *, rest: bool,
    done: bool = False, which: bool = False,
) -> None:  # fmt: skip
    """Ask once; the second time in a row staff get both messages, word for word. ``done``:
    just that, to a prompt of several lines, of which one tap can say so; ``which``: a dose
    was told, of nobody knows which medicine."""
    mode = ctx.standing(chart).mode
    if out.of(CaseChange) and (chart.over or isinstance(mode, Over)):
        return  # a person reads these very words already
    asked = talking.staff_asked(ctx, chart)
    if asked is not None:
        # Staff and owner are talking and a person reads this: no question, but no silence,
        # and no case of its own; one that is closed meanwhile comes again.
        known = {one.id: one.matter for one in chart.closed}
        known |= {one.id: one.matter for one in chart.cases}
        matter = known.get(asked, handed_over(said.text, ctx.rules).matter)
        # An answer waits no longer than what was asked in: today, where that was urgent.
        urgent = any(c.id == asked and c.urgency >= Urgency.same_day for c in chart.closed)
        level = Urgency.same_day if urgent else Urgency.next_day
        finding = Finding("wrote-back", level, matter, talking.WROTE_BACK)
        talking.after_close(ctx, out, chart, person)
        raise_findings(ctx, out, chart, [finding], said)
        words = what_happens_now(ctx, chart, level, person.lang)
        out.tell(person, Purpose.answer, words, patient=chart.id)
        return
    if chart.over or isinstance(mode, Over):
        # Nobody is asked back after the end, but a person still reads it: of one that has
        # died, beside the word of the death, where it may be taken back.
        finding = handed_over(said.text, ctx.rules)
        if ctx.standing(chart).dead:
            finding = replace(finding, matter="life")
        raise_findings(ctx, out, chart, [finding], said)
        return
    before = ctx.conversation.find(Unclear)
    if before is None:
        clarify.ask_once(ctx, out, chart, person, said, rest=rest, done=done, which=which)
        return
    both = f"{before.text}\n{said.text}"
    clarify.hand_over(ctx, out, chart, replace(before, text=both, source=said.source), person.chat)


def cannot_be_read(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, source: SourceId
) -> None:
    """A sticker, a place, a contact: nothing that we can read, and it may be urgent."""
    said = Said(person.name, ctx.words.say("not_words", ctx.clinic.language), source)
    out.add(Heard(chart.id))
    out.add(Entry("said", person.name, said.text, chart.id, {"source": source}))
    _not_understood(ctx, out, chart, person, said, rest=False)
