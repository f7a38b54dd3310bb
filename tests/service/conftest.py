"""A practice in a box, for each test anew."""

from __future__ import annotations

from collections.abc import AsyncIterator
from pathlib import Path

import pytest

from bot.model.settings import Clinic
from demo.stage import Stage
from tests.service.box import CLINIC, Box, at, plan


@pytest.fixture
def clinic() -> Clinic:
    """The practice's settings."""
    return Clinic.model_validate(CLINIC)


@pytest.fixture
async def practice(tmp_path: Path, clinic: Clinic) -> AsyncIterator[Box]:
    """A practice with a staff chat, on the afternoon of surgery; nobody is enrolled yet."""
    async with Stage(clinic, tmp_path / "practice.db", at(0, 15)) as stage:
        people = stage.standin
        nurse = people.user("Kim, nurse")
        desk = await stage.staff_chat("Surgery desk", [nurse])
        yield Box(stage, nurse, desk, people.user("Ines"), people.user("Marco", "es"))


@pytest.fixture
async def canela(practice: Box) -> Box:
    """Canela is enrolled and Ines has joined by her link."""
    return await practice.with_patient(plan())


@pytest.fixture
async def recheck(practice: Box) -> Box:
    """Day 12 at one o'clock: a picture and a film have been asked for; Ines and Marco are
    at home with Canela, who stayed at the clinic until the day before."""
    box = await practice.with_patient(plan(home="2026-03-14T10:30", medicines=[]))
    await box.to(11, 9)
    await box.taps(box.ines, "Add someone at home")
    link = box.last(box.ines, "start=").words.split()[-1]
    box.stage.standin.start(box.marco, link)
    await box.stage.settle()
    await box.to(12, 13, 5)
    assert "picture of the cut" in box.last(box.ines, "recheck").words
    return box
