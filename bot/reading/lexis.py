"""The lexicon, compiled once: every word's classes, every rule's index."""

from __future__ import annotations

import gc
from functools import lru_cache
from typing import Final

from .grammar import Compiler, Lexis
from .inflect import forms
from .lexicon_files import LexiconError, files
from .normalise import plain
from .sounds import fronted, spellings
from .spelling import Speller
from .tables import CANONICAL, HUMAN, NUMBERS, ORDINARY
from .token import Token


def _build() -> Lexis:
    collecting = gc.isenabled()
    gc.disable()  # all that is made here stays: looking for rubbish doubles the time
    compiler = Compiler()
    compiler.add_class("humandrug", sorted(HUMAN))
    plain_names = CANONICAL.keys() - HUMAN - ORDINARY
    compiler.add_class("meds", sorted(name for name in plain_names if len(name) > 3))
    compiler.add_class("numberword", [word for word in NUMBERS if len(word) > 3])
    for file in files():
        for name, lines in file.classes.items():
            members = [word for line in lines for word in line.split()]
            try:
                compiler.add_class(name, members, file.folder)
            except ValueError as error:
                place = f"{file.folder}/{file.topic}.txt, class {name}"
                raise LexiconError(place, str(error)) from error
    for file in files():
        for line in file.rules:
            compiler.add_rule(file.topic, line)
    lexis = compiler.finish()
    if collecting:
        gc.enable()
    return lexis


LEXIS: Final = _build()
_CONTENT = [
    word
    for word, keys in LEXIS.words.items()
    if "<function>" not in keys and "<aux>" not in keys and word not in ORDINARY
]
SPELLER: Final = Speller(_CONTENT, LEXIS.stems, ORDINARY)
gc.freeze()  # the lexicon is for good: no collection walks it in the midst of a reply


def _known(word: str) -> frozenset[str] | None:
    """The classes of a word as it stands; None when the lexicon does not hold it."""
    keys = LEXIS.words.get(word)
    found: set[str] = set(keys or ())
    hit = keys is not None
    for size in range(2, len(word) + 1):
        stems = LEXIS.stems.get(word[:size])
        if stems:
            found |= stems
            hit = True
    return frozenset(found | {word}) if hit else None


def is_word(name: str) -> bool:
    """Whether a name is a word of the language, too, as far as we know them."""
    word = plain(name)
    return word in ORDINARY or _known(word) is not None


def _collapsed(word: str, most: int) -> str:
    out: list[str] = []
    for char in word:
        if len(out) < most or any(c != char for c in out[-most:]):
            out.append(char)
    return "".join(out)


def _substituted(word: str, entry: str) -> bool:
    """Another letter stands in place of one: it may be another word altogether."""
    return len(word) == len(entry) and sorted(word) != sorted(entry)


def _of_base(word: str) -> frozenset[str]:
    """The classes of the word that this is a form of ("knees", "despertarla")."""
    bases = (word[:-1],) if word.endswith("s") and len(word) > 3 else ()
    for form in (*bases, *forms(word)):
        keys = LEXIS.words.get(form)
        if keys and form not in ORDINARY:
            return frozenset(key for key in keys if key[0] == "<")
    return frozenset()


@lru_cache(maxsize=16384)
def look_up(word: str) -> tuple[frozenset[str], str, bool]:
    """Classes of a word, the word as understood, and whether its spelling was repaired."""
    if word.endswith("in") and len(word) > 4 and word not in LEXIS.words:
        full = LEXIS.words.get(word + "g")  # "strainin", "nothin": a dropped g
        if full is not None and word not in ORDINARY:
            return (_known(word + "g") or full) | {word}, word + "g", False
    keys = _known(word)
    if keys is not None:
        if not any(key[0] == "<" for key in keys) and word not in ORDINARY:
            keys |= _of_base(word)
        return keys, word, False
    if not word.isalpha() or len(word) > 40:
        return frozenset((word,)), word, False
    for most in (2, 1):  # "soooo", "nooo"
        shorter = _collapsed(word, most)
        if shorter != word and (keys := _known(shorter)) is not None:
            return keys | {word}, shorter, False
    if word.endswith("s") and len(word) > 3 and (keys := _known(word[:-1])) is not None:
        return keys | {word}, word, False
    if word not in ORDINARY:
        meant = fronted(word) if len(word) > 3 else None  # "frew", "mouf"
        if meant is not None and (keys := LEXIS.words.get(meant)) is not None:
            return keys | {word, meant}, meant, False
        for form in forms(word):
            if form not in ORDINARY and (keys := _known(form)) is not None:
                return keys | {word}, word, False
        if 4 <= len(word) <= 12:
            for sound in spellings(word):
                keys = LEXIS.words.get(sound)
                if keys and any(key[0] == "<" for key in keys):
                    return keys | {word, sound}, sound, len(word) < 6
        repaired = SPELLER.repair(word)
        if repaired:
            entry, stem = repaired
            risky = word[0] != entry[0] or (
                not stem and len(word) < 6 and _substituted(word, entry)
            )
            if stem:
                return LEXIS.stems[entry] | {word}, word, risky
            return (_known(entry) or frozenset((entry,))) | {word}, entry, risky
    return frozenset((word,)), word, False


def tag(tokens: list[Token]) -> None:
    """Give every token its keys and, where it was misspelt, the word that was meant."""
    for token in tokens:
        token.keys, word, token.guessed = look_up(token.word)
        if token.base and token.base not in _PRONOUNS:
            token.keys |= look_up(token.base)[0]
        if token.value is None:
            token.word = word


_PRONOUNS = frozenset("that there what here where when who she let it's he".split())
_LITTLE = frozenset("a little tiny lil wee small slight one teeny".split())


_BITTEN = frozenset("me my him her his us the a at into through off on someone it them".split())
_WHOSE = frozenset("his her the a that this other bad front back good left right my".split())
_NAMES_A_BABY = frozenset("como mi el la un pobre nuestro".split())


_HOW_PEED = frozenset("as fine normally ok okay well good loads lots plenty twice normal".split())


_DENIES = frozenset("no ni nunca tampoco".split())
_GERUNDS = ("ndo", "ndose", "ndole", "ndola", "ndolo", "ndolas", "ndolos")


def _doing(tokens: list[Token], index: int) -> bool:
    """Whether a gerund follows at once, and no comma stands before either."""
    if index + 1 == len(tokens) or tokens[index].cut or tokens[index + 1].cut:
        return False
    return tokens[index + 1].word.endswith(_GERUNDS)


def settle_bit(tokens: list[Token]) -> None:
    """ "A bit", "bit sore": nobody was bitten."""
    for index, token in enumerate(tokens):
        before = tokens[index - 1].word if index else ""
        if token.word == "bebe" and before in _NAMES_A_BABY:
            token.keys -= {"<drink>"}
        if token.word == "so" and index + 1 < len(tokens) and tokens[index + 1].word == "much":
            token.keys -= {"<stopneg>"}
        if token.word == "anda" and before in _DENIES and _doing(tokens, index):
            token.keys -= {"<stopneg>"}  # "ya no anda sangrando": denied, and nothing new
        if token.word == "wee" and _adjective(tokens, index, before):
            token.keys -= {"<pee>", "<sign>", "<notwoundblood>"}
            token.keys |= {"<slight>"}
        if token.word in ("pea", "pee") and before in ("chick", "green", "sweet", "frozen"):
            token.keys -= {"<pee>"}  # "a chick pea": a size
        if token.word == "weed" and index + 1 < len(tokens) and tokens[index + 1].word in _HOW_PEED:
            token.keys -= {"<poisonthing>", "<toxin>"}
        if token.word in ("paw", "paws") and before in _WHOSE:
            token.keys -= {"<chew>"}  # "his paw below the bandage"
        if token.word == "fat" and before in _ARE:
            token.keys -= {"<deepword>"}  # "the toes are fat"
        if (before, token.word) in (("like", "ice"), ("como", "hielo")):
            token.keys -= {"<icepack>"}  # "they're like ice": cold, and no pack
        if token.word in ("crap", "shit") and _exclaimed(tokens, index):
            token.keys -= {"<poo>", "<sign>"}
        if token.word != "bit":
            continue
        after = tokens[index + 1] if index + 1 < len(tokens) else None
        alone = index == 0 or token.cut
        if alone and after and not after.cut and after.word not in _BITTEN:
            token.keys -= {"<bite>", "<chew>"}  # "bit whingey today"
        if before not in _LITTLE and after and not after.cut and after.word in _WHOSE_IT_IS:
            token.keys -= {"<slight>"}  # "bit the bag open"
        if before in _LITTLE or (after and (after.word == "of" or "<sign>" in after.keys)):
            token.keys -= {"<bite>", "<chew>"}


_WHOSE_IT_IS = frozenset("the his her my our it me him".split())
_ARE = frozenset("are theyre look so very really feel went gone".split())
_EXCLAIMS = frozenset("oh ah aw holy omg no ok well argh ugh".split())
_TELLERS = frozenset("we i weve ive im".split())
_COLLECTED = frozenset("found picked saw cleaned scooped collected see find got".split())


def _exclaimed(tokens: list[Token], index: int) -> bool:
    """ "Crap we both gave it", "oh shit, I forgot": a curse, and no stool; "crap I picked up"
    is one."""
    after = [t.word for t in tokens[index + 1 : index + 4]]
    if not after or after[0] not in _TELLERS or _COLLECTED & set(after):
        return False
    return not index or bool(tokens[index].cut) or tokens[index - 1].word in _EXCLAIMS


def _adjective(tokens: list[Token], index: int, before: str) -> bool:
    """ "A wee bit stiff", "his wee leg": small, and not the water."""
    if index + 1 >= len(tokens) or tokens[index + 1].cut:
        return False
    after = tokens[index + 1]
    if after.word in ("bit", "while", "lad", "lass", "man", "soul"):
        return True
    if before in ("his", "her") or not index or tokens[index].cut:
        return after.word in ("scab", "lump") or not after.keys.isdisjoint(_OWNED)
    return (
        before in ("a", "the", "our", "my", "that", "this", "wee")
        and after.word
        not in ("outside", "inside", "indoors", "earlier", "please", "there", "though")
        and after.keys.isdisjoint(("<function>", "<aux>", "<adv>", "<pee>", "<good>"))
        and after.keys.isdisjoint(_TIMELY)
    )


_OWNED = frozenset(
    ("<legword>", "<limpword>", "<bodyword>", "<food>", "<patient>", "<coneword>", "<wound>",
     "<walkword>", "<bellyword>", "<bandageword>", "<gumword>", "<openword>", "<lumpword>")
)  # fmt: skip
_TIMELY = frozenset(
    ("<yesterday>", "<lastnight>", "<thismorning>", "<allday>", "<nowword>", "<clock>", "<poo>",
     "<times>", "<number>", "<neg>", "<blood>", "<joiner>")
)  # fmt: skip


CALMING: Final = frozenset(("<unneg>", "<good>", "<samey>", "<denial>"))
"""Phrases of these classes that begin with "no" or "not" deny nothing."""


def mark_phrases(tokens: list[Token]) -> None:
    """Give the first word of every phrase of the lexicon ("number two", "brought up") the
    phrase's classes. At one place the longest phrases count."""
    phrases = LEXIS.phrases
    for index in range(len(tokens) - 1):
        token = tokens[index]
        options = phrases.get((token.word, tokens[index + 1].word))
        if options is None:
            continue
        best = 0
        keys: set[str] = set()
        for words, key in options:
            if len(words) < best:
                break
            if _fits(tokens, index, words):
                best = len(words)
                keys.add(key)
        if not best:
            continue
        if token.inside:
            keys -= {"<ceased>", "<neg>", "<thismorning>", "<ifword>"}
        keys.add("_".join(t.word for t in tokens[index : index + best]))
        token.sizes = dict.fromkeys(keys, best)
        token.keys = token.keys | keys
        if not keys.isdisjoint(CALMING):
            for part in tokens[index : index + best]:
                part.keys -= {"<neg>", "<zero>", "<ceased>"}
                if "<exclaimed>" in keys:
                    part.keys -= {"no"}  # "no manches, se tragó todo"
        if "<samey>" in keys:  # "no better, no worse"
            for part in tokens[index : index + best]:
                part.keys -= {"better", "worse", "mejor", "peor", "<more>", "<fewer>"}
        if "<barely>" in keys:
            for part in tokens[index : index + best]:
                part.keys -= {"<neg>"}
        if "<hello>" in keys or "<thanks>" in keys:
            for part in tokens[index : index + best]:
                part.keys -= {"<good>"}
        for inner in tokens[index + 1 : index + best]:
            inner.inside = True
            inner.cut = 0


def _fits(tokens: list[Token], index: int, words: tuple[str, ...]) -> bool:
    if index + len(words) > len(tokens):
        return False
    for offset in range(1, len(words)):
        token = tokens[index + offset]
        want = words[offset]
        if token.cut > 1 or (token.cut and want != "and"):
            return False
        if want not in (token.word, token.base):
            return False
    return True
