"""Whatever the platform answers, a message is never called sent unless it has an id, and
one chat that hangs delays no other."""

from __future__ import annotations

import asyncio
import json
import tempfile
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.context.words import default_words
from bot.model.chat import Delivered, Delivery, Gone, Outgoing, Refused, TryAgain, Uncertain
from bot.model.effects import Effects, Hush
from bot.model.ids import EventId, PatientId
from bot.records.fhir import bundle
from bot.records.record import readable
from bot.records.whole import WholeRecord
from bot.service.late import handle_late
from bot.service.sender import LIVES, RESTS, Sender, recover
from bot.store.apply import apply
from bot.store.database import Database, Tx, stamp
from bot.store.rows import send
from bot.store.whole import log_of, whole
from bot.telegram.pace import Limits, Pace
from tests.service.box import Box

NOW = datetime(2026, 3, 4, 20, tzinfo=UTC)
FREE = Limits(overall=10_000, overall_kept=0, chat_seconds=0.0, group=10_000, group_kept=0)
OUTCOMES = st.sampled_from(("arrived", "lost after", "lost before", "again", "refused", "gone"))


def _words(chat: int, n: int, *, urgent: bool = False) -> Outgoing:
    return Outgoing(kind="send", dedupe=f"m:{chat}:{n}", chat=chat, text=f"{n}", urgent=urgent)


async def _rows(db: Database) -> list[dict[str, object]]:
    keys = [f"m:{chat}:{n}" for n in range(3) for chat in (1, 2, -3)]

    def found(tx: Tx) -> list[dict[str, object]]:
        rows = [tx.one("outbox_state", dedupe=key) for key in keys]
        return [dict(row) for row in rows if row is not None]

    return await db.read(found)


class _Platform:
    """Answers with what is drawn for it, then takes everything."""

    def __init__(self, outcomes: list[str]) -> None:
        self.left = list(outcomes)
        self.arrived: dict[str, int] = {}

    async def deliver(self, message: Outgoing) -> Delivery:
        kind = self.left.pop(0) if self.left else "arrived"
        if kind in ("arrived", "lost after"):
            self.arrived[message.dedupe] = len(self.arrived) + 1
        match kind:
            case "arrived":
                return Delivered(message=self.arrived[message.dedupe])
            case "again":
                return TryAgain(after_seconds=1.0, why="429")
            case "refused":
                return Refused(why="too long")
            case "gone":
                return Gone(why="blocked")
            case _:
                return Uncertain(why="502")


async def _play(outcomes: list[str], rounds: int) -> tuple[list[dict[str, object]], _Platform]:
    platform = _Platform(outcomes)
    with tempfile.TemporaryDirectory() as folder:
        async with Database(Path(folder) / "practice.db") as db:
            sender = Sender(db, platform.deliver, Pace(FREE))
            sender._pace.hold = lambda *_: None  # type: ignore[method-assign]
            all_of_them = [_words(chat, n) for n in range(3) for chat in (1, 2, -3)]
            await db.transact(lambda tx: send(tx, all_of_them, NOW))
            for n in range(rounds):
                await sender.send_ready(NOW + timedelta(minutes=5 * n))
            return await _rows(db), platform


@settings(
    max_examples=15, deadline=None, derandomize=True,
    suppress_health_check=[HealthCheck.too_slow],
)  # fmt: skip
@given(st.lists(OUTCOMES, max_size=24), st.integers(1, 40))
def test_never_sent_without_an_id(outcomes: list[str], rounds: int) -> None:
    rows, platform = asyncio.run(_play(outcomes, rounds))
    assert len(rows) == 9
    for row in rows:
        if row["state"] == "sent":
            assert row["message_id"] is not None
            assert row["dedupe"] in platform.arrived
        elif row["state"] in ("refused", "gone"):
            assert row["error"]
        else:
            assert row["state"] == "waiting"
    if rounds == 40:  # hours of trying, and the platform well again
        assert not any(row["state"] == "waiting" for row in rows)


async def test_a_hanging_chat_delays_only_itself_and_stopping_finishes_it(tmp_path: Path) -> None:
    let_go, came = asyncio.Event(), list[str]()

    async def deliver(message: Outgoing) -> Delivery:
        if message.chat == 1:
            await let_go.wait()
        came.append(message.dedupe)
        return Delivered(message=len(came))

    async with Database(tmp_path / "practice.db") as db:
        sender = Sender(db, deliver, Pace(FREE))
        await db.transact(lambda tx: send(tx, [_words(1, 0), _words(1, 1)], NOW))
        await sender.start_ready(NOW)
        await db.transact(lambda tx: send(tx, [_words(2, 0), _words(2, 1, urgent=True)], NOW))
        for _ in range(2):
            await sender.start_ready(NOW)
            await asyncio.wait([task for (chat, _), task in sender._lanes.items() if chat == 2])
        assert came == ["m:2:1", "m:2:0"]
        asyncio.get_running_loop().call_later(0.1, let_go.set)
        await sender.finish()
        row = await db.read(lambda tx: tx.one("outbox_state", dedupe="m:1:0"))
        assert row is not None
        assert (row["state"], row["message_id"]) == ("sent", 3)
        assert await db.read(lambda tx: tx.one("outbox_next_due")) is not None


async def test_an_outage_loses_neither_the_page_nor_the_answer_nor_a_dose(canela: Box) -> None:
    await canela.to(1, 19)
    standin = canela.stage.standin
    standin.fault("gateway", "sendMessage", times=10)
    await canela.says(canela.ines, "he threw up blood")
    await canela.to(1, 20)
    for minute in (1, 3, 8, 20):
        await canela.to(1, 20, minute)
    assert any("EMERGENCY" in text for text in canela.on_desk())
    assert any("+1 303 555" in text for text in canela.heard(canela.ines)[-6:])
    counts = await canela.stage.app.db.read(lambda tx: tx.all("outbox_unproved"))
    assert counts == []


async def test_the_log_says_sent_only_of_what_arrived(canela: Box) -> None:
    await canela.to(1, 19)
    standin = canela.stage.standin
    standin.fault("gateway", "sendMessage", times=100)
    await canela.says(canela.ines, "he threw up blood")
    log = await canela.log()
    begun = len([one for one in log if one.kind == "sent"])
    waiting = [one for one in log if one.kind == "queued" and "threw up blood" in one.text]
    assert waiting  # what was to be said is kept, and sealed, at once
    assert not [one for one in log if one.kind == "sent" and "threw up blood" in one.text]
    assert "not arrived yet" in "\n".join(readable(log, "America/Denver", None))
    told = _communications(await _whole(canela))
    assert [one for one in told if one["status"] == "in-progress" and "sent" not in one]
    await canela.to(1, 19, 3)
    standin.faults.waiting.clear()
    await canela.to(1, 19, 9)
    log = await canela.log()
    came = [one for one in log if one.kind == "sent"]
    assert len(came) > begun
    page = next(one for one in came if "threw up blood" in one.text)
    assert page.at - datetime.fromisoformat(page.data["queued"]) >= timedelta(minutes=1)
    lines = list(readable(log, "America/Denver", None))
    assert not [line for line in lines if "not arrived yet" in line]
    assert any("EMERGENCY" in line and "ready since" in line for line in lines)
    told = _communications(await _whole(canela))
    # That the clinic could not be reached was true for a minute, and came no more.
    moot = [one for one in told if one["status"] != "completed"]
    assert {one["status"] for one in moot} == {"not-done"}
    assert all("could not reach" in str(one["payload"]) for one in moot)
    assert any(one["received"] > one["sent"] for one in told if "received" in one)
    keys = {one.data["key"] for one in came}
    arrived = await canela.stage.app.db.read(
        lambda tx: {key for key in keys if tx.one("outbox_arrived", dedupe=key)}
    )
    assert arrived == keys


async def _whole(canela: Box) -> WholeRecord:
    found = await canela.stage.app.db.read(lambda tx: whole(tx, PatientId(1)))
    assert found is not None
    return found


def _communications(record: WholeRecord) -> list[dict[str, Any]]:
    made = json.loads(json.dumps(bundle(record, NOW, default_words(), "en")))["entry"]
    return [e["resource"] for e in made if e["resource"]["resourceType"] == "Communication"]


ENDS = ("arrived", "uncertain", "again", "refused", "gone", "mistake")


@pytest.mark.parametrize("ends", ENDS)
async def test_what_was_under_way_at_a_death_is_not_tried_again(tmp_path: Path, ends: str) -> None:
    """However that one try ends; what is said afterwards goes out."""
    tried: list[str] = []
    message = _words(1, 0).model_copy(update={"patient": 1})

    async def deliver(out: Outgoing) -> Delivery:
        tried.append(out.dedupe)
        if out.dedupe != message.dedupe:
            return Delivered(message=9)
        death = Effects(EventId("x:1"))
        death.add(Hush(PatientId(1)))
        await db.transact(lambda tx: apply(tx, death, NOW))
        match ends:
            case "arrived":
                return Delivered(message=8)
            case "uncertain":
                return Uncertain(why="500")
            case "again":
                return TryAgain(after_seconds=0, why="429")
            case "refused":
                return Refused(why="400")
            case "gone":
                return Gone(why="403")
        raise RuntimeError("a mistake")

    async with Database(tmp_path / "a.db") as db:
        await db.transact(lambda tx: send(tx, [message], NOW))
        sender = Sender(db, deliver, Pace(FREE))
        await sender.send_ready(NOW)
        await recover(db, NOW)
        after = _words(1, 1).model_copy(update={"patient": 1})
        await db.transact(lambda tx: send(tx, [after], NOW))
        for minute in range(10):
            await sender.send_ready(NOW + timedelta(minutes=minute))
        assert tried == [message.dedupe, after.dedupe]
        states = [row["state"] for row in await _rows(db)]
        assert states == ["sent" if ends == "arrived" else "refused", "sent"]
        kinds = [row.kind for row in await db.read(lambda tx: log_of(tx, PatientId(1)))]
        assert "delivery" not in kinds, "staff need not see to it"


async def test_a_message_that_ends_the_program_each_time_lets_the_others_go_first(
    tmp_path: Path,
) -> None:
    async with Database(tmp_path / "a.db") as db:
        await db.transact(lambda tx: send(tx, [_words(1, 0), _words(2, 0)], NOW))

        async def ready(now: datetime) -> list[int]:
            rows = await db.read(lambda tx: tx.all("outbox_ready", now=stamp(now), most=9))
            return [row["id"] for row in rows]

        deadly, other = await ready(NOW)
        for _ in range(LIVES):
            assert await db.transact(lambda tx: tx.one("outbox_claim", id=deadly))
            await recover(db, NOW)
        assert await ready(NOW) == [other]
        assert await ready(NOW + RESTS) == [other, deadly]
        assert await db.transact(lambda tx: tx.one("outbox_claim", id=deadly))
        await recover(db, NOW)
        assert await ready(NOW + RESTS) == [other], "longer each time"
        assert await ready(NOW + 2 * RESTS) == [other, deadly]


async def test_what_we_hold_back_ourselves_is_not_called_stuck(tmp_path: Path) -> None:
    """Its time begins when it is let go; then it is as any other that does not get through."""
    answer: list[Delivery] = [TryAgain(after_seconds=0, why="not yet", ours=True)]

    async def deliver(out: Outgoing) -> Delivery:
        return answer[-1]

    async with Database(tmp_path / "a.db") as db:
        await db.transact(lambda tx: send(tx, [_words(1, 0)], NOW))
        sender, now = Sender(db, deliver, Pace(FREE)), NOW
        for minute in range(30):
            now = NOW + timedelta(minutes=minute)
            await sender.send_ready(now)
            assert not await handle_late(db, NOW, now)
        answer.append(TryAgain(after_seconds=0, why="502"))
        late = []
        for second in range(0, 150, 10):
            then = now + timedelta(seconds=second)
            await sender.send_ready(then)
            late += [second] * await handle_late(db, NOW, then)
        assert late == [120]
