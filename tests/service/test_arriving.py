"""Whether an emergency has reached the practice is a matter of the case and of time: whatever
the chats of staff do, within three minutes it has, or the household has been told that not."""

from __future__ import annotations

import asyncio
import tempfile
from collections.abc import AsyncIterator, Sequence
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.model.chat import Delivered, Delivery, Gone, Outgoing, Refused, TryAgain, Uncertain
from bot.model.settings import Clinic
from bot.service import late
from bot.store import load
from bot.store.database import StorageTrouble
from bot.store.rows import send
from bot.store.trouble import Kind
from demo.standin.values import User
from tests.service.box import CLINIC, Box, at, plan
from tests.service.kept import Beginnings
from tests.service.test_nobody_to_page import NOBODY, own_chat

BLOOD, BREATH = "he threw up blood", "she cannot breathe, her gums are blue"
SORE = "the incision smells bad"


@dataclass
class Weather:
    """What the platform does with messages to each chat; what has arrived, and when."""

    box: Box
    chats: dict[int, str] = field(default_factory=dict)
    bad: str = "-"
    """How the key of a message begins that always fails in a chat that is well."""
    arrived: list[tuple[datetime, Outgoing]] = field(default_factory=list)

    def __post_init__(self) -> None:
        self._deliver = self.box.stage.app.sender._deliver
        self.box.stage.app.sender._deliver = self.deliver
        self.box.stage.app.sender.longest = 0.02
        # That is reckoned in true seconds, which do not pass here.
        self.box.stage.app.sender._pace.hold = lambda *_: None  # type: ignore[method-assign]

    async def deliver(self, message: Outgoing) -> Delivery:
        kind = self.chats.get(message.chat, "ok")
        if kind == "ok" and message.dedupe.startswith(self.bad):
            kind = "500"
        match kind:
            case "500":
                return Uncertain(why="500")
            case "429":
                return TryAgain(after_seconds=600, why="429")
            case "hang":
                await asyncio.get_running_loop().create_future()
            case "400":
                return Refused(why="BadRequest: strange")
            case "403":
                return Gone(why="blocked")
        got = await self._deliver(message)
        if isinstance(got, Delivered) and message.kind == "send":
            self.arrived.append((self.box.stage.clock.now(), message))
        return got

    def since(self, when: datetime, chats: Sequence[int], words: str) -> bool:
        """Whether something with these words has come to one of the chats since."""
        return any(
            then >= when and message.chat in chats and words in message.text
            for then, message in self.arrived
        )


async def two_homes(box: Box) -> User:
    """Luna and Ana, beside Canela and Ines, in the afternoon of the first day."""
    ana = box.stage.standin.user("Ana")
    order = plan(patient="Luna", owner="Ana", phone="+1 303 555 0109")
    box.stage.standin.start(ana, await box.stage.enrol(order, "x"))
    await box.to(1, 14)
    return ana


async def _two_homes_and_a_vet(box: Box) -> None:
    await box.with_patient(plan())
    await own_chat(box, "Dr Okafor")
    await two_homes(box)


def _named(box: Box, name: str) -> User:
    return next(user for user in box.stage.standin.chats.users.values() if user.name == name)


@asynccontextmanager
async def _practice(beginnings: Beginnings) -> AsyncIterator[tuple[Box, User, User]]:
    clinic = Clinic.model_validate(CLINIC)
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "practice.db"
        box = await beginnings.box(clinic, path, _two_homes_and_a_vet)
        async with box.stage:
            yield box, _named(box, "Dr Okafor"), _named(box, "Ana")


KINDS = st.sampled_from(("ok", "ok", "500", "429", "hang", "400", "403"))
SPELLS = st.lists(
    st.tuples(KINDS, KINDS, KINDS, KINDS, st.sampled_from(("", "ines", "ana", "both"))),
    min_size=1, max_size=4,
)  # fmt: skip
"""Of each three minutes: what the staff group does, a vet's own chat, the two homes; and who
tells of an emergency."""


async def _played(beginnings: Beginnings, spells: list[tuple[str, ...]]) -> list[str]:
    """What does not hold."""
    async with _practice(beginnings) as (box, okafor, ana):
        weather = Weather(box)
        staff = (box.desk.id, box.stage.standin.private(okafor).id)
        homes = {
            "ines": (box.ines, BLOOD, "Canela", "1-1"), "ana": (ana, BREATH, "Luna", "2-1"),
        }  # fmt: skip
        told: list[tuple[datetime, str]] = []
        # And the chats with which the platform asked to wait, or that had blocked the bot: they
        # are there again once they write.
        wrong, held = [], set[int]()
        for n, (*kinds, who) in enumerate(spells):
            chats = (*staff, *(box.stage.standin.private(homes[one][0]).id for one in homes))
            weather.chats = dict(zip(chats, kinds, strict=True))
            held |= {chat for chat, kind in weather.chats.items() if kind in ("429", "403")}
            for name in homes:
                if who in (name, "both"):
                    told.append((box.stage.clock.now(), name))
                    await box.says(*homes[name][:2])
            await box.to(1, 14, 3 * (n + 1))
            unreached = await box.stage.app.db.read(lambda tx: load.unreached(tx))
            for when, name in told:
                owner, _, patient, case = homes[name]
                home = box.stage.standin.private(owner).id
                came = weather.since(when, staff, patient)
                knows = weather.since(when, (home,), "could not reach")
                well = weather.chats[home] == "ok" and home not in held
                if not came and not (knows if well else knows or case in unreached):
                    wrong.append(f"{name} of {when:%H:%M} at the end of {n}")
        return wrong


@settings(
    max_examples=12, deadline=None, derandomize=True,
    suppress_health_check=[HealthCheck.too_slow],
)  # fmt: skip
@given(SPELLS)
def test_in_three_minutes_it_has_come_or_the_household_knows(
    beginnings: Beginnings, spells: list[tuple[str, ...]]
) -> None:
    assert asyncio.run(_played(beginnings, spells)) == []


@pytest.mark.parametrize("own", [True, False])
@pytest.mark.parametrize("how", ["500", "429", "hang"])
async def test_the_next_emergency_does_not_wait_behind_one_that_does_not_get_through(
    canela: Box, own: bool, how: str
) -> None:
    okafor = await own_chat(canela, "Dr Okafor") if own else None
    ana = await two_homes(canela)
    weather = Weather(canela, {canela.desk.id: how})
    await canela.says(canela.ines, BLOOD)
    await canela.to(1, 14, 2)
    await canela.says(ana, BREATH)
    await canela.to(1, 14, 4)
    if okafor is not None:
        assert any("Luna" in text and "EMERGENCY" in text for text in canela.heard(okafor))
        assert not any(NOBODY in text for text in canela.heard(ana))
    else:
        assert any(NOBODY in text for text in canela.heard(ana))
    assert not weather.since(at(1, 14), (canela.desk.id,), "Luna")


@pytest.mark.parametrize(
    ("said", "seconds", "lives"), [(BLOOD, 20, 3), (SORE, 130, 3), (SORE, 280, 2)]
)
async def test_where_each_life_is_short_a_page_takes_the_other_ways_too(
    canela: Box, said: str, seconds: int, lives: int
) -> None:
    """Something ends the program again and again, before any of its lives has seen that the page
    waits too long."""
    okafor = await own_chat(canela, "Dr Okafor")
    canela.stage.standin.fault("server_error", "sendMessage", times=10_000, chat=canela.desk)
    await canela.to(1, 14)
    await canela.says(canela.ines, said)
    for _ in range(lives):
        assert not any("Canela" in text for text in canela.heard(okafor))
        await canela.stage.stop_bot()
        canela.stage.clock.jump(canela.stage.clock.now() + timedelta(seconds=seconds))
        await canela.stage.start_bot()
        await canela.stage.app.settle()
    assert any("Canela" in text for text in canela.heard(okafor))


async def test_one_message_that_never_gets_through_stops_no_other(canela: Box) -> None:
    ana = await two_homes(canela)
    Weather(canela, bad="case:1-1")
    await canela.says(canela.ines, BLOOD)
    await canela.says(ana, BREATH)
    await canela.to(1, 14, 1)
    assert any("Luna" in text and "EMERGENCY" in text for text in canela.on_desk())
    assert not any(NOBODY in text for text in canela.heard(ana))


@pytest.mark.parametrize("how", ["500", "429", "hang", "400", "403"])
async def test_what_is_urgent_for_staff_takes_the_other_ways_too(canela: Box, how: str) -> None:
    """Also what is about no case: a message that the program could not handle."""
    okafor = await own_chat(canela, "Dr Okafor")
    Weather(canela, {canela.desk.id: how})
    app = canela.stage.app
    words = Outgoing(
        kind="send", dedupe="x", chat=canela.desk.id, text="look at it", urgent=True, staff=True
    )
    await app.db.transact(lambda tx: send(tx, [words], app.clock.now()))
    await canela.stage.settle()
    await canela.stage.advance(app.clock.now() + 2 * late.SOONEST)
    assert "look at it" in canela.heard(okafor)


async def test_a_mistake_in_what_follows_of_waiting_leaves_nobody_in_the_dark(
    canela: Box, monkeypatch: pytest.MonkeyPatch
) -> None:
    def fails(*_: object) -> None:
        raise ValueError("a mistake of ours")

    await canela.to(1, 14)
    monkeypatch.setattr(late, "pass_on", fails)
    Weather(canela, {canela.desk.id: "500"})
    await canela.says(canela.ines, BLOOD)
    for _ in range(12):
        await canela.stage.advance(canela.stage.clock.now() + timedelta(seconds=15))
    assert any(NOBODY in one for one in canela.heard(canela.ines))


@pytest.mark.parametrize("own", [True, False])
@pytest.mark.parametrize("damaged", [True, False])
async def test_nor_does_one_that_cannot_even_be_told(
    canela: Box, monkeypatch: pytest.MonkeyPatch, own: bool, damaged: bool
) -> None:
    """The line in the log fails, with the whole and without passing it on."""
    okafor = await own_chat(canela, "Dr Okafor") if own else None
    await canela.to(1, 14)
    error = StorageTrouble(canela.stage.app.db.path, Kind.damaged, "test")

    def fails(*_: object) -> None:
        raise error if damaged else ValueError("a mistake of ours")

    monkeypatch.setattr(late, "log", fails)
    Weather(canela, {canela.desk.id: "500"})
    await canela.says(canela.ines, BLOOD)
    for _ in range(12):
        await canela.stage.advance(canela.stage.clock.now() + timedelta(seconds=15))
    assert any(NOBODY in one for one in canela.heard(canela.ines)) is not own
    assert okafor is None or any("EMERGENCY" in one for one in canela.heard(okafor))
