"""Everything that staff may send in their own chats: who may do what, and to whom it goes."""

from __future__ import annotations

from dataclasses import replace

from bot.context.buttons import action_of
from bot.context.contexts import AtDesk
from bot.desk import cases as desk_cases
from bot.desk import clock as desk_clock
from bot.desk import edits as desk_edits
from bot.desk import holds, newcomers, recheck
from bot.desk import patients as desk_patients
from bot.desk import people as desk_people
from bot.desk import plan as desk_plan
from bot.desk import review_link as desk_review
from bot.desk.board import board, board_detail
from bot.desk.rights import RIGHTS
from bot.model.action import (
    Action,
    Admit,
    BoardSection,
    ConfirmOrder,
    OnCase,
    OnChat,
    OnHold,
    OnPlan,
    OnRecheck,
    RemovePerson,
)
from bot.model.chart import Member
from bot.model.chat import Incoming
from bot.model.effects import Effects, Entry, Reachable
from bot.model.ids import SourceId, message_source
from bot.model.topic import AboutChange

COMMANDS: dict[str, str] = {
    "/help": "patients", "/start": "patients", "/patients": "patients", "/board": "patients",
    "/review": "patients", "/log": "patients", "/link": "patients", "/people": "patients",
    "/note": "case", "/hold": "case", "/release": "plan",
    "/enrol": "enrol", "/enroll": "enrol", "/plan": "plan", "/medicine": "plan",
    "/end": "end", "/staff": "staff", "/clock": "clock",
}  # fmt: skip
"""Command → what it does, for the rights."""


def on_desk(ctx: AtDesk) -> Effects:
    """An event in a staff chat, or in a chat that wants to become one."""
    event = ctx.incoming
    out = Effects(ctx.event, event.chat)
    if event.kind in ("blocked", "unblocked"):
        out.add(Reachable(event.chat, event.kind == "unblocked"))
    elif event.kind == "button":
        _button(ctx, out, event)
    elif newcomers.shows_code(ctx, event):
        newcomers.join(ctx, out, event)
        _sign(out, event)
    elif event.kind == "message" and (event.text.strip() or event.media):
        _message(ctx, out, event)
        _sign(out, event)
    elif event.kind == "edited" and desk_edits.concerns(ctx, event):
        actor = allowed(ctx, out, event, "case")
        if actor is not None:
            desk_edits.edited(ctx, out, event, actor)
            _sign(out, event)
    return out


def _sign(out: Effects, event: Incoming) -> None:
    """The log says which message led to each entry, so that a later change of it is known."""
    mark = {"source": source_of(event), "user": event.sender.user if event.sender else None}
    out.all = [
        replace(one, data={**one.data, **mark}) if isinstance(one, Entry) else one
        for one in out.all
    ]


def source_of(event: Incoming) -> SourceId:
    """How a message is named where something came from it."""
    return message_source(event.chat, event.message)


def _message(ctx: AtDesk, out: Effects, event: Incoming) -> None:
    command = event.text.split()[0].casefold() if event.text.strip() else ""
    if command in ("/join", "/start") and ctx.invitation is not None:
        newcomers.join(ctx, out, event)
        return
    if ctx.desk(event.chat) is None and not event.private:
        return
    if command not in COMMANDS and not ctx.topic:
        return  # staff talking among themselves
    actor = allowed(ctx, out, event, COMMANDS.get(command, "case"))
    if actor is None:
        return
    argument = event.text[len(command) :].strip() if command else ""
    if command in ("/help", "/start"):
        out.say(event.chat, ctx.words.say("desk_help", ctx.clinic.language))
    elif command == "/board":
        board(ctx, out, event.chat)
    elif command == "/review":
        desk_review.review(ctx, out, event, actor)
    elif command == "/staff":
        desk_people.staff(ctx, out, event, actor, argument)
    elif command == "/clock":
        desk_clock.clock(ctx, out, event, actor, argument)
    elif command == "/note":
        desk_cases.note(ctx, out, event, actor, argument)
    elif command in ("/hold", "/release"):
        holds.command(ctx, out, event, actor, command, argument)
    elif command in ("/plan", "/medicine", "/end"):
        desk_plan.command(ctx, out, event, actor, command, argument)
    elif command in COMMANDS:
        desk_patients.command(ctx, out, event, actor, command, argument)
    elif isinstance(ctx.topic, AboutChange):
        if allowed(ctx, out, event, "plan") is None:
            return
        if not desk_plan.reason(ctx, out, event, actor, ctx.topic):
            out.say(event.chat, ctx.words.say("reason_none", ctx.clinic.language))
    elif ctx.charts:
        desk_cases.to_owner(ctx, out, event, actor, ctx.charts[0])


def _button(ctx: AtDesk, out: Effects, event: Incoming) -> None:
    action = action_of(ctx.practice.secret, (event.chat, *ctx.former), event.data)
    doing = _right_for(action)
    if action is None or doing is None:
        refuse(ctx, out, event, "a button that is not ours or not theirs")
        return
    actor = allowed(ctx, out, event, doing)
    if actor is not None and not _act(ctx, out, event, actor, action):
        refuse(ctx, out, event, "a button that leads nowhere")


def _right_for(action: Action | None) -> str | None:
    """What a button does, for the rights; None for one of the household's."""
    match action:
        case Admit() | OnChat():
            return "staff"
        case OnCase():
            return "case"
        case BoardSection() | RemovePerson():
            return "patients"
        case OnHold(act=act) if act != "release":
            return "case"
        case OnPlan() | OnRecheck() | ConfirmOrder() | OnHold():
            return "plan"
        case _:
            return None


def _act(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, action: Action) -> bool:
    match action:
        case OnCase(case=case, act=act):
            return desk_cases.tap(ctx, out, event, actor, case, act)
        case BoardSection(section=section):
            return board_detail(ctx, out, event, section)
        case Admit(act=act, key=key):
            return newcomers.admit(ctx, out, event, actor, act, key)
        case OnChat(act=act, chat=chat):
            return desk_people.on_chat(ctx, out, event, actor, act, chat)
        case ConfirmOrder(act=act, key=key):
            return desk_patients.confirmed(ctx, out, event, actor, act, key)
        case RemovePerson(patient=patient, person=person):
            return desk_patients.remove(ctx, out, event, actor, patient, person)
        case OnPlan(patient=patient, step=step):
            return desk_plan.tap(ctx, out, event, actor, patient, step)
        case OnRecheck():
            return recheck.tap(ctx, out, event, actor, action)
        case OnHold():
            return holds.tap(ctx, out, event, actor, action)
        case _:
            return False


def allowed(ctx: AtDesk, out: Effects, event: Incoming, doing: str) -> Member | None:
    """The one who speaks, when they may do this; else they are told, and it is logged."""
    actor = ctx.actor
    if actor is not None and actor.role in RIGHTS[doing]:
        return actor
    lang = ctx.clinic.language
    by = event.sender.name if event.sender else "?"
    if actor is None:
        words = ctx.words.say("desk_unknown", lang, by=by)
    else:
        roles = " / ".join(
            ctx.words.say(f"role_{role}", lang)
            for role in ("clinician", "administrator")
            if role in RIGHTS[doing]
        )
        words = ctx.words.say("desk_not_allowed", lang, roles=roles)
    if event.kind == "button":
        out.answer(event.callback, words)
    elif ctx.desk(event.chat) is not None:
        out.say(event.chat, words, reply_to=event.message)
    out.add(_refusal(event, f"may not: {doing}"))
    return None


def refuse(ctx: AtDesk, out: Effects, event: Incoming, why: str) -> None:
    """A polite nothing, and a line in the log."""
    del ctx
    out.answer(event.callback)
    out.add(_refusal(event, why))


def _refusal(event: Incoming, why: str) -> Entry:
    by = f"{event.sender.name} ({event.sender.user})" if event.sender else f"chat {event.chat}"
    data = {"chat": event.chat, "data": event.data[:64], "text": event.text[:200]}
    return Entry("refused", by, why, None, data)
