"""What must not change a reading, tried on every kept-back reply."""

from __future__ import annotations

import json
import unicodedata
from collections.abc import Callable
from functools import cache
from itertools import product
from pathlib import Path

import pytest

from bot.cli.read import answer
from tests.triage.table import LEVELS

HELD_OUT = Path(__file__).parents[1] / "replies" / "heldout.jsonl"
ROWS = [json.loads(line) for line in HELD_OUT.read_text(encoding="utf-8").splitlines()]

RED_FLAGS = (
    "He can't breathe.",
    "Her gums are white.",
    "he had a seizure",
    "the incision is open and i can see bone",
    "he vomited blood",
    "No puede respirar.",
    "se desmayó",
    "tiene las encías moradas",
)
FILLER = (
    "Good morning! {}",
    "hi doctor, {}",
    "Sorry to bother you. {}",
    "{} Thank you so much!",
    "{} thanks 🙏",
    "buenas tardes doctora, {}",
    "{} muchas gracias",
    "{} have a nice day",
)


def _answer(row: dict[str, object], text: str) -> dict[str, object]:
    asked = {k: row[k] for k in ("lang", "species", "day", "asked", "at")}
    return answer({**asked, "text": text})


@cache
def _plain(number: int) -> dict[str, object]:
    """The reading of a reply as it was written."""
    return _answer(ROWS[number], ROWS[number]["text"])


def _gist(read: dict[str, object]) -> object:
    """What was read, without where."""
    told = read["observations"]
    assert isinstance(told, list)
    plain = [{k: v for k, v in one.items() if k != "span"} for one in told]
    return (
        sorted(json.dumps(one, sort_keys=True) for one in plain),
        read["urgency"],
        read["understood"],
    )


def _level(read: dict[str, object]) -> int:
    return LEVELS.index(str(read["urgency"]))


def _no_accents(text: str) -> str:
    apart = unicodedata.normalize("NFD", text)
    return unicodedata.normalize("NFC", "".join(c for c in apart if not unicodedata.combining(c)))


CHANGES: dict[str, Callable[[str], str]] = {
    "upper case": str.upper,
    "lower case": str.lower,
    "no accents": _no_accents,
    "accents apart": lambda text: unicodedata.normalize("NFD", text),
    "spaces around": lambda text: f"  {text} \n",
    "a stop at the end": lambda text: text if text[-1] in ".?!" else text + ".",
    "exclamation": lambda text: text if text[-1] in ".?!" else text + "!!!",
    "curly apostrophes": lambda text: text.replace("'", "’"),
}


@pytest.mark.parametrize("change", CHANGES)
def test_form_does_not_change_what_is_read(change: str) -> None:
    differ = []
    for number, row in enumerate(ROWS):
        text = CHANGES[change](row["text"])
        if text != row["text"] and _gist(_plain(number)) != _gist(_answer(row, text)):
            differ.append((row["id"], text))
    assert differ == []


def test_politeness_never_lowers_the_urgency() -> None:
    lowered = []
    for number, row in enumerate(ROWS):
        text = FILLER[number % len(FILLER)].format(row["text"])
        if _level(_answer(row, text)) < _level(_plain(number)):
            lowered.append((row["id"], text))
    assert lowered == []


def test_a_red_flag_beside_any_message_stays_an_emergency() -> None:
    places = ("{said}. {flag}", "{flag}\n{said}", "{said}\n{flag}")
    lost = []
    for number, (row, flag) in enumerate(product(ROWS, RED_FLAGS)):
        if number % 3:
            continue  # with eight flags and every third, each reply meets two or three of them
        text = places[len(row["text"]) % 3].format(said=row["text"], flag=flag)
        if _level(_answer(row, text)) < LEVELS.index("emergency"):
            lost.append((row["id"], text))
    assert lost == []


def test_the_spans_lie_in_the_reply_and_hold_words() -> None:
    for number, row in enumerate(ROWS):
        told = _plain(number)["observations"]
        assert isinstance(told, list)
        for one in told:
            start, end = one.get("span", (0, 0))
            assert 0 <= start < end <= len(row["text"]), (row["id"], one)
            assert row["text"][start:end].strip(), (row["id"], one)
