"""What a question makes of the words of its answer: to a dose, a figure is an hour.

"Gave it 8", "half 7", "le di 8 y media" tell when. A unit, the packet, "too many", "instead"
or "by mistake" tell how many.
"""

from __future__ import annotations

from .clock import clock_at, nearest_past
from .number_words import number_at
from .quantities import HAVE_BEEN, clock_token
from .tables import UNITS
from .token import Token

_NEAR = frozenset(
    "about around nearly almost at by bang on just after before past like roughly approx ish circa "
    "exactly gone a las la eso de como casi cerca tipo y sobre @ time hora hours".split()
)
_AT = frozenset("at a las la about around by @".split())
"""Belongs to the hour."""
_GIVING = frozenset(
    "gave give given giving administered done did popped dosed di dimos dieron dio doy dado dada "
    "dadas dados damos administre lista listo puse pusimos got".split()
)
_TAKING = frozenset(
    "took taken had has swallowed ate eaten tomo trago comio tomada tomado down in".split()
)
_OBJECT = frozenset("it them la lo las los his hers dose dosis one".split())
_WHOM = frozenset("him her le les to himself em".split())
_HOW_MANY = frozenset(
    "of de mas more too extra instead times veces mg ml mls cc x por doses dosis or o and half "
    "and_a_half left are gone missing".split()
)
"""Behind a figure: it counts."""
_AMISS = frozenset(
    "mistake error accident accidentally accidente wrong oops overdose overdosed sobredosis "
    "instead "
    "demas should supposed meant eran tocaba tocaban debia debian equivoque equivocamos confundi "
    "confundimos double doble twice triple extra vez whole entire entero entera not".split()
)
"""In the sentence: something other than the hour is told."""
_FEW = 4
"""So many tablets may be given at one time; more behind "gave him" are an hour."""


def hours_of_doses(tokens: list[Token], now: int | None) -> list[Token]:
    """The tokens with every hour of a dose as a clock time. For the answer to a dose prompt,
    before other quantities are folded."""
    out: list[Token] = []
    start = 0
    for end in range(1, len(tokens) + 1):
        if end == len(tokens) or tokens[end].cut >= 3:
            out.extend(_in_sentence(tokens[start:end], now))
            start = end
    return out


def _in_sentence(tokens: list[Token], now: int | None) -> list[Token]:
    amiss = any(t.word in _AMISS or "<medcontainer>" in t.keys for t in tokens)
    late = any(t.word in _LATE for t in tokens)
    out: list[Token] = []
    index = 0
    while index < len(tokens):
        these = index > 0 and "<allofthem>" in tokens[index - 1].keys
        moved = amiss and late and _instead_of_another(tokens, index)
        these = these or (amiss and not _written(tokens[index].word) and not moved)
        clock = None if these else clock_at(tokens, index)
        if clock and (moved or _is_hour(tokens, index, clock[1], clock[2])):
            value = nearest_past(clock[0], clock[2], now)
            first = index
            while out and out[-1] is tokens[first - 1] and out[-1].word in _AT:
                if tokens[first].cut:
                    break
                out.pop()
                first -= 1
            used = clock[1]
            if amiss:
                used += _not_another(tokens, index + used)
            out.append(clock_token(tokens, first, index - first + used, value))
            index += used
        else:
            out.append(tokens[index])
            index += 1
    return out


def _written(word: str) -> bool:
    """ "9.15", which is an hour even in "9.15 not 8": nothing is given by such figures."""
    hour, _, minutes = word.partition(".")
    if not (hour.isdecimal() and len(minutes) == 2 and minutes.isdecimal()):
        return False
    return _FEW < int(hour) <= 12 and int(minutes) < 60 and minutes != "00"


def _instead_of_another(tokens: list[Token], index: int) -> bool:
    """ "A bit late, 11 instead of 8": two hours of the day, and more than are given at once."""
    value = tokens[index].value
    hour = value is not None and _FEW < value <= 12 and tokens[index].word.isdecimal()
    return hour and _not_another(tokens, index + 1) > 0


_LATE = frozenset("late later overslept tarde retrasada retrasado".split())


def _not_another(tokens: list[Token], at: int) -> int:
    """How many words name the hour that it was not: "not 8", "instead of 8", "rather than at 8"."""
    if at >= len(tokens) or tokens[at].word not in ("not", "no", "instead", "rather", "en"):
        return 0
    end = at + 1
    while end < len(tokens) and tokens[end].word in (
        "of",
        "than",
        "at",
        "vez",
        "lugar",
        "de",
        "las",
    ):
        end += 1
    return end + 1 - at if end < len(tokens) and tokens[end].word.isdecimal() else 0


def _an_amount(tokens: list[Token], index: int, used: int, said: str) -> bool:
    """ "Dos y media", "1.5": so many tablets, where no "at" says an hour."""
    found = number_at(tokens, index)
    if said or not found or found[0] > _FEW or tokens[index - 1].word in ("las", "la", "at"):
        return False
    return found[1] == used and (found[1] > 1 or tokens[index].decimal)


def _is_hour(tokens: list[Token], index: int, used: int, said: str) -> bool:
    after = tokens[index + used] if index + used < len(tokens) else None
    if after and not after.cut and (after.word in _HOW_MANY or "<meds>" in after.keys):
        return False
    if after and after.word in HAVE_BEEN and not said:
        return False  # "las tres dadas"
    if after and UNITS.get(after.word, ("", 1.0))[0] not in ("", "size"):
        return False
    if tokens[index + used - 1].word in ("horas", "hrs") and tokens[index - 1].word != "las":
        return False  # "hace 2 horas" is how long ago
    token = tokens[index]
    value = token.value
    lone = number_at(tokens, index) is not None and said in ("", "24")
    plain = used == 1 and lone and ":" not in token.word and not token.decimal
    at = index - 1
    near = False
    while at >= 0 and tokens[at].word in _NEAR and not tokens[at + 1].cut:
        near = near or tokens[at].word not in ("y", "on", "la", "las", "de", "a")
        at -= 1
    if at < 0:  # "half 7" says when; a lone "8" may say anything
        return not plain and len(tokens) <= used + index + 6
    if not near and _an_amount(tokens, index, used, said):
        return False
    told = [t.word for t in tokens[max(0, at - 3) : at + 1]]
    meds = any("<meds>" in t.keys for t in tokens[max(0, at - 3) : at + 1])
    deed = bool(set(told) & _GIVING)
    if not (deed or meds or set(told) & _TAKING):
        return False
    if not plain or near:
        return True
    if value is None or not 1 <= value <= 12:
        return False
    beside = told[-1] in _OBJECT or (len(told) > 1 and {told[-1], told[-2]} & {"la", "lo", "las"})
    if value <= _FEW:
        return bool(beside) and told[-1] != "them"
    return bool(beside) or ((deed or meds) and not set(told) & _TAKING)
