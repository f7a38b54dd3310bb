"""What is told leads to holds; a release ends what it names, and nothing else."""

from __future__ import annotations

import json
import re
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.cli.checking import check_file
from bot.model.hold import (
    LAST_DOSE,
    AntiInflammatories,
    ByAnswer,
    ByClinician,
    ByMouth,
    Everything,
    FromDeath,
    HeldMedicine,
    Hold,
    Sessions,
    Target,
    Walks,
    decode,
    encode,
)
from bot.model.observation import Noted, Observation
from bot.protocol.yaml_lines import FlowError
from bot.standing import (
    PatientState,
    check_holds,
    default_holds,
    holds_after,
    holds_in,
    load_holds,
    over,
    release,
)
from bot.standing import standing as standing_of
from bot.triage import default_rules, triage
from tests.standing.patients import (
    CARPROFEN,
    CEPHALEXIN,
    DAY,
    GABAPENTIN,
    ITEMS,
    NOW,
    PLAN,
    TARGETS,
    WORDS,
    hold,
    holds,
    medicine,
    plan,
    told,
)

FLAGS = default_rules()
NOTHING_BY_MOUTH = re.compile(
    r"nothing by mouth|no food, no water and no medicine by mouth"
    r"|no le dé (?:nada|comida, agua ni medicinas) por la boca",
    re.IGNORECASE,
)
BLACK = Observation("stool", "black")
VOMITED = Observation("vomiting", "yes")


def targets(new: tuple[Hold, ...]) -> list[Target]:
    return [one.target for one in new]


# -- the rules and the red flags ----------------------------------------------------------


def test_every_hold_does_what_its_examples_say() -> None:
    assert [str(problem) for problem in check_holds(default_holds(), FLAGS)] == []


def test_who_is_told_to_give_nothing_by_mouth_has_all_of_it_held() -> None:
    """Binds red-flags.yaml to holds.yaml: every example of a rule with such advice, general
    advice included, on days of its own."""
    spoken = set()
    for ready in FLAGS.rules:
        advice = ready.advice
        if advice is None or not (
            NOTHING_BY_MOUTH.search(advice.en) or NOTHING_BY_MOUTH.search(advice.es)
        ):
            continue
        assert NOTHING_BY_MOUTH.search(advice.en), advice.en
        assert NOTHING_BY_MOUTH.search(advice.es), advice.es
        for example in ready.rule.examples:
            now = told(*(one.observation() for one in example.said), day=example.day)
            if ready.rule.id not in {finding.rule for finding in now.findings}:
                continue
            spoken.add(ready.rule.id)
            made = targets(holds_after(now, PLAN, default_holds(), ()))
            assert ByMouth() in made, (ready.rule.id, advice.en)
    assert len(spoken) >= 5


def test_the_check_tells_what_is_wrong_with_file_and_line() -> None:
    text = """version: 1
holds:
  - id: quiet
    holds: walks
    when: {about: energy, value: quiet}
    because: {en: "it is quiet", es: "está quieto"}
    source: common practice
    examples:
      - {said: [{about: energy, value: quiet}], day: 1, held: walks}
      - {said: [{about: energy, value: normal}], day: 1, held: walks}
  - id: absent
    holds: [walks, sessions]
    findings: no-such-rule
    because: {en: "it is so", es: "es así"}
    source: common practice
    examples:
      - {said: [{about: energy, value: normal}], day: 1, held: []}
  - id: always
    holds: walks
    findings: mishap
    because: {en: "it ran", es: "corrió"}
    source: common practice
    examples:
      - {said: [{about: mishap, value: ran}], day: 1, held: walks}
"""
    problems = [str(one) for one in check_holds(load_holds(text, "own.yaml"), FLAGS)]
    for number, (line, words) in enumerate(
        [
            (3, "example 1 is held, but no red-flag rule opens a case"),
            (3, "example 2 (day 1) should hold walks but holds nothing"),
            (11, "there is no red-flag rule 'no-such-rule'"),
            (11, "it holds nothing in any of its examples"),
            (18, "it holds in each of its examples"),
        ]
    ):
        assert problems[number].startswith(f"own.yaml:{line}:"), problems
        assert words in problems[number]
    assert len(problems) == 5


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ("when: {about: gums, value: yellow}", "", "write one of when, findings"),
        ("when: {about: gums, value: yellow}", "when: {about: gums, value: green}", "gums"),
        ("holds: walks", "holds: everyting", "everyting"),
        ("it is so", "it is {so}", "without braces"),
        ("    source: common practice\n", "", "source"),
        ("    source: c", "    after_day: 3\n    to_day: 2\n    source: c", "no day is after"),
    ],
)
def test_a_mistake_is_refused_with_its_line(old: str, new: str, words: str) -> None:
    text = """version: 1
holds:
  - id: own
    holds: walks
    when: {about: gums, value: yellow}
    because: {en: "it is so", es: "es así"}
    source: common practice
    examples:
      - {said: [{about: gums, value: yellow}], day: 1, held: walks}
"""
    load_holds(text, "own.yaml")
    with pytest.raises(FlowError, match=r"own\.yaml:\d+:\d+: ") as caught:
        load_holds(text.replace(old, new), "own.yaml")
    assert words in str(caught.value)


def test_a_clinics_own_holds_lie_over_ours() -> None:
    text = """version: 1
holds:
  - id: stool-black-or-bloody
    holds: by_mouth
    when: {about: stool, value: black}
    because: {en: "it is so", es: "es así"}
    source: common practice
    examples:
      - {said: [{about: stool, value: black}], day: 3, held: by_mouth}
      - {said: [{about: stool, value: bloody}], day: 3, held: []}
  - id: pus
    holds: sessions
    findings: incision-pus-or-odour
    because: {en: "it is so", es: "es así"}
    source: common practice
    examples:
      - {said: [{about: incision, value: pus}], day: 3, held: sessions}
      - {said: [{about: incision, value: clean}], day: 3, held: []}
"""
    book = over(default_holds(), load_holds(text, "own.yaml"))
    assert check_holds(book, FLAGS, {"stool-black-or-bloody", "pus"}) == []
    assert check_file(text, "own.yaml") == []
    assert {one.id for one in book.file.holds} > {one.id for one in default_holds().file.holds}
    assert targets(holds_after(told(BLACK), PLAN, book, ())) == [ByMouth()]
    wrong = text.replace("held: sessions", "held: walks")
    (problem,) = check_file(wrong, "own.yaml")
    assert str(problem).startswith("own.yaml:11:")


def test_a_clinics_folder_is_read(tmp_path: Path) -> None:
    assert holds_in(None) is holds_in(tmp_path) is default_holds()
    (tmp_path / "holds.yaml").write_text("version: 1\nholds: []\n", "utf-8")
    with pytest.raises(FlowError, match=r"holds\.yaml:2:\d+: "):
        holds_in(tmp_path)


# -- what follows from what is told -------------------------------------------------------


def test_the_same_is_held_once_and_a_worse_finding_is_added() -> None:
    first = holds_after(told(VOMITED), PLAN, default_holds(), ())
    assert targets(first) == [AntiInflammatories()]
    assert first[0].ends == ByAnswer("vomited-once")
    earlier = (Noted(VOMITED, NOW - timedelta(hours=3), DAY),)
    again = told(VOMITED, past=earlier, event="e2")
    worse = holds_after(again, PLAN, default_holds(), first)
    assert [(one.rule, one.ends) for one in worse] == [("vomited-again", ByClinician())]
    assert holds_after(again, PLAN, default_holds(), (*first, *worse)) == ()
    other = holds_after(told(BLACK, event="e3"), PLAN, default_holds(), (*first, *worse))
    assert [one.rule for one in other] == ["stool-black-or-bloody"]
    assert holds_after(told(VOMITED, event="e4"), PLAN, default_holds(), worse) == ()


def test_a_hold_knows_its_case_and_event() -> None:
    (one,) = holds_after(told(BLACK), PLAN, default_holds(), ())
    assert one == Hold(one.id, AntiInflammatories(), NOW, one.cause, ByClinician(), told=False)
    assert one.rule == "stool-black-or-bloody"
    assert json.loads(json.dumps(one.as_dict()))["cause"]["case"] == "c1"
    assert one == holds_after(told(BLACK), PLAN, default_holds(), ())[0]


@pytest.mark.parametrize(
    ("medicines", "made"),
    [
        ((CARPROFEN,), [AntiInflammatories()]),
        ((medicine("meloxicam"),), [AntiInflammatories()]),  # by the medicines table
        ((GABAPENTIN, CEPHALEXIN), []),
        ((medicine("carprofen", "anti-inflammatory", days=2),), []),  # its course is over
        ((), []),
    ],
)
def test_the_anti_inflammatories_are_held_only_while_one_is_given(
    medicines: tuple[object, ...], made: list[Target]
) -> None:
    ordered = PLAN.model_copy(update={"medicines": medicines})
    assert targets(holds_after(told(BLACK), ordered, default_holds(), ())) == made


@pytest.mark.parametrize(
    ("med", "given_together", "held"),
    [
        ("carprofen", ("Gabapentin",), ["carprofen"]),
        ("Carprofen 75 mg", (), ["carprofen"]),
        (None, ("carprofen", "cephalexin"), ["carprofen", "cephalexin"]),
        ("the white one", ("Gabapentin",), ["Gabapentin"]),
        (None, (), ["carprofen", "Gabapentin", "cephalexin"]),
    ],
)
def test_a_double_dose_holds_each_that_it_may_have_been(
    med: str | None, given_together: tuple[str, ...], held: list[str]
) -> None:
    said = told(Observation("dose", "doubled", med=med), given=given_together)
    assert targets(holds_after(said, PLAN, default_holds(), ())) == [*map(HeldMedicine, held)]


def test_a_death_holds_everything() -> None:
    (one,) = holds_after(told(Observation("life", "died")), PLAN, default_holds(), ())
    assert one.target == Everything()
    assert isinstance(one.cause, FromDeath)


def test_a_figure_that_makes_no_sense_holds() -> None:
    said = told(Observation("urine", "none", hours=float("nan")))
    assert targets(holds_after(said, PLAN, default_holds(), ())) == [AntiInflammatories()]


# -- a release, and how holds are stored ---------------------------------------------------


@given(st.lists(holds(), max_size=6), TARGETS)
def test_a_release_frees_its_target_and_keeps_the_rest_held(
    before: list[Hold], target: Target
) -> None:
    after = release(before, target, PLAN)
    assert target not in targets(after)

    def held(some: tuple[Hold, ...]) -> set[str]:
        now = standing_of(PLAN, PatientState.active, some, (), NOW)
        return {item.id for item in ITEMS if now.is_held(item)}

    was, left = held(tuple(before)), held(after)
    assert left <= was
    if isinstance(target, HeldMedicine):
        # A medicine may go into the mouth: so may food, and it is asked of again.
        assert was - left <= {f"dose:{target.med}", "q:appetite"}
        assert f"dose:{target.med}" not in left or any(
            one.target == Everything() and one.stands(NOW) for one in before
        )
    else:
        waits = ByAnswer(LAST_DOSE)
        everything = target == Everything()
        others = tuple(x for x in before if (x.ends == waits if everything else x.target != target))
        assert after == others


def test_released_with_everything_a_medicine_waits_until_its_last_dose_is_told() -> None:
    wide, named = hold(ByMouth()), hold(HeldMedicine("carprofen"))
    asked = replace(named, ends=ByAnswer(LAST_DOSE))
    assert release([wide, asked, named], Everything(), PLAN) == (asked,)
    assert release([asked], HeldMedicine("carprofen"), PLAN) == ()


def test_one_medicine_released_leaves_the_others_of_a_wider_hold() -> None:
    left = release([hold(ByMouth())], HeldMedicine("carprofen"), PLAN)
    assert targets(left) == [HeldMedicine("Gabapentin"), HeldMedicine("cephalexin")]
    assert len({one.id for one in left}) == 2
    assert release([hold(AntiInflammatories())], HeldMedicine("CARPROFEN"), PLAN) == ()


@given(TARGETS | WORDS.map(HeldMedicine))
def test_a_target_reads_back_as_it_was_written(target: Target) -> None:
    assert decode(encode(target)) == target


@pytest.mark.parametrize("text", ["", "med:", "everyting", "Walks", "carprofen"])
def test_anything_else_is_no_target(text: str) -> None:
    with pytest.raises(ValueError, match="nothing that can be held"):
        decode(text)


@given(holds(ends=st.just(ByClinician())) | holds())
def test_a_hold_reads_back_as_it_was_stored(one: Hold) -> None:
    assert Hold.from_dict(json.loads(json.dumps(one.as_dict()))) == one


@settings(max_examples=50)
@given(st.permutations([("vomiting", "yes"), ("stool", "black"), ("belly", "bloated")]))
def test_the_order_of_what_was_said_does_not_matter(said: list[tuple[str, str]]) -> None:
    new = told(*(Observation(*pair) for pair in said))
    made = {(encode(one.target), one.rule) for one in holds_after(new, PLAN, default_holds(), ())}
    assert made == {("by_mouth", "bloated"), ("anti_inflammatories", "stool-black-or-bloody")}


def test_the_same_patient_without_medicines_holds_walks_all_the_same() -> None:
    crooked = told(Observation("leg", "crooked"))
    assert targets(holds_after(crooked, plan(), default_holds(), ())) == [Walks(), Sessions()]
    assert triage(crooked.new, (), day=DAY, now=NOW, rules=FLAGS)
