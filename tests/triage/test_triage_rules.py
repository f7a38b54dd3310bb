"""The rule file: its examples, its words, and what a wrong one is told."""

from __future__ import annotations

import re
from datetime import UTC, datetime
from importlib.resources import files

import pytest

from bot.model.observation import Noted, Observation
from bot.model.text import Text
from bot.model.urgency import Urgency
from bot.model.vocabulary import TOPICS
from bot.protocol.yaml_lines import FlowError
from bot.triage import (
    RuleBook,
    check_rules,
    default_rules,
    dose_too_close,
    handed_over,
    load_rules,
    not_understood,
    triage,
)
from tests.triage.conftest import Tell

SOURCE = files("flows").joinpath("red-flags.yaml").read_text("utf-8")
TAIL = SOURCE[SOURCE.index("# Counted from the last word heard") :]


def _book(rules: str) -> RuleBook:
    return load_rules(f"version: 1\nrules:\n{rules}\n{TAIL}", "own.yaml")


def _rule(name: str = "own", urgency: str = "same_day", **lines: str) -> str:
    lines = {"because": '{en: "Day {day}.", es: "Día {day}."}', "matter": "appetite", **lines}
    return "".join(
        [f"  - id: {name}\n    urgency: {urgency}\n"]
        + [f"    {key}: {value}\n" for key, value in lines.items()]
    )


def test_every_example_of_the_default_rules_holds_and_no_rule_is_idle() -> None:
    assert check_rules(default_rules()) == []


def test_every_rule_has_its_line() -> None:
    book = default_rules()
    lines = SOURCE.splitlines()
    for rule in book.file.rules:
        assert lines[book.place(rule.id).line - 1].strip() == f"- id: {rule.id}"


def test_a_wrong_example_an_idle_rule_and_a_missing_source_are_told_with_their_line() -> None:
    said = "{about: appetite, value: none}"
    wrong = _rule(
        when=said, after_day="2", examples=f"[{{said: [{said}], day: 2, gives: same_day}}]"
    )
    found = check_rules(_book(wrong))
    assert {(one.file, one.line, one.column) for one in found} == {("own.yaml", 3, 5)}
    told = [one.what for one in found]
    assert all(line.startswith("rule own: ") for line in told)
    assert any("example 1 (day 2) should give same_day but gives none" in line for line in told)
    assert any("matches in none of its examples" in line for line in told)
    assert any("no source" in line for line in told)


def test_a_rule_that_another_one_silences_is_named() -> None:
    wide = "{about: appetite, value: [less, none]}"
    said = "[{said: [{about: appetite, value: none}], day: 2, gives: emergency}]"
    rules = _rule("wide", "emergency", when=wide, examples=said) + _rule(
        "narrow", when="{about: appetite, value: none}", after_day="1", source="x", examples=said
    )
    told = "\n".join(map(str, check_rules(_book(rules))))
    assert "rule narrow: wide (emergency) always matches where it does" in told
    assert "rule wide: narrow" not in told


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"when": "{about: apetite, value: none}"}, "apetite"),
        ({"when": "{about: appetite, value: gone}"}, "gone"),
        ({"when": "{about: appetite, value: none, detail: deep}"}, "detail"),
        ({"when": "{about: appetite, any: [{about: pain}]}"}, "exactly one"),
        ({"when": "{about: dose, value: missed, in_a_row: 2}"}, "ended_by"),
        ({"when": "{about: pain}", "because": '{en: "{dy}", es: "x"}'}, "{dy}"),
        ({"when": "{about: pain}", "because": '{en: "{limit}", es: "x"}'}, "{limit}"),
        ({"when": "{about: pain}", "because": '{en: "{day.real}", es: "x"}'}, "day.real"),
        ({"when": "{about: pain}", "because": '{en: "{day", es: "x"}'}, "brace"),
        ({"when": "{about: pain}", "because": '{en: "x"}'}, "es"),
        ({"when": "{about: pain}", "advice": '{en: "{day}", es: "x"}'}, "{day}"),
        ({"when": "{about: pain}", "after_day": "5", "to_day": "5"}, "day"),
        ({"when": "{about: pain}", "matter": "hunger"}, "matter"),
        ({"when": "{about: pain}", "urgency": "soon"}, "urgency"),
        ({"when": "{about: temperature, celsius: {at_least: 40, below: 39}}"}, "at_least"),
    ],
)
def test_a_mistake_is_told_with_file_line_and_what(change: dict[str, str], words: str) -> None:
    text = _rule(**change)
    if "urgency" in change:
        text = text.replace("urgency: same_day\n", "", 1)
    with pytest.raises(FlowError) as caught:
        _book(text)
    assert re.match(r"own\.yaml:\d+:\d+: ", str(caught.value))
    assert words in str(caught.value)


def test_a_value_without_words_for_staff_is_refused() -> None:
    text = SOURCE.replace('    limping: {en: "limps', '    # limping: {en: "limps')
    with pytest.raises(FlowError, match=r"own.yaml:\d+:\d+: .*other_leg: limping"):
        load_rules(text.replace("  other_leg:\n", ""), "own.yaml")


def test_staff_have_words_for_the_whole_vocabulary() -> None:
    words = default_rules().file.words
    assert {about: tuple(values) for about, values in words.items()} == TOPICS


def test_nothing_heard_of_a_topic_for_so_long(tell: Tell) -> None:
    rules = _book(_rule(when="{about: stool, unheard_hours: 48}", source="x"))
    assert tell("appetite normal", day=2, rules=rules).rules == {"own"}
    assert tell("appetite normal", day=1, rules=rules).rules == set()
    assert tell("stool none", day=2, rules=rules).rules == set()
    assert tell("energy normal", day=9, before={47: "stool normal"}, rules=rules).rules == set()
    assert tell("energy normal", day=9, before={48: "stool normal"}, rules=rules).rules == {"own"}


def test_unless_takes_a_rule_back(tell: Tell) -> None:
    rules = _book(_rule(when="{about: pain}", unless="{about: energy, value: normal}"))
    assert tell("pain severe", rules=rules).rules == {"own"}
    assert tell("pain severe; energy normal", rules=rules).rules == set()


def test_a_rule_for_cats_is_silent_for_dogs(tell: Tell) -> None:
    rules = _book(_rule(when="{about: pain}", species="[cat]"))
    assert tell("pain severe", rules=rules, species="dog").rules == set()
    assert tell("pain severe", rules=rules, species="cat").rules == {"own"}
    assert tell("pain severe", rules=rules, species="rabbit").rules == {"own"}


def test_what_cannot_be_judged_is_told_to_staff(tell: Tell) -> None:
    case = tell("urine none hours=nan", day=2)
    assert case.urgency == "next_day"
    assert "could not be judged" in case.findings[0].because.en
    assert "urine: none" in case.findings[0].because.es
    # A plain fact beside it still counts.
    assert tell("urine none hours=nan; urine none hours=30", day=2).urgency == "emergency"


def test_a_broken_clock_in_the_history_is_told_too() -> None:
    now = datetime(2026, 3, 9, tzinfo=UTC)
    naive = Noted(Observation("vomiting", "yes"), datetime(2026, 3, 8), 4)
    new = Noted(Observation("vomiting", "yes"), now, 5)
    found = triage([new], [naive], day=5, now=now, rules=default_rules())
    assert {f.rule for f in found} >= {"vomiting-twice", "vomiting-once"}


def test_what_the_caller_has_found() -> None:
    for finding in (not_understood("tell ham the {cone}\nof Tuesday"), handed_over("hm")):
        assert finding.urgency == Urgency.next_day
        assert finding.matter == "not_understood"
    assert (
        "tell ham the {cone} of Tuesday"
        in not_understood("tell ham the {cone}\nof Tuesday").because.es
    )
    assert len(not_understood("x" * 9000).because.en) < 200
    close = dose_too_close("carprofen", 10.97, 11)
    assert close.urgency == Urgency.same_day
    assert "10.9 hours" in close.because.en


# Owners are never given a dose, a diagnosis or an all-clear.
FORBIDDEN = re.compile(
    r"\b(mg|ml|tablets?|pastillas?|tabletas?|infec\w+|fractur\w+|is fine|all fine|nothing to worry"
    r"|está bien|no es nada|normal)\b",
    re.IGNORECASE,
)


def _advice() -> list[tuple[str, Text]]:
    book = default_rules()
    own = [(rule.id, rule.advice) for rule in book.file.rules if rule.advice]
    return [*own, *book.file.advice.items()]


def test_advice_holds_no_dose_no_diagnosis_and_no_all_clear() -> None:
    for name, advice in _advice():
        for words in (advice.en, advice.es):
            assert not FORBIDDEN.search(words), f"{name}: {words}"
            assert len(words) <= 260, f"{name}: too long for a thumb: {len(words)}"


_TO_TAKE = re.compile(
    r"\b(?<!hot )(?<!, no )(?<!no )(water|food)\b|\b(?<!de )(?<!, )agua\b|\bcomida\b", re.I
)


def test_advice_that_speaks_of_food_or_water_is_marked_so() -> None:
    # Common practice: a patient that may take nothing by mouth gets no water either.
    marked = [rule for rule in default_rules().file.rules if rule.advice and rule.advice.by_mouth]
    assert marked
    for rule in default_rules().file.rules:
        if rule.advice is None or rule.advice.by_mouth:
            continue
        said = f"{rule.advice.en} {rule.advice.es}"
        assert not _TO_TAKE.search(said) or "by mouth" in said, rule.id


def test_every_reason_reads_as_a_sentence_in_both_languages() -> None:
    for rule in default_rules().file.rules:
        for words in (rule.because.en, rule.because.es):
            assert words[0].isupper(), rule.id
            assert words.endswith("."), rule.id
        assert rule.because.en != rule.because.es
