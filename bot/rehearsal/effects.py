"""An ``Outcome`` into the tables, in the same order and with the same meaning as the store
keeps it (``bot/store/apply.py``)."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import datetime
from functools import singledispatch
from typing import Any, cast

from bot.model.chat import Media
from bot.model.observation import Noted
from bot.model.plan import Prompt
from bot.talk import outcome as o
from bot.talk.enrol import AFTER_LAST
from bot.talk.scene import Desk, Member, Person, Picture, Review
from bot.talk.wound import key_of

from .tables import (
    LATER,
    Carer,
    CaseRow,
    DueRow,
    Entry,
    InvitationRow,
    PatientRow,
    Statement,
    Tables,
)

ENDED_DUES = ("prompt", "remind", "unanswered", "silence", "end")
"""What a patient whose course is over is not looked at for any more."""


def apply(tables: Tables, out: o.Outcome, now: datetime) -> None:
    """Keep every change. The messages are the caller's to deliver."""
    for key in out.cancel:
        tables.dues.cancel(key)
    for change in out.changes:
        _keep(change, tables, now)
    for id in out.heard:
        tables.patients[id].last_heard = now
    for patient in tables.patients.values():
        for prompt in out.sent_prompts:
            sheet = patient.sheets.get(prompt)
            if sheet is not None and sheet.sent_at is None:
                patient.set_sheet(replace(sheet, sent_at=now))
        for prompt in out.reminded:
            sheet = patient.sheets.get(prompt)
            if sheet is not None:
                patient.set_sheet(replace(sheet, reminded=True))
    for id in out.end:
        _end(tables, id)
    for id, state in out.states.items():
        if tables.patients[id].state != "ended":
            tables.patients[id].state = state
    for id, person in out.leave:
        carer = tables.patients[id].carers.get(person)
        if carer is not None:
            carer.left_at = now
    for person, lang in out.languages.items():
        tables.people[person] = replace(tables.people[person], lang=lang)
    for chat, reachable in out.reachable.items():
        for known in [one for one in tables.people.values() if one.chat == chat]:
            tables.people[known.id] = replace(known, reachable=reachable)
    for chat, thread in out.threads.items():
        tables.threads[chat] = plain(thread)
    for id in out.silence:
        for row in tables.dues.of_patient(id):
            row.waiting = False
        for case in tables.patients[id].cases.values():
            if case.change.state != "closed":
                case.change = replace(case.change, state="closed", by="bot", outcome="ended")


def plain(data: dict[str, Any]) -> dict[str, Any]:
    """``data`` as it comes back from JSON."""
    return cast("dict[str, Any]", json.loads(json.dumps(data, default=str))) if data else {}


def log(
    tables: Tables,
    kind: str,
    author: str,
    text: str,
    now: datetime,
    patient: int | None = None,
    data: dict[str, Any] | None = None,
) -> None:
    """One line of the log."""
    id = len(tables.log) + 1
    tables.log.append(Entry(id, now, kind, author, text, patient, data or {}))


def put_due(
    tables: Tables,
    key: str,
    kind: str,
    at: datetime,
    patient: int | None,
    data: dict[str, Any] | None = None,
) -> None:
    """Something to look at again; one with the same key is replaced."""
    tables.dues.put(DueRow(key, kind, at, patient, data or {}))


def add_prompts(tables: Tables, patient: PatientRow, prompts: tuple[Prompt, ...]) -> None:
    """Planned prompts with their lines."""
    for prompt in prompts:
        id = patient.put_sheet(tables.next_sheet(), prompt.key, prompt.due_at, prompt.day)
        for item in prompt.items:
            patient.put_line(tables.next_line(), id, item)
        put_due(tables, f"prompt:{id}", "prompt", prompt.due_at, patient.id, {"prompt": id})


def _end(tables: Tables, id: int) -> None:
    tables.patients[id].state = "ended"
    for row in tables.dues.of_patient(id):
        if row.kind in ENDED_DUES:
            row.waiting = False


def _used(tables: Tables, digest: str, what: str) -> None:
    invitation = tables.invitations.get(digest)
    if invitation is None or invitation.used:
        raise ValueError(f"this {what} has been used in the meantime")
    invitation.used = True


@singledispatch
def _keep(change: object, tables: Tables, now: datetime) -> None:
    raise TypeError(f"no way to keep a {type(change).__name__}")


@_keep.register
def _(change: o.Entry, tables: Tables, now: datetime) -> None:
    log(tables, change.kind, change.author, change.text, now, change.patient, change.data)


@_keep.register
def _(change: o.Note, tables: Tables, now: datetime) -> None:
    patient = tables.patients[change.patient]
    noted = Noted(change.observation, change.at or now, change.day, tables.number("noted"))
    patient.statements.append(Statement(noted, change.source, change.person))
    patient.standing = None


@_keep.register
def _(change: o.Retract, tables: Tables, now: datetime) -> None:
    del now
    patient = tables.patients[change.patient]
    for one in patient.statements:
        if one.source == change.source and one.state == "stands":
            one.state = change.state
    patient.standing = None


@_keep.register
def _(change: o.Correct, tables: Tables, now: datetime) -> None:
    del now
    patient = tables.patients[change.patient]
    found = [
        one
        for one in patient.statements
        if one.noted.id == change.observation and one.state == "stands"
    ]
    if not found:
        raise ValueError("this observation stands no longer")
    found[0].state = "corrected"
    patient.standing = None


@_keep.register
def _(change: o.Mark, tables: Tables, now: datetime) -> None:
    del now
    for patient in tables.patients.values():
        line = patient.lines.get(change.line)
        if line is not None:
            patient.set_line(
                replace(line, state=change.state, choice=change.choice, by=change.by,
                        at=change.at, source=change.source)
            )  # fmt: skip


@_keep.register
def _(change: o.Retext, tables: Tables, now: datetime) -> None:
    del now
    for patient in tables.patients.values():
        line = patient.lines.get(change.line)
        if line is not None:
            patient.set_line(replace(line, item=change.item))


@_keep.register
def _(change: o.CaseChange, tables: Tables, now: datetime) -> None:
    del now
    cases = tables.patients[change.patient].cases
    change = replace(change, body=plain(change.body))
    old = cases.get(change.id)
    if old is None:
        old = cases[change.id] = CaseRow(change)
    else:  # what a case is about and since when never changes
        old.change = replace(change, matter=old.change.matter, opened_at=old.change.opened_at)
    if change.by is not None and change.state == "acknowledged":
        old.acknowledged_by = change.by
    elif change.by is not None and change.state == "answered":
        old.acknowledged_by = old.acknowledged_by or change.by


@_keep.register
def _(change: o.CaseNote, tables: Tables, now: datetime) -> None:
    del change, tables, now  # stands in the log, too, and only the record shows it


@_keep.register
def _(change: o.Due, tables: Tables, now: datetime) -> None:
    del now
    put_due(tables, change.key, change.kind, change.at, change.patient, plain(change.data))


@_keep.register
def _(change: o.Join, tables: Tables, now: datetime) -> None:
    _used(tables, change.digest, "link")
    known = next((one for one in tables.people.values() if one.user == change.user), None)
    if known is None:
        id = tables.number("person")
        tables.people[id] = Person(id, change.user, change.chat, change.name, change.lang)
    else:
        id = known.id
        tables.people[id] = replace(known, chat=change.chat, reachable=True)
    carers = tables.patients[change.patient].carers
    if id in carers:
        carers[id].left_at = None
    else:
        carers[id] = Carer(id, now)


@_keep.register
def _(change: o.OwnSetting, tables: Tables, now: datetime) -> None:
    del now
    carer = tables.patients[change.patient].carers[change.person]
    carer.hours = change.hours if change.hours is not None else carer.hours
    carer.wants = change.wants if change.wants is not None else carer.wants


@_keep.register
def _(change: o.Forget, tables: Tables, now: datetime) -> None:
    for patient in tables.patients.values():
        carer = patient.carers.get(change.person)
        if carer is not None:
            carer.left_at = carer.left_at or now
    person = tables.people[change.person]
    tables.people[change.person] = replace(
        person, user=-person.id, chat=0, name="former caregiver", reachable=False
    )


@_keep.register
def _(change: o.JoinDesk, tables: Tables, now: datetime) -> None:
    del now
    _used(tables, change.digest, "code")
    tables.desks[change.chat] = Desk(change.chat, change.rank, change.name)


@_keep.register
def _(change: o.JoinStaff, tables: Tables, now: datetime) -> None:
    del now
    if change.digest:
        _used(tables, change.digest, "link")
    known = next((one for one in tables.staff.values() if one.user == change.user), None)
    id = known.id if known else tables.number("member")
    chat = change.chat if change.chat is not None or known is None else known.chat
    tables.staff[id] = Member(id, change.user, change.name, change.role, chat)
    tables.gone.discard(id)


@_keep.register
def _(change: o.Dismiss, tables: Tables, now: datetime) -> None:
    del now
    member = tables.staff[change.member]
    desk = tables.desks.get(member.chat or 0)
    if desk is not None and desk.rank > 0:
        del tables.desks[desk.chat]
    tables.gone.add(change.member)


@_keep.register
def _(change: o.Invite, tables: Tables, now: datetime) -> None:
    del now
    tables.invitations[change.digest] = InvitationRow(
        change.kind, change.expires, change.patient, change.rank, change.name, change.role
    )


@_keep.register
def _(change: o.NewPatient, tables: Tables, now: datetime) -> None:
    plan = change.plan
    id = tables.number("patient")
    patient = tables.patients[id] = PatientRow(id, plan, change.protocol, now)
    add_prompts(tables, patient, change.prompts)
    if change.prompts:
        put_due(tables, f"end:{id}", "end", change.end_at, id)
    put_due(tables, f"silence:{id}", "silence", change.silence_at, id)
    for day, at in change.wounds:
        put_due(tables, key_of(id, day), "wound", at, id, {"day": day})
    tables.invitations[change.digest] = InvitationRow("owner", change.expires, id)
    if plan.continues is not None:
        old = tables.patients[plan.continues]
        patient.carers = {
            carer.person: replace(carer, joined_at=now)
            for carer in old.carers.values()
            if carer.left_at is None
        }
        _end(tables, old.id)
        for row in tables.dues.of_patient(old.id):
            if row.kind == "wound":
                row.waiting = False
        log(tables, "ended", change.by, f"continued as patient {id}", now, old.id)
    text = f"{plan.patient}: {plan.procedure}, protocol {plan.protocol} {plan.protocol_version}"
    log(tables, "enrolled", change.by, text, now, id)


@_keep.register
def _(change: o.NewPlan, tables: Tables, now: datetime) -> None:
    patient = tables.patients[change.patient]
    patient.plan = change.plan
    coming = [
        sheet
        for sheet in patient.sheets.values()
        if sheet.sent_at is None and sheet.due_at > now and not sheet.key.startswith(LATER)
    ]
    later = {f"prompt:{id}" for key, id in patient.sheet_of_key.items() if key.startswith(LATER)}
    for row in tables.dues.of_patient(patient.id):
        if row.kind == "prompt" and row.at > now and row.key not in later:
            row.waiting = False
    for sheet in coming:
        for line in list(patient.lines_of[sheet.id]):
            if patient.lines[line].state == "planned":
                patient.drop_line(line)
    for sheet in list(patient.sheets.values()):
        if sheet.sent_at is None and sheet.due_at > now and not patient.lines_of[sheet.id]:
            patient.drop_sheet(sheet.id)
    add_prompts(tables, patient, change.prompts)
    if change.prompts:
        last = max(prompt.due_at for prompt in change.prompts)
        put_due(tables, f"end:{patient.id}", "end", last + AFTER_LAST, patient.id)


@_keep.register
def _(change: o.KeepMedia, tables: Tables, now: datetime) -> None:
    patient, media = tables.patients[change.patient], change.media
    unique = media.unique or media.file
    known = next((one for one in patient.pictures.values() if one.media.unique == unique), None)
    if known is None:
        id = tables.number("media")
        kept = Media(kind=media.kind, file=media.file, unique=unique, album=media.album)
        patient.pictures[id] = Picture(
            id, kept, change.day, now, change.caption, change.person, change.line, "waiting",
            None, {}, False, 0, change.source,
        )  # fmt: skip
    else:
        id = known.id
        line = change.line if change.line is not None else known.line
        patient.pictures[id] = replace(known, line=line)
    put_due(tables, f"media:{id}", "media", now, patient.id, {"media": id})


@_keep.register
def _(change: o.RetakeAsked, tables: Tables, now: datetime) -> None:
    del now
    for patient in tables.patients.values():
        if change.picture in patient.pictures:
            picture = patient.pictures[change.picture]
            patient.pictures[change.picture] = replace(picture, retake=True)


@_keep.register
def _(change: o.ReviewChange, tables: Tables, now: datetime) -> None:
    del now
    reviews = tables.patients[change.patient].reviews
    line = reviews[change.id].line if change.id in reviews else change.line
    reviews[change.id] = Review(change.id, line, plain(change.body))


@_keep.register
def _(change: o.WoundPut, tables: Tables, now: datetime) -> None:
    del now
    wounds = tables.patients[change.patient].wounds
    old = wounds.get(change.check.day)
    check = replace(change.check, asked_at=old.asked_at) if old else change.check
    wounds[check.day] = check


@_keep.register
def _(change: o.MoveLine, tables: Tables, now: datetime) -> None:
    del now
    patient = tables.patients[change.patient]
    id = patient.put_sheet(tables.next_sheet(), change.key, change.at, change.day)
    patient.move_line(change.line, id)
    put_due(tables, f"prompt:{id}", "prompt", change.at, patient.id, {"prompt": id})
