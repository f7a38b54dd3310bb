"""How urgent a reply is: the rules asked about it and about all that was said before."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import datetime

from bot.model.finding import Finding
from bot.model.observation import Noted, Observation
from bot.model.urgency import Urgency

from .match import Hit, Scene
from .reasons import because, hours_words
from .rulebook import Ready, RuleBook


def triage(
    new: Sequence[Noted],
    history: Sequence[Noted],
    *,
    day: int,
    now: datetime,
    rules: RuleBook,
    species: str = "dog",
    protocol: str | None = None,
) -> tuple[Finding, ...]:
    """The findings of a reply, the most urgent first, at most one for a rule.

    ``new`` is what this reply (or button) said, ``history`` all that was said earlier
    and still stands, in any order; ``day`` is the patient's day, ``now`` an aware time;
    ``protocol`` the id of the one that the patient's plan follows.
    A finding holds only observations of this reply. Of one matter, a less urgent finding
    that says nothing more is left out. A finding of urgency ``none`` holds advice only.
    A rule that cannot be judged becomes a ``next_day`` finding.
    """
    woken = rules.woken_by({(n.observation.about, n.observation.value) for n in new})
    if not woken:
        return ()
    scene = Scene(new, history, day, now)
    found: list[Finding] = []
    for ready in woken:
        if not ready.first_day <= day <= ready.last_day or not ready.is_for(species, protocol):
            continue
        finding = ask(ready, scene, rules)
        if finding is not None and not _said_already(finding, found):
            found.append(finding)
    found.sort(key=lambda finding: -finding.urgency)
    return tuple(found)


def urgency(findings: Iterable[Finding]) -> Urgency:
    """The highest urgency of any finding; ``none`` where there is none."""
    return max((finding.urgency for finding in findings), default=Urgency.none)


def silence(
    last_heard: datetime | None, home: datetime, now: datetime, *, day: int, rules: RuleBook
) -> Finding | None:
    """The finding for an owner who has said nothing, counted from ``last_heard``.

    From ``home`` (the time of going home) where nothing was ever heard. The most urgent
    rule that holds on ``day`` speaks; None while it is too early.
    """
    since = home if last_heard is None else max(last_heard, home)
    hours = (now - since).total_seconds() / 3600
    holding = [
        rule
        for rule in rules.file.silence
        if hours >= rule.hours
        and (rule.after_day is None or day > rule.after_day)
        and (rule.to_day is None or day <= rule.to_day)
    ]
    if not holding:
        return None
    rule = max(holding, key=lambda rule: Urgency[rule.urgency])
    level = Urgency[rule.urgency]
    facts: dict[str, object] = {"day": day, "hours": hours_words(float(int(hours)), "")}
    return Finding(rule.id, level, "silence", rule.because.fill(facts, facts))


def ask(ready: Ready, scene: Scene, rules: RuleBook) -> Finding | None:
    """What one rule says of the scene, whatever the day, the species and the other rules."""
    try:
        hit = ready.judge(scene)
        if hit is None or not (hit.new or hit.unheard) or _excused(ready, scene):
            return None
        why = because(ready, hit, rules.file, scene.day)
    except Exception:  # whatever it was: staff are told, it is never taken for false
        return _unknown(ready, scene, rules)
    rule = ready.rule
    return Finding(rule.id, ready.level, rule.matter, why, _in_order(hit), ready.advice)


def _excused(ready: Ready, scene: Scene) -> bool:
    if ready.unless is None:
        return False
    try:
        return ready.unless(scene) is not None
    except Exception:  # doubt raises: the rule stands
        return False


def _unknown(ready: Ready, scene: Scene, rules: RuleBook) -> Finding:
    topics = [n.observation for noted in scene.new.values() for n in noted]
    told = ", ".join(sorted({f"{o.about}: {o.value}" for o in topics}))
    facts: dict[str, object] = {"rule": ready.rule.id, "told": told}
    text = rules.file.notices.unknown.fill(facts, facts)
    level = Urgency.next_day
    return Finding(ready.rule.id, level, ready.rule.matter, text, (), rules.advice(level))


def _in_order(hit: Hit) -> tuple[Observation, ...]:
    if len(hit.new) == 1:
        return (hit.new[0].observation,)
    return tuple(sorted((n.observation for n in hit.new), key=_place))


def _place(observation: Observation) -> tuple[tuple[int, int], str]:
    return observation.span, repr(observation)


def _said_already(finding: Finding, found: list[Finding]) -> bool:
    """A more urgent finding of the same matter rests on the same observations."""
    return any(
        other.urgency > finding.urgency
        and other.matter == finding.matter
        and bool(finding.observations)
        and set(finding.observations) <= set(other.observations)
        for other in found
    )
