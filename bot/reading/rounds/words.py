"""The words of a telling of a round of doses, as what they do in it (``lexicon/*/round.txt``).

A word that stands in no row ends it: what goes on behind is another statement, or no plain
telling at all."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from typing import Final

from bot.model.reading import Context, Due

from ..clock import clock_at, nearest_past
from ..lexicon_files import rows
from ..lexis import is_word
from ..number_words import number_at, word_at
from ..spelling import distance
from ..tables import ORDINARY, UNITS, canonical, word_sets
from ..token import Token

GIVEN: Final = ("yes", "gave", "took", "ate")
"""``ate`` may be told of a meal, a bowl, a bandage that is in its place as well."""
NOT: Final = ("no", "refused", "yet")
SETS: Final = word_sets("round_words")
"""Words that a telling is read by, each set under its name."""
_LATELY: Final = 360.0
"""An hour that lies further back, in minutes, is one to come, or of another round."""
_LONGEST: Final = 5
_SURE: Final = 6
"""A word of so many letters may have a slip in it."""


class Unclear(Exception):
    """No plain telling of a round."""


class Differs(Unclear):
    """What is told of a medicine is not what an earlier sentence told of it."""


@dataclass(frozen=True, slots=True)
class Atom:
    """What some words do: ``role`` is one of the table's, or med, number, time. ``cut``: the
    strongest stop before it; ``first`` and ``end`` are places of tokens."""

    role: str
    first: int
    end: int
    cut: int = 0
    meds: tuple[str, ...] = ()
    number: float | None = None


def role_of(word: str) -> str | None:
    """What a word by itself does in a telling."""
    return _table().get(word)


@cache
def _table() -> dict[str, str]:
    return {word: role for words, role in rows("round") for word in words.split()}


@cache
def _repaired(word: str) -> str:
    """A word of the table that was meant, where only one is a slip away. What is a word of ours
    already was no slip: "pooped" is not "popped"; only number and gender may differ."""
    if len(word) < _SURE - 1 or not word.isalpha() or word in ORDINARY:
        return word
    known = is_word(word)
    near = [
        one for one in _table()
        if len(one) >= _SURE and one.isalpha() and one[0] == word[0]
        and (_of_one_stem(word, one) if known else distance(word, one, 1) <= 1)
    ]  # fmt: skip
    return near[0] if len({_table()[one] for one in near}) == 1 else word


def _of_one_stem(word: str, other: str) -> bool:
    """ "Sisters" and "sister", "blanco" and "blanca"; what was eaten ("comido") is no food."""
    if word.removesuffix("s") == other.removesuffix("s"):
        return True
    return _table()[other] != "food" and _without_gender(word) == _without_gender(other)


def _without_gender(word: str) -> str:
    stem = word.removesuffix("s")
    return stem[:-1] if stem[-1:] in ("a", "o") else stem


def atoms(tokens: list[Token], context: Context, start: int = 0) -> tuple[list[Atom], int]:
    """What the words do from ``start`` on, and up to where they were understood."""
    out: list[Atom] = []
    at = start
    stop = 0
    while at < len(tokens):
        stop = max(stop, tokens[at].cut if at > start else 0)
        atom = atom_at(tokens, at, context, out)
        if atom is None:
            break
        inner = max((t.cut for t in tokens[at + 1 : atom.end]), default=0)
        if inner >= 3:
            break
        if atom.role not in ("nothing", "head", "manner"):
            out.append(Atom(atom.role, atom.first, atom.end, stop, atom.meds, atom.number))
            stop = 0
        at = atom.end
    return out, at


def atom_at(
    tokens: list[Token], at: int, context: Context, before: Sequence[Atom] = ()
) -> Atom | None:
    """What the words that begin there do; None where they stand in no row."""
    return (
        _ordinal(tokens, at) or _of_the_hour(tokens, at, context)
        or _time(tokens, at, context, before) or _landed(tokens, at, before)
        or _manner(tokens, at) or _spat_again(tokens, at, before) or _worded(tokens, at)
        or _medicine(tokens, at, context) or _number(tokens, at, len(context.due))
    )  # fmt: skip


def _classed(token: Token) -> str | None:
    """What the lexicon's own classes say of a word that the table does not hold."""
    found = (role for key, role in _CLASSES if key in token.keys)
    return next(found, None)


_CLASSES: Final = (
    ("<food>", "food"), ("<hid>", "food"), ("<kin>", "who"), ("<person>", "who"),
    ("<thanks>", "nothing"), ("<hello>", "nothing"),
)  # fmt: skip


def _worded(tokens: list[Token], at: int) -> Atom | None:
    table = _table()
    for size in range(min(_LONGEST, len(tokens) - at), 0, -1):
        if any(t.cut for t in tokens[at + 1 : at + size]):
            continue
        words = [t.word for t in tokens[at : at + size]]
        role = table.get("_".join(words))
        if role is None and size == 1:
            role = table.get(_repaired(words[0])) or _classed(tokens[at])
        if role is None or (size == 1 and role == "at"):
            continue
        if role.isdecimal() or role == "last":
            return _place(tokens, at, at + size, role)
        if role == "did":  # "did all four", and no "did well"
            of = at + size + (word_at(tokens, at + size) in SETS["article"])
            amount = table.get(word_at(tokens, of)) in ("all", "both")
            if of >= len(tokens) or not (amount or number_at(tokens, of)):
                return None
            role = "gave"
        if role == "others" and size == 1 and words[0] in SETS["other"]:
            before = word_at(tokens, at - 1)  # "my other one" may be a dog
            counted = at + 1 < len(tokens) and not tokens[at + 1].cut and (
                number_at(tokens, at + 1) or table.get(tokens[at + 1].word, "").startswith("noun")
            )  # fmt: skip
            if before in SETS["ours"] or not counted:
                return None
        if role == "excuse":
            return _excuse(tokens, at, at + size)
        return Atom(role, at, at + size)
    return None


def _excuse(tokens: list[Token], at: int, end: int) -> Atom | None:
    """ "Blanked on his 8am stuff and": what was late, up to what was done then."""
    for stop in range(end, min(end + _LONGEST, len(tokens))):
        word = word_at(tokens, stop)
        if tokens[stop].cut or word in SETS["then_told"]:
            follows = word in SETS["then_told"]
            return Atom("head", at, stop + follows)
    return None


def _ordinal(tokens: list[Token], at: int) -> Atom | None:
    """ "2nd one", "la 1ra": a figure with letters at it."""
    if not tokens[at].word.isdecimal() or at + 1 >= len(tokens):
        return None
    token, letters = tokens[at], tokens[at + 1]
    if letters.start != token.end or letters.word not in SETS["ordinal"] or len(token.word) > 1:
        return None
    return _place(tokens, at, at + 2, token.word)


def _place(tokens: list[Token], at: int, end: int, role: str) -> Atom | None:
    """ "The first one", "la primera": which line of the prompt. "First" alone may be "at first"."""
    before = word_at(tokens, at - 1)
    one = end < len(tokens) and not tokens[end].cut and (
        tokens[end].word == "one"
        or _table().get(tokens[end].word, "").startswith(("noun", "kind:pill", "kind:tablet"))
    )  # fmt: skip
    listed = "and" in (before, word_at(tokens, end))
    if not one and not listed and before not in ("the", "la", "el"):
        return Atom("tries", at, end) if role == "1" else None
    return Atom("place", at, end + one, number=-1.0 if role == "last" else float(role))


def _medicine(tokens: list[Token], at: int, context: Context) -> Atom | None:
    """A medicine by its name. One that was not due is no part of the round."""
    word = tokens[at].word
    name = canonical(word, context.medicines)
    if name is None and len(word) > _SURE - 2 and word not in ORDINARY:
        near = {one.med for one in context.due if distance(word, one.med.split()[0].casefold()) < 2}
        name = next(iter(near)) if len(near) == 1 else None
    if name not in {one.med for one in context.due}:
        short = {one.med for one in context.due if _shortened(word, one.med)}
        name = next(iter(short)) if len(short) == 1 else None
    if name is None:
        return None
    return Atom("med", at, at + 1, meds=(name or "",))


def _shortened(word: str, med: str) -> bool:
    """ "Traz", "carpro"."""
    return len(word) >= _SHORTEST and word not in ORDINARY and med.casefold().startswith(word)


_SHORTEST: Final = 4


def _number(tokens: list[Token], at: int, due: int) -> Atom | None:
    """So many; "3 for 3", "two of the three": of so many that were due."""
    found = number_at(tokens, at)
    if not found or not float(found[0]).is_integer() or not 1 <= found[0] <= 12:
        return None
    end = at + found[1]
    if word_at(tokens, end) in SETS["tries"] and not tokens[end].cut:
        return Atom("tries", at, end + 1)
    whole = end
    while word_at(tokens, whole) in SETS["out_of"] and not tokens[whole].cut:
        whole += 1
    of = number_at(tokens, whole) if end < whole < len(tokens) else None
    if of and of[0] == due > 1 and found[0] <= due and not tokens[whole].cut:
        end = whole + of[1]
    return Atom("number", at, end, number=found[0])


def _spat_again(tokens: list[Token], at: int, before: Sequence[Atom]) -> Atom | None:
    """ "Spat it out again": refused once more, where nothing was handed over."""
    roles = {one.role for one in before}
    again = tokens[at].word in SETS["once_more"] and not tokens[at].cut
    if again and "refused" in roles and not roles & {*GIVEN, "all"}:
        return Atom("nothing", at, at + 1)
    return None


def _landed(tokens: list[Token], at: int, before: Sequence[Atom]) -> Atom | None:
    """ "Spat it on my slipper", "me la escupió en la cara": where it came to lie."""
    spat = next((one for one in reversed(before) if one.role not in ("tries", "now")), None)
    if (
        spat is None
        or spat.role not in ("refused", "med")
        or tokens[at].word not in SETS["comes_to_lie"]
    ):
        return None
    if not any(one.role == "refused" for one in before):
        return None
    end = at + 1
    while word_at(tokens, end) in SETS["article"] and not tokens[end].cut:
        end += 1
    thing = end > at + 1 and end < len(tokens) and not tokens[end].cut
    if not thing or tokens[end].word in _table() or number_at(tokens, end):
        return None
    return Atom("manner", at, end + 1)


def _of_the_hour(tokens: list[Token], at: int, context: Context) -> Atom | None:
    """ "His 8pm pills", "tonight's", "las de la noche", "lo de las 8": this round by its hour."""
    start, spanish = at, word_at(tokens, at) in ("de", "del")
    if spanish:
        start += 1 + (word_at(tokens, at + 1) in ("la", "las", "el", "esta"))
    if start >= len(tokens) or context.at is None or any(t.cut for t in tokens[at + 1 : start]):
        return None
    half = _HALF_OF_DAY.get(word_at(tokens, start))
    if half is not None:
        end, fits = start + 1, half[0] <= context.at < half[1]
    else:
        found = clock_at(tokens, start)
        if found is None:
            return None
        end = start + found[1]
        fits = (context.at - nearest_past(found[0], found[2], context.at)) % 1440 <= _SAME_ROUND
    ones = end < len(tokens) and tokens[end].word in SETS["ones"]
    named = end < len(tokens) and not tokens[end].cut and (
        ones or _table().get(tokens[end].word, "").startswith(("noun", "kind"))
    )  # fmt: skip
    if not fits or not (spanish or named):
        return None
    if spanish and word_at(tokens, at - 1) not in SETS["those_of"] and not named:
        return None
    if named and tokens[end].word not in SETS["ones"]:
        return Atom("nothing", at, end)
    return Atom("noun", at, end + named)


_HALF_OF_DAY: Final = {
    **dict.fromkeys(SETS["mornings"], (240, 960)),
    **dict.fromkeys(SETS["evenings"], (1020, 1440)),
}
_SAME_ROUND: Final = 600.0


def _manner(tokens: list[Token], at: int) -> Atom | None:
    """ "Hidden in his food", "con crema de cacahuate": with what; "in" alone says that it went."""
    table = _table()
    hid = table.get(tokens[at].word) == "hid"
    if not hid and table.get(tokens[at].word) != "manner" and tokens[at].word != "in":
        return None
    end, fed = at + 1, 0
    while end < len(tokens) and not tokens[end].cut:
        role = table.get(_repaired(tokens[end].word)) or _classed(tokens[end])
        if (
            role not in ("manner", "hid", "food", "nothing")
            and tokens[end].word not in SETS["joint"]
        ):
            break
        end += 1
        if role == "food":
            fed = end
    if fed:
        return Atom("hid" if hid else "manner", at, fed)
    return Atom("manner", at, at + 1) if tokens[at].word not in SETS["inside"] else None


# -- when -----------------------------------------------------------------------------------------


def _time(tokens: list[Token], at: int, context: Context, before: Sequence[Atom]) -> Atom | None:
    """A moment that lies behind: "at 8", "half 8", "hace 20 minutos"; never one to come."""
    ago = _ago(tokens, at)
    if ago is not None and context.at is not None:
        return Atom("time", at, ago[1], number=(context.at - ago[0]) % 1440)
    start = at
    while _table().get(word_at(tokens, start)) == "at" or (
        word_at(tokens, start) in ("a", "la", "las", "de") and start < at + 4
    ):
        start += 1
    said = {t.word for t in tokens[at:start]}
    if start > at and said <= {"la", "las", "de"}:
        return None  # "las tres": the three of them
    found = clock_at(tokens, start) if start < len(tokens) else None
    if found is None:
        return None
    minutes, used, part = found
    if any(t.cut for t in tokens[start + 1 : start + used]):
        return None
    token = tokens[start]
    if word_at(tokens, at - 1) == "las" and start == at:
        return None  # "las tres de la noche"
    figures = token.word.isdecimal() and len(token.word) > 2
    lone = used == 1 and not figures and not part and ":" not in token.word and not token.decimal
    if (lone or token.decimal) and not 5 <= minutes / 60 <= 12 and not said & {"at", "las"}:
        return None
    if lone and not said and (not before or before[-1].role not in (*GIVEN, "med", "place")):
        return None  # "3 given": so many of them
    value = nearest_past(minutes, part, context.at)
    if context.at is not None and (context.at - value) % 1440 > _LATELY:
        return Atom("later", at, start + used)
    return Atom("time", at, start + used, number=value)


def _ago(tokens: list[Token], at: int) -> tuple[float, int] | None:
    """Minutes before now, and where the words end."""
    spanish = word_at(tokens, at) == "hace"
    start = at + spanish
    start += word_at(tokens, start) in SETS["like"]
    found = number_at(tokens, start) if start < len(tokens) else None
    if not found:
        return None
    end = start + found[1]
    unit, size = UNITS.get(word_at(tokens, end), ("", 1.0))
    if unit not in ("minutes", "hours") or not (spanish or word_at(tokens, end + 1) == "ago"):
        return None
    minutes = found[0] * size * (60 if unit == "hours" else 1)
    return (minutes, end + 1 + (not spanish)) if minutes <= _LATELY else None


def of_form(due: Sequence[Due], called: str) -> tuple[str, ...]:
    """The medicines of the round that go by such a word."""
    return tuple(one.med for one in due if called in one.called)
