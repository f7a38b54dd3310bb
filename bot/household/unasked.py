"""A question about somebody's words that may not be asked now: staff get the words at once.

While the course is paused, or after a death, the gate keeps every question back. Whoever
wrote must still be heard: nothing that was not understood waits for an answer that nobody
was asked for. In an open emergency the words are in its case already.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace

from bot.cases.cases import Said, raise_findings
from bot.context.contexts import AtHome
from bot.context.phones import both_phones
from bot.household import clarify
from bot.model.chart import Chart, Person
from bot.model.conversation import SameDose, Unclear, WhichPatient
from bot.model.effects import Ask, CaseChange, Effects, Tell
from bot.model.evolve import Later
from bot.model.ids import PatientId
from bot.model.purpose import Purpose
from bot.standing.of_chart import standing_of
from bot.standing.standing import Emergency, Over
from bot.triage import not_understood


def pass_on(
    ctx: AtHome,
    out: Effects,
    later: Mapping[PatientId, Later],
    withheld: Callable[[Tell], bool],
) -> None:
    """Give staff what a question that will not be asked was about, and tell who wrote so."""
    person = ctx.person
    if person is None:
        return
    mine = [one for one in out.of(Tell) if one.person == person.id]
    if not any(one.purpose is Purpose.question and withheld(one) for one in mine):
        return
    for question in _asked(ctx, out, person):
        known = later.get(question.patient)
        if known is not None:
            _give(ctx, out, known.chart, person, question)


def _asked(ctx: AtHome, out: Effects, person: Person) -> list[Unclear | SameDose | WhichPatient]:
    """The questions that now have no answer to wait for: asked just now, or asked before and
    only put in other words."""
    new = [one.question for one in out.of(Ask) if one.chat == person.chat]
    found = [one for one in new if isinstance(one, Unclear | SameDose | WhichPatient)]
    before = ctx.conversation.find(Unclear)
    return found or ([before] if before is not None else [])


def _give(
    ctx: AtHome,
    out: Effects,
    chart: Chart,
    person: Person,
    question: Unclear | SameDose | WhichPatient,
) -> None:
    finding = not_understood(question.text, ctx.rules)
    match standing_of(chart, ctx.now).mode:
        case Emergency():
            return
        case Over():
            if any(one.patient == chart.id for one in out.of(CaseChange)):
                return  # a person reads these very words already
            said = Said(question.by, question.text, question.source)
            raise_findings(ctx, out, chart, [replace(finding, matter="life")], said)
            text = ctx.words.say("passed_on", person.lang, phone=both_phones(ctx, person.lang))
            out.tell(person, Purpose.answer, text, patient=chart.id)
            clarify.over(out, person.chat, question.key)
        case _:
            chat = person.chat
            clarify.hand_over(ctx, out, chart, question, chat, asked_for=True, because=finding)
