"""Invented patients and a short protocol for this folder's tests, and what may vary in them."""

from __future__ import annotations

from datetime import date, datetime, time, timedelta
from typing import Any

from hypothesis import strategies as st

from bot.model.plan import Hours, Medicine, MedicineClass, Plan
from bot.model.protocol import Activity, Choice, Protocol, Walks
from bot.model.text import Text

DONE = (
    Choice(id="done", label=Text(en="Done", es="Hecho")),
    Choice(id="skipped", label=Text(en="Skipped", es="No se hizo")),
)
ZONES = (
    "America/Denver",
    "Europe/Madrid",
    "America/Sao_Paulo",
    "Asia/Kathmandu",
    "Australia/Lord_Howe",
)
"""Both clock changes north and south, none at all, +05:45, and a change by half an hour."""


def same(words: str) -> Text:
    """The same words in both languages."""
    return Text(en=words, es=words)


def activity(id: str, **changes: Any) -> Activity:
    """A daily session over the whole course, but for what is named."""
    values: dict[str, Any] = {
        "id": id,
        "kind": "session",
        "from_day": 0,
        "to_day": "last",
        "at": ("morning",),
        "text": same(id),
        "source": "test",
    }
    values.update(changes)
    if values["kind"] in ("session", "question"):
        values.setdefault("choices", DONE)
    return Activity(**values)


def protocol(*activities: Activity, last: int = 56) -> Protocol:
    """A protocol of these activities; a plausible full one when none are given."""
    return Protocol(
        protocol="small",
        version=1,
        title=same("Small"),
        species=("dog", "cat"),
        spans={"ice_last": 4, "warm_last": 11, "cone_last": 14, "recheck": 12, "last": last},
        walks=Walks(start_minutes=5, step_minutes=5, cap_minutes=30),
        activities=activities or FULL,
        expected=(),
    )


FULL = (
    activity("home-hazards", kind="notice", from_day=1, to_day=1),
    activity("cold-pack", to_day="ice_last", at=("morning", "evening")),
    activity("warm-compress", from_day=5, to_day="warm_last", at=("morning", "evening")),
    activity(
        "walk",
        species=("dog",),
        at=("midday",),
        text=Text(
            en="Walk {name} for {minutes} minutes, {outings} times.",
            es="Pasee a {name} {minutes} minutos, {outings} veces.",
        ),
    ),
    activity("litter", kind="question", species=("cat",), at=("midday",)),
    activity("cone", kind="question", to_day="cone_last", at=("bedtime",)),
    activity("appetite", kind="question", at=("evening",)),
    activity("incision", kind="picture", from_day=2, to_day="cone_last", every_days=2),
    activity("recheck", kind="picture", from_day="recheck", to_day="recheck"),
    activity("end", kind="notice", from_day="last", to_day="last", at=("evening",)),
)


def medicine(name: str = "carprofen", every: int = 12, **changes: Any) -> Medicine:
    """Seven days from the evening of the way home."""
    values: dict[str, Any] = {
        "name": name,
        "amount": Text(en="one tablet (50 mg)", es="una tableta (50 mg)"),
        "every_hours": every,
        "first_dose": datetime(2026, 3, 4, 20),
        "days": 7,
    }
    return Medicine(**{**values, **changes})


def plan(*medicines: Medicine, **changes: Any) -> Plan:
    """Operated on 3 March 2026, home the next morning, four days before the clocks change."""
    values: dict[str, Any] = {
        "patient": "Biscuit",
        "species": "dog",
        "weight_kg": 24,
        "procedure": "Tibial plateau levelling osteotomy",
        "surgery": date(2026, 3, 3),
        "home": datetime(2026, 3, 4, 10, 30),
        "zone": "America/Denver",
        "protocol": "small",
        "clinician": "Dr Example",
        "medicines": medicines,
    }
    return Plan(**{**values, **changes})


def _clock(hours: tuple[int, int]) -> st.SearchStrategy[time]:
    return st.integers(hours[0] * 4, hours[1] * 4).map(lambda n: time(n // 4 % 24, n % 4 * 15))


@st.composite
def households(draw: st.DrawFn) -> Hours:
    """Ordinary households: up between 5 and 9, to bed between 21 and 23:45."""
    return Hours(
        morning=draw(_clock((6, 9))),
        midday=draw(_clock((11, 14))),
        evening=draw(_clock((17, 20))),
        bedtime=draw(_clock((21, 23))),
        quiet_from=draw(_clock((21, 24))),
        quiet_to=draw(_clock((5, 8))),
    )


KINDS: tuple[MedicineClass, ...] = ("antibiotic", "anti-inflammatory", "pain relief")


@st.composite
def plans(
    draw: st.DrawFn, zones: tuple[str, ...] = ZONES, intervals: tuple[int, ...] | None = None
) -> Plan:
    """Plausible plans at any time of the year, with up to three medicines (or one for each
    interval named) whose first doses lie within an hour and a half of one of the
    household's moments."""
    if intervals is None:
        intervals = tuple(draw(st.lists(st.sampled_from([8, 12, 24]), max_size=3)))
    hours = draw(households())
    surgery = date(2026, 1, 1) + timedelta(days=draw(st.integers(0, 364)))
    medicines = []
    for kind, every in zip(KINDS, intervals, strict=False):
        day = datetime.combine(surgery + timedelta(days=draw(st.integers(1, 3))), time())
        moment = draw(st.sampled_from([hours.morning, hours.midday, hours.evening]))
        shift = timedelta(minutes=draw(st.integers(-6, 6)) * 15)
        medicines.append(
            medicine(
                kind.replace(" ", "-"),
                every,
                kind=kind,
                first_dose=day + timedelta(hours=moment.hour, minutes=moment.minute) + shift,
                days=draw(st.integers(3, 20)),
            )
        )
    return plan(
        *medicines,
        species=draw(st.sampled_from(["dog", "cat"])),
        surgery=surgery,
        home=datetime.combine(surgery, time(10)) + timedelta(minutes=draw(st.integers(0, 1800))),
        zone=draw(st.sampled_from(zones)),
        hours=hours,
    )
