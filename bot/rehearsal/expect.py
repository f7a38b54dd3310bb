"""What was expected of a story, compared with what came of it."""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping
from dataclasses import dataclass
from datetime import datetime

from bot.model.observation import Observation
from bot.model.urgency import Urgency
from bot.protocol.yaml_tree import short

from .transcript import Message, Transcript
from .values import (
    Cases,
    Count,
    Demand,
    Expectation,
    Held,
    Moment,
    Never,
    NotedThen,
    Over,
    Some,
    Window,
)


@dataclass(frozen=True, slots=True)
class OpenCase:
    """An open case at a moment."""

    urgency: Urgency
    taken: bool


WHOLE = frozenset({"everything"})


@dataclass(frozen=True, slots=True)
class HeldNames:
    """What is held at a moment, and how else a story may write it, ``also``: while everything
    is held, because of an emergency or otherwise, what is held apart from that, or all that
    there is (every medicine of the plan, walks and sessions); while every medicine and
    everything by mouth is held, ``everything``."""

    names: frozenset[str] = frozenset()
    also: tuple[frozenset[str], ...] = ()

    def are(self, wanted: frozenset[str]) -> bool:
        """Whether a story that expects ``wanted`` is right."""
        ways = (self.names, *self.also)
        return any({name.casefold() for name in one} == wanted for one in ways)


@dataclass(frozen=True, slots=True)
class State:
    """What is known at a moment: open cases, what is held, which observations stand."""

    cases: tuple[OpenCase, ...] = ()
    held: HeldNames = HeldNames()
    noted: tuple[Observation, ...] = ()


@dataclass(frozen=True, slots=True)
class Played:
    """What the expectations are asked of. ``chats``: a name, or ``household``, ``staff``,
    ``anyone`` → the chats where they read; ``last`` is when the last event happened."""

    transcript: Transcript
    chats: Mapping[str, Collection[int]]
    states: Mapping[Moment, State]
    time_of: Callable[[Moment], datetime]
    wall: Callable[[datetime], str]
    last: datetime


@dataclass(frozen=True, slots=True)
class Miss:
    """Something that did not come as expected, with the line that asked for it."""

    line: int
    said: str
    why: str


def compare(expectations: Collection[Expectation], played: Played) -> list[Miss]:
    """Every expectation that does not hold."""
    found: list[Miss] = []
    for one in expectations:
        why = _wrong(one.demand, played)
        if why:
            found.append(Miss(one.line, one.said, why))
    return found


def moments(expectations: Collection[Expectation]) -> tuple[Moment, ...]:
    """When the state must be looked at, in order."""
    asked = (one.demand for one in expectations)
    return tuple(sorted({one.at for one in asked if isinstance(one, Cases | Held | NotedThen)}))


def _wrong(demand: Demand, played: Played) -> str:
    """Why a demand is not met; empty when it is."""
    match demand:
        case Never(window, words):
            for message in _messages(window, played):
                if message.sent.says(words):
                    return _sent(message, played)
            return ""
        case Some(window, words):
            faces = played.transcript.faces(*_span(window, played))
            if any(face.says(words) for face in faces):
                return ""
            return _instead(list(_messages(window, played)), played)
        case Count(window, least, most, words):
            counted = [
                message
                for message in _messages(window, played)
                if all(message.sent.says(one) for one in words)
            ]
            if len(counted) < least or (most is not None and len(counted) > most):
                return f"there were {len(counted)}: {_instead(counted, played)}"
            return ""
        case Cases():
            return _cases(demand, played.states[demand.at].cases)
        case Held(at, names):
            held = played.states[at].held
            return "" if held.are(names) else f"held: {', '.join(sorted(held.names)) or 'nothing'}"
        case NotedThen(at, fields, stands):
            about = [one for one in played.states[at].noted if one.about == fields.get("about")]
            if any(_like(one, fields) for one in about) == stands:
                return ""
            values = ", ".join(one.value for one in about) or "nothing"
            return f"noted of {fields.get('about')}: {values}"
        case Over():
            late = [
                message
                for message in played.transcript.messages(played.chats["household"], None, None)
                if message.sent.at > played.last
            ]
            return _sent(late[0], played) if late else ""


def _span(
    window: Window, played: Played
) -> tuple[Collection[int], datetime | None, datetime | None]:
    chats = {chat for name in window.to for chat in played.chats[name]}
    since = played.time_of(window.since) if window.since else None
    until = played.time_of(window.until) if window.until else None
    return chats, since, until


def _messages(window: Window, played: Played) -> list[Message]:
    return list(played.transcript.messages(*_span(window, played)))


def _cases(asked: Cases, found: Collection[OpenCase]) -> str:
    urgency = max((case.urgency for case in found), default=Urgency.none)
    taken = sum(case.taken for case in found)
    wrong = (
        (asked.open is not None and asked.open != len(found))
        or (asked.urgency is not None and asked.urgency != urgency)
        or (asked.taken is not None and asked.taken != taken)
    )
    return f"open: {len(found)}, urgency: {urgency.name}, taken: {taken}" if wrong else ""


def _like(one: Observation, fields: Mapping[str, str]) -> bool:
    """Whether an observation has these fields; figures are compared as figures."""
    told = one.as_dict()
    return all(_same(told.get(key), wanted) for key, wanted in fields.items())


def _same(value: object, wanted: str) -> bool:
    if isinstance(value, bool) or value is None:
        return str(bool(value)).casefold() == wanted.casefold()
    if isinstance(value, int | float):
        try:
            return float(wanted) == float(value)
        except ValueError:
            return False
    return str(value).casefold() == wanted.casefold()


def _sent(message: Message, played: Played) -> str:
    face = message.sent
    labels = "".join(f" [{label}]" for label in face.labels)
    return f"{played.wall(face.at)} “{short(face.text, 200)}”{labels}"


def _instead(messages: list[Message], played: Played) -> str:
    """What was sent, for someone who must see at a glance why it does not hold."""
    if not messages:
        return "nothing was sent"
    told = "; ".join(_sent(message, played) for message in messages[:3])
    more = f"; and {len(messages) - 3} more" if len(messages) > 3 else ""
    return f"{told}{more}"
