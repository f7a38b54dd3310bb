"""The practice's own people: staff chats, links for each, roles, leaving."""

from __future__ import annotations

from datetime import timedelta

from bot.context.buttons import digest_of
from bot.context.contexts import AtDesk
from bot.context.phones import both_phones
from bot.household.people import start_link
from bot.model.action import Admit
from bot.model.chart import Invitation, Member
from bot.model.chat import Incoming, Sender
from bot.model.conversation import Newcomer
from bot.model.effects import (
    Ask,
    CloseDesk,
    Dismiss,
    Effects,
    Entry,
    Invite,
    JoinDesk,
    JoinStaff,
    NewRole,
    Settle,
    UseLink,
)

ROLES = ("staff", "clinician", "administrator")


def join(ctx: AtDesk, out: Effects, event: Incoming) -> None:
    """Take up a code: a chat becomes a staff chat, or a person joins the practice."""
    invitation, sender = ctx.invitation, event.sender
    lang = ctx.clinic.language
    known = invitation is not None and invitation.kind in ("staff", "desk")
    if not known or invitation is None or not invitation.good or sender is None:
        by = sender.name if sender else "?"
        out.say(event.chat, ctx.words.say("bad_code", lang, phone=both_phones(ctx, lang)))
        out.add(Entry("refused", by, "a staff code that is unknown, used or has run out"))
        return
    if invitation.kind == "staff":
        _by_own_link(ctx, out, event, invitation, sender)
        return
    rank = invitation.rank or 0
    text = f"chat {event.chat} is a staff chat now, rank {rank}"
    out.add(
        JoinDesk(invitation.digest, event.chat, sender.name, rank, sender.user),
        Entry("desk", sender.name, text),
    )
    _announce(ctx, out, sender.name, text, but=event.chat)
    if ctx.actor is None:
        # Who opens the practice's very first chat answers for its people; later on nobody
        # becomes an administrator by a code.
        first = all(one.role != "administrator" for one in ctx.staff)
        role = "administrator" if first else "staff"
        chat = event.chat if event.private else None
        out.add(
            JoinStaff(sender.user, sender.name, role, chat),
            Entry("desk", sender.name, f"joined the practice as {role}, by the code of a chat"),
        )
    words = ctx.words.say("desk_joined", lang, clinic=ctx.clinic.name, rank=rank + 1)
    out.say(event.chat, words)


def _by_own_link(
    ctx: AtDesk, out: Effects, event: Incoming, invitation: Invitation, sender: Sender
) -> None:
    lang, actor = ctx.clinic.language, ctx.actor
    if not event.private:
        out.say(event.chat, ctx.words.say("staff_link_private", lang), reply_to=event.message)
        out.add(Entry("refused", sender.name, "a link for staff, used in a group"))
        return
    if actor is not None:  # a link changes nobody's name or role
        out.add(
            JoinStaff(sender.user, actor.name, actor.role, event.chat, invitation.digest),
            Entry("desk", actor.name, "opened an own chat by a link"),
        )
        _announce(ctx, out, actor.name, "opened an own chat", but=event.chat)
        _welcome(ctx, out, event.chat, actor.name, actor.role)
        return
    name, role = invitation.name or sender.name, invitation.role or "staff"
    if invitation.member is None:  # made at the practice's own computer
        out.add(JoinStaff(sender.user, name, role, event.chat, invitation.digest))
        _joined(ctx, out, event.chat, name, role, name)
        return
    inviter = next((one for one in ctx.staff if one.id == invitation.member), None)
    if inviter is None or inviter.role != "administrator":
        out.say(event.chat, ctx.words.say("staff_not_let_in", lang))
        out.add(Entry("refused", sender.name, "a link for staff of one who may invite no longer"))
        return
    came = sender.name + (f" @{sender.username}" if sender.username else "")
    key = invitation.digest[:12]
    desk = next((one.chat for one in ctx.desks), event.chat)
    chat = inviter.chat if inviter.chat is not None else desk
    newcomer = Newcomer(key, inviter.id, sender.user, event.chat, name, role, ctx.now)
    out.add(
        UseLink(invitation.digest, sender.user),
        Ask(chat, newcomer),
        Entry("desk", name, f"{came} ({sender.user}) came by the link for {name}"),
    )
    shown = ctx.words.say(f"role_{role}", lang)
    text = ctx.words.say(
        "staff_came", lang, by=inviter.name, came=came, number=sender.user, name=name, role=shown
    )
    acts = (("yes", "staff_let_in"), ("no", "staff_keep_out"))
    buttons = tuple(
        (ctx.button(chat, ctx.words.say(label, lang), Admit(act, key)),) for act, label in acts
    )
    out.say(chat, text, buttons=buttons)
    out.say(event.chat, ctx.words.say("staff_wait", lang, by=inviter.name))


def admit(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, act: str, key: str) -> bool:
    """The inviter says whether the one who came is the one meant."""
    lang = ctx.clinic.language
    came = ctx.conversation.find(Newcomer, key)
    if came is None:
        return False
    if came.inviter != actor.id:
        out.answer(event.callback, ctx.words.say("staff_only_inviter", lang))
        out.add(Entry("refused", actor.name, "let in by another than the inviter"))
        return True
    out.answer(event.callback)
    out.add(Settle(event.chat, key))
    if act != "yes":
        text = ctx.words.say("staff_kept_out", lang, name=came.name)
        out.add(Entry("desk", actor.name, f"did not let in {came.user} as {came.name}"))
        out.say(came.chat, ctx.words.say("staff_not_let_in", lang))
    else:
        text = ctx.words.say("staff_is_in", lang, name=came.name)
        out.add(JoinStaff(came.user, came.name, came.role, came.chat))
        _joined(ctx, out, came.chat, came.name, came.role, actor.name)
    out.edit(event.chat, "", text, (), message=event.message)
    return True


def _joined(ctx: AtDesk, out: Effects, chat: int, name: str, role: str, by: str) -> None:
    out.add(Entry("desk", by, f"{name} joined the practice as {role}"))
    shown = ctx.words.say(f"role_{role}", ctx.clinic.language)
    _announce(ctx, out, name, shown, but=chat)
    _welcome(ctx, out, chat, name, role)


def _welcome(ctx: AtDesk, out: Effects, chat: int, name: str, role: str) -> None:
    lang = ctx.clinic.language
    shown = ctx.words.say(f"role_{role}", lang)
    out.say(
        chat, ctx.words.say("staff_joined", lang, name=name, clinic=ctx.clinic.name, role=shown)
    )


def _announce(ctx: AtDesk, out: Effects, name: str, what: str, but: int | None = None) -> None:
    """The staff chat and the administrators hear who is new, or may do something else."""
    chats = [desk.chat for desk in ctx.desks if desk.rank == 0]
    chats += [one.chat for one in ctx.staff if one.role == "administrator" and one.chat]
    for chat in dict.fromkeys(chats):
        if chat != but:
            text = ctx.words.say("staff_new", ctx.clinic.language, name=name, what=what)
            out.say(chat, text)


def staff(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, argument: str) -> None:
    """``/staff``: who is here, and which chats; each change of it is a named act."""
    verb, _, rest = argument.partition(" ")
    rest = rest.strip()
    match verb:
        case "add" if rest:
            said = _add(ctx, out, actor, rest)
        case "remove" if rest:
            said = _remove(ctx, out, actor, rest)
        case "role" if rest:
            said = _role(ctx, out, actor, rest)
        case "close" if rest:
            said = _close(ctx, out, actor, rest)
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
    return _say(ctx, "staff_link", name=name, role=_say(ctx, f"role_{role}"), link=link)


def _remove(ctx: AtDesk, out: Effects, actor: Member, rest: str) -> str:
    found = _member(ctx, rest)
    if found is None:
        return _say(ctx, "staff_no_such", name=rest)
    if _last_administrator(ctx, found):
        return _say(ctx, "staff_last")
    if not _first_chats(ctx, but=(found.user, found.chat)):
        return _say(ctx, "staff_last_chat")
    out.add(Dismiss(found.id), Entry("desk", actor.name, f"{found.name} was removed"))
    return _say(ctx, "staff_removed", name=found.name)


def _role(ctx: AtDesk, out: Effects, actor: Member, rest: str) -> str:
    wanted, _, role = rest.rpartition(" ")
    found = _member(ctx, wanted)
    if role not in ROLES:
        return _say(ctx, "staff_how")
    if found is None:
        return _say(ctx, "staff_no_such", name=wanted)
    if role != "administrator" and _last_administrator(ctx, found):
        return _say(ctx, "staff_last")
    out.add(
        NewRole(found.id, role),
        Entry("desk", actor.name, f"{found.name} is {role} now, and was {found.role}"),
    )
    _announce(ctx, out, found.name, _say(ctx, f"role_{role}"))
    return _say(ctx, "staff_role", name=found.name, role=_say(ctx, f"role_{role}"))


def _close(ctx: AtDesk, out: Effects, actor: Member, rest: str) -> str:
    found = next((one for one in ctx.desks if str(one.chat) == rest), None)
    if found is None:
        return _say(ctx, "staff_no_chat_such", chat=rest)
    if not _first_chats(ctx, but=(found.chat,)):
        return _say(ctx, "staff_last_chat")
    text = f"chat {found.chat} ({found.name}) is a staff chat no longer"
    out.add(CloseDesk(found.chat), Entry("desk", actor.name, text))
    return _say(ctx, "staff_closed", name=found.name, chat=found.chat)


def _listed(ctx: AtDesk) -> str:
    people = [
        f"{one.id} · {one.name} · {_say(ctx, f'role_{one.role}')}"
        + ("" if one.chat else f" · {_say(ctx, 'staff_no_chat')}")
        + (f" · {_say(ctx, 'staff_lost')}" if one.lost else "")
        for one in ctx.staff
    ]
    chats = [
        _say(ctx, "staff_chat", chat=one.chat, name=one.name, rank=one.rank + 1)
        + (f" · {_say(ctx, 'staff_lost')}" if one.lost else "")
        for one in ctx.desks
    ]
    return "\n".join([*people, "", *chats, "", _say(ctx, "staff_how")])


def _member(ctx: AtDesk, wanted: str) -> Member | None:
    """The one member of this number or name; None where two share it."""
    wanted = wanted.strip().casefold()
    found = [one for one in ctx.staff if wanted in (str(one.id), one.name.casefold())]
    return found[0] if len(found) == 1 else None


def _last_administrator(ctx: AtDesk, member: Member) -> bool:
    return [one.id for one in ctx.staff if one.role == "administrator"] == [member.id]


def _first_chats(ctx: AtDesk, but: tuple[int | None, ...]) -> bool:
    """Whether cases still have a chat to go to first without ``but``."""
    return any(one.rank == 0 and one.chat not in but for one in ctx.desks)


def _say(ctx: AtDesk, key: str, **fields: object) -> str:
    return ctx.words.say(key, ctx.clinic.language, **fields)


def _name_and_role(rest: str) -> tuple[str, str]:
    words = rest.split()
    if len(words) > 1 and words[-1].casefold() in ROLES:
        return " ".join(words[:-1]), words[-1].casefold()
    return " ".join(words), "staff"
