"""The one table of topics agrees with itself, and with the default rules' urgencies."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from bot.model.observation import Noted, Observation
from bot.model.topics import TABLE, denied, told_by_no, told_by_yes, urgency_of
from bot.model.urgency import Urgency
from bot.model.vocabulary import ASKED
from bot.triage import default_rules, triage
from bot.triage import urgency as highest

NOW = datetime(2000, 1, 1, 12, tzinfo=UTC)
DAYS = (0, 2, 4, 8, 15, 30)
PROTOCOLS = (None, "amputation")
FIGURES: dict[str, tuple[dict[str, float], ...]] = {
    "temperature": ({"celsius": 41.0}, {"celsius": 36.0}, {"celsius": 38.5}),
}


def _highest(about: str, value: str) -> Urgency:
    found = [Urgency.none]
    for day in DAYS:
        for species in ("dog", "cat"):
            for detail in (None, *TABLE[about].details):
                for more in FIGURES.get(about, ({}, {"hours": 30.0})):
                    said = Observation(about, value, detail=detail, **more)  # type: ignore[arg-type]
                    for protocol in PROTOCOLS:
                        findings = triage(
                            [Noted(said, NOW, day)], (), day=day, now=NOW + timedelta(minutes=1),
                            rules=default_rules(), species=species, protocol=protocol,
                        )  # fmt: skip
                        found.append(highest(findings))
    return max(found)


@pytest.mark.parametrize("about", TABLE)
def test_the_urgency_of_each_value_is_what_the_rules_give(about: str) -> None:
    for value in TABLE[about].names:
        assert urgency_of(about, value) == _highest(about, value), value


@pytest.mark.parametrize("about", TABLE)
def test_a_topic_speaks_of_its_own_values(about: str) -> None:
    topic = TABLE[about]
    assert sorted(topic.from_mildest) == sorted(topic.names)
    assert {topic.good, topic.no, *(topic.how_much or ())} - {""} <= set(topic.names)
    for value in topic.names:
        assert denied(about, value) in (None, *topic.names)
        assert denied(about, value) != value


@pytest.mark.parametrize("asked", ASKED)
def test_a_bare_answer_never_tells_an_alarm(asked: str) -> None:
    said = [*told_by_yes(asked), told_by_no(asked)]
    assert all(urgency_of(*one) <= Urgency.none for one in said if one)
