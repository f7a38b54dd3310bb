"""What someone at home may ask of the bot itself, by button or in words: what is next,
what is normal, the clinic's number, a pause, other hours, another language, leaving."""

from __future__ import annotations

import re
import unicodedata
from datetime import time

from bot.context.contexts import AtHome
from bot.context.phones import both_phones
from bot.household import doubts, late, talking, wound
from bot.household import people as household
from bot.household.expected import normal_now
from bot.household.snooze import USUAL, snooze
from bot.household.undo import REACH, last_source, take_back
from bot.model.action import OwnHours
from bot.model.chart import Chart, Person
from bot.model.chat import Incoming
from bot.model.effects import Effects, Entry, Heard, NewPlan, OwnSetting, Rows, SetLanguage
from bot.model.plan import Hours
from bot.model.purpose import Purpose
from bot.model.text import Lang
from bot.model.topic import AboutPatient
from bot.plan.prompts import rebuild

COMMANDS: dict[str, frozenset[str]] = {
    "undo": frozenset({"undo", "deshacer", "borrar", "take it back"}),
    "next": frozenset({"next", "whats next", "what is next", "que sigue", "siguiente", "today"}),
    "normal": frozenset({"whats normal", "what is normal", "que es normal"}),
    "phone": frozenset({"phone", "call", "number", "telefono", "llamar", "talk to the clinic"}),
    "menu": frozenset({"menu", "help", "ayuda", "start"}),
    "english": frozenset({"english", "ingles", "in english", "en ingles"}),
    "spanish": frozenset({"spanish", "espanol", "en espanol", "in spanish"}),
    "later": frozenset({"later", "pause", "in an hour", "pausa", "mas tarde", "en una hora"}),
    "hours": frozenset({"hours", "other hours", "horas", "otras horas", "horario"}),
    "leave": frozenset({"leave", "unsubscribe", "salir", "darme de baja"}),
    "forget": frozenset({"delete my data", "borrar mis datos", "borra mis datos"}),
}
"""Whole messages that ask something of the bot itself, plain letters."""

_MISTAP = re.compile(
    r"(?:(?:oops|ups|uy|ay|oh|no|sorry|perdon|wait|i|we|just|my bad) )*"
    r"(?:(?:accidentally )?(?:hit|pressed|tapped|touched|clicked|pushed) (?:on )?"
    r"(?:(?:the |a )?wrong(?: \w+)?"
    r"|(?:it |that |the button )?(?:by (?:mistake|accident)|accidentally))"
    r"|wrong button|me equivoque de boton"
    r"|(?:lo |la )?(?:aprete|toque|pique|presione)"
    r" (?:mal|sin querer|por error|el (?:boton )?equivocado))"
    r"(?: (?:i|we|but|y|todavia|aun))*"
    r"(?: (?:have not|havent|didnt|did not|not|no (?:se )?l[aeo]s?)(?: he| hemos)?"
    r" (?:given?|gave|done|di|dimos|dado)(?: (?:it|them|him|her|that))*(?: (?:yet|todavia|aun))?)?"
    r"(?: sorry| perdon)?"
)
"""A whole message that only says that the wrong button was pressed, plain letters."""

ADMIN = frozenset({"leave", "forget"})
"""Wishes to go, which stand in no one's way; the rest waits while an emergency is open."""
OF_THE_LIVING = frozenset({"next", "normal", "later", "hours", "menu"})
"""Wishes that make no sense any more for one that has died."""
MORNINGS, EVENINGS = (6, 7, 8, 9, 10), (18, 19, 20, 21)
WANTS = ("all", "doses", "care")
"""What a person may want: everything, only doses, or everything but doses."""


def command_of(text: str) -> str | None:
    """The command that a whole message is, or None."""
    plain = unicodedata.normalize("NFKD", text.casefold())
    kept = "".join(c for c in plain if c.isalnum() or c.isspace())
    words = " ".join(kept.split())
    if _MISTAP.fullmatch(words):
        return "undo"
    return next((name for name, forms in COMMANDS.items() if words in forms), None)


def carry_out(
    ctx: AtHome, out: Effects, event: Incoming, chart: Chart, person: Person, wish: str
) -> bool:
    """Do what was asked; False for a wish that there is not."""
    words, lang = ctx.words, person.lang
    out.add(Heard(chart.id))
    if wish == "undo":
        _undo(ctx, out, chart, person)
        return True
    if wish in ("english", "spanish"):
        new: Lang = "en" if wish == "english" else "es"
        out.add(SetLanguage(person.id, new))
        out.tell(person, Purpose.admin, words.say("language_set", new), patient=chart.id)
        return True
    if wish == "invite":
        household.invite(ctx, out, chart, person)
        return True
    rows: Rows = ()
    if ctx.standing(chart).dead and wish in OF_THE_LIVING:
        if event.text:
            talking.copy_after_death(ctx, out, chart, person, event.text)
        text = words.say("death_after", lang, phone=both_phones(ctx, lang))
    elif wish == "next":
        text = household.what_next(ctx, chart, lang)
    elif wish == "normal":
        text = normal_now(ctx, chart, lang)
    elif wish == "phone":
        text = words.say("talk_to_clinic", lang, phone=both_phones(ctx, lang))
    elif wish == "menu":
        text = f"{words.say('menu', lang)}\n{both_phones(ctx, lang)}"
        rows = household.menu_buttons(ctx, person.chat, chart, lang)
    elif wish == "later":
        text = snooze(ctx, out, chart, person, ctx.now + USUAL)
    elif wish == "hours":
        text, rows = words.say("hours_ask", lang), _hour_buttons(ctx, chart, person)
    elif wish in ("leave", "forget"):
        text, rows = household.ask_to_leave(ctx, chart, person, forget=wish == "forget")
    else:
        return False
    out.add(Entry("asked", person.name, wish, chart.id))
    out.tell(
        person,
        Purpose.admin if wish in ADMIN else Purpose.answer,
        text,
        buttons=rows,
        patient=chart.id,
        topic=AboutPatient(chart.id),
    )
    del event
    return True


def _undo(ctx: AtHome, out: Effects, chart: Chart, person: Person) -> None:
    """Take back what came last: a late tap that still waits for its time, or what was noted."""
    tap = late.waiting(chart, person.chat, ctx.now)
    source = last_source(ctx, chart, person)
    since = [noted.at for noted in chart.history if chart.sources[noted.id][0] == source]
    wounds = [one for one in chart.wounds if one.person == person.id and one.told_at]
    healed = max(wounds, key=lambda one: one.told_at or one.asked_at, default=None)
    done = [*since, *([tap.tapped] if tap else []), *(one.told_at for one in wounds if one.told_at)]
    if doubts.taken_back(ctx, out, chart, person, done):
        return
    if (
        healed is not None
        and healed.told_at
        and ctx.now - healed.told_at < REACH
        and all(at <= healed.told_at for at in [*since, *([tap.tapped] if tap else [])])
    ):
        wound.ask(ctx, out, chart, person, healed.day)  # it stands until another is tapped
    elif tap is not None and all(at <= tap.tapped for at in since):
        text = late.forget(ctx, out, chart, person, tap)
        out.tell(person, Purpose.answer, text, patient=chart.id, topic=AboutPatient(chart.id))
    elif source is None:
        out.tell(
            person, Purpose.answer, ctx.words.say("undo_nothing", person.lang), patient=chart.id
        )
    else:
        take_back(ctx, out, chart, person, source)


def _hour_buttons(ctx: AtHome, chart: Chart, person: Person) -> Rows:
    chat, lang = person.chat, person.lang

    def row(kind: str, key: str, hours: tuple[int, ...]) -> Rows:
        made = [
            ctx.button(chat, ctx.words.say(key, lang, at=f"{hour}:00"),
                   OwnHours(f"{kind}{hour}", chart.id))
            for hour in hours
        ]  # fmt: skip
        return tuple(tuple(made[i : i + 3]) for i in range(0, len(made), 3))

    wants = tuple(
        (ctx.button(chat, ctx.words.say(f"want_{one}", lang), OwnHours(f"w{one}", chart.id)),)
        for one in WANTS
    )
    return (
        *row("m", "hours_morning", MORNINGS),
        *row("e", "hours_evening", EVENINGS),
        *(wants if len(chart.people) > 1 else ()),
    )


def own_setting(
    ctx: AtHome, out: Effects, event: Incoming, chart: Chart, person: Person, code: str
) -> bool:
    """Hours or wishes by button. Alone at home, the household's hours move (doses keep
    theirs); with others, only the own messages do, and somebody always gets the doses."""
    del event
    words, lang = ctx.words, person.lang
    out.add(Heard(chart.id))
    if code[:1] == "w" and code[1:] in WANTS:
        out.add(
            OwnSetting(chart.id, person.id, wants=code[1:]),
            Entry("asked", person.name, f"wants: {code[1:]}", chart.id),
        )
        text = words.say("want_set", lang, what=words.say(f"want_{code[1:]}", lang))
        out.tell(person, Purpose.admin, text, patient=chart.id)
        return True
    if (
        code[:1] not in ("m", "e")
        or not code[1:].isdecimal()
        or len(code) > 3
        or not 0 < int(code[1:]) < 24
    ):
        return False
    hour = time(int(code[1:]))
    if len(chart.people) > 1:
        later = {"from": hour} if code[0] == "m" else {"to": hour}
        merged = {**(person.hours or {}), **{k: v.isoformat("minutes") for k, v in later.items()}}
        out.add(OwnSetting(chart.id, person.id, hours=merged))
    else:
        _move_household(ctx, out, chart, "morning" if code[0] == "m" else "evening", hour)
    out.add(Entry("asked", person.name, f"hours: {code}", chart.id))
    out.tell(
        person, Purpose.admin, words.say("hours_set", lang, at=f"{hour:%H:%M}"), patient=chart.id
    )
    return True


def _move_household(ctx: AtHome, out: Effects, chart: Chart, moment: str, hour: time) -> None:
    hours = chart.plan.hours
    changed: dict[str, time] = {moment: hour}
    if moment == "morning":
        changed["quiet_to"] = min(hours.quiet_to, hour)
    new = Hours.model_validate({**dict(hours), **changed})
    plan = chart.plan.model_copy(update={"hours": new})
    sent = chart.settled()
    out.add(NewPlan(chart.id, plan, rebuild(plan, chart.protocol, ctx.now, sent)))
