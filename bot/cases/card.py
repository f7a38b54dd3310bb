"""A case as staff see it: who, how urgent, the own words, why, and what can be done."""

from __future__ import annotations

from datetime import datetime
from typing import Any
from zoneinfo import ZoneInfo

from bot.context.contexts import Context
from bot.context.words import clock, date_of, day_word, when
from bot.model.action import OnCase, OnPlan
from bot.model.chart import Case, Chart
from bot.model.chat import Button
from bot.model.effects import Card, CaseChange, Effects, Rows
from bot.model.observation import Observation
from bot.model.steps import AskApart, CaseAct, CaseStep, OfCourse, Outcome
from bot.model.text import Lang
from bot.model.topic import AboutCase
from bot.model.urgency import Urgency
from bot.model.word_of_death import tells_death
from bot.standing.standing import Emergency, Over, PatientState, standing
from bot.standing.words import held_items

RECENT = 8
"""How many of the latest observations stand in a case."""
ENTRIES = 3
"""How many of the latest messages on the matter stand in a case."""

_SPECIES_ES = {"dog": "perro", "cat": "gato"}


NOT_KNOWN_YET = None
"""What an entry holds of what the household was told, until the event has ended."""
AT_MOST = 700
"""So many letters of it stand on a card."""


def told_in(body: dict[str, Any], told: str) -> dict[str, Any]:
    """The entries of this event with what the household was told in it."""
    if all(entry["told"] is not NOT_KNOWN_YET for entry in body.get("entries", ())):
        return body
    entries = [
        {**entry, "told": told} if entry["told"] is NOT_KNOWN_YET else entry
        for entry in body["entries"]
    ]
    return {**body, "entries": entries}


def write_card(ctx: Context, out: Effects, card: Card) -> None:
    """The card as a message to each of its chats."""
    lang, case = ctx.clinic.language, card.case
    text = case_text(ctx, card.chart, case, lang)
    if card.first:
        text = f"{card.first}\n{text.partition(chr(10))[2]}"
    for chat in card.chats:
        out.say(
            chat,
            text,
            buttons=case_buttons(ctx, chat, case, lang),
            topic=AboutCase(case.id),
            patient=card.patient,
            dedupe=f"{card.key}:{chat}",
            urgent=case.urgency is Urgency.emergency,
            quiet=card.quiet,
        )


def case_head(ctx: Context, chart: Chart, case: CaseChange | Case, lang: Lang) -> str:
    """One line: how urgent, who, which day."""
    return ctx.words.say(
        "case_head",
        lang,
        urgency=ctx.words.say(f"urgency_{case.urgency.name}", lang),
        name=chart.name,
        species=chart.plan.species if lang == "en" else _SPECIES_ES[chart.plan.species],
        day=chart.day(ctx.now),
        case=case.id,
    )


def case_text(ctx: Context, chart: Chart, case: CaseChange | Case, lang: Lang) -> str:
    """The whole case: head, plan, the own words and what was understood, rule and why,
    recent observations, what the owner was told, deadline, a way to phone."""
    words, plan = ctx.words, chart.plan
    surgery = datetime.combine(plan.surgery, datetime.min.time())
    lines = [
        case_head(ctx, chart, case, lang),
        words.say(
            "case_plan", lang, procedure=plan.procedure, surgery=date_of(surgery, lang),
            clinician=plan.clinician,
        ),
        "",
    ]  # fmt: skip
    entries = case.body.get("entries", [])
    for entry in _shown(entries, case.urgency.name):
        lines += _entry_lines(ctx, chart, entry, lang)
    lines += ["", *_held(ctx, chart, case, lang), _recent(ctx, chart, lang)]
    if entries and (told := entries[-1]["told"]):
        lines.append(words.say("case_told", lang, text=told))
    if case.state in ("open", "acknowledged"):
        here = ZoneInfo(ctx.clinic.zone)
        by = when(case.deadline.astimezone(here), ctx.now.astimezone(here), lang)
        lines.append(words.say("case_deadline", lang, when=by))
    people = ", ".join(person.name for person in chart.people) or plan.owner
    lines.append(
        words.say("case_phone", lang, phone=f"{people}, {plan.phone}")
        if plan.phone
        else words.say("case_phone_none", lang)
    )
    if chart.people and case.state != "closed":
        lines.append(words.say("case_answer_hint", lang))
    return "\n".join(lines)


def _held(ctx: Context, chart: Chart, case: CaseChange | Case, lang: Lang) -> list[str]:
    """What the household is not asked to do for now, since when and why."""
    cases = [*(one for one in chart.cases if one.id != case.id), case]
    now = standing(chart.plan, PatientState(chart.state), chart.holds, cases, ctx.now)
    if isinstance(now.mode, Over):
        return []
    local = chart.local(ctx.now)
    items = held_items(
        now.holds, chart.plan, lang, ctx.words,
        lambda at: f"{day_word(chart.local(at), local, lang)} {clock(chart.local(at))}".strip(),
    )  # fmt: skip
    if isinstance(now.mode, Emergency):
        items.insert(0, ctx.words.say("case_held_emergency", lang))
    return [ctx.words.say("case_held", lang, items="; ".join(items))] if items else []


def _entry_lines(ctx: Context, chart: Chart, entry: dict[str, Any], lang: Lang) -> list[str]:
    words = ctx.words
    at = clock(chart.local(datetime.fromisoformat(entry["at"])))
    key = "case_tapped" if entry["by_button"] else "case_said"
    lines: list[str] = []
    if entry["text"]:
        lines.append(words.say(key, lang, by=entry["by"], at=at, text=entry["text"][:700]))
    seen = [Observation.from_dict(one) for one in entry["seen"]]
    if seen and not entry["by_button"]:
        what = words.observations(seen, lang)
        lines.append(words.say("case_understood", lang, what=what))
    lines += [
        words.say("case_why", lang, because=finding[lang], rule=finding["rule"])
        for finding in entry["findings"]
    ]
    return lines


def _recent(ctx: Context, chart: Chart, lang: Lang) -> str:
    words, today = ctx.words, chart.day(ctx.now)
    recent = [
        f"{clock(chart.local(noted.at)) if noted.day == today else f'd{noted.day}'} "
        f"{words.observation(noted.observation, lang)}"
        for noted in chart.history[-RECENT:]
    ]
    if not recent:
        return words.say("case_recent_none", lang)
    return words.say("case_recent", lang, items="; ".join(reversed(recent)))


def _shown(entries: list[dict[str, Any]], urgency: str) -> list[dict[str, Any]]:
    """The latest entries; before them, what made the case as urgent as it is."""
    latest = entries[-ENTRIES:]
    cause = next((one for one in entries if one["urgency"] == urgency and one["findings"]), None)
    return latest if cause is None or cause in latest else [cause, *latest[1:]]


def case_buttons(ctx: Context, chat: int, case: CaseChange | Case, lang: Lang) -> Rows:
    """Take it, answer it, close it: what fits its state."""

    def made(key: str, act: CaseAct) -> Button:
        return ctx.button(chat, ctx.words.say(key, lang), OnCase(case.id, act))

    if case.state == "closed":
        return ()
    first = [made("case_ack", CaseStep.take)] if case.state == "open" else []
    rest = (made("case_answers", CaseStep.answers), made("case_close", CaseStep.close))
    rows: Rows = ((*first, *rest),)
    if tells_death(case.body):
        # Both lead into a change of the plan with its reason, in a message of its own.
        asked = [
            ctx.button(chat, ctx.words.say(key, lang), OnPlan(case.patient, AskApart(change)))
            for key, change in (("case_died", OfCourse.died), ("case_not_dead", OfCourse.alive))
        ]
        rows = (tuple(asked), *rows)
    return rows


def outcome_buttons(ctx: Context, chat: int, case: Case, lang: Lang) -> Rows:
    """How did it end? One tap closes the case with this outcome."""
    made = [
        ctx.button(chat, ctx.words.say(f"outcome_{name}", lang), OnCase(case.id, name))
        for name in Outcome
    ]
    back = ctx.button(chat, ctx.words.say("case_back", lang), OnCase(case.id, CaseStep.back))
    return (tuple(made[:2]), tuple(made[2:4]), (made[4], back))
