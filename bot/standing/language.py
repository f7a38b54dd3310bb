"""The language of holds: what may be written in ``flows/holds.yaml``.

A hold rule names red-flag rules (``findings``), or says its own ``when`` in their language
(``bot.triage.language``). The file opens with a guide for whoever edits it.
"""

from __future__ import annotations

from typing import Annotated, Final, Literal

from pydantic import BeforeValidator, Field, model_validator

from bot.model.protocol import Slug, Species, Strict
from bot.model.text import Text, Words
from bot.protocol.text_checks import placeholders
from bot.triage.language import Said, When

What = Literal[
    "anti_inflammatories", "by_mouth", "walks", "sessions", "medicines_of_round", "everything"
]
"""``medicines_of_round``: the medicine named, else each of those given together."""


def _one_or_more(value: object) -> object:
    return [value] if isinstance(value, str) else value


Held = Annotated[
    tuple[What, ...],
    BeforeValidator(_one_or_more, json_schema_input_type=What | tuple[What, ...]),
]

SHOWN_MEDICINES: Final = ("carprofen", "gabapentin")
"""What the patient of an example is given: an anti-inflammatory, and pain relief."""


class HoldExample(Strict):
    """A test beside its rule: what was said, on which day, and what is held by all rules.

    ``without``: the medicine of that kind is not ordered.
    """

    said: tuple[Said, ...]
    day: Annotated[int, Field(ge=0, le=400)]
    before: tuple[Said, ...] = ()
    species: Species = "dog"
    without: Literal["anti-inflammatory"] | None = None
    held: Held


class HoldRule(Strict):
    """What is held when the condition is met, by whom it ends, and why.

    ``after_day`` is not included, ``to_day`` is. ``needs``: only while a medicine of that
    kind is ordered. ``because`` follows the word "because" in a sentence to the owner.
    """

    id: Slug
    holds: Annotated[Held, Field(min_length=1)]
    when: When | None = None
    findings: Annotated[
        tuple[Slug, ...],
        BeforeValidator(_one_or_more, json_schema_input_type=Slug | tuple[Slug, ...]),
    ] = ()
    after_day: int | None = None
    to_day: int | None = None
    species: Annotated[tuple[Species, ...], Field(min_length=1)] = ("dog", "cat")
    needs: Literal["anti-inflammatory"] | None = None
    ends: Literal["clinician", "answer"] = "clinician"
    because: Text
    source: Words
    examples: Annotated[tuple[HoldExample, ...], Field(min_length=1)]

    @model_validator(mode="after")
    def _hangs_together(self) -> HoldRule:
        if (self.when is None) == (not self.findings):
            raise ValueError("a hold has a condition: write one of when, findings")
        if self.after_day is not None and self.to_day is not None and self.after_day >= self.to_day:
            raise ValueError("no day is after after_day and up to to_day; change one")
        if any(placeholders(words) != set() for words in (self.because.en, self.because.es)):
            raise ValueError("nothing is filled into because; write it without braces")
        return self

    def speaks_of(self, day: int, species: Species) -> bool:
        """Whether the rule is for this day and species."""
        return (
            species in self.species
            and (self.after_day is None or day > self.after_day)
            and (self.to_day is None or day <= self.to_day)
        )


class HoldFile(Strict):
    """The whole file."""

    version: Annotated[int, Field(ge=1)]
    holds: Annotated[tuple[HoldRule, ...], Field(min_length=1)]

    @model_validator(mode="after")
    def _own_ids(self) -> HoldFile:
        seen: set[str] = set()
        for rule in self.holds:
            if rule.id in seen:
                raise ValueError(f"two holds have the id {rule.id!r}; give one another id")
            seen.add(rule.id)
        return self
