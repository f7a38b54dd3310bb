"""A practice in a box, for each test anew."""

from __future__ import annotations

from collections.abc import AsyncIterator
from contextlib import AsyncExitStack
from pathlib import Path

import pytest

from bot.model.settings import Clinic
from tests.service.box import CLINIC, Box, plan
from tests.service.kept import After, Beginnings, Play, Until, joined


@pytest.fixture
def clinic() -> Clinic:
    """The practice's settings."""
    return Clinic.model_validate(CLINIC)


@pytest.fixture(scope="session")
def beginnings(tmp_path_factory: pytest.TempPathFactory) -> Beginnings:
    """What was played already."""
    return Beginnings(tmp_path_factory.mktemp)


@pytest.fixture
async def after(beginnings: Beginnings, clinic: Clinic, tmp_path: Path) -> AsyncIterator[After]:
    """Opens the practice after what is given, each of which is played once for all tests."""
    async with AsyncExitStack() as stack:

        async def opened(*plays: Play) -> Box:
            box = await beginnings.box(clinic, tmp_path / "practice.db", *plays)
            await stack.enter_async_context(box.stage)
            return box

        yield opened


@pytest.fixture
async def practice(after: After) -> Box:
    """A practice with a staff chat, on the afternoon of surgery; nobody is enrolled yet."""
    return await after()


@pytest.fixture
async def canela(after: After, request: pytest.FixtureRequest) -> Box:
    """Canela is enrolled and Ines has joined by her link. ``@pytest.mark.begins(5, 10)``: it
    is day 5, ten o'clock, and nothing has been said since."""
    begins = request.node.get_closest_marker("begins")
    return await after(joined, *((Until(*begins.args),) if begins else ()))


async def _asked_for_pictures(box: Box) -> None:
    await box.with_patient(plan(home="2026-03-14T10:30", medicines=[]))
    await box.to(11, 9)
    await box.taps(box.ines, "Add someone at home")
    link = box.last(box.ines, "start=").words.split()[-1]
    box.stage.standin.start(box.marco, link)
    await box.stage.settle()
    await box.to(12, 13, 5)


@pytest.fixture
async def recheck(after: After) -> Box:
    """Day 12 at one o'clock: a picture and a film have been asked for; Ines and Marco are
    at home with Canela, who stayed at the clinic until the day before."""
    box = await after(_asked_for_pictures)
    assert "picture of the cut" in box.last(box.ines, "recheck").words
    return box
