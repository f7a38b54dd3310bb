"""What speaks against longer walks, in the words of those who told it.

The figures (days, 39.4 °C, 72 hours) are those of the red flags; which sign holds the
walks and which steps them back is common practice, clinic to confirm.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta
from enum import IntEnum

from bot.model.observation import Noted, Observation
from bot.model.text import Text

AFTER_MISHAP = timedelta(hours=72)
"""So long after a mishap, pain, swelling or worse use is taken to come from it."""
BEFORE_MISHAP = timedelta(hours=6)
"""The mishap is often told after what came of it."""
LOOK_BACK = 14
"""Days over which use of the leg is compared."""
FEVER = 39.4
"""°C, compared in tenths."""

_USE = {"none": 0, "toe_touching": 1, "partial": 2, "full": 3}


class Grade(IntEnum):
    """How much a sign weighs: ``doubt`` holds the walks, ``setback`` steps them back."""

    doubt = 1
    setback = 2


@dataclass(frozen=True, slots=True)
class Sign:
    """One thing that was told on ``day`` and speaks against longer walks."""

    day: int
    grade: Grade
    words: Text


def signs(history: Sequence[Noted], first: int, last: int) -> list[Sign]:
    """The signs told on the days ``first`` to ``last`` (both included), each once, the
    heaviest first. Earlier days serve for comparison only; later ones are not looked at."""
    known = sorted((n for n in history if n.day <= last), key=lambda n: n.at)
    found: dict[tuple[int, Text], Sign] = {}
    for noted in known:
        if noted.day < first:
            continue
        seen = _sign(noted, known)
        if seen is None:
            continue
        grade, words = seen
        if noted.observation.unsure:
            grade = Grade.doubt
        before = found.get((noted.day, words))
        if before is None or before.grade < grade:
            found[noted.day, words] = Sign(noted.day, grade, words)
    return sorted(found.values(), key=lambda sign: (-sign.grade, sign.day))


def leg_told(history: Sequence[Noted], first: int, last: int) -> bool:
    """Whether on these days somebody said for sure that the leg is used, and not worse.

    A walk that was "done" does not say how the leg was used.
    """
    return any(
        first <= noted.day <= last
        and not noted.observation.unsure
        and (
            (noted.observation.about == "weight_bearing" and noted.observation.value != "none")
            or (noted.observation.about == "mobility" and noted.observation.value != "worse")
        )
        for noted in history
    )


def _sign(noted: Noted, known: Sequence[Noted]) -> tuple[Grade, Text] | None:
    seen = noted.observation
    lost = _use_lost(noted, known)
    if _worse(seen) or lost is not None:
        mishap = _mishap_near(noted, known)
        if mishap is not None:
            return Grade.setback, _after(mishap, _words(seen))
    if lost is not None:
        return lost
    if seen.trend == "worse" and seen.about == "swelling" and seen.value != "none":
        grade = Grade.setback if noted.day > 3 else Grade.doubt
        return grade, Text(en="swelling that grows", es="hinchazón que crece")
    if seen.about == "temperature" and not (seen.celsius and round(seen.celsius, 1) >= FEVER):
        return None
    if seen.about == "vomiting" and seen.value == "yes" and _vomits(noted, known) < 2:
        return None
    for row in _TABLE:
        if seen.about == row.about and seen.value in row.values and noted.day >= row.from_day:
            return row.grade, row.words
    return None


def _worse(seen: Observation) -> bool:
    """What after a mishap is more than the mishap (the rule ``mishap-then-worse``)."""
    if seen.trend in ("better", "same"):
        return False
    return (
        (seen.about in ("pain", "swelling") and seen.value != "none")
        or (seen.about == "mobility" and seen.value == "worse")
        or (seen.about == "weight_bearing" and (seen.value == "none" or seen.trend == "worse"))
    )


def _use_lost(noted: Noted, known: Sequence[Noted]) -> tuple[Grade, Text] | None:
    """The leg is used less than at best in the two weeks before."""
    seen = noted.observation
    if seen.about != "weight_bearing":
        return None
    if seen.detail == "sudden" or seen.trend == "worse":
        return Grade.setback, LESS_USE
    best = max(
        (
            _USE[one.observation.value]
            for one in known
            if one.observation.about == "weight_bearing"
            and one.at < noted.at
            and noted.day - LOOK_BACK <= one.day
        ),
        default=0,
    )
    now = _USE[seen.value]
    if now >= best:
        return None
    if seen.value == "partial":
        return Grade.doubt, Text(en="a limp again", es="otra vez cojea")
    return Grade.setback, LESS_USE


def _mishap_near(noted: Noted, known: Sequence[Noted]) -> Observation | None:
    near = [
        one
        for one in known
        if one.observation.about == "mishap" and -BEFORE_MISHAP <= noted.at - one.at <= AFTER_MISHAP
    ]
    return near[-1].observation if near else None


def _vomits(noted: Noted, known: Sequence[Noted]) -> int:
    """How often in the 24 hours up to this."""
    return sum(
        one.observation.count or 1
        for one in known
        if one.observation.about == "vomiting"
        and one.observation.value != "no"
        and timedelta() <= noted.at - one.at <= timedelta(hours=24)
    )


def _words(seen: Observation) -> Text:
    if seen.about == "weight_bearing":
        return LESS_USE
    rows = (row for row in _TABLE if row.about == seen.about and seen.value in row.values)
    return next(rows).words


def _after(mishap: Observation, then: Text) -> Text:
    first = _words(mishap)
    return Text(en=f"{first.en}, then {then.en}", es=f"{first.es} y después {then.es}")


LESS_USE = Text(en="less use of the leg", es="usa menos la pata")


@dataclass(frozen=True, slots=True)
class _Row:
    about: str
    values: frozenset[str]
    grade: Grade
    words: Text
    from_day: int = 0


def _row(grade: Grade, said: str, en: str, es: str, from_day: int = 0) -> _Row:
    about, _, values = said.partition(": ")
    return _Row(about, frozenset(values.split(", ")), grade, Text(en=en, es=es), from_day)


_TABLE: tuple[_Row, ...] = (
    # The leg. Of rows for the same value the first that holds on the day counts.
    _row(Grade.setback, "leg: crooked", "a crooked leg", "la pata torcida"),
    _row(Grade.setback, "leg: paralysed", "both hind legs dragging", "arrastra las patas de atrás"),
    _row(Grade.setback, "fixator: loose, bent", "trouble with the frame",
         "problemas con el fijador"),
    _row(Grade.setback, "mobility: worse", "worse use of the leg", "usa peor la pata"),
    _row(Grade.setback, "weight_bearing: none", "the leg not put down", "no apoya la pata", 15),
    _row(Grade.doubt, "weight_bearing: none", "the leg not put down", "no apoya la pata", 4),
    _row(Grade.setback, "pain: severe", "strong pain", "mucho dolor"),
    _row(Grade.setback, "pain: moderate", "signs of pain", "señales de dolor"),
    _row(Grade.doubt, "pain: mild", "a bit sore", "un poco de dolor", 8),
    _row(Grade.setback, "swelling: marked", "a lot of swelling", "mucha hinchazón", 4),
    _row(Grade.doubt, "swelling: marked", "a lot of swelling", "mucha hinchazón"),
    _row(Grade.doubt, "swelling: mild", "some swelling", "algo de hinchazón", 8),
    _row(Grade.doubt, "mishap: jumped", "a jump", "un salto"),
    _row(Grade.doubt, "mishap: ran", "a run", "una carrera"),
    _row(Grade.doubt, "mishap: stairs", "stairs", "escaleras"),
    _row(Grade.doubt, "mishap: fell", "a fall", "una caída"),
    _row(Grade.doubt, "mishap: slipped", "a slip", "un resbalón"),
    _row(Grade.doubt, "mishap: rough_play", "rough play", "juego brusco"),
    # The cut and what covers it.
    _row(Grade.doubt, "incision: pus, odour", "pus or a smell at the cut", "pus o mal olor"),
    _row(Grade.doubt, "incision: open, bleeding", "the cut open or bleeding",
         "la herida abierta o sangra"),
    _row(Grade.doubt, "bandage: wet, slipped, odour, tight", "trouble with the bandage",
         "problemas con el vendaje"),
    # Unwell in itself: whatever gives a red flag of the same day or sooner.
    _row(Grade.doubt, "breathing: laboured", "hard breathing", "le cuesta respirar"),
    _row(Grade.doubt, "gums: pale, blue, yellow", "the colour of the gums",
         "el color de las encías"),
    _row(Grade.doubt, "energy: collapsed", "a collapse", "un desmayo"),
    _row(Grade.doubt, "energy: lethargic", "weak and dull", "sin fuerzas", 2),
    _row(Grade.doubt, "seizure: yes", "a seizure", "una convulsión"),
    _row(Grade.doubt, "temperature: measured", "a fever", "fiebre"),
    _row(Grade.doubt, "belly: bloated", "a bloated belly", "la panza hinchada"),
    _row(Grade.doubt, "vomiting: yes, bloody", "vomiting", "vómito"),
    _row(Grade.doubt, "appetite: none", "not eating", "no come", 2),
    _row(Grade.doubt, "drinking: none", "not drinking", "no bebe"),
    _row(Grade.doubt, "stool: black, bloody, straining", "trouble pooping",
         "problemas con el popó"),
    _row(Grade.doubt, "urine: none, bloody, straining", "trouble peeing",
         "problemas con el pipí"),
    _row(Grade.doubt, "swallowed: medicine_overdose, human_medicine, poison, bandage_or_object",
         "something swallowed", "algo que se tragó"),
    _row(Grade.doubt, "allergy: hives, swollen_face", "an allergic reaction",
         "una reacción alérgica"),
    _row(Grade.doubt, "dose: doubled", "a double dose", "una dosis doble"),
    _row(Grade.setback, "life: died", "a death", "un fallecimiento"),
)  # fmt: skip
