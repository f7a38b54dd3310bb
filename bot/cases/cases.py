"""Cases: a matter that staff must look at, from the first page to its closing.

One case per patient and matter until it is closed: further findings join it, a worse one
raises it and pages anew. Policy and deadline are frozen into the case when it opens.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from bot.cases.card import NOT_KNOWN_YET, case_buttons, case_head, case_text
from bot.context.contexts import Context
from bot.context.opening import deadline, next_opening, weekday
from bot.model.chart import UNREACHED, Case, Chart, Desk
from bot.model.effects import CancelDue, Card, CaseChange, Due, Effects, Entry
from bot.model.evolve import evolve
from bot.model.finding import Finding
from bot.model.ids import CaseId, SourceId
from bot.model.settings import Clinic, PagingStep
from bot.model.topic import AboutCase
from bot.model.urgency import Urgency

SILENCE = "silence"
"""The matter of a case that is about nothing but an owner who does not answer."""
UNCLEAR = "not_understood"
"""The matter of a case that is about words that were not understood."""


@dataclass(frozen=True, slots=True)
class Said:
    """Whose words led to a finding, and the message or button that they came from."""

    by: str
    text: str
    source: SourceId
    by_button: bool = False
    topics: tuple[str, ...] = ()  # what a question was about


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


def chain(ctx: Context) -> list[list[Desk]]:
    """Who is paged, in order: the clinic's own chat, then the people on duty today by
    name, then the further staff chats by rank. Who has no chat with the bot is left out."""
    by_rank: dict[int, list[Desk]] = {}
    for desk in ctx.desks:
        by_rank.setdefault(desk.rank, []).append(desk)
    today = ctx.now.astimezone(ZoneInfo(ctx.clinic.zone)).date()
    on_duty = ctx.clinic.duty.get(weekday(today), ())
    people: list[list[Desk]] = []
    for name in on_duty:
        found = [m for m in ctx.staff if m.name.casefold() == name.casefold() and m.chat]
        people += [[Desk(m.chat or 0, len(people) + 1, m.name, m.lost)] for m in found]
    return [by_rank.get(0, []), *people, *(by_rank[rank] for rank in sorted(by_rank) if rank)]


def paged(ctx: Context, policy: PagingStep, pages: int) -> list[Desk]:
    """The chats that page number ``pages`` (from 0) goes to: the clinic's chat always, one
    person more after every ``pages_each`` pages. Where a chat cannot be reached it is the
    next one's turn at once, and the lost one is tried beside it."""
    turns, groups = 1 + pages // policy.pages_each, chain(ctx)
    there = [group for group in groups if any(desk.lost is None for desk in group)]
    tried = [desk for group in groups[:turns] for desk in group if desk.lost is not None]
    return _each_once([*(there[:turns] or _own_chats(ctx)), tried])


def _own_chats(ctx: Context) -> list[list[Desk]]:
    """Where no chat that is paged can be reached: everybody of the practice who has one."""
    return [[Desk(m.chat, 0, m.name)] for m in ctx.staff if m.chat and m.lost is None]


def _each_once(groups: Sequence[Sequence[Desk]]) -> list[Desk]:
    found: dict[int, Desk] = {}
    for desk in (desk for group in groups for desk in group):
        found.setdefault(desk.chat, desk)
    return list(found.values())


def raise_findings(
    ctx: Context,
    out: Effects,
    chart: Chart,
    findings: Sequence[Finding],
    said: Said,
    seen: Sequence[dict[str, Any]] = (),
) -> CaseChange | None:
    """Open, join or raise a case for findings above ``none``; the case, if there is one.

    One event makes one case, that of its most urgent matter, so that staff get one
    message. While an emergency is open, all joins it. ``seen`` is what was read.
    """
    urgent = sorted(
        (finding for finding in findings if finding.urgency > Urgency.none),
        key=lambda finding: -finding.urgency,
    )
    if not urgent:
        return None
    for finding in urgent:
        data = {
            "rule": finding.rule, "urgency": finding.urgency.name, "matter": finding.matter,
        }  # fmt: skip
        because = finding.because.say(ctx.clinic.language)
        out.add(Entry("finding", "rule", because, chart.id, data))
    lead = urgent[0]
    entry = _entry(ctx, chart, urgent, said, seen)
    known = evolve(chart, out.all, ctx.now)
    case = _joins(ctx, known, out, lead)
    change, more = _opened(ctx, known, lead, entry) if case is None else _joined(
        ctx, case, lead, entry
    )  # fmt: skip
    _announce(ctx, out, chart, change, more)
    _keep(ctx, out, change)
    return change


def _keep(ctx: Context, out: Effects, change: CaseChange) -> None:
    """The case as it stands now, and when it is looked at again."""
    out.add(change)
    if change.state == "open":
        again = next_page(ctx.clinic, change.urgency, change.policy, ctx.now)
        out.add(Due(f"page:{change.id}", "page", again, change.patient, {"case": change.id}))
    if change.deadline > ctx.now:
        data = {"case": change.id}
        out.add(Due(f"deadline:{change.id}", "deadline", change.deadline, change.patient, data))


def _joins(ctx: Context, chart: Chart, out: Effects, lead: Finding) -> Case | None:
    """The case that a finding belongs to: an open emergency, the word of a death, where it
    may be taken back, that of this very event, or the one of its matter. What was not
    understood ("nobody called me") goes to whoever has the most urgent one."""
    emergency = next((c for c in chart.cases if c.urgency is Urgency.emergency), None)
    made = {change.id for change in out.of(CaseChange)}
    own = next((c for c in chart.cases if c.id in made), None)
    death = next((c for c in chart.cases if c.tells_death), None)
    found = emergency or (death if ctx.standing(chart).death_told else None) or own
    found = found or next((c for c in chart.cases if c.matter == lead.matter), None)
    if found is None and lead.matter == UNCLEAR:
        others = [c for c in chart.cases if c.matter != SILENCE]
        found = max(others, key=lambda one: one.urgency, default=None)
    return found


def _opened(
    ctx: Context, chart: Chart, lead: Finding, entry: dict[str, Any]
) -> tuple[CaseChange, str]:
    opened = CaseChange(
        id=CaseId(f"{chart.id}-{chart.next_case}"),
        patient=chart.id,
        matter=lead.matter,
        urgency=lead.urgency,
        state="open",
        opened_at=ctx.now,
        deadline=deadline(ctx.clinic, lead.urgency, ctx.now),
        pages=0,
        policy=policy_for(ctx.clinic, lead.urgency),
        body={"entries": [entry]},
    )
    return opened, ""


def _joined(
    ctx: Context, case: Case, lead: Finding, entry: dict[str, Any]
) -> tuple[CaseChange, str]:
    worse = lead.urgency > case.urgency
    # An answered case must not go deaf: what is as urgent pages anew; what is less, and what can
    # wait for the next working day, is with whoever answered, by the time that it has. In an
    # emergency every word is a new cry.
    again = case.state == "answered"
    level = max(lead.urgency, case.urgency)
    as_urgent = lead.urgency >= max(case.urgency, Urgency.same_day)
    anew = worse or (again and (as_urgent or level is Urgency.emergency))
    state = "open" if anew else "acknowledged" if again else case.state
    by = deadline(ctx.clinic, level if anew else lead.urgency, ctx.now)
    joined = CaseChange(
        id=case.id,
        patient=case.patient,
        matter=case.matter,
        urgency=level,
        state=state,
        opened_at=case.opened_at,
        deadline=by if anew or again else case.deadline,
        pages=0 if anew else case.pages,
        policy=policy_for(ctx.clinic, lead.urgency) if worse else case.policy,
        body={**case.body, "entries": [*case.body.get("entries", []), entry]},
    )
    return joined, "case_raised" if worse else "case_more"


def _entry(
    ctx: Context,
    chart: Chart,
    findings: Sequence[Finding],
    said: Said,
    seen: Sequence[dict[str, Any]],
) -> dict[str, Any]:
    """What staff see of this moment, kept in the case."""
    silent = said.by == "bot"
    return {
        "at": ctx.now.isoformat(),
        "by": said.by,
        "text": said.text,
        "by_button": said.by_button,
        "source": said.source,
        "seen": list(seen),
        "topics": list(said.topics),
        "told": "" if silent else NOT_KNOWN_YET,
        "day": chart.day(ctx.now),
        "urgency": findings[0].urgency.name,
        "findings": [
            {"rule": f.rule, "urgency": f.urgency.name, "en": f.because.en, "es": f.because.es}
            for f in findings
        ],
    }


def _announce(ctx: Context, out: Effects, chart: Chart, case: CaseChange, more: str) -> None:
    """Tell the staff chats whose turn it is; whoever has the case hears of more."""
    lang = ctx.clinic.language
    first = ""
    if more:
        first = ctx.words.say(
            more,
            lang,
            head=case_head(ctx, chart, case, lang),
            case=case.id,
            urgency=ctx.words.say(f"urgency_{case.urgency.name}", lang),
        )
    quiet = case.urgency is not Urgency.emergency and not ctx.open_now()
    chats = tuple(desk.chat for desk in _reached(ctx, case))
    key = f"case:{case.id}:{len(case.body['entries'])}"
    out.add(Card(chart.id, chart, case, chats, key, first, quiet))


def _everyone(ctx: Context) -> list[Desk]:
    groups = chain(ctx)
    there = any(desk.lost is None for group in groups for desk in group)
    return _each_once(groups if there else [*groups, *_own_chats(ctx)])


def _reached(ctx: Context, case: CaseChange) -> list[Desk]:
    """Who hears of more: whoever was paged; of an emergency that was overdue, or that goes on
    while nobody is at the clinic, all."""
    more_at_night = len(case.body["entries"]) > 1 and not ctx.open_now()
    if case.urgency is Urgency.emergency and (case.deadline <= ctx.now or more_at_night):
        return _everyone(ctx)
    return paged(ctx, case.policy, case.pages)


def join_words(
    ctx: Context, out: Effects, chart: Chart, case: Case, said: Said, *, calm: bool = False
) -> None:
    """The household's own words join a case as they are; whoever has it hears of them. After
    an answer of staff they page anew, unless they are ``calm`` (a thank-you, a button)."""
    entry = {
        "at": ctx.now.isoformat(), "by": said.by, "text": said.text, "by_button": said.by_button,
        "source": said.source, "seen": [], "topics": [], "told": NOT_KNOWN_YET,
        "day": chart.day(ctx.now),
        "urgency": case.urgency.name, "findings": [],
    }  # fmt: skip
    current = next((one for one in chart.cases if one.id == case.id), case)
    change = replace(
        change_case(current),
        body={**current.body, "entries": [*current.body.get("entries", []), entry]},
    )
    if change.state == "answered" and not calm:
        by = deadline(ctx.clinic, change.urgency, ctx.now)
        change = replace(change, state="open", pages=0, deadline=by)
        _keep(ctx, out, change)
    else:
        out.add(change)
    _announce(ctx, out, chart, change, "case_more")


def page_again(ctx: Context, out: Effects, chart: Chart, case: Case) -> None:
    """A case that nobody has taken: page again, and the next person when it is time."""
    if case.state != "open":
        return
    pages = case.pages + 1
    lang = ctx.clinic.language
    head = case_head(ctx, chart, case, lang)
    first = ctx.words.say("case_page", lang, n=pages + 1, head=head)
    reached = paged(ctx, case.policy, pages)
    _send_case(ctx, out, chart, case, reached, first, f"page:{pages}")
    again = next_page(ctx.clinic, case.urgency, case.policy, ctx.now, pages)
    out.add(
        change_case(case, pages=pages),
        Due(f"page:{case.id}", "page", again, chart.id, {"case": case.id}),
    )
    if not reached:
        out.add(Entry("not_sent", "bot", first, chart.id, {"case": case.id, "why": "nobody"}))


def overdue(ctx: Context, out: Effects, chart: Chart, case: Case) -> None:
    """The deadline has passed and nobody has answered: everybody in the chain hears it, and
    again by the end of each working day, so that no case is forgotten by who took it. An
    emergency keeps the whole chat to itself: answered, it is told that it is still open."""
    answered = case.state == "answered"
    if case.state == "closed" or (answered and case.urgency is not Urgency.emergency):
        return
    lang = ctx.clinic.language
    who = case.acknowledged_by or ctx.words.say("case_nobody", lang)
    head = case_head(ctx, chart, case, lang)
    key = "case_still_open" if answered else "case_overdue"
    first = ctx.words.say(key, lang, who=who, head=head)
    _send_case(ctx, out, chart, case, _everyone(ctx), first, f"overdue:{ctx.now.date()}")
    again = deadline(ctx.clinic, Urgency.next_day, ctx.now)
    out.add(
        Due(f"deadline:{case.id}", "deadline", again, chart.id, {"case": case.id}),
        Entry("case", "bot", first, chart.id, {"case": case.id, "state": "overdue"}),
    )


def _send_case(
    ctx: Context,
    out: Effects,
    chart: Chart,
    case: Case,
    desks: Sequence[Desk],
    first: str,
    key: str,
) -> None:
    key = f"{key}:{case.id}:{len(case.body['entries'])}"
    chats = tuple(desk.chat for desk in desks)
    out.add(Card(chart.id, chart, change_case(case), chats, key, first))


def change_case(
    case: Case,
    *,
    state: str | None = None,
    pages: int | None = None,
    by: str | None = None,
    outcome: str | None = None,
) -> CaseChange:
    """The case as it is to stand after a change; ``by`` is who brought it to ``state``: who does
    has been reached."""
    body = {key: value for key, value in case.body.items() if by is None or key != UNREACHED}
    return CaseChange(
        id=case.id,
        patient=case.patient,
        matter=case.matter,
        urgency=case.urgency,
        state=state or case.state,
        opened_at=case.opened_at,
        deadline=case.deadline,
        pages=case.pages if pages is None else pages,
        policy=case.policy,
        body=body,
        by=by,
        outcome=outcome,
    )


def quieten(out: Effects, case_id: CaseId, *, closed: bool = False) -> None:
    """No more pages for a case that somebody has; no deadline for one that is closed."""
    out.add(CancelDue(f"page:{case_id}"))
    if closed:
        out.add(CancelDue(f"deadline:{case_id}"))


def heard_again(ctx: Context, out: Effects, chart: Chart, by: str) -> None:
    """Someone at home has written again: a case that was only about silence is over."""
    case = next((one for one in chart.cases if one.matter == SILENCE), None)
    if case is None:
        return
    lang = ctx.clinic.language
    text = ctx.words.say("case_heard_again", lang, by=by, name=chart.name)
    out.add(
        change_case(case, state="closed", by="bot", outcome="heard_again"),
        Entry("case", "bot", text, chart.id, {"case": case.id, "state": "closed"}),
    )
    quieten(out, case.id, closed=True)
    _show_over(ctx, out, chart, case, text)


def _show_over(ctx: Context, out: Effects, chart: Chart, case: Case, text: str) -> None:
    """The cards of a case that nobody need look at any more say so, in their place: nobody is
    called to the chat for it, but for whoever has taken it."""
    closed, lang = change_case(case, state="closed"), ctx.clinic.language
    whole = f"✓ {text}\n{case_text(ctx, chart, closed, lang)}"
    days = range((ctx.now.date() - case.opened_at.date()).days + 1)
    kinds = [
        "case",
        *(f"page:{page}" for page in range(1, case.pages + 1)),
        *(f"overdue:{case.opened_at.date() + timedelta(days=day)}" for day in days),
    ]
    for desk in paged(ctx, case.policy, case.pages):
        buttons = case_buttons(ctx, desk.chat, closed, lang)
        for kind in kinds:
            key = f"{kind}:{case.id}:{len(case.body['entries'])}:{desk.chat}"
            out.edit(desk.chat, key, whole, buttons, patient=chart.id)
        if case.acknowledged_by:
            out.say(desk.chat, f"✓ {text}", topic=AboutCase(case.id), patient=chart.id, quiet=True)


def tell_of_withdrawal(
    ctx: Context, out: Effects, chart: Chart, said: Said, *, undone: bool
) -> bool:
    """The owner took words back, or said others in their place: staff hear of it, and of those,
    in each case that came from them."""
    told = False
    for case in chart.cases:
        entries = case.body.get("entries", [])
        words = next((e["text"] for e in entries if e["source"] == said.source), None)
        if words is None:
            continue
        told = True
        key = "case_withdrawn"
        if said.text:
            key = "case_withdrawn_saying" if undone else "case_corrected"
        text = ctx.words.say(
            key, ctx.clinic.language, by=said.by, text=words[:300], now=said.text[:300]
        )
        for desk in paged(ctx, case.policy, case.pages):
            out.say(desk.chat, text, topic=AboutCase(case.id), patient=chart.id)
        out.add(Entry("case", said.by, text, chart.id, {"case": case.id}))
    return told
