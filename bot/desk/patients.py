"""Staff commands about patients: who is with us, the log, a link, enrolling, ending."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta
from zoneinfo import ZoneInfo

from bot.context.buttons import digest_of, mark_of
from bot.context.contexts import AtDesk
from bot.context.words import date_of, when
from bot.desk.board import named
from bot.desk.enrol import enrol
from bot.household.people import start_link
from bot.model.action import ConfirmOrder, RemovePerson
from bot.model.chart import Chart, Member, RosterLine
from bot.model.chat import Button, Incoming
from bot.model.conversation import OrderToConfirm
from bot.model.effects import Ask, Effects, Entry, Invite, Leave, Settle
from bot.model.ids import PatientId, PersonId
from bot.model.plan import Plan
from bot.model.text import Lang
from bot.plan.dose_finding import DoseFinding, confirmed_text
from bot.plan.formulary import formulary
from bot.plan.medicines import confirm, needs_confirmation
from bot.plan.order import read_order
from bot.protocol.problem import FlowError

LISTED = 40
"""So many patients stand in one list; /board and the review pages hold the others."""
ORDER_EXAMPLE = """\
patient: Biscuit
species: dog
weight_kg: 22.7
procedure: Fracture repair with a plate, left
clinician: Dr Example
surgery: 2026-03-03
home: 2026-03-04 10:30
zone: America/Denver
owner: Robin Example
phone: "+1 555 0100"
protocol: general-orthopaedic
medicines:
  - name: carprofen 50 mg
    sig: 1 tab PO q12h x 14d with food
    kind: anti-inflammatory
    first_dose: 2026-03-04 20:00"""


def command(
    ctx: AtDesk, out: Effects, event: Incoming, actor: Member, word: str, argument: str
) -> None:
    """``/patients``, ``/enrol``, ``/log NAME``, ``/link NAME``, ``/end NAME``."""
    if word == "/patients":
        _patients(ctx, out, event)
    elif word in ("/enrol", "/enroll"):
        _enrol(ctx, out, event, actor, argument)
    else:
        chart = named(ctx, out, event, argument)
        if chart is not None:
            act = {"/log": _log, "/link": _link, "/people": _people}[word]
            act(ctx, out, event, actor, chart)


def _patients(ctx: AtDesk, out: Effects, event: Incoming) -> None:
    lang, words = ctx.clinic.language, ctx.words
    if not ctx.roster:
        out.say(event.chat, words.say("desk_patients_none", lang))
        return
    lines = [_roster_line(ctx, row) for row in ctx.roster[:LISTED]]
    if len(ctx.roster) > LISTED:
        lines.append(words.say("board_more", lang, n=len(ctx.roster) - LISTED))
    out.say(event.chat, "\n".join(lines))


def _roster_line(ctx: AtDesk, row: RosterLine) -> str:
    lang, words = ctx.clinic.language, ctx.words
    zone = ZoneInfo(row.plan.zone)
    now = ctx.now.astimezone(zone)
    heard = (
        when(row.last_heard.astimezone(zone), now, lang)
        if row.last_heard
        else words.say("desk_never", lang)
    )
    cases = words.say("desk_cases", lang, n=len(row.cases)) if row.cases else ""
    if not row.under_way:
        cases = f"{words.say('desk_past', lang)}{cases}"
    return words.say(
        "desk_patient", lang, id=row.id, name=row.plan.patient,
        day=(now.date() - row.plan.surgery).days, procedure=row.plan.procedure, heard=heard,
        cases=cases,
    )  # fmt: skip


def _enrol(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, order: str) -> None:
    lang, words = ctx.clinic.language, ctx.words
    if not order:
        text = words.say("desk_enrol_how", lang)
        out.say(event.chat, f"{text}\n\n/enrol\n{ORDER_EXAMPLE}")
        return
    local = ctx.now.astimezone(ZoneInfo(ctx.clinic.zone))
    try:
        plan, warnings = read_order(order, "order", ctx.practice.protocols, local.date())
    except FlowError as error:
        out.say(event.chat, f"{words.say('desk_not_enrolled', lang)}\n{error}")
        out.add(Entry("refused", actor.name, f"an order that cannot be used: {error}"))
        return
    waiting = needs_confirmation(plan, formulary())
    notes = [str(problem) for problem in warnings]
    if waiting:
        _ask_to_confirm(ctx, out, event, plan, waiting, notes)
        return
    _enrolled(ctx, out, event, actor, plan, notes)


def _ask_to_confirm(
    ctx: AtDesk, out: Effects, event: Incoming, plan: Plan, waiting: Sequence[DoseFinding],
    notes: Sequence[str],
) -> None:  # fmt: skip
    """The order is outside a stated limit: a clinician confirms it, or changes it."""
    lang = ctx.clinic.language
    lines = [ctx.words.say("order_confirm", lang, name=plan.patient), *waiting_lines(waiting, lang)]
    told = {one.what.en for one in waiting}
    rest = [note for note in notes if not any(what in note for what in told)]
    lines += ["", *rest] if rest else []
    kept = plan.model_dump(mode="json")
    mark = mark_of(str(kept))

    def made(key: str, act: str) -> Button:
        return ctx.button(event.chat, ctx.words.say(key, lang), ConfirmOrder(act, mark))

    rows = ((made("order_keep", "keep"), made("order_leave", "x")),)
    out.say(event.chat, "\n".join(lines), buttons=rows)
    out.add(Ask(event.chat, OrderToConfirm(mark, kept, ctx.now, tuple(rest))))


def waiting_lines(waiting: Sequence[DoseFinding], lang: Lang) -> list[str]:
    """What a clinician looks at before confirming: what differs, and both doses."""
    lines: list[str] = []
    for place in dict.fromkeys(one.place for one in waiting):
        here = [one for one in waiting if one.place == place]
        lines += [f"– {one.what.say(lang)}" for one in here]
        # How far it is from the order so far names both doses already.
        compared = [one for one in here if one.stated is not None]
        rest = [one for one in here if one.kind != "jump"]
        lines += dict.fromkeys(f"   {one.both().say(lang)}" for one in compared or rest)
    return lines


def confirmation(
    waiting: Sequence[DoseFinding], by: str, lang: Lang, patient: PatientId | None
) -> Entry:
    """What the log keeps of a clinician's word: who, and both doses."""
    data = {"findings": [one.data() for one in waiting]}
    return Entry("confirmed", by, confirmed_text(waiting, by).say(lang), patient, data)


def confirmed(
    ctx: AtDesk, out: Effects, event: Incoming, actor: Member, act: str, key: str
) -> bool:
    """What a clinician said to an order outside a limit."""
    question = ctx.conversation.find(OrderToConfirm, key)
    lang = ctx.clinic.language
    if question is None:  # a second tap, or one that was kept or left long ago
        out.answer(event.callback, ctx.words.say("order_over", lang))
        return True
    out.answer(event.callback)
    out.add(Settle(event.chat, key))
    if act != "keep":
        out.edit(event.chat, "", ctx.words.say("order_left", lang), (), message=event.message)
        return True
    order = Plan.model_validate(question.plan)
    waiting = needs_confirmation(order, formulary())
    plan = confirm(order, formulary(), actor.name)
    text = ctx.words.say("order_kept", lang, by=actor.name)
    found = waiting_lines(waiting, lang)
    out.edit(event.chat, "", "\n".join([f"✓ {text}", *found]), (), message=event.message)
    kept = confirmation(waiting, actor.name, lang, None)
    _enrolled(ctx, out, event, actor, plan, list(question.notes), (kept,))
    return True


def _enrolled(
    ctx: AtDesk, out: Effects, event: Incoming, actor: Member, plan: Plan, notes: list[str],
    log: tuple[Entry, ...] = (),
) -> None:  # fmt: skip
    lang, words = ctx.clinic.language, ctx.words
    protocol = ctx.practice.protocols[plan.protocol]
    coming, expires = enrol(
        out, plan, protocol, ctx.clinic, by=actor.name, code=ctx.fresh_code, now=ctx.now, log=log,
        member=actor.id,
    )  # fmt: skip
    zone = ZoneInfo(plan.zone)
    here = ctx.now.astimezone(zone)
    text = words.say(
        "desk_enrolled",
        lang,
        name=plan.patient,
        count=len(coming),
        first=when(coming[0].due_at.astimezone(zone), here, lang) if coming else "–",
        last=date_of(coming[-1].due_at.astimezone(zone), lang) if coming else "–",
        until=date_of(expires.astimezone(zone), lang),
        link=start_link(ctx.practice.bot_name, ctx.fresh_code),
    )
    out.say(event.chat, "\n".join([text, *notes]))


def _link(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, chart: Chart) -> None:
    expires = ctx.now + timedelta(days=ctx.clinic.invitation_days)
    out.add(
        Invite(digest_of(ctx.fresh_code), "owner", actor.name, expires, chart.id, member=actor.id),
        Entry("link", actor.name, "a one-time link for the owner", chart.id),
    )
    lang = ctx.clinic.language
    text = ctx.words.say(
        "desk_link", lang, name=chart.name, until=date_of(chart.local(expires), lang),
        link=start_link(ctx.practice.bot_name, ctx.fresh_code),
    )  # fmt: skip
    out.say(event.chat, text, patient=chart.id)


def _people(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, chart: Chart) -> None:
    """Who takes care of the patient at home, with a button to remove each."""
    del actor
    lang, words = ctx.clinic.language, ctx.words
    if not chart.people:
        out.say(event.chat, words.say("people_none", lang, name=chart.name), patient=chart.id)
        return
    names = ", ".join(person.name for person in chart.people)
    rows = tuple(
        (
            ctx.button(event.chat, words.say("people_remove", lang, person=person.name),
                RemovePerson(chart.id, person.id),
            ),
        )
        for person in chart.people
    )  # fmt: skip
    text = words.say("people_of", lang, name=chart.name, people=names)
    out.say(event.chat, text, buttons=rows, patient=chart.id)


def remove(
    ctx: AtDesk, out: Effects, event: Incoming, actor: Member, patient: PatientId, who: PersonId
) -> bool:
    """Take someone at home off a patient's messages."""
    chart = ctx.chart(patient)
    person = next((p for p in chart.people if p.id == who), None) if chart else None
    if chart is None or person is None:
        return False
    lang = ctx.clinic.language
    text = ctx.words.say("people_removed", lang, person=person.name, name=chart.name)
    out.answer(event.callback, text)
    out.add(Leave(chart.id, person.id))
    out.add(Entry("left", actor.name, text, chart.id))
    out.edit(event.chat, "", f"✓ {text}", (), patient=chart.id, message=event.message)
    return True


def _log(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, chart: Chart) -> None:
    del actor
    out.say(event.chat, "\n".join(ctx.log_tail)[-3900:] or "–", patient=chart.id)
