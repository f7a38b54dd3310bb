"""The practice's own people: staff chats, links for each, roles, leaving."""

from __future__ import annotations

from datetime import timedelta

from bot.context.buttons import digest_of
from bot.context.contexts import AtDesk, Context
from bot.household.people import start_link
from bot.model.action import OnChat
from bot.model.chart import Desk, Member
from bot.model.chat import Incoming
from bot.model.effects import (
    CloseDesk,
    Dismiss,
    Effects,
    Entry,
    HoldDesk,
    Invite,
    KeepDesk,
    NewRole,
)

ROLES = ("staff", "clinician", "administrator")


def announce(ctx: AtDesk, out: Effects, name: str, what: str, but: int | None = None) -> None:
    """The staff chat and the administrators hear who is new, or may do something else."""
    for chat in chats_of_administrators(ctx, but=(but,)):
        out.say(chat, say(ctx, "staff_new", name=name, what=what))


def chats_of_administrators(ctx: Context, but: tuple[int | None, ...]) -> list[int]:
    """The first staff chats, and the administrators' own."""
    chats = [desk.chat for desk in ctx.desks if desk.rank == 0]
    chats += [one.chat for one in ctx.staff if one.role == "administrator" and one.chat]
    return [chat for chat in dict.fromkeys(chats) if chat not in but]


def staff(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, argument: str) -> None:
    """``/staff``: who is here, and which chats; each change of it is a named act."""
    verb, _, rest = argument.partition(" ")
    rest = rest.strip()
    match verb:
        case "add" if rest:
            said = _add(ctx, out, actor, rest)
        case "remove" if rest:
            said = remove(ctx, out, actor, rest, event.chat)
        case "role" if rest:
            said = _role(ctx, out, actor, rest)
        case "close" if rest:
            said = _close(ctx, out, actor, rest)
        case "keep" if rest:
            said = _keep(ctx, out, actor, rest)
        case _:
            said = _listed(ctx)
    out.say(event.chat, said)


def _add(ctx: AtDesk, out: Effects, actor: Member, rest: str) -> str:
    name, role = _name_and_role(rest)
    expires = ctx.now + timedelta(days=1)
    digest = digest_of(ctx.fresh_code)
    out.add(
        Invite(digest, "staff", actor.name, expires, name=name, role=role, member=actor.id),
        Entry("desk", actor.name, f"a link for {name} as {role}"),
    )
    link = start_link(ctx.practice.bot_name, ctx.fresh_code)
    return say(ctx, "staff_link", name=name, role=say(ctx, f"role_{role}"), link=link)


def remove(ctx: AtDesk, out: Effects, actor: Member, rest: str, here: int) -> str:
    """Somebody may act here no longer, whatever becomes of the chats; what is to be said."""
    found = _member(ctx, rest)
    if found is None:
        return say(ctx, "staff_no_such", name=rest)
    if _last_administrator(ctx, found):
        return say(ctx, "staff_last")
    words = say(ctx, "staff_cleared", clinic=ctx.clinic.name)
    out.add(Dismiss(found.id, words), Entry("desk", actor.name, f"{found.name} was removed"))
    said = [say(ctx, "staff_removed", name=found.name)]
    groups = [f"{one.chat} · {one.name}" for one in (*ctx.desks, *ctx.held) if one.chat < 0]
    if groups:
        text = say(ctx, "staff_removed_groups", name=found.name, number=found.user)
        said.append("\n".join([text, *groups]))
    return "\n\n".join([*said, *_chats_made_by(ctx, out, found, here)])


def _chats_made_by(ctx: AtDesk, out: Effects, gone: Member, here: int) -> list[str]:
    """The staff chats that the one who was removed had made, where they may still read: nothing
    is sent there until an administrator says so elsewhere. The only one to which cases can go
    first goes on, and everybody who may act is told so. What is to be said ``here``, too."""
    others = [one for one in ctx.desks if one.chat not in (gone.user, gone.chat)]
    made = [one for one in others if one.opened == gone.user]
    ours = (gone.user, gone.chat, *(one.chat for one in made))
    only = None if _first_chats(ctx, but=ours) else _best_first(made)
    held = [one.chat for one in made if one is not only]
    chats = chats_of_administrators(ctx, but=(gone.user, gone.chat, *held))
    said: list[str] = []
    for desk in made:
        key = "staff_chat_only" if desk is only else "staff_chat_held"
        text = say(ctx, key, name=gone.name, chat=desk.chat)
        said += [] if here in chats else [text]
        what = "goes on, as the only one" if desk is only else "waits for an administrator's word"
        out.add(Entry("desk", "bot", f"chat {desk.chat}, made by {gone.name}, {what}"))
        if desk is not only:
            out.add(HoldDesk(desk.chat))
        for chat in chats:
            acts = (("close", "staff_chat_close"), ("keep", "staff_chat_keep"))
            buttons = tuple(
                (ctx.button(chat, say(ctx, label), OnChat(act, desk.chat)),)
                for act, label in acts if desk is not only
            )  # fmt: skip
            out.say(chat, text, buttons=buttons, urgent=True)
    if only is None and not _first_chats(ctx, but=ours):
        text = say(ctx, "staff_no_first_chat")
        said += [] if here in chats else [text]
        out.add(Entry("desk", "bot", "no chat is left to which cases go first"))
        for chat in chats:
            out.say(chat, text, urgent=True)
    return said


def _best_first(desks: list[Desk]) -> Desk | None:
    """Of those to which cases go first one that is reached, if there is any."""
    first = [one for one in desks if one.rank == 0]
    return min(first, key=lambda one: one.lost is not None, default=None)


def _role(ctx: AtDesk, out: Effects, actor: Member, rest: str) -> str:
    wanted, _, role = rest.rpartition(" ")
    found = _member(ctx, wanted)
    if role not in ROLES:
        return say(ctx, "staff_how")
    if found is None:
        return say(ctx, "staff_no_such", name=wanted)
    if role != "administrator" and _last_administrator(ctx, found):
        return say(ctx, "staff_last")
    out.add(
        NewRole(found.id, role),
        Entry("desk", actor.name, f"{found.name} is {role} now, and was {found.role}"),
    )
    announce(ctx, out, found.name, say(ctx, f"role_{role}"))
    return say(ctx, "staff_role", name=found.name, role=say(ctx, f"role_{role}"))


def _close(ctx: AtDesk, out: Effects, actor: Member, rest: str) -> str:
    found = next((one for one in (*ctx.desks, *ctx.held) if str(one.chat) == rest), None)
    if found is None:
        return say(ctx, "staff_no_chat_such", chat=rest)
    first = found.rank == 0 and found in ctx.desks
    if first and not _first_chats(ctx, but=(found.chat,)):
        return say(ctx, "staff_last_chat")
    text = f"chat {found.chat} ({found.name}) is a staff chat no longer"
    words = say(ctx, "staff_cleared", clinic=ctx.clinic.name)
    out.add(CloseDesk(found.chat, words), Entry("desk", actor.name, text))
    return say(ctx, "staff_closed", name=found.name, chat=found.chat)


def _keep(ctx: AtDesk, out: Effects, actor: Member, rest: str) -> str:
    found = next((one for one in ctx.held if str(one.chat) == rest), None)
    if found is None:
        return say(ctx, "staff_no_chat_such", chat=rest)
    text = f"chat {found.chat} ({found.name}) is a staff chat again"
    out.add(KeepDesk(found.chat, actor.user), Entry("desk", actor.name, text))
    announce(ctx, out, found.name, text)
    return say(ctx, "staff_chat_kept", name=found.name, chat=found.chat)


def on_chat(
    ctx: AtDesk, out: Effects, event: Incoming, actor: Member, act: str, chat: int
) -> bool:  # fmt: skip
    """A button under a staff chat that waits for an administrator's word."""
    out.answer(event.callback)
    said = (_keep if act == "keep" else _close)(ctx, out, actor, str(chat))
    out.edit(event.chat, "", said, (), message=event.message)
    return True


def _listed(ctx: AtDesk) -> str:
    people = [
        f"{one.id} · {one.name} · {say(ctx, f'role_{one.role}')}"
        + ("" if one.chat else f" · {say(ctx, 'staff_no_chat')}")
        + (f" · {say(ctx, 'staff_lost')}" if one.lost else "")
        for one in ctx.staff
    ]
    chats = [
        say(ctx, "staff_chat", chat=one.chat, name=one.name, rank=one.rank + 1)
        + (f" · {say(ctx, 'staff_lost')}" if one.lost else "")
        for one in ctx.desks
    ]
    held = [say(ctx, "staff_chat_waits", chat=one.chat, name=one.name) for one in ctx.held]
    return "\n".join([*people, "", *chats, *held, "", say(ctx, "staff_how")])


def _member(ctx: AtDesk, wanted: str) -> Member | None:
    """The one member of this number, account or name; None where two share it."""
    wanted = wanted.strip().casefold()
    for known in (
        lambda one: str(one.id),
        lambda one: str(one.user),
        lambda one: one.name.casefold(),
    ):
        found = [one for one in ctx.staff if known(one) == wanted]
        if found:
            return found[0] if len(found) == 1 else None
    return None


def _last_administrator(ctx: AtDesk, member: Member) -> bool:
    return [one.id for one in ctx.staff if one.role == "administrator"] == [member.id]


def _first_chats(ctx: AtDesk, but: tuple[int | None, ...]) -> bool:
    """Whether cases still have a chat that is reached to go to first, without ``but``."""
    return any(one.rank == 0 and one.lost is None and one.chat not in but for one in ctx.desks)


def say(ctx: Context, key: str, **fields: object) -> str:
    return ctx.words.say(key, ctx.clinic.language, **fields)


def _name_and_role(rest: str) -> tuple[str, str]:
    words = rest.split()
    if len(words) > 1 and words[-1].casefold() in ROLES:
        return " ".join(words[:-1]), words[-1].casefold()
    return " ".join(words), "staff"
