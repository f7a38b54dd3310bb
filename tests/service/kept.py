"""Practices as far as they have come, kept so that many tests can begin there."""

from __future__ import annotations

import copy
import shutil
from collections.abc import Awaitable, Callable
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any

from bot.model.settings import Clinic
from demo.stage import Stage
from demo.standin.standin import Standin
from demo.standin.values import Chat, User
from tests.service.box import Box, at, plan

Play = Callable[[Box], Awaitable[object]]
"""What happens from one beginning to the next."""
After = Callable[..., Awaitable[Box]]
"""Opens the practice after what is given, each of which is played once for all tests."""


async def joined(box: Box) -> None:
    """Canela is enrolled and Ines has joined by her link."""
    await box.with_patient(plan())


@dataclass(frozen=True)
class Until:
    """Time passes and nobody says anything."""

    day: int
    hour: int
    minute: int = 0

    async def __call__(self, box: Box) -> None:
        await box.to(self.day, self.hour, self.minute)


@dataclass(frozen=True)
class Kept:
    """The database's files, and what the platform knew. The bot keeps nothing elsewhere: it
    goes on from there as after any other start."""

    path: Path
    clinic: Clinic
    now: datetime
    platform: tuple[Any, ...]
    people: tuple[User, Chat, User, User]

    @classmethod
    async def of(cls, box: Box) -> Kept:
        """Of one that has settled; its bot stops."""
        stage, people = box.stage, (box.nurse, box.desk, box.ines, box.marco)
        await stage.stop_bot()
        assert not stage.standin.chats.updates.pending
        platform, people = copy.deepcopy((_platform(stage.standin), people))
        return cls(stage.path, stage.clinic, stage.clock.now(), platform, people)

    def box(self, path: Path) -> Box:
        """The practice again, its database at ``path``; its stage is still to be entered."""
        for file in self.path.parent.glob(f"{self.path.name}*"):
            shutil.copy(file, path.with_name(path.name + file.name.removeprefix(self.path.name)))
        stage = Stage(self.clinic, path, self.now)
        platform, people = copy.deepcopy((self.platform, self.people))
        chats, updates, api = platform
        vars(stage.standin.chats).update(chats)
        vars(stage.standin.chats.updates).update(updates)
        vars(stage.standin.api).update(api)
        return Box(stage, *people)


def _platform(standin: Standin) -> tuple[dict[str, Any], ...]:
    """What it knows, without what belongs to its server and its clock."""
    places: tuple[tuple[object, str], ...] = (
        (standin.chats, "users chats bot log files callbacks commands rev _messages _ids _numbers"),
        (standin.chats.updates, "confirmed allowed _next"),
        (standin.api, "made done"),
    )
    return tuple({name: getattr(place, name) for name in names.split()} for place, names in places)


class Beginnings:
    """Each is played once for all tests of a process. ``folders`` makes one for its files."""

    def __init__(self, folders: Callable[[str], Path]) -> None:
        self._folders = folders
        self._kept: dict[tuple[object, ...], Kept] = {}

    async def box(self, clinic: Clinic, path: Path, *plays: Play) -> Box:
        """A practice with a staff chat on the afternoon of surgery, after ``plays``; its stage
        is still to be entered."""
        which = (clinic.model_dump_json(), *plays)
        if which not in self._kept:
            self._kept[which] = await self._played(clinic, plays)
        return self._kept[which].box(path)

    async def _played(self, clinic: Clinic, plays: tuple[Play, ...]) -> Kept:
        path = self._folders("kept") / "practice.db"
        if plays:
            box = await self.box(clinic, path, *plays[:-1])
            async with box.stage:
                await plays[-1](box)
                return await Kept.of(box)
        async with Stage(clinic, path, at(0, 15)) as stage:
            people = stage.standin
            nurse = people.user("Kim, nurse")
            desk = await stage.staff_chat("Surgery desk", [nurse])
            box = Box(stage, nurse, desk, people.user("Ines"), people.user("Marco", "es"))
            return await Kept.of(box)
