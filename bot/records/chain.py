"""The log as a chain: each entry is sealed by a hash over itself and the one before.

Whoever changes, removes, puts in or moves an entry breaks the chain at that place. What
the chain alone cannot show is that its end was cut off, or that all of it was written
anew from some entry on: for that the hash of the last entry must be kept elsewhere
(every exported record bears it), and compared later (``against``).

The words themselves are not under the hash but a digest of them with a salt: so words
can be erased, as the law may ask, and the chain still holds. Each erasure is an entry of
its own, which bears a digest of what it left in the place of the words; an entry whose
words went without one is a break.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Final

from bot.model.ids import Cause, PatientId

START: Final = "0" * 64
"""What stands for the hash before the first entry."""
ERASED: Final = "erased"
"""The kind of an entry that records an erasure; its data holds ``rows``: entry → digest."""
NOBODY: Final = Cause()
"""An entry of which it is not kept who or what it comes from."""


@dataclass(frozen=True, slots=True)
class Link:
    """One entry as it is stored. ``digest`` is of the words as they were first written,
    with the salt of then; ``salt`` of the words as they are now; ``erased_in`` the entry
    that records their erasure."""

    id: int
    patient: PatientId | None
    at: str
    kind: str
    author: str
    text: str
    data: str
    salt: str
    digest: str
    prev: str
    hash: str
    erased_in: int | None = None
    by: Cause = NOBODY


def digest_of(salt: str, author: str, text: str, data: str, by: Cause = NOBODY) -> str:
    """The digest of an entry's words; ``data`` is its JSON text as stored.

    Who and what it comes from is under it too. An entry with nothing of that, as all from
    before it was kept, has the shorter form; so neither form can pass for the other.
    """
    words: list[object] = [salt, author, text, data]
    return _sha(words if by == NOBODY else [*words, by.event, by.person, by.member])


def seal(prev: str, id: int, patient: PatientId | None, at: str, kind: str, digest: str) -> str:
    """The hash that closes an entry."""
    return _sha([prev, id, patient, at, kind, digest])


def _sha(parts: list[object]) -> str:
    text = json.dumps(parts, ensure_ascii=False, separators=(",", ":"))
    return hashlib.sha256(text.encode("utf-8", "surrogatepass")).hexdigest()


@dataclass(frozen=True, slots=True)
class Break:
    """Where the record does not hold, and how, in words."""

    entry: int
    why: str


@dataclass(slots=True)
class Walk:
    """Goes along the chain, one entry after the other in the order of their numbers."""

    against: str = ""
    entries: int = 0
    erased: int = 0
    head: str = START
    last: int = 0
    breaks: list[Break] = field(default_factory=list)
    anchored: bool = False
    _left: dict[int, tuple[int, str]] = field(default_factory=dict)

    def feed(self, link: Link) -> None:
        """The next entry."""
        self._order(link)
        self._words(link)
        sealed = seal(link.prev, link.id, link.patient, link.at, link.kind, link.digest)
        if sealed != link.hash:
            self._broken(link.id, f"entry {link.id} was changed ({link.kind}, {link.at})")
        if link.kind == ERASED:
            self._settle(link)
        self.entries += 1
        self.head, self.last = link.hash, link.id
        if self.against and link.hash.startswith(self.against):
            self.anchored = True

    def _order(self, link: Link) -> None:
        if link.prev == self.head:
            return
        if not self.entries:
            why = f"entries before {link.id} are missing: the log does not begin with it"
        elif link.id > self.last + 1:
            gone = (
                f"{self.last + 1}"
                if link.id == self.last + 2
                else (f"{self.last + 1} to {link.id - 1}")
            )
            why = f"entry {gone} is missing" if "to" not in gone else f"entries {gone} are missing"
        else:
            why = (
                f"entry {self.last} is not the one that entry {link.id} was written after: "
                "one of them was changed, put in or moved"
            )
        self._broken(link.id, why)

    def _words(self, link: Link) -> None:
        now = digest_of(link.salt, link.author, link.text, link.data, link.by)
        if link.erased_in is None:
            if now != link.digest:
                self._broken(link.id, f"the words of entry {link.id} were changed")
            return
        self.erased += 1
        self._left[link.id] = (link.erased_in, now)

    def _settle(self, link: Link) -> None:
        """What this erasure says it left must be what is there."""
        for entry, digest in _rows(link.data).items():
            where, now = self._left.get(entry, (0, ""))
            if where != link.id:
                continue  # erased once more, later
            del self._left[entry]
            if now != digest:
                self._broken(entry, f"entry {entry} was changed after its erasure ({link.id})")

    def _broken(self, entry: int, why: str) -> None:
        self.breaks.append(Break(entry, why))

    def finish(self) -> tuple[Break, ...]:
        """All breaks, the first entry's first."""
        for entry, (where, _) in self._left.items():
            self._broken(entry, f"the words of entry {entry} are gone, and no entry {where} says "
                                "that they were erased")  # fmt: skip
        self._left.clear()
        if self.against and not self.anchored:
            self._broken(
                self.last + 1,
                f"no entry has the hash {self.against[:16]}…: the log was cut off before it, or "
                "written anew",
            )
        return tuple(sorted(self.breaks, key=lambda one: one.entry))


def _rows(data: str) -> Mapping[int, str]:
    try:
        return {int(entry): digest for entry, digest in json.loads(data)["rows"].items()}
    except (ValueError, KeyError, TypeError, AttributeError):
        return {}
