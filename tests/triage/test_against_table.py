"""``bot.triage`` against the table written a second time (``table.py``), on random replies."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import assume, example, given, settings
from hypothesis import strategies as st

from bot.model.ids import ObservationId
from bot.model.observation import Noted, Observation
from bot.model.vocabulary import DETAILS, TOPICS
from bot.triage import default_rules, triage, urgency
from tests.triage.table import look_up

SURGERY = datetime(2026, 3, 2, 12, tzinfo=UTC)
PAIRS = [(about, value) for about, values in TOPICS.items() for value in values]
FIGURES: dict[str, st.SearchStrategy[dict[str, object]]] = {
    "vomiting": st.fixed_dictionaries({"count": st.none() | st.integers(1, 9)}),
    "dose": st.fixed_dictionaries({"count": st.none() | st.integers(1, 4)}),
    "urine": st.fixed_dictionaries({"hours": st.none() | st.floats(0, 72)}),
    "swelling": st.fixed_dictionaries(
        {"trend": st.none() | st.sampled_from(["better", "same", "worse"])}
    ),
    "temperature": st.fixed_dictionaries(
        {"celsius": st.integers(365, 425).map(lambda tenths: tenths / 10)}
    ),
}


@st.composite
def observations(draw: st.DrawFn) -> Observation:
    """One statement, with the figures and details that a rule may look at."""
    about, value = draw(st.sampled_from(PAIRS))
    figures: dict[str, object] = draw(FIGURES[about]) if about in FIGURES else {}
    details = [word for word in DETAILS.get(about, ()) if _belongs(about, value, word)]
    detail = draw(st.none() | st.sampled_from(details)) if details else None
    return Observation(about, value, detail=detail, **figures)  # type: ignore[arg-type]


def _belongs(about: str, value: str, detail: str) -> bool:
    if about == "incision":
        return detail in {"open": ("edges", "deep")}.get(value, ()) or (
            value == "bleeding" and detail in ("heavy", "slow", "stopped")
        )
    return about != "weight_bearing" or value == "none"


def level(told: list[Observation], day: int) -> str:
    """What ``bot.triage`` makes of one reply with nothing said before it."""
    now = SURGERY + timedelta(days=day)
    new = [Noted(one, now, day, ObservationId(number)) for number, one in enumerate(told, 1)]
    return urgency(triage(new, [], day=day, now=now, rules=default_rules())).name


def _each_topic_once(told: list[Observation]) -> bool:
    """Two statements of one topic in a reply are joined by the rules in ways that the
    table does not speak of ("vomited twice" from two vomits): tested with bot.triage."""
    return len({one.about for one in told}) == len(told)


def _untold(one: Observation) -> bool:
    """A bleeding or open wound with nothing told of how bad: the table has no row for it."""
    return one.about == "incision" and one.value in ("open", "bleeding") and one.detail is None


@settings(max_examples=1500, deadline=None)
@given(
    told=st.lists(observations(), min_size=1, max_size=4).filter(_each_topic_once),
    day=st.integers(0, 60),
)
@example(told=[Observation("temperature", "measured", celsius=39.4)], day=9)
@example(told=[Observation("temperature", "measured", celsius=40.5)], day=9)
@example(told=[Observation("urine", "none", hours=24.0)], day=9)
def test_the_rules_say_what_the_table_says(told: list[Observation], day: int) -> None:
    assume(not any(map(_untold, told)))
    assert level(told, day) == look_up(told, day)[0]


@pytest.mark.parametrize(("about", "value"), PAIRS)
def test_every_finding_alone_on_every_day(about: str, value: str) -> None:
    for day in range(61):
        for detail in (None, *DETAILS.get(about, ())):
            if detail is None or _belongs(about, value, detail):
                told = [Observation(about, value, detail=detail)]
                if about == "temperature":
                    continue  # nothing without its figure
                if _untold(told[0]):
                    assert level(told, day) in ("same_day", "emergency")  # doubt never lowers
                    continue
                assert level(told, day) == look_up(told, day)[0], (told, day)
