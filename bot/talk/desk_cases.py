"""What staff do with a case: take it, answer the owner, close it with an outcome."""

from __future__ import annotations

from typing import Any
from zoneinfo import ZoneInfo

from bot.model.chat import Incoming, Media

from .buttons import button
from .card import OUTCOMES, case_buttons, case_text, outcome_buttons
from .cases import chain, change_case, quieten
from .outcome import CaseNote, Entry, Outcome, Rows
from .scene import Case, Chart, Member, Person, Scene
from .words import clock


def _found(scene: Scene, case_id: str) -> tuple[Chart, Case] | None:
    for chart in scene.charts:
        for case in chart.cases:
            if case.id == case_id:
                return chart, case
    return None


def tap(scene: Scene, out: Outcome, event: Incoming, actor: Member, parts: list[str]) -> bool:
    """A button under a case; False when it is none of ours."""
    lang = scene.clinic.language
    found = _found(scene, parts[1])
    if found is None:
        out.answer(event.callback, scene.words.say("case_gone", lang))
        return True
    chart, case = found
    act = parts[2]
    if act == "ack":
        _take(scene, out, event, actor, chart, case)
    elif act == "close":
        out.answer(event.callback)
        text = case_text(scene, chart, case, lang)
        ask = scene.words.say("case_how_ended", lang)
        _edit(out, event, chart, f"{text}\n\n{ask}", outcome_buttons(
            scene, event.chat, case, lang))  # fmt: skip
    elif act == "back":
        out.answer(event.callback)
        _edit(out, event, chart, case_text(scene, chart, case, lang),
              case_buttons(scene, event.chat, case, lang))  # fmt: skip
    elif act in OUTCOMES:
        _close(scene, out, event, actor, chart, case, act)
    elif act == "answers":
        out.answer(event.callback)
        _offer(scene, out, event, chart, case)
    elif act.startswith("s-"):
        return _send_ready(scene, out, event, actor, chart, case, act[2:])
    else:
        return False
    return True


def _edit(out: Outcome, event: Incoming, chart: Chart, text: str, buttons: Rows) -> None:
    out.edit(event.chat, "", text, buttons, patient=chart.id, message=event.message)


def _local(scene: Scene) -> str:
    return clock(scene.now.astimezone(ZoneInfo(scene.clinic.zone)))


def _take(
    scene: Scene, out: Outcome, event: Incoming, actor: Member, chart: Chart, case: Case
) -> None:
    lang = scene.clinic.language
    if case.state != "open":
        who = case.acknowledged_by or ""
        out.answer(event.callback, scene.words.say("case_taken_already", lang, by=who))
        return
    text = scene.words.say("case_taken", lang, by=actor.name, at=_local(scene))
    out.answer(event.callback, text)
    changed = change_case(case, state="acknowledged", by=actor.name)
    data = {"case": case.id, "state": "acknowledged"}
    out.add(changed, Entry("case", actor.name, text, chart.id, data))
    quieten(out, case.id)
    _show_changed(scene, out, event, chart, case, "acknowledged", text)


def _close(
    scene: Scene,
    out: Outcome,
    event: Incoming,
    actor: Member,
    chart: Chart,
    case: Case,
    outcome: str,
) -> None:
    lang = scene.clinic.language
    how = scene.words.say(f"outcome_{outcome}", lang)
    text = scene.words.say("case_closed", lang, by=actor.name, at=_local(scene), outcome=how)
    out.answer(event.callback, text)
    changed = change_case(case, state="closed", by=actor.name, outcome=outcome)
    data = {"case": case.id, "state": "closed", "outcome": outcome}
    out.add(changed, Entry("case", actor.name, text, chart.id, data))
    quieten(out, case.id, closed=True)
    _show_changed(scene, out, event, chart, case, "closed", text)


def _show_changed(
    scene: Scene,
    out: Outcome,
    event: Incoming,
    chart: Chart,
    case: Case,
    state: str,
    text: str,
) -> None:
    """The pressed message shows who has the case; the other chats that know it are told."""
    lang = scene.clinic.language
    changed = change_case(case, state=state)
    whole = case_text(scene, chart, changed, lang)
    buttons = case_buttons(scene, event.chat, changed, lang)
    _edit(out, event, chart, f"✓ {text}\n{whole}", buttons)
    head = whole.partition("\n")[0]
    for place, group in enumerate(chain(scene)):
        for desk in group:
            reached = place <= case.pages // case.policy.pages_each
            if desk.chat != event.chat and reached:
                topic = f"case:{case.id}"
                out.say(desk.chat, f"{text}: {head}", patient=chart.id, topic=topic, quiet=True)


def _offer(scene: Scene, out: Outcome, event: Incoming, chart: Chart, case: Case) -> None:
    """Ready answers, in the language of staff; one tap sends one in the owner's."""
    lang = scene.clinic.language
    fields = {"name": chart.name, "phone": scene.clinic.phone}
    entries = case.body["entries"]
    topics = {case.matter, *(topic for entry in entries for topic in entry["topics"])}
    topics |= {one["about"] for entry in entries for one in entry["seen"]}
    offered = scene.answers.offered(topics)
    lines = [scene.words.say("answers_head", lang, name=chart.name)]
    rows = []
    for number, answer in enumerate(offered, 1):
        lines.append(f"{number}. {answer.title.say(lang)}: {answer.text.say(lang, **fields)}")
        label = scene.words.say("answers_send", lang, n=number)
        rows.append(button(scene.secret, event.chat, label, f"c.{case.id}.s-{answer.id}"))
    lines.append(scene.words.say("answers_own", lang))
    out.say(
        event.chat,
        "\n".join(lines),
        buttons=(tuple(rows[:3]), tuple(rows[3:])) if len(rows) > 3 else (tuple(rows),),
        topic=f"case:{case.id}",
        patient=chart.id,
        reply_to=event.message,
    )


def _send_ready(
    scene: Scene,
    out: Outcome,
    event: Incoming,
    actor: Member,
    chart: Chart,
    case: Case,
    id: str,
) -> bool:
    answer = scene.answers.find(id)
    if answer is None:
        return False
    lang = scene.clinic.language
    fields: dict[str, object] = {"name": chart.name, "phone": scene.clinic.phone}
    people = [person for person in chart.people if person.reachable]
    if not people:
        text = scene.words.say("desk_nobody", lang, phone=chart.plan.phone or "–")
        out.answer(event.callback, text)
        return True
    for person in people:
        to_person(scene, out, chart, person, answer.text.say(person.lang, **fields), None, case.id)
    to = ", ".join(person.name for person in people)
    sent = scene.words.say("desk_sent", lang, to=f"{to} ({chart.name})")
    out.answer(event.callback, sent)
    said = answer.text.say(lang, **fields)
    out.edit(event.chat, "", f"✓ {sent}\n{said}", (), patient=chart.id, message=event.message)
    _answered(scene, out, actor, chart, case, said, to)
    return True


def to_owner(scene: Scene, out: Outcome, event: Incoming, actor: Member, chart: Chart) -> None:
    """A reply to a case or picture: the owner gets it under the clinic's name."""
    people = [person for person in chart.people if person.reachable]
    lang = scene.clinic.language
    if not people:
        text = scene.words.say("desk_nobody", lang, phone=chart.plan.phone or "–")
        out.say(event.chat, text, patient=chart.id)
        return
    kind, _, ident = scene.reply_topic.partition(":")
    case = next((one for one in chart.cases if kind == "case" and one.id == ident), None)
    first = event.media[0] if event.media else None
    keys = [
        to_person(scene, out, chart, person, event.text, first, case.id if case else None)
        for person in people
    ]
    to = ", ".join(person.name for person in people)
    more = {"sent": keys, "picture": first.unique if first else ""}
    if case is not None:
        _answered(scene, out, actor, chart, case, event.text, to, more)
    else:
        data = {"to": to, "topic": scene.reply_topic, **more}
        out.add(Entry("staff", actor.name, event.text, chart.id, data))
    sent = scene.words.say("desk_sent", lang, to=f"{to} ({chart.name})")
    out.say(event.chat, sent, patient=chart.id, quiet=True)


def to_person(
    scene: Scene,
    out: Outcome,
    chart: Chart,
    person: Person,
    text: str,
    media: Media | None,
    case: str | None,
    *,
    reply_to: int | None = None,
) -> str:
    """Words of staff to someone at home, whose answer goes to the case; the message's key."""
    head = scene.words.say("saved_for_staff", person.lang, clinic=scene.clinic.name)
    if case is not None:
        out.threads[person.chat] = {"case": case}
    return out.say(
        person.chat, f"{head}\n{text}".strip(), media=media, patient=chart.id,
        topic=f"patient:{chart.id}", reply_to=reply_to,
    )  # fmt: skip


def _answered(
    scene: Scene,
    out: Outcome,
    actor: Member,
    chart: Chart,
    case: Case,
    text: str,
    to: str,
    more: dict[str, Any] | None = None,
) -> None:
    """The owner has been answered: whoever answers has the case, and pages stop."""
    data = {"to": to, "topic": f"case:{case.id}", **(more or {})}
    out.add(Entry("staff", actor.name, text, chart.id, data))
    if case.state != "closed":
        out.add(change_case(case, state="answered", by=actor.name))
        quieten(out, case.id, closed=True)


def note(scene: Scene, out: Outcome, event: Incoming, actor: Member, text: str) -> None:
    """``/note words`` in reply to a case: kept with the case and in the log."""
    lang = scene.clinic.language
    kind, _, ident = scene.reply_topic.partition(":")
    if kind != "case" or not scene.charts or not text:
        out.say(event.chat, scene.words.say("note_how", lang))
        return
    chart = scene.charts[0]
    out.add(Entry("note", actor.name, text, chart.id, {"case": ident}))
    out.add(CaseNote(ident, text))
    out.say(event.chat, scene.words.say("note_kept", lang), patient=chart.id, quiet=True)
