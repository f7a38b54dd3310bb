"""Erasure in the database. The chain of the log holds: each entry whose words go is named,
with a digest of what is left, in one new entry (``bot.records.chain``)."""

from __future__ import annotations

import json
from dataclasses import dataclass, field, replace
from datetime import date, datetime
from secrets import token_hex
from typing import Any, Final

from bot.model.ids import EventId, PatientId, PersonId
from bot.model.plan import Plan
from bot.records.chain import ERASED, digest_of
from bot.records.erasure import (
    FORMER,
    GONE,
    LOOSE,
    OWN_WORDS,
    OWNER,
    Tally,
    Traces,
    case_in_figures,
    hold_in_figures,
    kept_until,
    packed,
    phones,
    renamed,
    without_names,
    without_phone,
    wordless,
)
from bot.records.names import Names

from .audit import cause_of, head
from .chaining import append
from .database import Row, StoreError, Tx, moment, stamp
from .erase_names import BATCH, Trial, batches, inbox, names_of, nobody, others, strange

NO_TRACES: Final = Traces({}, {})


class StillHere(StoreError):
    """Someone still takes care of a patient under way."""


def _differ(row: Row, new: dict[str, Any]) -> bool:
    return any(row[key] != value for key, value in new.items())


def _speaks(value: dict[str, Any], of: Traces) -> bool:
    return bool(of.in_value(value) != value)


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
    _leaver: PersonId | None = None  # one who asked; their names go from kept records, too
    _member: int | None = None  # and who they are of the practice, if they still are
    _called: dict[PersonId, Names] = field(default_factory=dict)
    _formal: Traces = NO_TRACES  # the leaver's names in this record, in what we wrote
    _sure: Traces = NO_TRACES  # and those in what people wrote
    _affected: set[PatientId] = field(default_factory=set)

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
        self._leaver = id
        self._of_practice(one)
        self._run([], [one])
        return self._close(None, one["name"])

    def _of_practice(self, person: Row) -> None:
        """One who was of the practice is forgotten there, too; one who is stays."""
        for row in self.tx.all("erase_staff"):
            if row["user_id"] != person["user_id"]:
                continue
            if row["removed_at"] is None:
                self._member = row["id"]
                self.tally.keep(
                    f"{person['name']} as one of the practice, with the name under what they did",
                    "they are of its staff; an administrator takes them out with /staff remove",
                )
            else:
                self.tally.count("former staff: name, chat and user id", 1)
                self.tx.run("erase_staff_put", id=row["id"], name=FORMER)

    # ---- Whom and what ---------------------------------------------------------------

    def _look_for_leaver(self, patient: PatientId, plan: Plan) -> None:
        """What is to be found of who asked, in one record. A name that another one there has,
        too, is theirs; the owner's stays."""
        self._formal = self._sure = NO_TRACES
        if self._leaver in self._called:
            called, taken = self._called[self._leaver], others(self.whole, self._leaver, [patient])
            own = sorted(called.whole - taken, key=len, reverse=True)
            self._formal = Traces({}, dict.fromkeys(own, FORMER))
            words = called.in_words(taken | {plan.owner})
            self._sure = Traces({}, dict.fromkeys(words, FORMER))

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
        ids = {number: f"p{person['id']}" for person in people
               for number in (person["user_id"], person["chat_id"]) if number > 0}  # fmt: skip
        self._whole, self._affected = set(patients), set(affected)
        for person in people:
            if person["chat_id"] != 0:
                self._called[person["id"]] = called = names_of(self.whole, person)
                self._names |= dict.fromkeys(called.whole, GONE)
        gone = [id for id in patients if self.now.date() >= self.until(id)]
        for patient in affected:
            self._record(patient, ids, full=patient in gone)
        for id, called in self._called.items():
            self._names |= dict.fromkeys(called.in_raw(others(self.whole, id, affected)), GONE)
        named = Traces(ids, {**self._numbers, **self._names})
        self._nobody(Traces(ids, self._numbers), named)
        self._received(named)
        self._threads(named)
        strange(self.tx, Traces(ids, self._numbers))
        self._sent(Traces(ids, self._numbers), Traces({}, self._names))
        for person in people:
            self._forget(person, names=bool(gone) and set(affected) <= set(gone))

    # ---- A patient's record ------------------------------------------------------------

    def _record(self, id: PatientId, ids: dict[int, str], full: bool) -> None:
        row = self.tx.one("erase_patient", id=id)
        if row is None:
            return
        plan = Plan.model_validate_json(row["plan"])
        names = {self._person(one["person_id"])["name"]
                 for one in self.tx.all("erase_carers", patient_id=id)} | {plan.owner}  # fmt: skip
        names |= {name for called in self._called.values() for name in called.whole}
        self._look_for_leaver(id, plan)
        traces = Traces(ids, phones(plan.phone))
        self._numbers |= traces.phrases
        if id in self._whole:
            self._names |= {plan.patient: GONE, plan.owner: GONE}
        if full:
            traces = Traces(ids, {**traces.phrases, plan.patient: GONE})
        self._plan(row, without_names(plan) if full else without_phone(plan), full)
        for entry in self.tx.all("erase_log", patient_id=id):
            self._entry_of(entry, traces, names if full else None)
        self._rows(id, traces, names if full else set(), full)
        if self._leaver:
            self.tally.keep(
                "what they and others wrote of the patient, and in it a name of theirs that is "
                "an ordinary word or also somebody else's; the owner's name in the plan",
                f"it is part of the medical record of {row['name']}",
            )
        self._pictures(id, traces, full)
        if full:
            self.tally.keep(
                "the course in figures: doses, sessions, observations, findings",
                "it names nobody; the practice's statistics are made of it",
            )
        elif self.now.date() >= self.until(id):
            self.tally.keep(
                f"the words of {row['name']}'s record",
                f"only the chat of one person was asked for; `slowleash erase {id}` erases them, "
                f"since they need be kept no longer (from {self.until(id)})",
            )
        else:
            self.tally.keep(
                f"the medical record of {row['name']}, with the words and names in it, and its "
                "pictures",
                f"it must be kept for {self.years} years, until {self.until(id)} (retention_years "
                "in the settings; local law decides)",
            )

    def _plan(self, row: Row, plan: Plan, full: bool) -> None:
        text, name = plan.model_dump_json(), GONE if full else row["name"]
        if text != row["plan"] or name != row["name"]:
            self.tally.count("plan: phone number" + (", names, hours" if full else ""), 1)
            self.tx.run("erase_patient_put", id=row["id"], name=name, plan=text)

    def _entry_of(
        self, row: Row, traces: Traces, names: set[str] | None, was: Row | None = None
    ) -> None:
        """``was``: the entry as it is, where ``row`` is it with less already."""
        author, text, data = row["author"], traces.in_text(row["text"]), traces.in_json(row["data"])
        if names is not None and row["kind"] != ERASED:
            author, text, data = wordless(row["kind"], author, data, names)
        elif self._leaver and row["kind"] != ERASED:
            if self._member is None or row["member_id"] != self._member:
                author = self._formerly(author)
            data = self._without_leaver(data)
            if row["kind"] not in OWN_WORDS:
                text = self._formal.in_text(text)
            text = self._sure.in_text(text)
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

    def _formerly(self, name: str) -> str:
        return FORMER if name.partition(" (")[0] in self._formal.phrases else name

    def _without_leaver(self, data: str) -> str:
        if not self._leaver:
            return data
        told = json.loads(data)
        left = told
        for name in self._formal.phrases:
            left = renamed(left, name, FORMER)
        if isinstance(left.get("to"), str):  # it may name several
            left["to"] = self._formal.in_text(left["to"])
        left = self._sure.in_value(left)
        return data if left == told else packed(left)

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

    def _threads(self, named: Traces) -> None:
        """What a chat is in the middle of: an order that was never confirmed, a question."""
        for row in self.tx.all("erase_threads"):
            asked = json.loads(row["body"]) if row["body"].startswith("[") else []
            left = [one for one in asked if one.get("patient") not in self._whole
                    and not _speaks(one, named)]  # fmt: skip
            if len(left) != len(asked):
                self.tally.count("questions that were open in a chat", len(asked) - len(left))
                self.tx.run("erase_thread_put", chat_id=row["chat_id"], body=packed(left))

    def _rows(self, id: PatientId, traces: Traces, names: set[str], full: bool) -> None:
        """The rows that say where they came from."""

        def name(text: str | None) -> str | None:
            return OWNER if text in names else text and self._formerly(text)

        for row in self.tx.all("erase_rows_observation", patient_id=id):
            new: dict[str, Any] = {
                "source": traces.in_text(row["source"]),
                "author": name(row["author"]),
                "event": _event(row, traces),
            }
            if _differ(row, new):
                self.tx.run("erase_observation_put", id=row["id"], **new)
        for row in self.tx.all("erase_rows_item", patient_id=id):
            source = row["source"] and traces.in_text(row["source"])
            new = {"source": source, "by_name": name(row["by_name"]),
                   "body": traces.in_json(row["body"]), "event": _event(row, traces)}  # fmt: skip
            if _differ(row, new):
                self.tx.run("erase_item_put", id=row["id"], **new)
        for row in self.tx.all("erase_rows_case", patient_id=id):
            body = case_in_figures(row["body"]) if full else traces.in_json(row["body"])
            note = self._sure.in_text(row["note"]) if row["note"] else row["note"]
            new = {"body": self._without_leaver(body), "note": None if full else note}
            if _differ(row, new):
                self.tx.run("erase_case_put", id=row["id"], **new)
        for row in self.tx.all("erase_rows_hold", patient_id=id):
            body = hold_in_figures(row["body"]) if full else row["body"]
            new = {"body": self._sure.in_json(traces.in_json(body)), "event": _event(row, traces)}
            id_then = traces.in_text(row["id"])  # of what fell due: it may name a chat
            if id_then != row["id"] or _differ(row, new):
                self.tx.run("erase_hold_put", id=row["id"], new=id_then, **new)
        for row in self.tx.all("erase_rows_due", patient_id=id):
            new_key, data = traces.in_text(row["key"]), traces.in_json(row["data"])
            data = self._sure.in_json(self._formal.in_json(data))
            said = "text" in json.loads(data)  # a raw copy of what was sent
            if row["state"] != "waiting" and (full or (said and id in self._whole)):
                data = "{}"
            if (new_key, data) != (row["key"], row["data"]):
                self.tx.run("erase_due_put", key=row["key"], new=new_key, data=data)
        for row in self.tx.all("erase_rows_review", patient_id=id):
            new = {"body": self._sure.in_json(traces.in_json(row["body"]))}
            if _differ(row, new):
                self.tx.run("erase_review_put", id=row["id"], **new)

    def _pictures(self, id: PatientId, traces: Traces, full: bool) -> None:
        for row in self.tx.all("erase_rows_media", patient_id=id):
            params = {"id": row["id"], "source": traces.in_text(row["source"]),
                      "file_unique": f"erased-{row['id']}"}  # fmt: skip
            if full:
                if row["path"]:
                    self.files.append(row["path"])
                self.tally.count("pictures and films", 1)
                self.tx.run("erase_media_gone", **params)
            else:
                caption = self._sure.in_text(row["caption"])
                self.tx.run("erase_media_put", **params, caption=caption)

    # ---- Messages and people -----------------------------------------------------------

    def _received(self, traces: Traces) -> None:
        """Raw copies go wherever they speak of the patient: what counts is in the log."""
        for row in batches(inbox(self.whole), "update_id"):
            if traces.found_in(row["body"]) and traces.in_json(row["body"]) != row["body"]:
                self.tally.count("raw messages received", 1)
                body = packed({"update_id": row["update_id"]})
                self.tx.run("erase_inbox_put", update_id=row["update_id"], body=body)

    def _sent(self, traces: Traces, named: Traces) -> None:
        """``named``: by name, too, in what is about no one patient (the board, a list)."""
        for row in batches(self._outbox, "id"):
            theirs = row["chat_id"] in traces.ids
            about = theirs or row["patient_id"] in self._whole or traces.found_in(row["body"])
            loose = row["patient_id"] is None or (
                self._leaver and row["patient_id"] in self._affected
            )
            about = about or bool(loose and named.found_in(row["body"]))
            if row["body"] != "{}" and about:
                self.tally.count("raw messages sent", 1)
                self.tx.run(
                    "erase_outbox_put", id=row["id"], dedupe=traces.in_text(row["dedupe"]),
                    topic=traces.in_text(row["topic"]), chat_id=0 if theirs else row["chat_id"],
                    event=_event(row, traces),
                )  # fmt: skip

    def _outbox(self, after: int) -> list[Row]:
        return self.tx.all("erase_outbox", after=after, most=BATCH)

    def _forget(self, person: Row, names: bool) -> None:
        if person["chat_id"] != 0:
            self.tally.count("people: chat and user id", 1)
        name = FORMER if self._leaver else person["name"]
        self.tx.run("erase_person_put", id=person["id"], name=GONE if names else name)
        self.tx.run("erase_carer_put", person_id=person["id"], now=stamp(self.now))
        self.tx.run("erase_invitation", user_id=person["user_id"])
        for called in {person["name"], *self._called.get(person["id"], Names()).whole}:
            self.tx.run("erase_invited", name=called)
        self.tx.run("erase_turned_away", sender=person["user_id"])
        for chat in {person["chat_id"], person["user_id"]}:
            self.tx.run("erase_thread", chat_id=chat)
            self.tx.run("erase_moved", chat_id=chat)

    # ---- The end -----------------------------------------------------------------------

    def _close(self, patient: PatientId | None, name: str) -> Tally:
        self.tally.keep("the log's seals, and one entry that says what was erased",
                        "so that the rest of the record can still be proven")  # fmt: skip
        self.tally.keep("copies made with `slowleash backup`, and what was exported",
                        "they are not in this database: remove them yourself")  # fmt: skip
        if self.do and (self.rows or self.tally.goes):
            text = "; ".join(f"{n} {what}" for what, n in self.tally.goes.items())
            rows: dict[str, object] = {str(id): digest for id, digest in self.rows.items()}
            made = append(self.whole, ERASED, self.by, text, self.now, patient, {"rows": rows})
            if made != self._entry:
                raise StoreError("the log grew while it was being erased; try again")
        return self.tally
