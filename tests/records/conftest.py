"""The record of an invented patient, lived through once: each test gets its own copy."""

from __future__ import annotations

import asyncio
import shutil
from collections.abc import AsyncIterator
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from bot.model.ids import PatientId
from bot.model.plan import Withheld
from bot.model.settings import Clinic
from bot.records.record import Record
from bot.records.whole import WholeRecord
from bot.store.database import Database
from bot.store.whole import whole
from demo.stage import Stage
from tests.service.box import CLINIC, Box, at, plan

ORDER = plan(
    medicines=[
        *(one.model_dump(exclude_defaults=True) for one in plan().medicines),
        {"name": "trazodone", "every_hours": 8, "first_dose": "2026-03-04T20:00", "days": 14,
         "as_needed": True, "form": "tablet", "units": 0.5, "strength_mg": 100},
    ]
)  # fmt: skip


async def _live(folder: Path) -> None:
    """Six days at home, in two languages, with a red flag, a correction and an undo."""
    async with Stage(Clinic.model_validate(CLINIC), folder / "practice.db", at(0, 15)) as stage:
        people = stage.standin
        nurse = people.user("Kim, nurse")
        desk = await stage.staff_chat("Surgery desk", [nurse])
        box = Box(stage, nurse, desk, people.user("Inés"), people.user("Marco", "es"))
        await box.with_patient(ORDER)
        await box.to(1, 20, 5)
        await box.says(box.ines, "gave both pills, she wont put her foot down")
        await box.to(2, 8, 5)
        await box.says(box.ines, "=she ate everything 👍 and the cut is clean")
        await box.says(box.ines, "gave her a trazodone, she was barking")
        await box.to(3, 9, 0)
        said = await box.says(box.ines, "there is yellow pus on the cut")
        await box.staff_says("Please come in at 11.", box.case("pus"))
        await box.to(4, 9, 0)
        people.edit(said, "there is yellow pus on the cut, and she toe touches")
        await stage.settle()
        await box.to(5, 9, 0)
        await box.says(box.ines, "walking on it with a limp. phone me at +1 303 555 0107")
        await box.staff_says("/end Canela")
        await box.staff_taps("End early", box.case("what is to change"))
        await box.staff_says("she heals at her own vet's", box.case("Why?"))
        await box.to(6, 9, 0)


@pytest.fixture(scope="session")
def lived(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the practice's database; read it only."""
    folder = tmp_path_factory.mktemp("lived")
    asyncio.run(_live(folder))
    return folder


@pytest.fixture
def copy(lived: Path, tmp_path: Path) -> Path:
    """The database, to do with it what one likes."""
    for path in lived.iterdir():
        if path.is_file():
            shutil.copy(path, tmp_path / path.name)
    return tmp_path / "practice.db"


@pytest.fixture
async def db(copy: Path) -> AsyncIterator[Database]:
    """The database, open."""
    async with Database(copy) as opened:
        yield opened


@pytest.fixture
async def record(db: Database) -> WholeRecord:
    """Canela's whole record."""
    found = await db.read(lambda tx: whole(tx, PatientId(1)))
    assert found is not None
    return found


@pytest.fixture
def stopped(record: WholeRecord) -> WholeRecord:
    """Canela, still under way, whose carprofen was stopped on day 3, and with a note."""
    since = at(3, 9)
    carprofen, *others = record.plan.medicines
    held = carprofen.model_copy(update={"withheld": (Withheld(since=since),)})
    plan_now = record.plan.model_copy(update={"medicines": (held, *others)})
    said: list[tuple[str, str, dict[str, Any]]] = [
        ("plan", "Please give Canela no more carprofen.",
         {"change": "told_med_stop", "med": "carprofen", "why": "black stool"}),
        ("note", "phoned, all calm", {"member": 1}),
    ]  # fmt: skip
    log = tuple(
        Record(9000 + n, since, kind, "Dr Okafor", words, data)
        for n, (kind, words, data) in enumerate(said)
    )
    before = tuple(one for one in record.log if one.data.get("change") != "told_end")
    return replace(record, plan=plan_now, log=(*before, *log), state="active", ended_at=None)
