"""Cases: a matter that staff must look at, from the first page to its closing.

One open case per patient and matter: further findings join it, a worse one raises it
and pages anew. The paging policy is frozen into the case when it opens.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from bot.model.finding import Finding
from bot.model.settings import Clinic, PagingStep
from bot.model.text import Lang
from bot.model.urgency import Urgency

from .buttons import button
from .outcome import CaseChange, Due, Entry, Outcome, Rows
from .phones import what_happens_now
from .scene import Case, Chart, Desk, Scene, next_opening
from .words import clock, date_of

_RECENT = 8
SILENCE = "silence"
"""The matter of a case that is about nothing but an owner who does not answer."""


@dataclass(frozen=True, slots=True)
class Said:
    """Whose words led to a finding; ``by_button`` when they were tapped."""

    by: str
    text: str
    source: str
    by_button: bool = False


def policy_for(clinic: Clinic, urgency: Urgency) -> PagingStep:
    """How a case of this urgency is paged."""
    return {
        Urgency.emergency: clinic.paging.emergency,
        Urgency.same_day: clinic.paging.same_day,
    }.get(urgency, clinic.paging.next_day)


def next_page(
    clinic: Clinic, urgency: Urgency, policy: PagingStep, now: datetime, pages: int = 0
) -> datetime:
    """When an unacknowledged case is paged again: an emergency by day and night, for ever
    at the same pace; the others in opening hours, the wait doubling after each person's
    ``pages_each`` pages, up to a day. It never stops."""
    wait = timedelta(minutes=policy.again_after_minutes)
    if urgency is Urgency.emergency:
        return now + wait
    doubled = wait * 2 ** min(pages // policy.pages_each, 10)
    return next_opening(clinic, now + min(doubled, timedelta(days=1)))


def paged(desks: Sequence[Desk], policy: PagingStep, pages: int) -> list[Desk]:
    """The staff chats that page number ``pages`` (from 0) goes to: the clinic's chat
    always, one person more after every ``pages_each`` pages."""
    ranks = sorted({desk.rank for desk in desks})[: 1 + pages // policy.pages_each]
    return [desk for desk in desks if desk.rank in ranks]


def raise_findings(
    scene: Scene, out: Outcome, chart: Chart, findings: Sequence[Finding], said: Said
) -> Urgency:
    """Open, join or raise a case for each finding above ``none``; the highest urgency.

    A case per matter, but only one message to staff for one reply: the most urgent.
    """
    urgent = [finding for finding in findings if finding.urgency > Urgency.none]
    if not urgent:
        return Urgency.none
    urgent.sort(key=lambda finding: -finding.urgency)
    for finding in urgent:
        out.add(
            Entry(
                "finding",
                "rule",
                finding.because.say(scene.clinic.language),
                chart.id,
                {"rule": finding.rule, "urgency": finding.urgency.name, "matter": finding.matter},
            )
        )
    lead = urgent[0]
    case = next((one for one in chart.cases if one.matter == lead.matter), None)
    entry = _entry(scene, chart, urgent, said)
    if case is None:
        number = chart.next_case + sum(
            isinstance(c, CaseChange) and c.pages == 0 and c.state == "open" for c in out.changes
        )
        change = CaseChange(
            id=f"{chart.id}-{number}",
            patient=chart.id,
            matter=lead.matter,
            urgency=lead.urgency,
            state="open",
            opened_at=scene.now,
            pages=0,
            policy=policy_for(scene.clinic, lead.urgency),
            body={"entries": [entry]},
        )
        _announce(scene, out, chart, change, "")
    else:
        worse = lead.urgency > case.urgency
        change = CaseChange(
            id=case.id,
            patient=chart.id,
            matter=case.matter,
            urgency=max(lead.urgency, case.urgency),
            state="open" if worse else case.state,
            opened_at=case.opened_at,
            pages=0 if worse else case.pages,
            policy=policy_for(scene.clinic, lead.urgency) if worse else case.policy,
            body={**case.body, "entries": [*case.body.get("entries", []), entry]},
        )
        _announce(scene, out, chart, change, "case_raised" if worse else "case_more")
    out.add(change)
    if change.state == "open":
        again = next_page(scene.clinic, change.urgency, change.policy, scene.now)
        out.add(Due(f"page:{change.id}", "page", again, chart.id, {"case": change.id}))
    return lead.urgency


def _entry(scene: Scene, chart: Chart, findings: Sequence[Finding], said: Said) -> dict[str, Any]:
    """What staff see of this moment, kept in the case."""
    return {
        "at": scene.now.isoformat(),
        "by": said.by,
        "text": said.text,
        "by_button": said.by_button,
        "source": said.source,
        "told": (
            ""
            if said.by == "bot"
            else what_happens_now(scene, chart, findings[0].urgency, scene.clinic.language)
        ),
        "day": chart.day(scene.now),
        "urgency": findings[0].urgency.name,
        "findings": [
            {"rule": f.rule, "urgency": f.urgency.name, "en": f.because.en, "es": f.because.es}
            for f in findings
        ],
    }


def case_head(scene: Scene, chart: Chart, case: CaseChange | Case, lang: Lang) -> str:
    """One line: how urgent, who, which day."""
    return scene.words.say(
        "case_head",
        lang,
        urgency=scene.words.say(f"urgency_{case.urgency.name}", lang),
        name=chart.name,
        species=chart.plan.species if lang == "en" else _SPECIES_ES[chart.plan.species],
        day=chart.day(scene.now),
        case=case.id,
    )


_SPECIES_ES = {"dog": "perro", "cat": "gato"}


def case_text(scene: Scene, chart: Chart, case: CaseChange | Case, lang: Lang) -> str:
    """The whole case for staff: head, plan, own words, rule and why, recent
    observations, what the owner was told, a way to phone."""
    words = scene.words
    plan = chart.plan
    lines = [
        case_head(scene, chart, case, lang),
        words.say(
            "case_plan",
            lang,
            procedure=plan.procedure,
            surgery=date_of(datetime.combine(plan.surgery, datetime.min.time()), lang),
            clinician=plan.clinician,
        ),
        "",
    ]
    for entry in case.body.get("entries", [])[-3:]:
        at = clock(chart.local(datetime.fromisoformat(entry["at"])))
        key = "case_tapped" if entry["by_button"] else "case_said"
        if entry["text"]:
            lines.append(words.say(key, lang, by=entry["by"], at=at, text=entry["text"][:700]))
        lines += [
            words.say("case_why", lang, because=finding[lang], rule=finding["rule"])
            for finding in entry["findings"]
        ]
    lines.append("")
    recent = [
        f"{clock(chart.local(noted.at))} {words.observation(noted.observation, lang)}"
        if noted.day == chart.day(scene.now)
        else f"d{noted.day} {words.observation(noted.observation, lang)}"
        for noted in chart.history[-_RECENT:]
    ]
    lines.append(
        words.say("case_recent", lang, items="; ".join(reversed(recent)))
        if recent
        else words.say("case_recent_none", lang)
    )
    if told := case.body["entries"][-1]["told"]:
        lines.append(words.say("case_told", lang, text=told))
    people = ", ".join(person.name for person in chart.people) or plan.owner
    phone = f"{people}, {plan.phone}" if plan.phone else ""
    lines.append(
        words.say("case_phone", lang, phone=phone) if phone else words.say("case_phone_none", lang)
    )
    if chart.people:
        lines.append(words.say("case_answer_hint", lang))
    return "\n".join(lines)


def case_buttons(scene: Scene, chat: int, case: CaseChange | Case, lang: Lang) -> Rows:
    """Take it, close it: what fits its state."""
    ack = button(scene.secret, chat, scene.words.say("case_ack", lang), f"c.{case.id}.ack")
    close = button(scene.secret, chat, scene.words.say("case_close", lang), f"c.{case.id}.close")
    if case.state == "open":
        return ((ack, close),)
    return ((close,),) if case.state == "acknowledged" else ()


def _announce(scene: Scene, out: Outcome, chart: Chart, case: CaseChange, more: str) -> None:
    """Tell the staff chats whose turn it is."""
    lang = scene.clinic.language
    head = case_head(scene, chart, case, lang)
    text = case_text(scene, chart, case, lang)
    if more:
        first = scene.words.say(
            more,
            lang,
            head=head,
            case=case.id,
            urgency=scene.words.say(f"urgency_{case.urgency.name}", lang),
        )
        text = f"{first}\n{text.partition(chr(10))[2]}"
    quiet = case.urgency is not Urgency.emergency and not scene.open_now()
    for desk in paged(scene.desks, case.policy, case.pages):
        out.say(
            desk.chat,
            text,
            buttons=case_buttons(scene, desk.chat, case, lang),
            topic=f"case:{case.id}",
            patient=chart.id,
            dedupe=f"case:{case.id}:{len(case.body['entries'])}:{desk.chat}",
            urgent=case.urgency is Urgency.emergency,
            quiet=quiet,
        )


def page_again(scene: Scene, out: Outcome, chart: Chart, case: Case) -> None:
    """A case that nobody has taken: page again, and the next person when it is time."""
    if case.state != "open":
        return
    pages = case.pages + 1
    lang = scene.clinic.language
    head = case_head(scene, chart, case, lang)
    first = scene.words.say("case_page", lang, n=pages + 1, head=head)
    text = f"{first}\n{case_text(scene, chart, case, lang).partition(chr(10))[2]}"
    reached = paged(scene.desks, case.policy, pages)
    for desk in reached:
        out.say(
            desk.chat,
            text,
            buttons=case_buttons(scene, desk.chat, case, lang),
            topic=f"case:{case.id}",
            patient=chart.id,
            dedupe=f"page:{case.id}:{len(case.body['entries'])}:{pages}:{desk.chat}",
            urgent=case.urgency is Urgency.emergency,
        )
    out.add(
        change_case(case, pages=pages),
        Due(
            f"page:{case.id}",
            "page",
            next_page(scene.clinic, case.urgency, case.policy, scene.now, pages),
            chart.id,
            {"case": case.id},
        ),
        Entry(
            "page",
            "bot",
            first,
            chart.id,
            {"case": case.id, "to": [desk.name for desk in reached]},
        ),
    )


def change_case(
    case: Case, *, state: str | None = None, pages: int | None = None, by: str | None = None
) -> CaseChange:
    """The case as it is to stand after a change."""
    return CaseChange(
        id=case.id,
        patient=case.patient,
        matter=case.matter,
        urgency=case.urgency,
        state=state or case.state,
        opened_at=case.opened_at,
        pages=case.pages if pages is None else pages,
        policy=case.policy,
        body=case.body,
        by=by,
    )


def heard_again(scene: Scene, out: Outcome, chart: Chart, by: str) -> None:
    """Someone at home has written again: a case that was only about silence is over."""
    case = next((one for one in chart.cases if one.matter == SILENCE), None)
    if case is None:
        return
    lang = scene.clinic.language
    text = scene.words.say("case_heard_again", lang, by=by, name=chart.name)
    out.add(
        change_case(case, state="closed", by="bot"),
        Entry("case", "bot", text, chart.id, {"case": case.id, "state": "closed"}),
    )
    out.cancel.append(f"page:{case.id}")
    for desk in paged(scene.desks, case.policy, case.pages):
        rules = ", ".join(f["rule"] for e in case.body["entries"] for f in e["findings"])
        out.say(
            desk.chat,
            f"✓ {text} ({rules})",
            topic=f"case:{case.id}",
            patient=chart.id,
            quiet=True,
        )


def tell_of_withdrawal(scene: Scene, out: Outcome, chart: Chart, said: Said) -> bool:
    """The owner took words back: staff hear of it in each case that came from them."""
    told = False
    for case in chart.cases:
        entries = case.body.get("entries", [])
        words = next((e["text"] for e in entries if e["source"] == said.source), None)
        if words is None:
            continue
        told = True
        text = scene.words.say(
            "case_withdrawn", scene.clinic.language, by=said.by, text=words[:300]
        )
        for desk in paged(scene.desks, case.policy, case.pages):
            out.say(desk.chat, text, topic=f"case:{case.id}", patient=chart.id)
        out.add(Entry("case", said.by, text, chart.id, {"case": case.id}))
    return told
