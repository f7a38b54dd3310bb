"""``slowleash read --explain``: which rules led to a reading, and what kept others out."""

from __future__ import annotations

from bot.cli.read import answer


def _told(text: str, **more: object) -> dict[tuple[str, str], str]:
    out = answer({"text": text, **more}, explain=True)
    return {(one["says"], one["words"]): one["became"] for one in out["explain"]}  # type: ignore[attr-defined]


def test_what_is_read_names_its_rules() -> None:
    out = answer({"text": "his gums are white"}, explain=True)
    steps = out["explain"]
    assert isinstance(steps, list)
    assert any(step["rule"].split(".")[1:3] == ["gums", "pale"] for step in steps)
    assert "explain" not in answer({"text": "his gums are white"})


def test_what_keeps_a_rule_from_counting_is_told() -> None:
    told = _told("should I worry if he vomits?")
    assert told["vomiting: yes", "vomits"] == "not counted: a question"
    assert any(says.startswith("mood: ") for says, _ in told)
    calm = _told("she was not lethargic")
    assert calm["energy: lethargic", "lethargic"] == "denied, so energy: normal"


def test_words_that_belong_to_another_rule_are_told() -> None:
    told = _told("he is dead tired")
    assert all(became != "counted" for (says, _), became in told.items() if says == "life: died")
    kept = _told("not pooed yet")
    assert kept["stool: normal", "pooed"].startswith("its words belong to ")
