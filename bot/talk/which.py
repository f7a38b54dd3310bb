"""Several patients in one household: whom is a message about? Asked when it is unclear;
what must not wait is raised at once, whoever it is about."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Any

from bot.model.chat import Incoming
from bot.model.observation import Noted
from bot.model.urgency import Urgency
from bot.reading import read
from bot.triage import triage, urgency

from . import clarify, pictures, wishes, wound
from .buttons import button
from .cases import Said, raise_findings
from .noting import advice_for
from .outcome import Due, Entry, Outcome
from .phones import whom_to_phone
from .reply import context_for
from .scene import Chart, Person, Scene
from .spoken import spoken


def candidates(scene: Scene) -> list[Chart]:
    """The patients that a message may be about: those not ended, and one of the past of
    whom it was asked last how the wound healed; else the newest."""
    under_way = [chart for chart in scene.charts if chart.state != "ended"]
    sent = [one.sent_at for chart in under_way for one in chart.sheets if one.sent_at]
    asked = [
        chart
        for chart in scene.charts
        if chart.state == "ended"
        and (last := wound.last_asked(chart, scene.now))
        and all(at <= last[1] for at in sent)
    ]
    return [*under_way, *asked] or [max(scene.charts, key=lambda chart: chart.id)]


def which(scene: Scene, event: Incoming) -> Chart | None:
    """The patient that is meant: the one answered about, named, or the only one."""
    topic = scene.reply_topic.split(":")
    if topic[0] in ("patient", "prompt", "unclear", "wound") and topic[-1].isdigit():
        found = scene.chart(int(topic[-1]))
        if found is not None:
            return found
    possible = candidates(scene)
    if len(possible) == 1:
        return possible[0]
    named = [
        chart
        for chart in possible
        if re.search(rf"\b{re.escape(chart.name)}\b", event.text, re.IGNORECASE)
    ]
    return named[0] if len(named) == 1 else None


def _waiting(scene: Scene) -> dict[str, Any]:
    found: dict[str, Any] = scene.thread.get("which", {})
    return found


def ask_which(scene: Scene, out: Outcome, event: Incoming, person: Person, source: str) -> None:
    """Ask, and keep the words until it is told; a red flag among them goes to staff now."""
    possible = candidates(scene)
    rows = tuple(
        (button(scene.secret, person.chat, chart.name, f"w.{chart.id}"),) for chart in possible
    )
    first = possible[0]
    names = " / ".join(chart.name for chart in possible)
    said = [*_waiting(scene).get("said", []), {"text": event.text, "source": source}]
    urgent = _raise_now(scene, out, event, person, first, names, source)
    phone = whom_to_phone(scene, person.lang)
    ask = f"{scene.words.say('which_patient', person.lang)} ({phone})"
    out.say(person.chat, "\n\n".join([*urgent, ask]), buttons=rows, urgent=bool(urgent))
    text = f"{names}? " + "\n".join(one["text"] for one in said)
    data = {
        "patient": first.id, "chat": person.chat, "by": person.name, "text": text,
        "source": source, "said": said, "media": pictures.waiting(scene, event),
    }  # fmt: skip
    out.threads[person.chat] = {**scene.thread, "which": data}
    for chart in possible:
        out.add(Entry("said", person.name, event.text, chart.id, {"patient": "not told yet"}))
    again = scene.now + clarify.PATIENCE
    out.add(Due(f"which:{person.chat}", "unclear", again, first.id, data))


def _raise_now(
    scene: Scene,
    out: Outcome,
    event: Incoming,
    person: Person,
    chart: Chart,
    names: str,
    source: str,
) -> list[str]:
    """What cannot wait until the patient is named; the words for the owner."""
    if not event.text.strip():
        return []
    reading = read(event.text, context_for(chart, "none", person, scene.now))
    day = chart.day(scene.now)
    noted = [Noted(one, scene.now, day) for one in reading.observations]
    findings = triage(
        noted, (), day=day, now=scene.now, rules=scene.rules, species=chart.plan.species
    )
    if urgency(findings) < Urgency.same_day:
        return []
    seen = [one.as_dict() for one in reading.observations]
    said = Said(person.name, f"{names}? {event.text}", source)
    raise_findings(scene, out, chart, findings, said, seen)
    return advice_for(scene, chart, findings, person.lang)


def told_which(scene: Scene, out: Outcome, event: Incoming, person: Person, patient: int) -> bool:
    """The patient was named for the words that waited."""
    chart = scene.chart(patient)
    data = _waiting(scene)
    if chart is None:
        return False
    out.answer(event.callback)
    out.cancel.append(f"which:{person.chat}")
    rest = {key: value for key, value in scene.thread.items() if key != "which"}
    out.threads[person.chat] = rest
    scene = replace(scene, thread=rest)
    if data.get("media"):
        pictures.told_which(scene, out, event, chart, person, data)
        return True
    texts = [one["text"] for one in data.get("said", []) if one["text"].strip()]
    for text in texts:
        if (command := wishes.command_of(text)) is not None:
            wishes.carry_out(scene, out, event, chart, person, command)
    words = "\n".join(text for text in texts if wishes.command_of(text) is None)
    if words:
        spoken(scene, out, event, chart, person, words, data["source"])
    return True


def changed_while_waiting(
    scene: Scene, out: Outcome, event: Incoming, person: Person, source: str
) -> bool:
    """An edit of words that still wait for their patient: the new ones wait instead."""
    data = _waiting(scene)
    said = data.get("said", [])
    if not any(one["source"] == source for one in said):
        return False
    for one in said:
        if one["source"] == source:
            one["text"] = event.text
    out.threads[person.chat] = {**scene.thread, "which": {**data, "said": said}}
    out.add(Entry("said", person.name, event.text, data["patient"], {"edited": source}))
    return True
