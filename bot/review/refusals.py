"""Whom the pages turn away is told in the log a few times an hour, and then only counted, as in
``bot.service.turned_away``: nobody fills the log by knocking. In memory, so it begins anew."""

from __future__ import annotations

import ipaddress
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Final

from bot.model.chart import Member
from bot.store.review import Refusal
from bot.store.tx import stamp

MOST: Final = 5
"""Refusals of one caller within ``WITHIN`` that are logged one by one."""
CALLERS: Final = 20
"""So many callers are counted each by itself; all others together as one."""
WITHIN: Final = timedelta(hours=1)
ELSEWHERE: Final = "other addresses"


def caller_of(address: str) -> str:
    """By what a caller is measured: an IPv4 address, or the IPv6 /64 (the smallest network that
    one household or server is given; common practice), as whoever has one has all of it."""
    try:
        found = ipaddress.ip_address(address)
    except ValueError:
        return address
    if isinstance(found, ipaddress.IPv4Address):
        return str(found)
    if found.ipv4_mapped is not None:
        return str(found.ipv4_mapped)
    return str(ipaddress.ip_network((int(found), 64), strict=False))


@dataclass(slots=True)
class Refusals:
    """One hour for all, so that what it held can be told when the next begins."""

    _since: datetime | None = None
    _strangers: dict[str, int] = field(default_factory=dict)
    _members: dict[str, int] = field(default_factory=dict)

    def of(
        self, address: str, member: Member | None, why: str, path: str, now: datetime
    ) -> list[Refusal]:
        """What the log is told of one refusal more: itself, what went before, or nothing."""
        lines = self._past(now)
        if member is not None:  # each by itself: they are few, and no flood may hide one
            counted, key = self._members, member.name
            by = key
        else:
            counted, key = self._strangers, caller_of(address)
            by = f"someone at {address}"
            if key not in counted and len(counted) >= CALLERS:
                key = ELSEWHERE
        count = counted[key] = counted.get(key, 0) + 1
        data: dict[str, object] = {"path": path, "address": address}
        if count == MOST:
            why += (
                f"; the {MOST}th from {key} within an hour: more are only counted until it is over"
            )
        if count <= MOST:
            lines.append(Refusal(by, why, data))
        return lines

    def _past(self, now: datetime) -> list[Refusal]:
        """What was only counted in the hour that is over."""
        since = self._since
        if since is not None and since <= now < since + WITHIN:
            return []
        counted = (self._strangers | self._members).items() if since is not None else ()
        lines = [
            Refusal(
                "bot",
                f"refused {count} times from {key} within an hour of {stamp(since)}, "
                f"{MOST} of them told one by one",
                {},
            )
            for key, count in counted
            if since is not None and count > MOST
        ]
        self._since, self._strangers, self._members = now, {}, {}
        return lines
