"""What people of a story do, done by the product's own buttons and commands."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

import pytest

from bot.model.chart import Case, Chart
from bot.model.hold import ByClinician, FromStaff, HeldMedicine, Hold
from bot.model.ids import CaseId, EventId, HoldId, MemberId, PatientId
from bot.model.settings import PagingStep
from bot.model.urgency import Urgency
from bot.rehearsal.play import held_of

from .telling import PEOPLE, story, told


def wrong(events: str, expect: str, more: str = PEOPLE) -> list[tuple[int, str]]:
    return [(miss.line, miss.why) for miss in told(events, expect, more).misses]


def test_a_button_is_found_by_its_words_on_the_newest_message() -> None:
    assert not wrong(
        """
        {at: day 2 08:05, robin: {tap: "1 · GIVEN"}}
        {at: day 2 08:35, lucia: {tap: "2 · ya se la di", of: carprofen}}
        """,
        """
        {at: day 2 08:06, noted: {about: dose, value: given, med: cephalexin}}
        {at: day 2 08:06, not_noted: {about: dose, value: given, med: carprofen}}
        {at: day 2 08:36, noted: {about: dose, value: given, med: carprofen}}
        {from: day 2 08:35, until: day 2 08:36, to: robin, some: "✓ Given, 08:35, lucia"}
        """,
    )


def test_a_button_that_is_not_there_fails_the_story_and_the_story_goes_on() -> None:
    found = wrong(
        """
        {at: day 2 08:05, robin: {tap: "Nonsense"}}
        {at: day 2 08:06, robin: "she vomited twice"}
        """,
        "{at: day 2 08:07, cases: {open: 1}}",
    )
    assert found == [(4, "there is no button 'Nonsense'")]


def test_an_edit_a_reply_and_a_nurse_who_may_not() -> None:
    assert not wrong(
        """
        {at: day 3 10:00, robin: "she eats well"}
        {at: day 3 10:01, robin: {edit: "she eats nothing"}}
        {at: day 3 10:02, pell: {take: newest}}
        {at: day 3 10:03, wrenfield: {take: newest}}
        {at: day 3 10:04, pell: {answer: "Offer some chicken."}}
        {at: day 3 10:05, lucia: {reply: "gracias", to: chicken}}
        {at: day 3 10:06, pell: {stop: carprofen}}
        {at: day 3 10:07, wrenfield: {stop: carprofen}}
        {at: day 3 10:08, pell: {close: newest, outcome: seen}}
        """,
        """
        {at: day 3 10:00, noted: {about: appetite, value: normal}}
        {at: day 3 10:01, not_noted: {about: appetite, value: normal}}
        {at: day 3 10:02, cases: {open: 1, taken: 1}}
        {at: day 3 10:04, to: household, some: chicken, at_most: 2}
        {at: day 3 10:06, to: staff, some: "clinician"}
        {at: day 3 10:06, to: household, at_most: 0}
        {at: day 3 10:07, to: household, some: "no more carprofen"}
        {from: day 3 19:00, until: day 3 21:00, to: robin, never: "Give carprofen"}
        {from: day 3 19:00, until: day 3 21:00, to: robin, some: "Give cephalexin"}
        {at: day 3 10:09, cases: {open: 0}}
        """,
    )


def test_a_pause_its_end_and_a_death() -> None:
    assert not wrong(
        """
        {at: day 3 10:00, wrenfield: {pause: "in hospital"}}
        {at: day 5 10:00, wrenfield: {resume: "home again"}}
        {at: day 7 10:00, wrenfield: {died: true}}
        """,
        """
        {from: day 3 10:01, until: day 5 10:00, to: household, at_most: 0}
        {from: day 5 19:00, until: day 5 21:00, to: robin, at_least: 1}
        {over: true}
        """,
    )


@pytest.mark.parametrize("light", ["sharp", "blurred", "dark"])
def test_a_picture_is_looked_at(light: str) -> None:
    """The recheck asks for one: a poor one is asked for again, a good one is shown."""
    again = light != "sharp"
    assert not wrong(
        f"""
        {{at: day 12 13:10, robin: {{picture: {light}}}}}
        {{at: day 12 13:20, lucia: {{film: clear}}}}
        """,
        f"""
        {{at: day 12 13:10, to: robin, {"some" if again else "never"}: "{light}|blur"}}
        {{from: day 12 13:10, until: day 12 13:11, to: staff, at_least: {1 if again else 2}}}
        {{from: day 12 13:20, until: day 12 13:21, to: staff, at_least: 2}}
        """,
    )


def test_the_clock_of_the_story_is_the_households_also_after_a_journey() -> None:
    assert not wrong(
        """
        {at: day 3 12:00, robin: "/zone America/New_York"}
        {at: day 4 12:00, robin: "she ate normal"}
        """,
        """
        {at: day 4 08:00, to: robin, some: "Give"}
        {at: day 4 12:00, to: robin, some: "Noted"}
        {from: day 4 08:01, until: day 4 09:00, to: robin, at_most: 0}
        """,
    )


def test_staff_read_nothing_of_how_the_story_was_set_up() -> None:
    assert not wrong(
        '{at: day 1 10:31, robin: "hello"}',
        """
        {until: day 2 06:00, to: staff, at_most: 0}
        {until: day 1 10:31, to: robin, some: "helper"}
        """,
    )


@pytest.mark.parametrize(
    ("names", "right"),
    [
        ("everything", True),
        ("carprofen, meloxicam", False),
        ("", False),
        ("gabapentin", True),  # what is held apart from the emergency
        ("cephalexin, carprofen, gabapentin, walks, sessions", True),
        ("cephalexin, carprofen, gabapentin, walks", False),
    ],
)
def test_while_everything_is_held_it_may_be_written_in_three_ways(names: str, right: bool) -> None:
    now = datetime(2026, 3, 6, 12, tzinfo=UTC)
    plan, protocol = (given := story('{at: day 2 08:00, robin: "hello"}')).plan, given.protocol
    by = FromStaff(MemberId(1), "pell", "", EventId("update:1"))
    hold = Hold(HoldId("1"), HeldMedicine("gabapentin"), now, by, ByClinician())
    case = Case(
        CaseId("1-1"),
        PatientId(1),
        "collapse",
        Urgency.emergency,
        "open",
        now,
        now,
        0,
        PagingStep(again_after_minutes=5),
        {},
    )
    chart = Chart(PatientId(1), plan, protocol, "active", now, None, cases=(case,), holds=(hold,))
    wanted = frozenset(name for name in names.split(", ") if name)
    assert held_of(chart, now).are(wanted) == right
    assert held_of(replace(chart, cases=()), now).are(wanted) == (names == "gabapentin")
