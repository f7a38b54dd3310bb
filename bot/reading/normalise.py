"""Text to plain words: case, accents, apostrophes, full-width and other forms folded,
with the way back to the original kept for every character."""

from __future__ import annotations

import re
import unicodedata
from functools import lru_cache

from .dictated import MARKS, with_marks
from .tables import EMOJI, SHORT, TIGHT
from .token import Token

_APOSTROPHES = frozenset("'’‘`´ʼ′＇")
_DASHES = frozenset("-–—‐‑‒−")
_END = frozenset(".!?…\n\r;。！？")
_SOFT = frozenset(',:()[]/–—-"“”«»|~•*')

# Linear: no alternative can match the same characters in two ways.
_PIECE = re.compile(r"\d+(?:[.,:]\d+)*|[^\W\d_]+|[^\w\s]|\n|_")
_AM_PM = re.compile(r"\b([ap])\.\s?m\b\.?")


@lru_cache(maxsize=8192)
def _fold_char(char: str) -> str:
    """One character as plain lower-case text; "" for accents and invisible marks."""
    if char in _APOSTROPHES:
        return "'"
    if char in _DASHES:
        return "-"
    if char in "¼½¾":
        return {"¼": " 1/4", "½": " 1/2", "¾": " 3/4"}[char]
    if char in "°º":
        return "°"
    if char == "×":
        return "x"
    category = unicodedata.category(char)
    if category in ("Mn", "Cf", "Cc", "Me", "Cs", "Co", "Cn") and char not in "\n\r\t":
        return "" if category != "Cc" else " "
    if category == "Nd":
        return str(unicodedata.digit(char))
    folded = unicodedata.normalize("NFKD", char).casefold()
    return "".join(c for c in folded if unicodedata.category(c) != "Mn")


def fold(text: str) -> tuple[str, list[int]]:
    """Plain text, and for each of its characters the code point it came from."""
    if text.isascii():
        return text.lower().replace("`", "'"), list(range(len(text)))
    plain: list[str] = []
    back: list[int] = []
    for index, char in enumerate(text):
        for out in _fold_char(char):
            plain.append(out)
            back.append(index)
    return "".join(plain), back


def plain(word: str) -> str:
    """A word of the lexicon as ``fold`` would give it."""
    if word.isascii() and word.islower() and "'" not in word and "`" not in word:
        return word
    return fold(word)[0].replace("'", "")


REPEATS = 3
"""The same word said more often in a row says nothing more."""


class _Builder:
    """Collects tokens; remembers the boundary that stands before the next one."""

    def __init__(self) -> None:
        self.tokens: list[Token] = []
        self.cut = 3

    def add(self, word: str, start: int, end: int, value: float | None = None) -> None:
        said = self.tokens
        again = self.cut < 2 and len(said) >= REPEATS and said[-1].word == word
        if again and all(t.word == word for t in said[-REPEATS:]):
            said[-1].end = end
            self.cut = 0
            return
        token = Token(word, start, end, cut=self.cut, value=value)
        self.tokens.append(token)
        self.cut = 0

    def bound(self, strength: int) -> None:
        self.cut = max(self.cut, strength)


def number_of(digits: str) -> float:
    """Digits with a decimal point or comma as a number ("39,5" is 39.5; "1,000" is 1000)."""
    if "," in digits and "." not in digits:
        head, _, tail = digits.partition(",")
        digits = head + tail if len(tail) == 3 else f"{head}.{tail}"
    digits = digits.replace(",", "")
    if digits.count(".") > 1:
        digits = digits[: digits.index(".", digits.index(".") + 1)]
    return float(digits[:12])


def words_of(text: str) -> list[Token]:
    """The words, numbers and telling emoji of a reply, in order.

    Short forms ("b4", "xq", "n") are written out; marks of punctuation become the
    boundaries before the words that follow.
    """
    flat, back = fold(text)
    flat = _dictated(flat)
    flat = _AM_PM.sub(lambda m: m.group(1) + "m" + " " * (len(m.group(0)) - 2), flat)
    build = _Builder()
    size = len(flat)
    pieces = list(_PIECE.finditer(flat))
    index = 0
    while index < len(pieces):
        piece = pieces[index].group(0)
        start, end = pieces[index].span()
        index += 1
        first = piece[0]
        if first.isdecimal():
            end, index = _number(build, flat, back, pieces, index, start, end)
        elif first.isalpha():
            while (
                index + 1 < len(pieces)
                and flat[end : end + 1] == "'"
                and pieces[index + 1].start() == end + 1
                and pieces[index + 1].group(0)[0].isalpha()
            ):
                end = pieces[index + 1].end()
                index += 2
            if index < len(pieces) and pieces[index].start() == end and end < size:
                tight = flat[start : pieces[index].end()]
                if tight in TIGHT:
                    end = pieces[index].end()
                    index += 1
            spelt = flat[start:end]
            for part in _APART.get(spelt, (spelt.replace("'", ""),)):
                _word(build, part, back[start], back[end - 1] + 1)
            if spelt.endswith("'s") and len(spelt) > 4 and build.tokens:
                build.tokens[-1].base = spelt[:-2]
        else:
            _mark(build, flat, text, back, piece, start)
    if len(build.tokens) == 1:  # a whole answer of one letter
        only = build.tokens[0]
        only.word = _ONE_LETTER.get(flat.strip(" .!"), only.word)
    return with_marks(build.tokens) if MARKS.search(flat) else build.tokens


def _dictated(flat: str) -> str:
    """The text with its marks, where they were spoken: "all good comma walking". In Spanish only
    where there are two and one of them ends it: the words mean more ("que coma", "un punto")."""
    marks = list(_MARKS_ES.finditer(flat)) if flat.rstrip(" .").endswith("punto") else []
    found = [*_MARKS_EN.finditer(flat), *(marks if len(marks) > 1 else [])]
    for one in found:
        sign = "," if one.group(0).startswith("com") else "."
        flat = flat[: one.start()] + sign.ljust(len(one.group(0))) + flat[one.end() :]
    return flat


_MARKS_EN = re.compile(r"\b(?:comma|full stop)\b")
_MARKS_ES = re.compile(
    r"(?<!\bque )(?<!\ben )\bcoma\b"
    r"|(?<!\bun )(?<!\bel )(?<!\bde )(?<!\bal )(?<!\bdel )(?<!\botro )(?<!\bese )(?<!\beste )"
    r"(?<!\bcada )(?<!\bningun )(?<!\balgun )\bpunto\b"
)


_APART = {"we'll": ("we", "will"), "we're": ("we", "are")}
"""What would be another word without its apostrophe."""
_ONE_LETTER = {"y": "yes", "n": "no", "s": "si", "k": "ok", "ya": "yes"}


_CAUSING = frozenset("could can might may will would to did does another root".split())


def _word(build: _Builder, word: str, start: int, end: int) -> None:
    parts = SHORT.get(word, (word,))
    if word == "cause" and any(t.word in _CAUSING for t in build.tokens[-4:]):
        parts = (word,)  # "could it cause a fit", and no "because"
    for part in parts:
        build.add(part, start, end)


def _number(
    build: _Builder,
    flat: str,
    back: list[int],
    pieces: list[re.Match[str]],
    index: int,
    start: int,
    end: int,
) -> tuple[int, int]:
    """A number, or a short form that begins with one ("2day", "2nd")."""
    digits = flat[start:end]
    if index < len(pieces) and pieces[index].start() == end and pieces[index].group(0)[0].isalpha():
        tight = digits + pieces[index].group(0)
        if tight in TIGHT:
            _word(build, tight, back[start], back[pieces[index].end() - 1] + 1)
            return pieces[index].end(), index + 1
    if ":" in digits:
        build.add(digits, back[start], back[end - 1] + 1)
        return end, index
    if (
        index + 1 < len(pieces)
        and pieces[index].group(0) == "/"
        and pieces[index + 1].group(0).isdecimal()
        and digits.isdecimal()
    ):
        below = float(pieces[index + 1].group(0)[:6])
        if below in (2, 3, 4):
            end = pieces[index + 1].end()
            build.add(flat[start:end], back[start], back[end - 1] + 1, float(digits[:6]) / below)
            return end, index + 2
    build.add(digits, back[start], back[end - 1] + 1, number_of(digits))
    build.tokens[-1].decimal = "." in digits or "," in digits
    return end, index


_NUMBER_TWO = re.compile(r"#[12]s?\b")
_ROWS = frozenset(
    "attempt capsule day dose dosis goal meal med meds pastilla photo picture pill round session "
    "tablet try walk week".split()
)


def _ordered(build: _Builder) -> bool:
    """ "Dose #2": the second of a row, and no toilet."""
    return bool(build.tokens) and not build.cut and build.tokens[-1].word in _ROWS


def _mark(build: _Builder, flat: str, text: str, back: list[int], piece: str, start: int) -> None:
    char = text[back[start]]
    if piece in _END:
        if piece == "?" and build.cut and (start == 0 or flat[start - 1].isspace()):
            build.add("?", back[start], back[start] + 1)  # a question mark is the whole sentence
        if piece == "?" and build.tokens:
            build.tokens[-1].asks = True
        build.bound(3)
    elif piece in "°%+#@&½":
        word = {"°": "degrees", "&": "and", "@": "at", "%": "percent"}.get(piece)
        if piece == "#" and _NUMBER_TWO.match(flat, start) and not _ordered(build):
            word = "number"
        if word:
            build.add(word, back[start], back[start] + 1)
    elif char in EMOJI:
        if not (build.tokens and build.tokens[-1].word in ("no", "sin", "zero", "cero")):
            build.bound(1)
        build.add(EMOJI[char], back[start], back[start] + 1)
        build.bound(1)
    elif piece == "-":
        tight = start > 0 and flat[start - 1].isalnum() and flat[start + 1 : start + 2].isalnum()
        build.bound(0 if tight else 1)
    elif piece in _SOFT:
        build.bound(1)
    elif piece == "¿":
        build.bound(3)
