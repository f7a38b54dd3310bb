"""The practice's own people: staff chats, links for each, roles, leaving."""

from __future__ import annotations

from datetime import timedelta

from bot.context.buttons import digest_of
from bot.context.contexts import AtDesk
from bot.context.phones import both_phones
from bot.household.people import start_link
from bot.model.action import Admit, OnChat
from bot.model.chart import Invitation, Member
from bot.model.chat import Incoming, Sender
from bot.model.conversation import Newcomer
from bot.model.effects import (
    Ask,
    CloseDesk,
    Dismiss,
    Effects,
    Entry,
    HoldDesk,
    Invite,
    JoinDesk,
    JoinStaff,
    KeepDesk,
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
        out.reply(event.chat, ctx.words.say("bad_code", lang, phone=both_phones(ctx, lang)))
        out.add(Entry("refused", by, "a staff code that is unknown, used or has run out"))
        return
    if invitation.kind == "staff":
        _by_own_link(ctx, out, event, invitation, sender)
        return
    # Who opens the practice's very first chat answers for its people; later on nobody whom we do
    # not know comes in by a code without an administrator's word.
    first = all(one.role != "administrator" for one in ctx.staff)
    rank = invitation.rank or 0
    if ctx.actor is None and not first:
        _knocks(ctx, out, event, invitation, sender, None)
        return
    joined = JoinDesk(invitation.digest, event.chat, sender.name, rank, sender.user)
    if ctx.actor is None:
        chat = event.chat if event.private else None
        out.add(
            JoinStaff(sender.user, sender.name, "administrator", chat),
            Entry("desk", sender.name, f"{sender.name} ({sender.user}) joined the practice as its "
                  "first administrator, by the code of a chat"),
        )  # fmt: skip
    _opened(ctx, out, joined, sender.name)


def _opened(ctx: AtDesk, out: Effects, joined: JoinDesk, by: str) -> None:
    text = f"chat {joined.chat} is a staff chat now, rank {joined.rank}"
    out.add(joined, Entry("desk", by, text))
    _announce(ctx, out, joined.name, text, but=joined.chat)
    out.say(joined.chat, _say(ctx, "desk_joined", clinic=ctx.clinic.name, rank=joined.rank + 1))


def _by_own_link(
    ctx: AtDesk, out: Effects, event: Incoming, invitation: Invitation, sender: Sender
) -> None:
    lang, actor = ctx.clinic.language, ctx.actor
    if not event.private:
        out.say(event.chat, ctx.words.say("staff_link_private", lang), reply_to=event.message)
        out.add(Entry("refused", sender.name, "a link for staff, used in a group"))
        return
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
            _joined(ctx, out, event.chat, actor.name, role, actor.name)
            return
        _announce(ctx, out, actor.name, "opened an own chat", but=event.chat)
        _welcome(ctx, out, event.chat, actor.name, actor.role)
        return
    inviter = next((one for one in ctx.staff if one.id == invitation.member), None)
    if invitation.member is None:  # made at the practice's own computer
        if rescue or all(one.role != "administrator" for one in ctx.staff):
            out.add(JoinStaff(sender.user, name, role, event.chat, invitation.digest))
            _joined(ctx, out, event.chat, name, role, name)
            return
    elif inviter is None or inviter.role != "administrator":
        out.reply(event.chat, ctx.words.say("staff_not_let_in", lang))
        out.add(Entry("refused", sender.name, "a link for staff of one who may invite no longer"))
        return
    _knocks(ctx, out, event, invitation, sender, inviter)


def _knocks(
    ctx: AtDesk, out: Effects, event: Incoming, invitation: Invitation, sender: Sender,
    inviter: Member | None,
) -> None:  # fmt: skip
    """Somebody whom we do not know has come: who made the link is shown who it is, and says
    yes or no; of one made at the computer an administrator does."""
    came = sender.name + (f" @{sender.username}" if sender.username else "")
    key = invitation.digest[:12]
    rank = (invitation.rank or 0) if invitation.kind == "desk" else None
    name, role = invitation.name or sender.name, invitation.role or "staff"
    chat = _asked_in(ctx, inviter, event.chat)
    who = inviter.id if inviter is not None else None
    out.add(
        UseLink(invitation.digest, sender.user),
        Ask(chat, Newcomer(key, who, sender.user, event.chat, name, role, ctx.now, rank)),
        Entry("desk", name, f"{came} ({sender.user}) came by the link for {name}" if rank is None
              else f"{came} ({sender.user}) came by a code for a staff chat, rank {rank}"),
    )  # fmt: skip
    known = {"came": came, "number": sender.user, "name": name, "role": _say(ctx, f"role_{role}")}
    if rank is not None:
        text = _say(ctx, "staff_came_chat", chat=event.chat, rank=rank + 1, **known)
    elif inviter is not None:
        text = _say(ctx, "staff_came", by=inviter.name, **known)
    else:
        text = _say(ctx, "staff_came_computer", **known)
    acts = (("yes", "staff_let_in"), ("no", "staff_keep_out"))
    out.say(chat, text, buttons=tuple(
        (ctx.button(chat, _say(ctx, label), Admit(act, key)),) for act, label in acts
    ))  # fmt: skip
    by = inviter.name if inviter is not None else _say(ctx, "staff_an_administrator")
    out.reply(event.chat, _say(ctx, "staff_wait", by=by))


def _asked_in(ctx: AtDesk, inviter: Member | None, otherwise: int) -> int:
    """Where it is asked: the inviter's own chat, or the first staff chat that is reached."""
    if inviter is not None and inviter.chat is not None:
        return inviter.chat
    own = (one.chat for one in ctx.staff if one.role == "administrator" and one.chat)
    first = next((one.chat for one in ctx.desks if one.lost is None), None)
    return first if first is not None else next(own, otherwise)


def admit(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, act: str, key: str) -> bool:
    """The inviter says whether the one who came is the one meant."""
    lang = ctx.clinic.language
    came = ctx.conversation.find(Newcomer, key)
    if came is None:
        return False
    if came.inviter not in (None, actor.id):
        out.answer(event.callback, ctx.words.say("staff_only_inviter", lang))
        out.add(Entry("refused", actor.name, "let in by another than the inviter"))
        return True
    out.answer(event.callback)
    out.add(Settle(event.chat, key))
    if act != "yes":
        text = ctx.words.say("staff_kept_out", lang, name=came.name)
        out.add(Entry("desk", actor.name, f"did not let in {came.user} as {came.name}"))
        out.reply(came.chat, ctx.words.say("staff_not_let_in", lang))
    else:
        text = ctx.words.say("staff_is_in", lang, name=came.name)
        own = came.chat if came.rank is None or came.chat == came.user else None
        out.add(JoinStaff(came.user, came.name, came.role, own))
        _joined(ctx, out, came.chat, came.name, came.role, actor.name)
        if came.rank is not None:
            joined = JoinDesk("", came.chat, came.name, came.rank, came.user)
            _opened(ctx, out, joined, actor.name)
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
    for chat in _chats_of_administrators(ctx, but=(but,)):
        out.say(chat, _say(ctx, "staff_new", name=name, what=what))


def _chats_of_administrators(ctx: AtDesk, but: tuple[int | None, ...]) -> list[int]:
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
            said = _remove(ctx, out, actor, rest, event.chat)
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
    return _say(ctx, "staff_link", name=name, role=_say(ctx, f"role_{role}"), link=link)


def _remove(ctx: AtDesk, out: Effects, actor: Member, rest: str, here: int) -> str:
    found = _member(ctx, rest)
    if found is None:
        return _say(ctx, "staff_no_such", name=rest)
    if _last_administrator(ctx, found):
        return _say(ctx, "staff_last")
    if not _first_chats(ctx, but=(found.user, found.chat)):
        return _say(ctx, "staff_last_chat")
    words = _say(ctx, "staff_cleared", clinic=ctx.clinic.name)
    out.add(Dismiss(found.id, words), Entry("desk", actor.name, f"{found.name} was removed"))
    said = _chats_made_by(ctx, out, found, here)
    return "\n\n".join([_say(ctx, "staff_removed", name=found.name), *said])


def _chats_made_by(ctx: AtDesk, out: Effects, gone: Member, here: int) -> list[str]:
    """The staff chats that the one who was removed had made, where they may still read: nothing
    is sent there until an administrator says so elsewhere. The only one to which cases can go
    first goes on, and everybody who may act is told so. What is to be said ``here``, too."""
    others = [one for one in ctx.desks if one.chat not in (gone.user, gone.chat)]
    made = [one for one in others if one.opened == gone.user]
    left = [one for one in others if one not in made and one.rank == 0 and one.lost is None]
    only = next((one for one in made if one.rank == 0), None) if not left else None
    held = [one.chat for one in made if one is not only]
    chats = _chats_of_administrators(ctx, but=(gone.user, gone.chat, *held))
    said: list[str] = []
    for desk in made:
        key = "staff_chat_only" if desk is only else "staff_chat_held"
        text = _say(ctx, key, name=gone.name, chat=desk.chat)
        said += [] if here in chats else [text]
        what = "goes on, as the only one" if desk is only else "waits for an administrator's word"
        out.add(Entry("desk", "bot", f"chat {desk.chat}, made by {gone.name}, {what}"))
        if desk is not only:
            out.add(HoldDesk(desk.chat))
        for chat in chats:
            acts = (("close", "staff_chat_close"), ("keep", "staff_chat_keep"))
            buttons = tuple(
                (ctx.button(chat, _say(ctx, label), OnChat(act, desk.chat)),)
                for act, label in acts if desk is not only
            )  # fmt: skip
            out.say(chat, text, buttons=buttons, urgent=True)
    return said


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
    found = next((one for one in (*ctx.desks, *ctx.held) if str(one.chat) == rest), None)
    if found is None:
        return _say(ctx, "staff_no_chat_such", chat=rest)
    if not _first_chats(ctx, but=(found.chat,)):
        return _say(ctx, "staff_last_chat")
    text = f"chat {found.chat} ({found.name}) is a staff chat no longer"
    words = _say(ctx, "staff_cleared", clinic=ctx.clinic.name)
    out.add(CloseDesk(found.chat, words), Entry("desk", actor.name, text))
    return _say(ctx, "staff_closed", name=found.name, chat=found.chat)


def _keep(ctx: AtDesk, out: Effects, actor: Member, rest: str) -> str:
    found = next((one for one in ctx.held if str(one.chat) == rest), None)
    if found is None:
        return _say(ctx, "staff_no_chat_such", chat=rest)
    text = f"chat {found.chat} ({found.name}) is a staff chat again"
    out.add(KeepDesk(found.chat, actor.user), Entry("desk", actor.name, text))
    _announce(ctx, out, found.name, text)
    return _say(ctx, "staff_chat_kept", name=found.name, chat=found.chat)


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
    held = [_say(ctx, "staff_chat_waits", chat=one.chat, name=one.name) for one in ctx.held]
    return "\n".join([*people, "", *chats, *held, "", _say(ctx, "staff_how")])


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
