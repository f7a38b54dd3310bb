"""Was a dose given, by these words? Only where the household gave it and the patient took it.

The reader takes "gave …" for a dose where a dose was asked about. Here the words around it are
looked at once more: a question, a plan, a habit, something that the clinic gave, or something
that is no medicine ("gave him some water") is no dose, and is asked about or answered.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Collection
from enum import Enum, auto

from bot.plan.amount_words import UNITS, WHOLE


class Backing(Enum):
    """What the words around a "given" make of it."""

    given = auto()
    asked = auto()
    not_given = auto()


_MARKS = re.compile(r"[.!?;\n,]|\b(?:and|but|then|y|pero|luego)\b")
_GAVE = re.compile(
    r"\b(?:gave|given|got|dosed|medicated|di|dimos|dio|dieron|dado|dada|dados|dadas)\b"
)
_PAST = re.compile(
    _GAVE.pattern
    + r"|\b(?:had|has|have|took|taken|ate|eaten|swallowed|downed|done|did|didnt?|does|went|put"
    r"|finished"
    r"|administered|already|down|tomo|tomaron|tomad[oa]s?|comio|comieron|trago|puse|puso|pusimos"
    r"|administr\w+|list[oa]s?|hech[oa]s?|ya)\b"
)
_PRESENT = re.compile(
    r"\b(?:gives?|giving|takes?|taking|gets?|getting|da|dan|doy|damos|toma|toman|dando|tomando)\b"
)
_OTHERS = re.compile(
    r"\b(?:you|u|yall|clinic|vets?|doctors?|dr|hospital|pharmacy|usted|ustedes|clinica"
    r"|veterinari\w+|doctora?|farmacia)\b"
    r"(?:\s+(?:guys|all|people|had|have|has|just|already|also|me|nos|le|les|se|lo|la|ya))*\s*$"
)
"""Whoever of the practice stands right before the giving."""
_TO_US_BEFORE = re.compile(
    r"\b(?:nos|me|te|(?:we|i|us)\s+(?:were|was|are|have\s+been))(?:\s+(?:han|ha|had))?\s*$"
)
_TO_US_BEHIND = re.compile(r"^\s*(?:us|me|you)\b")
_WHO = r"(?:i|you|we|he|she|it|they|the|this|that|his|her|any\w+|some\w+)"
_ASKS = re.compile(
    r"^\W*(?:(?:what|which|when|how|why|who|where)\b.{0,40}?\b"
    rf"(?:is|are|do|does|did|should|shall|can|could|may|will|would|was|were|has|have)\s+{_WHO}\b"
    rf"|(?:did|does|do|has|have|was|were|is|are|should|shall|can|could|may|would)\s+{_WHO}\b"
    r"|(?:que|cual|cuales|cuant[oa]s?)\s+(?:medicina|pastilla|remedio|dosis|medicamento)s?\b"
    r"|(?:puedo|podemos|debo|debemos|deberia)\b)"
)
_TOLD_AND_ASKED = re.compile(r"^\W*(?:i|we|just|gave|already)\b")
"""Begins like something told ("gave him his pill, right?"), whatever mark it ends with."""

_PASSED_OVER = frozenset(
    "him her them his hers their the a an my our your to some of le les lo la los las su sus un una"
    " el al de del".split()
)
_MEDICINE = frozenset(
    "medicine medicines med meds medication medications dose doses painkiller painkillers"
    " antibiotic antibiotics antiinflammatory liquid liquids syrup suspension drops prescription"
    " treatment stuff shot medicina medicinas medicamento medicamentos remedio remedios dosis"
    " jarabe liquido suspension gotas antibiotico antibioticos antiinflamatorio analgesico"
    " tratamiento sobre sobres".split()
)
_GOES_ON = frozenset(
    "it em them that this those these all every everything both each one ones rest other others"
    " another half double again at in into on with without after before around about right as for"
    " by from when while during so now just already today tonight earlier late early ago ok okay"
    " fine fully down no not yes last yesterday since only morning evening lunch breakfast"
    " thanks thank also too first second next once twice done and but"
    " todo toda todos todas ambos ambas lo la ya hoy ayer anoche con sin en antes despues hace"
    " cuando para por tarde temprano ahora ahorita otra otro si bien completa completo media"
    " mitad resto solo sola solamente y pero".split()
)
_NUMBERS = frozenset((*WHOLE["en"], *WHOLE["es"]))


def backing(
    text: str, span: tuple[int, int], *, only_asked: bool, names: Collection[str]
) -> Backing:
    """What the clause around ``span`` makes of a dose that was read there. ``only_asked``:
    it was taken for one because a dose was asked about; ``names`` of patient and medicines."""
    plain = plainly(text)
    clause, ends = _clause(plain, span)
    if _ASKS.search(clause) or (ends == "?" and not _TOLD_AND_ASKED.search(clause)):
        return Backing.asked
    if _PRESENT.search(clause) and not _PAST.search(clause):
        return Backing.not_given
    verb = _GAVE.search(clause)
    if verb is None:
        return Backing.given
    before, behind = clause[: verb.start()], clause[verb.end() :]
    if _OTHERS.search(before) or _TO_US_BEFORE.search(before) or _TO_US_BEHIND.search(behind):
        return Backing.not_given
    if only_asked and not _may_be_medicine(behind, names):
        return Backing.not_given
    return Backing.given


def plainly(text: str) -> str:
    """Small letters without accents, each in its place."""
    made = []
    for letter in text:
        small = unicodedata.normalize("NFD", letter.casefold())[:1]
        made.append(small if len(small) == 1 else " ")
    return "".join(made)


def _clause(plain: str, span: tuple[int, int]) -> tuple[str, str]:
    """The words between two marks around ``span``, and the mark that ends them."""
    start, end = 0, len(plain)
    ends = ""
    for mark in _MARKS.finditer(plain):
        if mark.end() <= span[0]:
            start = mark.end()
        elif mark.start() >= span[1]:
            end, ends = mark.start(), mark[0]
            break
    clause = plain[start:end].strip()
    return clause, "?" if clause.endswith("?") else ends


def _may_be_medicine(behind: str, names: Collection[str]) -> bool:
    """Whether the first thing named behind the giving may be a medicine."""
    known = {word for name in names for word in plainly(name).split()}
    words = re.findall(r"[a-z0-9½¼¾']+", behind)
    for word in words:
        if word in _GOES_ON or word in _MEDICINE or _called(word, known):
            return True
        counts = word in UNITS or word in _NUMBERS or word[0].isdecimal() or word[0] in "½¼¾"
        if not counts and word not in _PASSED_OVER:
            return False
    return True


def _called(word: str, known: Collection[str]) -> bool:
    """A name, or the short of one: gaba."""
    return any(word == name or (len(word) > 3 and name.startswith(word)) for name in known)
