"""Is it so? Where the two readers of a reply disagree about an alarm, its owner is asked once,
with the matter named; staff get it as doubtful if no answer comes.

A yes is noted and judged like any words of the owner. A no stands in the log alone: it clears
nothing that was read. "Something else" is no no, so it goes to staff as doubtful at once, at the
level of the doubt. Where nobody may be asked (an emergency is open, the course is paused or
over) staff get it at once, too; after a death nothing is asked and nothing raised.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Any, Literal

from bot.cases.cases import Said, join_words
from bot.cases.noting import advice_for, purpose_of, take_note
from bot.context.contexts import AtHome, Context, FellDue
from bot.context.phones import both_phones, emergency_phones, what_happens_now, whom_to_phone
from bot.household import clarify
from bot.household.doubtful import (
    KIND,
    alarming,
    doubtful,
    hand_to_staff,
    hold_back,
    judged,
    patience,
    question_words,
    waits,
)
from bot.household.emergency import emergency_buttons, open_emergency
from bot.model.action import IsItSo
from bot.model.chart import Case, Chart, Person
from bot.model.conversation import Doubted, Waiting
from bot.model.effects import Ask, Due, Effects, Entry, Heard
from bot.model.evolve import evolve
from bot.model.finding import Finding
from bot.model.hold import encode
from bot.model.ids import SourceId, tap_source
from bot.model.observation import Observation
from bot.model.purpose import Purpose
from bot.model.reading import Doubt, Reading
from bot.model.text import Lang
from bot.model.topic import AboutPatient, AboutQuestion
from bot.model.urgency import Urgency
from bot.standing.standing import Ordinary
from bot.triage import handed_over, urgency

How = Literal["yes", "no", "else"]
HOWS: tuple[How, ...] = ("yes", "no", "else")


@dataclass(frozen=True, slots=True)
class Asking:
    """What a reply's doubts lead to: those to be asked about, the first now, and those that
    staff get at once, as findings of the reply."""

    asked: tuple[Doubt, ...] = ()
    raised: tuple[Doubt, ...] = ()
    findings: tuple[Finding, ...] = ()


NOTHING = Asking()


def consider(ctx: Context, chart: Chart, reading: Reading, seen: Sequence[Observation]) -> Asking:
    """What to do about the doubts in a reply of which ``seen`` is noted."""
    level = urgency(judged(ctx, chart, seen))
    # What staff are told today as it was said needs no other question of today's.
    found = tuple(
        one for one in alarming(reading.asks)
        if one.alarmed or not reading.understood or one.urgency > level
        or level is Urgency.emergency
    )  # fmt: skip
    if not found or ctx.standing(chart).death_told or any(one.about == "life" for one in seen):
        return NOTHING
    alarmed = tuple(one for one in found if one.alarmed)
    told = [doubtful(ctx, chart, one, "alarmed") for one in alarmed]
    new = tuple(one for one in found if not one.alarmed)
    if chart.over or not isinstance(ctx.standing(chart).mode, Ordinary):
        asked: tuple[Doubt, ...] = ()
    elif level is Urgency.emergency:
        # Whom to phone comes first; asked is only what the alarm itself rests on.
        asked = tuple(one for one in alarmed if one.urgency is Urgency.emergency)[:1]
    else:
        return Asking(found, (), tuple(told))
    told += [doubtful(ctx, chart, one, "unasked") for one in new]
    return Asking(asked, new, tuple(told))


def follow_up(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, asking: Asking, said: Waiting,
    *, understood: bool,
) -> None:  # fmt: skip
    """After the reply was noted and answered: hold what staff were given, ask the rest."""
    hold_back(ctx, out, chart, asking.raised)
    if not asking.asked:
        return
    key = _key(chart, person, asking.asked[0])
    before = ctx.conversation.find(Doubted, key)
    if before is None:
        question = Doubted(
            key, chart.id, person.name, (said,), asking.asked, ctx.incoming.update, ctx.now,
            understood,
        )  # fmt: skip
        _ask(ctx, out, chart, person, question)
        return
    # Said again while it is open: the same question, and its time does not begin anew.
    more = tuple(one for one in asking.asked if one not in before.doubts)
    question = replace(
        before, said=(*before.said, said), doubts=(*before.doubts, *more),
        understood=before.understood and understood,
    )  # fmt: skip
    out.add(Ask(person.chat, question))
    _show(ctx, out, chart, person, question)


def _key(chart: Chart, person: Person, doubt: Doubt) -> str:
    return f"doubt-{chart.id}-p{person.id}-{doubt.about}-{doubt.value}"


def _ask(ctx: AtHome, out: Effects, chart: Chart, person: Person, question: Doubted) -> None:
    doubt = question.doubt
    _show(ctx, out, chart, person, question)
    held = [encode(one) for one in waits(ctx, out, chart, question.doubts)]
    data = {"chat": person.chat, "question": question.key, "waits": held}
    asked = {"asked": KIND, "about": doubt.about, "value": doubt.value, "source": question.source}
    text = question_words(ctx, chart, doubt, ctx.clinic.language)
    out.add(
        Ask(person.chat, question),
        Due(question.key, KIND, ctx.now + patience(doubt.urgency), chart.id, data),
        Entry("unclear", "bot", text, chart.id, asked),
    )


def _show(ctx: AtHome, out: Effects, chart: Chart, person: Person, question: Doubted) -> None:
    """The question in a message of its own, with whom to phone if it is so."""
    doubt, lang = question.doubt, person.lang
    emergency = doubt.urgency is Urgency.emergency
    text = ctx.words.say(
        f"doubt_{'alarmed_' if doubt.alarmed else ''}{doubt.urgency.name}", lang,
        ask=question_words(ctx, chart, doubt, lang),
        phone=emergency_phones(ctx, lang) if emergency else whom_to_phone(ctx, lang),
        minutes=int(patience(doubt.urgency).total_seconds()) // 60,
    )  # fmt: skip
    yes, no, other = (
        ctx.button(
            person.chat, ctx.words.say(f"doubt_{how}", lang),
            IsItSo(question.number, how, chart.id),
        )
        for how in HOWS
    )  # fmt: skip
    out.tell(
        person,
        # Of an alarm that is out it is part of the emergency, which keeps other questions back.
        Purpose.urgent if doubt.alarmed and emergency else Purpose.question,
        text,
        buttons=((yes, no), (other,)),
        topic=AboutQuestion(chart.id, question.key),
        patient=chart.id,
        urgent=emergency,
    )


# -- the answer -------------------------------------------------------------------------------


def tapped(ctx: AtHome, out: Effects, person: Person, action: IsItSo) -> bool:
    """A button under the question. False for a button that leads nowhere."""
    chart = ctx.chart(action.patient)
    if chart is None or action.how not in HOWS:
        return False
    event = ctx.incoming
    found = (one for one in ctx.conversation.open if isinstance(one, Doubted))
    question = next((one for one in found if one.number == action.number), None)
    if question is None or question.patient != chart.id or ctx.standing(chart).death_told:
        out.answer(event.callback, ctx.words.say("tap_over", person.lang))
        return True
    label = ctx.words.say(f"doubt_{action.how}", person.lang)
    out.answer(event.callback, label)
    words = question_words(ctx, chart, question.doubt, person.lang)
    out.edit(
        event.chat, "", f"{words}\n✓ {label}", (), patient=chart.id, message=event.message,
        home=True,
    )  # fmt: skip
    how = next(one for one in HOWS if one == action.how)
    text = _with_answer(ctx, chart, question, how)
    data = {"source": tap_source(event.update), "asked": question.doubt.about}
    out.add(Heard(chart.id), Entry("tapped", person.name, text, chart.id, data))
    answer(ctx, out, chart, person, question, how, tap_source(event.update))
    return True


def _with_answer(ctx: Context, chart: Chart, question: Doubted, how: How) -> str:
    """The question and its answer, for staff."""
    lang = ctx.clinic.language
    label = ctx.words.say(f"doubt_{how}", lang)
    return f"{question_words(ctx, chart, question.doubt, lang)} {label}."


def answer(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, question: Doubted, how: How,
    source: SourceId,
) -> None:  # fmt: skip
    """The owner has answered, by button or in plain words."""
    clarify.over(out, person.chat, question.key)
    text = f"{_with_answer(ctx, chart, question, how)}\n{question.text}"
    said = Said(person.name, text, source)
    if how == "yes":
        _confirmed(ctx, out, chart, person, question, said)
    elif how == "no":
        denied(ctx, out, chart, person, question, said)
    else:
        unsettled(ctx, out, chart, person, question, said)


def _confirmed(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, question: Doubted, said: Said
) -> None:
    """It is so: noted, judged like any words, and never less urgent than what was doubted.
    What the reply itself has noted already is not noted twice."""
    doubt, words, lang = question.doubt, ctx.words, person.lang
    _end_for_the_others(out, chart, person, doubt)
    case = _case_of(chart, question)
    rest = [one for one in question.doubts[1:] if not one.alarmed]
    if case is not None and doubt.alarmed:
        join_words(ctx, out, chart, case, said)
        if rest:
            hand_to_staff(ctx, out, evolve(chart, out.all, ctx.now), rest, said, "unasked")
        emergency = open_emergency(evolve(chart, out.all, ctx.now)) is not None
        text = words.say("doubt_confirmed_case", lang, phone=whom_to_phone(ctx, lang))
        if emergency:
            text = what_happens_now(ctx, chart, Urgency.emergency, lang)
        _tell(ctx, out, chart, person, text, emergency=emergency)
        return
    seen = ctx.practice.doubts.observation(doubt)
    more = [doubtful(ctx, chart, one, "unasked") for one in rest]
    if urgency(judged(ctx, chart, [seen])) < doubt.urgency:
        more.insert(0, doubtful(ctx, chart, doubt, "yes"))
    new = [] if _noted(chart, question, seen) else [seen]
    findings = take_note(ctx, out, chart, new, said, person=person, more=more)
    hold_back(ctx, out, chart, rest)
    emergency = purpose_of(findings) is Purpose.urgent
    parts = advice_for(ctx, chart, findings, lang)
    if not emergency:
        parts.append(words.say("noted", lang, what=words.observation(seen, lang)))
    _tell(ctx, out, chart, person, "\n\n".join(parts), emergency=emergency)


def denied(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, question: Doubted, said: Said,
    *, silent: bool = False,
) -> None:  # fmt: skip
    """It is not so: staff hear it where they have a case, and close it. The next doubt is
    asked then; what else was not understood goes to staff. ``silent``: they were answered."""
    words, lang = ctx.words, person.lang
    emergency = open_emergency(chart)
    case = emergency or (_case_of(chart, question) if question.doubt.alarmed else None)
    if case is not None:
        join_words(ctx, out, chart, case, said)
    rest = question.doubts[1:]
    if rest and isinstance(ctx.standing(chart).mode, Ordinary):
        ctx = replace(ctx, conversation=ctx.conversation.settled(question.key))
        first = Waiting(question.text, question.source)
        asking = Asking(rest)
        follow_up(ctx, out, chart, person, asking, first, understood=question.understood)
        return
    later = [one for one in rest if not one.alarmed]
    if later:
        hand_to_staff(ctx, out, evolve(chart, out.all, ctx.now), later, said, "unasked")
    if emergency is not None:
        phone = emergency_phones(ctx, lang)
        text = words.say("doubt_denied_emergency", lang, name=chart.name, phone=phone)
        _tell(ctx, out, chart, person, text, emergency=True)
    elif not question.understood and not later:
        finding = handed_over(question.text, ctx.rules)
        take_note(ctx, out, chart, [], said, person=None, more=[finding])
        text = words.say("passed_on", lang, phone=both_phones(ctx, lang))
        _tell(ctx, out, chart, person, text)
    elif not silent:
        key = "doubt_denied" if case is None else "doubt_denied_case"
        text = words.say(key, lang, phone=whom_to_phone(ctx, lang))
        _tell(ctx, out, chart, person, text)


def unsettled(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, question: Doubted, said: Said
) -> None:
    """Neither yes nor no: staff get it as doubtful at its level, now."""
    doubts = [one for one in question.doubts if not one.alarmed]
    case = _case_of(chart, question)
    if doubts or case is None:
        hand_to_staff(ctx, out, chart, doubts or question.doubts, said, "else")
    else:
        join_words(ctx, out, chart, case, said)
    level = question.doubt.urgency
    parts = [what_happens_now(ctx, chart, level, person.lang)]
    if level is not Urgency.emergency:
        parts.append(ctx.words.say("doubt_describe", person.lang))
    emergency = level is Urgency.emergency or open_emergency(chart) is not None
    _tell(ctx, out, chart, person, "\n\n".join(parts), emergency=emergency)


def nobody_said(ctx: FellDue, out: Effects, chart: Chart, data: dict[str, Any]) -> None:
    """No answer came: staff get it as doubtful, and whoever was asked hears so. What alarmed
    already is with them."""
    question, chat = ctx.conversation.find(Doubted, str(data["question"])), int(data["chat"])
    if question is None:
        return
    clarify.over(out, chat, question.key)
    doubts = [one for one in question.doubts if not one.alarmed]
    if ctx.standing(chart).death_told or not doubts:
        return
    said = Said(question.by, question.text, question.source)
    findings = hand_to_staff(ctx, out, chart, doubts, said, "silent")
    emergency = purpose_of(findings) is Purpose.urgent
    for person in chart.people:
        lang: Lang = person.lang
        ask = question_words(ctx, chart, question.doubt, lang)
        if person.chat == chat:
            silent = ctx.words.say("doubt_silent", lang, ask=ask)
            now = what_happens_now(ctx, chart, urgency(findings), lang)
            _tell(ctx, out, chart, person, f"{silent}\n\n{now}", emergency=emergency)
        elif emergency and person.reachable:
            phone = emergency_phones(ctx, lang)
            text = ctx.words.say("doubt_others", lang, by=question.by, ask=ask, phone=phone)
            _tell(ctx, out, chart, person, text, emergency=True)


# -- what ends it besides ---------------------------------------------------------------------


def _end_for_the_others(out: Effects, chart: Chart, person: Person, doubt: Doubt) -> None:
    """One at home says that it is so: nobody else is waited for."""
    waiting = {one.key for one in chart.doubts}
    for other in chart.people:
        key = _key(chart, other, doubt)
        if other.chat != person.chat and key in waiting:
            clarify.over(out, other.chat, key)


def without(ctx: AtHome, out: Effects, source: SourceId) -> AtHome:
    """The words of ``source`` were changed or taken back: a question about them is over, and
    asked anew if the new words call for it."""
    left = ctx.conversation
    for question in ctx.conversation.open:
        if not isinstance(question, Doubted):
            continue
        said = tuple(one for one in question.said if one.source != source)
        if said == question.said:
            continue
        if said:
            shorter = replace(question, said=said)
            out.add(Ask(ctx.incoming.chat, shorter))
            left = left.asked(shorter)
        else:
            clarify.over(out, ctx.incoming.chat, question.key)
            left = left.settled(question.key)
    return replace(ctx, conversation=left)


def taken_back(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, since: Sequence[datetime]
) -> bool:
    """Undo: a question about the words that were said last (``since``: when what was noted last
    was said) is over with them. True when nothing of them was noted that is to be taken back."""
    question = ctx.conversation.find(Doubted)
    if question is None or question.patient != chart.id or any(at > question.at for at in since):
        return False
    clarify.over(out, person.chat, question.key)
    words = question_words(ctx, chart, question.doubt, person.lang)
    out.add(Entry("undone", person.name, words, chart.id, {"source": question.source}))
    if any(at == question.at for at in since):
        return False
    _tell(ctx, out, chart, person, ctx.words.say("undone", person.lang, what=question.text[:100]))
    return True


# -- what is known ----------------------------------------------------------------------------


def _sources(question: Doubted) -> set[SourceId]:
    return {one.source for one in question.said}


def _case_of(chart: Chart, question: Doubted) -> Case | None:
    """The open case that the words have led to."""
    sources = _sources(question)
    for case in chart.cases:
        if any(entry["source"] in sources for entry in case.body.get("entries", ())):
            return case
    return None


def _noted(chart: Chart, question: Doubted, seen: Observation) -> bool:
    """Whether the words themselves were noted as this already, sure or unsure."""
    sources = _sources(question)
    return any(
        (one.observation.about, one.observation.value) == (seen.about, seen.value)
        and chart.sources[one.id][0] in sources
        for one in chart.history
    )


def _tell(
    ctx: AtHome | FellDue, out: Effects, chart: Chart, person: Person, text: str,
    *, emergency: bool = False,
) -> None:  # fmt: skip
    rows = emergency_buttons(ctx, person.chat, chart, person.lang) if emergency else ()
    out.tell(
        person,
        Purpose.urgent if emergency else Purpose.answer,
        text,
        patient=chart.id,
        topic=AboutPatient(chart.id),
        buttons=rows,
        urgent=emergency,
    )
