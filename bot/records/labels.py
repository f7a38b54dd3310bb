"""Words of the records that leave the system, in both languages."""

from __future__ import annotations

from datetime import date, datetime
from typing import Final

from bot.context.words import date_of
from bot.model.text import Lang, Text

TOPICS: Final[dict[str, Text]] = {
    "weight_bearing": Text(en="Use of the leg", es="Uso de la pata"),
    "mobility": Text(en="Against earlier days", es="Frente a días anteriores"),
    "pain": Text(en="Pain", es="Dolor"),
    "incision": Text(en="Incision", es="Herida"),
    "swelling": Text(en="Swelling", es="Hinchazón"),
    "bruising": Text(en="Bruising", es="Moretón"),
    "licking": Text(en="Licking", es="Lamido"),
    "appetite": Text(en="Appetite", es="Apetito"),
    "drinking": Text(en="Drinking", es="Agua"),
    "vomiting": Text(en="Vomiting", es="Vómito"),
    "stool": Text(en="Stool", es="Heces"),
    "urine": Text(en="Urine", es="Orina"),
    "energy": Text(en="Energy", es="Energía"),
    "temperature": Text(en="Temperature", es="Temperatura"),
    "breathing": Text(en="Breathing", es="Respiración"),
    "gums": Text(en="Gums", es="Encías"),
    "seizure": Text(en="Seizure", es="Convulsión"),
    "belly": Text(en="Belly", es="Barriga"),
    "swallowed": Text(en="Swallowed", es="Tragó algo"),
    "leg": Text(en="Shape of the leg", es="Forma de la pata"),
    "other_leg": Text(en="Another leg", es="Otra pata"),
    "allergy": Text(en="Allergy", es="Alergia"),
    "life": Text(en="Death", es="Fallecimiento"),
    "mishap": Text(en="Mishap", es="Percance"),
    "bandage": Text(en="Bandage", es="Vendaje"),
    "fixator": Text(en="External fixator", es="Fijador externo"),
    "cone": Text(en="Cone", es="Cono"),
}
"""Topics of the summary, in their order there."""

URGENCY: Final[dict[str, Text]] = {
    "emergency": Text(en="emergency", es="emergencia"),
    "same_day": Text(en="same day", es="mismo día"),
    "next_day": Text(en="next day", es="día hábil"),
    "none": Text(en="log only", es="registro"),
}

KINDS: Final[dict[str, Text]] = {
    "said": Text(en="said", es="dijo"),
    "tapped": Text(en="tapped", es="tocó"),
    "sent": Text(en="sent", es="enviado"),
    "queued": Text(en="not arrived yet", es="aún no llega"),
    "noted": Text(en="noted", es="anotado"),
    "finding": Text(en="rule", es="regla"),
    "case": Text(en="case", es="caso"),
    "page": Text(en="paged", es="avisado"),
    "staff": Text(en="wrote", es="escribió"),
    "note": Text(en="note", es="nota"),
    "picture": Text(en="picture", es="foto"),
    "unanswered": Text(en="no answer", es="sin respuesta"),
    "not_sent": Text(en="not sent", es="no enviado"),
    "confirmed": Text(en="order confirmed", es="orden confirmada"),
    "enrolled": Text(en="enrolled", es="inscrito"),
    "joined": Text(en="joined", es="se unió"),
    "left": Text(en="left", es="salió"),
    "plan": Text(en="plan", es="plan"),
    "undone": Text(en="took back", es="retiró"),
    "unclear": Text(en="not understood", es="no entendido"),
    "ended": Text(en="ended", es="terminado"),
    "link": Text(en="link", es="enlace"),
    "failed": Text(en="failed", es="falló"),
    "erased": Text(en="erased", es="borrado"),
}
"""Kinds of entries, as the printed log names them; any other by its own word."""

WORDS: Final[dict[str, Text]] = {
    "title": Text(en="Summary since discharge", es="Resumen desde el alta"),
    "log_title": Text(en="Whole log", es="Registro completo"),
    "patient": Text(en="Patient", es="Paciente"),
    "dog": Text(en="dog", es="perro"),
    "cat": Text(en="cat", es="gato"),
    "procedure": Text(en="Procedure", es="Cirugía"),
    "surgery": Text(en="Surgery", es="Fecha de cirugía"),
    "home": Text(en="Went home", es="Alta"),
    "clinician": Text(en="Clinician", es="Veterinario"),
    "carers": Text(en="Cared for by", es="Al cuidado de"),
    "protocol": Text(en="Protocol", es="Protocolo"),
    "course": Text(en="Course", es="Curso"),
    "active": Text(en="under way, day {day}", es="en curso, día {day}"),
    "paused": Text(en="paused, day {day}", es="en pausa, día {day}"),
    "ended": Text(en="ended {date} (day {day})", es="terminó el {date} (día {day})"),
    "heard": Text(en="Last heard from", es="Última noticia"),
    "never": Text(en="never", es="nunca"),
    "told_now": Text(en="As last told", es="Lo último dicho"),
    "topic": Text(en="Topic", es="Tema"),
    "last": Text(en="Last told", es="Último"),
    "worst": Text(en="Worst told", es="Lo peor"),
    "day": Text(en="day {day}", es="día {day}"),
    "unsure": Text(en="unsure", es="con dudas"),
    "milestones": Text(en="Milestones", es="Hitos"),
    "toe_touching": Text(en="First touched the ground", es="Primer apoyo"),
    "full": Text(en="First full weight", es="Primer apoyo completo"),
    "not_yet": Text(en="not told yet", es="aún no se ha dicho"),
    "pictures": Text(en="Pictures and films", es="Fotos y videos"),
    "wound_check": Text(en="Wound healed? (day {day})", es="¿Sanó la herida? (día {day})"),
    "medicines": Text(en="Medicines", es="Medicinas"),
    "medicine": Text(en="Medicine and dose", es="Medicina y dosis"),
    "regimen": Text(en="As ordered", es="Según la orden"),
    "every": Text(en="every {hours} h, {days} days from {date}",
                  es="cada {hours} h, {days} días desde el {date}"),
    "as_needed": Text(en="as needed, at most every {hours} h",
                      es="según necesidad, máximo cada {hours} h"),
    "stopped": Text(en="stopped {date}", es="suspendida el {date}"),
    "paused_since": Text(en="none since {date}, until staff say so",
                         es="ninguna desde el {date}, hasta nuevo aviso"),
    "withheld": Text(en="none from {since} to {until}", es="ninguna del {since} al {until}"),
    "walks_now": Text(en="walks: {minutes} min each, {outings} a day",
                      es="paseos: {minutes} min cada uno, {outings} al día"),
    "given": Text(en="Given", es="Dadas"),
    "missed": Text(en="Not given", es="No dadas"),
    "not_told": Text(en="Not told", es="Sin respuesta"),
    "covered": Text(en="Days covered", es="Días cubiertos"),
    "sessions": Text(en="Sessions", es="Sesiones"),
    "session": Text(en="Session", es="Sesión"),
    "done": Text(en="Done", es="Hechas"),
    "skipped": Text(en="Skipped", es="Omitidas"),
    "of": Text(en="{part} of {whole}", es="{part} de {whole}"),
    "changes": Text(en="Changes to the plan, and notes", es="Cambios del plan y notas"),
    "more_changes": Text(en="and {n} earlier; they are in the whole log",
                         es="y {n} anteriores; están en el registro completo"),
    "cases": Text(en="Matters for staff", es="Asuntos para el equipo"),
    "when": Text(en="When", es="Cuándo"),
    "why": Text(en="What was told, and why it was a case", es="Qué se dijo y por qué fue un caso"),
    "done_about": Text(en="What staff did", es="Qué hizo el equipo"),
    "no_cases": Text(en="None.", es="Ninguno."),
    "more_cases": Text(en="and {n} more, less urgent; they are in the whole log",
                       es="y {n} más, menos urgentes; están en el registro completo"),
    "acknowledged": Text(en="taken after {time} ({by})", es="tomado a los {time} ({by})"),
    "answered": Text(en="answered after {time} ({by})", es="respondido a los {time} ({by})"),
    "closed": Text(en="closed {date} ({by})", es="cerrado el {date} ({by})"),
    "open": Text(en="still open", es="sigue abierto"),
    "asked_again": Text(en="{n} messages", es="{n} mensajes"),
    "gaps": Text(en="Gaps", es="Lagunas"),
    "gap_unanswered": Text(
        en="lines of prompts without an answer: {n} of {of}",
        es="líneas de avisos sin respuesta: {n} de {of}",
    ),
    "gap_unclear": Text(
        en="replies not understood at once: {n}", es="respuestas no entendidas de inmediato: {n}"
    ),
    "gap_corrected": Text(
        en="observations corrected or taken back: {n} (kept in the log)",
        es="observaciones corregidas o retiradas: {n} (siguen en el registro)",
    ),
    "gap_none": Text(en="none", es="ninguna"),
    "told": Text(
        en="Told by the household by chat, and read by a program; not examined. It is no "
        "diagnosis and does not replace the examination.",
        es="Dicho por el hogar en el chat y leído por un programa; no examinado. No es un "
        "diagnóstico y no sustituye al examen.",
    ),
    "seal": Text(
        en="Made {at} from {n} entries of the log. Last entry of the practice's log: {entry}, "
        "sealed {hash}",
        es="Hecho el {at} con {n} entradas del registro. Última entrada del registro de la "
        "clínica: {entry}, sello {hash}",
    ),
    "nothing_sealed": Text(en="Made {at}; nothing is logged.", es="Hecho el {at}; sin registro."),
    "ready": Text(en="ready since {time}", es="lista desde las {time}"),
    "page": Text(en="page {n} of {of}", es="página {n} de {of}"),
    "time": Text(en="Time", es="Hora"),
    "who": Text(en="Who", es="Quién"),
    "what": Text(en="What", es="Qué"),
    "words": Text(en="Words", es="Palabras"),
    "zone": Text(en="times of {zone}", es="horas de {zone}"),
    "chart_day": Text(en="day after surgery", es="día después de la cirugía"),
    "case_marks": Text(en="matters", es="asuntos"),
}  # fmt: skip


def label(key: str, lang: Lang, **fields: object) -> str:
    """The words under ``key``."""
    return WORDS[key].say(lang, **fields)


def full_date(on: date, lang: Lang) -> str:
    """A date with its year: 4 Mar 2026."""
    return f"{date_of(datetime(on.year, on.month, on.day), lang)} {on.year}"


def span(minutes: float) -> str:
    """A wait in few characters: 22 min, 3 h 05 min, 2 d 4 h."""
    whole = round(minutes)
    if whole < 60:
        return f"{whole} min"
    hours, rest = divmod(whole, 60)
    if hours < 48:
        return f"{hours} h {rest:02d} min" if rest else f"{hours} h"
    days, hours = divmod(hours, 24)
    return f"{days} d {hours} h"
