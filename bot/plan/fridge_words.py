"""The words of the page for the fridge, in both languages."""

from __future__ import annotations

from datetime import date
from typing import Final

from bot.model.text import Lang, Text

_MONTHS: Final = {
    "en": ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"),
    "es": ("ene", "feb", "mar", "abr", "may", "jun", "jul", "ago", "sep", "oct", "nov", "dic"),
}
_DAYS: Final = {
    "en": ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"),
    "es": ("lunes", "martes", "miércoles", "jueves", "viernes", "sábado", "domingo"),
}

PHONE = Text(en="Phone", es="Teléfono")
PHONE_SHUT = Text(en="When it is closed", es="Si está cerrada")
CLINIC = Text(en="The clinic", es="La clínica")
EMERGENCY = Text(en="Emergency hospital", es="Hospital de urgencias")
PHONE_NOW = Text(en="PHONE NOW, day or night:", es="LLAME YA, de día o de noche:")
RED_FLAGS = (
    Text(en="hard breathing", es="le cuesta respirar"),
    Text(en="pale or blue gums", es="encías pálidas o azules"),
    Text(en="collapsed, or can't be woken", es="se desploma o no despierta"),
    Text(en="a seizure", es="una convulsión"),
    Text(en="bleeding: a lot, or it won't stop", es="sangra mucho, o no para"),
    Text(
        en="cut open: flesh, bone or metal shows", es="herida abierta: se ve carne, hueso o metal"
    ),
    Text(en="leg bent or dangling", es="pata torcida o colgando"),
    Text(en="bloated belly, or retching in vain", es="panza hinchada, o arcadas sin sacar nada"),
    Text(en="blood in vomit", es="vómito con sangre"),
    Text(en="no pee for 24 hours", es="24 horas sin pipí"),
    Text(en="swallowed pills or poison", es="tragó pastillas o veneno"),
    Text(en="105 °F (40.5 °C) or more", es="40.5 °C (105 °F) o más"),
)
"""The red flags that are emergencies (``flows/red-flags.yaml``), in an owner's words."""
TWO_WEEKS = Text(en="Tick when done", es="Marque lo hecho")
DAY = Text(en="day", es="día")
ON_HOLD = Text(en="ON HOLD: not until we say so", es="EN ESPERA: no antes de que avisemos")
IF_NEEDED = Text(en="if needed", es="si hace falta")
BY_DAY = Text(en="by day", es="de día")
WITH_FOOD = Text(en="with food", es="con comida")
UNTIL = Text(en="until {date}", es="hasta el {date}")
WALKS = Text(en="Walks", es="Paseos")
WALKS_REST = Text(en="minutes below", es="minutos abajo")
CONE_ROW = Text(en="Cone on", es="Cono puesto")
CONE_ROW_REST = Text(en="all night", es="toda la noche")
DOSES = Text(
    en="Missed one? Never give two at once. Not sure? Phone before you give it.",
    es="¿Se pasó una? Nunca dé dos juntas. ¿Tiene duda? Llame antes de darla.",
)
CONE = Text(en="Cone", es="Cono")
BANDAGE = Text(en="Bandage", es="Vendaje")
FRAME = Text(en="Frame", es="Fijador")
HIP_CHECK = Text(en="Hip check", es="Control de cadera")
AT_LEAST = Text(en="to {date} at least", es="al menos al {date}")
UNTIL_WE_SAY = Text(en="it stays until we say so", es="se queda hasta que le avisemos")
RECHECK = Text(en="Recheck", es="Revisión")
XRAYS = Text(en="X-rays", es="Radiografías")
ABOUT = Text(en="about {date}", es="hacia el {date}")
BOOK = Text(en="book by {date}", es="pida cita antes del {date}")
APPOINTMENT = Text(en="Appointment:", es="Cita:")
WALK_WEEKS = Text(
    en="Walks on a short leash: the longest for each week. If we tell you less, write it in.",
    es="Paseos con correa corta: lo más largo de cada semana. Si le decimos menos, anótelo.",
)
REST_WEEKS = Text(en="Week by week: tick each one off.", es="Semana a semana: márquelas.")
WEEK = Text(en="Week {number}", es="Semana {number}")
MINUTES = Text(en="{minutes} min", es="{minutes} min")
OUTINGS = Text(en="{outings} × a day", es="{outings} × al día")
FOOTER = Text(
    en="Made from {clinician}'s orders. What the clinic or the chat tells you later goes before "
    "this page: a dose may move, a walk may stay shorter. No vet watches the chat at all hours: "
    "for anything urgent, phone.",
    es="Hecho con las indicaciones de {clinician}. Lo que la clínica o el chat le digan después "
    "vale más que esta hoja: una dosis puede moverse, un paseo puede quedar más corto. Nadie "
    "vigila el chat a toda hora: si es urgente, llame.",
)
SURGERY = Text(en="surgery {date}", es="cirugía {date}")


def day_name(day: date, lang: Lang) -> str:
    """Three letters: Tue, mar."""
    return _DAYS[lang][day.weekday()][:3]


def date_words(day: date, lang: Lang) -> str:
    """A date as people write it: Tuesday 3 Mar, martes 3 mar."""
    return f"{_DAYS[lang][day.weekday()]} {day.day} {_MONTHS[lang][day.month - 1]}"


def short_date(day: date, lang: Lang) -> str:
    """The same where there is little room: Tue 3 Mar, mar 3 mar."""
    return f"{day_name(day, lang)} {day.day} {_MONTHS[lang][day.month - 1]}"


def month_words(day: date, lang: Lang) -> str:
    """Month and year: Mar 2026."""
    return f"{_MONTHS[lang][day.month - 1]} {day.year}"


def span_words(first: date, last: date, lang: Lang) -> str:
    """Some days in a row: 3–9 Mar, 31 Mar–6 Apr."""
    end = f"{last.day} {_MONTHS[lang][last.month - 1]}"
    if first == last:
        return end
    if first.month == last.month:
        return f"{first.day}–{end}"
    return f"{first.day} {_MONTHS[lang][first.month - 1]}–{end}"
