"""Whom a clause is about: this patient, another animal, or a person."""

from __future__ import annotations

from .clauses import Clause
from .token import Token

PREPOSITIONS = frozenset(
    "with con of by to at from for like como than que al against contra after tras para pa hacia "
    "por on in en entre del "
    "over into onto past beside chased chasing chase saw met sees persiguio correteo".split()
)
_SO_MANY = frozenset("double twice triple doubled doble triple".split())
"""What another is only measured by: "double the other one"."""
_CATS = frozenset("cat cats kitty kitten gato gata gatito gatita michi gatos".split())
_DOGS = frozenset("dog dogs doggy puppy perro perra perrito perrita perros".split())


_KIN = frozenset(
    "neighbour neighbor sister brother friend mum mom mother dad father daughter son cousin aunt "
    "uncle nan gran grandma mate boss colleague roommate flatmate nephew niece partner boyfriend "
    "girlfriend ex landlord law".split()
)
_KIN_ES = frozenset(
    "vecino vecina vecinos hermana hermano mama papa hija hijo prima primo tia tio amiga amigo "
    "suegra suegro cunada cunado abuela abuelo comadre compadre sobrina sobrino novia novio jefe "
    "jefa lado enfrente inquilino".split()
)
_OUTSIDERS = frozenset(
    "postman neighbour neighbor friend mate colleague boss cousin lady man".split()
)
_BEYOND = frozenset(("door", "doors", "road", "street", "stairs", "opposite"))


def belongs_elsewhere(tokens: list[Token], place: int, end: int) -> bool:
    """ "My sister's spaniel", "the bulldog next door", "el perro de mi vecina"."""
    if "<animalnoun>" not in tokens[place].keys:
        return False
    before = tokens[place - 1].word if place else ""
    for owner in reversed(tokens[max(0, place - 3) : place]):
        if _KIN & {owner.word[:-1] * owner.word.endswith("s"), owner.base}:
            return True  # "my mum's old dog", "their neighbour's little brown cat"
        if owner.keys & {"<patient>", "<person>", "<joiner>", "<function>"}:
            break
    if before in ("his", "her", "their", "su"):
        said = tokens[max(0, place - 6) : place - 1]
        if any(t.word in _OUTSIDERS or t.word in _KIN_ES for t in said):
            return True
    after = [t.word for t in tokens[place + 1 : min(place + 6, end)]]
    if after[:1] == ["next"] or after[:2] in (["over", "the"], ["across", "the"], ["down", "the"]):
        return bool(set(after[1:3]) & _BEYOND)
    if after[:1] and after[0] in ("de", "del"):
        return bool(set(after[1:4]) & _KIN_ES)
    return False


_DEEDS = frozenset("<bite> <jumpword> <fallword> <roughword> <chew> <lick>".split())
_DONE_TO = frozenset("him her him's le lo la his".split())


def _hurts(deed: list[Token]) -> bool:
    """ "Next door's dog bit him": what follows is of this patient again."""
    return any(t.word in _DONE_TO for t in deed) and any(
        not t.keys.isdisjoint(_DEEDS) or t.word in _ATTACKS for t in deed
    )


_ATTACKS = frozenset("attacked ataco got grabbed agarro hit knocked tumbo tiro barged".split())
_LIKENED = frozenset(
    "those these same as like como igual mismo misma esos esas aquellos parece parecen "
    "seems".split()
)  # fmt: skip
"""Words before another animal that only compare: "one of those fits our old dog had"."""

_IS = frozenset({"fue", "was", "its", "era", "is"})


def mark_people(tokens: list[Token], clauses: list[Clause]) -> None:
    """Clauses about a person's own body, and what hangs on them; reports that are denied."""
    person = False
    sentence = -1
    for number, clause in enumerate(clauses):
        if clause.sentence != sentence:
            sentence, person = clause.sentence, False
        own = any("<patient>" in t.keys for t in tokens[clause.start : clause.end])
        if "<itsme>" in clause.keys:
            _claim(clauses, number)
        elif _of_me(tokens, clause) or _own_body(tokens, clause) or _a_child(tokens, clause):
            person = True
            clause.person_at = _of_mine_only(tokens, clause)
            for before in clauses[max(0, number - 2) : number]:
                if (
                    before.sentence == sentence
                    and "<mine>" in clause.keys
                    and "<bleedword>" in before.keys
                ):
                    before.person = True
        elif own or "<wound>" in clause.keys:
            person = False
        elif number and _goes_on_of_person(tokens, clauses[number - 1], clause):
            person = True
        clause.person = person or clause.person
        if clause.rank == 2 and number and "<reported>" in clauses[number - 1].keys:
            told = clauses[number - 1]
            first = {t.word for t in tokens[told.start : told.start + 4]}
            mine = {t.word for t in tokens[clause.start : clause.start + 3]}
            if told.sentence == sentence and not first & _SPEAKER and mine & _SPEAKER:
                told.moods.add("denied")
        if "denied" in clause.moods:
            for before in clauses[max(0, number - 3) : number]:
                if before.sentence == sentence and "<reported>" in before.keys:
                    before.moods.add("denied")


def _of_me(tokens: list[Token], clause: Clause) -> bool:
    """Words of the writer's own body, but "a hole big enough for my thumb"."""
    return any(
        "<mine>" in tokens[at].keys and (not at or tokens[at - 1].word not in _MEASURES)
        for at in range(clause.start, clause.end)
    )


_MEASURES = frozenset("for with as than like para con como".split())


def _claim(clauses: list[Clause], number: int) -> None:
    """ "Collapsed on the couch, me not him", "la que gritó fui yo": told of the writer."""
    clause = clauses[number]
    clause.person = True
    if number and clause.end - clause.start <= _ONLY_ME:
        before = clauses[number - 1]
        before.person = before.person or before.sentence == clause.sentence


def _disown(before: Clause, clause: Clause) -> None:
    """ "The old lab threw up, not this one": told of another animal."""
    if before.sentence == clause.sentence and not before.other:
        before.other, before.other_at = True, before.start


_ONLY_ME = 5
"""Words up to which a clause says nothing but whose the statement before it is."""

_CLAIMS = frozenset(
    "mine is_mine was_mine are_mine of_mine es_mia es_mio era_mia era_mio mi_sangre my_blood "
    "my_own it_was_me its_me_that its_me_thats its_me_who from_my_nose my_nosebleed vomite_yo "
    "yo_vomite im_the_one i_was_the_one i_am_the_one soy_yo era_yo fui_yo son_mias son_mios "
    "eran_mias eran_mios soy_el_que soy_la_que".split()
)
_FROM = frozenset("from of de was is its es era fue that".split())


def _of_mine_only(tokens: list[Token], clause: Clause) -> int:
    """Where words of the writer's own body begin a statement of their own: "she is limping my
    stomach is in knots". -1 where they claim what was told: "the blood was from my nose"."""
    for place in range(clause.start, clause.end):
        token = tokens[place]
        if not token.keys.isdisjoint(_CLAIMS) or _it_is_me(tokens, place, clause.end):
            return -1
        if "<mine>" in token.keys or token.word in ("my", "mi", "mis"):
            linked = place > clause.start and tokens[place - 1].word in _FROM
            return -1 if linked else place
    return -1


def _it_is_me(tokens: list[Token], place: int, end: int) -> bool:
    """ "El que sangra soy yo"."""
    return tokens[place].word == "soy" and place + 1 < end and tokens[place + 1].word == "yo"


_FAMILY = frozenset("my mi our his her".split())


def _goes_on_of_person(tokens: list[Token], before: Clause, clause: Clause) -> bool:
    """ "My brother has epilepsy and had a seizure": the second verb has the same subject."""
    if clause.joiner != "and" or before.sentence != clause.sentence:
        return False
    head = [t for t in tokens[before.start : before.end] if "<joiner>" not in t.keys]
    if len(head) < 3 or head[0].word not in _FAMILY or "<person>" not in head[1].keys:
        return False
    named = any(
        "<patient>" in t.keys and "<person>" not in t.keys and t.word not in _FAMILY
        for t in tokens[before.start : clause.end]
    )
    return not named


_SPEAKER = frozenset("i ive im we weve id yo lo".split())


_HELD = frozenset("in on onto off at against into en sobre contra for than like as".split())
"""In my arms, on my knee, off my hand: the patient's place, not the owner's ailment."""


def _own_body(tokens: list[Token], clause: Clause) -> bool:
    for place in range(clause.start, clause.end - 1):
        if tokens[place].word in ("my", "mi", "mis"):
            for at in range(place + 1, min(place + 3, clause.end)):
                if "<ownbody>" in tokens[at].keys and tokens[place - 1].word not in _HELD:
                    ahead = {t.word for t in tokens[at + 1 : at + 4]}
                    return not ahead & {"turned", "turns"}  # "when my back is turned"
    return False


_SCHOOL = frozenset(
    "nursery school kindergarten preschool playgroup creche kinder escuela guarderia "
    "colegio".split()
)
_CAUGHT = frozenset("something bug virus lurgy thing algo bicho gripa".split())


def _a_child(tokens: list[Token], clause: Clause) -> bool:
    """ "My little girl has a bug from nursery": a child, whatever else it may be called."""
    head = [t.word for t in tokens[clause.start : clause.start + 3]]
    said = tokens[clause.start : clause.end]
    eats = any("<eat>" in t.keys or t.word in _SPEAKER for t in said)
    if eats or not OURS & set(head):
        return False
    return any(
        token.word in _SCHOOL and any(t.word in _CAUGHT for t in said[max(0, at - 5) : at])
        for at, token in enumerate(said)
    )


_GOES_ON = frozenset(
    "he she it they hes shes its theyre his her their who which that el ella que su le se".split()
)
_TELLS = frozenset("fijese fijate digo dice cuento comento resulta pasa sabe es creo".split())


OURS = frozenset("my our mi nuestro nuestra".split())
_ONE_OF_MANY = frozenset("a an the his her its my some of un una su sus el la los las de".split())


def mark_own_name(tokens: list[Token], own: frozenset[str], lang: str) -> None:
    """The patient's name stands for it as "he" does; "ate a biscuit" does not name Biscuit,
    "perdimos a Biscuit" and "my Biscuit died" do."""
    common = _ONE_OF_MANY if lang == "en" else _ONE_OF_MANY - {"a"}
    for place, token in enumerate(tokens):
        before = tokens[place - 1].word if place else ""
        begins = place == 1 or (place > 1 and tokens[place - 1].cut > 0)
        named = not own.isdisjoint((token.word, *token.keys))
        if before in ("la", "el") and not _food_there(tokens, place - 1):
            before = ""  # "se nos murió la Canela"
        if named and (before not in common or (before in OURS and begins)):
            token.keys |= {"<patient>"}


def _food_there(tokens: list[Token], place: int) -> bool:
    """Whether what is named there may be something to eat: "se comió la canela"."""
    return any(not t.keys.isdisjoint(_FED) for t in tokens[max(0, place - 4) : place])


_FED = frozenset("<eat> <food> <meds> <vomit> <drink> <chew> <lick> con de en sin".split())


_SAID_WELL = frozenset(("<good>", "<formed>"))
"""They end a statement of the patient: "popó firme | mi otro perro vomitó"."""


def mark_subjects(
    tokens: list[Token],
    clauses: list[Clause],
    species: str,
    own: frozenset[str],
    found: set[int],
) -> bool:
    """Find clauses about other animals; True when any is spoken of at all. ``found``: the
    clauses that tell a finding. What tells none is only in passing: what follows without a
    subject is of our patient again."""
    any_other = False
    wrong = _DOGS if species == "cat" else _CATS
    sticky = passing = False
    sentence = -1
    for number, clause in enumerate(clauses):
        if clause.sentence != sentence:
            sentence, sticky = clause.sentence, False
        if "<notours>" in clause.keys and number and clause.end - clause.start <= _ONLY_ME:
            _disown(clauses[number - 1], clause)
        other_at: int | None = None
        elsewhere = False
        for place in range(clause.start, clause.end):
            token = tokens[place]
            elsewhere = belongs_elsewhere(tokens, place, clause.end)
            other_leg = token.word in ("la", "otra", "other") and any(
                not t.keys.isdisjoint(("<legword>", "<otherleg>", "<joint>"))
                for t in tokens[place + 1 : min(place + 3, clause.end)]
            )
            if ("<otheranimal>" in token.keys and not other_leg) or elsewhere:
                owned = place and tokens[place - 1].word[:-1] in _KIN
                other_at = place - 1 if owned else place
                break
            if token.word in wrong and place > clause.start:
                before = tokens[place - 1].word
                if before in ("the", "my", "our", "el", "la", "mi", "nuestro", "nuestra"):
                    other_at = place
                    break
            if place == clause.start and token.word in wrong:
                other_at = place
                break
        if other_at is not None:
            ahead = {t.word for t in tokens[max(clause.start, other_at - 2) : other_at]}
            if other_at > clause.start + 1 and tokens[other_at - 2].word in _TELLS:
                ahead -= {"que"}  # "fíjese que mi otro perro"
            if ahead & (PREPOSITIONS | _SO_MANY):
                other_at = None
            else:
                any_other = True
        if other_at is not None:
            head = tokens[clause.start : other_at]
            patient_first = any(
                (
                    "<patient>" in t.keys
                    and t.word not in wrong
                    and t.word not in ("el", "la", "le", "lo")
                )
                or ("<sign>" in t.keys and head[-1].keys.isdisjoint(_SAID_WELL))
                for t in head
            )
            likened = any(t.word in _LIKENED for t in head)
            if likened:
                clause.compared = other_at
            elif not patient_first or elsewhere or (head and head[-1].word in _IS):
                clause.other = True
                clause.other_at = other_at
                clause.done_to = _hurts(tokens[other_at : clause.end])
                sticky = not clause.done_to and "general" not in clause.moods
                passing = number not in found and clause.end - other_at > 3
        elif sticky:
            first = tokens[clause.start : clause.start + 3]
            back = (
                any(
                    t.word in own
                    or t.word
                    in (
                        "ella",
                        "mine",
                        "ours",
                        "mio",
                        "mia",
                        "patient",
                        "himself",
                        "herself",
                        "nuestro",
                        "este",
                    )
                    or (species == "dog" and t.word in _DOGS)
                    or (species == "cat" and t.word in _CATS)
                    for t in first
                )
                or clause.rank == 2
                or clause.joiner == "but"
                or (
                    passing
                    and number in found
                    and clause.joiner == ""
                    and first[0].word not in _GOES_ON
                )
            )
            if back:
                sticky = False
            else:
                clause.other = True
                passing = False
    return any_other
