"""The invented practice: whole, of one piece with what the real bot writes, and at rest."""

from __future__ import annotations

import asyncio
import json
import re
import sqlite3
from collections import Counter
from collections.abc import Iterator
from contextlib import closing
from datetime import UTC, timedelta
from pathlib import Path
from typing import Any

import pytest

from bot.context.answers import default_answers
from bot.context.practice import Practice
from bot.context.words import default_words
from bot.measures.cohort import cohort
from bot.model.effects import Effects, EndCourse
from bot.model.ids import EventId, PatientId
from bot.model.observation import Observation
from bot.model.reading import Context
from bot.model.settings import PagingStep
from bot.plan.order import check_plan
from bot.protocol.library import protocols
from bot.reading import read
from bot.service.practice import secret_of
from bot.store.apply import apply
from bot.store.audit import verify
from bot.store.database import Database, moment, stamp
from bot.store.load import plan_of
from bot.store.whole import courses
from bot.triage import default_rules
from demo.practice import Book, fill, go_on, load_book
from demo.scenario import load_clinic, load_scenario

NOW = load_scenario().start.astimezone(UTC)
Row = dict[str, Any]


async def practice_of(db: Database) -> Practice:
    return Practice(
        clinic=load_clinic(),
        words=default_words(),
        rules=default_rules(),
        protocols=protocols(),
        bot_name="slowleash_demo_bot",
        secret=await db.transact(secret_of),
        answers=default_answers(),
    )


@pytest.fixture(scope="module")
def told() -> list[float]:
    return []


@pytest.fixture(scope="module")
def path(tmp_path_factory: pytest.TempPathFactory, told: list[float]) -> Path:
    """The database of the whole practice, as the demo opens."""
    made = tmp_path_factory.mktemp("practice") / "practice.db"

    async def make() -> None:
        async with Database(made) as db:
            await fill(db, await practice_of(db), NOW, told.append)

    asyncio.run(make())
    return made


@pytest.fixture
def plain(path: Path) -> Iterator[sqlite3.Connection]:
    """The database as anybody's program would see it."""
    with closing(sqlite3.connect(path)) as connection:
        connection.row_factory = sqlite3.Row
        yield connection


def rows(plain: sqlite3.Connection, statement: str, *values: object) -> list[Row]:
    return [dict(row) for row in plain.execute(statement, values)]


def few(book: Book, *names: str) -> Book:
    """The same practice with these patients only."""
    return book.model_copy(
        update={"patients": tuple(one for one in book.patients if one.name in names)}
    )


# -- who is there


def test_some_forty_patients_of_every_kind_at_every_stage(plain: sqlite3.Connection) -> None:
    found = rows(plain, "SELECT plan, state FROM patient")
    plans = [plan_of(row["plan"]) for row in found]
    days = {(NOW.date() - plan.surgery).days for plan in plans}
    assert 38 <= len(plans) <= 45
    assert {plan.protocol for plan in plans} == set(protocols())
    assert {plan.species for plan in plans} == {"dog", "cat"}
    assert {plan.language for plan in plans} == {"en", "es"}
    assert min(days) == 0
    assert {day // 7 for day in days} >= set(range(9))
    assert Counter(row["state"] for row in found)["ended"] >= 2
    assert len({plan.clinician for plan in plans}) > 1


def test_every_order_is_one_that_staff_could_enter(plain: sqlite3.Connection) -> None:
    known = protocols()
    for row in rows(plain, "SELECT plan, enrolled_at FROM patient"):
        plan = plan_of(row["plan"])
        today = moment(row["enrolled_at"]).date()
        wrong = [p for p in check_plan(plan, known[plan.protocol], today) if p.level == "error"]
        assert not wrong, plan.patient
        assert plan.medicines


def test_the_numbers_are_set_aside_for_invention_and_nobody_can_be_reached(
    plain: sqlite3.Connection,
) -> None:
    phones = [plan_of(r["plan"]).phone or "" for r in rows(plain, "SELECT plan FROM patient")]
    assert all(re.fullmatch(r"\+1 303 555 01\d\d", phone) for phone in phones)
    assert not rows(plain, "SELECT 1 FROM person WHERE reachable = 1")


def test_progress_is_told_to_the_end(path: Path, told: list[float]) -> None:
    assert path.exists()
    assert len(told) > 3
    assert told == sorted(told)
    assert told[-1] == 1.0


# -- what is written about them


async def test_the_record_stands(path: Path) -> None:
    async with Database(path) as db:
        found = await db.read(verify)
    assert found.stands, (found.breaks[:3], found.strays[:3])
    assert found.entries > 5000


def test_what_was_read_stands_in_the_words(plain: sqlite3.Connection) -> None:
    said = {
        (row["patient_id"], json.loads(row["data"])["source"]): row["text"]
        for row in rows(plain, "SELECT patient_id, text, data FROM log WHERE kind = 'said'")
    }
    marked = 0
    for row in rows(plain, "SELECT patient_id, body, source FROM observation"):
        seen = Observation.from_dict(json.loads(row["body"]))  # ValueError: not a word of ours
        start, end = seen.span
        if not row["source"].startswith("message:"):
            assert (start, end) == (0, 0)
            continue
        words = said[row["patient_id"], row["source"]]
        assert 0 <= start < end <= len(words), words
        marked += 1
    assert marked > 100


def test_the_log_tells_the_days_in_order(plain: sqlite3.Connection) -> None:
    times = [row["at"] for row in rows(plain, "SELECT at FROM log ORDER BY id")]
    assert times == sorted(times)
    assert times[-1] <= stamp(NOW)
    kinds = {row["kind"] for row in rows(plain, "SELECT DISTINCT kind FROM log")}
    assert kinds >= {
        "enrolled", "joined", "sent", "tapped", "said", "noted", "finding", "case", "staff",
        "plan", "picture", "review", "unanswered", "ended",
    }  # fmt: skip


def test_nothing_was_answered_before_it_was_sent(plain: sqlite3.Connection) -> None:
    items = rows(
        plain,
        "SELECT i.state, i.kind, i.choice, i.at, i.by_name, p.sent_at, p.due_at FROM item AS i "
        "JOIN prompt AS p ON p.id = i.prompt_id",
    )
    answered = [row for row in items if row["state"] == "answered"]
    assert len(answered) > 2000
    for row in answered:
        assert row["sent_at"], row
        assert row["sent_at"] <= row["at"] <= stamp(NOW), row
        assert row["by_name"], row
    for row in items:
        assert (row["state"] == "planned") == (row["sent_at"] is None), row
        assert (row["due_at"] > stamp(NOW)) == (row["sent_at"] is None), row
    states = {(row["state"], row["choice"]) for row in items if row["kind"] == "dose"}
    assert states >= {
        ("answered", "given"), ("answered", "missed"), ("answered", "refused"),
        ("unanswered", None), ("planned", None),
    }  # fmt: skip


def test_cases_in_every_state_with_their_times(plain: sqlite3.Connection) -> None:
    found = rows(plain, "SELECT * FROM case_file")
    assert {row["state"] for row in found} == {"open", "acknowledged", "answered", "closed"}
    assert {row["urgency"] for row in found} == {1, 2, 3}
    assert len({row["matter"] for row in found}) > 6
    for row in found:
        PagingStep.model_validate_json(row["policy"])
        assert row["deadline_at"] > row["opened_at"]
        times = [row[f"{what}_at"] for what in ("opened", "acknowledged", "answered", "closed")]
        known = [time for time in times if time]
        assert known == sorted(known), row
        # An answered case opens again when more comes; its first times stay.
        again = row["state"] == "open" and row["answered_at"]
        if row["matter"] != "silence":  # that one closes by itself, when somebody writes again
            assert bool(row["acknowledged_at"]) == (row["state"] != "open" or bool(again)), row
        assert bool(row["closed_at"]) == (row["state"] == "closed"), row
        entries = json.loads(row["body"])["entries"]
        assert entries
        assert all(entry["findings"] for entry in entries)


def test_pictures_lie_on_the_shelf(plain: sqlite3.Connection, path: Path) -> None:
    found = rows(plain, "SELECT kind, state, path, patient_id, day FROM media")
    assert {row["kind"] for row in found} == {"photo", "video"}
    assert {row["state"] for row in found} == {"kept"}
    folder = path.with_name("practice-media")
    assert all((folder / row["path"]).stat().st_size > 0 for row in found)


async def test_the_measures_have_something_to_say(path: Path) -> None:
    async with Database(path) as db:
        found = await db.read(lambda tx: courses(tx, NOW))
    assert len(found) == len(load_book().patients)
    assert len({repr(course) for course in found}) == len(found)
    told = cohort(found).infections
    for day in (30, 90):
        past = [one for one in found if one.surgery + timedelta(days=day + 8) <= NOW.date()]
        assert 0 < len(past) <= told[day].infection.whole + told[day].silent <= len(found)
    assert told[30].infection.part, "someone had a wound infection"


# -- what is still to come


def test_nothing_waits_to_be_sent_and_nothing_is_overdue(plain: sqlite3.Connection) -> None:
    assert {r["state"] for r in rows(plain, "SELECT DISTINCT state FROM outbox")} == {"sent"}
    assert {r["state"] for r in rows(plain, "SELECT DISTINCT state FROM inbox")} == {"done"}
    overdue = rows(plain, "SELECT * FROM due WHERE state = 'waiting' AND due_at <= ?", stamp(NOW))
    assert not overdue
    planned = rows(plain, "SELECT id FROM prompt WHERE sent_at IS NULL")
    waiting = rows(plain, "SELECT key FROM due WHERE state = 'waiting' AND kind = 'prompt'")
    assert {f"prompt:{row['id']}" for row in planned} == {row["key"] for row in waiting}
    open_cases = rows(plain, "SELECT id FROM case_file WHERE state = 'open'")
    pages = rows(plain, "SELECT key FROM due WHERE state = 'waiting' AND kind = 'page'")
    assert {f"page:{row['id']}" for row in open_cases} == {row["key"] for row in pages}


async def test_the_practice_lives_on(tmp_path: Path) -> None:
    """Days pass as one stretch or as two: the households answer, and no row is left over."""
    ends: list[list[tuple[Any, ...]]] = []
    for stops in ((6,), (1, 6)):
        path = tmp_path / f"{len(stops)}.db"
        book = few(load_book(), "Quince", "Pimienta", "Tobillo", "Grouse")
        async with Database(path) as db:
            world = await fill(db, await practice_of(db), NOW, book=book)
            for days in stops:
                await go_on(db, world, NOW + timedelta(days=days))
            assert (await db.read(verify)).stands
        with closing(sqlite3.connect(path)) as connection:
            connection.row_factory = sqlite3.Row
            until = stamp(NOW + timedelta(days=6))
            assert not rows(
                connection, "SELECT * FROM due WHERE state = 'waiting' AND due_at <= ?", until
            )
            assert {r["state"] for r in rows(connection, "SELECT state FROM outbox")} == {"sent"}
            later = rows(
                connection, "SELECT at FROM item WHERE state = 'answered' AND at > ?", stamp(NOW)
            )
            assert len(later) > 20
            ended = rows(connection, "SELECT name FROM patient WHERE state = 'ended'")
            assert [row["name"] for row in ended] == ["Grouse"]
            # Not the sums of rows: they are told once for each transaction.
            told = "SELECT at, kind, author, text FROM log WHERE kind != 'rows' ORDER BY id"
            ends.append([tuple(row.values()) for row in rows(connection, told)])
    assert ends[0] == ends[1]


async def test_a_course_that_staff_ended_stays_ended(tmp_path: Path) -> None:
    async with Database(tmp_path / "ended.db") as db:
        world = await fill(db, await practice_of(db), NOW, book=few(load_book(), "Quince"))
        out = Effects(EventId("by hand"))
        out.add(EndCourse(PatientId(1)))
        await db.transact(lambda tx: apply(tx, out, NOW))
        before = await db.read(lambda tx: len(tx.all("log_of", patient_id=1)))
        await go_on(db, world, NOW + timedelta(days=4))
        after = await db.read(lambda tx: tx.all("log_of", patient_id=1))
    assert not [row for row in after[before:] if row["kind"] in ("tapped", "noted", "plan")]
    assert not [r for r in after[before:] if json.loads(r["data"]).get("key", "")[:6] == "prompt"]


def test_every_message_of_the_pool_is_read_as_it_is_meant() -> None:
    """Else a chart shows what nobody meant."""
    wrong: list[str] = []
    for key, pool in load_book().messages.items():
        about, _, value = key.partition(": ")
        for lang, texts in pool.items():
            context = Context(lang=lang, medicines=("carprofen", "gabapentin"), day=9, at=600)
            for text in texts:
                seen = read(text, context).observations
                kinds = {(one.about, one.value) for one in seen}
                if (about, value) not in kinds:
                    wrong.append(f"{text!r} is not read as {key}, but {sorted(kinds)}")
                elif any(one.about == about and one.trend == "worse" for one in seen) and (
                    about != "incision"
                ):
                    wrong.append(f"{text!r} is read as getting worse")
    assert not wrong, "\n".join(wrong)
