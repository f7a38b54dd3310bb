"""The board: what needs someone today, short enough for one phone screen."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from zoneinfo import ZoneInfo

from bot.context.contexts import AtDesk, FellDue
from bot.context.opening import next_opening
from bot.context.words import date_of, when
from bot.model.action import BoardSection
from bot.model.chart import Chart, RosterLine
from bot.model.chat import Incoming
from bot.model.effects import Due, Effects, Rows
from bot.model.text import Lang
from bot.plan.supply import last_dose
from bot.standing.words import held_items

Board = AtDesk | FellDue
"""Whoever asks for the board, or the hour at which it comes by itself."""
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


def sections(ctx: Board, lang: Lang) -> list[Section]:
    """All parts of the board, each with its lines in order of need."""
    makers: Sequence[tuple[str, Callable[[Board, Lang], list[str]]]] = (
        ("lost", _lost), ("unread", _unread), ("cases", _cases), ("held", _held),
        ("silent", _silent), ("recheck", _rechecks), ("medicine", _medicines),
        ("ending", _ending), ("patients", _patients),
    )  # fmt: skip
    return [Section(key, tuple(make(ctx, lang))) for key, make in makers]


def board(ctx: Board, out: Effects, chat: int, *, quiet: bool = False) -> None:
    """Send the board to a staff chat."""
    lang = ctx.clinic.language
    here = ctx.now.astimezone(ZoneInfo(ctx.clinic.zone))
    lines = [ctx.words.say("board_head", lang, date=f"{date_of(here, lang)}, {here:%H:%M}")]
    made = sections(ctx, lang)
    for section in made:
        head = ctx.words.say(f"board_{section.key}", lang, n=len(section.lines))
        if section.key == "patients":
            lines.append(head)
        elif section.lines:
            lines += [head, *(f"  {line}" for line in section.lines[:SHOWN])]
            more = len(section.lines) - SHOWN
            lines += [f"  {ctx.words.say('board_more', lang, n=more)}"] if more > 0 else []
    if len(lines) == 2:
        lines.append(ctx.words.say("board_calm", lang))
    lines.append(_last_copy(ctx, lang))
    out.say(chat, "\n".join(lines), buttons=_buttons(ctx, chat, made, lang), quiet=quiet)


def _buttons(ctx: Board, chat: int, made: Sequence[Section], lang: Lang) -> Rows:
    buttons = [
        ctx.button(chat,
            ctx.words.say(f"board_{section.key}", lang, n=len(section.lines)),
            BoardSection(section.key),
        )
        for section in made
        if section.lines
    ]  # fmt: skip
    return tuple(tuple(buttons[i : i + 2]) for i in range(0, len(buttons), 2))


def board_detail(ctx: AtDesk, out: Effects, event: Incoming, section: str) -> bool:
    """A section in full."""
    lang = ctx.clinic.language
    found = next((s for s in sections(ctx, lang) if s.key == section), None)
    if found is None:
        return False
    out.answer(event.callback)
    head = ctx.words.say(f"board_{found.key}", lang, n=len(found.lines))
    out.say(event.chat, "\n".join([head, *found.lines[:NAMED]]))
    return True


def morning_board(ctx: Board, out: Effects) -> None:
    """The board comes by itself when the clinic opens."""
    for desk in ctx.desks:
        if desk.rank == 0 and (ctx.roster or ctx.unread):
            board(ctx, out, desk.chat, quiet=True)
    tomorrow = next_opening(ctx.clinic, _after_closing(ctx))
    out.add(Due("board", "board", tomorrow))


def _after_closing(ctx: Board) -> datetime:
    """The start of tomorrow at the clinic."""
    here = ctx.now.astimezone(ZoneInfo(ctx.clinic.zone))
    start = (here + timedelta(days=1)).replace(hour=0, minute=0, second=0, microsecond=0)
    return start.astimezone(ctx.now.tzinfo)


def _last_copy(ctx: Board, lang: Lang) -> str:
    """How old the last copy of the practice is; a warning where it is too old, or none is."""
    last = ctx.last_copy
    if last is None:
        return ctx.words.say("board_copy_none", lang)
    here = ZoneInfo(ctx.clinic.zone)
    late = ctx.now - last > 2 * timedelta(hours=ctx.clinic.backup.every_hours)
    at = when(last.astimezone(here), ctx.now.astimezone(here), lang)
    return ctx.words.say("board_copy_old" if late else "board_copy", lang, at=at)


def _day(row: RosterLine, now: datetime) -> int:
    return (now.astimezone(ZoneInfo(row.plan.zone)).date() - row.plan.surgery).days


def _span(row: RosterLine, name: str) -> int | None:
    return {**row.protocol.spans, **row.plan.spans}.get(name)


def _who(row: RosterLine, now: datetime, lang: Lang) -> str:
    word = "day" if lang == "en" else "día"
    return f"{row.id}. {row.plan.patient} · {word} {_day(row, now)}"


def _lost(ctx: Board, lang: Lang) -> list[str]:
    """Chats in which nobody reads what is sent, the longest first."""
    here, now = ZoneInfo(ctx.clinic.zone), ctx.now.astimezone(ZoneInfo(ctx.clinic.zone))
    people = {one.chat: (one.lost, one.name) for one in ctx.staff if one.chat and one.lost}
    chats = {one.chat: (one.lost, one.name) for one in ctx.desks if one.lost}
    return [
        ctx.words.say(
            "board_lost_one", lang, name=name, when=when(since.astimezone(here), now, lang)
        )
        for since, name in sorted({**people, **chats}.values())
    ]


def _unread(ctx: Board, lang: Lang) -> list[str]:
    """Nothing reaches these from the bot: somebody must phone them."""
    return [ctx.words.say("board_unread_one", lang, name=name) for name in ctx.unread]


def _cases(ctx: Board, lang: Lang) -> list[str]:
    here = ZoneInfo(ctx.clinic.zone)
    now = ctx.now.astimezone(here)
    found = sorted(
        ((case, row) for row in ctx.roster for case in row.cases),
        key=lambda pair: pair[0].deadline,
    )
    lines = []
    for case, row in found:
        by = when(case.deadline.astimezone(here), now, lang)
        urgency = ctx.words.say(f"urgency_{case.urgency.name}", lang)
        who = case.acknowledged_by or ctx.words.say("case_nobody", lang)
        late = "! " if case.deadline < ctx.now and case.state != "answered" else ""
        lines.append(f"{late}{by}: {row.plan.patient} · {urgency} · {case.matter} · {who}")
    return lines


def _held(ctx: Board, lang: Lang) -> list[str]:
    """What is on hold, since when and why; the longest first."""
    rows = [row for row in ctx.roster if row.holds and row.state != "died"]
    rows.sort(key=lambda row: min(hold.since for hold in row.holds))
    lines = []
    for row in rows:
        stand = [hold for hold in row.holds if hold.stands(ctx.now)]
        if items := held_items(stand, row.plan, lang, ctx.words, _since(ctx, row, lang)):
            lines.append(f"{_who(row, ctx.now, lang)} · {'; '.join(items)}")
    return lines


def _since(ctx: Board, row: RosterLine, lang: Lang) -> Callable[[datetime], str]:
    """Moments as the household's clock shows them."""
    here = ZoneInfo(row.plan.zone)
    return lambda at: when(at.astimezone(here), ctx.now.astimezone(here), lang)


def _silent(ctx: Board, lang: Lang) -> list[str]:
    quiet = [
        row
        for row in ctx.roster
        if ctx.now - (row.last_heard or row.enrolled_at) > SILENT and row.state == "active"
    ]
    quiet.sort(key=lambda row: row.last_heard or row.enrolled_at)
    lines = []
    for row in quiet:
        zone = ZoneInfo(row.plan.zone)
        heard = (
            when(row.last_heard.astimezone(zone), ctx.now.astimezone(zone), lang)
            if row.last_heard
            else ctx.words.say("desk_never", lang)
        )
        lines.append(f"{_who(row, ctx.now, lang)} · {heard}")
    return lines


def _under_way(ctx: Board) -> list[RosterLine]:
    return [row for row in ctx.roster if row.under_way]


def _rechecks(ctx: Board, lang: Lang) -> list[str]:
    lines = []
    for row in _under_way(ctx):
        for name in ("recheck", "radiographs"):
            day = _span(row, name)
            if day is not None and -RECHECK_BEHIND <= day - _day(row, ctx.now) <= RECHECK_AHEAD:
                what = ctx.words.say(f"board_{name}_one", lang)
                lines.append(f"{_who(row, ctx.now, lang)} · {what}")
    return lines


def _medicines(ctx: Board, lang: Lang) -> list[str]:
    lines = []
    for row in _under_way(ctx):
        here = ctx.now.astimezone(ZoneInfo(row.plan.zone)).replace(tzinfo=None)
        for medicine in row.plan.medicines:
            last = last_dose(row.plan, medicine)
            if last is not None and here <= last <= here + SUPPLY:
                until = when(last, here, lang)
                lines.append(f"{_who(row, ctx.now, lang)} · {medicine.name} · {until}")
    return lines


def _ending(ctx: Board, lang: Lang) -> list[str]:
    return [
        _who(row, ctx.now, lang)
        for row in _under_way(ctx)
        if (last := _span(row, "last")) is not None and 0 <= last - _day(row, ctx.now) <= ENDING
    ]


def _patients(ctx: Board, lang: Lang) -> list[str]:
    rows = sorted(_under_way(ctx), key=lambda row: _day(row, ctx.now))
    return [f"{_who(row, ctx.now, lang)} · {row.plan.procedure}" for row in rows]


def find(roster: Sequence[RosterLine], wanted: str) -> list[RosterLine]:
    """Patients by number, or by name in any case."""
    wanted = wanted.strip().casefold()
    if wanted.isdecimal() and len(wanted) < 10:
        return [row for row in roster if row.id == int(wanted)]
    return [row for row in roster if row.plan.patient.casefold() == wanted]


def split_name(roster: Sequence[RosterLine], text: str) -> tuple[RosterLine | None, str]:
    """The patient that the first words name, and the rest; the longest name that is one."""
    words = text.split()
    for many in range(len(words), 0, -1):
        rows = find(roster, " ".join(words[:many]))
        if len(rows) == 1:
            return rows[0], " ".join(words[many:])
    return None, text


def named(ctx: AtDesk, out: Effects, event: Incoming, wanted: str) -> Chart | None:
    """The patient that staff named behind a command; they are told when there is none."""
    rows = find(ctx.roster, wanted)
    lang = ctx.clinic.language
    if len(rows) == 1:
        return ctx.chart(rows[0].id)
    if rows:
        names = ", ".join(f"{row.id} {row.plan.patient} ({row.plan.owner})" for row in rows)
        out.say(event.chat, ctx.words.say("desk_many", lang, names=names))
    else:
        out.say(event.chat, ctx.words.say("desk_no_patient", lang, name=wanted.strip() or "?"))
    return None
