"""An order against the medicines table: what differs is shown, never changed or refused.

Doses are reckoned from the weight: milligrams given, against mg per lb or per kg as the
source prints it. A dose within the table's tolerance is within (tablets come in steps).
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta
from itertools import combinations
from typing import Final

from bot.model.formulary import KG_PER_LB, Avoid, Drug, Formulary, Limit, Regimen
from bot.model.plan import Medicine, Plan
from bot.model.quantity import SOLID, figure
from bot.model.text import Text

from .dose_finding import DoseFinding, Stated, finding, milligrams
from .dose_jump import jumps
from .medicine_words import (
    AFTER,
    ELSE_USE,
    NOT_SPLIT,
    PARTS,
    PRACTICE,
    SAME,
    SPECIES,
    WHOLE_DROPS,
    FindingKind,
)
from .slots import most_doses

__all__ = [
    "DoseFinding",
    "cautions_for",
    "check_medicines_against",
    "confirm",
    "needs_confirmation",
    "needs_confirmation_of",
    "stop_signs",
    "with_order",
]

EXACT: Final = 1e-9
"""Room for binary fractions only: 0.1 mg/kg of 30 kg is 3 mg."""


def check_medicines_against(plan: Plan, formulary: Formulary) -> list[DoseFinding]:
    """What in the order differs from the table, medicine by medicine; confirmed findings too."""
    found: list[DoseFinding] = []
    for place in range(len(plan.medicines)):
        found += _Check(plan, formulary, place).findings()
    found += _together(plan, formulary)
    return sorted(found, key=lambda one: one.place)


def needs_confirmation_of(
    medicine: Medicine, plan: Plan, formulary: Formulary
) -> list[DoseFinding]:
    """What a clinician must confirm of one ``medicine`` before it stands in a plan that is
    under way: as for a whole order, and what is far from the plan's present order of it."""
    unconfirmed = medicine.model_copy(update={"confirmed_by": None})
    made = with_order(plan, unconfirmed)
    names = [one.name.casefold() for one in made.medicines]
    place = names.index(medicine.name.casefold())
    found = [one for one in needs_confirmation(made, formulary) if one.place == place]
    drug = formulary.find(medicine.name)
    for before in plan.medicines:
        same = before.name.casefold() == medicine.name.casefold()
        if same or (drug is not None and formulary.find(before.name) is drug):
            found += jumps(made, place, before)
    return found


def with_order(plan: Plan, medicine: Medicine) -> Plan:
    """The plan with a new medicine, or with a changed order of one that it has.

    What is withheld stays so: a new order is no word on whether to go on with it. A changed
    order keeps its place, which buttons that wait elsewhere name it by, and its name, by
    which the doses given so far are known.
    """
    names = [one.name.casefold() for one in plan.medicines]
    medicines = list(plan.medicines)
    if medicine.name.casefold() in names:
        place = names.index(medicine.name.casefold())
        before = medicines[place]
        same = {"withheld": before.withheld, "name": before.name}
        medicines[place] = medicine.model_copy(update=same)
    else:
        medicines.append(medicine)
    return Plan.model_validate({**dict(plan), "medicines": tuple(medicines)})


def needs_confirmation(plan: Plan, formulary: Formulary) -> list[DoseFinding]:
    """What a clinician must still confirm or change before the patient is enrolled."""
    return [f for f in check_medicines_against(plan, formulary) if f.asks and not f.confirmed]


def confirm(plan: Plan, formulary: Formulary, by: str) -> Plan:
    """The plan with everything that still waits confirmed ``by`` a clinician."""
    places = {one.place for one in needs_confirmation(plan, formulary)}
    medicines = tuple(
        medicine.model_copy(update={"confirmed_by": by}) if place in places else medicine
        for place, medicine in enumerate(plan.medicines)
    )
    return plan.model_copy(update={"medicines": medicines})


def cautions_for(plan: Plan, formulary: Formulary) -> list[Text]:
    """The cautions of the plan's medicines and of their classes, each once."""
    found: dict[Text, None] = {}
    for medicine in plan.medicines:
        drug = formulary.find(medicine.name)
        if drug is not None:
            for caution in (*formulary.classes[drug.drug_class].cautions, *drug.cautions):
                if plan.species in caution.species:
                    found[caution.text] = None
    return list(found)


def stop_signs(plan: Plan, formulary: Formulary) -> list[tuple[str, Text]]:
    """For the household: each medicine whose class has signs at which it is stopped, by its
    name in the plan. One text that several share stands once, with all their names."""
    found: dict[Text, list[str]] = {}
    for medicine in plan.medicines:
        drug = formulary.find(medicine.name)
        for caution in formulary.classes[drug.drug_class].cautions if drug is not None else ():
            if plan.species in caution.species:
                found.setdefault(caution.text, []).append(medicine.name)
    return [(", ".join(names), text) for text, names in found.items()]


class _Check:
    """One medicine of the plan against the table."""

    def __init__(self, plan: Plan, formulary: Formulary, place: int) -> None:
        self.plan, self.formulary, self.place = plan, formulary, place
        self.medicine = plan.medicines[place]
        self.drug = formulary.find(self.medicine.name)
        self.against: Stated | None = None  # what is stated for the dose that is looked at

    def findings(self) -> list[DoseFinding]:
        if self.drug is None:
            near = self.formulary.near(self.medicine.name)
            unknown = self._say("misspelt", "name", near=near) if near else None
            return [unknown or self._say("unknown", "name"), *self._split(None)]
        if self.medicine.route != "mouth":
            return [self._say("route", "route")]
        near = self.formulary.near(self.medicine.name)
        found = [self._say("slip", "name", near=near)] if near else []
        found += [*self._avoid(self.drug), *self._split(self.drug)]
        if any(one.kind == "avoid" and one.field == "name" for one in found):
            return found
        if self.drug.human:
            found.append(self._say("human", "name", self._source(self.drug.source)))
        elif self.drug.regimens:
            found += self._regimens(self.drug)
        else:
            found.append(self._say("no_dose", "name"))
        return found

    def _avoid(self, drug: Drug) -> Iterator[DoseFinding]:
        for avoid in drug.avoid:
            if self.plan.species in avoid.species and self._has_form(avoid):
                field = "name" if avoid.form == "any" else "form"
                why = {"why": avoid.text}
                yield self._say("avoid", field, self._source(avoid.source), **why)

    def _has_form(self, avoid: Avoid) -> bool:
        liquid = self.medicine.form == "liquid" or self.medicine.ml is not None
        return avoid.form == "any" or liquid or self.medicine.mg_per_ml is not None

    def _split(self, drug: Drug | None) -> Iterator[DoseFinding]:
        units, form = self.medicine.counted, self.medicine.form or "tablet"
        if units is None or units.denominator == 1:
            return
        source, parts = PRACTICE, 4
        odd = 4 % units.denominator > 0  # no tablet cuts so, whatever its own label says
        if form in ("tablet", "chew") and drug is not None and drug.split and not odd:
            parts, source = drug.split.parts, self._source(drug.split.source)
        why = {"capsule": NOT_SPLIT, "drop": WHOLE_DROPS}.get(form, PARTS[parts])
        if form in ("capsule", "drop") or parts % units.denominator:
            amount = self.medicine.amount
            yield self._say("split", "units", source, amount=amount, why=why)

    def _regimens(self, drug: Drug) -> list[DoseFinding]:
        here = [each for each in drug.regimens if self.plan.species in each.species]
        self.against = None
        if not here:
            others = sorted({species for each in drug.regimens for species in each.species})
            return [
                self._say(
                    "species", "name", self._source(drug.regimens[0].source),
                    others=_joined([SPECIES[each] for each in others], " and ", " y "),
                )
            ]  # fmt: skip
        if most_doses(self.medicine) > 1:
            here = [each for each in here if not each.first_dose_only]
        wanted = self.medicine.use
        fitting = [each for each in here if each.use in (None, wanted)] if wanted else here
        told: list[DoseFinding] = []
        self.against = self._stated((fitting or here)[0])
        if not fitting:
            fitting = here
            uses = sorted({each.use.replace("-", " ") for each in here if each.use})
            which: dict[str, object] = {"uses": ", ".join(uses), "use": wanted}
            why = ELSE_USE.fill(which, which)
            told.append(self._say("use", "use", self._source(here[0].source), why=why))
        hours = sorted({each.every_hours for each in fitting})
        tried = [(self._one(each, hours), each) for each in fitting]
        found, regimen = min(tried, key=lambda pair: self._distance(*pair))
        self.against = self._stated(regimen)
        if regimen.restricted is not None:
            source = self._source(regimen.source)
            found = [*found, self._say("use", "name", source, why=regimen.restricted)]
        return [*told, *found]

    def _distance(self, found: list[DoseFinding], regimen: Regimen) -> tuple[bool, int, int]:
        """The stated regimen that the order is nearest to: the same interval goes first."""
        interval = any(one.kind == "interval" for one in found)
        return interval, len(found), abs(regimen.every_hours - self.medicine.every_hours)

    def _one(self, regimen: Regimen, hours: list[int]) -> list[DoseFinding]:
        medicine, source = self.medicine, self._source(regimen.source)
        self.against = self._stated(regimen)
        found: list[DoseFinding] = []
        stated = (regimen.gap_hours or regimen.every_hours, regimen.every_hours)
        most = 10_000 if medicine.as_needed else stated[1]
        if not stated[0] <= medicine.every_hours <= most:
            which = f"{stated[0]}–{stated[1]}" if regimen.gap_hours else ", ".join(map(str, hours))
            told = {"ordered": medicine.every_hours, "stated": which}
            found.append(self._say("interval", "every_hours", source, **told))
            found += self._daily(regimen)
        else:
            found += self._dose(regimen)
        if regimen.gap_hours and medicine.gap_hours < regimen.gap_hours:
            values = {"gap": figure(medicine.gap_hours), "stated": regimen.gap_hours}
            found.append(self._say("gap", "min_gap_hours", source, **values))
        course = regimen.course
        if course is not None:
            values = {"ordered": medicine.days, "stated": course.days}
            if course.kind != "at_least" and medicine.days > course.days:
                found.append(self._say("long", "days", source, **values))
            if course.kind == "at_least" and medicine.days < course.days:
                found.append(self._say("short", "days", source, **values))
        least = regimen.min_weight
        if least is not None and self.plan.weight_kg < least.kg * (1 - EXACT):
            values = {
                "stated": f"{figure(least.value)} {least.unit}",
                "weight": self._weight(least.unit),
            }
            found.append(self._say("light", "name", source, **values))
        return found

    def _dose(self, regimen: Regimen) -> Iterator[DoseFinding]:
        """One dose against the figures; a dose within any printed one is within."""
        mg, limits = self.medicine.dose_mg, regimen.limits
        values: dict[str, object] = {"printed": limits[0].printed, "every": regimen.every_hours}
        source = self._source(regimen.source)
        if mg is None:
            yield self._say("unwritten", "name", source, **values)
            return
        percent = self._percent()
        bounds = [each.bounds_mg(self.plan.weight_kg) for each in limits]
        ups = [high * (1 + percent / 100) * (1 + EXACT) for _, high in bounds]
        downs = [(low or 0) * (1 - percent / 100) * (1 - EXACT) for low, _ in bounds]
        if any(down <= mg <= up for down, up in zip(downs, ups, strict=True)):
            yield from self._day_limit(regimen)
            return
        values |= self._ratio(mg, limits[0]) | {
            "dose": milligrams(mg), "percent": figure(percent),
            "low": milligrams(bounds[0][0] or 0), "high": milligrams(bounds[0][1]),
        }  # fmt: skip
        yield self._say("over" if mg > max(ups) else "under", self._figures(), source, **values)
        yield from self._day_limit(regimen)

    def _day_limit(self, regimen: Regimen) -> Iterator[DoseFinding]:
        """What is stated as the most in 24 hours holds without tolerance."""
        mg, limit = self.medicine.dose_mg, regimen.per_day
        if mg is None or limit is None:
            return
        daily = mg * 24 / self.medicine.every_hours
        high = limit.bounds_mg(self.plan.weight_kg)[1]
        if daily > high * (1 + EXACT):
            values = self._ratio(daily, limit) | {
                "daily": milligrams(daily),
                "high": milligrams(high),
            }
            source = self._source(regimen.source)
            yield self._say("day_over", self._figures(), source, printed=limit.printed, **values)

    def _daily(self, regimen: Regimen) -> Iterator[DoseFinding]:
        """At another interval than the stated one: the milligrams of a whole day."""
        mg = self.medicine.dose_mg
        if mg is None:
            yield from self._dose(regimen)  # says that it was not compared
            return
        daily, times = mg * 24 / self.medicine.every_hours, 24 / regimen.every_hours
        percent = self._percent() / 100
        bounds = [each.bounds_mg(self.plan.weight_kg) for each in regimen.limits]
        high = max(high for _, high in bounds) * times
        low = min(low or 0 for low, _ in bounds) * times
        values: dict[str, object] = self._ratio(daily, regimen.limits[0]) | {
            "daily": milligrams(daily), "high": milligrams(high), "low": milligrams(low),
            "printed": f"{figure(times)} × {regimen.limits[0].printed}",
        }  # fmt: skip
        source = self._source(regimen.source)
        if daily > high * (1 + percent) * (1 + EXACT):
            yield self._say("day_over", self._figures(), source, **values)
        elif daily < low * (1 - percent) * (1 - EXACT):
            yield self._say("day_under", self._figures(), source, **values)

    def _stated(self, regimen: Regimen) -> Stated:
        limit = regimen.limits[0]
        low, high = limit.bounds_mg(self.plan.weight_kg)
        source = self._source(regimen.source)
        return Stated(low, high, limit.printed, regimen.every_hours, source)

    def _percent(self) -> float:
        tolerance = self.formulary.tolerance
        solid = self.medicine.form in (None, *SOLID) and self.medicine.ml is None
        return tolerance.solid_percent if solid else tolerance.other_percent

    def _figures(self) -> str:
        return "units" if self.medicine.units else "ml" if self.medicine.ml else "mg"

    def _ratio(self, mg: float, limit: Limit) -> dict[str, object]:
        if limit.per == "patient":
            return {"ratio": milligrams(mg), "weight": self._weight("kg")}
        weight = self.plan.weight_kg / (KG_PER_LB if limit.per == "lb" else 1)
        return {"ratio": f"{mg / weight:.3g} mg/{limit.per}", "weight": self._weight(limit.per)}

    def _weight(self, unit: str) -> str:
        kg = f"{figure(self.plan.weight_kg)} kg"
        return f"{kg} ({self.plan.weight_kg / KG_PER_LB:.4g} lb)" if unit == "lb" else kg

    def _source(self, slug: str | None) -> Text:
        return PRACTICE if slug is None else self.formulary.sources[slug].cited

    def _say(
        self, kind: FindingKind, field: str, source: Text | None = None, **values: object
    ) -> DoseFinding:
        return finding(self.plan, self.place, kind, field, source, self.against, **values)


def _together(plan: Plan, formulary: Formulary) -> Iterator[DoseFinding]:
    """Two medicines whose classes should not meet. An unknown anti-inflammatory counts
    as one: better a question too many."""
    drugs = [formulary.find(medicine.name) for medicine in plan.medicines]
    classes: list[str] = []
    for medicine, drug in zip(plan.medicines, drugs, strict=True):
        guess = "nsaid" if medicine.kind == "anti-inflammatory" else ""
        classes.append(drug.drug_class if drug else guess)
    for one, other in combinations(range(len(drugs)), 2):
        first = plan.medicines[one].name
        if drugs[one] is not None and drugs[one] is drugs[other]:
            yield finding(plan, other, "together", "name", None, other=first, why=SAME)
            continue
        for interaction in formulary.interactions:
            if sorted(interaction.classes) != sorted((classes[one], classes[other])):
                continue
            why = interaction.text
            if not _overlap(plan.medicines[one], plan.medicines[other]):
                why = AFTER.fill({"why": why.en}, {"why": why.es})
            source = formulary.sources[interaction.source].cited
            yield finding(plan, other, "together", "name", source, other=first, why=why)


def _overlap(one: Medicine, other: Medicine) -> bool:
    first, second = sorted((one, other), key=lambda medicine: medicine.first_dose)
    return second.first_dose < first.first_dose + timedelta(days=first.days)


def _joined(texts: list[Text], en: str, es: str) -> Text:
    return Text(en=en.join(text.en for text in texts), es=es.join(text.es for text in texts))
