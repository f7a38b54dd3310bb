"""A dose that is told of, in words or by the button of a medicine: the line that it answers,
and what follows for the next one."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime

from bot.cases.cases import Said
from bot.cases.noting import advice_for, purpose_of, take_note
from bot.context.contexts import AtHome, Context
from bot.context.words import clock, day_word
from bot.dosing.dosing import (
    after_given,
    latest_come,
    line_behind,
    line_for,
    next_words,
    served,
)
from bot.household import clarify, late, twice
from bot.household.not_given import given_after_all, not_given
from bot.household.reading_context import wall_time
from bot.model.chart import Chart, Line, Person, Sheet
from bot.model.chat import Incoming
from bot.model.effects import Effects, Mark
from bot.model.finding import Finding
from bot.model.ids import SourceId, tap_source
from bot.model.observation import Observation
from bot.model.plan import Medicine, MedicineClass
from bot.model.purpose import Purpose
from bot.model.text import Lang
from bot.model.topic import AboutPatient

_EARLIER = re.compile(
    r"\b(morning|last night|yesterday|earlier|ma[nñ]ana|anoche|ayer|temprano)\b", re.IGNORECASE
)
"""Words by which a dose with no clock time was given when it was due, not just now."""
_JUST = re.compile(
    r"\b(just (now|gave|give|given|did)|right now|this (very )?(minute|moment)"
    r"|ahora mismo|ahorita|reci[eé]n|acab(o|amos) de)\b",
    re.IGNORECASE,
)
"""The dose of last night, given this minute."""
_LATE = re.compile(
    r"\b(now|at last|finally|late|forg[eo]t(ten)?|missed|skipped"
    r"|(last night|yesterday|morning)['’]s"
    r"|(from|of) (last night|yesterday|this morning)|ahora|por fin|tarde|olvid\w+|salt\w+"
    r"|falt(aba|[oó])|de (anoche|ayer|la noche|la ma[nñ]ana))\b",
    re.IGNORECASE,
)
"""Beside words of earlier these leave open whether it was given then or is given now: asked."""


@dataclass(slots=True)
class Follows:
    """What follows from the words ``text`` of ``source``, told of ``moment``; ``quoted`` is the
    prompt that they are a reply to, ``when`` its doses of which it must be asked when."""

    source: SourceId
    text: str
    moment: datetime
    observations: list[Observation] = field(default_factory=list)
    marks: list[Mark] = field(default_factory=list)
    tell: list[str] = field(default_factory=list)
    more: list[Finding] = field(default_factory=list)
    doses: list[tuple[str | None, datetime]] = field(default_factory=list)
    quoted: Sheet | None = None
    when: list[Line] = field(default_factory=list)

    @property
    def round(self) -> datetime:
        """About when the doses that are meant were due."""
        return self.quoted.due_at if self.quoted is not None else self.moment

    def of_quoted(self, med: str | None) -> Line | None:
        """The dose of this medicine on the prompt that was quoted."""
        lines = self.quoted.lines if self.quoted is not None and med else ()
        return next((one for one in lines if one.item.med == med), None)

    def mark(self, line: Line, choice: str, person: Person, at: datetime) -> None:
        """The words answer this line."""
        one = Mark(line.id, "answered", choice, person.name, at, self.source, person.id)
        self.marks.append(one)

    def given(
        self, ctx: Context, out: Effects, chart: Chart, med: str | None, at: datetime, lang: Lang,
        line: Line | None,
    ) -> None:  # fmt: skip
        """A dose was given: what is said of it, and raised."""
        others = [when for name, when in self.doses if name == med]
        words, findings = after_given(ctx, out, chart, med, at, lang, line=line, others=others)
        self.doses.append((med, at))
        self.tell += [one for one in words if one not in self.tell]
        self.more += findings


_MEDS = (
    r"(meds?|medicines?|medications?|pills?|doses?|tablets?|medicinas|medicamentos|pastillas|dosis)"
)
_ALL = re.compile(
    r"^(?!.*\b(but|except|rest|others?|menos|excepto|salvo|dem[aá]s|otr[oa]s)\b).*("
    r"\b(gave|given|give|got|took|taken|di|dimos|dado|dio|dieron|tom[oó])\W+"
    r"((him|her|them|it|le|se|la|lo|las|los)\W+)?(all|everything|each|tod[oa]s?)\b"
    r"|\b(all|every|each|tod[oa]s|cada)\s+(of\s+)?((the|his|her|its|our|las|los|sus)\s+)?"
    + _MEDS
    + r"\b|^\W*((yes|s[ií])\W+)?(all|everything|tod[oa]s?)(\W+(given|done|dad[oa]s?))?\W*$)",
    re.IGNORECASE | re.DOTALL,
)
"""Words by which every dose of the round was given, and not those alone that still wait."""


def by_medicine(
    chart: Chart, lines: Sequence[Line], seen: Observation, moment: datetime, text: str
) -> list[Observation]:
    """A dose with no name is every dose that waits, "all" of them what was told as not given
    too; with a name, as the plan writes it."""
    if seen.med is not None:
        for medicine in chart.plan.medicines:
            if medicine.name.casefold() == seen.med.casefold():
                return [replace(seen, med=medicine.name)]
        kinds = _KINDS.get(seen.med.casefold(), ())
        of_it = [one.name for one in chart.plan.medicines if one.kind in kinds]
        return [replace(seen, med=of_it[0])] if len(of_it) == 1 else [seen]
    waiting = [line.item.med for line in lines if line.item.med]
    if seen.value == "given" and seen.count is None and _ALL.search(text):
        at = wall_time(chart, moment, seen.at)
        waiting += [one.name for one in chart.plan.medicines if _not_given(chart, one, at)]
    if not waiting and len(chart.plan.medicines) == 1:
        waiting = [chart.plan.medicines[0].name]
    if not waiting and seen.value == "given":
        # "I gave her the pills" when all are noted: the same ones, or once more? Asked.
        waiting = [
            medicine.name
            for medicine in chart.plan.medicines
            if (line := line_for(chart, medicine.name, moment)) and line.choice == "given"
        ]
    names = list(dict.fromkeys(waiting))
    if seen.value == "given" and seen.count == len(names) > 1:
        seen = replace(seen, count=None)  # "all three": one of each
    return [replace(seen, med=med) for med in names] or [seen]


_KINDS: dict[str, tuple[MedicineClass, ...]] = {
    "antibiotic": ("antibiotic",),
    "painkiller": ("pain relief", "anti-inflammatory"),
    "anti-inflammatory": ("anti-inflammatory",),
}
"""What a medicine may be called, where the plan has but one of the kind."""


def _not_given(chart: Chart, medicine: Medicine, at: datetime) -> bool:
    """Whether the dose of about then was told as not given."""
    line = line_for(chart, medicine.name, at)
    return line is not None and line.state == "answered" and line.choice != "given"


def _when_told(text: str) -> str:
    """Of a dose without a clock time: ``now``, ``then`` (when it was due), or ``unsure``."""
    if not _EARLIER.search(text) or _JUST.search(text):
        return "now"
    return "unsure" if _LATE.search(text) else "then"


def _asked_when(ctx: AtHome, chart: Chart, line: Line, follows: Follows) -> bool:
    """To be asked when it was given, as of a late tap. False where that cannot be asked now."""
    sheet = chart.sheet(line.prompt)
    if sheet is None or not late.is_late(ctx, sheet, line):
        return False
    if ctx.standing(chart).holds_on(line.item) or ctx.standing(chart).death_told or chart.over:
        return False
    follows.when.append(line)
    return True


def ask_when(ctx: AtHome, out: Effects, chart: Chart, person: Person, follows: Follows) -> None:
    """Ask when the doses were given of which the words leave it open: once for each prompt."""
    for sheet in chart.sheets:
        lines = [line for line in follows.when if line.prompt == sheet.id]
        if lines:
            late.ask_when(ctx, out, chart, person, sheet, lines, follows.source)


def _bound(
    ctx: AtHome, chart: Chart, seen: Observation, follows: Follows, line: Line
) -> datetime | None:
    """When the dose of a prompt that was quoted was given; None where it must be asked."""
    due = min(line.item.slot_at or follows.moment, follows.moment)
    if seen.at is not None:
        return wall_time(chart, min(due + late.AFTER, follows.moment), seen.at)
    waits = line.state in ("open", "unanswered")
    told_then = seen.value != "given" or _when_told(follows.text) == "then"
    if not waits or told_then or not _asked_when(ctx, chart, line, follows):
        return due
    return None


def dose_told(
    ctx: AtHome, out: Effects, chart: Chart, person: Person, seen: Observation, follows: Follows
) -> bool:
    """One dose in words. False when it may be the same dose that someone else noted, or when
    it was given is not plain: then it is asked about, and nothing is kept yet."""
    moment, lang = follows.moment, person.lang
    at = wall_time(chart, moment, seen.at)
    line: Line | None = None
    if seen.med and seen.value in ("missed", "refused", "vomited_up"):
        line = line_behind(chart, seen.med, moment)
        latest = latest_come(chart, seen.med, moment)
        if seen.value == "missed" and latest and latest.choice == "given":
            line = line if _EARLIER.search(follows.text) else latest
    elif seen.med:
        behind = line_behind(chart, seen.med, moment) if seen.at is None else None
        waits = behind is not None and behind.state in ("open", "unanswered")
        line = behind if waits else line_for(chart, seen.med, at)
        if waits and behind and behind.item.slot_at:
            match _when_told(follows.text):
                case "then":  # "this morning": about when it was due
                    at = min(behind.item.slot_at, moment)
                case "unsure" if seen.value == "given" and _asked_when(ctx, chart, behind, follows):
                    return False
                case _:
                    pass
        if waits and line is not None and seen.value == "given":
            line = served(chart, line, at)
    quoted = follows.of_quoted(seen.med)
    if quoted is not None and line != quoted and not _JUST.search(follows.text):
        bound = _bound(ctx, chart, seen, follows, quoted)
        if bound is None:
            return False
        line, at = quoted, bound
    if seen.value == "doubled":
        return True  # the medicine is held by the rule of a dose given twice
    if line is None:
        if seen.value == "given":
            follows.given(ctx, out, chart, seen.med, at, lang, None)
        return True
    if seen.value == "given":
        if line.state == "answered" and line.choice == "given":
            timed = seen.at is not None
            if twice.is_theirs(line, person, follows.text, at, moment, timed=timed):
                follows.tell.append(twice.witnessed(ctx, out, chart, person, line, at))
            else:
                twice.ask_same(ctx, out, chart, person, line, at)
            return False
        if line.choice == "missed":
            follows.tell += given_after_all(ctx, out, chart, person, line)
        follows.mark(line, "given", person, at)
        follows.given(ctx, out, chart, line.item.med, at, lang, line)
    elif seen.value == "missed" and line.choice == "given":
        tell, more = not_given(ctx, out, chart, person, line)
        follows.tell += tell
        follows.more += more
        return False
    elif seen.value in ("missed", "refused"):
        if line.state != "answered":
            follows.mark(line, seen.value, person, at)
        following = next_words(ctx, chart, line, lang)
        follows.tell.append(ctx.words.say("dose_missed", lang, next=following).strip())
    return True


def at_its_hour(chart: Chart, seen: Observation, moment: datetime) -> Observation:
    """A dose at the hour that is written down: of a clock that runs ahead, the present."""
    if seen.at is None:
        return seen
    return replace(seen, at=clock(chart.local(wall_time(chart, moment, seen.at))))


def hour_told(ctx: Context, chart: Chart, lang: Lang) -> Callable[[str], str]:
    """How an hour that was told is said back: an hour still to come today was yesterday's."""

    def said(at: str) -> str:
        local = chart.local(wall_time(chart, ctx.now, at))
        return f"{day_word(local, chart.local(ctx.now), lang)} {at}".strip()

    return said


def tap_dose(
    ctx: AtHome, out: Effects, event: Incoming, person: Person, chart: Chart, place: int, value: str
) -> bool:
    """What became of a dose of the medicine at this place of the plan, told by button after
    words that were not understood. Never of "the medicine": it would keep no gap."""
    medicines = chart.plan.medicines
    if not 0 <= place < len(medicines) or ("dose", value) not in clarify.OFFERED["dose"]:
        return False
    words, lang = ctx.words, person.lang
    if chart.over or ctx.standing(chart).death_told:
        out.answer(event.callback, words.say("tap_over", lang))
        return True
    seen = Observation("dose", value, med=medicines[place].name)
    follows = Follows(tap_source(event.update), "", ctx.now)
    clarify.settle(ctx, out, person.chat)
    if not dose_told(ctx, out, chart, person, seen, follows):
        out.answer(event.callback)
        ask_when(ctx, out, chart, person, follows)
        if follows.tell:
            text = "\n\n".join(follows.tell)
            out.tell(person, Purpose.answer, text, patient=chart.id, topic=AboutPatient(chart.id))
        said = Said(person.name, words.observation(seen, lang), follows.source, by_button=True)
        if follows.more:
            take_note(ctx, out, chart, [], said, person=person, more=follows.more)
        return True
    noted = words.say("noted", lang, what=words.observation(seen, lang))
    out.answer(event.callback, noted)
    out.add(*follows.marks)
    told = words.observation(seen, lang)
    said = Said(person.name, told, follows.source, by_button=True)
    findings = take_note(ctx, out, chart, [seen], said, person=person, more=follows.more)
    advice = advice_for(ctx, chart, findings, lang)
    urgent = purpose_of(findings) is Purpose.urgent
    parts = advice if urgent else [noted, *follows.tell, *advice]
    out.tell(
        person, purpose_of(findings), "\n\n".join(parts), patient=chart.id,
        topic=AboutPatient(chart.id), urgent=bool(findings),
    )  # fmt: skip
    return True
