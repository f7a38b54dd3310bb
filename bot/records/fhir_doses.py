"""Medicines in the bundle: what was ordered, what was given, and what nobody told."""

from __future__ import annotations

from datetime import datetime
from typing import Final

from bot.model.plan import Medicine

from .fhir_parts import UCUM, Resource, instant, local_code
from .fhir_refs import Refs
from .orders import last_day_of, regimen, standing
from .whole import Entry, Statement, WholeRecord

_GIVEN: Final = ("given", "doubled", "vomited_up")
"""Answers that say that the medicine was given, whatever became of it."""
_ORDER_STATES: Final = {
    "under_way": "active", "over": "completed", "stopped": "stopped", "paused": "on-hold",
}  # fmt: skip


def order(refs: Refs, medicine: Medicine, now: datetime) -> Resource:
    """A MedicationRequest, as the clinician ordered it and as it stands at ``now``."""
    record = refs.record
    first = medicine.first_dose.replace(tzinfo=record.zone)
    timing: Resource = {
        "boundsPeriod": {"start": instant(first), "end": instant(last_day_of(record, medicine))},
        "frequency": 1, "period": medicine.every_hours, "periodUnit": "h",
    }  # fmt: skip
    ordered = f"{medicine.amount.say(refs.lang)}, {regimen(record, medicine, now, refs.lang)}"
    dosage: Resource = {
        "text": medicine.sig or ordered,
        "timing": {"repeat": timing},
        "asNeededBoolean": medicine.as_needed,
        "route": {"text": medicine.route},
    }
    if medicine.dose_mg is not None:
        mg = {"value": medicine.dose_mg, "unit": "mg", "system": UCUM, "code": "mg"}
        dosage["doseAndRate"] = [{"doseQuantity": mg}]
    return {
        "status": _order_state(record, medicine, now),
        "intent": "order",
        "medicationCodeableConcept": {"text": medicine.name},
        "subject": refs.patient,
        "authoredOn": instant(refs.record.enrolled_at),
        "requester": refs.person(refs.record.plan.clinician),
        "dosageInstruction": [dosage],
    }


def _order_state(record: WholeRecord, medicine: Medicine, now: datetime) -> str:
    """As FHIR R4 calls it; ``unknown`` where the course ended before the order: whether the
    medicine went on is not told here."""
    state = standing(record, medicine, record.ended_at or now)
    if state == "under_way" and record.ended_at is not None:
        return "completed" if now >= last_day_of(record, medicine) else "unknown"
    if state == "under_way" and record.state == "paused":
        return "on-hold"
    return _ORDER_STATES[state]


def is_dose(line: Entry) -> bool:
    """A dose that came due and of which something is known (that nobody answered, too)."""
    return line.item.kind == "dose" and line.state in ("answered", "unanswered")


def dose(refs: Refs, line: Entry) -> Resource:
    """A MedicationAdministration of a planned dose; ``unknown`` where nobody told."""
    given = line.answer in _GIVEN
    status = "completed" if given else "not-done"
    if line.state == "unanswered":
        status = "unknown"
    body: Resource = {
        "status": status,
        "medicationCodeableConcept": {"text": line.item.med or "medicine"},
        "subject": refs.patient,
        "effectiveDateTime": instant(line.at if given and line.at else line.due_at),
        "note": [{"text": f"due {instant(line.item.slot_at or line.due_at)}; "
                          f"{line.answer or 'not answered'}"}],
    }  # fmt: skip
    if status == "not-done":
        body["statusReason"] = [local_code(f"dose-{line.answer}", line.answer or "")]
    if line.by is not None:
        body["performer"] = [{"actor": refs.person(line.by)}]
    names = [medicine.name for medicine in refs.record.plan.medicines]
    if line.item.med in names:
        body["request"] = refs.ref("MedicationRequest", str(names.index(line.item.med)))
    return body


def is_dose_said(refs: Refs, one: Statement) -> bool:
    """A dose of a medicine that has no slots: it was given when it was needed."""
    seen = one.observation
    needed = {m.name for m in refs.record.plan.medicines if m.as_needed}
    return seen.about == "dose" and seen.value == "given" and seen.med in needed


def dose_said(refs: Refs, one: Statement) -> Resource:
    """A MedicationAdministration of a dose that was given when it was needed."""
    names = [medicine.name for medicine in refs.record.plan.medicines]
    med = one.observation.med or ""
    return {
        "status": "completed" if one.stands else "entered-in-error",
        "medicationCodeableConcept": {"text": med},
        "subject": refs.patient,
        "effectiveDateTime": instant(one.noted.at),
        "performer": [{"actor": refs.person(one.author)}],
        "request": refs.ref("MedicationRequest", str(names.index(med))),
    }
