"""Erasure in the database. The chain of the log holds: each entry whose words go is named,
with a digest of what is left, in one new entry (``bot.records.chain``)."""

from __future__ import annotations

import json
from dataclasses import dataclass, field, replace
from datetime import date, datetime
from secrets import token_hex
from typing import Any

from bot.model.ids import EventId, PatientId, PersonId
from bot.model.plan import Plan
from bot.records.chain import ERASED, digest_of
from bot.records.erasure import (
    FORMER,
    GONE,
    LOOSE,
    MEMBER,
    NUMBER_AT_HOME,
    OWN_WORDS,
    OWNER,
    Tally,
    Traces,
    kept_record,
    kept_until,
    packed,
    phones,
    without_names,
    without_phone,
    wordless,
)
from bot.records.names import Names, longest_first

from .audit import cause_of, head
from .chaining import append
from .database import ANEW, ANEW_AT, Row, StoreError, Tx, moment, stamp
from .erase_names import (
    BATCH,
    Trial,
    batches,
    events_of,
    inbox,
    names_of,
    names_of_member,
    nobody,
    others,
    questions,
    strange,
)
from .erase_table import Fate
from .sweep import IN_FIGURES, UNSENT, Asked, Clean, Leaver, sweep_loose, sweep_patient


class StillHere(StoreError):
    """Someone still takes care of a patient under way, or is still of the practice."""


def _differ(row: Row, new: dict[str, Any]) -> bool:
    return any(row[key] != value for key, value in new.items())


def _event(row: Row, traces: Traces) -> EventId | None:
    """The event that wrote a row: the key of what falls due may name a chat."""
    return EventId(traces.in_text(row["event"])) if row["event"] else None


@dataclass(slots=True)
class Erasure:
    """One erasure. With ``do`` False nothing is changed, and ``tally`` says what would be.

    ``files`` are the pictures (paths on the shelf) to remove once it is committed.
    """

    whole: Tx
    now: datetime
    years: int
    by: str
    do: bool
    tx: Trial = field(init=False)
    tally: Tally = field(default_factory=lambda: Tally({}, []))
    files: list[str] = field(default_factory=list)
    rows: dict[int, str] = field(default_factory=dict)
    _entry: int = 0
    _whole: set[PatientId] = field(default_factory=set)
    _numbers: dict[str, str] = field(default_factory=dict)
    _names: dict[str, str] = field(default_factory=dict)
    _person_asked: PersonId | None = None  # their names go from kept records, too
    _member: Row | None = None  # and who they are, or were, of the practice
    _called: dict[PersonId, Names] = field(default_factory=dict)
    _left: Asked | None = None  # the same, with how they were ever called
    _leaver: Leaver | None = None  # the same in the record that is being cleaned
    _leavers: dict[PatientId | None, Leaver] = field(default_factory=dict)
    _homes: set[PatientId] = field(default_factory=set)  # of those, whose household they are of

    def __post_init__(self) -> None:
        self.tx = Trial(self.whole, self.do)

    def patient(self, id: PatientId) -> Tally:
        """Erase what the law lets go of a patient and of those at home with it."""
        row = self._ended(id)
        people = [self._person(one["person_id"]) for one in self.tx.all("erase_carers",
                                                                        patient_id=id)]  # fmt: skip
        self._run([id], [one for one in people if self._free(one)])
        return self._close(id, row["name"])

    def person(self, id: PersonId) -> Tally:
        """Erase what the law lets go of someone at home, over all their patients."""
        one = self._person(id)
        active = [p["name"] for p in self.tx.all("erase_patients", person_id=id)
                  if p["state"] != "ended" and p["left_at"] is None]  # fmt: skip
        if active:
            raise StillHere(
                f"{one['name']} still takes care of {', '.join(active)}, and the bot needs "
                "their chat for it. End the course, or let them leave, then erase."
            )
        self._person_asked = id
        self._of_practice(one)
        self._run([], [one])
        return self._close(None, one["name"])

    def member(self, id: int) -> Tally:
        """Erase one who was of the practice, over all patients."""
        row = next((row for row in self.tx.all("erase_staff") if row["id"] == id), None)
        if row is None:
            raise StoreError(f"nobody of the practice has or had the number {id}")
        if row["removed_at"] is None:
            raise StillHere(
                f"{row['name']} is of the practice. An administrator takes them out with "
                f"/staff remove {id}, then erase."
            )
        if (home := self.tx.one("person_of_user", user_id=row["user_id"])) is not None:
            raise StillHere(
                f"{row['name']} is known at home with a patient, too: --person {home['id']} "
                "erases both."
            )
        self._member = row
        self._run([], [])
        return self._close(None, row["name"])

    def _of_practice(self, person: Row) -> None:
        """One who was of the practice is forgotten there, too; one who is stays."""
        rows = self.tx.all("erase_staff")
        self._member = next((row for row in rows if row["user_id"] == person["user_id"]), None)
        if self._stays:
            self.tally.keep(
                f"{person['name']} as one of the practice, with the name under what they did",
                "they are of its staff; an administrator takes them out with /staff remove",
            )

    @property
    def _stays(self) -> bool:
        return self._member is not None and self._member["removed_at"] is None

    @property
    def _gone_member(self) -> bool:
        return self._member is not None and not self._stays

    # ---- Whom and what ---------------------------------------------------------------

    def _look_for_leaver(self, patient: PatientId | None, owner: str = "") -> None:
        if self._left is not None:
            self._leaver = self._left.in_record(self.whole, patient, owner)
            self._leavers[patient] = self._leaver

    def _ended(self, id: PatientId) -> Row:
        row = self.tx.one("erase_patient", id=id)
        if row is None:
            raise StoreError(f"there is no patient {id}")
        if row["state"] != "ended":
            raise StoreError(
                f"{row['name']}'s course is under way. End it first (/end {row['name']} in the "
                "staff chat), then erase."
            )
        return row

    def _person(self, id: PersonId) -> Row:
        row = self.tx.one("erase_person", id=id)
        if row is None:
            raise StoreError(f"there is no person {id}")
        return row

    def _free(self, person: Row) -> bool:
        """Whether nobody needs this person's chat any more; what stays is told."""
        others = [p["name"] for p in self.tx.all("erase_patients", person_id=person["id"])
                  if p["state"] != "ended" and p["left_at"] is None]  # fmt: skip
        if others:
            self.tally.keep(
                f"the chat of {person['name']}",
                f"they still take care of {', '.join(others)}",
            )
        return not others and person["chat_id"] != 0

    def until(self, patient: PatientId) -> date:
        """The day from which the words of a patient's record may go."""
        row = self.tx.one("erase_last", patient_id=patient)
        last = moment(row["at"]) if row and row["at"] else self.now
        return kept_until(last, self.years)

    def _run(self, patients: list[PatientId], people: list[Row]) -> None:
        last = head(self.whole)
        self._entry = (last.entry if last else 0) + 1
        affected = dict.fromkeys(patients)
        for person in people:
            mine = self.tx.all("erase_patients", person_id=person["id"])
            affected.update(dict.fromkeys(p["patient_id"] for p in mine))
        self._whole, self._homes = set(patients), set(affected)
        if self._gone_member:  # who was of the practice may stand in any record
            affected.update(dict.fromkeys(row["id"] for row in self.tx.all("patient_ids")))
        ids = self._accounts(people)
        gone = [id for id in patients if self.now.date() >= self.until(id)]
        for patient in affected:
            self._record(patient, ids, full=patient in gone)
        raw = {name for id, one in self._called.items()
               for name in one.in_raw(others(self.whole, id, self._member, affected))}  # fmt: skip
        if self._left is not None:
            raw.update(self._left.in_raw(self.whole, affected))
        self._look_for_leaver(None)
        found = Traces(ids, self._numbers)
        named = Traces(ids, {**self._numbers, **self._names}, longest_first(raw))
        self._nobody(found, named)
        self._received(named)
        self._asked(found, named)
        strange(self.tx, found)
        self._sent(found, Traces({}, self._names, named.names))
        self._waits(named)
        sweep_loose(self.tx, Clean(found, self._leaver))
        for person in people:
            self._forget(person, names=bool(gone) and set(affected) <= set(gone))
        if self._gone_member and self._member is not None and self._member["user_id"] > 0:
            self.tally.count("former staff: name, chat and user id", 1)
            self.tx.run("erase_staff_put", id=self._member["id"], name=MEMBER)

    def _accounts(self, people: list[Row]) -> dict[int, str]:
        """What stands for each account afterwards; and how all of them were called is found."""
        ids: dict[int, str] = {}
        for person in people:
            for number in (person["user_id"], person["chat_id"]):
                if number > 0:
                    ids[number] = f"p{person['id']}"
            if person["chat_id"] != 0:
                self._called[person["id"]] = called = names_of(self.whole, person)
                self._names |= dict.fromkeys(called.whole, GONE)
        found = self._called.get(self._person_asked or PersonId(0), Names())
        events = frozenset(
            event for one in people if one["id"] == self._person_asked
            for event in events_of(self.whole, one["user_id"])
        )  # fmt: skip
        if self._member is not None and not self._stays:
            for number in (self._member["user_id"], self._member["chat_id"] or 0):
                if number > 0:
                    ids.setdefault(number, f"m{self._member['id']}")
            was = names_of_member(self.whole, self._member)
            self._names |= dict.fromkeys(was.whole, GONE)
            found = Names(was.whole | found.whole, was.accounts | found.accounts)
        if self._member is not None or self._person_asked is not None:
            instead = MEMBER if self._person_asked is None else FORMER
            self._left = Asked(found, instead, self._person_asked, self._member, events)
        return ids

    # ---- A patient's record ------------------------------------------------------------

    def _record(self, id: PatientId, ids: dict[int, str], full: bool) -> None:
        row = self.tx.one("erase_patient", id=id)
        if row is None:
            return
        plan = Plan.model_validate_json(row["plan"])
        carers = self.tx.all("erase_carers", patient_id=id)
        names = {self._person(one["person_id"])["name"] for one in carers} | {plan.owner}
        names |= {name for called in self._called.values() for name in called.whole}
        self._look_for_leaver(id, plan.owner)
        last = id in self._homes and (
            id in self._whole or all(one["left_at"] for one in carers)
            or (self._left is not None and self._left.names.may_be(plan.owner))
        )  # fmt: skip
        if id in self._homes and not last and plan.phone:
            self.tally.keep(f"the phone number in the plan of {row['name']}", NUMBER_AT_HOME)
        traces = Traces(ids, phones(plan.phone) if last else {})
        self._numbers |= traces.phrases
        if id in self._whole:
            self._names |= {plan.patient: GONE, plan.owner: GONE}
        if full:
            traces = Traces(ids, {**traces.phrases, plan.patient: GONE})
        left = without_names(plan) if full else without_phone(plan) if last else plan
        self._plan(row, left, full)
        for entry in self.tx.all("erase_log", patient_id=id):
            self._entry_of(entry, traces, names if full else None)
        figures = IN_FIGURES if full else UNSENT if id in self._whole else None
        clean = Clean(traces, self._leaver, frozenset(names if full else ()), figures)
        sweep_patient(self.tx, id, clean)
        self._pictures(id, clean, full)
        self._told_what_stays(row, full)

    def _told_what_stays(self, row: Row, full: bool) -> None:
        id = row["id"]
        if self._left is not None:
            whose = "all patients" if self._gone_member else row["name"]
            self.tally.keep(
                "what they and others wrote of the patient, and in it a name of theirs that is "
                "an ordinary word or also somebody else's; the owner and the clinician in the plan",
                f"it is part of the medical record of {whose}",
            )
        if full:
            self.tally.keep(
                "the course in figures: doses, sessions, observations, findings",
                "it names nobody; the practice's statistics are made of it",
            )
        elif id in self._homes:
            self.tally.keep(*kept_record(row, self.years, self.until(id), self.now.date()))

    def _plan(self, row: Row, plan: Plan, full: bool) -> None:
        """Who ordered and who owns stay; who confirmed or changed something in it does not."""
        text, name = plan.model_dump_json(), GONE if full else row["name"]
        if self._leaver:
            kept = {"owner": plan.owner, "clinician": plan.clinician}
            text = packed({**json.loads(self._leaver.told(text)), **kept})
            if json.loads(text) == json.loads(row["plan"]):
                text = row["plan"]
        if text != row["plan"] or name != row["name"]:
            what = "plan: phone number" + (", names, hours" if full else "")
            self.tally.count(what if row["id"] in self._homes else "plan: names", 1)
            self.tx.run("erase_patient_put", id=row["id"], name=name, plan=text)

    def _entry_of(
        self, row: Row, traces: Traces, names: set[str] | None, was: Row | None = None
    ) -> None:
        """``was``: the entry as it is, where ``row`` is it with less already."""
        author, text, data = row["author"], traces.in_text(row["text"]), traces.in_json(row["data"])
        if names is not None and row["kind"] != ERASED:
            author, text, data = wordless(row["kind"], author, data, names)
        elif self._leaver and row["kind"] != ERASED:
            staff = self._leaver.member is not None and row["member_id"] == self._leaver.member
            author = self._leaver.by(author, staff=staff, mine=self._leaver.did(row))
            data = self._leaver.told(data)
            if row["kind"] not in OWN_WORDS:
                text = self._leaver.formal.in_text(text)
            text = self._leaver.sure.in_text(text)
        event = _event(row, traces)
        if not _differ(was or row, {"author": author, "text": text, "data": data, "event": event}):
            return
        salt, by = token_hex(16), replace(cause_of(row), event=event)
        self.rows[row["id"]] = digest_of(salt, author, text, data, by)
        self.tally.count(
            "entries of the log: "
            + ("their words" if names is not None or was is not None else "chat ids and phone"),
            1,
        )
        self.tx.run("erase_log_put", id=row["id"], author=author, text=text, data=data, salt=salt,
                    event=event, erased_in=self._entry)  # fmt: skip

    def _nobody(self, traces: Traces, named: Traces) -> None:
        """Entries about no patient. Of those that turned somebody away nothing is left."""
        for row in batches(nobody(self.whole), "id"):
            said = f"{row['author']}\n{row['text']}\n{row['data']}"
            if row["kind"] in LOOSE and named.in_text(said) != said:
                bare = {**row, "text": "", "data": "{}"}
                bare["author"] = (
                    OWNER if named.in_text(row["author"]) != row["author"] else row["author"]
                )
                self._entry_of(bare, traces, None, row)
            else:
                self._entry_of(row, traces, None)

    def _asked(self, found: Traces, named: Traces) -> None:
        self.tally.count("questions that were open in a chat",
                         questions(self.tx, self._whole, found, named))  # fmt: skip

    def _pictures(self, id: PatientId, clean: Clean, full: bool) -> None:
        for row in self.tx.all("erase_rows_media", patient_id=id):
            params = {"id": row["id"], "source": clean.traces.in_text(row["source"])}
            erased = {"file_unique": f"erased-{row['id']}"}
            if full:
                if row["path"]:
                    self.files.append(row["path"])
                self.tally.count("pictures and films", 1)
                self.tx.run("erase_media_gone", **params, **erased)
                continue
            theirs = id in self._whole or row["person_id"] == self._person_asked
            way = {"file_id": row["file_id"], "file_unique": row["file_unique"]}
            params |= {"file_id": "", **erased} if theirs else way
            params["caption"] = clean.value("media", "caption", Fate.words, row)
            if _differ(row, params):
                self.tx.run("erase_media_put", **params)

    # ---- Messages and people -----------------------------------------------------------

    def _received(self, traces: Traces) -> None:
        """Raw copies go wherever they speak of the patient: what counts is in the log."""
        for row in batches(inbox(self.whole), "update_id"):
            if traces.found_in(row["body"]) and traces.in_json(row["body"]) != row["body"]:
                self.tally.count("raw messages received", 1)
                body = packed({"update_id": row["update_id"]})
                self.tx.run("erase_inbox_put", update_id=row["update_id"], body=body)

    def _sent(self, traces: Traces, named: Traces) -> None:
        """What the log has of it is without the leaver's names: so must this be. ``named``: by
        name, too, in what is about no one patient (the board, a list)."""
        for row in batches(self._outbox, "id"):
            theirs = row["chat_id"] in traces.ids
            about = theirs or row["patient_id"] in self._whole or traces.found_in(row["body"])
            if not about and (leaver := self._leavers.get(row["patient_id"])) is not None:
                about = leaver.formal.found_in(row["body"]) or leaver.sure.found_in(row["body"])
            about = about or (row["patient_id"] is None and named.found_in(row["body"]))
            # One that was emptied for somebody else may still bear their chat.
            new = {"dedupe": traces.in_text(row["dedupe"]), "topic": traces.in_text(row["topic"]),
                   "chat_id": 0 if theirs else row["chat_id"],
                   "event": _event(row, traces)}  # fmt: skip
            said = bool(about and row["body"] != "{}")
            self.tally.count("raw messages sent", said)
            if said or _differ(row, new):
                body = "{}" if about else row["body"]
                self.tx.run("erase_outbox_put", id=row["id"], body=body, **new)

    def _waits(self, named: Traces) -> None:
        """What is under way when somebody erases at the computer is left as it is."""
        waits = sum(named.found_in(row["body"]) for row in self.tx.all("erase_under_way"))
        if waits:
            self.tally.keep(
                f"messages that wait to be read or sent: {waits}",
                "erase again when they are through; the bot tries them every few minutes",
            )

    def _outbox(self, after: int) -> list[Row]:
        return self.tx.all("erase_outbox", after=after, most=BATCH)

    def _forget(self, person: Row, names: bool) -> None:
        if person["chat_id"] != 0:
            self.tally.count("people: chat and user id", 1)
        name = FORMER if self._person_asked is not None else person["name"]
        self.tx.run("erase_person_put", id=person["id"], name=GONE if names else name)
        self.tx.run("erase_carer_put", person_id=person["id"], now=stamp(self.now))

    # ---- The end -----------------------------------------------------------------------

    def _close(self, patient: PatientId | None, name: str) -> Tally:
        self.tally.keep("the log's seals, and one entry that says what was erased",
                        "so that the rest of the record can still be proven")  # fmt: skip
        self.tally.keep("copies made with `slowleash backup`, what was exported, and names in the "
                        "settings and in what the program has printed",
                        "they are not in this database: remove them yourself")  # fmt: skip
        if self.do and (self.rows or self.tally.goes):
            text = "; ".join(f"{n} {what}" for what, n in self.tally.goes.items())
            rows: dict[str, object] = {str(id): digest for id, digest in self.rows.items()}
            self.tx.run("begun_clear")  # its keys may name a chat
            self.tx.run("setting_first", key=ANEW, value=stamp(self.now))
            self.tx.run("setting_drop", key=ANEW_AT)  # of an earlier one that had failed
            made = append(self.whole, ERASED, self.by, text, self.now, patient, {"rows": rows})
            if made != self._entry:
                raise StoreError("the log grew while it was being erased; try again")
        return self.tally
