"""Who is who in a bundle: full URLs, references, and the people behind the names."""

from __future__ import annotations

from typing import Final
from uuid import UUID, uuid5

from bot.model.text import Lang

from .fhir_parts import Resource
from .whole import WholeRecord

SPACE: Final = UUID("5f0c0b57-6a8e-5f8a-9d0e-3f1d6f1f9c11")
"""Where our ids live; made once, never changed."""


class Refs:
    """Makes entries of one record's bundle; they refer to each other by their full URLs.
    ``staff`` are the practitioners that were named so far."""

    def __init__(self, record: WholeRecord, lang: Lang, system: str) -> None:
        self.record, self.lang = record, lang
        self.space = uuid5(SPACE, f"{system}/{record.id}")
        self.patient = self.ref("Patient", "0")
        self.bot = self.ref("Device", "bot")
        self.staff: dict[str, Resource] = {}

    def url(self, kind: str, name: str) -> str:
        """The full URL of a resource."""
        return f"urn:uuid:{uuid5(self.space, f'{kind}/{name}')}"

    def ref(self, kind: str, name: str, display: str = "") -> Resource:
        """A reference to it."""
        made: Resource = {"reference": self.url(kind, name), "type": kind}
        return {**made, "display": display} if display else made

    def entry(self, kind: str, name: str, body: Resource) -> Resource:
        """An entry of the bundle."""
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
