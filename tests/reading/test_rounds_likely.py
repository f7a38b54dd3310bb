"""The model of rounds beside the rules, on tellings that neither was made with."""

from collections import Counter
from functools import cache
from pathlib import Path

import pytest

from bot.model.reading import Reading
from bot.reading import read
from bot.reading.rounds.likely import FILE, shipped, unpacked
from bot.reading.two_readers import by_rules
from bot.teaching.rounds import Telling, digest, in_file, tellings

TESTS = Path(__file__).parents[1]
NOTED = {"given": "given", "refused": "refused", "missed": "missed", "vomited": "vomited_up"}
TOO_MUCH = {("dose", "doubled"), ("swallowed", "medicine_overdose")}
LEAST = {"kept-plain.jsonl": 0.8, "kept-odd.jsonl": 0.62, "kept-third.jsonl": 0.7}
MOST_FALSE = {"kept-plain.jsonl": 0.055, "kept-odd.jsonl": 0.045, "kept-third.jsonl": 0.07}
"""Told as given and noted otherwise than it is: of all tellings. May only fall."""


def _noted(reading: Reading, telling: Telling) -> dict[str, str]:
    out: dict[str, str] = {}
    for one in reading.observations:
        if one.about == "dose":
            every = telling.due if one.count in (None, len(telling.due)) else ("?",)
            out |= dict.fromkeys((one.med,) if one.med else every, one.value)
    return out


def _judged(reading: Reading, telling: Telling) -> str:
    noted = _noted(reading, telling)
    told = {med: NOTED[value] for med, value in telling.told.items() if value in NOTED}
    much = [(one.about, one.value) for one in reading.observations]
    much += [(one.about, one.value) for one in reading.asks]
    if "twice" in telling.told.values():
        return "right" if TOO_MUCH & {*much} else "missed"
    if noted == told:
        return "right"
    false = any(value == "given" and told.get(med) != "given" for med, value in noted.items())
    return "false" if false else "left"


@cache
def _figures(name: str) -> tuple[Counter[str], Counter[str]]:
    rows = in_file(TESTS / "rounds" / name)
    return (
        Counter(_judged(read(one.text, one.context), one) for one in rows),
        Counter(_judged(by_rules(one.text, one.context), one) for one in rows),
    )


@pytest.mark.parametrize("name", LEAST)
def test_what_was_told_is_noted_more_often_than_by_rules_alone(name: str) -> None:
    both, rules = _figures(name)
    number = sum(both.values())
    assert number >= 240
    assert both["right"] >= LEAST[name] * number > rules["right"]
    assert both["false"] <= MOST_FALSE[name] * number
    assert both["false"] <= rules["false"]


@pytest.mark.parametrize(
    ("words", "due"),
    [
        ("not given yet", ("carprofen", "gabapentin")),
        ("I did not give it", ("carprofen", "gabapentin")),
        ("gave the tramadol", ("carprofen", "gabapentin")),
        ("gave both", ("carprofen",)),
        ("it happened again", ("carprofen", "gabapentin")),
        ("volvió a pasar", ("carprofen", "gabapentin")),
        ("20", ("carprofen", "gabapentin")),
        ("gave two of them", ("carprofen", "gabapentin", "cephalexin")),
        ("he took 2 ate all his dinner", ("carprofen", "gabapentin", "cephalexin")),
    ],
)
def test_of_what_names_none_of_them_the_rules_alone_decide(
    words: str, due: tuple[str, ...]
) -> None:
    telling = Telling(words, "en", due, {})
    assert read(words, telling.context) == by_rules(words, telling.context)


@pytest.mark.parametrize(
    ("words", "due", "told"),
    [
        # What the rules say of no medicine by name is of the one that is named.
        ("me equivoqué, la gabapentina todavía no", "carprofen gabapentin",
         {"gabapentin": "missed"}),
        # A dose of last night that was given now was given.
        ("acabo de darle el carprofeno que olvidé anoche", "carprofen gabapentin",
         {"carprofen": "given"}),
        # A kind is one of those that were due, and told once.
        ("i did the gabapentin and tom did the antibiotic", "gabapentin cephalexin",
         {"gabapentin": "given", "cephalexin": "given"}),
        # A half is of the one that it is told of.
        ("Liquid and capsule fine. Famotidine, only got a half of it in.",
         "meloxicam gabapentin famotidine", {"meloxicam": "given", "gabapentin": "given"}),
        ("none of them yet, he's still sleeping. will give them when he's up",
         "cephalexin gabapentin tramadol", {}),
        # Named twice, and the second time otherwise: nothing is noted as given.
        ("ya le di el carprofeno. no espera, esa era la gabapentina, el carprofeno todavía no",
         "carprofen gabapentin", {}),
        ("gave 3/3", "carprofen gabapentin cephalexin",
         {"carprofen": "given", "gabapentin": "given", "cephalexin": "given"}),
    ],
)  # fmt: skip
def test_each_medicine_is_told_of_by_its_own_words(
    words: str, due: str, told: dict[str, str]
) -> None:
    telling = Telling(words, "en", tuple(due.split()), {})
    assert _noted(read(words, telling.context), telling) == told


@pytest.mark.parametrize("words", ["2/3 done", "gave 2/3", "le di 2/3"])
def test_so_many_of_those_due_are_no_part_of_one(words: str) -> None:
    telling = Telling(words, "en", ("carprofen", "gabapentin", "cephalexin"), {})
    read_as = [(one.about, one.med, one.count) for one in read(words, telling.context).observations]
    assert read_as == [("dose", None, 2)]


def test_the_shipped_model_was_taught_from_the_tellings_as_they_are() -> None:
    """After a change of theirs: ``python -m bot.teaching rounds``, and commit the file."""
    rows = tellings(TESTS)
    assert shipped().card == {"data": digest(rows), "tellings": len(rows)}


def test_the_file_is_small() -> None:
    data = FILE.read_bytes()
    assert len(data) <= 200_000
    assert unpacked(data).table.any()


def test_the_kept_tellings_are_never_taught() -> None:
    taught = {one.text for one in tellings(TESTS)}
    for name in LEAST:
        kept = {one.text for one in in_file(TESTS / "rounds" / name)}
        alike = [one for one in kept & taught if len(one.split()) > 4]
        assert alike == [], name  # "3 de 3" anybody says
