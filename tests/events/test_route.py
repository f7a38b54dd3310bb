"""Who speaks and about whom: the same of the practice in memory and of the database."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

import pytest

from bot.context.contexts import AtDesk, AtHome
from bot.context.practice import Practice
from bot.desk.enrol import enrol
from bot.events.route import Known, context_of
from bot.model.chat import Incoming, Sender
from bot.model.effects import Effects
from bot.model.ids import EventId
from bot.rehearsal.known import Kept
from bot.rehearsal.world import World
from bot.store.apply import apply
from bot.store.database import Database, Tx
from bot.store.known import Stored
from tests.rehearsal.telling import practice, story

NOW = datetime(2026, 3, 3, 12, tzinfo=UTC)
NAMES = ("Canela", "Ñata", "Lola de los Ríos", "Max 2")
PEOPLE = "household: {robin: en}"


def enrolled(practice: Practice) -> list[Effects]:
    made = []
    for n, name in enumerate(NAMES):
        told = story('{at: day 2 08:00, robin: "hello"}', "", PEOPLE)
        out = Effects(EventId(f"enrol:{n}"))
        plan = told.plan.model_copy(update={"patient": name})
        enrol(out, plan, told.protocol, practice.clinic, by="x", code=f"c{n}", now=NOW)
        made.append(out)
    return made


def wrote(text: str, chat: int = -5) -> Incoming:
    return Incoming(7, "message", NOW, chat, chat > 0, Sender(9, "Pell", None), 3, text=text)


def concerned(known: Known, text: str) -> tuple[list[str], int]:
    context = context_of(known, practice(), wrote(text), NOW)
    assert isinstance(context, AtDesk)
    return [chart.name for chart in context.charts], len(context.roster)


ASKED = [
    *((f"/log {name}", name) for name in NAMES),
    *((f"/hold@the_bot {name} carprofen", name) for name in NAMES),
    *((f"/release {name.upper()} by mouth", name) for name in NAMES),
    ("/plan 2", NAMES[1]),
    ("/plan Lola", None),
    ("/patients", None),
    ("/hold carprofen", None),
]


async def test_the_patient_that_a_command_names(tmp_path: Path) -> None:
    world = World(practice(), NOW)
    for out in enrolled(practice()):
        world.do(out)

    def stored(tx: Tx) -> list[tuple[list[str], int]]:
        for out in enrolled(practice()):
            apply(tx, out, NOW)
        return [concerned(Stored(tx, NOW), text) for text, _ in ASKED]

    async with Database(tmp_path / "route.db") as db:
        found = await db.transact(stored)
    for (text, name), by_database in zip(ASKED, found, strict=True):
        by_memory = concerned(Kept(world.tables, NOW), text)
        wanted = ([name], 1) if name else ([], len(NAMES))
        assert by_memory == by_database == wanted, text


@pytest.mark.parametrize("text", ["hello", "/help", "/board", "/hold Canela walks", "/start nope"])
def test_a_stranger_is_never_at_the_desk(text: str) -> None:
    world = World(practice(), NOW)
    for out in enrolled(practice()):
        world.do(out)
    context = context_of(Kept(world.tables, NOW), practice(), wrote(text, 9), NOW)
    assert isinstance(context, AtHome)
    assert context.person is None
    assert not context.charts
