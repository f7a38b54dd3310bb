"""An ``Effects`` into rows: all of it inside the caller's one transaction."""

from __future__ import annotations

import json
from contextlib import suppress
from dataclasses import asdict
from datetime import datetime
from functools import singledispatch

from bot.desk.enrol import AFTER_LAST
from bot.household.wound import key_of
from bot.model import effects as o
from bot.model.conversation import Conversation, dump_conversation, load_conversation
from bot.model.ids import Cause, PatientId

from .database import Tx, pack, stamp
from .erase import Erasure, StillHere
from .rows import add_prompts, log, move_chat, put_due, send
from .staff_ways import clear, found, lost


def apply(tx: Tx, out: o.Effects, now: datetime) -> None:
    """Keep every effect in its order; messages go into the outbox."""
    by = out.cause
    for one in out.all:
        _keep(one, tx, now, by)


@singledispatch
def _keep(change: object, tx: Tx, now: datetime, by: Cause) -> None:
    del tx, now, by
    raise TypeError(f"no way to keep a {type(change).__name__}")


@_keep.register
def _(change: o.Entry, tx: Tx, now: datetime, by: Cause) -> None:
    log(tx, change.kind, change.author, change.text, now, change.patient, change.data, by)


@_keep.register
def _(change: o.Note, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run(
        "observation_add",
        patient_id=change.patient,
        at=stamp(change.at or now),
        day=change.day,
        about=change.observation.about,
        value=change.observation.value,
        body=pack(change.observation.as_dict()),
        source=change.source,
        person_id=change.person,
        author=change.author,
        event=by.event,
    )


@_keep.register
def _(change: o.Retract, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run(
        "observation_retract", patient_id=change.patient, source=change.source, state=change.state
    )


@_keep.register
def _(change: o.Correct, tx: Tx, now: datetime, by: Cause) -> None:
    if not tx.run("observation_correct", patient_id=change.patient, id=change.observation):
        raise ValueError("this observation stands no longer")


@_keep.register
def _(change: o.Mark, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run(
        "item_mark", id=change.line, state=change.state, choice=change.choice,
        by_name=change.by, at=stamp(change.at) if change.at else None, source=change.source,
        person_id=change.person, event=by.event,
    )  # fmt: skip


@_keep.register
def _(change: o.Retext, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("item_text", id=change.line, body=change.item.model_dump_json(exclude_defaults=True))


@_keep.register
def _(change: o.CaseChange, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run(
        "case_put",
        id=change.id,
        patient_id=change.patient,
        matter=change.matter,
        urgency=int(change.urgency),
        state=change.state,
        opened_at=stamp(change.opened_at),
        deadline_at=stamp(change.deadline),
        pages=change.pages,
        policy=change.policy.model_dump_json(),
        body=pack(change.body),
    )
    if change.by is not None and change.state == "acknowledged":
        tx.run("case_acknowledged", id=change.id, by=change.by, now=stamp(now))
    if change.by is not None and change.state == "answered":
        tx.run("case_answered", id=change.id, by=change.by, now=stamp(now))
    if change.by is not None and change.state == "closed":
        tx.run("case_closed", id=change.id, by=change.by, outcome=change.outcome, now=stamp(now))


@_keep.register
def _(change: o.CaseNote, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("case_note", id=change.id, note=change.note)


@_keep.register
def _(change: o.Due, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run(
        "due_put", key=change.key, patient_id=change.patient, kind=change.kind,
        due_at=stamp(change.at), data=pack(change.data),
    )  # fmt: skip


@_keep.register
def _(change: o.Join, tx: Tx, now: datetime, by: Cause) -> None:
    if not tx.run("invitation_use", digest=change.digest, used_by=change.user, now=stamp(now)):
        raise ValueError("this link has been used in the meantime")
    row = tx.one(
        "person_join", user_id=change.user, chat_id=change.chat, name=change.name,
        lang=change.lang, now=stamp(now),
    )  # fmt: skip
    if row is None:
        raise ValueError("the person could not be stored")
    tx.run("caregiver_join", patient_id=change.patient, person_id=row["id"], now=stamp(now))


@_keep.register
def _(change: o.OwnSetting, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run(
        "caregiver_setting", patient_id=change.patient, person_id=change.person,
        hours=pack(change.hours) if change.hours is not None else None, wants=change.wants,
    )  # fmt: skip


@_keep.register
def _(change: o.Forget, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("caregiver_leave_all", person_id=change.person, now=stamp(now))


@_keep.register
def _(change: o.Erase, tx: Tx, now: datetime, by: Cause) -> None:
    with suppress(StillHere):  # they came back by a new link
        Erasure(tx, now, change.years, "bot", do=True).person(change.person)


@_keep.register
def _(change: o.JoinDesk, tx: Tx, now: datetime, by: Cause) -> None:
    if change.digest and not tx.run(
        "invitation_use", digest=change.digest, used_by=change.user, now=stamp(now)
    ):
        raise ValueError("this code has been used in the meantime")
    tx.run(
        "desk_join", chat_id=change.chat, rank=change.rank, name=change.name, now=stamp(now),
        opened_by=change.user,
    )  # fmt: skip
    tx.run("lost_drop", chat_id=change.chat)


@_keep.register
def _(change: o.JoinStaff, tx: Tx, now: datetime, by: Cause) -> None:
    if change.digest and not tx.run(
        "invitation_use", digest=change.digest, used_by=change.user, now=stamp(now)
    ):
        raise ValueError("this link has been used in the meantime")
    tx.run(
        "staff_join", user_id=change.user, chat_id=change.chat, name=change.name,
        role=change.role, now=stamp(now),
    )  # fmt: skip


@_keep.register
def _(change: o.UseLink, tx: Tx, now: datetime, by: Cause) -> None:
    if not tx.run("invitation_use", digest=change.digest, used_by=change.user, now=stamp(now)):
        raise ValueError("this link has been used in the meantime")


@_keep.register
def _(change: o.Dismiss, tx: Tx, now: datetime, by: Cause) -> None:
    for row in tx.all("staff_chats_of", id=change.member):
        clear(tx, row["chat_id"], change.words, now, by)
    tx.run("desk_remove_of", id=change.member)
    tx.run("invitation_void_of", id=change.member, now=stamp(now))
    tx.run("staff_remove", id=change.member, now=stamp(now))


@_keep.register
def _(change: o.NewRole, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("staff_role", id=change.member, role=change.role)


@_keep.register
def _(change: o.CloseDesk, tx: Tx, now: datetime, by: Cause) -> None:
    clear(tx, change.chat, change.words, now, by)
    tx.run("desk_close", chat_id=change.chat)


@_keep.register
def _(change: o.HoldDesk, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("desk_hold", chat_id=change.chat, now=stamp(now))


@_keep.register
def _(change: o.KeepDesk, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("desk_keep", chat_id=change.chat, opened_by=change.user)


@_keep.register
def _(change: o.Invite, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run(
        "invitation_add", digest=change.digest, kind=change.kind, patient_id=change.patient,
        rank=change.rank, name=change.name, role=change.role, member_id=change.member,
        made_by=change.by, expires_at=stamp(change.expires), now=stamp(now),
    )  # fmt: skip


@_keep.register
def _(change: o.NewPatient, tx: Tx, now: datetime, by: Cause) -> None:
    plan = change.plan
    row = tx.one(
        "patient_add",
        name=plan.patient,
        plan=plan.model_dump_json(),
        protocol=change.protocol.model_dump_json(),
        by=change.by,
        now=stamp(now),
    )
    if row is None:
        raise ValueError("the patient could not be stored")
    patient = PatientId(int(row["id"]))
    add_prompts(tx, patient, change.prompts)
    if change.prompts:
        put_due(tx, f"end:{patient}", "end", change.end_at, patient)
    put_due(tx, f"silence:{patient}", "silence", change.silence_at, patient)
    for day, at in change.wounds:
        put_due(tx, key_of(patient, day), "wound", at, patient, {"day": day})
    tx.run(
        "invitation_add", digest=change.digest, kind="owner", patient_id=patient, rank=None,
        name=None, role=None, member_id=change.member, made_by=change.by,
        expires_at=stamp(change.expires), now=stamp(now),
    )  # fmt: skip
    if plan.continues is not None:
        # After a re-operation the household stays, and the old course ends.
        tx.run("caregivers_carry", old=plan.continues, new=patient, now=stamp(now))
        tx.run("patient_end", id=plan.continues, why=None, now=stamp(now))
        tx.run("due_cancel_patient", patient_id=plan.continues)
        tx.run("due_cancel_wounds", patient_id=plan.continues)
        log(tx, "ended", change.by, f"continued as patient {patient}", now, plan.continues, by=by)
    text = f"{plan.patient}: {plan.procedure}, protocol {plan.protocol} {plan.protocol_version}"
    log(tx, "enrolled", change.by, text, now, patient, json.loads(plan.model_dump_json()), by)
    for one in change.log:
        log(tx, one.kind, one.author, one.text, now, patient, one.data, by)


@_keep.register
def _(change: o.NewPlan, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("patient_plan", id=change.patient, plan=change.plan.model_dump_json())
    for name in ("prompts_drop_due", "prompts_drop_items", "prompts_drop"):
        tx.run(name, patient_id=change.patient, now=stamp(now))
    add_prompts(tx, change.patient, change.prompts)
    if change.prompts:
        # What was ordered later must not be cut off by the end that was planned first.
        last = max(prompt.due_at for prompt in change.prompts)
        put_due(tx, f"end:{change.patient}", "end", last + AFTER_LAST, change.patient)


@_keep.register
def _(change: o.KeepMedia, tx: Tx, now: datetime, by: Cause) -> None:
    media = change.media
    row = tx.one(
        "media_add", patient_id=change.patient, source=change.source, kind=media.kind,
        file_id=media.file, file_unique=media.unique or media.file, album=media.album,
        day=change.day, at=stamp(now), caption=change.caption, person_id=change.person,
        line_id=change.line,
    )  # fmt: skip
    if row is None:
        raise ValueError("the picture could not be stored")
    put_due(tx, f"media:{row['id']}", "media", now, change.patient, {"media": row["id"]})


@_keep.register
def _(change: o.RetakeAsked, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("media_retake", id=change.picture)


@_keep.register
def _(change: o.ClockIsRight, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("setting_put", key="clock_right", value=f"{stamp(now)} {by.event}")


@_keep.register
def _(change: o.ReviewChange, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run(
        "review_put", id=change.id, patient_id=change.patient, line_id=change.line,
        body=pack(change.body), now=stamp(now),
    )  # fmt: skip


@_keep.register
def _(change: o.WoundPut, tx: Tx, now: datetime, by: Cause) -> None:
    check = change.check
    tx.run(
        "wound_put", patient_id=change.patient, day=check.day, asked_at=stamp(check.asked_at),
        told=pack(asdict(check.told)) if check.told else None,
        told_at=stamp(check.told_at) if check.told_at else None, person_id=check.person,
        drafts=pack({str(who): list(signs) for who, signs in check.drafts.items()}),
    )  # fmt: skip


@_keep.register
def _(change: o.MoveLine, tx: Tx, now: datetime, by: Cause) -> None:
    row = tx.one(
        "prompt_add", patient_id=change.patient, key=change.key, due_at=stamp(change.at),
        day=change.day, moved=1,
    )  # fmt: skip
    if row is None:
        raise ValueError("the prompt could not be stored")
    tx.run("item_move", id=change.line, prompt_id=row["id"])
    put_due(tx, f"prompt:{row['id']}", "prompt", change.at, change.patient, {"prompt": row["id"]})


@_keep.register
def _(change: o.CancelDue, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("due_cancel", key=change.key)


@_keep.register
def _(change: o.Heard, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("patient_heard", id=change.patient, now=stamp(now))


@_keep.register
def _(change: o.PromptSent, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("prompt_sent", id=change.prompt, now=stamp(now))


@_keep.register
def _(change: o.Reminded, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("prompt_reminded", id=change.prompt, now=stamp(now))


@_keep.register
def _(change: o.EndCourse, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("patient_end", id=change.patient, why="died" if change.died else None, now=stamp(now))
    tx.run("due_cancel_patient", patient_id=change.patient)


@_keep.register
def _(change: o.SetState, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("patient_state", id=change.patient, state=change.state)


@_keep.register
def _(change: o.PutHold, tx: Tx, now: datetime, by: Cause) -> None:
    hold = change.hold
    tx.run(
        "hold_put", id=hold.id, patient_id=change.patient, body=pack(hold.as_dict()),
        since=stamp(hold.since), event=by.event,
    )  # fmt: skip


@_keep.register
def _(change: o.EndHold, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run(
        "hold_end", id=change.hold, patient_id=change.patient, member=change.member,
        by=change.by, now=stamp(now),
    )  # fmt: skip


@_keep.register
def _(change: o.Leave, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("caregiver_leave", patient_id=change.patient, person_id=change.person, now=stamp(now))


@_keep.register
def _(change: o.SetLanguage, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("person_lang", id=change.person, lang=change.lang)


@_keep.register
def _(change: o.Reachable, tx: Tx, now: datetime, by: Cause) -> None:
    tx.run("person_reachable", chat_id=change.chat, reachable=int(change.reachable))
    if change.reachable:
        found(tx, change.chat, now, by)
    else:
        lost(tx, change.chat, "the bot was removed or blocked", now, by)


@_keep.register
def _(change: o.Ask, tx: Tx, now: datetime, by: Cause) -> None:
    _talk(tx, change.chat, now, conversation(tx, change.chat).asked(change.question))


@_keep.register
def _(change: o.Settle, tx: Tx, now: datetime, by: Cause) -> None:
    _talk(tx, change.chat, now, conversation(tx, change.chat).settled(change.key))


def conversation(tx: Tx, chat: int) -> Conversation:
    """What is open in a chat."""
    row = tx.one("thread", chat_id=chat)
    return load_conversation(row["body"] if row else None)


def _talk(tx: Tx, chat: int, now: datetime, talk: Conversation) -> None:
    tx.run("thread_set", chat_id=chat, body=dump_conversation(talk.open), now=stamp(now))


@_keep.register
def _(change: o.Hush, tx: Tx, now: datetime, by: Cause) -> None:
    # Nothing more reaches anybody about this patient, not even what waits already.
    tx.run("outbox_silence", patient_id=change.patient, now=stamp(now))
    tx.run("due_silence", patient_id=change.patient)
    tx.run("cases_silence", patient_id=change.patient, now=stamp(now))


@_keep.register
def _(change: o.ChatMoved, tx: Tx, now: datetime, by: Cause) -> None:
    move_chat(tx, change.old, change.new)


@_keep.register
def _(change: o.Say, tx: Tx, now: datetime, by: Cause) -> None:
    send(tx, [change.message], now, by)
