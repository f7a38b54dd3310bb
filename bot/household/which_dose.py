"""Which doses are meant by words that name no medicine: "both", "the liquid", "15 ml".

A form or a number picks only from what is due and was prompted. What fits nothing, or leaves a
choice, is asked; an amount far above the ordered one is too much medicine.
"""

from __future__ import annotations

import re
from collections.abc import Collection, Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from fractions import Fraction

from bot.dosing.dosing import line_for
from bot.household.giving import Backing, backing, plainly
from bot.household.reading_context import context_for
from bot.model.chart import Chart, Line, Person
from bot.model.observation import Observation
from bot.model.plan import Medicine
from bot.model.quantity import SOLID
from bot.model.reading import Reading
from bot.plan.amount_reader import said
from bot.plan.amount_words import Measure
from bot.reading import read

DOUBLE, TOO_MUCH = 2, 3
"""So many times the ordered amount is a double dose, and an overdose. Common practice, from
memory: the reader of replies takes three tablets at once for an overdose, too."""
_LATELY = timedelta(hours=12)

_FORMS: tuple[tuple[str, tuple[str, ...]], ...] = (
    (r"liquids?|syrup|suspension|liquido|jarabe", ("liquid",)),
    (r"drops?|gotas?", ("drop",)),
    (r"capsules?|caps|capsulas?", ("capsule",)),
    (r"tablets?|tabs?|tabletas?|comprimidos?", ("tablet", "chew")),
    (r"chews?|chewables?|masticables?", ("chew",)),
    (r"pills?|pastillas?", SOLID),
)
_COUNTS: tuple[tuple[int, str], ...] = (
    (
        1,
        r"(?:the|his|her|its|one|la|el|su)(?: \w+)? "
        r"(?:pill|tablet|capsule|chew|pastilla|tableta|capsula|comprimido)",
    ),
    (
        2,
        r"both(?! (?:hands|of us|thumbs|arms|eyes|legs|paws|sides))"
        r"|ambos|ambas|(?:los|las) dos(?! manos)",
    ),
    (3, r"all (?:three|3)|(?:los|las) (?:tres|3)"),
    (4, r"all (?:four|4)|(?:los|las) (?:cuatro|4)"),
)


def told_given(
    chart: Chart, person: Person, text: str, reading: Reading, moment: datetime
) -> Reading:
    """The reading without a "given" that the words do not bear out (``giving``)."""
    given = [one for one in reading.observations if _is_given(one)]
    if not given or "dose" in reading.bare or reading.round:
        return reading
    alone = read(text, context_for(chart, "none", person, moment))
    only_asked = not any(_is_given(one) for one in alone.observations)
    names = (chart.name, *(one.name for one in chart.plan.medicines))
    left = list(reading.observations)
    found = set()
    for one in given:
        made = backing(text, one.span, only_asked=only_asked, names=names)
        if made is not Backing.given:
            found.add(made)
            left.remove(one)
    if not found:
        return reading
    if found == {Backing.asked}:
        if not any(one.value == "question" for one in left):
            left.append(Observation("request", "question"))
        return replace(reading, observations=tuple(left), questions=("dose",))
    return replace(reading, observations=tuple(left), understood=False)


def _is_given(seen: Observation) -> bool:
    return (seen.about, seen.value) == ("dose", "given")


def counted(text: str, reading: Reading) -> Reading:
    """ "Both" is two of those that are due, never the first two of the plan."""
    if reading.round:
        return reading
    count, plain = number_of(text), plainly(text)
    given = [one for one in reading.observations if _is_given(one) and one.med]
    if count is None or len(given) < count or len({one.span for one in given}) > 1:
        return reading
    if any(_named(one.med or "", plain) for one in given):
        return reading
    left = [one for one in reading.observations if one not in given]
    one = replace(given[0], med=None, count=count)
    return replace(reading, observations=(*left, one))


def number_of(text: str) -> int | None:
    """How many medicines "both" or "all three" says."""
    plain = plainly(text)
    return next((n for n, words in _COUNTS if re.search(rf"\b(?:{words})\b", plain)), None)


def _named(med: str, plain: str) -> bool:
    return any(len(word) > 3 and word[:4] in plain for word in plainly(med).split())


def picked(
    chart: Chart, waiting: Sequence[Line], text: str, seen: Observation, moment: datetime
) -> tuple[str, ...] | None:
    """The medicines that a form or a number means; empty where the words say neither, None
    where it must be asked which."""
    if seen.med is not None or seen.about != "dose" or seen.value == "doubled":
        return ()
    names = tuple(dict.fromkeys(line.item.med for line in waiting if line.item.med))
    meds = {one.name: one for one in chart.plan.medicines}
    each, count = _forms(text, {_form(one) for one in meds.values()}), number_of(text)
    if not each and count is None:
        return ()
    if len(each) > 1 and count == 1:
        count = None  # "the tablet and the capsules"
    forms = {form for one in each for form in one}
    fit = [name for name in names if name in meds and _fits(meds[name], forms)]
    if not fit and forms and seen.value == "given":
        # Noted already: whether it is the same one is asked of it alone.
        fit = [
            one.name
            for one in meds.values()
            if _fits(one, forms)
            and (line := line_for(chart, one.name, moment)) is not None
            and line.choice == "given"
            and line.at is not None
            and moment - line.at < _LATELY
        ]
    known = any(one.in_figures or one.form for one in meds.values())
    if not fit and not known:
        fit = list(names)  # no order says what form it has
    found = {_form(meds[name]) for name in fit}
    if not fit or (count is not None and count != len(fit)):
        return None
    if known and any(found.isdisjoint(one) for one in each):
        return None  # the tablet and the capsules, where no tablet was due
    return tuple(fit)


def _forms(text: str, ours: Collection[str]) -> list[tuple[str, ...]]:
    """The forms that are named, each as the words that it may mean. A tablet where none is
    ordered is any pill."""
    plain = plainly(text)
    found = [forms for words, forms in _FORMS if re.search(rf"\b(?:{words})\b", plain)]
    return [SOLID if set(one) <= set(SOLID) and not set(one) & set(ours) else one for one in found]


def _fits(medicine: Medicine, forms: Collection[str]) -> bool:
    return not forms or _form(medicine) in forms


def _form(medicine: Medicine) -> str:
    if medicine.form is not None:
        return medicine.form
    return "liquid" if medicine.ml is not None else "tablet"


# -- how much -----------------------------------------------------------------------------------


def too_much(chart: Chart, waiting: Sequence[Line], text: str, reading: Reading) -> Reading:
    """An amount that is told far above the ordered one is no plain dose: too much medicine."""
    told = [
        one for one in reading.observations if one.about == "swallowed" or one.value == "doubled"
    ]
    names = tuple(one.name for one in chart.plan.medicines)
    if told or not names or reading.round:
        return reading
    for clause in re.split(r"[.!?;\n]|,(?!\d)", text):
        found = _far_above(chart, waiting, clause, names)
        if found is not None:
            rest = [one for one in reading.observations if not _is_given(one)]
            return replace(reading, observations=(*rest, found), understood=True, greeting=False)
    return reading


_GIVEN = re.compile(
    r"\b(?:gave|given|got|had|took|taken|swallowed|ate|drank|di|dimos|dio|dieron|dado|tomo|trago)\b"
)
_NOT = re.compile(r"\b(?:not|never|no|nunca|did\s?n.?t|have\s?n.?t)\b")


def _far_above(
    chart: Chart, waiting: Sequence[Line], clause: str, names: Sequence[str]
) -> Observation | None:
    plain = plainly(clause)
    verb = _GIVEN.search(plain)
    before = plain[: verb.start()].removeprefix("oh no") if verb else ""
    if verb is None or _NOT.search(before):
        return None
    span = (verb.start(), verb.end())
    names = (chart.name, *names)
    if backing(clause, span, only_asked=True, names=names) is not Backing.given:
        return None
    meds = [one for one in chart.plan.medicines if _named(one.name, plain)]
    due = {line.item.med for line in waiting}
    meds = meds or [one for one in chart.plan.medicines if one.name in due]
    meds = meds or list(chart.plan.medicines)
    told = [said(plain[verb.end() :], lang) for lang in ("en", "es")]
    measure: Measure
    for measure in ("ml", "drop", "solid", "mg"):
        amount = max((n for one in told for n in one.of(measure)), default=None)
        ordered = {one.name: much for one in meds if (much := _ordered(one, measure)) is not None}
        if amount is None or not ordered:
            continue
        # "Two pills", one of each, are as many as were due of all of them.
        most = sum(ordered.values()) if measure == "solid" else max(ordered.values())
        if amount < DOUBLE * most:
            return None
        med = next(iter(ordered)) if len(ordered) == 1 else None
        if amount >= TOO_MUCH * most:
            return Observation("swallowed", "medicine_overdose", med=med, span=(0, len(clause)))
        return Observation("dose", "doubled", med=med, span=(0, len(clause)))
    return None


def _ordered(medicine: Medicine, measure: Measure) -> Fraction | None:
    match measure:
        case "ml":
            return None if medicine.ml is None else Fraction(str(medicine.ml))
        case "mg":
            return None if medicine.dose_mg is None else Fraction(str(medicine.dose_mg))
        case "drop":
            return medicine.counted if medicine.form == "drop" else None
        case "solid":
            return None if medicine.form in ("drop", "liquid") else medicine.counted
