"""The rules' reading of a round beside what the model thinks likely of each medicine.

What both say stands. What the model is sure of stands for what the rules made of that medicine;
where the rules say what it thinks unlikely, nothing is noted of it, and the reply is left open.
Never less than an alarm that the rules read: too much that was given stays as it was, and a dose
that may have been given twice is asked about.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import replace
from itertools import pairwise
from typing import Final

from bot.model.observation import Observation
from bot.model.reading import Context, Doubt, Reading
from bot.model.urgency import Urgency

from ..focus import NOUNS
from ..normalise import words_of
from ..unreal import unreal_from
from ..wishes import tells_trouble
from .beside import Reader
from .likely import likely
from .named import ABOUT, SETS, Group, Named, groups, named
from .words import SETS as ROUND_WORDS

MOST_WORDS: Final = 80
SURE: Final = 0.7
"""From this chance of its outcome on, a medicine's telling is believed without the rules."""
CERTAIN: Final = 0.9
"""The same of what was given, where the rules do not say so."""
BEYOND_DOUBT: Final = 0.97
"""The same where the rules account for every word, or a part of some other is told of."""
NEVER: Final = 0.12
"""Below it, a medicine is not noted as given though the rules account for every word."""
UNLIKELY: Final = 0.15
"""Below it, what the rules say of a medicine is not noted."""
LIKELY: Final = 0.75
"""The same of one that is named again, and noted as given: "gave it ... no wait, not that one"."""
TWICE: Final = 0.3
"""From this chance on, it is asked whether a dose was given twice."""
NO_SECOND: Final = 0.02
"""Below this chance of each, it is not asked on a faint suspicion whether it was too much: the
model that knows all replies has it of "him: carprofen, me: gabapentin"."""
_NOTED: Final = {"given": "given", "refused": "refused", "missed": "missed",
                 "vomited": "vomited_up"}  # fmt: skip
_OF_DOSES: Final = frozenset(("meds", "all", "some", "none"))
_STOP: Final = 3
_TWO: Final = 2


def weighed(text: str, context: Context, whole: Reading, read: Reader) -> Reading:
    """The reading by rules, with what is likely of each medicine that was due. Pure."""
    if not context.due or whole.unsettled:
        return whole
    said = named(text, context)
    if not 0 < len(said) <= MOST_WORDS:
        return whole
    as_read = whole
    if _alarms(whole):
        apart = _each_another(whole, said)
        if apart is None:
            return whole
        whole = apart
    if any(one.kind == "beyond" for one in said) or not any(one.isalpha() for one in text):
        return as_read
    found = groups(said)
    kinds = {one.kind for one in found}
    if kinds == {"some"} and (part_of := _fraction(text, context)):
        return _so_many_given(whole, *part_of)
    fewer = kinds != {"all"} or any(one.label[1:-1].isdecimal() for one in said)
    if fewer and any(_so_many(one, context) for one in whole.observations):
        return as_read  # and of which is asked; "3/3" is no third
    by_rules = any(one.about == "dose" for one in whole.observations)
    of_meds = "meds" in kinds or (not whole.asks and any(one.label == "<noun>" for one in said))
    listed = sum(one.kind == "meds" for one in found) >= _TWO  # "him: carprofen, me: gabapentin"
    handed = listed or any(map(_hands_over, said))
    if "meds" not in kinds and not by_rules and not handed:
        return as_read  # "all quiet here", "tres pisos sin elevador"
    if not kinds & _OF_DOSES or not (of_meds or by_rules or context.asked == "dose"):
        return as_read  # "not given", "all gone": what of, is not said
    chances = likely(said, found, whole, context)
    if max(each["twice"] for each in chances.values()) < NO_SECOND:
        whole = _once_each(whole, said, context)
    if twice := [med for med, each in chances.items() if each["twice"] >= TWICE]:
        return as_read if _alarms(as_read) else _asked(whole, twice)
    open_ = _not_told_by_itself(said, found, context)
    by_name = frozenset[str]().union(*(one.meds for one in found))
    part = any(one.label in SETS["part"] for one in said)
    often = Counter(med for one in found for med in one.meds)
    again = frozenset(med for med, times in often.items() if times > 1)
    asks = any(one.value == "question" for one in whole.observations)
    later = whole.round and any(one.value == "snooze" for one in whole.observations)
    undone = asks or later or unreal_from([token.word for token in words_of(text)]) is not None
    if undone or not (by_rules or handed):  # "puedo tocar la cefalexina sin problema"
        open_ = dict.fromkeys(chances, "given")
    denied_last = frozenset(med for med in again if _denied_last(said, found, med))
    settled = _settled(
        whole, context, chances, open_, by_name, again, denied_last=denied_last, part=part
    )
    return _as_told(text, context, whole, settled, said, found, read)


def _denied_last(said: Sequence[Named], found: Sequence[Group], med: str) -> bool:
    """ "Ya le di el carprofeno. no espera, esa era la gabapentina, el carprofeno | todavía no"."""
    last = max(one.end for one in found if med in one.meds)
    behind = [one.label for one in said[last : last + 2]]
    return behind[:1] == ["no"] or behind in (["todavia", "no"], ["aun", "no"], ["not", "yet"])


def _hands_over(one: Named) -> bool:
    """Whether a word tells of giving or taking, of when, of which not, or names what is given:
    "swallowed", "0800", "forgot", "pills"."""
    if one.kind == "except" or (one.label[:1].isdecimal() and len(one.label) > _TWO):
        return True
    return one.label == "<noun>" or not one.keys.isdisjoint(_DEEDS)


_DEEDS: Final = frozenset(
    ("<gave>", "<handed>", "<took>", "<donework>", "<meds>", "<pillword>",
     "does yes", "does gave", "does took", "does ate", "does doses", "does noun", "does fine",
     "<notdone>", "does only", "does self", "does half", "does part", "does refused", "<clock>")
)  # fmt: skip


def _fraction(text: str, context: Context) -> tuple[int, tuple[int, int]] | None:
    """How many of those that were due "2/3" is, and where it stands."""
    found = re.search(rf"(?<![\d/.,])([1-9])/{len(context.due)}(?![\d/])", text)
    if found is None or int(found[1]) >= len(context.due):
        return None
    return int(found[1]), found.span()


def _so_many_given(whole: Reading, number: int, span: tuple[int, int]) -> Reading:
    """Where the rules read a dose given, it is so many, and which is asked: no part of one."""
    given = ("dose", "given")
    if not any((one.about, one.value) == given and one.med is None for one in whole.observations):
        return whole
    others = (one for one in whole.observations if one.about != "dose")
    some = Observation(*given, count=number, span=span)
    return replace(whole, observations=(some, *others), round=True)


def _so_many(one: Observation, context: Context) -> bool:
    return one.about == "dose" and one.med is None and one.count not in (None, len(context.due))


def _alarms(whole: Reading) -> bool:
    """Whether too much was given, or may have been."""
    return any(map(_is_too_much, whole.observations))


def _once_each(whole: Reading, said: Sequence[Named], context: Context) -> Reading:
    """Without the faint suspicion of too much, where no number stands but of those due."""
    figures = (int(figure) for one in said if (figure := one.label[1:-1]).isdecimal())
    if any(one.label == "<number>" for one in said) or any(x > len(context.due) for x in figures):
        return whole
    asks = tuple(
        one for one in whole.asks if not (one.faint and (one.about, one.value) in _TOO_MUCH)
    )
    return whole if asks == whole.asks else replace(whole, asks=asks)


_TOO_MUCH: Final = {("swallowed", "medicine_overdose"), ("dose", "doubled")}


def _each_another(whole: Reading, said: Sequence[Named]) -> Reading | None:
    """Without the second dose that the rules read where two people gave something, where what each
    gave is another medicine: "my husband the capsule and I the syrup". None where it may be one."""
    over = [one for one in whole.observations if _is_too_much(one)]
    if any(one.about != "dose" for one in over) or any(one.label == "<number>" for one in said):
        return None
    more = ROUND_WORDS["more"] | ROUND_WORDS["doubling"]
    if not more.isdisjoint(one.label for one in said):
        return None
    given = [med for one in groups(said) if one.kind == "meds" for med in sorted(one.meds)]
    if len(given) < 2 or len(set(given)) < len(given):
        return None
    rest = tuple(one for one in whole.observations if one not in over)
    return replace(whole, observations=rest, understood=False)


def _is_too_much(one: Observation) -> bool:
    return one.about == "swallowed" or (one.about, one.value) == ("dose", "doubled")


def _asked(whole: Reading, meds: Sequence[str]) -> Reading:
    """The rules read no second dose, the model does: nothing is noted of it before it is asked."""
    left = tuple(
        one for one in whole.observations
        if (one.about, one.value) != ("dose", "given")
        or (one.med is not None and one.med not in meds)
    )  # fmt: skip
    doubt = Doubt("dose", "doubled", Urgency.same_day)
    asks = [one for one in whole.asks if (one.about, one.value) != (doubt.about, doubt.value)]
    why = f"a second dose is likely: {', '.join(meds)}"
    return replace(
        whole, observations=left, understood=False, asks=(doubt, *asks),
        reasons=(*whole.reasons, why),
    )  # fmt: skip


def _settled(
    whole: Reading,
    context: Context,
    chances: Mapping[str, Mapping[str, float]],
    open_: Mapping[str, str],
    by_name: frozenset[str],
    again: frozenset[str],
    *,
    denied_last: frozenset[str],
    part: bool,
) -> dict[str, str]:
    """What has become of each: what the model is sure of, else what the rules say unless it is
    unlikely; ``open`` where it is neither. That it was not given is believed sooner, and where a
    ``part`` is spoken of, nothing else. ``again``: those named more than once; ``denied_last``:
    with a "not yet" behind the last."""
    as_outcome = {value: outcome for outcome, value in _NOTED.items()}
    rules = _by_rules(whole, context, by_name)
    # Beside a trouble nothing that may belong to it is taken back, nor of what is not named.
    troubled = any(
        one.about not in ("dose", "request") and tells_trouble(one.about, one.value)
        for one in whole.observations
    )
    # What is told of a part is of another medicine than these.
    halves = {med for med, each in chances.items() if each["half"] >= SURE}
    whole_ones = by_name - halves if halves else frozenset[str]()
    out: dict[str, str] = {}
    for med, each in chances.items():
        likeliest, chance = max(each.items(), key=lambda pair: pair[1])
        by_rules = as_outcome.get(rules.get(med, ""), "untold")
        denied = by_rules in ("missed", "refused") and (
            troubled or likeliest == "untold" or (med not in by_name and likeliest != "later")
        )
        if by_rules == "vomited" or denied:
            out[med] = by_rules
            continue
        if by_rules == "given" and med in denied_last:
            out[med] = "open"
            continue
        if whole.round and (chance < BEYOND_DOUBT or by_rules != "untold"):
            # Every word is accounted for: only what is as good as impossible is not noted.
            out[med] = by_rules if by_rules != "given" or each[by_rules] >= NEVER else "open"
            continue
        given = likeliest == "given" and by_rules != "given"
        # A dose that was given and is noted as not given may be given twice.
        otherwise = given or (by_rules == "given" and likeliest != "given")
        least = BEYOND_DOUBT if given and part else CERTAIN if otherwise else SURE
        from_beside = open_.get(med) in ("any", "given" if given else "not given")
        if chance >= least and not (given and part and med not in whole_ones) and not from_beside:
            out[med] = likeliest
        else:
            kept = LIKELY if med in again and by_rules == "given" else UNLIKELY
            out[med] = by_rules if each[by_rules] >= kept else "open"
    return out


def _not_told_by_itself(
    said: Sequence[Named], found: Sequence[Group], context: Context
) -> dict[str, str]:
    """Of which medicines any outcome, or that they were not given, may be read from words of
    another: those that are only listed in a sentence of their own ("he spat the gaba out. the
    carprofen and the antibiotic"), and those that are named with others only ("... others in")."""
    out: dict[str, str] = {}
    of_each = [one for one in found if one.kind == "meds"]
    for med in (one.med for one in context.due):
        mine = [one for one in of_each if med in one.meds]
        if not mine and of_each:
            out[med] = "not given"
        elif len(found) > 1 and mine and all(_alone(said, one) for one in mine):
            out[med] = "any"
    return out


def _alone(said: Sequence[Named], group: Group) -> bool:
    """Whether nothing is told of it in its sentence."""
    first, end = group.first, group.end
    while first > 0 and said[first].cut < _STOP:
        first -= 1
    while end < len(said) and said[end].cut < _STOP:
        end += 1
    beside = (*said[first : group.first], *said[group.end : end])
    return all(
        one.label in SETS["link"] or one.label == "<1>" or one.kind in ABOUT for one in beside
    )  # "the pain one and the antibiotic"


def _as_told(
    text: str,
    context: Context,
    whole: Reading,
    settled: Mapping[str, str],
    said: Sequence[Named],
    found: Sequence[Group],
    read: Reader,
) -> Reading:
    """What is settled of each, with the hours that the rules read."""
    noted = {med: _NOTED[value] for med, value in settled.items() if value in _NOTED}
    counted = any(one.about == "dose" and one.count for one in whole.observations)
    fewer = any(_so_many(one, context) for one in whole.observations)
    told_of = {one.med for one in whole.observations if one.about == "dose"}
    mixed = None in told_of and len(told_of) > 1  # one by name, and who knows which
    counted = counted and not whole.round
    if not (counted or fewer or mixed) and noted == _by_rules(whole, context):
        return whole
    kinds = {kind for one in context.due for kind in one.called}
    others = tuple(
        one for one in whole.observations
        if one.about != "dose"
        or (one.med is not None and one.med not in settled and one.med not in kinds)
    )  # fmt: skip
    hours = {one.at for one in whole.observations if one.about == "dose" and one.at}
    spans = {one.med: one for one in whole.observations if one.about == "dose"}
    told = []
    for med, value in noted.items():
        as_read = spans.get(med)
        at = as_read.at if as_read else (next(iter(hours)) if len(hours) == 1 else None)
        span = as_read.span if as_read else (0, len(text))
        told.append(
            Observation("dose", value, med=med, at=at if value == "given" else None, span=span)
        )
    later = not told and "later" in settled.values()
    if later and all(one.about != "request" for one in others):
        told.append(Observation("request", "snooze", span=(0, len(text))))
    why = ", ".join(f"{med}: {value}" for med, value in settled.items())
    understood = whole.understood or (
        not _speaks_of_more(said, others) and _rest_is_read(text, said, found, read, context)
    )
    return replace(
        whole,
        observations=(*told, *others),
        understood=understood
        and not {"open", "half"} & set(settled.values())
        and bool(told or others),
        reasons=(*whole.reasons, f"likely of each medicine: {why}"),
        round=bool(noted),
    )


def _by_rules(
    whole: Reading, context: Context, by_name: frozenset[str] = frozenset()
) -> dict[str, str]:  # fmt: skip
    """What the rules note of each. What was not given is one of those ``by_name``, if any are."""
    out: dict[str, str] = {}
    for one in whole.observations:
        if one.about != "dose":
            continue
        if one.med is not None:
            out[one.med] = one.value
        else:
            every = [each.med for each in context.due]
            named_ = [med for med in every if med in by_name and one.value != "given"]
            out |= dict.fromkeys(named_ or every, one.value)
    return out


def _speaks_of_more(said: Sequence[Named], others: Sequence[Observation]) -> bool:
    """Whether something of the body is named of which nothing was read: "gave it, and his
    stitches look a bit off"."""
    keys = frozenset[str]().union(*(one.keys for one in said))
    named_ = {topic for key, topic in NOUNS.items() if key in keys}
    return bool(named_ - {one.about for one in others})


def _rest_is_read(
    text: str, said: Sequence[Named], found: Sequence[Group], read: Reader, context: Context
) -> bool:
    """Whether each sentence in which no medicine is named is understood by itself."""
    named_at = {at for one in found for at in range(one.first, one.end) if one.kind in ABOUT}
    return not any(
        not read(text[slice(*span)], context).understood
        for places, span in _sentences(text, said)
        if not named_at & set(places)
    )


def _sentences(
    text: str, said: Sequence[Named]
) -> list[tuple[range, tuple[int, int]]]:  # fmt: skip
    starts = [0, *(at for at, one in enumerate(said) if at and one.cut >= _STOP), len(said)]
    return [
        (range(a, b), (said[a].start, said[b].start if b < len(said) else len(text)))
        for a, b in pairwise(starts)
    ]
