"""Staff commands about patients: who is with us, the log, a link, enrolling, ending."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta
from zoneinfo import ZoneInfo

from bot.model.chat import Button, Incoming
from bot.model.plan import Plan
from bot.plan.dose_finding import DoseFinding
from bot.plan.formulary import formulary
from bot.plan.medicines import check_medicines_against, confirm, needs_confirmation
from bot.plan.order import read_order
from bot.protocol.problem import FlowError

from . import wound
from .board import named
from .buttons import button, digest_of, mark_of
from .enrol import enrol
from .household import start_link
from .outcome import Entry, Invite, Outcome
from .scene import Chart, Member, RosterLine, Scene
from .words import date_of, when

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
    scene: Scene, out: Outcome, event: Incoming, actor: Member, word: str, argument: str
) -> None:
    """``/patients``, ``/enrol``, ``/log NAME``, ``/link NAME``, ``/end NAME``."""
    if word == "/patients":
        _patients(scene, out, event)
    elif word in ("/enrol", "/enroll"):
        _enrol(scene, out, event, actor, argument)
    else:
        chart = named(scene, out, event, argument)
        if chart is not None:
            act = {"/log": _log, "/link": _link, "/end": _end, "/people": _people}[word]
            act(scene, out, event, actor, chart)


def _patients(scene: Scene, out: Outcome, event: Incoming) -> None:
    lang, words = scene.clinic.language, scene.words
    if not scene.roster:
        out.say(event.chat, words.say("desk_patients_none", lang))
        return
    lines = [_roster_line(scene, row) for row in scene.roster[:LISTED]]
    if len(scene.roster) > LISTED:
        lines.append(words.say("board_more", lang, n=len(scene.roster) - LISTED))
    out.say(event.chat, "\n".join(lines))


def _roster_line(scene: Scene, row: RosterLine) -> str:
    lang, words = scene.clinic.language, scene.words
    zone = ZoneInfo(row.plan.zone)
    now = scene.now.astimezone(zone)
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


def _enrol(scene: Scene, out: Outcome, event: Incoming, actor: Member, order: str) -> None:
    lang, words = scene.clinic.language, scene.words
    if not order:
        text = words.say("desk_enrol_how", lang)
        out.say(event.chat, f"{text}\n\n/enrol\n{ORDER_EXAMPLE}")
        return
    local = scene.now.astimezone(ZoneInfo(scene.clinic.zone))
    try:
        plan, warnings = read_order(order, "order", scene.protocols, local.date())
    except FlowError as error:
        out.say(event.chat, f"{words.say('desk_not_enrolled', lang)}\n{error}")
        out.add(Entry("refused", actor.name, f"an order that cannot be used: {error}"))
        return
    waiting = needs_confirmation(plan, formulary())
    if waiting:
        _ask_to_confirm(scene, out, event, plan, waiting)
        return
    _enrolled(scene, out, event, actor, plan, [str(problem) for problem in warnings])


def _ask_to_confirm(
    scene: Scene, out: Outcome, event: Incoming, plan: Plan, waiting: Sequence[DoseFinding]
) -> None:
    """The order is outside a stated limit: a clinician confirms it, or changes it."""
    lang = scene.clinic.language
    lines = [scene.words.say("order_confirm", lang, name=plan.patient)]
    lines += [f"– {one.medicine}: {one.what.say(lang)}" for one in waiting]
    kept = plan.model_dump(mode="json")
    mark = mark_of(str(kept))

    def made(key: str, act: str) -> Button:
        return button(scene.secret, event.chat, scene.words.say(key, lang), f"n.{act}-{mark}")

    rows = ((made("order_keep", "keep"), made("order_leave", "x")),)
    out.say(event.chat, "\n".join(lines), buttons=rows)
    orders = {**scene.thread.get("enrolments", {}), mark: kept}
    out.threads[event.chat] = {**scene.thread, "enrolments": dict(list(orders.items())[-10:])}


def confirmed(scene: Scene, out: Outcome, event: Incoming, actor: Member, parts: list[str]) -> bool:
    """What a clinician said to an order outside a limit."""
    act, _, mark = parts[-1].partition("-")
    orders = scene.thread.get("enrolments", {})
    kept = orders.get(mark)
    if len(parts) != 2:
        return False
    out.answer(event.callback)
    if kept is None:
        return True  # a second tap
    left = {k: v for k, v in orders.items() if k != mark}
    out.threads[event.chat] = {**scene.thread, "enrolments": left}
    lang = scene.clinic.language
    if act != "keep":
        out.edit(event.chat, "", scene.words.say("order_left", lang), (), message=event.message)
        return True
    plan = confirm(Plan.model_validate(kept), formulary(), actor.name)
    found = [f"{one.medicine}: {one.what.say(lang)}" for one in
             check_medicines_against(plan, formulary())]  # fmt: skip
    text = scene.words.say("order_kept", lang, by=actor.name)
    out.edit(event.chat, "", "\n".join([f"✓ {text}", *found]), (), message=event.message)
    _enrolled(scene, out, event, actor, plan, [])
    return True


def _enrolled(
    scene: Scene, out: Outcome, event: Incoming, actor: Member, plan: Plan, notes: list[str]
) -> None:
    lang, words = scene.clinic.language, scene.words
    protocol = scene.protocols[plan.protocol]
    coming, expires = enrol(
        out, plan, protocol, scene.clinic, by=actor.name, code=scene.fresh_code, now=scene.now
    )
    zone = ZoneInfo(plan.zone)
    here = scene.now.astimezone(zone)
    text = words.say(
        "desk_enrolled",
        lang,
        name=plan.patient,
        count=len(coming),
        first=when(coming[0].due_at.astimezone(zone), here, lang) if coming else "–",
        last=date_of(coming[-1].due_at.astimezone(zone), lang) if coming else "–",
        until=date_of(expires.astimezone(zone), lang),
        link=start_link(scene.bot_name, scene.fresh_code),
    )
    out.say(event.chat, "\n".join([text, *notes]))


def _link(scene: Scene, out: Outcome, event: Incoming, actor: Member, chart: Chart) -> None:
    expires = scene.now + timedelta(days=scene.clinic.invitation_days)
    out.add(
        Invite(digest_of(scene.fresh_code), "owner", actor.name, expires, chart.id),
        Entry("link", actor.name, "a one-time link for the owner", chart.id),
    )
    lang = scene.clinic.language
    text = scene.words.say(
        "desk_link", lang, name=chart.name, until=date_of(chart.local(expires), lang),
        link=start_link(scene.bot_name, scene.fresh_code),
    )  # fmt: skip
    out.say(event.chat, text, patient=chart.id)


def _people(scene: Scene, out: Outcome, event: Incoming, actor: Member, chart: Chart) -> None:
    """Who takes care of the patient at home, with a button to remove each."""
    del actor
    lang, words = scene.clinic.language, scene.words
    if not chart.people:
        out.say(event.chat, words.say("people_none", lang, name=chart.name), patient=chart.id)
        return
    names = ", ".join(person.name for person in chart.people)
    rows = tuple(
        (
            button(
                scene.secret, event.chat, words.say("people_remove", lang, person=person.name),
                f"o.{chart.id}.{person.id}",
            ),
        )
        for person in chart.people
    )  # fmt: skip
    text = words.say("people_of", lang, name=chart.name, people=names)
    out.say(event.chat, text, buttons=rows, patient=chart.id)


def remove(scene: Scene, out: Outcome, event: Incoming, actor: Member, parts: list[str]) -> bool:
    """Take someone at home off a patient's messages."""
    chart = scene.charts[0] if scene.charts else None
    person = next((p for p in chart.people if str(p.id) == parts[2]), None) if chart else None
    if chart is None or person is None or str(chart.id) != parts[1]:
        return False
    lang = scene.clinic.language
    text = scene.words.say("people_removed", lang, person=person.name, name=chart.name)
    out.answer(event.callback, text)
    out.leave.append((chart.id, person.id))
    out.add(Entry("left", actor.name, text, chart.id))
    out.edit(event.chat, "", f"✓ {text}", (), patient=chart.id, message=event.message)
    return True


def _log(scene: Scene, out: Outcome, event: Incoming, actor: Member, chart: Chart) -> None:
    del actor
    out.say(event.chat, "\n".join(scene.log_tail)[-3900:] or "–", patient=chart.id)


def _end(scene: Scene, out: Outcome, event: Incoming, actor: Member, chart: Chart) -> None:
    out.end.add(chart.id)
    out.cancel += wound.keys_of(chart.id)
    lang = scene.clinic.language
    text = scene.words.say("desk_ended", lang, name=chart.name)
    out.add(Entry("ended", actor.name, text, chart.id))
    out.say(event.chat, text, patient=chart.id)
