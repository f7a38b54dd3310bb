"""The names of one person, all that they ever had here, and which of them can be taken out of
words that others wrote, so that nothing else is taken out with them."""

from __future__ import annotations

import re
import unicodedata
from collections import defaultdict
from collections.abc import Collection, Iterator
from dataclasses import dataclass
from functools import lru_cache
from typing import Any, Final

from bot.reading import is_word
from bot.reading.normalise import plain

TITLES: Final = frozenset({
    "dr", "dra", "doc", "prof", "mr", "mrs", "ms", "miss", "mx", "sr", "sra", "srta", "don",
    "dona", "vet", "dvm", "cvt", "rvt", "lvt", "rn", "jr", "ii", "iii",
})  # fmt: skip
"""What stands beside a name and is nobody's."""
SHORT: Final = 2
"""Letters of a name that is looked for only where it is written with a capital."""
_NAME_WORD: Final = re.compile(r"[^\W_](?:[^\s@]*[^\W_])?")
_CORE: Final = re.compile(r"[^\W_](?:.*[^\W_])?", re.DOTALL)
_LETTERS: Final = re.compile(r"[^\W\d_]+")
_UNSPACED: Final = re.compile(
    "[\u0e00-\u0eff\u1000-\u109f\u1780-\u17ff\u3005\u3041-\u30ff\u3400-\u9fff\uac00-\ud7a3"
    "\uf900-\ufaff\uff66-\uff9f\U00020000-\U0003ffff]"
)
"""Scripts that put no space between words."""
_MARKS: Final = "[\u0300-\u036f\u200b-\u200f\u2060\ufe00-\ufe0f]*"
_STROKES: Final[dict[str, str]] = {"ł": "l", "ø": "o", "đ": "d", "ı": "i", "ħ": "h", "ŧ": "t"}
_FLATTEN: Final = {
    **{ord(one): base for one, base in _STROKES.items()},
    **dict.fromkeys(
        [*range(0x300, 0x370), *range(0x200B, 0x2010), 0x2060, *range(0xFE00, 0xFE10)], None
    ),
}


@dataclass(frozen=True, slots=True)
class Names:
    """``whole`` as they were shown, ``accounts`` as the platform has them (``@…``)."""

    whole: frozenset[str] = frozenset()
    accounts: frozenset[str] = frozenset()

    def in_raw(self, others: Collection[str]) -> tuple[str, ...]:
        """Whatever may lead to them in a raw copy, which nobody needs; not what ``others`` are
        called, too."""
        return longest_first(self.whole | self.accounts | frozenset(self._parts(others)))

    def in_words(self, others: Collection[str]) -> tuple[str, ...]:
        """What can only be this person where somebody wrote it: a first name that is a word of
        the language, too (Rosa, Hope), stays there, or a wound would change its colour."""
        whole = {one for one in self.whole if len(one.split()) > 1 and one not in others}
        parts = {one for one in self._parts(others) if not _ordinary(one)}
        accounts = {one for one in self.accounts if not is_word(one.removeprefix("@"))}
        return longest_first(whole | parts | accounts)

    def may_be(self, name: str) -> bool:
        """Whether one who is called so elsewhere may be this person: by the first name."""
        firsts = {plain(next(parts_of(one), "")) for one in self.whole}
        return plain(next(parts_of(name), "")) in firsts - {""}

    def _parts(self, others: Collection[str]) -> Iterator[str]:
        taken = {plain(part) for one in others for part in parts_of(one)}
        for part in {part for one in self.whole for part in parts_of(one)}:
            if plain(part) not in taken and plain(part) not in TITLES:
                yield part


def parts_of(name: str) -> Iterator[str]:
    """The words of a name, and what a word is put together of (Anne-Marie, O'Brien, Zoë🐶). One
    letter, or one sign of a script that puts a word into it, is no name of its own."""
    for word in _NAME_WORD.findall(name):
        for part in dict.fromkeys((word, *_LETTERS.findall(word))):
            if sum(map(str.isalpha, part)) >= SHORT:
                yield part


def _ordinary(part: str) -> bool:
    """A word of the language; of one with a hyphen, each half alone says so."""
    return is_word(part) and _LETTERS.fullmatch(part) is not None


@dataclass(frozen=True, slots=True)
class Written:
    """Finds names however they were written: in capitals or not, with accents or without, with
    any sign or none in the place of an apostrophe or a hyphen."""

    pattern: re.Pattern[str]
    shards: tuple[str, ...]

    def may_stand_in(self, text: str) -> bool:
        """A quick look, which says no of most texts."""
        flat = text.lower() if text.isascii() else _flat(text)
        return any(one in flat for one in self.shards)

    def found_in(self, text: str) -> bool:
        """Whether one of them stands there."""
        return self.may_stand_in(text) and self.pattern.search(text) is not None

    def gone(self, text: str, instead: str) -> str:
        """The text with ``instead`` in their place."""
        return self.pattern.sub(lambda _: instead, text) if self.found_in(text) else text


@lru_cache(maxsize=64)
def written(names: tuple[str, ...]) -> Written:
    """What finds these names."""
    ways = [_written(name) for name in names]
    firsts = "".join(sorted({first for _, first in ways}))
    pattern = f"(?=[{firsts}])(?:{'|'.join(way for way, _ in ways)})" if ways else r"(?!)"
    shards = {max((_flat(one) for one in _LETTERS.findall(name)), key=len, default=_flat(name))
              for name in names}  # fmt: skip
    return Written(re.compile(pattern), tuple(sorted(shards)))


def _flat(text: str) -> str:
    return unicodedata.normalize("NFKD", text).casefold().translate(_FLATTEN)


@lru_cache(maxsize=1024)
def _written(name: str) -> tuple[str, str]:
    """A pattern, and with which signs it may begin, as they stand in a class."""
    found = _CORE.search(name)
    if found is None:
        return re.escape(name), re.escape(name[0])
    core, lead, trail = found.group(), name[: found.start()], name[found.end() :]
    before = "" if _UNSPACED.match(core[0]) else r"(?<!\w)"
    after = "" if _UNSPACED.match(core[-1]) else r"(?!\w)"
    ways = {re.escape(core), re.escape(unicodedata.normalize("NFD", core)), _signs(core)}
    beside = [f"(?:{re.escape(one)})?" if one else "" for one in (lead, trail)]
    firsts = re.escape(lead[:1]) + _likes(_bases(core[0])[:1]) + re.escape(core[0])
    middle = "|".join(sorted(ways, key=len, reverse=True))
    return f"{beside[0]}{before}(?:{middle}){after}{beside[1]}", firsts


def _signs(name: str) -> str:
    """Each letter as any that is read like it, and what stands between them as anything."""
    capital = name.isalpha() and len(name) <= SHORT
    out: list[str] = []
    for part in re.split(r"((?:[^\w]|_)+)", unicodedata.normalize("NFC", name)):
        if part and not part[0].isalnum():
            out.append(_between(part, name))
            continue
        for at, letter in enumerate(part):
            if capital and not at and letter.upper() != letter.lower():
                out.append(re.escape(letter.upper()) + _MARKS)
                continue
            cases = {one for one in (letter, letter.upper(), letter.lower()) if len(one) == 1}
            own = re.escape("".join(sorted(cases)))
            like = "".join(f"[{_likes(base)}]" for base in _bases(letter))
            out.append((f"(?:[{own}]|{like})" if like else f"[{own}]") + _MARKS)
    return "".join(out)


def _between(signs: str, name: str) -> str:
    """A hyphen may be left out or be a space; a space may not be left out where words have any,
    and nothing may where what is left would be a word of its own (O'Ral)."""
    closed = _UNSPACED.search(name) is not None
    needed = (signs.isspace() and not closed) or is_word("".join(_LETTERS.findall(name)))
    return r"\W{1,3}" if needed else r"\W{0,3}"


def _bases(letter: str) -> str:
    """A letter without case and accents; of ß two."""
    return "".join(one for one in _flat(letter) if not unicodedata.combining(one))


def _likes(base: str) -> str:
    return re.escape("".join(_alike().get(base, {base})))


@lru_cache(maxsize=1)
def _alike() -> dict[str, set[str]]:
    """Base letter → every letter that is read as it."""
    found: dict[str, set[str]] = defaultdict(set)
    for code in (*range(0x250), *range(0x370, 0x530), *range(0x1E00, 0x2000)):
        if (letter := chr(code)).isalpha() and len(base := _bases(letter)) == 1:
            found[base] |= {letter, base}
    return found


def longest_first(names: Collection[str]) -> tuple[str, ...]:
    """So that no part is taken out of a whole."""
    return tuple(sorted(names, key=lambda one: (-len(one), one)))


def names_in(update: Any, number: int) -> Names:
    """How the account ``number`` is called in a raw update: who wrote, or a card of theirs."""
    whole: set[str] = set()
    accounts: set[str] = set()
    for one in _maps(update):
        if number in (one.get("id"), one.get("user_id")):
            parts = [one.get(key) for key in ("first_name", "last_name")]
            whole.add(" ".join(" ".join(p for p in parts if isinstance(p, str)).split()))
            if isinstance(name := one.get("username"), str) and name:
                accounts |= {f"@{name}", name}
    return Names(frozenset(whole - {""}), frozenset(accounts))


def _maps(value: Any) -> Iterator[dict[str, Any]]:
    """Each map in JSON, at any depth."""
    left = [value]
    while left:
        one = left.pop()
        if isinstance(one, dict):
            yield one
            left += one.values()
        elif isinstance(one, list):
            left += one
