"""Changing a plan from the staff chat: what, why, what the owner will be told, done.

Nothing changes before a reason is given: tapping one, or writing one, is the confirmation.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from zoneinfo import ZoneInfo

from bot.cases.cases import heard_again
from bot.context.buttons import mark_of
from bot.context.contexts import AtDesk
from bot.desk.board import named
from bot.desk.enrol import AFTER_LAST, FIRST_LOOK
from bot.desk.plan_changes import GROUPS, Changed, change, offer, with_medicine
from bot.household import wound
from bot.household.resumed import ask_last_doses
from bot.model.action import OnPlan
from bot.model.chart import Chart, Member
from bot.model.chat import Button, Incoming
from bot.model.conversation import MedicineOrder, WhyChange
from bot.model.effects import (
    Ask,
    CancelDue,
    Due,
    Effect,
    Effects,
    EndCourse,
    EndHold,
    Entry,
    Hush,
    NewPlan,
    Rows,
    SetState,
    Settle,
)
from bot.model.hold import FromDeath, HeldMedicine
from bot.model.plan import Medicine, Plan, Prompt
from bot.model.purpose import Purpose
from bot.model.topic import AboutChange, AboutPatient
from bot.plan.formulary import formulary
from bot.plan.order import check_doses, check_plan, load_medicine
from bot.plan.prompts import rebuild
from bot.protocol.problem import FlowError
from bot.standing.holds import covered

REASONS = ("decided", "side_effect", "healing", "worse")
"""Ready reasons; the words stand in flows/words.yaml under ``reason_…``."""
NEW_MEDICINE = "mn"
PATIENCE = timedelta(hours=1)
"""How long a question for a reason waits."""


def command(
    ctx: AtDesk, out: Effects, event: Incoming, actor: Member, word: str, argument: str
) -> None:
    """``/plan NAME``: what can be changed; ``/medicine NAME`` and an order below it."""
    first, _, rest = argument.partition("\n")
    chart = named(ctx, out, event, first)
    if chart is None:
        return
    if word == "/medicine" and not chart.over and not _told_dead(chart):
        _medicine(ctx, out, event, actor, chart, rest)
        return
    if chart.state == "ended":
        text = ctx.words.say("plan_over_now", ctx.clinic.language, name=chart.name)
        out.say(event.chat, text, patient=chart.id)
        return
    if word == "/end" or chart.over or _told_dead(chart):
        text, rows = _course(ctx, event.chat, chart)
    else:
        text, rows = _menu(ctx, event.chat, chart)
    out.say(event.chat, text, buttons=rows, patient=chart.id, topic=AboutChange(chart.id, ""))


def _told_dead(chart: Chart) -> bool:
    return any(isinstance(hold.cause, FromDeath) for hold in chart.holds)


def _course(ctx: AtDesk, chat: int, chart: Chart) -> tuple[str, Rows]:
    """What may be done with the course as a whole; of a patient that has died, only to
    confirm it or take it back."""
    lang = ctx.clinic.language
    offered = offer(chart.plan, _state(chart), "course", ctx.now)
    rows = [
        (ctx.button(chat, ctx.words.say(key, lang, what=what), OnPlan(chart.id, code)),)
        for code, key, what in offered
    ]
    rows.append((_cancel(ctx, chat, chart),))
    return ctx.words.say("plan_what", lang, name=chart.name, day=chart.day(ctx.now)), tuple(rows)


def _state(chart: Chart) -> str:
    """The state by which changes are offered: a death that was told goes before."""
    return "told_dead" if not chart.over and _told_dead(chart) else chart.state


def _menu(ctx: AtDesk, chat: int, chart: Chart) -> tuple[str, Rows]:
    lang = ctx.clinic.language
    made = [
        ctx.button(chat, ctx.words.say(f"group_{g}", lang), OnPlan(chart.id, f"g-{g}"))
        for g in GROUPS
    ]
    head = ctx.words.say("plan_what", lang, name=chart.name, day=chart.day(ctx.now))
    return head, (tuple(made[:2]), tuple(made[2:4]), (made[4],))


def tap(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, patient: int, code: str) -> bool:
    """A button of the plan's dialogue; False when it leads nowhere."""
    chart = ctx.chart(patient)
    if chart is None:
        return False
    lang = ctx.clinic.language
    out.answer(event.callback)
    if code == "x":
        out.add(Settle(event.chat, _why_key(event.message)))
        text = ctx.words.say("plan_nothing", lang, name=chart.name)
        out.edit(event.chat, "", text, (), patient=chart.id, message=event.message)
        return True
    if code == "zo":
        text = ctx.words.say("plan_reop_how", lang, name=chart.name, id=chart.id)
        out.edit(event.chat, "", text, (), patient=chart.id, message=event.message)
        return True
    if code.startswith("g-"):
        return _group(ctx, out, event, chart, code[2:])
    leaf, mark, why = code.partition("!")
    if not mark:
        return _ask_reason(ctx, out, event, chart, leaf)
    if why not in REASONS:
        return False
    if not _waits(ctx, chart, leaf, event.message):
        # A second tap, or a question that was left long ago: said, never silence.
        out.edit(
            event.chat, "", ctx.words.say("plan_over", lang), (), patient=chart.id,
            message=event.message,
        )  # fmt: skip
        return True
    words = ctx.words.say(f"reason_{why}", lang)
    return _do(ctx, out, event, actor, chart, leaf, words, event.message)


def _group(ctx: AtDesk, out: Effects, event: Incoming, chart: Chart, group: str) -> bool:
    if group not in GROUPS:
        return False
    lang = ctx.clinic.language
    offered = offer(chart.plan, _state(chart), group, ctx.now)
    rows = [
        (ctx.button(event.chat, ctx.words.say(key, lang, what=what),
                OnPlan(chart.id, code)),)
        for code, key, what in offered
    ]  # fmt: skip
    rows.append((_cancel(ctx, event.chat, chart),))
    head = ctx.words.say("plan_what", lang, name=chart.name, day=chart.day(ctx.now))
    if group == "med":
        head = f"{head}\n{ctx.words.say('plan_medicine_how', lang, name=chart.name)}"
    out.edit(event.chat, "", head, tuple(rows), patient=chart.id, message=event.message)
    return True


def _cancel(ctx: AtDesk, chat: int, chart: Chart) -> Button:
    words = ctx.words.say("plan_cancel", ctx.clinic.language)
    return ctx.button(chat, words, OnPlan(chart.id, "x"))


def _ask_reason(ctx: AtDesk, out: Effects, event: Incoming, chart: Chart, leaf: str) -> bool:
    made = _changed(ctx, chart, leaf, "…", "…")
    if made is None:
        return False
    text, rows = _question(ctx, event.chat, chart, leaf, made)
    out.edit(event.chat, "", text, rows, patient=chart.id, message=event.message)
    out.add(
        Ask(
            event.chat,
            WhyChange(_why_key(event.message), chart.id, leaf, event.message, ctx.now),
        )
    )
    return True


def _why_key(message: int) -> str:
    """A question for a reason belongs to the message that asks it."""
    return f"why:{message}"


def _waits(ctx: AtDesk, chart: Chart, leaf: str, message: int) -> bool:
    """Whether this very change waits for a reason: asked under this message, lately."""
    waiting = _pending(ctx, leaf, message)
    return waiting is not None and waiting.patient == chart.id and ctx.now - waiting.at <= PATIENCE


def _pending(ctx: AtDesk, leaf: str, message: int) -> WhyChange | MedicineOrder | None:
    """The open question of this change: an order by its own mark, any other by its message."""
    if leaf.startswith(f"{NEW_MEDICINE}-"):
        return ctx.conversation.find(MedicineOrder, leaf)
    asked = ctx.conversation.find(WhyChange, _why_key(message))
    return asked if asked is not None and asked.code == leaf else None


def _question(ctx: AtDesk, chat: int, chart: Chart, leaf: str, made: Changed) -> tuple[str, Rows]:
    """What would change, what the owner will read, and: why?"""
    lang = ctx.clinic.language
    told = (
        ctx.words.say(made.words, lang, name=chart.name, reason="", **made.fields)
        if made.words
        else ctx.words.say("plan_silent", lang)
    )
    text = ctx.words.say("plan_why", lang, name=chart.name, told=told)
    rows = [
        (ctx.button(chat, ctx.words.say(f"reason_{why}", lang),
                OnPlan(chart.id, f"{leaf}!{why}")),)
        for why in REASONS
    ]  # fmt: skip
    return text, (*rows, (_cancel(ctx, chat, chart),))


def reason(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, topic: AboutChange) -> bool:
    """A reason in own words, in reply to the question: the change is made."""
    chart = ctx.chart(topic.patient)
    message = event.reply_to or 0
    asked = ctx.conversation.find(WhyChange, _why_key(message))
    leaf = topic.key or (asked.code if asked else "")
    text = event.text.strip()
    if chart is None or not text or not _waits(ctx, chart, leaf, message):
        return False
    return _do(ctx, out, event, actor, chart, leaf, text, event.reply_to)


def _medicine(
    ctx: AtDesk, out: Effects, event: Incoming, actor: Member, chart: Chart, order: str
) -> None:
    """A new or changed medicine, as in an order; checked, and asked about like any change."""
    del actor
    lang = ctx.clinic.language
    if not order.strip():
        out.say(event.chat, ctx.words.say("plan_medicine_how", lang, name=chart.name))
        return
    try:
        medicine = load_medicine(order, "medicine")
    except FlowError as error:
        out.say(event.chat, f"{ctx.words.say('plan_not_changed', lang)}\n{error}")
        return
    made = with_medicine(chart.plan, medicine, ctx.now)
    kept = medicine.model_dump(mode="json")
    leaf = f"{NEW_MEDICINE}-{mark_of(f'{chart.id}{kept}')}"
    text, rows = _question(ctx, event.chat, chart, leaf, made)
    warnings = check_order(ctx, made.plan)
    out.say(
        event.chat,
        "\n".join([text, *warnings]),
        buttons=rows,
        patient=chart.id,
        topic=AboutChange(chart.id, leaf),
    )
    out.add(Ask(event.chat, MedicineOrder(leaf, chart.id, kept, ctx.now)))


def check_order(ctx: AtDesk, plan: Plan) -> list[str]:
    """What is worth a look in a plan, a line each; nothing is refused here."""
    protocol = ctx.practice.protocols.get(plan.protocol)
    if protocol is None:
        return []
    today = ctx.now.astimezone(ZoneInfo(ctx.clinic.zone)).date()
    found = [*check_plan(plan, protocol, today), *check_doses(plan, formulary())]
    return [str(problem) for problem in found]


def _changed(ctx: AtDesk, chart: Chart, leaf: str, author: str, why: str) -> Changed | None:
    if leaf.startswith(NEW_MEDICINE):
        kept = ctx.conversation.find(MedicineOrder, leaf)
        if kept is None:
            return None
        return with_medicine(chart.plan, Medicine.model_validate(kept.medicine), ctx.now)
    return change(
        chart.plan, chart.protocol, chart.history, leaf, ctx.now, chart.day(ctx.now),
        author, why,
    )  # fmt: skip


def _do(
    ctx: AtDesk,
    out: Effects,
    event: Incoming,
    actor: Member,
    chart: Chart,
    leaf: str,
    why: str,
    message: int | None,
) -> bool:
    made = _changed(ctx, chart, leaf, actor.name, why)
    if made is None:
        return False
    carry_out(ctx, out, chart, made, actor.name, why)
    lang = ctx.clinic.language
    done = ctx.words.say("plan_done", lang, by=actor.name, name=chart.name, reason=why)
    if message is not None:
        out.edit(event.chat, "", f"✓ {done}", (), patient=chart.id, message=message)
    else:
        out.say(event.chat, f"✓ {done}", patient=chart.id)
    out.add(Settle(event.chat, _why_key(message or 0)), Settle(event.chat, leaf))
    return True


def _over_with_it(ctx: AtDesk, out: Effects, chart: Chart, plan: Plan, author: str) -> None:
    """What is stopped for good is not on hold any more."""
    stopped = {
        m.name for m in plan.medicines if m.is_withheld(ctx.now) and not m.withheld[-1].until
    }
    for hold in chart.holds:
        names = covered(hold.target, plan)
        if isinstance(hold.target, HeldMedicine) and names and stopped.issuperset(names):
            out.add(EndHold(chart.id, hold.id, ctx.actor.id if ctx.actor else None, author))


def _alive_again(ctx: AtDesk, chart: Chart, plan: Plan, coming: tuple[Prompt, ...]) -> list[Effect]:
    """A death that was entered by mistake: the course goes on from now."""
    found: list[Effect] = [SetState(chart.id, "active")]
    found += [
        EndHold(chart.id, hold.id, ctx.actor.id if ctx.actor else None, "")
        for hold in chart.holds
        if isinstance(hold.cause, FromDeath)
    ]
    found.append(Due(f"silence:{chart.id}", "silence", ctx.now + FIRST_LOOK, chart.id))
    if coming:
        last = max(prompt.due_at for prompt in coming) + AFTER_LAST
        found.append(Due(f"end:{chart.id}", "end", last, chart.id))
    found += [
        Due(wound.key_of(chart.id, day), "wound", at, chart.id, {"day": day})
        for day, at in wound.wound_dues(plan, chart.protocol.implant, ctx.now)
    ]
    return found


def carry_out(
    ctx: AtDesk, out: Effects, chart: Chart, made: Changed, author: str, why: str
) -> None:
    """Keep a change: future prompts are built anew, past ones stay; the owner is told in
    plain words, in each person's language."""
    data = {"change": made.words or made.then, "why": why, **made.fields}
    words = made.words or "told_died"
    what = ctx.words.say(words, ctx.clinic.language, name=chart.name, reason="", **made.fields)
    out.add(Entry("plan", author, what, chart.id, data))
    sent = chart.settled()
    coming = () if made.then else rebuild(made.plan, chart.protocol, ctx.now, sent)
    if made.then in ("resume", "alive"):
        coming = rebuild(made.plan, chart.protocol, ctx.now, sent)
    if made.then in ("", "pause", "resume", "alive"):
        out.add(NewPlan(chart.id, made.plan, coming))
    _over_with_it(ctx, out, chart, made.plan, author)
    if made.then == "pause":
        out.add(SetState(chart.id, "paused"))
        heard_again(ctx, out, chart, author)  # in hospital nobody at home is silent
    elif made.then == "resume":
        out.add(SetState(chart.id, "active"))
        member = ctx.actor.id if ctx.actor else 0
        ask_last_doses(ctx, out, replace(chart, plan=made.plan, state="active"), member, author)
    elif made.then == "alive":
        out.add(*_alive_again(ctx, chart, made.plan, coming))
    elif made.then:
        out.add(EndCourse(chart.id, died=made.then == "died"))
        out.add(*(CancelDue(key) for key in wound.keys_of(chart.id)))  # "and with it my messages"
    if made.then == "died":
        out.add(Hush(chart.id))
        return
    for person in chart.people:
        text = ctx.words.say(made.words, person.lang, name=chart.name, reason="", **made.fields)
        head = ctx.words.say("saved_for_staff", person.lang, clinic=ctx.clinic.name)
        out.tell(
            person,
            Purpose.staff_words,
            f"{head}\n{text}",
            patient=chart.id,
            topic=AboutPatient(chart.id),
        )
