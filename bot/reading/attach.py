"""Figures that belong to a finding: how often, how long, how far, when, which medicine."""

from __future__ import annotations

from collections.abc import Sequence

from bot.model.reading import Context

from .clauses import Clause
from .clock import clock_text
from .matching import Match
from .tables import canonical
from .token import Token

_TIMED = frozenset("ice warm_compress massage walk".split())
_COUNTED = frozenset("vomiting seizure stool urine dose mishap".split())
_LASTING = frozenset(
    "urine stool appetite drinking dose vomiting weight_bearing energy breathing seizure".split()
)
_DAY = 1440


def area(number: int, clauses: list[Clause], taken: set[int]) -> list[int]:
    """The clause of a match and the bare ones beside it, in the same sentence or the next."""
    places = [number]
    step = number + 1
    while (
        step < len(clauses)
        and step not in taken
        and clauses[step].sentence - clauses[number].sentence <= 1
    ):
        if clauses[step].moods & {"question", "hypo", "wish"}:
            break
        places.append(step)
        step += 1
        if step - number > 3:
            break
    step = number - 1
    if step >= 0 and step not in taken and clauses[step].sentence == clauses[number].sentence:
        places.append(step)
    return places


def _last(tokens: list[Token], clauses: list[Clause], places: list[int], key: str) -> Token | None:
    """The figure meant: the nearest clause's; a correction further on wins."""
    for place in places:
        clause = clauses[place]
        found = [t for t in tokens[clause.start : clause.end] if key in t.keys]
        if found:
            return found[-1] if "<fix>" in clause.keys else found[0]
    return None


def since_hours(tokens: list[Token], clause: Clause, context: Context) -> float | None:
    """How many hours, from "for two days", "since nine last night", "desde ayer"."""
    now = context.at
    since = not clause.keys.isdisjoint(("<sinceword>", "<lastdone>"))
    dated = not clause.keys.isdisjoint(("<lastnight>", "<yesterday>"))
    best: float | None = None
    for place in range(clause.start, clause.end):
        token = tokens[place]
        keys = token.keys
        hours: float | None = None
        if "<hours>" in keys:
            hours = token.value
        elif "<minutes>" in keys and token.value is not None:
            hours = round(token.value / 60, 2)
        elif "<clock>" in keys and (since or dated) and now is not None and token.value is not None:
            said = clause.keys | _dated(token.parts)
            hours = _clock_hours(token.value, said, now, "am" in token.parts)
        elif "<daybefore>" in keys:
            hours = 36.0
        elif now is None:
            hours = None
        elif "<yesterdaynoon>" in keys:
            hours = (now + _DAY - 720) / 60
        elif "<yesterdaymorning>" in keys:
            hours = (now + _DAY - 480) / 60
        elif "<yesterdayafternoon>" in keys:
            hours = (now + _DAY - 780) / 60
        elif "<yesterdayevening>" in keys:
            hours = (now + _DAY - 1080) / 60
        elif "<yesterday>" in keys:
            hours = max(24.0, (now + _DAY - 720) / 60)
        elif "<lastnight>" in keys:
            hours = ((now - 1260) % _DAY) / 60
        elif "<thismorning>" in keys and since:
            hours = max(0.0, (now - 420) / 60)
        elif "<allday>" in keys and _and_night(tokens, place):
            hours = 24.0
        elif "<allday>" in keys:
            hours = max(12.0, (now - 420) / 60) if now >= 1020 else (now - 420) / 60
        elif "<surgery>" in keys and since and context.day > 0:
            hours = context.day * 24.0
        if hours is not None and hours > 0:
            newest = best is None or (since and "<lastdone>" not in clause.keys)
            best = hours if newest or best is None else max(best, hours)
            if (since or dated) and ("<clock>" in keys or "<hours>" in keys):
                return round(hours, 1)
    return round(best, 1) if best is not None else None


def _summed(tokens: list[Token], clauses: list[Clause], place: int) -> float | None:
    """ "Since before tea yesterday, so that's what, 14 hours": the owner has done the sum, where
    no hour of the clock was told."""
    sentence = [c for c in clauses[place:] if c.sentence == clauses[place].sentence]
    if any("<clock>" in c.keys for c in sentence):
        return None
    for at in range(sentence[0].start, sentence[-1].end):
        if "<hours>" in tokens[at].keys and _SUMS & {t.word for t in tokens[max(0, at - 4) : at]}:
            return tokens[at].value
    return None


_SUMS = frozenset("thats makes making so sea son van serian".split())


def _and_night(tokens: list[Token], place: int) -> bool:
    """ "All day and all night", "todo el día y la noche"."""
    for token in tokens[place + 1 : place + 7]:
        if token.word in ("night", "noche"):
            return True
        if token.word not in _DAY_AND:
            return False
    return False


_DAY_AND = frozenset("and n all the y toda la el todo dia day long".split())


def _dated(parts: tuple[str, ...]) -> frozenset[str]:
    """The day that a clock time has taken in: "8 last night", "ayer a las 8"."""
    if "yesterday" in parts or "ayer" in parts:
        return frozenset(("<yesterday>",))
    night = "anoche" in parts or ("last" in parts and "night" in parts)
    return frozenset(("<lastnight>",)) if night else frozenset()


def _clock_hours(value: float, keys: frozenset[str], now: int, morning: bool) -> float:
    """Hours since a clock time, of last night or yesterday where that is said."""
    if "<lastnight>" in keys and 300 <= value <= 720:
        value += 720  # "last night at ten"
    if "<lastnight>" in keys and value >= 720:
        return (now + _DAY - value) / 60  # told at nine tonight, eight last night is a day ago
    if not keys.isdisjoint(("<yesterday>", "<yesterdayevening>", "<yesterdaymorning>")):
        if value < 360 and not morning:
            value += 720  # "yesterday at two" is the afternoon
        return (now + _DAY - value) / 60
    return ((now - value) % _DAY) / 60


def figures(
    match: Match,
    value: str,
    tokens: list[Token],
    clauses: list[Clause],
    places: list[int],
    context: Context,
) -> dict[str, object]:
    """The fields of an observation that the words give."""
    about = match.rule.about
    out: dict[str, object] = {}
    if about in _TIMED:
        for key, name in (("<minutes>", "minutes"), ("<metres>", "metres")):
            token = _last(tokens, clauses, places, key)
            if token is not None and token.value is not None and value == "done":
                out[name] = (
                    round(token.value, 1) if name == "minutes" else float(round(token.value))
                )
        if "minutes" not in out and value == "done":
            token = _last(tokens, clauses, places, "<hours>")
            if token is not None and token.value is not None and token.value <= 4:
                out["minutes"] = token.value * 60
    if about in _COUNTED:
        count = _count(match, tokens, clauses, places)
        if count is not None and (value not in ("no", "none", "missed") or about == "dose"):
            out["count"] = count
    if about in _LASTING and value not in ("normal", "given", "no"):
        for place in places:
            hours = since_hours(tokens, clauses[place], context)
            if hours is not None:
                if about in ("urine", "stool", "appetite", "drinking") and value in (
                    "none",
                    "less",
                ):
                    out["hours"] = _summed(tokens, clauses, place) or hours
                break
    if about in ("dose", "seizure", "vomiting", "swallowed", "mishap", "walk"):
        ago = _ago(tokens, clauses, places)
        if ago is not None and context.at is not None:
            out["at"] = clock_text((context.at - ago) % _DAY)
        elif ago is not None:
            out["hours"] = round(ago / 60, 2)
        token = _last(tokens, clauses, places, "<clock>") if ago is None else None
        if token is not None and token.value is not None:
            out["at"] = clock_text(token.value)
    return out


_AHEAD = frozenset("in en dentro de another".split())


def until(tokens: list[Token], places: range, context: Context, ahead: bool) -> dict[str, object]:
    """When an owner wants to be asked again: so many minutes or hours from now, or at the next
    such time on the clock. ``ahead``: only what is told as time to come ("in 20 minutes")."""
    for at in places:
        token = tokens[at]
        value = token.value
        if value is None:
            continue
        before = {t.word for t in tokens[max(0, at - 2) : at]}
        if ahead and "<clock>" not in token.keys and not before & _AHEAD:
            continue
        if "<minutes>" in token.keys or "<hours>" in token.keys:
            hours = value / (60 if "<minutes>" in token.keys else 1)
            whole = hours >= 1 and float(hours).is_integer()
            return {"hours": hours} if whole else {"minutes": round(hours * 60, 1)}
        if "<clock>" in token.keys:
            return {"at": clock_text(_next(value, token, tokens, context))}
        if "<number>" in token.keys and 5 <= value <= 90 and before & _AHEAD:
            return {"minutes": value}  # "we leave in 30"
    return {}


_SAID = frozenset("am pm noon midnight midday mediodia medianoche".split())


def _next(value: float, token: Token, tokens: list[Token], context: Context) -> float:
    """The clock time ahead: of morning and evening the one that comes first, if not told."""
    parts = token.parts or (token.word,)
    told = bool(_SAID & set(parts)) or any(
        ":" in p and int(p[:2].strip(":") or 0) > 12 for p in parts
    )
    told = told or any(
        p in ("manana", "tarde", "noche", "morning", "evening", "night") for p in parts
    )
    now = context.at
    if told or now is None:
        return value
    tomorrow = any(t.word in ("tomorrow", "manana", "morning") for t in tokens)
    options = (value % 720, value % 720 + 720)
    if tomorrow:
        return options[0] if options[0] >= 300 else options[1]
    return min(options, key=lambda one: (one - now) % _DAY or _DAY)


def _ago(tokens: list[Token], clauses: list[Clause], places: list[int]) -> float | None:
    """Minutes before now, from "ten minutes ago", "hace dos horas"."""
    for place in places:
        clause = clauses[place]
        for at in range(clause.start, clause.end):
            token = tokens[at]
            if token.value is None or token.keys.isdisjoint(("<minutes>", "<hours>")):
                continue
            before = {t.word for t in tokens[max(clause.start, at - 2) : at]}
            after = tokens[at + 1].word if at + 1 < clause.end else ""
            if after in ("ago", "back") or before & {"hace", "hacia"}:
                return token.value * (60 if "<hours>" in token.keys else 1)
    return None


def _count(
    match: Match, tokens: list[Token], clauses: list[Clause], places: list[int]
) -> int | None:
    for place in places:
        clause = clauses[place]
        many = False
        for at in range(clause.start, clause.end):
            token = tokens[at]
            if "<times>" in token.keys and token.value and token.value >= 1:
                return int(token.value)
            if (
                "<number>" in token.keys
                and token.value
                and at > clause.start
                and tokens[at - 1].word in ("last", "past", "ultimas", "ultimos", "previous")
            ):
                return int(token.value)
            if (
                "<number>" in token.keys
                and token.value
                and at + 1 < clause.end
                and tokens[at + 1].word in ("in", "en")
                and at + 2 < clause.end
                and tokens[at + 2].word in ("all", "total")
            ):
                return int(token.value)
            if "<number>" in token.keys and token.value and token.value < 40:
                ahead = range(at + 1, min(at + 4, clause.end))
                if any(n in match.at for n in ahead) and float(token.value).is_integer():
                    return int(token.value)
                if at - 1 in match.at and at + 1 >= clause.end and place == match.clause:
                    return int(token.value)
            if "<manytimes>" in token.keys and place == match.clause:
                many = True
            if "<againword>" in token.keys and (
                match.rule.about == "dose"
                or (match.rule.about == "vomiting" and _once_more(tokens, at, match, place))
            ):
                many = True
        if many and match.rule.about in ("vomiting", "seizure", "dose"):
            return 2
        if match.rule.about == "dose" and _two_times(clauses, places):
            return 2
        if match.rule.count:
            return match.rule.count
    return match.rule.count


def _once_more(tokens: list[Token], at: int, match: Match, place: int) -> bool:
    """ "Barfed, then again at nine": told beside what came up, and not of it alone."""
    if place != match.clause or tokens[at - 1].word not in _AND_THEN:
        return place != match.clause
    return at > match.last or any("<vomit>" in t.keys for t in tokens[max(0, at - 8) : at])


_AND_THEN = frozenset("then and luego y despues".split())
_THEN = frozenset(("<lastnight>", "<yesterday>", "<yesterdayevening>", "<yesterdaymorning>"))
_AS_WELL = frozenset("<againword> tambien also both as_well tampoco this_mornings".split())
_TODAY = frozenset(("<thismorning>", "<nowword>", "<allday>"))


def _two_times(clauses: list[Clause], places: list[int]) -> bool:
    """ "Last night's and tonight's as well": two doses in a row."""
    keys: frozenset[str] = frozenset().union(*(clauses[place].keys for place in places))
    return (
        not keys.isdisjoint(_THEN) and not keys.isdisjoint(_TODAY) and not keys.isdisjoint(_AS_WELL)
    )


def medicine(
    tokens: list[Token], clause: Clause, context: Context, near: Sequence[int] = ()
) -> list[str]:
    """The medicines named in a clause, or at ``near`` places of it where any is: as the
    plan writes them, else the usual name."""
    for places in (near, range(clause.start, clause.end)):
        found: list[str] = []
        for at in places:
            token = tokens[at]
            for word in token.parts or (token.word,):
                name = canonical(word, context.medicines)
                if name and name not in found:
                    found.append(name)
        if found:
            return found
    return []


def medicines_meant(
    match: Match,
    tokens: list[Token],
    clauses: list[Clause],
    places: list[int],
    context: Context,
) -> list[str]:
    """The medicines that a match speaks of: named in it, in its clause or beside it; "both"
    of the plan's two."""
    clause = clauses[match.clause]
    named = medicine(tokens, clause, context, match.at)
    for place in places[1:]:
        named = named or medicine(tokens, clauses[place], context)
    if not named and "<both>" in clause.keys and len(context.medicines) == 2:
        named = list(context.medicines)
    return named
