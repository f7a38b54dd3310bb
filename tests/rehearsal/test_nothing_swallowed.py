"""Words that nobody understood reach a person in whatever state the course is, and whoever
wrote them is told whom to phone: at once, or after the question back had no answer."""

from __future__ import annotations

import pytest

from tests.rehearsal.telling import told

STATES = {
    "ordinary": '{at: day 3 09:00, robin: "thank you"}',
    "paused": '{at: day 3 09:00, wrenfield: {pause: "in hospital"}}',
    "held": "{at: day 3 09:00, pell: {hold: everything}}",
    "emergency": '{at: day 3 09:00, robin: "he is having a seizure right now"}',
    "death told": '{at: day 3 09:00, robin: "he died last night"}',
    "dead": "{at: day 3 09:00, wrenfield: {died: true}}",
    "ended": """{at: day 3 09:00, wrenfield: {say: "/end Biscuit"}}
        {at: day 3 09:01, wrenfield: {tap: "End early"}}
        {at: day 3 09:02, wrenfield: {reply: "moved away", to: "Why?"}}""",
}
WORDS = [
    "my phone number has changed to 555 0199",
    "the estimate you gave us looks strange",
    "nadie nos cuenta nada de nada",
    "qwo zzyx fnord",
    "lucia gives the pills tonight",
    "gave both",
]


@pytest.mark.parametrize("words", WORDS)
@pytest.mark.parametrize("state", STATES)
def test_a_person_reads_what_was_not_understood(state: str, words: str) -> None:
    events = f"""{{at: day 2 12:00, robin: "he ate his breakfast, all normal"}}
        {STATES[state]}
        {{at: day 3 15:00, robin: "{words}"}}"""
    asked = state in ("ordinary", "held")
    until = "15:21" if asked else "15:01"
    expect = f"""{{from: day 3 15:00, until: day 3 {until}, to: staff, some: "{words}"}}
        {{from: day 3 15:00, until: day 3 15:01, to: robin, some: "303 555"}}"""
    played = told(events, expect)
    assert played.holds, played.misses
