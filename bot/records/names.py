"""The names of one person, all that they ever had here, and which of them can be taken out of
words that others wrote, so that nothing else is taken out with them."""

from __future__ import annotations

from collections.abc import Collection, Iterator
from dataclasses import dataclass
from typing import Any, Final

from bot.reading import is_word
from bot.reading.normalise import plain

SHORTEST: Final = 3
"""Letters of a name that is looked for within words."""


@dataclass(frozen=True, slots=True)
class Names:
    """``whole`` as they were shown, ``accounts`` as the platform has them (``@…``)."""

    whole: frozenset[str] = frozenset()
    accounts: frozenset[str] = frozenset()

    def in_raw(self, others: Collection[str]) -> tuple[str, ...]:
        """Whatever may lead to them in a raw copy, which nobody needs; not what ``others`` are
        called, too."""
        theirs = self.whole | self.accounts | frozenset(self._parts(others))
        return _forms(theirs)

    def in_words(self, others: Collection[str]) -> tuple[str, ...]:
        """What can only be this person where somebody wrote it: a first name that is a word of
        the language, too (Rosa, Hope), stays there, or a wound would change its colour."""
        whole = {one for one in self.whole if len(one.split()) > 1 and one not in others}
        parts = {one for one in self._parts(others) if not is_word(one)}
        accounts = {one for one in self.accounts if not is_word(one.removeprefix("@"))}
        return _forms(whole | parts | accounts)

    def _parts(self, others: Collection[str]) -> Iterator[str]:
        taken = {plain(word) for one in others for word in one.split()}
        for part in {part for one in self.whole for part in one.split()}:
            if len(part) >= SHORTEST and part.isalpha() and plain(part) not in taken:
                yield part


def names_in(update: Any, number: int) -> Names:
    """How the account ``number`` is called in a raw update: who wrote, or a card of theirs."""
    whole: set[str] = set()
    accounts: set[str] = set()
    for one in _maps(update):
        if number in (one.get("id"), one.get("user_id")):
            parts = [one.get(key) for key in ("first_name", "last_name")]
            whole.add(" ".join(" ".join(p for p in parts if isinstance(p, str)).split()))
            if isinstance(name := one.get("username"), str) and name:
                accounts |= {f"@{name}", name}
    return Names(frozenset(whole - {""}), frozenset(accounts))


def _maps(value: Any) -> Iterator[dict[str, Any]]:
    """Each map in JSON, at any depth."""
    left = [value]
    while left:
        one = left.pop()
        if isinstance(one, dict):
            yield one
            left += one.values()
        elif isinstance(one, list):
            left += one


def _forms(names: Collection[str]) -> tuple[str, ...]:
    """As people write them, the longest first."""
    found = {form for one in names for form in (one, one.lower(), one.upper(), plain(one))}
    return tuple(sorted(found, key=lambda one: (-len(one), one)))
