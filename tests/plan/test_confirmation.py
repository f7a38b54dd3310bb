"""What a clinician confirms before an order is followed: an act with both doses, never a key.

21 CFR 520.304: carprofen 1 mg/lb every 12 hours; 22.7 kg is 50 lb, so 50 mg.
"""

from __future__ import annotations

from datetime import UTC, date, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.model.plan import Medicine, Plan, Withheld
from bot.plan.dose_finding import confirmed_text
from bot.plan.dose_jump import JUMP
from bot.plan.formulary import formulary
from bot.plan.medicines import (
    check_medicines_against,
    confirm,
    needs_confirmation,
    needs_confirmation_of,
    with_order,
)
from bot.plan.order import load_medicine, load_plan, read_order
from bot.protocol.library import protocols
from bot.protocol.problem import FlowError

from .test_medicines_checks import order, patient

TABLE = formulary()
TEN_TIMES = """name: carprofen
units: 1
strength_mg: 500
every_hours: 12
days: 7
first_dose: 2026-03-04 20:00
"""


def written(medicine: str, more: str = "") -> str:
    lines = medicine.strip().replace("\n", "\n    ")
    return f"""patient: Bruno
species: dog
weight_kg: 22.7
procedure: Plate, left
clinician: Dr Example
surgery: 2026-03-03
home: 2026-03-04 10:30
zone: America/Denver
protocol: general-orthopaedic
{more}medicines:
  - {lines}
"""


def kinds(medicine: Medicine, *present: Medicine) -> list[str]:
    return [one.kind for one in needs_confirmation_of(medicine, patient(*present), TABLE)]


@pytest.mark.parametrize(
    ("pasted", "mend"),
    [
        ("confirmed_by: Dr Example", "--confirm-as"),
        ("confirmed: true", "--confirm-as"),
        ("withheld: [{since: 2026-03-04T20:00:00Z}]", "/plan"),
    ],
)
def test_an_act_pasted_into_an_order_is_refused_at_its_line(pasted: str, mend: str) -> None:
    key = pasted.partition(":")[0]
    for sig in ("", "sig: 1 tab q12h x 7d\n"):
        medicine = f"{TEN_TIMES}{sig}{pasted}\n"
        line = 10 + len(medicine.splitlines())
        text = written(medicine)
        with pytest.raises(FlowError) as caught:
            read_order(text, "order.yaml", protocols(), date(2026, 3, 4))
        told = [str(one) for one in caught.value.problems]
        assert len(told) == 1, told
        assert told[0].startswith(f"order.yaml:{line}:5: `{key}` cannot be written into an order.")
        assert mend in told[0]
        with pytest.raises(FlowError, match="cannot be written into an order"):
            load_plan(text, "order.yaml")
        with pytest.raises(FlowError, match="cannot be written into an order"):
            load_medicine(medicine, "medicine")


def test_a_journey_is_told_in_the_chat_and_never_written() -> None:
    moves = "moves: [{at: 2026-03-05T08:00:00Z, left: Europe/Madrid}]\n"
    with pytest.raises(FlowError, match=r"order\.yaml:10:1: `moves` cannot be written"):
        load_plan(written(TEN_TIMES, moves), "order.yaml")


def test_a_tenfold_order_waits_and_is_logged_with_both_doses() -> None:
    plan, warnings = read_order(written(TEN_TIMES), "x", protocols(), date(2026, 3, 4))
    (waiting,) = needs_confirmation(plan, TABLE)
    assert [one.what for one in warnings] == [waiting.what.en]
    assert (waiting.kind, waiting.ordered.mg) == ("over", 500)
    assert waiting.stated is not None
    assert waiting.stated.high_mg == pytest.approx(50.04, abs=0.01)
    text = confirmed_text([waiting], "Dr Vale")
    assert text.en == (
        "order confirmed by Dr Vale: carprofen: ordered 500 mg every 12 h; stated 50.04 mg here, "
        "1 mg/lb every 12 h (21 CFR 520.304)"
    )
    assert text.es.startswith("orden confirmada por Dr Vale: carprofen: ordenado 500 mg")
    assert waiting.data() == {
        "medicine": "carprofen", "kind": "over", "ordered_mg": 500, "every_hours": 12,
        "stated_low_mg": waiting.stated.low_mg, "stated_high_mg": waiting.stated.high_mg,
        "stated_every_hours": 12, "printed": "1 mg/lb", "source": "21 CFR 520.304",
    }  # fmt: skip
    assert needs_confirmation(confirm(plan, TABLE, "Dr Vale"), TABLE) == []


def test_a_range_is_told_as_a_range_and_nothing_stated_as_that() -> None:
    plan = patient(order("gabapentin", mg=2000), order("omeprazole", mg=20))
    gabapentin, omeprazole = needs_confirmation(plan, TABLE)
    assert "stated 113.5–227 mg here, 5–10 mg/kg every 12 h" in gabapentin.both().en
    assert omeprazole.both().en == (
        "omeprazole: ordered 20 mg every 12 h; stated nothing that it could be compared with"
    )


@pytest.mark.parametrize(
    ("medicine", "kind", "words"),
    [
        # a slip in the name: told what may be meant
        (order("carpofen", mg=50), "misspelt", "but carprofen is"),
        (order("carprofin", mg=50), "slip", "spells it carprofen"),
        (order("gabapentn", mg=200), "misspelt", "but gabapentin is"),
        (order("cefalexna", mg=500), "misspelt", "cefalexina"),
        (order("melxicam", 24, mg=2), "misspelt", "but meloxicam is"),
        (order("traadol", mg=50), "misspelt", "tramadol"),
        # complete figures, and a name that the table does not know
        (order("omeprazole", mg=20), "unknown", "not in the medicines table"),
        (order("maropitant", mg=16), "unknown", "not in the medicines table"),
        # in the table, with no dose there
        (order("prednisone", 24, mg=500), "no_dose", "holds no dose of prednisone"),
        (order("ketoprofen", 24, mg=20), "no_dose", "holds no dose of ketoprofen"),
        # no figures, or another way in
        (order("carprofen", amount={"en": "one tablet", "es": "una tableta"}), "unwritten",
         "the order has no figures"),
        (order("carprofen", units=1), "unwritten", "the order has no figures"),
        (order("carprofen", mg=50, route="injection"), "route", "was not checked"),
    ],
)  # fmt: skip
def test_what_is_not_checked_is_looked_at_first(medicine: Medicine, kind: str, words: str) -> None:
    plan = patient(medicine)
    waiting = [one for one in needs_confirmation(plan, TABLE) if one.kind == kind]
    assert len(waiting) == 1
    assert words in waiting[0].what.en
    assert "clinician" in waiting[0].mend.en
    assert "clínico" in waiting[0].mend.es
    kept = confirm(plan, TABLE, "Dr Vale")
    assert needs_confirmation(kept, TABLE) == [], "and after that it is followed"
    assert kept.medicines[0].confirmed_by == "Dr Vale"


@given(st.sampled_from([drug.name for drug in TABLE.medicines]), st.data())
def test_one_letter_lost_from_a_name_is_never_followed_unseen(
    name: str, data: st.DataObject
) -> None:
    place = data.draw(st.integers(0, len(name) - 1))
    slip = name[:place] + name[place + 1 :]
    waiting = needs_confirmation(patient(order(slip, 24, mg=1)), TABLE)
    if TABLE.find(slip) is None:
        assert [one.kind for one in waiting] == ["misspelt"]


# ---- One medicine, for a plan that is under way ---------------------------------------------


def test_a_new_medicine_is_held_to_the_same_as_an_enrolment() -> None:
    assert kinds(order("carprofen", units=1, strength_mg=50)) == []
    assert kinds(order("carprofen", units=1, strength_mg=500)) == ["over"]
    assert kinds(order("carpofen", units=1, strength_mg=50)) == ["misspelt"]
    meloxicam = order("meloxicam", 24, ml=1.5, mg_per_ml=1.5)
    assert kinds(meloxicam) == []
    assert kinds(meloxicam, order("carprofen", mg=50)) == ["together"]
    assert kinds(order("carprofeno", mg=50), order("carprofen", mg=50)) == ["together"]


def test_what_the_plan_already_had_is_not_asked_again() -> None:
    assert kinds(order("carprofen", mg=50), order("omeprazole", mg=20)) == []


def test_a_confirmation_that_comes_with_the_medicine_counts_for_nothing() -> None:
    pasted = order("carprofen", mg=500, confirmed_by="Dr Example")
    assert kinds(pasted) == ["over"]


@pytest.mark.parametrize(
    ("before", "after", "told"),
    [
        (order("omeprazole", units=1, strength_mg=10), order("omeprazole", units=10,
                                                             strength_mg=10), "10 mg to 100 mg"),
        (order("omeprazole", mg=10), order("omeprazole", mg=100), "10 mg to 100 mg"),
        (order("omeprazole", mg=100), order("omeprazole", mg=10), "100 mg to 10 mg"),
        (order("omeprazole", 48, mg=10), order("omeprazole", 8, mg=10), "5 mg to 30 mg"),
        (order("omeprazole", units=1, strength_mg=10), order("Omeprazole", units="1/10",
                                                             strength_mg=100), "10 mg to 100 mg"),
        (order("omeprazole", ml=0.3, mg_per_ml=50), order("omeprazole", ml=3, mg_per_ml=50),
         "15 mg to 150 mg"),
        (order("omeprazole", ml=1, mg_per_ml=5), order("omeprazole", ml=0.1, mg_per_ml=50),
         "5 mg/ml to 50 mg/ml"),
        (order("omeprazole", units=1), order("omeprazole", units=10), "1 to 10"),
        (order("omeprazole", ml=0.5), order("omeprazole", ml=5), "0.5 to 5"),
    ],
)  # fmt: skip
def test_a_change_by_a_place_is_asked_about_without_any_stated_dose(
    before: Medicine, after: Medicine, told: str
) -> None:
    found = needs_confirmation_of(after, patient(before), TABLE)
    jumps = [one for one in found if one.kind == "jump"]
    assert any(told in one.what.en for one in jumps), [one.what.en for one in found]
    assert all("pasaría de" in one.what.es and one.asks for one in jumps)


def test_the_same_medicine_under_its_other_name_is_compared_too() -> None:
    found = kinds(order("prednisona", 24, mg=50), order("prednisone", 24, mg=5))
    assert "jump" in found


@given(st.floats(0.5, 500), st.floats(0.05, 20), st.sampled_from([8, 12, 24]))
def test_a_jump_is_asked_about_exactly_beyond_its_limit(
    mg: float, factor: float, every: int
) -> None:
    before, after = order("omeprazole", every, mg=mg), order("omeprazole", every, mg=mg * factor)
    limit = max(factor, 1 / factor)
    if abs(limit - JUMP) > 1e-6:
        assert ("jump" in kinds(after, before)) == (limit > JUMP)


def test_a_changed_order_takes_the_place_of_the_old_one_and_stays_stopped() -> None:
    stopped = Withheld(since=datetime(2026, 3, 6, tzinfo=UTC))
    plan = patient(order("carprofen", mg=50, withheld=[stopped]), order("cephalexin", mg=500))
    made = with_order(plan, order("Carprofen", mg=75))
    assert [m.name for m in made.medicines] == ["carprofen", "cephalexin"]
    assert made.medicines[0].withheld == (stopped,), "a new order is no word on going on"
    assert with_order(plan, order("tramadol", mg=50)).medicines[2].withheld == ()


def test_plans_kept_before_still_open() -> None:
    old = patient(order("carprofen", mg=100)).model_dump(mode="json")
    old["medicines"][0].pop("confirmed_by")
    for confirmed, by in ((True, "the clinician"), (False, None)):
        old["medicines"][0]["confirmed"] = confirmed
        plan = Plan.model_validate(old)
        assert plan.medicines[0].confirmed_by == by
        assert [one.confirmed for one in check_medicines_against(plan, TABLE)] == [confirmed]
