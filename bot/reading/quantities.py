"""Numbers, durations, distances, temperatures, clock times and counts, folded to one token."""

from __future__ import annotations

from bisect import bisect_left

from .clock import clock_at, nearest_past
from .number_words import SMALL, number_at, word_at
from .tables import CANONICAL, HALVES, HUNDREDS, NUMBERS, ONCE, ORDINALS, UNITS, VAGUE
from .token import Token

_AT = frozenset("at a around about by since @ las la until til till approximately circa".split())
HAVE_BEEN = frozenset("dadas dados tomadas tomados puestas".split())
"""Behind a figure they tell how many: "las tres dadas"."""
_NEAR_WORDS = frozenset(
    "about around like roughly approx approximately some como unos unas".split()
)


def _kept(token: Token, used: int) -> frozenset[str]:
    """The classes that a folded quantity keeps: its own, or those of its phrase."""
    if used == 1:
        return token.keys
    return frozenset(key for key, size in (token.sizes or {}).items() if size <= used)


def _kinds(kind: str, value: float) -> frozenset[str]:
    if kind == "number" and 0 < value < 1:
        return frozenset(("<number>", "<partly>"))
    if kind == "number" and 46 <= value <= 200:
        return frozenset(("<number>", "<three>", "<rapidrate>"))
    if kind in ("number", "times") and 3 <= value <= 100:
        return frozenset((f"<{kind}>", "<three>"))
    return frozenset((f"<{kind}>",))


def _make(tokens: list[Token], index: int, used: int, kind: str, value: float) -> Token:
    last = tokens[index + used - 1]
    token = Token(
        "_".join(t.word for t in tokens[index : index + used]),
        tokens[index].start,
        last.end,
        _kinds(kind, value) | _kept(tokens[index], used),
        tokens[index].cut,
        last.asks,
        value,
    )
    token.parts = tuple(t.word for t in tokens[index : index + used])
    return token


def clock_token(tokens: list[Token], index: int, used: int, value: float) -> Token:
    """A clock time of one token, which is not folded again."""
    made = _make(tokens, index, used, "clock", value)
    if used == 1:
        made.keys = frozenset(("<clock>", made.word))
    return made


def body_heat(value: float, unit: str) -> float | None:
    """Degrees Celsius when the figure can be a body temperature, else None."""
    if unit.startswith("f") or (not unit.startswith("c") and value >= 84):
        if not 84 <= value <= 112:
            return None
        return round((value - 32) * 5 / 9, 1)
    return round(value, 2) if 29 <= value <= 44.5 else None


def _heat(tokens: list[Token], index: int, value: float, used: int) -> tuple[float, int] | None:
    """A temperature: with its unit, or a telling figure (105.4, 39.5) with none."""
    unit = ""
    end = index + used
    while (
        word_at(tokens, end) in UNITS
        and UNITS[word_at(tokens, end)][0] == "heat"
        and end < index + used + 3
    ):
        word = word_at(tokens, end)
        unit = word if word[0] in "cf" else unit or "d"
        end += 1
    if (
        unit == "d"
        and word_at(tokens, end) == "y"
        and word_at(tokens, end + 1) in ("medio", "media")
    ):
        value, end = value + 0.5, end + 2
    for ahead in range(end, min(end + 5, len(tokens))):
        if tokens[ahead].word in ("fahrenheit", "celsius"):
            unit = tokens[ahead].word
    following = UNITS.get(word_at(tokens, end), ("", 1.0))[0]
    if word_at(tokens, end) == "in" and tokens[end].keys.isdisjoint(("<size>",)):
        following = ""  # "105.6 in the ear"
    if word_at(tokens, end) == "mi":
        following = ""  # "39.8, mi señora dice": my, and no miles
    if not unit:
        if following or not (29 <= value <= 44 or 84 <= value <= 111):
            return None
        if word_at(tokens, end) == "y" and word_at(tokens, end + 1) in ("medio", "media"):
            value, end = value + 0.5, end + 2
        near = {t.word for t in tokens[max(0, index - 8) : end + 6]}
        telling = tokens[index].decimal or value != int(value)
        told = bool(near & _TEMP_WORDS) or (telling and bool(near & _MEASURED))
        before = tokens[max(0, index - 14) : index]  # "took it as you showed us, it came up 36.5"
        told = told or (telling and any(t.word in _TEMP_WORDS for t in before))
        told = told or _leads(tokens, index, end, value, telling)
        if not (told or (telling and (37 <= value <= 42.9 or 99 <= value <= 108))):
            return None
    if _weather(tokens, index, end):
        return None
    celsius = body_heat(value, unit if unit != "d" else "")
    return (celsius, end - index) if celsius is not None else None


def _leads(tokens: list[Token], index: int, end: int, value: float, telling: bool) -> bool:
    """ "36.4 this morning", "106 even": a figure that opens what is told is a temperature, if
    nothing is weighed."""
    told = word_at(tokens, index - 1) in _READS
    if end >= len(tokens):
        return told and telling and 33 <= value < 37
    if (index and not told) or {t.word for t in tokens[end : end + 8]} & _WEIGHED:
        return False
    if tokens[end].word in _EXACTLY:
        return 38 <= value <= 42 or 99 <= value <= 108
    low = 33 <= value < 37 or 90 <= value < 99
    return telling and low and (told or tokens[end].word in _WHEN_TAKEN)


_EXACTLY = frozenset("even flat dead exactly exact cerrados clavados exactos pelones".split())
_WHEN_TAKEN = frozenset(
    "on in this under just again earlier now today tonight when by rectal rectally ear up bum esta "
    "hoy ahorita en por ahora hace del shivers shivery shivering cold fria frio digital "
    "temblando".split()
)
_READS = frozenset("reads reading read says a checked and".split())
_WEIGHED = frozenset(
    "weigh weighs weighed weight scale scales peso pesa pesamos bascula kilos kg lbs heavy percent "
    "minutes euros dollars pesos km mile miles".split()
)
_WEATHER = frozenset("outside weather sunshine shade garden afuera sombra clima calor sol".split())


def _weather(tokens: list[Token], index: int, end: int) -> bool:
    """ "It's 40 degrees outside", "hace 40 grados": nobody's temperature."""
    near = {t.word for t in tokens[max(0, index - 4) : end + 4]}
    return not near & _TEMP_WORDS and (
        word_at(tokens, index - 1) in ("hace", "hacen", "hizo") or bool(near & _WEATHER)
    )


_MEASURED = frozenset(
    "tome tomamos salio salia marca marco dio daba registro checked took reads reads clocked "
    "frio fria caliente calientita calientito helado helada hot cold warm".split()
)
"""With these a figure with tenths is a temperature, however low."""
_TEMP_WORDS = frozenset(
    "temp temps temperature thermometer fever temperatura termometro fiebre calentura t marca "
    "marco febrile rectal temperatures reading termo tempe".split()
)


def fold_quantities(tokens: list[Token], now: int | None) -> list[Token]:
    """The same tokens with every quantity as one; none reaches from one sentence into the
    next. ``now``: minutes after midnight."""
    out: list[Token] = []
    start = 0
    for end in range(1, len(tokens) + 1):
        if end == len(tokens) or tokens[end].cut >= 3:
            out.extend(_fold_sentence(tokens[start:end], now))
            start = end
    return out


def _fold_sentence(tokens: list[Token], now: int | None) -> list[Token]:
    out: list[Token] = []
    began: list[int] = []
    index = 0
    while index < len(tokens):
        token = tokens[index]
        began.append(index)
        made: tuple[Token, int] | None = None
        if not token.parts and word_at(tokens, index - 1) not in ("number", "numero", "nr"):
            made = _fold(tokens, index, now)
        if made:
            out.append(made[0])
            index += made[1]
        else:
            out.append(token)
            index += 1
    if len(out) < len(tokens):
        _shorten(out, began)
    return out


def _shorten(out: list[Token], began: list[int]) -> None:
    """A phrase that holds a folded quantity ("de una vez") has fewer words now."""
    for place, token in enumerate(out):
        if token.sizes:
            for key, size in token.sizes.items():
                if size > 1:
                    end = bisect_left(began, began[place] + size)
                    token.sizes[key] = max(1, end - place)


_BEGINS = frozenset(
    (
        "x", "times", "por",
        *ONCE, *ORDINALS, *_AT, *HALVES, *HUNDREDS, *NUMBERS, *VAGUE, "noon", "midnight", "midday",
        "mediodia", "medianoche", "quarter", "hora", "hour", "day", "dia", "week", "semana",
    )
)  # fmt: skip
"""Words that a quantity can begin with, figures aside."""


def _fold(tokens: list[Token], index: int, now: int | None) -> tuple[Token, int] | None:
    word = tokens[index].word
    if word not in _BEGINS and tokens[index].value is None and not any(map(str.isdecimal, word)):
        return None
    if word in ONCE:
        return _make(tokens, index, 1, "times", ONCE[word]), 1
    if word in ORDINALS and word_at(tokens, index + 1) in ("time", "vez", "round", "lot"):
        return _make(tokens, index, 2, "times", ORDINALS[word]), 2
    if word in ("x", "times", "por") and index + 1 < len(tokens):
        so_many = number_at(tokens, index + 1)  # "x3", "times three"
        end = index + 1 + (so_many[1] if so_many else 0)
        if so_many and 1 <= so_many[0] <= 20 and word_at(tokens, end) not in (*UNITS, "x"):
            return _make(tokens, index, end - index, "times", so_many[0]), end - index
    if word in _AT or word in ("noon", "midnight", "mediodia", "medianoche"):
        made = _at(tokens, index, now)
        if made:
            return made
    told = word_at(tokens, index + 1) == "oclock"
    if (
        told
        or ":" in word
        or word in ("half", "quarter", "ten", "five", "twenty")
        or word.isdecimal()
    ):
        hour = _plain_clock(tokens, index, now)
        if hour:
            return hour
    if (
        word in ("hora", "hour")
        and word_at(tokens, index + 1) == "y"
        and word_at(tokens, index + 2) == "media"
    ):
        return _make(tokens, index, 3, "minutes", 90.0), 3
    if word in ("day", "dia", "week", "semana") and word_at(tokens, index - 1) not in SMALL:
        half = (word_at(tokens, index + 1), word_at(tokens, index + 2))
        if half in (("y", "medio"), ("y", "media")):
            return _make(tokens, index, 3, "hours", UNITS[word][1] * 1.5), 3
        if half == ("and", "a") and word_at(tokens, index + 3) == "half":
            return _make(tokens, index, 4, "hours", UNITS[word][1] * 1.5), 4
    since = {word_at(tokens, index - 1), word_at(tokens, index - 2), word_at(tokens, index - 3)}
    if word_at(tokens, index - 1) in _NEAR_WORDS | _AT and since & {"since", "desde"}:
        clock = clock_at(tokens, index)
        if clock and word_at(tokens, index + clock[1]) not in UNITS:
            value = nearest_past(clock[0], clock[2], now)
            return _make(tokens, index, clock[1], "clock", value), clock[1]
    found = number_at(tokens, index)
    if not found:
        return None
    value, used = found
    if word in ("a", "an", "un", "una", "unos", "unas", "one", "uno") and used == 1:
        unit = UNITS.get(word_at(tokens, index + 1))
        if not unit or unit[0] == "heat" or len(word_at(tokens, index + 1)) < 3:
            return (_make(tokens, index, 1, "number", 1.0), 1) if word in ("one", "uno") else None
    nxt = word_at(tokens, index + used)
    if nxt in ("to", "or", "a", "o", "and", "y") and index + used + 1 < len(tokens):
        other = number_at(tokens, index + used + 1)  # "10 to 15 minutes"
        if other and word_at(tokens, index + used + 1) not in SMALL:
            after = index + used + 1 + other[1]
            if word_at(tokens, after) in UNITS and other[0] > value:
                value, used = other[0], used + 1 + other[1]
    many = nxt in ("x", "por") and word_at(tokens, index + used + 1) != "favor"
    if many and value <= 20 and not _number_next(tokens, index + used + 1):
        return _make(tokens, index, used + 1, "times", value), used + 1
    heat = _heat(tokens, index, value, used)
    if heat:
        return _make(tokens, index, heat[1], "heat", heat[0]), heat[1]
    skip = 0
    while (
        word_at(tokens, index + used + skip)
        in (
            "more",
            "whole",
            "full",
            "solid",
            "odd",
            "or",
            "so",
            "mas",
            "good",
            "long",
            "de",
            "straight",
        )
        and skip < 2
    ):
        skip += 1
    unit = UNITS.get(word_at(tokens, index + used + skip))
    if unit and unit[0] != "heat":
        kind, factor = unit
        last = word_at(tokens, index + used + skip)
        paws = last == "feet" and value == 4 and word_at(tokens, index + used + skip + 1) in _STAND
        if last == "in" or (last == "m" and value < 3) or paws:
            return _make(tokens, index, used, "number", value), used
        used += skip + 1
        following = (word_at(tokens, index + used), word_at(tokens, index + used + 1))
        if following in (("y", "media"), ("y", "medio")):
            value, used = value + 0.5, used + 2
        elif following == ("and", "a") and word_at(tokens, index + used + 2) in HALVES:
            value, used = value + HALVES[word_at(tokens, index + used + 2)], used + 3
        value *= factor
        if kind == "hours" and factor == 1.0 and value <= 4:
            kind, value = "minutes", value * 60
            more = _fold(tokens, index + used, now) if index + used < len(tokens) else None
            if more and "<minutes>" in more[0].keys:  # "1 hour 30 minutes"
                value, used = value + (more[0].value or 0.0), used + more[1]
        if kind == "seconds":
            kind, value = "minutes", value / 60
        return _make(tokens, index, used, kind, value), used
    if word in HALVES or word in VAGUE:
        return None
    if word in SMALL and used == 1:
        return None
    return _make(tokens, index, used, "number", value), used


_STAND = frozenset("landing land lands planted square squarely flat touching evenly".split())
"""What four feet do: no length."""


def _plain_clock(tokens: list[Token], index: int, now: int | None) -> tuple[Token, int] | None:
    """A clock time without "at": 8:30, 8 pm, ten to nine, a closing "half seven"."""
    clock = clock_at(tokens, index)
    if not clock or UNITS.get(word_at(tokens, index + clock[1]), ("", 1.0))[0] not in ("", "size"):
        return None
    word = tokens[index].word
    half = word == "half" and clock[1] == 2 and _ends(tokens, index + 2)
    told = "oclock" in (word_at(tokens, index + at) for at in range(clock[1]))
    if not (told or ":" in word or clock[2] in ("am", "pm") or clock[1] >= 3 or half):
        return None
    value = nearest_past(clock[0], clock[2], now)
    return _make(tokens, index, clock[1], "clock", value), clock[1]


def _ends(tokens: list[Token], index: int) -> bool:
    return index >= len(tokens) or bool(tokens[index].cut)


def all_of_them(tokens: list[Token], due: int) -> None:
    """ "Ya las tres", where three medicines are due: those, and no hour of the day."""
    for at, token in enumerate(tokens[:-1]):
        so_many = NUMBERS.get(tokens[at + 1].word)
        if (
            token.word == "las"
            and so_many == due > 1
            and word_at(tokens, at - 1) not in _TO_AN_HOUR
        ):
            token.parts = ("las",)  # is not folded with what follows
            token.keys |= {"<allofthem>"}


_TO_AN_HOUR = frozenset("a de son eran desde hasta como casi sobre tipo para".split())


def those_due(tokens: list[Token], due: int) -> None:
    """ "Gave all three", "le di las tres", where three medicines were due: those. Where it is
    not known, as many as are then named: "had three: carprofen, gabapentin and ..."."""
    if any("<medcontainer>" in token.keys for token in tokens):
        return
    for at, token in enumerate(tokens):
        if "<number>" not in token.keys or token.value is None:
            continue
        if (due > 1 and token.value <= due) or token.value == _named_after(tokens, at + 1):
            token.keys = token.keys - {"<three>"}


def _named_after(tokens: list[Token], start: int) -> int:
    """How many medicines are named, one by one, once the clause of a figure has ended."""
    end = next((at for at in range(start, len(tokens)) if tokens[at].cut), len(tokens))
    if any(t.word in CANONICAL for t in tokens[start:end]):
        return 0
    return len({CANONICAL[t.word] for t in tokens[end:] if t.word in CANONICAL})


def _number_next(tokens: list[Token], index: int) -> bool:
    return index < len(tokens) and number_at(tokens, index) is not None


_HANDED = frozenset("gave given give administered di dimos dio dieron".split())
_THEN = frozenset(
    "con y pero hoy this last tonight today yesterday with and but so he she just or ish".split()
)
"""After "gave it about 8": it was an hour, and no count of tablets."""
_FEW = frozenset("dos tres cuatro 2 3 4".split())
"""So many medicines are given at one time."""
_GAVE = frozenset(
    "gave given had took got di dimos dio dieron doy tomo tomaron puse pusimos it him her".split()
)


def _at(tokens: list[Token], index: int, now: int | None) -> tuple[Token, int] | None:
    """ "At eight", "a las ocho", "since about nine last night"."""
    start = index + 1
    word = tokens[index].word
    if word in ("noon", "midnight", "mediodia", "medianoche"):
        start = index
    while word_at(tokens, start) in _NEAR_WORDS and start < index + 3:
        start += 1
    if start >= len(tokens) or (tokens[start].cut >= 3 and start > index):
        return None
    if "<clock>" in tokens[start].keys:
        return None
    before = word_at(tokens, index - 1)
    clock = clock_at(tokens, start)
    if not clock:
        return None
    few = word_at(tokens, start) in _FEW and clock[1] == 1 and not clock[2]
    given = word_at(tokens, start + 1) in HAVE_BEEN
    if word in ("las", "la") and few and (before in _GAVE or given):
        return None  # "ya le di las tres", "las tres dadas": all of them, and no hour
    end = start + clock[1]
    following = word_at(tokens, end)
    if following in UNITS and following not in ("a", "in") and clock[2] == "":
        return None
    if word == "a" and word_at(tokens, start) != "un":
        return None
    loose = word in ("about", "around", "la", "approximately", "circa", "by")
    if (
        loose
        and not (clock[2] or clock[1] > 1)
        and not (word == "la" and word_at(tokens, start) in ("una", "1"))
        and word not in ("around", "by")
        and not (
            word == "about"
            and {before, word_at(tokens, index - 2)} & _HANDED
            and (end == len(tokens) or tokens[end].cut or following in _THEN)
        )
    ):
        return None
    if (
        clock[2] == ""
        and word_at(tokens, start).isdecimal()
        and following in ("percent", "mm", "cm", "of")
    ):
        return None
    value = nearest_past(clock[0], clock[2], now)
    if word in ("since", "desde"):
        return None  # the word stays: how long it has lasted hangs on it
    return _make(tokens, index, end - index, "clock", value), end - index
