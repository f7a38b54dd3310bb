"""Who speaks, and about whom: what an event needs to be known, asked of whoever knows it.

Nothing is read here but through ``Known``, which the database and the practice in memory
both are: one event has the same context on either.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Any, Protocol

from bot.context.buttons import action_of, digest_of
from bot.context.contexts import AtDesk, AtHome, FellDue, Talk
from bot.context.practice import Practice
from bot.desk.board import find
from bot.desk.desk import COMMANDS, source_of
from bot.model.action import (
    DESK,
    Action,
    BoardSection,
    OnCase,
    OnHold,
    OnPlan,
    OnRecheck,
    RemovePerson,
)
from bot.model.chart import Chart, Desk, Invitation, Member, Person, RosterLine, Written
from bot.model.chat import Incoming
from bot.model.codes import Known as Codes
from bot.model.codes import possible_codes, without_known
from bot.model.conversation import Conversation
from bot.model.ids import CaseId, EventId, PatientId, PromptId, SourceId, update_event
from bot.model.topic import AboutCase, Topic, patient_of

ABOUT_PATIENTS = (
    "/patients", "/board", "/log", "/link", "/end", "/plan", "/medicine", "/people", "/hold",
    "/release",
)  # fmt: skip
"""Staff commands that need the list of patients."""
NAME = 8
"""So many words behind a command are looked through for a patient's name."""


class Known(Protocol):
    """All that is known at the moment of one event."""

    def desks(self) -> tuple[Desk, ...]:
        """The staff chats, in the order in which they are paged."""

    def held_desks(self) -> tuple[Desk, ...]:
        """Staff chats to which nothing is sent until an administrator says so."""

    def staff(self) -> tuple[Member, ...]:
        """The people of the practice."""

    def conversation(self, chat: int) -> Conversation:
        """What is open in a chat."""

    def topic(self, chat: int, message: int) -> Topic | None:
        """What a message that was sent is about."""

    def former(self, chat: int) -> tuple[int, ...]:
        """The chat's ids before it was upgraded."""

    def invitation(self, digest: str) -> Invitation | None:
        """The one-time link with this digest."""

    def codes(self) -> Codes:
        """Whether a digest is that of a one-time link that is not past."""

    def written(self, source: SourceId) -> tuple[Written, ...]:
        """What staff's message ``source`` has led to, oldest first."""

    def person(self, user: int) -> Person | None:
        """The person at home with this account."""

    def charts_of(self, person: Person) -> tuple[Chart, ...]:
        """The patients that a person takes care of, those under way first."""

    def chart(self, patient: PatientId, prompt: PromptId | None = None) -> Chart | None:
        """One patient; ``prompt`` must be there even when it is long overdue."""

    def patient_of(self, case: CaseId) -> PatientId | None:
        """The patient of a case."""

    def roster(self, wanted: str | None = None) -> tuple[RosterLine, ...]:
        """The patients under way; with ``wanted`` those of this number or name."""

    def unread(self) -> tuple[str, ...]:
        """The names of those under way whose records cannot be read."""

    def log_tail(self, chart: Chart) -> tuple[str, ...]:
        """The last lines of a patient's log, as people read them."""

    def last_copy(self) -> datetime | None:
        """When the whole practice was last copied."""

    def off(self) -> tuple[tuple[datetime, datetime], ...]:
        """From when to when the bot did not run."""

    def fresh_code(self) -> str:
        """A code that nobody has used, in case a link is to be made."""


@dataclass(frozen=True, slots=True)
class Fallen:
    """Something whose time (``at``) has come. ``patient`` is whom it is about."""

    event: EventId
    kind: str
    patient: PatientId | None
    data: Mapping[str, Any]
    at: datetime


def fallen_due(known: Known, practice: Practice, row: Fallen, now: datetime) -> FellDue:
    """What a thing that has fallen due needs to be known."""
    chart = None
    if row.patient is not None:
        chart = known.chart(row.patient, row.data.get("prompt"))
    return FellDue(
        practice=practice,
        now=now,
        event=row.event,
        charts=(chart,) if chart else (),
        desks=known.desks(),
        staff=known.staff(),
        kind=row.kind,
        data=row.data,
        due_at=row.at,
        roster=known.roster() if row.kind == "board" else (),
        unread=known.unread() if row.kind == "board" else (),
        last_copy=known.last_copy() if row.kind == "board" else None,
        off=known.off() if row.kind == "silence" else (),
        conversation=known.conversation(row.data.get("chat", 0)),
    )


def listened_to(known: Known, event: Incoming) -> bool:
    """Whether the chat concerns us: a private one, a staff chat, or a group that has a code
    of ours. Of any other group nothing more is loaded."""
    if event.private or any(desk.chat == event.chat for desk in known.desks()):
        return True
    code = _code_of(_plain_command(event.text))
    return bool(code) and known.invitation(digest_of(code)) is not None


def context_of(known: Known, practice: Practice, event: Incoming, now: datetime) -> AtHome | AtDesk:
    """What this kind of event needs to be known: from home, or from the desk."""
    event = replace(event, text=_plain_command(event.text))
    staff = known.staff()
    invitation, text = _invited_by(known, event)
    event = replace(event, text=text)  # nothing else may keep it
    written = known.written(source_of(event)) if event.kind == "edited" else ()
    common: dict[str, Any] = {
        "practice": practice,
        "now": now,
        "event": update_event(event.update),
        "desks": known.desks(),
        "staff": staff,
        "incoming": event,
        "conversation": known.conversation(event.chat),
        "topic": known.topic(event.chat, event.reply_to) if event.reply_to else None,
        "invitation": invitation,
        "former": known.former(event.chat),
        "fresh_code": known.fresh_code(),
    }
    talk = Talk(**common)
    actor = _actor(staff, event)
    action = action_of(practice.secret, (event.chat, *talk.former), event.data)
    for_staff = invitation is not None and invitation.kind in ("desk", "staff")
    if not event.private or for_staff or _staff_act(talk, actor, action, written):
        roster: tuple[RosterLine, ...] = ()
        named = False
        board = event.text.startswith("/board") or isinstance(action, BoardSection)
        if board or event.text.startswith(ABOUT_PATIENTS):
            roster, named = _listed(known, event)
        chart = _chart_for_desk(known, talk, action, written, roster if named else ())
        return AtDesk(
            **common,
            actor=actor,
            held=known.held_desks(),
            written=written,
            charts=(chart,) if chart else (),
            roster=roster,
            unread=known.unread() if board else (),
            log_tail=known.log_tail(chart) if chart and event.text.startswith("/log") else (),
            last_copy=known.last_copy() if event.text.startswith("/board") else None,
        )
    person = known.person(event.sender.user) if event.sender else None
    found = known.charts_of(person) if person else ()
    if invitation and invitation.patient and all(c.id != invitation.patient for c in found):
        invited = known.chart(invitation.patient)
        found = (*found, invited) if invited else found
    return AtHome(**common, person=person, charts=found)


def _plain_command(text: str) -> str:
    """In groups a command names the bot (``/log@the_bot Canela``): drop the name."""
    first, space, rest = text.partition(" ")
    line, newline, more = first.partition("\n")
    if line.startswith("/"):
        line = line.partition("@")[0]
    return f"{line}{newline}{more}{space}{rest}"


def _code_of(text: str) -> str:
    """The one-time code behind /start or /join."""
    words = text.split()
    if len(words) == 2 and words[0] in ("/start", "/join"):
        return words[1]
    return ""


def _invited_by(known: Known, event: Incoming) -> tuple[Invitation | None, str]:
    """The invitation whose code is sent, or, in a group, stands anywhere in what everybody there
    reads and would let in whoever sends it; and the text without codes."""
    ours = known.codes()
    text = without_known(event.text, ours)
    if code := _code_of(event.text):
        return known.invitation(digest_of(code)), text
    if event.private:
        return None, text
    digests = {digest_of(one) for one in possible_codes(event.text)}
    found = (known.invitation(one) for one in sorted(digests) if ours(one))
    shown = (one for one in found if one and one.kind == "staff" and one.member is None)
    return next((one for one in shown if one.good), None), text


def _actor(members: Sequence[Member], event: Incoming) -> Member | None:
    if event.sender is None:
        return None
    return next((one for one in members if one.user == event.sender.user), None)


def _staff_act(
    talk: Talk, actor: Member | None, action: Action | None, written: Sequence[Written]
) -> bool:
    """Whether a private chat that is also a staff chat speaks as staff now."""
    event = talk.incoming
    if talk.invitation is not None and talk.invitation.kind == "owner":
        return False  # staff may have a pet, too
    if written:
        return True
    if actor is None and talk.desk(event.chat) is None:
        return False
    if event.kind == "button":
        return isinstance(action, DESK)
    first = event.text.split(" ")[0].split("\n")[0]
    return first in (*COMMANDS, "/join") or isinstance(talk.topic, AboutCase)


def _listed(known: Known, event: Incoming) -> tuple[tuple[RosterLine, ...], bool]:
    """The patients named behind a command, by as many words as name any: what else stands
    there (``/hold Canela carprofen``) is the command's own. All, and False, where none is."""
    words = event.text.partition("\n")[0].split()[1:][:NAME]
    names = [" ".join(words[:most]) for most in range(len(words), 0, -1)]
    for name in names:
        found = find(known.roster(name), name)
        if found:  # one of the past only where none of the name is under way
            return tuple([row for row in found if row.under_way] or found), True
    everybody = known.roster()
    for name in names:  # in letters that a database does not know the small ones of
        found = find(everybody, name)
        if found:
            return tuple(found), True
    return everybody, False


def _chart_for_desk(
    known: Known,
    talk: Talk,
    action: Action | None,
    written: Sequence[Written],
    named: Sequence[RosterLine],
) -> Chart | None:
    """The patient that a staff event is about: by what the changed message led to, its
    button, the message that it answers, or the name behind a command."""
    patient: PatientId | None = None
    if written:
        patient = written[-1].patient
    elif talk.incoming.kind == "button":
        match action:
            case OnCase(case=case):
                patient = known.patient_of(case)
            case (
                OnPlan(patient=of)
                | OnRecheck(patient=of)
                | RemovePerson(patient=of)
                | OnHold(patient=of)
            ):
                patient = of
            case _:
                pass
    elif isinstance(talk.topic, AboutCase):
        patient = known.patient_of(talk.topic.case)
    elif talk.topic is not None:
        patient = patient_of(talk.topic)
    elif len(named) == 1:
        patient = named[0].id
    return known.chart(patient) if patient is not None else None
