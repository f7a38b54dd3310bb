"""Pictures and films from home: into the log, to staff, and, when asked for, looked at."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta

from bot.cases.cases import Said, raise_findings
from bot.cases.noting import advice_for
from bot.context.contexts import AtHome, Context
from bot.context.phones import whom_to_phone
from bot.household import clarify
from bot.household.reply import OwnWords, reply
from bot.model.chart import FILMS, Chart, Line, Person, Picture
from bot.model.chat import Incoming, Media
from bot.model.conversation import Describe, Unclear, WhichPatient
from bot.model.effects import (
    CaseChange,
    Due,
    Effects,
    Entry,
    Heard,
    KeepMedia,
    Mark,
    RetakeAsked,
    Settle,
)
from bot.model.ids import CaseId, LineId, SourceId, picture_source
from bot.model.purpose import Purpose
from bot.model.topic import AboutCase, AboutPatient
from bot.triage import handed_over

TOGETHER = timedelta(seconds=3)
"""How long after its last picture an album is taken as complete: the chat app sends its
pictures as separate messages, at once. Common practice."""
RETAKE_WAIT = timedelta(minutes=30)
"""How long a better picture is waited for before the clinician is shown the first. Common
practice, clinic to confirm."""
SEEN = ("photo", "document", *FILMS)
"""What may be a picture or a film; voice and music are not looked at."""

PICTURES = ("jpg", "png", "webp", "heic", "avif")
"""First bytes (``bot.pictures``) by which a file says that it is a picture."""


def got(
    ctx: AtHome, out: Effects, event: Incoming, chart: Chart, person: Person, source: SourceId
) -> None:
    """A picture, film or file: into the log, to staff, its words read like any."""
    out.add(Heard(chart.id))
    day, caption = chart.day(ctx.now), event.text.strip()
    asked: Line | None = None
    looked_at = False
    for media in event.media:
        data = {"media": media.model_dump(), "day": day, "source": source}
        out.add(Entry("picture", person.name, event.text, chart.id, data))
        if media.kind in SEEN:
            asked = _asked_for(ctx, chart, media)
            line = asked.id if asked else _wanted_again(chart, media)
            out.add(KeepMedia(chart.id, media, source, day, person.id, caption, line))
            looked_at = line is not None
            if not looked_at:
                _thank(ctx, out, chart, person, media, caption)
    described = ctx.conversation.find(Describe)
    if caption:
        shown = f"{caption} {ctx.words.say('with_picture', ctx.clinic.language)}"
        about = asked.item.asks if asked else ""
        words = OwnWords(caption, source, shown=shown, about=about, looked_at=looked_at)
        reply(ctx, out, chart, person, words)
    elif any(media.kind not in SEEN for media in event.media):
        _heard_only(ctx, out, chart, person, source)
    elif described:
        _described(ctx, out, chart, person, source)
    for media in event.media:
        _show_staff(ctx, out, chart, person, media, event.text, _case_of(out, source))


def told_which(
    ctx: AtHome,
    out: Effects,
    event: Incoming,
    chart: Chart,
    person: Person,
    question: WhichPatient,
) -> None:
    """The patient was named for pictures that waited."""
    words = "\n".join(one.text for one in question.said if one.text.strip())
    sent = replace(event, kind="message", media=question.media, text=words)
    got(ctx, out, sent, chart, person, question.source)


def _asked_for(ctx: AtHome, chart: Chart, media: Media) -> Line | None:
    """The open line of a sent prompt that this answers, if any. A film answers the line
    that asks about movement, a picture another; where there is no such line, any."""
    for sheet in sorted(chart.sheets, key=lambda one: one.due_at, reverse=True):
        if sheet.sent_at is None or sheet.sent_at > ctx.now:
            continue
        lines = [line for line in sheet.lines if line.item.kind == "picture"]
        film = media.kind in FILMS
        meant = [line for line in lines if (line.item.asks == "mobility") is film] or lines
        for line in meant:
            if line.state in ("open", "unanswered"):
                return line
    return None


def _wanted_again(chart: Chart, media: Media) -> LineId | None:
    """The line for which the clinician asked for another picture or film."""
    for review in reversed(chart.reviews):
        if review.body.get("more") and review.body["film"] is (media.kind in FILMS):
            return review.line
    return None


def _thank(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, media: Media, caption: str
) -> None:
    """Once for an album, which comes as several messages with one id."""
    lang = person.lang
    key = f"thanks:{chart.id}:{person.chat}:{media.album}" if media.album else None
    words = "film_thanks" if media.kind in FILMS else "picture_thanks"
    text = ctx.words.say(words, lang, name=chart.name)
    if not caption:
        more = ctx.words.say("picture_more", lang, name=chart.name)
        phone = ctx.words.say("urgent_phone", lang, phone=whom_to_phone(ctx, lang))
        text = f"{text} {more} {phone}"
    out.tell(
        person, Purpose.answer, text, patient=chart.id, dedupe=key, topic=AboutPatient(chart.id)
    )


def _heard_only(ctx: AtHome, out: Effects, chart: Chart, person: Person, source: SourceId) -> None:
    """A voice message cannot be read, and may be urgent: as with words not understood."""
    said = Said(person.name, ctx.words.say("voice_message", ctx.clinic.language), source)
    before = ctx.conversation.find(Unclear)
    if before is None:
        clarify.ask_once(ctx, out, chart, person, said)
        return
    both = f"{before.text}\n{said.text}"
    clarify.hand_over(ctx, out, chart, replace(before, text=both, source=source), person.chat)


def _described(ctx: AtHome, out: Effects, chart: Chart, person: Person, source: SourceId) -> None:
    """A picture instead of words, after "something else": only a person can tell what it
    shows, so it is a case."""
    text = ctx.words.say("picture_instead", ctx.clinic.language)
    finding = handed_over(text, ctx.rules)
    raise_findings(ctx, out, chart, [finding], Said(person.name, text, source))
    advice = advice_for(ctx, chart, [finding], person.lang)
    out.tell(
        person, Purpose.advice, "\n\n".join(advice), patient=chart.id, topic=AboutPatient(chart.id)
    )
    if (asked := ctx.conversation.find(Describe)) is not None:
        out.add(Settle(person.chat, asked.key))


def _case_of(out: Effects, source: SourceId) -> CaseId | None:
    """The case that this message has opened or joined."""
    for change in out.all:
        if isinstance(change, CaseChange) and change.body["entries"][-1]["source"] == source:
            return change.id
    return None


def _show_staff(
    ctx: AtHome,
    out: Effects,
    chart: Chart,
    person: Person,
    media: Media,
    caption: str,
    case: CaseId | None,
) -> None:
    """To the clinic's chat as it came: under the case, when it made one."""
    lang = ctx.clinic.language
    kind = "media_video" if media.kind in FILMS else {
        "photo": "media_photo", "voice": "media_voice"}.get(media.kind, "media_other")  # fmt: skip
    text = ctx.words.say(
        "desk_picture", lang, name=chart.name, day=chart.day(ctx.now),
        what=ctx.words.say(kind, lang), by=person.name, caption=caption[:600],
    ).strip()  # fmt: skip
    if case:
        text = f"{ctx.words.say('belongs_to_case', lang, case=case)}\n{text}"
    topic = AboutCase(case) if case else AboutPatient(chart.id)
    for desk in ctx.desks:
        if desk.rank == 0:
            out.say(desk.chat, text, media=media, patient=chart.id, topic=topic, quiet=case is None)


# -- after it was fetched and looked at -----------------------------------------------------


def kept(
    ctx: Context, out: Effects, chart: Chart, picture: Picture, shown: Media | None = None
) -> None:
    """It has been fetched, or cannot be for now: what asked for it is looked at, an album
    when it is complete. ``shown``: the same picture as every app shows it, for staff, who
    have seen a file's name so far."""
    if picture.line is None:
        if shown is not None:
            _show_copy(ctx, out, chart, picture, shown)
        elif picture.verdict.get("came_as") in PICTURES and picture.path is None:
            out.add(RetakeAsked(picture.id))
            _say_how(ctx, out, chart, picture)  # thanked already, and yet it is not there
        return
    wait = TOGETHER if picture.media.album else timedelta(0)
    out.add(_look_at(chart, picture.line, ctx.now + wait))


def _show_copy(ctx: Context, out: Effects, chart: Chart, picture: Picture, shown: Media) -> None:
    """An answer to it goes where one to the file itself goes: to the case, if it made one."""
    lang = ctx.clinic.language
    text = ctx.words.say(
        "desk_picture_copy", lang, name=chart.name, day=picture.day, by=sender_name(chart, picture)
    )
    made = [
        case.id
        for case in chart.cases
        if any(entry["source"] == picture.source for entry in case.body.get("entries", []))
    ]
    topic = AboutCase(made[-1]) if made else AboutPatient(chart.id)
    for desk in ctx.desks:
        if desk.rank == 0:
            out.say(desk.chat, text, media=shown, patient=chart.id, topic=topic, quiet=True)


def _look_at(chart: Chart, line: LineId, at: datetime, *, late: bool = False) -> Due:
    return Due(f"review:{line}", "review", at, chart.id, {"line": line, "late": late})


def unseen(chart: Chart, line: LineId) -> list[Picture]:
    """What came for a line and was not shown to the clinician yet, oldest first; nothing
    while one of them is still on its way."""
    shown = {one for review in chart.reviews for one in review.body["pictures"]}
    new = [one for one in chart.pictures if one.line == line and one.id not in shown]
    if any(one.state == "waiting" and not one.attempts for one in new):
        return []
    return new


def retake_due(chart: Chart, line: LineId, new: Sequence[Picture], *, late: bool) -> bool:
    """Whether to ask for a better one: none is good, and it was not asked before."""
    asked = any(one.retake for one in chart.pictures if one.line == line)
    return not late and not asked and not any(one.good for one in new)


def ask_retake(ctx: Context, out: Effects, chart: Chart, line: LineId, picture: Picture) -> None:
    """Kindly, once, and how. The line stays open; the clinician sees the first all the same
    if no better one comes."""
    out.add(
        RetakeAsked(picture.id),
        _look_at(chart, line, ctx.now + RETAKE_WAIT, late=True),
        Entry(
            "picture", "bot", picture.verdict.get("why", ""), chart.id,
            {"retake": picture.verdict.get("verdict"), "check": picture.verdict},
        ),
    )  # fmt: skip
    _say_how(ctx, out, chart, picture)


def _say_how(ctx: Context, out: Effects, chart: Chart, picture: Picture) -> None:
    person = _from(chart, picture)
    if person is None or chart.over:
        return
    kind = "film" if picture.film else "picture"
    how = picture.verdict.get("verdict", "unreadable")
    text = ctx.words.say(
        f"retake_{kind}", person.lang, name=chart.name,
        how=ctx.words.say(f"retake_{how}", person.lang),
    )  # fmt: skip
    out.tell(person, Purpose.question, text, patient=chart.id, topic=AboutPatient(chart.id))


def answered(
    ctx: Context, out: Effects, chart: Chart, line: LineId, new: Sequence[Picture], *, late: bool
) -> None:
    """The line is done, and whoever sent it is thanked once."""
    picture = new[-1]
    person = _from(chart, picture)
    for sheet in chart.sheets:
        marks = [
            Mark(one.id, "answered", None, person.name if person else None, ctx.now,
                 picture_source(picture.id))
            for one in sheet.lines
            if one.id == line and one.state in ("open", "unanswered")
        ]  # fmt: skip
        if marks:
            out.add(*marks)
    if person is None or late or chart.over:
        return
    together = [one for one in new if one.media.album and one.media.album == picture.media.album]
    if picture.film:
        words = "film_seen"
    elif len(together) > 1:
        words = "pictures_seen"
    else:
        clear = picture.verdict.get("verdict") == "ok"
        words = "picture_seen" if clear else "picture_thanks"
    text = ctx.words.say(words, person.lang, name=chart.name, clinic=ctx.clinic.name)
    out.tell(person, Purpose.praise, text, patient=chart.id, topic=AboutPatient(chart.id))


def _from(chart: Chart, picture: Picture) -> Person | None:
    """Who sent it, if they are still with the patient."""
    return next((one for one in chart.people if one.id == picture.person), None)


def sender_name(chart: Chart, picture: Picture) -> str:
    """Who sent it, for staff."""
    person = _from(chart, picture)
    return person.name if person else chart.plan.owner
