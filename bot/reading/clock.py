"""Clock times: "quarter past eight", "a las ocho y media", "at 8" for the nearest past 8."""

from __future__ import annotations

from .number_words import SMALL, number_at, word_at
from .tables import HALVES, NUMBERS
from .token import Token

_PARTS_OF_DAY = {
    "manana": "am", "madrugada": "am", "tarde": "pm", "noche": "pm", "morning": "am",
    "afternoon": "pm", "evening": "pm", "night": "pm", "tonight": "pm", "last_night": "pm",
    "anoche": "pm", "this_morning": "am", "en_la_manana": "am", "por_la_manana": "am",
    "in_the_morning": "am", "la_manana": "am", "yesterday_evening": "pm",
    "yesterday_morning": "am", "yesterday_afternoon": "pm", "ayer_en_la_noche": "pm",
}  # fmt: skip


def clock_at(tokens: list[Token], index: int) -> tuple[float, int, str] | None:
    """Minutes after midnight as said, tokens used, and "am", "pm" or "" when not told."""
    word = word_at(tokens, index)
    used = 0
    minutes: float | None = None
    if word in ("noon", "midday", "mediodia"):
        return 720.0, 1, "24"
    if word in ("midnight", "medianoche"):
        return 0.0, 1, "24"
    before = _before_the_hour(tokens, index)
    if before:
        return before
    if word.isdecimal() and len(word) in (3, 4) and word_at(tokens, index - 1) in ("at", "las"):
        head, tail = word[:-2], word[-2:]
        if int(head) < 24 and int(tail) < 60:
            return float(int(head) * 60 + int(tail)), 1, ""
    if ":" in word:
        head, _, tail = word.partition(":")
        if head.isdecimal() and tail[:2].isdecimal() and int(head) < 24 and int(tail[:2]) < 60:
            minutes, used = float(int(head) * 60 + int(tail[:2])), 1
    elif word in ("half", "quarter", "ten", "five", "twenty", "a") or word.isdecimal():
        minutes, used = _past_or_to(tokens, index)
    if minutes is None:
        found = number_at(tokens, index)
        if not found or found[0] > 24 or word in HALVES or (word in SMALL and word != "una"):
            return None
        hour, used = found
        if hour != int(hour) and hour - int(hour) not in (0.5, 0.25):
            if not tokens[index].decimal or round(hour * 100 % 100) >= 60:
                return None
            hour = int(hour) + round(hour * 100 % 100) / 60
        minutes = hour * 60.0
        nxt = word_at(tokens, index + used)
        if nxt in ("y", "menos") or (nxt in ("thirty", "fifteen", "treinta", "quince")):
            skip = 1 if nxt in ("y", "menos") else 0
            part = word_at(tokens, index + used + skip)
            amount = {"cuarto": 15.0, "media": 30.0}.get(part, NUMBERS.get(part))
            if amount:
                minutes += -amount if nxt == "menos" else amount
                used += 1 + skip
    said = ""
    if word_at(tokens, index + used) in ("oclock", "horas", "hrs"):
        used += 1
    used += _about_or_sharp(tokens, index, index + used)
    tail = word_at(tokens, index + used)
    if tail in ("am", "pm"):
        said, used = tail, used + 1
    else:
        for step in (1, 2, 3):
            part = word_at(tokens, index + used + step - 1)
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


_SHARP = (("on", "the", "dot"), ("en", "punto"), ("sharp",), ("ish",))
_AND_SOME = (("y", "pico"), ("y", "algo"), ("y", "fraccion"), ("and", "a", "bit"))
"""These count tablets as well: of an hour only after "a las", or where the answer begins."""


def _about_or_sharp(tokens: list[Token], index: int, end: int) -> int:
    """How many words say how near the hour is: "8 on the dot", "10ish", "las 8 y pico"."""
    hour = index == 0 or word_at(tokens, index - 1) in ("las", "at", "la")
    for words in (*_SHARP, *(_AND_SOME if hour else ())):
        if all(word_at(tokens, end + at) == word for at, word in enumerate(words)):
            return len(words)
    return 0


_BEFORE_IT = {"cuarto": 15.0, "quince": 15.0, "veinticinco": 25.0}


def _before_the_hour(tokens: list[Token], index: int) -> tuple[float, int, str] | None:
    """ "Cuarto para las nueve", "al diez para las ocho", "5 pa las 8"."""
    start = index + (word_at(tokens, index) in ("un", "al"))
    word = word_at(tokens, start)
    amount = _BEFORE_IT.get(word, NUMBERS.get(word)) or (float(word[:3]) if word.isdecimal() else 0)
    if not 1 <= amount < 30 or word_at(tokens, start + 1) not in ("para", "pa"):
        return None
    if word_at(tokens, start + 2) not in ("las", "la"):
        return None
    hour = number_at(tokens, start + 3) if start + 3 < len(tokens) else None
    if not hour or not 1 <= hour[0] <= 12:
        return None
    return hour[0] * 60 - amount, start - index + 3 + hour[1], ""


def _past_or_to(tokens: list[Token], index: int) -> tuple[float | None, int]:
    """ "Quarter past eight", "ten to nine", "half eight"."""
    start = index + (1 if word_at(tokens, index) == "a" else 0)
    word = word_at(tokens, start)
    amount = {"half": 30.0, "quarter": 15.0}.get(word, NUMBERS.get(word))
    if word.isdecimal():
        amount = float(word[:3])
    if amount is None or amount > 30:
        return None, 0
    link = word_at(tokens, start + 1)
    if link in ("past", "after", "to", "til", "till", "before"):
        hour = number_at(tokens, start + 2) if start + 2 < len(tokens) else None
        if hour and 1 <= hour[0] <= 12 and word_at(tokens, start + 2) not in SMALL:
            sign = 1 if link in ("past", "after") else -1
            return hour[0] * 60 + sign * amount, start - index + 2 + hour[1]
    if word == "half" and start + 1 < len(tokens):
        hour = number_at(tokens, start + 1)
        if hour and 1 <= hour[0] <= 12 and word_at(tokens, start + 1) not in (*SMALL, "one"):
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
