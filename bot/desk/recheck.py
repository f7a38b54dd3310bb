"""A recheck shown to the clinician, who decides with one tap: plan and owners follow."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any
from zoneinfo import ZoneInfo

from bot.context.contexts import AtDesk, Context
from bot.context.phones import both_phones
from bot.context.words import clock
from bot.desk.carried_out import carry_out
from bot.desk.plan_changes import CONE_DAYS, change
from bot.household.pictures import sender_name
from bot.model.action import OnRecheck
from bot.model.chart import Chart, Member, Picture, Review
from bot.model.chat import Button, Incoming, Media
from bot.model.effects import Effects, Entry, ReviewChange, Rows
from bot.model.ids import LineId
from bot.model.purpose import Purpose
from bot.model.steps import OfCone
from bot.model.text import Lang
from bot.model.topic import AboutPatient

CONE = {str(one): one for one in map(OfCone, (0, *CONE_DAYS))}
"""The plan's own changes: cone off, cone so many days more."""
AGAIN = "redo"


def best_of(new: Sequence[Picture]) -> Picture:
    """The one to show: the latest that is good, else the latest."""
    return next((one for one in reversed(new) if one.good), new[-1])


def first_of(chart: Chart, best: Picture) -> Picture | None:
    """The earliest picture to compare with: a good one, else any; None without one."""
    kept = [
        one
        for one in chart.pictures
        if one.path and not one.film and one.id < best.id and one.verdict.get("opens")
    ]
    return next((one for one in kept if one.good), kept[0] if kept else None)


def show(
    ctx: Context,
    out: Effects,
    chart: Chart,
    line: LineId,
    new: Sequence[Picture],
    media: Media,
    first: Picture | None,
) -> None:
    """One message for all that came, with the decisions under it. ``media`` is what it
    shows: two pictures side by side, frames of a film, or the picture as it came."""
    lang, words, best = ctx.clinic.language, ctx.words, best_of(new)
    name, by = chart.name, sender_name(chart, best)
    key = "review_film" if best.film else "review_picture"
    lines = [words.say(key, lang, name=name, day=best.day, by=by)]
    if first is not None:
        lines.append(words.say("review_sides", lang, first=first.day, last=best.day))
    elif best.film and media.file != best.media.file:
        lines.append(words.say("review_frames", lang, seconds=best.verdict.get("seconds", "?")))
    if len(new) > 1:
        lines.append(words.say("review_count", lang, n=len(new)))
    if not best.good:
        lines.append(words.say("review_careful", lang, why=_why(ctx, best, lang)))
    said = dict.fromkeys(one.caption for one in new if one.caption)
    if said:
        lines.append(f"“{' / '.join(said)[:400]}”")
    body: dict[str, Any] = {
        "film": best.film, "pictures": [one.id for one in new], "text": "\n".join(lines),
        "day": best.day, "decided": [], "again": False, "more": False,
    }  # fmt: skip
    for before in chart.reviews:
        if before.line == line and before.body.get("more"):
            out.add(ReviewChange(before.id, chart.id, line, {**before.body, "more": False}))
    out.add(
        ReviewChange(best.id, chart.id, line, body),
        Entry("review", "bot", body["text"], chart.id, {"pictures": body["pictures"]}),
    )
    for desk in ctx.desks:
        if desk.rank == 0:
            out.say(
                desk.chat,
                body["text"],
                buttons=_buttons(ctx, desk.chat, chart, best.id, body),
                media=media,
                topic=AboutPatient(chart.id),
                patient=chart.id,
                dedupe=_key(best.id, desk.chat),
                quiet=not ctx.open_now(),
            )


def _key(review: int, chat: int) -> str:
    return f"review:{review}:{chat}"


def _why(ctx: Context, picture: Picture, lang: Lang) -> str:
    verdict = picture.verdict.get("verdict", "unreadable")
    return ctx.words.say(f"verdict_{verdict}", lang)


def _group(choice: str) -> str:
    return "cone" if choice in CONE else choice


def _buttons(ctx: Context, chat: int, chart: Chart, review: int, body: dict[str, Any]) -> Rows:
    """What is still to be decided; after a decision, a way to decide again."""
    lang = ctx.clinic.language
    decided: set[str] = set()
    if not body["again"]:
        decided = {_group(one["choice"]) for one in body["decided"]}

    def made(choice: str, **fields: object) -> Button:
        label = ctx.words.say(f"decide_{_label(choice)}", lang, **fields)
        return ctx.button(chat, label, OnRecheck(chart.id, choice, review))

    rows: list[tuple[Button, ...]] = []
    if not body["film"] and "cone" not in decided:
        rows += [(made("c0"),), tuple(made(f"c{days}", days=days) for days in CONE_DAYS)]
    if "ex" not in decided:
        rows.append((made("ex"),))
    rest = [made(choice) for choice in ("in", "more") if choice not in decided]
    rows += [tuple(rest)] if rest else []
    if decided:
        rows.append((made(AGAIN),))
    return tuple(rows)


def _label(choice: str) -> str:
    return "cone_off" if choice == "c0" else "cone_days" if choice in CONE else choice


def tap(ctx: AtDesk, out: Effects, event: Incoming, actor: Member, action: OnRecheck) -> bool:
    """A decision under a recheck; False when it leads nowhere."""
    chart, choice = ctx.chart(action.patient), action.choice
    if chart is None:
        return False
    review = next((one for one in chart.reviews if one.id == action.review), None)
    if review is None or choice not in (*CONE, "ex", "in", "more", AGAIN):
        return False
    lang = ctx.clinic.language
    if chart.over:
        out.answer(event.callback, ctx.words.say("tap_over", lang))
        return True
    body = review.body
    if choice == AGAIN:
        out.answer(event.callback)
        _keep(ctx, out, event, chart, review, {**body, "again": True})
        return True
    same = [one for one in body["decided"] if _group(one["choice"]) == _group(choice)]
    if same and not body["again"]:
        out.answer(event.callback, _line(ctx, same[0]))
        return True
    _carry_out(ctx, out, chart, actor, choice, body)
    local = clock(ctx.now.astimezone(ZoneInfo(ctx.clinic.zone)))
    entry = {"choice": choice, "by": actor.name, "at": local}
    out.answer(event.callback, _line(ctx, entry))
    others = [one for one in body["decided"] if one not in same]
    changed = {**body, "decided": [*others, entry], "again": False}
    changed["more"] = choice == "more" or (body["more"] and choice == "ex")
    _keep(ctx, out, event, chart, review, changed)
    return True


def _line(ctx: Context, one: dict[str, Any]) -> str:
    """“✓ Skin healed: cone off. Dr Okafor, 14:05”."""
    lang = ctx.clinic.language
    days = one["choice"][1:]
    what = ctx.words.say(f"decide_{_label(one['choice'])}", lang, days=days)
    return f"✓ {ctx.words.say('answered', lang, choice=what, at=one['at'], by=one['by'])}"


def _keep(
    ctx: Context,
    out: Effects,
    event: Incoming,
    chart: Chart,
    review: Review,
    body: dict[str, Any],
) -> None:
    """The message shows who decided what, in every chat that has it."""
    out.add(ReviewChange(review.id, chart.id, review.line, body))
    text = "\n".join([*(_line(ctx, one) for one in body["decided"]), body["text"]])
    for desk in ctx.desks:
        here = desk.chat == event.chat
        if desk.rank == 0 or here:
            rows = _buttons(ctx, desk.chat, chart, review.id, body)
            out.edit(
                desk.chat,
                "" if here else _key(review.id, desk.chat),
                text,
                rows,
                patient=chart.id,
                message=event.message if here else None,
            )


def _carry_out(
    ctx: AtDesk, out: Effects, chart: Chart, actor: Member, choice: str, body: dict[str, Any]
) -> None:
    """What the decision changes, and what everybody at home is told, in their language."""
    words, lang = ctx.words, ctx.clinic.language
    why = words.say("review_reason", lang, day=body["day"])
    if choice in CONE:
        made = change(
            chart.plan, chart.protocol, chart.history, CONE[choice], ctx.now, chart.day(ctx.now),
            actor.name, why,
        )  # fmt: skip
        if made is not None:
            carry_out(ctx, out, chart, made, actor.name, why)
        return
    key = {
        "ex": "told_exercise",
        "in": "told_come_in",
        "more": "told_more_film" if body["film"] else "told_more_picture",
    }[choice]
    fields: dict[str, object] = {"name": chart.name}
    data = {"decision": choice, "why": why}
    text = words.say(key, lang, **fields, phone=both_phones(ctx, lang))
    out.add(Entry("decided", actor.name, text, chart.id, data))
    for person in chart.people:
        head = words.say("saved_for_staff", person.lang, clinic=ctx.clinic.name)
        text = words.say(key, person.lang, **fields, phone=both_phones(ctx, person.lang))
        out.tell(
            person,
            Purpose.staff_words,
            f"{head}\n{text}",
            patient=chart.id,
            topic=AboutPatient(chart.id),
        )
