"""``slowleash check``: every kind of file, and a clinic's own folder over ours."""

from __future__ import annotations

from pathlib import Path

import pytest

from bot.cli import check
from bot.cli.errors import CommandError

FLOWS = Path(__file__).resolve().parents[2] / "flows"
Shown = pytest.CaptureFixture[str]
RULES = """\
version: 1
over_version: 1
change:
  swelling-marked:
    after_day: 5
    source: our surgeons
    examples: [{said: [{about: swelling, value: marked}], day: 6, gives: same_day}]
without: {licking: the nurses ask by phone}
"""


@pytest.fixture
def clinic(tmp_path: Path) -> Path:
    """A clinic's folder with rules, words and a protocol of its own."""
    (tmp_path / "protocols").mkdir()
    (tmp_path / "red-flags.yaml").write_text(RULES, "utf-8")
    words = "words: {thanks: {en: You are welcome., es: Con gusto.}}\n"
    (tmp_path / "words.yaml").write_text(words, "utf-8")
    ours = (FLOWS / "protocols/general-orthopaedic.yaml").read_text("utf-8")
    own = ours.replace("protocol: general-orthopaedic\n", "protocol: hip\n", 1)
    (tmp_path / "protocols/hip.yaml").write_text(own, "utf-8")
    return tmp_path


def test_a_clinics_folder_is_checked_and_its_differences_are_shown(
    clinic: Path, capsys: Shown
) -> None:
    assert check.main(["--flows", str(clinic)]) == 0
    shown = capsys.readouterr().out
    for line in (
        f"{clinic / 'red-flags.yaml'}: what differs from our rules:",
        "  swelling-marked: after day 3 → after day 5; source “common practice, clinic to "
        "confirm” → source “our surgeons” (yours).",
        "  licking: next_day, left out (yours). Why: the nurses ask by phone",
        f"{clinic / 'red-flags.yaml'}: what comes of it, said alone:",
        "  swelling marked, days 4 to 5: less urgent, same_day → none (yours)",
        f"{clinic / 'words.yaml'}: what differs from our words:",
    ):
        assert line in shown.splitlines()
    assert "“You are welcome.” (yours)." in shown
    assert shown.endswith("3 files, no problems\n")


def test_a_clinics_rules_hold_for_its_protocols_and_for_ours(clinic: Path, capsys: Shown) -> None:
    more = """\
add:
  - id: drinks-little
    urgency: next_day
    matter: drinking
    when: {about: drinking, value: less}
    after_day: 3
    because: {en: Drinks little., es: Bebe poco.}
    source: our surgeons
    examples: [{said: [{about: drinking, value: less}], day: 4, gives: next_day}]
"""
    (clinic / "red-flags.yaml").write_text(RULES + more, "utf-8")
    assert check.main(["--flows", str(clinic)]) == 0
    shown = capsys.readouterr().out
    lacking = "for a cat, nothing asks about drinking when drinks-little may match"
    assert f"{clinic / 'protocols/hip.yaml'}:" in shown
    assert "(with our protocol general-orthopaedic):1:1: warning: " + lacking in shown


def test_a_clinics_slip_is_an_error_at_its_line(clinic: Path, capsys: Shown) -> None:
    broken = RULES.replace("swelling-marked", "swelling-markd")
    (clinic / "red-flags.yaml").write_text(broken, "utf-8")
    assert check.main(["--flows", str(clinic)]) == 1
    shown = capsys.readouterr().out
    assert f"{clinic / 'red-flags.yaml'}:4:3: our rules have no rule" in shown
    assert "Did you mean swelling-marked?" in shown


def test_rules_written_over_an_older_version_of_ours(clinic: Path, capsys: Shown) -> None:
    (clinic / "red-flags.yaml").write_text(RULES.replace("over_version: 1", "over_version: 9"))
    assert check.main(["--flows", str(clinic)]) == 0
    assert "red-flags.yaml:2:1: warning: written over version 9 of our" in capsys.readouterr().out


def test_no_such_folder(tmp_path: Path) -> None:
    with pytest.raises(CommandError, match="is no folder"):
        check.main(["--flows", str(tmp_path / "none")])


@pytest.mark.parametrize("path", sorted(FLOWS.glob("*.yaml")), ids=lambda path: path.name)
def test_every_kind_of_file_is_known_when_it_is_named(path: Path, capsys: Shown) -> None:
    assert check.main([str(path)]) == 0
    assert capsys.readouterr().out == "1 file, no problems\n"


@pytest.mark.parametrize(
    ("file", "old", "new", "says"),
    [
        ("red-flags.yaml", "when: {about: gums, value: yellow}", "when: {about: gums, value: pink}",
         "rule gums-yellow: example 1 (day 9) should give same_day"),
        ("red-flags.yaml", "when: {about: leg, value: crooked}",
         "when: {about: leg, value: crooked, earlier: true}", "it can never match"),
        ("red-flags.yaml", "Give nothing by mouth.\"\n      es",
         "TODO: ask the surgeon.\"\n      es", "'TODO' looks like a gap that was left to fill"),
        ("words.yaml", "\"You're welcome. I'm here.\"", "'{pet}'",
         "{pet} stands in one language only"),
        ("answers.yaml", "cut in good light", "cut in {light}", "nothing fills in {light}"),
        ("medicines.yaml", "formulary: 1", "formulary: one", "`formulary` must be a whole number"),
        ("medicines.yaml", "en: steroid, es: corticoide", "en: '???', es: corticoide",
         "'???' looks like a gap"),
        ("enrolment-example.yaml", "species: dog ", "species: dgo ", "Did you mean dog?"),
    ],
)  # fmt: skip
def test_a_slip_in_any_kind_of_file(
    file: str, old: str, new: str, says: str, tmp_path: Path, capsys: Shown
) -> None:
    text = (FLOWS / file).read_text("utf-8")
    assert old in text
    (tmp_path / file).write_text(text.replace(old, new, 1), "utf-8")
    check.main([str(tmp_path / file)])
    shown = capsys.readouterr().out
    assert says in shown
    assert f"{tmp_path / file}:" in shown
