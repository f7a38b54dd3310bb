"""The record as an HL7 FHIR R4 bundle (hl7.org/fhir/R4), for systems that take it.

Plain dictionaries, written by hand: a library of models weighs 27 MB, and only the tests
need it to prove that they are valid. All ids come from the patient's and the row's own
numbers: the same record gives the same bundle.
"""

from __future__ import annotations

from datetime import datetime
from typing import Final
from uuid import UUID, uuid5

from bot.model.plan import Medicine
from bot.model.text import Lang
from bot.talk.words import Words

from .fhir_parts import (
    ANIMAL,
    CATEGORY,
    LOINC,
    SPECIES,
    UCUM,
    Resource,
    code,
    coding,
    concept,
    instant,
    local_code,
)
from .whole import CaseFile, Entry, Statement, WholeRecord

SPACE: Final = UUID("5f0c0b57-6a8e-5f8a-9d0e-3f1d6f1f9c11")
"""Where our ids live; made once, never changed."""
_GIVEN: Final = ("given", "doubled", "vomited_up")
"""Answers that say that the medicine was given, whatever became of it."""
_STATES: Final = {"active": "active", "paused": "on-hold", "ended": "completed"}
_OBSERVATION_STATES: Final = {
    "stands": "final", "corrected": "entered-in-error", "undone": "entered-in-error",
}  # fmt: skip


def bundle(
    record: WholeRecord, now: datetime, words: Words, lang: Lang, system: str = ""
) -> Resource:
    """A collection: Patient, the people, CarePlan, MedicationRequest and
    MedicationAdministration, Observation, Communication, Flag.

    ``system`` tells apart the patients of different practices with the same number; the
    practice's name is enough.
    """
    return _Maker(record, now, words, lang, system).bundle()


class _Maker:
    """Makes the resources of one record; they refer to each other by their full URLs."""

    def __init__(
        self, record: WholeRecord, now: datetime, words: Words, lang: Lang, system: str
    ) -> None:
        self.record, self.now, self.words, self.lang = record, now, words, lang
        self.space = uuid5(SPACE, f"{system}/{record.id}")
        self.patient = self.ref("Patient", "0")
        self.bot = self.ref("Device", "bot")
        self.staff: dict[str, Resource] = {}

    def url(self, kind: str, name: str) -> str:
        return f"urn:uuid:{uuid5(self.space, f'{kind}/{name}')}"

    def ref(self, kind: str, name: str, display: str = "") -> Resource:
        made: Resource = {"reference": self.url(kind, name), "type": kind}
        return {**made, "display": display} if display else made

    def entry(self, kind: str, name: str, body: Resource) -> Resource:
        url = self.url(kind, name)
        resource = {"resourceType": kind, "id": url.removeprefix("urn:uuid:"), **body}
        return {"fullUrl": url, "resource": resource}

    def person(self, name: str) -> Resource:
        """Who said or did it: someone at home, the bot, or staff."""
        if name in ("bot", "rule"):
            return self.bot
        for carer in self.record.carers:
            if carer.name == name:
                return self.ref("RelatedPerson", str(carer.id), carer.name)
        self.staff.setdefault(name, {"active": True, "name": [{"text": name}]})
        return self.ref("Practitioner", name, name)

    def bundle(self) -> Resource:
        record = self.record
        made = [
            self.entry("Patient", "0", self.animal()),
            self.entry("Device", "bot", {
                "status": "active", "deviceName": [{"name": "slowleash", "type": "other"}],
                "note": [{"text": "A program that sends prompts and reads replies."}],
            }),
            *(self.carer(number) for number in range(len(record.carers))),
            self.entry("CarePlan", "0", self.plan()),
            *(self.entry("MedicationRequest", str(number), self.order(medicine))
              for number, medicine in enumerate(record.plan.medicines)),
            *(self.entry("MedicationAdministration", str(line.id), self.dose(line))
              for line in record.entries if self.is_dose(line)),
            *(self.entry("Observation", str(one.noted.id), self.observation(one))
              for one in record.statements if self.is_observation(one)),
            *(self.entry("MedicationAdministration", f"said-{one.noted.id}", self.dose_said(one))
              for one in record.statements if self.is_dose_said(one)),
            *self.communications(),
            *(self.entry("Flag", case.id, self.flag(case)) for case in record.cases),
        ]  # fmt: skip
        made += [self.entry("Practitioner", name, body) for name, body in self.staff.items()]
        return {
            "resourceType": "Bundle",
            "type": "collection",
            "timestamp": instant(self.now),
            "identifier": {"system": "urn:ietf:rfc:3986", "value": self.url("Bundle", "0")},
            "entry": made,
        }

    def animal(self) -> Resource:
        plan = self.record.plan
        species = {"url": "species", "valueCodeableConcept": {
            "coding": list(SPECIES[plan.species]), "text": plan.species}}  # fmt: skip
        return {
            "extension": [{"url": ANIMAL, "extension": [species]}],
            "active": True,
            "name": [{"text": plan.patient}],
        }

    def carer(self, number: int) -> Resource:
        carer = self.record.carers[number]
        period = {"start": instant(carer.joined_at)}
        if carer.left_at is not None:
            period["end"] = instant(carer.left_at)
        return self.entry("RelatedPerson", str(carer.id), {
            "active": carer.left_at is None,
            "patient": self.patient,
            "relationship": [{"text": "takes care of the patient at home"}],
            "name": [{"text": carer.name}],
            "period": period,
            "communication": [{"language": code("urn:ietf:bcp:47", carer.lang)}],
        })  # fmt: skip

    def plan(self) -> Resource:
        record, plan = self.record, self.record.plan
        period = {"start": plan.surgery.isoformat()}
        if record.ended_at is not None:
            period["end"] = instant(record.ended_at)
        spans = {**record.protocol.spans, **plan.spans}

        def day(named: int | str) -> int:
            return named if isinstance(named, int) else spans[named]

        activities = [
            {"detail": {
                "status": "completed" if record.ended_at else "in-progress",
                "description": f"{one.text.say(self.lang)} (days {day(one.from_day)} to "
                f"{day(one.to_day)}, every {one.every_days} day(s): {', '.join(one.at)})",
            }}
            for one in record.protocol.activities
            if plan.species in one.species
        ]  # fmt: skip
        return {
            "status": _STATES.get(record.state, "unknown"),
            "intent": "order",
            "title": record.protocol.title.say(self.lang),
            "description": f"{plan.procedure}; protocol {plan.protocol} "
            f"{plan.protocol_version or ''}".rstrip(),
            "subject": self.patient,
            "period": period,
            "created": instant(record.enrolled_at),
            "author": self.person(plan.clinician),
            "activity": activities,
        }

    def order(self, medicine: Medicine) -> Resource:
        timing: Resource = {"frequency": 1, "period": medicine.every_hours, "periodUnit": "h"}
        if not medicine.as_needed:
            timing["boundsDuration"] = {
                "value": medicine.days, "unit": "d", "system": UCUM, "code": "d",
            }  # fmt: skip
        dosage: Resource = {
            "text": medicine.sig
            or f"{medicine.amount.say(self.lang)}, every {medicine.every_hours} h",
            "timing": {"repeat": timing},
            "asNeededBoolean": medicine.as_needed,
            "route": {"text": medicine.route},
        }
        if medicine.dose_mg is not None:
            mg = {"value": medicine.dose_mg, "unit": "mg", "system": UCUM, "code": "mg"}
            dosage["doseAndRate"] = [{"doseQuantity": mg}]
        return {
            "status": "completed" if self.record.ended_at else "active",
            "intent": "order",
            "medicationCodeableConcept": {"text": medicine.name},
            "subject": self.patient,
            "authoredOn": instant(self.record.enrolled_at),
            "requester": self.person(self.record.plan.clinician),
            "dosageInstruction": [dosage],
        }

    def is_dose(self, line: Entry) -> bool:
        """A dose that came due and of which something is known (that nobody answered, too)."""
        return line.item.kind == "dose" and line.state in ("answered", "unanswered")

    def dose(self, line: Entry) -> Resource:
        given = line.answer in _GIVEN
        status = "completed" if given else "not-done"
        if line.state == "unanswered":
            status = "unknown"
        body: Resource = {
            "status": status,
            "medicationCodeableConcept": {"text": line.item.med or "medicine"},
            "subject": self.patient,
            "effectiveDateTime": instant(line.at if given and line.at else line.due_at),
            "note": [{"text": f"due {instant(line.item.slot_at or line.due_at)}; "
                              f"{line.answer or 'not answered'}"}],
        }  # fmt: skip
        if status == "not-done":
            body["statusReason"] = [local_code(f"dose-{line.answer}", line.answer or "")]
        if line.by is not None:
            body["performer"] = [{"actor": self.person(line.by)}]
        names = [medicine.name for medicine in self.record.plan.medicines]
        if line.item.med in names:
            body["request"] = self.ref("MedicationRequest", str(names.index(line.item.med)))
        return body

    def is_dose_said(self, one: Statement) -> bool:
        """A dose of a medicine that has no slots: it was given when it was needed."""
        seen = one.observation
        needed = {m.name for m in self.record.plan.medicines if m.as_needed}
        return seen.about == "dose" and seen.value == "given" and seen.med in needed

    def dose_said(self, one: Statement) -> Resource:
        names = [medicine.name for medicine in self.record.plan.medicines]
        med = one.observation.med or ""
        return {
            "status": "completed" if one.stands else "entered-in-error",
            "medicationCodeableConcept": {"text": med},
            "subject": self.patient,
            "effectiveDateTime": instant(one.noted.at),
            "performer": [{"actor": self.person(one.author)}],
            "request": self.ref("MedicationRequest", str(names.index(med))),
        }

    def is_observation(self, one: Statement) -> bool:
        """What is no dose given or missed (those are administrations) and no request."""
        seen = one.observation
        plain_dose = seen.about == "dose" and seen.value in ("given", "missed")
        return seen.about != "request" and not plain_dose

    def observation(self, one: Statement) -> Resource:
        seen = one.observation
        body: Resource = {
            "status": _OBSERVATION_STATES.get(one.state, "unknown"),
            "category": [concept(CATEGORY, "survey", "Survey")],
            "code": local_code(seen.about, seen.about.replace("_", " ")),
            "subject": self.patient,
            "effectiveDateTime": instant(one.noted.at),
            "performer": [self.person(one.author)],
            "valueCodeableConcept": {
                **local_code(f"{seen.about}-{seen.value}", seen.value.replace("_", " ")),
                "text": self.words.observation(seen, self.lang),
            },
        }
        if seen.celsius is not None:
            body["category"] = [concept(CATEGORY, "vital-signs", "Vital Signs")]
            body["code"]["coding"].insert(0, coding(LOINC, "8310-5", "Body temperature"))
            del body["valueCodeableConcept"]
            body["valueQuantity"] = {
                "value": seen.celsius, "unit": "°C", "system": UCUM, "code": "Cel",
            }  # fmt: skip
        amounts = (("minutes", "min"), ("metres", "m"), ("hours", "h"), ("count", "{count}"))
        parts = [
            {"code": {"text": name}, "valueQuantity": {
                "value": value, "unit": name, "system": UCUM, "code": unit}}
            for name, unit in amounts
            if (value := getattr(seen, name)) is not None
        ]  # fmt: skip
        if parts:
            body["component"] = parts
        told = [f"day {one.noted.day}", *(["not sure"] if seen.unsure else []),
                *([f"trend: {seen.trend}"] if seen.trend else []),
                *([f"detail: {seen.detail}"] if seen.detail else [])]  # fmt: skip
        body["note"] = [{"text": "; ".join(told)}]
        return body

    def communications(self) -> list[Resource]:
        """What people and the bot said to each other."""
        made = []
        for entry in self.record.log:
            if entry.kind not in ("said", "sent", "staff", "tapped") or not entry.text.strip():
                continue
            body: Resource = {
                "status": "completed",
                "subject": self.patient,
                "sent": instant(entry.at),
                "sender": self.person(entry.author),
                "payload": [{"contentString": entry.text}],
            }
            to = str(entry.data.get("to", ""))
            if to and to != "staff":
                body["recipient"] = [self.person(name) for name in to.split(", ")]
            made.append(self.entry("Communication", str(entry.id), body))
        return made

    def flag(self, case: CaseFile) -> Resource:
        period = {"start": instant(case.opened_at)}
        if case.closed_at is not None:
            period["end"] = instant(case.closed_at)
        because = [
            finding.get(self.lang, "")
            for entry in case.body.get("entries", ())
            for finding in entry.get("findings", ())
        ]
        text = " ".join(dict.fromkeys(filter(None, because))) or case.matter.replace("_", " ")
        return {
            "status": "inactive" if case.closed_at else "active",
            "category": [local_code(f"urgency-{case.urgency.name}",
                                    case.urgency.name.replace("_", " "))],
            "code": {**local_code(f"matter-{case.matter}", case.matter.replace("_", " ")),
                     "text": text},
            "subject": self.patient,
            "period": period,
            "author": self.bot,
        }  # fmt: skip
