"""What in a telling speaks for this or that having become of one medicine: its words, those on
each side of where it is named up to the next that is named, and how they stop."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import Final

from bot.model.reading import Reading

from .named import ABOUT, Group, Named

_STOP: Final = 3
_MOST_GROUPS: Final = 3
_NEAR: Final = 3
_BEYOND: Final = 8
_SHORT: Final = 4
_MANY: Final = 3


def clues(said: Sequence[Named], found: Sequence[Group], med: str, due: int) -> set[str]:
    """The clues of one medicine among so many that were ``due``."""
    way, told = _way(said, found, med)
    words = [_label(one, med) for one in said]
    out = {
        "always", way, f"{way} of {min(due, _MANY)}",
        f"{way} {min(len(said), 15) // 3} long",
    }  # fmt: skip
    for one, word in zip(said, words, strict=True):
        out |= {word, f"{way}|{word}"}
        out |= {f"{way}|{key}" for key in one.keys}
    ends = ["^", *words, "$"]
    out |= {f"{way}|{a} {b}" for a, b in pairwise(ends)}
    out |= {f"{way}|{a} {b} {c}" for a, b, c in zip(ends, ends[1:], ends[2:], strict=False)}
    if len(words) <= _SHORT:
        out.add(f"{way}|={' '.join(words)}")
    short = way if way in ("T", "R", "S") else "A"
    for group in told[:_MOST_GROUPS]:
        out |= set(_around(said, words, group, short))
    if len(told) == 1:
        out.add(f"{short} once")
    return out


def of_grammar(whole: Reading, med: str, due: Sequence[str]) -> set[str]:
    """What the rules made of it, as clues: of this medicine, and besides."""
    value = "none"
    doses = [one for one in whole.observations if one.about == "dose"]
    for one in doses:
        all_of_them = one.med is None and one.count in (None, len(due))
        if one.med == med or all_of_them:
            value = one.value
        elif one.med is None and value == "none":
            value = "some"
    out = {f"rules {value} {whole.round}", f"rules {value} {whole.understood}", f"rules {value}"}
    out.add(f"rules {value} {len(doses)} of {len(due)}")
    out |= {f"beside {o.about} {o.value}" for o in whole.observations if o.about != "dose"}
    return out


def _way(
    said: Sequence[Named], found: Sequence[Group], med: str
) -> tuple[str, Sequence[Group]]:  # fmt: skip
    """How the medicine is told of: by itself, among the rest, among all, not at all."""
    by_kind = {
        kind: [one for one in found if one.kind == kind] for kind in ABOUT
    }  # fmt: skip
    mine = [one for one in by_kind["meds"] if med in one.meds]
    others = bool(by_kind["meds"])
    every = [one for one in found if one.kind in ("all", "none")]
    if mine:
        return "T", mine
    if by_kind["rest"] and others:
        return "R", by_kind["rest"]
    if every:
        excepted = others and any(one.kind == "except" for one in said)
        return "Ax" if excepted else "A", every
    if by_kind["some"]:
        return "S" if others else "s", by_kind["some"]
    if by_kind["rest"]:
        return "r", by_kind["rest"]
    return ("o" if others else "-"), ()


def _label(one: Named, med: str) -> str:
    if one.kind != "meds":
        return one.label
    return "<this>" if med in one.meds else "<another>"


def _around(
    said: Sequence[Named], words: Sequence[str], group: Group, way: str
) -> Iterator[str]:  # fmt: skip
    """Clues from the words beside where it is named."""
    left, start = _side(said, group.first, -1)
    right, stop = _side(said, group.end, 1)
    behind = said[group.end].cut if group.end < len(said) else _STOP
    yield from (f"{way} <{start}", f"{way} >{stop}", f"{way} <{start} >{stop}")
    yield f"{way} cut {said[group.first].cut} {behind}"
    yield f"{way} {bool(left)} {bool(right)} {start} {stop}"
    for side, places, end in (("<", left, start), (">", right, stop)):
        crossed = False
        for far, at in enumerate(places):
            crossed = crossed or bool(said[at + (side == "<")].cut if side == "<" else said[at].cut)
            word, reach = words[at], "," if crossed else "_"
            yield from (f"{way}{side}{word}", f"{way}{side}{end} {word}")
            yield f"{way}{side}{reach}{word}"
            if far < _NEAR:
                yield f"{way}{side}{far} {word}"
            for key in said[at].keys:
                yield from (f"{way}{side}{key}", f"{way}{side}{reach}{key}")
        order = places if side == ">" else places[::-1]
        yield from (f"{way}{side}{words[a]} {words[b]}" for a, b in pairwise(order))
    yield from (f"{way}>>{words[at]}" for at in _beyond(said, group.end + len(right), 1))
    yield from (f"{way}<<{words[at]}" for at in _beyond(said, group.first - len(left), -1))


def _side(said: Sequence[Named], edge: int, step: int) -> tuple[list[int], str]:
    """The places on one side, up to what is named next or the sentence's end; and which it is."""
    places: list[int] = []
    at = edge if step > 0 else edge - 1
    while 0 <= at < len(said):
        if said[at if step > 0 else at + 1].cut >= _STOP:
            return places, "."
        if said[at].kind in ABOUT:
            return places, said[at].kind
        places.append(at)
        at += step
    return places, "$"


def _beyond(said: Sequence[Named], edge: int, step: int) -> list[int]:
    """The places beyond what is named next, in the same sentence: its verb may stand there."""
    at = edge + 1 if step > 0 else edge - 2
    places: list[int] = []
    while 0 <= at < len(said) and len(places) < _BEYOND:
        if said[at if step > 0 else at + 1].cut >= _STOP:
            break
        places.append(at)
        at += step
    return places
