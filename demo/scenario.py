"""The demo's course: an invented patient, who is there, and what they do on which day.

The same file is played before an audience and checked as an end-to-end test.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, time, timedelta
from pathlib import Path
from typing import Annotated, Literal
from zoneinfo import ZoneInfo

from pydantic import Field, model_validator

from bot.model.plan import Plan
from bot.model.protocol import Slug, Strict
from bot.model.settings import Clinic
from bot.model.text import Lang, Words
from bot.protocol.yaml_lines import load_file

HERE = Path(__file__).resolve().parent
PICTURES = HERE / "pictures"


class Person(Strict):
    """Someone in the course. ``home``: has an own chat with the bot; ``staff``: their
    role in the practice."""

    name: Words
    role: Words
    language: Lang = "en"
    home: bool = False
    staff: Literal["staff", "clinician", "administrator"] | None = None


class StaffChat(Strict):
    """A chat of staff. Rank 0 gets every case; higher ranks are paged after it."""

    title: Words
    role: Words
    members: Annotated[tuple[Slug, ...], Field(min_length=1)]
    rank: Annotated[int, Field(ge=0, le=9)] = 0


class Attachment(Strict):
    """A picture or film, by its file in ``demo/pictures``."""

    label: Words
    kind: Literal["photo", "video"]
    file: Words
    mime: Words

    @property
    def path(self) -> Path:
        """Where it lies."""
        return PICTURES / self.file


class Expect(Strict):
    """What ``chat`` shows of a step: one message of the bot that came or changed since the
    step and holds all of ``has`` (any case), at the latest ``within_minutes`` after it;
    and no such message that holds one of ``hasnt``. ``quiet``: none came or changed at all.
    """

    chat: Slug
    has: tuple[Words, ...] = ()
    hasnt: tuple[Words, ...] = ()
    quiet: bool = False
    within_minutes: Annotated[int, Field(ge=0, le=2880)] = 0

    @model_validator(mode="after")
    def _says_something(self) -> Expect:
        if self.quiet == bool(self.has or self.hasnt):
            raise ValueError("an expectation has words in `has` or `hasnt`, or is `quiet`")
        return self


class Step(Strict):
    """Something that ``who`` does on ``day`` (since surgery) at ``at`` (the patient's clock).

    One of: ``enrol`` (the plan, as staff write it in their chat), ``join`` (by the newest
    one-time link that was sent), ``say``, ``press`` (a button by its words;
    ``Close > Advice given`` is one after the other), ``edit`` (new
    words for the own newest message), ``send`` (an attachment, with ``caption``), or none
    of them to look on. ``chat`` is a staff chat, or left out at home; ``to`` are words of
    the bot's message that is answered or whose button is pressed.
    """

    day: Annotated[int, Field(ge=0, le=400)]
    at: time
    who: Slug
    why: Words
    chat: Slug | None = None
    enrol: bool = False
    join: bool = False
    say: Words | None = None
    press: Words | None = None
    edit: Words | None = None
    send: Slug | None = None
    caption: str = ""
    to: Words | None = None
    expect: tuple[Expect, ...] = ()

    @model_validator(mode="after")
    def _one_thing(self) -> Step:
        done = [self.enrol, self.join, self.say, self.press, self.edit, self.send]
        if sum(bool(thing) for thing in done) > 1:
            raise ValueError("a step is one thing: enrol, join, say, press, edit or send")
        if self.enrol and self.chat is None:
            raise ValueError("a patient is enrolled in a staff chat: name it under `chat`")
        return self


class Good(Strict):
    """The words of a button that are pressed on an ordinary day, from day to day."""

    press: Words
    from_day: int = 0
    to_day: int = 400


class Routine(Strict):
    """Who answers the ordinary prompts that come from ``from_hour`` to ``to_hour``
    (local, the last not included), how long after, and with which buttons."""

    who: Slug
    from_hour: Annotated[int, Field(ge=0, le=23)]
    to_hour: Annotated[int, Field(ge=1, le=24)]
    after_minutes: Annotated[int, Field(ge=1, le=59)]
    good: tuple[Good, ...]

    def pick(self, labels: Sequence[str], day: int) -> str | None:
        """The button to press next among ``labels``, or None when nothing is left."""
        for good in self.good:
            if not good.from_day <= day <= good.to_day:
                continue
            for label in labels:
                if good.press.casefold() in label.casefold():
                    return label
        return None


class Pause(Strict):
    """Ordinary prompts stay unanswered that come on ``day`` from ``from_at`` on, until
    ``to_at`` (local, not included)."""

    day: int
    from_at: time
    to_at: time
    why: Words


class Scenario(Strict):
    """The whole course."""

    title: Words
    about: Words
    caution: Words
    plan: Plan
    start_day: int
    start_at: time
    people: dict[Slug, Person]
    staff_chats: dict[Slug, StaffChat]
    attachments: dict[Slug, Attachment]
    routines: tuple[Routine, ...]
    pauses: tuple[Pause, ...] = ()
    steps: Annotated[tuple[Step, ...], Field(min_length=1)]

    @model_validator(mode="after")
    def _names_are_known(self) -> Scenario:
        chats = {key for key, person in self.people.items() if person.home} | set(self.staff_chats)
        for name in (r.who for r in self.routines):
            if name not in self.people:
                raise ValueError(f"routines: there is no person {name!r}")
        for key, chat in self.staff_chats.items():
            if unknown := [name for name in chat.members if name not in self.people]:
                raise ValueError(f"staff chat {key}: there is no person {unknown[0]!r}")
        last = self.start
        for step in self.steps:
            here = f"step of day {step.day} at {step.at:%H:%M}"
            if self.when(step.day, step.at) < last:
                raise ValueError(f"{here}: it lies before the step above it")
            last = self.when(step.day, step.at)
            if step.who not in self.people:
                raise ValueError(f"{here}: there is no person {step.who!r}")
            if step.chat is not None and step.who not in self._members(step.chat):
                raise ValueError(f"{here}: {step.who} is not in a staff chat {step.chat!r}")
            if step.chat is None and not self.people[step.who].home:
                raise ValueError(f"{here}: say in which staff chat, under `chat`")
            if step.send is not None and step.send not in self.attachments:
                raise ValueError(f"{here}: there is no attachment {step.send!r}")
            for expect in step.expect:
                if expect.chat not in chats:
                    raise ValueError(f"{here}: expects something in an unknown chat {expect.chat}")
        return self

    def _members(self, chat: str) -> tuple[str, ...]:
        found = self.staff_chats.get(chat)
        return found.members if found else ()

    @property
    def start(self) -> datetime:
        """When the clock starts, aware."""
        return self.when(self.start_day, self.start_at)

    def when(self, day: int, at: time) -> datetime:
        """That time on that day since surgery, on the patient's clock; aware."""
        local = datetime.combine(self.plan.surgery + timedelta(days=day), at)
        return local.replace(tzinfo=ZoneInfo(self.plan.zone))

    def day(self, at: datetime) -> int:
        """Days since surgery of an aware time, on the patient's calendar."""
        return (at.astimezone(ZoneInfo(self.plan.zone)).date() - self.plan.surgery).days

    def routine(self, came: datetime) -> Routine | None:
        """Who answers an ordinary prompt that came at ``came`` (aware); None: nobody."""
        local = came.astimezone(ZoneInfo(self.plan.zone))
        day = self.day(came)
        for pause in self.pauses:
            if pause.day == day and pause.from_at <= local.time() < pause.to_at:
                return None
        found = [r for r in self.routines if r.from_hour <= local.hour < r.to_hour]
        return found[0] if found else None


def load_scenario(path: Path = HERE / "scenario.yaml") -> Scenario:
    """The demo's course; FlowError names file, line and mend."""
    return load_file(path, Scenario)


def load_clinic(path: Path = HERE / "clinic.yaml") -> Clinic:
    """The demo's practice; FlowError names file, line and mend."""
    return load_file(path, Clinic)


def order_text(path: Path = HERE / "scenario.yaml") -> str:
    """The enrolment order as the file has it, to be sent under /enrol."""
    lines = path.read_text(encoding="utf-8").splitlines()
    first = lines.index("plan:") + 1
    out: list[str] = []
    for line in lines[first:]:
        if line and not line.startswith(" "):
            break
        out.append(line.removeprefix("  "))
    return "\n".join(out).strip()
