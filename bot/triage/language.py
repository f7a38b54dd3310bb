"""The language of red-flag rules: what may be written in ``flows/red-flags.yaml``.

The file itself opens with a guide for the surgeon who edits it; here are the models
that it is read into. Days count from surgery (day 0), times in hours, temperatures in
degrees Celsius compared in tenths.
"""

from __future__ import annotations

from collections.abc import Iterator
from string import Formatter
from typing import Annotated, Literal

from pydantic import BeforeValidator, Field, field_validator, model_validator

from bot.model.observation import Observation
from bot.model.protocol import Slug, Species, Strict
from bot.model.text import Advice, Text
from bot.model.urgency import Urgency
from bot.model.vocabulary import DETAILS, TOPICS, TRENDS

UNTOLD = "untold"
"""Stands for a detail or a trend that the owner did not give."""

FACTS = (
    "day", "value", "told", "before", "count", "hours", "celsius", "fahrenheit", "med",
    "after_day", "to_day", "within", "limit",
)  # fmt: skip
"""The ``{placeholders}`` that a rule's ``because`` may hold."""

MATTERS = (*TOPICS, "silence", "not_understood")

UrgencyName = Literal["none", "next_day", "same_day", "emergency"]


def _one_or_more(value: object) -> object:
    return [value] if isinstance(value, str) else value


Choices = Annotated[
    tuple[str, ...],
    BeforeValidator(_one_or_more, json_schema_input_type=str | tuple[str, ...]),
]
"""One word or a list of words."""


class Range(Strict):
    """From ``at_least`` (included) to ``below`` (not included).

    ``or_untold``: also matches when the owner gave no figure, since doubt raises.
    """

    at_least: float | None = None
    below: float | None = None
    or_untold: bool = False

    @model_validator(mode="after")
    def _holds_something(self) -> Range:
        if self.at_least is None and self.below is None:
            raise ValueError("a range needs at_least or below; write one of them")
        if self.at_least is not None and self.below is not None and self.at_least >= self.below:
            raise ValueError("at_least must be lower than below; change one of them")
        return self


class When(Strict):
    """A condition: ``any`` or ``all`` of others, or one statement about the patient.

    A statement looks at this reply. With ``within_hours`` it looks back as well, that
    far and no farther (both ends count); with ``earlier`` only at what was said before.
    ``times``: said of so many events, their counts added up. ``in_a_row``: so many
    without one of ``ended_by`` between them, of one medicine. ``hours`` with
    ``ended_by``: counted on from earlier replies until one of those was said.
    ``unheard_hours``: nothing of the kind was said for so long.
    """

    any: tuple[When, ...] = ()
    all: tuple[When, ...] = ()
    about: str | None = None
    value: Choices = ()
    detail: Choices = ()
    trend: Choices = ()
    hours: Range | None = None
    celsius: Range | None = None
    times: Annotated[int, Field(ge=2)] | None = None
    in_a_row: Annotated[int, Field(ge=2)] | None = None
    ended_by: Choices = ()
    within_hours: Annotated[float, Field(gt=0)] | None = None
    earlier: bool = False
    unheard_hours: Annotated[float, Field(gt=0)] | None = None

    def parts(self) -> Iterator[When]:
        """Itself and all that is inside it."""
        yield self
        for inner in (*self.any, *self.all):
            yield from inner.parts()

    @model_validator(mode="after")
    def _one_kind(self) -> When:
        if (self.about is not None) + bool(self.any) + bool(self.all) != 1:
            raise ValueError("a condition holds one of about, any, all; write exactly one")
        if self.about is None:
            if self.model_fields_set - {"any", "all"}:
                raise ValueError("any and all hold conditions and nothing else; move the rest in")
            return self
        _known(self.about, self.value, "value")
        _known(self.about, self.ended_by, "ended_by")
        for word in self.detail:
            if word != UNTOLD and word not in DETAILS.get(self.about, ()):
                raise ValueError(f"{self.about} has no detail {word!r}")
        for word in self.trend:
            if word not in (*TRENDS, UNTOLD):
                raise ValueError(f"trend is one of {', '.join(TRENDS)}, {UNTOLD}, not {word!r}")
        return self._fits_together()

    def _fits_together(self) -> When:
        special = [k for k in ("times", "in_a_row", "unheard_hours", "hours") if getattr(self, k)]
        if len(special) > 1:
            raise ValueError(
                f"{' and '.join(special)} cannot be asked of one statement; use all: [...]"
            )
        if self.in_a_row and not self.ended_by:
            raise ValueError("in_a_row needs ended_by; list the values that break the row")
        if self.ended_by and not (self.in_a_row or self.hours):
            raise ValueError("ended_by belongs to in_a_row or hours; take it out")
        if self.earlier and special:
            raise ValueError(f"earlier cannot be joined with {special[0]}; use within_hours")
        if self.hours and self.within_hours and not self.ended_by:
            raise ValueError("hours with within_hours needs ended_by; say what ends the time")
        return self


def _known(about: str, values: tuple[str, ...], key: str) -> None:
    if about not in TOPICS:
        raise ValueError(f"about is one of {', '.join(TOPICS)}, not {about!r}")
    for value in values:
        if value not in TOPICS[about]:
            raise ValueError(
                f"{key} of {about} is one of {', '.join(TOPICS[about])}, not {value!r}"
            )


class Said(Strict):
    """An observation in an example; ``hours_ago`` and ``day`` place an earlier one."""

    about: str
    value: str
    count: int | None = None
    hours: float | None = None
    celsius: float | None = None
    med: str | None = None
    trend: str | None = None
    detail: str | None = None
    hours_ago: Annotated[float, Field(ge=0, le=100_000)] = 0
    day: int | None = None

    @model_validator(mode="after")
    def _in_vocabulary(self) -> Said:
        self.observation()
        return self

    def observation(self) -> Observation:
        """The observation itself; ValueError for a word outside the vocabulary."""
        fields = self.model_dump(exclude={"hours_ago", "day"})
        return Observation(**fields)


class Example(Strict):
    """A test beside its rule: what was said, on which day, and the urgency that it gives.

    When ``gives`` is the rule's own urgency, the rule itself must have matched.
    """

    said: tuple[Said, ...]
    day: int
    before: tuple[Said, ...] = ()
    species: Species = "dog"
    protocol: Slug | None = None
    gives: UrgencyName


def _plain(text: Text, allowed: tuple[str, ...], what: str) -> Text:
    """Refuse placeholders that nothing will fill."""
    for words in (text.en, text.es):
        try:
            names = [name for _, name, _, _ in Formatter().parse(words) if name is not None]
        except ValueError as error:
            raise ValueError(f"{what} has an open or stray brace; mend it") from error
        for name in names:
            if name not in allowed:
                may = ", ".join(f"{{{fact}}}" for fact in allowed) or "no placeholder"
                raise ValueError(f"nothing fills {{{name}}} in {what}; it may hold {may}")
    return text


class Rule(Strict):
    """One red flag: when it matches, how urgent it is, why, and what the owner does.

    ``after_day`` is not included, ``to_day`` is. ``unless`` takes the rule back.
    ``protocols``: only after one of these operations, by the protocol's id; else after any.
    ``source`` says where its figures come from.
    """

    id: Slug
    urgency: UrgencyName
    matter: str
    when: When
    unless: When | None = None
    after_day: int | None = None
    to_day: int | None = None
    species: Annotated[tuple[Species, ...], Field(min_length=1)] = ("dog", "cat")
    protocols: tuple[Slug, ...] = ()
    because: Text
    advice: Advice | None = None
    source: str | None = None
    examples: tuple[Example, ...] = ()

    @property
    def level(self) -> Urgency:
        """The urgency as a number that can be compared."""
        return Urgency[self.urgency]

    @field_validator("matter")
    @classmethod
    def _known_matter(cls, matter: str) -> str:
        if matter not in MATTERS:
            raise ValueError(f"matter is one of {', '.join(MATTERS)}, not {matter!r}")
        return matter

    @field_validator("because")
    @classmethod
    def _fillable(cls, because: Text) -> Text:
        return _plain(because, FACTS, "because")

    @field_validator("advice")
    @classmethod
    def _no_placeholder(cls, advice: Advice | None) -> Advice | None:
        if advice is not None:
            _plain(advice, (), "advice")
        return advice

    @model_validator(mode="after")
    def _days(self) -> Rule:
        if self.after_day is not None and self.to_day is not None and self.after_day >= self.to_day:
            raise ValueError("no day is after after_day and up to to_day; change one")
        return self

    @model_validator(mode="after")
    def _facts_exist(self) -> Rule:
        words = self.because.en + self.because.es
        missing = [
            fact
            for fact, there in (
                ("after_day", self.after_day is not None),
                ("to_day", self.to_day is not None),
                ("within", self.within is not None),
                ("limit", self.limit is not None),
            )
            if f"{{{fact}}}" in words and not there
        ]
        if missing:
            raise ValueError(f"because says {{{missing[0]}}}, but the rule has none; take it out")
        return self

    @property
    def within(self) -> float | None:
        """The longest look back of its condition, in hours."""
        return max((w.within_hours for w in self.when.parts() if w.within_hours), default=None)

    @property
    def limit(self) -> float | None:
        """The figure that its condition compares with: degrees Celsius or hours."""
        ranges = [r for w in self.when.parts() for r in (w.celsius, w.hours) if r is not None]
        figures = (r.at_least if r.at_least is not None else r.below for r in ranges)
        return next((figure for figure in figures if figure is not None), None)


class Silence(Strict):
    """Nothing was heard for ``hours``, on the days after ``after_day`` up to ``to_day``."""

    id: Slug
    urgency: UrgencyName
    hours: Annotated[float, Field(gt=0)]
    after_day: int | None = None
    to_day: int | None = None
    because: Text
    source: str | None = None

    @property
    def level(self) -> Urgency:
        """The urgency as a number that can be compared."""
        return Urgency[self.urgency]

    @field_validator("because")
    @classmethod
    def _fillable(cls, because: Text) -> Text:
        return _plain(because, ("day", "hours"), "because")


class Notices(Strict):
    """Why, in words for staff, where the caller has found what is to be told."""

    not_understood: Text
    handed_over: Text
    dose_too_close: Text
    wound_problem: Text
    unknown: Text

    @model_validator(mode="after")
    def _fillable(self) -> Notices:
        _plain(self.not_understood, ("excerpt",), "not_understood")
        _plain(self.handed_over, ("excerpt",), "handed_over")
        _plain(self.dose_too_close, ("med", "hours", "gap"), "dose_too_close")
        _plain(self.wound_problem, ("what",), "wound_problem")
        _plain(self.unknown, ("rule", "told"), "unknown")
        return self


class Phrases(Strict):
    """Words that stand in a sentence where a fact was not told, or that join facts."""

    untold: Text
    in_use: Text
    once_before: Text
    earlier: Text

    @model_validator(mode="after")
    def _fillable(self) -> Phrases:
        _plain(self.once_before, ("value", "day"), "once_before")
        _plain(self.earlier, ("before",), "earlier")
        return self


class RuleFile(Strict):
    """The whole file."""

    version: Annotated[int, Field(ge=1)]
    rules: Annotated[tuple[Rule, ...], Field(min_length=1)]
    silence: tuple[Silence, ...]
    advice: dict[UrgencyName, Text]
    notices: Notices
    phrases: Phrases
    words: dict[str, dict[str, Text]]

    @model_validator(mode="after")
    def _consistent(self) -> RuleFile:
        seen: set[str] = set()
        for name in (*(rule.id for rule in self.rules), *(rule.id for rule in self.silence)):
            if name in seen:
                raise ValueError(f"two rules have the id {name!r}; give one another id")
            seen.add(name)
        for about, values in self.words.items():
            _known(about, tuple(values), "words")
        for text in self.advice.values():
            _plain(text, (), "advice")
        for rule in self.rules:
            self._has_words(rule)
        return self

    def _has_words(self, rule: Rule) -> None:
        for when in rule.when.parts():
            for value in when.value or TOPICS.get(when.about or "", ()):
                if value not in self.words.get(when.about or "", {}):
                    raise ValueError(
                        f"words says nothing for {when.about}: {value}, which the rule "
                        f"{rule.id!r} names; add it under words"
                    )
