"""An order against the medicines table: each limit at weights on either side of it.

The bot says what differs, with figure and source; it never changes or refuses a dose.
Sources stand beside each check. Tablets may be 10 % off, liquids 5 % (common practice).
"""

from __future__ import annotations

from datetime import date, datetime
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.model.formulary import KG_PER_LB, Drug, Regimen
from bot.model.plan import Medicine, Plan
from bot.plan.formulary import formulary
from bot.plan.medicines import (
    DoseFinding,
    cautions_for,
    check_medicines_against,
    confirm,
    needs_confirmation,
)

TABLE = formulary()
DOSE = {"over", "under", "day_over", "day_under"}


def order(name: str, every: int = 12, **figures: Any) -> Medicine:
    values = {"first_dose": datetime(2026, 3, 4, 20), "every_hours": every, **figures}
    if not values.keys() & {"days", "doses"}:
        values["days"] = 3
    return Medicine.model_validate({"name": name, **values})


def patient(*medicines: Medicine, kg: float = 22.7, species: str = "dog") -> Plan:
    return Plan.model_validate(
        {
            "patient": "Biscuit",
            "species": species,
            "weight_kg": kg,
            "procedure": "Tibial plateau levelling osteotomy",
            "surgery": date(2026, 3, 3),
            "home": datetime(2026, 3, 4, 10, 30),
            "zone": "America/Denver",
            "protocol": "general-orthopaedic",
            "clinician": "Dr Example",
            "medicines": medicines,
        }
    )


def found(*medicines: Medicine, **about: Any) -> list[DoseFinding]:
    return check_medicines_against(patient(*medicines, **about), TABLE)


def kinds(*medicines: Medicine, **about: Any) -> list[str]:
    return [finding.kind for finding in found(*medicines, **about)]


LB = KG_PER_LB
BONE = "bone-infection"


@pytest.mark.parametrize(
    ("medicine", "species", "kg", "expected"),
    [
        # 21 CFR 520.304: 1 mg/lb every 12 h, 2 mg/lb every 24 h; 50 mg and a tenth of room
        (order("carprofen", mg=50), "dog", 50 * LB, []),
        (order("carprofen", mg=50), "dog", 45.5 * LB, []),
        (order("carprofen", mg=50), "dog", 45.4 * LB, ["over"]),
        (order("carprofen", mg=50), "dog", 55.5 * LB, []),
        (order("carprofen", mg=50), "dog", 55.6 * LB, ["under"]),
        (order("carprofen", 24, mg=100), "dog", 50 * LB, []),
        (order("carprofen", 12, mg=100), "dog", 50 * LB, ["over"]),
        (order("carprofen", 8, mg=33.3), "dog", 50 * LB, ["interval"]),
        (order("carprofen", 8, mg=50), "dog", 50 * LB, ["interval", "day_over"]),
        # 2 mg/lb is 4.409 mg/kg: 10 kg, 44.1 mg
        (order("carprofen", 24, mg=44.09), "dog", 10, []),
        # 21 CFR 520.1367: 0.1 mg/kg; 0.2 on the first day alone. A liquid has 5 %.
        (order("meloxicam", 24, ml=2, mg_per_ml=1.5), "dog", 30, []),
        (order("meloxicam", 24, ml=2, mg_per_ml=1.5), "dog", 28.6, []),
        (order("meloxicam", 24, ml=2, mg_per_ml=1.5), "dog", 28.5, ["over"]),
        (order("meloxicam", 24, ml=4, mg_per_ml=1.5), "dog", 30, ["over"]),
        (order("meloxicam", 24, ml=4, mg_per_ml=1.5, days=1), "dog", 30, []),
        # FDA boxed warning: not by mouth to cats, however little
        (order("meloxicam", 24, mg=0.1), "cat", 4, ["avoid"]),
        # 21 CFR 520.538: 3-4 mg/kg, printed 1.4-1.8 mg/lb too; 7 days; from 4 lb
        (order("deracoxib", 24, mg=75), "dog", 20, []),
        (order("deracoxib", 24, mg=75), "dog", 75 / 4.41, ["over"]),
        (order("deracoxib", 24, mg=75), "dog", 75 / 4.39, []),
        (order("deracoxib", 24, mg=75), "dog", 75 / 2.71, []),
        (order("deracoxib", 24, mg=75), "dog", 75 / 2.69, ["under"]),
        (order("deracoxib", 24, mg=75, days=7), "dog", 20, []),
        (order("deracoxib", 24, mg=75, days=8), "dog", 20, ["long"]),
        (order("deracoxib", 24, mg=6), "dog", 4 * LB, []),
        (order("deracoxib", 24, mg=6), "dog", 3.99 * LB, ["light"]),
        # 21 CFR 520.928: 5 mg/kg; 3 days after orthopaedic surgery
        (order("firocoxib", 24, mg=113.5, days=3), "dog", 22.7, []),
        (order("firocoxib", 24, mg=113.5, days=4), "dog", 22.7, ["long"]),
        # 21 CFR 520.2075: cat 1 mg/kg, 3 days, from 2.5 kg; dog for soft tissue only
        (order("robenacoxib", 24, units=1, strength_mg=6), "cat", 6, []),
        (order("robenacoxib", 24, mg=2.5), "cat", 2.5, []),
        (order("robenacoxib", 24, mg=2.5), "cat", 2.4, ["light"]),
        (order("robenacoxib", 24, mg=6, days=4), "cat", 6, ["long"]),
        (order("robenacoxib", 24, mg=40), "dog", 20, ["use"]),
        # 21 CFR 520.447: a maximum of 28 days for wounds, a minimum of 28 for bone
        (order("clindamycin", 12, mg=150, days=28), "dog", 50 * LB, []),
        (order("clindamycin", 12, mg=150, days=29), "dog", 50 * LB, ["long"]),
        (order("clindamycin", 12, mg=300, days=29), "dog", 50 * LB, []),
        (order("clindamycin", 12, mg=300, days=27, use=BONE), "dog", 50 * LB, ["short"]),
        (order("clindamycin", 12, mg=300, days=28, use=BONE), "dog", 50 * LB, []),
        (order("clindamycin", 24, mg=50, days=14), "cat", 10 * LB, []),
        (order("clindamycin", 24, mg=50, days=15), "cat", 10 * LB, ["long"]),
        (order("clindamycin", 12, mg=300, use="skin-infection"), "dog", 50 * LB, ["use"]),
        # 21 CFR 520.376: 28 days is for skin; a shorter course after surgery is not odd
        (order("cephalexin", 12, units=1, strength_mg=500, days=7), "dog", 22.7, []),
        (order("cephalexin", 12, units=1, strength_mg=500, days=29), "dog", 22.7, ["long"]),
        # 21 CFR 520.88g, from memory: a cat gets 62.5 mg whatever it weighs
        (order("amoxicillin-clavulanate", mg=62.5), "cat", 2, []),
        (order("amoxicillin-clavulanate", mg=62.5), "cat", 9, []),
        (order("amoxicillin-clavulanate", mg=125), "cat", 9, ["over"]),
        # Gruen et al., JAVMA 2014;245:296
        (order("trazodone", 12, mg=100), "dog", 20, []),
        (order("trazodone", 8, mg=100), "dog", 20, ["under"]),
        (order("trazodone", 8, mg=200), "dog", 20, []),
        # Today's Veterinary Practice, November/December 2018, box 1
        (order("gabapentin", 12, units=2, strength_mg=100, form="capsule"), "dog", 20, []),
        (order("gabapentin", 8, units=1, strength_mg=100, form="capsule"), "cat", 20, []),
        (order("gabapentin", 8, units=2, strength_mg=100, form="capsule"), "dog", 20, ["over"]),
        # openFDA label text: some liquids hold xylitol; it is dogs that it poisons
        (order("gabapentin", 12, ml=4, mg_per_ml=50), "dog", 25, ["avoid"]),
        (order("gabapentin", 12, ml=0.8, mg_per_ml=50), "cat", 5, []),
        # Lascelles et al., JVIM 2008;22:53
        (order("amantadine", 24, mg=100), "dog", 25, []),
        (order("amantadine", 12, mg=100), "dog", 25, ["interval", "day_over"]),
        # UK data sheet: 2-4 mg/kg every 8 h, 6 h apart at least, 16 mg/kg a day, from 6.25 kg
        (order("tramadol", 8, mg=50, min_gap_hours=6), "dog", 12.5, []),
        (order("tramadol", 8, mg=50), "dog", 12.5, ["gap"]),
        (order("tramadol", 6, mg=50, min_gap_hours=6), "dog", 12.5, []),
        (order("tramadol", 6, mg=50, min_gap_hours=6), "dog", 12.4, ["day_over"]),
        (order("tramadol", 8, mg=25, min_gap_hours=6), "dog", 6.25, []),
        (order("tramadol", 8, mg=25, min_gap_hours=6), "dog", 6.2, ["light"]),
        (order("tramadol", 12, mg=50, min_gap_hours=6), "dog", 12.5, ["interval"]),
        (order("tramadol", 12, mg=50, min_gap_hours=6, as_needed=True), "dog", 12.5, []),
        # no dose for the species in the source
        (order("carprofen", mg=20), "cat", 5, ["species"]),
        # what the table does not hold, and what the order does not say
        (order("omeprazole", mg=20), "dog", 20, ["unknown"]),
        (order("carprofen", amount={"en": "one", "es": "una"}), "dog", 20, ["unwritten"]),
        (order("carprofen", 8, ml=1), "dog", 20, ["interval", "unwritten"]),
        (order("carprofen", mg=500, route="injection"), "dog", 20, ["route"]),
        # made for people (from memory)
        (order("aspirin", mg=81), "dog", 20, ["human"]),
        (order("ibuprofen", mg=200), "dog", 20, ["avoid"]),
        (order("acetaminofén", mg=500), "cat", 4, ["avoid"]),
        # tablets in halves and quarters, capsules whole (common practice)
        (order("omeprazole", form="tablet", units="1/4"), "dog", 20, ["unknown"]),
        (order("omeprazole", form="tablet", units="1/3"), "dog", 20, ["unknown", "split"]),
        (order("omeprazole", form="capsule", units="1 1/2"), "dog", 20, ["unknown", "split"]),
        (order("carprofen", units="1/2", strength_mg=100), "dog", 22.7, []),
        (order("carprofen", units="1/4", strength_mg=100), "dog", 11.3, ["split"]),
    ],
)  # fmt: skip
def test_limits_on_either_side(
    medicine: Medicine, species: str, kg: float, expected: list[str]
) -> None:
    told = found(medicine, kg=kg, species=species)
    assert [finding.kind for finding in told] == expected, [finding.what.en for finding in told]


@pytest.mark.parametrize(
    ("names", "pairs"),
    [
        (["carprofen", "meloxicam"], 1),
        (["meloxicam", "prednisona"], 1),
        (["prednisona", "dexamethasone"], 0),
        (["carprofen", "gabapentin", "cephalexin"], 0),
        (["aspirin", "deracoxib"], 1),
        (["carprofen", "meloxicam", "prednisolone"], 3),
    ],
)
def test_two_nsaids_or_an_nsaid_and_a_steroid(names: list[str], pairs: int) -> None:
    """To be avoided (deracoxib label)."""
    told = [f for f in found(*(order(name, mg=1) for name in names)) if f.kind == "together"]
    assert len(told) == pairs
    assert all(f.source == "deracoxib label" and f.asks for f in told)


def test_one_medicine_under_two_names() -> None:
    (told,) = found(order("gabapentina", mg=150), order("gabapentin", mg=150))
    assert told.what.en == (
        "gabapentin and gabapentina are in one order: they are the same medicine (common practice)"
    )


def test_an_anti_inflammatory_that_the_table_does_not_know_counts_as_one() -> None:
    told = kinds(order("newcoxib", mg=1, kind="anti-inflammatory"), order("carprofen", mg=50))
    assert "together" in told


def test_one_after_the_other_is_told_as_that() -> None:
    later = order("meloxicam", 24, mg=2.27, first_dose=datetime(2026, 3, 12, 8))
    (told,) = found(order("carprofen", mg=50), later)
    assert "follow one another" in told.what.en
    assert "uno tras otro" in told.what.es


def test_a_finding_names_medicine_figure_weight_and_source_in_both_languages() -> None:
    (told,) = found(order("carprofen", units=2, strength_mg=50))
    for words in (told.what.en, told.what.es):
        for part in ("carprofen", "100 mg", "1 mg/lb", "22.7 kg", "50.04 lb", "21 CFR 520.304"):
            assert part in words
    assert (told.place, told.field, told.source) == (0, "units", "21 CFR 520.304")
    assert "let a clinician confirm it" in told.mend.en
    assert told.both().en == (
        "carprofen: ordered 100 mg every 12 h; stated 50.04 mg here, 1 mg/lb every 12 h "
        "(21 CFR 520.304)"
    )
    assert "ordenado 100 mg" in told.both().es


def test_memory_is_named_as_memory() -> None:
    (told,) = found(order("amoxicillin-clavulanate", mg=500))
    assert "21 CFR 520.88g, from memory" in told.what.en
    assert "de memoria" in told.what.es


def test_the_clinician_confirms_and_is_not_asked_again() -> None:
    plan = patient(
        order("carprofen", mg=100), order("omeprazole", mg=20), order("cephalexin", mg=500)
    )
    waiting = needs_confirmation(plan, TABLE)
    assert [f.kind for f in waiting] == ["over", "unknown"], "what was not checked is asked, too"
    kept = confirm(plan, TABLE, "Dr Example")
    assert needs_confirmation(kept, TABLE) == []
    assert [m.confirmed_by for m in kept.medicines] == ["Dr Example", "Dr Example", None]
    for medicine, before in zip(kept.medicines, plan.medicines, strict=True):
        assert medicine.model_copy(update={"confirmed_by": None}) == before
    (still, _) = check_medicines_against(kept, TABLE)
    assert still.what == waiting[0].what, "it is still told, for the log"
    assert still.mend.en == "Confirmed by Dr Example"
    assert Plan.model_validate_json(kept.model_dump_json()) == kept


def test_cautions_of_the_plans_medicines_once_each() -> None:
    """NSAID: when to stop and call (FDA CVM leaflet for owners)."""
    told = cautions_for(patient(order("carprofen", mg=50), order("meloxicam", mg=1)), TABLE)
    (nsaid,) = told
    for sign in ("vomits", "black stool", "yellow gums", "sores"):
        assert sign in nsaid.en


REGIMENS = [(drug, each) for drug in TABLE.medicines for each in drug.regimens]


def ordered_so(drug: Drug, regimen: Regimen, mg: float) -> Medicine:
    course = {"doses": 1} if regimen.first_dose_only else {"days": 3}
    if regimen.course and regimen.course.kind == "at_least":
        course = {"days": regimen.course.days}
    gap = regimen.gap_hours
    return order(
        drug.name, regimen.every_hours, mg=mg, use=regimen.use, min_gap_hours=gap, **course
    )


def weights(regimen: Regimen) -> st.SearchStrategy[float]:
    least = regimen.min_weight.kg if regimen.min_weight else 0.5
    return st.floats(least, 90)


@given(st.data())
def test_a_dose_within_what_is_stated_is_never_asked_about(data: st.DataObject) -> None:
    drug, regimen = data.draw(st.sampled_from(REGIMENS))
    kg, limit = data.draw(weights(regimen)), data.draw(st.sampled_from(regimen.limits))
    low, high = limit.bounds_mg(kg)
    mg = data.draw(st.floats(low or high / 10, high))
    plan = patient(ordered_so(drug, regimen, mg), kg=kg, species=regimen.species[0])
    assert needs_confirmation(plan, TABLE) == []


@given(st.data())
def test_twice_the_most_that_is_stated_is_always_flagged(data: st.DataObject) -> None:
    drug, regimen = data.draw(st.sampled_from(REGIMENS))
    kg, species = data.draw(weights(regimen)), data.draw(st.sampled_from(regimen.species))
    most = max(limit.bounds_mg(kg)[1] for limit in regimen.limits)
    told = kinds(ordered_so(drug, regimen, most * 2), kg=kg, species=species)
    assert DOSE & set(told) & {"over", "day_over"}


@given(
    st.sampled_from(TABLE.medicines),
    st.floats(0.01, 5000),
    st.sampled_from([4, 6, 8, 12, 24, 36, 48, 168]),
    st.floats(0.3, 120),
    st.sampled_from(["dog", "cat"]),
    st.integers(1, 100),
)
def test_whatever_is_ordered_the_table_only_speaks(
    drug: Drug, mg: float, every: int, kg: float, species: str, days: int
) -> None:
    plan = patient(order(drug.name, every, mg=mg, days=days), kg=kg, species=species)
    before = plan.model_dump_json()
    told = check_medicines_against(plan, TABLE)
    assert plan.model_dump_json() == before
    assert all("{" not in f.what.en + f.what.es + f.mend.en + f.mend.es for f in told)
