"""How a prompt looks in a chat: numbered lines, a row of buttons for each open one."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime

from bot.context.contexts import Context
from bot.context.words import Words, clock, when
from bot.dosing.showable import (
    AskedWhen,
    Held,
    Look,
    Past,
    Served,
    Stopped,
    TooSoon,
    Unsure,
    look,
    why_not,
)
from bot.model.action import TakeBack, TapAll, TapLine
from bot.model.chart import Chart, Line, Person, Sheet
from bot.model.chat import Button, Outgoing
from bot.model.effects import Effects, Rows
from bot.model.observation import Observation, read_in
from bot.model.purpose import Purpose
from bot.model.text import Lang
from bot.model.topic import TOPICS, AboutPrompt
from bot.standing.standing import Over


def sheet_text(ctx: Context, chart: Chart, sheet: Sheet, lang: Lang, first: str = "") -> str:
    """The words of a prompt, with what became of each line behind it.

    ``first`` makes it a reminder: only what still waits, under these words.
    """
    day = chart.day(sheet.due_at)
    head = ctx.words.say("head", lang, name=chart.name, day=day)
    lines = [first, head] if first else [head]
    numbered = _numbers(sheet)
    for line in to_do(ctx, chart, sheet) if first else sheet.lines:
        number = f"{numbered[line.id]}. " if line.id in numbered and len(numbered) > 1 else ""
        lines.append(f"{number}{line.item.text.say(lang)}{_after(ctx, chart, line, lang)}")
    return "\n".join(lines)


def _numbers(sheet: Sheet) -> dict[int, int]:
    """Line id → its number; notices have none, nor have doses that wait for staff: they were
    not in the message that first came."""
    asking = [line for line in sheet.lines if line.item.kind != "notice" and line.state != "held"]
    return {line.id: number for number, line in enumerate(asking, 1)}


def _after(ctx: Context, chart: Chart, line: Line, lang: Lang) -> str:
    """What became of a line, or why it has no button."""
    if line.state == "answered":
        done = ctx.words.say(
            "answered",
            lang,
            choice=choice_label(ctx.words, line, lang),
            at=clock(chart.local(line.at)) if line.at else "",
            by=line.by or "",
        )
        return f"\n   ✓ {done}"
    if line.state not in ("open", "unanswered", "held") or line.item.kind == "notice":
        return ""
    standing = ctx.standing(chart)
    if isinstance(standing.mode, Over):
        return ""  # "not yet" would be said of one that has died
    reason = look(chart, standing, line, ctx.now)
    words = why_words(ctx, chart, line, reason, lang)
    if line.state == "held" and isinstance(reason, Past | None):
        words = ctx.words.say("held_over", lang)  # it had no button, and gets none
    return f"\n   → {words}" if words else ""


def why_words(ctx: Context, chart: Chart, line: Line, reason: Look, lang: Lang) -> str:
    """Why a line is not to be done now, in a few words; empty when it may be."""
    words = ctx.words
    match reason:
        case None:
            return ""
        case Held():
            return words.say("held_line", lang)
        case Stopped():
            return words.say("stopped_line", lang)
        case Unsure():
            return words.say("unsure_line", lang)
        case Served():
            return words.say("served_line", lang)
        case Past():
            return words.say("past_line", lang)
        case TooSoon(given=given, until=until):
            return words.say(
                "soon_line", lang, given=clock(chart.local(given)),
                until=when(chart.local(until), chart.local(ctx.now), lang),
            )  # fmt: skip
        case AskedWhen(tap=tap):
            by = next((one.name for one in chart.people if one.chat == tap.chat), "")
            return words.say("given_asked", lang, by=by, at=clock(chart.local(tap.tapped)))


def choice_label(words: Words, line: Line, lang: Lang) -> str:
    """What a line was answered with: the words of a button, or of what was read (each reads
    it in their own language)."""
    if (read := read_in(line.choice)) is not None:
        return words.observation(Observation(*read), lang)
    for choice in line.item.choices:
        if choice.id == line.choice:
            return choice.label.say(lang)
    return "✓"


def tappable(ctx: Context, chart: Chart, sheet: Sheet) -> list[Line]:
    """The lines of a prompt that may have buttons now."""
    standing = ctx.standing(chart)
    return [
        line
        for line in sheet.open
        if line.item.choices and why_not(chart, standing, line, ctx.now) is None
    ]


def to_do(ctx: Context, chart: Chart, sheet: Sheet) -> list[Line]:
    """Those of them that may be done now: all a reminder speaks of."""
    standing = ctx.standing(chart)
    return [
        line for line in tappable(ctx, chart, sheet) if look(chart, standing, line, ctx.now) is None
    ]


def sheet_buttons(ctx: Context, chat: int, chart: Chart, sheet: Sheet, lang: Lang) -> Rows:
    """A row for each open line that may be done now; "all done" on top where several are."""
    if chart.over or ctx.standing(chart).death_told:
        return ()
    numbered = _numbers(sheet)
    rows: list[tuple[Button, ...]] = []
    waiting = tappable(ctx, chart, sheet)
    if chart.state == "paused":  # a dose given before the stay is worth knowing there
        waiting = [line for line in waiting if line.item.kind == "dose"]
    here = {line.id for line in to_do(ctx, chart, sheet)}
    todo = [x for x in waiting if x.id in here and x.item.kind in ("dose", "session")]
    if len(todo) > 1:
        which = ", ".join(str(numbered[line.id]) for line in todo)
        label = ctx.words.say("all_done", lang, which=which)
        rows.append((ctx.button(chat, label, TapAll(sheet.id)),))
    for line in waiting:
        mark = f"{numbered[line.id]} · " if len(numbered) > 1 else ""
        made = [
            ctx.button(chat, f"{mark}{c.label.say(lang)}", TapLine(line.id, c.id))
            for c in line.item.choices
        ]
        width = 3 if len(made) == 3 and all(len(b.label) <= 12 for b in made) else 2
        rows += [tuple(made[i : i + width]) for i in range(0, len(made), width)]
    if any(line.state == "answered" and line.source for line in sheet.lines):
        rows.append((ctx.button(chat, ctx.words.say("undo_button", lang), TakeBack(sheet.id)),))
    return tuple(rows)


def prompt_key(sheet: Sheet, chat: int) -> str:
    """The key of the message by which a prompt first came to a chat."""
    return f"prompt:{sheet.id}:{chat}"


def held_key(sheet: Sheet, chat: int) -> str:
    """The key of the message that its doses, whose hour has come, are still on hold."""
    return f"held:{sheet.id}:{chat}"


def reminder_key(sheet: Sheet, chat: int, at: datetime) -> str:
    """The key of the reminder of a prompt in a chat, sent at ``at``: the one that comes by
    itself, or a further one that was asked for."""
    return f"remind:{sheet.id}:{chat}:{int(at.timestamp()) // 60}"


def remind_key(sheet: Sheet, person: Person) -> str:
    """The key of what falls due to remind a person of a prompt, by itself or when they said."""
    return f"remind:{sheet.id}:{person.chat}"


def show(
    ctx: Context, out: Effects, chart: Chart, sheet: Sheet, person: Person, *, remind: str = ""
) -> None:
    """Send a prompt, or its one reminder under these words, to a person."""
    words = ctx.words
    first = words.say(remind, person.lang, name=chart.name) if remind else ""
    dedupe = prompt_key(sheet, person.chat)
    if remind:
        dedupe = reminder_key(sheet, person.chat, ctx.now)
        if sheet.reminded is not None:  # its buttons are on the newest alone
            old = reminder_key(sheet, person.chat, sheet.reminded)
            out.edit(person.chat, old, first, home=True, patient=chart.id)
    message = Outgoing(
        kind="send",
        dedupe=dedupe,
        chat=person.chat,
        text=sheet_text(ctx, chart, sheet, person.lang, first),
        buttons=sheet_buttons(ctx, person.chat, chart, sheet, person.lang),
        topic=TOPICS.encode(AboutPrompt(sheet.id, chart.id)),
        patient=chart.id,
        again=words.say("sent_again", person.lang),
    )
    lines = tuple(to_do(ctx, chart, sheet)) if remind else sheet.lines
    out.show_lines(person, Purpose.reminder if remind else Purpose.prompt, message, lines)


def shown_to(sheet: Sheet, person: Person) -> Sheet:
    """The prompt as a person has it: nobody gets by an edit what they did not want, nor what
    was on hold at its hour and so never came."""
    came = tuple(line for line in sheet.lines if line.state != "held")
    lines = tuple(line for line in came if person.wanted(line.item.kind))
    return replace(sheet, lines=lines or came)
