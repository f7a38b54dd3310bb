"""Where what is named came from, when the same sentence says so: from another, from a thing.

"The blood on the floor was from a chicken", "los gritos eran de los vecinos", "the one who is
not eating is my husband", "lo que se abrió fue la bolsa".
"""

from __future__ import annotations

from .clauses import Clause
from .lexis import LEXIS
from .matching import Match
from .subjects import belongs_elsewhere
from .token import Token

_WORN = frozenset("incision bandage fixator cone mishap leg".split())
_LINK = frozenset(
    "was were is are came comes its era eran es son fue fueron viene vienen vino venia salio "
    "salieron".split()
)
_ONLY = frozenset(
    "just only actually really all probably solo nomas nada mas puro pura seguro en out".split()
)
_FROM = frozenset("from of for off de del para pa".split())
_OWN = frozenset("my our mi mis nuestro nuestra".split())
_ARTICLES = frozenset("a an the some un una unos unas el la los las another otro otra".split())
_TO_ME = frozenset("me mine myself yo mi mio mia mias mios".split())
_WHO = frozenset("who whos that thats que which".split())
_REACH = 7
"""Words of its phrase between a finding and "was from"."""
_OURS = frozenset(
    "<patient> <wound> <legword> <joint> <toeword> <bandageword> <gumword> <bodyword> <meds> "
    "<stitchword> <frameword> <pinword> <poo> <pee> <sign> <woundsign> <worry>".split()
)
_PATIENTS = frozenset("his her its their he she him hers your".split())
_MATTERS = frozenset(
    "worry concern fear question priority problem guess main only first biggest duda preocupacion "
    "pregunta miedo dog cat baby boy girl".split()
)


def from_elsewhere(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """Whether the sentence says that what is found came from, or was, somebody or something
    else."""
    if _it_was_another_that(match, tokens, clause) or _to_one_of_us(match, tokens):
        return True
    link = _link(match, tokens)
    if link < 0:
        return _is_me(tokens, match.last + 1)
    after = link + 1
    while after < len(tokens) and tokens[after].word in _ONLY and not tokens[after].cut:
        after += 1
    if after >= len(tokens) or tokens[after].cut:
        return False
    if tokens[after].word in _FROM:
        return _another(tokens, after + 1)
    if tokens[after].word in ("mine", "mio", "mia", "mias", "mios"):
        return True
    following = tokens[after + 1].word if after + 1 < len(tokens) else ""
    if tokens[after].word in _ARTICLES and following in ("de", "del"):
        return _another(tokens, after + 2)  # "la pata chueca es la de la mesa"
    if _thing_that(match, tokens, clause):
        worn = match.rule.about in _WORN
        if worn or match.rule.about == "energy":
            return _another(tokens, after) or (worn and _of_a_thing(tokens, after))
    if match.rule.about in _STAINS and "<elsething>" in tokens[after].keys:
        return tokens[after].keys.isdisjoint(_OURS)  # "the red on the rug was jam"
    if _kins(tokens, after) and match.rule.about != "dose":
        return True
    if _of_one(match, tokens, clause) and any(
        "<otheranimal>" in t.keys for t in tokens[after : after + 3]
    ):
        return True
    if _heard(match) and any(t.word in _AT_HOME for t in tokens[match.last + 1 : link]):
        return _a_person(tokens, after) or _the_baby(tokens, after)
    return _a_person(tokens, after) and (_of_one(match, tokens, clause) or _heard(match))


_AT_HOME = frozenset("house background home upstairs casa fondo".split())


def _the_baby(tokens: list[Token], at: int) -> bool:
    """ "The only one screaming in this house is the baby": "my baby" may be the patient."""
    said = [t.word for t in tokens[at : at + 2]]
    return len(said) == 2 and said[0] in ("the", "la", "el") and said[1] in ("baby", "bebe")


def _to_one_of_us(match: Match, tokens: list[Token]) -> bool:
    """ "Se le hincharon las manos a mi mamá"."""
    if match.rule.about not in _BODILY:
        return False
    if all(t.word not in ("le", "les") for t in tokens[max(0, match.first - 2) : match.last + 1]):
        return False
    for at in range(match.last + 1, min(match.last + 5, len(tokens) - 2)):
        if tokens[at].cut:
            return False
        if tokens[at].word == "a" and tokens[at + 1].word in _OWN:
            return _person(tokens[at + 2])
    return False


_BODILY = frozenset("swelling bruising vomiting allergy breathing seizure temperature".split())
_STAINS = frozenset("incision stool urine vomiting".split())


def _kins(tokens: list[Token], at: int) -> bool:
    """ "... is hubby's", "... was my daughter's": whose it is, and not the patient's."""
    if tokens[at].word in _OWN and at + 1 < len(tokens):
        at += 1
    word = tokens[at].word
    ends = at + 1 >= len(tokens) or tokens[at + 1].word in _NOT or bool(tokens[at + 1].cut)
    one = LEXIS.words.get(word[:-1], frozenset())
    return ends and word.endswith("s") and "<person>" in one and "<patient>" not in one


_NOT = frozenset("not no and y she he".split())


def _it_was_another_that(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """ "It was my sister's cat that threw up", "fue mi hijo el que gritó"."""
    for at in range(max(0, match.first - 4), match.first):
        if tokens[at].word not in _WHO or tokens[at].cut:
            continue
        for place in range(max(0, at - 6), at):
            word, after = tokens[place].word, place + 1
            if word not in _LINK or any(t.cut for t in tokens[after:at]):
                continue
            named = tokens[after:at]
            if any("<otheranimal>" in t.keys or _person(t) for t in named):
                return True
            if any(belongs_elsewhere(tokens, n, at) for n in range(after, at)):
                return True
            things = any("<bearer>" in t.keys or "<elsething>" in t.keys for t in named)
            return things and all(t.keys.isdisjoint(_OURS) for t in named)
    return False


def _link(match: Match, tokens: list[Token]) -> int:
    """The "was" behind the phrase of what is found; -1 where another statement begins first."""
    for at in range(match.last + 1, min(match.last + 2 + _REACH, len(tokens))):
        token = tokens[at]
        if token.cut:
            return -1
        if token.word in _LINK:
            return at
        said = token.keys & {"<neg>", "<be>", "<joiner>"}
        this = token.word == "esta" and tokens[at - 1].word in ("en", "de", "por")
        if said and token.word not in ("que", "that") and not this:
            return -1
    return -1


def _another(tokens: list[Token], at: int) -> bool:
    """Whether a phrase that begins at ``at`` names one who is not the patient, or a meal."""
    if at >= len(tokens) or tokens[at].cut:
        return False
    token = tokens[at]
    if token.word in _TO_ME or token.keys & {"<otheranimal>"}:
        return True
    own = token.word in _OWN
    if not (own or token.word in _ARTICLES):
        return _person(token) or ("<food>" in token.keys and token.keys.isdisjoint(_OURS))
    if at + 1 >= len(tokens) or tokens[at + 1].cut:
        return False
    noun = tokens[at + 1]
    if "<otheranimal>" in noun.keys or _person(noun):
        return True
    if own:
        return noun.word not in _MATTERS and noun.keys.isdisjoint(
            ("<patient>", "<animalnoun>", "<worry>")
        )
    return not noun.keys.isdisjoint(("<food>", "<elsething>"))


def _person(token: Token) -> bool:
    said = not token.keys.isdisjoint(("<person>", "<elsewho>"))
    return said and "<patient>" not in token.keys and token.word not in _PATIENTS


def _a_person(tokens: list[Token], at: int) -> bool:
    """ "... is my daughter", "... were the neighbours"."""
    if tokens[at].word in _OWN | _ARTICLES:
        at += 1
    return at < len(tokens) and _person(tokens[at])


def _of_one(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """ "The one who is not eating", "la flaca que no come"."""
    ahead = range(max(clause.start - 2, 0, match.first - 4), match.first)
    return any(
        tokens[at].word in _WHO or (tokens[at].word == "one" and tokens[at - 1].word == "the")
        for at in ahead
        if at
    )


def _heard(match: Match) -> bool:
    """Cries may be anybody's: "the screaming was the neighbours"."""
    return match.rule.about in ("pain", "seizure", "vomiting")


def _thing_that(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """ "Lo que se abrió", "what came loose"."""
    for at in range(max(clause.start, match.first - 3), match.first):
        word = tokens[at].word
        before = tokens[at - 1].word if at else ""
        if word in ("what", "thing") or (word == "que" and before in _THAT_WHICH):
            return True
    return False


_THAT_WHICH = frozenset("lo la el los las cosa unico unica".split())


def _of_a_thing(tokens: list[Token], at: int) -> bool:
    """A thing named after "what opened was": none of the patient's, and no sign."""
    if tokens[at].word not in _ARTICLES or at + 1 >= len(tokens):
        return False
    phrase = tokens[at + 1 : at + 3]
    if any("<bearer>" in t.keys for t in tokens[at + 2 : at + 5]):
        return True  # "the seam of his jumper"
    return all(t.keys.isdisjoint(_OURS) and t.word not in _PATIENTS for t in phrase)


_AM = frozenset("soy estoy ando fui era estaba".split())


def _is_me(tokens: list[Token], at: int) -> bool:
    """ "La hinchada soy yo", "con la cara hinchada del dentista ando yo"."""
    for place in range(at, min(at + 4, len(tokens))):
        if tokens[place].cut:
            return False
        word, after = tokens[place].word, tokens[place + 1 : place + 2]
        ends = place + 2 >= len(tokens) or bool(tokens[place + 2].cut)
        if ends and word in _AM and any(t.word == "yo" for t in after):
            return True
        if ends and word in ("is", "was") and any(t.word == "me" for t in after):
            return True
    return False
