"""The page that a surgeon files: what was told, what was done, on one sheet."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

import pypdfium2
import pytest

from bot.context.words import default_words
from bot.model.ids import CaseId
from bot.model.observation import Observation
from bot.model.settings import Clinic
from bot.model.text import Lang
from bot.records.log_pdf import log_pdf
from bot.records.orders import plan_words
from bot.records.paper import Paper, marked, plain
from bot.records.record import Record
from bot.records.summary import Summary, rank, summarise
from bot.records.summary_cases import MOST_CASES
from bot.records.summary_pdf import as_pdf
from bot.records.summary_text import WIDTH, as_text
from bot.records.whole import Statement, WholeRecord
from tests.service.box import CLINIC

NOW = datetime(2026, 3, 10, 16, tzinfo=UTC)


def page(record: WholeRecord, lang: Lang = "en") -> Summary:
    return summarise(record, NOW, default_words(), lang, Clinic.model_validate(CLINIC))


def pages(pdf: bytes) -> list[str]:
    with pypdfium2.PdfDocument(pdf) as document:
        return [one.get_textpage().get_text_bounded() for one in document]


def flat(text: str) -> str:
    return " ".join(text.split())


def test_the_page_says_what_was_told_and_what_was_done(record: WholeRecord) -> None:
    made = page(record)
    told = {row[0]: row[1] for row in made.told.rows}
    assert told["Use of the leg"] == "some weight on the leg, or a limp, day 5"
    assert made.told.rows[0][2] == "no weight on the leg, day 1"
    assert dict(made.milestones)["First touched the ground"] == "day 4"
    assert dict(made.milestones)["First full weight"] == "not told yet"
    carprofen, _, trazodone = made.medicines.rows
    assert carprofen[2:] == ("1 of 7", "0", "6", "1 of 4 (25%)")
    assert trazodone[0] == "trazodone: half a tablet (50 mg)"
    assert trazodone[1].startswith("as needed")
    assert trazodone[2] == "1"
    when, why, done = made.cases.rows[0]
    assert when.startswith("SAME DAY\nday 3, 6 Mar")
    assert "“there is yellow pus on the cut”" in why
    assert "answered after 0 min (Kim, nurse)" in done
    assert "corrected or taken back: 1" in made.gaps
    assert record.head is not None
    assert record.head.hash in made.seal


def test_a_medicine_that_was_stopped_is_not_shown_as_ordered_alone(stopped: WholeRecord) -> None:
    made = page(stopped)
    assert made.medicines.rows[0][1].endswith("; stopped 6 Mar 2026")
    assert "stopped" not in made.medicines.rows[1][1]
    assert [row[1:] for row in made.changes.rows] == [
        ("Dr Okafor", "Please give Canela no more carprofen. (black stool)"),
        ("Dr Okafor", "phoned, all calm"),
    ]
    (sheet,) = pages(as_pdf(made))
    assert "phoned, all calm" in flat(sheet)
    assert "day 3, 6 Mar 09:00: Dr Okafor: phoned, all calm" in as_text(made)


def test_many_changes_stay_on_one_page_with_the_newest(stopped: WholeRecord) -> None:
    *earlier, note = stopped.log
    many = [replace(note, id=n, text=f"note {n} " + "x" * 300) for n in range(9100, 9130)]
    made = page(replace(stopped, log=(*earlier, *many)))
    assert [row[2][:9] for row in made.changes.rows][-1] == "note 9129"
    assert "25 earlier" in made.more_changes
    assert len(pages(as_pdf(made))) == 1


@pytest.mark.parametrize("about", ["stool", "urine", "gums", "seizure"])
def test_the_worst_told_is_the_worst_for_the_patient(record: WholeRecord, about: str) -> None:
    """Blood and straining weigh more than a puddle on the floor (common practice)."""
    best, worst = {"stool": ("straining", "black"), "urine": ("accident", "straining"),
                   "gums": ("yellow", "blue"), "seizure": ("no", "yes")}[about]  # fmt: skip
    assert rank(about, best) < rank(about, worst)
    first = record.statements[0]

    def told(value: str) -> Statement:
        return replace(first, noted=replace(first.noted, observation=Observation(about, value)))

    made = page(replace(record, statements=(told(worst), told(best))))
    (row,) = made.told.rows
    assert row[2]  # what was worse, told before, is not lost


def test_the_log_speaks_of_the_plan_by_the_households_clock(record: WholeRecord) -> None:
    moved = Record(1, NOW, "plan", "bot", "carprofen: 2026-03-05T03:00:00+00:00 → "
                   "2026-03-05T05:30:00+00:00", {"why": "at least 8 h apart"})  # fmt: skip
    assert plan_words(record, moved, "en") == (
        "carprofen: 4 Mar 20:00 → 4 Mar 22:30 (at least 8 h apart)"
    )
    walks = Record(2, NOW, "plan", "bot", "walks: advanced", {"minutes": 20, "outings": 3})
    assert plan_words(record, walks, "es") == "paseos: 20 min cada uno, 3 al día"


@pytest.mark.parametrize("lang", ["en", "es"])
@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_it_is_one_page_in_both_languages(record: WholeRecord, lang: Lang, paper: Paper) -> None:
    made = page(record, lang)
    (sheet,) = pages(as_pdf(made, paper))
    shown = flat(sheet)
    for words in ("Canela", "Inés", "carprofen", "Dr Okafor", made.caution):
        assert words in shown
    assert as_pdf(made, paper) == as_pdf(made, paper)
    with pypdfium2.PdfDocument(as_pdf(made, paper)) as document:
        assert document.get_metadata_dict()["Title"] == f"{made.title}: {made.patient}"
    text = as_text(made)
    assert flat(made.caution) in flat(text)
    assert max(map(len, text.splitlines())) <= WIDTH


def test_many_cases_stay_on_one_page_with_the_most_urgent(record: WholeRecord) -> None:
    first, second = record.cases
    many = tuple(replace(second, id=CaseId(f"1-{n}"), note="x" * 200) for n in range(40))
    made = page(replace(record, cases=(first, *many)))
    assert len(made.cases.rows) == MOST_CASES
    assert made.cases.rows[0][0].startswith("SAME DAY")
    assert "33 more" in made.more_cases
    assert len(pages(as_pdf(made))) == 1


def test_a_patient_of_whom_nothing_was_heard_has_a_page(record: WholeRecord) -> None:
    silent = replace(
        record, carers=(), statements=(), entries=(), cases=(), log=(), head=None,
        last_heard=None, ended_at=None, state="active",
    )  # fmt: skip
    made = page(silent)
    assert made.told.rows == ()
    assert dict(made.facts)["Last heard from"] == "never"
    assert len(pages(as_pdf(made))) == 1
    assert "None." in as_text(made)


def test_the_whole_log_is_in_its_pdf(record: WholeRecord) -> None:
    sheets = pages(log_pdf(record, NOW, "en"))
    shown = flat(" ".join(sheets))
    assert f"page {len(sheets)} of {len(sheets)}" in flat(sheets[-1])
    for entry in record.log:
        if entry.kind in ("said", "staff"):
            assert flat(plain(entry.text)) in shown
    assert "[THUMBS UP SIGN]" in shown
    assert [f"day {n} ·" in shown for n in range(7)] == [True] * 7


def test_no_letter_is_lost_and_none_can_be_a_tag() -> None:
    assert plain("Łukasz 👍 → ő") == "?ukasz [THUMBS UP SIGN] -> o" or plain("ő") == "o"
    assert marked("<b>&") == "&lt;b&gt;&amp;"
    assert marked("Ł") == '<font name="Vera">Ł</font>'
    assert marked("中") == "[CJK UNIFIED IDEOGRAPH-4E2D]"
    assert marked("e\u0301") == "é"
