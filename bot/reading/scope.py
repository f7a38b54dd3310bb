"""What stands over a match: negation, doubt, questions, wishes, other subjects."""

from __future__ import annotations

from itertools import pairwise

from bot.model.topics import TABLE

from . import suppress
from .actors import (
    SEEN,
    intended,
    not_the_patient,
    of_a_person,
    of_another_bearer,
    of_something_else,
    person_before,
    thing_before,
    took_own,
)
from .clauses import Clause
from .heads import stands_apart
from .matching import SPENT, Match
from .suppress import Suppressor
from .token import Token
from .wishes import answers_no, beside_wish, of_my_own, of_people, told_trouble

REACH = 9
"""Words over which a negation reaches to the right."""

_CARE = frozenset(name for name, topic in TABLE.items() if topic.care)
"""Topics in which people act: a person as subject does not take the finding away."""

_SUFFERED = frozenset("licking incision bandage cone mishap".split())
"""What another animal may do to this patient."""

_NOT = frozenset("not wasnt werent isnt arent never no".split())


def mark_moods(
    tokens: list[Token], clauses: list[Clause], moods: dict[int, dict[str, int]]
) -> None:
    """Give each clause its moods; a question or condition reaches over what hangs on it."""
    before: Clause | None = None
    for number, clause in enumerate(clauses):
        clause.begun = moods.get(number, {})
        clause.moods = set(clause.begun)
        if "dream" in clause.moods:
            clause.moods.add("thought")
        if "phatic" in clause.moods:
            clause.moods -= {"question", "factive", "hypo"}
        word = tokens[clause.start].word
        if before and before.sentence == clause.sentence:
            if "dream" in before.moods:
                clause.moods |= {"dream", "thought"}
            direct = clause.joiner == "subject" and tokens[clause.start].cut == 0
            if (
                direct
                and "far_past" in before.moods
                and "<nowword>" not in clause.keys
                and (
                    tokens[before.start].word in ("when", "cuando", "before", "antes")
                    or before.end - before.start <= 4
                )
            ):
                clause.moods |= {"far_past"} if clause.rank == 1 else set()
            if direct and _fears(tokens, before) and _may_come(tokens, clause):
                clause.moods |= {"worry"}
            held = before.moods & {"hypo", "wish", "purpose", "question", "denied"}
            if of_people(tokens, before):
                held.discard("wish")
            hangs = clause.joiner in ("and", "or") or word in ("or", "o", "that", "que")
            whole = (
                "question" in before.moods
                and clause.asked
                and not (
                    clause.rank == 2
                    or clause.joiner in ("because", "porque", "since", "subject")
                    or tokens[clause.start].word in ("because", "porque")
                )
            )
            hangs = hangs or whole or clause.joiner in ("while", "mientras")
            if held and (
                hangs or (clause.rank == 1 and "hypo" in held and clause.joiner != "subject")
            ):
                own_subject = "<patient>" in tokens[clause.start].keys or (
                    clause.end - clause.start > 1 and "<patient>" in tokens[clause.start + 1].keys
                )
                if (
                    whole
                    or clause.joiner in ("while", "mientras")
                    or not (own_subject and clause.joiner != "or" and "hypo" not in held)
                ):
                    clause.moods |= held
        before = clause
    if any("taken_back" in clause.moods for clause in clauses):
        for clause in clauses:
            clause.moods.add("taken_back")
    for number in range(len(clauses) - 2, -1, -1):
        later = clauses[number + 1]
        clause = clauses[number]
        if (
            later.sentence == clause.sentence
            and "hypo" in clause.moods
            and "question" in later.moods
        ):
            clause.moods.add("question")


def _fears(tokens: list[Token], before: Clause) -> bool:
    return "<worry>" in tokens[before.end - 1].keys


def _may_come(tokens: list[Token], clause: Clause) -> bool:
    """ "Worried | he might vomit": what comes after the subject is still to come."""
    ahead = tokens[clause.start : clause.start + 4]
    return any(t.word in ("might", "may", "could", "would") or "<future>" in t.keys for t in ahead)


def mark_carried(tokens: list[Token], clauses: list[Clause]) -> None:
    """ "No swelling, redness or smell": the denial goes on through a bare list."""
    for number, (before, clause) in enumerate(pairwise(clauses)):
        if clause.sentence != before.sentence or clause.rank > 1:
            continue
        if not ("<neg>" in before.keys or before.carried) or "<good>" in clause.keys:
            continue
        body = [t for t in tokens[clause.start : clause.end] if "<joiner>" not in t.keys]
        first = tokens[clause.start].word
        joined = clause.joiner == "or" or first in ("or", "nor", "ni", "o", "u")
        bare = all(
            "<woundsign>" in t.keys or "<slight>" in t.keys or t.word in _LINK for t in body
        ) or (_bare(body) and _ends_in_or(tokens, clauses, number + 1))
        if body and (joined or (bare and len(body) <= 4)):
            head = tokens[before.start : before.end]
            near = [i for i, t in enumerate(head) if "<neg>" in t.keys]
            if before.carried or (near and len(head) - near[-1] <= 5):
                clause.carried = True


def _bare(body: list[Token]) -> bool:
    return all("<sign>" in t.keys or "<slight>" in t.keys or t.word in _LINK for t in body)


def _ends_in_or(tokens: list[Token], clauses: list[Clause], number: int) -> bool:
    """Whether the bare list that goes on at ``number`` ends in "or", "nor", "ni"."""
    for clause in clauses[number + 1 : number + 5]:
        if clause.rank > 1:
            return False
        if tokens[clause.start].word in ("or", "nor", "ni", "o"):
            return True
        if not _bare(tokens[clause.start : clause.end]):
            return any(t.word in ("or", "nor", "ni") for t in tokens[clause.start : clause.end])
    return False


_LINK = frozenset("or nor ni o y and and any de the of mal bad".split())


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
        covered = [at for at in match.at if at > place]
        if not covered or min(covered) - place > REACH:
            continue
        target = min(covered)
        between = tokens[place + 1 : target]
        if any("<stopneg>" in t.keys for t in between):
            continue
        if of_my_own(tokens, place, target, clause.start):
            continue
        if _spent(between, tokens[target]):
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
            and tokens[after].word in ("no", "not", "nope", "negative", "negativo")
        ):
            flips = True
    if not flips and not held:
        tail = [t.word for t in tokens[match.last + 1 : min(match.last + 5, clause.end)]]
        if (
            tail[:1] == ["free"]
            or ("out" in tail[1:3] and "ruled" in tail[:2] and not set(tail) & _NOT)
            or (any(w in _NOT for w in tail[:2]) and any(w in SEEN for w in tail[1:4]))
            or _named_and_denied(tokens, match.last + 1, clause.end)
        ):
            flips = True
    for place in range(match.last + 1, min(match.last + 7, clause.end - 1)):
        if "<neg>" in tokens[place].keys and any(
            "<recurred>" in t.keys for t in tokens[place + 1 : min(place + 4, clause.end)]
        ):
            flips = True
    return flips != double


def _spent(between: list[Token], target: Token) -> bool:
    """ "No diarrhoea eating ok": the denial has its noun, and the verb stands on its own."""
    if not target.keys.isdisjoint(SPENT):
        return False
    last = max((at for at, t in enumerate(between) if not t.keys.isdisjoint(SPENT)), default=-1)
    return last >= 0 and not any(
        t.word in ("or", "nor", "ni", "o", "and", "y") for t in between[last + 1 :]
    )


_DETERMINERS = frozenset("no sin ni nor without zero".split())


def torn(match: Match, tokens: list[Token]) -> bool:
    """Negation stands in the midst of the match: "pink, no goo" is no pink goo."""
    own = set(match.at)
    if match.held:
        cue = next((at for at in match.at if tokens[at].word in _DETERMINERS), None)
        after = [at for at in match.at if cue is not None and at > cue]
        return bool(after) and _spent(tokens[cue + 1 : after[0]], tokens[after[0]])  # type: ignore[operator]
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


_WH = frozenset(
    "what whats when where which why how whether if wondering wonder asking que como cuando "
    "cuanto cuanta cual donde puedo podemos debo debemos deberia sera seria duda pregunta".split()
)
_INVERTED = frozenset(
    "is are was do does did can could should shall will would am may might es esta".split()
)
_SUBJECTS = frozenset(
    "i we he she it you they that this these there the his her normal malo grave bien mal".split()
)
_DEEDS = frozenset(("<ingest>", "<handed>", "<took>"))


def _told_first(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """ "He ate my tablets will the clinic be open": told before the asking begins."""
    for at in range(clause.start, clause.end - 1):
        word = tokens[at].word
        if word in _WH or (word in _INVERTED and tokens[at + 1].word in _SUBJECTS):
            if match.last >= at or match.last == clause.start:
                return False
            said = tokens[clause.start : at]
            return match.rule.about != "swallowed" or any(
                not t.keys.isdisjoint(_DEEDS) for t in said
            )
    return False


_ORDERED = frozenset("appetite drinking dose walk ice warm_compress massage".split())


def _of_a_thing(tokens: list[Token], clause: Clause) -> bool:
    """ "He did not eat it": a thing that was feared to be eaten, and no meal."""
    return any(
        tokens[at].word in ("it", "them", "la", "lo") for at in range(clause.start, clause.end)
    )


_THAN = frozenset("than que since desde from versus vs".split())


def _than_then(tokens: list[Token], clause: Clause) -> bool:
    """ "Miles better than last month": the past is only what it is compared with."""
    return any(
        "<farpast>" in tokens[at].keys
        and any(t.word in _THAN for t in tokens[max(clause.start, at - 3) : at])
        for at in range(clause.start + 1, clause.end)
    )


def _over(match: Match, tokens: list[Token], clause: Clause) -> set[str]:
    """The moods of a clause that stand over a match: a wish, a question or a fear that begins
    behind it, or has ended before it, takes nothing away."""
    if clause.asked:
        return clause.moods
    over = set(clause.moods)
    for mood in clause.moods & _TALK:
        begun = clause.begun.get(mood)
        if begun is None or begun >= match.first:
            if begun is not None and begun > match.last:
                over.discard(mood)
        elif stands_apart(tokens, begun, match.first, match.last):
            over.discard(mood)
    return over


_TALK = frozenset("wish question announced hypo worry purpose".split())
"""Moods of what the owner wishes, asks or fears, which hold for what follows them."""


def void(match: Match, tokens: list[Token], clause: Clause) -> Suppressor | None:
    """Why a match says nothing of this patient now; None when it does."""
    moods = clause.moods
    about = match.rule.about
    if told_trouble(match):
        moods = _over(match, tokens, clause)
    if about == "request":
        return None
    for at in range(clause.start, match.first):
        if "<asif>" in tokens[at].keys and not (
            at > clause.start and "<appears>" in tokens[at - 1].keys
        ):
            return suppress.LIKENESS
    if "taken_back" in moods and (
        about == "dose"
        or ((about, match.rule.value) == ("appetite", "none") and _of_a_thing(tokens, clause))
    ):
        return suppress.TAKEN_BACK
    if "acting" in moods and about in ("walk", "mishap"):
        return suppress.ON_THE_WAY
    if "ordered" in moods and about in _ORDERED:
        return suppress.ORDERED
    if "more_pee" in moods and (about, match.rule.value) == ("urine", "normal"):
        return suppress.MORE_THAN_NORMAL
    told = told_trouble(match)
    beside = told and beside_wish(match, tokens, clause)
    if "wish" in moods and "<stopping>" not in clause.keys and not beside:
        return suppress.WISH
    if "announced" in moods and not told:
        return suppress.QUESTION
    if "question" in moods and "factive" not in moods and not _told_first(match, tokens, clause):
        return suppress.QUESTION
    if "hypo" in moods:
        heads = [
            at
            for at in range(clause.start, clause.end)
            if tokens[at].word == "if" or "<ifword>" in tokens[at].keys
        ]
        if (
            not heads
            or match.last > heads[0]
            or heads[0] == clause.start
            or "<future>" in clause.keys
        ):
            return suppress.CONDITION
    if ("purpose" in moods or "worry" in moods) and "<unceasing>" not in clause.keys:
        heads = [
            at
            for at in range(clause.start, clause.end)
            if "<purpose>" in tokens[at].keys or "<worry>" in tokens[at].keys
        ]
        if not heads or match.last > heads[0]:
            return suppress.FEAR
    if "denied" in moods and not match.denied:
        return suppress.DENIED_REPORT
    if "general" in moods:
        return suppress.GENERAL
    if "thought" in moods:
        return suppress.THOUGHT
    if about in _CARE and about != "mishap" and intended(match, tokens, clause):
        return suppress.NOT_DONE
    likened = clause.compared > match.last or _than_then(tokens, clause)
    dated = not clause.keys.isdisjoint(("<surgery>", "<longsince>"))
    if "before_surgery" in moods:
        return suppress.BEFORE_SURGERY
    if "far_past" in moods and not match.denied and not likened and not dated:
        return suppress.LONG_AGO
    if (
        about == "dose"
        and "asked-dose" in match.rule.focus
        and of_something_else(match, tokens, clause)
    ):
        return suppress.SOMETHING_ELSE
    if about == "life" and not_the_patient(match, tokens, clause):
        return suppress.ANOTHERS_DEATH
    if about == "swallowed" and took_own(match, tokens, clause):
        return suppress.PERSON
    if about in _CARE and about != "mishap":
        return None
    behind = clause.other_at > match.last + 1 and told_trouble(match)
    if clause.other and not behind and not (clause.done_to and about in _SUFFERED):
        return suppress.ANIMAL
    thing = about == "mishap" and thing_before(match, tokens, clause)
    if thing or of_another_bearer(match, tokens, clause):
        return suppress.THING
    if of_a_person(match, tokens, clause) or (
        (about not in _CARE or about == "mishap")
        and not match.rule.agent
        and person_before(match, tokens, clause)
    ):
        return suppress.PERSON
    behind = clause.person_at > match.last and told_trouble(match)
    own = clause.person and not behind and not match.rule.agent
    return suppress.PERSON if own else None
