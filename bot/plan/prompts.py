"""A plan and its protocol as dated prompts: the whole course, from the way home on."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator
from datetime import UTC, datetime, timedelta

from bot.model.plan import Item, Plan, Prompt
from bot.model.protocol import Activity, Protocol
from bot.model.text import Text

from .clock import day_of, first_zone, to_utc, wall_at
from .gather import Piece, gather
from .hours import Offsets, next_waking, waking_offsets
from .slots import at_home
from .supply import last_dose
from .words import DOSE_CHOICES, dose_text

SETTLE = timedelta(minutes=30)
"""Nothing is due sooner than this after going home."""


def prompts(plan: Plan, protocol: Protocol) -> tuple[Prompt, ...]:
    """Every prompt from ``plan.home`` to the course's last day, in order.

    - ``plan.spans`` go before ``protocol.spans``, ``plan.walks`` before ``protocol.walks``.
    - A dose is due at its slot, always; doses ordered beyond the last day still come.
    - Everything else keeps the quiet hours: it moves to their nearer end.
    - What is due within 45 minutes goes out as one message (``gather``).
    - Going home, a session whose time has passed is left out; a notice, question or
      picture that would then never come, is brought half an hour after arriving.

    Ids depend on medicine and slot, or on activity, day and moment alone, so that a
    plan built again gives the same ones. Raises ValueError when a text holds a
    placeholder that no plan fills.
    """
    start = to_utc(plan.home, first_zone(plan)) + SETTLE
    ordinals: dict[str, int] = {}
    made: list[Prompt] = []
    pieces = [*_doses(plan, start), *_activities(plan, protocol, start)]

    def quiet(at: datetime) -> bool:
        return plan.hours.quiet(wall_at(plan, at).time())

    def day(at: datetime) -> int:
        return day_of(at, plan)

    for message in gather(pieces, quiet, day):
        wall = wall_at(plan, message.due)
        since = (wall.date() - plan.surgery).days
        moves = sum(message.due >= move.at for move in plan.moves)
        key = f"d{since:02d}:{wall:%H:%M}" + (f":z{moves}" if moves else "")
        ordinals[key] = ordinals.get(key, 0) + 1
        if ordinals[key] > 1:  # the hour that comes twice in autumn
            key = f"{key}:{ordinals[key]}"
        made.append(Prompt(key=key, due_at=message.due, day=since, items=message.items()))
    return tuple(made)


def rebuild(
    plan: Plan, protocol: Protocol, now: datetime, sent: Collection[str] = frozenset()
) -> tuple[Prompt, ...]:
    """The prompts due after ``now`` (aware). Items whose id is in ``sent`` are left out:
    when the hours of a household change, what it already got does not come again."""
    kept: list[Prompt] = []
    for prompt in prompts(plan, protocol):
        if prompt.due_at <= now:
            continue
        items = tuple(item for item in prompt.items if item.id not in sent)
        if len(items) == len(prompt.items):
            kept.append(prompt)
        elif items:
            kept.append(prompt.model_copy(update={"items": items}))
    return tuple(kept)


def last_day(plan: Plan, protocol: Protocol) -> int:
    """The course's last day, with the clinician's own spans."""
    return plan.spans.get("last", protocol.spans["last"])


def days_of(activity: Activity, plan: Plan, protocol: Protocol) -> range:
    """The days on which an activity comes, cut at the course's last day."""
    spans = {**protocol.spans, **plan.spans}
    first, last = (
        spans[day] if isinstance(day, str) else day for day in (activity.from_day, activity.to_day)
    )
    return range(max(first, 0), min(last, last_day(plan, protocol)) + 1, activity.every_days)


def _doses(plan: Plan, start: datetime) -> Iterator[Piece]:
    for rank, medicine in enumerate(plan.medicines):
        last = last_dose(plan, medicine)
        for slot in at_home(plan, medicine):
            text = dose_text(medicine, plan.hours, wall_at(plan, slot.at), last)
            item = Item(
                id=slot.id,
                kind="dose",
                asks="dose",
                text=text,
                choices=DOSE_CHOICES,
                med=medicine.name,
                slot_at=slot.at,
            )
            # Ranks below 0 put doses first, in the order's own order.
            yield Piece(max(slot.at, start), rank - len(plan.medicines), item)


def _activities(plan: Plan, protocol: Protocol, start: datetime) -> Iterator[Piece]:
    offsets = waking_offsets(plan.hours)
    for rank, activity in enumerate(protocol.activities):
        if plan.species not in activity.species:
            continue
        found = _occurrences(plan, protocol, activity, offsets, rank)
        coming = [piece for piece in found if piece.due >= start]
        if not coming and activity.kind != "session":
            home_day = day_of(start, plan)
            late = [piece for piece in found if day_of(piece.due, plan) == home_day]
            for piece in late[-1:]:
                piece.due = next_waking(plan, start)
                coming = [piece]
        yield from coming


def _occurrences(
    plan: Plan, protocol: Protocol, activity: Activity, offsets: Offsets, rank: int
) -> list[Piece]:
    walks = plan.walks or protocol.walks
    filled: dict[int, Text] = {}
    found: list[Piece] = []
    walk = _walk(activity, plan.patient)
    midnight = datetime.combine(plan.surgery, datetime.min.time())
    for day in days_of(activity, plan, protocol):
        minutes = walks.minutes_on(day)
        text = filled.get(minutes)
        if text is None:
            text = _fill(activity, name=plan.patient, minutes=minutes, outings=walks.outings)
            filled[minutes] = text
        for moment in activity.at:
            due = _moment(plan, midnight + timedelta(days=day) + offsets[moment])
            if due is None:
                if activity.kind == "session":
                    continue  # the journey passed over it; the next one is near
                due = _landing(plan, midnight + timedelta(days=day) + offsets[moment])
            item = Item(
                id=f"{activity.id}:d{day:02d}:{moment}",
                kind=activity.kind,
                asks=activity.asks,
                text=text,
                choices=activity.choices,
                walk=walk,
            )
            found.append(Piece(due, rank, item, activity.id))
    return found


def _moment(plan: Plan, wall: datetime) -> datetime | None:
    """When the household's clock first shows ``wall``; None if a journey skipped it."""
    if not plan.moves:
        return to_utc(wall, plan.zone)
    since = datetime.min.replace(tzinfo=UTC)
    for move in plan.moves:
        at = to_utc(wall, move.left)
        if since < at < move.at:
            return at
        since = move.at
    at = to_utc(wall, plan.zone)
    return at if at > since else None


def _landing(plan: Plan, wall: datetime) -> datetime:
    """For a time that a journey skipped: the first waking moment after that journey."""
    for move in plan.moves:
        if to_utc(wall, move.left) >= move.at:
            return next_waking(plan, move.at + SETTLE)
    raise AssertionError("only a journey skips a time")


def _walk(activity: Activity, name: str) -> Text | None:
    """The words with the figures of the walks left open; None where there are none."""
    if not re.search(r"\{(minutes|outings)\}", activity.text.en + activity.text.es):
        return None
    braced = name.replace("{", "{{").replace("}", "}}")
    en, es = (words.replace("{name}", braced) for words in (activity.text.en, activity.text.es))
    return Text(en=en, es=es)


def _fill(activity: Activity, **values: object) -> Text:
    if "{" not in activity.text.en + activity.text.es:
        return activity.text
    try:
        return activity.text.fill(values, values)
    except (KeyError, IndexError, ValueError) as error:
        raise ValueError(
            f"activity {activity.id}: its text holds the placeholder {error}; only "
            f"{', '.join('{' + name + '}' for name in values)} are filled"
        ) from None
