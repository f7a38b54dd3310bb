"""Which words of a telling name the medicines that were due: by name, form, kind or place in the
list, as all of them, none, so many, the others. Between them stands what is told of them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Final, Literal

from bot.model.reading import Context, Due

from ..lexis import tag
from ..normalise import words_of
from ..number_words import number_at
from ..spelling import distance
from ..tables import CANONICAL, ORDINARY, canonical, word_sets
from ..token import Token
from .words import role_of

SETS: Final = word_sets("named")
"""``lexicon/*/named.txt``."""
Kind = Literal["word", "meds", "all", "none", "some", "rest", "except", "beyond"]
"""``beyond``: another medicine, or more of them than were due."""
ABOUT: Final = frozenset(("meds", "all", "none", "some", "rest"))
"""What is told of something: between two of these stands what is told of one of them."""
_CALLED: Final = {
    word: name.removeprefix("called ").replace("_", " ")
    for name, words in SETS.items() if name.startswith("called ")
    for word in words
}  # fmt: skip
_SHORTEST: Final = 3
_LONG: Final = 8
_TWO: Final = 2
_STOP: Final = 3


@dataclass(frozen=True, slots=True)
class Named:
    """One word of the telling, or several that name one thing. ``cut``: the stop before it;
    ``keys``: its classes in the lexicon; ``start``: its first character in the reply."""

    label: str
    kind: Kind = "word"
    meds: frozenset[str] = frozenset()
    cut: int = 0
    keys: frozenset[str] = frozenset()
    start: int = 0


@dataclass(frozen=True, slots=True)
class Group:
    """Words that are told of together, ``first`` to before ``end``: "carprofen and gaba"."""

    first: int
    end: int
    kind: Kind
    meds: frozenset[str] = frozenset()


def named(text: str, context: Context) -> list[Named]:
    """The words of a telling, each with what it names of those that were due."""
    tokens = words_of(text)
    tag(tokens)
    found = _Reader(text, tokens, context.due)
    return found.all()


def groups(said: Sequence[Named]) -> list[Group]:
    """What is told of, in order; those that a comma or an "and" joins are one."""
    out: list[Group] = []
    at = 0
    while at < len(said):
        one = said[at]
        end = at + 1
        if one.kind == "meds":
            meds, last = set(one.meds), at
            for behind in range(at + 1, len(said)):
                word = said[behind]
                if word.cut >= _STOP:
                    break
                if word.kind == "meds":
                    meds |= word.meds
                    last = behind
                elif word.label not in SETS["link"]:
                    break
            end = last + 1
            out.append(Group(at, end, "meds", frozenset(meds)))
        elif one.kind in ABOUT:
            out.append(Group(at, end, one.kind))
        at = end
    return out


class _Reader:
    """Goes over the words once."""

    def __init__(self, text: str, tokens: list[Token], due: Sequence[Due]) -> None:
        self.text, self.tokens = text, tokens
        self.due = [one.med for one in due]
        self.called = {one.med: one.called for one in due}
        self.forms = {med: _forms(med) for med in self.due}
        self.out: list[Named] = []

    def all(self) -> list[Named]:
        at = 0
        while at < len(self.tokens):
            one, size = self._at(at)
            token = self.tokens[at]
            if one is not None:
                self.out.append(replace(one, cut=token.cut, start=token.start))
            at += size
        return self.out

    def _word(self, at: int) -> str:
        return self.tokens[at].word if 0 <= at < len(self.tokens) else ""

    def _at(self, at: int) -> tuple[Named | None, int]:
        """What the words that begin there name, and how many they are; None: nothing of its own."""
        word = self.tokens[at].word
        med = self._by_name(word)
        if med is not None:
            return Named("<med>", "meds", frozenset((med,))), 1
        if self._beyond(word):
            return Named(word, "beyond"), 1
        return (
            self._number(at) or self._place(at) or self._kind(at) or self._some(at)
            or (self._plain(at), 1)
        )  # fmt: skip

    def _beyond(self, word: str) -> bool:
        """ "Both" where one was due; a medicine that was not."""
        if word in SETS["both"]:
            return len(self.due) < _TWO
        return word not in _CALLED and canonical(word, self.due) is not None

    def _plain(self, at: int) -> Named:
        token = self.tokens[at]
        keys = frozenset(key for key in token.keys if key[0] == "<")
        role = role_of(token.word)
        return Named(token.word, keys=keys | {f"does {role}"} if role else keys)

    # -- by name ----------------------------------------------------------------------------------

    def _by_name(self, word: str) -> str | None:
        if len(word) < _SHORTEST or not word.isalpha() or word in _CALLED:
            return None
        name = canonical(word, self.due)
        if name in self.forms:
            return name
        if word in ORDINARY:
            return None
        for fits in (str.startswith, _slip, _begins_alike):
            near = [
                med for med, forms in self.forms.items() if any(fits(form, word) for form in forms)
            ]
            if len(near) == 1:
                return near[0]
        return None

    # -- by number --------------------------------------------------------------------------------

    def _figure(self, at: int) -> tuple[int, int] | None:
        """A whole number up to twelve there, and how many words it takes."""
        found = number_at(self.tokens, at) if at < len(self.tokens) else None
        if not found or not float(found[0]).is_integer() or not 1 <= found[0] <= 12:
            return None
        return int(found[0]), found[1]

    def _number(self, at: int) -> tuple[Named | None, int] | None:
        due = len(self.due)
        written = self.text[self.tokens[at].start : self.tokens[at].end].split("/")
        if len(written) == _TWO and written[1] == str(due) and written[0].isdecimal() and due > 1:
            some = int(written[0][:2])  # "3/3" of three, and no one
            return (_so_many(some, due), 1) if 0 < some <= due else None
        found = self._figure(at)
        if found is None:
            return None
        number, size = found
        end, behind = at + size, self._word(at + size)
        of = self._of_so_many(end)
        if of is not None and of[0] == due > 1 and number <= due:
            return _so_many(number, due), end + of[1] - at
        if number <= due and behind in SETS["several"] and not self.tokens[end].cut:
            from_top = behind.startswith("primer")
            return self._several(number if from_top else -number), size + 1
        if self.out and self.out[-1].kind == "rest" and not self.tokens[at].cut:
            return None, size  # "the other two"
        if behind in SETS["rest"] and not self.tokens[end].cut:
            return None, size
        if self._is_place(at, end, number):
            return Named("<place>", "meds", frozenset((self.due[number - 1],))), size
        before = self._word(at - 1)
        measured = behind in SETS["unit"] or before in SETS["clock"]
        if number > due and before in SETS["all"]:
            return Named("<number>", "beyond"), size
        if number == due > 1 and not measured:
            return Named("<all>", "all"), size
        return Named(f"<{number}>" if number < due else "<number>"), size

    def _of_so_many(self, at: int) -> tuple[int, int] | None:
        """ "... of three", "... for 3", ".../3": the whole that it is a part of."""
        end = at
        while self._word(end) in SETS["of"] and end < at + 3:
            end += 1
        slash = at < len(self.tokens) and "/" in self.text[
            self.tokens[at - 1].end : self.tokens[at].start
        ]  # fmt: skip
        found = self._figure(end) if end > at or slash else None
        return (found[0], end - at + found[1]) if found else None

    def _is_place(self, at: int, end: int, number: int) -> bool:
        """ "1 and 3 done", "number two": lines of the prompt, in figures."""
        token, before = self.tokens[at], self._word(at - 1)
        if not 1 <= number <= len(self.due) or len(self.due) < 2 or token.decimal:
            return False
        if before in SETS["clock"] - SETS["ahead"] or self._word(end) in SETS["unit"]:
            return False
        if before in SETS["ahead"] and before not in ("the", "la", "el", "no"):
            return True
        if not token.word.isdecimal():
            return False
        listed = [one for one in self.out if one.label not in SETS["link"]]
        goes_on = bool(listed) and listed[-1].label == "<place>" and bool(
            token.cut or self._word(at - 1) in SETS["link"]
        )  # fmt: skip
        follows = self._word(end) in SETS["link"] and self._figure(end + 1) is not None
        begins = at == 0 or bool(token.cut)
        again = begins and any(one.label == "<place>" for one in self.out)
        return goes_on or follows or again

    def _place(self, at: int) -> tuple[Named | None, int] | None:
        """ "The first one", "the first two", "la última"."""
        word, due = self._word(at), len(self.due)
        place = _PLACES.get(word)
        if place is None or due < 2 or abs(place) > due:
            return None
        behind = self._figure(at + 1)
        several = word in SETS["several"]
        if behind and several and behind[0] <= due and self._word(at + 1) not in SETS["one"]:
            return self._several(behind[0] if place > 0 else -behind[0]), 1 + behind[1]
        alone = self._word(at + 1) in SETS["one"] or self._word(at - 1) in ("the", "la", "el")
        if several and not alone:
            return None  # "first i gave ..."
        med = self.due[place - 1 if place > 0 else place]
        return Named("<place>", "meds", frozenset((med,))), 1

    def _several(self, number: int) -> Named:
        meds = self.due[:number] if number > 0 else self.due[number:]
        return Named("<med>", "meds", frozenset(meds))

    # -- by form and kind, and words for some of them ---------------------------------------------

    def _kind(self, at: int) -> tuple[Named | None, int] | None:
        word, size = self._word(at), 1
        if word == "anti" and self._word(at + 1).startswith("inflam"):
            word, size = "inflam", 2
        kind = _CALLED.get(word)
        if kind is None:
            return None
        before = self.out[-1] if self.out and not self.tokens[at].cut else None
        if before is not None and before.label == "<med>":
            return None, size  # "the carprofen tablet"
        meds = frozenset(med for med in self.due if any(kind in one for one in self.called[med]))
        several = word.endswith("s") and word in _CALLED
        if 0 < len(meds) < len(self.due) and (len(meds) == 1 or several):
            return Named("<kind>", "meds", meds), size
        if kind == "drop" and not meds:
            return Named(word, "beyond"), size
        return Named("<noun>"), size

    def _some(self, at: int) -> tuple[Named | None, int] | None:
        word = self._word(at)
        well = at + 1 < len(self.tokens) and self._word(at + 1) in _WELL
        if word in SETS["all"] and well and any(one.kind == "meds" for one in self.out):
            return None  # "cefalexina dada, todo bien"
        if word == "lot" and self._word(at - 1) == "a":
            return None  # "itching a lot"
        if word in SETS["all"] and (word not in SETS["both"] or len(self.due) == _TWO):
            return Named("<all>", "all"), 1
        if word in SETS["none"]:
            return Named(word, "none"), 1
        if word in SETS["rest"]:
            return Named("<rest>", "rest"), 1
        after_all = bool(self.out) and self.out[-1].kind == "all" and word in SETS["but"]
        return (Named("<except>", "except"), 1) if after_all or word in SETS["except"] else None


_WELL: Final = frozenset("good fine well ok okay normal quiet calm bien tranquilo perfecto".split())
_PLACES: Final = {
    word: place
    for place, words in (
        (1, "first 1st primera primero primer primeras primeros top"),
        (2, "second 2nd segunda segundo"), (3, "third 3rd tercera tercero tercer"),
        (4, "fourth 4th cuarta cuarto"), (-1, "last bottom ultima ultimo ultimas ultimos"),
    )
    for word in words.split()
}  # fmt: skip


def _so_many(number: int, due: int) -> Named:
    return Named("<all>", "all") if number == due else Named("<some>", "some")


def _forms(med: str) -> tuple[str, ...]:
    """What the medicine is called in every language that is read."""
    plain = med.casefold().split()[0] if med.split() else med
    generic = CANONICAL.get(plain, plain)
    also = [form for form, name in CANONICAL.items() if name == generic and form.isalpha()]
    return tuple(dict.fromkeys((plain, *also)))


def _slip(form: str, word: str) -> bool:
    if len(word) < 5 or abs(len(form) - len(word)) > 2:
        return False
    return distance(word, form, 2) <= (2 if len(word) >= _LONG else 1)


def _begins_alike(form: str, word: str) -> bool:
    return len(word) > _SHORTEST and form[:_SHORTEST] == word[:_SHORTEST]
