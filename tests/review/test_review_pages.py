"""What the pages show, and what can be corrected and noted there."""

from __future__ import annotations

import json
import re
import sqlite3
from datetime import timedelta
from html import unescape
from itertools import combinations
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.context.words import default_words
from bot.model.effects import Effects, Entry, PutHold
from bot.model.hold import FromStaff, Hold, Walks
from bot.model.ids import EventId, HoldId, MemberId, PatientId
from bot.review.charts import LEFT, PHONE, REACH, Lane, Mark, settle
from bot.review.words import Tongue, spanish
from bot.store.audit import verify
from bot.store.search import terms
from tests.review.conftest import Pages
from tests.review.practice import RED_FLAG, WORDS


def plain(html: str) -> str:
    """The words of a page."""
    return " ".join(unescape(re.sub(r"<[^>]+>", " ", html)).split())


async def test_who_needs_me_comes_first(pages: Pages) -> None:
    came = await pages.enter("Pell")
    words = plain(came.text)
    assert words.index("Canela") < words.index("Trufa")  # an emergency goes before all else
    for part in ("EMERGENCY", "taken by Kim, nurse", "temp 38.6 C, some swelling, pain is mild",
                 "touches the toes down", "1/5", "day 12 recheck"):  # fmt: skip
        assert part in words, part
    found = plain((await pages.web.get("/patients?q=vídal")).text)
    assert "Trufa" in found
    assert "Canela" not in found
    assert "Nobody fits" in (await pages.web.get("/patients?show=ended")).text


async def test_records_that_cannot_be_read_hide_no_other_and_are_seen(pages: Pages) -> None:
    spoil = "UPDATE patient SET plan = '{}' WHERE id = 2"
    await pages.db.transact(lambda tx: tx._connection.execute(spoil))
    words = plain((await pages.enter("Pell")).text)
    assert "touches the toes down" in words
    assert "Trufa" in words
    assert "cannot be read" in words
    there = await pages.store.courses([PatientId(1), PatientId(2)], pages.watch.now())
    assert len(there) == 1


async def test_while_nothing_can_be_stored_the_pages_say_so(pages: Pages, tmp_path: Path) -> None:
    """A form that seemed to be kept, and was not, is worse than one refused."""
    await pages.enter("Dr Okafor")
    note = {"note": "phoned, all calm", "token": await pages.token()}
    (tmp_path / "practice.db").rename(tmp_path / "aside.db")
    for answer in (
        await pages.web.get("/patients/1"), await pages.web.post("/patients/1/notes", data=note),
    ):  # fmt: skip
        assert answer.status_code == 503
        assert "Nothing of what you entered was kept" in answer.text
        assert "practice.db" not in answer.text
    (tmp_path / "aside.db").rename(tmp_path / "practice.db")
    assert (await pages.web.get("/patients/1")).status_code == 200


async def test_what_was_read_stands_on_its_words_with_the_rule_and_the_reason(
    pages: Pages,
) -> None:
    await pages.enter("Dr Okafor")
    html = (await pages.web.get("/patients/1")).text
    assert re.search(r'<mark title="pale gums">gums look white</mark> and he is <mark', html)
    assert "Rule breathing-laboured" in plain(html)
    told = await pages.observation("weight_bearing")
    link = rf'<a href="#r{told}" aria-label="day 2, 13:00: touches the toes down"'
    assert re.search(link, html)  # the chart's mark leads to the words
    assert f'id="r{told}"' in html
    for lane in ("Use of the leg", "Walks", "Appetite", "Pain", "Swelling", "Temperature",
                 "carprofen", "Cold packs", "Cone", "Cases"):  # fmt: skip
        assert f'aria-label="{lane}"' in html, lane
    assert html.count('id="e') == len(set(re.findall(r'id="(e\d+)"', html)))
    for anchor in set(re.findall(r'href="#(\w+)"', html)):
        assert f'id="{anchor}"' in html, anchor


async def test_what_is_new_since_the_last_look(pages: Pages) -> None:
    await pages.enter("Dr Okafor")
    first = plain((await pages.web.get("/patients/1")).text)
    assert "since you have not looked before" in first
    pages.watch.move(timedelta(hours=3))
    await pages.web.post(
        "/patients/1/notes", data={"note": "phoned, all calm", "token": await pages.token()}
    )
    second = plain((await pages.web.get("/patients/1")).text)
    news = second[second.index("Since you last looked") : second.index("The course")]
    assert "phoned, all calm" in news
    assert RED_FLAG not in news
    pages.watch.move(timedelta(minutes=10))  # the same visit: still new
    third = plain((await pages.web.get("/patients/1")).text)
    assert "phoned, all calm" in third.split("The course")[0]
    pages.watch.move(timedelta(hours=2))
    assert "Nothing new." in plain((await pages.web.get("/patients/1")).text)
    looks = await pages.logged("viewed", 1)
    assert len(looks) == 5  # each look, and the redirect after the note, is in the trail
    assert {row["author"] for row in looks} == {"Dr Okafor"}


@given(st.lists(st.floats(LEFT, 99).map(lambda x: round(x, 2)), max_size=60))
def test_no_mark_takes_the_finger_that_is_meant_for_another(places: list[float]) -> None:
    """Two circles do not meet on a phone, unless both are as small as a mark itself."""
    lane = Lane("walk", "Walks", 76, [], [Mark(x, 66, "dot", "", "#r1") for x in places])
    settle(lane)
    low, high = REACH
    for one, other in combinations(lane.marks, 2):
        assert low <= one.reach <= high
        apart = abs(one.x - other.x) * PHONE
        assert one.reach + other.reach <= apart + 1 or low in (one.reach, other.reach)


async def test_what_a_colleague_decided_is_news_with_the_reason(pages: Pages) -> None:
    await pages.enter("Dr Okafor")
    await pages.web.get("/patients/1")
    pages.watch.move(timedelta(hours=3))
    out = Effects(EventId("test"))
    stop = {"change": "told_med_stop", "med": "carprofen", "why": "black stool"}
    out.add(
        Entry("plan", "Ruiz", "Please give Canela no more carprofen.", PatientId(1), stop),
        Entry(
            "plan",
            "bot",
            "walks: advanced",
            PatientId(1),
            {"minutes": 10, "outings": 3, "why": "well"},
        ),
        Entry("case", "Ruiz", "Closed by Ruiz: Advice given", PatientId(1), {"state": "closed"}),
    )
    await pages.store.act(out, pages.watch.now())
    page = plain((await pages.web.get("/patients/1")).text)
    news = page[page.index("Since you last looked") : page.index("The course")]
    assert "Ruiz plan: Please give Canela no more carprofen. (black stool)" in news
    assert "Closed by Ruiz" in news
    assert "walks:" not in news  # the bot's own round
    assert "bot plan new walks: 10 min each, 3 a day (well)" in page


async def test_a_picture_without_words_is_shown_and_not_quoted(pages: Pages) -> None:
    await pages.enter("Dr Okafor")
    html = (await pages.web.get("/patients/1")).text
    assert "<q></q>" not in html
    words = plain(html)
    assert "Ines sent a film look at it" in words
    assert "Ines sent a picture: the leg today look at it" in words
    assert html.count('href="#p2"') == 2  # at the top and in the conversation
    assert re.search(r'<li id="p2" class="film">.*?/pictures/2/frames', html, re.S)


async def test_a_correction_keeps_the_old_reading_with_author_and_reason(pages: Pages) -> None:
    await pages.enter("Dr Okafor")
    ident = await pages.observation("pain")
    path = f"/patients/1/readings/{ident}"
    form = (await pages.web.get(path)).text
    assert "<mark>pain is mild</mark>" in form
    data = {"reading": "pain.moderate", "why": "", "token": await pages.token()}
    assert "Write the reason" in plain((await pages.web.post(path, data=data)).text)
    data |= {"why": "he means the night before"}
    kept = await pages.web.post(path, data=data)
    assert kept.url.path == "/patients/1"
    words = plain(kept.text)
    assert re.search("Dr Okafor, Sat 7 Mar: now .+ Reason: he means the night before", words)
    rows = {row["id"]: row for row in await pages.rows("whole_observations", patient_id=1)}
    assert rows[ident]["state"] == "corrected"
    new = [row for row in rows.values() if row["author"] == "Dr Okafor"]
    assert [json.loads(row["body"])["value"] for row in new] == ["moderate"]
    assert new[0]["at"] == rows[ident]["at"]
    assert json.loads(new[0]["body"])["span"] == json.loads(rows[ident]["body"])["span"]
    again = await pages.web.post(path, data=data)
    assert again.status_code == 400
    assert "in the meantime" in again.text
    assert (await pages.db.read(lambda tx: verify(tx))).stands


async def test_a_corrected_dose_changes_its_line_too(pages: Pages) -> None:
    await pages.enter("Dr Okafor")
    told = await pages.rows("whole_observations", patient_id=1)
    ident = next(row["id"] for row in told if '"dose","value":"given"' in row["body"])
    data = {"reading": "dose.refused", "why": "wrong button", "token": await pages.token()}
    await pages.web.post(f"/patients/1/readings/{ident}", data=data)
    lines = await pages.rows("whole_entries", patient_id=1)
    doses = [row for row in lines if row["choice"] and '"kind":"dose"' in row["body"]]
    assert [(row["choice"], row["by_name"]) for row in doses] == [("refused", "Dr Okafor")]


@pytest.mark.parametrize("reading", ["pain.purple", "nonsense", "temperature.measured", ""])
async def test_nothing_outside_the_vocabulary_is_kept(pages: Pages, reading: str) -> None:
    await pages.enter("Dr Okafor")
    ident = await pages.observation("pain")
    data = {"reading": reading, "why": "x", "token": await pages.token()}
    answer = await pages.web.post(f"/patients/1/readings/{ident}", data=data)
    assert answer.status_code == 400
    assert await pages.logged("corrected", 1) == []


async def test_staff_add_notes_but_correct_nothing(pages: Pages) -> None:
    await pages.enter("Pell")
    ident = await pages.observation("pain")
    assert f"/readings/{ident}" not in (await pages.web.get("/patients/1")).text
    token = await pages.token()
    for answer in (
        await pages.web.get(f"/patients/1/readings/{ident}"),
        await pages.web.post(
            f"/patients/1/readings/{ident}",
            data={"reading": "pain.none", "why": "x", "token": token},
        ),
    ):
        assert answer.status_code == 403
        assert "clinicians and administrators" in answer.text
    assert (await pages.logged("refused"))[-1]["author"] == "Pell"
    note = "asked for a <b>photo</b> of the leg"
    page = await pages.web.post("/patients/1/notes", data={"note": note, "token": token})
    assert "asked for a &lt;b&gt;photo&lt;/b&gt; of the leg" in page.text
    assert [row["author"] for row in await pages.logged("note", 1)] == ["Pell"]


@pytest.mark.parametrize(
    ("asked", "found"),
    [
        ("q=pill", WORDS),
        ("q=comio+hinch", "Comió muy poquito"),
        ("q=COMIÓ", "Comió muy poquito"),
        ('q="toe+touching"&patient=1', "toe touching now"),
        ("topic=temperature", "temp 38.6 C"),
        ("urgency=emergency", RED_FLAG),
        ("topic=dose&patient=1", "Given: Give carprofen"),  # a button
        ("topic=breathing&urgency=emergency", RED_FLAG),
        ("q=breath&since=2026-03-06&until=2026-03-06", RED_FLAG),
    ],
)
async def test_search_finds_both_languages_accents_aside(
    pages: Pages, asked: str, found: str
) -> None:
    await pages.enter("Pell")
    assert found in plain((await pages.web.get(f"/search?{asked}")).text).replace(" ,", ",")


@pytest.mark.parametrize(
    "asked",
    ["q=unicorn", "q=pill&patient=2", "q=pill&since=2026-03-07", "q=pill&topic=temperature",
     "q=pill&urgency=emergency", "q=%22%28%29", "q=pill&patient=trufa",
     "urgency=emergency&patient=2", "urgency=emergency&since=2026-03-07",
     "topic=swelling&urgency=emergency", "topic=temperature&until=2026-03-05"],
)  # fmt: skip
async def test_search_finds_nothing_else(pages: Pages, asked: str) -> None:
    await pages.enter("Pell")
    answer = await pages.web.get(f"/search?{asked}")
    assert answer.status_code == 200
    assert "Nothing was found" in answer.text


async def test_a_patient_is_named_as_staff_name_it(pages: Pages) -> None:
    await pages.enter("Pell")
    assert "muy poquito" in plain((await pages.web.get("/search?q=comio&patient=TRUFA")).text)
    unknown = await pages.web.get("/search?q=pill&patient=99")
    assert "No patient has this name or number" in unknown.text
    several = await pages.web.get("/search?q=pill&patient=a")
    assert "Which of these patients?" in several.text
    assert "q=pill&amp;patient=1" in several.text


@pytest.mark.parametrize("words", ['"', "a AND", "NEAR(", "col:x", "*", "-x", "'; DROP", "ñ^2"])
async def test_any_words_may_be_looked_for(pages: Pages, words: str) -> None:
    await pages.enter("Pell")
    assert (await pages.web.get("/search", params={"q": words})).status_code == 200


def test_each_word_is_a_beginning_and_quotes_hold_a_phrase() -> None:
    assert terms('vomit "toe touching" (x)') == '"vomit" * "toe touching" "x" *'


async def test_words_that_are_erased_are_found_no_more(pages: Pages) -> None:
    """The index follows the log."""
    await pages.enter("Pell")

    with sqlite3.connect(pages.db.path) as other:
        other.execute("UPDATE log SET text = 'erased' WHERE text LIKE '%threw up%'")
    other.close()
    assert "Nothing was found" in (await pages.web.get("/search?q=threw")).text
    assert "erased" in plain((await pages.web.get("/search?q=erased")).text)


@pytest.mark.parametrize(
    ("name", "begins"),
    [("summary.pdf", b"%PDF-"), ("summary.txt", b"Cottonwood Bend"), ("log.pdf", b"%PDF-"),
     ("log.csv", b""), ("log.jsonl", b"{"),
     ("plan.ics", b"BEGIN:VCALENDAR"), ("fhir.json", b"{")],
)  # fmt: skip
async def test_records_leave_the_system_and_the_log_says_so(
    pages: Pages, name: str, begins: bytes
) -> None:
    await pages.enter("Pell")
    answer = await pages.web.get(f"/patients/1/records/{name}")
    assert answer.status_code == 200
    assert answer.content.startswith(begins)
    assert len(answer.content) > 500
    assert f"took {name}" in (await pages.logged("viewed", 1))[-1]["text"]


async def test_pictures_and_films_come_from_the_shelf(pages: Pages) -> None:
    await pages.enter("Pell")
    html = (await pages.web.get("/patients/1")).text
    assert 'alt="Picture, day 3: the leg today"' in html
    picture = await pages.web.get("/patients/1/pictures/1")
    film = await pages.web.get("/patients/1/pictures/2")
    assert picture.headers["content-type"] == "image/png"
    assert picture.content.startswith(b"\x89PNG")
    assert film.headers["content-type"] == "video/mp4"
    part = await pages.web.get("/patients/1/pictures/2", headers={"range": "bytes=0-99"})
    assert (part.status_code, len(part.content)) == (206, 100)
    sheet = await pages.web.get("/patients/1/pictures/2/frames")
    assert sheet.headers["content-type"].startswith("image/")
    assert (await pages.web.get("/patients/1/pictures/1/frames")).status_code == 404
    assert (await pages.web.get("/patients/2/pictures/1")).status_code == 404  # another's


async def test_no_look_at_a_patient_leaves_no_trace(pages: Pages) -> None:
    await pages.enter("Pell")
    (look,) = [row for row in await pages.logged("viewed") if "list" in row["text"]]
    assert json.loads(look["data"])["patients"] == [1, 2]
    await pages.web.get("/patients/1/pictures/1")
    assert [row["text"] for row in await pages.logged("viewed", 1)] == ["looked at picture 1"]
    await pages.web.get("/patients/1")
    for _ in range(3):  # what a page shows belongs to the look at the page
        await pages.web.get("/patients/1/pictures/1")
    assert len(await pages.logged("viewed", 1)) == 2
    pages.watch.move(timedelta(hours=1))
    await pages.web.get("/patients/1/pictures/2/frames")
    assert (await pages.logged("viewed", 1))[-1]["text"] == "looked at picture 2"
    assert (await pages.db.read(lambda tx: verify(tx))).stands


async def test_small_numbers_are_said_to_be_small(pages: Pages) -> None:
    await pages.enter("Pell")
    words = plain((await pages.web.get("/cohort")).text)
    assert "only 2: too few for a rate" in words
    assert "1 of 2 have reached it" in words
    assert "Nobody fits" in (await pages.web.get("/cohort?procedure=none+such")).text
    for path in ("/cohort?since=yesterday", "/search?q=pill&since=yesterday"):
        assert "“yesterday” is no date" in plain((await pages.web.get(path)).text)


@pytest.mark.parametrize(
    "path",
    ["/patients/99", "/patients/1/readings/999", "/nowhere", "/patients/1/records/all.zip",
     "/patients/1/pictures/5"],
)  # fmt: skip
async def test_what_is_not_there(pages: Pages, path: str) -> None:
    await pages.enter("Dr Okafor")
    answer = await pages.web.get(path)
    assert answer.status_code == 404
    assert "Nothing is here" in answer.text


def test_spanish_has_the_same_places_to_fill() -> None:
    """The words in braces are the same in both."""
    tongue = Tongue("es", default_words())
    for english, words in spanish().items():
        assert set(re.findall(r"{\w+}", english)) == set(re.findall(r"{\w+}", words)), english
    assert tongue.say("{n} min ago", n=3) == "hace 3 min"


async def test_what_is_on_hold_stands_at_the_top_and_in_the_list(pages: Pages) -> None:
    who = FromStaff(MemberId(1), "Dr Okafor", "", EventId("test"))
    held = Hold(HoldId("h1"), Walks(), pages.watch.now(), who)
    await pages.enter("Dr Okafor")
    assert "the walks (" not in plain((await pages.web.get("/patients/1")).text)
    out = Effects(EventId("test"))
    out.add(PutHold(PatientId(1), held))
    await pages.store.act(out, pages.watch.now())
    page = plain((await pages.web.get("/patients/1")).text)
    assert re.search(r"On hold .*the walks \(.*\(since .*Dr Okafor\).*/release Canela", page)
    assert re.search(r"On hold : .*the walks \(", plain((await pages.web.get("/patients")).text))
