"""The medicines table against its sources, as printed there and never converted.

Every row names its source. The figures are written out a second time here, by hand, from
the sources themselves: title 21 of the US Code of Federal Regulations, part 520 (read),
and the papers and the data sheet named. A value from memory says so.
"""

from __future__ import annotations

from typing import Any

import pytest

from bot.model.formulary import KG_PER_LB, Limit, Regimen
from bot.plan.formulary import formulary, load_formulary, with_own
from bot.protocol.problem import FlowError

TABLE = formulary()

ROWS: list[tuple[str, str, int, list[tuple[float | None, float, str]], dict[str, Any], str]] = [
    # name, species, hours, (low, high, per) as printed, what else is stated, source
    ("carprofen", "dog", 24, [(2, 2, "lb")], {}, "21 CFR 520.304"),
    ("carprofen", "dog", 12, [(1, 1, "lb")], {}, "21 CFR 520.304"),
    ("meloxicam", "dog", 24, [(0.1, 0.1, "kg")], {}, "21 CFR 520.1367"),
    ("meloxicam", "dog", 24, [(0.2, 0.2, "kg")], {"first": True}, "21 CFR 520.1367"),
    ("deracoxib", "dog", 24, [(3, 4, "kg"), (1.4, 1.8, "lb")],
     {"course": (7, "at_most"), "weight": (4, "lb")}, "21 CFR 520.538"),
    ("firocoxib", "dog", 24, [(5, 5, "kg"), (2.27, 2.27, "lb")],
     {"course": (3, "stated")}, "21 CFR 520.928"),
    ("robenacoxib", "cat", 24, [(1, 1, "kg"), (0.45, 0.45, "lb")],
     {"course": (3, "at_most"), "weight": (2.5, "kg")}, "21 CFR 520.2075"),
    ("robenacoxib", "dog", 24, [(2, 2, "kg"), (0.91, 0.91, "lb")],
     {"course": (3, "at_most"), "weight": (2.5, "kg")}, "21 CFR 520.2075"),
    ("grapiprant", "dog", 24, [(2, 2, "kg"), (0.9, 0.9, "lb")], {}, "21 CFR 520.1084"),
    ("cefpodoxime", "dog", 24, [(5, 10, "kg")], {"course": (28, "at_most")}, "21 CFR 520.370"),
    ("cephalexin", "dog", 12, [(22, 22, "kg")], {"course": (28, "stated")}, "21 CFR 520.376"),
    ("clindamycin", "dog", 12, [(2.5, 15, "lb")], {"course": (28, "at_most")}, "21 CFR 520.447"),
    ("clindamycin", "dog", 12, [(5, 15, "lb")], {"course": (28, "at_least")}, "21 CFR 520.447"),
    ("clindamycin", "cat", 24, [(5, 15, "lb")], {"course": (14, "at_most")}, "21 CFR 520.447"),
    ("amoxicillin-clavulanate", "dog", 12, [(6.25, 6.25, "lb")], {}, "21 CFR 520.88g"),
    ("amoxicillin-clavulanate", "cat", 12, [(62.5, 62.5, "patient")], {}, "21 CFR 520.88g"),
    ("trazodone", "dog", 12, [(3.5, 7, "kg")], {"off": True}, "JAVMA 2014;245:296"),
    ("trazodone", "dog", 8, [(7, 10, "kg")], {"off": True}, "JAVMA 2014;245:296"),
    ("gabapentin", "dog", 12, [(5, 10, "kg")], {"off": True}, "Today's Veterinary Practice"),
    ("gabapentin", "cat", 12, [(5, 10, "kg")], {"off": True}, "Today's Veterinary Practice"),
    ("gabapentin", "dog", 8, [(5, 5, "kg")], {"off": True}, "Today's Veterinary Practice"),
    ("amantadine", "dog", 24, [(3, 5, "kg")], {"off": True}, "JVIM 2008;22:53"),
    ("tramadol", "dog", 8, [(2, 4, "kg")],
     {"weight": (6.25, "kg"), "gap": 6, "day": 16}, "UK/EU data sheet"),
]  # fmt: skip


def stated(regimen: Regimen) -> tuple[list[tuple[float | None, float, str]], dict[str, Any]]:
    more: dict[str, Any] = {}
    if regimen.first_dose_only:
        more["first"] = True
    if regimen.course:
        more["course"] = (regimen.course.days, regimen.course.kind)
    if regimen.min_weight:
        more["weight"] = (regimen.min_weight.value, regimen.min_weight.unit)
    if regimen.gap_hours:
        more["gap"] = regimen.gap_hours
    if regimen.per_day:
        more["day"] = regimen.per_day.high
    if regimen.off_label:
        more["off"] = True
    return [(limit.low, limit.high, limit.per) for limit in regimen.limits], more


@pytest.mark.parametrize(("name", "species", "hours", "limits", "more", "source"), ROWS)
def test_a_row_is_what_its_source_prints(
    name: str, species: str, hours: int, limits: list[Any], more: dict[str, Any], source: str
) -> None:
    drug = TABLE.find(name)
    assert drug is not None
    found = [
        regimen
        for regimen in drug.regimens
        if species in regimen.species and regimen.every_hours == hours
    ]
    fitting = [regimen for regimen in found if stated(regimen) == (limits, more)]
    assert len(fitting) == 1, [stated(regimen) for regimen in found]
    assert source in TABLE.sources[fitting[0].source].cited.en


def test_every_row_of_the_table_stands_above() -> None:
    """Gabapentin for cats every 8 h stands in the same line of its source as for dogs."""
    known = {(name, species, hours, tuple(limits)) for name, species, hours, limits, *_ in ROWS}
    held = {
        (drug.name, species, regimen.every_hours, tuple(stated(regimen)[0]))
        for drug in TABLE.medicines
        for regimen in drug.regimens
        for species in regimen.species
    }
    assert held - known == {("gabapentin", "cat", 8, ((5, 5, "kg"),))}


def test_what_was_recalled_says_so() -> None:
    drug = TABLE.find("amoxicillin-clavulanate")
    assert drug is not None
    assert {TABLE.sources[each.source].cited.en for each in drug.regimens} == {
        "21 CFR 520.88g, from memory"
    }
    assert "de memoria" in TABLE.sources["cfr-520-88g"].cited.es


def test_a_pound_is_turned_into_kilograms_in_the_weight_only() -> None:
    """2 mg/lb = 4.409 mg/kg: at 10 kg, 44.09 mg (international avoirdupois pound)."""
    carprofen = TABLE.find("carprofen")
    assert carprofen is not None
    limit = carprofen.regimens[0].limits[0]
    low, high = limit.bounds_mg(10)
    assert low == high == pytest.approx(44.092, abs=1e-3)
    assert limit.bounds_mg(KG_PER_LB)[1] == pytest.approx(2)
    assert (limit.high, limit.printed) == (2, "2 mg/lb")


def test_both_figures_of_520_538_stand_as_printed() -> None:
    """3 mg/kg is 1.36 mg/lb, and the section prints 1.4: neither is made of the other."""
    deracoxib = TABLE.find("deracoxib")
    assert deracoxib is not None
    per_kg, per_lb = deracoxib.regimens[0].limits
    assert per_lb.low == 1.4
    assert per_kg.low is not None
    assert round(per_kg.low * KG_PER_LB, 2) == 1.36


@pytest.mark.parametrize(
    ("written", "name"),
    [
        ("Carprofeno 75 mg", "carprofen"),
        ("CEFALEXINA", "cephalexin"),
        ("gabapentina 50 mg/ml", "gabapentin"),
        ("amoxicilina/ácido clavulánico", "amoxicillin-clavulanate"),
        ("Amoxicillin-clavulanate 62.5 mg tablets", "amoxicillin-clavulanate"),
        ("acetaminophen", "paracetamol"),
        ("Tramadol", "tramadol"),
    ],
)
def test_names_as_people_write_them(written: str, name: str) -> None:
    drug = TABLE.find(written)
    assert drug is not None
    assert drug.name == name


@pytest.mark.parametrize("written", ["carpro fen forte", "amoxicillin", "", "75 mg", "prednis"])
def test_a_name_is_never_guessed(written: str) -> None:
    assert TABLE.find(written) is None


def test_medicines_for_people_have_no_dose() -> None:
    human = [drug for drug in TABLE.medicines if drug.human]
    assert {"aspirin", "ibuprofen", "naproxen", "paracetamol"} <= {drug.name for drug in human}
    assert all(not drug.regimens for drug in human)


SMALL = """
formulary: 1
tolerance: {solid_percent: 10, other_percent: 5, source: here}
sources: {here: {name: {en: here, es: aquí}, seen: true}}
classes: {nsaid: {label: {en: NSAID, es: AINE}}}
interactions: []
medicines:
  - name: carprofen
    label: {en: carprofen, es: carprofeno}
    class: nsaid
    regimens:
      - species: [dog]
        limits: [{high: 3, per: kg, printed: 3 mg/kg}]
        every_hours: 12
        source: here
"""


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("printed: 3 mg/kg", "printed: 4 mg/kg", "does not hold 3"),
        ("per: kg", "per: lb", "is not in mg/lb"),
        ("{high: 3,", "{low: 5, high: 3,", "Swap them"),
        ("12\n        source: here", "12\n        source: there", "does not name 'there'"),
        ("class: nsaid", "class: steroid", "does not hold 'steroid'"),
        ("  - name: carprofen", "  - {name: Carprofén, label: {en: c, es: c}, class: nsaid, "
         "source: here}\n  - name: carprofen", "is both"),
        ("species: [dog]", "species: [horse]", "must be dog or cat"),
    ],
)  # fmt: skip
def test_a_table_with_a_slip_is_refused(old: str, new: str, said: str) -> None:
    assert old in SMALL
    assert load_formulary(SMALL, "own.yaml").find("carprofen")
    with pytest.raises(FlowError, match=said):
        load_formulary(SMALL.replace(old, new, 1), "own.yaml")


def test_a_practices_own_table_goes_before_ours() -> None:
    both = with_own(TABLE, load_formulary(SMALL, "own.yaml"))
    carprofen, tramadol = both.find("carprofen"), both.find("tramadol")
    assert carprofen is not None
    assert tramadol == TABLE.find("tramadol")
    assert carprofen.regimens[0].limits == (Limit(high=3, per="kg", printed="3 mg/kg"),)
    assert both.interactions == TABLE.interactions
