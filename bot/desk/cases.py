"""What staff do with a case: take it, answer the owner, close it with an outcome."""

from __future__ import annotations

from dataclasses import replace
from typing import Any
from zoneinfo import ZoneInfo

from bot.cases.card import case_buttons, case_text, outcome_buttons
from bot.cases.cases import chain, change_case, quieten
from bot.context.contexts import AtDesk
from bot.context.phones import emergency_phones
from bot.context.words import clock
from bot.desk.carried_out import carry_out
from bot.desk.holds import ask_at_close, ask_whether_alive, hold
from bot.desk.plan_changes import change
from bot.desk.spoken_of import spoken_of
from bot.desk.waiting import asked_to_wait, meant
from bot.model.action import OnCase
from bot.model.chart import Case, Chart, Member, Person
from bot.model.chat import Incoming, Media
from bot.model.conversation import InCase
from bot.model.effects import Ask, CaseNote, Effects, Entry, Rows
from bot.model.hold import FromDeath, Target, decode
from bot.model.ids import CaseId
from bot.model.steps import CaseAct, CaseStep, OfCourse, Outcome, SendAnswer
from bot.model.text import Lang
from bot.model.topic import TOPICS, AboutCase, AboutPatient, AboutWords, Topic
from bot.model.urgency import Urgency


def _found(ctx: AtDesk, case_id: CaseId) -> tuple[Chart, Case] | None:
    for chart in ctx.charts:
        for case in chart.cases:
            if case.id == case_id:
                return chart, case
    return None


def tap(
    ctx: AtDesk, out: Effects, event: Incoming, actor: Member, case_id: CaseId, act: CaseAct
) -> bool:
    """A button under a case; False when it leads nowhere."""
    lang = ctx.clinic.language
    found = _found(ctx, case_id)
    if found is None:
        out.answer(event.callback, ctx.words.say("case_gone", lang))
        return True
    chart, case = found
    match act:
        case CaseStep.take:
            _take(ctx, out, event, actor, chart, case)
        case CaseStep.close:
            out.answer(event.callback)
            text = case_text(ctx, chart, case, lang)
            ask = ctx.words.say("case_how_ended", lang)
            _edit(out, event, chart, f"{text}\n\n{ask}", outcome_buttons(
                ctx, event.chat, case, lang))  # fmt: skip
        case CaseStep.back:
            out.answer(event.callback)
            _edit(out, event, chart, case_text(ctx, chart, case, lang),
                  case_buttons(ctx, event.chat, case, lang))  # fmt: skip
        case CaseStep.answers:
            out.answer(event.callback)
            _offer(ctx, out, event, chart, case)
        case Outcome():
            _close(ctx, out, event, actor, chart, case, act)
        case SendAnswer(answer=id):
            return _send_ready(ctx, out, event, actor, chart, case, id)
    return True


def _edit(out: Effects, event: Incoming, chart: Chart, text: str, buttons: Rows) -> None:
    out.edit(event.chat, "", text, buttons, patient=chart.id, message=event.message)


def _local(ctx: AtDesk) -> str:
    return clock(ctx.now.astimezone(ZoneInfo(ctx.clinic.zone)))


def _take(
    ctx: AtDesk, out: Effects, event: Incoming, actor: Member, chart: Chart, case: Case
) -> None:
    lang = ctx.clinic.language
    if case.state != "open":
        who = case.acknowledged_by or ""
        out.answer(event.callback, ctx.words.say("case_taken_already", lang, by=who))
        return
    text = ctx.words.say("case_taken", lang, by=actor.name, at=_local(ctx))
    out.answer(event.callback, text)
    changed = change_case(case, state="acknowledged", by=actor.name)
    data = {"case": case.id, "state": "acknowledged"}
    out.add(changed, Entry("case", actor.name, text, chart.id, data))
    quieten(out, case.id)
    _show_changed(ctx, out, event, chart, case, "acknowledged", text)


def _close(
    ctx: AtDesk,
    out: Effects,
    event: Incoming,
    actor: Member,
    chart: Chart,
    case: Case,
    outcome: Outcome,
) -> None:
    lang = ctx.clinic.language
    how = ctx.words.say(f"outcome_{outcome}", lang)
    text = ctx.words.say("case_closed", lang, by=actor.name, at=_local(ctx), outcome=how)
    out.answer(event.callback, text)
    changed = change_case(case, state="closed", by=actor.name, outcome=outcome.value)
    data = {"case": case.id, "state": "closed", "outcome": outcome.value}
    out.add(changed, Entry("case", actor.name, text, chart.id, data))
    quieten(out, case.id, closed=True)
    _show_changed(ctx, out, event, chart, case, "closed", text)
    if outcome is Outcome.mistaken and case.tells_death and ctx.standing(chart).death_told:
        if chart.state != "died":
            chart = _not_dead(ctx, out, chart, case, actor, how)
        else:
            ask_whether_alive(ctx, out, event.chat, chart)
    ask_at_close(ctx, out, event.chat, chart)


def _not_dead(
    ctx: AtDesk, out: Effects, chart: Chart, case: Case, actor: Member, why: str
) -> Chart:
    """The word of a death was a mistake: with its case it is taken back, and nobody is asked
    once more. Any of staff may say so, as the family may: nothing was found that a clinician
    must look at. What a clinician has confirmed is not taken back so. The chart, of one that
    lives."""
    left = replace(chart, cases=tuple(one for one in chart.cases if one.id != case.id))
    day = chart.day(ctx.now)
    made = change(
        chart.plan, chart.protocol, chart.history, OfCourse.alive, ctx.now, day, actor.name, why
    )
    if made is not None:
        carry_out(ctx, out, left, made, actor.name, why)
    holds = tuple(one for one in chart.holds if not isinstance(one.cause, FromDeath))
    return replace(left, holds=holds)


def _show_changed(
    ctx: AtDesk,
    out: Effects,
    event: Incoming,
    chart: Chart,
    case: Case,
    state: str,
    text: str,
) -> None:
    """The pressed message shows who has the case; the other chats that know it are told."""
    lang = ctx.clinic.language
    changed = change_case(case, state=state)
    whole = case_text(ctx, chart, changed, lang)
    buttons = case_buttons(ctx, event.chat, changed, lang)
    _edit(out, event, chart, f"✓ {text}\n{whole}", buttons)
    head = whole.partition("\n")[0]
    for place, group in enumerate(chain(ctx)):
        for desk in group:
            reached = place <= case.pages // case.policy.pages_each
            if desk.chat != event.chat and reached:
                topic = AboutCase(case.id)
                out.say(desk.chat, f"{text}: {head}", patient=chart.id, topic=topic, quiet=True)


def _fields(ctx: AtDesk, chart: Chart, lang: Lang) -> dict[str, object]:
    """What a ready answer may name: the patient, the clinic, whom to phone at this hour."""
    now = emergency_phones(ctx, lang)
    return {"name": chart.name, "phone": ctx.clinic.phone, "now": now}


def _offer(ctx: AtDesk, out: Effects, event: Incoming, chart: Chart, case: Case) -> None:
    """Ready answers, in the language of staff; one tap sends one in the owner's."""
    lang = ctx.clinic.language
    fields = _fields(ctx, chart, lang)
    entries = case.body["entries"]
    topics = {case.matter, *(topic for entry in entries for topic in entry["topics"])}
    topics |= {one["about"] for entry in entries for one in entry["seen"]}
    offered = ctx.practice.answers.offered(topics, ctx.standing(chart))
    lines = [ctx.words.say("answers_head", lang, name=chart.name)]
    rows = []
    for number, answer in enumerate(offered, 1):
        lines.append(f"{number}. {answer.title.say(lang)}: {answer.text.say(lang, **fields)}")
        label = ctx.words.say("answers_send", lang, n=number)
        rows.append(ctx.button(event.chat, label, OnCase(case.id, SendAnswer(answer.id))))
    lines.append(ctx.words.say("answers_own", lang))
    buttons = tuple(tuple(rows[at : at + 3]) for at in range(0, len(rows), 3))
    out.say(
        event.chat,
        "\n".join(lines),
        buttons=buttons,
        topic=AboutCase(case.id),
        patient=chart.id,
        reply_to=event.message,
    )


def _send_ready(
    ctx: AtDesk,
    out: Effects,
    event: Incoming,
    actor: Member,
    chart: Chart,
    case: Case,
    id: str,
) -> bool:
    answer = ctx.practice.answers.find(id)
    if answer is None:
        return False
    lang = ctx.clinic.language
    now = ctx.standing(chart)
    if case.state == "closed" or not answer.fits(now):
        # The message with this button is old: since then something is held, or an emergency.
        out.answer(event.callback, ctx.words.say("answers_not_now", lang, held=""))
        held = ", ".join(sorted(now.held_names(chart.plan)))
        text = ctx.words.say("answers_not_now", lang, held=f" ({held})" if held else "")
        out.say(event.chat, text, patient=chart.id, topic=AboutCase(case.id), quiet=True)
        return True
    people = [person for person in chart.people if person.reachable]
    if not people:
        text = ctx.words.say("desk_nobody", lang, phone=chart.plan.phone or "–")
        out.answer(event.callback, text)
        return True
    for person in people:
        fields = _fields(ctx, chart, person.lang)
        to_person(ctx, out, chart, person, answer.text.say(person.lang, **fields), None, case.id)
    to = ", ".join(person.name for person in people)
    sent = ctx.words.say("desk_sent", lang, to=f"{to} ({chart.name})")
    out.answer(event.callback, sent)
    said = answer.text.say(lang, **_fields(ctx, chart, lang))
    out.edit(event.chat, "", f"✓ {sent}\n{said}", (), patient=chart.id, message=event.message)
    if answer.holds:
        targets: list[Target] = []
        for what in answer.holds:
            targets += meant(chart, case) if what == "medicine" else [decode(what)]
        hold(ctx, out, event.chat, actor, chart, targets, "")
    _answered(ctx, out, actor, chart, case, said, to)
    return True


def to_owner(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, chart: Chart) -> None:
    """A reply to a case or picture: the owner gets it under the clinic's name."""
    people = [person for person in chart.people if person.reachable]
    lang = ctx.clinic.language
    if not people:
        text = ctx.words.say("desk_nobody", lang, phone=chart.plan.phone or "–")
        out.say(event.chat, text, patient=chart.id)
        return
    topic = ctx.topic
    ident = topic.case if isinstance(topic, AboutCase) else None
    case = next((one for one in chart.cases if one.id == ident), None)
    first = event.media[0] if event.media else None
    keys = [
        to_person(
            ctx, out, chart, person, _beside_holds(ctx, chart, case, event.text, person.lang),
            first, ident,
        )
        for person in people
    ]  # fmt: skip
    to = ", ".join(person.name for person in people)
    more = {"sent": keys, "picture": first.unique if first else ""}
    if case is not None:
        _answered(ctx, out, actor, chart, case, event.text, to, more)
    else:
        data = {"to": to, "topic": TOPICS.encode(topic) if topic else "", **more}
        out.add(Entry("staff", actor.name, event.text, chart.id, data))
    sent = ctx.words.say("desk_sent", lang, to=f"{to} ({chart.name})")
    out.say(event.chat, sent, patient=chart.id, quiet=True)
    if targets := asked_to_wait(event.text, chart, case):
        hold(ctx, out, event.chat, actor, chart, targets, event.text)
    elif case is not None and case.urgency is not Urgency.emergency:
        ask_at_close(ctx, out, event.chat, chart)  # an emergency: when it is closed


def _beside_holds(ctx: AtDesk, chart: Chart, case: Case | None, text: str, lang: Lang) -> str:
    """Words that speak of a medicine on hold release nothing, and the household is told so."""
    standing = ctx.standing(chart)
    held = [name for name in spoken_of(text, chart) if standing.holds_on_medicine(name)]
    if not held or asked_to_wait(text, chart, case):
        return text
    return f"{text}\n\n{ctx.words.say('hold_still', lang, what=', '.join(held))}"


def to_person(
    ctx: AtDesk,
    out: Effects,
    chart: Chart,
    person: Person,
    text: str,
    media: Media | None,
    case: CaseId | None,
    *,
    reply_to: int | None = None,
) -> str:
    """Words of staff to someone at home, whose answer goes to the case; the message's key."""
    head = ctx.words.say("saved_for_staff", person.lang, clinic=ctx.clinic.name)
    topic: Topic = AboutPatient(chart.id)
    if case is not None:
        out.add(Ask(person.chat, InCase("case", case, chart.id, ctx.now, text[:500])))
        topic = AboutWords(chart.id, case)
    return out.pass_on(person, f"{head}\n{text}".strip(), media=media, patient=chart.id,
        topic=topic, reply_to=reply_to,
    )  # fmt: skip


def _answered(
    ctx: AtDesk,
    out: Effects,
    actor: Member,
    chart: Chart,
    case: Case,
    text: str,
    to: str,
    more: dict[str, Any] | None = None,
) -> None:
    """The owner has been answered: whoever answers has the case, and pages stop."""
    data = {"to": to, "topic": TOPICS.encode(AboutCase(case.id)), **(more or {})}
    out.add(Entry("staff", actor.name, text, chart.id, data))
    if case.state != "closed":
        out.add(change_case(case, state="answered", by=actor.name))
        # An emergency is not over with an answer: its deadline asks for the close.
        quieten(out, case.id, closed=case.urgency is not Urgency.emergency)


def note(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, text: str) -> None:
    """``/note words`` in reply to a case: kept with the case and in the log."""
    lang = ctx.clinic.language
    if not isinstance(ctx.topic, AboutCase) or not ctx.charts or not text:
        out.say(event.chat, ctx.words.say("note_how", lang))
        return
    chart, ident = ctx.charts[0], ctx.topic.case
    out.add(Entry("note", actor.name, text, chart.id, {"case": ident}))
    out.add(CaseNote(ident, text))
    out.say(event.chat, ctx.words.say("note_kept", lang), patient=chart.id, quiet=True)
