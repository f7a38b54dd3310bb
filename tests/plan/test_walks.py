"""The walks week by week: longer only when what was told allows it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from pydantic import ValidationError

from bot.model.observation import Noted, Observation
from bot.model.plan import Plan, WalkOverride
from bot.model.protocol import Walks
from bot.model.text import LANGS, Text
from bot.model.urgency import Urgency
from bot.model.vocabulary import TOPICS
from bot.plan.prompts import prompts
from bot.plan.walks import WalkWeek, walk_days, walk_plan, walk_text, walk_weeks
from bot.triage import default_rules, triage, urgency

from .patients import activity, plan, protocol, same

COURSE = protocol()
SURGERY = datetime(2026, 3, 3, 12, tzinfo=UTC)
Said = tuple[int, str, str]


def told(day: int, about: str, value: str, hour: float = 0, **more: Any) -> Noted:
    at = SURGERY + timedelta(days=day, hours=hour)
    return Noted(Observation(about, value, **more), at, day)


def leg(*days: int, value: str = "partial") -> list[Noted]:
    return [told(day, "weight_bearing", value) for day in days]


WELL = leg(3, 10, 17, 24, 31, 38, 45, 52)
"""A limp, told once in every week: nothing better, nothing worse."""


def minutes(history: Sequence[Noted], day: int = 56, *said: WalkOverride, **changes: Any) -> str:
    """Minutes of every week up to ``day``, in a row."""
    weeks = walk_weeks(plan(**changes), COURSE, history, day, said)
    return " ".join(str(week.minutes) for week in weeks)


def on(day: int, *history: Noted, overrides: Sequence[WalkOverride] = ()) -> WalkWeek:
    return walk_plan(plan(), COURSE, [*WELL, *history], day, overrides)


# ---- What a week brings -----------------------------------------------------------------


def test_walks_lengthen_week_by_week_to_the_cap_while_all_goes_well() -> None:
    assert minutes(WELL) == "5 10 15 20 25 30 30 30 30"
    assert [on(day).change for day in (0, 6, 7, 13, 35, 42)] == [
        "start", "start", "advanced", "advanced", "advanced", "held",
    ]  # fmt: skip
    assert on(42).because.en == "This is as long as Dr Example ordered."


def test_the_clinicians_own_walks_go_before_the_protocols() -> None:
    own = Walks(start_minutes=3, step_minutes=2, cap_minutes=8, outings=4)
    assert minutes(WELL, 35, walks=own) == "3 5 7 8 8 8"
    assert walk_plan(plan(walks=own), COURSE, WELL, 7).outings == 4


def test_a_week_in_which_nobody_told_of_the_leg_holds_the_walks_and_says_so() -> None:
    quiet = [told(3, "walk", "done"), told(4, "energy", "normal"), *leg(10)]
    week = walk_plan(plan(), COURSE, quiet, 7)
    assert (week.minutes, week.change) == (5, "held")
    assert "nobody told how Biscuit walks" in week.because.en
    assert "nadie dijo cómo camina Biscuit" in week.because.es
    assert minutes(quiet, 14) == "5 5 10"


@pytest.mark.parametrize(
    ("about", "value"),
    [("pain", "mild"), ("mishap", "jumped"), ("swelling", "mild"), ("incision", "pus"),
     ("energy", "lethargic")],
)  # fmt: skip
def test_a_doubt_holds_the_walks(about: str, value: str) -> None:
    week = on(28, told(26, about, value))
    assert (week.minutes, week.change) == (20, "held")
    assert "(day 26)" in week.because.en


@pytest.mark.parametrize(
    "bad",
    [
        told(23, "pain", "moderate"),
        told(23, "pain", "severe"),
        told(23, "mobility", "worse"),
        told(23, "swelling", "marked"),
        told(23, "swelling", "mild", trend="worse"),
        told(23, "weight_bearing", "toe_touching"),
        told(23, "weight_bearing", "none"),
        told(23, "weight_bearing", "partial", detail="sudden"),
        told(23, "leg", "crooked"),
    ],
    ids=str,
)
def test_a_setback_steps_back_once(bad: Noted) -> None:
    """Told in week 3, which began longer: the lengthening goes at once, and next week
    is no longer; the week after goes on."""
    assert [on(day, bad).minutes for day in (22, 23, 27, 28)] == [20, 15, 15, 15]
    assert on(27, bad).change == "held"
    assert on(35, bad).minutes == 20


def test_a_setback_in_a_week_that_was_held_makes_the_next_one_shorter() -> None:
    week = on(35, told(24, "pain", "mild"), told(30, "pain", "severe"))
    assert (week.minutes, week.change) == (15, "stepped_back")
    assert week.because == Text(
        en="5 min shorter, because of what was told: strong pain (day 30).",
        es="5 min menos, por lo que se dijo: mucho dolor (día 30).",
    )


def test_a_mishap_alone_holds_and_a_mishap_then_worse_is_a_setback() -> None:
    held = told(22, "pain", "mild")
    jumped = told(30, "mishap", "jumped")
    assert on(35, held, jumped).minutes == 20
    week = on(35, held, jumped, told(32, "pain", "mild"))
    assert (week.minutes, week.change) == (15, "stepped_back")
    assert "a jump, then a bit sore (day 32)" in week.because.en
    assert "un salto y después un poco de dolor (día 32)" in week.because.es
    assert on(35, held, jumped, told(34, "pain", "mild")).minutes == 20


def test_a_limp_that_comes_back_holds_and_one_that_stays_does_not() -> None:
    better = [*leg(3), *leg(10, value="full"), *leg(17), *leg(24, 31)]
    weeks = walk_weeks(plan(), COURSE, better, 35)
    assert [week.minutes for week in weeks] == [5, 10, 15, 15, 15, 20]
    assert "a limp again (day 17)" in weeks[3].because.en


def test_what_is_common_in_the_first_week_does_not_hold() -> None:
    first = [told(1, "pain", "mild"), told(2, "swelling", "mild"), told(1, "energy", "lethargic"),
             told(1, "weight_bearing", "none"), told(2, "appetite", "less")]  # fmt: skip
    assert walk_plan(plan(), COURSE, [*first, *leg(6, value="toe_touching")], 7).minutes == 10


def test_a_hedged_setback_only_holds_and_hedged_good_news_does_not_lengthen() -> None:
    held = told(22, "pain", "mild")
    assert on(35, held, told(30, "mobility", "worse", unsure=True)).minutes == 20
    unsure = [told(3, "mobility", "better", unsure=True)]
    assert walk_plan(plan(), COURSE, unsure, 7).change == "held"


def test_never_shorter_than_the_start() -> None:
    week = walk_plan(plan(), COURSE, [told(5, "pain", "severe")], 7)
    assert (week.minutes, week.change) == (5, "held")


def test_bad_news_on_the_first_morning_takes_the_longer_walks_back() -> None:
    assert (on(14).minutes, on(14).change) == (15, "advanced")
    week = on(14, told(14, "mobility", "worse"))
    assert (week.minutes, week.change) == (10, "held")
    assert week.because.en == (
        "Back to 10 min, because of what was told this week: worse use of the leg (day 14)."
    )


def test_at_most_three_signs_are_named_the_heaviest_first() -> None:
    many = [told(22, "swelling", "mild"), told(23, "mishap", "fell"), told(24, "pain", "mild"),
            told(25, "vomiting", "bloody")]  # fmt: skip
    assert on(28, *many).because.en == (
        "Not longer this week, because of what was told: a fall, then a bit sore (day 24); "
        "some swelling (day 22); a fall (day 23)."
    )


# ---- The clinician's word ---------------------------------------------------------------


def word(day: int, **changes: Any) -> WalkOverride:
    return WalkOverride(from_day=day, author="Dr Example", reason="seen at the recheck", **changes)


def test_the_clinician_holds_advances_or_sets_the_minutes() -> None:
    held = [*WELL, told(12, "pain", "mild")]
    assert minutes(held, 28) == "5 10 10 15 20"
    assert minutes(held, 28, word(15, change="advance")) == "5 10 15 20 25"
    assert minutes(WELL, 28, word(14, change="hold")) == "5 10 10 15 20"
    assert minutes(WELL, 28, word(16, minutes=4, outings=2)) == "5 10 4 9 14"
    week = on(28, overrides=[word(16, minutes=4, outings=2)])
    assert week.outings == 2
    assert on(16, overrides=[word(16, minutes=4)]).because == Text(
        en="Dr Example decided: seen at the recheck",
        es="Dr Example lo decidió: seen at the recheck",
    )
    assert on(15, overrides=[word(16, minutes=4)]).change == "advanced"


def test_beyond_the_cap_is_the_clinicians_to_say_and_stays() -> None:
    assert minutes(WELL, 28, word(14, minutes=45)) == "5 10 45 45 45"


def test_what_was_told_before_the_clinicians_word_is_judged_by_it() -> None:
    before = [*WELL, told(14, "mobility", "worse")]
    assert minutes(before, 21, word(16, change="advance")) == "5 10 15 20"
    after = [*WELL, told(17, "mobility", "worse")]
    assert minutes(after, 21, word(16, change="advance")) == "5 10 15 10"


def test_of_two_words_the_later_counts() -> None:
    assert minutes(WELL, 14, word(14, minutes=20), word(14, change="hold")) == "5 10 10"
    assert minutes(WELL, 16, word(16, minutes=8), word(14, minutes=20)) == "5 10 8"


@pytest.mark.parametrize("changes", [{}, {"minutes": 5, "change": "hold"}, {"minutes": 0}])
def test_a_word_says_one_thing(changes: dict[str, Any]) -> None:
    with pytest.raises(ValidationError):
        word(3, **changes)


# ---- What goes out ----------------------------------------------------------------------


def test_a_walk_is_filled_again_on_the_day_and_nothing_else_is() -> None:
    patient = plan(patient="Bo {x}")
    items = {item.id: item for p in prompts(patient, COURSE) for item in p.items}
    week = walk_plan(patient, COURSE, [], 14)
    walk = items["walk:d14:midday"]
    assert walk.text.en == "Walk Bo {x} for 15 minutes, 3 times."
    assert walk_text(walk, week).text == Text(
        en="Walk Bo {x} for 5 minutes, 3 times.", es="Pasee a Bo {x} 5 minutos, 3 veces."
    )
    assert walk_text(walk, week).id == walk.id
    cone = items["cone:d14:bedtime"]
    assert walk_text(cone, week) is cone


def test_only_texts_with_the_figures_of_walks_are_kept_open() -> None:
    named = activity("named", text=same("Hello {name}"))
    items = [item for p in prompts(plan(), protocol(named)) for item in p.items]
    assert all(item.walk is None and item.text.en == "Hello Biscuit" for item in items)


# ---- Laws -------------------------------------------------------------------------------

BAD = tuple(
    {"about": about, "value": value}
    for about, values in {
        "pain": ("mild", "moderate", "severe"),
        "mobility": ("worse",),
        "weight_bearing": ("none",),
        "swelling": ("mild", "marked"),
        "mishap": TOPICS["mishap"],
        "leg": ("crooked",),
        "incision": ("pus", "odour", "open", "bleeding"),
        "vomiting": ("yes", "bloody"),
        "energy": ("quiet", "lethargic", "collapsed"),
    }.items()
    for value in values
)
GOOD = tuple(
    {"about": about, "value": value}
    for about, value in (
        ("weight_bearing", "full"), ("weight_bearing", "partial"), ("mobility", "better"),
        ("weight_bearing", "toe_touching"), ("mobility", "same"), ("pain", "none"),
        ("walk", "done"), ("swelling", "none"),
    )
)  # fmt: skip
DAYS = st.integers(0, 56)


@st.composite
def statements(draw: st.DrawFn, kinds: Sequence[dict[str, str]] = (*BAD, *GOOD)) -> Noted:
    return told(
        draw(DAYS),
        **draw(st.sampled_from(kinds)),
        hour=draw(st.integers(0, 11)),
        trend=draw(st.sampled_from([None, None, None, "worse"])),
        unsure=draw(st.sampled_from([False, False, True])),
    )


HISTORIES = st.lists(statements(), max_size=25)
BETTER = st.lists(statements(GOOD), min_size=10, max_size=25)
WALKS = st.builds(
    Walks,
    start_minutes=st.integers(1, 12),
    step_minutes=st.integers(0, 10),
    cap_minutes=st.integers(1, 40),
)
PLANS = st.builds(lambda walks: plan(walks=walks), WALKS)


@given(PLANS, HISTORIES | BETTER)
def test_never_above_the_cap_nor_more_than_one_step_longer(
    patient: Plan, history: list[Noted]
) -> None:
    walks = patient.walks
    assert walks
    weeks = walk_weeks(patient, COURSE, history, 56)
    for number, week in enumerate(weeks):
        assert 1 <= week.minutes <= min(walks.cap_minutes, walks.minutes_on(number * 7))
        before = weeks[number - 1].minutes if number else week.minutes
        assert week.minutes <= before + walks.step_minutes
        grew = {"advanced": week.minutes > before, "stepped_back": week.minutes < before}
        assert grew.get(week.change, week.minutes == before)
        assert all(week.because.say(lang) for lang in LANGS)


@example(plan(), [], [told(2, "weight_bearing", "none")], 7)  # common then, yet no good news
@given(PLANS, HISTORIES | BETTER, st.lists(statements(BAD), min_size=1, max_size=4), DAYS)
def test_more_bad_news_never_gives_more_minutes(
    patient: Plan, history: list[Noted], worse: list[Noted], day: int
) -> None:
    without = walk_plan(patient, COURSE, history, day).minutes
    assert walk_plan(patient, COURSE, [*history, *worse], day).minutes <= without


@given(HISTORIES | BETTER, DAYS, DAYS)
def test_what_was_decided_stays_whatever_is_told_later(
    history: list[Noted], day: int, later: int
) -> None:
    """So each past week can be explained from what was known then."""
    until = [noted for noted in history if noted.day <= day]
    then = walk_weeks(plan(), COURSE, until, day)
    now = walk_weeks(plan(), COURSE, history, max(day, later))
    assert now[: len(then) - 1] == then[:-1]
    assert walk_plan(plan(), COURSE, history, day) == then[-1]


@given(HISTORIES | BETTER, DAYS)
def test_a_day_shows_what_was_planned_when_it_began(history: list[Noted], day: int) -> None:
    """Or a chart would hold a walk against a plan that was made after it."""
    days = walk_days(plan(), COURSE, history, day)
    for on, shown in enumerate(days[:-1]):
        known = [noted for noted in history if noted.day < on]
        assert shown == walk_plan(plan(), COURSE, known, on)
    assert days[-1] == walk_plan(plan(), COURSE, history, day)


@given(HISTORIES, st.randoms(use_true_random=False))
def test_the_order_in_which_words_are_stored_does_not_matter(
    history: list[Noted], dice: Any
) -> None:
    apart = [replace(n, at=n.at + timedelta(minutes=i)) for i, n in enumerate(history)]
    shuffled = list(apart)
    dice.shuffle(shuffled)
    assert walk_weeks(plan(), COURSE, shuffled, 56) == walk_weeks(plan(), COURSE, apart, 56)


@st.composite
def anything(draw: st.DrawFn) -> Observation:
    about = draw(st.sampled_from(sorted(TOPICS.keys() - {"request"})))
    return Observation(
        about,
        draw(st.sampled_from(TOPICS[about])),
        count=draw(st.sampled_from([None, 1, 3])) if about == "vomiting" else None,
        celsius=draw(st.sampled_from([38.5, 39.3, 39.4, 40.6])) if about == "temperature" else None,
    )


@given(st.lists(anything(), min_size=1, max_size=3), DAYS, DAYS)
def test_a_week_with_a_red_flag_never_lengthens_the_next(
    said: list[Observation], day: int, other: int
) -> None:
    """Against the red-flag rules themselves: whatever they call urgent for the same day
    or sooner is no week for longer walks."""
    noted = [Noted(one, SURGERY + timedelta(days=day, hours=1), day) for one in said]
    earlier = [n for n in WELL if n.at < noted[0].at]
    found = triage(noted, earlier, day=day, now=noted[0].at, rules=default_rules())
    next_week = (day // 7 + 1) * 7
    week = walk_plan(plan(), COURSE, [*WELL, *noted], next_week)
    if urgency(found) >= Urgency.same_day:
        assert week.change not in ("advanced", "start")
        before = walk_plan(plan(), COURSE, [*WELL, *noted], next_week - 1)
        assert week.minutes <= before.minutes
