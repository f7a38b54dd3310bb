"""A practice with two patients after a few days at home, made once for all tests."""

from __future__ import annotations

from pathlib import Path

import demo
from bot.model.chart import Member
from bot.model.settings import Clinic
from demo.stage import Stage
from demo.standin import FileKind
from tests.service.box import CLINIC, Box, at, plan

WORDS = "she threw up her pill, still wont use the leg"
SPANISH = "Comió muy poquito y la herida está un poco hinchada, ¿es normal?"
PICTURES = Path(demo.__file__).parent / "pictures"
FROM_HOME: tuple[tuple[str, FileKind, str], ...] = (
    ("incision.png", "photo", "image/png"),
    ("walk.mp4", "video", "video/mp4"),
)
RED_FLAG = "his gums look white and he is breathing really hard"


async def build(path: Path) -> None:
    """Play it into a database at ``path``."""
    clinic = Clinic.model_validate(CLINIC)
    async with Stage(clinic, path, at(0, 15)) as stage:
        people = stage.standin
        nurse = people.user("Kim, nurse")
        desk = await stage.staff_chat("Surgery desk", [nurse])
        for name, role in (("Dr Okafor", "clinician"), ("Pell", "staff"), ("Ruiz", "staff")):
            user = people.user(name)
            await stage.employ(user, name, role)
        await stage.settle()
        box = Box(stage, nurse, desk, people.user("Ines"), people.user("Marco", "es"))
        await box.with_patient(plan())
        trufa = plan(
            patient="Trufa", species="cat", owner="Marco Vidal", language="es", weight_kg=4.2,
            procedure="Hip luxation, closed reduction",
        )  # fmt: skip
        people.start(box.marco, await stage.enrol(trufa, "Dr Okafor"))
        await stage.settle()
        await box.to(1, 20, 3)
        await box.taps(box.ines, "1 · Given")
        await box.says(box.marco, SPANISH)
        await box.to(2, 9)
        await box.says(box.ines, WORDS)
        await box.to(2, 13)
        await box.says(box.ines, "walked 6 minutes, toe touching now. he ate all his food")
        await box.to(3, 2, 10)
        await box.says(box.ines, RED_FLAG)
        await box.staff_taps("I take it")
        await box.to(3, 9)
        for name, kind, mime in FROM_HOME:
            content = (PICTURES / name).read_bytes()
            caption = "the leg today" if kind == "photo" else ""
            people.send(box.ines, None, kind, content, caption, name=name, mime=mime)
            await stage.settle()
        await box.says(box.ines, "temp 38.6 C, some swelling, pain is mild")
        await box.to(4, 18)


def who(members: tuple[Member, ...], name: str) -> Member:
    """One of the practice by name."""
    return next(one for one in members if one.name == name)
