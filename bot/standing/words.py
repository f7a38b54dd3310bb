"""Holds in words, for the household and for staff; the words stand in ``flows/words.yaml``."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from datetime import datetime
from typing import Final, Protocol

from bot.model.hold import (
    AntiInflammatories,
    ByAnswer,
    ByMouth,
    Cause,
    Everything,
    FromDeath,
    FromEmergency,
    FromFinding,
    FromStaff,
    HeldMedicine,
    Hold,
    Target,
    encode,
)
from bot.model.plan import Plan
from bot.model.text import Lang

from .holds import covered

WORDS: Final = 80
"""Characters of somebody's words in a list of what is held."""
_AND: Final = {"en": " and ", "es": " y "}


class Says(Protocol):
    """Whatever says the words under a key."""

    def say(self, key: str, lang: Lang, **fields: object) -> str: ...


def target_words(target: Target, lang: Lang, words: Says, plan: Plan | None = None) -> str:
    """What is held: "carprofen", "every medicine and anything else by mouth".

    With the plan the anti-inflammatories are called by their names: not every owner knows
    which of the medicines they are.
    """
    if isinstance(target, HeldMedicine):
        return target.med
    if isinstance(target, AntiInflammatories) and plan and (names := covered(target, plan)):
        return _joined(names, lang)
    return words.say(f"hold_what_{encode(target)}", lang)


def cause_words(cause: Cause, lang: Lang, words: Says) -> str:
    """Why it is held, to follow the word "because"."""
    match cause:
        case FromFinding(because=because):
            said = because.say(lang).removesuffix(".")
            return said[:1].lower() + said[1:]  # a rule's reason is a sentence of its own
        case FromStaff():
            return words.say("hold_why_staff", lang)
        case FromEmergency():
            return words.say("hold_why_emergency", lang)
        case FromDeath():
            return words.say("hold_why_death", lang)


def worth_saying(holds: Iterable[Hold]) -> list[Hold]:
    """The holds without those that a wider one says already, and without one that only waits
    for an answer where the same thing waits for a clinician."""
    each = list(holds)
    targets = {hold.target for hold in each}
    lasting = {hold.target for hold in each if not isinstance(hold.ends, ByAnswer)}
    if Everything() in targets:
        each = [hold for hold in each if hold.target == Everything()]
    elif ByMouth() in targets:
        each = [h for h in each if not isinstance(h.target, HeldMedicine | AntiInflammatories)]
    return [h for h in each if not (isinstance(h.ends, ByAnswer) and h.target in lasting)]


def said_by_none(fresh: Sequence[Hold], known: Sequence[Hold]) -> list[Hold]:
    """Of these holds those that no wider one says which is told already and lasts as long."""
    lasting = [hold for hold in known if not isinstance(hold.ends, ByAnswer)]
    wide = [hold for hold in lasting if isinstance(hold.target, Everything | ByMouth)]
    each = [hold for hold in fresh if hold.target not in {one.target for one in wide}]
    again = [hold for hold in fresh if hold not in each]  # once more, for a reason of its own
    said = worth_saying([*wide, *each])
    return [*again, *(hold for hold in each if hold in said)]


def hold_notice(holds: Sequence[Hold], plan: Plan, lang: Lang, words: Says, phone: str) -> str:
    """What is held, said once to the household: ``phone`` is whom to phone, name and number."""
    holds = worth_saying(holds)
    what = _joined((target_words(hold.target, lang, words, plan) for hold in holds), lang)
    because = _joined((cause_words(hold.cause, lang, words) for hold in holds), lang)
    return words.say("hold_notice", lang, name=plan.patient, what=what, why=because, phone=phone)


def held_items(
    holds: Iterable[Hold], plan: Plan, lang: Lang, words: Says, since: Callable[[datetime], str]
) -> list[str]:
    """For staff, each thing that is held once, with since when and why; ``since`` writes a
    moment."""
    each: dict[Target, list[Hold]] = {}
    for hold in worth_saying(holds):
        each.setdefault(hold.target, []).append(hold)
    return [
        words.say(
            "hold_item", lang, what=target_words(target, lang, words, plan),
            at=since(min(hold.since for hold in same)),
            why=_joined((_for_staff(hold.cause, lang, words) for hold in same), lang),
        )
        for target, same in each.items()
    ]  # fmt: skip


def _for_staff(cause: Cause, lang: Lang, words: Says) -> str:
    """Why, with the name and the words of whoever of the practice said so."""
    if not isinstance(cause, FromStaff):
        return cause_words(cause, lang, words)
    return f"{cause.name}: “{cause.words[:WORDS]}”" if cause.words else cause.name


def _joined(parts: Iterable[str], lang: Lang) -> str:
    """Each once: "a, b and c"."""
    each = list(dict.fromkeys(parts))
    return ", ".join(each[:-1]) + _AND[lang] + each[-1] if len(each) > 1 else "".join(each)
