"""While a round is open: words that tell of no deed note none, put together from everyday parts,
and as people wrote them who knew nothing of the reader."""

import json
from dataclasses import replace
from itertools import product
from pathlib import Path

import pytest

from bot.household.lights import of_the_doses
from bot.model.reading import Context, Due
from bot.reading import read

CALLED = {"carprofen": "tablet", "gabapentin": "capsule", "cephalexin": "capsule"}
DUE = tuple(Due(med, frozenset((form, "pill"))) for med, form in CALLED.items())
OPEN = Context("none", 4, 8 * 60 + 20, medicines=tuple(CALLED), doses_due=3, due=DUE)

HOURS = ("at 7", "at 8", "around 7:30", "by 8")
AT = (
    "i was asleep {}",
    "phoned you {}",
    "the sitter left {}",
    "dinner is {}",
    "i start work {}",
    "fell asleep {}",
    "the vet called {}",
    "my mum comes {}",
    "he woke up {}",
    "school starts {}",
)
LAS = ("llegue {}", "me dormi {}", "la cena es {}", "mi mama viene {}", "abren {}")
NEVER = ("should have", "shouldve", "could have", "must have", "might have", "shouldn't have")
DEEDS = ("given it", "given him the carprofen", "iced it", "done the cold pack", "walked him")
NEARLY = ("almost", "nearly")
DID = ("gave it", "gave her the gaba", "did the cold pack", "took him for a walk")
CASI = ("se la doy", "le doy la pastilla", "le pongo el hielo")
ASKED = (
    "who gave it",
    "did ana give it",
    "jo did you give it",
    "did he get his pills",
    "has anyone given it",
    "quien se la dio",
    "leo se la dio?",
    "ya se la diste tu",
)
OF_OTHERS = (
    "we all slept",
    "the kids are all asleep",
    "both asleep",
    "both dogs barking",
    "all quiet here",
    "todos dormidos",
    "los dos durmiendo",
)
A_LOT = ("salivating", "sneezing", "itching", "shedding", "burping", "he is drooling")
OF_ITSELF = ("3", "2", "a lot", "pooped fine", "pooped", "he's sitting", "he's scared",
             "the nurse showed me", "le cosieron bien", "leaking")  # fmt: skip

SAID = (
    *(one.format(hour) for one, hour in product(AT, HOURS)),
    *(one.format(hour) for one, hour in product(LAS, ("a las 7", "a las 8", "como a las 7"))),
    *(f"{who}{mood} {deed}" for who, mood, deed in product(("", "i "), NEVER, DEEDS)),
    *(f"{who}{near} {did}" for who, near, did in product(("", "we "), NEARLY, DID)),
    *(f"casi {deed}" for deed in CASI),
    *(f"{sign} a lot" for sign in A_LOT),
    *ASKED, *OF_OTHERS, *OF_ITSELF,
)  # fmt: skip
DONE = {("dose", "given"), ("dose", "missed"), ("dose", "refused"), ("dose", "doubled"),
        ("ice", "done"), ("walk", "done")}  # fmt: skip


@pytest.mark.parametrize("asked", ["none", "dose"])
def test_what_tells_of_no_deed_notes_none(asked: str) -> None:
    context = replace(OPEN, asked=asked)
    noted = {}
    for text in SAID:
        found = of_the_doses(text, context, read(text, context))
        if told := {(one.about, one.value) for one in found.observations} & DONE:
            noted[text] = told
    assert not noted


@pytest.mark.parametrize("text", ["gave it at 8", "all of them", "all given", "7:15 this morning",
                                  "at 7 with breakfast", "ya todas", "todas", "3/3"])  # fmt: skip
def test_and_what_tells_of_one_does(text: str) -> None:
    context = replace(OPEN, asked="dose")
    assert ("dose", "given") in {(o.about, o.value) for o in read(text, context).observations}


KEPT = Path(__file__).parents[1] / "rounds" / "kept-none.jsonl"
MOST = {"none": 21, "dose": 57}
"""Of 937 such messages, note a deed (55 and 206 before any was looked at). May only fall."""


@pytest.mark.parametrize("asked", MOST)
def test_few_messages_that_tell_of_none_note_one(asked: str) -> None:
    rows = [json.loads(line) for line in KEPT.read_text(encoding="utf-8").splitlines()]
    wrong = []
    for row in rows:
        context = replace(OPEN, asked=asked, lang=row["lang"])
        found = of_the_doses(row["text"], context, read(row["text"], context))
        if {(one.about, one.value) for one in found.observations} & DONE:
            wrong.append(row["text"])
    assert len(rows) == 937
    assert len(wrong) <= MOST[asked], wrong
