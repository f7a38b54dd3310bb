"""``Effects`` into the tables, in the same order and with the same meaning as the store
keeps them (``bot/store/apply.py``). What a chart alone holds is kept by ``evolve``."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from functools import singledispatch

from bot.desk.enrol import AFTER_LAST
from bot.household.wound import key_of
from bot.model import effects as o
from bot.model.chart import Chart, Desk, Member, Person, Picture, Review
from bot.model.chat import Media
from bot.model.conversation import NOTHING_OPEN
from bot.model.evolve import evolve
from bot.model.ids import MemberId, ObservationId, PatientId, PersonId, PictureId
from bot.model.observation import Noted

from .keeping import add_prompts, end, log, plain, put_due, send, used
from .tables import (
    Carer,
    InvitationRow,
    PatientRow,
    Statement,
    Tables,
)

OfChart = o.Heard | o.WoundPut | o.PutHold | o.EndHold | o.SetState


def apply(tables: Tables, out: o.Effects, now: datetime) -> None:
    """Keep every effect in its order; messages wait in the outbox."""
    for one in out.all:
        _keep(one, tables, now)


@singledispatch
def _keep(change: object, tables: Tables, now: datetime) -> None:
    raise TypeError(f"no way to keep a {type(change).__name__}")


@_keep.register
def _(change: o.Entry, tables: Tables, now: datetime) -> None:
    log(tables, change.kind, change.author, change.text, now, change.patient, change.data)


@_keep.register
def _(change: o.Note, tables: Tables, now: datetime) -> None:
    patient = tables.patients[change.patient]
    noted = Noted(
        change.observation, change.at or now, change.day, ObservationId(tables.number("noted"))
    )
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
                        at=change.at, source=change.source, person=change.person)
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
    patient = tables.patients[change.patient]
    patient.cases.add(change.id)
    patient.chart = evolve(patient.chart, [replace(change, body=plain(change.body))], now)


@_keep.register(o.Heard)
@_keep.register(o.WoundPut)
@_keep.register(o.PutHold)
@_keep.register(o.EndHold)
@_keep.register(o.SetState)
def _(change: OfChart, tables: Tables, now: datetime) -> None:
    patient = tables.patients[change.patient]
    patient.chart = evolve(patient.chart, [change], now)


@_keep.register
def _(change: o.EndCourse, tables: Tables, now: datetime) -> None:
    patient = tables.patients[change.patient]
    patient.chart = evolve(patient.chart, [change], now)
    end(tables, change.patient)


@_keep.register
def _(change: o.Hush, tables: Tables, now: datetime) -> None:
    patient = tables.patients[change.patient]
    patient.chart = evolve(patient.chart, [change], now)
    for row in tables.dues.of_patient(change.patient):
        row.waiting = False
    for key in [key for key, one in tables.outbox.items() if one.patient == change.patient]:
        del tables.outbox[key]
        tables.sent[key] = (0, 0)


@_keep.register
def _(change: o.CaseNote, tables: Tables, now: datetime) -> None:
    del change, tables, now  # stands in the log, too, and only the record shows it


@_keep.register
def _(change: o.Due, tables: Tables, now: datetime) -> None:
    del now
    put_due(tables, change.key, change.kind, change.at, change.patient, plain(change.data))


@_keep.register
def _(change: o.Join, tables: Tables, now: datetime) -> None:
    used(tables, change.digest, "link")
    known = next((one for one in tables.people.values() if one.user == change.user), None)
    if known is None:
        id = PersonId(tables.number("person"))
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


@_keep.register
def _(change: o.Erase, tables: Tables, now: datetime) -> None:
    del now
    carers = [one.carers.get(change.person) for one in tables.patients.values()]
    if any(one is not None and one.left_at is None for one in carers):
        return  # they came back by a new link
    person = tables.people[change.person]
    tables.people[change.person] = replace(
        person, user=-person.id, chat=0, name="former caregiver", reachable=False
    )


@_keep.register
def _(change: o.JoinDesk, tables: Tables, now: datetime) -> None:
    del now
    if change.digest:
        used(tables, change.digest, "code")
    opened = Desk(change.chat, change.rank, change.name, opened=change.user)
    tables.desks.setdefault(change.chat, opened)


@_keep.register
def _(change: o.JoinStaff, tables: Tables, now: datetime) -> None:
    del now
    if change.digest:
        used(tables, change.digest, "link")
    known = next((one for one in tables.staff.values() if one.user == change.user), None)
    id = known.id if known else MemberId(tables.number("member"))
    chat = change.chat if change.chat is not None or known is None else known.chat
    if known is not None and id not in tables.gone:  # a link changes nobody's name or role
        tables.staff[id] = replace(known, chat=chat)
    else:
        tables.staff[id] = Member(id, change.user, change.name, change.role, chat)
    tables.gone.discard(id)


@_keep.register
def _(change: o.UseLink, tables: Tables, now: datetime) -> None:
    del now
    used(tables, change.digest, "link")


@_keep.register
def _(change: o.Dismiss, tables: Tables, now: datetime) -> None:
    del now
    member = tables.staff[change.member]
    for chat in {member.chat, member.user} & set(tables.desks):
        if chat is not None:
            del tables.desks[chat]
    for invitation in tables.invitations.values():
        if invitation.member == change.member:
            invitation.used = True
    tables.gone.add(change.member)


@_keep.register
def _(change: o.NewRole, tables: Tables, now: datetime) -> None:
    del now
    tables.staff[change.member] = replace(tables.staff[change.member], role=change.role)


@_keep.register
def _(change: o.CloseDesk, tables: Tables, now: datetime) -> None:
    del now
    del tables.desks[change.chat]
    tables.held.discard(change.chat)


@_keep.register
def _(change: o.HoldDesk, tables: Tables, now: datetime) -> None:
    del now
    tables.held.add(change.chat)


@_keep.register
def _(change: o.KeepDesk, tables: Tables, now: datetime) -> None:
    del now
    tables.held.discard(change.chat)
    tables.desks[change.chat] = replace(tables.desks[change.chat], opened=change.user)


@_keep.register
def _(change: o.Invite, tables: Tables, now: datetime) -> None:
    del now
    tables.invitations[change.digest] = InvitationRow(
        change.kind,
        change.expires,
        change.patient,
        change.rank,
        change.name,
        change.role,
        member=change.member,
    )


@_keep.register
def _(change: o.NewPatient, tables: Tables, now: datetime) -> None:
    plan = change.plan
    id = PatientId(tables.number("patient"))
    chart = Chart(id, plan, change.protocol, "active", now, None)
    patient = tables.patients[id] = PatientRow(chart)
    add_prompts(tables, patient, change.prompts)
    if change.prompts:
        put_due(tables, f"end:{id}", "end", change.end_at, id)
    put_due(tables, f"silence:{id}", "silence", change.silence_at, id)
    for day, at in change.wounds:
        put_due(tables, key_of(id, day), "wound", at, id, {"day": day})
    tables.invitations[change.digest] = InvitationRow(
        "owner", change.expires, id, member=change.member
    )
    if plan.continues is not None:
        old = tables.patients[plan.continues]
        patient.carers = {
            carer.person: replace(carer, joined_at=now)
            for carer in old.carers.values()
            if carer.left_at is None
        }
        old.chart = replace(old.chart, state="ended")
        end(tables, old.id)
        for row in tables.dues.of_patient(old.id):
            if row.kind == "wound":
                row.waiting = False
        log(tables, "ended", change.by, f"continued as patient {id}", now, old.id)
    text = f"{plan.patient}: {plan.procedure}, protocol {plan.protocol} {plan.protocol_version}"
    log(tables, "enrolled", change.by, text, now, id)
    for one in change.log:
        log(tables, one.kind, one.author, one.text, now, id, one.data)


@_keep.register
def _(change: o.NewPlan, tables: Tables, now: datetime) -> None:
    patient = tables.patients[change.patient]
    patient.chart = replace(patient.chart, plan=change.plan)
    coming = [
        sheet
        for sheet in patient.sheets.values()
        if sheet.sent_at is None and sheet.due_at > now and not sheet.moved
    ]
    later = {f"prompt:{one.id}" for one in patient.sheets.values() if one.moved}
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
        id = PictureId(tables.number("media"))
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
def _(change: o.ClockIsRight, tables: Tables, now: datetime) -> None:
    del change, tables, now  # in a story nobody sets the clock


@_keep.register
def _(change: o.ReviewChange, tables: Tables, now: datetime) -> None:
    del now
    reviews = tables.patients[change.patient].reviews
    line = reviews[change.id].line if change.id in reviews else change.line
    reviews[change.id] = Review(change.id, line, plain(change.body))


@_keep.register
def _(change: o.MoveLine, tables: Tables, now: datetime) -> None:
    del now
    patient = tables.patients[change.patient]
    id = patient.put_sheet(tables.next_sheet(), change.key, change.at, change.day)
    patient.move_line(change.line, id)
    put_due(tables, f"prompt:{id}", "prompt", change.at, patient.id, {"prompt": id})


@_keep.register
def _(change: o.CancelDue, tables: Tables, now: datetime) -> None:
    del now
    tables.dues.cancel(change.key)


@_keep.register
def _(change: o.PromptSent, tables: Tables, now: datetime) -> None:
    for patient in tables.patients.values():
        sheet = patient.sheets.get(change.prompt)
        if sheet is not None and sheet.sent_at is None:
            patient.set_sheet(replace(sheet, sent_at=now))


@_keep.register
def _(change: o.Reminded, tables: Tables, now: datetime) -> None:
    for patient in tables.patients.values():
        sheet = patient.sheets.get(change.prompt)
        if sheet is not None:
            patient.set_sheet(replace(sheet, reminded=now))


@_keep.register
def _(change: o.Leave, tables: Tables, now: datetime) -> None:
    carer = tables.patients[change.patient].carers.get(change.person)
    if carer is not None:
        carer.left_at = now


@_keep.register
def _(change: o.SetLanguage, tables: Tables, now: datetime) -> None:
    del now
    tables.people[change.person] = replace(tables.people[change.person], lang=change.lang)


@_keep.register
def _(change: o.Reachable, tables: Tables, now: datetime) -> None:
    for known in [one for one in tables.people.values() if one.chat == change.chat]:
        tables.people[known.id] = replace(known, reachable=change.reachable)
    lost = None if change.reachable else now
    if (desk := tables.desks.get(change.chat)) is not None:
        tables.desks[desk.chat] = replace(desk, lost=lost)
    for member in [one for one in tables.staff.values() if one.chat == change.chat]:
        tables.staff[member.id] = replace(member, lost=lost)


@_keep.register
def _(change: o.Ask, tables: Tables, now: datetime) -> None:
    del now
    before = tables.conversations.get(change.chat, NOTHING_OPEN)
    tables.conversations[change.chat] = before.asked(change.question)


@_keep.register
def _(change: o.Settle, tables: Tables, now: datetime) -> None:
    del now
    before = tables.conversations.get(change.chat, NOTHING_OPEN)
    tables.conversations[change.chat] = before.settled(change.key)


@_keep.register
def _(change: o.Say, tables: Tables, now: datetime) -> None:
    send(tables, change.message, now)
