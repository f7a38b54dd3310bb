"""What stands over a match: questions, wishes, other subjects."""

from __future__ import annotations

from bot.model.topics import TABLE

from . import denial, suppress
from .actors import (
    by_another,
    intended,
    not_the_patient,
    of_a_person,
    of_another_bearer,
    of_something_else,
    person_before,
    thing_before,
    took_own,
)
from .apart import stands_apart
from .clauses import Clause
from .denial import answered_no
from .films import end_of_film
from .matching import Match
from .meals import none_missing, of_its_object, of_something_given, of_the_toilet
from .origin import from_elsewhere
from .recipients import another_recipient
from .suppress import Suppressor
from .token import Token
from .wishes import beside_wish, told_trouble


def weigh(matches: list[Match], tokens: list[Token], clauses: list[Clause]) -> None:
    """Mark which matches are denied, in doubt, or say nothing of this patient now."""
    for match in matches:
        clause = clauses[match.clause]
        match.denied = denial.denied(match, tokens, clause)
        match.hedged = denial.hedged(match, tokens, clause)
        match.void = void(match, tokens, clause)
    end_of_film(matches, tokens, clauses)
    _mark_parts(matches, tokens)
    _mark_own_ills(matches, tokens, clauses)


def _mark_parts(matches: list[Match], tokens: list[Token]) -> None:
    """ "My husband pooped blood": of what is told of a person, no part is told of the patient;
    but "when I touched it | she screamed"."""
    for whole in matches:
        if whole.void is suppress.PERSON:
            for part in matches:
                inside = whole.first <= part.first and part.last <= whole.last  # in its words
                ahead = tokens[whole.first + 1 : part.first]
                if any(token.word in ("he", "she") for token in ahead):
                    continue
                if inside and part.rule.about == whole.rule.about and not part.void:
                    part.void = suppress.PERSON


_I_HAVE = frozenset("i ive im tengo traigo tuve".split())
_ILLNESS = frozenset(
    "bug flu hangover migraine covid virus norovirus runs lurgy poisoning gripa gripe "
    "gastroenteritis gastritis cruda resaca migrana diarrea".split()
)
_ILLS = frozenset(("vomiting", "temperature"))
_STUFF = frozenset("vomit vomito puke".split())
"""What may lie about, whoever is ill: "I've got the flu and vomit everywhere"."""


def _mark_own_ills(matches: list[Match], tokens: list[Token], clauses: list[Clause]) -> None:
    """ "I've got the runs and threw up twice": the second verb has the same subject."""
    own = {m.clause for m in matches if m.void is suppress.PERSON and told_trouble(m)}
    for number, clause in enumerate(clauses):
        words = [t.word for t in tokens[clause.start : clause.end]]
        if words[0] in _I_HAVE and any(word in _ILLNESS for word in words[1:7]):
            own.add(number)
    for match in matches:
        clause = clauses[match.clause]
        if match.void or match.rule.about not in _ILLS or match.clause - 1 not in own:
            continue
        before = clauses[match.clause - 1]
        if clause.joiner != "and" or before.sentence != clause.sentence:
            continue
        named = any("<patient>" in t.keys for t in tokens[before.start : match.last + 1])
        ahead = tokens[clause.start : match.first]
        light = all(not t.keys.isdisjoint(("<joiner>", "<aux>", "<adv>")) for t in ahead)
        if light and not named and tokens[match.first].word not in _STUFF:
            match.void = suppress.PERSON


_CARE = frozenset(name for name, topic in TABLE.items() if topic.care)
"""Topics in which people act: a person as subject does not take the finding away."""


_SUFFERED = frozenset("licking incision bandage cone mishap".split())
"""What another animal may do to this patient."""


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
    if clause.begun.get("leave", clause.end) < match.first:
        return False
    for at in range(clause.start, clause.end - 1):
        word = tokens[at].word
        if word in _WH or (word in _INVERTED and tokens[at + 1].word in _SUBJECTS):
            if match.last >= at or match.last == clause.start == at - 1:
                return False
            said = tokens[clause.start : at]
            return match.rule.about != "swallowed" or any(
                not t.keys.isdisjoint(_DEEDS) for t in said
            )
    return False


_NEARLY = frozenset("nearly almost casi".split())


def _tells_a_deed(match: Match, tokens: list[Token]) -> bool:
    return any(not tokens[at].keys.isdisjoint(_DEEDS) for at in match.at)


_DEEDS = frozenset(("<gave>", "<handed>", "<took>", "<donework>"))
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

_SHAPES = frozenset(("swelling", "belly"))
"""What is told by a likeness: "like he has half an orange under the skin"."""


def void(match: Match, tokens: list[Token], clause: Clause) -> Suppressor | None:
    """Why a match says nothing of this patient now; None when it does."""
    moods = clause.moods
    about = match.rule.about
    if told_trouble(match):
        moods = _over(match, tokens, clause)
    if about == "request":
        return None
    for at in range(clause.start, match.first if about not in _SHAPES else clause.start):
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
    told = told_trouble(match)
    beside = told and beside_wish(match, tokens, clause)
    if "wish" in moods and "<stopping>" not in clause.keys and not beside:
        return suppress.WISH
    if "announced" in moods and not told:
        return suppress.QUESTION
    asks = "question" in moods and "factive" not in moods and not answered_no(tokens, clause)
    if asks and not _told_first(match, tokens, clause):
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
    if "general" in moods and clause.begun.get("general", 0) <= match.last:
        return suppress.GENERAL  # "gave him ibuprofen, he is watching the film with me" stands
    if "thought" in moods:
        return suppress.THOUGHT
    if about in _CARE and about != "mishap" and intended(match, tokens, clause):
        return suppress.NOT_DONE
    marked = "<askmark>" in clause.keys and match.rule.value in ("given", "done")
    if about in _CARE and marked and not _tells_a_deed(match, tokens):
        return suppress.QUESTION  # "the purple one is the gabapentin yes?"
    told_done = not told or match.rule.value in ("given", "missed")
    if about in _CARE and told_done and clause.begun.get("unreal", match.last + 1) <= match.last:
        return suppress.UNREAL
    if about in ("dose", "mishap") and tokens[match.first - 1].word in _NEARLY and told:
        return suppress.NOT_DONE
    likened = clause.compared > match.last or _than_then(tokens, clause)
    dated = not clause.keys.isdisjoint(("<surgery>", "<longsince>"))
    if "far_past" in moods and not match.denied and not likened and not dated:
        return suppress.LONG_AGO
    if "before_surgery" in moods:
        return suppress.BEFORE_SURGERY
    if (
        about == "dose"
        and "asked-dose" in match.rule.focus
        and of_something_else(match, tokens, clause)
    ):
        return suppress.SOMETHING_ELSE
    if about == "dose" and of_something_given(match, tokens):
        return suppress.SOMETHING_ELSE
    given = about == "dose" and match.rule.value in ("given", "refused")
    if given and of_its_object(match, tokens, clause):
        return suppress.SOMETHING_ELSE
    if (about, match.rule.value) == ("dose", "doubled") and of_the_toilet(match, tokens):
        return suppress.SOMETHING_ELSE
    if about == "dose" and not told and (other := another_recipient(tokens, clause)):
        return suppress.PERSON if other == "person" else suppress.ANIMAL
    if about == "swallowed" and none_missing(match, tokens):
        return suppress.SOMETHING_ELSE
    if about == "life" and not_the_patient(match, tokens, clause):
        return suppress.ANOTHERS_DEATH
    if about == "swallowed" and took_own(match, tokens, clause):
        return suppress.PERSON
    if told and from_elsewhere(match, tokens, clause):
        return suppress.ELSEWHERE
    if about == "swallowed" and by_another(match, tokens, clause):
        return suppress.ANIMAL
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
