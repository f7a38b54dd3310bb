"""The board: what needs someone today, short enough for one phone screen."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from bot.model.chat import Incoming
from bot.model.text import Lang
from bot.plan.supply import last_dose

from .buttons import button
from .opening import next_opening
from .outcome import Due, Outcome, Rows
from .scene import Chart, RosterLine, Scene
from .words import date_of, when

SHOWN = 4
"""How many of a section stand on the board; the rest on tap."""
SILENT = timedelta(hours=36)
RECHECK_AHEAD, RECHECK_BEHIND, ENDING, SUPPLY = 1, 3, 7, timedelta(days=2)
"""Days around a recheck, before the end, and before a medicine's last dose; common
practice."""
NAMED = 30
"""At most so many lines in a section's detail."""


@dataclass(frozen=True, slots=True)
class Section:
    """One part of the board: its key, and a line for each that belongs to it."""

    key: str
    lines: tuple[str, ...]


def sections(scene: Scene, lang: Lang) -> list[Section]:
    """All parts of the board, each with its lines in order of need."""
    makers: Sequence[tuple[str, Callable[[Scene, Lang], list[str]]]] = (
        ("cases", _cases), ("silent", _silent), ("recheck", _rechecks),
        ("medicine", _medicines), ("ending", _ending), ("patients", _patients),
    )  # fmt: skip
    return [Section(key, tuple(make(scene, lang))) for key, make in makers]


def board(scene: Scene, out: Outcome, chat: int, *, quiet: bool = False) -> None:
    """Send the board to a staff chat."""
    lang = scene.clinic.language
    here = scene.now.astimezone(ZoneInfo(scene.clinic.zone))
    lines = [scene.words.say("board_head", lang, date=f"{date_of(here, lang)}, {here:%H:%M}")]
    made = sections(scene, lang)
    for section in made:
        head = scene.words.say(f"board_{section.key}", lang, n=len(section.lines))
        if section.key == "patients":
            lines.append(head)
        elif section.lines:
            lines += [head, *(f"  {line}" for line in section.lines[:SHOWN])]
            more = len(section.lines) - SHOWN
            lines += [f"  {scene.words.say('board_more', lang, n=more)}"] if more > 0 else []
    if len(lines) == 2:
        lines.append(scene.words.say("board_calm", lang))
    out.say(chat, "\n".join(lines), buttons=_buttons(scene, chat, made, lang), quiet=quiet)


def _buttons(scene: Scene, chat: int, made: Sequence[Section], lang: Lang) -> Rows:
    buttons = [
        button(
            scene.secret, chat,
            scene.words.say(f"board_{section.key}", lang, n=len(section.lines)),
            f"b.{section.key}",
        )
        for section in made
        if section.lines
    ]  # fmt: skip
    return tuple(tuple(buttons[i : i + 2]) for i in range(0, len(buttons), 2))


def board_detail(scene: Scene, out: Outcome, event: Incoming, parts: list[str]) -> bool:
    """A section in full."""
    lang = scene.clinic.language
    found = next((s for s in sections(scene, lang) if len(parts) == 2 and s.key == parts[1]), None)
    if found is None:
        return False
    out.answer(event.callback)
    head = scene.words.say(f"board_{found.key}", lang, n=len(found.lines))
    out.say(event.chat, "\n".join([head, *found.lines[:NAMED]]))
    return True


def morning_board(scene: Scene, out: Outcome) -> None:
    """The board comes by itself when the clinic opens."""
    for desk in scene.desks:
        if desk.rank == 0 and scene.roster:
            board(scene, out, desk.chat, quiet=True)
    tomorrow = next_opening(scene.clinic, _after_closing(scene))
    out.add(Due("board", "board", tomorrow))


def _after_closing(scene: Scene) -> datetime:
    """The start of tomorrow at the clinic."""
    here = scene.now.astimezone(ZoneInfo(scene.clinic.zone))
    start = (here + timedelta(days=1)).replace(hour=0, minute=0, second=0, microsecond=0)
    return start.astimezone(scene.now.tzinfo)


def _day(row: RosterLine, now: datetime) -> int:
    return (now.astimezone(ZoneInfo(row.plan.zone)).date() - row.plan.surgery).days


def _span(row: RosterLine, name: str) -> int | None:
    return {**row.protocol.spans, **row.plan.spans}.get(name)


def _who(row: RosterLine, now: datetime, lang: Lang) -> str:
    word = "day" if lang == "en" else "día"
    return f"{row.id}. {row.plan.patient} · {word} {_day(row, now)}"


def _cases(scene: Scene, lang: Lang) -> list[str]:
    here = ZoneInfo(scene.clinic.zone)
    now = scene.now.astimezone(here)
    found = sorted(
        ((case, row) for row in scene.roster for case in row.cases),
        key=lambda pair: pair[0].deadline,
    )
    lines = []
    for case, row in found:
        by = when(case.deadline.astimezone(here), now, lang)
        urgency = scene.words.say(f"urgency_{case.urgency.name}", lang)
        who = case.acknowledged_by or scene.words.say("case_nobody", lang)
        late = "! " if case.deadline < scene.now and case.state != "answered" else ""
        lines.append(f"{late}{by}: {row.plan.patient} · {urgency} · {case.matter} · {who}")
    return lines


def _silent(scene: Scene, lang: Lang) -> list[str]:
    quiet = [
        row
        for row in scene.roster
        if scene.now - (row.last_heard or row.enrolled_at) > SILENT and row.state == "active"
    ]
    quiet.sort(key=lambda row: row.last_heard or row.enrolled_at)
    lines = []
    for row in quiet:
        zone = ZoneInfo(row.plan.zone)
        heard = (
            when(row.last_heard.astimezone(zone), scene.now.astimezone(zone), lang)
            if row.last_heard
            else scene.words.say("desk_never", lang)
        )
        lines.append(f"{_who(row, scene.now, lang)} · {heard}")
    return lines


def _under_way(scene: Scene) -> list[RosterLine]:
    return [row for row in scene.roster if row.under_way]


def _rechecks(scene: Scene, lang: Lang) -> list[str]:
    lines = []
    for row in _under_way(scene):
        for name in ("recheck", "radiographs"):
            day = _span(row, name)
            if day is not None and -RECHECK_BEHIND <= day - _day(row, scene.now) <= RECHECK_AHEAD:
                what = scene.words.say(f"board_{name}_one", lang)
                lines.append(f"{_who(row, scene.now, lang)} · {what}")
    return lines


def _medicines(scene: Scene, lang: Lang) -> list[str]:
    lines = []
    for row in _under_way(scene):
        here = scene.now.astimezone(ZoneInfo(row.plan.zone)).replace(tzinfo=None)
        for medicine in row.plan.medicines:
            last = last_dose(row.plan, medicine)
            if last is not None and here <= last <= here + SUPPLY:
                until = when(last, here, lang)
                lines.append(f"{_who(row, scene.now, lang)} · {medicine.name} · {until}")
    return lines


def _ending(scene: Scene, lang: Lang) -> list[str]:
    return [
        _who(row, scene.now, lang)
        for row in _under_way(scene)
        if (last := _span(row, "last")) is not None and 0 <= last - _day(row, scene.now) <= ENDING
    ]


def _patients(scene: Scene, lang: Lang) -> list[str]:
    rows = sorted(_under_way(scene), key=lambda row: _day(row, scene.now))
    return [f"{_who(row, scene.now, lang)} · {row.plan.procedure}" for row in rows]


def find(roster: Sequence[RosterLine], wanted: str) -> list[RosterLine]:
    """Patients by number, or by name in any case."""
    wanted = wanted.strip().casefold()
    if wanted.isdigit():
        return [row for row in roster if row.id == int(wanted)]
    return [row for row in roster if row.plan.patient.casefold() == wanted]


def named(scene: Scene, out: Outcome, event: Incoming, wanted: str) -> Chart | None:
    """The patient that staff named behind a command; they are told when there is none."""
    rows = find(scene.roster, wanted)
    lang = scene.clinic.language
    if len(rows) == 1:
        return scene.chart(rows[0].id)
    if rows:
        names = ", ".join(f"{row.id} {row.plan.patient} ({row.plan.owner})" for row in rows)
        out.say(event.chat, scene.words.say("desk_many", lang, names=names))
    else:
        out.say(event.chat, scene.words.say("desk_no_patient", lang, name=wanted.strip() or "?"))
    return None
