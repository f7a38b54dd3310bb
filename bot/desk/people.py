"""The practice's own people: staff chats, links for each, roles, leaving."""

from __future__ import annotations

from datetime import timedelta

from bot.context.buttons import digest_of
from bot.context.contexts import AtDesk
from bot.household.people import start_link
from bot.model.chart import Member
from bot.model.chat import Incoming
from bot.model.effects import Dismiss, Effects, Entry, Invite, JoinDesk, JoinStaff

ROLES = ("staff", "clinician", "administrator")


def join(ctx: AtDesk, out: Effects, event: Incoming) -> None:
    """Take up a code: a chat becomes a staff chat, or a person joins the practice."""
    invitation, sender = ctx.invitation, event.sender
    lang = ctx.clinic.language
    known = invitation is not None and invitation.kind in ("staff", "desk")
    if not known or invitation is None or not invitation.good or sender is None:
        by = sender.name if sender else "?"
        out.add(Entry("refused", by, "a staff code that is unknown, used or has run out"))
        return
    if invitation.kind == "staff":
        name, role = invitation.name or sender.name, invitation.role or "staff"
        chat = event.chat if event.private else None
        out.add(
            JoinStaff(sender.user, name, role, chat, invitation.digest),
            Entry("desk", name, f"joined the practice as {role}"),
        )
        words = ctx.words.say(
            "staff_joined", lang, name=name, clinic=ctx.clinic.name,
            role=ctx.words.say(f"role_{role}", lang),
        )  # fmt: skip
        out.say(event.chat, words)
        return
    rank = invitation.rank or 0
    out.add(
        JoinDesk(invitation.digest, event.chat, sender.name, rank, sender.user),
        Entry("desk", sender.name, f"chat {event.chat} is a staff chat now, rank {rank}"),
    )
    if ctx.actor is None:
        # Whoever holds the practice's code answers for its people.
        chat = event.chat if event.private else None
        out.add(JoinStaff(sender.user, sender.name, "administrator", chat))
    words = ctx.words.say("desk_joined", lang, clinic=ctx.clinic.name, rank=rank + 1)
    out.say(event.chat, words)


def staff(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, argument: str) -> None:
    """``/staff``: list; ``/staff add NAME [ROLE]``: a link; ``/staff remove NAME``."""
    lang, words = ctx.clinic.language, ctx.words
    verb, _, rest = argument.partition(" ")
    if verb == "add" and rest.strip():
        name, role = _name_and_role(rest)
        expires = ctx.now + timedelta(days=1)
        out.add(
            Invite(digest_of(ctx.fresh_code), "staff", actor.name, expires, name=name, role=role),
            Entry("desk", actor.name, f"a link for {name} as {role}"),
        )
        link = start_link(ctx.practice.bot_name, ctx.fresh_code)
        text = words.say(
            "staff_link", lang, name=name, role=words.say(f"role_{role}", lang), link=link
        )
        out.say(event.chat, text)
    elif verb == "remove" and rest.strip():
        found = [m for m in ctx.staff if m.name.casefold() == rest.strip().casefold()]
        admins = [m for m in ctx.staff if m.role == "administrator"]
        if len(found) != 1:
            out.say(event.chat, words.say("staff_no_such", lang, name=rest.strip()))
        elif admins == found:
            out.say(event.chat, words.say("staff_last", lang))
        else:
            out.add(Dismiss(found[0].id), Entry("desk", actor.name, f"{found[0].name} was removed"))
            out.say(event.chat, words.say("staff_removed", lang, name=found[0].name))
    else:
        lines = [
            f"{m.name} · {words.say(f'role_{m.role}', lang)}"
            + ("" if m.chat else f" · {words.say('staff_no_chat', lang)}")
            for m in ctx.staff
        ]
        out.say(event.chat, "\n".join([*lines, "", words.say("staff_how", lang)]))


def _name_and_role(rest: str) -> tuple[str, str]:
    words = rest.split()
    if len(words) > 1 and words[-1].casefold() in ROLES:
        return " ".join(words[:-1]), words[-1].casefold()
    return " ".join(words), "staff"
