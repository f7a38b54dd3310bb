"""From matches to observations: overlaps, contradictions and corrections settled."""

from __future__ import annotations

from dataclasses import dataclass, replace

from bot.model.observation import Observation
from bot.model.topics import TABLE

from .matching import Match

ABSENT = {name: TABLE[name].good for name in ("stool", "urine", "incision", "bandage")}
"""What it says of a topic that was asked about when a sign of it is denied ("no ooze")."""

_DETAILS = ("stopped", "slow", "edges", "heavy", "deep", "sudden", "cold")


@dataclass(slots=True)
class Found:
    """An observation with the match it came from."""

    observation: Observation
    match: Match
    final: bool = False  # said of the end of it: "in the end", "now"
    now: bool = False  # with a word such as "now", "finally"
    past: bool = False  # said of an earlier day
    after_but: bool = False  # "but …" in the same sentence


def join(old: Observation, new: Observation) -> Observation:
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
                merged[value].observation = join(merged[value].observation, item.observation)
                merged[value].final |= item.final
                merged[value].now |= item.now
            else:
                merged[value] = item
        told = [item for item in items if item.observation.trend]
        if told:  # "was going down, but it's up again": the last word counts
            last = max(told, key=lambda item: (not item.past, item.match.last))
            for item in merged.values():
                if item.observation.trend:
                    trend = last.observation.trend
                    item.observation = replace(item.observation, trend=trend)
        if about == "gums" and "pink" in merged:
            _looked_again(merged)
        topic = TABLE.get(about)
        good = topic.good if topic and not topic.one_state else ""
        if good and good in merged and len(merged) > 1:
            del merged[good]
        if about == "incision" and "pus" in merged:
            merged.pop("discharge", None)
        if about == "swallowed" and "human_medicine" in merged:
            merged.pop("medicine_overdose", None)
        if about == "swallowed" and "poison" in merged:
            for value in ("human_medicine", "bandage_or_object"):
                other = merged.get(value)
                if other and other.match.clause == merged["poison"].match.clause:
                    del merged[value]
        order = topic.from_mildest if topic and topic.one_state else ()
        if order and len(merged) > 1:
            trends = {i.observation.trend for i in items} - {None}
            inorder = sorted(items, key=lambda item: item.match.first)
            latest = {item.observation.value: item.match.first for item in inorder}
            merged = _one(about, merged, order, latest)
            if about in ("swelling", "bruising") and len(trends) == 1:
                for item in merged.values():  # "the size of an egg; it wasn't there before"
                    if item.observation.value != "none":
                        item.observation = replace(item.observation, trend=trends.pop())
                        break
        out.extend(merged.values())
    out.sort(key=lambda item: item.match.first)
    return [item.observation for item in out]


def _looked_again(merged: dict[str, Found]) -> None:
    """ "Thought his gums were white, turned on the light, they're pink"."""
    pink = merged["pink"]
    for value in ("pale", "blue"):
        item = merged.get(value)
        if item and item.past and pink.match.first > item.match.first and not pink.past:
            del merged[value]


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


def _one(
    about: str, merged: dict[str, Found], order: tuple[str, ...], latest: dict[str, int]
) -> dict[str, Found]:
    """The one state that counts; ``latest``: where each was told last."""
    items = list(merged.values())
    worst = max(items, key=lambda item: order.index(item.observation.value))
    last = max(items, key=lambda item: latest[item.observation.value])
    if (
        about == "weight_bearing"
        and last is not worst
        and last.observation.value in ("toe_touching", "partial")
        and worst.observation.value == "none"
        and worst.observation.detail is None
        and last.match.clause - worst.match.clause <= 2
    ):
        return {last.observation.value: last}
    if about == "cone" and last.observation.value == "on" and "back" in last.match.rule.tags:
        return {"on": last}  # "out of it in the night, I've put it back on"
    if about == "cone" and worst.observation.value == "damaged":
        if "on" in merged:
            merged.pop("off", None)
        return merged
    if (
        about == "appetite"
        and (last.observation.value, worst.observation.value) == ("less", "none")
        and last.after_but
    ):
        return {last.observation.value: last}  # "nose up at his dinner but had some tuna"
    both = about == "dose" and set(merged) == {"given", "missed"}
    if both and merged["missed"].past and not merged["given"].past:
        return merged  # last night's was forgotten, today's is in
    if both and (merged["missed"].past or not merged["given"].past):
        given, missed = merged["given"].match, merged["missed"].match
        late = merged["given"].now
        if (late or given.first > missed.first) if given.clause != missed.clause else (
            late and given.first < missed.first
        ):  # fmt: skip
            return {"given": merged["given"]}  # late, but in: never advised again
    if last is not worst and last.final:
        if (
            about == "cone"
            or (about == "dose" and worst.observation.value != "doubled")
            or (about in ("appetite", "drinking") and last.now)
        ):
            return {last.observation.value: last}
        if (
            about != "vomiting"
            and worst.past
            and worst.observation.value not in ("collapsed", "laboured", "bloody")
        ):
            return {last.observation.value: last}
    return {worst.observation.value: worst}
