"""What people at home send with a camera, and what staff are shown of it."""

from __future__ import annotations

from io import BytesIO
from pathlib import Path

from PIL import Image

import demo
from bot.store.database import Row
from demo.standin.values import Message, User
from tests.pictures.made import blurred, data, leg, lit
from tests.service.box import Box

WALK = (Path(demo.__file__).parent / "pictures" / "walk.mp4").read_bytes()
GOOD, BLURRED, DARK = data(leg()), data(blurred(leg(seed=2))), data(lit(leg(seed=3), 0.12))


async def sends(box: Box, content: bytes, caption: str = "", who: User | None = None) -> Message:
    sent = box.stage.standin.photo(
        who or box.ines, None, content, caption, name="p.jpg", mime="image/jpeg"
    )
    await box.stage.settle()
    return sent


async def sends_file(box: Box, content: bytes, name: str, caption: str = "") -> Message:
    """As a file, uncompressed: how an iPhone's own pictures come."""
    sent = box.stage.standin.send(
        box.ines, None, "document", content, caption, name=name, mime="image/heic"
    )
    await box.stage.settle()
    return sent


async def films(box: Box, content: bytes = WALK, caption: str = "") -> Message:
    sent = box.stage.standin.send(
        box.ines, None, "video", content, caption, name="walk.mp4", mime="video/mp4"
    )
    await box.stage.settle()
    return sent


async def kept(box: Box) -> list[Row]:
    return await box.stage.app.db.read(lambda tx: tx.all("media_of", patient_id=1))


def shown_picture(box: Box, message: Message) -> Image.Image:
    assert message.file is not None
    return Image.open(BytesIO(message.file.content))


def copies(box: Box) -> list[Message]:
    """Pictures that staff were shown in place of a file."""
    return [m for m in box.stage.standin.messages(box.desk) if "as a picture" in m.words]


def decisions(box: Box) -> list[Message]:
    return [m for m in box.stage.standin.messages(box.desk) if "What shall we do?" in m.words]
