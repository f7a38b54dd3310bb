"""The demo's course: invented throughout, within the label's doses, and loaded strictly."""

from __future__ import annotations

import re
from datetime import UTC, datetime, time
from pathlib import Path

import pytest

from bot.plan.words import DOSE_CHOICES
from bot.protocol.library import protocols
from bot.protocol.problem import FlowError
from demo.scenario import HERE, Scenario, load_clinic, load_scenario, order_text

LB_PER_KG = 2.20462


@pytest.fixture(scope="module")
def course() -> Scenario:
    return load_scenario()


def test_every_phone_number_is_set_aside_for_fiction() -> None:
    """555-0100 to 555-0199 (North American Numbering Plan; from memory)."""
    for name in ("scenario.yaml", "clinic.yaml"):
        text = (HERE / name).read_text(encoding="utf-8")
        numbers = re.findall(r"\+1[ \d]+", text)
        assert numbers
        assert all(re.fullmatch(r"\+1 \d{3} 555 01\d\d", number.strip()) for number in numbers)


@pytest.mark.parametrize(
    ("medicine", "least", "most", "source"),
    [
        ("carprofen", 0.9 * LB_PER_KG, 1.0 * LB_PER_KG, "21 CFR 520.304: 1 mg/lb every 12 h"),
        ("cephalexin", 21.5, 22.5, "21 CFR 520.376: 22 mg/kg every 12 h"),
        ("gabapentin", 5, 10, "Today's Veterinary Practice 2018: 5 to 10 mg/kg every 12 h"),
    ],
)
def test_doses_keep_to_the_label(
    course: Scenario, medicine: str, least: float, most: float, source: str
) -> None:
    found = next(m for m in course.plan.medicines if m.name == medicine)
    for words in (found.amount.en, found.amount.es):
        (milligrams,) = re.findall(r"([\d.]+) mg", words)
        assert least <= float(milligrams) / course.plan.weight_kg <= most, source
    assert found.every_hours == 12


def test_the_course_holds_what_a_course_may_bring(course: Scenario) -> None:
    says = " ".join(step.say or step.edit or "" for step in course.steps)
    assert any(step.enrol for step in course.steps)
    assert sum(step.join for step in course.steps) == 2
    assert course.pauses, "a missed dose"
    assert "is that normal?" in says
    assert any(step.at < time(6) and step.say for step in course.steps), "a red flag at night"
    assert any(step.edit for step in course.steps)
    assert "deshacer" in says
    assert {step.send for step in course.steps} >= {"picture", "film"}
    assert {step.press for step in course.steps} >= {"I take it", "Close > Advice given"}
    assert course.steps[-1].day > protocols()[course.plan.protocol].spans["last"]


def test_every_ordinary_button_is_one_that_the_protocol_shows(course: Scenario) -> None:
    activities = protocols()[course.plan.protocol].activities
    choices = [choice for activity in activities for choice in activity.choices]
    for routine in course.routines:
        lang = course.people[routine.who].language
        labels = [c.label.say(lang).casefold() for c in (*choices, *DOSE_CHOICES)]
        for good in routine.good:
            assert any(good.press.casefold() in label for label in labels), good.press


def test_who_answers_and_with_what(course: Scenario) -> None:
    evening = course.routine(course.when(3, time(20)))
    assert evening is not None
    assert evening.who == "partner"
    labels = ["✓ 1, 2 hecho", "1 · Ya se la di", "1 · No la quiso", "3 · Las dos cosas bien"]
    assert evening.pick(labels, 3) == "✓ 1, 2 hecho"
    assert evening.pick(labels[1:], 3) == "1 · Ya se la di"
    assert evening.pick(["Deshacer mi último toque"], 3) is None
    assert course.routine(course.when(6, time(20))) is None, "the evening that is forgotten"


def test_times_follow_the_patients_clock_over_the_change_to_summer_time(course: Scenario) -> None:
    assert course.when(11, time(20)) == datetime(2026, 3, 8, 3, 0, tzinfo=UTC)
    assert course.when(12, time(20)) == datetime(2026, 3, 9, 2, 0, tzinfo=UTC)
    assert course.day(datetime(2026, 3, 9, 5, 59, tzinfo=UTC)) == 12
    assert course.day(datetime(2026, 3, 9, 6, 0, tzinfo=UTC)) == 13


def test_the_order_for_the_staff_chat_is_the_plan_of_the_file(course: Scenario) -> None:
    from bot.plan.order import load_plan

    text = order_text()
    assert load_plan(text, "order") == course.plan
    assert len("/enrol\n" + text) <= 4096


def test_what_is_sent_is_there_and_small(course: Scenario) -> None:
    for attachment in course.attachments.values():
        assert 0 < attachment.path.stat().st_size <= 60_000
    assert load_clinic().zone == course.plan.zone


@pytest.mark.parametrize(
    ("old", "new", "mend"),
    [
        ("who: surgeon\n    chat: on-call", "who: gardener\n    chat: on-call", "gardener"),
        ("who: surgeon\n    chat: on-call", "who: owner\n    chat: on-call", "is not in a staff"),
        ("day: 4\n    at: 02:07", "day: 2\n    at: 02:07", "lies before the step above"),
        ("send: film", "send: song", "no attachment 'song'"),
        ("send: film", "send: film\n    say: look", "a step is one thing"),
        ("members: [surgeon]", "members: [nobody]", "no person 'nobody'"),
        ("zone: America/Denver", "zone: America/Nowhere", "no time zone"),
    ],
)
def test_a_broken_course_is_refused_and_says_why(
    tmp_path: Path, old: str, new: str, mend: str
) -> None:
    text = (HERE / "scenario.yaml").read_text(encoding="utf-8")
    assert old in text
    broken = tmp_path / "scenario.yaml"
    broken.write_text(text.replace(old, new, 1), encoding="utf-8")
    with pytest.raises(FlowError, match=mend):
        load_scenario(broken)
