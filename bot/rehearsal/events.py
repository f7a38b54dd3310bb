"""What happens in a story, read from its file."""

from __future__ import annotations

from collections.abc import Collection
from typing import TypeVar

from bot.protocol.yaml_tree import Mapping, Node, Place, Scalar

from .fields import Sheet, pairs
from .values import (
    Act,
    Answer,
    Close,
    Course,
    Edit,
    Event,
    Keep,
    Light,
    Moment,
    Reply,
    Show,
    Stop,
    Take,
    Tap,
    Write,
)

T = TypeVar("T", bound=str)

HOUSEHOLD = ("tap", "edit", "picture", "film", "reply")
STAFF = (
    "take", "close", "answer", "hold", "release", "stop", "pause", "resume", "died", "say",
)  # fmt: skip
BESIDE = {
    "tap": ("of",), "reply": ("to",), "picture": ("caption",), "film": ("caption",),
    "close": ("outcome",),
}  # fmt: skip
"""What may stand beside an action."""
OUTCOMES = {
    "advice": "advice", "seen": "visit", "visit": "visit", "emergency": "emergency",
    "expected": "expected", "mistaken": "mistaken",
}  # fmt: skip
"""How a case ends in a story → the product's own word for it."""
PICTURES: dict[str, Light] = {"sharp": "sharp", "clear": "sharp", "blurred": "blurred",
                              "dark": "dark"}  # fmt: skip


def read_events(
    sheet: Sheet, node: Node, household: Collection[str], staff: Collection[str]
) -> tuple[Event, ...]:
    """All events, in order of time; those of one minute in the order of the file."""
    found: list[Event] = []
    for item in sheet.items(node, "`events`"):
        entry = sheet.mapping(item, "an event")
        if entry is not None:
            found += _event(sheet, entry, household, staff)
    return tuple(sorted(found, key=lambda event: event.at))


def _event(
    sheet: Sheet, entry: Mapping, household: Collection[str], staff: Collection[str]
) -> list[Event]:
    if "at" not in entry.values:
        sheet.wrong(entry.place, "an event without its time", "Write `at: day N HH:MM`")
        at = Moment(0, 0)
    else:
        at = sheet.moment(entry.values["at"], "`at`")
    found = []
    for who, place, value in pairs(entry):
        if who == "at":
            continue
        if who not in household and who not in staff:
            sheet.unknown(place, "nobody here is called", who, [*household, *staff])
            continue
        act = _act(sheet, value, staff=who in staff)
        if act is not None:
            found.append(Event(at, place.line, who, act))
    if len(entry.values) - ("at" in entry.values) == 0:
        sheet.wrong(entry.place, "nobody does anything here", 'Write `name: "words"`')
    return found


def _act(sheet: Sheet, node: Node, *, staff: bool) -> Act | None:
    if isinstance(node, Scalar):
        if node.raw.strip():
            return Write(node.raw)
        sheet.wrong(node.place, "an empty message", "Write its words in quotes")
        return None
    entry = sheet.mapping(node, "what somebody does")
    if entry is None:
        return None
    known = (*STAFF, *HOUSEHOLD) if staff else (*HOUSEHOLD, "say")
    named = [key for key in entry.values if key in known]
    if len(named) != 1:
        words = next(iter(entry.values), "")
        if named or not words:
            sheet.wrong(entry.place, "not one action, but none or several", "Write one an event")
        else:
            sheet.unknown(entry.keys[words], "no such action:", words, known)
        return None
    verb = named[0]
    for key, place, _ in pairs(entry):
        if key != verb and key not in BESIDE.get(verb, ()):
            sheet.unknown(place, f"`{verb}` knows nothing of", key, BESIDE.get(verb, ()))
    return _made(sheet, entry, verb)


def _made(sheet: Sheet, entry: Mapping, verb: str) -> Act | None:
    node = entry.values[verb]
    raw = sheet.text(node, f"`{verb}`")

    def beside(key: str) -> str:
        return sheet.text(entry.values[key], f"`{key}`") if key in entry.values else ""

    if verb == "reply" and not beside("to"):
        mend = "Write `to:` with words of the message that is answered"
        sheet.wrong(entry.keys[verb], "a reply to nothing", mend)
    if not raw.strip():
        sheet.wrong(node.place, f"`{verb}` says nothing", "Write its words behind it")
    match verb:
        case "tap":
            return Tap(raw, beside("of"))
        case "edit":
            return Edit(raw)
        case "reply":
            return Reply(raw, beside("to"))
        case "picture" | "film":
            light = _known(sheet, node.place, "no such picture:", raw, PICTURES)
            return Show(verb == "film", light, beside("caption")) if light else None
        case "take" | "close":
            _known(sheet, node.place, "no such case:", raw, {"newest": "newest", "true": "newest"})
            if verb == "take":
                return Take()
            how = beside("outcome") or "advice"
            outcome = _known(sheet, entry.place, "no such outcome:", how, OUTCOMES)
            return Close(outcome) if outcome else None
        case "answer":
            return Answer(raw)
        case "hold" | "release":
            return Keep(raw, verb == "release")
        case "stop":
            return Stop(raw)
        case "pause" | "resume" | "died":
            why = "" if isinstance(node, Scalar) and node.value is True else raw
            return Course(verb, why)
        case _:
            return Write(raw)


def _known(sheet: Sheet, place: Place, what: str, raw: str, known: dict[str, T]) -> T | None:
    """What ``raw`` stands for."""
    found = known.get(raw.strip().casefold())
    if found is None:
        sheet.unknown(place, what, raw, known)
    return found
