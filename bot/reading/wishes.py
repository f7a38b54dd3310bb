"""Wishes: whose they are, and what told beside them still stands."""

from __future__ import annotations

from bot.model.topics import denied
from bot.model.vocabulary import TOPICS

from .clauses import Clause
from .matching import Match
from .token import Token

CLEARING = {
    (about, value)
    for about in TOPICS
    for value in ("normal", "none", "clean", "fine", "pink", "full", "no", "better", "given")
} - {("appetite", "none"), ("drinking", "none"), ("stool", "none"), ("urine", "none"),
     ("weight_bearing", "none")}  # fmt: skip
"""Good news: never read from a word that was only guessed."""

_DONE = frozenset(("given", "done", "on"))


def told_trouble(match: Match) -> bool:
    """Whether it tells a trouble: no good news, and nothing that a household has done."""
    about, value = match.rule.about, match.rule.value
    said = denied(about, value) if match.denied else value
    return said is not None and tells_trouble(about, said)


def tells_trouble(about: str, value: str) -> bool:
    """Whether a value is a trouble."""
    return value not in _DONE and (about, value) not in CLEARING


def beside_wish(match: Match, tokens: list[Token], clause: Clause) -> bool:
    """What is told before a wish stands ("it is swollen wish it would go down"), and so does
    what follows one of people ("hope your weekend was lovely his gums are white")."""
    wishes = [at for at in range(clause.start, clause.end) if "<wish>" in tokens[at].keys]
    if not wishes or match.last < wishes[0]:
        return bool(wishes)
    if _could(tokens, wishes[-1] + 1, match.first):
        return False
    return match.first - wishes[-1] >= 3 and of_people(tokens, clause)


def _could(tokens: list[Token], at: int, to: int) -> bool:
    """ "Wish | i could take her for a run": what the writer would do, and no other is named."""
    words = [token.word for token in tokens[at:to]]
    could = words[:1] in (["i"], ["we"]) and words[1:2] in (["could"], ["can"])
    return could and _SUBJECT.isdisjoint(words[1:])


_YOU = frozenset("you u your youre yours yous ustedes usted".split())


def of_people(tokens: list[Token], clause: Clause) -> bool:
    """Whether what is wished begins with a person, or with what the writer would do: in
    Spanish a plural or an infinitive ("ojalá estén bien", "quisiera no molestar")."""
    for at in range(clause.start, clause.end):
        if "<wish>" not in tokens[at].keys:
            continue
        after = at + tokens[at].size(frozenset(("<wish>",)))
        while after < clause.end and tokens[after].word in ("que", "no", "that", "for"):
            after += 1
        if after < clause.end:
            word = tokens[after].word
            verb = len(word) > 3 and word.endswith(_SPANISH_OF_PEOPLE)
            named = any(t.word in _YOU for t in tokens[after : clause.end])
            ahead = [t.word for t in tokens[after : min(after + 3, clause.end)]]
            asked = ahead[:1] in (["it"], ["its"], ["thats"]) and ahead[-1] == "to"
            return asked or named or verb or word in _PEOPLE or "<person>" in tokens[after].keys
    return False


_PEOPLE = frozenset("you u your youre yours all everyone i im ive we some usted ustedes".split())
_SPANISH_OF_PEOPLE = ("gan", "ten", "den", "yan", "can", "ean", "ren", "ar", "er", "ir", "arles",
                      "erles", "irles", "arle", "erle", "irle", "arlos", "arlas")  # fmt: skip


_I_MEAN = frozenset("espero esperando quisiera queria quiero prefiero para".split())


def of_my_own(tokens: list[Token], place: int, target: int, start: int) -> bool:
    """ "Espero no interrumpir", "wish i didnt have to ask": what the writer means not to do,
    and no denial of the rest."""
    ahead = tokens[max(start, place - 2) : place]
    if target - place >= 4 and len(ahead) == 2:
        return "<wish>" in ahead[0].keys and ahead[1].word in ("i", "we")
    return (
        target - place >= 2
        and any(t.word in _I_MEAN for t in ahead[-1:])
        and tokens[place + 1].word.endswith(("ar", "er", "ir", "arlos", "arles", "irlos"))
    )


_SUBJECT = frozenset("he she it they i we hes shes its theyre".split())


def answers_no(tokens: list[Token], place: int, clause: Clause) -> bool:
    """ "No he collapsed by the gate": an answer, and then what happened."""
    ahead = place + 1
    return (
        tokens[place].word == "no"
        and place == clause.start
        and ahead < clause.end
        and tokens[ahead].word in _SUBJECT
    )
