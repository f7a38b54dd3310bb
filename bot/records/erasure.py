"""What goes when an owner asks for erasure, what stays, and why.

A practice must keep the medical record for some years: practice acts of US states ask for
3 to 7, counted from the last visit; here from the last entry of the log
(``retention_years``, default 7). Until then the course, the words and the names in it
stay, and what only served the chat goes: phone number, chat and user ids, raw copies of
messages. After that the words, names and pictures go as well; the animal's course in
figures stays. The practice's own law stands above this.
"""

from __future__ import annotations

import json
import re
import unicodedata
from collections.abc import Collection, Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date, datetime
from functools import cache, lru_cache
from typing import Any, Final

from bot.model.plan import Hours, Plan

from .names import written

GONE: Final = "[erased]"
OWNER: Final = "owner"
"""Stands for the name of anyone at home once names are gone."""
FORMER: Final = "former caregiver"
"""Stands for the name of one person who asked to be erased, while the record is kept."""
MEMBER: Final = "a former member"
"""Stands for the name of one who was of the practice."""
STRANGER: Final = "a stranger"
"""Stands for one who wrote and never joined."""
LOOSE: Final = ("refused", "failed")
"""Entries that are no one's record: who was turned away, and with which words."""
OWN_WORDS: Final = ("said", "picture", "staff", "note")
"""Entries whose text somebody wrote: a name in it may be a word like any other."""
KEPT_DATA: Final[dict[str, tuple[str, ...]]] = {
    "noted": ("observation", "day", "source"),
    "finding": ("rule", "urgency", "matter"),
    "case": ("case", "state"),
    "erased": ("rows", "level"),
}
"""What stays of an entry's data when its words go: figures and our own words only."""


def kept_until(last: datetime, years: int) -> date:
    """The day from which the law (as set by ``retention_years``) no longer asks for it."""
    on = last.date()
    try:
        return on.replace(year=on.year + years)
    except ValueError:  # 29 February
        return on.replace(year=on.year + years, day=28)


@dataclass(frozen=True, slots=True)
class Traces:
    """What leads to a person: ``ids`` (user and chat) → what stands for them afterwards,
    ``phrases`` (a phone number, whole names) → what replaces them, and ``names``, however they
    are written, in whose place ``instead`` stands."""

    ids: dict[int, str]
    phrases: dict[str, str]
    names: tuple[str, ...] = ()
    instead: str = GONE

    def in_text(self, text: str) -> str:
        """Text without the traces; an id only where it stands as a whole number."""
        for number, alias in self.ids.items():
            if str(number) in text:
                text = re.sub(rf"(?<!\d){re.escape(str(number))}(?!\d)", alias, text)
        for phrase, instead in self.phrases.items():
            if _is_phone(phrase):
                text = _phone(phrase).sub(instead, text)
            elif phrase in text:
                text = _whole(phrase).sub(lambda _, to=instead: to, text)  # type: ignore[misc]
        return written(self.names).gone(text, self.instead) if self.names else text

    def in_value(self, value: Any) -> Any:
        """The same through a JSON value; an id as a number becomes 0."""
        if isinstance(value, str):
            return self.in_text(value)
        if isinstance(value, bool) or not isinstance(value, int | list | dict):
            return value
        if isinstance(value, int):
            return 0 if value in self.ids else value
        if isinstance(value, list):
            return [self.in_value(one) for one in value]
        return {self.in_text(key): self.in_value(one) for key, one in value.items()}

    def in_json(self, text: str) -> str:
        """The same through JSON as text; the very same text where there was no trace."""
        value = json.loads(text)
        clean = self.in_value(value)
        return text if clean == value else packed(clean)

    def found_in(self, raw: str) -> bool:
        """Whether raw JSON may hold a trace: a quick look before a close one."""
        if any(str(number) in raw for number in self.ids):
            return True
        if any(
            _phone(phrase).search(raw) if _is_phone(phrase)
            else phrase in raw or json.dumps(phrase)[1:-1] in raw
            for phrase in self.phrases
        ):  # fmt: skip
            return True
        if not self.names:
            return False
        names = written(self.names)
        return ("\\u" in raw or names.may_stand_in(raw)) and any(
            names.found_in(one) for one in _strings(json.loads(raw))
        )


def _strings(value: Any) -> Iterator[str]:
    """Every string in JSON, at any depth."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for key, one in value.items():
            yield key
            yield from _strings(one)
    elif isinstance(value, list):
        for one in value:
            yield from _strings(one)


@lru_cache(maxsize=256)
def _whole(phrase: str) -> re.Pattern[str]:
    """A whole name as it is written, beside which no letter may stand."""
    before, after = (r"(?<!\w)" if phrase[0].isalnum() else "",
                     r"(?!\w)" if phrase[-1].isalnum() else "")  # fmt: skip
    return re.compile(before + re.escape(phrase) + after)


def packed(value: object) -> str:
    """JSON text as the store writes it."""
    return json.dumps(value, ensure_ascii=False, separators=(",", ":"))


def phones(*numbers: str | None) -> dict[str, str]:
    """Phone numbers, which are found however they are written (``_phone``)."""
    return {number: GONE for number in filter(None, numbers) if _is_phone(number)}


def _is_phone(phrase: str) -> bool:
    return sum(map(str.isdecimal, phrase)) > 5 and not any(map(str.isalpha, phrase))


@lru_cache(maxsize=64)
def _phone(number: str) -> re.Pattern[str]:
    """The number with any signs between its digits, with its country's code or without."""
    digits = re.sub(r"\D", "", number)
    last = digits[-9:] if len(digits) > 9 else digits
    between = r"(?:[^\w]|_){0,5}"
    return re.compile(
        r"(?<!\d)(?:\+?[\d ().-]{0,8}?)" + between.join(_written()[one] for one in last) + r"(?!\d)"
    )


@cache
def _written() -> dict[str, str]:
    """Each digit in every script that has one, as a pattern: it takes a while, and is asked for
    where somebody is erased."""
    found = dict.fromkeys("0123456789", "")
    for one in map(chr, range(0x20000)):
        if (value := unicodedata.decimal(one, None)) is not None:
            found[str(value)] += one
    return {digit: f"[{signs}]" for digit, signs in found.items()}


def renamed(value: Any, name: str, instead: str) -> Any:
    """A JSON value in which whole strings that are ``name`` are ``instead``."""
    if isinstance(value, str):
        return instead if value == name else value
    if isinstance(value, list):
        return [renamed(one, name, instead) for one in value]
    if isinstance(value, dict):
        return {key: renamed(one, name, instead) for key, one in value.items()}
    return value


def without_phone(plan: Plan) -> Plan:
    """The plan with no number to phone; all that is medical stays."""
    return plan.model_copy(update={"phone": None})


def without_names(plan: Plan) -> Plan:
    """The plan of an animal with no name, of a household with no hours of its own."""
    gone = {"patient": GONE, "owner": OWNER, "phone": None, "hours": Hours()}
    return plan.model_copy(update=gone)


def wordless(kind: str, author: str, data: str, at_home: Collection[str]) -> tuple[str, str, str]:
    """Author, text and data of a log entry whose words go: staff stay named."""
    keep = KEPT_DATA.get(kind, ())
    told = json.loads(data)
    left = {key: told[key] for key in keep if key in told}
    return (OWNER if author in at_home else author), "", packed(left)


def case_in_figures(body: str) -> str:
    """A case's body with days, rules and urgencies only."""
    entries = json.loads(body).get("entries", [])
    return packed({"entries": [_figures(entry) for entry in entries]})


def hold_in_figures(body: str) -> str:
    """A hold without what staff wrote to it; what is held, since when and by which rule stays."""
    told = json.loads(body)
    if told["cause"].get("words"):
        told["cause"]["words"] = ""
    return packed(told)


def _figures(entry: dict[str, Any]) -> dict[str, Any]:
    findings = [
        {key: finding[key] for key in ("rule", "urgency") if key in finding}
        for finding in entry.get("findings", ())
    ]
    kept: dict[str, Any] = {key: entry[key] for key in ("at", "day", "urgency") if key in entry}
    return {**kept, "by": "", "text": "", "told": "", "by_button": False, "source": "",
            "findings": findings}  # fmt: skip


NUMBER_AT_HOME: Final = "it is the owner's, or of others at home, whom staff phone"


def kept_record(
    patient: Mapping[str, Any], years: int, until: date, today: date
) -> tuple[str, str]:
    """What stays of a record whose words were not asked for, or must be kept, and why."""
    if today >= until:
        return (
            f"the words of {patient['name']}'s record",
            f"only the chat of one person was asked for; `slowleash erase {patient['id']}` erases "
            f"them, since they need be kept no longer (from {until})",
        )
    return (
        f"the medical record of {patient['name']}, with the words and names in it, and its "
        "pictures",
        f"it must be kept for {years} years, until {until} (retention_years "
        "in the settings; local law decides)",
    )


@dataclass(slots=True)
class Tally:
    """What goes, by what it is; and what stays, each with its reason."""

    goes: dict[str, int]
    stays: list[tuple[str, str]]

    def count(self, what: str, n: int) -> None:
        """``n`` more of these go."""
        if n:
            self.goes[what] = self.goes.get(what, 0) + n

    def keep(self, what: str, why: str) -> None:
        """This stays."""
        if (what, why) not in self.stays:
            self.stays.append((what, why))

    def lines(self, done: bool) -> Iterable[str]:
        """As people read it."""
        yield "Erased:" if done else "Would be erased:"
        for what, n in self.goes.items():
            yield f"  {n:>6,}  {what}"
        if not self.goes:
            yield "  nothing: it is gone already"
        yield "Stays:"
        for what, why in self.stays:
            yield f"  {what}"
            yield f"      why: {why}"
