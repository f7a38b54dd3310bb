"""Where, in the midst of a clause, the writer begins to ask: whether they may give or do
something, and what turns its words round to ask ("no swelling can he go upstairs yet").

The lexicon's rules of a question hold where a clause begins. Owners ask without a stop.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from .clauses import Clause
from .tables import word_sets
from .token import Token

_SETS: Final = word_sets("leave")
"""The words that it is read by (``lexicon/*/leave.txt``)."""
_MODAL = _SETS["modal"]
_ASKERS = _SETS["askers"]
_NOT_TURNED = _SETS["not_turned"]
"""Before a turned verb: "so can he", "the best that could he"; or a rule of its own asks."""
_DEEDS = _SETS["deeds"]
"""What a household may ask leave to do, in the form that tells no deed."""
_LEAVE = _SETS["leave"]
_TOLD = _SETS["told"]
"""Before "ok to give": it was said, or denied, or is told of the animal."""
_MAY_I = _SETS["may_i"]
_IS_IT = _SETS["is_it"]
_FINE = _SETS["fine"]
_PERMIT = _SETS["permit"]
_CARES = _SETS["cares"]
_GIVING = _SETS["giving"]
"""In this form it is no deed: it was asked, planned or feared."""
_GIVEN = frozenset(("<humandrug>", "<pillword>", "<meds>", "<pillkind>", "<poisonthing>", "<food>"))
_SUPPOSED = _SETS["supposed"]
_CLITICS = _SETS["clitics"]
_DENIED = _SETS["denied"]
"""Before "puedo": it is denied, or hangs on something ("no le puedo dar la pastilla")."""
_KNOW = _SETS["know"]
_REACH = 4
_NEAR = 5


def wanted(before: Sequence[Token], thing: Sequence[Token]) -> bool:
    """Whether the thing is what is to be given, and not what was: "could i give him a baby |
    tylenol", "puedo darle | un paracetamol"."""
    given = any(not token.keys.isdisjoint(_GIVEN) for token in thing)
    return given and any(token.word in _GIVING for token in before[-_NEAR:])


def asks_from(tokens: Sequence[Token], clause: Clause) -> int | None:
    """The word with which the writer begins to ask; None where they do not."""
    start = clause.start - 1 if clause.start else 0
    words = [token.word for token in tokens[start : clause.end]]
    for at in range(clause.start - start, len(words)):
        supposed = at > 0 and words[at - 1] in _SUPPOSED and _i_could(words, at)
        if supposed or _turned(words, at) or _asks_leave(words, at) or _pide_permiso(words, at):
            return start + at
    return None


def opens_asking(said: Sequence[Token]) -> bool:
    """Whether the words begin with the asking: "está bien darle", "ok to give him"."""
    words = [token.word for token in said]
    return _asks_leave(words, 0) or _pide_permiso(words, 0)


def goes_on_asking(tokens: Sequence[Token], clause: Clause) -> bool:
    """Whether a clause behind "and" goes on with the deed that leave was asked for: "puedo
    bañarlo | y sacarlo", and not "puedo bañarlo | y se desmayó"."""
    words = [t.word for t in tokens[clause.start : clause.start + 3] if "<joiner>" not in t.keys]
    return any(word in _CARES or word in _DEEDS for word in words)


def _i_could(words: list[str], at: int) -> bool:
    """ "Do you think | i could give him"."""
    ahead = words[at + 1 : at + 4]
    return (
        words[at] in ("i", "we")
        and ahead[:1] != []
        and ahead[0] in _MODAL
        and not _DEEDS.isdisjoint(ahead)
    )


def _turned(words: list[str], at: int) -> bool:
    """ "Can he", "do i need", "what time is"."""
    here, ahead = words[at], words[at + 1 : at + 3]
    before = words[at - 1] if at else ""
    if not ahead or before in _NOT_TURNED:
        return False
    if here in _MODAL:
        return ahead[0] in _ASKERS and len(ahead) > 1
    if here == "do":
        return ahead[0] in ("i", "we") and len(ahead) > 1
    if here == "what":
        return ahead[0] == "time" and ahead[-1] in ("is", "are", "do", "does", "should", "can")
    if here == "how":
        return ahead[0] in ("long", "often") and ahead[-1] in ("is", "does", "do", "should")
    return here == "que" and before == "a" and ahead[0] == "hora"


def _asks_leave(words: list[str], at: int) -> bool:
    """ "Ok to give", "is it bad if i give": leave to do a deed, and nobody said so."""
    if words[at] not in _LEAVE or not _TOLD.isdisjoint(words[max(0, at - 3) : at]):
        return False
    ahead = words[at + 1 : at + 1 + _REACH]
    if ahead[:1] == ["to"]:
        return not _DEEDS.isdisjoint(ahead[1:3])
    return ahead[:2] in (["if", "i"], ["if", "we"]) and not _DEEDS.isdisjoint(ahead[2:])


def _pide_permiso(words: list[str], at: int) -> bool:
    """ "Puedo darle", "está bien darle", "cuándo lo puedo bañar"."""
    here = words[at]
    first = at
    while first and words[first - 1] in _CLITICS:
        first -= 1
    before = words[first - 1] if first else ""
    deed = next((w for w in words[at + 1 : at + 1 + _REACH] if w not in _CLITICS), "")
    if here in _MAY_I or (here == "puede" and words[at - 1 : at] == ["se"]):
        clitic = first < at
        if before == "si" and first > 1 and words[first - 2] in _KNOW:
            return deed in _CARES
        if before == "cuando":
            return clitic and deed in _CARES
        return before not in _DENIED and deed in _CARES
    if here in _IS_IT and words[at + 1 : at + 2] and words[at + 1] in _FINE:
        deed = next((w for w in words[at + 2 : at + 5] if w not in ("en", "con", "de")), "")
        return before not in _DENIED and deed in _CARES
    return here in _PERMIT and before not in _DENIED and deed in _CARES
