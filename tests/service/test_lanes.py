"""Whose turn it is in the inbox: a household with an emergency first, with all that it has
waiting, in order; then each household in its turn."""

from __future__ import annotations

import asyncio
import tempfile
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.service import work
from bot.store.database import Database, Tx
from bot.store.inbox import Kept, keep_rows
from demo.standin.values import User
from tests.service.box import Box, plan

NOW = datetime(2026, 3, 8, 17, tzinfo=UTC)
OWNERS = {n: f"home:{n}" for n in (1, 2, 3)}
STRANGERS = (11, 12)
ARRIVALS = st.lists(
    st.tuples(st.sampled_from((*OWNERS, *STRANGERS)), st.booleans()), min_size=1, max_size=40
)


def _households(tx: Tx) -> None:
    """Three patients, each with one owner whose chat has the patient's number."""
    for number in OWNERS:
        tx.one("patient_add", name=f"P{number}", plan="{}", protocol="{}", by="x", now="2026")
        row = tx.one("person_join", user_id=number, chat_id=number, name="x", lang="en", now="2026")
        assert row is not None
        tx.run("caregiver_join", patient_id=number, person_id=row["id"], now="2026")


async def _grave(text: str) -> bool:
    return text == "grave"


async def _order(arrivals: list[tuple[int, bool]]) -> list[int]:
    """The numbers of what arrived, in the order in which it is worked."""
    with tempfile.TemporaryDirectory() as folder:
        async with Database(Path(folder) / "practice.db") as db:
            await db.transact(_households)
            rows = [
                Kept(n, "{}", NOW, chat, "grave" if grave else "calm")
                for n, (chat, grave) in enumerate(arrivals)
            ]
            await keep_rows(db, rows, _grave)
            order: list[int] = []

            def take(tx: Tx) -> bool:
                row = tx.one("inbox_next")
                if row is None:
                    return False
                order.append(row["update_id"])
                tx.run(
                    "inbox_mark", update_id=row["update_id"], state="done", error=None, strange=0
                )
                return True

            while await db.transact(take):
                pass
            return order


@settings(
    max_examples=40, deadline=None, derandomize=True,
    suppress_health_check=[HealthCheck.too_slow],
)  # fmt: skip
@given(ARRIVALS)
def test_emergencies_first_then_each_in_turn_and_each_in_order(
    arrivals: list[tuple[int, bool]],
) -> None:
    order = asyncio.run(_order(arrivals))
    assert sorted(order) == list(range(len(arrivals)))
    by_chat: dict[int, list[int]] = {}
    for n, (chat, _) in enumerate(arrivals):
        by_chat.setdefault(chat, []).append(n)
    for mine in by_chat.values():
        assert [n for n in order if n in mine] == mine  # of one household in order
    # What leads up to an emergency of somebody known comes before everything else.
    ahead = {
        n
        for chat, mine in by_chat.items()
        if chat in OWNERS
        for n in mine
        if any(arrivals[m][1] for m in mine if m >= n)
    }
    assert set(order[: len(ahead)]) == ahead
    # The rest by turns: the k-th of one waits behind at most k of each other.
    rest = [n for n in order if n not in ahead]
    for mine in by_chat.values():
        for k, n in enumerate(mine, 1):
            before = rest[: rest.index(n)] if n in rest else []
            for other in by_chat.values():
                assert other is mine or sum(m in before for m in other) <= k


def _update(user: User, number: int, text: str) -> dict[str, Any]:
    return {
        "update_id": 800_000_000 + number,
        "message": {
            "message_id": 70_000 + number, "date": int(NOW.timestamp()), "text": text,
            "from": {"id": user.id, "is_bot": False, "first_name": user.name},
            "chat": {"id": user.id, "type": "private", "first_name": user.name},
        },
    }  # fmt: skip


async def test_an_emergency_waits_behind_no_flood(canela: Box) -> None:
    people = canela.stage.standin
    await canela.with_patient(plan(patient="Toro", owner="Marco Vale", phone="+1 303 555 0108"))
    link = await canela.stage.enrol(plan(patient="Luna", owner="Ana", phone="+1 303 555 0109"), "x")
    ana, stranger = people.user("Ana"), people.user("Somebody")
    people.start(ana, link)
    await canela.to(5, 10)
    updates = [_update(stranger, n, "there is blood everywhere") for n in range(40)]
    updates += [_update(canela.ines, 50 + n, f"she ate well {n}") for n in range(40)]
    updates += [_update(ana, 100, "Luna slept well"), _update(ana, 101, "she cannot breathe")]
    await canela.stage.app.keep(updates)
    app, worked = canela.stage.app, 0
    while not any("EMERGENCY" in text for text in canela.on_desk()):
        assert await work.handle_update(app.db, app.practice, canela.stage.clock.now())
        await app.sender.send_ready(canela.stage.clock.now())
        worked += 1
    assert worked == 2  # what she wrote before, and the emergency itself
