"""Numbers and units as they stand in the words of an amount, in both languages."""

from __future__ import annotations

from fractions import Fraction
from typing import Final, Literal

from bot.model.text import Lang

Measure = Literal["solid", "drop", "ml", "mg"]
"""What a number counts. Tablets and capsules are one kind: people call both pills."""

_UNITS: Final[tuple[tuple[Measure, str, str], ...]] = (
    ("solid", "1", "tablet tablets tab tabs tableta tabletas comprimido comprimidos comp comps"
     " pastilla pastillas pill pills caplet caplets chew chews chewable chewables masticable"
     " masticables capsule capsules cap caps capsula capsulas"),
    ("drop", "1", "drop drops gota gotas gtt gtts"),
    ("ml", "1", "ml mls cc milliliter milliliters millilitre millilitres mililitro"
     " mililitros"),
    ("mg", "1", "mg mgs milligram milligrams miligramo miligramos"),
    ("mg", "1000", "g gram grams gramo gramos"),
    ("mg", "1/1000", "mcg ug microgram micrograms microgramo microgramos"),
)  # fmt: skip
UNITS: Final = {
    word: (measure, Fraction(times)) for measure, times, words in _UNITS for word in words.split()
}
CHEWABLE: Final = frozenset("chewable chewables masticable masticables".split())

_ENGLISH: Final = (
    "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen"
    " sixteen seventeen eighteen nineteen twenty"
).split()
_SPANISH: Final = (
    "uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince"
    " dieciseis diecisiete dieciocho diecinueve veinte veintiuno veintidos veintitres"
    " veinticuatro veinticinco veintiseis veintisiete veintiocho veintinueve"
).split()
_TENS: Final = {
    "en": "thirty forty fifty sixty seventy eighty ninety".split(),
    "es": "treinta cuarenta cincuenta sesenta setenta ochenta noventa".split(),
}
WHOLE: Final[dict[Lang, dict[str, int]]] = {
    "en": {word: number for number, word in enumerate(_ENGLISH, 1)}
    | {word: 10 * tens for tens, word in enumerate(_TENS["en"], 3)}
    | {"hundred": 100, "couple": 2, "pair": 2, "dozen": 12},
    "es": {word: number for number, word in enumerate(_SPANISH, 1)}
    | {word: 10 * tens for tens, word in enumerate(_TENS["es"], 3)}
    | {"un": 1, "una": 1, "veintiun": 21, "veintiuna": 21, "cien": 100, "ciento": 100, "par": 2,
       "docena": 12, "doscientos": 200, "trescientos": 300, "cuatrocientos": 400,
       "quinientos": 500},
}  # fmt: skip
PARTS: Final[dict[Lang, dict[str, Fraction]]] = {
    "en": {"half": Fraction(1, 2), "halves": Fraction(1, 2), "third": Fraction(1, 3),
           "thirds": Fraction(1, 3), "quarter": Fraction(1, 4), "quarters": Fraction(1, 4),
           "fourth": Fraction(1, 4), "fourths": Fraction(1, 4), "eighth": Fraction(1, 8)},
    "es": {"media": Fraction(1, 2), "medio": Fraction(1, 2), "mitad": Fraction(1, 2),
           "mitades": Fraction(1, 2), "tercio": Fraction(1, 3), "tercios": Fraction(1, 3),
           "tercera": Fraction(1, 3), "cuarto": Fraction(1, 4), "cuartos": Fraction(1, 4),
           "cuarta": Fraction(1, 4), "octavo": Fraction(1, 8)},
}  # fmt: skip
GLYPHS: Final = {
    "½": "1/2", "¼": "1/4", "¾": "3/4", "⅓": "1/3", "⅔": "2/3", "⅛": "1/8",
}  # fmt: skip
ONE: Final[dict[Lang, frozenset[str]]] = {
    "en": frozenset(("a", "an", "one")),
    "es": frozenset(("un", "una")),
}
"""What makes one of the thing that follows."""
OF: Final = frozenset(("of", "de"))
AND: Final = frozenset(("and", "y", "con", "plus", "mas", "+", "&"))
TO: Final = {
    "en": frozenset(("to", "or", "-")),
    "es": frozenset(("a", "o", "u", "hasta", "-")),
}
"""Between two numbers: a range, which leaves the choice to somebody else."""
UP_TO: Final = (("up", "to"), ("at", "most"), ("hasta",), ("como", "mucho"), ("maximo",), ("max",))
"""Before a number: likewise."""
NO_AMOUNT_AFTER: Final = frozenset(
    "h hr hrs hour hours hora horas d day days dia dias week weeks semana semanas month months mes"
    " meses min mins minute minutes minuto minutos time times vez veces am pm o'clock kg kgs lb lbs"
    " kilo kilos pound pounds dose doses dosis meal meals comida comidas".split()
)
"""Words behind a number that make it no amount: every 12 hours, 7 days, 3 times."""
NO_AMOUNT_BEFORE: Final = frozenset(
    "at las day days dia dias # until before after every cada".split()
)
