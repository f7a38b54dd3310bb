"""What the household is sent, and when."""

from __future__ import annotations

from collections import Counter, defaultdict
from datetime import UTC, date, datetime, time, timedelta
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.model.plan import Hours, Item, Plan, Prompt
from bot.plan.clock import day_of, to_utc, wall_at
from bot.plan.prompts import prompts, rebuild
from bot.plan.slots import at_home
from bot.plan.words import DOSE_CHOICES

from .patients import activity, households, medicine, plan, plans, protocol, same

NEAR = timedelta(minutes=45)
FULL = protocol()


def sent(plan: Plan, *activities: object) -> dict[str, list[str]]:
    """Prompt key → item ids."""
    course = protocol(*activities) if activities else FULL  # type: ignore[arg-type]
    return {p.key: [item.id for item in p.items] for p in prompts(plan, course)}


def items(plan: Plan) -> dict[str, tuple[Prompt, Item]]:
    return {item.id: (prompt, item) for prompt in prompts(plan, FULL) for item in prompt.items}


# ---- An ordinary day --------------------------------------------------------------------


def test_an_evening_is_one_message_with_the_dose_first() -> None:
    day = {key: ids for key, ids in sent(plan(medicine())).items() if key.startswith("d02")}
    assert day == {
        "d02:08:00": [
            "dose:carprofen:2026-03-05T08:00",
            "cold-pack:d02:morning",
            "incision:d02:morning",
        ],
        "d02:13:00": ["walk:d02:midday"],
        "d02:20:00": [
            "dose:carprofen:2026-03-05T20:00",
            "cold-pack:d02:evening",
            "appetite:d02:evening",
        ],
        "d02:21:30": ["cone:d02:bedtime"],
    }


def test_a_dose_names_medicine_amount_and_food_and_is_given_or_not() -> None:
    patient = plan(medicine(with_food=True))
    _, dose = items(patient)["dose:carprofen:2026-03-04T20:00"]
    assert dose.text.en == "Give carprofen: one tablet (50 mg), with food."
    assert dose.text.es == "Dé carprofen: una tableta (50 mg), con comida."
    assert (dose.med, dose.asks) == ("carprofen", "dose")
    assert dose.slot_at == to_utc(datetime(2026, 3, 4, 20), "America/Denver")
    notes = {choice.id: choice.notes[0].value for choice in DOSE_CHOICES}
    assert notes == {"given": "given", "refused": "refused", "missed": "missed"}
    assert all(len(words) <= 24 for c in DOSE_CHOICES for words in (c.label.en, c.label.es))


def test_walks_lengthen_week_by_week_to_the_cap() -> None:
    known = items(plan())
    said = [known[f"walk:d{day:02d}:midday"][1].text for day in (6, 7, 14, 55, 56)]
    assert said[0].en == "Walk Biscuit for 5 minutes, 3 times."
    assert said[1].es == "Pasee a Biscuit 10 minutos, 3 veces."
    assert [words.en.split()[3] for words in said] == ["5", "10", "15", "30", "30"]


def test_a_cat_is_not_walked() -> None:
    ids = {id.split(":")[0] for id in items(plan(species="cat"))}
    assert "litter" in ids
    assert "walk" not in ids


def test_the_clinicians_spans_go_first_and_the_last_day_is_included() -> None:
    shorter = plan(spans={"cone_last": 10, "last": 40})
    ids = items(shorter)
    assert "cone:d10:bedtime" in ids
    assert "cone:d11:bedtime" not in ids
    assert "end:d40:evening" in ids
    assert max(prompt.day for prompt, _ in ids.values()) == 40
    assert "end:d56:evening" in items(plan())


def test_a_dose_ordered_beyond_the_course_still_comes() -> None:
    order = medicine(days=60)
    asked = [item for _, item in items(plan(order)).values() if item.kind == "dose"]
    assert len(asked) == 120


def test_every_second_day() -> None:
    days = [id for id in items(plan()) if id.startswith("incision")]
    assert days[:3] == ["incision:d02:morning", "incision:d04:morning", "incision:d06:morning"]


def test_a_placeholder_that_nothing_fills_is_named() -> None:
    odd = activity("walk", text=same("Walk for {minuts} minutes"))
    with pytest.raises(ValueError, match=r"activity walk.*minuts.*\{minutes\}"):
        prompts(plan(), protocol(odd))


# ---- Coming home ------------------------------------------------------------------------


def test_nothing_comes_before_half_an_hour_at_home() -> None:
    first = next(iter(sent(plan(medicine())).items()))
    # 08:00 has passed: the notice for day 1 is brought on arrival, the cold pack is not.
    assert first == ("d01:11:00", ["home-hazards:d01:morning"])


def test_a_dose_due_on_arrival_is_asked_for_half_an_hour_later() -> None:
    order = medicine(first_dose=datetime(2026, 3, 4, 10, 40))
    prompt, dose = items(plan(order))["dose:carprofen:2026-03-04T10:40"]
    assert prompt.due_at == to_utc(datetime(2026, 3, 4, 11), "America/Denver")
    assert dose.slot_at == to_utc(datetime(2026, 3, 4, 10, 40), "America/Denver")


def test_doses_before_going_home_are_the_hospitals() -> None:
    order = medicine(first_dose=datetime(2026, 3, 3, 20))
    asked = [id for id in items(plan(order)) if id.startswith("dose")]
    assert asked[0] == "dose:carprofen:2026-03-04T20:00"
    assert len(asked) == 12


def test_home_at_night_the_arrival_notice_waits_for_the_morning() -> None:
    notice = activity("welcome", kind="notice", from_day=1, to_day=1)
    late = plan(home=datetime(2026, 3, 4, 23), surgery=date(2026, 3, 3))
    assert sent(late, notice) == {"d02:07:00": ["welcome:d01:morning"]}


# ---- Quiet hours ------------------------------------------------------------------------


def test_a_dose_at_night_comes_alone_and_all_else_moves_to_the_nearer_end() -> None:
    hours = Hours(bedtime=time(22, 30), morning=time(6, 30))
    day = sent(
        plan(medicine(first_dose=datetime(2026, 3, 4, 22)), hours=hours),
        activity("cone", at=("bedtime",)),
        activity("cold-pack", at=("morning",)),
    )
    assert day["d01:21:55"] == ["cone:d01:bedtime"]
    assert day["d01:22:00"] == ["dose:carprofen:2026-03-04T22:00"]
    assert day["d02:07:00"] == ["cold-pack:d02:morning"]


def test_a_bedtime_after_midnight_ends_its_own_day() -> None:
    owls = Hours(bedtime=time(0, 30), quiet_from=time(2), quiet_to=time(9), morning=time(10))
    day = sent(plan(hours=owls), activity("cone", at=("bedtime",), to_day=2))
    assert day == {"d02:00:30": ["cone:d01:bedtime"], "d03:00:30": ["cone:d02:bedtime"]}


def test_one_activity_moved_onto_itself_is_asked_once() -> None:
    hours = Hours(evening=time(21, 20))
    day = sent(plan(hours=hours), activity("cone", at=("evening", "bedtime")))
    assert day["d02:21:20"] == ["cone:d02:evening"]


# ---- What holds for every plan ----------------------------------------------------------


@given(plans())
def test_every_dose_is_asked_for_once_at_its_own_time(patient: Plan) -> None:
    arrival = to_utc(patient.home, patient.zone) + timedelta(minutes=30)
    ordered = {s.id: s.at for m in patient.medicines for s in at_home(patient, m)}
    asked = [
        (item.id, prompt.due_at, item.slot_at)
        for prompt in prompts(patient, FULL)
        for item in prompt.items
        if item.kind == "dose"
    ]
    assert sorted(id for id, _, _ in asked) == sorted(ordered)
    for id, due, slot in asked:
        assert slot == ordered[id]
        assert due == max(slot, arrival)


@given(plans())
def test_the_quiet_hours_are_kept_but_for_doses(patient: Plan) -> None:
    for prompt in prompts(patient, FULL):
        if patient.hours.quiet(wall_at(patient, prompt.due_at).time()):
            assert {item.kind for item in prompt.items} == {"dose"}


@given(plans())
def test_what_is_due_close_together_is_one_message(patient: Plan) -> None:
    """Unless both are doses, which never move, or one is a dose in the quiet hours."""
    for one, two in pairwise(prompts(patient, FULL)):
        if two.due_at - one.due_at <= NEAR:
            both_doses = all(p.items[0].kind == "dose" for p in (one, two))
            night = any(patient.hours.quiet(wall_at(patient, p.due_at).time()) for p in (one, two))
            assert both_doses or night


@given(plans())
def test_at_most_six_messages_a_day(patient: Plan) -> None:
    """Or one more than there are different dose times on that day, if those are more than
    five: a dose never moves."""
    course = prompts(patient, FULL)
    dose_times = Counter(p.day for p in course if p.items[0].kind == "dose")
    for day, number in Counter(prompt.day for prompt in course).items():
        assert number <= max(6, dose_times[day] + 1)


@given(plans(intervals=(8, 12, 24)))
def test_three_medicines_every_8_12_and_24_hours_make_at_most_six(patient: Plan) -> None:
    messages = Counter(prompt.day for prompt in prompts(patient, FULL))
    assert max(messages.values()) <= 6


@given(plans())
def test_the_course_starts_at_home_is_in_order_and_loses_nothing(patient: Plan) -> None:
    course = prompts(patient, FULL)
    arrival = to_utc(patient.home, patient.zone) + timedelta(minutes=30)
    assert all(prompt.due_at >= arrival for prompt in course)
    assert [p.due_at for p in course] == sorted(p.due_at for p in course)
    assert all(prompt.day == day_of(prompt.due_at, patient) for prompt in course)
    for names in ([p.key for p in course], [i.id for p in course for i in p.items]):
        assert len(set(names)) == len(names)
    home = day_of(arrival, patient)
    by_day: dict[str, set[int]] = defaultdict(set)
    for prompt in course:
        for item in prompt.items:
            if item.kind != "dose":
                name, day, _ = item.id.split(":")
                by_day[name].add(int(day[1:]))
    assert by_day["appetite"] >= set(range(home + 1, 57))
    assert by_day["cone"] >= set(range(home + 1, 15))
    assert by_day["recheck"] == {12}
    assert by_day["end"] == {56}


@given(plans())
def test_building_again_gives_the_same(patient: Plan) -> None:
    assert prompts(Plan.model_validate_json(patient.model_dump_json()), FULL) == prompts(
        patient, FULL
    )


@given(plans(), households())
def test_other_hours_keep_the_ids(patient: Plan, hours: Hours) -> None:
    def ids(patient: Plan) -> set[str]:
        first = to_utc(datetime.combine(patient.home.date(), time()), patient.zone)
        return {
            item.id
            for prompt in prompts(patient, FULL)
            for item in prompt.items
            if prompt.due_at > first + timedelta(days=2)
        }

    later = patient.model_copy(update={"hours": hours})
    lost = ids(patient) ^ ids(later)
    # Only what stands at the edge of the window, or met itself within 45 minutes, differs.
    assert not {id for id in lost if id.startswith("dose")}
    assert not {id for id in lost if f":d{(patient.home.date() - patient.surgery).days + 3}" in id}


# ---- Building again ---------------------------------------------------------------------


def test_a_rebuild_holds_what_is_still_to_come() -> None:
    patient = plan(medicine())
    now = to_utc(datetime(2026, 3, 5, 20), "America/Denver")
    left = rebuild(patient, FULL, now)
    assert left[0].key == "d02:21:30"  # what is due now has been sent
    assert left == tuple(p for p in prompts(patient, FULL) if p.due_at > now)


def test_later_hours_do_not_ask_again_for_what_came_already() -> None:
    patient = plan(medicine())
    now = to_utc(datetime(2026, 3, 5, 20, 15), "America/Denver")
    already = {i.id for p in prompts(patient, FULL) if p.due_at <= now for i in p.items}
    later = patient.model_copy(update={"hours": Hours(evening=time(21))})
    assert rebuild(later, FULL, now)[0].items[0].id == "cold-pack:d02:evening"
    asked = {i.id for p in rebuild(later, FULL, now, already) for i in p.items}
    assert asked.isdisjoint(already)
    assert "cold-pack:d03:evening" in asked


@given(plans(), st.integers(0, 56 * 24))
def test_a_rebuild_never_looks_back(patient: Plan, hours: int) -> None:
    now = datetime.combine(patient.surgery, time(), tzinfo=UTC) + timedelta(hours=hours)
    assert all(prompt.due_at > now for prompt in rebuild(patient, FULL, now))
