"""Throws that are the same on every machine, for sentences that are put together anew."""

from __future__ import annotations

from collections.abc import Sequence
from zlib import crc32


class Dice:
    """The same throws for the same seed."""

    def __init__(self, seed: int) -> None:
        self._at = seed * 1009

    def of(self, choices: Sequence[str]) -> str:
        """One of them."""
        self._at += 1
        return choices[crc32(f"idle {self._at}".encode()) % len(choices)]

    def below(self, count: int) -> int:
        """A whole number from 0 on."""
        return int(self.of([str(one) for one in range(count)]))
