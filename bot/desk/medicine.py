"""``/medicine NAME``: a new or changed medicine of a plan that is under way.

What is outside what is stated is confirmed first, by a clinician who has both doses before
the eyes; then it is asked why, as for every change.
"""

from __future__ import annotations

from zoneinfo import ZoneInfo

from bot.context.buttons import mark_of
from bot.context.contexts import AtDesk
from bot.desk.patients import confirmation, waiting_lines
from bot.desk.plan_changes import Changed, with_medicine
from bot.model.action import OnPlan
from bot.model.chart import Chart, Member
from bot.model.conversation import MedicineOrder
from bot.model.effects import Ask, Effects, Rows
from bot.model.plan import Medicine, Plan
from bot.model.steps import Cancel, Confirm, NewMedicine
from bot.model.topic import AboutChange
from bot.plan.dose_finding import DoseFinding
from bot.plan.formulary import formulary
from bot.plan.medicines import needs_confirmation_of
from bot.plan.order import check_change, load_medicine
from bot.protocol.problem import FlowError, Problem


def ordered(
    ctx: AtDesk, chart: Chart, order: str
) -> tuple[NewMedicine, MedicineOrder, Medicine] | str:
    """The order as it is to wait, or what staff must mend first."""
    lang = ctx.clinic.language
    if not order.strip():
        return ctx.words.say("plan_medicine_how", lang, name=chart.name)
    try:
        medicine = load_medicine(order, "medicine")
    except FlowError as error:
        return f"{ctx.words.say('plan_not_changed', lang)}\n{error}"
    errors = [p for p in _problems(ctx, chart, medicine) if p.level == "error"]
    if errors:
        return f"{ctx.words.say('plan_not_changed', lang)}\n{FlowError(errors)}"
    kept = medicine.model_dump(mode="json")
    asked = NewMedicine(mark_of(f"{chart.id}{kept}{ctx.event}"))
    waiting = needs_confirmation_of(medicine, chart.plan, formulary())
    order_kept = MedicineOrder(str(asked), chart.id, kept, ctx.now, confirmed=not waiting)
    return asked, order_kept, medicine


def waiting_of(chart: Chart, order: MedicineOrder) -> list[DoseFinding]:
    """What a clinician must look at before it may be asked why."""
    if order.confirmed:
        return []
    medicine = Medicine.model_validate(order.medicine)
    return needs_confirmation_of(medicine, chart.plan, formulary())


def ask_to_confirm(
    ctx: AtDesk, chat: int, chart: Chart, asked: NewMedicine, order: MedicineOrder
) -> tuple[str, Rows]:
    """Both doses, and the two buttons."""
    lang = ctx.clinic.language
    waiting = waiting_of(chart, order)
    text = ctx.words.say("medicine_confirm", lang, name=chart.name)
    rows = ((
        ctx.button(chat, ctx.words.say("medicine_keep", lang), OnPlan(chart.id, Confirm(asked))),
        ctx.button(chat, ctx.words.say("plan_cancel", lang), OnPlan(chart.id, Cancel(asked))),
    ),)  # fmt: skip
    notes = notes_of(ctx, chart, Medicine.model_validate(order.medicine), waiting)
    return "\n".join([text, *waiting_lines(waiting, lang), *notes]), rows


def confirm(
    ctx: AtDesk, out: Effects, chat: int, actor: Member, chart: Chart, order: MedicineOrder
) -> MedicineOrder:
    """A clinician has looked at both doses and keeps the order."""
    waiting = waiting_of(chart, order)
    out.add(confirmation(waiting, actor.name, ctx.clinic.language, chart.id))
    medicine = {**order.medicine, "confirmed_by": actor.name}
    kept = MedicineOrder(order.key, chart.id, medicine, ctx.now)
    out.add(Ask(chat, kept))
    return kept


def changed(ctx: AtDesk, chart: Chart, order: MedicineOrder) -> Changed:
    """The plan with the order in it."""
    return with_medicine(chart.plan, Medicine.model_validate(order.medicine), ctx.now)


def topic_of(order: MedicineOrder) -> AboutChange:
    """What the message about it is about."""
    return AboutChange(order.patient, order.key)


def notes_of(ctx: AtDesk, chart: Chart, medicine: Medicine, told: list[DoseFinding]) -> list[str]:
    """What else the change brings with it that is worth a look, a line each."""
    said = {one.what.en for one in told}
    found = [p for p in _problems(ctx, chart, medicine) if p.what not in said]
    return [f"⚠ {p.what}. {p.mend}" for p in found]


def _problems(ctx: AtDesk, chart: Chart, medicine: Medicine) -> list[Problem]:
    today = ctx.now.astimezone(ZoneInfo(ctx.clinic.zone)).date()
    after: Plan = with_medicine(chart.plan, medicine, ctx.now).plan
    return check_change(chart.plan, after, chart.protocol, ctx.now, today)
