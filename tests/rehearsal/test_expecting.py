"""Expectations over a conversation that is simply there."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from bot.model.observation import Observation
from bot.model.urgency import Urgency
from bot.rehearsal.expect import HeldNames, OpenCase, Played, State, compare, moments
from bot.rehearsal.transcript import Edited, Face, Message, Toast, Transcript
from bot.rehearsal.values import Moment

from .telling import story

START = datetime(2026, 3, 3, tzinfo=UTC)
ROBIN, LUCIA, DESK = 1, 2, -1


def at(moment: Moment) -> datetime:
    return START + timedelta(days=moment.day, minutes=moment.minute)


def played(asked: tuple[Moment, ...]) -> Played:
    """Day 3: a prompt at 08:00 and its edit at 09:00, something to Lucía, a case."""
    said = Transcript()
    morning = START + timedelta(days=3, hours=8)
    prompt = Message(ROBIN, Face(morning, "Give carprofen now", ("Given", "All done")))
    said.entries += [prompt, Message(LUCIA, Face(morning, "Dé carprofeno"))]
    hour = timedelta(hours=1)
    prompt.edits.append(Face(morning + hour, "Give carprofen now ✓ given"))
    said.entries += [
        Edited(prompt, prompt.edits[0]),
        Toast(ROBIN, Face(morning + hour, "Noted: given")),
        Message(DESK, Face(morning + 2 * hour, "TODAY black stool", ("I take it",))),
        Message(DESK, Face(morning - 40 * hour, "set-up"), rehearsed=False),
    ]
    known = State(
        (OpenCase(Urgency.same_day, True), OpenCase(Urgency.next_day, False)),
        HeldNames(frozenset({"carprofen", "walks"})),
        (Observation("vomiting", "yes", count=2), Observation("stool", "black", unsure=True)),
    )
    chats = {
        "robin": {ROBIN}, "lucia": {LUCIA}, "pell": {DESK}, "household": {ROBIN, LUCIA},
        "staff": {DESK}, "anyone": {ROBIN, LUCIA, DESK}, "wrenfield": {DESK},
    }  # fmt: skip
    return Played(
        said, chats, dict.fromkeys(asked, known), at, lambda when: f"{when:%H:%M}", morning
    )


def holds(expect: str) -> bool:
    expected = story('{at: day 3 08:00, robin: "x"}', expect).expect
    return not compare(expected, played(moments(expected)))


@pytest.mark.parametrize(
    ("expect", "wanted"),
    [
        ("{to: robin, some: carprofen}", True),
        ("{to: robin, some: CARPROFEN NOW}", True),
        ("{to: robin, some: all done}", True),  # a button
        ("{to: robin, some: meloxicam}", False),
        ("{to: household, some: carprofeno}", True),
        ("{to: [robin, staff], some: carprofeno}", False),
        ("{some: carprofeno}", True),
        ("{to: pell, some: black}", True),
        ("{to: staff, some: set-up}", False),
        ("{to: staff, never: set-up}", True),
        ("{to: robin, some: ✓ given}", True),  # as it was edited to
        ("{to: robin, never: ✓ given}", True),  # never of edits
        ("{to: robin, some: noted}", True),  # short words on the button
        ("{to: robin, never: noted}", True),
        ("{from: day 3 09:00, until: day 3 09:01, to: robin, some: ✓}", True),
        ("{from: day 3 09:00, until: day 3 09:01, to: robin, never: carprofen}", True),
        ("{from: day 3 08:00, until: day 3 08:01, to: robin, never: carprofen}", False),
        ("{from: day 3 07:00, until: day 3 08:00, to: robin, never: carprofen}", True),
        ("{from: day 3 08:01, to: robin, never: carprofen}", True),
        ("{until: day 3 08:01, to: robin, some: carprofen}", True),
        ("{at: day 3 08:00, to: robin, some: carprofen}", True),
        ("{at: day 3 07:59, to: robin, some: carprofen}", False),
        ("{to: robin, at_most: 1}", True),
        ("{to: robin, at_most: 0}", False),
        ("{to: household, at_least: 2}", True),
        ("{to: household, at_least: 3}", False),
        ("{to: household, some: Give, at_most: 1}", True),
        ("{to: staff, at_most: 1, at_least: 1}", True),
        ("{to: robin, some: [carprofen, all done], never: [meloxicam, walk]}", True),
        ("{at: day 3 09:00, cases: {open: 2, urgency: same_day, taken: 1}}", True),
        ("{at: day 3 09:00, cases: {taken: 0}}", False),
        ("{at: day 3 09:00, cases: {urgency: emergency}}", False),
        ("{at: day 3 09:00, cases: 2}", True),
        ("{at: day 3 09:00, held: [walks, Carprofen]}", True),
        ("{at: day 3 09:00, held: [walks]}", False),
        ("{at: day 3 09:00, held: []}", False),
        ("{at: day 3 09:00, noted: {about: vomiting, value: yes}}", True),
        ("{at: day 3 09:00, noted: {about: vomiting, count: 2}}", True),
        ("{at: day 3 09:00, noted: {about: vomiting, count: 3}}", False),
        ("{at: day 3 09:00, not_noted: {about: vomiting, count: 3}}", True),
        ("{at: day 3 09:00, noted: {about: stool, unsure: true}}", True),
        ("{at: day 3 09:00, not_noted: {about: appetite}}", True),
        ("{over: true}", True),  # a message of the very moment is the answer
    ],
)
def test_each_says_what_it_says(expect: str, wanted: bool) -> None:
    assert holds(expect) is wanted
