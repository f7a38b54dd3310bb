"""Enrolment as staff write it: what is wrong is named with its line and its mend."""

from __future__ import annotations

from datetime import date
from importlib.resources import files

import pytest

from bot.model.protocol import Protocol
from bot.plan.order import check_plan, load_plan, read_order
from bot.protocol.problem import FlowError
from bot.protocol.yaml_lines import load_model

EXAMPLE = files("flows").joinpath("enrolment-example.yaml").read_text("utf-8")
GENERAL = load_model(
    files("flows").joinpath("protocols", "general-orthopaedic.yaml").read_text("utf-8"),
    "general-orthopaedic.yaml",
    Protocol,
)
PROTOCOLS = {GENERAL.protocol: GENERAL}
TODAY = date(2026, 3, 4)


def said(text: str, today: date = TODAY, protocol: Protocol = GENERAL) -> list[str]:
    """Errors, else warnings, as staff read them."""
    try:
        return [
            str(p) for p in read_order(text, "order.yaml", {protocol.protocol: protocol}, today)[1]
        ]
    except FlowError as error:
        return str(error).splitlines()


def changed(*pairs: tuple[str, str]) -> str:
    text = EXAMPLE
    for old, new in pairs:
        assert old in text
        text = text.replace(old, new, 1)
    return text


def line(words: str, text: str = EXAMPLE) -> int:
    return next(n for n, line in enumerate(text.splitlines(), 1) if words in line)


def test_the_example_is_right_as_it_stands() -> None:
    plan, warnings = read_order(EXAMPLE, "enrolment-example.yaml", PROTOCOLS, TODAY)
    assert warnings == []
    assert plan == load_plan(EXAMPLE, "enrolment-example.yaml")
    assert [medicine.name for medicine in plan.medicines] == [
        "cephalexin",
        "carprofen",
        "gabapentin",
    ]


@pytest.mark.parametrize(
    ("old", "new", "where", "what"),
    [
        ("protocol: general-", "protocol: genral-", "protocol: g", "mean general-orthopaedic?"),
        ("# protocol_version: 1", "protocol_version: 9", "# protocol_version", "version 9"),
        ("cone_last", "coen_last", "cone_last", "Did you mean cone_last?"),
        ("cone_last: 13", "cone_last: -1", "cone_last", "before the surgery"),
        ("surgery: 2026-03-03", "surgery: 2025-03-03", "surgery:", "ended 310 days ago"),
        ("2026-03-05 08:00", "2026-03-02 08:00", "2026-03-05 08:00", "before the surgery"),
        ("min_gap_hours: 8", "min_gap_hours: 20", "min_gap_hours", "more than one every 12 hours"),
    ],
)  # fmt: skip
def test_an_error_stops_the_enrolment(old: str, new: str, where: str, what: str) -> None:
    problems = [each for each in said(changed((old, new))) if "warning: " not in each]
    assert len(problems) == 1
    assert problems[0].startswith(f"order.yaml:{line(where)}:")
    assert what in problems[0]


def test_a_surgery_still_to_come() -> None:
    assert "lies in the future" in said(EXAMPLE, date(2026, 3, 2))[0]


def test_a_species_that_the_protocol_is_not_for() -> None:
    dogs = GENERAL.model_copy(update={"species": ("dog",)})
    problems = said(changed(("species: dog", "species: cat")), protocol=dogs)
    assert "is not for a cat" in problems[0]
    assert "It is for dog" in problems[0]


def test_every_dose_before_going_home() -> None:
    problems = said(changed(("2026-03-04 20:00", "2026-03-03 08:00"), ("days: 7", "days: 1")))
    assert "cephalexin: every dose lies before going home" in problems[0]


@pytest.mark.parametrize(
    ("old", "new", "where", "what"),
    [
        ("2026-03-05 08:00", "2026-03-03 08:00", "2026-03-05 08:00", "3 of its 28 doses"),
        ("2026-03-05 08:00", "2026-03-05 08:30", "2026-03-05 08:00", "two messages instead of one"),
        ("2026-03-05 08:00", "2026-03-20 08:00", "2026-03-05 08:00", "more than a week"),
        ("2026-03-05 08:00", "2026-03-05 06:00", "2026-03-05 08:00", "quiet hours (06:00)"),
        ("days: 14", "days: 60", "days: 14", "5 days after the course has ended"),
        ("min_gap_hours: 8", "min_gap_hours: 12", "min_gap_hours", "leaves no room"),
        ("min_gap_hours: 8", "min_gap_hours: 4", "min_gap_hours", "as close as 4 hours"),
        ("bedtime: 21:30", "bedtime: 23:00", "bedtime", "come at 21:55"),
        ("midday: 13:00", "midday: 21:00", "hours:", "do not follow one another"),
        ("home: 2026-03-04", "home: 2026-03-19", "home:", "16 days after surgery is unusual"),
        ("start_minutes: 5", "start_minutes: 30", "walks:", "longer than their cap"),
        ("cone_last: 13", "cone_last: 70", "cone_last", "after the course's last day"),
    ],
)  # fmt: skip
def test_a_warning_stops_nothing(old: str, new: str, where: str, what: str) -> None:
    problems = [each for each in said(changed((old, new))) if what in each]
    assert len(problems) == 1
    assert "warning: " in problems[0]
    near = int(problems[0].split(":")[1])
    assert near in (line(where), line(where) + 1)


def test_more_messages_in_a_day_than_anyone_wants() -> None:
    extra = "".join(
        f"""  - name: drops {n}
    amount: {{en: one drop, es: una gota}}
    every_hours: 8
    first_dose: 2026-03-04 1{n}:00
    days: 5
"""
        for n in (2, 4, 6)
    )
    assert any(
        "messages, more than 6" in each
        for each in said(changed(("\n# The clinician's own", f"{extra}\n#")))
    )


def test_without_a_file_problems_still_say_what_and_how() -> None:
    plan = load_plan(EXAMPLE, "x").model_copy(update={"species": "cat", "protocol": "other"})
    problems = check_plan(plan, GENERAL, TODAY)
    assert [p.what for p in problems] == ["this is not the plan's protocol but general-orthopaedic"]
    assert all(p.mend for p in problems)


def test_a_slip_in_the_file_keeps_its_line() -> None:
    with pytest.raises(FlowError) as caught:
        load_plan(changed(("zone: America/Denver", "zone: Denver")), "order.yaml")
    assert caught.value.problems[0].line == line("zone:")
