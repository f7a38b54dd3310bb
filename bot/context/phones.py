"""Whom to phone, in words: always said, and right for the hour."""

from __future__ import annotations

from bot.context.contexts import Context
from bot.context.opening import next_opening
from bot.context.words import when
from bot.model.chart import Chart
from bot.model.text import Lang
from bot.model.urgency import Urgency


def whom_to_phone(ctx: Context, lang: Lang) -> str:
    """The clinic when it is open, the emergency hospital when it is shut."""
    clinic = ctx.clinic
    if ctx.open_now():
        return ctx.words.say("phone_open", lang, clinic=clinic.name, phone=clinic.phone)
    return ctx.words.say(
        "phone_shut",
        lang,
        emergency_name=clinic.emergency_name,
        emergency_phone=clinic.emergency_phone,
    )


def both_phones(ctx: Context, lang: Lang) -> str:
    """The clinic, and the emergency hospital for when it is shut."""
    clinic = ctx.clinic
    return ctx.words.say(
        "phone_both",
        lang,
        clinic=clinic.name,
        phone=clinic.phone,
        emergency_name=clinic.emergency_name,
        emergency_phone=clinic.emergency_phone,
    )


def emergency_phones(ctx: Context, lang: Lang) -> str:
    """Whom to phone now: the number that answers at this hour, the emergency number always,
    and the poison line where the practice has set one."""
    clinic, words = ctx.clinic, ctx.words
    shut = words.say(
        "phone_shut", lang, emergency_name=clinic.emergency_name,
        emergency_phone=clinic.emergency_phone,
    )  # fmt: skip
    parts = [shut]
    if ctx.open_now():
        opened = words.say("phone_open", lang, clinic=clinic.name, phone=clinic.phone)
        parts = [opened, words.say("phone_else", lang, phone=shut)]
    if clinic.poison_phone:
        parts.append(words.say("phone_poison", lang, phone=clinic.poison_phone))
    return "; ".join(parts)


def nobody_there(ctx: Context, urgency: Urgency, lang: Lang) -> str:
    """What the owner is told when no chat of the practice can be reached."""
    key = "say_emergency_alone" if urgency is Urgency.emergency else "say_alone"
    return ctx.words.say(key, lang, phone=emergency_phones(ctx, lang))


def what_happens_now(ctx: Context, chart: Chart, urgency: Urgency, lang: Lang) -> str:
    """What the owner is told of an urgency: what to do, who answers when, whom to phone.
    Never that somebody was told when nobody can be reached."""
    words = ctx.words
    phone = whom_to_phone(ctx, lang)
    if not ctx.reaches_staff(chart):
        return nobody_there(ctx, urgency, lang)
    if urgency is Urgency.emergency:
        return words.say("say_emergency", lang, phone=emergency_phones(ctx, lang))
    if urgency is Urgency.same_day and ctx.open_now():
        return words.say("say_same_day", lang, phone=phone)
    if urgency is Urgency.same_day:
        opens = next_opening(ctx.clinic, ctx.now)
        opens_at = when(chart.local(opens), chart.local(ctx.now), lang)
        return words.say("say_same_day_closed", lang, phone=phone, opens=opens_at)
    return words.say("say_next_day", lang, phone=both_phones(ctx, lang))
