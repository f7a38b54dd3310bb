"""What is told without its verb, and what is told to be over."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from bot.model.observation import Observation
from bot.model.reading import Context
from bot.model.topics import denied

from . import suppress
from .attach import medicine
from .clauses import Clause
from .matching import Match
from .settle import Found
from .token import Token


def also_given(
    tokens: list[Token],
    clauses: list[Clause],
    found: list[Found],
    taken: set[int],
    context: Context,
) -> list[Found]:
    """ "Gave him his carprofen, and the gabapentin after": the verb holds for both."""
    out: list[Found] = []
    for item in found:
        after = item.match.clause + 1
        if item.observation.about != "dose" or item.observation.value not in ("given", "missed"):
            continue
        while after < len(clauses) and clauses[after].sentence == clauses[after - 1].sentence:
            clause = clauses[after]
            if after in taken or clause.joiner != "and" or "<neg>" in clause.keys or clause.moods:
                break
            for name in medicine(tokens, clause, context):
                if name != item.observation.med:
                    span = (tokens[clause.start].start, tokens[clause.end - 1].end)
                    new = Observation("dose", item.observation.value, med=name, span=span)
                    out.append(Found(new, item.match))
            after += 1
    return out


def as_well(found: list[Found]) -> list[Found]:
    """ "Gave the antibiotic and also gave the carprofen": beside another medicine that was
    told, "also" is no second dose."""
    out: list[Found] = []
    for item in found:
        told = item.observation
        others = (
            f.observation
            for f in found
            if f.match.first < item.match.first and f.observation.value == "given"
        )
        if (
            "aswell" in item.match.rule.tags
            and told.value == "doubled"
            and told.med
            and any(other.med and other.med != told.med for other in others)
        ):
            item = Found(replace(told, value="given"), item.match, item.final)
        out.append(item)
    return out


def brought_up(found: list[Found]) -> list[Found]:
    """A pill that came up again is vomiting as well, where that was not said besides."""
    pills = [f for f in found if f.observation.value == "vomited_up"]
    if not pills or any(f.observation.about == "vomiting" for f in found):
        return []
    return [Found(Observation("vomiting", "yes", span=pills[0].observation.span), pills[0].match)]


def over_by_now(found: list[Found], clauses: list[Clause], tokens: list[Token]) -> list[Found]:
    """The findings but for those that are told to be over."""
    return resolve_past(on_its_feet(found, tokens), clauses)


def on_its_feet(found: list[Found], tokens: list[Token]) -> list[Found]:
    """ "Couldn't get up on monday, now he trots": that it did not stand is over where it is told
    later in the same words how it walks now."""
    out: list[Found] = []
    for item in found:
        if "footing" in item.match.rule.tags and not item.match.denied:
            later = [f for f in found if f.match.clause > item.match.clause and not f.past]
            walks = any(
                (f.observation.about, f.observation.value) in _WALKS and not f.observation.unsure
                for f in later
            )
            if (walks or _up_again(tokens, item.match)) and not _down_too(found, item):
                item.match.void = suppress.OVER
                if item.past and not walks:
                    better = Observation("mobility", "better", span=item.observation.span)
                    out.append(Found(better, item.match))
                continue
        out.append(item)
    return out


def _up_again(tokens: list[Token], match: Match) -> bool:
    """ "Up again no bother", "ya se paró solo"."""
    words = [token.word for token in tokens[match.last + 1 : match.last + 10]]
    for at, pair in enumerate(pairwise(words)):
        if pair in _RISES:
            return not any("<neg>" in t.keys for t in tokens[match.last + 1 : match.last + at + 1])
    return False


def _down_too(found: list[Found], item: Found) -> bool:
    """Whether it is told besides, by more than the feet, that it lies there."""
    return any(
        f.observation.about in ("seizure", "breathing", "gums", "leg")
        or (f.observation.value == "collapsed" and "footing" not in f.match.rule.tags)
        for f in found
        if f is not item and f.observation.value not in ("normal", "pink", "no")
    )


_WALKS = frozenset(
    (
        ("weight_bearing", "full"), ("weight_bearing", "partial"),
        ("weight_bearing", "toe_touching"), ("walk", "done"), ("mobility", "better"),
        ("energy", "normal"),
    )
)  # fmt: skip
_RISES = frozenset(
    (first, second)
    for first, seconds in (
        ("up", ("again", "and", "now", "in", "straight")), ("back", ("up",)), ("got", ("up",)),
        ("gets", ("up",)), ("stood", ("up",)), ("is", ("up",)), ("hes", ("up",)), ("shes", ("up",)),
        ("se", ("paro", "levanto", "incorporo")), ("ya", ("camina", "anda", "corre")),
        ("he", ("walks", "trots", "runs")), ("she", ("walks", "trots", "runs")),
    )
    for second in seconds
)  # fmt: skip


def resolve_past(found: list[Found], clauses: list[Clause]) -> list[Found]:
    """ "Sick the first night, but not since": the finding is over, and said to be absent."""
    out: list[Found] = []
    for number, item in enumerate(found):
        clause = clauses[item.match.clause]
        about = item.observation.about
        absent = denied(about, item.observation.value)
        if "near_past" in clause.moods and absent and not item.match.denied and not item.match.held:
            later = [
                c for c in clauses[item.match.clause :]
                if "since_not" in c.moods and c.sentence - clause.sentence <= 1
            ]  # fmt: skip
            again = [
                f
                for f in found[number + 1 :]
                if f.observation.about == about and f.observation.value != absent
            ]
            if later and not again:
                data = item.observation.as_dict()
                data = {"about": about, "value": absent, "span": data["span"]}
                item.match.void = suppress.OVER
                out.append(Found(Observation.from_dict(data), item.match, item.final))
                continue
        out.append(item)
    return out


def of_the_dead(found: list[Found], clauses: list[Clause]) -> list[Found]:
    """How a patient died is told with its death, and calls nobody to hurry any more."""
    told = {
        clauses[item.match.clause].sentence
        for item in found
        if item.observation.about == "life" and not item.observation.unsure
    }
    return [
        item
        for item in found
        if item.observation.about in ("life", "request")
        or clauses[item.match.clause].sentence not in told
    ]


def not_until(
    found: list[Found], tokens: list[Token], clauses: list[Clause], context: Context
) -> list[Found]:
    """ "He didn't get his pill till half past one": then he got it, late."""
    return [
        Found(replace(f.observation, value="given"), f.match, f.final)
        if f.observation.value == "missed"
        and f.observation.about == "dose"
        and not _ahead(tokens, clauses[f.match.clause])
        and _until_an_hour(tokens, clauses, f.match, context.at)
        else f
        for f in found
    ]


def _until_an_hour(
    tokens: list[Token], clauses: list[Clause], match: Match, now: int | None
) -> bool:
    """Whether the sentence goes on to an hour that has passed."""
    sentence = clauses[match.clause].sentence
    end = max(clause.end for clause in clauses if clause.sentence == sentence)
    until = False
    for token in tokens[match.first + 1 : end]:
        until = until or token.word.split("_")[0] in _UNTIL
        if until and "<clock>" in token.keys and token.value is not None:
            return now is None or token.value <= now
    return False


def _ahead(tokens: list[Token], clause: Clause) -> bool:
    """ "Won't be able to give it till nine" tells of no hour that was."""
    return any(tokens[at].word in _WILL for at in range(clause.start, clause.end))


_WILL = frozenset(
    "wont will ill cant cannot able going gonna voy vamos podre podremos puedo va".split()
)
_UNTIL = frozenset("till til until hasta".split())


def not_yet(found: list[Found], tokens: list[Token]) -> list[Found]:
    """ "Todavía no, al rato": put off, and so not left out."""
    later = any(f.observation.value == "snooze" for f in found)
    return [
        f
        for f in found
        if not (later and (f.observation.about, f.observation.value) == ("dose", "missed"))
        or not all(tokens[at].word in _NOT_YET for at in f.match.at)
    ]


_NOT_YET = frozenset("no not yet todavia aun havent hasnt didnt now ahorita".split())
