"""Every row says by id which event wrote it and who caused it, and holds come and go."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from dataclasses import replace
from datetime import timedelta

import pytest

from bot.model import effects as o
from bot.model.effects import Effects
from bot.model.hold import AntiInflammatories, FromStaff, Hold
from bot.model.ids import EventId, HoldId, MemberId, PatientId, PersonId, SourceId, due_event
from bot.model.observation import Observation
from bot.store.apply import apply
from bot.store.audit import verify
from bot.store.database import Tx
from bot.store.erase import Erasure
from bot.store.sealed_rows import settle
from bot.store.search import Query, search

from .canela import CANELA, INES, NOW, fresh, loaded

SAID = EventId("update:812")
SHE_VOMITS = Observation("vomiting", "yes")


@pytest.fixture
def plain() -> Iterator[sqlite3.Connection]:
    """The database as anyone with a database program sees it."""
    connection = fresh()
    yield connection
    connection.close()


@pytest.fixture
def tx(plain: sqlite3.Connection) -> Tx:
    """The same, by statements."""
    return Tx(plain)


def said(event: EventId, text: str, source: str, *, urgency: str = "") -> Effects:
    """Words of Inés, what was read, an answered line, a reply, perhaps a rule's finding."""
    out = Effects(event, INES, person=PersonId(1))
    out.add(
        o.Entry("said", "Inés", text, CANELA, {"source": source}),
        o.Note(CANELA, SHE_VOMITS, 2, SourceId(source), "Inés", PersonId(1)),
        o.Entry("noted", "bot", "vomiting", CANELA,
                {"observation": SHE_VOMITS.as_dict(), "day": 2, "source": source}),
    )  # fmt: skip
    if urgency:
        out.add(o.Entry("finding", "rule", "she vomits", CANELA, {"urgency": urgency, "rule": "v"}))
    out.say(INES, "I passed it on.", patient=CANELA)
    return out


def hold(words: str = "") -> Hold:
    cause = FromStaff(MemberId(1), "Kim, nurse", words, SAID)
    return Hold(HoldId("h1"), AntiInflammatories(), NOW, cause)


def test_what_an_event_writes_carries_it_and_who_caused_it(
    tx: Tx, plain: sqlite3.Connection
) -> None:
    line = loaded(tx).lines()[0].id
    out = said(SAID, "she threw up", "message:11:5")
    out.add(o.Mark(line, "answered", "given", "Inés", NOW, SourceId("message:11:5"), PersonId(1)))
    apply(tx, out, NOW)
    rows = plain.execute("SELECT * FROM log WHERE event = ?", (SAID,)).fetchall()
    assert [row["kind"] for row in rows] == ["said", "noted", "queued"]
    assert {(row["person_id"], row["member_id"]) for row in rows} == {(1, None)}
    assert [row["source"] for row in rows] == ["message:11:5", "message:11:5", None]
    for table in ("observation", "outbox", "item"):
        (row,) = plain.execute(f"SELECT * FROM {table} WHERE event = ?", (SAID,))  # noqa: S608
        assert row["event"] == SAID
    assert next(one for one in loaded(tx).lines() if one.id == line).person == 1
    settle(tx)
    assert verify(tx).stands


def test_a_hold_stands_until_it_is_ended_and_says_by_whom(
    tx: Tx, plain: sqlite3.Connection
) -> None:
    apply(tx, Effects(SAID, all=[o.PutHold(CANELA, hold())]), NOW)
    told = replace(hold(), told=True)
    apply(tx, Effects(EventId("update:813"), all=[o.PutHold(CANELA, told)]), NOW)
    assert loaded(tx).holds == (told,)
    end = [
        o.EndHold(PatientId(2), told.id, MemberId(1), "Kim, nurse"),
        o.EndHold(CANELA, told.id, MemberId(1), "Kim, nurse"),
    ]
    apply(tx, Effects(EventId("update:814"), all=[end[0]]), NOW)
    assert loaded(tx).holds == (told,), "another patient's hold is not ended"
    apply(tx, Effects(EventId("update:815"), all=[end[1]]), NOW)
    assert loaded(tx).holds == ()
    (row,) = plain.execute("SELECT * FROM hold").fetchall()
    assert (row["event"], row["ended_by_member"], row["ended_by"]) == (SAID, 1, "Kim, nurse")


def test_a_death_is_told_from_an_end_and_can_be_taken_back(
    tx: Tx, plain: sqlite3.Connection
) -> None:
    def keep(*effects: o.Effect) -> str:
        apply(tx, Effects(SAID, all=list(effects)), NOW)
        return loaded(tx).state

    assert keep(o.EndCourse(CANELA)) == "ended"
    assert keep(o.EndCourse(CANELA, died=True)) == "died"
    assert keep(o.EndCourse(CANELA)) == "died"
    assert keep(o.SetState(CANELA, "active")) == "active"
    (row,) = plain.execute("SELECT ended_at, ended_why FROM patient WHERE id = 1").fetchall()
    assert tuple(row) == (None, None)


def test_a_search_by_urgency_finds_the_message_of_the_event_and_no_other(tx: Tx) -> None:
    apply(tx, said(SAID, "she threw up twice", "message:11:5", urgency="same_day"), NOW)
    apply(tx, said(EventId("update:813"), "she threw up a toy", "message:11:6"), NOW)
    due = Effects(due_event("silence:1", "2026-03-05"))
    due.add(
        o.Entry("finding", "rule", "nobody answers", CANELA, {"urgency": "same_day", "rule": "s"})
    )
    apply(tx, due, NOW)
    found = search(tx, Query("threw", urgency="same_day"))
    assert [one.entry for one in found] == [
        one.entry for one in search(tx, Query()) if "twice" in one.text
    ]
    by_urgency = search(tx, Query(urgency="same_day"))
    assert [one.text for one in by_urgency] == ["nobody answers", "she threw up twice"]
    assert [one.text for one in search(tx, Query(urgency="same_day", topic="vomiting"))] == [
        "she threw up twice"
    ]


@pytest.mark.parametrize("years", [0, 7])
def test_an_event_that_names_a_chat_is_erased_with_the_chat(
    tx: Tx, plain: sqlite3.Connection, years: int
) -> None:
    plain.execute("UPDATE patient SET state = 'ended' WHERE id = 1")
    out = said(due_event(f"given:3:7:{INES}", "2026-03-05"), "she threw up", f"message:{INES}:5")
    out.add(
        o.Mark(
            loaded(tx).lines()[0].id,
            "answered",
            "given",
            "Inés",
            NOW,
            SourceId("tap:9"),
            PersonId(1),
        ),
        o.PutHold(CANELA, hold("none before Ines rings")),
    )
    apply(tx, out, NOW)
    plain.execute("UPDATE outbox SET state = 'sent'")
    assert any(str(INES) in row for row in plain.iterdump())
    Erasure(tx, NOW + timedelta(days=1), years, "Dr Okafor", True).patient(CANELA)
    left = [row for row in plain.iterdump() if str(INES) in row]
    assert left == []
    assert any("none before" in row for row in plain.iterdump()) is (years == 7)
    assert loaded(tx).holds[0].target == AntiInflammatories()
    assert verify(tx).breaks == ()
