"""Deeds that may have been done, should have been, or nearly were: none that is told.

"Should have given it", "nearly gave it", "casi se la doy": the words of a deed, and nobody says
that it was done. A trouble so told stands: it "might have been given twice".
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from .tables import NUMBERS, word_sets

_SETS: Final = word_sets("unreal")
"""The words that it is read by (``lexicon/*/unreal.txt``)."""
_MODAL = _SETS["modal"]
_HAVE = _SETS["have"]
_OTHERWISE = _SETS["otherwise"]
_NEARLY = _SETS["nearly"]
_DEED = _SETS["deed"]
_PARTICIPLE = _SETS["participle"]
_POSSIBLE = _SETS["possible"]
_BASE = _SETS["base"]
_UNSURE = frozenset(one.replace("_", " ") for one in _SETS["unsure"])
_CLITIC = _SETS["clitic"]


def unreal_from(words: Sequence[str]) -> int | None:
    """The first word of what was not done for all that is told; None where there is none."""
    for at, word in enumerate(words):
        about = at + 1 < len(words) and (words[at + 1].isdecimal() or words[at + 1] in NUMBERS)
        if (word in _OTHERWISE and not about) or " ".join(words[at : at + 2]) in _UNSURE:
            return at
        if word in _POSSIBLE and not _BASE.isdisjoint(words[at + 1 : at + 3]):
            return at
        if word in _MODAL and _perfect(words[at + 1 : at + 5]):
            return at
        if word in _NEARLY:
            deed = at + 1
            while deed < len(words) and words[deed] in _CLITIC:
                deed += 1
            if deed < len(words) and (words[deed] in _DEED or words[deed].endswith("ed")):
                return at
    return None


def _perfect(ahead: Sequence[str]) -> bool:
    """ "(could) have given", "(should) probably have been given", "(might) given", typed so; not
    "(she might) have it on"."""
    if ahead and ahead[0] in _PARTICIPLE:
        return True
    have = next((at for at, word in enumerate(ahead[:2]) if word in _HAVE), None)
    return have is not None and not _PARTICIPLE.isdisjoint(ahead[have + 1 : have + 3])
