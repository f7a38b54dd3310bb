"""A practice in a box: the real bot, a real database file, the stand-in beside it."""

from __future__ import annotations

import json
from dataclasses import dataclass, field
from datetime import date, datetime, time, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from bot.model.ids import PatientId
from bot.model.plan import Plan
from bot.records.record import Record
from bot.store.known import records
from demo.stage import Stage
from demo.standin.values import Chat, Message, User

ZONE = "America/Denver"
SURGERY = date(2026, 3, 3)  # a Tuesday

CLINIC: dict[str, Any] = {
    "name": "Cottonwood Bend Animal Surgery",
    "phone": "+1 303 555 0142",
    "emergency_name": "Night Ridge Animal Emergency",
    "emergency_phone": "+1 303 555 0199",
    "zone": ZONE,
    "opening": {
        day: {"opens": "08:00", "closes": "18:00"} for day in ("mon", "tue", "wed", "thu", "fri")
    },
}


def plan(**changes: Any) -> Plan:
    """Canela's plan: carprofen and cephalexin every 12 hours from the evening at home."""
    medicine = {"every_hours": 12, "first_dose": "2026-03-04T20:00", "with_food": True}
    return Plan.model_validate(
        {
            "patient": "Canela",
            "species": "dog",
            "weight_kg": 22.7,
            "procedure": "Fracture repair with a plate, left",
            "surgery": SURGERY,
            "home": "2026-03-04T10:30",
            "zone": ZONE,
            "owner": "Ines Vale",
            "phone": "+1 303 555 0107",
            "protocol": "general-orthopaedic",
            "clinician": "Dr Okafor",
            "medicines": [
                {
                    "name": "carprofen", "kind": "anti-inflammatory", "days": 14,
                    "min_gap_hours": 8,
                    "amount": {"en": "one tablet (50 mg)", "es": "una tableta (50 mg)"},
                    **medicine,
                },
                {
                    "name": "cephalexin", "kind": "antibiotic", "days": 7,
                    "amount": {"en": "one capsule (500 mg)", "es": "una cápsula (500 mg)"},
                    **medicine,
                },
            ],
            **changes,
        }
    )  # fmt: skip


def at(day: int, hour: int, minute: int = 0, zone: str = ZONE) -> datetime:
    """A moment on the patient's clock, by day since surgery."""
    there = datetime.combine(SURGERY + timedelta(days=day), time(hour, minute))
    return there.replace(tzinfo=ZoneInfo(zone))


@dataclass
class Box:
    """The practice and its people; each method acts and lets the bot finish."""

    stage: Stage
    nurse: User
    desk: Chat
    ines: User
    marco: User
    log_of: dict[int, Any] = field(default_factory=dict)

    async def with_patient(self, order: Plan) -> Box:
        """Enrol a patient; Ines joins by the link."""
        self.stage.standin.start(self.ines, await self.stage.enrol(order, "Dr Okafor"))
        await self.stage.settle()
        return self

    async def to(self, day: int, hour: int, minute: int = 0) -> None:
        """Let time pass until then."""
        await self.stage.advance(at(day, hour, minute))

    async def says(self, who: User, text: str, reply_to: Message | None = None) -> Message:
        """Someone writes in their own chat."""
        message = self.stage.standin.say(who, None, text, reply_to)
        await self.stage.settle()
        return message

    async def taps(self, who: User, label: str, message: Message | None = None) -> str | None:
        """Someone presses a button; the words shown on it."""
        callback = self.stage.standin.press(who, None, label, message)
        await self.stage.settle()
        return self.stage.standin.answer(callback)

    async def staff_taps(self, label: str, message: Message | None = None) -> str | None:
        """The nurse presses a button in the staff chat."""
        callback = self.stage.standin.press(self.nurse, self.desk, label, message)
        await self.stage.settle()
        return self.stage.standin.answer(callback)

    async def staff_says(self, text: str, reply_to: Message | None = None) -> None:
        """The nurse writes in the staff chat."""
        self.stage.standin.say(self.nurse, self.desk, text, reply_to)
        await self.stage.settle()

    def heard(self, who: User) -> list[str]:
        """What the bot has said to someone."""
        return self.stage.standin.said(self.stage.standin.private(who))

    def last(self, who: User, containing: str = "") -> Message:
        """The bot's newest message to someone with these words."""
        return self.stage.standin.last(self.stage.standin.private(who), containing)

    def on_desk(self) -> list[str]:
        """What the bot has said in the staff chat."""
        return self.stage.standin.said(self.desk)

    def case(self, containing: str) -> Message:
        """The newest message in the staff chat with these words."""
        return self.stage.standin.last(self.desk, containing)

    async def log(self, patient: int = 1) -> list[Record]:
        """The patient's log."""
        return await self.stage.app.db.read(lambda tx: records(tx, PatientId(patient)))

    async def seen(self, patient: int = 1) -> list[str]:
        """The observations that stand, as topic: value."""
        rows = await self.stage.app.db.read(lambda tx: tx.all("observations", patient_id=patient))
        bodies = [json.loads(row["body"]) for row in rows]
        return [f"{body['about']}: {body['value']}" for body in bodies]
