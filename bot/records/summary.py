"""One page for the medical record: what happened from discharge to now, as values.

The summary says what was told and what was done, never what it means.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from datetime import datetime
from typing import Final

from bot.context.words import Words, date_of
from bot.household.wound import in_words
from bot.measures.covered import Covered, covered_by_doses
from bot.measures.limb import Milestone, first_day
from bot.measures.sessions import sessions_done
from bot.model.settings import Clinic
from bot.model.text import Lang
from bot.model.vocabulary import TOPICS as VOCABULARY
from bot.records.record import Record

from .course import asked_in, course_in
from .labels import TOPICS, full_date, label
from .orders import plan_words, regimen
from .summary_cases import case_row, most_urgent
from .whole import Statement, WholeRecord

WORSE: Final[dict[str, tuple[str, ...]]] = {
    "vomiting": ("no", "yes", "bloody"),
    "licking": ("no", "yes"),
    "seizure": ("no", "yes"),
    "urine": ("normal", "more", "accident", "none", "bloody", "straining"),
    "stool": ("normal", "none", "loose", "straining", "bloody", "black"),
    "gums": ("pink", "yellow", "pale", "blue"),
}
"""Topics whose values the vocabulary does not hold from good to bad (common practice)."""
MOST_CHANGES: Final = 6
QUOTED: Final = 150
"""Characters of a note that the page shows."""
CHARTS: Final = ("weight_bearing", "pain")


@dataclass(frozen=True, slots=True)
class Table:
    """A heading, the names of its columns, and its rows."""

    title: str
    columns: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


@dataclass(frozen=True, slots=True)
class Strip:
    """One topic over the days: ``points`` are (day, level), level 0 the best."""

    title: str
    levels: tuple[str, ...]
    points: tuple[tuple[int, int], ...]


@dataclass(frozen=True, slots=True)
class Summary:
    """Everything on the page, in words already."""

    lang: Lang
    practice: str
    title: str
    patient: str
    facts: tuple[tuple[str, str], ...]
    told: Table
    milestones: tuple[tuple[str, str], ...]
    medicines: Table
    sessions: Table
    changes: Table
    more_changes: str
    cases: Table
    more_cases: str
    gaps: str
    strips: tuple[Strip, ...]
    case_days: tuple[int, ...]
    last_day: int
    caution: str
    seal: str


def summarise(
    record: WholeRecord, now: datetime, words: Words, lang: Lang, clinic: Clinic | None = None
) -> Summary:
    """The page of ``record`` as it stands at ``now`` (aware UTC)."""
    plan = record.plan
    end = record.ended_at or now
    cases = most_urgent(record.cases)
    left = len(record.cases) - len(cases)
    changes = _changes(record)
    earlier = len(changes) - MOST_CHANGES
    return Summary(
        lang=lang,
        practice=f"{clinic.name}, {clinic.phone}" if clinic else "",
        title=label("title", lang),
        patient=f"{plan.patient} · {label(plan.species, lang)}, {plan.weight_kg:g} kg",
        facts=_facts(record, now, lang),
        told=_told(record, words, lang),
        milestones=_milestones(record, now, words, lang),
        medicines=_medicines(record, end, lang),
        sessions=_sessions(record, lang),
        changes=Table(
            label("changes", lang),
            (label("when", lang), label("who", lang), label("what", lang)),
            tuple(_change_row(record, one, lang) for one in changes[-MOST_CHANGES:]),
        ),
        more_changes=label("more_changes", lang, n=earlier) if earlier > 0 else "",
        cases=Table(
            label("cases", lang),
            (label("when", lang), label("why", lang), label("done_about", lang)),
            tuple(case_row(record, case, words, lang) for case in cases),
        ),
        more_cases=label("more_cases", lang, n=left) if left else "",
        gaps=_gaps(record, lang),
        strips=_strips(record, words, lang),
        case_days=tuple(record.day(case.opened_at) for case in record.cases),
        last_day=max(1, record.day(end)),
        caution=label("told", lang),
        seal=seal_line(record, now, lang),
    )


def seal_line(record: WholeRecord, now: datetime, lang: Lang) -> str:
    """When it was made, from what, and the hash that a later check can be held against."""
    local = record.local(now)
    at = f"{full_date(local.date(), lang)} {local:%H:%M} ({record.plan.zone})"
    if record.head is None:
        return label("nothing_sealed", lang, at=at)
    return label(
        "seal", lang, at=at, n=len(record.log), entry=record.head.entry, hash=record.head.hash
    )


def _facts(record: WholeRecord, now: datetime, lang: Lang) -> tuple[tuple[str, str], ...]:
    plan = record.plan
    ended = record.ended_at
    course = label(
        record.state, lang, day=record.day(ended or now),
        date=full_date(record.date(ended or now), lang),
    )  # fmt: skip
    heard = label("never", lang)
    if record.last_heard is not None:
        local = record.local(record.last_heard)
        heard = f"{full_date(local.date(), lang)} {local:%H:%M}"
    carers = ", ".join(dict.fromkeys(one.name for one in record.carers)) or plan.owner
    return (
        (label("procedure", lang), plan.procedure),
        (label("surgery", lang), full_date(plan.surgery, lang)),
        (label("clinician", lang), plan.clinician),
        (label("home", lang), f"{full_date(plan.home.date(), lang)} {plan.home:%H:%M}"),
        (label("carers", lang), carers),
        (label("course", lang), course),
        (label("protocol", lang), f"{plan.protocol} {plan.protocol_version or ''}".strip()),
        (label("heard", lang), heard),
    )


def rank(about: str, value: str) -> int:
    """How bad a value is among those of its topic; 0 is the best."""
    return WORSE.get(about, VOCABULARY[about]).index(value)


def _told(record: WholeRecord, words: Words, lang: Lang) -> Table:
    rows = []
    for topic, name in TOPICS.items():
        said = [one for one in record.standing if one.observation.about == topic]
        if not said:
            continue
        last = said[-1]
        worst = max(said, key=lambda one: rank(topic, one.observation.value))
        worse = rank(topic, worst.observation.value) > rank(topic, last.observation.value)
        rows.append(
            (name.say(lang), _seen(last, words, lang),
             _seen(worst, words, lang) if worse else "")
        )  # fmt: skip
    columns = (label("topic", lang), label("last", lang), label("worst", lang))
    return Table(label("told_now", lang), columns, tuple(rows))


def _seen(one: Statement, words: Words, lang: Lang) -> str:
    unsure = f" ({label('unsure', lang)})" if one.observation.unsure else ""
    day = label("day", lang, day=one.noted.day)
    return f"{words.observation(one.observation, lang)}{unsure}, {day}"


def _milestones(
    record: WholeRecord, now: datetime, words: Words, lang: Lang
) -> tuple[tuple[str, str], ...]:
    course = course_in(record, now)
    found: list[tuple[str, str]] = []
    milestones: tuple[Milestone, ...] = ("toe_touching", "full")
    for milestone in milestones:
        first = first_day(course, milestone)
        when = label("day", lang, day=f"{first.time:g}") if first.seen else label("not_yet", lang)
        found.append((label(milestone, lang), when))
    days = Counter(record.day(one.at) for one in record.log if one.kind == "picture")
    shown = ", ".join(str(day) for day in sorted(days)[:12])
    if shown:
        count = days.total()
        found.append((label("pictures", lang), f"{count} ({label('day', lang, day=shown)})"))
    found += [
        (label("wound_check", lang, day=one.day), in_words(words, one.told, lang))
        for one in record.wounds
        if one.told is not None
    ]
    return tuple(found)


def _medicines(record: WholeRecord, now: datetime, lang: Lang) -> Table:
    asked = [one for one in asked_in(record) if one.kind == "dose"]
    covered = covered_by_doses(asked)
    rows = []
    for medicine in record.plan.medicines:
        of = [one for one in asked if one.name == medicine.name]
        due = [one for one in of if one.state in ("answered", "unanswered")]
        given = sum(one.choice == "given" for one in due)
        silent = sum(one.state == "unanswered" for one in due)
        if medicine.as_needed:
            told = sum(
                one.observation.about == "dose" and one.observation.value == "given"
                and one.observation.med == medicine.name for one in record.standing
            )  # fmt: skip
            counts = (str(told), "", "", "")
        else:
            counts = (
                label("of", lang, part=given, whole=len(due)), str(len(due) - given - silent),
                str(silent), _share(covered.get(medicine.name), lang),
            )  # fmt: skip
        rows.append((f"{medicine.name}: {medicine.amount.say(lang)}",
                     regimen(record, medicine, now, lang), *counts))  # fmt: skip
    columns = ("medicine", "regimen", "given", "missed", "not_told", "covered")
    return Table(label("medicines", lang), tuple(label(key, lang) for key in columns), tuple(rows))


def _share(covered: Covered | None, lang: Lang) -> str:
    if covered is None or covered.ratio is None:
        return ""
    return f"{label('of', lang, part=covered.covered, whole=covered.days)} ({covered.ratio:.0%})"


def _sessions(record: WholeRecord, lang: Lang) -> Table:
    """By the name that the household reads; activities of one name are one row."""
    sums: dict[str, list[int]] = {}
    for one in sessions_done(asked_in(record)):
        counts = sums.setdefault(_name_of(record, one.name, lang), [0, 0, 0, 0])
        for place, n in enumerate((one.done, one.due, one.skipped, one.not_told)):
            counts[place] += n
    rows = tuple(
        (name, label("of", lang, part=done, whole=due), str(skipped), str(silent))
        for name, (done, due, skipped, silent) in sorted(sums.items())
    )
    columns = ("session", "done", "skipped", "not_told")
    return Table(label("sessions", lang), tuple(label(key, lang) for key in columns), rows)


def _name_of(record: WholeRecord, activity: str, lang: Lang) -> str:
    """What stands before the colon of an activity's text; its id where there is none."""
    for one in record.protocol.activities:
        name, colon, _ = one.text.say(lang).partition(":")
        if one.id == activity and colon and len(name) <= 30:
            return name
    return activity.replace("-", " ")


def _changes(record: WholeRecord) -> list[Record]:
    """What people changed in the plan, and their notes; a case's notes stand with it."""
    return [
        one
        for one in record.log
        if one.author != "bot"
        and (one.kind == "plan" or (one.kind == "note" and "case" not in one.data))
    ]


def _change_row(record: WholeRecord, one: Record, lang: Lang) -> tuple[str, str, str]:
    local = record.local(one.at)
    day = label("day", lang, day=record.day(one.at))
    words = plan_words(record, one, lang)
    if len(words) > QUOTED:
        words = words[: QUOTED - 1].rstrip() + "…"
    return f"{day}, {date_of(local, lang)} {local:%H:%M}", one.author, words


def _gaps(record: WholeRecord, lang: Lang) -> str:
    asked = [one for one in asked_in(record) if one.state in ("answered", "unanswered")]
    silent = sum(one.state == "unanswered" for one in asked)
    unclear = sum(one.kind == "unclear" for one in record.log)
    corrected = sum(not one.stands for one in record.statements)
    parts = []
    if silent:
        parts.append(label("gap_unanswered", lang, n=silent, of=len(asked)))
    if unclear:
        parts.append(label("gap_unclear", lang, n=unclear))
    if corrected:
        parts.append(label("gap_corrected", lang, n=corrected))
    return "; ".join(parts) or label("gap_none", lang)


def _strips(record: WholeRecord, words: Words, lang: Lang) -> tuple[Strip, ...]:
    found = []
    for topic in CHARTS:
        points = tuple(
            (one.noted.day, rank(topic, one.observation.value))
            for one in record.standing
            if one.observation.about == topic
        )
        if points:
            levels = tuple(words.seen[topic][value].say(lang) for value in VOCABULARY[topic])
            found.append(Strip(TOPICS[topic].say(lang), levels, points))
    return tuple(found)
