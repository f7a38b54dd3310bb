"""Any outage, of the platform or of the program, anywhere in a day and up to three days long:
no two doses are advised too close, none long after its hour, none goes by in silence."""

from __future__ import annotations

import asyncio
import re
import tempfile
from collections import defaultdict
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from itertools import pairwise
from pathlib import Path

from hypothesis import HealthCheck, Phase, example, given, settings
from hypothesis import strategies as st

from bot.model.chat import Delivered, Delivery, Outgoing
from bot.model.ids import PatientId
from bot.model.settings import Clinic
from bot.store import load
from bot.store.audit import verify
from tests.service.box import CLINIC, Box, at, plan
from tests.service.kept import Beginnings
from tests.service.test_hours import down, up

GAPS = {"carprofen": (12, 8.0), "gabapentin": (8, 5.0), "cephalexin": (12, 11.0)}
"""Medicine → hours between two doses, and at the least."""
PATIENCE, PAUSE = timedelta(hours=1), timedelta(minutes=6)
"""How late a dose may be prompted; how far apart two tries are at most."""
REMINDED = timedelta(hours=1)
START, END = at(2, 12), at(7, 12)
_GIVE = re.compile(r"^(?:\d+\. )?Give (\w+): [^\n]*(\n   [→✓])?", re.MULTILINE)


def _medicines() -> list[dict[str, object]]:
    kinds = {"carprofen": "anti-inflammatory", "gabapentin": "pain relief"}
    return [
        {
            "name": name, "kind": kinds.get(name, "antibiotic"), "days": 14, "every_hours": every,
            "min_gap_hours": gap, "first_dose": "2026-03-04T20:00",
            "amount": {"en": "one tablet", "es": "una tableta"},
        }
        for name, (every, gap) in GAPS.items()
    ]  # fmt: skip


@dataclass
class _Heard:
    """What arrived at home, and when: doses that are to be given, questions."""

    box: Box
    advised: dict[str, list[datetime]] = field(default_factory=lambda: defaultdict(list))
    asked: dict[str, list[datetime]] = field(default_factory=lambda: defaultdict(list))
    reminded: dict[str, list[datetime]] = field(default_factory=lambda: defaultdict(list))

    def listen(self) -> None:
        """To the bot as it runs now."""
        sender, clock = self.box.stage.app.sender, self.box.stage.clock
        chat, deliver = self.box.stage.standin.private(self.box.ines).id, sender._deliver

        async def heard(message: Outgoing) -> Delivery:
            got = await deliver(message)
            if isinstance(got, Delivered) and message.kind == "send" and message.chat == chat:
                self.hear(message.text, clock.now())
            return got

        sender._deliver = heard

    def hear(self, text: str, now: datetime) -> None:
        for name in GAPS:
            if f"When was the last {name}" in text:
                self.asked[name].append(now)
        kind = self.reminded if text.startswith("Still open") else self.advised
        for name, why_not in _GIVE.findall(text):
            if not why_not:
                kind[name].append(now)


async def _until_start(box: Box) -> None:
    await box.with_patient(plan(medicines=_medicines()))
    await box.stage.advance(START)


async def _play(
    beginnings: Beginnings, begins: datetime, lasts: timedelta, *, program: bool, answers: bool
) -> None:
    with tempfile.TemporaryDirectory() as folder:
        clinic = Clinic.model_validate(CLINIC)
        box = await beginnings.box(clinic, Path(folder) / "practice.db", _until_start)
        async with box.stage as stage:
            heard = _Heard(box)
            heard.listen()
            await stage.advance(begins)
            if program:
                await stage.stop_bot()
                stage.clock.jump(begins + lasts)
                await stage.start_bot()
                heard.listen()
                await stage.settle()
            else:
                await down(box)
                await stage.advance(begins + lasts)
                up(box)
            again = begins + lasts + timedelta(minutes=20)
            await stage.advance(again)
            if answers:
                for name in heard.asked:
                    question = box.last(box.ines, f"When was the last {name}")
                    await box.taps(box.ines, "None since then", question)
            await stage.advance(END)
            assert (await stage.app.db.read(verify)).strays == ()
            if answers:
                _goes_on(heard)
            else:
                await _nothing_is_too_close_too_late_or_unsaid(heard)


def _goes_on(heard: _Heard) -> None:
    """Once it is told when the last was given the medicine comes again."""
    for name, (every, _) in GAPS.items():
        assert heard.advised[name][-1] > END - timedelta(hours=every + 1), name


async def _nothing_is_too_close_too_late_or_unsaid(heard: _Heard) -> None:
    """Nobody has answered anything."""
    box = heard.box
    chart = await box.stage.app.db.read(lambda tx: load.chart(tx, PatientId(1), END))
    assert chart is not None
    log = [one.data for one in await box.log() if one.kind in ("not_sent", "held")]
    for name, (_, gap) in GAPS.items():
        slots = [one.item.slot_at for one in chart.doses(name) if one.item.slot_at]
        for first, second in pairwise(heard.advised[name]):
            assert second - first >= timedelta(hours=gap), (name, first, second)
        for came in heard.advised[name]:
            assert any(one <= came <= one + PATIENCE + PAUSE for one in slots), (name, came)
        for came in heard.reminded[name]:  # an hour after the prompt
            late = REMINDED + PATIENCE + PAUSE
            assert any(one <= came <= one + late for one in slots), (name, came)
        for slot in (one for one in slots if START < one < END - PATIENCE):
            if any(slot <= came <= slot + PATIENCE + PAUSE for came in heard.advised[name]):
                continue
            item = [one for one in log if f":{name}:" in str(one.get("item", ""))]
            times = [str(one.get("was_due") or one.get("slot")) for one in item]
            assert any(datetime.fromisoformat(one) == slot for one in times if one), (name, slot)
            assert heard.asked[name], (name, slot)


@settings(
    max_examples=3,
    deadline=None,
    derandomize=True,
    phases=(Phase.explicit, Phase.generate),
    suppress_health_check=[HealthCheck.too_slow],
)
@example(minutes=470, lasts=690, program=False, answers=False)  # 19:50 to 07:20
@example(minutes=470, lasts=75, program=True, answers=False)
@example(minutes=510, lasts=190, program=True, answers=False)  # between prompt and reminder
@example(minutes=481, lasts=55, program=False, answers=True)
@given(
    minutes=st.integers(0, 24 * 60 - 1),
    lasts=st.integers(1, 3 * 24 * 60) | st.integers(1, 300),
    program=st.booleans(),
    answers=st.booleans(),
)
def test_no_outage_advises_two_doses_or_loses_one(
    beginnings: Beginnings, minutes: int, lasts: int, program: bool, answers: bool
) -> None:
    begins = START + timedelta(minutes=minutes)
    length = timedelta(minutes=lasts)
    asyncio.run(_play(beginnings, begins, length, program=program, answers=answers))
