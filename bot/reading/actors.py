"""Who does what a match tells: the patient, a person, a thing; and whether it is done."""

from __future__ import annotations

from .clauses import Clause
from .matching import Match
from .subjects import PREPOSITIONS, belongs_elsewhere
from .tables import ORDINARY
from .token import Token

SEEN = frozenset(
    "seen see saw seen notice noticed found find feel spot spotted veo vi noto note".split()
)
_DATIVE = frozenset(("me", "nos", "mi"))
"""In "se me cayó" the patient fell; the person only feels it."""


_ARTICLES = frozenset("a an una un the another otra otro".split())
_I_HAVE = frozenset("tengo traigo tuve".split())
_AILMENTS = frozenset("diarrea fiebre calentura".split())
"""In "tengo diarrea" the writer's; "tengo sangre en la venda" is no ailment."""
_MYSELF = frozenset("estoy ando estuve estamos andamos".split())


def intended(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """ "Will give it at nine", "ahorita se la doy"."""
    if match.rule.value not in ("given", "done", "on"):
        return False
    before = [t.word for t in tokens[max(clause.start, match.first - 4) : match.first]]
    if tokens[match.first].word == "give" and before[-1:] == ["to"]:
        return not _ACHIEVED & set(before)  # "too late to give it"
    return planned(tokens, clause, match.last)


_ACHIEVED = frozenset("managed able got finally remembered".split())
_GONE_BY = frozenset(
    "gave given did done walked went had has took taken ate was were got put iced rubbed massaged "
    "di dimos dio dieron dado hice hicimos hizo hecho puse pusimos puso tomo trago comio fuimos "
    "salimos salio saque sacamos caminamos camino anduvo aguanto managed".split()
)
"""What is told as past: "did it in 20 minutes" is how long it took."""
_NOW_TOO = frozenset("salimos caminamos".split())
"""Past and present alike: with a time ahead, "salimos en media hora", it is a plan."""
_DAYTIME = frozenset(
    "lunch dinner breakfast supper tea work school comer cenar almorzar desayunar comida cena "
    "trabajo almuerzo".split()
)


def to_come(tokens: list[Token], at: int, end: int) -> bool:
    """Whether a time ahead begins at ``at``: "in 20 minutes", "después de comer"."""
    word = tokens[at].word
    if word in ("tomorrow", "manana"):
        return not at or tokens[at - 1].word not in _OF_A_MORNING
    step = at + 1
    while step < end and tokens[step].word in ("de", "about", "like", "unos", "unas", "another"):
        step += 1
    if word in ("in", "en", "dentro") and step < end:
        vague = tokens[step].word in ("a", "un") and step + 1 < end
        after = tokens[step + 1 if vague else step]
        if "<number>" in after.keys:
            return (after.value or 0) >= _SOON  # "gone in one gulp", "in two bites"
        return not after.keys.isdisjoint(("<minutes>", "<hours>", "<whileword>"))
    if word in ("luego", "despues"):  # "walk y luego ice pack" is a row of things done
        return (word == "luego" and step >= end) or (
            step < end and tokens[step].word in _CLITICS_OR_I
        )
    if step >= end:
        return False
    if word in ("after", "despues", "before", "antes"):
        return tokens[step].word in _DAYTIME
    return word in ("when", "once", "cuando", "as_soon") and tokens[step].word in _COMING


_SOON = 5
"""A bare figure from here on is minutes: "in 30"."""
_OF_A_MORNING = frozenset("la esta por toda cada una otra ayer hoy buena".split())
"""Before "mañana" they make it a morning; without them it is tomorrow."""
_CLITICS_OR_I = frozenset("se le lo la las los hago doy pongo saco damos hacemos ponemos".split())
_COMING = frozenset("i we get llegue salga termine pueda vuelva llego".split())


def planned(tokens: list[Token], clause: Clause, last: int) -> bool:
    """A promise, a wish or a plan up to ``last``: what is meant to be done is not yet done."""
    span = range(clause.start, clause.end)
    if any("<intent>" in tokens[at].keys for at in span if at <= last):
        return True
    ahead = any(to_come(tokens, at, clause.end) for at in span)
    if any(
        tokens[at].word in _GONE_BY and not (ahead and tokens[at].word in _NOW_TOO) for at in span
    ):
        return False
    if "<clock>" in clause.keys and any(tokens[at].word in _NOW_OR_SOON for at in span):
        return True
    return ahead or any(not tokens[at].keys.isdisjoint(("<later>", "<wanting>")) for at in span)


_NOW_OR_SOON = frozenset("doy pongo hago saco damos ponemos hacemos sacamos giving leave".split())
_I_DO = frozenset("i ill we im voy vamos hago doy pongo saco damos hacemos ponemos".split())


_DEEDS = frozenset(
    "do give ice walk massage rub put start darle hacer hacerlo dar darsela sacarlo "
    "sacarla salir ponerle ponerselo hago doy pongo saco damos hacemos ponemos".split()
)


_LAST_SLEEP = frozenset(
    "sleep euthanize euthanise euthanasia eutanasia dormirlo dormirla sacrificarlo "
    "sacrificarla".split()
)


def promised(tokens: list[Token], clause: Clause, asked: bool) -> bool:
    """ "I'll do it in 20 minutes": someone of the household means to do it. ``asked``: a deed
    was asked for, which then need not be named."""
    if clause.moods & {"question", "hypo"}:
        return False
    words = {t.word for t in tokens[clause.start : clause.end]}
    if words & _LAST_SLEEP:
        return False  # "we will put him to sleep on Friday" is nothing to be reminded of
    meant = bool(words & _I_DO and words & _DEEDS)
    short = asked and (clause.end - clause.start <= 8 or bool(words & _I_DO))
    return (meant or short) and planned(tokens, clause, clause.end)


_MORE_THAN_DUE = frozenset(
    "<medcontainer> <noneleft> <jointly> <three> <humandrug> <mine> <kin> <wrecked>".split()
)
_EMPTIED = frozenset(("<medcontainer>", "<noneleft>"))
"""Told of behind "all his pills", they were more than those due: "and left the bottle empty"."""
_EVERY = frozenset("all both every todas todos todo".split())
_LEFT = frozenset(
    "into hold cupboard drawer counter shelf bin help found stole raided nicked robo agarro chewed "
    "shredded left "
    "remaining single last missing vanished rest week whole entire month quedaban sobrantes".split()
)


def all_that_was_due(tokens: list[Token], clause: Clause) -> bool:
    """ "Ate all his pills in cheese", told to a dose prompt: those that were due."""
    words = {t.word for t in tokens[clause.start : clause.end]}
    first = clause.start
    while first > 0 and not tokens[first].cut and clause.start - first < 8:
        first -= 1
    last = clause.end
    while last < len(tokens) and tokens[last].cut < 3 and last - clause.end < 8:
        last += 1
    beside = {t.word for t in (*tokens[first : clause.start], *tokens[clause.end : last])}
    behind: frozenset[str] = frozenset().union(*(t.keys for t in tokens[clause.end : last]))
    emptied = behind >= _EMPTIED
    more = _MORE_THAN_DUE - _ALL_AT_ONCE if _hidden(tokens, clause) else _MORE_THAN_DUE
    return bool(words & _EVERY) and not (emptied or (words | beside) & _LEFT or clause.keys & more)


_ALL_AT_ONCE = frozenset(("<noneleft>", "<jointly>"))


def _hidden(tokens: list[Token], clause: Clause) -> bool:
    """ "All his pills in a hot dog, gone in one gulp", "all down in one": they were given so."""
    for at in range(clause.start, clause.end - 1):
        if "<meds>" not in tokens[at].keys:
            continue
        put = tokens[at + 1].word
        into = tokens[at + 2 : at + 6]
        if put == "down" or (
            put in _INTO and any(not t.keys.isdisjoint(("<food>", "<hid>")) for t in into)
        ):
            return True
    return False


_INTO = frozenset("in inside with en con dentro".split())


_I_GAVE = frozenset(
    "gave given administered di dimos dio dado dada dados dadas tomada tomadas puestas".split()
)
_HOW_GIVEN = frozenset("only just finally late solo solamente apenas tarde una uno one se".split())
_BESIDE_A_DOSE = frozenset(
    "<function> <joiner> <aux> <adv> <patient> <person> <good> <yesword> <thanks> <excuse> <hello> "
    "<clock> <number> <meds> <food> <hid> <minutes> <hours> <times> <gave> <smalltalk> <very> "
    "<slight> <neg> <spat> <refuse> <lastnight> <drank> <half> <partly>".split()
)


def of_something_else(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """Words that tell of a dose only because one was asked for, in a clause that is about
    something of its own: "took two steps to the bowl", "lying down"."""
    plain = match.rule.weight > 1 or tokens[match.at[0]].word in _I_GAVE
    if match.rule.value != "given" or plain or any("<meds>" in t.keys for t in tokens):
        return False
    rest = (tokens[at] for at in range(clause.start, clause.end) if at not in match.at)
    return any(t.keys.isdisjoint(_BESIDE_A_DOSE) and t.word not in _HOW_GIVEN for t in rest)


_THE = frozenset("the his her their el la su".split())
_GAVE_IT = frozenset("gave given had took di dio dimos dieron tomo trago".split())
_THEN = frozenset("and then y luego plus".split())
_OF_PILLS = frozenset("it them those these ellas ellos ese esas esos".split())
_IS_IN = frozenset("in down done given taken dada dadas dado tomada tomadas adentro lista".split())


def meal_after_a_dose(match: Match, tokens: list[Token]) -> bool:
    """ "Pills in, and she scarfed the whole bowl": the dose is told to its end, and what was
    eaten after it is a meal."""
    if match.rule.value != "medicine_overdose" or match.last + 1 >= len(tokens):
        return False
    told = False
    for at in match.at:
        if "<meds>" in tokens[at].keys and at + 2 < match.last:
            put = tokens[at + 1].word in _IS_IN
            end = tokens[at + 1 + put]
            ahead = tokens[max(0, at - 3) : at]
            gave = put or any(t.word in _GAVE_IT for t in ahead)
            told = told or (gave and (end.cut > 0 or end.word in _THEN))
    after = tokens[match.last + 1 : match.last + 4]
    if not told or after[0].cut:
        return False
    if after[0].word in _THE and len(after) > 1:
        after = after[1:]
    of_it = any(t.word in _OF_PILLS or "<meds>" in t.keys for t in after)
    return "<food>" in after[0].keys or (after[0].word in ("of", "de") and not of_it)


_TRANSITIVE = frozenset("him her it them lo la".split())


def not_the_patient(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """ "My grandma passed away", "se me murió el celular": another one, or a thing, is gone."""
    done_to = match.at[1:]
    if "told" in match.rule.tags:
        return False  # "sorry to tell you": nobody tells a practice so of another
    if any(tokens[at].word in _TRANSITIVE for at in match.at) or any(
        "<patient>" in tokens[at].keys for at in done_to
    ):
        return False
    after = match.last + 1
    if after + 1 < clause.end and belongs_elsewhere(tokens, after + 1, clause.end):
        return True  # "se murió el perro de la vecina"
    for place in range(match.first - 1, clause.start - 1, -1):
        token = tokens[place]
        if token.word in _DATIVE or token.word in ("se", "ya", "que", "today", "yesterday"):
            continue
        if "<patient>" in token.keys and token.word not in ("la", "lo", "el"):
            return belongs_elsewhere(tokens, place, match.first)
        if not token.keys.isdisjoint(("<aux>", "<adv>", "<neg>", "<joiner>", "<hedge>")):
            continue
        if not token.keys.isdisjoint(("<thing>", "<person>", "<sign>")):
            return True
        before = tokens[place - 1].word if place > clause.start else ""
        named = token.word not in ORDINARY and not any(key[0] == "<" for key in token.keys)
        if before in _OURS and named:
            return False  # "my Rex died": a word that nobody knows is a name
        return before in _DETERMINERS
    if after + 1 < clause.end and tokens[after].word in _DETERMINERS:
        if tokens[after + 1].word in _DEAR:
            return False  # "falleció mi niña"
        return "<patient>" not in tokens[after + 1].keys or "<otheranimal>" in tokens[after].keys
    return False


_DEAR = frozenset(
    "nina nino bebe gordo gorda gordito gordita peludo peluda angelito chiquita chiquito viejito "
    "viejita perrito perrita gatito gatita girl boy baby".split()
)
_DETERMINERS = frozenset("my our the a an his her their mi mis su el la un una nuestro".split())


def thing_before(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """ "My phone fell", "time is running away": the subject is no animal."""
    for place in range(match.first - 1, max(clause.start, match.first - 4) - 1, -1):
        keys = tokens[place].keys
        if "<thing>" in keys:
            return not {t.word for t in tokens[max(clause.start, place - 2) : place]} & PREPOSITIONS
        if "<aux>" not in keys and "<adv>" not in keys and "<patient>" not in keys:
            return False
        if "<patient>" in keys and tokens[place].word not in ("la", "lo", "le", "se"):
            return False
    return False


_SELF = frozenset("i ive id we weve wed yo me nos".split())
_FROM_ME = frozenset("robo agarro comio mordio mastico quito saco lamio devoro destrozo".split())
"""After "me" the patient did it, to the owner's cost: "me robó mis pastillas"."""


def took_own(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """ "I took my tablets", "me tomé un ibuprofeno": the owner's own dose."""
    for at in range(clause.start + 1, match.last + 1):
        if tokens[at].keys & {"<took>", "<ingest>"} and "<handed>" not in tokens[at].keys:
            before = tokens[max(clause.start, at - 3) : at]
            if tokens[at].word in _FROM_ME and before[-1].word in _DATIVE:
                return False
            if any("<hedge>" in t.keys for t in before):
                return False
            ahead = [t for t in before if "<aux>" not in t.keys or t.word in _SELF]
            return any(t.word in _SELF for t in ahead[-2:]) and not any(
                "<patient>" in t.keys for t in before
            )
    return False


def by_another(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """ "My sister's kitten ate a hair tie": another animal is the one that did it."""
    if not clause.other or not 0 <= clause.other_at < match.first:
        return False
    if "<otheranimal>" not in clause.keys and not any(
        belongs_elsewhere(tokens, at, clause.end) for at in range(clause.start, match.first)
    ):
        return False  # "the cat ate his thread" may be the patient
    between = tokens[clause.other_at : match.first]
    last = max(n for n, t in enumerate(between) if n == 0 or not t.keys.isdisjoint(_ANIMALS))
    return not between[last].keys.isdisjoint(_ANIMALS) and all(
        not t.keys.isdisjoint(("<aux>", "<adv>")) for t in between[last + 1 :]
    )


_STANDS = frozenset("is are look looks seem seems esta estan siguen sigue se".split())
_WELL = frozenset(
    "clean dry intact neat tidy closed lovely there limpio limpia limpios limpias seco seca secos "
    "secas intactos cerrada cerrados".split()
)


def stands_well(match: Match, tokens: list[Token]) -> bool:
    """ "He is eating, and the stitches are clean": what is told next is no part of the meal."""
    after = tokens[match.last + 1 : match.last + 5]
    joined = any(t.cut or "<joiner>" in t.keys for t in tokens[match.first + 1 : match.last + 1])
    if not joined or not after or after[0].word not in _STANDS or after[0].cut:
        return False
    said = after[1 : next((n for n, t in enumerate(after) if n and t.cut), 4)]
    return any(t.word in _WELL or "<good>" in t.keys for t in said) and not any(
        "<neg>" in t.keys for t in said
    )


_ANIMALS = frozenset(("<animalnoun>", "<otheranimal>"))
_BODILY = frozenset("temperature allergy seizure breathing vomiting stool urine gums".split())
_OURS = frozenset("my our mi mis nuestro nuestra".split())
_HAS = frozenset("has had have got gets is was tiene trae tuvo tenia le anda esta".split())


def _of_kin(tokens: list[Token], clause: Clause, first: int) -> bool:
    """ "My toddler has a temperature of 39", "a mi sobrino le salieron ronchas"."""
    for at in range(clause.start, min(clause.start + 3, first - 2)):
        if tokens[at].word not in _OURS:
            continue
        kin, verb = tokens[at + 1], tokens[at + 2]
        return (
            "<person>" in kin.keys
            and "<patient>" not in kin.keys
            and verb.word in _HAS
            and verb.cut == 0
        )
    return False


def person_before(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """A person is the subject: "I feel sick", "my husband threw up", not "I saw blood"."""
    seen = match.rule.about == "incision" and "<seeword>" in tokens[match.first].keys
    if seen or tokens[match.first].word in SEEN:
        return False
    if match.rule.about in _BODILY and _of_kin(tokens, clause, match.first):
        return True
    place = match.first - 1
    steps = 0
    while place >= clause.start and steps < 5:
        keys = tokens[place].keys
        if "<hedge>" in keys:
            return False  # "i think ate it all": who thinks is not who ate
        if tokens[place].word in _MYSELF:
            return True
        if tokens[place].word in _I_HAVE and tokens[match.first].word in _AILMENTS:
            return True
        if "<person>" in keys and "<patient>" not in keys and tokens[place].word not in _DATIVE:
            if _called(tokens, place, clause):
                return False
            ahead = {t.word for t in tokens[max(clause.start, place - 2) : place]}
            return not ahead & PREPOSITIONS
        word = tokens[place].word
        cleft = word in ("que", "who", "that") or (
            word in ("el", "la", "one") and tokens[place + 1].word in ("que", "who", "that")
        )
        if cleft:  # "mi abuela es la que se ahoga"
            place -= 1
            steps += 1
            continue
        if "<patient>" in keys and "<aux>" not in keys and "<person>" not in keys:
            return False
        if (
            word not in _DATIVE
            and word not in _ARTICLES
            and not ("<aux>" in keys or "<adv>" in keys or "<neg>" in keys or "<slight>" in keys)
        ):
            return False
        place -= 1
        steps += 1
    return False


_TITLES = frozenset("doctor doctora doctorcita senora senor comadre compadre".split())


def _called(tokens: list[Token], place: int, clause: Clause) -> bool:
    """ "Doctora se le abrieron los puntos": without an article she is spoken to."""
    before = tokens[place - 1].word if place > clause.start else ""
    return tokens[place].word in _TITLES and before not in _DETERMINERS | _OF


_OF = frozenset("de del otra otro another".split())


_BORNE = frozenset("incision bandage fixator swelling bruising cone".split())
_OF_PATIENT = frozenset(
    "<wound> <bandageword> <coneword> <frameword> <pinword> <legword> <joint> <toeword>".split()
)


def of_another_bearer(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """A thing that heads the statement bears what is told: "his bandana is red", "the gate came
    loose". Blood, and what shows inside, are never taken for a thing's."""
    rule = match.rule
    if rule.about not in _BORNE or rule.detail == "deep" or rule.value in ("bleeding", "tight"):
        return False
    for at in range(match.last, clause.start - 1, -1):
        if not tokens[at].keys.isdisjoint(_OF_PATIENT):
            return False
    for at in range(max(clause.start, match.first - 4), match.first):
        if "<bearer>" in tokens[at].keys:
            ahead = {t.word for t in tokens[max(clause.start, at - 2) : at]}
            return not ahead & PREPOSITIONS
    return False


def of_a_person(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """A person has it: "my daughter's cast got soaked", "el yeso de mi hijo"."""
    if match.rule.about not in _BORNE:
        return False
    for at in range(clause.start, match.last):
        if tokens[at].word in _OURS and at + 1 < clause.end and _kin(tokens[at + 1]):
            after = tokens[at + 2] if at + 2 < clause.end else tokens[at]
            before = tokens[at - 2] if at - 2 >= clause.start else tokens[at]
            of = at > clause.start and tokens[at - 1].word == "de"
            if not after.keys.isdisjoint(_OF_PATIENT) and match.last >= at + 2:
                return tokens[at].word in ("my", "our")
            if of and not before.keys.isdisjoint(_OF_PATIENT):
                return True
    return False


def _kin(token: Token) -> bool:
    return "<person>" in token.keys or token.word.removesuffix("s").rstrip("'") in _KINDRED


_KINDRED = frozenset(
    "son daughter husband wife mum mom dad brother sister kid boy girl mother father friend nan "
    "gran neighbour neighbor boyfriend girlfriend partner nephew niece uncle aunt cousin".split()
)
