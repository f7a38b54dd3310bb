"""People at home: joining by a one-time link, adding another, leaving, language, clock."""

from __future__ import annotations

from datetime import timedelta
from zoneinfo import ZoneInfo

from bot.model.chat import Button, Incoming
from bot.model.text import Lang
from bot.plan.prompts import rebuild
from bot.plan.travel import travel

from .buttons import button, digest_of
from .outcome import Entry, Forget, Invite, Join, NewPlan, Outcome, Rows
from .phones import both_phones
from .scene import Chart, Person, Scene
from .words import date_of, when


def start_link(bot_name: str, code: str) -> str:
    """The address that opens the bot with a one-time code."""
    return f"https://t.me/{bot_name}?start={code}"


def menu_buttons(scene: Scene, chat: int, chart: Chart, lang: Lang) -> Rows:
    """What an owner may want at any time."""

    def made(key: str, action: str) -> tuple:  # type: ignore[type-arg]
        return (button(scene.secret, chat, scene.words.say(key, lang), f"{action}.{chart.id}"),)

    return (
        made("menu_next", "m.next"),
        made("menu_normal", "m.normal"),
        made("menu_phone", "m.phone"),
        made("menu_later", "m.later"),
        made("menu_hours", "m.hours"),
        made("menu_invite", "m.invite"),
        made("menu_leave", "m.leave"),
    )


def join(scene: Scene, out: Outcome, event: Incoming, chart: Chart) -> None:
    """Take up the one-time link of ``chart``'s patient."""
    sender = event.sender
    invitation = scene.invitation
    if sender is None or invitation is None:
        return
    lang: Lang = chart.plan.language
    if sender.lang and sender.lang[:2] in ("en", "es"):
        lang = "es" if sender.lang[:2] == "es" else "en"
    out.add(
        Join(invitation.digest, chart.id, sender.user, event.chat, sender.name, lang),
        Entry("joined", sender.name, "joined by a one-time link", chart.id),
    )
    out.heard.add(chart.id)
    words, clinic = scene.words, scene.clinic
    emergency = f"{clinic.emergency_name}, {clinic.emergency_phone}"
    upcoming = next((s for s in chart.sheets if s.sent_at is None and s.due_at > scene.now), None)
    first = when(chart.local(upcoming.due_at), chart.local(scene.now), lang) if upcoming else "…"
    text = words.say(
        "welcome", lang, person=sender.name, clinic=clinic.name, name=chart.name,
        procedure=chart.plan.procedure, phone=clinic.phone, emergency=emergency,
    )  # fmt: skip
    other: Lang = "es" if lang == "en" else "en"
    switch = button(
        scene.secret, event.chat, {"en": "English", "es": "Español"}[other], f"l.{other}"
    )
    out.say(
        event.chat,
        f"{text}\n{words.say('welcome_first', lang, when=first)}",
        buttons=(*menu_buttons(scene, event.chat, chart, lang), (switch,)),
        topic=f"patient:{chart.id}",
        patient=chart.id,
    )
    for person in chart.people:
        words_for = words.say("joined_others", person.lang, person=sender.name, name=chart.name)
        out.say(person.chat, words_for, patient=chart.id)
    for desk in scene.desks:
        if desk.rank == 0:
            text = words.say("joined_staff", clinic.language, by=sender.name, name=chart.name)
            out.say(desk.chat, text, patient=chart.id, quiet=True, topic=f"patient:{chart.id}")


def invite(scene: Scene, out: Outcome, chart: Chart, person: Person) -> None:
    """A further link for someone at home."""
    expires = scene.now + timedelta(days=scene.clinic.invitation_days)
    out.add(
        Invite(digest_of(scene.fresh_code), "owner", person.name, expires, chart.id),
        Entry("link", person.name, "a one-time link for someone at home", chart.id),
    )
    until = date_of(chart.local(expires), person.lang)
    text = scene.words.say(
        "invite_link", person.lang, until=until, link=start_link(scene.bot_name, scene.fresh_code)
    )
    out.say(person.chat, text, patient=chart.id)


def ask_to_leave(scene: Scene, chart: Chart, person: Person, *, forget: bool) -> tuple[str, Rows]:
    """Sure? With what leaving means, and what stays with the clinic."""
    words, lang, chat = scene.words, person.lang, person.chat

    def made(key: str, act: str) -> Button:
        return button(scene.secret, chat, words.say(key, lang), f"s.{act}.{chart.id}")

    text = words.say("stop_ask", lang, name=chart.name)
    text = f"{text}\n{words.say('forget_ask', lang, clinic=scene.clinic.name)}"
    rows: Rows = ((made("forget_yes", "data"),), (made("stop_no", "no"),))
    if not forget:
        rows = ((made("stop_yes", "yes"),), *rows)
    return text, rows


def forget(scene: Scene, out: Outcome, chart: Chart, person: Person) -> None:
    """Leave every patient, and be taken off every list; the medical record stays."""
    stop(scene, out, chart, person, sure=True)
    out.add(
        Forget(person.id),
        Entry("left", "former caregiver", "asked that their data be deleted", chart.id),
    )
    words = scene.words.say("forgotten", person.lang, clinic=scene.clinic.name)
    out.say(person.chat, words)


def stop(scene: Scene, out: Outcome, chart: Chart, person: Person, *, sure: bool) -> None:
    """Leave the chat of a patient, or stay after all."""
    if not sure:
        out.say(person.chat, scene.words.say("going_on", person.lang), patient=chart.id)
        return
    out.leave.append((chart.id, person.id))
    out.add(Entry("left", person.name, "asked for no more messages", chart.id))
    text = scene.words.say("stopped", person.lang, phone=both_phones(scene, person.lang))
    out.say(person.chat, text, patient=chart.id)
    for desk in scene.desks:
        if desk.rank == 0:
            staff = scene.words.say(
                "left_staff", scene.clinic.language, by=person.name, name=chart.name
            )
            out.say(desk.chat, staff, patient=chart.id, topic=f"patient:{chart.id}")


def move_zone(scene: Scene, out: Outcome, chart: Chart, person: Person, zone: str) -> None:
    """The household is in another time zone: prompts follow, doses keep their distance."""
    try:
        ZoneInfo(zone)
        given = {m.name: times[-1] for m in chart.plan.medicines if (times := chart.given(m.name))}
        plan = travel(chart.plan, zone, scene.now, given)
    except (ValueError, OSError, KeyError):
        out.say(person.chat, scene.words.say("zone_bad", person.lang), patient=chart.id)
        return
    sent = chart.settled()
    out.add(
        NewPlan(chart.id, plan, rebuild(plan, chart.protocol, scene.now, sent)),
        Entry("plan", person.name, f"time zone {chart.plan.zone} → {zone}", chart.id),
    )
    text = scene.words.say("zone_set", person.lang, zone=zone, name=chart.name)
    out.say(person.chat, text, patient=chart.id)


def what_next(scene: Scene, chart: Chart, lang: Lang) -> str:
    """The next prompts, with their times."""
    local_now = chart.local(scene.now)
    coming = sorted(
        (s for s in chart.sheets if s.sent_at is None and s.due_at >= scene.now),
        key=lambda sheet: sheet.due_at,
    )
    lines: list[str] = []
    for sheet in coming[:3]:
        at = when(chart.local(sheet.due_at), local_now, lang)
        items = "; ".join(_first_sentence(line.item.text.say(lang)) for line in sheet.lines)
        lines.append(f"{at}: {items}")
    if not lines:
        return scene.words.say("next_none", lang, name=chart.name)
    return "\n".join([scene.words.say("next_head", lang, name=chart.name), *lines])


def _first_sentence(text: str) -> str:
    cut = text.split(". ")[0].split("\n")[0]
    return cut if len(cut) <= 80 else cut[:79] + "…"
