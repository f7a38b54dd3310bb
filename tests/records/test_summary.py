"""The page that a surgeon files: what was told, what was done, on one sheet."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime

import pypdfium2
import pytest

from bot.model.settings import Clinic
from bot.model.text import Lang
from bot.records.log_pdf import log_pdf
from bot.records.paper import Paper, marked, plain
from bot.records.summary import Summary, summarise
from bot.records.summary_cases import MOST_CASES
from bot.records.summary_pdf import as_pdf
from bot.records.summary_text import WIDTH, as_text
from bot.records.whole import WholeRecord
from bot.talk.words import default_words
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


@pytest.mark.parametrize("lang", ["en", "es"])
@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_it_is_one_page_in_both_languages(record: WholeRecord, lang: Lang, paper: Paper) -> None:
    made = page(record, lang)
    (sheet,) = pages(as_pdf(made, paper))
    shown = flat(sheet)
    for words in ("Canela", "Inés", "carprofen", "Dr Okafor", made.caution):
        assert words in shown
    assert as_pdf(made, paper) == as_pdf(made, paper)
    text = as_text(made)
    assert flat(made.caution) in flat(text)
    assert max(map(len, text.splitlines())) <= WIDTH


def test_many_cases_stay_on_one_page_with_the_most_urgent(record: WholeRecord) -> None:
    first, second = record.cases
    many = tuple(replace(second, id=f"1-{n}", note="x" * 200) for n in range(40))
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
