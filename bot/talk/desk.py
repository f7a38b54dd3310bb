"""Everything that staff may send in their own chats: who may do what, and to whom it goes."""

from __future__ import annotations

from dataclasses import replace

from bot.model.chat import Incoming

from . import (
    desk_cases,
    desk_edits,
    desk_patients,
    desk_people,
    desk_plan,
    desk_review,
    recheck,
)
from .board import board, board_detail
from .buttons import action_of
from .outcome import Entry, Outcome
from .scene import Member, Scene

RIGHTS: dict[str, frozenset[str]] = {
    "case": frozenset({"staff", "clinician", "administrator"}),
    "patients": frozenset({"staff", "clinician", "administrator"}),
    "enrol": frozenset({"staff", "clinician", "administrator"}),
    "plan": frozenset({"clinician", "administrator"}),
    "end": frozenset({"clinician", "administrator"}),
    "staff": frozenset({"administrator"}),
}
"""What is done → the roles that may do it."""

COMMANDS: dict[str, str] = {
    "/help": "patients", "/start": "patients", "/patients": "patients", "/board": "patients",
    "/review": "patients", "/log": "patients", "/link": "patients", "/people": "patients",
    "/note": "case",
    "/enrol": "enrol", "/enroll": "enrol", "/plan": "plan", "/medicine": "plan",
    "/end": "end", "/staff": "staff",
}  # fmt: skip
"""Command → what it does, for the rights."""


def on_desk(scene: Scene, event: Incoming) -> Outcome:
    """An event in a staff chat, or in a chat that wants to become one."""
    out = Outcome(scene.cause, event.chat)
    if event.kind == "button":
        _button(scene, out, event)
    elif event.kind == "message" and (event.text.strip() or event.media):
        _message(scene, out, event)
        _sign(out, event)
    elif event.kind == "edited" and desk_edits.concerns(scene, event):
        actor = allowed(scene, out, event, "case")
        if actor is not None:
            desk_edits.edited(scene, out, event, actor)
            _sign(out, event)
    return out


def _sign(out: Outcome, event: Incoming) -> None:
    """The log says which message led to each entry, so that a later change of it is known."""
    mark = {"source": source_of(event), "user": event.sender.user if event.sender else None}
    out.changes = [
        replace(change, data={**change.data, **mark}) if isinstance(change, Entry) else change
        for change in out.changes
    ]


def source_of(event: Incoming) -> str:
    """How a message is named where something came from it."""
    return f"message:{event.chat}:{event.message}"


def _message(scene: Scene, out: Outcome, event: Incoming) -> None:
    command = event.text.split()[0].casefold() if event.text.strip() else ""
    if command in ("/join", "/start") and scene.invitation is not None:
        desk_people.join(scene, out, event)
        return
    if scene.desk(event.chat) is None and not event.private:
        return
    if command not in COMMANDS and not scene.reply_topic:
        return  # staff talking among themselves
    actor = allowed(scene, out, event, COMMANDS.get(command, "case"))
    if actor is None:
        return
    argument = event.text[len(command) :].strip() if command else ""
    if command in ("/help", "/start"):
        out.say(event.chat, scene.words.say("desk_help", scene.clinic.language))
    elif command == "/board":
        board(scene, out, event.chat)
    elif command == "/review":
        desk_review.review(scene, out, event, actor)
    elif command == "/staff":
        desk_people.staff(scene, out, event, actor, argument)
    elif command == "/note":
        desk_cases.note(scene, out, event, actor, argument)
    elif command in ("/plan", "/medicine"):
        desk_plan.command(scene, out, event, actor, command, argument)
    elif command in COMMANDS:
        desk_patients.command(scene, out, event, actor, command, argument)
    elif scene.reply_topic.startswith("reason:"):
        if allowed(scene, out, event, "plan") is None:
            return
        if not desk_plan.reason(scene, out, event, actor):
            out.say(event.chat, scene.words.say("reason_none", scene.clinic.language))
    elif scene.charts:
        desk_cases.to_owner(scene, out, event, actor, scene.charts[0])


def _button(scene: Scene, out: Outcome, event: Incoming) -> None:
    action = action_of(scene.secret, (event.chat, *scene.former), event.data)
    parts = (action or "").split(".")
    known = {"c": "case", "b": "patients", "t": "plan", "p": "plan", "o": "patients", "n": "plan"}
    if action is None or parts[0] not in known:
        refuse(scene, out, event, "a button that is not ours or not theirs")
        return
    actor = allowed(scene, out, event, known[parts[0]])
    if actor is None:
        return
    done = (
        (parts[0] == "c" and len(parts) == 3 and desk_cases.tap(scene, out, event, actor, parts))
        or (parts[0] == "b" and board_detail(scene, out, event, parts))
        or (parts[0] == "n" and desk_patients.confirmed(scene, out, event, actor, parts))
        or (parts[0] == "o" and desk_patients.remove(scene, out, event, actor, parts))
        or (parts[0] == "t" and desk_plan.tap(scene, out, event, actor, parts))
        or (parts[0] == "p" and recheck.tap(scene, out, event, actor, parts))
    )
    if not done:
        refuse(scene, out, event, "a button that leads nowhere")


def allowed(scene: Scene, out: Outcome, event: Incoming, doing: str) -> Member | None:
    """The one who speaks, when they may do this; else they are told, and it is logged."""
    actor = scene.actor
    if actor is not None and actor.role in RIGHTS[doing]:
        return actor
    lang = scene.clinic.language
    by = event.sender.name if event.sender else "?"
    if actor is None:
        words = scene.words.say("desk_unknown", lang, by=by)
    else:
        roles = " / ".join(
            scene.words.say(f"role_{role}", lang)
            for role in ("clinician", "administrator")
            if role in RIGHTS[doing]
        )
        words = scene.words.say("desk_not_allowed", lang, roles=roles)
    if event.kind == "button":
        out.answer(event.callback, words)
    elif scene.desk(event.chat) is not None:
        out.say(event.chat, words, reply_to=event.message)
    out.add(_refusal(event, f"may not: {doing}"))
    return None


def refuse(scene: Scene, out: Outcome, event: Incoming, why: str) -> None:
    """A polite nothing, and a line in the log."""
    del scene
    out.answer(event.callback)
    out.add(_refusal(event, why))


def _refusal(event: Incoming, why: str) -> Entry:
    by = f"{event.sender.name} ({event.sender.user})" if event.sender else f"chat {event.chat}"
    data = {"chat": event.chat, "data": event.data[:64], "text": event.text[:200]}
    return Entry("refused", by, why, None, data)
