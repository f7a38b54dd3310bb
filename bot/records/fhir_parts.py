"""Small pieces of FHIR: codes, concepts, times."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any, Final

from bot.model.protocol import Species

Resource = dict[str, Any]

LOCAL: Final = "urn:slowleash:vocabulary"
"""Our own fixed vocabulary (``bot.model.vocabulary``): ``topic`` and ``topic-value``."""
LOINC: Final = "http://loinc.org"
SNOMED: Final = "http://snomed.info/sct"
UCUM: Final = "http://unitsofmeasure.org"
CATEGORY: Final = "http://terminology.hl7.org/CodeSystem/observation-category"
ANIMAL: Final = "http://hl7.org/fhir/StructureDefinition/patient-animal"
"""The extension of FHIR R4 that says that a patient is an animal, and of which species."""


def coding(system: str, value: str, display: str = "") -> Resource:
    """A Coding."""
    made = {"system": system, "code": value}
    return {**made, "display": display} if display else made


def concept(system: str, value: str, display: str = "") -> Resource:
    """A CodeableConcept of one coding."""
    return {"coding": [coding(system, value, display)]}


def code(system: str, value: str) -> Resource:
    """A CodeableConcept with no display."""
    return concept(system, value)


def local_code(value: str, display: str) -> Resource:
    """A CodeableConcept of our own vocabulary."""
    return {"coding": [coding(LOCAL, value, display)], "text": display or value}


SPECIES: Final[dict[Species, tuple[Resource, ...]]] = {
    "dog": (
        coding(SNOMED, "448771007", "Canis lupus subspecies familiaris"),
        coding("http://hl7.org/fhir/animal-species", "canislf", "Dog"),
    ),
    "cat": (coding(SNOMED, "448169003", "Felis catus"),),
}
"""SNOMED CT, and the code of the animal example in FHIR R4 itself."""


def instant(at: datetime) -> str:
    """A FHIR dateTime or instant, in UTC to the second."""
    return at.astimezone(UTC).strftime("%Y-%m-%dT%H:%M:%SZ")
