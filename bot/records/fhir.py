"""The record as an HL7 FHIR R4 bundle (hl7.org/fhir/R4), for systems that take it.

Plain dictionaries, written by hand: a library of models weighs 27 MB, and only the tests
need it to prove that they are valid. All ids come from the patient's and the row's own
numbers: the same record gives the same bundle.
"""

from __future__ import annotations

from datetime import datetime
from typing import Final

from bot.context.words import Words
from bot.model.text import Lang
from bot.records.record import settled

from .fhir_doses import dose, dose_said, is_dose, is_dose_said, order
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
from .fhir_refs import Refs
from .whole import CaseFile, Statement, WholeRecord

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


class _Maker(Refs):
    """Makes the resources of one record."""

    def __init__(
        self, record: WholeRecord, now: datetime, words: Words, lang: Lang, system: str
    ) -> None:
        super().__init__(record, lang, system)
        self.now, self.words = now, words

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
            *(self.entry("MedicationRequest", str(number), order(self, medicine, self.now))
              for number, medicine in enumerate(record.plan.medicines)),
            *(self.entry("MedicationAdministration", str(line.id), dose(self, line))
              for line in record.entries if is_dose(line)),
            *(self.entry("Observation", str(one.noted.id), self.observation(one))
              for one in record.statements if self.is_observation(one)),
            *(self.entry("MedicationAdministration", f"said-{one.noted.id}", dose_said(self, one))
              for one in record.statements if is_dose_said(self, one)),
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
        for entry in settled(self.record.log):
            kinds = ("said", "sent", "queued", "staff", "tapped")
            never = entry.kind == "not_sent" and "key" in entry.data
            if not (entry.kind in kinds or never) or not entry.text.strip():
                continue
            came = {"not_sent": "not-done", "queued": "in-progress"}.get(entry.kind, "completed")
            body: Resource = {
                "status": came,
                "subject": self.patient,
                "sender": self.person(entry.author),
                "payload": [{"contentString": entry.text}],
            }
            ready = entry.data.get("queued")
            if entry.kind == "sent" and isinstance(ready, str):
                # What the bot said has two times: ready to go, and taken by the platform.
                body["sent"] = instant(datetime.fromisoformat(ready))
                body["received"] = instant(entry.at)
            elif came == "completed":
                body["sent"] = instant(entry.at)
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
