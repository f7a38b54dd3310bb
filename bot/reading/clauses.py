"""Where one statement ends and the next begins."""

from __future__ import annotations

from dataclasses import dataclass, field

from .eras import turns
from .token import Token

LONGEST = 40
"""Words in one clause; a run-on without any boundary is cut there."""

_AND = frozenset("and y e plus ademas".split())
_BUT = frozenset("but pero however although though aunque sino except excepto".split())
_OPEN = frozenset(
    "then luego entonces so because porque now ahora whereas while mientras which since_then "
    "otherwise despues".split()
)
_TOLD_BY = frozenset("know tell remember say guess sure of on in".split())
"""Before \"which\", which then goes on with them: \"you'd not know which leg it was\"."""
_SUBJECT = frozenset("he she hes shes it its they we i theres ive im".split())
_HOLDS = frozenset(
    "that if when because since after before as than think thinks hope wish say says said and so "
    "where what how why until while like for sure know does did is was has can should will do had "
    "until told feel feels whenever once till wherever dont doesnt didnt but or whether isnt could "
    "would are were which who cant wont hasnt have must may might shall though "
    "although unless".split()
)


def _joins(tokens: list[Token], index: int) -> bool:
    """Whether "so" begins a clause, before a subject."""
    after = tokens[index + 1].word if index + 1 < len(tokens) else ""
    return after in _SUBJECT or after in ("the", "that", "my", "his", "her", "no", "im")


def _topic(token: Token) -> bool:
    return "<poo>" in token.keys or "<pee>" in token.keys


_BEFORE_TIME = frozenset("his her the this that every each yesterday tomorrow one".split())
"""Before "morning", "evening", "night", which then greet nobody."""
_WHOSE = frozenset("his her its".split())
"""Before them it goes on: "his morning pills"."""
_NIGHTS = frozenset("last all the every per a at".split())


def _participle(tokens: list[Token], index: int) -> bool:
    """Whether a Spanish participle stands there: visto, dado, podido."""
    word = tokens[index].word if index < len(tokens) else ""
    return word.endswith(("ado", "ido")) or word in ("visto", "hecho", "dicho", "puesto")


_WHICH = frozenset("which what whose".split())
_CLITIC = frozenset("lo la le los las les me se nos te ya no".split())
_POLITE = frozenset(("<thanks>", "<hello>"))
_RELATIVE = frozenset("had rang saw noticed mentioned called told phoned spoke showed sent".split())


@dataclass(slots=True)
class Clause:
    """A stretch of tokens ``[start, end)`` in one sentence, and how it is meant."""

    start: int
    end: int
    sentence: int
    rank: int  # how strong the boundary before it is
    joiner: str = ""
    asked: bool = False  # its sentence ends in a question mark
    keys: frozenset[str] = frozenset()
    moods: set[str] = field(default_factory=set)
    begun: dict[str, int] = field(default_factory=dict)  # where the words of a mood begin
    carried: bool = False  # denied by the clause before ("no pus, smell or blood")
    other: bool = False  # about another animal
    other_at: int = -1  # where that one is named, if in this clause
    compared: int = -1  # where another animal is named only to compare ("fits our old dog had")
    person: bool = False  # about a human being
    person_at: int = -1  # where that one is named, if in this clause
    done_to: bool = False  # another animal, or a person, does it to the patient


_ASK_HEADS = frozenset("is should shall can do does any what es que should".split())
_ASK_NEXT = frozenset("that this it i we normal hago hacemos advice shall".split())


def _asks(tokens: list[Token], index: int, previous: str) -> bool:
    """ "... a bit puffy | is that normal": a question tacked on without a mark."""
    word = tokens[index].word
    after = tokens[index + 1].word if index + 1 < len(tokens) else ""
    if (
        word not in _ASK_HEADS
        or after not in _ASK_NEXT
        or previous in _HOLDS
        or previous in ("no", "lo")
        or (word == "do" and after == "it")  # "saw her do it"
    ):
        return False
    if word == "is":
        third = tokens[index + 2].word if index + 2 < len(tokens) else ""
        return third in (
            "normal",
            "ok",
            "okay",
            "bad",
            "alright",
            "fine",
            "right",
            "usual",
            "too",
            "a",
        )
    if word == "es":  # "su respiración es normal" tells
        return after == "normal" and tokens[index - 1].keys.isdisjoint(_NAMED)
    return True


_NAMED = frozenset(
    (
        "<breath>",
        "<gumword>",
        "<poo>",
        "<pee>",
        "<wound>",
        "<legword>",
        "<appetiteword>",
        "<tempword>",
    )
)


_BEGINS = frozenset(
    "his her the he she its it theres there my our shes hes le se tiene esta trae la el lo no "
    "ya".split()
)
_HELP = (
    ("what", "do", "i", "do"), ("what", "should", "i", "do"), ("what", "shall", "i", "do"),
    ("what", "can", "i", "do"), ("what", "do", "we", "do"), ("what", "now"), ("que", "hago"),
    ("que", "hacemos"), ("ok", "hago"), ("please", "help"), ("ayuda",), ("auxilio",), ("help",),
    ("que", "debo", "hacer"), ("que", "le", "hago"), ("que", "puedo", "hacer"),
)  # fmt: skip


_HELP_ENDS = frozenset(words[-1] for words in _HELP)


def _asked_for_help(tokens: list[Token], index: int) -> bool:
    """ "What do I do his stitches are open": told without a stop after the question."""
    return tokens[index - 1].word in _HELP_ENDS and any(
        index >= len(words)
        and all(tokens[index - len(words) + n].word == word for n, word in enumerate(words))
        for words in _HELP
    )


def split(tokens: list[Token]) -> list[Clause]:
    """Clauses in order; together they cover every token."""
    starts: list[tuple[int, int, str]] = []
    size = 0
    back = turns(tokens)
    for index, token in enumerate(tokens):
        rank, joiner = token.cut, ""
        if index in back:
            rank, joiner = max(rank, 2), "now"
        elif token.inside:
            size += 1
            continue
        word = token.word
        previous = tokens[index - 1].word if index else ""
        if index in back:
            pass
        elif word in _AND:
            rank, joiner = max(rank, 1), "and"
        elif word in _BUT:
            rank, joiner = max(rank, 2), "but"
        elif word in ("or", "nor", "ni", "o") and token.cut:
            joiner = "or"
        elif word == "so" and not _joins(tokens, index):
            pass  # "so swollen", "not so much as"
        elif word in _OPEN and size > 1 and not (word == "which" and previous in _TOLD_BY):
            rank, joiner = max(rank, 1), word
        elif (size and not token.keys.isdisjoint(_POLITE) and previous not in _BEFORE_TIME) or (
            index
            and not tokens[index - 1].keys.isdisjoint(_POLITE)
            and not (index > 1 and previous == "night" and tokens[index - 2].word in _NIGHTS)
            and word not in ("you", "u", "so")
            and previous not in _BEFORE_TIME
            and not (index > 1 and tokens[index - 2].word in _WHOSE)
            and tokens[index].keys.isdisjoint(("<meds>", "<food>"))  # "the evening pills"
        ):
            rank = max(rank, 1)
        elif (
            previous in ("yes", "no", "si")
            and size >= 2
            and _topic(token)
            and _topic(tokens[index - 2])
        ):
            rank = max(rank, 1)  # "pee yes poop no"
        elif word == "he" and previous in _CLITIC and _participle(tokens, index + 1):
            pass  # "no lo he visto"
        elif word in _SUBJECT and size >= 2 and previous not in _HOLDS and not token.cut:
            nxt = tokens[index + 1].word if index + 1 < len(tokens) else ""
            if previous == "time" and tokens[index - 2].word in ("last", "first", "every", "each"):
                pass  # "the last time he peed"
            elif index > 1 and tokens[index - 2].word in _WHICH:
                pass  # "which leg it was"
            elif word in ("we", "i") and size <= 4 and nxt in _RELATIVE:
                pass  # "the swelling we had", "the bleeding I rang about"
            elif word not in ("it", "i") or nxt in ("is", "was", "has", "looks", "gave", "did"):
                rank, joiner = max(rank, 1), "subject"
        elif size >= 2 and not token.cut and word in _BEGINS and _asked_for_help(tokens, index):
            rank, joiner = max(rank, 1), "subject"
        elif size >= 2 and not token.cut and _asks(tokens, index, previous):
            rank, joiner = max(rank, 1), "asks"
        if index == 0 or rank or size >= LONGEST:
            if rank and size == 1 and index and rank < 3 and token.cut == 0:
                only = tokens[index - 1].word
                if only in _AND or only in _BUT or only in _OPEN:
                    size += 1
                    continue
            starts.append((index, 3 if index == 0 else rank, joiner))
            size = 0
        size += 1
    clauses: list[Clause] = []
    sentence = -1
    for number, (start, rank, joiner) in enumerate(starts):
        end = starts[number + 1][0] if number + 1 < len(starts) else len(tokens)
        if rank == 3:
            sentence += 1
        keys: frozenset[str] = frozenset().union(*(t.keys for t in tokens[start:end]))
        clauses.append(Clause(start, end, sentence, rank, joiner, keys=keys))
    asked = {c.sentence for c in clauses if tokens[c.end - 1].asks}
    for clause in clauses:
        clause.asked = clause.sentence in asked
    return clauses
