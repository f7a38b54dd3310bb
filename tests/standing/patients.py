"""An invented patient with three medicines, and what varies in holds."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta

from hypothesis import strategies as st

from bot.model.hold import (
    AntiInflammatories,
    AtTime,
    ByAnswer,
    ByClinician,
    ByMouth,
    Cause,
    Ends,
    Everything,
    FromDeath,
    FromEmergency,
    FromFinding,
    FromStaff,
    HeldMedicine,
    Hold,
    Sessions,
    Target,
    Walks,
    encode,
)
from bot.model.ids import CaseId, EventId, HoldId, MemberId
from bot.model.observation import Noted, Observation
from bot.model.plan import Item, Medicine, MedicineClass, Plan
from bot.model.text import Text
from bot.model.urgency import Urgency
from bot.standing import Told
from bot.triage import default_rules, triage

NOW = datetime(2026, 3, 9, 20, tzinfo=UTC)
SURGERY = date(2026, 3, 3)
DAY = 6


def same(words: str) -> Text:
    return Text(en=words, es=words)


def medicine(name: str, kind: MedicineClass = "other", every: int = 12, days: int = 10) -> Medicine:
    return Medicine(
        name=name,
        amount=same("one tablet"),
        kind=kind,
        every_hours=every,
        first_dose=datetime(2026, 3, 4, 8),
        days=days,
    )


CARPROFEN = medicine("carprofen", "anti-inflammatory")
GABAPENTIN = medicine("Gabapentin", "pain relief", every=8)
CEPHALEXIN = medicine("cephalexin", "antibiotic")


def plan(*medicines: Medicine) -> Plan:
    return Plan(
        patient="Biscuit",
        species="dog",
        weight_kg=24,
        procedure="Tibial plateau levelling osteotomy",
        surgery=SURGERY,
        home=datetime(2026, 3, 4, 10),
        zone="UTC",
        protocol="small",
        clinician="Dr Example",
        medicines=medicines,
    )


PLAN = plan(CARPROFEN, GABAPENTIN, CEPHALEXIN)


def dose(med: str) -> Item:
    return Item(id=f"dose:{med}", kind="dose", asks="dose", text=same("x"), med=med)


def session(asks: str) -> Item:
    return Item(id=asks, kind="session", asks=asks, text=same("x"))


def question(asks: str) -> Item:
    return Item(id=f"q:{asks}", kind="question", asks=asks, text=same("x"))


NEW_WEEK = Item(id="new-week", kind="notice", asks="none", text=same("x"), walk=same("{minutes}"))
ITEMS = (
    *(dose(each.name) for each in PLAN.medicines),
    *(session(asks) for asks in ("walk", "massage", "ice", "warm_compress", "none")),
    question("appetite"),
    NEW_WEEK,
)


def told(*new: Observation, day: int = DAY, past: tuple[Noted, ...] = (), event: str = "e1",
         given: tuple[str, ...] = ()) -> Told:  # fmt: skip
    """What triage makes of it, too."""
    noted = [Noted(one, NOW, day) for one in new]
    findings = triage(noted, past, day=day, now=NOW, rules=default_rules())
    return Told(noted, past, findings, day, NOW, EventId(event), CaseId("c1"), given)


C1 = CaseId("c1")


@dataclass(frozen=True)
class Case:
    id: CaseId = C1
    urgency: Urgency = Urgency.emergency
    opened_at: datetime = NOW - timedelta(hours=1)
    state: str = "open"
    alive_at: datetime | None = None


def hold(target: Target, cause: Cause | None = None, ends: Ends | None = None) -> Hold:
    cause = cause or FromFinding("rule", same("x"), CaseId("c1"), EventId("e1"))
    return Hold(HoldId(encode(target)), target, NOW, cause, ends or ByClinician())


TARGETS: st.SearchStrategy[Target] = st.one_of(
    st.sampled_from(
        [
            AntiInflammatories(),
            ByMouth(),
            Walks(),
            Sessions(),
            Everything(),
            HeldMedicine("carprofen"),
        ]
    ),
    st.sampled_from([HeldMedicine("Gabapentin"), HeldMedicine("cephalexin")]),
)
WORDS = st.text(st.characters(exclude_categories=["Cs", "Cc", "Z"]), min_size=1, max_size=8)
TEXTS = st.builds(Text, en=WORDS, es=WORDS)
MOMENTS = st.integers(-400, 400).map(lambda hours: NOW + timedelta(hours=hours))
_EVENTS = WORDS.map(EventId)
LIVING: st.SearchStrategy[Cause] = st.one_of(
    st.builds(FromFinding, WORDS, TEXTS, st.none() | WORDS.map(CaseId), _EVENTS),
    st.builds(FromStaff, st.integers(1).map(MemberId), WORDS, st.just("") | WORDS, _EVENTS),
    st.builds(FromEmergency, WORDS.map(CaseId), st.none() | _EVENTS),
)
CAUSES: st.SearchStrategy[Cause] = LIVING | st.builds(FromDeath, _EVENTS)
ENDS: st.SearchStrategy[Ends] = st.one_of(
    st.just(ByClinician()), st.builds(AtTime, MOMENTS), st.builds(ByAnswer, WORDS)
)


def holds(
    causes: st.SearchStrategy[Cause] = LIVING, ends: st.SearchStrategy[Ends] = ENDS
) -> st.SearchStrategy[Hold]:
    return st.builds(Hold, WORDS.map(HoldId), TARGETS, MOMENTS, causes, ends, st.booleans())
