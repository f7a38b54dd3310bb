"""Which leg, and which metal: what is told of another leg, or of a frame, is not told twice."""

from __future__ import annotations

from bot.model.observation import Observation

from .clauses import Clause
from .matching import Match
from .settle import Found
from .token import Token

_FLESH = frozenset("skin flesh bone wound piel carne hueso herida stitches puntos cut".split())
_OF_A_LEG = frozenset("weight_bearing mobility urine pain".split())


def drop_told_twice(matches: list[Match], clauses: list[Clause], asked: str) -> list[Match]:
    """Without the use of the operated leg where the clause tells of another one, and without
    an opened wound where a frame's screw worked loose and no skin is spoken of."""
    other = _told(matches, "other_leg")
    loose = {
        number
        for number in _told(matches, "fixator")
        if (asked == "fixator" or "<frameword>" in clauses[number].keys)
        and _FLESH.isdisjoint(clauses[number].keys)
    }
    frame = {
        number
        for number in _told(matches, "fixator")
        if "<frameword>" in clauses[number].keys and "<legword>" not in clauses[number].keys
    }
    return [
        match
        for match in matches
        if not (match.clause in frame and match.rule.about == "leg")
        and not (match.clause in other and match.rule.about in _OF_A_LEG and not _well(match))
        and not (match.clause in loose and match.rule.about == "incision")
    ]


def _told(matches: list[Match], about: str) -> set[int]:
    return {m.clause for m in matches if m.rule.about == about and not (m.void or m.denied)}


def _well(match: Match) -> bool:
    """ "Full on the operated leg, lame on the other"."""
    return match.rule.value == "full" or (match.denied and match.rule.value == "partial")


_ITS = frozenset("his her the a one that their su la una back front hind rear left right".split())
_LEGS = frozenset("leg limb foreleg hindleg forelimb hindlimb paw pata patita pierna mano".split())
_LOST = frozenset("lost missing quitaron cortaron perdio falta".split())
_TAKEN = frozenset("took take taken taking had having".split())
_OFF = frozenset("off removed".split())
_ONLY_OF_IT = frozenset(
    "muscle strength hair fur massage massages exercise exercises wrap the of izquierda".split()
)


def mark_lost(tokens: list[Token]) -> None:
    """ "Since they took his front leg off", "le quitaron la pata": a leg is gone for good."""
    for at, token in enumerate(tokens):
        left = token.word == "sin" and at > 0 and tokens[at - 1].word in _LEFT
        if left or token.word in _LOST or token.word in _TAKEN:
            noun = at + 1
            while noun < len(tokens) and tokens[noun].word in _ITS and not tokens[noun].cut:
                noun += 1
            named = noun < len(tokens) and tokens[noun].word in _LEGS and not tokens[noun].cut
            after = tokens[noun + named : noun + named + 2]
            after = after[: next((n for n, t in enumerate(after) if t.cut), 2)]
            gone = named and token.word not in _TAKEN
            if after and after[0].word in _OFF and token.word in _TAKEN:
                gone, after = named or noun > at + 2, after[1:]
            by_vets = token.word == "took" and at > 0 and tokens[at - 1].word in _VETS
            kept = after and (after[0].word in _ONLY_OF_IT or after[0].keys & _WORN)
            if noun > at + 1 and (gone or (named and by_vets)) and not kept:
                token.keys |= {"<legless>"}


_LEFT = frozenset("quedo quedado dejaron nacio".split())
_VETS = frozenset("you yous u they vet vets surgeon".split())
_WORN = frozenset(("<bandageword>", "<coneword>", "<frameword>", "<pinword>"))


def of_other_legs(found: list[Found], clauses: list[Clause], tokens: list[Token]) -> list[Found]:
    """A limp is another leg's where the operated one is gone, or is told of apart from it."""
    limps = [f for f in found if _use(f) in ("partial", "none")]
    lost = any("<legless>" in clause.keys for clause in clauses)
    if not lost:
        limps = [f for f in limps if _use(f) == "partial" and _apart(f, clauses, tokens)]
    for item in limps:
        item.observation = Observation("other_leg", "limping", span=item.observation.span)
    here = {at for f in found if f.observation.about == "other_leg" for at in f.match.at}
    return [
        f
        for f in found
        if not (lost and here and _use(f) == "full")
        and not (f.observation.about == "mobility" and here.intersection(f.match.at))
    ]


def _apart(limp: Found, clauses: list[Clause], tokens: list[Token]) -> bool:
    """ "The operated leg is lovely. It's the front left he limps on": a leg named by its place,
    where another clause tells of the operated one, and of no such place."""
    here = clauses[limp.match.clause]
    near = [c for c in clauses if c.sentence == here.sentence and not _operated(c, tokens)]
    if here not in near:
        return False
    place = _places([here], tokens) or _places(near, tokens)
    there = [c for c in clauses if _operated(c, tokens)]
    return bool(place and there) and place.isdisjoint(_places(there, tokens))


def _operated(clause: Clause, tokens: list[Token]) -> bool:
    """Whether a clause tells which leg was operated, or of that leg."""
    said = {t.word for t in tokens[clause.start : clause.end]}
    return "<notoperated>" in clause.keys or bool(said & _SURGERY and _places([clause], tokens))


_SURGERY = frozenset(
    "op operated operation surgery did operaron operada operado operacion cirugia".split()
)


def _places(clauses: list[Clause], tokens: list[Token]) -> frozenset[str]:
    return frozenset().union(*(_place(tokens[c.start : c.end]) for c in clauses))


_PLACES = {
    **dict.fromkeys("front fore foreleg forelimb delantera delantero adelante".split(), "front"),
    **dict.fromkeys("back hind rear hindleg trasera trasero atras".split(), "back"),
    **dict.fromkeys("left izquierda izquierdo".split(), "left"),
    **dict.fromkeys("right derecha derecho".split(), "right"),
}
_PLACED = frozenset("leg paw foot limb knee hip one side pata patita mano pierna".split())
_THE = frozenset("the his her in la el su de".split())


def _place(said: list[Token]) -> frozenset[str]:
    """Where the leg stands that is named: "front left", "una pata delantera"."""
    out = set()
    for at, token in enumerate(said):
        if token.word not in _PLACES:
            continue
        before = said[at - 1].word if at else ""
        after = said[at + 1].word if at + 1 < len(said) else ""
        if before == "in" and after == "of":
            continue  # "limps in front of strangers"
        beside = before in _THE or {before, after} & (_PLACED | _PLACES.keys())
        if beside or token.word in ("foreleg", "forelimb", "hindleg", "delantera", "trasera"):
            out.add(_PLACES[token.word])
    return frozenset(out)


def _use(item: Found) -> str:
    one = item.observation
    return one.value if one.about == "weight_bearing" else ""
