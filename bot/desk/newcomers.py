"""Who comes into the practice by a code or a link, what chat becomes one of staff, and the word
of an administrator on whom nobody knows."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import Any

from bot.context.contexts import AtDesk, Context, FellDue
from bot.context.phones import both_phones
from bot.desk.people import announce, chats_of_administrators, remove, say
from bot.model.action import Admit
from bot.model.chart import Invitation, Member
from bot.model.chat import Incoming, Sender
from bot.model.conversation import Newcomer
from bot.model.effects import (
    Ask,
    CancelDue,
    Due,
    Effects,
    Entry,
    JoinDesk,
    JoinStaff,
    NewRole,
    Settle,
    UseLink,
)

KIND = "newcomer"
WAITS, LOOK_AGAIN = timedelta(days=1), timedelta(hours=1)
"""How long somebody waits to be let in; how often it is looked whether the one who is asked may
still say."""


def join(ctx: AtDesk, out: Effects, event: Incoming) -> None:
    """Take up a code: a chat becomes a staff chat, or a person joins the practice."""
    invitation, sender = ctx.invitation, event.sender
    lang = ctx.clinic.language
    good = invitation is not None and invitation.good and invitation.kind in ("staff", "desk")
    if invitation is not None and shows_code(ctx, event):
        _shown(ctx, out, event, invitation)
    elif invitation is None or not good or sender is None:
        by = sender.name if sender else "?"
        out.reply(event.chat, ctx.words.say("bad_code", lang, phone=both_phones(ctx, lang)))
        out.add(Entry("refused", by, "a staff code that is unknown, used or has run out"))
    elif invitation.kind == "staff":
        _by_own_link(ctx, out, event, invitation, sender)
    else:
        _by_code_of_chat(ctx, out, event, invitation, sender)


def shows_code(ctx: AtDesk, event: Incoming) -> bool:
    """Whether a group reads a person's code, in whatever words it stands there."""
    one = ctx.invitation
    return one is not None and one.good and one.kind == "staff" and not event.private


def _by_code_of_chat(
    ctx: AtDesk, out: Effects, event: Incoming, invitation: Invitation, sender: Sender
) -> None:
    # Who opens the practice's very first chat answers for its people; later on nobody whom we do
    # not know comes in by a code without an administrator's word.
    first = ctx.actor is None and all(one.role != "administrator" for one in ctx.staff)
    rank = invitation.rank or 0
    there = _is_there(ctx, event.chat)
    if there and not first:
        out.add(
            UseLink(invitation.digest, sender.user),  # others may have read it here
            Entry("desk", sender.name, f"a code in chat {event.chat}, of staff already"),
        )
        out.reply(event.chat, say(ctx, "desk_already"))
        return
    if ctx.actor is None and not first:
        _knocks(ctx, out, event, invitation, sender, None)
        return
    if first:
        chat = event.chat if event.private else None
        used = invitation.digest if there else ""
        out.add(
            JoinStaff(sender.user, sender.name, "administrator", chat, used),
            Entry("desk", sender.name, f"{sender.name} ({sender.user}) joined the practice as its "
                  "first administrator, by the code of a chat"),
        )  # fmt: skip
    joined = JoinDesk(invitation.digest, event.chat, sender.name, rank, sender.user)
    _opened(ctx, out, joined, sender.name)


def _is_there(ctx: AtDesk, chat: int) -> bool:
    return any(one.chat == chat for one in (*ctx.desks, *ctx.held))


def _opened(ctx: AtDesk, out: Effects, joined: JoinDesk, by: str) -> None:
    """A chat is a staff chat from now on; one that is there already no code changes."""
    if _is_there(ctx, joined.chat):
        return
    text = f"chat {joined.chat} is a staff chat now, rank {joined.rank}"
    out.add(joined, Entry("desk", by, text))
    announce(ctx, out, joined.name, text, but=joined.chat)
    out.say(joined.chat, say(ctx, "desk_joined", clinic=ctx.clinic.name, rank=joined.rank + 1))


def _shown(ctx: AtDesk, out: Effects, event: Incoming, invitation: Invitation) -> None:
    """A code for one person stands in a group. What was made at the computer lets in whoever
    sends it, so it is good no longer; of a member's link the member is asked who came."""
    sender = event.sender
    by = sender.name if sender else "?"
    if invitation.member is not None:
        out.reply(event.chat, say(ctx, "staff_link_private"))
        out.add(Entry("refused", by, "a link for staff, used in a group"))
        return
    out.add(
        UseLink(invitation.digest, sender.user if sender else event.chat),
        Entry("refused", by, f"a code for {invitation.name}, shown in a group: it is used up"),
    )
    out.reply(event.chat, say(ctx, "staff_code_shown"), urgent=True)
    shown = {"name": invitation.name, "role": say(ctx, f"role_{invitation.role or 'staff'}")}
    came = _account(sender) if sender else by
    for chat in chats_of_administrators(ctx, but=(event.chat,)):
        out.say(chat, say(ctx, "staff_code_shown_told", came=came, **shown), urgent=True)


def _account(sender: Sender) -> str:
    return sender.name + (f" @{sender.username}" if sender.username else "")


def _by_own_link(
    ctx: AtDesk, out: Effects, event: Incoming, invitation: Invitation, sender: Sender
) -> None:
    actor = ctx.actor
    name, role = invitation.name or sender.name, invitation.role or "staff"
    # `run --administrator`, at the practice's own computer: the last one is lost.
    rescue = invitation.member is None and role == "administrator"
    if actor is not None:  # any other link changes nobody's name or role
        out.add(
            JoinStaff(sender.user, actor.name, actor.role, event.chat, invitation.digest),
            Entry("desk", actor.name, "opened an own chat by a link"),
        )
        if rescue and actor.role != role:
            out.add(NewRole(actor.id, role))
            _joined(ctx, out, event.chat, actor.name, role, actor.name, by_code=sender)
            return
        announce(ctx, out, actor.name, "opened an own chat", but=event.chat)
        _welcome(ctx, out, event.chat, actor.name, actor.role)
        return
    inviter = next((one for one in ctx.staff if one.id == invitation.member), None)
    if invitation.member is None:  # made at the practice's own computer
        if rescue or all(one.role != "administrator" for one in ctx.staff):
            out.add(JoinStaff(sender.user, name, role, event.chat, invitation.digest))
            _joined(ctx, out, event.chat, name, role, name, by_code=sender)
            return
    elif inviter is None or inviter.role != "administrator":
        out.reply(event.chat, say(ctx, "staff_not_let_in"))
        out.add(Entry("refused", sender.name, "a link for staff of one who may invite no longer"))
        return
    _knocks(ctx, out, event, invitation, sender, inviter)


def _knocks(
    ctx: AtDesk, out: Effects, event: Incoming, invitation: Invitation, sender: Sender,
    inviter: Member | None,
) -> None:  # fmt: skip
    """Somebody whom we do not know has come: who made the link is shown who it is, and says
    yes or no; of one made at the computer an administrator does."""
    came = _account(sender)
    rank = (invitation.rank or 0) if invitation.kind == "desk" else None
    name, role = invitation.name or sender.name, invitation.role or "staff"
    chat = _asked_in(ctx, inviter, event.chat)
    newcomer = Newcomer(
        invitation.digest[:12], inviter.id if inviter is not None else None, sender.user,
        event.chat, name, role, ctx.now, rank, came,
    )  # fmt: skip
    out.add(
        UseLink(invitation.digest, sender.user),
        Entry("desk", name, f"{came} ({sender.user}) came by the link for {name}" if rank is None
              else f"{came} ({sender.user}) came by a code for a staff chat, rank {rank}"),
    )  # fmt: skip
    known = {"came": came, "number": sender.user, "name": name, "role": say(ctx, f"role_{role}")}
    if rank is not None:
        text = say(ctx, "staff_came_chat", chat=event.chat, rank=rank + 1, **known)
    elif inviter is not None:
        text = say(ctx, "staff_came", by=inviter.name, **known)
    else:
        text = say(ctx, "staff_came_computer", **known)
    _ask(ctx, out, chat, newcomer, text)
    by = inviter.name if inviter is not None else say(ctx, "staff_an_administrator")
    out.reply(event.chat, say(ctx, "staff_wait", by=by))


def _ask(ctx: Context, out: Effects, chat: int, came: Newcomer, text: str) -> None:
    acts = (("yes", "staff_let_in"), ("no", "staff_keep_out"))
    out.say(chat, text, buttons=tuple(
        (ctx.button(chat, say(ctx, label), Admit(act, came.key)),) for act, label in acts
    ))  # fmt: skip
    out.add(Ask(chat, came), _look_again(ctx, chat, came.key))


def _look_again(ctx: Context, chat: int, key: str) -> Due:
    data = {"chat": chat, "key": key}
    return Due(f"{KIND}:{key}", KIND, ctx.now + LOOK_AGAIN, None, data)


def _asked_in(ctx: Context, inviter: Member | None, otherwise: int) -> int:
    """Where it is asked: the inviter's own chat, or a staff chat that an administrator opened, or
    an administrator's own; else the first staff chat that is reached."""
    if inviter is not None and inviter.chat is not None and inviter.lost is None:
        return inviter.chat
    administrators = [one for one in ctx.staff if one.role == "administrator"]
    reached = [one for one in ctx.desks if one.lost is None]
    users = [one.user for one in administrators]
    chats = [one.chat for one in reached if one.opened in users]
    if inviter is None:
        chats += [one.chat for one in administrators if one.chat and one.lost is None]
    chats += [one.chat for one in reached]
    return next(iter(chats), otherwise)


def _any_may_say(ctx: Context, came: Newcomer) -> bool:
    """Whether not only the inviter says: the practice's computer, or no administrator now."""
    asked = next((one for one in ctx.staff if one.id == came.inviter), None)
    return asked is None or asked.role != "administrator"


def unanswered(ctx: FellDue, out: Effects, data: dict[str, Any]) -> None:
    """Somebody still waits: for a day; where the one who is asked has left, another is asked."""
    chat = int(data["chat"])
    came = ctx.conversation.find(Newcomer, str(data["key"]))
    if came is None:
        return
    if ctx.now >= came.at + WAITS:
        out.say(chat, _over(ctx, out, chat, came))
        return
    if came.inviter is None or not _any_may_say(ctx, came):
        out.add(_look_again(ctx, chat, came.key))
        return
    out.add(Settle(chat, came.key))
    role = say(ctx, f"role_{came.role}")
    text = say(ctx, "staff_came_still", came=came.came or came.name, number=came.user,
               name=came.name, role=role)  # fmt: skip
    _ask(ctx, out, _asked_in(ctx, None, chat), replace(came, inviter=None), text)


def _over(ctx: Context, out: Effects, chat: int, came: Newcomer) -> str:
    """Nobody has said: who came is told so; what is told where it was asked."""
    out.add(
        Settle(chat, came.key),
        Entry("desk", "bot", f"nobody let in {came.user} as {came.name} within a day"),
    )
    out.reply(came.chat, say(ctx, "staff_nobody_said"))
    return say(ctx, "staff_waited", name=came.name, came=came.came or came.name, number=came.user)


def admit(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, act: str, key: str) -> bool:
    """The inviter says whether the one who came is the one meant; or an administrator takes back
    what a code from the computer has made of an account (``out``)."""
    if act == "out":
        out.answer(event.callback)
        text = remove(ctx, out, actor, key, event.chat)
        out.edit(event.chat, "", text, (), message=event.message)
        return True
    came = ctx.conversation.find(Newcomer, key)
    if came is None:
        return False
    if came.inviter != actor.id and not _any_may_say(ctx, came):
        out.answer(event.callback, say(ctx, "staff_only_inviter"))
        out.add(Entry("refused", actor.name, "let in by another than the inviter"))
        return True
    out.answer(event.callback)
    out.add(CancelDue(f"{KIND}:{key}"))
    if ctx.now >= came.at + WAITS:
        out.edit(event.chat, "", _over(ctx, out, event.chat, came), (), message=event.message)
        return True
    out.add(Settle(event.chat, key))
    if act != "yes":
        text = say(ctx, "staff_kept_out", name=came.name)
        out.add(Entry("desk", actor.name, f"did not let in {came.user} as {came.name}"))
        out.reply(came.chat, say(ctx, "staff_not_let_in"))
    else:
        text = say(ctx, "staff_is_in", name=came.name)
        own = came.chat if came.rank is None or came.chat == came.user else None
        out.add(JoinStaff(came.user, came.name, came.role, own))
        _joined(ctx, out, came.chat, came.name, came.role, actor.name)
        if came.rank is not None:
            joined = JoinDesk("", came.chat, came.name, came.rank, came.user)
            _opened(ctx, out, joined, actor.name)
    out.edit(event.chat, "", text, (), message=event.message)
    return True


def _joined(
    ctx: AtDesk, out: Effects, chat: int, name: str, role: str, by: str,
    by_code: Sender | None = None,
) -> None:  # fmt: skip
    """``by_code``: the account that came in by a code alone, which no administrator has seen."""
    out.add(Entry("desk", by, f"{name} joined the practice as {role}"))
    shown = say(ctx, f"role_{role}")
    if by_code is None:
        announce(ctx, out, name, shown, but=chat)
    else:
        _by_code_alone(ctx, out, chat, by_code, say(ctx, "staff_new", name=name, what=shown))
    _welcome(ctx, out, chat, name, role)


def _by_code_alone(ctx: AtDesk, out: Effects, here: int, sender: Sender, text: str) -> None:
    """All staff chats and the administrators read whose account it is; where there is another
    administrator, a button takes it back."""
    came, number = _account(sender), sender.user
    out.add(Entry("desk", came, f"{came} ({number}) came by a code made at the computer"))
    text += "\n" + say(ctx, "staff_new_by_code", came=came, number=number)
    others = any(one.role == "administrator" and one.user != number for one in ctx.staff)
    chats = [*chats_of_administrators(ctx, but=(here,)), *(one.chat for one in ctx.desks)]
    for chat in dict.fromkeys(chats):
        button = ctx.button(chat, say(ctx, "staff_take_back"), Admit("out", str(number)))
        if chat != here:
            out.say(chat, text, buttons=((button,),) if others else (), urgent=True)


def _welcome(ctx: AtDesk, out: Effects, chat: int, name: str, role: str) -> None:
    shown = say(ctx, f"role_{role}")
    out.say(chat, say(ctx, "staff_joined", name=name, clinic=ctx.clinic.name, role=shown))
