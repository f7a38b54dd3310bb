"""Numbers, durations, distances, temperatures, clock times and counts, folded to one token."""

from __future__ import annotations

from .lexicon.numbers import HALVES, HUNDREDS, NUMBERS, ONCE, TENS, UNITS, VAGUE
from .token import Token

_AT = frozenset("at a around about by since @ las la until til till approximately circa".split())
_NEAR_WORDS = frozenset(
    "about around like roughly approx approximately some como unos unas".split()
)
_SMALL = frozenset(("a", "an", "un", "una"))
_PARTS_OF_DAY = {
    "manana": "am", "madrugada": "am", "tarde": "pm", "noche": "pm", "morning": "am",
    "afternoon": "pm", "evening": "pm", "night": "pm", "tonight": "pm", "last_night": "pm",
    "anoche": "pm", "this_morning": "am", "en_la_manana": "am", "por_la_manana": "am",
    "in_the_morning": "am", "la_manana": "am", "yesterday_evening": "pm",
    "yesterday_morning": "am", "yesterday_afternoon": "pm", "ayer_en_la_noche": "pm",
}  # fmt: skip


def _word(tokens: list[Token], index: int) -> str:
    return tokens[index].word if 0 <= index < len(tokens) else ""


def _number(tokens: list[Token], index: int) -> tuple[float, int] | None:
    """The number that begins at ``index``, and how many tokens it takes."""
    token = tokens[index]
    word = token.word
    if token.value is not None and not token.parts:
        value, used = token.value, 1
    elif word in HALVES:
        used = 1
        while _word(tokens, index + used) in ("a", "an", "of", "de", "an") and used < 3:
            used += 1
        return HALVES[word], used
    elif word in HUNDREDS:
        value, used = HUNDREDS[word], 1
    elif word in NUMBERS:
        value, used = NUMBERS[word], 1
        if word in _SMALL and _word(tokens, index + 1) in ("couple", "few", "par", "dozen"):
            used = 2 + (_word(tokens, index + 2) in ("of", "de"))
            return VAGUE[_word(tokens, index + 1)], used
        if word in _SMALL and _word(tokens, index + 1) in HALVES:
            inner = _number(tokens, index + 1)
            return (inner[0], inner[1] + 1) if inner else None
        if word in _SMALL and _word(tokens, index + 1) in HUNDREDS:
            return HUNDREDS[_word(tokens, index + 1)], 2
        if word in TENS:
            skip = 1 if _word(tokens, index + 1) in ("y", "and") else 0
            below = NUMBERS.get(_word(tokens, index + 1 + skip), 0.0)
            if 1 <= below <= 9 and _word(tokens, index + 1 + skip) not in _SMALL:
                value, used = value + below, 2 + skip
    elif word in VAGUE:
        used = 1 + (_word(tokens, index + 1) in ("of", "de"))
        return VAGUE[word], used
    else:
        return None
    if _word(tokens, index + used) in ("hundred", "thousand") and value < 100:
        value, used = value * HUNDREDS[_word(tokens, index + used)], used + 1
    if value >= 100 and value % 100 == 0 and used <= 3:  # "one hundred and five", "ciento cinco"
        skip = 1 if _word(tokens, index + used) in ("and", "y") else 0
        if index + used + skip < len(tokens) and _word(tokens, index + used + skip) not in _SMALL:
            rest = _number(tokens, index + used + skip)
            if rest and 1 <= rest[0] < 100 and tokens[index + used + skip].value is None:
                value, used = value + rest[0], used + skip + rest[1]
    following = _word(tokens, index + used)
    if following in ("point", "punto", "coma", "con"):
        after = _number(tokens, index + used + 1) if index + used + 1 < len(tokens) else None
        if after and after[0] < 100 and float(after[0]).is_integer() and value >= 30:
            digits = str(int(after[0]))
            return float(f"{int(value)}.{digits}"), used + 1 + after[1]
    if following in ("quarters", "cuartos") and value <= 3:
        used += 1
        while _word(tokens, index + used) in ("of", "de", "an", "a") and used < 4:
            used += 1
        return value * 0.25, used
    if following in ("y", "and"):
        half = _word(tokens, index + used + 1)
        if half in ("medio", "media"):
            return value + 0.5, used + 2
        if half == "a" and _word(tokens, index + used + 2) in HALVES:
            return value + HALVES[_word(tokens, index + used + 2)], used + 3
    return value, used


def _kept(token: Token, used: int) -> frozenset[str]:
    """The classes that a folded quantity keeps: its own, or those of its phrase."""
    if used == 1:
        return token.keys
    return frozenset(key for key, size in (token.sizes or {}).items() if size <= used)


def _make(tokens: list[Token], index: int, used: int, kind: str, value: float) -> Token:
    last = tokens[index + used - 1]
    token = Token(
        "_".join(t.word for t in tokens[index : index + used]),
        tokens[index].start,
        last.end,
        frozenset((f"<{kind}>",)) | _kept(tokens[index], used),
        tokens[index].cut,
        last.asks,
        value,
    )
    token.parts = tuple(t.word for t in tokens[index : index + used])
    return token


def _clock(tokens: list[Token], index: int) -> tuple[float, int, str] | None:
    """Minutes after midnight as said, tokens used, and "am", "pm" or "" when not told."""
    word = _word(tokens, index)
    used = 0
    minutes: float | None = None
    if word in ("noon", "midday", "mediodia"):
        return 720.0, 1, "24"
    if word in ("midnight", "medianoche"):
        return 0.0, 1, "24"
    if (
        word == "un"
        and _word(tokens, index + 1) == "cuarto"
        and _word(tokens, index + 2) in ("para", "pa")
    ):
        start = index + 3 + (_word(tokens, index + 3) in ("las", "la"))
        to = _number(tokens, start) if start < len(tokens) else None
        return (to[0] * 60 - 15, start - index + to[1], "") if to else None
    if word.isdigit() and len(word) in (3, 4) and _word(tokens, index - 1) in ("at", "las"):
        head, tail = word[:-2], word[-2:]
        if int(head) < 24 and int(tail) < 60:
            return float(int(head) * 60 + int(tail)), 1, ""
    if ":" in word:
        head, _, tail = word.partition(":")
        if head.isdigit() and tail[:2].isdigit() and int(head) < 24 and int(tail[:2]) < 60:
            minutes, used = float(int(head) * 60 + int(tail[:2])), 1
    elif word in ("half", "quarter", "ten", "five", "twenty", "a") or word.isdigit():
        minutes, used = _past_or_to(tokens, index)
    if minutes is None:
        found = _number(tokens, index)
        if not found or found[0] > 24 or word in HALVES or word in _SMALL and word != "una":
            return None
        hour, used = found
        if hour != int(hour) and hour - int(hour) not in (0.5, 0.25):
            if not tokens[index].decimal or round(hour * 100 % 100) >= 60:
                return None
            hour = int(hour) + round(hour * 100 % 100) / 60
        minutes = hour * 60.0
        nxt = _word(tokens, index + used)
        if nxt in ("y", "menos") or (nxt in ("thirty", "fifteen", "treinta", "quince")):
            skip = 1 if nxt in ("y", "menos") else 0
            part = _word(tokens, index + used + skip)
            amount = {"cuarto": 15.0, "media": 30.0}.get(part, NUMBERS.get(part))
            if amount:
                minutes += -amount if nxt == "menos" else amount
                used += 1 + skip
    said = ""
    if _word(tokens, index + used) in ("oclock", "horas", "hrs"):
        used += 1
    tail = _word(tokens, index + used)
    if tail in ("am", "pm"):
        said, used = tail, used + 1
    else:
        for step in (1, 2, 3):
            part = _word(tokens, index + used + step - 1)
            if part in _PARTS_OF_DAY and (step > 1 or "_" in part or part in ("anoche", "tonight")):
                said, used = _PARTS_OF_DAY[part], used + step
                break
            if part not in (
                "de",
                "la",
                "in",
                "the",
                "at",
                "por",
                "en",
                "last",
                "this",
                "yesterday",
            ):
                break
    if minutes >= 13 * 60:
        said = "24"
    return (minutes, used, said) if minutes < 1440 else None


def _past_or_to(tokens: list[Token], index: int) -> tuple[float | None, int]:
    """ "Quarter past eight", "ten to nine", "half eight"."""
    start = index + (1 if _word(tokens, index) == "a" else 0)
    word = _word(tokens, start)
    amount = {"half": 30.0, "quarter": 15.0}.get(word, NUMBERS.get(word))
    if word.isdigit():
        amount = float(word[:3])
    if amount is None or amount > 30:
        return None, 0
    link = _word(tokens, start + 1)
    if link in ("past", "after", "to", "til", "till", "before"):
        hour = _number(tokens, start + 2) if start + 2 < len(tokens) else None
        if hour and 1 <= hour[0] <= 12 and _word(tokens, start + 2) not in _SMALL:
            sign = 1 if link in ("past", "after") else -1
            return hour[0] * 60 + sign * amount, start - index + 2 + hour[1]
    if word == "half" and start + 1 < len(tokens):
        hour = _number(tokens, start + 1)
        if hour and 1 <= hour[0] <= 12 and _word(tokens, start + 1) not in (*_SMALL, "one"):
            return hour[0] * 60 + 30, start - index + 1 + hour[1]
    return None, 0


def nearest_past(minutes: float, said: str, now: int | None) -> float:
    """The clock time meant: of morning and evening, the one last past at ``now``."""
    if said == "24":
        return minutes % 1440
    minutes %= 720
    if said == "am":
        return minutes
    if said == "pm":
        return minutes + 720
    if now is None:
        return minutes
    ages = [((now - option) % 1440, option) for option in (minutes, minutes + 720)]
    return min(ages)[1]


def clock_text(minutes: float) -> str:
    """HH:MM."""
    whole = int(minutes) % 1440
    return f"{whole // 60:02d}:{whole % 60:02d}"


def _celsius(value: float, unit: str) -> float | None:
    """Degrees Celsius when the figure can be a body temperature, else None."""
    if unit.startswith("f") or (not unit.startswith("c") and value >= 90):
        if not 90 <= value <= 112:
            return None
        return round((value - 32) * 5 / 9, 1)
    return round(value, 2) if 33 <= value <= 44.5 else None


def _heat(tokens: list[Token], index: int, value: float, used: int) -> tuple[float, int] | None:
    """A temperature: with its unit, or a telling figure (105.4, 39.5) with none."""
    unit = ""
    end = index + used
    while (
        _word(tokens, end) in UNITS
        and UNITS[_word(tokens, end)][0] == "heat"
        and end < index + used + 3
    ):
        word = _word(tokens, end)
        unit = word if word[0] in "cf" else unit or "d"
        end += 1
    if unit == "d" and _word(tokens, end) == "y" and _word(tokens, end + 1) in ("medio", "media"):
        value, end = value + 0.5, end + 2
    for ahead in range(end, min(end + 5, len(tokens))):
        if tokens[ahead].word in ("fahrenheit", "celsius"):
            unit = tokens[ahead].word
    following = UNITS.get(_word(tokens, end), ("", 1.0))[0]
    if not unit:
        if following or not (34 <= value <= 44 or 93 <= value <= 111):
            return None
        near = {t.word for t in tokens[max(0, index - 8) : end + 6]}
        told = bool(near & _TEMP_WORDS)
        telling = tokens[index].decimal or value != int(value)
        if told and not (34 <= value <= 44 or 93 <= value <= 111):
            return None
        if not (told or (telling and (37 <= value <= 42.9 or 99 <= value <= 108))):
            return None
    celsius = _celsius(value, unit if unit != "d" else "")
    return (celsius, end - index) if celsius is not None else None


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
    index = 0
    while index < len(tokens):
        token = tokens[index]
        made: tuple[Token, int] | None = None
        if not token.parts and _word(tokens, index - 1) not in ("number", "numero", "nr"):
            made = _fold(tokens, index, now)
        if made:
            out.append(made[0])
            index += made[1]
        else:
            out.append(token)
            index += 1
    return out


def _fold(tokens: list[Token], index: int, now: int | None) -> tuple[Token, int] | None:
    word = tokens[index].word
    if word in ONCE:
        return _make(tokens, index, 1, "times", ONCE[word]), 1
    if word in _AT or word in ("noon", "midnight", "mediodia", "medianoche"):
        made = _at(tokens, index, now)
        if made:
            return made
    if ":" in word or word in ("half", "quarter", "ten", "five", "twenty") or word.isdigit():
        clock = _clock(tokens, index)
        if clock and (":" in word or clock[2] in ("am", "pm") or clock[1] >= 3):
            if UNITS.get(_word(tokens, index + clock[1]), ("", 1.0))[0] in ("", "size"):
                value = nearest_past(clock[0], clock[2], now)
                return _make(tokens, index, clock[1], "clock", value), clock[1]
    if (
        word in ("hora", "hour")
        and _word(tokens, index + 1) == "y"
        and _word(tokens, index + 2) == "media"
    ):
        return _make(tokens, index, 3, "minutes", 90.0), 3
    since = {_word(tokens, index - 1), _word(tokens, index - 2), _word(tokens, index - 3)}
    if _word(tokens, index - 1) in _NEAR_WORDS | _AT and since & {"since", "desde"}:
        clock = _clock(tokens, index)
        if clock and _word(tokens, index + clock[1]) not in UNITS:
            value = nearest_past(clock[0], clock[2], now)
            return _make(tokens, index, clock[1], "clock", value), clock[1]
    found = _number(tokens, index)
    if not found:
        return None
    value, used = found
    if word in ("a", "an", "un", "una", "unos", "unas", "one", "uno") and used == 1:
        unit = UNITS.get(_word(tokens, index + 1))
        if not unit or unit[0] == "heat" or len(_word(tokens, index + 1)) < 3:
            return (_make(tokens, index, 1, "number", 1.0), 1) if word in ("one", "uno") else None
    nxt = _word(tokens, index + used)
    if nxt in ("to", "or", "a", "o", "and", "y") and index + used + 1 < len(tokens):
        other = _number(tokens, index + used + 1)  # "10 to 15 minutes"
        if other and _word(tokens, index + used + 1) not in _SMALL:
            after = index + used + 1 + other[1]
            if _word(tokens, after) in UNITS and other[0] > value:
                value, used = other[0], used + 1 + other[1]
    heat = _heat(tokens, index, value, used)
    if heat:
        return _make(tokens, index, heat[1], "heat", heat[0]), heat[1]
    skip = 0
    while (
        _word(tokens, index + used + skip)
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
    unit = UNITS.get(_word(tokens, index + used + skip))
    if unit and not (unit[0] == "heat"):
        kind, factor = unit
        last = _word(tokens, index + used + skip)
        if last == "in" or (last == "m" and value < 3):
            return _make(tokens, index, used, "number", value), used
        used += skip + 1
        following = (_word(tokens, index + used), _word(tokens, index + used + 1))
        if following in (("y", "media"), ("y", "medio")):
            value, used = value + 0.5, used + 2
        elif following == ("and", "a") and _word(tokens, index + used + 2) in HALVES:
            value, used = value + HALVES[_word(tokens, index + used + 2)], used + 3
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
    if word in _SMALL and used == 1:
        return None
    return _make(tokens, index, used, "number", value), used


def _at(tokens: list[Token], index: int, now: int | None) -> tuple[Token, int] | None:
    """ "At eight", "a las ocho", "since about nine last night"."""
    start = index + 1
    word = tokens[index].word
    if word in ("noon", "midnight", "mediodia", "medianoche"):
        start = index
    while _word(tokens, start) in _NEAR_WORDS and start < index + 3:
        start += 1
    if start >= len(tokens) or tokens[start].cut >= 3 and start > index:
        return None
    clock = _clock(tokens, start)
    if not clock:
        return None
    end = start + clock[1]
    following = _word(tokens, end)
    if following in UNITS and following not in ("a", "in") and clock[2] == "":
        return None
    if word == "a" and _word(tokens, start) != "un":
        return None
    loose = word in ("about", "around", "la", "approximately", "circa", "by")
    if (
        loose
        and not (clock[2] or clock[1] > 1)
        and not (word == "la" and _word(tokens, start) in ("una", "1"))
    ):
        if word not in ("around", "by"):
            return None
    if (
        clock[2] == ""
        and _word(tokens, start).isdigit()
        and following in ("percent", "mm", "cm", "of")
    ):
        return None
    value = nearest_past(clock[0], clock[2], now)
    if word in ("since", "desde"):
        return None  # the word stays: how long it has lasted hangs on it
    return _make(tokens, index, end - index, "clock", value), end - index
