"""A dose tapped long after its prompt: given at its hour, or just now? Asked, since the next
dose hangs on it. Where nobody says, the tap itself is the latest that it can have been."""

from __future__ import annotations

from datetime import datetime, timedelta

from .buttons import button
from .outcome import Due, Entry, Outcome
from .scene import Chart, Line, Person, Scene, Sheet
from .words import clock

LATE = timedelta(hours=1)
"""A dose tapped so long after its prompt may have been given at its hour, or just now."""
PATIENCE = timedelta(minutes=20)
"""How long it is waited for the answer; the next dose of the medicine waits as long."""
KIND = "given"


def is_late(scene: Scene, sheet: Sheet, line: Line) -> bool:
    """Whether this dose, tapped now, may have been given an hour or more ago."""
    return line.item.kind == "dose" and scene.now - sheet.due_at > LATE


def key_of(sheet: int, ids: str, chat: int) -> str:
    """The key of what falls due when nobody answers."""
    return f"{KIND}:{sheet}:{ids}:{chat}"


def ask_when(
    scene: Scene, out: Outcome, chart: Chart, person: Person, sheet: Sheet, lines: list[Line],
    source: str,
) -> None:  # fmt: skip
    """Ask, and keep the tap: it counts as given then if no answer comes."""
    words, lang = scene.words, person.lang
    at = clock(chart.local(sheet.due_at))
    ids = "-".join(str(line.id) for line in lines)
    made = [
        button(scene.secret, person.chat, words.say(key, lang, at=at), f"g.{sheet.id}.{ids}.{how}")
        for key, how in (("given_slot", "s"), ("given_now", "n"))
    ]
    meds = ", ".join(line.item.med or "" for line in lines)
    out.say(
        person.chat, words.say("given_when", lang, med=meds, at=at), buttons=(tuple(made),),
        patient=chart.id,
    )  # fmt: skip
    out.heard.add(chart.id)
    logged = words.say("given_logged", scene.clinic.language, med=meds)
    out.add(Entry("tapped", person.name, logged, chart.id, {"source": source}))
    data = {
        "prompt": sheet.id, "lines": [line.id for line in lines], "chat": person.chat,
        "tapped": scene.now.isoformat(), "source": source,
    }  # fmt: skip
    due = key_of(sheet.id, ids, person.chat)
    out.add(Due(due, KIND, scene.now + PATIENCE, chart.id, data))


def answer_awaited(chart: Chart, med: str, now: datetime) -> datetime | None:
    """Until when an answer about a dose of ``med`` is waited for, if it is."""
    of_med = {line.id for line in chart.doses(med)}
    until = [one.until for one in chart.late_taps if of_med.intersection(one.lines)]
    return max((at for at in until if at > now), default=None)
