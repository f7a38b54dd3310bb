"""Everything that staff may send in their own chat."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta
from zoneinfo import ZoneInfo

from bot.model.chat import Incoming
from bot.plan.order import read_order
from bot.protocol.problem import FlowError

from .buttons import action_of, digest_of
from .cases import case_buttons, case_text, change_case
from .enrol import enrol
from .household import start_link
from .outcome import Entry, Invite, JoinDesk, Outcome
from .scene import Case, Chart, RosterLine, Scene
from .words import clock, date_of, when

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
  - name: carprofen
    amount: {en: one tablet (50 mg), es: una tableta (50 mg)}
    kind: anti-inflammatory
    every_hours: 12
    first_dose: 2026-03-04 20:00
    days: 14
    with_food: true"""


def on_desk(scene: Scene, event: Incoming) -> Outcome:
    """An event in a staff chat, or in a chat that wants to become one."""
    out = Outcome(scene.cause, event.chat)
    by = event.sender.name if event.sender else "staff"
    if event.kind == "button":
        _button(scene, out, event, by)
        return out
    if event.kind != "message" or not event.text.strip():
        return out
    words = event.text.split()
    command = words[0].casefold()
    argument = event.text[len(words[0]) :].strip()
    if command == "/join":
        _join(scene, out, event, by)
    elif scene.desk(event.chat) is None:
        return out
    elif command in ("/help", "/start"):
        out.say(event.chat, scene.words.say("desk_help", scene.clinic.language))
    elif command == "/patients":
        _patients(scene, out, event)
    elif command in ("/enrol", "/enroll"):
        _enrol(scene, out, event, by, argument)
    elif command in ("/log", "/link", "/end"):
        chart = _named(scene, out, event, argument)
        if chart is not None:
            {"/log": _log, "/link": _link, "/end": _end}[command](scene, out, event, by, chart)
    elif scene.reply_topic and scene.charts:
        _to_owner(scene, out, event, by, scene.charts[0])
    return out


def _join(scene: Scene, out: Outcome, event: Incoming, by: str) -> None:
    invitation = scene.invitation
    if invitation is None or not invitation.good or invitation.kind != "desk":
        out.add(Entry("refused", by, "a staff code that is unknown, used or has run out"))
        return
    rank = invitation.rank or 0
    user = event.sender.user if event.sender else 0
    out.add(
        JoinDesk(invitation.digest, event.chat, by, rank, user),
        Entry("desk", by, f"chat {event.chat} is a staff chat now, rank {rank}"),
    )
    lang = scene.clinic.language
    text = scene.words.say("desk_joined", lang, clinic=scene.clinic.name, rank=rank + 1)
    out.say(event.chat, text)


def _button(scene: Scene, out: Outcome, event: Incoming, by: str) -> None:
    action = action_of(scene.secret, (event.chat, *scene.former), event.data)
    parts = (action or "").split(".")
    desk = scene.desk(event.chat)
    if desk is None or len(parts) != 3 or parts[0] != "c":
        out.answer(event.callback)
        out.add(
            Entry(
                "refused", by, "a button that is not ours or not theirs", None,
                {"chat": event.chat, "data": event.data[:64]},
            )
        )  # fmt: skip
        return
    lang = scene.clinic.language
    found = [(chart, case) for chart in scene.charts for case in chart.cases if case.id == parts[1]]
    if not found:
        out.answer(event.callback, scene.words.say("case_gone", lang))
        return
    chart, case = found[0]
    local = clock(scene.now.astimezone(ZoneInfo(scene.clinic.zone)))
    if parts[2] == "ack" and case.state == "acknowledged":
        text = scene.words.say("case_taken", lang, by=case.acknowledged_by or "", at="").strip(", ")
        out.answer(event.callback, text)
        return
    closing = parts[2] == "close"
    key, state = ("case_closed", "closed") if closing else ("case_taken", "acknowledged")
    text = scene.words.say(key, lang, by=by, at=local)
    changed = change_case(case, state=state, by=by)
    out.answer(event.callback, text)
    out.add(changed, Entry("case", by, text, chart.id, {"case": case.id, "state": state}))
    out.cancel.append(f"page:{case.id}")
    _mark_everywhere(scene, out, event, chart, case, changed_text=text, closed=closing)


def _mark_everywhere(
    scene: Scene,
    out: Outcome,
    event: Incoming,
    chart: Chart,
    case: Case,
    *,
    changed_text: str,
    closed: bool,
) -> None:
    """The pressed message shows who has the case; other staff chats are told."""
    lang = scene.clinic.language
    changed = change_case(case, state="closed" if closed else "acknowledged")
    head, _, rest = case_text(scene, chart, changed, lang).partition("\n")
    out.edit(
        event.chat,
        "",
        f"✓ {changed_text}\n{head}\n{rest}",
        case_buttons(scene, event.chat, changed, lang),
        patient=chart.id,
        message=event.message,
    )
    for desk in scene.desks:
        if desk.chat != event.chat and (desk.rank == 0 or case.pages):
            out.say(
                desk.chat, f"{changed_text}: {head}", patient=chart.id,
                topic=f"case:{case.id}", quiet=True,
            )  # fmt: skip


def _to_owner(scene: Scene, out: Outcome, event: Incoming, by: str, chart: Chart) -> None:
    """A reply to a case or picture: the owner gets it under the clinic's name."""
    people = [person for person in chart.people if person.reachable]
    lang = scene.clinic.language
    if not people:
        text = scene.words.say("desk_nobody", lang, phone=chart.plan.phone or "–")
        out.say(event.chat, text, patient=chart.id)
        return
    kind, _, ident = scene.reply_topic.partition(":")
    for person in people:
        head = scene.words.say("saved_for_staff", person.lang, clinic=scene.clinic.name)
        media = event.media[0] if event.media else None
        out.say(
            person.chat,
            f"{head}\n{event.text}",
            media=media,
            patient=chart.id,
            topic=f"patient:{chart.id}",
        )
        if kind == "case":
            out.threads[person.chat] = {"case": ident}
    to = ", ".join(person.name for person in people)
    out.add(Entry("staff", by, event.text, chart.id, {"to": to, "topic": scene.reply_topic}))
    out.say(
        event.chat,
        scene.words.say("desk_sent", lang, to=f"{to} ({chart.name})"),
        patient=chart.id,
        quiet=True,
    )


def _patients(scene: Scene, out: Outcome, event: Incoming) -> None:
    lang, words = scene.clinic.language, scene.words
    if not scene.roster:
        out.say(event.chat, words.say("desk_patients_none", lang))
        return
    lines = [_roster_line(scene, row) for row in scene.roster]
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
    cases = words.say("desk_cases", lang, n=row.cases) if row.cases else ""
    return words.say(
        "desk_patient", lang, id=row.id, name=row.plan.patient,
        day=(now.date() - row.plan.surgery).days, procedure=row.plan.procedure, heard=heard,
        cases=cases,
    )  # fmt: skip


def find(roster: Sequence[RosterLine], wanted: str) -> list[RosterLine]:
    """Patients by number, or by name in any case."""
    wanted = wanted.strip().casefold()
    if wanted.isdigit():
        return [row for row in roster if row.id == int(wanted)]
    return [row for row in roster if row.plan.patient.casefold() == wanted]


def _named(scene: Scene, out: Outcome, event: Incoming, wanted: str) -> Chart | None:
    rows = find(scene.roster, wanted)
    lang = scene.clinic.language
    if len(rows) == 1:
        return scene.chart(rows[0].id)
    if rows:
        names = ", ".join(f"{row.id} {row.plan.patient} ({row.plan.owner})" for row in rows)
        out.say(event.chat, scene.words.say("desk_many", lang, names=names))
    else:
        out.say(event.chat, scene.words.say("desk_no_patient", lang, name=wanted or "?"))
    return None


def _enrol(scene: Scene, out: Outcome, event: Incoming, by: str, order: str) -> None:
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
        out.add(Entry("refused", by, f"an order that cannot be used: {error}"))
        return
    protocol = scene.protocols[plan.protocol]
    coming, expires = enrol(
        out, plan, protocol, scene.clinic, by=by, code=scene.fresh_code, now=scene.now
    )
    zone = ZoneInfo(plan.zone)
    text = words.say(
        "desk_enrolled", lang, name=plan.patient, count=len(coming),
        first=when(coming[0].due_at.astimezone(zone), scene.now.astimezone(zone), lang)
        if coming else "–",
        last=date_of(coming[-1].due_at.astimezone(zone), lang) if coming else "–",
        until=date_of(expires.astimezone(zone), lang),
        link=start_link(scene.bot_name, scene.fresh_code),
    )  # fmt: skip
    out.say(event.chat, "\n".join([text, *(str(problem) for problem in warnings)]))


def _link(scene: Scene, out: Outcome, event: Incoming, by: str, chart: Chart) -> None:
    expires = scene.now + timedelta(days=scene.clinic.invitation_days)
    out.add(
        Invite(digest_of(scene.fresh_code), "owner", by, expires, chart.id),
        Entry("link", by, "a one-time link for the owner", chart.id),
    )
    lang = scene.clinic.language
    text = scene.words.say(
        "desk_link", lang, name=chart.name, until=date_of(chart.local(expires), lang),
        link=start_link(scene.bot_name, scene.fresh_code),
    )  # fmt: skip
    out.say(event.chat, text, patient=chart.id)


def _log(scene: Scene, out: Outcome, event: Incoming, by: str, chart: Chart) -> None:
    del by
    out.say(event.chat, "\n".join(scene.log_tail)[-3900:] or "–", patient=chart.id)


def _end(scene: Scene, out: Outcome, event: Incoming, by: str, chart: Chart) -> None:
    out.end.add(chart.id)
    lang = scene.clinic.language
    text = scene.words.say("desk_ended", lang, name=chart.name)
    out.add(Entry("ended", by, text, chart.id))
    out.say(event.chat, text, patient=chart.id)
