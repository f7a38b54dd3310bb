"""Changing a plan from the staff chat: what, why, what the owner will be told, done.

Nothing changes before a reason is given: tapping one, or writing one, is the confirmation.
"""

from __future__ import annotations

from datetime import timedelta

from bot.context.buttons import mark_of
from bot.context.contexts import AtDesk
from bot.desk import medicine
from bot.desk.board import named
from bot.desk.carried_out import carry_out, told_of
from bot.desk.patients import waiting_lines
from bot.desk.plan_changes import Changed, Offered, change, offer
from bot.model.action import OnPlan
from bot.model.chart import Chart, Member
from bot.model.chat import Button, Incoming
from bot.model.conversation import MedicineOrder, WhyChange
from bot.model.effects import (
    Ask,
    Effects,
    Rows,
    Settle,
)
from bot.model.ids import PatientId
from bot.model.steps import (
    Apart,
    AskApart,
    Asked,
    Because,
    Cancel,
    Change,
    Confirm,
    Group,
    Guide,
    NewMedicine,
    OfCourse,
    PlanStep,
    ShowGroup,
    Why,
    asked_of,
)
from bot.model.topic import AboutChange

REASONS = (Why.decided, Why.side_effect, Why.healing, Why.worse)
"""Ready reasons for whatever is no death."""
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
    if word == "/medicine" and not chart.over and not ctx.standing(chart).death_told:
        _medicine(ctx, out, event, chart, rest)
        return
    if _state(ctx, chart) == "ended":
        text = ctx.words.say("plan_over_now", ctx.clinic.language, name=chart.name)
        out.say(event.chat, text, patient=chart.id)
        return
    if word == "/end" or chart.over or ctx.standing(chart).death_told:
        text, rows = _course(ctx, event.chat, chart)
    else:
        text, rows = _menu(ctx, event.chat, chart)
    out.say(event.chat, text, buttons=rows, patient=chart.id, topic=AboutChange(chart.id, ""))


def _course(ctx: AtDesk, chat: int, chart: Chart) -> tuple[str, Rows]:
    """What may be done with the course as a whole; of a patient that has died, only to
    confirm it or take it back."""
    lang = ctx.clinic.language
    offered = _offered(ctx, chart, Group.course)
    rows = [
        (ctx.button(chat, ctx.words.say(key, lang, what=what), OnPlan(chart.id, step)),)
        for step, key, what in offered
    ]
    rows.append((_cancel(ctx, chat, chart),))
    return ctx.words.say("plan_what", lang, name=chart.name, day=chart.day(ctx.now)), tuple(rows)


def _offered(ctx: AtDesk, chart: Chart, group: Group) -> list[Offered]:
    day = chart.day(ctx.now)
    return offer(chart.plan, chart.protocol, _state(ctx, chart), group, ctx.now, day)


def _state(ctx: AtDesk, chart: Chart) -> str:
    """The state by which changes are offered: a death that was told goes before."""
    told = chart.state != "died" and ctx.standing(chart).death_told
    return "told_dead" if told else chart.state


def _menu(ctx: AtDesk, chat: int, chart: Chart) -> tuple[str, Rows]:
    lang = ctx.clinic.language
    made = [
        ctx.button(chat, ctx.words.say(f"group_{g}", lang), OnPlan(chart.id, ShowGroup(g)))
        for g in Group
    ]
    head = ctx.words.say("plan_what", lang, name=chart.name, day=chart.day(ctx.now))
    return head, (tuple(made[:2]), tuple(made[2:4]), (made[4],))


def tap(
    ctx: AtDesk, out: Effects, event: Incoming, actor: Member, patient: PatientId, step: PlanStep
) -> bool:
    """A button of the plan's dialogue; False when it leads nowhere."""
    chart = ctx.chart(patient)
    if chart is None:
        return False
    lang = ctx.clinic.language
    out.answer(event.callback)
    match step:
        case Cancel(asked=asked):
            out.add(Settle(event.chat, str(asked) if asked else _why_key(event.message)))
            text = ctx.words.say("plan_nothing", lang, name=chart.name)
            out.edit(event.chat, "", text, (), patient=chart.id, message=event.message)
        case Guide.operation:
            text = ctx.words.say("plan_reop_how", lang, name=chart.name, id=chart.id)
            out.edit(event.chat, "", text, (), patient=chart.id, message=event.message)
        case ShowGroup(group=group):
            _group(ctx, out, event, chart, group)
        case Confirm(order=order):
            _confirm(ctx, out, event, actor, chart, order)
        case Because(asked=asked, why=why):
            if why not in _reasons(asked):
                return False
            if not _waits(ctx, chart, asked, event.message):
                _say_over(ctx, out, event, chart)
                return True
            words = ctx.words.say(f"reason_{why}", lang)
            _do(ctx, out, event, actor, chart, asked, words, event.message)
        case _:
            _ask_reason(ctx, out, event, chart, step)
    return True


def _group(ctx: AtDesk, out: Effects, event: Incoming, chart: Chart, group: Group) -> None:
    lang = ctx.clinic.language
    offered = _offered(ctx, chart, group)
    rows = [
        (ctx.button(event.chat, ctx.words.say(key, lang, what=what),
                OnPlan(chart.id, step)),)
        for step, key, what in offered
    ]  # fmt: skip
    rows.append((_cancel(ctx, event.chat, chart),))
    head = ctx.words.say("plan_what", lang, name=chart.name, day=chart.day(ctx.now))
    if group is Group.med:
        head = f"{head}\n{ctx.words.say('plan_medicine_how', lang, name=chart.name)}"
    out.edit(event.chat, "", head, tuple(rows), patient=chart.id, message=event.message)


def _cancel(ctx: AtDesk, chat: int, chart: Chart, asked: Asked | None = None) -> Button:
    words = ctx.words.say("plan_cancel", ctx.clinic.language)
    marked = asked if isinstance(asked, Apart | NewMedicine) else None
    return ctx.button(chat, words, OnPlan(chart.id, Cancel(marked)))


def _ask_reason(
    ctx: AtDesk, out: Effects, event: Incoming, chart: Chart, step: Change | AskApart
) -> None:
    wanted = step.change if isinstance(step, AskApart) else step
    made = _changed(ctx, chart, wanted, "…", "…")
    if made is None:
        _not_now(ctx, out, event, chart)
        return
    if isinstance(step, AskApart):
        apart = Apart(wanted, mark_of(ctx.event))
        text, rows = _question(ctx, event.chat, chart, apart, made)
        topic = AboutChange(chart.id, str(apart))
        out.say(event.chat, text, buttons=rows, patient=chart.id, topic=topic)
        out.add(Ask(event.chat, WhyChange(str(apart), chart.id, str(wanted), 0, ctx.now)))
        return
    text, rows = _question(ctx, event.chat, chart, wanted, made)
    out.edit(event.chat, "", text, rows, patient=chart.id, message=event.message)
    why = WhyChange(_why_key(event.message), chart.id, str(wanted), event.message, ctx.now)
    out.add(Ask(event.chat, why))


def _not_now(ctx: AtDesk, out: Effects, event: Incoming, chart: Chart) -> None:
    """A change that there is no more: the course is over, or the plan was changed since."""
    key = "plan_over_now" if chart.over or ctx.standing(chart).death_told else "plan_over"
    out.say(event.chat, ctx.words.say(key, ctx.clinic.language, name=chart.name), patient=chart.id)


def _why_key(message: int) -> str:
    """A question for a reason belongs to the message that asks it."""
    return f"why:{message}"


def _waits(ctx: AtDesk, chart: Chart, asked: Asked, message: int) -> bool:
    """Whether this very change waits for a reason: asked under this message, lately."""
    waiting = _pending(ctx, asked, message)
    return waiting is not None and waiting.patient == chart.id and ctx.now - waiting.at <= PATIENCE


def _pending(ctx: AtDesk, asked: Asked, message: int) -> WhyChange | MedicineOrder | None:
    """The open question of this change, by its own mark or by the message that asks it."""
    match asked:
        case NewMedicine():
            return ctx.conversation.find(MedicineOrder, str(asked))
        case Apart():
            return ctx.conversation.find(WhyChange, str(asked))
        case _:
            found = ctx.conversation.find(WhyChange, _why_key(message))
            return found if found is not None and found.code == str(asked) else None


def _question(
    ctx: AtDesk, chat: int, chart: Chart, asked: Asked, made: Changed
) -> tuple[str, Rows]:
    """What would change, what the owner will read, and: why?"""
    lang = ctx.clinic.language
    told = (
        told_of(ctx, chart, made, lang)
        if made.words
        else ctx.words.say(made.silent, lang, name=chart.name, **made.fields)
    )
    text = ctx.words.say("plan_why", lang, name=chart.name, told=told)
    rows = [
        (ctx.button(chat, ctx.words.say(f"reason_{why}", lang),
                OnPlan(chart.id, Because(asked, why))),)
        for why in _reasons(asked)
    ]  # fmt: skip
    return text, (*rows, (_cancel(ctx, chat, chart, asked),))


def _reasons(asked: Asked) -> tuple[Why, ...]:
    """Those for a death and for taking it back: "healing well" would be cruel there."""
    match asked.change if isinstance(asked, Apart) else asked:
        case OfCourse.died:
            return (Why.decided, Why.family)
        case OfCourse.alive:
            return (Why.decided, Why.mistaken)
        case _:
            return REASONS


def reason(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, topic: AboutChange) -> bool:
    """A reason in own words, in reply to the question: the change is made."""
    chart = ctx.chart(topic.patient)
    message = event.reply_to or 0
    waiting = ctx.conversation.find(WhyChange, _why_key(message))
    asked = asked_of(topic.key or (waiting.code if waiting else ""))
    text = event.text.strip()
    if chart is None or asked is None or not text or not _waits(ctx, chart, asked, message):
        return False
    order = _pending(ctx, asked, message)
    if isinstance(order, MedicineOrder) and not order.confirmed:
        out.say(event.chat, ctx.words.say("medicine_first", ctx.clinic.language))
        return True
    _do(ctx, out, event, actor, chart, asked, text, event.reply_to)
    return True


def _medicine(ctx: AtDesk, out: Effects, event: Incoming, chart: Chart, order: str) -> None:
    """A new or changed medicine, as in an order; checked, and asked about like any change."""
    made = medicine.ordered(ctx, chart, order)
    if isinstance(made, str):
        out.say(event.chat, made, patient=chart.id)
        return
    asked, question, wanted = made
    if question.confirmed:
        text, rows = _question(
            ctx, event.chat, chart, asked, medicine.changed(ctx, chart, question)
        )
        text = "\n".join([text, *medicine.notes_of(ctx, chart, wanted, [])])
    else:
        text, rows = medicine.ask_to_confirm(ctx, event.chat, chart, asked, question)
    out.say(event.chat, text, buttons=rows, patient=chart.id, topic=medicine.topic_of(question))
    out.add(Ask(event.chat, question))


def _confirm(
    ctx: AtDesk, out: Effects, event: Incoming, actor: Member, chart: Chart, asked: NewMedicine
) -> None:
    """A clinician keeps an order that is outside what is stated; then it is asked why."""
    order = _pending(ctx, asked, event.message)
    if not isinstance(order, MedicineOrder) or not _waits(ctx, chart, asked, event.message):
        _say_over(ctx, out, event, chart)
        return
    lang = ctx.clinic.language
    found = waiting_lines(medicine.waiting_of(chart, order), lang)
    if not order.confirmed:
        order = medicine.confirm(ctx, out, event.chat, actor, chart, order)
    made = medicine.changed(ctx, chart, order)
    text, rows = _question(ctx, event.chat, chart, asked, made)
    kept = ctx.words.say("order_kept", lang, by=actor.name)
    whole = "\n".join([f"✓ {kept}", *found, text])
    out.edit(event.chat, "", whole, rows, patient=chart.id, message=event.message)


def _say_over(ctx: AtDesk, out: Effects, event: Incoming, chart: Chart) -> None:
    """A second tap, or a question that was left long ago: said, never silence."""
    text = ctx.words.say("plan_over", ctx.clinic.language)
    out.edit(event.chat, "", text, (), patient=chart.id, message=event.message)


def _changed(ctx: AtDesk, chart: Chart, asked: Asked, author: str, why: str) -> Changed | None:
    wanted = asked.change if isinstance(asked, Apart) else asked
    if not _may(_state(ctx, chart), wanted):
        return None
    if isinstance(wanted, NewMedicine):
        kept = ctx.conversation.find(MedicineOrder, str(wanted))
        return medicine.changed(ctx, chart, kept) if kept is not None else None
    return change(
        chart.plan, chart.protocol, chart.history, wanted, ctx.now, chart.day(ctx.now),
        author, why,
    )  # fmt: skip


def _may(state: str, wanted: Change | NewMedicine) -> bool:
    """Nothing is planned for one that has died or whose course is over: a death can be
    confirmed or taken back, and that is all."""
    match state:
        case "ended":
            return False
        case "died":
            return wanted is OfCourse.alive
        case "told_dead":
            return wanted in (OfCourse.died, OfCourse.alive)
        case _:
            return wanted is not OfCourse.alive


def _do(
    ctx: AtDesk,
    out: Effects,
    event: Incoming,
    actor: Member,
    chart: Chart,
    asked: Asked,
    why: str,
    message: int | None,
) -> None:
    made = _changed(ctx, chart, asked, actor.name, why)
    if made is None:
        _say_over(ctx, out, event, chart)
        return
    carry_out(ctx, out, chart, made, actor.name, why)
    lang = ctx.clinic.language
    done = ctx.words.say("plan_done", lang, by=actor.name, name=chart.name, reason=why)
    if message is not None:
        out.edit(event.chat, "", f"✓ {done}", (), patient=chart.id, message=message)
    else:
        out.say(event.chat, f"✓ {done}", patient=chart.id)
    out.add(Settle(event.chat, _why_key(message or 0)), Settle(event.chat, str(asked)))
