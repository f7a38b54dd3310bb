"""While staff and someone at home talk about a case: the words go to that case."""

from __future__ import annotations

import re
from datetime import timedelta
from typing import Final

from bot.context.contexts import AtHome
from bot.context.words import clock
from bot.model.chart import Case, Chart, Person
from bot.model.conversation import InCase, Q
from bot.model.effects import Effects, Settle
from bot.model.ids import CaseId
from bot.model.text import Text
from bot.model.topic import (
    AboutCase,
    AboutPatient,
    AboutPrompt,
    AboutQuestion,
    AboutUnclear,
    AboutWords,
    AboutWound,
)

THANKS = re.compile(
    r"^\W*((ok|okay|got it|thanks?|thank you|so much|very much|will do|great|perfect|understood"
    r"|vale|gracias|muchas|listo|entendido|perfecto|de acuerdo|mil)\W*)+$",
    re.IGNORECASE,
)
ANSWERED_BY: Final = timedelta(hours=24)
"""So long the first words after those of staff answer them, though their case is closed."""
WROTE_BACK = Text(en="The owner has written back.", es="El dueño ha respondido.")


def answered(ctx: AtHome, kind: type[Q]) -> Q | None:
    """The open question of this kind that the words answer: the one that they are a reply to,
    else the newest. A reply to anything else that was asked answers none."""
    match ctx.topic:
        case AboutQuestion(key=key):
            return ctx.conversation.find(kind, key)
        case AboutWords() | AboutPrompt() | AboutWound() | AboutUnclear():
            return None
        case _:
            return ctx.conversation.find(kind)


def is_thanks(text: str) -> bool:
    """Whether the words are a thank-you or an "understood", and nothing more."""
    return len(text) <= 120 and bool(THANKS.match(text))


def case_in_hand(ctx: AtHome, chart: Chart) -> Case | None:
    """The case in which staff have written to this chat, until it is closed."""
    open_case = ctx.conversation.find(InCase)
    if open_case is None:
        return None
    return next((one for one in chart.cases if one.id == open_case.case), None)


def staff_asked(ctx: AtHome, chart: Chart) -> CaseId | None:
    """The case of the words of staff that these answer: of the message that they are a reply
    to, or of what staff wrote last. Its close does not make the answer go unread."""
    if isinstance(ctx.topic, AboutWords):
        return ctx.topic.case if ctx.topic.patient == chart.id else None
    if (case := case_in_hand(ctx, chart)) is not None:
        return case.id
    asked = ctx.conversation.find(InCase)
    if asked is None or asked.patient != chart.id or asked.at is None:
        return None
    return asked.case if ctx.now - asked.at <= ANSWERED_BY else None


def words_of_staff(ctx: AtHome, case: CaseId) -> str | None:
    """What staff wrote last to this chat in a case, until it has its answer; None: not known."""
    asked = ctx.conversation.find(InCase)
    return asked.text or None if asked is not None and asked.case == case else None


def after_close(ctx: AtHome, out: Effects, chart: Chart, person: Person) -> None:
    """The words of staff have their answer: what is written from now on is no answer to
    them, where their case is closed."""
    asked = ctx.conversation.find(InCase)
    if asked is not None and case_in_hand(ctx, chart) is None:
        out.add(Settle(person.chat, asked.key))


def copy_to_case(ctx: AtHome, out: Effects, chart: Chart, person: Person, text: str) -> bool:
    """While staff talk with an owner, the owner's words go to the case as they are: whether they
    did."""
    case = staff_asked(ctx, chart)
    if case is None or (is_thanks(text) and all(one.id != case for one in chart.cases)):
        return False
    after_close(ctx, out, chart, person)
    _copy(ctx, out, chart, person, text, AboutCase(case))
    return True


def copy_after_death(ctx: AtHome, out: Effects, chart: Chart, person: Person, text: str) -> None:
    """Whatever is said once a death was told goes to staff, beside the case of that word while
    it is open: "it was my nephew, he is here wagging his tail"."""
    case = next((one.id for one in chart.cases if one.tells_death), None)
    topic = AboutPatient(chart.id) if case is None else AboutCase(case)
    _copy(ctx, out, chart, person, text, topic)


def _copy(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, text: str,
    topic: AboutCase | AboutPatient,
) -> None:  # fmt: skip
    said = ctx.words.say(
        "case_said", ctx.clinic.language, by=f"{person.name} ({chart.name})",
        at=clock(chart.local(ctx.now)), text=text,
    )  # fmt: skip
    for desk in ctx.desks:
        if desk.rank == 0:
            out.say(desk.chat, said, topic=topic, patient=chart.id)
