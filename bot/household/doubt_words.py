"""The question whether something is so, answered in words in place of a button.

A plain yes or no is the answer. Other words are read like any reply: what tells of the matter
itself answers it, too; what is not understood is never taken for a no.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from bot.cases.cases import Said
from bot.context.contexts import AtHome
from bot.household import clarify, late, talking, wound
from bot.household.doubtful import alarming, hand_to_staff
from bot.household.doubts import How, answer, denied, unsettled
from bot.model.chart import Chart, Person
from bot.model.conversation import Doubted
from bot.model.effects import Effects, Entry, Heard
from bot.model.evolve import evolve
from bot.model.finding import Finding
from bot.model.ids import SourceId
from bot.model.observation import Observation
from bot.model.reading import Reading
from bot.model.topic import AboutQuestion
from bot.model.urgency import Urgency
from bot.triage import urgency

_SHORT: Final = 60
"""Letters of a plain answer, at most."""
_IT: Final = r"(it|he|she|they|that|there)"
_IS: Final = r"(is|does|did|has|have|are|was|s)"
_YES: Final = re.compile(
    rf"(yes|yep|yeah|yea|yup|ya|s[ií]+|claro|correct|exactly|exacto|as[ií] es|afirmativo)"
    rf"(\W+({_IT}\W*{_IS}|definitely|exactly|very|please|claro|que s[ií]|s[ií]|as[ií] es"
    rf"|lo es|lo est[aá]|es|est[aá]|as[ií]|mucho|thanks?|thank you|gracias|por favor))*"
    rf"|{_IT}\W*{_IS}|definitely",
    re.IGNORECASE,
)
_NO: Final = re.compile(
    rf"(no|nope|nop|nah|negativo|para nada|not at all)"
    rf"(\W+({_IT}(\W*{_IS})?\W*(n\W?t|not)|not at all|para nada|no|nada de eso|no lo es"
    rf"|no lo est[aá]|no es as[ií]|thanks?|thank you|gracias))*"
    rf"|{_IT}\W*{_IS}?\W*(n\W?t|not)|no es as[ií]",
    re.IGNORECASE,
)
_ELSE: Final = re.compile(
    r"(no\W+)?((i\W?m |i am )?not sure|(i )?(don\W?t|do not|dunno) ?(know)?|no idea|maybe|perhaps"
    r"|no (lo )?s[eé]|ni idea|no estoy segur[oa]|tal vez|quiz[aá]s?|something else|otra cosa)",
    re.IGNORECASE,
)
_FIRST_YES: Final = re.compile(r"^\W*(yes|yep|yeah|yea|yup|ya|s[ií])\b", re.IGNORECASE)


def plain(text: str) -> How | None:
    """What the words answer to a question for yes or no; None when they are no plain answer."""
    words = text.strip(" \t\r\n.,!?¡¿👍👎")
    if not words or len(words) > _SHORT or "?" in text:
        return None
    forms: tuple[tuple[re.Pattern[str], How], ...] = ((_ELSE, "else"), (_YES, "yes"), (_NO, "no"))
    return next((how for form, how in forms if form.fullmatch(words)), None)


def told(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, text: str, source: SourceId
) -> bool:
    """The question answered in words. False when these are no plain answer."""
    how, question = plain(text), meant(ctx, chart)
    if how is None or question is None or ctx.standing(chart).death_told:
        return False
    data = {"source": source, "asked": question.doubt.about}
    out.add(Heard(chart.id), Entry("said", person.name, text, chart.id, data))
    answer(ctx, out, chart, person, question, how, source)
    return True


def meant(ctx: AtHome, chart: Chart) -> Doubted | None:
    """The question that the words answer: the one that they are a reply to, else the newest
    of all that is open, where nothing else has been asked since."""
    question = talking.answered(ctx, Doubted)
    if question is None or question.patient != chart.id:
        return None
    if isinstance(ctx.topic, AboutQuestion):
        return question
    since = [one.sent_at for one in chart.sheets if one.sent_at is not None]
    tap = late.waiting(chart, ctx.incoming.chat, ctx.now)
    since += [tap.tapped] if tap is not None else []
    healed = wound.last_asked(chart, ctx.now)
    since += [healed[1]] if healed is not None else []
    alone = ctx.topic is None and ctx.conversation.open[-1] == question
    return question if alone and all(at <= question.at for at in since) else None


def heard(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, text: str, source: SourceId,
    reading: Reading, findings: Sequence[Finding],
) -> bool:  # fmt: skip
    """After a reply was noted and answered: what it says of the question that it came upon.
    True when staff have the words now."""
    question = meant(ctx, chart)
    if question is None or alarming(reading.asks):
        return False
    doubt = question.doubt
    same = [one for one in reading.observations if one.about == doubt.about]
    level = urgency(findings)
    said = Said(person.name, f"{text}\n{question.text}", source)
    known = evolve(chart, out.all, ctx.now)
    if any(one.value == doubt.value for one in same) or (same and level >= doubt.urgency):
        clarify.over(out, person.chat, question.key)  # the alarm is raised by these words
        rest = [one for one in question.doubts[1:] if not one.alarmed]
        if rest:
            hand_to_staff(ctx, out, known, rest, said, "unasked")
        return False
    if not reading.understood:
        clarify.over(out, person.chat, question.key)
        unsettled(ctx, out, known, person, question, said)
        return True
    if _says_no(text, same, reading, level):
        clarify.over(out, person.chat, question.key)
        asked = {"source": source, "denied": f"{doubt.about}: {doubt.value}"}
        out.add(Entry("unclear", person.name, text, chart.id, asked))
        denied(ctx, out, known, person, question, said, silent=True)
        return False
    return False  # of something else: the question stays


def _says_no(text: str, same: Sequence[Observation], reading: Reading, level: Urgency) -> bool:
    """Whether the owner's own words on the very matter say otherwise, and both readers agree
    that nothing in them alarms. A bare yes or no to another question is no such word."""
    if not same or level >= Urgency.same_day or _FIRST_YES.match(text):
        return False
    return all(one.about not in reading.bare and not one.unsure for one in same)
