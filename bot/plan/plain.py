"""An order in an owner's words: "one and a half tablets, with breakfast and with dinner,
until Tuesday evening"."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, time, timedelta
from typing import Final, get_args

from bot.model.plan import Hours, Medicine, Reason, Route
from bot.model.protocol import Moment
from bot.model.text import Lang

from .slots import most_doses

NEAR: Final = timedelta(minutes=90)
"""A dose within this of a moment of the household is given then; else the clock is named."""
DATED: Final = timedelta(days=7)
"""From this length on, the name of a weekday alone would not be plain."""

_MORNING: Final = timedelta(hours=4)  # the first dose of a day: not the one at 2 a.m.
_DAY: Final = timedelta(days=1)
_TEA: Final = time(19)  # until then, the evening is "la tarde" in Spanish

_WHEN: Final[dict[Lang, dict[Moment, tuple[str, str]]]] = {
    # without food, with food
    "en": {
        "morning": ("in the morning", "with breakfast"),
        "midday": ("at midday", "with lunch"),
        "evening": ("in the evening", "with dinner"),
        "bedtime": ("at bedtime", "at bedtime with some food"),
    },
    "es": {
        "morning": ("por la mañana", "con el desayuno"),
        "midday": ("al mediodía", "con el almuerzo"),
        "evening": ("por la noche", "con la cena"),
        "bedtime": ("al acostarse", "al acostarse con algo de comida"),
    },
}
_ROUTES: Final[dict[Route, tuple[str, str]]] = {
    "mouth": ("", ""),
    "gums": (" on the gums", " en las encías"),
    "skin": (" on the skin", " en la piel"),
    "eyes": (" in both eyes", " en ambos ojos"),
    "injection": (" as an injection", " en inyección"),
}
_REASONS: Final[dict[Reason, tuple[str, str]]] = {
    "pain": (" for pain", " para el dolor"),
    "anxiety": (" for restlessness", " para la inquietud"),
    "nausea": (" for nausea", " para las náuseas"),
    "itch": (" for itching", " para la picazón"),
}
_WEEKDAYS: Final[dict[Lang, Sequence[str]]] = {
    "en": "Monday Tuesday Wednesday Thursday Friday Saturday Sunday".split(),
    "es": "lunes martes miércoles jueves viernes sábado domingo".split(),
}
_MONTHS: Final[dict[Lang, Sequence[str]]] = {
    "en": "January February March April May June July August September October November "
    "December".split(),
    "es": "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre "
    "diciembre".split(),
}


def plain(
    medicine: Medicine,
    hours: Hours,
    lang: Lang,
    *,
    at: datetime | None = None,
    last: datetime | None = None,
) -> str:
    """The order in plain words: how much, when in the household's own day, until when.

    ``at``: words for the dose at this time alone. ``last``: the last dose, where a journey
    has moved it; both are wall-clock times.
    """
    how_much = medicine.amount.say(lang) + _ROUTES[medicine.route][lang == "es"]
    if medicine.as_needed:
        return f"{how_much}, {_as_needed(medicine, lang)}"
    total = most_doses(medicine)
    if last is None:
        last = medicine.first_dose + timedelta(hours=medicine.every_hours * (total - 1))
    if total == 1:
        once = "once, on" if lang == "en" else "una sola vez, el"
        food = _food(medicine, lang)
        return f"{how_much}{food}, {once} {_day(last, hours, lang, dated=True)}"
    when = _times(medicine, hours, lang) if at is None else _rhythm(medicine, hours, lang, at)
    if at is not None and at >= last:
        until = "this is the last dose" if lang == "en" else "es la última dosis"
    else:
        dated = last.date() - medicine.first_dose.date() >= DATED
        until = "until " if lang == "en" else "hasta el "
        until += _day(last, hours, lang, dated=dated)
    return f"{how_much}, {when}, {until}"


def _as_needed(medicine: Medicine, lang: Lang) -> str:
    hours, days = medicine.every_hours, medicine.days
    why = _REASONS[medicine.needed_for][lang == "es"] if medicine.needed_for else ""
    food = why + _food(medicine, lang)
    if lang == "en":
        span = "1 day" if days == 1 else f"{days} days"
        return f"only if needed{food}, at least {hours} hours apart, for {span} at most"
    span = "1 día" if days == 1 else f"{days} días"
    return f"solo si hace falta{food}, con al menos {hours} horas entre dosis, {span} como máximo"


def _food(medicine: Medicine, lang: Lang) -> str:
    if not medicine.with_food:
        return ""
    return " with food" if lang == "en" else " con comida"


def _times(medicine: Medicine, hours: Hours, lang: Lang) -> str:
    """All moments of the day at which it is given."""
    every = medicine.every_hours
    if every > 24 or 24 % every:
        return _rhythm(medicine, hours, lang, medicine.first_dose)
    some = min(24 // every, most_doses(medicine))
    walls = [medicine.first_dose + timedelta(hours=every * n) for n in range(some)]
    walls.sort(key=lambda wall: (wall - _MORNING).time())
    said = [_moment_words(medicine, hours, lang, wall) for wall in walls]
    if len(set(said)) < len(said):  # two doses near one meal: the clock tells them apart
        said = [_clock_words(medicine, lang, wall) for wall in walls]
    return _and(said, lang)


def _rhythm(medicine: Medicine, hours: Hours, lang: Lang, at: datetime) -> str:
    """One dose's moment, with how often where that is not daily."""
    every = medicine.every_hours
    if every > 24 and every % 24 == 0:
        days = every // 24
        if lang == "en":
            often = {2: "every second day", 3: "every third day", 7: "once a week"}
            rhythm = often.get(days, f"every {days} days")
        else:
            rhythm = {2: "cada dos días", 3: "cada tres días", 7: "una vez por semana"}.get(
                days, f"cada {days} días"
            )
        return f"{rhythm} {_moment_words(medicine, hours, lang, at)}"
    if every > 24 or 24 % every:
        food = _food(medicine, lang)
        return f"every {every} hours{food}" if lang == "en" else f"cada {every} horas{food}"
    return _moment_words(medicine, hours, lang, at)


def _moment_words(medicine: Medicine, hours: Hours, lang: Lang, wall: datetime) -> str:
    moment = _moment(hours, wall)
    if moment is None:
        return _clock_words(medicine, lang, wall)
    if lang == "es" and moment == "evening" and not medicine.with_food and wall.time() < _TEA:
        return "por la tarde"
    return _WHEN[lang][moment][medicine.with_food]


def _clock_words(medicine: Medicine, lang: Lang, wall: datetime) -> str:
    some = (" with some food", " con algo de comida")[lang == "es"] if medicine.with_food else ""
    return _clock(wall, lang) + some


def _clock(wall: datetime, lang: Lang) -> str:
    if lang == "en":
        return f"at {wall:%H:%M}"
    return f"a {'la' if wall.hour == 1 else 'las'} {wall:%H:%M}"


def _moment(hours: Hours, wall: datetime) -> Moment | None:
    """The household's moment that is nearest, if one is near."""
    apart: dict[Moment, timedelta] = {}
    for moment in get_args(Moment):
        shift = (datetime.combine(wall.date(), hours.at(moment)) - wall) % _DAY
        apart[moment] = min(shift, _DAY - shift)
    nearest = min(apart, key=lambda moment: apart[moment])
    return nearest if apart[nearest] <= NEAR else None


def _day(wall: datetime, hours: Hours, lang: Lang, *, dated: bool) -> str:
    """Tuesday evening; Tuesday 17 March in the evening; martes por la noche."""
    moment = _moment(hours, wall)
    day = _WEEKDAYS[lang][wall.weekday()]
    if lang == "en":
        if dated:
            day += f" {wall.day} {_MONTHS[lang][wall.month - 1]}"
        if moment is None:
            return f"{day} {_clock(wall, lang)}"
        short = "night" if moment == "bedtime" else moment
        return f"{day} {_WHEN[lang][moment][0]}" if dated else f"{day} {short}"
    if dated:
        day += f" {wall.day} de {_MONTHS[lang][wall.month - 1]}"
    if moment is None:
        return f"{day} {_clock(wall, lang)}"
    if moment in ("evening", "bedtime"):
        return f"{day} por la {'tarde' if wall.time() < _TEA and wall.hour > 4 else 'noche'}"
    return f"{day} {_WHEN[lang][moment][0]}"


def _and(parts: Sequence[str], lang: Lang) -> str:
    if len(parts) == 1:
        return parts[0]
    return f"{', '.join(parts[:-1])} {'and' if lang == 'en' else 'y'} {parts[-1]}"
