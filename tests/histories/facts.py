"""What the model knows: the order, what people did, and what the product has written down, as
plain values."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo


@dataclass(frozen=True, slots=True)
class Med:
    """One medicine of the order; ``gap`` is the least time between two doses."""

    name: str
    every: int
    first: datetime  # wall clock
    doses: int
    gap: timedelta
    soothes: bool = False  # an anti-inflammatory


@dataclass(frozen=True, slots=True)
class Order:
    """What was ordered."""

    zone: str
    home: datetime  # wall clock
    meds: tuple[Med, ...]

    def slots(self) -> Iterator[tuple[str, datetime]]:
        """Every dose at home: on the wall clock, and never nearer than the gap."""
        zone = ZoneInfo(self.zone)
        home = self.home.replace(tzinfo=zone).astimezone(UTC)
        for med in self.meds:
            before: datetime | None = None
            for number in range(med.doses):
                wall = med.first + number * timedelta(hours=med.every)
                at = wall.replace(tzinfo=zone).astimezone(UTC)
                at = at if before is None else max(at, before + med.gap)
                before = at
                if at >= home:
                    yield med.name, at


@dataclass(frozen=True, slots=True)
class Saying:
    """Words, and what they may tell: topics; ``holds`` what they must hold: the names of
    medicines, or ``anti``, ``mouth``; ``state`` is ``emergency``, ``death`` or ``alive``;
    ``just``: a dose in them was given this minute."""

    text: str
    may: frozenset[str] = frozenset()
    holds: str = ""
    state: str = ""
    just: bool = False


@dataclass(frozen=True, slots=True)
class Cause:
    """What happened: ``say``, ``edit``, ``tap``, ``picture`` by ``user`` at home; ``staff``;
    or ``due``, of ``due`` kind. ``source`` is how what is told now will be named."""

    kind: str
    user: int = 0
    saying: Saying = Saying("")
    code: str = ""  # of a button: i, a, g, …
    args: tuple[str, ...] = ()
    due: str = ""
    clinician: bool = False
    meds: tuple[str, ...] = ()  # items that the button is about
    asked_at: datetime | None = None  # when their prompt was due


@dataclass(frozen=True, slots=True)
class Dose:
    """What is written of one dose."""

    med: str
    slot: datetime
    state: str
    choice: str
    at: datetime | None
    user: int | None


@dataclass(frozen=True, slots=True)
class Told:
    """An observation that stands."""

    about: str
    value: str
    med: str
    user: int | None


@dataclass(frozen=True, slots=True)
class Facts:
    """What the product has written down, at one moment."""

    doses: Mapping[str, Dose]  # item → dose
    told: Mapping[int, Told]
    holds: Mapping[str, tuple[str, str]]  # id → what is held, and until: clinician, answer, …
    held: frozenset[str]  # as the product shows it: names, or ``everything``
    state: str
    over: bool
    cases: Mapping[str, tuple[str, str, int]]  # not closed: urgency, state, how much is in it
    watched: frozenset[str]  # cases that something falls due of
    stopped: frozenset[str]
    given: Mapping[str, tuple[datetime, ...]]  # med → every dose told as given
    reachable: bool
    members: frozenset[int]  # chats of the household; who has left is in it no more


@dataclass(frozen=True, slots=True)
class Shown:
    """A message as it looks: ``buttons`` are (label, code, item or "" )."""

    chat: int
    kind: str  # send, edit, answer
    text: str
    buttons: tuple[tuple[str, str, str], ...]
    at: datetime
