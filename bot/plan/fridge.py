"""One page for the owner's fridge: what stands on it, as plain words and days.

``bot.cli.fridge_pdf`` and ``fridge_html`` draw it. What is due comes from the same
prompts that the chat sends.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, time, timedelta
from typing import Protocol as Shape

from bot.model.plan import Item, Medicine, Plan, Prompt
from bot.model.protocol import Protocol
from bot.model.settings import Clinic
from bot.model.text import Lang

from . import fridge_words as words
from .clock import wall_at
from .course import title
from .fridge_words import date_words, short_date
from .plain import plain
from .prompts import last_day, prompts

TICKED_DAYS = 14
"""Days with boxes to tick."""
WEEK = 7
_WORN = (("cone_last", words.CONE), ("bandage_last", words.BANDAGE), ("frame_last", words.FRAME))
_VISITS = (
    ("recheck", words.RECHECK),
    ("hip_check", words.HIP_CHECK),
    ("radiographs", words.XRAYS),
)
"""Spans of the protocols that are dates to keep."""


@dataclass(frozen=True, slots=True)
class Phone:
    """Whom to phone; ``number`` is empty where a line is left to fill in."""

    label: str
    number: str


@dataclass(frozen=True, slots=True)
class Row:
    """Something done, with a box on each of ``days`` (since surgery); without days it is
    done when it is needed. ``when`` is the hour, or words for what has none."""

    when: str
    head: str
    rest: str
    days: frozenset[int]


@dataclass(frozen=True, slots=True)
class Milestone:
    """A date to keep; ``appointment`` asks for the hour, on a line to fill in."""

    head: str
    when: str
    more: str
    appointment: str = ""


@dataclass(frozen=True, slots=True)
class Week:
    """A week of the course; ``minutes`` and ``outings`` are empty without walks."""

    head: str
    dates: str
    minutes: str
    outings: str


@dataclass(frozen=True, slots=True)
class Fridge:
    """The page's words. ``days`` are those with boxes: number since surgery, and date."""

    lang: Lang
    patient: str
    about: str
    phones: tuple[Phone, Phone]
    days: tuple[tuple[int, date], ...]
    rows: tuple[Row, ...]
    milestones: tuple[Milestone, ...]
    weeks_head: str
    weeks: tuple[Week, ...]
    footer: str


class Keeps(Shape):
    """Says what is held back of a patient's plan for now (``bot.standing.Standing``)."""

    def is_held(self, item: Item) -> bool:
        """Whether a line is."""

    def holds_on_medicine(self, med: str) -> Sequence[object]:
        """What holds a medicine back."""


class NothingHeld:
    """A patient of whom nothing is held: the order of one who has not come yet."""

    def is_held(self, item: Item) -> bool:
        """Never."""
        del item
        return False

    def holds_on_medicine(self, med: str) -> Sequence[object]:
        """Nothing."""
        del med
        return ()


def fridge(
    plan: Plan,
    protocol: Protocol,
    lang: Lang,
    clinic: Clinic | None = None,
    keeps: Keeps | None = None,
) -> Fridge:
    """The page for a plan. Without ``clinic`` the phones are lines to fill in. What is held
    stands there as held, with no box to tick.

    Walks are the longest of each week: what is told may keep them shorter.
    """
    coming = prompts(plan, protocol)
    home = (plan.home.date() - plan.surgery).days
    shown = range(home, home + TICKED_DAYS)
    keeps = keeps or NothingHeld()
    timed = [
        *_doses(plan, coming, shown, lang, keeps), *_sessions(plan, coming, shown, lang, keeps)
    ]  # fmt: skip
    timed.sort(key=lambda row: row.when if row.when[0].isdecimal() else "by day")
    rows = [*timed, *_as_needed(plan, lang, keeps)]
    weeks = tuple(_weeks(plan, protocol, lang))
    about = (
        plan.procedure,
        words.SURGERY.say(lang, date=f"{date_words(plan.surgery, lang)} {plan.surgery.year}"),
        plan.clinician,
    )
    return Fridge(
        lang=lang,
        patient=plan.patient,
        about=" · ".join(about),
        phones=_phones(clinic, lang),
        days=tuple((day, plan.surgery + timedelta(days=day)) for day in shown),
        rows=tuple(rows),
        milestones=tuple(_milestones(plan, protocol, lang)),
        weeks_head=_weeks_head(weeks, rows, lang),
        weeks=weeks,
        footer=words.FOOTER.say(lang, clinician=plan.clinician),
    )


def _weeks_head(weeks: Sequence[Week], rows: Sequence[Row], lang: Lang) -> str:
    """What stands over the weeks; their minutes are not for now while walks are held."""
    head = (words.WALK_WEEKS if weeks[0].minutes else words.REST_WEEKS).say(lang)
    on_hold = words.ON_HOLD.say(lang)
    held = any(row.head == words.WALKS.say(lang) and row.rest == on_hold for row in rows)
    return f"{head} · {on_hold}" if held else head


def _phones(clinic: Clinic | None, lang: Lang) -> tuple[Phone, Phone]:
    shut = words.PHONE_SHUT.say(lang)
    if clinic is None:
        emergency = words.EMERGENCY.say(lang)
        return Phone(words.CLINIC.say(lang), ""), Phone(f"{shut}: {emergency}", "")
    return (
        Phone(clinic.name, clinic.phone),
        Phone(f"{shut}: {clinic.emergency_name}", clinic.emergency_phone),
    )


def _held(row: Row, lang: Lang) -> Row:
    """The row of what is held: no box, and no amount that somebody could go by."""
    return Row(row.when, row.head, words.ON_HOLD.say(lang), frozenset())


def _doses(
    plan: Plan, coming: Iterable[Prompt], shown: range, lang: Lang, keeps: Keeps
) -> Iterator[Row]:
    """A row for each medicine and time of day, in the order's own order."""
    days: dict[tuple[str, time], set[int]] = defaultdict(set)
    last: dict[str, date] = {}
    for item in _items(coming):
        if item.med is None or item.slot_at is None:
            continue
        wall = wall_at(plan, item.slot_at)
        days[item.med, wall.time()].add((wall.date() - plan.surgery).days)
        last[item.med] = wall.date()
    for medicine in plan.medicines:
        for (name, at), due in sorted(days.items()):
            if name == medicine.name and due & set(shown):
                rest = _amount(plan, medicine, last[name], shown, lang)
                row = Row(f"{at:%H:%M}", name, rest, frozenset(due))
                yield _held(row, lang) if keeps.holds_on_medicine(name) else row


def _as_needed(plan: Plan, lang: Lang, keeps: Keeps) -> Iterator[Row]:
    """Medicines that nobody is prompted for."""
    for medicine in plan.medicines:
        if medicine.as_needed:
            rest = plain(medicine, plan.hours, lang)
            row = Row(words.IF_NEEDED.say(lang), medicine.name, rest, frozenset())
            yield _held(row, lang) if keeps.holds_on_medicine(medicine.name) else row


def _amount(plan: Plan, medicine: Medicine, last: date, shown: range, lang: Lang) -> str:
    """How much in few words; in more where it is not swallowed."""
    if medicine.route != "mouth":
        return plain(medicine, plan.hours, lang)
    parts = [medicine.amount.say(lang)]
    if medicine.with_food:
        parts.append(words.WITH_FOOD.say(lang))
    if (last - plan.surgery).days > shown[-1]:
        parts.append(words.UNTIL.say(lang, date=short_date(last, lang)))
    return ", ".join(parts)


def _sessions(
    plan: Plan, coming: Iterable[Prompt], shown: range, lang: Lang, keeps: Keeps
) -> Iterator[Row]:
    """Packs, massage, walks, and the cone for the night; each at its commonest time."""
    days: dict[tuple[str, str], set[int]] = defaultdict(set)
    times: dict[tuple[str, str], Counter[time]] = defaultdict(Counter)
    first: dict[tuple[str, str], Item] = {}
    for prompt in coming:
        for item in prompt.items:
            if item.kind != "session" and item.asks != "cone":
                continue
            activity, day, moment = item.id.split(":")
            # Walks and the cone are one row, whichever activity asks for them.
            key = (item.asks, "") if item.asks in ("walk", "cone") else (activity, moment)
            number = int(day.removeprefix("d"))
            if number in shown:
                days[key].add(number)
                times[key][wall_at(plan, prompt.due_at).time()] += 1
                first.setdefault(key, item)
    for key, item in first.items():
        head, rest = _named(item, lang)
        # Walks are asked about once, at night, but done over the day.
        hour = f"{times[key].most_common(1)[0][0]:%H:%M}"
        when = words.BY_DAY.say(lang) if item.asks == "walk" else hour
        row = Row(when, head, rest, frozenset(days[key]))
        yield _held(row, lang) if keeps.is_held(item) else row


def _named(item: Item, lang: Lang) -> tuple[str, str]:
    if item.asks == "walk":
        return words.WALKS.say(lang), words.WALKS_REST.say(lang)
    if item.asks == "cone":
        return words.CONE_ROW.say(lang), words.CONE_ROW_REST.say(lang)
    head, colon, rest = title(item, lang).partition(": ")
    return (head, rest.rstrip(".")) if colon else (head.rstrip("."), "")


def _items(coming: Iterable[Prompt]) -> Iterator[Item]:
    return (item for prompt in coming for item in prompt.items)


def _milestones(plan: Plan, protocol: Protocol, lang: Lang) -> Iterator[Milestone]:
    """What the protocol's spans name: what is worn until when, and the visits."""
    spans = {**protocol.spans, **plan.spans}

    def on(span: str) -> str | None:
        if span not in spans or spans[span] > last_day(plan, protocol):
            return None
        return date_words(plan.surgery + timedelta(days=spans[span]), lang)

    appointment = words.APPOINTMENT.say(lang)
    for span, head in _WORN:
        if day := on(span):
            when = words.AT_LEAST.say(lang, date=day)
            yield Milestone(head.say(lang), when, words.UNTIL_WE_SAY.say(lang))
    for span, head in _VISITS:
        if day := on(span):
            book = on(f"{span}_book")
            more = words.BOOK.say(lang, date=book) if book else ""
            yield Milestone(head.say(lang), words.ABOUT.say(lang, date=day), more, appointment)


def _weeks(plan: Plan, protocol: Protocol, lang: Lang) -> Iterator[Week]:
    """Weeks from surgery; a last one of a single day has nothing of its own to say."""
    walks = plan.walks or protocol.walks
    walked = any(
        activity.asks == "walk" and plan.species in activity.species
        for activity in protocol.activities
    )
    last = last_day(plan, protocol)
    for first in range(0, max(last, 1), WEEK):
        end = min(first + WEEK - 1, last)
        begins, ends = (plan.surgery + timedelta(days=day) for day in (first, end))
        minutes, outings = walks.minutes_on(first), walks.outings
        yield Week(
            head=words.WEEK.say(lang, number=first // WEEK + 1),
            dates=words.span_words(begins, ends, lang),
            minutes=words.MINUTES.say(lang, minutes=minutes) if walked else "",
            outings=words.OUTINGS.say(lang, outings=outings) if walked else "",
        )
