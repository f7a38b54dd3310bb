"""An order in an owner's words, what it comes to, and orders written as one line.

How staff and owners say these things is common practice.
"""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError

from bot.model.plan import Hours, Medicine, Plan
from bot.model.quantity import as_fraction, counted_words, fraction_of
from bot.plan.doses import NoMore, next_dose
from bot.plan.order import load_medicine, load_plan, read_order
from bot.plan.plain import plain
from bot.plan.prompts import prompts
from bot.plan.slots import at_home
from bot.plan.supply import last_dose, millilitres_needed, tablets_needed
from bot.plan.travel import travel
from bot.protocol.library import protocols
from bot.protocol.problem import FlowError

HOURS = Hours()
PROTOCOLS = protocols()
TODAY = date(2026, 3, 4)


def order(**values: Any) -> Medicine:
    """One and a half tablets from Wednesday evening, 4 March 2026."""
    ordered = {
        "name": "carprofen",
        "units": 1.5,
        "every_hours": 12,
        "first_dose": datetime(2026, 3, 4, 20),
        **values,
    }
    if "ml" in values or "mg" in values or "amount" in values:
        del ordered["units"]
    if not ordered.keys() & {"days", "doses"}:
        ordered["days"] = 6
    return Medicine.model_validate(ordered)


@pytest.mark.parametrize(
    ("medicine", "english", "spanish"),
    [
        (order(with_food=True, first_dose=datetime(2026, 3, 5, 8)),
         "one and a half tablets, with breakfast and with dinner, until Tuesday evening",
         "una tableta y media, con el desayuno y con la cena, hasta el martes por la noche"),
        (order(strength_mg=50, days=14),
         "one and a half tablets (75 mg), in the morning and in the evening, "
         "until Wednesday 18 March in the morning",
         "una tableta y media (75 mg), por la mañana y por la noche, "
         "hasta el miércoles 18 de marzo por la mañana"),
        (order(form="capsule", units=2, every_hours=8, first_dose=datetime(2026, 3, 4, 14), days=2,
               with_food=True),
         "two capsules, at 06:00 with some food, with lunch and at bedtime with some food, "
         "until Friday at 06:00",
         "dos cápsulas, a las 06:00 con algo de comida, con el almuerzo y al acostarse con algo "
         "de comida, hasta el viernes a las 06:00"),
        (order(ml=0.8, mg_per_ml=1.5, every_hours=24, first_dose=datetime(2026, 3, 5, 8), days=3),
         "0.8 ml (1.2 mg), in the morning, until Saturday morning",
         "0.8 ml (1.2 mg), por la mañana, hasta el sábado por la mañana"),
        (order(units="1/2", every_hours=48, days=6),
         "half a tablet, every second day in the evening, until Sunday evening",
         "media tableta, cada dos días por la noche, hasta el domingo por la noche"),
        (order(units=1, every_hours=36, days=6),
         "one tablet, every 36 hours, until Monday morning",
         "una tableta, cada 36 horas, hasta el lunes por la mañana"),
        (order(units=1, doses=1, with_food=True),
         "one tablet with food, once, on Wednesday 4 March in the evening",
         "una tableta con comida, una sola vez, el miércoles 4 de marzo por la noche"),
        (order(units=3, form="drop", route="eyes", every_hours=6,
               first_dose=datetime(2026, 3, 4, 14), days=1),
         "three drops in both eyes, at 02:00, in the morning, at midday and in the evening, "
         "until Thursday at 08:00", None),
        (order(mg=50, as_needed=True, needed_for="pain", every_hours=8, days=3),
         "50 mg, only if needed for pain, at least 8 hours apart, for 3 days at most",
         "50 mg, solo si hace falta para el dolor, con al menos 8 horas entre dosis, "
         "3 días como máximo"),
    ],
)  # fmt: skip
def test_plain_words(medicine: Medicine, english: str, spanish: str | None) -> None:
    if spanish is None:  # two doses near one meal are told apart by the clock
        assert plain(medicine, HOURS, "en").startswith("three drops in both eyes, ")
        assert "en ambos ojos" in plain(medicine, HOURS, "es")
        return
    assert plain(medicine, HOURS, "en") == english
    assert plain(medicine, HOURS, "es") == spanish


@pytest.mark.parametrize(
    ("units", "english", "spanish"),
    [
        ("1/4", "a quarter of a tablet", "un cuarto de tableta"),
        ("1/2", "half a tablet", "media tableta"),
        ("3/4", "three quarters of a tablet", "tres cuartos de tableta"),
        ("1/3", "a third of a tablet", "un tercio de tableta"),
        ("1", "one tablet", "una tableta"),
        ("1.25", "one and a quarter tablets", "una tableta y un cuarto"),
        ("1.75", "one and three quarters tablets", "una tableta y tres cuartos"),
        ("2", "two tablets", "dos tabletas"),
        ("2½", "two and a half tablets", "dos tabletas y media"),
        ("12", "twelve tablets", "doce tabletas"),
        ("13.5", "13.5 tablets", "13.5 tabletas"),
    ],
)
def test_numbers_of_tablets(units: str, english: str, spanish: str) -> None:
    assert counted_words(fraction_of(units), "tablet") == (english, spanish)
    assert as_fraction(float(fraction_of(units))) == fraction_of(units)


def test_the_household_names_its_own_hours() -> None:
    early = Hours(morning=time(6), evening=time(17, 30))
    medicine = order(units=1, first_dose=datetime(2026, 3, 5, 6))
    assert "in the morning and in the evening" in plain(medicine, early, "en")
    assert plain(medicine, early, "es").endswith("hasta el martes por la tarde")
    assert "at 06:00 and at 18:00" in plain(
        medicine, Hours(morning=time(9), evening=time(21)), "en"
    )


def test_one_prompt_speaks_of_its_own_dose() -> None:
    text = written("  - {name: carprofen 50 mg, sig: 1.5 tab q12h x 3d with food, "
                   "first_dose: 2026-03-04 20:00}")  # fmt: skip
    plan = load_plan(text, "order.yaml")
    says = [
        (item.text.en, item.text.es)
        for prompt in prompts(plan, PROTOCOLS[plan.protocol])
        for item in prompt.items
        if item.kind == "dose"
    ]
    assert says[0] == (
        "Give carprofen: one and a half tablets (75 mg), with dinner, until Saturday morning.",
        "Dé carprofen: una tableta y media (75 mg), con la cena, hasta el sábado por la mañana.",
    )
    assert "with breakfast, until Saturday" in says[1][0]
    assert says[-1] == (
        "Give carprofen: one and a half tablets (75 mg), with breakfast, this is the last dose.",
        "Dé carprofen: una tableta y media (75 mg), con el desayuno, es la última dosis.",
    )


@pytest.mark.parametrize(
    ("medicine", "tablets"),
    [
        (order(days=7), 21),
        (order(units="1/2", every_hours=24, days=3), Fraction(3, 2)),
        (order(units="1/3", every_hours=8, days=1), 1),
        (order(units=2, form="capsule", doses=10), 20),
        (order(units=1, as_needed=True, every_hours=8, days=3), 9),
        (order(ml=1), None),
        (order(units=2, form="drop"), None),
        (order(amount={"en": "one", "es": "una"}), None),
    ],
)
def test_tablets_needed(medicine: Medicine, tablets: Fraction | int | None) -> None:
    assert tablets_needed(medicine) == tablets


def test_millilitres_needed() -> None:
    assert millilitres_needed(order(ml=0.8, every_hours=24, days=10)) == 8
    assert millilitres_needed(order()) is None


def test_the_last_dose_over_the_clock_change_and_after_a_journey() -> None:
    """New York and Denver change to summer time on 8 March 2026."""
    medicine = order(days=7)
    plan = patient(medicine)
    assert last_dose(plan, medicine) == datetime(2026, 3, 11, 8)
    there = travel(plan, "Europe/Madrid", datetime(2026, 3, 9, 12, tzinfo=UTC), {})
    last = last_dose(there, medicine)
    assert last == datetime(2026, 3, 11, 20), "the usual hours, no dose dropped"
    assert last_dose(plan, order(as_needed=True)) is None


def patient(*medicines: Medicine) -> Plan:
    plan = load_plan(written("  []").replace("medicines:\n  []", "medicines: []"), "order.yaml")
    return plan.model_copy(update={"medicines": medicines})


def written(medicines: str) -> str:
    return f"""patient: Biscuit
species: dog
weight_kg: 34
procedure: Tibial plateau levelling osteotomy
clinician: Dr Example
surgery: 2026-03-03
home: 2026-03-04 10:30
zone: America/Denver
protocol: general-orthopaedic
medicines:
{medicines}
"""


def errors(medicines: str) -> list[str]:
    with pytest.raises(FlowError) as caught:
        read_order(written(medicines), "order.yaml", PROTOCOLS, TODAY)
    return [str(problem) for problem in caught.value.problems]


def test_a_line_of_shorthand_is_the_same_order_as_one_written_out() -> None:
    short = load_plan(written("""\
  - {name: carprofen 75 mg, sig: 1 tab PO q12h x 7d with food, first_dose: 2026-03-04 20:00}
  - {name: meloxicam 1.5 mg/ml, sig: 0.8 ml c/24h por 3 días, first_dose: 2026-03-05 08:00}
  - {name: gabapentin 100 mg capsules, sig: 2 q12h until gone (20), first_dose: 2026-03-04 20:00}
""".replace("2 q12h", "2 caps q12h")), "order.yaml")  # fmt: skip
    long = load_plan(written("""\
  - name: carprofen
    form: tablet
    units: 1
    strength_mg: 75
    every_hours: 12
    days: 7
    with_food: true
    first_dose: 2026-03-04 20:00
  - {name: meloxicam, form: liquid, ml: 0.8, mg_per_ml: 1.5, every_hours: 24, days: 3,
     first_dose: 2026-03-05 08:00}
  - {name: gabapentin, form: capsule, units: 2, strength_mg: 100, every_hours: 12, doses: 10,
     first_dose: 2026-03-04 20:00}
"""), "order.yaml")  # fmt: skip
    assert [m.model_copy(update={"sig": None}) for m in short.medicines] == list(long.medicines)
    assert short.medicines[0].sig == "1 tab PO q12h x 7d with food"
    assert Plan.model_validate_json(short.model_dump_json()) == short


@pytest.mark.parametrize(
    ("medicine", "said"),
    [
        ("sig: 1 tab q12hh x 7d", "11:49: 'q12hh' is no interval. Write q12h or BID."),
        ("sig: 1 tab x 7d", "the sig says no interval. Write q12h or BID, or every_hours."),
        ("sig: 1 tab q12h", "the sig does not say for how long. Write it, as in x 7d."),
        ("sig: q12h x 7d", "the sig says no amount. Write it, as in 1 tab PO q12h x 7d."),
        ("sig: 1 tab q12h x 7d, days: 9", "11:73: `days` says something else than the sig."),
        (
            "sig: 1 tab q12h x 7d, strength_mg: 50",
            "`strength_mg` says something else than the name",
        ),
        ("sig: 1 tab q12h x 7d, units: abc", "11:88: 'abc' is no amount. Write it as 1, 1.5, 1/2"),
        ("sig: 1 tab q12h x 7d, units: 2", "11:81: `units` says something else than the sig."),
        ("sig: 1 tab q12h x 200d", "`days` must be at most 120, not '200'."),
        ("sig: 31 tab q12h x 7d", "`units` must be at most 30, not '31.0'."),
        ("sig: 1 tab q12h, days: abc", "`days` must be a whole number, not 'abc'."),
        ("sig: [1 tab]", "`sig` must be text."),
    ],
)
def test_a_slip_in_the_line_is_told_once_with_its_place_and_mend(medicine: str, said: str) -> None:
    told = errors(f"  - {{name: carprofen 75 mg, first_dose: 2026-03-04 20:00, {medicine}}}")
    told = [each for each in told if "is missing" not in each]
    assert len(told) == 1, told
    assert said.split(" ", 1)[1] in told[0]
    assert told[0].startswith("order.yaml:11:")


def test_one_medicine_alone_as_staff_add_it_later() -> None:
    text = "name: carprofen 75 mg\nsig: 1.5 tab q12h x 7d\nfirst_dose: 2026-03-04 20:00\n"
    medicine = load_medicine(text, "medicine")
    assert (medicine.name, medicine.dose_mg, medicine.days) == ("carprofen", 112.5, 7)
    with pytest.raises(FlowError, match="medicine:2:6: 'q12hh' is no interval"):
        load_medicine(text.replace("q12h", "q12hh"), "medicine")


def test_the_same_said_twice_is_no_slip() -> None:
    plan = load_plan(written(
        "  - {name: carprofen 75 mg, sig: 1.5 tab q12h x 7d, units: 1 1/2, strength_mg: 75, "
        "days: 7, first_dose: 2026-03-04 20:00}"), "order.yaml")  # fmt: skip
    assert plan.medicines[0].dose_mg == 112.5


def test_findings_stand_at_the_line_of_what_they_are_about() -> None:
    _, warnings = read_order(written("""\
  - name: carprofen
    units: 2
    strength_mg: 75
    every_hours: 12
    days: 7
    first_dose: 2026-03-04 20:00
"""), "order.yaml", PROTOCOLS, TODAY)  # fmt: skip
    (told,) = (str(warning) for warning in warnings)
    assert told.startswith("order.yaml:12:12: warning: carprofen: 150 mg is 2 mg/lb for 34 kg")
    assert "21 CFR 520.304" in told


def test_as_needed_has_no_prompts_and_no_times() -> None:
    plan, warnings = read_order(
        written("  - {name: tramadol 100 mg, sig: 1 tab q8h PRN pain x 3d, min_gap_hours: 6}"),
        "order.yaml", PROTOCOLS, TODAY,
    )  # fmt: skip
    (medicine,) = plan.medicines
    assert warnings == []
    assert (medicine.first_dose, at_home(plan, medicine)) == (plan.home, ())
    items = [item for p in prompts(plan, PROTOCOLS[plan.protocol]) for item in p.items]
    assert all(item.kind != "dose" for item in items)
    assert next_dose(medicine, (), (), datetime(2026, 3, 5, tzinfo=UTC)) == NoMore()
    there = travel(plan, "Europe/Madrid", datetime(2026, 3, 9, 12, tzinfo=UTC), {})
    assert there.moves[0].doses == {}


@pytest.mark.parametrize(
    ("values", "said"),
    [
        ({"units": 1, "strength_mg": 50, "mg": 75}, "mg says 75 mg, but the other figures make 50"),
        ({"ml": 1, "form": "tablet"}, "ml does not go with form tablet"),
        ({"units": 1, "form": "liquid"}, "a liquid is measured"),
        ({"units": 1, "ml": 1}, "keep one of them"),
        ({"units": 1, "mg_per_ml": 50}, "mg_per_ml goes with ml"),
        ({"ml": 1, "strength_mg": 50}, "strength_mg goes with units"),
        ({"units": "a few"}, "'a few' is no amount"),
        ({"units": 1, "doses": 10, "days": 9}, "10 doses every 12 hours are not 9 days"),
        ({"units": 1, "needed_for": "pain"}, "needed_for goes with as_needed"),
        ({}, "amount"),
    ],
)  # fmt: skip
def test_figures_that_contradict_one_another_are_refused(values: dict[str, Any], said: str) -> None:
    base = {"name": "x", "every_hours": 12, "days": 5, "first_dose": datetime(2026, 3, 4, 20)}
    with pytest.raises(ValidationError, match=said):
        Medicine.model_validate({**base, **values})


@st.composite
def orders(draw: st.DrawFn) -> Medicine:
    figures = draw(
        st.one_of(
            st.fixed_dictionaries({
                "units": st.floats(0.01, 30),
                "form": st.sampled_from([None, "tablet", "chew", "capsule", "drop"]),
                "strength_mg": st.none() | st.floats(0.01, 1000),
            }),
            st.fixed_dictionaries({"ml": st.floats(0.01, 500),
                                   "mg_per_ml": st.none() | st.floats(0.01, 100)}),
            st.fixed_dictionaries({"mg": st.floats(0.01, 20_000)}),
        )
    )  # fmt: skip
    return Medicine(
        name="{name} of a medicine",
        every_hours=draw(st.integers(4, 168)),
        first_dose=draw(st.datetimes(datetime(2025, 1, 1), datetime(2027, 1, 1))),
        days=draw(st.integers(1, 120)),
        with_food=draw(st.booleans()),
        as_needed=draw(st.booleans()),
        route=draw(st.sampled_from(["mouth", "gums", "skin", "eyes", "injection"])),
        **figures,
    )


@given(orders(), st.lists(st.times(), min_size=4, max_size=4), st.integers(0, 200))
def test_plain_words_never_fail_and_never_hold_a_gap(
    medicine: Medicine, moments: list[time], hours_on: int
) -> None:
    hours = Hours(**dict(zip(("morning", "midday", "evening", "bedtime"), moments, strict=True)))
    at = medicine.first_dose + timedelta(hours=hours_on)
    for words in (
        plain(medicine, hours, "en"),
        plain(medicine, hours, "es"),
        plain(medicine, hours, "en", at=at, last=at),
        plain(medicine, hours, "es", at=at),
    ):
        assert "  " not in words
        assert "{" not in words
        assert "–" not in words
        assert not words.endswith((" ", ","))


@given(
    st.sampled_from(["1 tab", "½ cap q12h", "x 7d", "PRN", "q8h until gone (20)"])
    | st.text(st.characters(exclude_categories=("C", "Z")), max_size=30),
    st.sampled_from(["", "units: 1/3", "ml: 2", "every_hours: 12", "days: 3", "home: 3", "mg: x"]),
    st.text(st.characters(exclude_categories=("C", "Z")), min_size=1, max_size=20),
)
def test_whatever_stands_in_the_line_the_file_is_read_or_refused(
    sig: str, more: str, name: str
) -> None:
    quoted = [words.replace("'", "''") for words in (name, sig)]
    try:
        plan = load_plan(
            written(f"  - {{name: '{quoted[0]} 5 mg', sig: '{quoted[1]}', {more}}}"), "order.yaml"
        )
    except FlowError as error:
        told = error.problems
    else:
        told = ()
        assert plan.medicines[0].sig is not None
    assert all(problem.line >= 1 and problem.what for problem in told)
