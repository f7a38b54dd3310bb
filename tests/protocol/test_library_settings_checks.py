"""Finding protocols, a clinic's settings, the warnings, and ``slowleash check``."""

from __future__ import annotations

from pathlib import Path

import pytest

from bot.cli import check
from bot.model.plan import Hours
from bot.protocol.checks import check_protocol
from bot.protocol.library import UnknownProtocol, load_protocol, packaged_texts, protocol, protocols
from bot.protocol.problem import FlowError, Problem
from bot.protocol.settings import load_clinic, read_clinic

_, STEM, ORTHO = next(one for one in packaged_texts() if one[1] == "general-orthopaedic")
EXAMPLE = Path(__file__).resolve().parents[2] / "flows" / "clinic-example.yaml"
CLINIC = EXAMPLE.read_text("utf-8")


def warnings(text: str, hours: Hours | None = None) -> list[Problem]:
    made, tree = load_protocol(text, "x.yaml")
    return check_protocol(made, hours, file="x.yaml", tree=tree)


def changed(old: str, new: str, text: str = ORTHO) -> str:
    assert old in text
    return text.replace(old, new, 1)


def line_of(text: str, words: str) -> int:
    return text[: text.index(words)].count("\n") + 1


# The library.


def test_an_unknown_protocol_says_which_there_are() -> None:
    with pytest.raises(UnknownProtocol, match="Did you mean general-orthopaedic") as caught:
        protocol("general-orthopedic")
    assert "There are: amputation, extracapsular-cruciate" in str(caught.value)


def test_a_practice_adds_its_own_and_changes_ours(tmp_path: Path) -> None:
    own = changed("version: 1\n", "version: 7\n")
    (tmp_path / "general-orthopaedic.yaml").write_text(own, "utf-8")
    other = changed("protocol: general-orthopaedic", "protocol: hip")
    (tmp_path / "hip.yaml").write_text(other, "utf-8")
    found = protocols(tmp_path)
    assert set(found) == {"hip", *protocols()}
    assert list(found) == sorted(found)
    assert found["general-orthopaedic"].version == 7
    assert protocol("general-orthopaedic").version == 1


def test_all_files_of_a_folder_are_told_of_at_once(tmp_path: Path) -> None:
    (tmp_path / "a.yaml").write_text("version: x", "utf-8")
    (tmp_path / "b.yaml").write_text(ORTHO, "utf-8")
    with pytest.raises(FlowError) as caught:
        protocols(tmp_path)
    said = str(caught.value)
    assert f"{tmp_path / 'a.yaml'}:1:10: `version` must be a whole number" in said
    assert "the file is called b, but the protocol in it 'general-orthopaedic'" in said
    with pytest.raises(FlowError, match="no such folder"):
        protocols(tmp_path / "none")


# The warnings.


@pytest.mark.parametrize(
    ("old", "new", "at", "says"),
    [
        ("label: {en: Skipped,", "label: {en: Skipped it because of the weather,",
         "Skipped it because", "33 characters"),
        ("Stop if {name} gets", "Stop if {pet} gets", "text:\n      en: >-\n        Cold",
         "nothing fills in {pet}"),
        ("Stop if {name} gets", "Stop if {name gets", "text:\n      en: >-\n        Cold", "brace"),
        ("Stop if {name} gets", "Stop if {name!r:>99} gets", "text:\n      en: >-\n        Cold",
         "brace"),
        ("about {minutes} minutes each", "about ten minutes each",
         "about ten minutes each", "{minutes} stands in one language"),
        ("label: {en: Done,", "label: {en: '{name}',", "'{name}'", "nothing fills in {name}"),
        ("ice_last: 4 ", "ice_last: 3 ", "warm_first: 5", "1 day(s) between"),
        ("ice_last: 4 ", "ice_last: 6 ", "warm_first: 5", "on the same days"),
        ("warm_last: 11", "warm_last: 4", "warm_first: 5", "before it begins"),
        ("recheck: 12 ", "recheck: 70 ", "recheck: 70", "after the last day of the course"),
        ("recheck: 12 ", "check: 12\n  recheck: 12 ", "check: 12", "nothing uses `check`"),
        ("    from_day: 15\n    to_day: last", "    from_day: 15\n    to_day: 80", "to_day: 80",
         "cut at the last day"),
        ("    from_day: 15\n    to_day: last", "    from_day: 60\n    to_day: 61",
         "from_day: 60", "it never comes"),
        ("    from_day: 7\n    to_day: 14", "    from_day: 17\n    to_day: 14",
         "from_day: 17\n    to_day: 14", "before it begins on day 17"),
        ("species: [dog, cat]\n\nspans", "species: [dog]\n\nspans", "[cat]", "for a cat"),
        ("- id: skipped", "- id: skip", "choices:", "needs the choices done and skipped"),
        ("about: bruising\n    from_day: 8", "about: bruising\n    from_day: 7",
         "about: bruising\n    from_day: 7", "bruising: two answers for day 7"),
        ("about: bruising\n    from_day: 8", "about: bruising\n    from_day: 9",
         "about: bruising\n    from_day: 9", "bruising: no answer for day 8"),
    ],
)  # fmt: skip
def test_a_warning_names_the_line(old: str, new: str, at: str, says: str) -> None:
    text = changed(old, new)
    found = [one for one in warnings(text) if says in str(one)]
    assert found, [str(one) for one in warnings(text)]
    first = line_of(text, at)
    assert any(-2 <= one.line - first <= 5 for one in found), (first, [str(one) for one in found])


def test_what_would_keep_a_message_from_being_sent_is_an_error() -> None:
    found = warnings(changed("Stop if {name} gets", "Stop if {pet} gets"))
    assert [one.level for one in found] == ["error"]
    long = changed("Put nothing on it:", "Put nothing on it " + "at all " * 800 + ":")
    found = [one for one in warnings(long) if "hard to read" not in one.what]
    assert {one.level for one in found} == {"error"}
    assert all("too long to send" in one.what for one in found)


def test_the_quiet_hours_of_a_household_are_seen() -> None:
    found = warnings(ORTHO, Hours.model_validate({"bedtime": "22:30"}))
    assert {"cone", "toilet-trips", "short-walks"} <= {one.what.split()[0] for one in found}
    assert all("quiet hours (22:30)" in one.what for one in found)


def test_too_much_in_one_message_is_told_once() -> None:
    text = ORTHO
    for old in ("    at: [bedtime]", "    at: [midday]"):
        text = text.replace(old, "    at: [evening]")
    found = [one for one in warnings(text) if "things in the evening message" in one.what]
    assert found
    assert len({one.line for one in found}) == len(found)


# A clinic's settings.


def test_the_example_of_a_clinic_is_right() -> None:
    clinic = load_clinic(EXAMPLE)
    assert clinic.opening["mon"].opens.hour == 8
    assert "sun" not in clinic.opening


@pytest.mark.parametrize(
    ("old", "new", "at", "says"),
    [
        ("America/Denver", "Denver", "Denver", "America/Denver"),
        ('"+1 303 555 0142"', '"0142"', '"0142"', "country code"),
        ('"+1 303 555 0142"', "13035550142", "13035550142", "in quotes"),
        ("08:00, closes: 18:00", "19:00, closes: 18:00", "18:00", "closes must come after opens"),
        ("08:00, closes: 18:00", "8, closes: 18:00", "8, closes", "as in 08:00"),
        ("  mon:", "  mom:", "mom", "Did you mean mon?"),
        ("remind_after_minutes: 60 ", "remind_after_minutes: 180 ", "unanswered_after",
         "before its reminder"),
        ("language: en", "language: fr", "fr", "en or es"),
        ("emergency_phone", "emergency_fone", "emergency_fone", "Did you mean emergency_phone?"),
    ],
)  # fmt: skip
def test_a_slip_in_the_settings_is_shown_at_its_line(
    old: str, new: str, at: str, says: str
) -> None:
    text = changed(old, new, CLINIC)
    with pytest.raises(FlowError) as caught:
        read_clinic(text, "clinic.yaml")
    assert any(
        says in str(one) and one.line == line_of(text, at) for one in caught.value.problems
    ), str(caught.value)


def test_a_clinic_that_never_opens_is_a_slip() -> None:
    start, end = CLINIC.index("opening:\n"), CLINIC.index("# A case that nobody")
    with pytest.raises(FlowError, match="names no day"):
        read_clinic(CLINIC[:start] + "opening: {}\n" + CLINIC[end:], "clinic.yaml")


# The command.


def test_our_own_flows_have_no_problems(capsys: pytest.CaptureFixture[str]) -> None:
    assert check.main([]) == 0
    assert capsys.readouterr().out.endswith("files, no problems\n")


def test_files_are_told_apart_by_their_keys(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "clinic.yaml").write_text(changed("America/Denver", "Denver", CLINIC), "utf-8")
    (tmp_path / "shopping.yaml").write_text("milk: 2\n", "utf-8")
    (tmp_path / f"{STEM}.yaml").write_text(changed("recheck: 12 ", "recheck: 70 "), "utf-8")
    assert check.main([str(tmp_path), str(tmp_path / "gone.yaml")]) == 1
    shown = capsys.readouterr().out
    assert f"{tmp_path / 'clinic.yaml'}:{line_of(CLINIC, 'America/Denver')}:7: " in shown
    assert "shopping.yaml:1:1: this is no protocol" in shown
    assert "gone.yaml:1:1: the file cannot be read" in shown
    assert "warning: `recheck` is day 70" in shown
    assert "4 files, 3 errors," in shown


def test_a_warning_alone_stops_nothing(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / f"{STEM}.yaml"
    path.write_text(changed("recheck: 12 ", "check: 12\n  recheck: 12 "), "utf-8")
    assert check.main([str(path)]) == 0
    assert "1 file, 1 warning" in capsys.readouterr().out


def test_a_folder_without_flows_is_no_success(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert check.main([str(tmp_path)]) == 1
    assert "no .yaml file" in capsys.readouterr().out
