"""``/review``: a one-time link to the review pages, for one of the practice."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Final

from bot.context.buttons import digest_of
from bot.context.contexts import AtDesk
from bot.model.chart import Member
from bot.model.chat import Incoming
from bot.model.effects import Effects, Entry, Invite

GOOD_FOR: Final = timedelta(minutes=15)
"""How long a link to the review pages is good."""


def invite(out: Effects, member: Member, address: str, code: str, now: datetime, by: str) -> str:
    """Keep a one-time link for ``member``; gives back its address."""
    out.add(
        Invite(digest_of(code), "review", by, now + GOOD_FOR, name=member.name, role=member.role,
               member=member.id),
        Entry("link", by, f"a link to the review pages for {member.name}", None,
              {"member": member.id}),
    )  # fmt: skip
    return f"{address.rstrip('/')}/enter?code={code}"


def review(ctx: AtDesk, out: Effects, event: Incoming, actor: Member) -> None:
    """The link goes to the member's own chat only: whoever opens it enters in their name."""
    lang, words = ctx.clinic.language, ctx.words
    chat = event.chat if event.private else actor.chat
    if not ctx.practice.review_url:
        out.say(event.chat, words.say("review_off", lang))
        return
    if chat is None:
        out.say(event.chat, words.say("review_own_chat", lang, bot=ctx.practice.bot_name))
        return
    link = invite(out, actor, ctx.practice.review_url, ctx.fresh_code, ctx.now, actor.name)
    minutes = int(GOOD_FOR.total_seconds() // 60)
    out.say(chat, words.say("review_link", lang, link=link, minutes=minutes))
    if chat != event.chat:
        out.say(event.chat, words.say("review_sent", lang, name=actor.name))
