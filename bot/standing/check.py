"""Whether a file of holds says what its examples say, and whether a case stands behind each."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from datetime import datetime, timedelta
from typing import Final

from bot.model.hold import Hold, encode
from bot.model.ids import EventId
from bot.model.observation import Noted
from bot.model.plan import Medicine, MedicineClass, Plan
from bot.model.text import Text
from bot.model.urgency import Urgency
from bot.protocol.problem import Problem
from bot.triage import RuleBook, triage, urgency
from bot.triage.language import Said
from bot.triage.reach import LONGEST, NOW

from .book import HoldBook
from .holds import Told, holds_after
from .language import SHOWN_MEDICINES, HoldExample, HoldRule

_KINDS: Final[tuple[MedicineClass, ...]] = ("anti-inflammatory", "pain relief")
_EVENT: Final = EventId("example")


def check_holds(
    book: HoldBook, flags: RuleBook, only: Collection[str] | None = None
) -> list[Problem]:
    """What is wrong with the holds, in the order of the file; empty when nothing is.
    ``only`` those of these ids: a clinic's own, where ``book`` holds ours too.

    An error: an example that does not hold what it states, a rule that its examples do not
    try both ways, a red-flag rule that is not there, and a hold that no case would lead
    anyone to release.
    """
    known = {rule.id for rule in flags.file.rules}
    found: list[Problem] = []
    for rule in book.file.holds:
        if only is not None and rule.id not in only:
            continue
        for words in _wrong(rule, book, flags, known):
            place = book.place(rule.id)
            found.append(Problem(book.name, place.line, place.column, f"hold {rule.id}: {words}"))
    return found


def _wrong(rule: HoldRule, book: HoldBook, flags: RuleBook, known: set[str]) -> Iterator[str]:
    for name in rule.findings:
        if name not in known:
            yield f"there is no red-flag rule {name!r}. Write the id of one in {flags.name}."
    matched = silent = False
    for number, example in enumerate(rule.examples, 1):
        holds, level = _tried(example, book, flags)
        mine = any(hold.id.startswith(f"{_EVENT}:{rule.id}:") for hold in holds)
        matched, silent = matched or mine, silent or not mine
        given = sorted({_named(hold) for hold in holds})
        if given != sorted(example.held):
            yield (
                f"example {number} (day {example.day}) should hold {_list(example.held)} but "
                f"holds {_list(given)}. Change the rule or the example."
            )
        elif mine and level < Urgency.next_day:
            yield (
                f"example {number} is held, but no red-flag rule opens a case for it, so nobody "
                f"would release it. Narrow this rule, or add one in {flags.name}."
            )
    if not matched:
        yield "it holds nothing in any of its examples. Add one in which it does."
    if not silent:
        yield "it holds in each of its examples. Add one in which it must not."


def _tried(
    example: HoldExample, book: HoldBook, flags: RuleBook
) -> tuple[tuple[Hold, ...], Urgency]:
    new = [_noted(said, example.day) for said in example.said]
    past = [_noted(said, example.day) for said in example.before]
    findings = triage(new, past, day=example.day, now=NOW, rules=flags, species=example.species)
    told = Told(new, past, findings, example.day, NOW, _EVENT, given=SHOWN_MEDICINES)
    return holds_after(told, _patient(example), book, ()), urgency(findings)


def _noted(said: Said, day: int) -> Noted:
    on = day - int(said.hours_ago // 24) if said.day is None else said.day
    return Noted(said.observation(), NOW - timedelta(hours=said.hours_ago), on)


def _named(hold: Hold) -> str:
    """As examples name it: a single medicine is one of the round's."""
    name = encode(hold.target)
    return "medicines_of_round" if name.startswith("med:") else name


def _patient(example: HoldExample) -> Plan:
    """Any patient will do, as long as the medicines are being given."""
    surgery = NOW.date() - timedelta(days=example.day)
    medicines = tuple(
        Medicine(
            name=name,
            amount=Text(en="one tablet", es="una tableta"),
            kind=kind,
            every_hours=12,
            first_dose=datetime.combine(surgery, datetime.min.time()),
            days=LONGEST,
        )
        for name, kind in zip(SHOWN_MEDICINES, _KINDS, strict=True)
        if kind != example.without
    )
    return Plan(
        patient="an example",
        species=example.species,
        weight_kg=10,
        procedure="an operation",
        surgery=surgery,
        home=datetime.combine(surgery, datetime.min.time()),
        zone="UTC",
        protocol="example",
        clinician="the clinician",
        medicines=medicines,
    )


def _list(names: tuple[str, ...] | list[str]) -> str:
    return ", ".join(names) or "nothing"
