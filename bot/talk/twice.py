"""A dose that someone noted already is told of again: the same one, or was a second one given?"""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import UTC, datetime
from typing import Any

from bot.model.chat import Incoming
from bot.model.observation import Observation

from . import clarify
from .buttons import button
from .cases import Said
from .dosing import after_given, hold_next, medicine_of
from .noting import advice_for, take_note
from .outcome import Due, Entry, Outcome
from .scene import Chart, Line, Person, Scene
from .words import clock

_KEPT = ("maybe_twice", "line", "minute")
_SAME = re.compile(
    r"^\W*(no\W+)?((it'?s|it is|it was|that was|es|era|fue)\s+)?(the\s+|la\s+)?"
    r"(same( one| dose)?|misma( dosis)?)\W*$",
    re.IGNORECASE,
)
_SECOND = re.compile(
    r"^\W*((yes|s[ií])\W+)?(a\s+|una\s+)?(second( one| dose)?|segunda( dosis)?)( was given)?\W*$",
    re.IGNORECASE,
)


def ask_same(
    scene: Scene, out: Outcome, chart: Chart, person: Person, line: Line, at: datetime
) -> None:
    """Someone noted this dose already: is it the same one, or was a second one given?"""
    words, lang = scene.words, person.lang
    text = words.say(
        "dose_twice",
        lang,
        by=line.by or "",
        name=chart.name,
        med=line.item.med or "",
        at=clock(chart.local(line.at)) if line.at else "",
    )
    stamp = int(at.timestamp()) // 60
    row = (
        button(scene.secret, person.chat, words.say("dose_same", lang), f"x.{line.id}.same"),
        button(scene.secret, person.chat, words.say("dose_second", lang), f"x.{line.id}.{stamp}"),
    )
    out.say(person.chat, text, buttons=(row,), patient=chart.id, topic=f"patient:{chart.id}")
    data = {
        "patient": chart.id, "chat": person.chat, "by": person.name, "text": text,
        "source": scene.cause, "maybe_twice": line.item.med, "line": line.id, "minute": stamp,
    }  # fmt: skip
    out.add(Due(f"unclear:{person.chat}", "unclear", scene.now + clarify.PATIENCE, chart.id, data))
    out.threads[person.chat] = {**scene.thread, "unclear": data}


def asked(scene: Scene) -> bool:
    """Whether this chat has been asked so, and has not said."""
    return bool((clarify.pending(scene) or {}).get("maybe_twice"))


def kept(data: dict[str, Any], chart: Chart) -> dict[str, Any]:
    """What must outlast a further unclear message about the same patient."""
    same = data.get("patient") == chart.id
    return {key: data[key] for key in _KEPT if same and key in data}


def told(scene: Scene, out: Outcome, event: Incoming, person: Person, text: str) -> bool:
    """The question answered in words. False when these are no plain answer."""
    data = clarify.pending(scene) or {}
    if not data.get("maybe_twice"):
        return False
    which = "same" if _SAME.match(text) else str(data["minute"]) if _SECOND.match(text) else ""
    return bool(which) and same_dose(scene, out, event, person, int(data["line"]), which)


def same_dose(
    scene: Scene, out: Outcome, event: Incoming, person: Person, line_id: int, which: str
) -> bool:
    """Whether a dose noted twice was one or two."""
    for chart in scene.charts:
        line = next((one for one in chart.dose_lines if one.id == line_id), None)
        if line is None:
            continue
        out.answer(event.callback)
        clarify.settle(scene, out, person.chat)
        if which == "same":
            at = f"{chart.local(line.at):%H:%M}" if line.at else ""
            text = scene.words.say("dose_same_noted", person.lang, at=at)
            out.add(Entry("tapped", person.name, text, chart.id))
            out.say(person.chat, text, patient=chart.id)
            return True
        _second_dose(scene, out, event, person, chart, line_id, which)
        return True
    return False


def _second_dose(
    scene: Scene,
    out: Outcome,
    event: Incoming,
    person: Person,
    chart: Chart,
    line_id: int,
    minute: str,
) -> None:
    """A second dose, given at ``minute`` (since the epoch): from now on both times count."""
    at = datetime.fromtimestamp(int(minute) * 60, UTC) if minute.isdigit() else scene.now
    line = next(one for one in chart.dose_lines if one.id == line_id)
    medicine = medicine_of(chart, line.item.med)
    label = scene.words.say("dose_second", person.lang)
    said = Said(person.name, f"{label}: {line.item.med}", f"tap:{event.update}", by_button=True)
    med = medicine.name if medicine else line.item.med
    doubled = Observation("dose", "doubled", med=med, at=clock(chart.local(at)))
    tell, more = after_given(scene, out, chart, replace(line, at=None), at, person.lang)
    if not tell:
        tell, held = hold_next(scene, out, chart, line.item.med, person.lang)
        more = [*more, *held]
    findings = take_note(scene, out, chart, [doubled], said, person=person, more=more)
    parts = [*advice_for(scene, chart, findings, person.lang), *tell]
    out.say(person.chat, "\n\n".join(parts), patient=chart.id, urgent=True)
