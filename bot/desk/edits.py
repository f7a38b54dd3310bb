"""A message that staff changed after it was sent.

An answer has reached the owner already, who may have acted on it: the new words go out as a
message of their own that says what they replace, never as a silent change. A command has
had its effect: changing its message changes nothing, and whoever changed it is told so.
"""

from __future__ import annotations

from bot.context.contexts import AtDesk
from bot.context.words import when
from bot.desk.cases import to_person
from bot.model.chart import Chart, Member, Written
from bot.model.chat import Incoming
from bot.model.effects import Effects, Entry
from bot.model.topic import TOPICS, AboutCase

COMMANDS = frozenset({"/note", "/medicine", "/enrol", "/enroll", "/end", "/staff"})
"""Commands that change something when they are sent."""
QUOTED = 600
"""Letters of the earlier words that the owner is shown again."""


def concerns(ctx: AtDesk, event: Incoming) -> bool:
    """Whether the changed message is one that led to something, or looks as if it had."""
    if ctx.desk(event.chat) is None and not event.private:
        return False
    return bool(ctx.written) or _first(event) in COMMANDS


def edited(ctx: AtDesk, out: Effects, event: Incoming, actor: Member) -> None:
    """What follows from the new words."""
    answers = [one for one in ctx.written if one.kind == "staff"]
    chart = ctx.charts[0] if ctx.charts else None
    if not answers or chart is None or event.text.startswith("/"):
        _changes_nothing(ctx, out, event, actor, chart)
    elif answers[-1].user != actor.user:
        words = "an answer of someone else, changed"
        out.add(Entry("refused", actor.name, f"{words}: {event.text[:200]}", chart.id))
    elif not _same(answers[-1], event):
        _correct(ctx, out, event, actor, chart, answers[-1])


def _first(event: Incoming) -> str:
    words = event.text.split()
    return words[0].casefold() if words else ""


def _same(before: Written, event: Incoming) -> bool:
    """Whether the owner would read and see the same: spaces do not count."""
    return before.text.split() == event.text.split() and before.picture == _picture(event)


def _picture(event: Incoming) -> str:
    return event.media[0].unique if event.media else ""


def _correct(
    ctx: AtDesk, out: Effects, event: Incoming, actor: Member, chart: Chart, before: Written
) -> None:
    lang = ctx.clinic.language
    people = [person for person in chart.people if person.reachable]
    if not people:
        text = ctx.words.say("desk_nobody", lang, phone=chart.plan.phone or "–")
        out.say(event.chat, text, patient=chart.id, reply_to=event.message)
        return
    topic = TOPICS.decode(before.topic)
    case = topic.case if isinstance(topic, AboutCase) else None
    new = event.media[0] if event.media and before.picture != _picture(event) else None
    was = before.text[:QUOTED] + ("…" if len(before.text) > QUOTED else "")
    sent: list[str] = []
    for person in people:
        at = when(chart.local(before.at), chart.local(ctx.now), person.lang)
        said = ctx.words.say(
            "answer_corrected" if event.text.strip() else "answer_taken_back", person.lang,
            text=event.text.strip(), at=at, phone=ctx.clinic.phone,
        )  # fmt: skip
        if was.strip():
            quoted = ctx.words.say("answer_was", person.lang, at=at, text=was)
            said = f"{said}\n\n{quoted}"
        first = before.sent.get(person.chat)
        sent.append(to_person(ctx, out, chart, person, said, new, case, reply_to=first))
    to = ", ".join(person.name for person in people)
    why = ctx.words.say("desk_in_place", lang, text=before.text)
    data = {
        "to": to, "topic": before.topic, "sent": sent, "picture": _picture(event),
        "corrects": before.text, "why": why,
    }  # fmt: skip
    out.add(Entry("staff", actor.name, event.text, chart.id, data))
    text = ctx.words.say("desk_corrected", lang, to=f"{to} ({chart.name})")
    out.say(event.chat, text, patient=chart.id, quiet=True, reply_to=event.message)


def _changes_nothing(
    ctx: AtDesk, out: Effects, event: Incoming, actor: Member, chart: Chart | None
) -> None:
    text = ctx.words.say("desk_edit_nothing", ctx.clinic.language)
    patient = chart.id if chart else None
    out.say(event.chat, text, patient=patient, reply_to=event.message)
    words = f"a changed message, which changes nothing: {event.text[:200]}"
    out.add(Entry("refused", actor.name, words, patient))
