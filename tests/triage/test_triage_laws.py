"""Laws that hold for any reply and any history."""

from __future__ import annotations

import math
import random
from datetime import UTC, datetime, timedelta

from hypothesis import given, settings
from hypothesis import strategies as st

from bot.model.observation import Noted, Observation
from bot.model.vocabulary import DETAILS, TOPICS, TRENDS
from bot.triage import default_rules, triage, urgency

NOW = datetime(2026, 3, 9, 7, 30, tzinfo=UTC)
FIGURE = st.one_of(
    st.none(), st.floats(0, 60), st.sampled_from([12.0, 24.0, math.nan, -1.0, math.inf])
)


@st.composite
def observations(draw: st.DrawFn) -> Observation:
    about = draw(st.sampled_from(sorted(TOPICS)))
    return Observation(
        about,
        draw(st.sampled_from(TOPICS[about])),
        count=draw(st.none() | st.integers(-1, 5)),
        hours=draw(FIGURE),
        celsius=draw(FIGURE) if about == "temperature" else None,
        med=draw(st.sampled_from([None, "carprofen", "gabapentin"])),
        trend=draw(st.sampled_from([None, *TRENDS])),
        detail=draw(st.sampled_from([None, *DETAILS.get(about, ())])),
    )


def replies(most: int) -> st.SearchStrategy[list[Noted]]:
    return st.lists(st.builds(lambda seen: Noted(seen, NOW, 9), observations()), max_size=most)


HISTORY = st.lists(
    st.builds(
        lambda seen, ago: Noted(seen, NOW - timedelta(hours=ago), 9 - int(ago // 24)),
        observations(),
        st.sampled_from([0.0, 1.0, 6.0, 12.0, 24.0, 24.5, 36.0, 72.0, 100.0]),
    ),
    max_size=12,
)
DAYS = st.integers(-1, 60)


@settings(max_examples=400, deadline=None)
@given(replies(4), observations(), HISTORY, DAYS)
def test_one_more_statement_never_lowers_the_urgency(
    reply: list[Noted], more: Observation, history: list[Noted], day: int
) -> None:
    def judged(new: list[Noted]) -> int:
        return urgency(triage(new, history, day=day, now=NOW, rules=default_rules()))

    assert judged([*reply, Noted(more, NOW, 9)]) >= judged(reply)


@settings(max_examples=300, deadline=None)
@given(replies(4), HISTORY, DAYS, st.randoms(use_true_random=False))
def test_the_order_of_what_was_said_does_not_matter(
    reply: list[Noted], history: list[Noted], day: int, chance: random.Random
) -> None:
    rules = default_rules()
    straight = triage(reply, history, day=day, now=NOW, rules=rules)
    shuffled, past = [*reply], [*history]
    chance.shuffle(shuffled)
    chance.shuffle(past)
    assert repr(triage(shuffled, past, day=day, now=NOW, rules=rules)) == repr(straight)


@settings(max_examples=300, deadline=None)
@given(replies(4), HISTORY, DAYS)
def test_findings_are_in_order_once_a_rule_and_of_this_reply(
    reply: list[Noted], history: list[Noted], day: int
) -> None:
    found = triage(reply, history, day=day, now=NOW, rules=default_rules())
    assert [f.urgency for f in found] == sorted((f.urgency for f in found), reverse=True)
    assert len({f.rule for f in found}) == len(found)
    said = {repr(n.observation) for n in reply}
    assert all(repr(o) in said for f in found for o in f.observations)
    assert not any(
        "{" in text or "}" in text for f in found for text in (f.because.en, f.because.es)
    )


# What is expected in the first days is no longer expected later: the table never relaxes.
@settings(max_examples=300, deadline=None)
@given(replies(3), DAYS, st.integers(1, 30))
def test_the_same_reply_on_a_later_day_is_never_less_urgent(
    reply: list[Noted], day: int, later: int
) -> None:
    rules = default_rules()
    early = urgency(triage(reply, [], day=day, now=NOW, rules=rules))
    assert urgency(triage(reply, [], day=day + later, now=NOW, rules=rules)) >= early
