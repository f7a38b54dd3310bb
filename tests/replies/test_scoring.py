"""The score says what it claims: found, spurious, raised, and fields only where labelled."""

from __future__ import annotations

from tests.bench.score_replies import Scored, fields, misses, report, score


def _scored(wanted: list[dict[str, object]], urgency: str, answer: dict[str, object]) -> Scored:
    row = {"id": "x1", "lang": "en", "species": "dog", "day": 6, "asked": "none", "at": "09:00"}
    return score({**row, "text": "…", "observations": wanted, "urgency": urgency}, answer)


def test_topic_and_value_make_an_observation_right() -> None:
    got = _scored(
        [{"about": "appetite", "value": "none"}, {"about": "vomiting", "value": "yes"}],
        "same_day",
        {
            "observations": [
                {"about": "appetite", "value": "less"},
                {"about": "vomiting", "value": "yes", "count": 2},
            ],
            "urgency": "same_day",
        },
    )
    assert [one["value"] for one in got.missed] == ["none"]
    assert [one["value"] for one in got.spurious] == ["less"]
    assert len(got.right) == 1
    assert not got.exact


def test_the_same_observation_twice_is_found_twice() -> None:
    one: dict[str, object] = {"about": "dose", "value": "given"}
    got = _scored([one, one], "none", {"observations": [one], "urgency": "none"})
    assert len(got.missed) == 1


def test_of_two_alike_the_one_with_the_right_fields_is_taken() -> None:
    wanted: dict[str, object] = {"about": "dose", "value": "given", "at": "08:00"}
    late: dict[str, object] = {"about": "dose", "value": "given", "at": "09:00"}
    got = _scored([wanted], "none", {"observations": [late, wanted], "urgency": "none"})
    assert got.right == ((wanted, wanted),)
    assert got.spurious == (late,)


def test_fields_are_asked_only_where_the_label_has_them() -> None:
    wanted: dict[str, object] = {"about": "walk", "value": "done", "metres": 402}
    assert fields(wanted, {"metres": 400.0, "minutes": 8, "span": [0, 4]}) == {"metres": True}
    assert fields(wanted, {"metres": 4000}) == {"metres": False}
    assert fields(wanted, {}) == {"metres": False}


def test_a_missed_red_flag_comes_first_among_the_misses() -> None:
    calm: dict[str, object] = {"observations": [], "urgency": "none", "understood": True}
    raised: dict[str, object] = {"observations": [], "urgency": "emergency", "understood": True}
    flag: list[dict[str, object]] = [{"about": "seizure", "value": "yes"}]
    listed = misses([_scored([], "none", raised), _scored(flag, "emergency", calm)])
    assert listed[1].endswith("emergency read as none")


def test_the_report_counts_recall_and_false_alarms() -> None:
    calm: dict[str, object] = {"observations": [], "urgency": "none", "understood": True}
    high: dict[str, object] = {"observations": [], "urgency": "emergency", "understood": True}
    flag: list[dict[str, object]] = [{"about": "seizure", "value": "yes"}]
    lines = report(
        [_scored(flag, "emergency", calm), _scored([], "none", high), _scored([], "none", calm)]
    )
    told = "\n".join(lines)
    assert "emergency  found at that level or above 0/1" in told
    assert "false alarms 1/1" in told
    assert "raised to same_day or above from below  1/2" in told
    assert "exact urgency                           1/3" in told


def test_what_is_asked_counts_at_the_level_that_it_would_have() -> None:
    flag: list[dict[str, object]] = [{"about": "seizure", "value": "yes"}]
    ask: dict[str, object] = {"about": "seizure", "value": "yes", "urgency": "emergency"}
    low = {**ask, "urgency": "same_day"}
    calm: dict[str, object] = {"observations": [], "urgency": "none", "understood": True}
    scored = [
        _scored(flag, "emergency", {**calm, "asks": [ask]}),
        _scored(flag, "emergency", {**calm, "asks": [low]}),
        _scored([], "none", {**calm, "asks": [low]}),
        _scored([], "none", {**calm, "asks": []}),
    ]
    assert [one.found_or_asked(3) for one in scored[:2]] == [True, False]
    assert [one.found_or_asked(2) for one in scored[:2]] == [True, True]
    told = "\n".join(report(scored))
    assert "emergency or above, found or asked      1/2" in told
    assert "same_day or above, found or asked       2/2" in told
    assert "asked where nothing is wrong            1/2" in told
