"""The question how the wound healed, answered in words in place of a button.

A plain "yes, it healed fine" is the answer. What tells of a problem is ticked, and sent on
by a tap or after a while; what is not plain is never taken for a healed wound.
"""

from __future__ import annotations

import re
from typing import Final

from bot.context.contexts import AtHome
from bot.context.phones import whom_to_phone
from bot.household import wound
from bot.household.reading_context import context_for
from bot.household.reply import OwnWords, reply
from bot.measures.infection import SIGNS
from bot.model.chart import Chart, Person, WoundCheck
from bot.model.chat import Incoming
from bot.model.effects import Effects, Entry, Heard, Rows
from bot.model.healing import Healing
from bot.model.ids import SourceId
from bot.model.observation import Observation
from bot.model.purpose import Purpose
from bot.model.topic import AboutWound
from bot.reading import read

_SHORT = 120
"""Letters of a plain answer, at most."""
_END = r"[\s,.!]*(thanks?|thank you|gracias)?[\s.!]*$"
_HEALED = re.compile(
    r"^\W*((yes|yep|yeah|yup|s[ií])\W+)?"
    r"((it|he|she|the (cut|wound|incision)|all|everything)\W*(s|is|has|was)?\s+)?(all\s+)?"
    r"healed(\s+up)?(\s+(fine|well|good|great|nicely|perfectly|completely))?"
    r"(\s+(with no|without( an?y?)?) (problems?|issues?|trouble)( at all)?)?"
    + _END
    + r"|^\W*(s[ií]\W+)?((la herida|ya|todo)\s+)*(san[oó]|cicatriz[oó])"
    r"(\s+(muy )?(bien|perfecto|perfectamente))?(\s+sin (ning[uú]n )?problemas?)?" + _END,
    re.IGNORECASE,
)
_YES = re.compile(
    r"^(yes|yep|yeah|yup|s[ií]|claro)" + _END + r"|^((yes|yep|yeah|yup|s[ií]|claro)\W+)?"
    r"(it did|(no|without any|not any) (problems?|issues?|trouble)( at all)?"
    r"|all (good|fine|well)|(sin|ning[uú]n|sin ning[uú]n) problemas?|todo bien)" + _END,
    re.IGNORECASE,
)
_NO = re.compile(r"^\W*(no|nope|nop)(,? (it )?did(n.?t| not)|,? para nada)?[\s.!]*$", re.IGNORECASE)
_ANTIBIOTIC = re.compile(r"\bantibi[oó]tic", re.IGNORECASE)
_NO_ANTIBIOTIC = re.compile(
    r"\b(no|without|sin|never|nunca|ni)\b(\W+\w+){0,3}\W+antibi", re.IGNORECASE
)
_NOW = re.compile(
    r"\b(is|are|isn.?t|looks|now|still|today|tonight"
    r"|est[aá]|ahora|sigue|todav[ií]a|hoy|tiene|se ve)\b",
    re.IGNORECASE,
)
_TICKS: Final = {
    ("incision", "open"): "opened",
    ("incision", "pus"): "pus",
    ("incision", "red"): "redness",
    ("incision", "discharge"): "discharge",
    ("swelling", "mild"): "swelling",
    ("swelling", "marked"): "swelling",
    ("pain", "mild"): "pain",
    ("pain", "moderate"): "pain",
}
"""What is read of the wound → what the question calls it."""


def answered(
    ctx: AtHome, out: Effects, event: Incoming, chart: Chart, person: Person, text: str,
    source: SourceId,
) -> bool:  # fmt: skip
    """Whether the words answer the question, which is seen to here. False otherwise."""
    found = _asked(ctx, chart)
    if found is None:
        return False
    check, replied = found
    # With another question open, a bare "yes" may be for that one.
    alone = replied or not chart.asked(ctx.now)
    plain = " ".join(re.sub(r"[^\w\s'’]", " ", text).split()) if len(text) <= _SHORT else ""
    if _HEALED.match(plain) or (alone and _YES.match(plain)):
        _said(out, chart, person, text, source)

        def show(words: str, rows: Rows) -> None:
            topic = AboutWound(check.day, chart.id)
            out.tell(person, Purpose.answer, words, buttons=rows, patient=chart.id, topic=topic)

        told = Healing(problem=False)
        wound.keep(ctx, out, person, chart, check, told, source, show, own=text)
        return True
    if _NO.match(plain) or _YES.match(plain):
        _said(out, chart, person, text, source)
        wound.ask(ctx, out, chart, person, check.day, key="wound_tap")
        return True
    return _problem(ctx, out, event, chart, person, text, check, source, replied=replied)


def _asked(ctx: AtHome, chart: Chart) -> tuple[WoundCheck, bool] | None:
    """The question that is meant, and whether the message is a reply to it."""
    if isinstance(ctx.topic, AboutWound):
        day = ctx.topic.day
        found = next((one for one in chart.wounds if one.day == day), None)
        return (found, True) if found else None
    last = wound.last_asked(chart, ctx.now)
    return (last[0], False) if last and not ctx.topic else None


def _said(out: Effects, chart: Chart, person: Person, text: str, source: SourceId) -> None:
    out.add(Heard(chart.id))
    out.add(Entry("said", person.name, text, chart.id, {"source": source, "asked": "wound"}))


def _problem(
    ctx: AtHome, out: Effects, event: Incoming, chart: Chart, person: Person, text: str,
    check: WoundCheck, source: SourceId, *, replied: bool,
) -> bool:  # fmt: skip
    """Signs of a problem are ticked; what may be so now is also read like any reply."""
    seen = read(text, context_for(chart, "incision", person, ctx.now)).observations
    ticks = {_TICKS[one.about, one.value] for one in seen if (one.about, one.value) in _TICKS}
    antibiotic = bool(_ANTIBIOTIC.search(text)) and not _NO_ANTIBIOTIC.search(text)
    ticks |= {"antibiotics"} if antibiotic else set()
    of_the_cut = antibiotic or any(one.about == "incision" for one in seen)
    if not ticks or not (replied or of_the_cut):
        if replied:
            reply(ctx, out, chart, person, OwnWords(text, source, about="incision"))
            wound.ask(ctx, out, chart, person, check.day, key="wound_tap")
        return replied
    if _NOW.search(text) or not all(_told_by_ticks(one) for one in seen):
        own = OwnWords(text, source, about="incision", looked_at=True, of_the_past=True)
        reply(ctx, out, chart, person, own)
    else:
        _said(out, chart, person, text, source)
    signs = tuple(one for one in SIGNS if one in ticks)
    rows = wound.draft(ctx, out, chart, person, check, signs)
    told = Healing(problem=True, **dict.fromkeys(signs, True))
    words = ctx.words.say(
        "wound_heard", person.lang, phone=whom_to_phone(ctx, person.lang),
        what=wound.in_words(ctx.words, told, person.lang),
    )  # fmt: skip
    topic = AboutWound(check.day, chart.id)
    out.tell(person, Purpose.answer, words, buttons=rows, patient=chart.id, topic=topic)
    return True


def _told_by_ticks(one: Observation) -> bool:
    """Whether the ticks say all of it: a good sign beside them, or an antibiotic of then."""
    good = (one.about, one.value) in (("incision", "clean"), ("swelling", "none"))
    return good or one.about == "dose" or (one.about, one.value) in _TICKS
