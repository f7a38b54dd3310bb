"""Whether the words before a place are a whole statement that takes in nothing beyond it."""

from __future__ import annotations

from . import head_words as words
from .inquiry import opens_asking, wanted
from .language import guess, marks_of
from .tables import NUMBERS
from .token import Token
from .topical import ANOTHER, named_only, topical
from .verbs import OF_NOUNS, ends_in_a_verb, feared, is_verb, names_under_a_link

_LEADS_ON = frozenset(
    "before after since prior whenever if until with at antes despues desde cuando si "
    "mientras hasta aunque though although".split()
)


class Head:
    """The words before a place where a report may begin."""

    __slots__ = (
        "asked",
        "ends",
        "index",
        "lang",
        "last",
        "ours",
        "part",
        "report",
        "said",
        "start",
        "tokens",
    )

    def __init__(self, tokens: list[Token], start: int, near: int, index: int, lang: str) -> None:
        self.tokens, self.start, self.index = tokens, start, index
        self.said, self.part = tokens[start:index], tokens[max(start, near) : index]
        self.last, self.report = tokens[index - 1], tokens[index]
        self.lang = guess(self.said, "es" if lang == "es" else "en")
        said = self.said
        first = said[0]
        self.asked = (
            any(t.word in words.ASKED for t in said[:3])
            or not first.keys.isdisjoint(("<thanks>", "<hello>"))
            or (first.word in _INVERTED and len(said) > 1 and said[1].word in _SUBJECT)
            or opens_asking(said)
        )
        self.ours = self.asked or first.word in words.ABOUT_US
        self.ends = len(said) > 1 and self._ends()

    def _ends(self) -> bool:
        """Whether the last words are such as end a statement."""
        before, last = self.said[-2].word, self.last.word
        clausal = self.report.word in words.CLAUSAL | words.DETERMINERS
        return (
            (last in words.WHOLE and not (last == "there" and before in _INVERTED))
            or (before, last) in _PAIRS
            or (last in _POINTS and before in _PREPOSITIONS and (self.asked or clausal))
            or (
                self.ours
                and last in _PARTICLES
                and before not in (words.OPEN_ENDED | words.OBJECTS) - {"to", "i"}
            )
        )

    def ended(self) -> bool:
        """Whether they are a whole statement that takes in nothing of what follows."""
        said, part, report = self.said, self.part, self.report
        if len(said) < 2:
            before = self.start - 1
            return before >= 0 and self.tokens[before].aside and self.last.word in words.WHOLE
        if (
            said[0].word in words.PRONOUNS
            or any(not t.keys.isdisjoint(ANOTHER) for t in said)
            or self._asked_to_be_given()
            or (self._takes_more() and not self._turns())
            or self._names_the_report()
            or feared(self.tokens, self.index)
        ):
            return False
        if not self.asked and any(t.word in words.FOUND for t in said):
            return False
        if not report.cut and any(_leads_on(part, at) for at in range(min(2, len(part)))):
            return False
        if self._turns() and self.last.word not in _TAKES_MORE:
            return True
        if report.word in words.PRONOUNS:
            return True
        if (
            len(said) == 2
            and not self.ends
            and (not self.asked or said[0].word in _OPENS_A_QUESTION)
        ):
            return False  # "how often |", "can it |"
        if self.last.word in words.OBJECTS and said[-2].word in words.COMPLEMENT:
            return False
        alone = self.asked and len(part) == len(said)
        if not alone and not any(is_verb(t, self.lang) for t in part) and _may_be_subject(part):
            return False
        if not self.asked and is_verb(report) and said[-2].word in words.DETERMINERS:
            return False  # "because my lamp | is broken"
        if self._told_of_another():
            return True
        clausal = report.word in words.FINITE or bool(report.cut)
        if not clausal and names_under_a_link(said):
            return False
        return self.ends or not ends_in_a_verb(said) or _ours(said)

    def _told_of_another(self) -> bool:
        """ "If he cries | his gums are white", "si llora | tiene las encías blancas": the last verb
        has its subject, and so has the report."""
        before, last = self.said[-2].word, self.last.word
        theirs = self.tokens[self.index : self.index + _TELLING]
        if before in words.PRONOUNS and last not in _OF_THEIR_OWN:
            return theirs[0].word in _THEIRS and any("<be>" in t.keys for t in theirs[2:])
        return before in ("si", "cuando") and theirs[0].word in _HAS and len(theirs) > 1

    def _turns(self) -> bool:
        """Whether the report is told in the other language."""
        theirs = self.tokens[self.index : self.index + _TELLING]
        here, there = marks_of(self.said), marks_of(theirs)
        return (here[0] > 1 and here[1] == 0 and there[1] > there[0]) or (
            here[1] > 1 and here[0] == 0 and there[0] > there[1]
        )

    def _takes_more(self) -> bool:
        """Whether the last word is no end: it goes on into what it is about."""
        last, before = self.last, self.said[-2].word
        if last.word in words.REPORTING and self.report.word in words.PRONOUNS:
            return True
        if (
            before in _ONE
            and not self.ours
            and self.report.word not in words.CLAUSAL | words.DETERMINERS
        ):
            return True  # "a perfect | fit"
        if last.word in words.CAUSING or (last.word in words.CASES and before in _WHICH):
            return True  # "would that turn | his pee pink", "en qué casos | el vómito"
        return not self.ends and (
            last.word in words.OPEN_ENDED | words.COMPLEMENT | words.REPORTING | _PARTICLES
            or ((last.word[0].isdecimal() or last.word in NUMBERS) and before not in _OF_HOURS)
            or last.word in _DETERMINING
            or not last.keys.isdisjoint(_TAKEN)
            or ("<slight>" in last.keys and not before.endswith(_INFINITIVE))
            or (last.word == "you" and before in _INVERTED)
            or (last.word in ("me", "nos") and self.lang == "es")
        )

    def _asked_to_be_given(self) -> bool:
        """Whether the report begins with what the writer asks leave to give: "could i give him
        a baby | tylenol", "puedo darle | un paracetamol"."""
        return wanted(self.part, self.tokens[self.index : self.index + _GIVEN])

    def _names_the_report(self) -> bool:
        """Whether the last word belongs to what is told of the patient."""
        at = self.index - 1
        own = self.report.word in words.PRONOUNS or self.report.word in _THEIRS
        return (
            topical(self.tokens, at)
            and not wanted(self.said[:-1], self.said[-1:])
            and not named_only(self.tokens, at)
            and not _felt(self.said)
            and not (self.ours and own)
        )


_GIVEN = 3
"""Words that name what is given: "half an ibuprofen"."""
_WHICH = frozenset("que what which".split())
_ONE = ("a", "an", "un", "una", "the", "his", "her", "my", "our", "your")


_THEIRS = ("his", "her", "the", "su", "sus")
_HAS = ("tiene", "trae", "esta", "estan")
_OF_THEIR_OWN = frozenset("licks chews bites scratches shows opens moves holds lifts".split())
"""What an animal does to its own body: "if he licks his wound"."""


def _may_be_subject(part: list[Token]) -> bool:
    """Words without a verb of which the report may be told: "my toddler | has a fever"."""
    return (
        len(part) < 2
        or part[0].word in words.DETERMINERS
        or part[0].word in OF_NOUNS
        or any(t.keys & _SUBJECTS for t in part)
    )


_TAKES_MORE = words.COMPLEMENT | words.REPORTING | words.OPEN_ENDED
_TELLING = 4
"""So many words of the report tell its language."""
_OF_HOURS = frozenset("at until till by las la".split())


_INVERTED = frozenset(
    "is are am was were do does did can could shall should will would may might have has".split()
)


_OPENS_A_QUESTION = _INVERTED | frozenset(
    "what when where why how who which que cual como cuando cuanto cuanta cuantos cuantas donde "
    "quien puede pueden podria sera seria es".split()
)


_SUBJECT = frozenset("i we you u they he she it this that there the my your".split())


def _leads_on(part: list[Token], at: int) -> bool:
    """ "Before surgery |", "si vomita |"; and not "when is it"."""
    inverted = at + 1 < len(part) and (
        part[at + 1].word in _INVERTED or "<be>" in part[at + 1].keys
    )
    if at and part[at].word in words.LINKS and part[at - 1].word in words.ASKED:
        return False  # "wondering if i can pay later |"
    return part[at].word in _LEADS_ON and not (inverted and part[at].word in ("when", "cuando"))


def _felt(head: list[Token]) -> bool:
    """ "I am shaking", "no puedo parar de llorar": what the writer does, not the patient."""
    mine = any(
        t.word in words.ABOUT_US or t.word in ("my", "mi", "mis", "me", "puedo", "yo")
        for t in head[:2]
    )
    return (
        mine
        and not any("<patient>" in t.keys for t in head)
        and head[-1].word.endswith(("ing", "ando", "endo", *_INFINITIVE))
        and not head[-1].keys & {"<seeword>"}
    )


_WHAT = frozenset("what how who where whether".split())
_PARTICLES = frozenset("on up out off in over down back around do hacer".split())


_POINTS = frozenset("this that these those it them".split())


_DETERMINING = frozenset("this that these those".split())


_PREPOSITIONS = frozenset("about of for with from like to at on see do".split())


_SPANISH = frozenset("el la las los un una que de se le mi ni es por con para su en lo al".split())


_TAKEN = frozenset(("<took>", "<ingest>", "<gave>", "<handed>"))


_SUBJECTS = frozenset(("<person>", "<thing>", "<bearer>", "<patient>"))


def _ours(head: list[Token]) -> bool:
    """Whether the verb that ends the head is one of the writer's."""
    for token in reversed(head[:-1]):
        if token.word in words.ABOUT_US or token.word in ("u", "they", "dont", "me", "nos"):
            return True
        if token.word in ("se", "le", "lo", "la", "ha") or "<patient>" in token.keys:
            return False
    return head[0].word in words.ASKED or any(t.word in _WHAT for t in head[-3:-1])


_INFINITIVE = ("ar", "er", "ir", "arle", "irle", "erle")


_PAIRS = frozenset(
    (first, last)
    for first, last in (
        ("o", "no"), ("or", "not"), ("about", "that"), ("about", "it"), ("about", "this"),
        ("it", "all"), ("de", "mas"), ("about", "him"), ("about", "her"), ("cuenta", "antes"),
        ("your", "time"), ("otra", "vez"), ("que", "hacer"), ("que", "hago"), ("what", "do"),
        ("paso", "todo"), ("pasara", "todo"), ("thats", "all"), ("es", "todo"), ("que", "tal"),
        ("a", "todos"), ("a", "todas"),
    )
)  # fmt: skip
