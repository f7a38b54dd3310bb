"""Seals of the log with a key that the database does not hold.

Whoever may write to the database can write a whole chain anew. They cannot make the seals
that stand in it, an entry each, once a day: each is over the entry before it (and so over
all before that), the hour, and the key.
"""

from __future__ import annotations

import hashlib
import hmac
import json
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Final

from .chain import Break, Link

SEALED: Final = "sealed"
"""The kind of such an entry; its data holds ``mac``."""
A_DAY: Final = timedelta(hours=26)
"""Between two of them, at most, while the bot runs: a day, and what a change of the clocks and
a restart may take."""


def mac(key: str, entry: int, hash: str, at: str) -> str:
    """The seal of ``entry``, which has this hash, made at this hour."""
    text = json.dumps(["slowleash seal", entry, hash, at])
    return hmac.new(key.encode(), text.encode(), hashlib.sha256).hexdigest()


@dataclass(slots=True)
class Keyed:
    """Goes along the chain with a key, or several where it was changed. ``upto`` is the last
    entry that a good seal covers, of ``at``; ``gaps`` are stretches of more than a day that
    only a later seal covers: nobody with the key had looked at them until then."""

    keys: tuple[str, ...]
    found: int = 0
    good: int = 0
    upto: int = 0
    at: str = ""
    last: int = 0
    breaks: list[Break] = field(default_factory=list)
    gaps: list[str] = field(default_factory=list)

    def feed(self, link: Link) -> None:
        """The next entry."""
        self.last = link.id
        if link.kind != SEALED:
            return
        self.found += 1
        if not self.keys:
            return
        said = _mac_of(link.data)
        makes = (mac(key, link.id - 1, link.prev, link.at) for key in self.keys)
        if not any(hmac.compare_digest(said, one) for one in makes):
            why = (
                f"the seal in entry {link.id} is of another key, or what stands before it was "
                "written anew"
            )
            self.breaks.append(Break(link.id, why))
            return
        self._gap(link)
        self.good, self.upto, self.at = self.good + 1, link.id, link.at

    def _gap(self, link: Link) -> None:
        between = link.id - self.upto - 1
        if not self.good or not between:
            return
        if datetime.fromisoformat(link.at) - datetime.fromisoformat(self.at) > A_DAY:
            self.gaps.append(
                f"Entries {self.upto + 1} to {link.id - 1} got no seal with the key for more than "
                f"a day ({self.at[:16]} to {link.at[:16]}): the bot was stopped hard, or ran "
                "without its key, or seals were taken out."
            )

    def finish(self) -> tuple[Break, ...]:
        """All breaks. With a key, a log without any seal is one."""
        if self.keys and self.last and not self.good and not self.breaks:
            self.breaks.append(Break(1, "no entry bears a seal with the key"))
        return tuple(self.breaks)


def _mac_of(data: str) -> str:
    try:
        return str(json.loads(data).get("mac", "")).encode("ascii", "replace").decode()
    except (ValueError, AttributeError):
        return ""
