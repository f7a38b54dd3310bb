"""People at home: joining by a one-time link, adding another, leaving, language, clock."""

from __future__ import annotations

from datetime import timedelta
from zoneinfo import ZoneInfo

from bot.context.buttons import digest_of
from bot.context.contexts import AtHome
from bot.context.phones import both_phones
from bot.context.words import date_of, when
from bot.dosing.order import given_times
from bot.household.expected import held_now
from bot.model.action import Leaving, Speak, Wish
from bot.model.chart import Chart, Person
from bot.model.chat import Button, Incoming
from bot.model.effects import Due, Effects, Entry, Forget, Heard, Invite, Join, Leave, NewPlan, Rows
from bot.model.ids import PersonId
from bot.model.purpose import Purpose
from bot.model.text import Lang
from bot.model.topic import AboutPatient
from bot.plan.formulary import formulary
from bot.plan.medicines import stop_signs
from bot.plan.prompts import rebuild
from bot.plan.travel import travel
from bot.plan.walks import as_told
from bot.standing.standing import Over, Paused

ERASING = "forget"
"""What falls due for who asked to be erased."""
ANSWERED = timedelta(minutes=30)
"""So long the answer may take to reach who asked."""
COMING = 3
"""How many prompts are told to who asks what is next."""


def start_link(bot_name: str, code: str) -> str:
    """The address that opens the bot with a one-time code."""
    return f"https://t.me/{bot_name}?start={code}"


def menu_buttons(ctx: AtHome, chat: int, chart: Chart, lang: Lang) -> Rows:
    """What an owner may want at any time."""

    def made(key: str, action: str) -> tuple:  # type: ignore[type-arg]
        return (ctx.button(chat, ctx.words.say(key, lang), Wish(action, chart.id)),)

    return (
        made("menu_next", "next"),
        made("menu_normal", "normal"),
        made("menu_phone", "phone"),
        made("menu_later", "later"),
        made("menu_hours", "hours"),
        made("menu_invite", "invite"),
        made("menu_leave", "leave"),
    )


def join(ctx: AtHome, out: Effects, event: Incoming, chart: Chart) -> None:
    """Take up the one-time link of ``chart``'s patient."""
    sender = event.sender
    invitation = ctx.invitation
    if sender is None or invitation is None:
        return
    lang: Lang = chart.plan.language
    if sender.lang and sender.lang[:2] in ("en", "es"):
        lang = "es" if sender.lang[:2] == "es" else "en"
    out.add(
        Join(invitation.digest, chart.id, sender.user, event.chat, sender.name, lang),
        Entry("joined", sender.name, "joined by a one-time link", chart.id),
    )
    out.add(Heard(chart.id))
    words, clinic = ctx.words, ctx.clinic
    emergency = f"{clinic.emergency_name}, {clinic.emergency_phone}"
    upcoming = next((s for s in chart.sheets if s.sent_at is None and s.due_at > ctx.now), None)
    first = when(chart.local(upcoming.due_at), chart.local(ctx.now), lang) if upcoming else "…"
    text = words.say(
        "welcome", lang, person=sender.name, clinic=clinic.name, name=chart.name,
        procedure=chart.plan.procedure, phone=clinic.phone, emergency=emergency,
    )  # fmt: skip
    other: Lang = "es" if lang == "en" else "en"
    switch = ctx.button(event.chat, {"en": "English", "es": "Español"}[other], Speak(other))
    held = "".join(f"\n\n{one}" for one in held_now(ctx, chart, lang))
    newcomer = Person(PersonId(0), sender.user, event.chat, sender.name, lang)
    signs = [
        words.say("welcome_signs", lang, med=med, signs=caution.say(lang))
        for med, caution in stop_signs(chart.plan, formulary())
    ]
    out.tell(
        newcomer,
        Purpose.admin,
        "\n".join([text.rstrip(), *signs, words.say("welcome_first", lang, when=first)]) + held,
        buttons=(*menu_buttons(ctx, event.chat, chart, lang), (switch,)),
        topic=AboutPatient(chart.id),
        patient=chart.id,
    )
    for person in chart.people:
        words_for = words.say("joined_others", person.lang, person=sender.name, name=chart.name)
        out.tell(person, Purpose.admin, words_for, patient=chart.id)
    for desk in ctx.desks:
        if desk.rank == 0:
            text = words.say("joined_staff", clinic.language, by=sender.name, name=chart.name)
            out.say(desk.chat, text, patient=chart.id, quiet=True, topic=AboutPatient(chart.id))


def invite(ctx: AtHome, out: Effects, chart: Chart, person: Person) -> None:
    """A further link for someone at home."""
    expires = ctx.now + timedelta(days=ctx.clinic.invitation_days)
    out.add(
        Invite(digest_of(ctx.fresh_code), "owner", person.name, expires, chart.id),
        Entry("link", person.name, "a one-time link for someone at home", chart.id),
    )
    until = date_of(chart.local(expires), person.lang)
    text = ctx.words.say(
        "invite_link",
        person.lang,
        until=until,
        link=start_link(ctx.practice.bot_name, ctx.fresh_code),
    )
    out.tell(person, Purpose.admin, text, patient=chart.id)


def ask_to_leave(ctx: AtHome, chart: Chart, person: Person, *, forget: bool) -> tuple[str, Rows]:
    """Sure? With what leaving means, and what stays with the clinic."""
    words, lang, chat = ctx.words, person.lang, person.chat

    def made(key: str, act: str) -> Button:
        return ctx.button(chat, words.say(key, lang), Leaving(act, chart.id))

    text = words.say("stop_ask", lang, name=chart.name)
    text = f"{text}\n{words.say('forget_ask', lang, clinic=ctx.clinic.name)}"
    rows: Rows = ((made("forget_yes", "data"),), (made("stop_no", "no"),))
    if not forget:
        rows = ((made("stop_yes", "yes"),), *rows)
    return text, rows


def forget(ctx: AtHome, out: Effects, chart: Chart, person: Person) -> None:
    """Leave every patient, and be erased once the answer is out; the medical record stays."""
    stop(ctx, out, chart, person, sure=True)
    at = ctx.now + ANSWERED
    out.add(
        Forget(person.id),
        Due(f"forget:{person.id}", ERASING, at, None, {"person": person.id}),
        Entry("left", "former caregiver", "asked that their data be deleted", chart.id),
    )
    stays = any(member.user == person.user for member in ctx.staff)
    key = "forgotten_staff" if stays else "forgotten"
    words = ctx.words.say(key, person.lang, clinic=ctx.clinic.name)
    out.tell(person, Purpose.admin, words, patient=chart.id)


def stop(ctx: AtHome, out: Effects, chart: Chart, person: Person, *, sure: bool) -> None:
    """Leave the chat of a patient, or stay after all."""
    if not sure:
        out.tell(person, Purpose.admin, ctx.words.say("going_on", person.lang), patient=chart.id)
        return
    out.add(Leave(chart.id, person.id))
    out.add(Entry("left", person.name, "asked for no more messages", chart.id))
    text = ctx.words.say("stopped", person.lang, phone=both_phones(ctx, person.lang))
    out.tell(person, Purpose.admin, text, patient=chart.id)
    for desk in ctx.desks:
        if desk.rank == 0:
            staff = ctx.words.say(
                "left_staff", ctx.clinic.language, by=person.name, name=chart.name
            )
            out.say(desk.chat, staff, patient=chart.id, topic=AboutPatient(chart.id))


def move_zone(ctx: AtHome, out: Effects, chart: Chart, person: Person, zone: str) -> None:
    """The household is in another time zone: prompts follow, doses keep their distance."""
    try:
        ZoneInfo(zone)
        given = {
            m.name: times[-1] for m in chart.plan.medicines if (times := given_times(chart, m))
        }
        plan = travel(chart.plan, zone, ctx.now, given)
    except (ValueError, OSError, KeyError):
        out.tell(person, Purpose.admin, ctx.words.say("zone_bad", person.lang), patient=chart.id)
        return
    sent = chart.settled()
    out.add(
        NewPlan(chart.id, plan, rebuild(plan, chart.protocol, ctx.now, sent)),
        Entry("plan", person.name, f"time zone {chart.plan.zone} → {zone}", chart.id),
    )
    text = ctx.words.say("zone_set", person.lang, zone=zone, name=chart.name)
    out.tell(person, Purpose.admin, text, patient=chart.id)


def what_next(ctx: AtHome, chart: Chart, lang: Lang) -> str:
    """The next prompts, with their times, without what is held; and what is held."""
    local_now, standing = chart.local(ctx.now), ctx.standing(chart)
    match standing.mode:
        case Over():
            return ctx.words.say("next_none", lang, name=chart.name)
        case Paused():
            phone = both_phones(ctx, lang)
            return ctx.words.say("next_paused", lang, name=chart.name, phone=phone)
        case _:
            pass
    coming = sorted(
        (s for s in chart.sheets if s.sent_at is None and s.due_at >= ctx.now),
        key=lambda sheet: sheet.due_at,
    )
    lines: list[str] = []
    for sheet in coming:
        due = [line for line in sheet.lines if not standing.is_held(line.item)]
        if due and len(lines) < COMING:
            at = when(chart.local(sheet.due_at), local_now, lang)
            items = "; ".join(
                _first_sentence(
                    as_told(chart.plan, chart.protocol, chart.history, x.item, sheet.day)
                    .text.say(lang)
                )
                for x in due
            )  # fmt: skip
            lines.append(f"{at}: {items}")
    held = held_now(ctx, chart, lang)
    if lines:
        lines.insert(0, ctx.words.say("next_head", lang, name=chart.name))
    elif not held:
        lines.append(ctx.words.say("next_none", lang, name=chart.name))
    return "\n".join([*lines, *held])


def _first_sentence(text: str) -> str:
    cut = text.split(". ")[0].split("\n")[0]
    return cut if len(cut) <= 80 else cut[:79] + "…"
