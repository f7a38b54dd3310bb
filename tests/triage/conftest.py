"""Replies in short words: ``"vomiting yes count=2; appetite none"`` on day 3."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

import pytest

from bot.model.finding import Finding
from bot.model.observation import Noted, Observation
from bot.triage import RuleBook, default_rules, triage, urgency

NOW = datetime(2026, 3, 9, 7, 30, tzinfo=UTC)
FIGURES: dict[str, Callable[[str], object]] = {
    "count": int, "hours": float, "celsius": float, "med": str, "trend": str,
}  # fmt: skip


def _observations(words: str) -> list[Observation]:
    made = []
    for part in filter(None, (part.strip() for part in words.split(";"))):
        about, value, *rest = part.split()
        fields: dict[str, object] = {}
        for word in rest:
            key, equals, figure = word.partition("=")
            fields |= {key: FIGURES[key](figure)} if equals else {"detail": word}
        made.append(Observation.from_dict({"about": about, "value": value, **fields}))
    return made


@dataclass(frozen=True)
class Case:
    """What came of a reply."""

    findings: tuple[Finding, ...]

    @property
    def urgency(self) -> str:
        return urgency(self.findings).name

    @property
    def rules(self) -> set[str]:
        return {finding.rule for finding in self.findings}


Tell = Callable[..., Case]


@pytest.fixture(scope="session")
def tell() -> Tell:
    """``tell(reply, day=…, before={hours ago: reply})`` → the case."""

    def tell(
        words: str,
        *,
        day: int = 5,
        before: dict[float, str] | None = None,
        species: str = "dog",
        protocol: str | None = None,
        rules: RuleBook | None = None,
    ) -> Case:
        history = [
            Noted(seen, NOW - timedelta(hours=ago), day - int(ago // 24))
            for ago, said in (before or {}).items()
            for seen in _observations(said)
        ]
        new = [Noted(seen, NOW, day) for seen in _observations(words)]
        book = rules or default_rules()
        found = triage(
            new, history, day=day, now=NOW, rules=book, species=species, protocol=protocol
        )
        return Case(found)

    return tell
