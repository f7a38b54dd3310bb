"""What is due close together goes out as one message."""

from __future__ import annotations

from bisect import bisect_left
from collections import defaultdict
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from datetime import datetime, timedelta

from bot.model.plan import Item

NEAR = timedelta(minutes=45)
"""Due within this of each other: one message (common practice)."""
MESSAGES_A_DAY = 6
"""More messages than this on one day are drawn together."""


@dataclass(slots=True)
class Piece:
    """One item with the moment (UTC) at which it is wanted, and its place in the message.
    ``activity`` is the protocol's activity; empty for a dose, which never moves."""

    due: datetime
    rank: int
    item: Item
    activity: str = ""


@dataclass(slots=True)
class Message:
    """Pieces that go out together at ``due``."""

    due: datetime
    alone: bool = False  # a dose in the quiet hours: nothing else joins it
    pieces: list[Piece] = field(default_factory=list)

    @property
    def doses(self) -> bool:
        """Whether a dose is in it; then it cannot move."""
        return any(not piece.activity for piece in self.pieces)

    def items(self) -> tuple[Item, ...]:
        """In their order, doses first; one activity is asked for once in a message."""
        seen: set[str] = set()
        kept: list[Item] = []
        for piece in sorted(self.pieces, key=lambda piece: (piece.rank, piece.due)):
            if piece.activity not in seen:
                kept.append(piece.item)
            if piece.activity:
                seen.add(piece.activity)
        return tuple(kept)


def gather(
    pieces: Iterable[Piece], quiet: Callable[[datetime], bool], day: Callable[[datetime], int]
) -> list[Message]:
    """The messages of a course, in order.

    A dose goes out at its own time, always. Everything else joins the nearest dose within
    45 minutes that is not in the quiet hours, or what else is due within 45 minutes.
    Where a day still has more than six messages, those without a dose join their nearest
    neighbour until there are six, or none is left to join. So a day has at most
    ``max(6, n + 1)`` messages, n being its different dose times; three medicines every
    8, 12 and 24 hours make at most six.
    """
    by_time: dict[datetime, Message] = {}
    loose: list[Piece] = []
    for piece in sorted(pieces, key=lambda piece: (piece.due, piece.rank)):
        if piece.activity:
            loose.append(piece)
        else:
            message = by_time.get(piece.due)
            if message is None:
                message = by_time[piece.due] = Message(piece.due, alone=quiet(piece.due))
            message.pieces.append(piece)
    messages = list(by_time.values())
    awake = [message for message in messages if not message.alone]
    times = [message.due for message in awake]
    open_one: Message | None = None
    for piece in loose:
        place = bisect_left(times, piece.due)
        around = awake[max(place - 1, 0) : place + 1]
        nearest = min(around, key=lambda message: abs(message.due - piece.due), default=None)
        if nearest is not None and abs(nearest.due - piece.due) <= NEAR:
            nearest.pieces.append(piece)
        elif open_one is not None and piece.due - open_one.due <= NEAR:
            open_one.pieces.append(piece)
        else:
            open_one = Message(piece.due, pieces=[piece])
            messages.append(open_one)
    return _at_most_six(messages, day)


def _at_most_six(messages: list[Message], day: Callable[[datetime], int]) -> list[Message]:
    days: dict[int, list[Message]] = defaultdict(list)
    for message in sorted(messages, key=lambda message: message.due):
        days[day(message.due)].append(message)
    for of_day in days.values():
        while len(of_day) > MESSAGES_A_DAY and (pair := _closest(of_day)):
            gone, into = pair
            into.pieces += gone.pieces
            of_day.remove(gone)
    left = [message for of_day in days.values() for message in of_day]
    return sorted(left, key=lambda message: message.due)


def _closest(messages: list[Message]) -> tuple[Message, Message] | None:
    """The message that gives way with the least shift, and the one that it joins."""
    pairs = [
        (gone, into)
        for gone in messages
        for into in messages
        if gone is not into and not gone.doses and not into.alone
    ]
    return min(pairs, key=lambda pair: abs(pair[0].due - pair[1].due), default=None)
