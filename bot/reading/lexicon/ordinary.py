"""Ordinary words that lie close to ours and must not be repaired into them: plain, coma."""

from __future__ import annotations

from .ordinary_en import WORDS as _ENGLISH
from .ordinary_es import WORDS as _SPANISH

ORDINARY: frozenset[str] = frozenset(_ENGLISH.split()) | frozenset(_SPANISH.split())
