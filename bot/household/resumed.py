"""Back from the clinic: when was each medicine last given there? Until it is told, it waits."""

from __future__ import annotations

import re
from datetime import datetime, timedelta
from typing import Literal

from bot.cases.cases import Said
from bot.cases.noting import keep, take_note
from bot.context.contexts import AtHome, Context
from bot.context.phones import emergency_phones, whom_to_phone
from bot.context.words import when
from bot.dosing.dosing import unsure_finding
from bot.dosing.if_needed import if_needed
from bot.dosing.order import doses_of, given_times
from bot.household import talking
from bot.household.late import GAVE, NOW
from bot.household.reading_context import wall_time
from bot.model.action import LastInHospital
from bot.model.chart import MOVED, Chart, Person
from bot.model.conversation import LastDose
from bot.model.effects import (
    Ask,
    Effects,
    EndHold,
    Entry,
    Heard,
    Mark,
    MoveLine,
    Note,
    PutHold,
    Settle,
)
from bot.model.evolve import evolve
from bot.model.hold import AWAY, LAST_DOSE, ByAnswer, FromFinding, FromStaff, HeldMedicine, Hold
from bot.model.ids import HoldId, MemberId, event_source, hospital_source
from bot.model.observation import Observation
from bot.model.plan import Medicine
from bot.model.purpose import Purpose
from bot.model.topic import AboutPatient, AboutQuestion
from bot.plan.doses import AskStaff, DueAt, NextDose, NoMore, after_stay
from bot.reading import read
from bot.standing.medicines import in_course
from bot.standing.standing import Ordinary

from .reading_context import context_for

_Answer = datetime | Literal["none", "unknown"]
_WORDS = 9
"""More words than this are no bare answer to the question."""
_UNKNOWN = re.compile(
    r"\b(don'?t know|do not know|no idea|not sure|(didn'?t|did not) (say|tell)"
    r"|no (lo )?s[eé]|ni idea|no (me|nos) (lo )?dijeron|no estoy segur[oa])\b",
    re.IGNORECASE,
)
_ALL = re.compile(r"\b(all|everything|each|both|tod[oa]s?|ambas|ambos)\b", re.IGNORECASE)
_NONE = re.compile(
    r"\b((not|wasn'?t|none|nothing) (was )?(given|there)|(didn'?t|did not) (give|get)"
    r"|no (se )?(le |la |lo )*dieron|no se dio|ningun[ao]|ah[ií] no|all[ií] no)\b",
    re.IGNORECASE,
)
HOURS = ("1", "4", "8", "12", "none", "unknown")
"""What may be tapped: hours ago, not given there, not known."""


def hold_for_last_doses(
    ctx: Context, out: Effects, chart: Chart, member: MemberId, by: str
) -> None:
    """The course goes on: each medicine waits until it is told when it was last given."""
    for place, medicine in enumerate(chart.plan.medicines):
        if not in_course(chart.plan, medicine, ctx.now):
            continue
        target = HeldMedicine(medicine.name)
        cause = FromStaff(member, by, "", out.event)
        hold = Hold(
            HoldId(f"{out.event}:resume:{place}"), target, ctx.now, cause, ByAnswer(LAST_DOSE), True
        )
        out.add(PutHold(chart.id, hold))


def ask_last_doses(ctx: Context, out: Effects, before: Chart, after: Chart) -> None:
    """Asked when it can be heard: as the medicine begins to wait, or, where an emergency keeps
    every question back, as that is closed."""
    asked = _to_be_asked(ctx, before)
    for place in _to_be_asked(ctx, after):
        if place in asked:
            continue
        for person in after.people:
            if person.reachable:
                _ask(ctx, out, after, person, place, after.plan.medicines[place])


def _to_be_asked(ctx: Context, chart: Chart) -> list[int]:
    """The places of the medicines of which the household can be asked now."""
    if not isinstance(ctx.standing(chart).mode, Ordinary):
        return []
    return [place for place, one in enumerate(chart.plan.medicines) if waiting(chart, one.name)]


def _ask(
    ctx: Context, out: Effects, chart: Chart, person: Person, place: int, medicine: Medicine
) -> None:
    lang = person.lang
    away = any(
        isinstance(one.cause, FromFinding) and one.cause.rule == AWAY
        for one in waiting(chart, medicine.name)
    )
    text = ctx.words.say(
        "away_dose_ask" if away else "last_dose_ask",
        lang,
        name=chart.name,
        med=medicine.name,
        phone=whom_to_phone(ctx, lang),
    )
    made = [
        ctx.button(
            person.chat,
            ctx.words.say("away_dose_none" if away and one == "none" else f"last_dose_{one}", lang),
            LastInHospital(place, one, chart.id),
        )
        for one in HOURS
    ]
    rows = tuple(tuple(made[i : i + 2]) for i in range(0, len(made), 2))
    out.tell(
        person, Purpose.question, text, buttons=rows, patient=chart.id,
        topic=AboutQuestion(chart.id, _key(chart, place)),
    )  # fmt: skip
    out.add(Ask(person.chat, LastDose(_key(chart, place), chart.id, place)))


def _key(chart: Chart, place: int) -> str:
    return f"last_dose-{chart.id}-{place}"


def waiting(chart: Chart, med: str) -> list[Hold]:
    """The holds that wait for this answer."""
    return [
        hold
        for hold in chart.holds
        if hold.target == HeldMedicine(med) and hold.ends == ByAnswer(LAST_DOSE)
    ]


def tapped(ctx: AtHome, out: Effects, chart: Chart, person: Person, place: int, hours: str) -> bool:
    """It was told by button. False for a button that leads nowhere."""
    if place >= len(chart.plan.medicines) or hours not in HOURS:
        return False
    medicine = chart.plan.medicines[place]
    out.answer(ctx.incoming.callback)
    if not waiting(chart, medicine.name):
        out.tell(person, Purpose.answer, ctx.words.say("tap_over", person.lang), patient=chart.id)
        return True
    label = ctx.words.say(f"last_dose_{hours}", ctx.clinic.language)
    answer: _Answer = "unknown" if hours == "unknown" else "none"
    if hours.isdecimal():
        answer = ctx.now - timedelta(hours=int(hours))
    _told(ctx, out, chart, person, place, answer, f"{medicine.name}: {label}")
    return True


def told(ctx: AtHome, out: Effects, chart: Chart, person: Person, text: str) -> bool:
    """It was told in words. False when they are no answer to it."""
    asked = [
        (one.place, chart.plan.medicines[one.place])
        for one in ctx.conversation.open
        if isinstance(one, LastDose) and one.patient == chart.id
    ]
    asked = [(place, medicine) for place, medicine in asked if waiting(chart, medicine.name)]
    if isinstance(ctx.topic, AboutQuestion):  # a reply to one of them is about that one
        meant = talking.answered(ctx, LastDose)
        asked = [one for one in asked if meant is not None and one[0] == meant.place]
    if not asked:
        return False
    named = [one for one in asked if one[1].name.casefold() in text.casefold()]
    meant = talking.answered(ctx, LastDose)
    if not named and not _ALL.search(text):  # then it answers this one question alone
        named = [one for one in asked if meant is not None and one[0] == meant.place]
        if not named:
            return False
    answers: list[tuple[int, _Answer]] = []
    bare = ctx.read_late is None and len(text.split()) <= _WORDS
    if bare and (_UNKNOWN.search(text) or _NONE.search(text)):
        plain: _Answer = "unknown" if _UNKNOWN.search(text) else "none"
        answers = [(place, plain) for place, _ in named or asked]
    else:
        answers = _hours_told(ctx, chart, person, text, named or asked)
    for place, answer in answers:
        _told(ctx, out, chart, person, place, answer, text)
    if answers:
        out.add(Heard(chart.id), Entry("said", person.name, text, chart.id, {"asked": "dose"}))
    return bool(answers)


def _hours_told(
    ctx: AtHome, chart: Chart, person: Person, text: str, asked: list[tuple[int, Medicine]]
) -> list[tuple[int, _Answer]]:
    """The hours in the words, for each medicine asked about that they speak of. Words that were
    read late need none: they tell of the hour at which they were written."""
    written = ctx.read_late
    context = context_for(chart, "dose", person, written or ctx.now)
    seen = (
        read(text, context).observations
        or read(f"{GAVE[person.lang]} {text}", context).observations
    )
    told = {one.at for one in seen if one.at}
    # "Carprofen and cephalexin at 8" is one hour of both, unless another was given now.
    shared = next(iter(told)) if len(told) == 1 and not NOW.search(text) else None
    times: dict[str | None, datetime] = {}
    for one in seen:
        at = one.at or shared
        if (one.about, one.value) != ("dose", "given") or not (at or written):
            return []
        times[one.med] = wall_time(chart, written or ctx.now, at)
    found: list[tuple[int, _Answer]] = []
    for place, medicine in asked:
        given = times.get(medicine.name) or (times.get(None) if len(times) == 1 else None)
        if given is not None:
            found.append((place, given))
    return found


def _told(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, place: int, answer: _Answer,
    text: str,
) -> None:  # fmt: skip
    """Note it, and let the medicine go on; or ask staff, where nobody knows. ``text``: their
    words, or the button that was tapped."""
    medicine = chart.plan.medicines[place]
    holds = waiting(chart, medicine.name)
    known = doses_of(chart, medicine.name)
    if not holds or (known is None and not medicine.as_needed):
        return
    out.add(Heard(chart.id), *(Settle(one.chat, _key(chart, place)) for one in chart.people))
    there = None if answer == "unknown" else [answer] if isinstance(answer, datetime) else []
    stay = (chart.enrolled_at, holds[0].since)
    slots, declined = (known.slots, known.declined) if known is not None else ([], [])
    given = given_times(chart, medicine)
    following = after_stay(medicine, slots, given, there, stay, ctx.now, declined)
    if answer != "unknown":
        out.add(*(EndHold(chart.id, hold.id, None, person.name) for hold in holds))
    if isinstance(answer, datetime):
        seen = Observation("dose", "given", med=medicine.name, at=f"{chart.local(answer):%H:%M}")
        source = hospital_source(ctx.incoming.update)
        day = chart.day(answer)
        keep(ctx, out, Note(chart.id, seen, day, source, person.name, person.id, answer))
    topic = AboutPatient(chart.id)
    said = Said(person.name, text, event_source(out.event))
    # What the answer ended holds nothing any more: a doubt about the next one holds anew.
    left = evolve(chart, out.all, ctx.now)
    reply = _goes_on(ctx, out, left, person, medicine, following, said)
    out.tell(person, Purpose.answer, reply, patient=chart.id, topic=topic)


def _goes_on(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, medicine: Medicine,
    following: NextDose, said: Said,
) -> str:  # fmt: skip
    """The next one at its time; what the gap moves, or what came due since, comes later."""
    lang, names = person.lang, {"name": chart.name, "med": medicine.name}
    match following:
        case DueAt() | NoMore() if medicine.as_needed:
            # Its hour is whenever it is needed, by the gap from what was given there.
            after = evolve(chart, out.all, ctx.now)
            if ctx.standing(after).holds_on_medicine(medicine.name):
                phone = emergency_phones(ctx, lang)
                return ctx.words.say("hold_refused", lang, what=medicine.name, phone=phone)
            return if_needed(ctx, after, medicine, lang) or ctx.words.say(
                "dose_no_more", lang, **names
            )
        case AskStaff(why=why):
            finding = unsure_finding(medicine.name, why)
            take_note(ctx, out, chart, [], said, person=person, more=[finding])
            return ctx.words.say("dose_hold", lang, **names)
        case NoMore():
            return ctx.words.say("dose_no_more", lang, **names)
        case DueAt(at=at, slot=slot):
            at = max(at, ctx.now)
            if ctx.standing(chart).holds_on_medicine(
                medicine.name
            ):  # something else still keeps it back: its release says when it comes
                phone = emergency_phones(ctx, lang)
                return ctx.words.say("hold_refused", lang, what=medicine.name, phone=phone)
            lines = [x for x in chart.doses(medicine.name) if x.item.slot_at == slot]
            for line in lines:
                if at != slot and line.state in ("planned", "held"):
                    key = f"{MOVED}{line.item.id}"
                    out.add(
                        Mark(line.id, "planned"),
                        MoveLine(chart.id, line.id, key, at, chart.day(at)),
                    )
            told_at = when(chart.local(at), chart.local(ctx.now), lang)
            return ctx.words.say("dose_next_at", lang, **names, when=told_at)
