"""Ordinary words that lie one letter from ours and must not be repaired into them."""

from __future__ import annotations

ORDINARY: frozenset[str] = frozenset()
