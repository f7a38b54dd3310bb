"""Everything that someone at home may send: who is meant, and what to do with it."""

from __future__ import annotations

from bot.cases.cases import heard_again
from bot.context.buttons import action_of
from bot.context.contexts import AtHome
from bot.context.phones import both_phones
from bot.household import clarify, doubts, emergency, pictures, resumed, twice, wishes, wound
from bot.household import people as household
from bot.household.dose_told import tap_dose
from bot.household.late_told import tap_when, told_when_anew
from bot.household.reply import OwnWords, cannot_be_read, reply
from bot.household.spoken import spoken
from bot.household.tap import tap_all, tap_line, tap_undo, tap_value
from bot.household.undo import retract, without
from bot.household.which import ask_which, changed_while_waiting, told_which, which
from bot.model.action import (
    Action,
    AskAbout,
    AskDose,
    DoseAgain,
    Healed,
    IsItSo,
    LastInHospital,
    Leaving,
    OnTheWay,
    OwnHours,
    Seen,
    SeenDose,
    Speak,
    TakeBack,
    TapAll,
    TapLine,
    ThisPatient,
    WhenGiven,
    Wish,
)
from bot.model.chart import Chart, Person
from bot.model.chat import Incoming
from bot.model.conversation import Unclear
from bot.model.effects import Effects, Entry, Heard, Reachable
from bot.model.ids import message_source
from bot.model.text import Lang
from bot.model.topic import AboutPatient


def on_owner(ctx: AtHome) -> Effects:
    """An event from a private chat with someone at home, or with a stranger."""
    event = ctx.incoming
    out = Effects(ctx.event, event.chat)
    if event.kind in ("blocked", "unblocked"):
        _reachable(ctx, out, event)
    elif event.text.startswith(("/start ", "/join ")):
        _start(ctx, out, event)
    elif ctx.person is None or not ctx.charts:
        _stranger(ctx, out, event)
    elif event.kind == "button":
        _button(ctx, out, event, ctx.person)
    elif event.kind == "edited":
        _edited(ctx, out, event, ctx.person)
    elif event.kind == "message":
        _message(ctx, out, event, ctx.person)
    if ctx.person is not None and not ctx.person.reachable and event.kind in ("message", "button"):
        out.add(Reachable(ctx.person.chat, True))  # who writes can be written to
    for chart in ctx.charts:
        if Heard(chart.id) in out.all:
            heard_again(ctx, out, chart, ctx.person.name if ctx.person else _who(event))
    return out


def _start(ctx: AtHome, out: Effects, event: Incoming) -> None:
    invitation = ctx.invitation
    lang: Lang = "es" if event.sender and (event.sender.lang or "")[:2] == "es" else "en"
    chart = ctx.chart(invitation.patient) if invitation and invitation.patient else None
    if chart and ctx.person and any(p.id == ctx.person.id for p in chart.people):
        text = ctx.words.say("already_in", lang, name=chart.name)
        out.reply(event.chat, text, patient=chart.id)
    elif invitation is None or not invitation.good or chart is None:
        out.reply(event.chat, ctx.words.say("bad_code", lang, phone=both_phones(ctx, lang)))
        out.add(Entry("refused", _who(event), "a link that is unknown, used or has run out"))
    else:
        household.join(ctx, out, event, chart)


def _stranger(ctx: AtHome, out: Effects, event: Incoming) -> None:
    ours = False
    if event.kind == "button":
        out.answer(event.callback)
        ours = action_of(ctx.practice.secret, (event.chat, *ctx.former), event.data) is not None
    if event.kind == "message" or ours:  # who has left may still press a button: never silence
        lang: Lang = "es" if event.sender and (event.sender.lang or "")[:2] == "es" else "en"
        phone = both_phones(ctx, lang)
        out.reply(event.chat, ctx.words.say("stranger", lang, phone=phone))
    said = f"a stranger: {event.text[:200] or event.kind}"
    out.add(Entry("refused", _who(event), said, None, {"data": event.data[:64]}))


def _who(event: Incoming) -> str:
    return f"{event.sender.name} ({event.sender.user})" if event.sender else f"chat {event.chat}"


def _reachable(ctx: AtHome, out: Effects, event: Incoming) -> None:
    """The bot was blocked or let in again; staff hear when it was blocked by a household."""
    at_work = ctx.desk(event.chat) or any(one.chat == event.chat for one in ctx.staff)
    if at_work or ctx.person is not None:
        out.add(Reachable(event.chat, event.kind == "unblocked"))
    if ctx.person is None:
        return
    for chart in ctx.charts:
        out.add(Entry(event.kind, ctx.person.name, f"the bot was {event.kind}", chart.id))
        if event.kind == "blocked" and chart.state == "active":
            for desk in ctx.desks:
                if desk.rank == 0:
                    words = ctx.words.say(
                        "desk_blocked", ctx.clinic.language, by=ctx.person.name,
                        name=chart.name, phone=chart.plan.phone or "–",
                    )  # fmt: skip
                    out.say(desk.chat, words, patient=chart.id, topic=AboutPatient(chart.id))


def _message(ctx: AtHome, out: Effects, event: Incoming, person: Person) -> None:
    command = wishes.command_of(event.text) if not event.media else None
    chart = which(ctx, event)
    source = message_source(event.chat, event.message)
    if chart is None:
        ask_which(ctx, out, event, person, source)
    elif event.text.startswith("/zone"):
        household.move_zone(ctx, out, chart, person, event.text[5:].strip())
    elif command is not None:
        wishes.carry_out(ctx, out, event, chart, person, command)
    elif event.media:
        pictures.got(ctx, out, event, chart, person, source)
    elif event.text.strip():
        spoken(ctx, out, event, chart, person, event.text, source)
    else:
        cannot_be_read(ctx, out, chart, person, source)


def _button(ctx: AtHome, out: Effects, event: Incoming, person: Person) -> None:
    action = action_of(ctx.practice.secret, (event.chat, *ctx.former), event.data)
    if action is None or not _act(ctx, out, event, person, action):
        # One that was ours is too old, or about what is theirs no longer: never silence.
        old = action is not None and ctx.person is not None
        out.answer(event.callback, ctx.words.say("tap_over", person.lang) if old else "")
        out.add(
            Entry(
                "refused", _who(event), "a button that is not ours or not theirs", None,
                {"data": event.data[:64]},
            )
        )  # fmt: skip


def _act(ctx: AtHome, out: Effects, event: Incoming, person: Person, action: Action) -> bool:
    """Do what a genuine button says; False when this person may not."""
    match action:
        case TapLine(line=line, choice=choice):
            return tap_line(ctx, out, event, person, line, choice)
        case TapAll(prompt=prompt):
            return tap_all(ctx, out, event, person, prompt)
        case WhenGiven(prompt=prompt, lines=lines, how=how):
            return tap_when(ctx, out, event, person, prompt, lines, how)
        case TakeBack(prompt=prompt):
            return tap_undo(ctx, out, event, person, prompt)
        case DoseAgain(line=line, which=which_one):
            return twice.same_dose(ctx, out, event, person, line, which_one)
        case IsItSo():
            return doubts.tapped(ctx, out, person, action)
        case ThisPatient(patient=patient):
            return told_which(ctx, out, event, person, patient)
        case Speak(lang=lang):
            out.answer(event.callback)
            name = "english" if lang == "en" else "spanish"
            return wishes.carry_out(ctx, out, event, ctx.charts[0], person, name)
        case OnTheWay(what=step, patient=patient):
            found = ctx.chart(patient)
            return found is not None and emergency.tapped(ctx, out, found, person, step)
        case LastInHospital(place=place, hours=hours, patient=patient):
            found = ctx.chart(patient)
            return found is not None and resumed.tapped(ctx, out, found, person, place, hours)
        case (
            Seen()
            | SeenDose()
            | AskDose()
            | Healed()
            | Wish()
            | OwnHours()
            | Leaving()
            | AskAbout()
        ):
            chart = ctx.chart(action.patient)
            return chart is not None and _about(ctx, out, event, chart, person, action)
        case _:
            return False


def _about(
    ctx: AtHome,
    out: Effects,
    event: Incoming,
    chart: Chart,
    person: Person,
    action: Seen | SeenDose | AskDose | Healed | Wish | OwnHours | Leaving | AskAbout,
) -> bool:
    """What is asked or told about one patient by button."""
    match action:
        case Seen(about="dose"):  # of a message sent before each medicine had its button
            out.answer(event.callback)
            clarify.offer_values(ctx, out, chart, person, "dose")
        case SeenDose(place=place, value=value):
            return tap_dose(ctx, out, event, person, chart, place, value)
        case AskDose(place=place):
            out.answer(event.callback)
            return clarify.offer_of_dose(ctx, out, chart, person, place)
        case Seen(about=about, value=value):
            return tap_value(ctx, out, event, person, chart, about, value)
        case Healed(day=day, what=what):
            return wound.tapped(ctx, out, event, person, chart, day, what)
        case Wish(wish=wish):
            out.answer(event.callback)
            return wishes.carry_out(ctx, out, event, chart, person, wish)
        case OwnHours(what=what):
            out.answer(event.callback)
            return wishes.own_setting(ctx, out, event, chart, person, what)
        case Leaving(how="data"):
            out.answer(event.callback)
            household.forget(ctx, out, chart, person)
        case Leaving(how=how):
            out.answer(event.callback)
            household.stop(ctx, out, chart, person, sure=how == "yes")
        case AskAbout(topic="clinic"):
            out.answer(event.callback)
            unclear = ctx.conversation.find(Unclear)
            if unclear is None:
                return False
            clarify.hand_over(ctx, out, chart, unclear, person.chat, asked_for=True)
        case AskAbout(topic=topic):
            if topic not in clarify.OFFERED:
                return False
            out.answer(event.callback)
            clarify.offer_values(ctx, out, chart, person, topic)
    return True


def _edited(ctx: AtHome, out: Effects, event: Incoming, person: Person) -> None:
    """An edited message corrects: the old reading no longer counts, the new one does."""
    source = message_source(event.chat, event.message)
    ctx = doubts.without(ctx, out, source)
    for chart in ctx.charts:
        if any(found == source for found, _ in chart.sources.values()) or any(
            line.source == source for line in chart.lines()
        ):
            retract(ctx, out, chart, person, source, "corrected", instead=event.text)
            left = without(ctx, chart, source)
            if told_when_anew(ctx, out, left, chart, person, event.text, source):
                return
            words = OwnWords(event.text, source, without=source, first_at=ctx.written_at)
            reply(ctx, out, left, person, words)
            return
    if changed_while_waiting(ctx, out, event, person, source):
        return
    chart_or_none = which(ctx, event)
    if chart_or_none is not None and event.text.strip():
        spoken(ctx, out, event, chart_or_none, person, event.text, source, without=source)
