"""A message whose fate is not known goes again; what then stands twice has its buttons once."""

from __future__ import annotations

import asyncio
import tempfile
from datetime import UTC, datetime, timedelta
from functools import partial
from itertools import count
from pathlib import Path

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.model.chat import Button, Delivered, Delivery, Outgoing, Refused, Uncertain
from bot.service.sender import Sender
from bot.store.database import Database, stamp
from bot.store.rows import send
from bot.telegram.pace import Limits, Pace

NOW = datetime(2026, 3, 4, 20, tzinfo=UTC)
FREE = Limits(overall=10_000, overall_kept=0, chat_seconds=0.0, group=10_000, group_kept=0)
APART = 9
"""The numbers go to other chats, too: one in so many to this one."""
MOST = 20
"""So many tries of a chat are lost, at most: an hour and more without the platform."""


class _Chat:
    """One chat of the platform: every try stands there, with a number of its own."""

    def __init__(self, lost: list[bool]) -> None:
        self.lost, self.numbers = list(lost), count(11, APART)
        self.live: dict[int, str] = {}

    async def deliver(self, message: Outgoing) -> Delivery:
        if message.kind == "edit":
            number = message.message or 0
            if number not in self.live:
                return Refused(why="message can't be edited")
            if not message.buttons:
                self.live[number] = ""
            return Delivered(message=number)
        number = next(self.numbers)
        self.live[number] = message.dedupe
        if self.lost and self.lost.pop(0):
            return Uncertain(why="502")
        return Delivered(message=number)


def _message(n: int) -> Outgoing:
    buttons = ((Button(label="Given", data="x"),),)
    return Outgoing(kind="send", dedupe=f"m:{n}", chat=1, text=f"{n}", buttons=buttons)


async def _play(chat: _Chat, messages: int) -> dict[str, int]:
    """The platform's number of each message, as the books have it at the end."""
    with tempfile.TemporaryDirectory() as folder:
        async with Database(Path(folder) / "practice.db") as db:
            sender = Sender(db, chat.deliver, Pace(FREE))
            for n in range(messages):
                at = NOW + timedelta(seconds=n)
                await db.transact(partial(send, messages=[_message(n)], now=at))
                await sender.send_ready(at)
            now = NOW
            while await db.read(lambda tx: tx.one("outbox_next_due")) is not None and (
                now < NOW + timedelta(hours=4)
            ):
                now += timedelta(minutes=5)
                while await sender.send_ready(now):
                    pass
            rows = await db.read(
                lambda tx: [tx.one("outbox_state", dedupe=f"m:{n}") for n in range(messages)]
            )
            assert all(row is not None and row["state"] == "sent" for row in rows), stamp(now)
            return {row["dedupe"]: row["message_id"] for row in rows if row is not None}


@settings(
    max_examples=25, deadline=None, derandomize=True,
    suppress_health_check=[HealthCheck.too_slow],
)  # fmt: skip
@given(
    st.integers(0, MOST).map(lambda n: [True] * n) | st.lists(st.booleans(), max_size=MOST),
    st.integers(1, 3),
)
def test_of_all_copies_one_has_buttons(lost: list[bool], messages: int) -> None:
    chat = _Chat(lost)
    known = asyncio.run(_play(chat, messages))
    live = {number: key for number, key in chat.live.items() if key}
    assert live == {number: key for key, number in known.items()}
