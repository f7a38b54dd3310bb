"""Whether a denial or a doubt stands over what is found."""

from __future__ import annotations

from .actors import SEEN, stands_well
from .clauses import Clause
from .last_time import long_since
from .matching import SAID_TO_END, SPENT, Match, lists_on
from .token import Token
from .wishes import answers_no, of_my_own

_NEG = frozenset(("<neg>",))
REACH = 9
"""Words over which a negation reaches to the right."""


def denied(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """Whether negation stands over the match, apart from what its own pattern holds."""
    if match.rule.fixed:
        return False
    own = set(match.at)
    held = any("<neg>" in tokens[at].keys or "<zero>" in tokens[at].keys for at in match.at)
    match.held = held
    if match.last >= clause.end:
        return False  # it reaches into the next clause, where the telling word is
    flips = clause.carried and not held
    double = False
    reach_end = match.last
    for place in range(clause.start, min(reach_end, clause.end)):
        keys = tokens[place].keys
        if "<denial>" in keys and place not in own:
            double = True
            continue
        if held or place in own:
            continue
        nothing = (  # "nada flojo", and no "de la nada"
            "<zero>" in keys
            and place == match.first - 1
            and not (tokens[place].guessed or (place and tokens[place - 1].word == "la"))
        )
        if "<neg>" not in keys and not (
            nothing or ("<ceased>" in keys and match.rule.about != "incision")
        ):
            continue
        if answers_no(tokens, place, clause):
            continue
        covered = [at for at in match.at if at >= place + tokens[place].size(_NEG)]
        if not covered or min(covered) - place > REACH:
            continue
        target = min(covered)
        between = tokens[place + 1 : target]
        if any("<stopneg>" in t.keys for t in between):
            continue
        if of_my_own(tokens, place, target, clause.start):
            continue
        if _spent(tokens, place + 1, target):
            continue
        flips = True
    if not flips and not held:
        for place in range(match.last + 1, min(match.last + 3, clause.end)):
            keys = tokens[place].keys
            if "<stopneg>" in keys:
                break
            if "<zero>" in keys and (
                place + 1 == clause.end or "<afterzero>" in tokens[place + 1].keys
            ):
                flips = True
                break
        after = match.last + 1
        if (
            after < clause.end
            and after == clause.end - 1
            and tokens[after].word in ("no", "not", "nope", "negative", "negativo", "tampoco")
        ):
            flips = True
    if not flips and not held:
        tail = [t.word for t in tokens[match.last + 1 : min(match.last + 5, clause.end)]]
        new = "never" in tail[:2] or "nunca" in tail[:2]  # "yellow gums, never seen that before"
        if (
            tail[:1] == ["free"]
            or ("out" in tail[1:3] and "ruled" in tail[:2] and not set(tail) & _NOT)
            or (any(w in _NOT for w in tail[:2]) and any(w in SEEN for w in tail[1:4]) and not new)
            or _named_and_denied(tokens, match.last + 1, clause.end)
        ):
            flips = True
    if not flips and not held and (answered_no(tokens, clause) or long_since(match, tokens)):
        flips = True
    for place in range(match.last + 1, min(match.last + 7, clause.end - 1)):
        if "<neg>" in tokens[place].keys and any(
            "<recurred>" in t.keys for t in tokens[place + 1 : min(place + 4, clause.end)]
        ):
            flips = True
    return flips != double


_SAYS_NO = frozenset("no nope nah none not never nada ninguno ninguna para_nada negativo".split())


def answered_no(tokens: list[Token], clause: Clause) -> bool:
    """ "Bleeding? no thats beetroot", "¿vómito? nada": a question that the owner answers."""
    return (
        clause.asked
        and clause.end - clause.start <= 3
        and clause.end < len(tokens)
        and tokens[clause.end - 1].asks
        and tokens[clause.end].word in _SAYS_NO
    )


def _spent(tokens: list[Token], start: int, target: int) -> bool:
    """ "No diarrhoea eating ok": the denial has its noun, and the verb stands on its own."""
    between = tokens[start:target]
    ended = any(SAID_TO_END in t.keys for t in between)
    if not tokens[target].keys.isdisjoint(SPENT) and lists_on(tokens, target, ended):
        return False
    last = max((at for at, t in enumerate(between) if not t.keys.isdisjoint(SPENT)), default=-1)
    return last >= 0 and not any(
        t.word in ("or", "nor", "ni", "o", "and", "y") for t in between[last + 1 :]
    )


_DETERMINERS = frozenset("no sin ni nor without zero".split())


def torn(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """Negation stands in the midst of the match: "pink, no goo" is no pink goo. Or what it
    takes for eaten is told of next: "he is eating, and the stitches are clean". Or it begins
    with what is denied, and goes on in a later clause: "no vomiting, the pills at six"."""
    if match.rule.about == "swallowed" and stands_well(match, tokens):
        return True
    if match.first < clause.end <= match.last and not match.rule.fixed:
        ahead = tokens[clause.start : match.first][-3:]
        denied = [n for n, t in enumerate(ahead) if not t.keys.isdisjoint(("<neg>", "<zero>"))]
        ends = denied and any("<stopneg>" in t.keys for t in ahead[denied[-1] + 1 :])
        if denied and not ends and not tokens[match.first].keys.isdisjoint(SPENT):
            return True
    own = set(match.at)
    if match.held:
        cue = next((at for at in match.at if tokens[at].word in _DETERMINERS), None)
        after = [at for at in match.at if cue is not None and at > cue]
        return bool(after) and _spent(tokens, cue + 1, after[0])  # type: ignore[operator]
    if match.rule.fixed:
        return False
    return any(
        "<neg>" in tokens[at].keys for at in range(match.first + 1, match.last) if at not in own
    )


def hedged(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """Whether the owner doubts it."""
    return "<hedge>" in clause.keys


_HAS = frozenset(
    "visto veo vi tiene trae tenido hay habido hubo noto notado presenta presentado siento "
    "encuentro".split()
)


_LEAST = frozenset("nada ninguno ninguna hoy ya gracias tampoco por ahora".split())


def _named_and_denied(tokens: list[Token], at: int, end: int) -> bool:
    """ "Pus no le veo", "fiebre no ha tenido": what is named first is denied, where no more
    follows the verb."""
    words = [t.word for t in tokens[at:end]]
    if words[:1] != ["no"]:
        return False
    if len(words) > 1 and len(words[1]) > 3 and tokens[at - 1].word[:4] == words[1][:4]:
        return True  # "gritar no gritó"
    for place, word in enumerate(words[1:5], 1):
        if word in _HAS:
            return all(rest in _LEAST for rest in words[place + 1 :])
    return False


_NOT = frozenset("not wasnt werent isnt arent never no".split())
