"""From matches to observations: overlaps, contradictions and corrections settled."""

from __future__ import annotations

from dataclasses import dataclass

from bot.model.observation import Observation

from .clauses import Clause
from .matching import Match

SEVERITY: dict[str, tuple[str, ...]] = {
    "dose": ("given", "missed", "refused", "vomited_up", "doubled"),
    "ice": ("skipped", "done"),
    "warm_compress": ("skipped", "done"),
    "massage": ("skipped", "done"),
    "walk": ("skipped", "done"),
    "cone": ("on", "off", "damaged"),
    "licking": ("no", "yes"),
    "appetite": ("normal", "less", "none"),
    "drinking": ("normal", "less", "more", "none"),
    "vomiting": ("no", "yes", "bloody"),
    "energy": ("normal", "quiet", "lethargic", "collapsed"),
    "pain": ("none", "mild", "moderate", "severe"),
    "weight_bearing": ("full", "partial", "toe_touching", "none"),
    "mobility": ("same", "better", "worse"),
    "swelling": ("none", "mild", "marked"),
    "bruising": ("none", "mild", "marked"),
    "breathing": ("normal", "laboured"),
    "seizure": ("no", "yes"),
    "belly": ("normal", "bloated"),
}
"""Topics of which a patient has one state: the worst said counts."""

GOOD: dict[str, str] = {
    "stool": "normal", "urine": "normal", "incision": "clean", "bandage": "fine", "gums": "pink",
}  # fmt: skip
"""Topics with several findings at once: the good one gives way to any other."""

_DETAILS = ("stopped", "slow", "edges", "heavy", "deep", "sudden")


@dataclass(slots=True)
class Found:
    """An observation with the match it came from."""

    observation: Observation
    match: Match
    final: bool = False  # said of the end of it: "in the end", "now"
    now: bool = False  # with a word such as "now", "finally"
    past: bool = False  # said of an earlier day


OVERRIDES: dict[str, frozenset[str]] = {
    "belly": frozenset(("vomiting", "urine", "stool", "swelling", "appetite")),
    "swallowed": frozenset(("dose", "appetite", "vomiting", "bandage", "licking")),
    "dose": frozenset(("appetite", "weight_bearing", "licking", "vomiting_no", "cone")),
    "breathing": frozenset(("pain", "belly", "energy", "incision", "stool", "urine")),
    "seizure": frozenset(("pain", "energy", "belly", "weight_bearing", "leg")),
    "cone": frozenset(("dose", "licking", "bandage", "mishap", "leg", "incision")),
    "bandage": frozenset(
        (
            "incision",
            "swelling",
            "mishap",
            "urine",
            "weight_bearing",
            "gums",
            "swallowed",
            "bruising",
        )
    ),
    "walk": frozenset(("dose", "mishap")),
    "ice": frozenset(("dose", "drinking")),
    "warm_compress": frozenset(("dose", "drinking")),
    "massage": frozenset(("dose",)),
    "urine": frozenset(("bandage", "incision", "drinking", "vomiting", "pain", "stool_loose")),
    "stool": frozenset(("incision", "vomiting", "bruising", "pain")),
    "vomiting": frozenset(("incision", "stool", "gums", "appetite", "drinking", "bruising")),
    "gums": frozenset(("incision", "bruising", "swelling", "pain")),
    "leg": frozenset(("weight_bearing", "mishap")),
    "mobility": frozenset(("weight_bearing_partial",)),
    "weight_bearing": frozenset(("mobility_same", "pain_none", "stool", "mishap", "leg")),
    "incision": frozenset(("drinking",)),
    "swelling": frozenset(("mobility", "incision", "bruising")),
    "pain": frozenset(("licking", "energy", "appetite")),
    "drinking": frozenset(("appetite", "licking", "dose")),
    "licking": frozenset(("swallowed", "appetite")),
    "mishap": frozenset(("weight_bearing_full", "walk")),
    "energy": frozenset(("leg", "mishap", "weight_bearing", "appetite")),
    "request": frozenset(("dose", "energy")),
}
"""Where two topics are read from the same words: the first takes the words from these."""


def _yields(match: Match, to: Match) -> bool:
    names = OVERRIDES.get(to.rule.about)
    if names is None or to.rule.weight < match.rule.weight:
        return False
    about = match.rule.about
    return about in names or f"{about}_{match.rule.value}" in names


def drop_overlaps(matches: list[Match], clauses: list[Clause]) -> list[Match]:
    """Of matches on the same words, the most specific within a topic, and the topic that
    the words belong to; idioms beat all that are no more specific."""
    kept: list[Match] = []
    used: dict[str, dict[int, int]] = {}
    idiom: dict[int, int] = {}
    for match in sorted(matches, key=lambda m: (m.rule.about != "idiom", -m.rule.weight)):
        about = match.rule.about
        weight = match.rule.weight
        if about == "idiom":
            for at in match.at:
                idiom[at] = max(weight, idiom.get(at, 0))
            kept.append(match)
            continue
        if any(idiom.get(at, 0) >= weight for at in match.at):
            continue
        axis = f"{about}-loose" if match.rule.value == "loose" else about
        table = used.setdefault(axis, {})
        if any(table.get(at, 0) > weight for at in match.at):
            continue
        for at in match.at:
            table[at] = max(weight, table.get(at, 0))
        kept.append(match)
    owners: dict[int, list[Match]] = {}
    for match in kept:
        for at in match.at:
            owners.setdefault(at, []).append(match)
    out = [
        match
        for match in kept
        if not any(
            other is not match and _yields(match, other) for at in match.at for other in owners[at]
        )
    ]
    out = _beside(out, clauses)
    return sorted(out, key=lambda m: (m.first, m.last))


def _beside(matches: list[Match], clauses: list[Clause]) -> list[Match]:
    """What another finding of the same sentence explains: the pills swallowed are no dose
    and no meal, pacing after a seizure is no pain."""
    eaten = {
        m.clause for m in matches if m.rule.about == "swallowed" and not m.denied and not m.void
    }
    seized = {
        clauses[m.clause].sentence
        for m in matches
        if m.rule.about == "seizure" and not m.denied and not m.void
    }
    fainted = {
        m.clause for m in matches if m.rule.value == "collapsed" and not m.denied and not m.void
    }

    def sentences_of(*wanted: tuple[str, str]) -> set[int]:
        return {
            clauses[m.clause].sentence
            for m in matches
            if (m.rule.about, m.rule.value) in wanted and not m.denied and not m.void
        }

    bloated = sentences_of(("belly", "bloated"))
    hurt = sentences_of(("mishap", "slipped"), ("mishap", "ran"), ("mishap", "rough_play"))
    tight = sentences_of(("bandage", "tight"))
    blue = sentences_of(("gums", "blue"), ("gums", "pale"), ("breathing", "laboured"))
    given = sentences_of(("dose", "given"))
    weeping = {  # "pink discharge": the colour is the discharge's
        at
        for m in matches
        if m.rule.value in ("discharge", "pus", "bleeding") and not m.denied
        for at in m.at
        if at - 1 in m.at or at + 1 in m.at
    }
    rough = {m.clause for m in matches if m.rule.value == "rough_play" and not m.void}
    near = {c + step for c in eaten for step in (-1, 0, 1)}
    sentences = {clauses[c].sentence for c in eaten}
    out = []
    for match in matches:
        clause = clauses[match.clause]
        key = (match.rule.about, match.rule.value)
        if key in (("dose", "given"), ("appetite", "normal")) and match.clause in near:
            if match.clause in eaten or (
                clause.sentence in sentences and "<clock>" not in clause.keys
            ):
                continue
        if match.rule.about == "mishap" and match.clause in fainted:
            continue
        if key in (("vomiting", "yes"), ("vomiting", "no")) and clause.sentence in bloated:
            continue
        if key == ("energy", "normal") and clause.sentence in hurt:
            continue
        if key == ("urine", "accident") and clause.sentence in seized:
            continue
        if key == ("incision", "red") and any(at in weeping for at in match.at):
            continue
        if key == ("energy", "normal") and match.clause in rough:
            continue
        if (
            match.rule.about == "swelling"
            and clause.sentence in tight
            and "<toeword>" in clause.keys
        ):
            continue
        if (
            match.rule.about == "pain"
            and match.rule.value == "moderate"
            and clause.sentence in blue
        ):
            continue
        if match.rule.about == "appetite" and clause.sentence in given and "<hid>" in clause.keys:
            continue
        if (
            match.rule.about == "pain"
            and match.rule.value in ("moderate", "mild")
            and clause.sentence in seized
        ):
            continue
        out.append(match)
    return out


def _join(old: Observation, new: Observation) -> Observation:
    """The same finding said twice: fields of both, the more serious detail."""
    fields = old.as_dict()
    for name, value in new.as_dict().items():
        if name == "span":
            fields["span"] = (
                min(old.span[0], new.span[0]), max(old.span[1], new.span[1]))  # fmt: skip
        elif name == "detail" and "detail" in fields:
            first, second = str(fields["detail"]), str(value)
            fields["detail"] = (
                max(first, second, key=_DETAILS.index)
                if first in _DETAILS and second in _DETAILS
                else first
            )
        elif name == "unsure" and not old.unsure:
            continue
        elif name not in fields:
            fields[name] = value
        elif name in ("count", "celsius", "hours"):  # doubt raises: the higher figure counts
            fields[name] = max(float(str(fields[name])), float(str(value)))
            if name == "count":
                fields[name] = int(float(str(fields[name])))
    if not new.unsure:
        fields.pop("unsure", None)
    return Observation.from_dict(fields)


def settle(found: list[Found]) -> list[Observation]:
    """One observation for each finding; the worst of contradicting ones, unless the owner
    tells how it ended."""
    groups: dict[tuple[str, str | None], list[Found]] = {}
    for item in found:
        med = item.observation.med if item.observation.about == "dose" else None
        groups.setdefault((item.observation.about, med), []).append(item)
    if any(key[0] == "dose" and key[1] for key in groups):
        _share_unnamed(groups)
    out: list[Found] = []
    for (about, _), items in groups.items():
        merged: dict[str, Found] = {}
        for item in items:
            value = item.observation.value
            if value in merged:
                merged[value].observation = _join(merged[value].observation, item.observation)
                merged[value].final |= item.final
            else:
                merged[value] = item
        good = GOOD.get(about)
        if good and good in merged and len(merged) > 1:
            del merged[good]
        if about == "incision" and "pus" in merged:
            merged.pop("discharge", None)
        if about == "swallowed" and "human_medicine" in merged:
            merged.pop("medicine_overdose", None)
        order = SEVERITY.get(about)
        if order and len(merged) > 1:
            merged = _one(about, merged, order)
        out.extend(merged.values())
    out.sort(key=lambda item: item.match.first)
    return [item.observation for item in out]


def _share_unnamed(groups: dict[tuple[str, str | None], list[Found]]) -> None:
    """A dose told of without a name joins the one that is named."""
    unnamed = groups.get(("dose", None))
    named = [key for key in groups if key[0] == "dose" and key[1]]
    if unnamed and len(named) == 1:
        for item in unnamed:
            data = item.observation.as_dict()
            data["med"] = named[0][1]
            item.observation = Observation.from_dict(data)
        groups[named[0]] = sorted(groups[named[0]] + unnamed, key=lambda i: i.match.first)
        del groups[("dose", None)]


def _one(about: str, merged: dict[str, Found], order: tuple[str, ...]) -> dict[str, Found]:
    items = list(merged.values())
    worst = max(items, key=lambda item: order.index(item.observation.value))
    last = max(items, key=lambda item: item.match.first)
    if (
        about == "weight_bearing"
        and last is not worst
        and last.observation.value in ("toe_touching", "partial")
        and worst.observation.value == "none"
        and worst.observation.detail is None
        and last.match.clause - worst.match.clause <= 2
    ):
        return {last.observation.value: last}
    if last is not worst and last.final:
        if about in ("dose", "cone") or (about in ("appetite", "drinking") and last.now):
            return {last.observation.value: last}
        if (
            about != "vomiting"
            and worst.past
            and worst.observation.value not in ("collapsed", "laboured", "bloody")
        ):
            return {last.observation.value: last}
    if about == "cone" and worst.observation.value == "damaged":
        merged.pop("off" if "on" in merged else "", None)
        return merged
    return {worst.observation.value: worst}
