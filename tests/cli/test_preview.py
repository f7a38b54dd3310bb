"""``slowleash preview``: the course on the screen, and one page for the fridge.

The PDF is read back with PDFium, which shares no code with what wrote it.
"""

from __future__ import annotations

import re
import struct
from html.parser import HTMLParser
from importlib.resources import files
from itertools import pairwise
from pathlib import Path

import pypdfium2
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot import cli
from bot.cli.course_text import course
from bot.cli.fridge_pdf import MARGIN, Paper, TooMuch, as_pdf, printable
from bot.model.plan import Plan
from bot.model.text import LANGS
from bot.plan.fridge import fridge
from bot.plan.order import load_plan
from bot.plan.prompts import prompts
from bot.protocol.library import protocols
from bot.protocol.settings import read_clinic
from tests.plan.patients import medicine, plan, plans, same
from tests.plan.patients import protocol as small

ORDER = (files("flows") / "enrolment-example.yaml").read_text("utf-8")
CLINIC = (files("flows") / "clinic-example.yaml").read_text("utf-8")
BISCUIT = load_plan(ORDER, "example")
COURSE = protocols()["general-orthopaedic"]
LETTER, A4 = (612, 792), (595.3, 841.9)
"""Points: 8.5 by 11 inches; 210 by 297 mm (ISO 216)."""


@pytest.fixture
def order(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The example's order in an empty folder, which is where we are."""
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("COLUMNS", "100")
    path = tmp_path / "biscuit.yaml"
    path.write_text(ORDER, "utf-8")
    return path


def shown(capsys: pytest.CaptureFixture[str], *words: str | Path, code: int = 0) -> str:
    assert cli.main(["preview", *map(str, words)]) == code
    out = capsys.readouterr()
    return out.err if code else out.out


def read_pdf(data: bytes) -> tuple[str, tuple[float, float], int]:
    """The words of the first page, its size in points, and how many pages there are."""
    with pypdfium2.PdfDocument(data) as document:
        page = document[0]
        words = page.get_textpage().get_text_range()
        return " ".join(words.split()), page.get_size(), len(document)


# ---- On the screen ----------------------------------------------------------------------


def test_the_head_says_whose_course_it_is_and_counts_its_messages(
    order: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    text = shown(capsys, order)
    coming = prompts(BISCUIT, COURSE)
    assert text.startswith("Biscuit · Tibial plateau levelling osteotomy, left · Dr Example\n")
    assert f"56 days, {len(coming)} messages; at most 4 a day" in text


def test_every_day_is_there_once_and_days_that_repeat_in_one_block(
    order: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    text = shown(capsys, order)
    spans = re.findall(r"^Days? (\d+)(?: to (\d+))? · .*?(\d+) message", text, re.MULTILINE)
    days = [day for first, last, _ in spans for day in range(int(first), int(last or first) + 1)]
    assert days == list(range(1, 57))
    total = sum(int(n) * (int(last or first) - int(first) + 1) for first, last, n in spans)
    assert total == len(prompts(BISCUIT, COURSE))
    assert "Days 54 to 55 · Sun 26 Apr – Mon 27 Apr · 1 message a day" in text
    assert "21:30  as the day before (3 lines)" in text
    assert max(map(len, text.splitlines())) <= 100


def test_a_day_in_full_has_every_word_and_button(
    order: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    text = " ".join(shown(capsys, order, "--day", "3", "--lang", "es").split())
    assert text.startswith("Día 3 · vie 6 mar · 4 mensajes 08:00 dosis Dé cephalexin")
    for prompt in prompts(BISCUIT, COURSE):
        if prompt.day == 3:
            for item in prompt.items:
                assert " ".join(item.text.es.split()) in text
                assert all(f"[{choice.label.es}]" in text for choice in item.choices)


def test_a_day_that_is_not_in_the_course_is_told(
    order: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    error = shown(capsys, order, "--day", "57", code=2)
    assert "it runs from day 1, the way home, to day 56" in error


def test_a_mistake_in_the_order_is_told_with_its_line(
    order: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    order.write_text(ORDER.replace("America/Denver", "America/Denvr"), "utf-8")
    assert re.search(r"biscuit\.yaml:\d+:\d+: ", shown(capsys, order, code=2))


# ---- The page for the fridge ------------------------------------------------------------


def test_the_page_holds_all_that_a_household_must_know(
    order: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (order.parent / "clinic.yaml").write_text(CLINIC, "utf-8")
    assert "one page" in shown(capsys, order, "--to", "page.pdf")
    text, size, pages = read_pdf((order.parent / "page.pdf").read_bytes())
    assert pages == 1
    assert size == pytest.approx(LETTER, abs=0.5)
    for words in (
        "Biscuit", "surgery Tuesday 3 Mar 2026", "+1 303 555 0142", "+1 303 555 0187",
        "Example Animal Emergency Hospital", "PHONE NOW", "swallowed pills or poison",
        "08:00", "20:00", "21:30", "carprofen", "one tablet (50 mg), with food, until Wed 18 Mar",
        "cephalexin", "Cold pack", "with a cloth", "Warm compress", "Massage", "Cone on",
        "to Monday 16 Mar at least", "Recheck", "about Sunday 15 Mar", "X-rays",
        "about Tuesday 28 Apr", "book by Tuesday 21 Apr", "Appointment:", "Week 8",
        "31 Mar–6 Apr", "5 min", "25 min", "3 × a day", "Never give two at once",
    ):  # fmt: skip
        assert words in text, words


def test_in_spanish_on_a4_with_lines_to_fill_in_for_the_phones(
    order: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    said = shown(capsys, order, "--to", "hoja.pdf", "--lang", "es", "--paper", "a4")
    assert "Fill in whom to phone" in said
    text, size, pages = read_pdf((order.parent / "hoja.pdf").read_bytes())
    assert size == pytest.approx(A4, abs=0.5)
    assert pages == 1
    for words in (
        "LLAME YA", "encías pálidas", "Hospital de urgencias", "con comida", "Bolsa fría",
        "hacia el martes 28 abr", "Revisión", "Semana 1", "3 × al día", "Cita:",
    ):  # fmt: skip
        assert words in text, words
    assert "Phone" not in text


def test_a_cats_page_has_no_walks() -> None:
    cat = BISCUIT.model_copy(update={"species": "cat"})
    text, _, pages = read_pdf(as_pdf(fridge(cat, COURSE, "en"), "letter"))
    assert pages == 1
    assert "Week 8" in text
    assert "Walks" not in text
    assert " min " not in text.replace("minutes", "")


def test_boxes_stand_on_the_days_of_the_doses() -> None:
    """As ordered: seven days of cephalexin from the evening of the way home."""
    page = fridge(BISCUIT, COURSE, "en")
    rows = {(row.head, row.when): row.days for row in page.rows}
    assert rows["cephalexin", "20:00"] == frozenset(range(1, 8))
    assert rows["cephalexin", "08:00"] == frozenset(range(2, 9))
    assert rows["Cold pack", "08:00"] == frozenset({2, 3, 4})
    assert rows["Massage", "20:00"] == frozenset(range(6, 15))
    assert max(rows["Cone on", "21:30"]) == 13
    assert [day for day, _ in page.days] == list(range(1, 15))


def test_a_medicine_for_when_it_is_needed_has_no_boxes_but_its_words() -> None:
    gabapentin = medicine("gabapentin", 8, as_needed=True, needed_for="pain", days=5)
    patient = plan(medicine(), gabapentin, protocol="general-orthopaedic")
    row = fridge(patient, COURSE, "en").rows[-1]
    assert (row.when, row.head, row.days) == ("if needed", "gabapentin", frozenset())
    words = "only if needed for pain, at least 8 hours apart, for 5 days at most"
    assert words in read_pdf(as_pdf(fridge(patient, COURSE, "en"), "letter"))[0]
    assert words in " ".join(course(patient, COURSE, "en", 100))


def test_the_same_order_gives_the_same_page() -> None:
    page = fridge(BISCUIT, COURSE, "en")
    assert as_pdf(page, "a4") == as_pdf(page, "a4")


def test_a_picture_and_a_web_page_of_it(order: Path, capsys: pytest.CaptureFixture[str]) -> None:
    shown(capsys, order, "--to", "page.png")
    picture = (order.parent / "page.png").read_bytes()
    assert picture.startswith(b"\x89PNG\r\n\x1a\n")
    inches = [dots / 150 for dots in struct.unpack(">II", picture[16:24])]
    assert inches == pytest.approx([8.5, 11], abs=0.01)
    shown(capsys, order, "--to", "page.html", "--lang", "es")

    class Words(HTMLParser):
        said = ""

        def handle_data(self, data: str) -> None:
            self.said += data

    web = (order.parent / "page.html").read_text("utf-8")
    parser = Words()
    parser.feed(web)
    for words in ("Biscuit", "LLAME YA", "carprofen", "Bolsa fría", "25 min"):
        assert words in parser.said
    assert web.count("☐") == sum(
        len(row.days & {day for day, _ in page.days})
        for page in [fridge(BISCUIT, COURSE, "es")]
        for row in page.rows
    )
    assert not re.search(r"(src|href)=", web)


def test_a_name_with_markup_stays_words(order: Path, capsys: pytest.CaptureFixture[str]) -> None:
    order.write_text(ORDER.replace("patient: Biscuit", 'patient: "<b>{x}"'), "utf-8")
    shown(capsys, order, "--to", "page.html")
    assert "<h1>&lt;b&gt;{x}</h1>" in (order.parent / "page.html").read_text("utf-8")


def test_a_file_of_another_kind_is_told(order: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert "Call the file .pdf, .png or .html" in shown(capsys, order, "--to", "page.docx", code=2)
    assert not (order.parent / "page.docx").exists()


def test_more_than_a_page_holds_is_told() -> None:
    many = [medicine(f"medicine {n}", 4) for n in range(12)]
    with pytest.raises(TooMuch, match="77 rows"):
        as_pdf(fridge(plan(*many), small(), "en"), "letter")


@pytest.mark.parametrize("name", sorted(protocols()))
def test_every_protocol_of_the_library_makes_a_page_with_its_dates(name: str) -> None:
    course_of = protocols()[name]
    for species in course_of.species:
        patient = BISCUIT.model_copy(update={"species": species, "spans": {}, "walks": None})
        text, _, pages = read_pdf(as_pdf(fridge(patient, course_of, "en"), "letter"))
        assert pages == 1
        worn = {"bandage_last": "Bandage", "frame_last": "Frame", "hip_check": "Hip check"}
        for span, head in worn.items():
            assert (head in text) == (span in course_of.spans)


def boxes_of_words(page: pypdfium2.PdfPage) -> list[tuple[float, float, float, float]]:
    """Where its words stand: left, bottom, right, top, in points."""
    words = page.get_textpage()
    return [words.get_rect(n) for n in range(words.count_rects())]


@given(plans(), st.integers(0, 4))
@settings(max_examples=25)
def test_any_plan_makes_one_page_with_nothing_over_its_edge_or_over_other_words(
    patient: Plan, more: int
) -> None:
    clinic = read_clinic(CLINIC, "clinic")
    long = same("one and a half tablets (75 mg) in a little tuna, half an hour before a meal")
    added = tuple(medicine(f"medicine {n}", 8, amount=long) for n in range(more))
    patient = patient.model_copy(update={"medicines": patient.medicines + added})
    papers: tuple[Paper, ...] = ("letter", "a4")
    for lang, paper in zip(LANGS, papers, strict=True):
        with pypdfium2.PdfDocument(as_pdf(fridge(patient, small(), lang, clinic), paper)) as made:
            assert len(made) == 1
            width, height = made[0].get_size()
            boxes = sorted(boxes_of_words(made[0]))
            for left, bottom, right, top in boxes:
                assert MARGIN - 2 <= left <= right <= width - MARGIN + 2
                assert MARGIN - 10 <= bottom <= top <= height - MARGIN + 2
            for (_, low, right, high), (left, bottom, _, top) in pairwise(boxes):
                shared = min(high, top) - max(low, bottom)
                assert left >= right - 1 or shared < 0.35 * min(high - low, top - bottom)


@pytest.mark.parametrize(
    ("name", "printed"),
    [("Señor Íñigo", "Señor Íñigo"), ("Zoë", "Zoë"), ("Čip", "Cip"), ("小白", "??"),
     ("Bo🐶", "Bo?")],
)  # fmt: skip
def test_letters_that_the_fonts_lack_are_written_plainly(name: str, printed: str) -> None:
    assert printable(name) == printed
