"""A change of the plan is carried out: kept, told at home, and bound by what is held."""

from __future__ import annotations

from dataclasses import replace

from bot.cases.cases import change_case, heard_again, quieten
from bot.context.contexts import AtDesk
from bot.context.opening import deadline
from bot.desk.enrol import AFTER_LAST, FIRST_LOOK
from bot.desk.holds import ask_at_close
from bot.desk.plan_changes import Changed
from bot.household import wound
from bot.household.resumed import hold_for_last_doses
from bot.household.undo import goes_on
from bot.model.chart import Chart
from bot.model.effects import (
    CancelDue,
    Correct,
    Due,
    Effect,
    Effects,
    EndCourse,
    EndHold,
    Entry,
    Hush,
    NewPlan,
    SetState,
)
from bot.model.hold import HeldMedicine, Walks
from bot.model.ids import MemberId
from bot.model.plan import Plan, Prompt
from bot.model.purpose import Purpose
from bot.model.steps import OfCourse
from bot.model.text import Lang
from bot.model.topic import AboutPatient
from bot.model.urgency import Urgency
from bot.plan.prompts import rebuild
from bot.standing.holds import covered
from bot.standing.standing import deaths


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
    """A death that was told or entered by mistake: it holds nothing any more. A course that
    ended with it goes on from now; where nobody confirmed it, all is as staff left it."""
    dead = [one.id for one in chart.history if one.observation.about == "life"]
    found: list[Effect] = [Correct(chart.id, one) for one in dead]
    found += [
        EndHold(chart.id, hold.id, ctx.actor.id if ctx.actor else None, "")
        for hold in deaths(chart.holds)
    ]
    if chart.state != "died":
        return found
    found.append(SetState(chart.id, "active"))
    found.append(Due(f"silence:{chart.id}", "silence", ctx.now + FIRST_LOOK, chart.id))
    if coming:
        last = max(prompt.due_at for prompt in coming) + AFTER_LAST
        found.append(Due(f"end:{chart.id}", "end", last, chart.id))
    found += [
        Due(wound.key_of(chart.id, day), "wound", at, chart.id, {"day": day})
        for day, at in wound.wound_dues(plan, chart.protocol.implant, ctx.now)
    ]
    return found


def _settle_death(ctx: AtDesk, out: Effects, chart: Chart, author: str, *, died: bool) -> None:
    """Whoever confirms a death has its case, paged no more, but not forgotten: it keeps its
    deadline, though all else of the patient falls silent. Taken back, it is over."""
    for case in chart.cases:
        if not case.tells_death:
            continue
        if not died and case.alive_at is not None:
            continue  # it tells of an emergency since: that one is not over
        if died:
            out.add(change_case(case, state="acknowledged", by=author))
            last = max(case.deadline, deadline(ctx.clinic, Urgency.next_day, ctx.now))
            out.add(Due(f"deadline:{case.id}", "deadline", last, chart.id, {"case": case.id}))
        else:
            out.add(change_case(case, state="closed", by=author, outcome="mistaken"))
        quieten(out, case.id, closed=not died)


def _still_held(ctx: AtDesk, chart: Chart, made: Changed) -> bool:
    """Whether what the household would be told of is on hold."""
    standing = ctx.standing(chart)
    if made.words.startswith("told_walk"):
        return bool(standing.holds_on_target(Walks()))
    med = made.fields.get("med")
    goes_on = made.words in ("told_med_on", "told_med_new", "told_med_changed")
    return goes_on and med is not None and bool(standing.holds_on_medicine(str(med)))


def told_of(ctx: AtDesk, chart: Chart, made: Changed, lang: Lang) -> str:
    """What the household is told of a change; that it lives with what goes on now."""
    text = ctx.words.say(made.words, lang, name=chart.name, reason="", **made.fields)
    return f"{text} {goes_on(ctx, chart, lang)}" if made.then is OfCourse.alive else text


def carry_out(
    ctx: AtDesk, out: Effects, chart: Chart, made: Changed, author: str, why: str
) -> None:
    """Keep a change: future prompts are built anew, past ones stay; the owner is told in
    plain words, in each person's language."""
    then = made.then
    change = made.words or (then.name if then else "")
    data = {"change": change, "why": why, **made.fields}
    words = "told_died" if then is OfCourse.died else made.words or made.silent
    what = ctx.words.say(words, ctx.clinic.language, name=chart.name, reason="", **made.fields)
    out.add(Entry("plan", author, what, chart.id, data))
    sent = chart.settled()
    goes_back = then is OfCourse.alive and chart.state in ("active", "died")
    coming: tuple[Prompt, ...] = ()
    if then in (None, OfCourse.resume) or goes_back:
        coming = rebuild(made.plan, chart.protocol, ctx.now, sent)
    if then not in (OfCourse.end, OfCourse.died):
        out.add(NewPlan(chart.id, made.plan, coming))
    _over_with_it(ctx, out, chart, made.plan, author)
    match then:
        case OfCourse.pause:
            out.add(SetState(chart.id, "paused"))
            heard_again(ctx, out, chart, author)  # in hospital nobody at home is silent
        case OfCourse.resume:
            out.add(SetState(chart.id, "active"))
        case OfCourse.alive:
            out.add(*_alive_again(ctx, chart, made.plan, coming))
            _settle_death(ctx, out, chart, author, died=False)
        case OfCourse.end | OfCourse.died:
            out.add(EndCourse(chart.id, died=then is OfCourse.died))
            out.add(*(CancelDue(key) for key in wound.keys_of(chart.id)))  # "with it my messages"
            if then is OfCourse.died:
                out.add(Hush(chart.id))
                _settle_death(ctx, out, chart, author, died=True)
        case None:
            pass
    if not made.words:
        return
    if _still_held(ctx, chart, made):
        # "Go on with it" would be said against the hold: a clinician releases it first.
        ask_at_close(ctx, out, ctx.incoming.chat, chart)
        return
    for person in chart.people:
        text = told_of(ctx, chart, made, person.lang)
        head = ctx.words.say("saved_for_staff", person.lang, clinic=ctx.clinic.name)
        out.tell(
            person,
            Purpose.staff_words,
            f"{head}\n{text}",
            patient=chart.id,
            topic=AboutPatient(chart.id),
        )
    if then is OfCourse.resume:
        member = ctx.actor.id if ctx.actor else MemberId(0)
        active = replace(chart, plan=made.plan, state="active")
        hold_for_last_doses(ctx, out, active, member, author)
