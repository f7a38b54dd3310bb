"""`slowleash read`: JSON Lines in, JSON Lines out."""

from __future__ import annotations

import io
import json

import pytest

from bot.cli.read import main, read_lines


def _read(*rows: dict[str, object] | str) -> list[dict[str, object]]:
    lines = [row if isinstance(row, str) else json.dumps(row) for row in rows]
    return [json.loads(line) for line in read_lines(lines)]


def test_a_reply_becomes_observations_with_urgency_and_reasons() -> None:
    (out,) = _read({"id": "r1", "text": "puked twice n wont eat", "day": 5, "asked": "general"})
    assert out["id"] == "r1"
    told = {(o["about"], o["value"]): o for o in out["observations"]}  # type: ignore[attr-defined]
    assert set(told) == {("vomiting", "yes"), ("appetite", "none")}
    assert told["vomiting", "yes"]["count"] == 2
    assert told["vomiting", "yes"]["span"] == [0, 5]
    assert out["urgency"] == "same_day"
    assert out["understood"] is True
    assert out["reasons"]


def test_what_is_not_understood_is_never_urgency_none() -> None:
    (out,) = _read({"text": "qwerty zxcv"})
    assert out["understood"] is False
    assert out["urgency"] == "next_day"


def test_hours_are_told_from_the_time_of_the_reply() -> None:
    (out,) = _read({"text": "no pee since about nine last night", "at": "10:30", "day": 3})
    observations = out["observations"]
    assert isinstance(observations, list)
    (urine,) = observations
    assert urine["hours"] == 13.5
    assert out["urgency"] == "same_day"


@pytest.mark.parametrize(
    ("bad", "mend"),
    [
        ("{nonsense", "not JSON"),
        ('["text"]', "one JSON object a line"),
        ('{"id": 1}', '"text"'),
        ('{"text": "ok", "asked": "weather"}', "asked"),
        ('{"text": "ok", "at": "25:00"}', "HH:MM"),
        ('{"text": "ok", "day": "three"}', "whole number"),
        ('{"text": "ok", "species": "horse"}', "dog or cat"),
    ],
)
def test_a_bad_line_says_what_to_mend_and_the_rest_is_still_read(bad: str, mend: str) -> None:
    wrong, right = _read(bad, {"text": "ate everything", "asked": "appetite"})
    assert mend in str(wrong["error"])
    assert wrong["line"] == 1
    assert right["observations"]


def test_a_bad_line_makes_exit_code_2(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr("sys.stdin", io.StringIO('{"text": "ok"}\n{bad\n'))
    assert main([]) == 2
    out, err = capsys.readouterr()
    assert len(out.splitlines()) == 2
    assert "standard input:2:" in err
    monkeypatch.setattr("sys.stdin", io.StringIO('{"text": "ate well"}\n'))
    assert main([]) == 0
