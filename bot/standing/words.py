"""Holds in words, for the household and for staff; the words stand in ``flows/words.yaml``."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Final, Protocol

from bot.model.hold import (
    AntiInflammatories,
    Cause,
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
from .standing import Standing

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
            return because.say(lang)
        case FromStaff(words=said):
            key = "hold_why_staff_words" if said else "hold_why_staff"
            return words.say(key, lang, words=said) if said else words.say(key, lang)
        case FromEmergency():
            return words.say("hold_why_emergency", lang)
        case FromDeath():
            return words.say("hold_why_death", lang)


def why(standing: Standing, target: Target, lang: Lang, words: Says) -> str:
    """Why ``target`` is held, every reason once; empty when it is not."""
    holds = standing.holds_on_target(target)
    return _joined((cause_words(hold.cause, lang, words) for hold in holds), lang)


def hold_notice(holds: Sequence[Hold], plan: Plan, lang: Lang, words: Says, phone: str) -> str:
    """What is held, said once to the household: ``phone`` is whom to phone, name and number."""
    what = _joined((target_words(hold.target, lang, words, plan) for hold in holds), lang)
    because = _joined((cause_words(hold.cause, lang, words) for hold in holds), lang)
    return words.say("hold_notice", lang, name=plan.patient, what=what, why=because, phone=phone)


def _joined(parts: Iterable[str], lang: Lang) -> str:
    """Each once: "a, b and c"."""
    each = list(dict.fromkeys(parts))
    return ", ".join(each[:-1]) + _AND[lang] + each[-1] if len(each) > 1 else "".join(each)
