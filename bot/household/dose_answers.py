"""Was it given, and when is the next one? Answered from what is noted, never from hope."""

from __future__ import annotations

import re
from dataclasses import replace

from bot.context.contexts import Context
from bot.context.phones import emergency_phones
from bot.context.words import when
from bot.dosing.order import Doses, doses_of
from bot.dosing.showable import asked_when
from bot.model.chart import Chart, Sheet
from bot.model.observation import Observation
from bot.model.reading import Reading
from bot.model.text import Lang
from bot.plan.doses import DueAt
from bot.standing.standing import Paused

_MEDICINE = re.compile(
    r"\b(pills?|tablets?|doses?|dose|medicines?|meds?|medication|pastillas?|tabletas?|dosis"
    r"|medicinas?|medicamentos?|remedios?)\b",
    re.IGNORECASE,
)
_WHEN = re.compile(
    r"\b(when|next|what time|already|yet|cu[aá]ndo|a qu[eé] hora|toca|pr[oó]xim[ao]|ya"
    r"|did (you|anyone|anybody|someone|he|she)|has (he|she|anyone|anybody) (had|given)"
    r"|(was|were) .{0,40}\bgiven|le (dio|dieron|diste)|se (le )?(dio|dieron)|tom[oó])\b",
    re.IGNORECASE,
)
_NOT_YET = re.compile(
    r"n[o\u2019']?t\b.{0,40}\byet\b"
    r"|\b(todav[ií]a|a[uú]n) no\b|\bno .{0,40}\b(todav[ií]a|a[uú]n)\b",
    re.IGNORECASE,
)
_ALL_A_QUESTION = re.compile(r"^\s*¿[^?¿]*\?\W*$")


def asks_of_doses(chart: Chart, text: str) -> bool:
    """Whether it is asked when a medicine was given or is due."""
    named = any(one.name.casefold() in text.casefold() for one in chart.plan.medicines)
    return "?" in text and bool((named or _MEDICINE.search(text)) and _WHEN.search(text))


def asked_not_told(chart: Chart, text: str, reading: Reading) -> Reading:
    """The reading without a dose that a message which is one question only asks about."""
    if not (_ALL_A_QUESTION.match(text) and asks_of_doses(chart, text)):
        return reading
    left = [x for x in reading.observations if (x.about, x.value) != ("dose", "given")]
    if len(left) == len(reading.observations):
        return reading
    if not any(one.value == "question" for one in left):
        left.append(Observation("request", "question"))
    return replace(reading, observations=tuple(left), questions=("dose",))


def still_to_do(sheet: Sheet | None, text: str, reading: Reading) -> Reading:
    """ "Not yet" to what waits leaves nothing out and reassures of nothing: it is asked again."""
    items = [line.item for line in sheet.open] if sheet else []
    waits = {(item.asks, med) for item in items for med in (item.med, None)}
    told = reading.observations
    if not told or not _NOT_YET.search(text):
        return reading
    unseen = reading.bare - {"appetite", "cone"}  # not yet eaten, not yet on: told, as it is now
    put_off = [
        x for x in told
        if x.about in unseen or (x.value in ("missed", "skipped") and (x.about, x.med) in waits)
    ]  # fmt: skip
    if len(put_off) < len(told):
        return reading
    return replace(reading, observations=(Observation("request", "snooze"),))


def about_doses(ctx: Context, chart: Chart, text: str, lang: Lang) -> list[str]:
    """The last one and the next one of each medicine that is asked about."""
    plan = chart.plan.medicines
    named = [one for one in plan if one.name.casefold() in text.casefold()]
    found = []
    for medicine in named or plan:
        doses = doses_of(chart, medicine.name)
        if doses is not None and not medicine.is_withheld(ctx.now):
            found += _last_and_next(ctx, chart, doses, lang)
    if isinstance(ctx.standing(chart).mode, Paused):
        phone = emergency_phones(ctx, lang)
        found.append(ctx.words.say("next_paused", lang, name=chart.name, phone=phone))
    return ["\n".join(found)] if found else []


def _last_and_next(ctx: Context, chart: Chart, doses: Doses, lang: Lang) -> list[str]:
    words, now = ctx.words, chart.local(ctx.now)
    fields = {"name": chart.name, "med": doses.medicine.name}
    found = []
    if doses.given:
        given = when(chart.local(doses.given[-1]), now, lang)
        who = next((x.by for x in reversed(doses.lines) if x.at == doses.given[-1] and x.by), "")
        by = f" ({who})" if who else ""
        found.append(words.say("dose_last", lang, **fields, at=given, by=by))
    if ctx.standing(chart).holds_on_medicine(doses.medicine.name):
        phone = emergency_phones(ctx, lang)
        return [*found, words.say("hold_refused", lang, what=doses.medicine.name, phone=phone)]
    if asked_when(chart, doses.medicine.name, ctx.now) is not None:
        return found
    if isinstance(ctx.standing(chart).mode, Paused):
        return found
    match doses.next(ctx.now):
        case DueAt(at=at, slot=slot):
            moved = [
                sheet.due_at
                for sheet in chart.sheets
                if sheet.moved and any(x.item.slot_at == slot for x in sheet.lines)
                and any(x.item.med == doses.medicine.name for x in sheet.lines)
            ]  # fmt: skip
            due = max([at, *moved])
            key = "dose_next_at" if due > ctx.now else "dose_waits"
            return [*found, words.say(key, lang, **fields, when=when(chart.local(due), now, lang))]
        case _:
            return found
