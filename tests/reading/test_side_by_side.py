"""Two plain answers in one text stand side by side; what belongs together stays together."""

from __future__ import annotations

import pytest

from bot.model.reading import Context
from bot.reading import read
from bot.reading.stand import told_at

PLAIN = [
    ("pills given, ate all his dinner", {("dose", "given"), ("appetite", "normal")}),
    ("gave carprofen, she ate all her breakfast", {("dose", "given"), ("appetite", "normal")}),
    ("meds given weed as usual", {("dose", "given"), ("urine", "normal")}),
    ("tablets given peed twice", {("dose", "given"), ("urine", "normal")}),
    ("hasn't been sick and pill given", {("vomiting", "no"), ("dose", "given")}),
    ("no vomitó, le di el carprofeno", {("vomiting", "no"), ("dose", "given")}),
    ("no se lame y hace pipí bien", {("licking", "no"), ("urine", "normal")}),
]
KEPT = [
    "pills given, and he ate all of them",
    "gave carprofen, she ate the whole packet",
    "he got into his pills and ate everything",
    "mi hijo le dio pastillas y se comió todas",
    "pills given twice, peed fine",
    "no vomit pee or poo since yesterday",
    "pooped fine, hasnt peed tho",
    "poop ok, no pee 30 hrs ish",
    "he was walking on it really well and today all of a sudden he wont use it at all",
    "no se toca ni come",
    "ate well yesterday, hasn't touched it today",
    "two cups, hasn't touched it",
    "bandage off, ate it all",
]


@pytest.mark.parametrize(("text", "told"), PLAIN)
def test_each_of_two_plain_answers_is_read(text: str, told: set[tuple[str, str]]) -> None:
    reading = read(text, Context(day=9))
    assert {(one.about, one.value) for one in reading.observations} == told
    assert reading.understood


@pytest.mark.parametrize("text", KEPT)
def test_what_belongs_together_alarms_as_before(text: str) -> None:
    contexts = [Context(day=16, asked=asked) for asked in ("appetite", "bathroom", "dose")]
    assert any(told_at(read(text, one), one).value >= 2 for one in contexts)


@pytest.mark.parametrize("due", [0, 2])
def test_all_the_pills_are_those_that_were_due_only_where_some_were(due: int) -> None:
    context = Context(asked="appetite", doses_due=due)
    told = read("se comió todas las pastillas y cenó bien", context).observations
    alarmed = ("swallowed", "medicine_overdose") in {(one.about, one.value) for one in told}
    assert alarmed == (due == 0)
