"""The practice's own people: staff chats, links for each, roles, leaving."""

from __future__ import annotations

from datetime import timedelta

from bot.model.chat import Incoming

from .buttons import digest_of
from .household import start_link
from .outcome import Dismiss, Entry, Invite, JoinDesk, JoinStaff, Outcome
from .scene import Member, Scene

ROLES = ("staff", "clinician", "administrator")


def join(scene: Scene, out: Outcome, event: Incoming) -> None:
    """Take up a code: a chat becomes a staff chat, or a person joins the practice."""
    invitation, sender = scene.invitation, event.sender
    lang = scene.clinic.language
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
        words = scene.words.say(
            "staff_joined", lang, name=name, clinic=scene.clinic.name,
            role=scene.words.say(f"role_{role}", lang),
        )  # fmt: skip
        out.say(event.chat, words)
        return
    rank = invitation.rank or 0
    out.add(
        JoinDesk(invitation.digest, event.chat, sender.name, rank, sender.user),
        Entry("desk", sender.name, f"chat {event.chat} is a staff chat now, rank {rank}"),
    )
    if scene.actor is None:
        # Whoever holds the practice's code answers for its people.
        chat = event.chat if event.private else None
        out.add(JoinStaff(sender.user, sender.name, "administrator", chat))
    words = scene.words.say("desk_joined", lang, clinic=scene.clinic.name, rank=rank + 1)
    out.say(event.chat, words)


def staff(scene: Scene, out: Outcome, event: Incoming, actor: Member, argument: str) -> None:
    """``/staff``: list; ``/staff add NAME [ROLE]``: a link; ``/staff remove NAME``."""
    lang, words = scene.clinic.language, scene.words
    verb, _, rest = argument.partition(" ")
    if verb == "add" and rest.strip():
        name, role = _name_and_role(rest)
        expires = scene.now + timedelta(days=1)
        out.add(
            Invite(digest_of(scene.fresh_code), "staff", actor.name, expires, name=name, role=role),
            Entry("desk", actor.name, f"a link for {name} as {role}"),
        )
        link = start_link(scene.bot_name, scene.fresh_code)
        text = words.say(
            "staff_link", lang, name=name, role=words.say(f"role_{role}", lang), link=link
        )
        out.say(event.chat, text)
    elif verb == "remove" and rest.strip():
        found = [m for m in scene.staff if m.name.casefold() == rest.strip().casefold()]
        admins = [m for m in scene.staff if m.role == "administrator"]
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
            for m in scene.staff
        ]
        out.say(event.chat, "\n".join([*lines, "", words.say("staff_how", lang)]))


def _name_and_role(rest: str) -> tuple[str, str]:
    words = rest.split()
    if len(words) > 1 and words[-1].casefold() in ROLES:
        return " ".join(words[:-1]), words[-1].casefold()
    return " ".join(words), "staff"
