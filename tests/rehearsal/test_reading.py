"""A story's file: generous where the format is open, and exact about what cannot be read."""

from __future__ import annotations

from datetime import date, datetime

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.protocol.problem import FlowError, Problem
from bot.rehearsal.story import read_story
from bot.rehearsal.values import (
    Answer,
    Close,
    Count,
    Course,
    Held,
    Keep,
    Moment,
    Never,
    Reply,
    Show,
    Some,
    Story,
    Take,
    Tap,
    Window,
    Write,
)

from .telling import practice

WHOLE = r"""story: Black stool holds the anti-inflammatory until a clinician releases it
order:
  patient: Clover
  medicines:
    - {name: carprofen 50 mg, sig: 1 tab q12h x 14d, kind: other, first_dose: 2026-03-05 08:00}
  hours: {morning: 07:30}
clinic: {phone: "+1 303 555 0100", opening: {mon: {opens: 08:00, closes: 12:00}}}
household: {robin: en, lucia: es}
staff: {pell: staff, wrenfield: clinician}
events:
  - {at: day 3 13:00, robin: "threw up twice, her poop is black"}
  - {at: "day 3 13:05", lucia: {tap: "Noted", of: eating}}
  - at: day 3 13:06
    lucia: {picture: blurred}
  - {at: day 3 13:07, robin: {reply: "yes, 38.5", to: How is}}
  - {at: day 3 13:20, pell: {take: newest}}
  - {at: day 3 13:30, pell: {answer: "No more."}}
  - {at: day 3 13:31, pell: {close: newest, outcome: seen}}
  - {at: day 3 18:00, wrenfield: {release: carprofen}}
  - {at: day 3 24:00, wrenfield: {died: true}}
expect:
  - {from: day 3 13:00, until: day 3 18:00, to: robin, never: "Give carprofen"}
  - {to: staff, some: black, at_most: 3}
  - {at: day 3 13:01, cases: {open: 1, urgency: same_day, taken: 0}}
  - {at: day 3 14:00, held: [Carprofen, walks]}
  - {at: day 3 18:01, held: []}
  - {at: day 3 13:01, noted: {about: stool, value: black}}
  - {over: true}
"""


def read(text: str) -> Story:
    return read_story(text, "clover.yaml", practice().protocols)


def test_all_of_a_story_is_read() -> None:
    story = read(WHOLE)
    assert story.plan.patient == "Clover"
    assert story.plan.weight_kg == 22.7  # from the example
    assert [one.name for one in story.plan.medicines] == ["carprofen"]
    assert (story.plan.hours.morning.hour, story.plan.hours.evening.hour) == (7, 20)
    assert story.clinic.phone == "+1 303 555 0100"
    assert list(story.clinic.opening) == ["mon"]  # a day left out is closed
    assert story.household == {"robin": "en", "lucia": "es"}
    assert [type(one.act) for one in story.events] == [
        Write, Tap, Show, Reply, Take, Answer, Close, Keep, Course,
    ]  # fmt: skip
    assert story.events[-1].at == Moment(4, 0)
    assert story.events[0].line == 11
    demands = [one.demand for one in story.expect]
    window = Window(Moment(3, 13 * 60), Moment(3, 18 * 60), ("robin",))
    assert isinstance(demands[0], Never)
    assert demands[0].window == window
    assert isinstance(demands[1], Some)
    assert isinstance(demands[2], Count)
    assert Held(Moment(3, 14 * 60), frozenset({"carprofen", "walks"})) in demands


def test_the_examples_days_are_counted_from_the_storys_own_surgery() -> None:
    story = read(WHOLE.replace("  patient: Clover\n", "  surgery: 2026-10-30\n").replace(
        "2026-03-05", "2026-11-01"))  # fmt: skip
    assert story.plan.surgery == date(2026, 10, 30)
    assert story.plan.home == datetime(2026, 10, 31, 10, 30)


def test_another_species_and_another_protocol_take_none_of_the_examples_figures() -> None:
    assert read("order: {species: cat}\nevents: []\nexpect: []\n").plan.walks is None
    for name in practice().protocols:
        species = practice().protocols[name].species
        story = read(f"order: {{protocol: {name}, species: {species[0]}}}\nevents: []\nexpect: []")
        assert story.plan.protocol == name


def test_what_happens_is_played_in_order_of_time() -> None:
    story = read("""
household: [robin]
events:
  - {at: day 3 13:00, robin: third}
  - {at: day 2 8:05, robin: first}
  - {at: day 2 08:05, robin: "second"}
expect: []
""")
    assert [one.act for one in story.events] == [Write("first"), Write("second"), Write("third")]


@pytest.mark.parametrize(
    ("old", "new", "line", "words"),
    [
        ("day 3 13:00, robin", "day 3, robin", 11, "is no moment"),
        ("day 3 13:00, robin", "day 3 25:00, robin", 11, "is no moment"),
        ('robin: "threw', 'robyn: "threw', 11, "Write robin"),
        ("{tap: ", "{tab: ", 12, "Write tap"),
        ("of: eating", "off: eating", 12, "Write of"),
        ("picture: blurred", "picture: fuzzy", 14, "no such picture"),
        (", to: How is", "", 15, "a reply to nothing"),
        ("outcome: seen", "outcome: send", 18, "Write seen"),
        ("wrenfield: {release", "lucia: {release", 19, "no such action"),
        ("to: robin, never", "to: robyn, never", 22, "Write robin"),
        ('never: "Give', 'never: "(Give', 22, "no regular expression"),
        ("until: day 3 18:00", "until: day 3 12:00", 22, "no time lies between"),
        ("at_most: 3", "at_most: few", 23, "whole number"),
        ("urgency: same_day", "urgency: sameday", 24, "Write same_day"),
        ("{at: day 3 14:00, held", "{held", 25, "not said when"),
        ("value: black", "value: blac", 27, "Write black"),
        ("about: stool", "about: stol", 27, "Write stool"),
        ("over: true", "over: maybe", 28, "over: true"),
        ("over: true", "ovr: true", 28, "Write over"),
        ("robin: en", "robin: fr", 8, "no such language"),
        ("pell: staff", "pell: stuff", 9, "Write staff"),
        ("pell: staff", "robin: staff", 9, "already"),
        ("patient: Clover", "patent: Clover", 3, "patent"),
        ("hours: {morning: 07:30}", "protocol: general", 6, "no protocol"),
        ("q12h x", "q12x", 5, "no interval"),
        ('phone: "+1 303 555 0100"', "phone: 12", 7, "phone"),
        ("events:", "event:", 10, "Write events"),
        ('black"}', "black}", 11, "not rightly closed"),
    ],
)
def test_what_cannot_be_read_is_told_with_its_line(
    old: str, new: str, line: int, words: str
) -> None:
    assert old in WHOLE
    with pytest.raises(FlowError) as error:
        read(WHOLE.replace(old, new, 1))
    told = [str(one) for one in error.value.problems]
    assert any(one.startswith(f"clover.yaml:{line}:") and words in one for one in told), told


LINES = WHOLE.splitlines()


@settings(max_examples=150, deadline=None)
@given(
    st.integers(0, len(LINES) - 1),
    st.integers(0, 90),
    st.sampled_from(["", "{", "}", "[", "]", ":", " ", ",", '"', "true", "- ", "3", "&a", "null"]),
    st.integers(0, 8),
)
def test_any_slip_of_the_pen_gives_a_story_or_a_line(
    line: int, place: int, put: str, drop: int
) -> None:
    changed = LINES[line][:place] + put + LINES[line][place + drop :]
    text = "\n".join([*LINES[:line], changed, *LINES[line + 1 :]])
    try:
        wrong = list[Problem]()
        read(text)
    except FlowError as error:
        wrong = list(error.problems)
    assert all(0 < one.line <= len(LINES) + 1 for one in wrong)
