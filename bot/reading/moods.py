"""How a clause is meant, and how far a question, a condition or a denial is carried on."""

from __future__ import annotations

from itertools import pairwise

from .clauses import Clause
from .films import DIES
from .inquiry import asks_from, goes_on_asking
from .token import Token
from .unreal import unreal_from
from .wishes import of_people


def mark_moods(
    tokens: list[Token], clauses: list[Clause], moods: dict[int, dict[str, int]]
) -> None:
    """Give each clause its moods; a question or condition reaches over what hangs on it."""
    before: Clause | None = None
    leave = False
    for number, clause in enumerate(clauses):
        clause.begun = moods.get(number, {})
        asked = asks_from(tokens, clause)
        if asked is not None:
            clause.begun["question"] = min(asked, clause.begun.get("question", asked))
            clause.begun["leave"] = asked
        undone = unreal_from([token.word for token in tokens[clause.start : clause.end]])
        if undone is not None:
            clause.begun["unreal"] = clause.start + undone
        clause.moods = set(clause.begun)
        if "dream" in clause.moods:
            clause.moods.add("thought")
        if "phatic" in clause.moods:
            clause.moods -= {"question", "announced", "factive", "hypo"}
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
            if _in_the_film(tokens, before, clause):
                clause.moods.add("general")
            if of_people(tokens, before):
                held.discard("wish")
            if leave and clause.joiner == "and" and not goes_on_asking(tokens, clause):
                held.discard("question")
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
                    or not (
                        own_subject
                        and clause.joiner != "or"
                        and ("hypo" not in held or _only_tested(tokens, before))
                    )
                ):
                    clause.moods |= held
        before, leave = clause, asked is not None
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


def _in_the_film(tokens: list[Token], before: Clause, clause: Clause) -> bool:
    """ "A film where the dog is hit | and dies": the same animal, that no word names anew."""
    begun = before.begun.get("general")
    if begun is None or clause.joiner != "and" or "<wound>" in clause.keys:
        return False
    told = any(t.word in _WHERE for t in tokens[begun : before.end])
    told = told or tokens[begun].word in ("in", "en")
    return told and any(t.word in DIES for t in tokens[clause.start : clause.start + 3])


_WHERE = frozenset("where that who when donde que".split())


def _only_tested(tokens: list[Token], clause: Clause) -> bool:
    """ "Opened his mouth to see if it was stuck | and his gums are white": what was looked
    for, and then what was found."""
    return any(
        tokens[at].word in ("if", "whether", "si") and tokens[at - 1].word in _TESTS
        for at in range(clause.start + 1, clause.end)
    )


_TESTS = frozenset("see check checking seeing checked look ver revisar checar".split())


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
