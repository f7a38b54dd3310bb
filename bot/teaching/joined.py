"""Sentences made of labelled ones: weightless words before or behind, and plain answers."""

from __future__ import annotations

import re
from collections.abc import Iterator
from zlib import crc32

from bot.model.urgency import Urgency

from .rows import Labelled, renamed

_HEADS = """
sorry to bother you|ok so dont panic but|probably nothing but|quick update|just to say|hi all
not sure if this matters but|i feel silly asking but|morning everyone|hope you are well
hola doctora|buenas noches|perdone la hora|no quiero alarmar pero|una consulta|le cuento que
disculpe la molestia|a lo mejor no es nada pero|le escribo para decirle que
"""
_TAILS = """
hope thats ok|is that normal|thanks so much|sorry for the long message|what do you think
fingers crossed|im so worried|not sure if thats bad|wish id noticed sooner|let me know
hope it settles|poor thing|probably nothing|have a good evening|should i worry
espero que sea normal|no sé si es normal|muchas gracias|es normal eso|quedo atenta
ojalá no sea nada|pobrecito|usted qué opina|perdón por molestar|saludos|estoy preocupada
"""
_PLAIN = {
    "dose": """
gave it {n}|half {n}|given at {n}|he had it at {n}|all his pills in cheese|took all of them fine
one at {n} and one tonight|both given|half a tablet as you said|just gave it|gave him his two
se la di a las {n}|ya le di las dos|a las {n} y media|se tomó todas sus pastillas|media pastilla
""",
    "walk": """
{n} minutes|{n} min round the block|{n} mins twice|did {n}|x3 today|slow lap of the garden
{n} minutos|dimos la vuelta {n} minutos|caminó {n} min despacito|tres veces
""",
    "ice": "{n} minutes|{n} min on|did it|twice {n} min|{n} minutos|ya se lo puse {n} minutos",
    "incision": """
no redness or ooze|no pus no smell|not open at all|no blood no swelling|closed and dry
nothing coming out|no smell no discharge|looks good not red|sin pus ni olor|no está abierta
no sangra ni huele|nada de pus|cerrada y seca|sin enrojecimiento
""",
    "general": """
no vomiting no diarrhea|breathing normal gums pink|no pain that i can see|all good no worries
eating drinking peeing normal|no seizures nothing odd|no vómito ni diarrea|respira normal
encías rosadas|sin dolor|todo normal|come y bebe bien|no se ha caído|hizo pipí y popó normal
""",
    "bathroom": """
normal poop and pee|peed {n} times|no blood no straining|firm and brown|pipí normal
popó normal sin sangre|hizo {n} veces|no se esfuerza
""",
    "bandage": "dry and in place|not wet not slipped|toes warm|toes warm not swollen|seco y firme"
    "|no está mojado|dedos tibios|no huele",
}  # fmt: skip


_GIVEN = """
gave|just gave|ok gave|gave him|gave her|i gave|just given|he ate|she took|he took|she had
le di|ya le di|le acabo de dar|se tomó|ya se tomó|le dimos
"""
_DUE = {
    "en": """
    the {med}|{med}|his {med}|everything|all of them|all three|all 3|both|all his pills
    all her tablets|his meds|the tablets|half a tablet|his pill|{n} ml of {med}|1.5 ml of the {med}
    1 capsule and 0.{n} ml|one capsule of {med}|3 ml|the syrup
    """,
    "es": """
    el {med}|{med}|todo|todas|las tres|las 3|las dos|todas las pastillas|sus pastillas
    sus medicinas|la pastilla|media pastilla|todas las medicinas|{n} ml de {med}|1.5 ml de {med}
    1 cápsula y 0.{n} ml|una cápsula de {med}|3 ml|el jarabe
    """,
}
_WHEN = {
    "en": "||at {n}|at half past {n}|with breakfast|in cheese|this morning|and he pooped too",
    "es": "||a las {n}|a las {n} y media|con el desayuno|en queso|en la mañana|y ya hizo popó",
}
_MEDS = ("carprofen", "tramadol", "gabapentin", "cephalexin", "meloxicam", "trazodone")
_ALONE = """
half past {n}|{n}|at {n}|{n} am|all given|all three given|all three given with breakfast|all in
given|done|dadas|dada|dado|ya dadas|las tres dadas|a las {n}|a las {n} y media|tomada|walks done too
"""
"""Of doses that were due, whatever was asked: no more than that was given, and when."""


def _given() -> Iterator[str]:
    alone = _phrases(_ALONE)
    for number, phrase in enumerate(alone * 3):
        yield phrase.replace("{n}", str(6 + number % 5))
    for verb in _phrases(_GIVEN):
        lang = "es" if "le " in verb or "se " in verb else "en"
        for due in _phrases(_DUE[lang]):
            pick = crc32(f"{verb} {due}".encode())
            times = _WHEN[lang].split("|")
            said = f"{verb} {due} {times[pick % len(times)]}".strip()
            med = _MEDS[pick // 8 % len(_MEDS)]
            yield said.replace("{med}", med).replace("{n}", str(6 + pick // 64 % 5))


def _phrases(text: str) -> list[str]:
    return [one.strip() for line in text.splitlines() for one in line.split("|") if one.strip()]


def joined(rows: list[Labelled]) -> Iterator[Labelled]:
    """Each alarm of the files once more, with words of no weight on one side."""
    heads, tails = _phrases(_HEADS), _phrases(_TAILS)
    for row in rows:
        if not row.kept or row.urgency < Urgency.same_day:
            continue
        pick = crc32(row.text.encode())
        bare = row.text.rstrip(".!? ")
        if pick % 2:
            yield renamed(row, f"{heads[pick // 2 % len(heads)]} {bare}")
        else:
            yield renamed(row, f"{bare} {tails[pick // 2 % len(tails)]}")


_SPANISH = re.compile(r"\b(?:se|le|la|las|los|el|sin|ni|nada|ya|hizo|bien|todo|todas|está|no es)\b")


def _two_in_one() -> Iterator[tuple[str, str]]:
    """Two plain answers in one text, with the topic of the one: no word of either means harm
    because the other stands beside it."""
    doses = [("dose", said) for said in _given()]
    others = [(topic, said.replace("{n}", "10")) for topic, text in _PLAIN.items()
              if topic != "dose" for said in _phrases(text)]  # fmt: skip
    for spanish in (False, True):
        mine = [one for one in doses if bool(_SPANISH.search(one[1])) == spanish]
        theirs = [one for one in others if bool(_SPANISH.search(one[1])) == spanish]
        links = (", ", " y " if spanish else " and ", ". ", " ")
        for number, (topic, said) in enumerate(theirs * 3):
            with_topic, beside = (*mine, *theirs)[number * 7 % len((*mine, *theirs))]
            link = links[number % len(links)]
            yield (topic, f"{said}{link}{beside}") if number % 2 else (
                with_topic, f"{beside}{link}{said}")  # fmt: skip


def plain() -> Iterator[Labelled]:
    """Plain answers in which nothing is wrong, doses under any question."""
    for number, (asked, said) in enumerate(_two_in_one()):
        topic = ("none", asked, "general")[number % 3]
        yield Labelled(said, topic, "dog", 2 + number % 9, "mixed", Urgency.none, frozenset())
    for number, said in enumerate(_given()):
        for asked in ("none", ("dose", "incision", "walk", "general", "cone")[number % 5]):
            yield Labelled(said, asked, "dog", 2 + number % 9, "mixed", Urgency.none, frozenset())
    for asked, text in _PLAIN.items():
        for phrase in _phrases(text):
            figures = ("7", "8", "10", "12") if "{n}" in phrase else ("",)
            for figure in figures:
                said = phrase.replace("{n}", figure)
                yield Labelled(said, asked, "dog", 6, "mixed", Urgency.none, frozenset())
