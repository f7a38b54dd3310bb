"""May I walk him? Feed him? Give another pill? Answered from the standing and the plan.

What is on hold is said so, with whom to phone; a dose inside its gap with the hour before which
it may not be given; anything else in the plan's own words. Where one of these is known nobody
has to answer, so no case is opened. What is not known goes the way of every question.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from bot.cases.holding import round_of
from bot.context.contexts import Context
from bot.context.phones import emergency_phones, whom_to_phone
from bot.context.words import when
from bot.dosing.dosing import stopped_words
from bot.dosing.if_needed import if_needed
from bot.dosing.order import doses_of, given_times
from bot.dosing.showable import asked_when
from bot.household.giving import plainly
from bot.model.chart import Chart
from bot.model.hold import ByMouth, HeldMedicine, Hold, Sessions, Target, Walks
from bot.model.plan import Medicine
from bot.model.reading import Reading
from bot.model.text import Lang
from bot.plan.doses import DueAt, NoMore, as_needed
from bot.plan.expected import expected_on
from bot.plan.walks import as_told
from bot.reading import human_medicine_in
from bot.standing.standing import Ordinary
from bot.standing.words import hold_notice

_PARTS = re.compile(r"[^?!.;\n¿]+\??")
_MAY = re.compile(
    r"\b(?:(?:can|may|could|should|shall|must)\s+(?:i|we|he|she|it|they|\w+\s+(?:go|have|eat|drink"
    r"|walk))|(?:am i|are we|is (?:he|she|it)) (?:allowed|ok|okay)|(?:is it|would it be)"
    r"\s+(?:ok|okay|fine|safe|all right|alright|time)|ok(?:ay)? (?:to|if)|allowed"
    r"|how (?:long|far|much|often|many)|do (?:i|we) (?:give|walk|feed)"
    r"|pued[oae]n?|podemos|podria(?:mos)?|debo|debemos|le doy|le damos|esta bien (?:si|dar|que)"
    r"|cuant[oa]s?)\b"
)
_WHEN = re.compile(
    r"\b(?:when|what time|cuando|a que hora|que hora|toca|next|proxim[ao]"
    r"|where(?: is| are|s|'s)|donde estan?)\b"
)
_SHORT_IS = re.compile(r"\b(when|what|where|how)['’]?s\b")
_PLAIN = frozenset(
    "can may could should shall must not no where am are is be it would i we he she they you me "
    "us my our "
    "him her his hers their its them the a an to for of in on at with by and or so then if ok "
    "okay fine safe right alright allowed able now already yet today tonight this morning "
    "afternoon evening night midday noon day time times hour hours minutes minute long far "
    "much many often how when what do does give get have has take go going given another one "
    "more next second again just please hi hello thanks still also too some any little bit "
    "usual normal soon due dog cat puppy kitty pet boy girl out outside puedo puede podemos "
    "pueden podria podriamos debo debemos le les lo la los las el un una su sus se nos que "
    "cuando cuanto cuanta cuantos cuantas al de del en con y o por para hora horas minutos "
    "tiempo ya ahora hoy noche tarde esta este es bien si doy damos dar darle darles dale "
    "toca tocan otra otro mas proxima proximo siguiente segunda favor hola gracias dia perro "
    "perra gato gata todavia aun sacar sacarlo sacarla salir llevar llevarlo llevarla vez "
    "pronto poco poquito algo tomar tome coma beba".split()
)
"""Words that change nothing about what is asked. Any other (grapes, snow, crushed, fever) may:
then the plan's own words are no answer, and a person reads it."""
_WHY = re.compile(r"\b(?:why|por que|how do|how should|como)\b")
_WALK = re.compile(
    r"\b(?:walk(?:s|ed|ing|ies)?|outings?|stroll|out to pee|pase[oa]\w*|pasear\w*|camin\w+"
    r"|go out(?:side)?|sacar(?:lo|la)|salir)\b"
)
_FOOD = re.compile(
    r"\b(?:food|eat|feed(?:ing)?|meals?|dinner|breakfast|lunch|supper|kibble|comida|comer|cenar?"
    r"|desayun\w+|almuerzo|croquetas|darle de comer|alimentar\w*)\b"
)
_DRINK = re.compile(r"\b(?:water|drink(?:ing)?|agua|beber|tomar agua)\b")
_EXERCISE = re.compile(
    r"\b(?:massag\w*|exercis\w*|physio\w*|rehab\w*|stretch\w*|masaje\w*|ejercicio\w*"
    r"|fisioterapia|estiramiento\w*)\b"
)
_DOSE = re.compile(
    r"\b(?:(?:the|his|her|their|its|a|an|another|one|next|more|second|evening|morning|la|las|el|los"
    r"|su|sus|otra|una|mas|proxima|siguiente)\s+(?:pain\s+)?(?:pills?|tablets?|capsules?|doses?|dose"
    r"|meds?|medicines?|medication|pastillas?|tabletas?|dosis|medicinas?|medicamentos?))\b"
)
_GIVE_IT = re.compile(
    r"\b(?:give (?:(?:him|her) )?(?:it|one|them)|dar(?:se)?l[oa]s?"
    r"|se l[oa]s? (?:doy|damos|(?:puedo|debo) dar))\b"
)
"""Nothing is named: the medicines of the last round are meant."""
_OTHER_MEDICINE = re.compile(
    r"\b(?:(?:an)?other|different|otr[ao]|extra)\s+(?:kind of\s+)?(?:meds?|medicines?|medication"
    r"|painkillers?|medicinas?|medicamentos?|remedios?|analgesicos?)\b"
)
_NAMED = re.compile("|".join(one.pattern for one in (_WALK, _FOOD, _DRINK, _EXERCISE)))


@dataclass(frozen=True, slots=True)
class _Asked:
    """One question, in small letters without accents."""

    text: str
    permission: bool


def known_answer(ctx: Context, chart: Chart, text: str, reading: Reading, lang: Lang) -> list[str]:
    """The answer to every question in the words; nothing where one of them is not known."""
    if not isinstance(ctx.standing(chart).mode, Ordinary) or chart.state != "active":
        return []
    told = reading.observations
    asks = any((x.about, x.value) == ("request", "question") for x in told)
    if not (asks or reading.questions) or human_medicine_in(text):
        return []
    if reading.asks or any(x.about != "request" for x in told):
        return []  # what is told beside the question may change the answer
    found: list[str] = []
    for part in _questions(text):
        answer = _answer(ctx, chart, part, lang)
        if answer is None:
            return []
        found += [one for one in answer if one not in found]
    return found


def without_question(reading: Reading) -> Reading:
    """The reading once its questions have their answer."""
    left = tuple(x for x in reading.observations if (x.about, x.value) != ("request", "question"))
    return replace(reading, observations=left, questions=())


def _questions(text: str) -> list[_Asked]:
    """What is asked; words beside it that ask nothing are read as they are."""
    found = []
    for part in _PARTS.findall(_SHORT_IS.sub(r"\1 is", plainly(text))):
        may, when_ = bool(_MAY.search(part)), bool(_WHEN.search(part))
        if may or when_ or part.endswith("?"):
            found.append(_Asked(part.strip(), may and not _next_dose(part)))
    return found


def _next_dose(part: str) -> bool:
    return bool(re.match(r"\W*(?:when|what time|cuando|a que hora)\b", part))


def _answer(ctx: Context, chart: Chart, asked: _Asked, lang: Lang) -> list[str] | None:
    """The answer to one question; None where it is not known."""
    text = asked.text
    if _WHY.search(text):
        return None
    named = [one for one in chart.plan.medicines if _names(one, text)]
    plain = _is_plain(chart, text)
    if named or (_DOSE.search(text) and not _OTHER_MEDICINE.search(text)):
        meds = named or [one for one in chart.plan.medicines if not one.is_withheld(ctx.now)]
        return _doses(ctx, chart, meds, asked, lang, plain=plain)
    if asked.permission and plain and _GIVE_IT.search(text) and not _NAMED.search(text):
        last = round_of(chart, ctx.now)
        meds = [one for one in chart.plan.medicines if one.name in last]
        return _doses(ctx, chart, meds, asked, lang, plain=plain) if meds else None
    if not asked.permission:
        return None
    topics: tuple[tuple[re.Pattern[str], Target, Callable[..., list[str]]], ...] = (
        (_WALK, Walks(), _walks_today),
        (_FOOD, ByMouth(), _of_food),
        (_DRINK, ByMouth(), _of_water),
        (_EXERCISE, Sessions(), _of_exercises),
    )
    for words, target, by_plan in topics:
        if words.search(text):
            held = list(ctx.standing(chart).holds_on_target(target))
            if held:
                return [_notice(ctx, chart, held, lang)]
            return (by_plan(ctx, chart, lang) or None) if plain else None
    return None


def _is_plain(chart: Chart, text: str) -> bool:
    """Whether nothing is named but the thing that is asked about."""
    for words in (_DOSE, _GIVE_IT, _WALK, _FOOD, _DRINK, _EXERCISE):
        text = words.sub(" ", text)
    own = " ".join((chart.name, *(one.name for one in chart.plan.medicines)))
    own_words = plainly(own).split()
    return all(word in _PLAIN or word in own_words for word in re.findall(r"[a-z0-9']+", text))


def _names(medicine: Medicine, text: str) -> bool:
    return plainly(medicine.name) in text


def _notice(ctx: Context, chart: Chart, holds: Sequence[Hold], lang: Lang) -> str:
    return hold_notice(holds, chart.plan, lang, ctx.words, emergency_phones(ctx, lang))


# -- walks, food, water -------------------------------------------------------------------------


def _walks_today(ctx: Context, chart: Chart, lang: Lang) -> list[str]:
    """What the plan says of today's walks, as its prompt does."""
    day = chart.day(ctx.now)
    items = [x.item for s in chart.sheets if s.day == day for x in s.lines if x.item.asks == "walk"]
    if not items:
        return _plans_words(ctx, chart, ["walk"], lang)
    item = as_told(chart.plan, chart.protocol, chart.history, items[0], day)
    said = item.text.say(lang).split("\n")[0]
    told = re.sub(r"\s*¿?[^.?¿]*\?\s*$", "", said)  # "Done?" is asked by the prompt alone
    return _with_head(ctx, chart, [told], lang) if told else []


def _of_food(ctx: Context, chart: Chart, lang: Lang) -> list[str]:
    return _plans_words(ctx, chart, ["appetite"], lang)


def _of_water(ctx: Context, chart: Chart, lang: Lang) -> list[str]:
    return _plans_words(ctx, chart, ["drinking"], lang)


def _of_exercises(ctx: Context, chart: Chart, lang: Lang) -> list[str]:
    return _plans_words(ctx, chart, ["massage"], lang)


def _plans_words(ctx: Context, chart: Chart, topics: Sequence[str], lang: Lang) -> list[str]:
    found = expected_on(chart.plan, chart.protocol, topics, chart.day(ctx.now))
    said = [one.say(lang).replace("{name}", chart.name) for one in found]
    return _with_head(ctx, chart, said, lang) if said else []


def _with_head(ctx: Context, chart: Chart, said: Sequence[str], lang: Lang) -> list[str]:
    head = ctx.words.say("expected_head", lang, day=chart.day(ctx.now))
    return [head, *said, ctx.words.say("expected_careful", lang, name=chart.name)]


# -- doses --------------------------------------------------------------------------------------


def _doses(
    ctx: Context, chart: Chart, meds: Sequence[Medicine], asked: _Asked, lang: Lang, *, plain: bool
) -> list[str] | None:
    standing = ctx.standing(chart)
    held = [one for one in meds if standing.holds_on_medicine(one.name)]
    stopped = [one for one in meds if one.is_withheld(ctx.now)]
    free = [one for one in meds if one not in held and one not in stopped]
    found = [stopped_words(ctx, chart, one, lang) for one in stopped]
    held = [one for one in held if one not in stopped]
    if held:
        targets = [HeldMedicine(one.name) for one in held]
        holds = dict.fromkeys(h for target in targets for h in standing.holds_on_target(target))
        found.append(_notice(ctx, chart, list(holds), lang))
    if free and not plain:
        return None
    for one in free:
        told = _dose(ctx, chart, one, asked, lang)
        if told is None:
            return None
        found.append(told)
    return found or None


def _dose(ctx: Context, chart: Chart, medicine: Medicine, asked: _Asked, lang: Lang) -> str | None:
    """When this one may be given; None where nobody but staff should say."""
    fields = {"name": chart.name, "med": medicine.name}
    over = ctx.words.say("dose_over", lang, **fields, phone=whom_to_phone(ctx, lang))
    local = chart.local(ctx.now)
    if medicine.as_needed:
        if isinstance(
            as_needed(chart.plan, medicine, given_times(chart, medicine), ctx.now), NoMore
        ):
            return over
        return if_needed(ctx, chart, medicine, lang)
    doses = doses_of(chart, medicine.name)
    if doses is None or asked_when(chart, medicine.name, ctx.now) is not None:
        return None
    match doses.next(ctx.now):
        case DueAt(at=due, slot=slot):
            moved = [
                sheet.due_at
                for sheet in chart.sheets
                if sheet.moved
                and any(x.item.slot_at == slot and x.item.med == medicine.name for x in sheet.lines)
            ]
            due = max([due, *moved])
            key = "dose_waits" if due <= ctx.now else "dose_next_at"
            if asked.permission and due > ctx.now:
                key = "dose_not_before"
            return ctx.words.say(key, lang, **fields, when=when(chart.local(due), local, lang))
        case NoMore():
            return over
        case _:
            return None
