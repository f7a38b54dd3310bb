"""What earlier replies make of the present one."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from bot.model.observation import Noted, Observation
from bot.triage import default_rules, silence, triage, urgency
from tests.triage.conftest import Tell

SECOND = 1 / 3600


def test_vomiting_twice_counts_to_exactly_24_hours(tell: Tell) -> None:
    assert tell("vomiting yes", before={24: "vomiting yes"}).urgency == "same_day"
    assert tell("vomiting yes", before={24 + SECOND: "vomiting yes"}).urgency == "next_day"
    assert tell("appetite normal", before={2: "vomiting yes; vomiting yes"}).urgency == "none"


def test_a_reply_that_waited_is_judged_by_when_it_was_sent() -> None:
    sent, read = _noted("vomiting", hours_ago=12), _noted("vomiting", hours_ago=0).at
    earlier = _noted("vomiting", hours_ago=30)
    found = triage([sent], [earlier], day=5, now=read, rules=default_rules())
    assert urgency(found).name == "same_day"


def _noted(about: str, *, hours_ago: float) -> Noted:
    now = datetime(2026, 3, 9, 7, 30, tzinfo=UTC)
    return Noted(Observation(about, "yes"), now - timedelta(hours=hours_ago), 5)


def test_vomiting_and_not_eating_told_in_two_replies(tell: Tell) -> None:
    assert tell("appetite none", day=1, before={24: "vomiting yes"}).urgency == "same_day"
    assert tell("vomiting yes", day=1, before={3: "energy lethargic"}).urgency == "same_day"
    assert tell("appetite none", day=1, before={25: "vomiting yes"}).urgency == "none"


def test_a_leg_in_use_and_then_not_is_a_sudden_loss(tell: Tell) -> None:
    for use in ("full", "partial", "toe_touching"):
        case = tell("weight_bearing none", day=9, before={72: f"weight_bearing {use}"})
        assert case.urgency == "same_day"
    assert "day 6" in case.findings[0].because.en
    assert tell("weight_bearing none", day=9, before={72: "weight_bearing none"}).urgency == (
        "next_day"
    )
    both = tell("mobility worse", day=9, before={1: "weight_bearing none"})
    assert both.urgency == "same_day"


def test_a_loss_that_goes_on_is_still_a_loss(tell: Tell) -> None:
    before = {72: "weight_bearing partial", 24: "weight_bearing none"}
    assert tell("weight_bearing none", day=9, before=before).urgency == "same_day"


def test_missed_twice_in_a_row_is_of_one_medicine_and_of_doses_in_between(tell: Tell) -> None:
    def dose(words: str, **before: str) -> str:
        return tell(words, before={float(k[1:]): v for k, v in before.items()}).urgency

    assert dose("dose missed med=carprofen", h24="dose refused med=carprofen") == "next_day"
    assert dose("dose missed med=carprofen", h24="dose missed med=gabapentin") == "none"
    assert dose("dose missed", h24="dose missed med=gabapentin") == "next_day"
    given = "dose given med=carprofen"
    assert dose("dose missed med=carprofen", h24="dose missed med=carprofen", h12=given) == "none"
    other = "dose given med=gabapentin"
    assert (
        dose("dose missed med=carprofen", h24="dose missed med=carprofen", h12=other) == "next_day"
    )
    assert dose("dose given med=carprofen", h24="dose missed med=carprofen count=2") == "none"
    assert dose("dose missed med=carprofen", h73="dose missed med=carprofen") == "none"


def test_no_urine_is_counted_on_until_some_was_passed(tell: Tell) -> None:
    told = {10: "urine none hours=13.9"}
    assert tell("urine none", day=2, before=told).urgency == "same_day"
    told = {10: "urine none hours=14"}
    case = tell("urine none", day=2, before=told)
    assert case.urgency == "emergency"
    assert "≥ 24 hours" in case.findings[0].because.en
    assert tell("urine none", day=2, before={**told, 2: "urine normal"}).urgency == "same_day"
    assert tell("urine none", day=2, before={**told, 2: "urine straining"}).urgency == "emergency"
    # What the owner says of the time stands before our own count.
    assert tell("urine none hours=5", day=2, before=told).urgency == "none"


def test_pain_after_a_mishap_within_three_days(tell: Tell) -> None:
    assert tell("pain mild", day=9, before={72: "mishap fell"}).urgency == "same_day"
    assert tell("pain mild", day=9, before={73: "mishap fell"}).urgency == "none"
    assert tell("pain mild trend=same", day=9, before={9: "mishap fell"}).urgency == "none"
    # Two short messages, the wrong way round.
    assert tell("mishap fell", day=9, before={0.1: "pain mild"}).urgency == "same_day"
    assert tell("mishap fell", day=9, before={30: "pain mild"}).urgency == "next_day"


def test_a_limp_after_a_mishap_is_worse_than_full_use_before(tell: Tell) -> None:
    fell = "mishap slipped; weight_bearing partial"
    assert tell(fell, day=40, before={48: "weight_bearing full"}).urgency == "same_day"
    assert tell(fell, day=40, before={48: "weight_bearing partial"}).urgency == "next_day"


def test_old_findings_are_not_told_again(tell: Tell) -> None:
    before = {2.0: "gums pale", 3.0: "mishap fell; pain severe; weight_bearing none"}
    assert tell("appetite normal", before=before).findings == ()


@pytest.mark.parametrize(
    ("day", "hours", "urgency"),
    [
        (0, 23.99, None),
        (1, 24, "same_day"),
        (3, 24, "same_day"),
        (4, 47, None),
        (4, 48, "next_day"),
        (14, 48, "next_day"),
        (15, 95, None),
        (15, 96, "next_day"),
    ],
)
def test_a_silent_owner(day: int, hours: float, urgency: str) -> None:
    now = _noted("vomiting", hours_ago=0).at
    since = now - timedelta(hours=hours)
    rules = default_rules()
    heard = silence(since, since - timedelta(days=1), now, day=day, rules=rules)
    never = silence(None, since, now, day=day, rules=rules)
    assert heard == never
    assert (heard and heard.urgency.name) == urgency
    assert heard is None or heard.matter == "silence"
