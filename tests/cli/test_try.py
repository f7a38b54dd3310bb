"""``slowleash try``: what would come of a reply, and why."""

from __future__ import annotations

from datetime import time
from importlib.resources import files
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot import cli
from bot.cli.spans import columns, marked
from bot.cli.trial import Moment, Trial, try_reply
from bot.model.urgency import Urgency
from bot.plan.order import load_plan
from bot.protocol.library import protocols
from bot.protocol.settings import read_clinic
from bot.service.practice import open_practice

BISCUIT = load_plan((files("flows") / "enrolment-example.yaml").read_text("utf-8"), "example")
CLINIC = read_clinic((files("flows") / "clinic-example.yaml").read_text("utf-8"), "clinic")
COURSE = protocols()["general-orthopaedic"]
PRACTICE = open_practice(CLINIC, None, "slowleash", b"only for trying")
PHONE, AT_NIGHT = "+1 303 555 0142", "+1 303 555 0187"


@pytest.fixture(autouse=True)
def alone(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """In an empty folder, on a screen of 92 columns."""
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("COLUMNS", "92")


def tried(capsys: pytest.CaptureFixture[str], *words: str, code: int = 0) -> str:
    assert cli.main(["try", *words]) == code
    out = capsys.readouterr()
    return out.err if code else out.out


def come_of(text: str, day: int, asked: str = "none", at: time = time(12), **more: object) -> Trial:
    moment = Moment(day, at, asked, "en", **more)  # type: ignore[arg-type]
    return try_reply(text, moment, BISCUIT, COURSE, PRACTICE)


def test_words_rules_and_messages_stand_under_each_other(
    capsys: pytest.CaptureFixture[str],
) -> None:
    text = tried(capsys, "ate half and threw up twice", "--day", "3", "--asked", "appetite")
    assert "day 3 (Fri 06 Mar 12:00); asked about: appetite; the clinic is open" in text
    assert "  ate half and threw up twice\n  1───────     2───────\n" in text
    assert "1  appetite: less" in text
    assert "2  vomiting: yes – vomiting (2×)" in text
    assert "SAME DAY · vomiting-twice (red-flags.yaml:" in text
    owner, _, staff = text.partition("The owner is told:")[2].partition("The staff are told:")
    assert PHONE in owner
    assert "“ate half and threw up twice”" in staff
    assert "The patient and the clinic are an example's" in text


def test_words_need_no_quotes(capsys: pytest.CaptureFixture[str]) -> None:
    assert "  he is eating well\n" in tried(capsys, "he", "is", "eating", "well")


def test_what_was_said_before_is_known_to_the_rules() -> None:
    limp = come_of("won't use the leg", 12)
    lost = come_of("won't use the leg", 12, before=((9, "puts weight on the leg"),))
    assert [finding.rule for finding in limp.findings] == ["leg-unused"]
    assert lost.findings[0].rule == "leg-use-lost"
    assert lost.findings[0].urgency is Urgency.same_day


def test_at_night_the_owner_is_given_the_emergency_hospital() -> None:
    night = come_of("his gums are white", 5, at=time(2))
    assert not night.open_now
    assert night.findings[0].urgency is Urgency.emergency
    assert AT_NIGHT in night.owner[0].text
    assert night.staff


def test_a_bare_yes_answers_what_was_asked() -> None:
    assert come_of("yes", 3, "cone").reading.observations[0].about == "cone"
    dose = come_of("gave it", 3, "dose", time(9))
    assert "carprofen" in dose.owner[0].text
    assert not dose.staff


def test_what_is_not_understood_is_asked_about_and_said_so(
    capsys: pytest.CaptureFixture[str],
) -> None:
    text = tried(capsys, "the thing did the thing", "--lang", "es")
    assert "NOT all of it understood" in text
    assert "staff get it if the owner does not explain" in text
    assert "[Pasarlo a la clínica]" in text
    assert "The staff are told: nothing." in text


def test_an_own_order_and_clinic_are_used(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    order = (files("flows") / "enrolment-example.yaml").read_text("utf-8")
    (tmp_path / "mia.yaml").write_text(
        order.replace("patient: Biscuit", "patient: Mia").replace("species: dog", "species: cat"),
        "utf-8",
    )
    clinic = (files("flows") / "clinic-example.yaml").read_text("utf-8")
    (tmp_path / "clinic.yaml").write_text(clinic.replace("0142", "0111"), "utf-8")
    text = tried(capsys, "threw up blood", "--order", "mia.yaml")
    assert text.startswith("Mia, cat, day 7")
    assert "555 0111" in text
    assert "example's" not in text


@pytest.mark.parametrize(
    "words",
    [["--asked", "weather"], ["--at", "25:00"], ["--before", "well"], ["--before", "9: ok"],
     ["--order", "a.yaml", "--species", "cat"]],
)  # fmt: skip
def test_a_slip_on_the_command_line_ends_with_2(
    words: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    with pytest.raises(SystemExit) as stopped:
        cli.main(["try", "ok", *words])
    assert stopped.value.code == 2
    assert "usage: slowleash try" in capsys.readouterr().err


# ---- Marks under the words ----------------------------------------------------------------


def test_overlapping_marks_get_lines_of_their_own() -> None:
    assert list(marked("threw up his pill", [(0, 17), (6, 8), (0, 0)], 80)) == [
        "threw up his pill",
        "1────────────────",
        "      2─",
    ]


def test_marks_stand_under_wide_and_combined_letters() -> None:
    assert columns("🐶e\u0301") == 3
    assert list(marked("🐶🐶 cojea", [(3, 8)], 80)) == ["🐶🐶 cojea", "     1────"]


def test_a_long_text_is_marked_line_by_line() -> None:
    text = "one two three\nfour five"
    assert list(marked(text, [(4, 18)], 8)) == [
        "one two", "    1──", "three", "1────", "four", "1───", "five",
    ]  # fmt: skip


@given(st.text(max_size=80), st.lists(st.tuples(st.integers(0, 90), st.integers(0, 90))))
def test_any_text_and_span_is_shown_without_error(text: str, spans: list[tuple[int, int]]) -> None:
    inside = [(min(a, b, len(text)), min(max(a, b), len(text))) for a, b in spans]
    lines = list(marked(text, inside, 20))
    assert max(map(columns, lines), default=0) <= 2 * 20
    kept = "".join("".join(lines).split())
    assert all(char in kept for char in text if not char.isspace())
