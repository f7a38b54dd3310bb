"""The second reader is taught from what stands in the repository, and the same every time."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from bot.reading.statistical import shipped
from bot.reading.statistical.model import FILE, packed, unpacked
from bot.teaching import fit, teach
from bot.teaching.calm import calm
from bot.teaching.idle import idle
from bot.teaching.joined import joined, plain
from bot.teaching.rows import FOLDS, Labelled, digest, labelled, sources
from bot.teaching.teach import Lesson, everything, taught

TESTS = Path(__file__).parents[1]
ROWS = labelled(TESTS)


@pytest.fixture(scope="module")
def few() -> list[Labelled]:
    """A sample of every file, large enough for a head or two of its own."""
    return ROWS[::15]


def test_two_lessons_give_the_same_bytes(
    few: list[Labelled], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(fit, "STEPS", 20)
    for made in (plain, idle, calm):  # a sample of what is made, too
        some = list(made())[::8]
        monkeypatch.setattr(teach, made.__name__, some.copy)
    first, second = (packed(taught(Lesson(few), {"data": "sample"})) for _ in range(2))
    assert first == second
    assert len(unpacked(first).heads) > 2


def test_the_shipped_model_was_taught_from_the_labels_as_they_are() -> None:
    """After a change of the labels: ``python -m bot.teaching``, and commit the file."""
    lesson = everything(ROWS)
    card = shipped().card
    assert (card["data"], card["labelled"], card["taught"]) == (
        digest(lesson),
        len(ROWS),
        len(lesson),
    )


def test_the_file_is_small_and_comes_back_as_it_went() -> None:
    data = FILE.read_bytes()
    assert len(data) <= 2_000_000
    assert packed(unpacked(data)) == data


def test_the_kept_back_replies_are_never_taught() -> None:
    replies = TESTS / "replies"
    kept = {path.name for kind in ("kept", "unseen") for path in replies.glob(f"{kind}*.jsonl")}
    assert kept
    assert not {"blind.jsonl", *kept} & {path.name for path in sources(TESTS)}


def test_what_is_made_of_a_reply_stays_in_its_fold() -> None:
    origins = {row.text: row.fold for row in ROWS}
    made = list(joined(ROWS))
    assert made
    assert all(row.fold == origins[row.origin] for row in made)
    assert {row.fold for row in ROWS} == set(range(FOLDS))


def test_a_curve_is_as_sure_as_the_scores_were_right() -> None:
    scores = np.repeat([-2.0, 2.0], 100)
    holds = np.concatenate([np.arange(100) < 10, np.arange(100) < 90])
    slope, offset = fit.curve(scores, holds)
    assert 1 / (1 + np.exp(-(slope * 2 + offset))) == pytest.approx(0.9, abs=0.01)
    assert offset == pytest.approx(0, abs=0.01)
