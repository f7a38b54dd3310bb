"""A meal that is told beside a dose, and what is done twice that is no dose."""

from __future__ import annotations

from .actors import all_that_was_due, meal_after_a_dose
from .clauses import Clause
from .matching import Match
from .token import Token

_IS = frozenset("is are was were all been have has ya estan esta".split())
_IS_IN = frozenset(
    "in down done given taken dada dadas dado dados tomada tomadas adentro lista listas".split()
)
_GAVE = frozenset("gave given giving administered di dimos".split())
_OF_PILLS = frozenset(
    "it them those these ellas ellos ese esas esos la las los todas todos ambas every".split()
)
_TOO_MANY = frozenset(
    ("<meds>", "<medcontainer>", "<noneleft>", "<wrecked>", "<humandrug>", "<three>")
)
_NEAR = 4


def told_of_what_was_due(tokens: list[Token], clause: Clause) -> frozenset[str]:
    """What a clause is known by while a dose is due: "swallowed it", "ate all his pills"."""
    due = frozenset(("<dosedue>",))
    return due | {"<planned>", "<alldue>"} if all_that_was_due(tokens, clause) else due


def beside_a_dose(match: Match, tokens: list[Token], clauses: list[Clause]) -> bool:
    """Whether pills that were given are read as what was eaten after them, or a medicine that is
    only asked about as what became of a dose: "he puked | is that a side effect of tramadol"."""
    last = next(c for c in clauses[match.clause :] if match.last < c.end)
    asked = "question" in last.moods - clauses[match.clause].moods
    if match.rule.about == "dose" and asked:
        return True
    own = a_meal_of_its_own(match, tokens, clauses[match.clause])
    return own or meal_after_a_dose(match, tokens)


def a_meal_of_its_own(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """ "Meds done ate everything one poop": a dose told to its end, by who gave it or as all that
    was due, and then a meal. What was eaten and points back to pills, or is more, is none."""
    if match.rule.value != "medicine_overdose":
        return False
    doses = [at for at in match.at if "<meds>" in tokens[at].keys]
    eaten = [at for at in match.at if doses and at > doses[0] and "<ingest>" in tokens[at].keys]
    if not eaten or not _told_to_its_end(tokens, doses[0], eaten[0], clause):
        return False
    after = eaten[0] + 1
    while after < len(tokens) and not tokens[after].cut and after <= eaten[0] + _NEAR:
        token = tokens[after]
        if token.word in _OF_PILLS or not token.keys.isdisjoint(_TOO_MANY):
            return False
        after += 1
    beside = tokens[max(0, doses[0] - 2 * _NEAR) : doses[0]] + tokens[doses[0] + 1 : eaten[0]]
    return all(t.keys.isdisjoint(_TOO_MANY - {"<three>"}) for t in beside)


def _told_to_its_end(tokens: list[Token], dose: int, eaten: int, clause: Clause) -> bool:
    put = dose + 1
    while put < eaten and tokens[put].word in _IS:
        put += 1
    ahead = tokens[max(clause.start, dose - _NEAR) : dose]
    gave = any(t.word in _GAVE for t in ahead)
    all_due = "<planned>" in clause.keys and any("<ingest>" in t.keys for t in ahead)
    return gave or all_due or (put < eaten and tokens[put].word in _IS_IN)


def of_the_toilet(match: Match, tokens: list[Token]) -> bool:
    """ "Pills given, peed twice", "hizo dos veces": what was done twice is no dose."""
    return any(
        tokens[at - 1].word in _GOES or not tokens[at - 1].keys.isdisjoint(("<pee>", "<poo>"))
        for at in match.at
        if at and not tokens[at].cut and tokens[at].word in _TWICE
    )


def none_missing(match: Match, tokens: list[Token]) -> bool:
    """ "There should be ten tablets and there are ten": so many, and no fewer."""
    if "fewer" not in match.rule.tags:
        return False
    counted = [tokens[at].value for at in match.at if "<number>" in tokens[at].keys]
    first, last = (counted[0], counted[-1]) if counted else (None, None)
    return first is None or last is None or first <= last


def of_something_given(match: Match, tokens: list[Token]) -> bool:
    """ "Le acaba de dar una convulsión", "el cariño que le dieron": Spanish gives what is no
    medicine with the same verb."""
    if match.rule.value != "given" or tokens[match.last].word not in _GIVES:
        return False
    after = next((t for t in tokens[match.last + 1 : match.last + 4] if not _little(t)), None)
    ahead = [t for t in tokens[max(0, match.first - 3) : match.first + 1] if not _little(t)]
    that = any(t.word == "que" for t in tokens[max(0, match.first - 2) : match.first])
    named = [t for t in (after, ahead[0] if that and ahead else None) if t is not None]
    return any(t.word in _NO_MEDICINE or not t.keys.isdisjoint(_SUFFERED) for t in named)


def of_its_object(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """ "Got all | the toys", "se comió todo | el pollito", "no quiso | las croquetas": what was
    got, eaten or refused is named behind, and is no medicine."""
    said = tokens[clause.start : clause.end]
    if any(not t.keys.isdisjoint(("<meds>", "<pillword>")) for t in said):
        return False
    behind = tokens[match.last + 1 : match.last + 3]
    if match.rule.value == "refused" and _of_a_plate(said):
        return True
    if len(behind) < 2 or behind[0].cut or behind[0].word not in _THE:
        return tokens[match.last].word == "both" and [t.word for t in behind[:1]] == ["hands"]
    if match.rule.value == "refused":
        return "<food>" in behind[1].keys
    if tokens[match.last].word in ("in", "down"):  # "everything in | the freezer"
        inside = not behind[1].keys.isdisjoint(("<food>", "<hid>", "<patient>"))
        return not inside and behind[1].word not in _INTO
    return tokens[match.last].word in _FOR_ALL and behind[1].word not in ("way", "lot", "rest")


def _of_a_plate(said: list[Token]) -> bool:
    """ "Del plato no dejó nada": a meal is what it is told of."""
    return any(t.word in ("plato", "plate", "bowl", "croquetas", "kibble") for t in said)


_THE = frozenset("this the his her their our el la los las su sus".split())
_INTO = frozenset("hatch throat gullet tummy belly mouth cheek boy girl old little".split())
_FOR_ALL = frozenset("all both every todo toda todos todas".split())


def _little(token: Token) -> bool:
    return token.word in _LITTLE


_GIVES = frozenset("dar darle dio di dieron dimos dado dan da".split())
_LITTLE = frozenset("un una unos unas el la los las mucho mucha muchos muchas tanto tanta como "
                    "su sus otro otra que le les se nos me todo toda".split())  # fmt: skip
_NO_MEDICINE = frozenset(
    "carino amor apoyo atencion atenciones cuidado cuidados animo animos abrazo abrazos beso "
    "besos besitos trato servicio gracias calentura fiebre diarrea tos hipo mareo mareos desmayo "
    "desmayos infarto paro miedo susto sueno hambre sed frio calor "
    "lata guerra vuelta vueltas bano".split()
)
_SUFFERED = frozenset(("<seizureword>", "<vomit>"))
_TWICE = frozenset("twice 2_times two_times dos dos_veces double".split())
_GOES = frozenset("went goes gone hizo hace".split())
