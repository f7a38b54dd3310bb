"""How the wound healed: asked of everyone at home on day 30, and with an implant on day 90,
to count infections over the practice (``bot.measures.infection``). It diagnoses none: what
was a problem goes to staff."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date, datetime, timedelta
from typing import Any, Final

from bot.cases.cases import Said, raise_findings
from bot.context.contexts import Context
from bot.context.phones import both_phones, what_happens_now
from bot.context.words import Words
from bot.measures.infection import DEEP_DAYS, SIGNS, SUPERFICIAL_DAYS, ask_on, verdict
from bot.model.action import Healed
from bot.model.chart import Chart, Person, WoundCheck
from bot.model.chat import Incoming
from bot.model.effects import CancelDue, Due, Effects, Entry, Heard, Rows, WoundPut
from bot.model.finding import Finding
from bot.model.healing import Healing
from bot.model.ids import PatientId, SourceId, event_source, tap_source
from bot.model.plan import Plan
from bot.model.purpose import Purpose
from bot.model.text import LANGS, Lang
from bot.model.topic import AboutWound
from bot.model.urgency import Urgency
from bot.plan.clock import to_utc

REMIND, GIVE_UP = timedelta(days=2), timedelta(days=7)
"""One reminder, and when it is taken that nobody will answer. Common practice, from memory."""
FRESH = timedelta(hours=12)
"""How long words without a button may be an answer to the question."""
PATIENCE = timedelta(minutes=20)
"""How long "Done" is waited for once a problem was tapped. Common practice, from memory."""
RANK: Final = ("none", "inconclusive", "infection")


def wound_dues(plan: Plan, implant: bool, now: datetime) -> tuple[tuple[int, datetime], ...]:
    """(day, when) for each time that it will be asked, at midday, after ``now``."""
    found = []
    for on in ask_on(plan.surgery, implant):
        at = _midday(plan, on)
        if at > now:
            found.append(((on - plan.surgery).days, at))
    return tuple(found)


def key_of(patient: PatientId, day: int) -> str:
    """The key of what falls due for one asking."""
    return f"wound:{patient}:{day}"


def keys_of(patient: PatientId) -> list[str]:
    """The keys of all askings: for a patient whose messages staff have ended."""
    return [key_of(patient, day) for day in (SUPERFICIAL_DAYS, DEEP_DAYS)]


def _midday(plan: Plan, on: date) -> datetime:
    return to_utc(datetime.combine(on, plan.hours.midday), plan.zone)


def fell_due(ctx: Context, out: Effects, chart: Chart, data: dict[str, Any]) -> None:
    """Ask, remind once, then take it that nobody answers. The end of the course does not
    end this; a pause and the quiet hours put it off."""
    day = int(data["day"])
    key = key_of(chart.id, day)
    there = chart.local(ctx.now)
    check = next((one for one in chart.wounds if one.day == day), None)
    if check is not None and "chat" in data:
        _not_sent(ctx, out, chart, check, int(data["chat"]))
        return
    if check is not None and check.told is not None:
        return
    if chart.state == "paused" or chart.plan.hours.quiet(there.time()):
        on = there.date()
        while _midday(chart.plan, on) <= ctx.now:
            on += timedelta(days=1)
        out.add(Due(key, "wound", _midday(chart.plan, on), chart.id, data))
        return
    if check is not None and ctx.now - check.asked_at >= GIVE_UP:
        words = ctx.words.say("wound_silent", ctx.clinic.language, day=day)
        out.add(Entry("unanswered", "bot", words, chart.id, {"wound_check": day}))
        return
    if check is None:
        check = WoundCheck(day, ctx.now)
        out.add(WoundPut(chart.id, check))
        again = ctx.now + REMIND
    else:
        again = check.asked_at + GIVE_UP
    for person in (one for one in chart.people if one.reachable):
        ask(ctx, out, chart, person, day, quiet=True)
    out.add(Due(key, "wound", again, chart.id, data))


def ask(
    ctx: Context, out: Effects, chart: Chart, person: Person, day: int, *, key: str = "wound_ask",
    quiet: bool = False,
) -> None:  # fmt: skip
    """The question, with its two buttons."""
    text = ctx.words.say(key, person.lang, name=chart.name, day=day)
    rows = _first(ctx, chart, person, day)
    topic = AboutWound(day, chart.id)
    out.tell(
        person, Purpose.question, text, buttons=rows, patient=chart.id, topic=topic, quiet=quiet
    )


def last_asked(chart: Chart, now: datetime) -> tuple[WoundCheck, datetime] | None:
    """The question, and when it came, while it is the last thing that was asked here."""
    for check in reversed(chart.wounds):
        at = check.asked_at + (REMIND if now - check.asked_at >= REMIND else timedelta(0))
        later = any(one.sent_at is not None and one.sent_at > at for one in chart.sheets)
        if check.told is None and now - at < FRESH and not later:
            return check, at
    return None


def _not_sent(ctx: Context, out: Effects, chart: Chart, check: WoundCheck, chat: int) -> None:
    """A problem was tapped, "Done" was not: it must not be lost with that."""
    person = next((one for one in chart.people if one.chat == chat), None)
    if person is None or person.id not in check.drafts:
        return
    told = Healing(problem=True, **dict.fromkeys(check.drafts[person.id], True))

    def show(text: str, rows: Rows) -> None:
        topic = AboutWound(check.day, chart.id)
        out.tell(person, Purpose.answer, text, buttons=rows, patient=chart.id, topic=topic)

    keep(ctx, out, person, chart, check, told, event_source(ctx.event), show)


def tapped(
    ctx: Context, out: Effects, event: Incoming, person: Person, chart: Chart, day: int, what: str
) -> bool:
    """A button of the question: ``ok``, ``bad``, ``back``, ``done``, or one of SIGNS. False
    for one that there is not."""
    check = next((one for one in chart.wounds if one.day == day), None)
    if check is None or what not in ("ok", "bad", "back", "done", *SIGNS):
        return False
    lang = person.lang

    def show(text: str, rows: Rows) -> None:
        out.edit(event.chat, "", text, rows, home=True, patient=chart.id, message=event.message)

    out.answer(event.callback)
    mine = check.drafts.get(person.id, ())
    if what in ("ok", "done"):
        signs = mine if what == "done" else ()
        told = Healing(problem=what == "done", **dict.fromkeys(signs, True))
        keep(ctx, out, person, chart, check, told, tap_source(event.update), show)
        return True
    out.add(Heard(chart.id))
    if what == "back":
        drafts = {who: signs for who, signs in check.drafts.items() if who != person.id}
        out.add(WoundPut(chart.id, replace(check, drafts=drafts)))
        out.add(CancelDue(_draft_key(chart, check, person)))
        text = ctx.words.say("wound_ask", lang, name=chart.name, day=day)
        show(text, _first(ctx, chart, person, day))
        return True
    if what in SIGNS:
        mine = tuple(one for one in SIGNS if (one in mine) != (one == what))
    show(ctx.words.say("wound_which", lang, name=chart.name),
         draft(ctx, out, chart, person, check, mine))  # fmt: skip
    return True


def draft(
    ctx: Context, out: Effects, chart: Chart, person: Person, check: WoundCheck,
    signs: tuple[str, ...],
) -> Rows:  # fmt: skip
    """Keep what is ticked so far, for as long as "Done" is waited for; the buttons."""
    out.add(WoundPut(chart.id, replace(check, drafts={**check.drafts, person.id: signs})))
    data = {"day": check.day, "chat": person.chat}
    due = _draft_key(chart, check, person)
    out.add(Due(due, "wound", ctx.now + PATIENCE, chart.id, data))
    return _signs(ctx, chart, person, check.day, signs)


def _draft_key(chart: Chart, check: WoundCheck, person: Person) -> str:
    return f"{key_of(chart.id, check.day)}:{person.chat}"


def keep(
    ctx: Context, out: Effects, person: Person, chart: Chart, check: WoundCheck, told: Healing,
    source: SourceId, show: Callable[[str, Rows], None], own: str = "",
) -> None:  # fmt: skip
    """Keep the answer. That of another at home gives way only to a worse one. ``own``: the
    words that it was told in."""
    lang, words = person.lang, ctx.words
    out.add(Heard(chart.id))
    out.add(CancelDue(_draft_key(chart, check, person)))
    before = check.told
    if (
        before is not None
        and check.person != person.id
        and RANK.index(verdict(told)) <= RANK.index(verdict(before))
    ):
        show(words.say("wound_known", lang, what=in_words(words, before, lang)), ())
        return
    drafts = {who: signs for who, signs in check.drafts.items() if who != person.id}
    out.add(
        WoundPut(chart.id, WoundCheck(check.day, check.asked_at, told, ctx.now, person.id, drafts))
    )
    out.add(CancelDue(key_of(chart.id, check.day)))
    clinic_lang = ctx.clinic.language
    staff_words = words.say(
        "wound_logged", clinic_lang, day=check.day, what=in_words(words, told, clinic_lang)
    )
    said = Said(person.name, own or staff_words, source, by_button=not own)
    data = {"source": source, "wound_check": check.day, "counts_as": verdict(told)}
    out.add(Entry("tapped", person.name, staff_words, chart.id, data))
    what = in_words(words, told, lang)
    if told.problem:
        finding = _finding(ctx, told)
        raise_findings(ctx, out, chart, [finding], said)
        then = what_happens_now(ctx, chart, finding.urgency, lang)
        text = words.say("wound_problem", lang, what=what, then=then)
    else:
        text = words.say("wound_healed", lang, what=what, phone=both_phones(ctx, lang))
    change = ctx.button(person.chat, words.say("wound_change", lang),
        Healed(check.day, "back", chart.id),
    )  # fmt: skip
    show(text, ((change,),))


def _finding(ctx: Context, told: Healing) -> Finding:
    """A problem is read by a person: today where it counts as an infection or pus or an
    open wound was told (it may be so still), else by the next working day."""
    today = verdict(told) == "infection" or told.pus or told.opened
    level = Urgency.same_day if today else Urgency.next_day
    en, es = ({"what": in_words(ctx.words, told, lang)} for lang in LANGS)
    because = ctx.rules.file.notices.wound_problem.fill({**en}, {**es})
    return Finding("wound-check", level, "incision", because, (), ctx.rules.advice(level))


def in_words(words: Words, told: Healing, lang: Lang) -> str:
    """The answer in a few words."""
    if not told.problem:
        return words.say("wound_ok", lang).lower()
    signs = [words.say(f"wound_{one}", lang).lower() for one in SIGNS if getattr(told, one)]
    return ", ".join([words.say("wound_bad", lang).lower(), *signs])


def _first(ctx: Context, chart: Chart, person: Person, day: int) -> Rows:
    return tuple((_button(ctx, chart, person, day, what, ""),) for what in ("ok", "bad"))


def _signs(
    ctx: Context, chart: Chart, person: Person, day: int, ticked: tuple[str, ...]
) -> Rows:  # fmt: skip
    made = [_button(ctx, chart, person, day, one, "✓ " if one in ticked else "") for one in SIGNS]
    last = tuple(_button(ctx, chart, person, day, what, "") for what in ("back", "done"))
    return (*(tuple(made[at : at + 2]) for at in range(0, len(made), 2)), last)


def _button(ctx: Context, chart: Chart, person: Person, day: int, what: str, mark: str) -> Any:
    label = mark + ctx.words.say(f"wound_{what}", person.lang)
    return ctx.button(person.chat, label, Healed(day, what, chart.id))
