"""Holding and releasing from the staff chat: by command, by button, at the close of a case.

Anyone of the practice may hold; only a clinician releases. A release never makes up for what
was left out, and keeps the gap between two doses.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import datetime

from bot.cases.holding import hold_entry
from bot.context.contexts import AtDesk
from bot.context.phones import both_phones, emergency_phones
from bot.context.words import when
from bot.desk.board import split_name
from bot.dosing.if_needed import if_needed
from bot.dosing.order import doses_of, medicine_of
from bot.dosing.released import come_again, freed_lines
from bot.model.action import OnHold, OnPlan
from bot.model.chart import Chart, Member
from bot.model.chat import Button, Incoming
from bot.model.effects import Effects, EndHold, Entry, PutHold, Rows
from bot.model.evolve import evolve
from bot.model.hold import (
    AntiInflammatories,
    ByMouth,
    Everything,
    FromDeath,
    FromStaff,
    HeldMedicine,
    Hold,
    Sessions,
    Target,
    Walks,
    decode,
    encode,
)
from bot.model.ids import HoldId
from bot.model.purpose import Purpose
from bot.model.steps import AskApart, MedicineChange, OfCourse, OfMedicine
from bot.model.text import Lang
from bot.model.topic import AboutPatient
from bot.plan.doses import NoMore, Yes
from bot.standing.holds import covered, release
from bot.standing.standing import Emergency, Ordinary
from bot.standing.words import target_words

NAMED: dict[str, Target] = {
    "walks": Walks(), "paseos": Walks(), "sessions": Sessions(), "sesiones": Sessions(),
    "everything": Everything(), "todo": Everything(), "by mouth": ByMouth(),
    "medicines": ByMouth(), "medicinas": ByMouth(),
    "anti-inflammatories": AntiInflammatories(), "antiinflamatorios": AntiInflammatories(),
}  # fmt: skip
"""What staff may call what is held, besides a medicine by its name."""
_BY_MOUTH = re.compile(
    r"\b(mouth|npo|oral|boca"
    r"|(all|every|todas?)( (the|his|her|las?))? (medicines?|meds|medicinas?))\b"
)


def command(
    ctx: AtDesk, out: Effects, event: Incoming, actor: Member, word: str, argument: str
) -> None:
    """``/hold NAME WHAT``, ``/release NAME WHAT``; without WHAT, buttons."""
    lang = ctx.clinic.language
    row, rest = split_name(ctx.roster, argument)
    chart = ctx.chart(row.id) if row is not None else None
    if chart is None:
        text = ctx.words.say("desk_no_patient", lang, name=argument.strip() or "?")
        out.say(event.chat, text)
        return
    holding = word == "/hold"
    target = target_of(rest, chart)
    if holding and (chart.over or ctx.standing(chart).death_told):
        out.say(event.chat, ctx.words.say("plan_over_now", lang, name=chart.name))
    elif target is None:
        _offer(ctx, out, event.chat, chart, holding=holding, wanted=rest)
    elif holding:
        hold(ctx, out, event.chat, actor, chart, (target,), "")
    else:
        let_go(ctx, out, event.chat, actor, chart, target)


def target_of(words: str, chart: Chart) -> Target | None:
    """What staff mean by it; None where it names nothing that can be held."""
    plain = " ".join(words.split()).casefold()
    if plain in NAMED:
        return NAMED[plain]
    if _BY_MOUTH.search(plain):
        return ByMouth()
    medicine = medicine_of(chart, plain) if plain else None
    return HeldMedicine(medicine.name) if medicine is not None else None


def _offer(
    ctx: AtDesk, out: Effects, chat: int, chart: Chart, *, holding: bool, wanted: str
) -> None:
    lang = ctx.clinic.language
    if holding:
        targets: list[Target] = [HeldMedicine(m.name) for m in chart.plan.medicines]
        targets += [Walks(), Sessions(), Everything()]
    else:
        targets = held_targets(chart)
    act = "hold" if holding else "release"
    if not targets:
        text = ctx.words.say("hold_none", lang, name=chart.name)
    else:
        text = ctx.words.say(f"hold_ask_{act}", lang, name=chart.name)
        if wanted.strip():
            text = f"{ctx.words.say('hold_unknown', lang, what=wanted.strip()[:60])}\n{text}"
    rows: Rows = tuple((_button(ctx, chat, chart, act, one, lang),) for one in targets)
    out.say(chat, text, buttons=rows, patient=chart.id, topic=AboutPatient(chart.id))


def held_targets(chart: Chart) -> list[Target]:
    """What is held now and can be released, each once: a death is confirmed or taken back."""
    return list(dict.fromkeys(h.target for h in chart.holds if not isinstance(h.cause, FromDeath)))


def _button(
    ctx: AtDesk,
    chat: int,
    chart: Chart,
    act: str,
    target: Target,
    lang: Lang,
    *,
    verb: bool = False,
) -> Button:
    what = target_words(target, lang, ctx.words, chart.plan)
    label = f"{ctx.words.say(f'hold_{act}', lang)}: {what}" if verb else what
    place = _place(chart, target)
    return ctx.button(chat, label, OnHold(chart.id, act, place))


def _place(chart: Chart, target: Target) -> str:
    """A target in few letters, for a button: a medicine by its place in the plan."""
    if isinstance(target, HeldMedicine):
        for place, medicine in enumerate(chart.plan.medicines):
            if medicine.name.casefold() == target.med.casefold():
                return f"m{place}"
    return encode(target)[:24]


def _target(chart: Chart, text: str) -> Target | None:
    if text[:1] == "m" and text[1:].isascii() and text[1:].isdecimal():
        place = int(text[1:])
        meds = chart.plan.medicines
        return HeldMedicine(meds[place].name) if place < len(meds) else None
    try:
        return decode(text)
    except ValueError:
        return None


def tap(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, action: OnHold) -> bool:
    """A button: hold, release or keep. False when it leads nowhere."""
    chart = ctx.chart(action.patient)
    target = _target(chart, action.target) if chart is not None else None
    if chart is None or target is None:
        return False
    lang = ctx.clinic.language
    out.answer(event.callback)
    what = target_words(target, lang, ctx.words, chart.plan)
    match action.act:
        case "hold":
            hold(ctx, out, event.chat, actor, chart, (target,), "")
        case "release":
            let_go(ctx, out, event.chat, actor, chart, target)
        case "keep":
            text = ctx.words.say("hold_kept", lang, what=what, name=chart.name, by=actor.name)
            out.add(Entry("hold", actor.name, text, chart.id, {"target": encode(target)}))
            out.say(event.chat, text, patient=chart.id, quiet=True)
        case _:
            return False
    return True


def hold(
    ctx: AtDesk,
    out: Effects,
    chat: int,
    actor: Member,
    chart: Chart,
    targets: Sequence[Target],
    said: str,
) -> list[Hold]:
    """Hold these from now on, in the name of who says so."""
    lang = ctx.clinic.language
    if chart.over or ctx.standing(chart).death_told:
        text = ctx.words.say("plan_over_now", lang, name=chart.name)
        out.say(chat, text, patient=chart.id)
        return []
    known = held_targets(evolve(chart, out.all, ctx.now))
    fresh = [
        Hold(
            HoldId(f"{out.event}:staff:{encode(target)}"),
            target,
            ctx.now,
            FromStaff(actor.id, actor.name, said, out.event),
        )
        for target in targets
        if target not in known
    ]
    for one in fresh:
        out.add(PutHold(chart.id, one), hold_entry(ctx, chart, one))
    what = ", ".join(target_words(one, lang, ctx.words, chart.plan) for one in targets)
    key = "hold_done" if fresh else "hold_already"
    fields = {"told": _told(ctx, chart, lang)} if fresh else {}
    text = ctx.words.say(key, lang, what=what, name=chart.name, **fields)
    out.say(chat, text, patient=chart.id)
    return fresh


def _told(ctx: AtDesk, chart: Chart, lang: Lang) -> str:
    """Whether the household hears of it now: in an emergency when that is closed."""
    if isinstance(ctx.standing(chart).mode, Emergency):
        return ctx.words.say("hold_gone_emergency", lang)
    heard = any(person.reachable for person in chart.people)
    return ctx.words.say("hold_told" if heard else "hold_untold", lang)


def let_go(
    ctx: AtDesk, out: Effects, chat: int, actor: Member, chart: Chart, target: Target
) -> None:
    """A clinician releases what is held; what else is held stays."""
    lang = ctx.clinic.language
    what = target_words(target, lang, ctx.words, chart.plan)
    if ctx.standing(chart).death_told:
        out.say(chat, ctx.words.say("plan_over_now", lang, name=chart.name), patient=chart.id)
        return
    left = release(chart.holds, target, chart.plan)
    gone = [one for one in chart.holds if one.id not in {h.id for h in left}]
    known = {one.id for one in chart.holds}
    if not gone:
        if left and isinstance(target, Everything):
            out.say(chat, _still(ctx, chart, lang))
        else:
            _not_held(ctx, out, chat, chart, target)
        return
    named = [target]
    if left and isinstance(target, Everything):  # not quite everything: each by its name
        named = list(dict.fromkeys(one.target for one in gone))
        what = _list(ctx, chart, named, lang)
    for one in gone:
        out.add(EndHold(chart.id, one.id, actor.id, actor.name))
    out.add(*(PutHold(chart.id, one) for one in left if one.id not in known))
    out.add(Entry("release", actor.name, what, chart.id, {"target": encode(target)}))
    after = evolve(chart, out.all, ctx.now)
    standing = ctx.standing(after)
    told = _told(ctx, after, lang)
    text = ctx.words.say("hold_gone", lang, what=what, name=chart.name, by=actor.name, told=told)
    if left and not isinstance(standing.mode, Emergency):
        text = f"{text}\n{_still(ctx, after, lang)}"
    out.say(chat, text, patient=chart.id)
    if isinstance(standing.mode, Emergency):
        return
    _tell_released(ctx, out, chart, after, target, named)


def _not_held(ctx: AtDesk, out: Effects, chat: int, chart: Chart, target: Target) -> None:
    """Nothing ends: it is not held at all, or only as part of more, which can be released."""
    lang = ctx.clinic.language
    what = target_words(target, lang, ctx.words, chart.plan)
    standing = ctx.standing(chart)
    wider = list(dict.fromkeys(one.target for one in standing.holds_on_target(target)))
    own = [one for one in held_targets(chart) if one in wider]
    if isinstance(standing.mode, Emergency):
        text = ctx.words.say("hold_not_held", lang, what=what, name=chart.name)
        out.say(chat, f"{text} {ctx.words.say('hold_gone_emergency', lang)}", patient=chart.id)
        return
    if not own:
        out.say(chat, ctx.words.say("hold_not_held", lang, what=what, name=chart.name))
        return
    names = ", ".join(target_words(one, lang, ctx.words, chart.plan) for one in own)
    text = ctx.words.say("hold_wider", lang, what=what, name=chart.name, wider=names)
    rows = tuple((_button(ctx, chat, chart, "release", one, lang, verb=True),) for one in own)
    out.say(chat, text, buttons=rows, patient=chart.id, topic=AboutPatient(chart.id))


def _tell_released(
    ctx: AtDesk, out: Effects, chart: Chart, after: Chart, target: Target, named: Sequence[Target]
) -> None:
    """The household hears of a release, and of each medicine when it may come again; reminders
    are promised only of what has any."""
    was, standing = ctx.standing(chart), ctx.standing(after)
    free = [
        one for one in after.plan.medicines
        if was.holds_on_medicine(one.name) and not standing.holds_on_medicine(one.name)
        and not one.is_withheld(ctx.now)
    ]  # fmt: skip
    paused = not isinstance(standing.mode, Ordinary)
    reminded = [one.name for one in free if not one.as_needed]
    ended = [one for one in reminded if not _goes_on(after, one, ctx.now)]
    promised = len(ended) < len(reminded) or not covered(target, chart.plan)
    again = [] if paused else come_again(ctx, out, after, reminded)
    names = set(covered(target, chart.plan))
    left = dict.fromkeys(  # told before; what was not is told now, as a hold
        one.target for one in after.holds
        if one.told and not names.isdisjoint(covered(one.target, chart.plan))
    )  # fmt: skip
    for person in after.people:
        if not person.reachable:
            continue
        lang = person.lang
        what = _list(ctx, chart, named, lang)
        said = [ctx.words.say("hold_released", lang, name=chart.name, what=what)]
        if left:
            still = _list(ctx, chart, list(left), lang)
            said.append(ctx.words.say("hold_left", lang, what=still))
        if chart.over:
            phone = both_phones(ctx, lang)
            said = [
                ctx.words.say("hold_released_ended", lang, name=chart.name, phone=phone, what=what)
            ]
        elif paused:
            phone = emergency_phones(ctx, lang)
            said.append(ctx.words.say("next_paused", lang, name=chart.name, phone=phone))
        elif promised:
            said.append(ctx.words.say("hold_reminds", lang))
        lines = [" ".join(said)]
        for med, slot in again:
            at = when(chart.local(slot), chart.local(ctx.now), lang)
            lines.append(ctx.words.say("dose_next_at", lang, name=chart.name, med=med, when=at))
        for med in ended:
            lines.append(ctx.words.say("hold_ended", lang, name=chart.name, med=med))
        if not paused:
            told = (if_needed(ctx, after, one, lang) for one in free if one.as_needed)
            lines += [words for words in told if words]
        topic = AboutPatient(chart.id)
        out.tell(person, Purpose.hold_notice, "\n".join(lines), patient=chart.id, topic=topic)


def _goes_on(chart: Chart, med: str, now: datetime) -> bool:
    """Whether another dose of it is to come: one to come by its hours, or one that was held."""
    doses = doses_of(chart, med)
    late = any(isinstance(verdict, Yes) for _, verdict in freed_lines(chart, med, now))
    return late or doses is None or not isinstance(doses.next(now), NoMore)


def _list(ctx: AtDesk, chart: Chart, targets: Sequence[Target], lang: Lang) -> str:
    return ", ".join(target_words(one, lang, ctx.words, chart.plan) for one in targets)


def _still(ctx: AtDesk, chart: Chart, lang: Lang) -> str:
    return ctx.words.say("hold_left", lang, what=_list(ctx, chart, held_targets(chart), lang))


def ask_at_close(ctx: AtDesk, out: Effects, chat: int, chart: Chart) -> None:
    """A case is answered or closed and something is still held: release, keep or stop?"""
    lang = ctx.clinic.language
    if ctx.standing(chart).death_told:
        _ask_of_death(ctx, out, chat, chart)
        return
    targets = held_targets(evolve(chart, out.all, ctx.now))
    if not targets:
        return
    rows: list[tuple[Button, ...]] = []
    for target in targets:
        rows.append((_button(ctx, chat, chart, "release", target, lang, verb=True),))
        second = [_button(ctx, chat, chart, "keep", target, lang, verb=True)]
        stop = _stop_button(ctx, chat, chart, target, lang)
        rows.append((*second, *stop))
    what = ", ".join(target_words(one, lang, ctx.words, chart.plan) for one in targets)
    text = ctx.words.say("hold_staff_close", lang, name=chart.name, what=what)
    out.say(chat, text, buttons=tuple(rows), patient=chart.id, topic=AboutPatient(chart.id))


def _ask_of_death(ctx: AtDesk, out: Effects, chat: int, chart: Chart) -> None:
    """A death that was told is not forgotten with its case: it is confirmed or taken back."""
    if chart.state == "died":
        return
    _ask(
        ctx, out, chat, chart, "death_open", ("case_died", OfCourse.died),
        ("case_not_dead", OfCourse.alive),
    )  # fmt: skip


def ask_whether_alive(ctx: AtDesk, out: Effects, chat: int, chart: Chart) -> None:
    """A death that was confirmed stands, whatever becomes of its case."""
    _ask(ctx, out, chat, chart, "death_confirmed", ("case_not_dead", OfCourse.alive))


def _ask(
    ctx: AtDesk,
    out: Effects,
    chat: int,
    chart: Chart,
    key: str,
    *buttons: tuple[str, OfCourse],
) -> None:
    lang = ctx.clinic.language
    made = tuple(
        ctx.button(chat, ctx.words.say(label, lang), OnPlan(chart.id, AskApart(change)))
        for label, change in buttons
    )
    text = ctx.words.say(key, lang, name=chart.name)
    out.say(chat, text, buttons=(made,), patient=chart.id, topic=AboutPatient(chart.id))


def _stop_button(
    ctx: AtDesk, chat: int, chart: Chart, target: Target, lang: Lang
) -> tuple[Button, ...]:
    """Stopping is a change of the plan, with its reason, as always."""
    names = covered(target, chart.plan)
    if len(names) != 1:
        return ()
    place = next(i for i, m in enumerate(chart.plan.medicines) if m.name == names[0])
    label = f"{ctx.words.say('hold_stop', lang)}: {names[0]}"
    stop = AskApart(OfMedicine(MedicineChange.stop, place))
    return (ctx.button(chat, label, OnPlan(chart.id, stop)),)
