"""What the practice is told of its patients, and what it is not told of too few."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.measures.cohort import chosen, cohort
from bot.measures.course import Asked, Course, Flag, Matter, Use
from bot.measures.covered import adherence, covered_by_doses, covered_by_fills
from bot.measures.flags import by_day, rules
from bot.measures.infection import Verdict, ask_on, last_day, surveillance, verdict
from bot.measures.limb import first_day, time_to
from bot.measures.proportion import Proportion, wilson
from bot.measures.response import waits
from bot.measures.scores import PainInventory, feline_grimace, pain_inventory, responds
from bot.measures.sessions import sessions_done, unanswered
from bot.measures.survival import Watched, kaplan_meier
from bot.model.healing import Healing
from bot.model.ids import CaseId
from bot.model.urgency import Urgency

DOG = Course(1, "dog", "Tibial osteotomy", "Dr. Wren", date(2026, 3, 2), 1, 56, False)


def dose(day: int, choice: str | None, med: str = "carprofen") -> Asked:
    state = "answered" if choice else "unanswered"
    return Asked("dose", med, day, state, choice)


# ---- Curves ----------------------------------------------------------------------------

WATCHED = st.lists(st.builds(Watched, st.integers(0, 60), st.booleans()), min_size=1, max_size=60)


@given(WATCHED)
def test_a_curve_only_falls_and_its_band_holds_it(watched: list[Watched]) -> None:
    curve = kaplan_meier(watched)
    waiting = [1.0, *(step.waiting for step in curve.steps)]
    assert waiting == sorted(waiting, reverse=True)
    for step in curve.steps:
        assert 0 <= step.low <= step.waiting <= step.high <= 1
    assert sum(step.seen + step.left for step in curve.steps) == curve.n == len(watched)


@given(st.lists(st.integers(0, 60), min_size=1, max_size=60), st.integers(0, 60))
def test_with_everyone_watched_to_the_end_it_is_the_plain_proportion(
    times: list[int], at: int
) -> None:
    step = kaplan_meier(Watched(time, True) for time in times).at(at)
    waiting = 1.0 if step is None else step.waiting
    assert waiting == pytest.approx(sum(time > at for time in times) / len(times))


def test_the_median_of_too_few_is_not_told() -> None:
    four = kaplan_meier(Watched(day, True) for day in range(4))
    assert four.too_few
    assert four.quantile(0.5).time is None
    assert four.caution is not None
    assert "too few" in four.caution.en
    assert kaplan_meier(Watched(day, True) for day in range(5)).quantile(0.5).time == 2


@pytest.mark.parametrize("time", [-1.0, float("nan"), float("inf")])
def test_no_time_that_nobody_could_watch(time: float) -> None:
    with pytest.raises(ValueError, match="cannot be watched"):
        Watched(time, True)


# ---- Proportions and small numbers -----------------------------------------------------


@given(st.integers(0, 300), st.integers(1, 300))
def test_wilson_holds_the_rate_and_mirrors(part: int, whole: int) -> None:
    part = min(part, whole)
    low, high = wilson(part, whole)
    assert 0 <= low <= part / whole <= high <= 1
    assert wilson(whole - part, whole) == pytest.approx((1 - high, 1 - low))


@pytest.mark.parametrize(
    ("n", "rate", "words"),
    [(0, False, "too few"), (4, False, "too few"), (5, True, "small"), (19, True, "small"),
     (20, True, None)],
)  # fmt: skip
def test_small_numbers_are_said_to_be_small(n: int, rate: bool, words: str | None) -> None:
    found = Proportion(0, n)
    assert (found.rate is not None) is rate
    assert (found.interval is not None) is rate
    assert (found.caution is None) is (words is None)
    if found.caution and words:
        assert words in found.caution.en


# ---- The leg ---------------------------------------------------------------------------


def test_who_bears_weight_has_touched_too() -> None:
    dog = replace(DOG, use=(Use(3, "none"), Use(9, "partial"), Use(20, "full")))
    assert first_day(dog, "toe_touching") == Watched(9, True)
    assert first_day(dog, "full") == Watched(20, True)


def test_a_maybe_and_a_silence_are_no_milestone() -> None:
    dog = replace(DOG, followed=12, use=(Use(5, "full", unsure=True), Use(12, "none")))
    assert first_day(dog, "full") == Watched(12, False)
    assert first_day(replace(dog, use=()), "toe_touching") == Watched(12, False)


def test_time_to_touching_over_a_practice() -> None:
    dogs = [replace(DOG, id=n, use=(Use(4 + n, "toe_touching"),)) for n in range(6)]
    curve = time_to([*dogs, replace(DOG, id=9, followed=2)], "toe_touching")
    assert (curve.n, curve.seen) == (7, 6)
    assert curve.quantile(0.5).time == 6


# ---- Doses and sessions ----------------------------------------------------------------


def test_a_day_with_one_of_two_doses_is_not_covered() -> None:
    asked = [dose(1, "given"), dose(1, "given"), dose(2, "given"), dose(2, "missed"),
             dose(3, "given"), dose(3, None), dose(4, None)]  # fmt: skip
    found = covered_by_doses(asked)["carprofen"]
    assert (found.covered, found.days, found.not_told) == (1, 4, 2)


def test_a_dose_held_by_staff_was_never_due() -> None:
    held = Asked("dose", "carprofen", 2, "held")
    waiting = Asked("dose", "carprofen", 3, "open")
    assert covered_by_doses([dose(1, "given"), held, waiting])["carprofen"].ratio == 1


@given(st.lists(st.tuples(st.dates(date(2026, 1, 1), date(2026, 6, 1)), st.integers(1, 90)),
                min_size=1, max_size=6))  # fmt: skip
def test_no_day_is_covered_twice(fills: list[tuple[date, int]]) -> None:
    found = covered_by_fills(fills, date(2026, 6, 30))
    assert 0 < found.covered <= min(found.days, sum(days for _, days in fills))


def test_adherence_of_a_practice() -> None:
    found = adherence(
        covered_by_doses([dose(day, "given" if day <= given_days else "missed")
                          for day in range(1, 11)])["carprofen"]
        for given_days in (10, 10, 9, 8, 7, 2)
    )  # fmt: skip
    assert (found.adherent.part, found.adherent.n) == (4, 6)
    assert found.median == pytest.approx(0.85)


def test_sessions_done_skipped_and_not_told() -> None:
    asked = [Asked("session", "walk", day, state, choice) for day, state, choice in
             [(1, "answered", "done"), (2, "answered", "skipped"), (3, "unanswered", None),
              (4, "open", None)]]  # fmt: skip
    (walk,) = sessions_done(asked)
    assert (walk.due, walk.done, walk.skipped, walk.not_told) == (3, 1, 1, 1)
    assert [(u.name, u.proportion.part) for u in unanswered(asked)] == [("walk", 1)]


# ---- Red flags -------------------------------------------------------------------------


def test_two_flags_of_one_day_are_one_patient() -> None:
    flags = (Flag(3, "a", "x", Urgency.same_day), Flag(3, "b", "y", Urgency.emergency),
             Flag(4, "c", "z", Urgency.next_day))  # fmt: skip
    days = by_day([replace(DOG, flags=flags), replace(DOG, id=2, followed=3)])
    assert {d.day: (d.patients.part, d.patients.n) for d in days if d.day in (0, 3, 4)} == {
        3: (1, 2), 4: (0, 1),
    }  # fmt: skip
    assert days[0].day == 1  # nobody is followed before going home


def test_which_rule_cries_wolf() -> None:
    dog = replace(
        DOG,
        flags=(Flag(3, "licking", "licking", Urgency.next_day, CaseId("1-1")),
               Flag(5, "licking", "licking", Urgency.next_day, CaseId("1-2")),
               Flag(5, "pus", "incision", Urgency.same_day, CaseId("1-2"))),
        matters=(Matter("1-1", Urgency.next_day, 60, closed=True, outcome="expected"),
                 Matter("1-2", Urgency.same_day, 60, closed=True, outcome="visit")),
    )  # fmt: skip
    first, second = rules([dog])
    assert (first.rule, first.matched, first.needless.part, first.needless.n) == (
        "licking", 2, 1, 2,
    )  # fmt: skip
    assert (second.rule, second.needless.part, second.needless.n) == ("pus", 0, 1)


# ---- Waiting ---------------------------------------------------------------------------


def test_a_case_that_nobody_answers_makes_the_figure_no_better() -> None:
    quick = [Matter(str(n), Urgency.same_day, 300, None, 10 + n) for n in range(9)]
    found = waits(quick, "answered", Urgency.same_day)
    assert (found.median.time, found.p90.time) == (14, 18)
    worse = waits([*quick, *[Matter("x", Urgency.same_day, 300)] * 3], "answered")
    assert (worse.n, worse.happened, worse.p90.time) == (12, 9, None)
    assert waits(quick, "acknowledged").median.time == 14  # an answer acknowledges
    assert waits(quick, "answered", Urgency.emergency).n == 0


# ---- Questionnaires --------------------------------------------------------------------


def test_the_infection_questionnaire_is_the_published_logic() -> None:
    """Glenn et al., Vet Surg 2024;53:184, every set of answers, from the definition."""
    for answers in product((False, True), repeat=9):
        told = Healing(*answers)
        problem, opened, antibiotics, pus, *signs = answers
        second = (opened or antibiotics) and (pus or sum(signs) >= 2)
        expected = "none" if not problem else ("infection" if second else "inconclusive")
        assert verdict(told) == expected


def test_the_windows_of_surveillance() -> None:
    """CDC NHSN: day 1 is the day of surgery, so day 30 is 29 days later."""
    assert last_day(date(2026, 3, 1), implant=False) == date(2026, 3, 30)
    assert last_day(date(2026, 3, 1), implant=True) == date(2026, 5, 29)
    assert ask_on(date(2026, 3, 1), implant=True) == (date(2026, 3, 31), date(2026, 5, 30))


def test_infections_are_of_those_who_answered() -> None:
    told: list[Verdict | None] = ["infection", "inconclusive", None, None]
    found = surveillance([*told, *(verdict(Healing(problem=False)) for _ in range(8))])
    assert (found.infection.part, found.infection.n) == (1, 10)
    assert (found.inconclusive, found.silent) == (1, 2)


def test_pain_inventory_arithmetic() -> None:
    """Brown et al. 2007 (means of 4 and 6 items), 2013 (a responder: 1 and 2 better)."""
    before = pain_inventory([5, 4, 3, 4], [6, 6, 4, 4, 5, 5])
    assert before == PainInventory(4.0, 5.0)
    assert responds(before, PainInventory(3.0, 3.0))
    assert not responds(before, PainInventory(3.1, 1.0))
    assert not responds(before, PainInventory(0.0, 3.1))
    for severity, interference in (([1] * 3, [1] * 6), ([1] * 4, [11] * 6)):
        with pytest.raises(ValueError):
            pain_inventory(severity, interference)


def test_feline_grimace_ratio() -> None:
    """Evangelista et al., Sci Rep 2019;9:19128: above 0.39, so from 4 of 10."""
    assert feline_grimace([1, 1, 1, 0, 0]).above is False
    assert feline_grimace([1, 1, 1, 1, 0]).above is True
    hidden = feline_grimace([2, None, 1, 0, 0])
    assert (hidden.points, hidden.most, hidden.above) == (3, 8, False)
    for units in ([1] * 4, [3, 0, 0, 0, 0], [None] * 5):
        with pytest.raises(ValueError):
            feline_grimace(units)


# ---- All together ----------------------------------------------------------------------


def test_a_cohort_is_chosen_by_procedure_surgeon_and_period() -> None:
    other = replace(DOG, id=2, surgeon="Dr. Lark", surgery=date(2026, 4, 1))
    both = (DOG, other)
    assert chosen(both, procedure="tibial OSTEOTOMY") == both
    assert chosen(both, surgeon="Dr. Lark") == (other,)
    assert chosen(both, since=date(2026, 3, 2), until=date(2026, 3, 31)) == (DOG,)


def test_a_practice_with_nobody_has_a_cohort_too() -> None:
    empty = cohort([])
    assert empty.n == 0
    assert empty.caution is not None
    assert empty.flags == ()
    assert cohort([DOG]).toe_touching.n == 1
