"""The mode, what is held in it, when pain must not wait, and the words."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.context.words import default_words
from bot.model.hold import (
    AntiInflammatories,
    AtTime,
    ByAnswer,
    ByMouth,
    Everything,
    FromDeath,
    FromEmergency,
    FromStaff,
    HeldMedicine,
    Hold,
    Sessions,
    Target,
    Walks,
)
from bot.model.ids import CaseId, EventId, MemberId
from bot.model.text import LANGS, Lang
from bot.model.urgency import Urgency
from bot.standing import (
    Emergency,
    End,
    Ordinary,
    Over,
    PatientState,
    Paused,
    Standing,
    default_holds,
    held_items,
    hold_notice,
    pain_deadline,
    standing,
    target_words,
    worth_saying,
)
from tests.standing.patients import (
    CEPHALEXIN,
    ENDS,
    GABAPENTIN,
    ITEMS,
    NEW_WEEK,
    NOW,
    PLAN,
    TARGETS,
    Case,
    dose,
    hold,
    holds,
    plan,
    question,
    session,
)

HOUR = timedelta(hours=1)
WORDS = default_words()
DEATH = FromDeath(EventId("e9"))


def case(urgency: Urgency, state: str = "open", id: str = "c1") -> Case:
    return Case(CaseId(id), urgency, NOW - HOUR, state)


def active(*some: Hold) -> Standing:
    return standing(PLAN, PatientState.active, some, (), NOW)


@pytest.mark.parametrize(
    ("target", "held"),
    [
        (HeldMedicine("CARPROFEN"), [dose("carprofen")]),
        (AntiInflammatories(), [dose("carprofen")]),
        (
            ByMouth(),
            [dose("carprofen"), dose("Gabapentin"), dose("cephalexin"), question("appetite")],
        ),
        (Walks(), [session("walk"), NEW_WEEK]),
        (Sessions(), [session("massage"), session("none")]),
        (Everything(), list(ITEMS)),
    ],
)
def test_what_each_target_holds(target: Target, held: list[object]) -> None:
    now = active(hold(target))
    assert [item for item in ITEMS if now.is_held(item)] == held
    assert all(now.holds_on(item) == (hold(target),) for item in ITEMS if now.is_held(item))


def test_cold_packs_and_questions_stay_while_the_leg_is_held() -> None:
    now = active(hold(Walks()), hold(Sessions()))
    assert not any(now.is_held(item) for item in (session("ice"), question("appetite")))


def test_what_is_held_has_names() -> None:
    assert active().held_names(PLAN) == frozenset()
    assert active(hold(AntiInflammatories()), hold(Walks())).held_names(PLAN) == {
        "carprofen", "walks",
    }  # fmt: skip
    assert active(hold(ByMouth())).held_names(PLAN) == {"carprofen", "Gabapentin", "cephalexin"}
    assert active(hold(HeldMedicine("tramadol"))).held_names(PLAN) == {"tramadol"}
    assert active(hold(Everything()), hold(Sessions())).held_names(PLAN) == {"everything"}


@given(st.lists(holds(ends=ENDS), max_size=5), st.integers(0, 2000))
def test_time_ends_only_what_has_an_hour_to_end(some: list[Hold], hours: int) -> None:
    later = standing(PLAN, PatientState.active, some, (), NOW + hours * HOUR).holds
    lasting = [one for one in some if not isinstance(one.ends, AtTime)]
    assert [one for one in later if not isinstance(one.ends, AtTime)] == lasting
    assert all(one.ends.at > NOW + hours * HOUR for one in later if isinstance(one.ends, AtTime))


@given(st.lists(holds(), max_size=4), TARGETS)
def test_everything_implies_all(some: list[Hold], target: Target) -> None:
    now = active(*some, hold(Everything()))
    assert all(now.is_held(item) for item in ITEMS)
    assert now.holds_on_target(target)
    assert now.held_names(PLAN) == {"everything"}


# -- the mode ------------------------------------------------------------------------------


@given(st.lists(holds(), max_size=3), st.sampled_from(PatientState))
def test_an_open_emergency_holds_everything_ordinary(some: list[Hold], state: PatientState) -> None:
    cases = [case(Urgency.same_day, id="c2"), case(Urgency.emergency)]
    now = standing(PLAN, state, some, cases, NOW)
    if state is PatientState.died:
        assert now.mode == Over(End.died)
        return
    assert now.mode == Emergency((CaseId("c1"),), NOW - HOUR)
    assert all(now.is_held(item) for item in ITEMS)
    assert now.holds == tuple(one for one in some if one.stands(NOW))
    assert {one.cause for one in now.holds_on(question("appetite"))} >= {
        FromEmergency(CaseId("c1"))
    }


@pytest.mark.parametrize("state", ["acknowledged", "answered"])
def test_an_emergency_lasts_until_it_is_closed(state: str) -> None:
    taken = standing(PLAN, PatientState.active, (), [case(Urgency.emergency, state)], NOW)
    assert isinstance(taken.mode, Emergency)
    closed = [case(Urgency.emergency, "closed"), case(Urgency.same_day)]
    assert standing(PLAN, PatientState.active, (), closed, NOW).mode == Ordinary()


def test_the_modes_of_a_course() -> None:
    dead = (hold(Everything(), DEATH),)
    urgent = [case(Urgency.emergency)]
    assert standing(PLAN, PatientState.paused, (), (), NOW).mode == Paused()
    assert standing(PLAN, PatientState.ended, (), (), NOW).mode == Over(End.ended)
    assert standing(PLAN, PatientState.active, dead, urgent, NOW).mode == Over(End.died_told)
    assert standing(PLAN, PatientState.died, (), urgent, NOW).mode == Over(End.died)
    before = [replace(case(Urgency.emergency), alive_at=NOW - HOUR)]  # the death was told after it
    assert standing(PLAN, PatientState.active, dead, before, NOW).mode == Over(End.died_told)
    alive = [replace(case(Urgency.emergency), alive_at=NOW + HOUR)]
    assert isinstance(standing(PLAN, PatientState.active, dead, alive, NOW).mode, Emergency)
    assert standing(PLAN, PatientState.died, dead, alive, NOW).mode == Over(End.died)


@pytest.mark.parametrize(
    ("state", "holds", "since", "told", "dead"),
    [
        (PatientState.active, (), (), False, False),
        (PatientState.ended, (), (), False, False),
        (PatientState.died, (), (), True, True),  # entered by staff
        (PatientState.paused, (hold(Everything(), DEATH),), (), True, True),
        (PatientState.ended, (hold(Everything(), DEATH),), (), True, True),
        (PatientState.active, (hold(Everything(), DEATH),), (HOUR,), True, False),  # it breathes
    ],
)
def test_whether_a_death_is_told_is_one_question(
    state: PatientState, holds: tuple[Hold, ...], since: tuple[timedelta, ...], told: bool,
    dead: bool,
) -> None:  # fmt: skip
    cases = [replace(case(Urgency.emergency), alive_at=NOW + one) for one in since]
    now = standing(PLAN, state, holds, cases, NOW)
    assert (now.death_told, now.dead) == (told, dead)


# -- pain ----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("held", "now", "opens", "deadline"),
    [
        (AntiInflammatories(), NOW, NOW, NOW + 12 * HOUR),
        (AntiInflammatories(), NOW, NOW + 12 * HOUR, NOW + 12 * HOUR),
        (AntiInflammatories(), NOW, NOW + 13 * HOUR, NOW),  # the clinic opens too late
        (AntiInflammatories(), NOW + 14 * HOUR, NOW + 14 * HOUR, NOW + 14 * HOUR),
        (ByMouth(), NOW, NOW, NOW + 8 * HOUR),  # the shorter interval
        (Everything(), NOW, NOW, NOW + 8 * HOUR),
        (HeldMedicine("gabapentin"), NOW, NOW, NOW + 8 * HOUR),
        (HeldMedicine("cephalexin"), NOW, NOW + 99 * HOUR, None),
        (Walks(), NOW, NOW + 99 * HOUR, None),
    ],
)
def test_pain_relief_is_not_held_back_unseen(
    held: Target, now: datetime, opens: datetime, deadline: datetime | None
) -> None:
    assert pain_deadline(PLAN, hold(held), now, opens) == deadline


def test_no_pain_relief_no_deadline() -> None:
    assert pain_deadline(plan(CEPHALEXIN), hold(ByMouth()), NOW, NOW + 99 * HOUR) is None
    assert pain_deadline(PLAN, hold(Everything(), DEATH), NOW, NOW) is None
    soon = hold(HeldMedicine("Gabapentin"), ends=AtTime(NOW + 6 * HOUR))
    assert pain_deadline(PLAN, soon, NOW, NOW + 99 * HOUR) is None
    after = NOW + timedelta(days=30)  # its course is over
    assert pain_deadline(plan(GABAPENTIN), hold(ByMouth()), after, after) is None


# -- words ---------------------------------------------------------------------------------


@pytest.mark.parametrize("lang", LANGS)
def test_every_target_and_cause_has_words(lang: Lang) -> None:
    staff = FromStaff(MemberId(1), "Pell", "no more carprofen", EventId("e1"))
    silent = FromStaff(MemberId(1), "Pell", "", EventId("e1"))
    some = [
        hold(Walks(), staff),
        hold(Sessions(), silent),
        hold(Everything(), DEATH),
        hold(ByMouth(), FromEmergency(CaseId("c1"))),
        hold(AntiInflammatories()),
        hold(HeldMedicine("carprofen")),
    ]
    for one in some:
        said = hold_notice([one], PLAN, lang, WORDS, "the clinic, 555 0100")
        assert target_words(one.target, lang, WORDS, PLAN) in said
        assert "555 0100" in said
        assert "{" not in said
        items = held_items([one], PLAN, lang, WORDS, str)
        assert len(items) == 1
        assert ("no more carprofen" in items[0]) == (one.cause == staff)


def test_a_wider_hold_speaks_for_those_within_it() -> None:
    once = hold(AntiInflammatories(), ends=ByAnswer("vomited-once"))
    again = hold(AntiInflammatories())
    assert worth_saying([once, again]) == [again]
    assert worth_saying([once, hold(Walks())]) == [once, hold(Walks())]
    assert worth_saying([again, hold(ByMouth()), hold(Walks())]) == [hold(ByMouth()), hold(Walks())]
    assert worth_saying([hold(ByMouth()), hold(Everything(), DEATH)]) == [hold(Everything(), DEATH)]


def test_words_of_holds_keep_to_their_limits() -> None:
    """No prompt is mistaken in them, and none of them comforts in an emergency."""
    texts = [text for key, text in WORDS.words.items() if key.startswith("hold_")]
    texts += [rule.because for rule in default_holds().file.holds]
    for text in texts:
        assert not re.search(r"\bgive (?!nothing\b)", text.en, re.IGNORECASE), text.en
        for comfort in ("normal", "common", "next working day", "right?"):
            assert comfort not in text.en.casefold()
